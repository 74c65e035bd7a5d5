//! What a page costs the server: today with ten thousand households, and one household with five years of daily texts.
//!
//! Prints times and bytes; fails when a page is heavier or slower than it may be on a cheap phone and a small computer.
//! `cargo bench -p bellyful --bench pages`

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::http::{Request, header};
use bellyful::household::{Decision, KeptTwin, Phone};
use bellyful::message::Inbound;
use bellyful::mind::Mind;
use bellyful::pages::{Pages, hash, routes};
use bellyful::store::{Arrival, Cause, NewStaff, Store};
use bellyful::workbench::{nobody, work_lane};
use chrono::{DateTime, Duration, Utc};
use std::sync::Arc;
use std::time::Instant;
use tower::Service;

const HOUSEHOLDS: usize = 10_000;
const YEARS: i64 = 5;
const CALLS: usize = 20;

#[tokio::main(flavor = "multi_thread", worker_threads = 2)]
async fn main() {
    let folder = std::env::temp_dir().join(format!("bellyful-pages-bench-{}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("the temporary folder can be written to");
    let store = Store::open(&format!("sqlite:{}/pages.db", folder.display())).await.expect("opens");
    let mind = Arc::new(Mind::new(None, 1).expect("sound words"));
    let staff = NewStaff {
        name: "asha".into(),
        phone: None,
        gateway: None,
        lang: "en".into(),
        role: "lead".into(),
        password_hash: Some(hash("right").expect("randomness")),
    };
    store.add_staff(&staff).await.expect("added");
    let first = moment(0);
    let filling = Instant::now();
    // The household that is looked at, and one of a season that all others are copies of.
    let last = live(&store, &mind, "+99900000001", first, YEARS * 365).await;
    let season = last - Duration::days(120);
    live(&store, &mind, "+99900000002", season, 120).await;
    copies(&store, HOUSEHOLDS - 2, last).await;
    println!("filled in {:.0} s", filling.elapsed().as_secs_f64());
    let now = last + Duration::hours(1);
    let pages = Pages::new(store.clone(), mind, Arc::new(move || now), false);
    let mut site = routes(Arc::new(pages));
    let cookie = log_in(&mut site).await;
    let mut sound = true;
    for (name, path, most_ms, most_bytes) in [
        ("today, 10,000 households", "/", 100.0, 100_000),
        ("today, last page", "/?page=200", 100.0, 100_000),
        ("today, found by name", "/?find=2", 100.0, 100_000),
        ("household, 120 days shown", "/household/1", 150.0, usize::MAX),
        ("household, 5 years shown", "/household/1?days=1826", 150.0, usize::MAX),
    ] {
        let (mut times, mut bytes) = (vec![], 0);
        for _ in 0..CALLS {
            let start = Instant::now();
            bytes = get(&mut site, path, &cookie).await;
            times.push(start.elapsed().as_secs_f64() * 1e3);
        }
        times.sort_by(f64::total_cmp);
        let (middle, slowest) = (times[CALLS / 2], times[CALLS - 1]);
        let fits = middle <= most_ms && bytes <= most_bytes;
        sound &= fits;
        let mark = if fits { "" } else { "   TOO MUCH" };
        println!("{name}: {middle:.0} ms of {most_ms:.0} (slowest {slowest:.0} ms), {bytes} bytes{mark}");
    }
    let _ = std::fs::remove_dir_all(&folder);
    assert!(sound, "a page takes more than it may");
}

fn moment(day: i64) -> DateTime<Utc> {
    DateTime::from_timestamp(1_640_000_000, 0).expect("in range") + Duration::days(day)
}

/// A family that texts every day; the moment of its last text.
async fn live(store: &Store, mind: &Mind, number: &str, from: DateTime<Utc>, days: i64) -> DateTime<Utc> {
    let mut at = from;
    for day in 0..days {
        at = from + Duration::days(day);
        let text = match day {
            0 => "tank 1000 L, started 2 months ago with 60 kg cow dung".to_owned(),
            day => format!("fed {} kg scraps 5 L water, cooked {} min", 2 + day % 2, 30 + day % 40),
        };
        let inbound = Inbound {
            gateway: "plain".into(),
            id: format!("{number}-{day}"),
            from: number.into(),
            to: None,
            text,
            sent_at: at,
            received_at: at,
        };
        store.accept(&[Arrival { inbound, alarm: None }]).await.expect("kept");
        work_lane(store, mind, number, at).await.expect("worked");
    }
    at
}

/// Households that stand where the second one stands, each with a phone of its own.
async fn copies(store: &Store, count: usize, now: DateTime<Utc>) {
    let situation = store.situation_of(2).await.expect("reads");
    let (household, twin) = (situation.household.expect("lived"), situation.twin.expect("settled"));
    for n in 0..count {
        let mut copy = household.clone();
        (copy.id, copy.name) = (0, format!("Family {n}"));
        let decision = Decision {
            household: Some(copy),
            join: vec![Phone { gateway: "plain".into(), number: format!("+9991{n:07}") }],
            twin: Some(KeptTwin { day: twin.day, bytes: twin.bytes.clone() }),
            ..Decision::default()
        };
        store.keep(Cause::Hand, &nobody(), decision, now).await.expect("kept");
    }
}

async fn log_in(site: &mut Router) -> String {
    let request = Request::post("/login")
        .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded")
        .body(Body::from("name=asha&password=right"))
        .expect("a request");
    let response = site.call(request).await.expect("answers");
    let cookie = response.headers().get(header::SET_COOKIE).expect("logged in").to_str().expect("text").to_owned();
    cookie.split(';').next().expect("one").to_owned()
}

/// Bytes of a page.
async fn get(site: &mut Router, path: &str, cookie: &str) -> usize {
    let request = Request::get(path).header(header::COOKIE, cookie).body(Body::empty()).expect("a request");
    let response = site.call(request).await.expect("answers");
    assert_eq!(response.status(), 200, "{path}");
    to_bytes(response.into_body(), usize::MAX).await.expect("a body").len()
}
