//! What one node bears on SQLite and on PostgreSQL: a report on standard output. Every household is a copy of one that
//! texted for 120 days through the bot itself, so that each has facts, a twin and its checkpoints.
//!
//! `cargo run --release -p bellyful-tests --example load`; nothing else should run on the machine.
//! BELLYFUL_LOAD_HOUSEHOLDS (1000,10000,100000), BELLYFUL_LOAD_POSTGRES (1000,10000), BELLYFUL_LOAD_SECONDS (10),
//! BELLYFUL_LOAD_COPY_DAYS (all: days of history that a copy has), BELLYFUL_LOAD_DAYS (3000; 0 leaves it out),
//! BELLYFUL_LOAD_NIGHT (1000,10000: households of the nightly pass), BELLYFUL_LOAD_SOAK (5000: households of a simulated
//! day). What is set to nothing is left out.

mod history;
mod known;
mod night;
mod soak;

use bellyful::message::Inbound;
use bellyful::store::{Arrival, Store};
use bellyful_tests::network::{Does, Network, client, text_in};
use bellyful_tests::postgres::Postgres;
use bellyful_tests::server::{Server, Setting};
use bellyful_tests::stores::fresh_folder;
use chrono::Utc;
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};
use tokio::task::JoinSet;

const CLIENTS: usize = 256;

fn number_of(variable: &str, otherwise: u64) -> u64 {
    std::env::var(variable).map_or(otherwise, |value| value.parse().expect("a whole number"))
}

fn sizes(variable: &str, otherwise: &str) -> Vec<usize> {
    let sizes = std::env::var(variable).unwrap_or(otherwise.to_owned());
    sizes.split(',').filter(|size| !size.is_empty()).map(|size| size.parse().expect("whole numbers")).collect()
}

#[tokio::main(flavor = "multi_thread", worker_threads = 2)]
async fn main() {
    println!("load of the machine before: {}", std::fs::read_to_string("/proc/loadavg").unwrap_or_default().trim());
    let lasts = Duration::from_secs(number_of("BELLYFUL_LOAD_SECONDS", 10));
    let on = |kind: fn() -> String, sizes: Vec<usize>| sizes.into_iter().map(move |size| (kind, size));
    let sqlite = on(a_file, sizes("BELLYFUL_LOAD_HOUSEHOLDS", "1000,10000,100000"));
    let postgres = on(a_database, sizes("BELLYFUL_LOAD_POSTGRES", "1000,10000"));
    for (fresh, households) in sqlite.chain(postgres) {
        let database = fresh();
        known::fill(&database, households, Utc::now()).await;
        let (one, many) = bare(fresh, lasts / 5).await;
        println!(
            "\n{households} households on {}; bare durable inserts: {one:.0} rows/s one a commit, {many:.0} rows/s 256 a commit",
            database.split(':').next().unwrap_or_default()
        );
        let network = Network::start(|_, _| Does::Takes).await;
        let server = Setting::new(&database, &network.send_url)
            .with("RUST_LOG", "warn")
            .with("BELLYFUL__TEXTS_PER_DAY", "1000000")
            .with("BELLYFUL__TEXTS_PER_MINUTE", "1000000")
            .start();
        steady(&server, households, lasts).await;
        cost(&server, households).await;
        flat_out(&server, households, lasts).await;
        println!("resident: {} MB", memory_mb(server.pid(), "VmRSS").expect("it runs"));
    }
    let days = number_of("BELLYFUL_LOAD_DAYS", 3_000);
    if days > 0 {
        history::cost_by_days(days).await;
    }
    for households in sizes("BELLYFUL_LOAD_NIGHT", "1000,10000") {
        night::pass(households).await;
    }
    for households in sizes("BELLYFUL_LOAD_SOAK", "5000") {
        soak::day(households).await;
    }
    println!("load of the machine after: {}", std::fs::read_to_string("/proc/loadavg").unwrap_or_default().trim());
}

/// A new file of SQLite's.
fn a_file() -> String {
    format!("sqlite:{}", fresh_folder("load").join("bellyful.db").display())
}

/// A new database of PostgreSQL's, which forces each commit to the disk as it does unless told otherwise.
fn a_database() -> String {
    Postgres::shared()
        .expect("BELLYFUL_LOAD_POSTGRES needs Debian's package postgresql, or is set to nothing")
        .database()
}

/// Durable rows a second by the store itself, one and 256 a commit, on the same disk.
async fn bare(fresh: fn() -> String, lasts: Duration) -> (f64, f64) {
    let mut rates = [0.0; 2];
    for (rate, batch) in rates.iter_mut().zip([1, 256]) {
        let store = Store::open(&fresh()).await.expect("a new store");
        let (start, mut rows) = (Instant::now(), 0);
        while start.elapsed() < lasts {
            let arrivals: Vec<Arrival> = (rows..rows + batch).map(arrival).collect();
            store.accept(&arrivals).await.expect("kept");
            rows += batch;
        }
        *rate = rows as f64 / start.elapsed().as_secs_f64();
    }
    (rates[0], rates[1])
}

