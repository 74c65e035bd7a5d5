//! Ten million households simulated by the minute over their own clocks: texts that come, wait and are answered, and the
//! nightly pass in each zone's small hours, on so many cores. A table on standard output, for deploy/scale.md.
//!
//! `cargo run --release -p bellyful-tests --example plan [HOUSEHOLDS]`. What a text and a night cost was measured
//! (deploy/scale.md); that households lie as the people of towns do, and text by [`bellyful_tests::day`], is assumed.

use bellyful::places;
use bellyful_tests::day;
use chrono::{DateTime, Duration, TimeZone, Timelike, Utc};
use chrono_tz::Tz;
use std::collections::BTreeMap;

/// Texts a household and day. Source: 707 texts in 8 x 120 days of the demonstration's invented families.
const TEXTS_A_DAY: f64 = 707.0 / (8.0 * 120.0);
/// A text's turn. Units: s of a core. Source: measured, `load` with 10,000 households.
const TURN_S: f64 = 0.015;
/// Twins moved a night with their risk. Units: 1/s of a core. Source: measured, the model's bench.
const NIGHTLY_PER_S: f64 = 130.0;
/// Local hours in which the night's pass of a zone is to be over. Source: our choice.
const NIGHT: std::ops::Range<u32> = 1..5;
/// Longest that a text may wait for its turn in the busiest minute. Units: s. Source: our choice.
const WAIT_MOST_S: f64 = 20.0;
/// Countries whose families write one of the six languages. Source: our choice.
const COUNTRIES: &str =
    "KE TZ UG RW BI CD IN NP BO PE GT HN NI MX CO EC SN ML BF CI CM MG HT BJ BR MZ AO NG GH ZM MW ZW ET";
const MINUTES: usize = 24 * 60;

fn main() {
    let households: f64 = std::env::args().nth(1).map_or(1e7, |n| n.parse().expect("a number of households"));
    let zones = zones(households);
    let minutes: Vec<Minute> = (0..MINUTES).map(|minute| of(minute, &zones)).collect();
    let cores = least_cores(&minutes);
    let (waits, night_left) = run(&minutes, cores);
    println!("{households:.0} households in {} time zones, {cores} cores", zones.len());
    println!("| UTC | texts/s, mean and most | cores for texts | cores for the night | longest wait, s |");
    println!("| --- | --- | --- | --- | --- |");
    for hour in 0..24 {
        let of = |value: &dyn Fn(usize) -> f64| (hour * 60..(hour + 1) * 60).map(value).collect::<Vec<_>>();
        let texts = of(&|m| minutes[m].texts / 60.0);
        let mean = texts.iter().sum::<f64>() / 60.0;
        let night = of(&|m| minutes[m].night / 60.0 / NIGHTLY_PER_S).iter().sum::<f64>() / 60.0;
        println!(
            "| {hour:02} | {mean:.0}, {:.0} | {:.1} | {night:.1} | {:.0} |",
            most(&texts),
            mean * TURN_S,
            most(&of(&|m| waits[m]))
        );
    }
    println!("left of the night's pass at the end of the day: {night_left:.0} households");
}

/// What falls due in one minute.
struct Minute {
    texts: f64,
    /// Households whose night it is.
    night: f64,
}

/// Households by time zone.
fn zones(households: f64) -> Vec<(Tz, f64)> {
    let countries: Vec<&str> = COUNTRIES.split(' ').collect();
    let mut people: BTreeMap<String, f64> = BTreeMap::new();
    for town in places::all().filter(|town| countries.contains(&town.country.as_str())) {
        *people.entry(town.time_zone.clone()).or_default() += f64::from(town.people);
    }
    let all: f64 = people.values().sum();
    let zone = |(zone, people): (String, f64)| (zone.parse().expect("an IANA name"), people / all * households);
    people.into_iter().map(zone).collect()
}

fn of(minute: usize, zones: &[(Tz, f64)]) -> Minute {
    let at: DateTime<Utc> = Utc.with_ymd_and_hms(2026, 7, 1, 0, 0, 0).unwrap() + Duration::minutes(minute as i64);
    let mut due = Minute { texts: 0.0, night: 0.0 };
    for (zone, households) in zones {
        let hour = at.with_timezone(zone).hour();
        due.texts += households * TEXTS_A_DAY * day::share(hour as usize) / 60.0;
        if NIGHT.contains(&hour) {
            due.night += households / (NIGHT.len() as f64 * 60.0);
        }
    }
    due
}

/// The fewest cores on which no text waits too long and each night is done within the day.
fn least_cores(minutes: &[Minute]) -> u32 {
    (1..)
        .find(|cores| {
            let (waits, night_left) = run(minutes, *cores);
            most(&waits) <= WAIT_MOST_S && night_left < 1.0
        })
        .expect("some number of cores is enough")
}

/// Longest wait in each minute, and what is left of the night's pass when the day is over. Texts go first. The day is
/// lived twice, so that it begins as it ends.
fn run(minutes: &[Minute], cores: u32) -> (Vec<f64>, f64) {
    let second = 60.0 * f64::from(cores);
    let (mut waiting, mut night, mut waits) = (0.0, 0.0, vec![]);
    for minute in minutes.iter().chain(minutes) {
        waiting += minute.texts * TURN_S;
        night += minute.night / NIGHTLY_PER_S;
        let for_texts = second.min(waiting);
        waiting -= for_texts;
        night -= night.min(second - for_texts);
        waits.push(waiting / f64::from(cores));
    }
    (waits.split_off(MINUTES), night * NIGHTLY_PER_S)
}

fn most(values: &[f64]) -> f64 {
    values.iter().copied().fold(0.0, f64::max)
}
