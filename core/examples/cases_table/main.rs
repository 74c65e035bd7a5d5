//! Prints the table of published digesters: measured gas against the model's.
//!
//! `cargo run -p bellyful-core --example cases_table > core/docs/cases.md`. The tests hold the printed table to the
//! code, and at least eight in ten of the usable cases to within 30 % on gas; the cases that failed in the field must
//! fail in the model too.

mod batches;
mod bench;

use bellyful_core::adm1::GasOut;
use bellyful_core::feeds::influent::{self, Influent};
use bellyful_core::feeds::{Feed, make_up};
use bellyful_core::gas;
use bellyful_core::units::{Litres, WetKg};
use bench::{Bench, sludge};
use std::fmt::Write;

fn main() {
    print!("{}", table());
}

/// One published digester, as it stands in `tests/reference/cases.csv`.
#[derive(Debug, Clone, serde::Deserialize)]
struct Case {
    case: String,
    /// Ids joined by `+`, equal shares of VS.
    feed: String,
    kg_vs_per_m3_d: Option<f64>,
    hrt_d: Option<f64>,
    celsius: Option<f64>,
    /// Half of the day at this.
    night_celsius: Option<f64>,
    adapted_c: Option<f64>,
    measure: String,
    low: Option<f64>,
    high: Option<f64>,
    /// `run`, `refuted` or `lacks`.
    #[serde(rename = "use")]
    use_: String,
    note: String,
    source: String,
}

/// What the model makes of a case in its last 30 days, at rest.
#[derive(Debug, Clone, Copy)]
struct Outcome {
    /// In the case's own measure.
    gas: f64,
    methane_share: f64,
    ph: f64,
}

fn cases() -> Vec<Case> {
    csv::Reader::from_reader(include_str!("../../../tests/reference/cases.csv").as_bytes())
        .deserialize()
        .collect::<Result<_, _>>()
        .expect("the table is checked in and tested")
}

fn table() -> String {
    let mut text = String::from(HEAD);
    let (mut within, mut run) = (0, 0);
    for case in cases().iter().filter(|case| case.use_ == "run") {
        let outcome = model(case);
        let off = off(case, outcome.gas);
        run += 1;
        within += usize::from(off.abs() <= 0.30);
        let _ = writeln!(
            text,
            "| {} | {} | {} | {:.3} | {:+.0} % | {:.0} % | {:.2} | {} | {} |",
            case.case,
            case.measure.replace('_', " "),
            range(case),
            outcome.gas,
            100.0 * off,
            100.0 * outcome.methane_share,
            outcome.ph,
            case.note,
            case.source
        );
    }
    let _ = writeln!(
        text,
        "\n{within} of {run} within 30 %.\n{MISSES}\n## Cases that were not run\n\n| case | use | why | source |\n| --- | --- | --- | --- |"
    );
    for case in cases().iter().filter(|case| case.use_ != "run") {
        let _ = writeln!(text, "| {} | {} | {} | {} |", case.case, case.use_, case.note, case.source);
    }
    text.push_str(&batches::table());
    text
}

const HEAD: &str = "\
# Published digesters in the model

Printed by `cargo run -p bellyful-core --example cases_table > core/docs/cases.md` from `tests/reference/cases.csv`; do
not edit here. Each is fed daily for a year, ADM1 with the feed's own hydrolysis, cardinal temperatures, and nothing
fitted to the case. Gas is as measured there: dry at 0 °C for methane, wet at slurry temperature for litres a kg. A case
is `refuted` where it implies more methane than its COD can give (0.35 Nm3/kg), `lacks` where a figure is missing.

| case | measure | measured | model | off | methane | pH | note | source |
| --- | --- | ---: | ---: | ---: | ---: | ---: | --- | --- |
";

const MISSES: &str = "
What misses: the highland dung, all three high, two of them beyond 30 %. Llama dung is no feed of ours (sheep or goat
dung and cattle dung stand in for it, half each), the load and the retention are reckoned from gas and memory, and the
source does not say whether its volumes were brought to 0 °C and 1 atm: at 3,600 m that alone is a factor of 0.6.

