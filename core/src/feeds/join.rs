//! The tables of what feeds are made of, how they digest and how they lie, read and joined.
//!
//! Takes the text of `composition.csv`, `digestion.csv` and `handling.csv`; gives a [`MakeUp`] a feed, or what is wrong
//! with a row.

use super::Feed;
use super::make_up::{Densities, Kind, MakeUp, MethaneRead, Piece, Sourced};
use super::table::{Sure, TableError, rows};
use crate::units::WetKg;
use serde::Deserialize;

#[derive(Deserialize)]
struct Composition {
    feed: Feed,
    protein_pct: f64,
    fat_pct: f64,
    sugars_pct: f64,
    starch_pct: f64,
    fibre_pct: f64,
    ash_pct: f64,
    ammonia_n_g_per_kg: f64,
    strong_cations_meq_per_kg: f64,
    bicarbonate_meq_per_kg: f64,
    salt_g_per_kg: f64,
    sure: Sure,
    source: String,
}

#[derive(Deserialize)]
struct Digestion {
    feed: Feed,
    kinds: String,
    biodegradable_share: f64,
    hydrolysis_35c_per_d: f64,
    sure: Sure,
    source: String,
    methane_low_m3_per_kg_vs: Option<f64>,
    methane_high_m3_per_kg_vs: Option<f64>,
    methane_sure: Option<Sure>,
    methane_source: String,
}

#[derive(Deserialize)]
struct Handling {
    feed: Feed,
    whole_kg_per_l: f64,
    chopped_kg_per_l: f64,
    mashed_kg_per_l: f64,
    density_sure: Sure,
    density_source: String,
    piece_kg: Option<f64>,
    piece_low_kg: Option<f64>,
    piece_high_kg: Option<f64>,
    piece_sure: Option<Sure>,
    piece_source: String,
}

/// The three tables joined, one [`MakeUp`] per feed in the order of [`Feed::ALL`].
///
/// Errors: a row that does not read, a feed that is missing or doubled, a value outside what it can be.
pub(super) fn joined(composition: &str, digestion: &str, handling: &str) -> Result<Vec<MakeUp>, TableError> {
    let composition: Vec<Composition> = rows("composition.csv", composition)?;
    let digestion: Vec<Digestion> = rows("digestion.csv", digestion)?;
    let handling: Vec<Handling> = rows("handling.csv", handling)?;
    Feed::ALL
        .iter()
        .map(|&feed| {
            join(
                only("composition.csv", feed, &composition, |row| row.feed)?,
                only("digestion.csv", feed, &digestion, |row| row.feed)?,
                only("handling.csv", feed, &handling, |row| row.feed)?,
            )
        })
        .collect()
}

fn only<'a, T>(table: &'static str, feed: Feed, rows: &'a [T], id: fn(&T) -> Feed) -> Result<&'a T, TableError> {
    let mut found = rows.iter().filter(|row| id(row) == feed);
    let row = found.next().ok_or_else(|| TableError::Missing { table, row: feed.to_string() })?;
    match found.next() {
        None => Ok(row),
        Some(_) => Err(TableError::Twice { table, row: feed.to_string() }),
    }
}

