//! What the nightly pass costs: `bellyful nightly` itself over many households that stand a day back.

use crate::{known, memory_mb};
use bellyful_tests::server::program;
use bellyful_tests::stores::fresh_folder;
use chrono::{Duration, Utc};
use std::process::{Command, Stdio};
use std::time::Instant;

pub async fn pass(households: usize) {
    let file = fresh_folder("night").join("bellyful.db");
    let database = format!("sqlite:{}", file.display());
    known::fill(&database, households, Utc::now() - Duration::days(1)).await;
    let mut night = Command::new(program());
    night
        .arg("nightly")
        .env("BELLYFUL__DATABASE", &database)
        .env("BELLYFUL__GATEWAY__PLAIN__SECRET", "s")
        .env("BELLYFUL__GATEWAY__PLAIN__SEND_URL", "http://127.0.0.1:1/")
        .stdout(Stdio::null());
    let (start, mut most_mb) = (Instant::now(), 0);
    let mut child = night.spawn().expect("it starts");
    let status = loop {
        most_mb = most_mb.max(memory_mb(child.id(), "VmHWM").unwrap_or(0));
        if let Some(status) = child.try_wait().expect("it ends") {
            break status;
        }
        tokio::time::sleep(std::time::Duration::from_millis(100)).await;
    };
    assert!(status.success(), "{status}");
    let took = start.elapsed().as_secs_f64();
    println!(
        "nightly pass, {households} households a day back: {took:.0} s, {:.0} a second, at most {most_mb} MB",
        households as f64 / took
    );
}
