//! What one text and one night cost the twin: move on, weigh, search the ration.
//!
//! `cargo bench -p bellyful-core --bench advice`. The figures stand in core/docs/model.md.

#![allow(clippy::disallowed_methods)] // a bench asks the clock and the machine; core itself never does

use bellyful_core::advice::advise;
use bellyful_core::fact::{Fact, FlameLook, GasLevel, Unit, What};
use bellyful_core::feeds::Feed;
use bellyful_core::twin::{Ration, Twin};
use bellyful_core::units::{Day, Litres, WetKg};
use std::time::{Duration, Instant};

/// Days that a digester has been followed before it is timed.
const FOLLOWED_D: i32 = 70;
/// Digesters that differ; more households are these over again, each read from bytes and written back.
const DIGESTERS: usize = 48;

fn main() {
    let kept: Vec<Vec<u8>> = (0..DIGESTERS).map(|which| followed(which).to_bytes()).collect();
    let bytes = kept.iter().map(Vec::len).max().unwrap_or(0);
    println!("{DIGESTERS} digesters followed for {FOLLOWED_D} days, at most {bytes} bytes each; one core\n");
    one_text(&kept);
    one_night(&kept);
}

/// A family's text: the twin read, moved to today's dawn, shown today's facts, advice found, the twin written.
fn one_text(kept: &[Vec<u8>]) {
    println!("| a text | mean ms | middle ms | slowest ms |");
    println!("| --- | --- | --- | --- |");
    let whole = |texts: fn(usize, Day) -> Vec<Fact>, dawn: bool| {
        kept.iter().enumerate().map(move |(which, bytes)| {
            let twin = Twin::from_bytes(bytes).expect("just written");
            let (yesterday, today) = (twin.day, twin.day.plus(1));
            let facts = [meal(which, yesterday), texts(which, today)].concat();
            let twin = if dawn { twin.settle(&facts, today) } else { twin };
            let bytes = twin.to_bytes();
            let began = Instant::now();
            let twin = Twin::from_bytes(&bytes).expect("just written").settle(&facts, today);
            let advice = advise(&twin.so_far(&facts), today);
            assert!(advice.ration_kg >= 0.0);
            std::hint::black_box(twin.to_bytes());
            began.elapsed()
        })
    };
    line("fed and cooked, first of the day", whole(meal, false));
    line("fed and cooked, the night has moved the twin", whole(meal, true));
    line("flame or gas only, the night has moved the twin", whole(flame, true));
    line(
        "one ration looked ahead",
        kept.iter().map(|bytes| {
            let twin = Twin::from_bytes(bytes).expect("just written");
            let ration = Ration { feeds: vec![(Feed::FoodWaste, WetKg::of(3.0))], water: Litres::of(6.0) };
            let began = Instant::now();
            std::hint::black_box(twin.forecast(&ration, &ration, 1.0));
            began.elapsed()
        }),
    );
}

fn line(name: &str, times: impl Iterator<Item = Duration>) {
    let mut ms: Vec<f64> = times.map(|time| time.as_secs_f64() * 1e3).collect();
    ms.sort_by(f64::total_cmp);
    let mean = ms.iter().sum::<f64>() / ms.len() as f64;
    println!("| {name} | {mean:.1} | {:.1} | {:.1} |", ms[ms.len() / 2], ms[ms.len() - 1]);
}

/// Every twin moved on a day, and its ration found: what the nightly pass does.
fn one_night(kept: &[Vec<u8>]) {
    println!("\n| households | moved on, a second | moved on and advised, a second | resident memory, MB |");
    println!("| --- | --- | --- | --- |");
    for households in [100, 1_000, 10_000, 100_000] {
        let rate = |advises: bool, most: usize| {
            let n = households.min(most);
            let began = Instant::now();
            for which in 0..n {
                let twin = Twin::from_bytes(&kept[which % kept.len()]).expect("just written");
                let (yesterday, today) = (twin.day, twin.day.plus(1));
                let twin = twin.settle(&meal(which, yesterday), today);
                if advises {
                    std::hint::black_box(advise(&twin, today));
                }
                std::hint::black_box(twin.to_bytes());
            }
            n as f64 / began.elapsed().as_secs_f64()
        };
        println!("| {households} | {:.0} | {:.0} | {:.0} |", rate(false, usize::MAX), rate(true, 2_000), resident_mb());
    }
}

/// Units: MB, as Linux has it; 0 elsewhere.
fn resident_mb() -> f64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let kb = status.lines().find_map(|line| line.strip_prefix("VmRSS:")?.trim().strip_suffix(" kB")?.parse().ok());
    kb.unwrap_or(0.0) / 1e3
}

/// A digester fed nearly every day.
fn followed(which: usize) -> Twin {
    let mut twin = Twin::new(which as u64, Day(20_000));
    twin.site.tank_l = Some(1000.0);
    let seeded =
        What::Seeded { feed: Feed::CattleManure, amount: Some(80.0 + 2.0 * which as f64), unit: Some(Unit::Kg) };
    let first = Fact { id: 1, day: twin.day, told_at: 0, what: seeded };
    let facts: Vec<Fact> = std::iter::once(first)
        .chain((15..FOLLOWED_D).filter(|n| (n + which as i32) % 6 > 0).flat_map(|n| meal(which, Day(20_000 + n))))
        .collect();
    twin.settle(&facts, Day(20_000 + FOLLOWED_D))
}

fn meal(which: usize, day: Day) -> Vec<Fact> {
    let feed = [Feed::FoodWaste, Feed::CookedRice, Feed::VegetableWaste, Feed::MaizeMeal][which % 4];
    let kg = 0.8 + 0.05 * which as f64 % 1.5;
    told(
        day,
        vec![
            What::Fed { feed, amount: Some(kg), unit: Some(Unit::Kg) },
            What::Water { amount: Some(2.0 * kg), unit: Some(Unit::L) },
            What::Burned { minutes: 40.0 },
        ],
    )
}

fn flame(_: usize, day: Day) -> Vec<Fact> {
    told(day, vec![What::Flame { look: FlameLook::Blue }, What::Gas { level: GasLevel::Good }])
}

fn told(day: Day, whats: Vec<What>) -> Vec<Fact> {
    let fact = |(n, what)| Fact { id: i64::from(day.0) * 10 + n, day, told_at: 0, what };
    (0..).zip(whats).map(fact).collect()
}
