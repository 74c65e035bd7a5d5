//! What the nightly pass costs: `bellyful nightly` itself over many households that stand a day back.

use crate::{known, memory_mb};
use bellyful::record::local_day;
use bellyful::store::Store;
use bellyful_tests::server::program;
use bellyful_tests::stores::fresh_folder;
use chrono::{Duration, Utc};
use std::process::{Command, Stdio};
use std::time::Instant;

pub async fn pass(households: usize) {
    let file = fresh_folder("night").join("bellyful.db");
    let database = format!("sqlite:{}", file.display());
    let now = Utc::now();
    known::fill(&database, households, now - Duration::days(1)).await;
    let store = Store::open(&database).await.expect("opens");
    // Copies live where the first one does; a day back there is a day back by this date too.
    let today = local_day(now, "UTC");
    let begin = || {
        Command::new(program())
            .arg("nightly")
            .env("BELLYFUL__DATABASE", &database)
            .env("BELLYFUL__GATEWAY__PLAIN__SECRET", "s")
            .env("BELLYFUL__GATEWAY__PLAIN__SEND_URL", "http://127.0.0.1:1/")
            .stdout(Stdio::null())
            .spawn()
            .expect("it starts")
    };
    let behind = async || store.behind(today).await.expect("counts") as usize;
    let all = behind().await;
    let (start, mut most_mb, mut left) = (Instant::now(), 0, None);
    let mut child = begin();
    let status = loop {
        most_mb = most_mb.max(memory_mb(child.id(), "VmHWM").unwrap_or(0));
        if let Some(status) = child.try_wait().expect("it ends") {
            break status;
        }
        // Once, half-way, it dies as in a power cut, and is begun again.
        if left.is_none() && behind().await < all / 2 {
            child.kill().expect("it runs");
            child.wait().expect("it ends");
            left = Some(behind().await);
            child = begin();
        }
        tokio::time::sleep(std::time::Duration::from_millis(100)).await;
    };
    assert!(status.success(), "{status}");
    assert_eq!(behind().await, 0, "all stand at today");
    let took = start.elapsed().as_secs_f64();
    println!(
        "nightly pass, {households} households a day back: {took:.0} s, {:.0} a second, at most {most_mb} MB; killed with \
         {} left, and the second went on from there",
        households as f64 / took,
        left.expect("it takes long enough to be killed half-way"),
    );
}
