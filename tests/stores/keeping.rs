//! What follows from one text is kept whole or not at all, and only if nothing moved meanwhile.

use bellyful::household::{Decision, Due, Household, HouseholdId, KeptTwin, Phone, Sender, Situation, Talk};
use bellyful::store::{Cause, Moment, Store, StoreError, Wanted};
use bellyful_core::fact::{Fact, What};
use bellyful_core::twin::Twin;
use bellyful_core::units::Day;
use bellyful_tests::postgres::Postgres;
use bellyful_tests::stores::on_each_store;
use chrono::{DateTime, NaiveDate, Utc};
use std::sync::Arc;

/// A moment of the test's day, in seconds.
pub fn moment(seconds: i64) -> DateTime<Utc> {
    DateTime::from_timestamp(1_780_000_000 + seconds, 0).unwrap()
}

pub fn phone(number: &str) -> Phone {
    Phone { gateway: "plain".into(), number: number.into() }
}

pub fn new_household(number: &str) -> Decision {
    let household = Household {
        id: 0,
        name: "The Okelos".into(),
        lang: "en".into(),
        country: None,
        time_zone: "UTC".into(),
        since: moment(0),
        seed: 1,
        staff_id: None,
        next_fact: 1,
        talk: Talk::default(),
    };
    Decision { household: Some(household), join: vec![phone(number)], ..Decision::default() }
}

pub fn nothing_known() -> Situation {
    Situation {
        sender: Sender::Stranger { stopped: false },
        version: 0,
        household: None,
        place: String::new(),
        in_hand: false,
        several: vec![],
        twin: None,
        facts: vec![],
        phones: vec![],
        on_call: vec![],
        alarms: vec![],
    }
}

pub async fn keep_by_hand(store: &Store, decision: Decision) -> HouseholdId {
    store.keep(Cause::Hand, &nothing_known(), decision, moment(0)).await.unwrap().household
}

pub async fn family(store: &Store, number: &str) -> HouseholdId {
    keep_by_hand(store, new_household(number)).await
}

async fn situation(store: &Store, id: HouseholdId) -> Situation {
    store.situation(&Sender::Family { household: id, stopped: false }, Wanted::default()).await.unwrap()
}

#[tokio::test]
async fn a_decision_on_what_moved_meanwhile_is_refused_whole() {
    on_each_store(async |store| {
        let id = family(&store, "+15550100").await;
        let before = situation(&store, id).await;
        let fact = |id| Fact { id, day: Day(1), told_at: 1, what: What::People { count: 4 } };
        let decision =
            |n| Decision { household: before.household.clone(), facts: vec![fact(n)], ..Decision::default() };
        store.keep(Cause::Hand, &before, decision(1), moment(1)).await.unwrap();
        let refused = store.keep(Cause::Hand, &before, decision(2), moment(2)).await;
        assert!(matches!(refused, Err(StoreError::Stale(stale)) if stale == id), "{refused:?}");
        assert_eq!(store.facts(id).await.unwrap().len(), 1);
    })
    .await;
}

#[tokio::test]
async fn a_text_is_answered_once_even_if_two_work_it() {
    on_each_store(async |store| {
        let id = family(&store, "+15550100").await;
        let claim = crate::order::arrive_and_claim(&store, "+15550100", "fed 3 kg", 1).await;
        let before = situation(&store, id).await;
        let decision = || Decision { replies: vec![crate::outbox::reply_to(&claim, "Good.")], ..Decision::default() };
        store.keep(Cause::Text(&claim), &before, decision(), moment(1)).await.unwrap();
        let again = store.keep(Cause::Text(&claim), &before, decision(), moment(1)).await;
        assert!(matches!(again, Err(StoreError::Done)), "{again:?}");
        assert_eq!(store.unsent().await.unwrap(), 1);
    })
    .await;
}

#[tokio::test]
async fn the_clock_wakes_once_and_what_it_leaves_alone_is_gone() {
    on_each_store(async |store| {
        let id = family(&store, "+15550100").await;
        let before = situation(&store, id).await;
        let set = Decision {
            household: before.household.clone(),
            due: vec![
                (Due::Silence, Some(moment(60))),
                (Due::Ration, Some(moment(90))),
                (Due::Chore, Some(moment(95))),
            ],
            ..Decision::default()
        };
        store.keep(Cause::Hand, &before, set, moment(0)).await.unwrap();
        assert_eq!(store.next_due().await.unwrap(), Some(moment(60)));
        assert!(store.claim("me", &[], 9, moment(59), moment(99)).await.unwrap().is_empty());
        let lanes = store.claim("me", &[], 9, moment(60), moment(99)).await.unwrap();
        let Some(bellyful::store::Waiting::Wake(wake)) = store.waiting(&lanes[0], moment(60)).await.unwrap() else {
            panic!("the clock wakes us");
        };
        assert_eq!((wake.household, wake.due), (id, Due::Silence));
        let before = store.situation_of(id).await.unwrap();
        let clear = || Decision { due: vec![(Due::Chore, None)], ..Decision::default() };
        store.keep(Cause::Wake(&wake), &before, clear(), moment(60)).await.unwrap();
        let twice = store.keep(Cause::Wake(&wake), &before, clear(), moment(60)).await;
        assert!(matches!(twice, Err(StoreError::Done)), "{twice:?}");
        assert_eq!(store.next_due().await.unwrap(), Some(moment(90)));
    })
    .await;
}