What was changed after the first run: goat dung's methane from the upper end to the middle of what was measured, pig
dung's solids from faeces alone to faeces with some urine. Both were at one end of their ranges. Nothing else was.
";

fn range(case: &Case) -> String {
    let (low, high) = (case.low.unwrap_or(0.0), case.high.unwrap_or(0.0));
    if low == high { format!("{low}") } else { format!("{low}–{high}") }
}

/// How far off what was measured: 0 inside its range.
fn off(case: &Case, modelled: f64) -> f64 {
    let (low, high) = (case.low.expect("a case that is run has gas"), case.high.expect("the same"));
    if modelled < low {
        modelled / low - 1.0
    } else if modelled > high {
        modelled / high - 1.0
    } else {
        0.0
    }
}

fn model(case: &Case) -> Outcome {
    let celsius = case.celsius.expect("a case that is run has a temperature");
    let day = daily(case);
    let (wet_kg, vs) = wet_of(case, &day);
    let mut bench = Bench::new(day, case.adapted_c.unwrap_or(0.0), &sludge());
    let mut gas = GasOut::default();
    for day in 0..365 {
        bench.feed();
        let out = match case.night_celsius {
            None => vec![bench.pass(celsius, 1.0)],
            Some(night) => vec![bench.pass(celsius, 0.5), bench.pass(night, 0.5)],
        };
        if day >= 335 {
            out.into_iter().for_each(|out| gas += out);
        }
    }
    let (methane, biogas) = (gas.ch4_nm3 / 30.0, (gas.ch4_nm3 + gas.co2_nm3) / 30.0);
    let gas = match case.measure.as_str() {
        "methane_m3_per_kg_vs" => methane / vs,
        "biogas_m3_per_kg_vs" => biogas / vs,
        "biogas_l_per_kg_wet" => gas::wet_litres(biogas, celsius, gas::ATM_KPA).get() / wet_kg,
        other => panic!("no such measure: {other}"),
    };
    Outcome { gas, methane_share: methane / biogas, ph: bench.tank.ph() }
}

/// A day's feed of a case, for a cubic metre.
fn daily(case: &Case) -> Influent {
    let feeds: Vec<Feed> = case.feed.split('+').map(|id| Feed::from_id(id).expect("an id of the list")).collect();
    let shares = feeds.len() as f64;
    match (case.kg_vs_per_m3_d, case.hrt_d) {
        // As much water as feed, in the volume that the retention time leaves.
        (None, Some(hrt_d)) => {
            let each = 1_000.0 / hrt_d / 2.0 / shares;
            let fed: Influent = feeds.iter().map(|&feed| influent::of(feed, WetKg::of(each))).sum();
            [fed, influent::of_water(Litres::of(each * shares))].into_iter().sum()
        }
        (Some(olr), hrt_d) => {
            let fed: Influent =
                feeds.iter().map(|&feed| influent::of(feed, WetKg::of(olr / shares / make_up(feed).vs()))).sum();
            let water = hrt_d.map_or(0.0, |hrt_d| (1_000.0 / hrt_d - fed.volume.get()).max(0.0));
            [fed, influent::of_water(Litres::of(water))].into_iter().sum()
        }
        (None, None) => panic!("{}: neither load nor retention", case.case),
    }
}

/// Wet feed and VS in a day.
fn wet_of(case: &Case, day: &Influent) -> (f64, f64) {
    let feed = Feed::from_id(case.feed.split('+').next().expect("split gives one")).expect("an id of the list");
    (day.vs / make_up(feed).vs(), day.vs)
}

#[cfg(test)]
mod tests {
    use super::*;
    use bellyful_core::adm1::component::{X_H2, X_SU};

