//! Who sent a text, and what a turn gets to see of them.

use crate::keeping::{family, moment, phone};
use crate::order::text;
use bellyful::household::{Decision, KeptTwin, Sender};
use bellyful::mind::Mind;
use bellyful::store::{Cause, NewStaff, Wanted};
use bellyful::workbench::work_all;
use bellyful_core::fact::{Fact, What};
use bellyful_core::twin::Twin;
use bellyful_core::units::Day;
use bellyful_tests::stores::on_each_store;

#[tokio::test]
async fn a_number_nobody_knows_is_a_stranger() {
    on_each_store(async |store| {
        assert_eq!(store.sender("+15550100").await.unwrap(), Sender::Stranger { stopped: false });
    })
    .await;
}

#[tokio::test]
async fn two_phones_are_one_family() {
    on_each_store(async |store| {
        let id = family(&store, "+15550100").await;
        let situation =
            store.situation(&Sender::Family { household: id, stopped: false }, Wanted::default()).await.unwrap();
        let second =
            Decision { household: situation.household.clone(), join: vec![phone("+15550101")], ..Decision::default() };
        store.keep(Cause::Hand, &situation, second, moment(1)).await.unwrap();
        assert_eq!(store.sender("+15550101").await.unwrap(), Sender::Family { household: id, stopped: false });
        let numbers: Vec<_> = store.phones(id).await.unwrap().into_iter().map(|phone| phone.number).collect();
        assert_eq!(numbers, ["+15550100", "+15550101"]);
    })
    .await;
}

#[tokio::test]
async fn staff_reach_a_household_by_number_or_by_name() {
    on_each_store(async |store| {
        let id = family(&store, "+15550100").await;
        let staff = NewStaff {
            name: "Wanjiru".into(),
            phone: Some("+15550900".into()),
            gateway: Some("plain".into()),
            lang: "en".into(),
            role: "field".into(),
            password_hash: None,
        };
        store.add_staff(&staff).await.unwrap();
        let sender = store.sender("+15550900").await.unwrap();
        assert!(matches!(&sender, Sender::Staff(staff) if staff.name == "Wanjiru"));
        for (named, found) in
            [(id.to_string(), true), ("the Okelos".into(), true), ("nobody".into(), false), ("77".into(), false)]
        {
            let wanted = Wanted { household: Some(named.clone()), since: None };
            let situation = store.situation(&sender, wanted).await.unwrap();
            assert_eq!(situation.household.is_some(), found, "{named}");
        }
        assert!(store.remove_staff("Wanjiru").await.unwrap());
        assert!(!store.remove_staff("Wanjiru").await.unwrap());
    })
    .await;
}

#[tokio::test]
async fn a_turn_loads_facts_from_the_twins_day_on_and_a_correction_reaches_back_to_a_checkpoint() {
    on_each_store(async |store| {
        let id = family(&store, "+15550100").await;
        let sender = Sender::Family { household: id, stopped: false };
        let situation = store.situation(&sender, Wanted::default()).await.unwrap();
        let told = |id, day| Fact { id, day: Day(day), told_at: 7, what: What::NotFed { days: 1 } };
        let twin = |day: i32| KeptTwin { day: Day(day), bytes: Twin::new(1, Day(day)).to_bytes() };
        let decision = Decision {
            household: situation.household.clone(),
            facts: (1..=10).map(|n| told(n, n as i32)).collect(),
            twin: Some(twin(9)),
            checkpoints: vec![twin(3), twin(6)],
            ..Decision::default()
        };
        store.keep(Cause::Hand, &situation, decision, moment(1)).await.unwrap();
        for (since, twin_day, first_fact) in [
            (None, Some(9), 9),
            (Some(9), Some(9), 9),
            (Some(8), Some(6), 6),
            (Some(5), Some(3), 3),
            (Some(2), None, 1),
        ] {
            let wanted = Wanted { household: None, since: since.map(Day) };
            let situation = store.situation(&sender, wanted).await.unwrap();
            assert_eq!(situation.twin.as_ref().map(|twin| twin.day.0), twin_day, "since {since:?}");
            assert_eq!(situation.facts[0].day.0, first_fact, "since {since:?}");
            assert_eq!(situation.facts.last().unwrap().day.0, 10);
        }
        assert_eq!(store.facts(id).await.unwrap().len(), 10);

        let situation = store.situation(&sender, Wanted::default()).await.unwrap();
        let drop = Decision {
            household: situation.household.clone(),
            drop_checkpoints_from: Some(Day(4)),
            ..Decision::default()
        };
        store.keep(Cause::Hand, &situation, drop, moment(2)).await.unwrap();
        let wanted = Wanted { household: None, since: Some(Day(7)) };
        assert_eq!(store.situation(&sender, wanted).await.unwrap().twin.unwrap().day, Day(3));
    })
    .await;
}

#[tokio::test]
async fn years_of_checkpoints_take_little_room_and_the_last_weeks_are_all_there() {
    on_each_store(async |store| {
        let id = family(&store, "+15550100").await;
        for week in 2_900..3_100 {
            let situation = store.situation_of(id).await.unwrap();
            let twin = KeptTwin { day: Day(week * 7), bytes: Twin::new(1, Day(week * 7)).to_bytes() };
            let decision = Decision {
                household: situation.household.clone(),
                twin: Some(twin.clone()),
                checkpoints: vec![twin],
                ..Decision::default()
            };
            store.keep(Cause::Hand, &situation, decision, moment(1)).await.unwrap();
        }
        let last = 3_099 * 7;
        let sender = Sender::Family { household: id, stopped: false };
        for (back, within) in [(1, 7), (20, 7), (40, 28), (150, 28), (700, 364)] {
            let wanted = Wanted { household: None, since: Some(Day(last - back)) };
            let from = store.situation(&sender, wanted).await.unwrap().twin.expect("a checkpoint").day.0;
            assert!(
                last - back - from < within,
                "{back} days back is replayed from {} days before",
                last - back - from
            );
        }
        let mut kept = std::collections::BTreeSet::new();
        for week in 2_900..3_099 {
            let wanted = Wanted { household: None, since: Some(Day(week * 7)) };
            kept.extend(store.situation(&sender, wanted).await.unwrap().twin.map(|twin| twin.day.0));
        }
        let kept = kept.len();
        assert!(kept < 20, "{kept} of 200 are kept");
    })
    .await;
}

#[tokio::test]
async fn who_asked_for_a_person_is_on_the_list_until_somebody_has_seen_to_them() {
    let mind = Mind::new(None, 1).unwrap();
    on_each_store(async |store| {
        let asked = async || {
            let listed = store.overview().await.unwrap().remove(0).household.talk.asked_at;
            assert_eq!(store.situation_of(1).await.unwrap().household.unwrap().talk.asked_at, listed);
            listed
        };
        for (minute, words) in ["fed 3 kg scraps 6 L water", "please send somebody"].into_iter().enumerate() {
            store.accept(&[text("+15550100", words, words, minute as i64 * 60)]).await.unwrap();
            work_all(&store, &mind, moment(minute as i64 * 60 + 20)).await.unwrap();
        }
        assert!(asked().await.is_some());
        store.take_care(1, "person", "Asha", moment(600)).await.unwrap();
        assert!(asked().await.is_some(), "somebody sees to it, nobody has yet");
        store.end_care(1, "Asha", moment(900)).await.unwrap();
        assert_eq!(asked().await, None);
    })
    .await;
}