fn join(made: &Composition, digests: &Digestion, lies: &Handling) -> Result<MakeUp, TableError> {
    let feed = made.feed;
    let within = |table, quantity, value: f64, least: f64, most: f64| {
        if (least..=most).contains(&value) {
            Ok(value)
        } else {
            Err(TableError::Value { table, row: feed.to_string(), quantity, value, least, most })
        }
    };
    let share = |quantity, percent: f64| Ok(within("composition.csv", quantity, percent, 0.0, 100.0)? / 100.0);
    let density = |value| within("handling.csv", "bulk density", value, 0.01, 2.0);
    let kinds = digests
        .kinds
        .split_whitespace()
        .map(|kind| {
            Kind::from_id(kind).ok_or_else(|| TableError::Row {
                table: "digestion.csv",
                line: 0,
                why: format!("{feed}: `{kind}` is no kind"),
            })
        })
        .collect::<Result<_, _>>()?;
    let piece = match (lies.piece_kg, lies.piece_low_kg, lies.piece_high_kg) {
        (Some(mass), Some(low), Some(high)) => Some(Piece {
            mass: WetKg::of(within("handling.csv", "piece", mass, low, high)?),
            low: WetKg::of(within("handling.csv", "lightest piece", low, 0.0005, mass)?),
            high: WetKg::of(within("handling.csv", "heaviest piece", high, mass, 50.0)?),
        }),
        _ => None,
    };
    let methane_read = match (digests.methane_low_m3_per_kg_vs, digests.methane_high_m3_per_kg_vs, digests.methane_sure)
    {
        (Some(low), Some(high), Some(sure)) => {
            Some(MethaneRead { low, high, sure, source: digests.methane_source.clone() })
        }
        _ => None,
    };
    let made_up = MakeUp {
        feed,
        protein: share("protein", made.protein_pct)?,
        fat: share("fat", made.fat_pct)?,
        sugars: share("sugars", made.sugars_pct)?,
        starch: share("starch", made.starch_pct)?,
        fibre: share("fibre", made.fibre_pct)?,
        ash: share("ash", made.ash_pct)?,
        ammonia_n_g_per_kg: within("composition.csv", "ammonia nitrogen", made.ammonia_n_g_per_kg, 0.0, 50.0)?,
        strong_cations_meq_per_kg: within(
            "composition.csv",
            "strong cations",
            made.strong_cations_meq_per_kg,
            -500.0,
            5000.0,
        )?,
        bicarbonate_mmol_per_kg: within("composition.csv", "bicarbonate", made.bicarbonate_meq_per_kg, 0.0, 2000.0)?,
        salt_g_per_kg: within("composition.csv", "salt", made.salt_g_per_kg, 0.0, 1000.0)?,
        density: Densities {
            whole: density(lies.whole_kg_per_l)?,
            chopped: density(lies.chopped_kg_per_l)?,
            mashed: density(lies.mashed_kg_per_l)?,
        },
        piece,
        biodegradable: within("digestion.csv", "biodegradable share", digests.biodegradable_share, 0.0, 1.0)?,
        hydrolysis_35c_per_d: within("digestion.csv", "hydrolysis", digests.hydrolysis_35c_per_d, 0.001, 10.0)?,
        kinds,
        methane_read,
        composition: Sourced { sure: made.sure, source: made.source.clone() },
        digestion: Sourced { sure: digests.sure, source: digests.source.clone() },
        handling: Sourced { sure: lies.density_sure, source: lies.density_source.clone() },
        pieces: lies.piece_sure.map(|sure| Sourced { sure, source: lies.piece_source.clone() }),
    };
    within("composition.csv", "total solids", made_up.ts(), 0.0, 1.0001)?;
    Ok(made_up)
}

#[cfg(test)]
mod tests {
    use super::*;

    const COMPOSITION: &str = include_str!("composition.csv");
    const DIGESTION: &str = include_str!("digestion.csv");
    const HANDLING: &str = include_str!("handling.csv");

    #[test]
    fn the_tables_read_and_cover_every_feed() {
        let all = joined(COMPOSITION, DIGESTION, HANDLING).unwrap();
        assert_eq!(all.iter().map(|made| made.feed).collect::<Vec<_>>(), Feed::ALL);
        for made in &all {
            assert!(!made.composition.source.is_empty() && !made.digestion.source.is_empty(), "{}", made.feed);
            assert!(!made.handling.source.is_empty(), "{}", made.feed);
            assert_eq!(made.piece.is_some(), made.pieces.is_some(), "{}", made.feed);
        }
    }

    #[test]
    fn a_feed_that_is_missing_doubled_or_impossible_is_named() {
        let without: String =
            COMPOSITION.lines().filter(|line| !line.starts_with("yam,")).map(|l| format!("{l}\n")).collect();
        assert_eq!(
            joined(&without, DIGESTION, HANDLING),
            Err(TableError::Missing { table: "composition.csv", row: "yam".into() })
        );
        let twice = format!("{HANDLING}{}\n", HANDLING.lines().find(|line| line.starts_with("yam,")).unwrap());
        assert_eq!(
            joined(COMPOSITION, DIGESTION, &twice),
            Err(TableError::Twice { table: "handling.csv", row: "yam".into() })
        );
        let soaked = COMPOSITION.replacen("sugar,0,0,99.8,", "sugar,0,0,998,", 1);
        assert!(matches!(joined(&soaked, DIGESTION, HANDLING), Err(TableError::Value { quantity: "sugars", .. })));
    }
}
