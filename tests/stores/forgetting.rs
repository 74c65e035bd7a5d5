//! A family that is forgotten: nothing of it stands in any table, nor in the file.

use crate::keeping::{family, keep_by_hand, moment, phone};
use crate::order::{arrive_and_claim, text};
use crate::outbox::reply_to;
use bellyful::deed::Did;
use bellyful::household::{Alarm, CareNow, Decision, Due, KeptTwin, Sender};
use bellyful::message::{Kind, Outbound, answer_id};
use bellyful::pages::visit::Errand;
use bellyful::staff::line::Line;
use bellyful::store::{Cause, Lane, NewStaff, Outcome, PartKey, Store, Visit, Waiting, Wanted};
use bellyful_core::fact::{Fact, Sign, What};
use bellyful_core::units::Day;
use bellyful_tests::stores::{fresh_folder, on_each_store};

const NUMBER: &str = "+15550100";
/// Words that stand for the family wherever they are found.
const THEIRS: [&str; 6] = ["Okelo", "5550100", "5550101", "Lantana Ridge", "kitchen", "tower-7"];

async fn kept_for_forgetting(store: &Store) -> i64 {
    let id = family(store, NUMBER).await;
    let staff = NewStaff {
        name: "Wanjiru".into(),
        phone: Some("+15550900".into()),
        gateway: Some("plain".into()),
        lang: "en".into(),
        role: "field".into(),
        password_hash: None,
    };
    let staff = store.add_staff(&staff).await.unwrap();
    let claim = arrive_and_claim(store, NUMBER, "gas smell in the kitchen", 1).await;
    let sender = store.sender(NUMBER).await.unwrap();
    let situation = store.situation(&sender, Wanted::default()).await.unwrap();
    let fact = |id, what| Fact { id, day: Day(9), told_at: 7, what };
    let twin = KeptTwin { day: Day(9), bytes: b"Lantana Ridge".to_vec() };
    let told = Outbound {
        id: "s".into(),
        gateway: "plain".into(),
        to: "+15550900".into(),
        text: "Alarm at the Okelos: gas smell in the kitchen".into(),
        kind: Kind::Staff,
        advice: None,
        not_before: moment(1),
    };
    let decision = Decision {
        household: situation.household.clone(),
        join: vec![phone("+15550101")],
        facts: vec![
            fact(1, What::Place { name: "Lantana Ridge".into() }),
            fact(2, What::Fed { feed: bellyful_core::feeds::Feed::FoodWaste, amount: Some(3.0), unit: None }),
        ],
        twin: Some(twin.clone()),
        checkpoints: vec![twin],
        replies: vec![reply_to(&claim, "Everyone out of the kitchen."), told],
        stop: Some(true),
        due: vec![(Due::Silence, Some(moment(900)))],
        alarm: Some(Alarm { signs: vec![Sign::GasLeak], said: "gas smell in the kitchen".into(), at: moment(1) }),
        care: Some(CareNow::Taken { staff: "Wanjiru".into(), need: "alarm".into() }),
        line: Some((staff.id, Line { more: vec!["12 the Okelos".into()], ..Line::default() })),
        audit: Some(Did::Noted { words: "wrote to the Okelos".into() }.by("Wanjiru")),
        ..Decision::default()
    };
    store.keep(Cause::Text(&claim), &situation, decision, moment(2)).await.unwrap();
    store.release("me").await.unwrap();
    let sends = store.claim_sends("me", "plain", 9, moment(3), moment(13)).await.unwrap();
    let sent: Vec<_> =
        sends.into_iter().map(|send| (send, Outcome::Sent { wire_id: Some("tower-7".into()) })).collect();
    store.settle(&sent, moment(3)).await.unwrap();
    let visit = Visit {
        at: moment(4),
        day: Day(9),
        kind: Errand::Fault,
        staff: "Wanjiru".into(),
        found: Default::default(),
        note: "the Okelos' kitchen".into(),
        photos: vec![],
    };
    store.keep_visit(id, &visit, vec![]).await.unwrap();
    let key =
        PartKey { gateway: "plain".into(), sender: NUMBER.into(), recipient: String::new(), reference: 7, total: 2 };
    store.keep_part(&key, 1, "of the kitchen", moment(5)).await.unwrap();
    id
}

async fn everything(store: &Store) -> String {
    let mut copy = vec![];
    store.dump(&mut copy).await.unwrap();
    String::from_utf8(copy).unwrap()
}

