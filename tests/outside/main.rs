//! Any bytes from outside: samples bent, cut, doubled and joined at random, into every parser that sees such bytes.
//!
//! `BELLYFUL_OUTSIDE_SECONDS=600` runs each that long and prints how many it ran (`.ci/long`); otherwise a few thousand.
//! Not guided by coverage; `tests/fuzz` is, with the same targets.

use bellyful_tests::outside::{TARGETS, Target};
use rand::rngs::StdRng;
use rand::{Rng, SeedableRng};
use std::time::{Duration, Instant};

/// What parsers of these formats stumble over. Common practice, no source.
const AWKWARD: [&[u8]; 16] = [
    b"\0",
    b"\xff",
    b"\"",
    b"{",
    b"}",
    b"[",
    b"&",
    b"=",
    b"%",
    b"%zz",
    b"\xc0\x80",
    b"\xed\xa0\x80",
    b"-1",
    b"99999999999999999999",
    "\u{202e}".as_bytes(),
    "½٣३".as_bytes(),
];

fn bend(samples: &[Vec<u8>], chance: &mut StdRng) -> Vec<u8> {
    let mut bytes = samples[chance.random_range(0..samples.len())].clone();
    for _ in 0..chance.random_range(1..8) {
        let at = chance.random_range(0..=bytes.len());
        match chance.random_range(0..6) {
            0 if at < bytes.len() => bytes[at] = chance.random(),
            1 if at < bytes.len() => bytes[at] ^= 1 << chance.random_range(0..8),
            2 => bytes.truncate(at),
            3 => drop(bytes.splice(at..at, AWKWARD[chance.random_range(0..AWKWARD.len())].iter().copied())),
            4 => {
                let until = chance.random_range(at..=bytes.len());
                let again = bytes[at..until].to_vec();
                bytes.splice(at..at, again);
            }
            _ => {
                let other = &samples[chance.random_range(0..samples.len())];
                let from = chance.random_range(0..=other.len());
                bytes.truncate(at);
                bytes.extend_from_slice(&other[from..]);
            }
        }
        bytes.truncate(4096);
    }
    bytes
}

fn bear(target: &Target) {
    let long = std::env::var("BELLYFUL_OUTSIDE_SECONDS").ok().and_then(|seconds| seconds.parse().ok());
    let until = Instant::now() + Duration::from_secs(long.unwrap_or(3600));
    let most = if long.is_some() { u64::MAX } else { 3_000 };
    let samples = (target.samples)();
    for sample in &samples {
        (target.run)(sample);
    }
    let mut ran = 0_u64;
    while ran < most && Instant::now() < until {
        // Each has a number of its own, so that the one that fails can be run again.
        let bytes = bend(&samples, &mut StdRng::seed_from_u64(ran));
        let started = Instant::now();
        let run = std::panic::catch_unwind(|| (target.run)(&bytes));
        assert!(run.is_ok(), "{} panics at number {ran}: {}", target.name, String::from_utf8_lossy(&bytes));
        assert!(started.elapsed() < Duration::from_secs(20), "{} hangs at number {ran}", target.name);
        ran += 1;
    }
    println!("{}: {ran} inputs", target.name);
}

#[test]
fn no_bytes_from_outside_break_any_parser() {
    let only = std::env::var("BELLYFUL_OUTSIDE_TARGET").ok();
    for target in TARGETS.iter().filter(|target| only.as_deref().is_none_or(|only| only == target.name)) {
        bear(target);
    }
}
