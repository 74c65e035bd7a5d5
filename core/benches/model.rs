//! How fast and how exact the model runs, beside a plain implementation in C on SUNDIALS CVODE in the same run.
//!
//! `cargo bench -p bellyful-core --bench model`. The C program is built with `cc` where libsundials is installed
//! (Debian package libsundials-dev) and left out with a sentence elsewhere. What it printed stands in
//! core/docs/model.md.

#![allow(clippy::disallowed_methods)] // a bench asks the clock, the disk and the compiler; core itself never does

use bellyful_core::adm1::component::*;
use bellyful_core::adm1::scenario::{DayRow, FeedEvent, Scenario, Story};
use bellyful_core::adm1::*;
use serde_json::Value;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Instant;

const YEAR: usize = 365;
const MEMBERS: usize = 32;
const REPEATS: usize = 5;

fn main() {
    let yardstick = yardstick();
    if yardstick.is_none() {
        println!("The C yardstick is left out: it needs cc and libsundials (Debian package libsundials-dev).\n");
    }
    let year = hand_fed_year();
    println!("## A year of a tank fed by hand once a day, 15 minutes a feed ({YEAR} days)\n");
    single(&year, yardstick.as_deref(), &[1e-3, 3e-4, 1e-4, 1e-5]);
    println!("\n## The benchmark plant, 200 days of steady inflow\n");
    single(&benchmark(), yardstick.as_deref(), &[1e-3, 1e-4]);
    println!("\n## An ensemble of {MEMBERS} members, same feeds, different parameters ({YEAR} days)\n");
    ensemble(&year);
}

/// A run: seconds, its days, and what it took.
struct Done {
    seconds: f64,
    ph: Vec<f64>,
    ch4: Vec<f64>,
    effort: String,
}

fn single(scenario: &Scenario, yardstick: Option<&Path>, tolerances: &[f64]) {
    let tight = ours(scenario, Accuracy::of(1e-8), 1);
    println!("| solver | tolerance | days/s | pH error | methane error | effort |");
    println!("| --- | --- | --- | --- | --- | --- |");
    let line = |name: &str, tolerance: String, done: &Done| {
        let days = scenario.celsius.len() as f64;
        let (ph, ch4) = errors(done, &tight);
        println!("| {name} | {tolerance} | {:.0} | {ph:.1e} | {ch4:.1e} | {} |", days / done.seconds, done.effort);
    };
    for (relative, absolute) in [(1e-4, 1e-7), (1e-6, 1e-9)] {
        if let Some(done) = yardstick.and_then(|program| theirs(program, scenario, relative, absolute)) {
            line("CVODE dae2", format!("{relative:.0e}, {absolute:.0e}"), &done);
        }
    }
    for &tolerance in tolerances {
        line("ours, alone", format!("{tolerance:.0e}"), &ours(scenario, Accuracy::of(tolerance), REPEATS));
    }
    line("ours, as simulate runs", "default".into(), &ours(scenario, Accuracy::CAREFUL, REPEATS));
}

/// The worst of all days: pH, and methane as a share of the mean day's.
fn errors(done: &Done, tight: &Done) -> (f64, f64) {
    let worst = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max);
    let mean = tight.ch4.iter().sum::<f64>() / tight.ch4.len() as f64;
    (worst(&done.ph, &tight.ph), worst(&done.ch4, &tight.ch4) / mean)
}

fn ours(scenario: &Scenario, accuracy: Accuracy, repeats: usize) -> Done {
    let mut seconds = vec![];
    let mut last = None;
    for _ in 0..repeats {
        let start = Instant::now();
        let mut story = Story::begin(scenario, accuracy).expect("a sound start");
        let mut rows: Vec<DayRow> = Vec::with_capacity(scenario.celsius.len());
        while let Some(row) = story.next_day().expect("it runs") {
            rows.push(row);
        }
        seconds.push(start.elapsed().as_secs_f64());
        last = Some((rows, story.effort()));
    }
    let (rows, effort) = last.expect("at least one run");
    Done {
        seconds: median(seconds),
        ph: rows.iter().map(|row| row.ph).collect(),
        ch4: rows.iter().map(|row| row.gas.ch4_nm3).collect(),
        effort: format!(
            "{} steps, {} rejected, {} rhs, {} jac",
            effort.steps, effort.rejected, effort.evaluations, effort.jacobians
        ),
    }
}

fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}

/// The C program, built beside the bench.
fn yardstick() -> Option<PathBuf> {
    let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("benches/yardstick/cvode_adm1.c");
    let program = std::env::temp_dir().join(format!("cvode_adm1-{}", std::process::id()));
    let libraries = ["cvode", "nvecserial", "sunmatrixdense", "sunlinsoldense", "generic"];
    let built = Command::new("cc")
        .args(["-O3", "-march=native", "-o"])
        .arg(&program)
        .arg(&source)
        .args(libraries.map(|library| format!("-lsundials_{library}")))
        .arg("-lm")
        .stderr(std::process::Stdio::null())
        .status()
        .ok()?;
    built.success().then_some(program)
}

fn theirs(program: &Path, scenario: &Scenario, relative: f64, absolute: f64) -> Option<Done> {
    let folder = std::env::temp_dir();
    let (text, out) = (folder.join("yardstick-scenario.txt"), folder.join("yardstick-out.csv"));
    std::fs::write(&text, as_text(scenario)).ok()?;
    let said = Command::new(program)
        .args([&text, &out])
        .args(["dae2", &relative.to_string(), &REPEATS.to_string()])
        .env("ATOL", absolute.to_string())
        .output()
        .ok()?;
    let said: Value = serde_json::from_slice(&said.stdout).ok()?;
    let rows = std::fs::read_to_string(&out).ok()?;
    let column = |at: usize| rows.lines().skip(1).filter_map(|line| line.split(',').nth(at)?.parse().ok()).collect();
    Some(Done {
        seconds: said["median_s"].as_f64()?,
        ph: column(2),
        ch4: column(4),
        effort: format!(
            "{} steps, {} rejected, {} rhs, {} jac",
            said["steps"], said["err_fails"], said["rhs"], said["jac"]
        ),
    })
}

/// The scenario in the yardstick's own letters.
fn as_text(scenario: &Scenario) -> String {
    let row = |values: &[f64]| values.iter().map(|value| format!("{value:e}")).collect::<Vec<_>>().join(" ");
    let vessel = &scenario.member.vessel;
    let mut text = format!(
        "vliq {}\nvgas {}\nkp {}\nkla {}\nkinetics_T 0\nndays {}\ninit {}\ngas {}\n",
        vessel.liquid_m3,
        vessel.head_m3,
        vessel.k_p_m3_per_d_bar,
        vessel.k_la_per_d,
        scenario.celsius.len(),
        row(&scenario.initial),
        row(&scenario.initial_gas)
    );
    scenario.influents.iter().for_each(|influent| _ = writeln!(text, "influent {}", row(influent)));
    scenario.celsius.iter().enumerate().for_each(|(day, celsius)| _ = writeln!(text, "temp {day} {celsius}"));
    for feed in &scenario.feeds {
        let FeedEvent { day, start_d, duration_d, volume_m3, influent } = feed;
        _ = writeln!(text, "feed {day} {start_d} {duration_d} {volume_m3:e} {influent}");
    }
    text
}

fn reference(name: &str) -> Value {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../tests/reference").join(name);
    serde_json::from_str(&std::fs::read_to_string(path).expect("a reference file")).expect("JSON")
}

fn of<const N: usize>(table: &Value, names: [&str; N]) -> [f64; N] {
    names.map(|name| table[name].as_f64().unwrap_or_else(|| panic!("no {name}")))
}

/// A household's tank, fed on as in the steady scenario until a year is full.
fn hand_fed_year() -> Scenario {
    let file = reference("scenarios/p2_steady_25C.json");
    let days = file["n_days"].as_u64().expect("a number") as usize;
    let number = |value: &Value| value.as_f64().expect("a number");
    let feeds = file["feeds"].as_array().expect("feeds");
    let on = |day: usize| {
        feeds.iter().filter(move |feed| feed["day"].as_u64() == Some((day % days) as u64)).map(move |feed| FeedEvent {
            day,
            start_d: number(&feed["start_d"]),
            duration_d: number(&feed["duration_d"]),
            volume_m3: number(&feed["volume_m3"]),
            influent: feed["influent"].as_u64().expect("a number") as usize,
        })
    };
    Scenario {
        member: Member { kinetics: Kinetics::BSM2, vessel: Vessel::household(0.8, 0.15) },
        initial: of(&file["initial"], LIQUID_NAMES),
        initial_gas: of(&file["initial_gas"], GAS_NAMES),
        influents: file["influents"].as_array().expect("influents").iter().map(|i| of(i, LIQUID_NAMES)).collect(),
        celsius: vec![25.0; YEAR],
        feeds: (0..YEAR).flat_map(on).collect(),
    }
}