#[tokio::test]
async fn a_fault_before_the_commit_keeps_nothing_and_one_after_it_keeps_all() {
    for (when, kept) in [(Moment::Before, 0), (Moment::Within, 0), (Moment::After, 1)] {
        on_each_store(async |store| {
            let id = family(&store, "+15550100").await;
            let before = situation(&store, id).await;
            let fact = Fact { id: 1, day: Day(1), told_at: 1, what: What::People { count: 4 } };
            let decision = Decision { household: before.household.clone(), facts: vec![fact], ..Decision::default() };
            let faulty = store.clone().with_faults(Arc::new(move |name, moment| name == "keep" && moment == when));
            let result = faulty.keep(Cause::Hand, &before, decision, moment(1)).await;
            assert!(matches!(result, Err(StoreError::Fault("keep"))), "{result:?}");
            assert_eq!(store.facts(id).await.unwrap().len(), kept, "{when:?}");
        })
        .await;
    }
}

/// A twin that another version of the program kept is as good as none: all facts are fetched to rebuild it from.
#[tokio::test]
async fn a_twin_that_cannot_be_read_is_rebuilt_from_all_facts() {
    on_each_store(async |store| {
        let id = family(&store, "+100").await;
        let kept = |bytes: Vec<u8>| {
            let facts = [1, 50].map(|day| Fact { id: i64::from(day), day: Day(day), told_at: 0, what: What::Started });
            let twin = Some(KeptTwin { day: Day(40), bytes });
            Decision { facts: facts.to_vec(), twin, ..Decision::default() }
        };
        let loaded = async |decision: Decision| {
            let now = situation(&store, id).await;
            let decision = Decision { household: now.household.clone(), ..decision };
            store.keep(Cause::Hand, &now, decision, moment(1)).await.unwrap();
            let now = situation(&store, id).await;
            (now.twin.is_some(), now.facts.len())
        };
        let readable = Twin::new(1, Day(40)).to_bytes();
        let foreign = [&[readable[0] - 1], &readable[1..]].concat();
        assert_eq!(loaded(kept(readable)).await, (true, 1), "what is folded in is not fetched again");
        assert_eq!(loaded(Decision { facts: vec![], ..kept(foreign) }).await, (false, 2));
    })
    .await;
}

#[tokio::test]
async fn on_postgresql_facts_lie_by_the_year_they_are_about() {
    let Some(url) = Postgres::shared().map(Postgres::database) else { return eprintln!("no PostgreSQL here") };
    let store = Store::open(&url).await.expect("a new store");
    let id = family(&store, "+15550100").await;
    let known = situation(&store, id).await;
    let days = ["2019-06-01", "2025-12-31", "2026-01-01", "2027-07-01", "2077-01-01"];
    let day = |date: &str| {
        Day(date.parse::<NaiveDate>().unwrap().signed_duration_since(NaiveDate::default()).num_days() as i32)
    };
    let fact = |(id, date): (i64, &&str)| Fact { id, day: day(date), told_at: 1, what: What::People { count: 4 } };
    let facts = (1..).zip(&days).map(fact).collect();
    let decision = Decision { household: known.household.clone(), facts, ..Decision::default() };
    store.keep(Cause::Hand, &known, decision, moment(1)).await.unwrap();
    assert_eq!(store.facts(id).await.unwrap().len(), days.len());

    let pool = sqlx::PgPool::connect(&url).await.unwrap();
    let lie: Vec<String> =
        sqlx::query_scalar("SELECT tableoid::regclass::text FROM fact ORDER BY id").fetch_all(&pool).await.unwrap();
    assert_eq!(lie, ["fact_before", "fact_before", "fact_2026", "fact_2027", "fact_after"]);
    let sql = format!("EXPLAIN SELECT what FROM fact WHERE household_id = 1 AND day >= {}", day("2027-01-01").0);
    let plan: Vec<String> = sqlx::query_scalar(sqlx::AssertSqlSafe(sql)).fetch_all(&pool).await.unwrap();
    let plan = plan.join("\n");
    assert!(plan.contains("fact_2027") && !plan.contains("fact_2026"), "earlier years are not looked at: {plan}");
    store.close().await;
}