async fn forget(store: &Store, id: i64) {
    let claim = arrive_and_claim(store, NUMBER, "yes", 6).await;
    let situation =
        store.situation(&Sender::Family { household: id, stopped: false }, Wanted::default()).await.unwrap();
    let decision = Decision {
        household: situation.household.clone(),
        forget: true,
        replies: vec![reply_to(&claim, "All forgotten.")],
        ..Decision::default()
    };
    store.keep(Cause::Text(&claim), &situation, decision, moment(7)).await.unwrap();
}

#[tokio::test]
async fn nothing_of_a_forgotten_family_stands_in_any_table_once_the_last_word_is_sent() {
    on_each_store(async |store| {
        let id = kept_for_forgetting(&store).await;
        let before = everything(&store).await;
        let first = answer_id("plain", NUMBER, "gas smell in the kitchen", 0);
        for words in THEIRS.iter().copied().chain([first.as_str()]) {
            assert!(before.contains(words), "the test keeps `{words}` nowhere");
        }
        forget(&store, id).await;
        let sends = store.claim_sends("me", "plain", 9, moment(8), moment(18)).await.unwrap();
        assert_eq!(sends.iter().map(|send| send.text.as_str()).collect::<Vec<_>>(), ["All forgotten."]);
        let last = sends[0].id.clone();
        store
            .settle(&[(sends[0].clone(), Outcome::Sent { wire_id: Some("tower-7".into()) })], moment(8))
            .await
            .unwrap();
        let after = everything(&store).await;
        // Ids were made from the number, and numbers can be tried one after the other.
        for words in THEIRS.iter().copied().chain([first.as_str(), last.as_str()]) {
            assert!(!after.contains(words), "`{words}` is still in\n{after}");
        }
        assert!(after.contains("\\\"fact\\\":\\\"fed\\\""), "bare amounts stay for the sums");
    })
    .await;
}

#[tokio::test]
async fn a_last_word_that_never_finds_its_way_is_erased_when_it_is_stale() {
    on_each_store(async |store| {
        let id = kept_for_forgetting(&store).await;
        forget(&store, id).await;
        assert!(everything(&store).await.contains("5550100"), "it waits to be sent");
        assert!(store.claim_sends("me", "plain", 9, moment(90_000), moment(90_010)).await.unwrap().is_empty());
        assert!(!everything(&store).await.contains("5550100"));
    })
    .await;
}

#[tokio::test]
async fn a_text_that_waits_while_its_family_is_forgotten_is_a_strangers() {
    on_each_store(async |store| {
        let id = kept_for_forgetting(&store).await;
        let claim = arrive_and_claim(&store, NUMBER, "yes", 6).await;
        store.accept(&[text(NUMBER, "later", "strong gas smell", 7)]).await.unwrap();
        let situation =
            store.situation(&Sender::Family { household: id, stopped: false }, Wanted::default()).await.unwrap();
        let decision = Decision { household: situation.household.clone(), forget: true, ..Decision::default() };
        store.keep(Cause::Text(&claim), &situation, decision, moment(8)).await.unwrap();
        let lane = Lane(format!("n:{NUMBER}"));
        let waits = store.waiting(&lane, moment(20)).await.unwrap();
        assert!(matches!(waits, Some(Waiting::Text(claim)) if claim.inbound.text == "strong gas smell"));
        assert_eq!(store.sender(NUMBER).await.unwrap(), Sender::Stranger { stopped: false });
    })
    .await;
}

#[tokio::test]
async fn what_is_forgotten_is_overwritten_in_the_file_too() {
    let file = fresh_folder("forgotten").join("bellyful.db");
    let store = Store::open(&format!("sqlite:{}", file.display())).await.unwrap();
    let id = kept_for_forgetting(&store).await;
    keep_by_hand(&store, crate::keeping::new_household("+15550777")).await;
    forget(&store, id).await;
    store.claim_sends("me", "plain", 9, moment(90_000), moment(90_010)).await.unwrap();
    store.empty_log().await.unwrap();
    let mut bytes = std::fs::read(&file).unwrap();
    bytes.extend(std::fs::read(file.with_extension("db-wal")).unwrap_or_default());
    let bytes = String::from_utf8_lossy(&bytes);
    assert!(bytes.contains("5550777"), "the others are there");
    for words in ["5550100", "Lantana Ridge", "kitchen", "tower-7"] {
        assert!(!bytes.contains(words), "`{words}` can still be read in the file");
    }
    store.close().await;
}
