//! Prints the steady state of the benchmark plant beside the published one, value by value.
//!
//! `cargo run -p bellyful-core --example bsm2_table > core/docs/bsm2.md`. The tests hold each value to what was
//! published, and the printed table to the code.

use bellyful_core::adm1::component::*;
use bellyful_core::adm1::scenario::{Scenario, Story};
use bellyful_core::adm1::temperature::Physics;
use bellyful_core::adm1::{Accuracy, Tank, Vessel};
use serde_json::Value;
use std::fmt::Write;

fn main() {
    print!("{}", table());
}

/// Long enough for the slowest group to settle: 25 retention times.
const DAYS: usize = 500;
const CELSIUS: f64 = 35.0;
/// Published to 12 digits; ours may err by so much.
#[cfg(test)]
const WITHIN: f64 = 1e-5;
/// S_h2 is printed to 7 digits. Units: kg COD/m³.
#[cfg(test)]
const H2_WITHIN: f64 = 1e-6;

fn reference() -> Value {
    serde_json::from_str(include_str!("../../tests/reference/bsm2_reference.json")).expect("a JSON file")
}

/// The plant after its long run, from a tank of the influent's own strength with some of each group in it.
fn settled() -> Tank {
    let file = reference();
    let influent = LIQUID_NAMES.map(|name| file["influent"]["values"][name].as_f64().expect("a published value"));
    let mut start = influent;
    start[X_SU..=X_H2].fill(0.8);
    // Influent as it is, without alkalinity of its own, would sour: the plant has two steady states.
    (start[S_IC], start[S_IN], start[X_PR]) = (0.15, 0.13, 5.0);
    let scenario = Scenario::bsm2(&start, &[1e-5, 1.6, 0.014], &influent, DAYS);
    let mut story = Story::begin(&scenario, Accuracy::of(1e-8)).expect("a sound start");
    while story.next_day().expect("the plant runs").is_some() {}
    let (cod, nitrogen) = story.astray();
    assert!(cod < 1e-8 && nitrogen < 1e-8, "COD {cod:e}, nitrogen {nitrogen:e} went astray");
    story.tank().clone()
}

/// Every published value with ours, in the order of the file.
fn values() -> Vec<(String, f64, f64, String)> {
    let tank = settled();
    let (liquid, gas) = (tank.liquid(), tank.gas());
    let (p, h) = (Physics::at(CELSIUS), tank.h_ion_kmol_per_m3());
    let (ion, pressures) = (|k: f64, total: f64| total * k / (k + h), tank.pressures(CELSIUS));
    let (bicarbonate, ammonia) = (ion(p.k_a_co2, liquid[S_IC]), ion(p.k_a_in, liquid[S_IN]));
    let over = pressures.total_bar() - Vessel::BSM2.p_atm_bar;
    let ours = |name: &str| match name {
        "S_va_ion" => ion(p.k_a_va, liquid[S_VA]),
        "S_bu_ion" => ion(p.k_a_bu, liquid[S_BU]),
        "S_pro_ion" => ion(p.k_a_pro, liquid[S_PRO]),
        "S_ac_ion" => ion(p.k_a_ac, liquid[S_AC]),
        "S_hco3" => bicarbonate,
        "S_co2" => liquid[S_IC] - bicarbonate,
        "S_nh3" => ammonia,
        "S_nh4" => liquid[S_IN] - ammonia,
        "pH" => tank.ph(),
        // Normalised to the air's pressure, as published; the mass balance has the same without P/P_atm.
        "q_gas" => Vessel::BSM2.k_p_m3_per_d_bar * over * pressures.total_bar() / Vessel::BSM2.p_atm_bar,
        "p_ch4" => pressures.ch4_bar,
        "p_co2" => pressures.co2_bar,
        name => {
            let of = |names: &[&str], values: &[f64]| names.iter().position(|n| *n == name).map(|at| values[at]);
            of(&LIQUID_NAMES, liquid).or_else(|| of(&GAS_NAMES, gas)).unwrap_or_else(|| panic!("no value {name}"))
        }
    };
    let file = reference();
    let published = file["steady_state"].as_object().expect("a table");
    published
        .iter()
        .map(|(name, row)| {
            let source = row["sources"][0].as_str().unwrap_or_default().to_owned();
            (name.clone(), row["published"].as_f64().expect("a number"), ours(name), source)
        })
        .collect()
}

fn table() -> String {
    let mut text = String::from(HEAD);
    for (name, published, ours, source) in values() {
        let away = (ours - published).abs() / published;
        let _ = writeln!(text, "| `{name}` | {published} | {ours:.10e} | {} | {source} |", power(away));
    }
    text
}

/// The deviation to its power of ten: its digits differ from machine to machine's library of none, but say nothing.
fn power(away: f64) -> String {
    if away < 1e-12 { "< 1e-12".into() } else { format!("< 1e{:.0}", libm::log10(away).ceil()) }
}

const HEAD: &str = "# The benchmark's steady state, published and ours

Made by `cargo run -p bellyful-core --example bsm2_table`. BSM2's digester (3,400 m³, 170 m³/d, 35 °C) after 500 days
from a start of its own, by our solver at a relative tolerance of 1e-8. Published: Rosen and Jeppsson, Aspects on ADM1
Implementation within the BSM2 Framework (Lund University, 2006/2008), as found in the place each row names.

| value | published | ours | deviation | found in |
| --- | --- | --- | --- | --- |
";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn all_41_published_values_are_met() {
        let values = values();
        assert_eq!(values.len(), 41);
        for (name, published, ours, _) in values {
            let away = (ours - published).abs();
            let allowed = if name == "S_h2" { H2_WITHIN } else { WITHIN * published.abs() };
            assert!(away <= allowed, "{name}: {ours} instead of {published}");
        }
    }

    #[test]
    fn the_printed_table_is_that_of_the_code() {
        assert_eq!(include_str!("../docs/bsm2.md"), table(), "print it anew as its head says");
    }
}
