//! A simulated day and night at ten times a district's load, with the real model: two nodes' workers on one SQLite file.
//!
//! Prints what stands each four hours; panics where something piles up, a lease is left over or memory grows.

use crate::{known, memory_mb};
use bellyful::gateway::Sent;
use bellyful::jobs::guard::Limits;
use bellyful::jobs::work::Worker;
use bellyful::jobs::{Answerer, lease, send};
use bellyful::message::Inbound;
use bellyful::mind::Mind;
use bellyful::store::{Arrival, Store};
use bellyful_tests::day::share;
use bellyful_tests::stores::fresh_folder;
use chrono::{DateTime, Duration, Utc};
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex};
use std::time::Instant;
use tokio::sync::Notify;

/// Texts a household and day: one of its feeding, and now and then a question. Source: our choice.
const TEXTS_A_DAY: f64 = 1.5;
const GATEWAY: &str = "plain";
/// What memory may grow by from the sixth hour to the last.
const GROWTH_MOST: f64 = 1.15;

pub async fn day(households: usize) {
    let file = fresh_folder("soak").join("bellyful.db");
    let database = format!("sqlite:{}", file.display());
    let midnight = Utc::now().date_naive().and_time(chrono::NaiveTime::MIN).and_utc() + Duration::days(1);
    known::fill(&database, households, midnight - Duration::hours(2)).await;
    let store = Store::open(&database).await.expect("opens");
    let mind = Arc::new(Mind::new(None, 1).expect("built in"));
    let now = Arc::new(Mutex::new(midnight));
    let nodes: Vec<Arc<Worker>> = (0..2).map(|n| Arc::new(node(&store, &mind, n, &now))).collect();
    let a_day = households as f64 * TEXTS_A_DAY;
    let (start, mut texts, mut sent, mut at_six) = (Instant::now(), 0, 0, 0);
    println!("\nsoak of a simulated day, {households} households:");
    for minute in 0..24 * 60 {
        let at = midnight + Duration::minutes(minute);
        *now.lock().expect("never poisoned") = at;
        let due = (1..=minute as usize + 1).map(|m| share((m - 1) / 60) * a_day / 60.0).sum::<f64>() as usize;
        let arrivals: Vec<Arrival> = (texts..due).map(|n| arrival(&mind, n, households, at)).collect();
        texts = due;
        store.accept(&arrivals).await.expect("kept");
        let (first, second) = tokio::join!(work(&store, &nodes[0], at), work(&store, &nodes[1], at));
        first.and(second).expect("no turn fails");
        sent += deliver(&store, &nodes[0].owner, at).await;
        if minute % 240 == 239 {
            let (waiting, _) = store.backlog().await.expect("counts");
            let (unsent, leases) = (store.unsent().await.expect("counts"), store.leases().await.expect("counts"));
            let resident = resident_mb();
            println!(
                "  {:2} h: {texts} texts, {sent} sent, {waiting} waiting, {unsent} unsent, {leases} leases, {resident} MB, {:.0} s",
                minute / 60 + 1,
                start.elapsed().as_secs_f64()
            );
            at_six = if at_six == 0 && minute >= 6 * 60 { resident } else { at_six };
            assert!(waiting == 0 && leases == 0, "something was left over");
        }
    }
    assert!(sent >= texts, "each text has its answer");
    let last = resident_mb();
    assert!(last as f64 <= GROWTH_MOST * at_six as f64, "memory grew from {at_six} to {last} MB");
}

fn node(store: &Store, mind: &Arc<Mind>, n: usize, now: &Arc<Mutex<DateTime<Utc>>>) -> Worker {
    let now = now.clone();
    Worker {
        store: store.clone(),
        answerer: mind.clone(),
        owner: format!("node {n}"),
        limits: Limits { texts_per_day: 1_000, texts_per_minute: 1_000, any_sender: false },
        any_sender: BTreeMap::new(),
        to_send: Arc::new(Notify::new()),
        clock: Arc::new(move || *now.lock().expect("never poisoned")),
        held: Mutex::default(),
    }
}

fn arrival(mind: &Mind, n: usize, households: usize, at: DateTime<Utc>) -> Arrival {
    let texts = [
        "fed 3 kg scraps 6 L water, cooked 40 min",
        "how much can I feed",
        "fed 2 kg peels 4 L water. gas low",
        "flame is yellow",
    ];
    let text = if n % 2_000 == 1_999 { "strong gas smell in kitchen" } else { texts[n % texts.len()] };
    let inbound = Inbound {
        gateway: GATEWAY.into(),
        id: format!("soak {n}"),
        from: known::spread(n, households),
        to: None,
        text: text.into(),
        sent_at: at,
        received_at: at,
    };
    Arrival { alarm: mind.alarm(&inbound), inbound }
}

/// Works until nothing waits.
async fn work(store: &Store, node: &Worker, at: DateTime<Utc>) -> Result<(), bellyful::store::StoreError> {
    let mut done = vec![];
    loop {
        let lanes = store.claim(&node.owner, &done, 8, at, at + lease()).await?;
        if lanes.is_empty() {
            return store.release(&node.owner).await;
        }
        for lane in &lanes {
            node.work(lane).await?;
        }
        done = lanes;
    }
}

/// The gateway takes all that waits to be sent; how many those were.
async fn deliver(store: &Store, owner: &str, at: DateTime<Utc>) -> usize {
    let mut sent = 0;
    loop {
        let sends = store.claim_sends(owner, GATEWAY, 64, at, at + lease()).await.expect("claimed");
        if sends.is_empty() {
            return sent;
        }
        sent += sends.len();
        let settled: Vec<_> = sends
            .into_iter()
            .map(|text| {
                let outcome = send::outcome(&text, &Sent::Taken { wire_id: None }, at);
                (text, outcome)
            })
            .collect();
        store.settle(&settled, at).await.expect("settled");
    }
}

fn resident_mb() -> u64 {
    memory_mb(std::process::id(), "VmRSS").expect("Linux says")
}