fn arrival(number: usize) -> Arrival {
    let now = Utc::now();
    let inbound = Inbound {
        gateway: "plain".into(),
        id: number.to_string(),
        from: known::number(number % 1_000),
        to: Some("+15550999".into()),
        text: "fed 3 kg scraps 6 L water".into(),
        sent_at: now,
        received_at: now,
    };
    Arrival { inbound, alarm: None }
}

/// 200 texts a second, each at its own moment whether the one before it was acknowledged or not.
async fn steady(server: &Server, households: usize, lasts: Duration) {
    const RATE: u64 = 200;
    let mut all = JoinSet::new();
    let start = tokio::time::Instant::now();
    for n in 0..RATE * lasts.as_secs() {
        let (url, from) = (server.url.clone(), known::spread(n as usize, households));
        let at = start + Duration::from_micros(n * 1_000_000 / RATE);
        all.spawn(async move {
            tokio::time::sleep_until(at).await;
            let said = text_in(&url, &format!("steady {n}"), &from, "fed 3 kg scraps 6 L water").await;
            assert_eq!(said, Some(202));
            at.elapsed()
        });
    }
    let mut waits = all.join_all().await;
    waits.sort();
    let wait = |part: f64| waits[((waits.len() - 1) as f64 * part) as usize].as_secs_f64() * 1e3;
    println!("200 texts/s: 202 after p50 {:.1} ms, p99 {:.1} ms, at most {:.1} ms", wait(0.5), wait(0.99), wait(1.0));
    let since = Instant::now();
    drained(server).await;
    println!("  {} texts answered {:.1} s after the last came in", waits.len(), since.elapsed().as_secs_f64());
}

/// As fast as they are taken, by 256 clients.
async fn flat_out(server: &Server, households: usize, lasts: Duration) {
    let next = Arc::new(AtomicUsize::new(0));
    let start = Instant::now();
    let mut all = JoinSet::new();
    for _ in 0..CLIENTS {
        let (url, next) = (server.url.clone(), next.clone());
        all.spawn(async move {
            while start.elapsed() < lasts {
                let n = next.fetch_add(1, Ordering::Relaxed);
                let from = known::spread(n, households);
                let said = text_in(&url, &format!("flat {n}"), &from, "fed 3 kg scraps 6 L water").await;
                assert_eq!(said, Some(202));
            }
        });
    }
    all.join_all().await;
    let texts = next.load(Ordering::Relaxed);
    println!(
        "{CLIENTS} clients: {:.0} acknowledged/s, answering meanwhile",
        texts as f64 / start.elapsed().as_secs_f64()
    );
}

/// Mean time of a turn of 200 households picked from all over, one text each.
async fn cost(server: &Server, households: usize) {
    let before = turns(server).await;
    for n in 0..200 {
        let from = known::number(n * households / 200);
        text_in(&server.url, &format!("cost {n}"), &from, "how much can I feed?").await;
    }
    drained(server).await;
    let after = turns(server).await;
    println!("a turn: {:.1} ms on average", (after.0 - before.0) * 1e3 / (after.1 - before.1));
}

async fn measures(server: &Server) -> String {
    let page = client().get(format!("{}/metrics", server.url)).send().await.expect("answers");
    page.text().await.expect("text")
}

fn value(page: &str, name: &str) -> f64 {
    let line = page.lines().find_map(|line| line.strip_prefix(name)?.strip_prefix(' '));
    line.map_or(0.0, |value| value.parse().expect("a number"))
}

/// Seconds and number of all turns so far.
async fn turns(server: &Server) -> (f64, f64) {
    let page = measures(server).await;
    (value(&page, "bellyful_turn_seconds_sum"), value(&page, "bellyful_turn_seconds_count"))
}

async fn drained(server: &Server) {
    let start = Instant::now();
    while value(&measures(server).await, "bellyful_texts_waiting") > 0.0 {
        assert!(start.elapsed() < Duration::from_secs(1_800), "it does not drain");
        tokio::time::sleep(Duration::from_millis(100)).await;
    }
}

/// What Linux says of a process's memory by this name; nothing of one that has ended.
fn memory_mb(pid: u32, name: &str) -> Option<u64> {
    let status = std::fs::read_to_string(format!("/proc/{pid}/status")).ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix(name)?.strip_prefix(':'))?;
    Some(line.trim().trim_end_matches(" kB").parse::<u64>().expect("a number") / 1024)
}
