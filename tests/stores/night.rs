//! The nightly pass is shared: each share is one node's at a time, and a dead node's goes to the others. What it finds
//! is on the list, and the family is warned.

use crate::keeping::{family, moment};
use crate::order::text;
use bellyful::clock::night;
use bellyful::household::{Decision, Due, KeptTwin};
use bellyful::message::{Inbound, Kind};
use bellyful::mind::Mind;
use bellyful::store::{Arrival, Cause, Store};
use bellyful::workbench::work_all;
use bellyful_core::advice::Verdict;
use bellyful_core::units::Day;
use bellyful_tests::stores::on_each_store;
use chrono::Duration;

async fn with_twin(store: &Store, number: &str, day: i32) -> i64 {
    let id = family(store, number).await;
    let situation = store.situation_of(id).await.unwrap();
    let twin = Some(KeptTwin { day: Day(day), bytes: vec![1] });
    let decision = Decision { household: situation.household.clone(), twin, ..Decision::default() };
    store.keep(Cause::Hand, &situation, decision, moment(1)).await.unwrap();
    id
}

#[tokio::test]
async fn shares_behind_are_found_taken_once_and_taken_over_when_their_node_is_dead() {
    on_each_store(async |store| {
        let mut behind = vec![];
        for n in 0..70 {
            let id = with_twin(&store, &format!("+15551{n:03}"), if n % 2 == 0 { 6 } else { 7 }).await;
            behind.extend((n % 2 == 0).then_some(id));
        }
        assert_eq!(store.behind(Day(7)).await.unwrap(), 35);
        let shares = store.shares_behind(Day(7)).await.unwrap();
        assert!((3..=4).contains(&shares.len()), "{shares:?}");
        let mut found = vec![];
        for share in &shares {
            found.extend(store.behind_in(*share, Day(7)).await.unwrap());
        }
        assert_eq!(found, behind);
        let take = |owner: &'static str, at| store.take_share(owner, shares[0], moment(at), moment(at + 120));
        let first = take("first", 1).await.unwrap().expect("it is free");
        assert_eq!(take("second", 60).await.unwrap(), None);
        assert!(take("second", 121).await.unwrap().is_some(), "the first is dead");
        store.give_back("first", &first).await.unwrap();
        assert_eq!(take("third", 122).await.unwrap(), None, "what is no more one's own is not given back");
    })
    .await;
}

/// A family whose last word was to feed, and whose digester has soured since: whoever looks at the list sees it, and
/// the family is warned in its morning, once.
#[tokio::test]
async fn what_the_night_finds_is_on_the_list_and_warned_of_in_the_morning() {
    let mind = Mind::new(None, 1).unwrap();
    let hour = |day: i64, hour: i64| moment(12_800) + Duration::days(day) + Duration::hours(hour);
    on_each_store(async |store| {
        for day in 0..=12 {
            let words = match day {
                0 => "tank 1000 L, started 3 months ago with 60 kg cow dung",
                12 => "fed 90 kg scraps 20 L water",
                _ => "fed 3 kg scraps 6 L water",
            };
            let at = hour(day, 9);
            let inbound =
                Inbound { sent_at: at, received_at: at, ..text("+15550100", &day.to_string(), words, 0).inbound };
            store.accept(&[Arrival { inbound, alarm: None }]).await.unwrap();
            work_all(&store, &mind, at).await.unwrap();
        }
        let mut situation = store.situation_of(1).await.unwrap();
        let told = situation.household.as_mut().unwrap().talk.last_advice.as_mut().unwrap();
        (told.advice.hold_days, told.advice.verdict) = (0, Verdict::Feed);
        let decision = night(&situation, hour(13, 3));
        let due = decision.due.clone();
        assert!(matches!(due[..], [(Due::Ration, Some(at))] if at == hour(13, 8)), "{due:?}");
        store.keep(Cause::Hand, &situation, decision, hour(13, 3)).await.unwrap();

        let listed = store.overview().await.unwrap().remove(0).household.talk.last_advice.unwrap();
        assert!(listed.at == hour(13, 3) && listed.advice.hold_days > 0, "{listed:?}");
        let warned = work_all(&store, &mind, hour(13, 12)).await.unwrap();
        assert_eq!(warned.len(), 1, "{warned:?}");
        assert!(warned[0].kind == Kind::Reminder && warned[0].text.starts_with("Your tank needs care."), "{warned:?}");

        let situation = store.situation_of(1).await.unwrap();
        assert_eq!(night(&situation, hour(13, 13)), Decision::default(), "the twin stands at today");
    })
    .await;
}
