//! The limits that digesters are run by, each with its source and how sure it is.
//!
//! Takes `limits.csv`; gives one [`Limits`] of named numbers ([`limits`]) and, for those who must explain a number,
//! its [`Entry`] ([`source`]). Never decides: advice weighs them, and a field worker may move some.

use crate::feeds::{Sure, TableError};
use serde::Deserialize;
use std::sync::LazyLock;

macro_rules! limits {
    ($($(#[$meta:meta])* $name:ident),+ $(,)?) => {
        /// Published and customary limits. Units stand last in each name; shares are of 1.
        #[derive(Debug, Clone, Copy, PartialEq)]
        pub struct Limits { $($(#[$meta])* pub $name: f64),+ }

        const NAMES: &[&str] = &[$(stringify!($name)),+];

        fn limits_of(entries: &[Entry]) -> Result<Limits, TableError> {
            Ok(Limits { $($name: one(entries, stringify!($name))?),+ })
        }
    };
}

limits! {
    // Loading
    /// Cap on loading of a tank without a stirrer, until the twin knows it well.
    olr_unstirred_kg_vs_per_m3_d,
    /// Cap once the twin has followed the tank for `followed_before_sure_d` and is sure.
    olr_sure_kg_vs_per_m3_d,
    followed_before_sure_d,
    /// Food alone, no dung in the feed.
    olr_food_alone_kg_vs_per_m3_d,
    olr_unheated_manure_kg_vs_per_m3_d,
    /// Safe to begin with on any seed that works.
    olr_first_kg_vs_per_m3_d,
    // Thickness and water
    feed_ts_most,
    slurry_ts_best_low,
    slurry_ts_best_high,
    slurry_ts_thick,
    slurry_ts_thin,
    water_per_kg_dung_l,
    water_per_kg_food_least_l,
    water_per_kg_food_most_l,
    water_per_kg_scarce_l,
    hrt_least_warm_d,
    hrt_least_temperate_d,
    hrt_toilet_d,
    // Chemistry
    ph_best_low,
    ph_best_high,
    ph_watch,
    ph_souring,
    ph_restart,
    ph_ammonia,
    vfa_watch_g_per_l,
    vfa_stop_g_per_l,
    fos_tac_underfed,
    fos_tac_ideal,
    fos_tac_watch,
    fos_tac_cut,
    fos_tac_stop,
    tan_watch_g_per_l,
    tan_stop_g_per_l,
    free_ammonia_stop_mg_per_l,
    salt_best_g_per_l,
    salt_most_g_per_l,
    lcfa_watch_g_per_l,
    c_to_n_low,
    c_to_n_high,
    // What goes in
    grease_share_of_vs,
    citrus_oil_mg_per_l_d,
    citrus_oil_share_of_peel,
    /// Dung in the wet feed that keeps trace elements up in an all-food diet.
    dung_share_least,
    coffee_share_of_vs,
    protein_share_of_vs,
    // Warmth
    temperature_stops_c,
    temperature_least_c,
    temperature_fair_c,
    temperature_wanted_c,
    temperature_most_c,
    warming_below_30_c_per_h,
    warming_above_30_c_per_h,
    // Start-up and mending
    seed_share_least,
    seed_share_good,
    ramp_start_share,
    ramp_step_share,
    ramp_step_d,
    flame_before_food_d,
    first_gas_let_out_d,
    methane_burns_share,
    hold_sour_least_d,
    hold_sour_most_d,
    restart_share,
    hold_foam_d,
    doses_per_day,
    // Gas and vessel
    level_drop_leak_share_per_d,
    store_share_of_daily_gas,
    pressure_least_cm_water,
    pressure_stove_cm_water,
}

/// One row of the table.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct Entry {
    pub limit: String,
    pub value: f64,
    pub unit: String,
    pub sure: Sure,
    pub source: String,
}

/// All limits.
pub fn limits() -> &'static Limits {
    &table().1
}

/// Where a limit comes from; `None` when there is none of that name.
pub fn source(limit: &str) -> Option<&'static Entry> {
    table().0.iter().find(|entry| entry.limit == limit)
}

fn table() -> &'static (Vec<Entry>, Limits) {
    static TABLE: LazyLock<(Vec<Entry>, Limits)> = LazyLock::new(|| {
        read(include_str!("limits.csv")).expect("the test `every_limit_has_one_row` reads the same text")
    });
    &TABLE
}

fn read(text: &str) -> Result<(Vec<Entry>, Limits), TableError> {
    let entries: Vec<Entry> = crate::feeds::rows("limits.csv", text)?;
    let limits = limits_of(&entries)?;
    match entries.iter().find(|entry| !NAMES.contains(&entry.limit.as_str())) {
        None => Ok((entries, limits)),
        Some(entry) => Err(TableError::Unused { table: "limits.csv", row: entry.limit.clone() }),
    }
}

fn one(entries: &[Entry], name: &str) -> Result<f64, TableError> {
    let mut found = entries.iter().filter(|entry| entry.limit == name);
    match (found.next(), found.next()) {
        (None, _) => Err(TableError::Missing { table: "limits.csv", row: name.into() }),
        (Some(entry), None) => Ok(entry.value),
        (Some(_), Some(_)) => Err(TableError::Twice { table: "limits.csv", row: name.into() }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_limit_has_one_row() {
        let (entries, _) = read(include_str!("limits.csv")).unwrap();
        assert_eq!(entries.len(), NAMES.len());
        assert!(entries.iter().all(|entry| !entry.source.is_empty() && entry.value.is_finite()));
        assert_eq!(source("olr_unstirred_kg_vs_per_m3_d").unwrap().value, limits().olr_unstirred_kg_vs_per_m3_d);
        assert_eq!(source("of_no_name"), None);
    }

    #[test]
    fn a_row_that_nothing_reads_is_refused() {
        let more = format!("{}of_no_name,1,,read,x\n", include_str!("limits.csv"));
        assert!(matches!(read(&more), Err(TableError::Unused { .. })));
    }

    #[test]
    fn limits_that_bound_the_same_thing_are_in_order() {
        let l = limits();
        let rising = |limits: &[f64]| assert!(limits.is_sorted(), "{limits:?}");
        rising(&[l.olr_unheated_manure_kg_vs_per_m3_d, l.olr_unstirred_kg_vs_per_m3_d, l.olr_sure_kg_vs_per_m3_d]);
        rising(&[l.ph_restart, l.ph_watch, l.ph_souring, l.ph_best_high, l.ph_ammonia]);
        rising(&[l.fos_tac_underfed, l.fos_tac_ideal, l.fos_tac_watch, l.fos_tac_cut, l.fos_tac_stop]);
        rising(&[l.temperature_stops_c, l.temperature_least_c, l.temperature_fair_c, l.temperature_wanted_c]);
        rising(&[l.slurry_ts_thin, l.slurry_ts_best_low, l.slurry_ts_best_high, l.slurry_ts_thick, l.feed_ts_most]);
        rising(&[l.hrt_least_warm_d, l.hrt_least_temperate_d, l.hrt_toilet_d]);
    }
}