fn benchmark() -> Scenario {
    let file = reference("bsm2_reference.json");
    let published = |name: &str| file["steady_state"][name]["published"].as_f64().expect("a published value");
    let influent = of(&file["influent"]["values"], LIQUID_NAMES);
    // From a fifth off its steady state, so that it has a way to go.
    Scenario::bsm2(&LIQUID_NAMES.map(|name| 0.8 * published(name)), &GAS_NAMES.map(published), &influent, 200)
}

/// Members that differ as the ensemble's do: half to one and a half of each speed.
fn members() -> Vec<Member> {
    let spread = |n: usize, by: usize| 0.5 + ((n * by) % MEMBERS) as f64 / (MEMBERS - 1) as f64;
    (0..MEMBERS)
        .map(|n| Member {
            kinetics: Kinetics::BSM2.varied(&Variation {
                hydrolysis: spread(n, 1),
                k_m: PerGroup { ac: spread(n, 5), pro: spread(n, 11), c4: spread(n, 19), ..PerGroup::all(1.0) },
                ..Variation::default()
            }),
            vessel: Vessel { solids_leaving: 0.5 + 0.5 * n as f64 / MEMBERS as f64, ..Vessel::household(0.8, 0.15) },
        })
        .collect()
}

/// Each member's pH at the end of each day, and its methane of the day.
type Days = Vec<Vec<(f64, f64)>>;

fn run_ensemble(year: &Scenario, room: &mut Room) -> (f64, usize, Days) {
    let members = members();
    let fill = |member: &Member| Tank::full(member, &year.initial, &year.initial_gas).expect("a sound start");
    let mut tanks: Vec<Tank> = members.iter().map(fill).collect();
    let (start, mut careful, mut days) = (Instant::now(), 0, Days::with_capacity(YEAR));
    for day in 0..YEAR {
        for feed in year.feeds.iter().filter(|feed| feed.day == day) {
            for (member, tank) in members.iter().zip(&mut tanks) {
                tank.feed(member, feed.volume_m3, &year.influents[feed.influent]).expect("a meal");
            }
        }
        let mut gas = vec![GasOut::default(); MEMBERS];
        let run = advance(&members, &mut tanks, &[year.celsius[day]; MEMBERS], 1.0, &mut gas, room).expect("it runs");
        careful += run.careful;
        days.push(tanks.iter().zip(&gas).map(|(tank, gas)| (tank.ph(), gas.ch4_nm3)).collect());
    }
    (start.elapsed().as_secs_f64(), careful, days)
}

fn ensemble(year: &Scenario) {
    let (_, _, tight) = run_ensemble(year, &mut Room::new(Accuracy::of(1e-7), Accuracy::of(1e-7)));
    let member_days = (MEMBERS * YEAR) as f64;
    println!("| members-days | member-days/s | pH error | daily methane error | on the careful path |");
    println!("| --- | --- | --- | --- | --- |");
    let mut runs: Vec<(f64, usize, Days)> = (0..REPEATS).map(|_| run_ensemble(year, &mut Room::default())).collect();
    runs.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (seconds, careful, days) = &runs[REPEATS / 2];
    let pairs = || days.iter().flatten().zip(tight.iter().flatten());
    let ph = pairs().map(|(a, b)| (a.0 - b.0).abs()).fold(0.0, f64::max);
    let ch4 = pairs().map(|(a, b)| (a.1 - b.1).abs() / b.1.max(1e-3)).fold(0.0, f64::max);
    println!("| {member_days:.0} | {:.0} | {ph:.1e} | {:.2} % | {careful} |", member_days / seconds, 100.0 * ch4);
}
