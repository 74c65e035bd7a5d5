//! What the store costs a turn: loading what it looks at and keeping what it decides, in memory and in a file; and
//! how many texts a second it takes in, one commit each and many a commit.
//!
//! `cargo bench -p bellyful --bench store`

use bellyful::household::{Decision, Household, KeptTwin, Phone, Situation, Talk};
use bellyful::message::{Inbound, Kind, Outbound, answer_id};
use bellyful::store::{Arrival, Cause, Store, Waiting, Wanted};
use bellyful_core::fact::{Fact, What};
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};
use std::time::{Duration, Instant};

/// About what an ensemble of 32 members takes.
const TWIN_BYTES: usize = 12_000;
const TURNS: i64 = 2_000;

#[tokio::main(flavor = "multi_thread", worker_threads = 2)]
async fn main() {
    let folder = std::env::temp_dir().join(format!("bellyful-bench-{}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("the temporary folder can be written to");
    let file = format!("sqlite:{}/turns.db", folder.display());
    turns("in memory", &Store::in_memory().await.expect("opens")).await;
    turns("in a file, synchronous=FULL", &Store::open(&file).await.expect("opens")).await;
    for size in [1, 16, 256] {
        let file = format!("sqlite:{}/texts-{size}.db", folder.display());
        intake(size, &Store::open(&file).await.expect("opens")).await;
    }
    let _ = std::fs::remove_dir_all(&folder);
}

fn moment(seconds: i64) -> DateTime<Utc> {
    DateTime::from_timestamp(1_780_000_000 + seconds, 0).expect("in range")
}

fn text(n: i64, from: &str) -> Arrival {
    let inbound = Inbound {
        gateway: "plain".into(),
        id: n.to_string(),
        from: from.into(),
        to: None,
        text: "fed 3 kg scraps 6 L water".into(),
        sent_at: moment(n * 60),
        received_at: moment(n * 60),
    };
    Arrival { inbound, alarm: None }
}

async fn turns(name: &str, store: &Store) {
    let number = "+15550100";
    let household = Household {
        id: 0,
        name: String::new(),
        lang: "en".into(),
        country: None,
        time_zone: "UTC".into(),
        since: moment(0),
        seed: 1,
        staff_id: None,
        next_fact: 1,
        talk: Talk::default(),
    };
    let join = vec![Phone { gateway: "plain".into(), number: number.into() }];
    let founding = Decision { household: Some(household), join, ..Decision::default() };
    let nobody = store.sender(number).await.expect("reads");
    let nothing = store.situation(&nobody, Wanted::default()).await.expect("reads");
    store.keep(Cause::Hand, &nothing, founding, moment(0)).await.expect("keeps");
    let mut spent = [Duration::ZERO; 4];
    for n in 1..=TURNS {
        let start = Instant::now();
        store.accept(&[text(n, number)]).await.expect("keeps");
        let now = moment(n * 60);
        let lanes = store.claim("me", &[], 1, now, moment(n * 60 + 8)).await.expect("claims");
        let Some(Waiting::Text(claim)) = store.waiting(&lanes[0], now).await.expect("reads") else {
            panic!("the text waits");
        };
        spent[0] += start.elapsed();
        let start = Instant::now();
        let sender = store.sender(number).await.expect("reads");
        let situation = store.situation(&sender, Wanted::default()).await.expect("reads");
        spent[1] += start.elapsed();
        let decision = decide(&situation, n);
        let start = Instant::now();
        store.keep(Cause::Text(&claim), &situation, decision, now).await.expect("keeps");
        spent[2] += start.elapsed();
        let start = Instant::now();
        store.claim("me", &lanes, 0, now, now).await.expect("releases");
        spent[3] += start.elapsed();
    }
    let [queue, load, keep, release] = spent.map(|spent| spent.as_secs_f64() * 1e3 / TURNS as f64);
    println!("{name}: accept and claim {queue:.3} ms, load {load:.3} ms, keep {keep:.3} ms, release {release:.3} ms");
}

/// Two facts, a moved twin, a reply: what most texts come to.
fn decide(situation: &Situation, n: i64) -> Decision {
    let household = situation.household.clone().expect("it was founded");
    let fact = |id| Fact { id, day: Day(n as i32), told_at: n, what: What::People { count: 4 } };
    let reply = Outbound {
        id: answer_id("plain", "+15550100", &n.to_string(), 0),
        gateway: "plain".into(),
        to: "+15550100".into(),
        text: "Good. Feed up to 2.5 kg tomorrow with 5 L water. Gas today about 70 min.".into(),
        kind: Kind::Advice,
        advice: None,
        not_before: moment(n * 60),
    };
    let first = household.next_fact;
    Decision {
        facts: vec![fact(first), fact(first + 1)],
        household: Some(Household { next_fact: first + 2, ..household }),
        twin: Some(KeptTwin { day: Day(n as i32), bytes: vec![7; TWIN_BYTES] }),
        replies: vec![reply],
        ..Decision::default()
    }
}

async fn intake(size: usize, store: &Store) {
    const TEXTS: usize = 8_192;
    let texts: Vec<Arrival> = (0..TEXTS as i64).map(|n| text(n, &format!("+1555{n:07}"))).collect();
    let texts = if size == 1 { &texts[..2_048] } else { &texts[..] };
    let start = Instant::now();
    for batch in texts.chunks(size) {
        store.accept(batch).await.expect("keeps");
    }
    println!("{size} texts a commit: {:.0} texts/s", texts.len() as f64 / start.elapsed().as_secs_f64());
}
