//! Laws that hold whatever is texted: nothing panics, nothing told is lost, and the facts alone rebuild the twin.

use bellyful::converse::Conversation;
use bellyful::mind::Mind;
use bellyful::twins::Believed;
use bellyful_core::fact::What;
use proptest::prelude::*;
use serde_json::json;

/// Texts as families send them, late and corrected ones among them.
const SAYINGS: [&str; 16] = [
    "fed 2 kg scraps 4 L water",
    "fed 1 bucket peels",
    "yesterday we fed 3 kg rice",
    "not fed for 3 days",
    "no, 3 not 5",
    "undo",
    "cooked 50 min",
    "gas low",
    "smells sour",
    "tank is 1000 L",
    "started 3 weeks ago",
    "put 60 kg cow dung to start",
    "temp 27",
    "how much can I feed",
    "my bucket is 15 litres",
    "on monday we put in 2 kg beans",
];

fn runtime() -> tokio::runtime::Runtime {
    tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime")
}

async fn talk() -> Conversation {
    Conversation::new(Mind::new(None, 1).expect("a mind")).await.expect("a store")
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, ..ProptestConfig::default() })]

    #[test]
    fn the_facts_alone_rebuild_the_twin(said in proptest::collection::vec((0..SAYINGS.len(), 0u32..40), 1..14)) {
        runtime().block_on(async {
            let mut talk = talk().await;
            let mut hours = 0;
            for (saying, wait) in said {
                hours += wait;
                let (day, hour) = (1 + hours / 24, hours % 24);
                let at = format!("2026-{:02}-{:02}T{hour:02}:00:00Z", 3 + (day - 1) / 28, 1 + (day - 1) % 28);
                talk.line(&json!({"at": at, "from": "+15550100", "text": SAYINGS[saying]}).to_string()).await.expect("a line");
            }
            let situation = talk.store().situation_of(1).await.expect("loads");
            let household = situation.household.expect("known");
            let facts = talk.store().facts(1).await.expect("facts");
            if let Some(kept) = situation.twin {
                let rebuilt = Believed::rebuilt(&household, &facts, kept.day);
                prop_assert!(kept.bytes == rebuilt.bytes, "kept and rebuilt twins differ");
            }
            Ok(())
        })?;
    }

    #[test]
    fn no_portion_told_is_lost(kilos in proptest::collection::vec(1u32..9, 1..20)) {
        runtime().block_on(async {
            let mut talk = talk().await;
            for (day, kg) in kilos.iter().enumerate() {
                let at = format!("2026-03-{:02}T07:30:00Z", day + 1);
                talk.line(&json!({"at": at, "from": "+15550100", "text": format!("fed {kg} kg scraps")}).to_string()).await.expect("a line");
            }
            let facts = talk.store().facts(1).await.expect("facts");
            let fed: f64 = facts.iter().filter_map(|fact| match fact.what { What::Fed { amount, .. } => amount, _ => None }).sum();
            prop_assert_eq!(fed, f64::from(kilos.iter().sum::<u32>()));
            Ok(())
        })?;
    }

    #[test]
    fn any_bytes_get_an_answer_or_silence_but_never_a_panic(text in any::<Vec<u8>>()) {
        runtime().block_on(async {
            let mut talk = talk().await;
            let text = String::from_utf8_lossy(&text).into_owned();
            let line = json!({"at": "2026-03-01T07:30:00Z", "from": "+15550100", "text": text}).to_string();
            let replies = talk.line(&line).await.expect("a line");
            prop_assert!(!replies.is_empty());
            talk.line(&text).await.ok();
            Ok(())
        })?;
    }
}

#[test]
fn a_bad_line_changes_nothing_and_says_what_to_do() {
    runtime().block_on(async {
        let mut talk = talk().await;
        talk.line(r#"{"at":"2026-03-02T07:30:00Z","from":"+15550100","text":"fed 2 kg scraps"}"#).await.expect("a line");
        for bad in [
            "",
            "{}",
            "nonsense",
            r#"{"at":"2026-03-01T07:30:00Z","from":"+15550100","text":"time goes back"}"#,
            r#"{"at":"2026-03-03T07:30:00Z","text":"no sender"}"#,
            r#"{"at":"2026-03-03T07:30:00Z","from":"+15550100"}"#,
            r#"{"at":"2026-03-03T07:30:00Z","from":"+15550111","household":"+15550999"}"#,
            r#"{"at":"2026-03-03T07:30:00Z","from":"+15550111","setup":{"tank_l":-5}}"#,
            r#"{"at":"2026-03-03T07:30:00Z","from":"+15550111","setup":{"seeded":{"feed":"gold","kg":1,"days_ago":1}}}"#,
        ] {
            let told = talk.line(bad).await.expect_err(bad).to_string();
            assert!(told.len() > 10 && !told.contains('\n'), "{bad}: {told}");
        }
        assert_eq!(talk.store().facts(1).await.expect("facts").len(), 1);
        // Time has not moved either: an hour after the first text is still in the future.
        talk.line(r#"{"at":"2026-03-02T08:30:00Z"}"#).await.expect("time goes on");
    });
}

#[test]
fn the_same_lines_and_seed_give_the_same_bytes() {
    let lines = r#"{"at":"2026-03-01T07:30:00Z","from":"+15550100","text":"fed 3 kg scraps 6 L water"}
{"at":"2026-03-02T07:30:00Z","from":"+15550100","text":"how much can I feed"}
{"at":"2026-03-20T07:30:00Z"}"#;
    let said = || {
        runtime().block_on(async {
            let mut talk = talk().await;
            let mut said = vec![];
            for line in lines.lines() {
                said.extend(talk.line(line).await.expect("a line"));
            }
            serde_json::to_string(&said).expect("plain data")
        })
    };
    assert_eq!(said(), said());
}