    #[test]
    fn the_printed_table_is_the_codes() {
        let printed = include_str!("../../docs/cases.md");
        let now = table();
        let differs = printed.lines().zip(now.lines()).find(|(printed, now)| printed != now);
        assert_eq!(
            differs, None,
            "print it again: cargo run -p bellyful-core --example cases_table > core/docs/cases.md"
        );
    }

    #[test]
    fn eight_in_ten_usable_cases_are_met_within_30_percent() {
        let run: Vec<f64> =
            cases().iter().filter(|case| case.use_ == "run").map(|case| off(case, model(case).gas)).collect();
        let within = run.iter().filter(|off| off.abs() <= 0.30).count();
        assert!(within as f64 >= 0.8 * run.len() as f64, "{within} of {}: {run:.2?}", run.len());
    }

    /// Jahed et al. (Mashhad): organic waste without manure gave no gas in 45 days.
    #[test]
    fn food_without_seed_does_not_start() {
        let food = influent::of(Feed::FoodWaste, WetKg::of(60.0));
        let all: Influent = [food, influent::of_water(Litres::of(400.0))].into_iter().sum();
        // What lives on kitchen scraps: a thousandth of what lives in a digester.
        let mut start = all.composition();
        (X_SU..=X_H2).for_each(|group| start[group] = 1e-3);
        let mut bench = Bench::new(all, 0.0, &start);
        let gas = (0..45).fold(0.0, |sum, _| sum + bench.pass(32.0, 1.0).ch4_nm3);
        assert!(gas < 0.05 * 0.35 * all.cod(), "{gas}");
        assert!(bench.tank.ph() < 6.0, "{}", bench.tank.ph());
    }

    /// GTZ Biogas Digest II, p. 7: dung starts by itself, smelly and with falling pH at first, gas that burns in days
    /// to weeks; start-up practice (from memory): at least a tenth of the volume as seed.
    #[test]
    fn dung_starts_by_itself_but_not_as_a_thin_soup() {
        let start = |dung_kg: f64| {
            let dung = influent::of(Feed::CattleManure, WetKg::of(dung_kg));
            let all: Influent = [dung, influent::of_water(Litres::of(1_000.0 - dung_kg))].into_iter().sum();
            let mut bench = Bench::new(all, 0.0, &all.composition());
            (0..20).for_each(|_| _ = bench.pass(28.0, 1.0));
            let gas = bench.pass(28.0, 1.0);
            (gas.ch4_nm3 / (gas.ch4_nm3 + gas.co2_nm3), bench.tank.ph())
        };
        for dung_kg in [150.0, 300.0, 500.0] {
            let (methane_share, ph) = start(dung_kg);
            assert!(methane_share > 0.5 && ph > 6.4, "{dung_kg} kg in 1 m3: {methane_share:.2}, pH {ph:.2}");
        }
        assert!(start(40.0).1 < 5.5);
    }

    /// Water Pract. Technol. 2016 11(4):774, abstract read: canteen waste at 0.59 kg COD/m3/d failed at start-up until
    /// alkalinity was added. Holliger et al. 2016 (from memory): 30 % of seed is good.
    #[test]
    fn canteen_waste_sours_a_weakly_seeded_tank_and_not_a_well_seeded_one() {
        let food = influent::of(Feed::FoodWaste, WetKg::of(0.59 / make_up(Feed::FoodWaste).cod()));
        let water = influent::of_water(food.volume * 2.0);
        let day: Influent = [food, water].into_iter().sum();
        let ph_after = |seed: f64, bicarbonate: f64| {
            let mut bench = Bench::new(day, 0.0, &bench::seeded(seed, bicarbonate));
            for _ in 0..60 {
                bench.feed();
                bench.pass(30.0, 1.0);
            }
            bench.tank.ph()
        };
        assert!(ph_after(0.10, 0.0) < 5.0);
        assert!(ph_after(0.10, 0.05) > 6.5);
        assert!(ph_after(0.30, 0.0) > 6.5);
    }
}
