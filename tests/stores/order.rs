//! Texts of one household one at a time, in the order sent; households side by side; a dead node's work goes on.

use crate::keeping::{family, moment, new_household, nothing_known};
use bellyful::household::Decision;
use bellyful::message::Inbound;
use bellyful::store::{Arrival, Cause, Claim, Lane, Store, Waiting};
use bellyful_tests::stores::on_each_store;

pub fn text(from: &str, id: &str, words: &str, sent: i64) -> Arrival {
    let inbound = Inbound {
        gateway: "plain".into(),
        id: id.into(),
        from: from.into(),
        to: None,
        text: words.into(),
        sent_at: moment(sent),
        received_at: moment(sent.max(10)),
    };
    Arrival { inbound, alarm: None }
}

pub async fn arrive_and_claim(store: &Store, from: &str, words: &str, sent: i64) -> Claim {
    store.accept(&[text(from, words, words, sent)]).await.unwrap();
    let lanes = store.claim("me", &[], 1, moment(20), moment(30)).await.unwrap();
    next(store, &lanes[0]).await.expect("it waits")
}

async fn next(store: &Store, lane: &Lane) -> Option<Claim> {
    match store.waiting(lane, moment(20)).await.unwrap() {
        Some(Waiting::Text(claim)) => Some(*claim),
        _ => None,
    }
}

#[tokio::test]
async fn a_text_seen_before_changes_nothing() {
    on_each_store(async |store| {
        let arrivals =
            [text("+15550100", "a", "fed", 1), text("+15550100", "a", "fed", 1), text("+15550101", "a", "fed", 1)];
        assert_eq!(store.accept(&arrivals).await.unwrap(), 2);
        assert_eq!(store.accept(&arrivals).await.unwrap(), 0);
        assert_eq!(store.backlog().await.unwrap().0, 2);
    })
    .await;
}

#[tokio::test]
async fn texts_come_in_the_order_sent_not_the_order_they_arrived() {
    on_each_store(async |store| {
        let id = family(&store, "+15550100").await;
        let sent = [("c", 3), ("a", 1), ("b", 2)];
        for (name, at) in sent {
            store.accept(&[text("+15550100", name, name, at)]).await.unwrap();
        }
        let lanes = store.claim("me", &[], 9, moment(20), moment(30)).await.unwrap();
        assert_eq!(lanes, [Lane::of_household(id)]);
        let mut order = String::new();
        while let Some(claim) = next(&store, &lanes[0]).await {
            order += &claim.inbound.text;
            store.keep(Cause::Text(&claim), &nothing_known(), Decision::default(), moment(20)).await.unwrap();
        }
        assert_eq!(order, "abc");
    })
    .await;
}

#[tokio::test]
async fn one_household_is_worked_by_one_node_and_taken_over_when_its_heart_stops() {
    on_each_store(async |store| {
        family(&store, "+15550100").await;
        family(&store, "+15550101").await;
        store.accept(&[text("+15550100", "a", "a", 1), text("+15550101", "b", "b", 1)]).await.unwrap();
        let first = store.claim("first", &[], 1, moment(20), moment(28)).await.unwrap();
        let second = store.claim("second", &[], 9, moment(20), moment(28)).await.unwrap();
        assert_eq!((first.len(), second.len()), (1, 1));
        assert_ne!(first, second);
        store.renew("second", &second, moment(36)).await.unwrap();
        assert!(store.claim("third", &[], 9, moment(27), moment(35)).await.unwrap().is_empty());
        // The first node is dead: nobody moved its lease on.
        assert_eq!(store.claim("third", &[], 9, moment(28), moment(36)).await.unwrap(), first);
        store.claim("second", &second, 0, moment(29), moment(37)).await.unwrap();
        store.release("third").await.unwrap();
        assert_eq!(store.leases().await.unwrap(), 0);
    })
    .await;
}

#[tokio::test]
async fn a_second_text_waits_in_the_lane_of_the_household_the_first_one_founds() {
    on_each_store(async |store| {
        store.accept(&[text("+15550100", "a", "a", 1), text("+15550100", "b", "b", 2)]).await.unwrap();
        let lanes = store.claim("me", &[], 9, moment(20), moment(30)).await.unwrap();
        assert_eq!(lanes, [Lane("n:+15550100".into())]);
        let claim = next(&store, &lanes[0]).await.unwrap();
        let kept =
            store.keep(Cause::Text(&claim), &nothing_known(), new_household("+15550100"), moment(20)).await.unwrap();
        assert!(next(&store, &lanes[0]).await.is_none());
        let lanes = store.claim("me", &lanes, 9, moment(20), moment(30)).await.unwrap();
        assert_eq!(lanes, [Lane::of_household(kept.household)]);
        assert_eq!(next(&store, &lanes[0]).await.unwrap().inbound.text, "b");
    })
    .await;
}

#[tokio::test]
async fn a_text_whose_turn_failed_waits_and_holds_back_those_after_it() {
    on_each_store(async |store| {
        let claim = arrive_and_claim(&store, "+15550100", "a", 1).await;
        store.accept(&[text("+15550100", "b", "b", 2)]).await.unwrap();
        store.failed(&claim, "no luck", Some(moment(40)), None, moment(20)).await.unwrap();
        let lane = Lane("n:+15550100".into());
        assert!(next(&store, &lane).await.is_none());
        let Some(Waiting::Text(again)) = store.waiting(&lane, moment(40)).await.unwrap() else {
            panic!("it is tried again")
        };
        assert_eq!((again.inbound.text.as_str(), again.tries), ("a", 1));
        store
            .failed(&again, "no luck", None, Some(crate::outbox::reply_to(&again, "Sorry.")), moment(40))
            .await
            .unwrap();
        assert_eq!(next(&store, &lane).await.unwrap().inbound.text, "b");
        assert_eq!(store.unsent().await.unwrap(), 1);
    })
    .await;
}
