//! The nightly pass is shared: each share is one node's at a time, and a dead node's goes to the others.

use crate::keeping::{family, moment};
use bellyful::household::{Decision, KeptTwin};
use bellyful::store::{Cause, Store};
use bellyful_core::units::Day;
use bellyful_tests::stores::on_each_store;

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
