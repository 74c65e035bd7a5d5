//! How much a household measure holds: a bucket, a basin, a cup.
//!
//! Takes a measure, the country and what the household told; gives litres with the doubt left in them. Never hides a
//! doubt: an untold bucket is 15 l give or take a third, and the ensemble carries that.

use super::table::{Sure, TableError, rows};
use crate::fact::Measure;
use crate::units::Litres;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::LazyLock;

/// What a measure holds. `spread` is the standard deviation of the natural logarithm of the litres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Size {
    pub litres: Litres,
    pub spread: f64,
    /// Whether the household said it themselves.
    pub told: bool,
}

/// What sizes are to be looked up with: the household's own, else their country's custom.
#[derive(Debug, Clone, Copy, Default)]
pub struct Measures<'a> {
    /// ISO 3166-1 alpha-2, capitals.
    pub country: Option<&'a str>,
    /// Litres, as the household said ([`crate::site::Site::measures_l`]).
    pub told: Option<&'a BTreeMap<Measure, f64>>,
}

impl Measures<'_> {
    pub fn size(&self, measure: Measure) -> Size {
        size(measure, self.country, self.told.and_then(|told| told.get(&measure)).map(|&litres| Litres::of(litres)))
    }
}

/// A told size is still filled by eye: a tenth either way. Source: our choice.
const TOLD_SPREAD: f64 = 0.10;

/// One in ten is smaller than the table's low, one in ten larger than its high: 2.563 standard deviations apart.
/// Source: the normal distribution's quantiles at 0.1 and 0.9.
pub(super) fn spread_between(low: f64, high: f64) -> f64 {
    libm::log(high / low) / 2.563
}

/// Litres of `measure`: as told, else by the country's custom, else by the world's.
pub fn size(measure: Measure, country: Option<&str>, told: Option<Litres>) -> Size {
    if let Some(litres) = told.filter(|litres| litres.get() > 0.0) {
        return Size { litres, spread: TOLD_SPREAD, told: true };
    }
    static ALL: LazyLock<Vec<Row>> = LazyLock::new(|| {
        read(include_str!("measures.csv")).expect("the test `every_measure_has_a_size_anywhere` reads the same text")
    });
    let row = |country: &str| ALL.iter().find(|row| row.measure == measure && row.country == country);
    let row = country.and_then(row).or_else(|| row("")).expect("`read` refuses a table without a row for anywhere");
    Size { litres: Litres::of(row.litres), spread: spread_between(row.low_l, row.high_l), told: false }
}

#[derive(Debug, Deserialize)]
struct Row {
    measure: Measure,
    /// Empty: anywhere else.
    country: String,
    litres: f64,
    low_l: f64,
    high_l: f64,
    #[allow(dead_code, reason = "read so that a row without it is refused")]
    sure: Sure,
    #[allow(dead_code, reason = "read so that a row without it is refused")]
    source: String,
}

fn read(text: &str) -> Result<Vec<Row>, TableError> {
    const TABLE: &str = "measures.csv";
    let all: Vec<Row> = rows(TABLE, text)?;
    for row in &all {
        let (name, value) = (format!("{} {}", row.measure, row.country), row.litres);
        if !(row.low_l > 0.0 && (row.low_l..=row.high_l).contains(&value)) {
            let (least, most) = (row.low_l, row.high_l);
            return Err(TableError::Value { table: TABLE, row: name, quantity: "size", value, least, most });
        }
        if all.iter().filter(|other| (other.measure, &other.country) == (row.measure, &row.country)).count() > 1 {
            return Err(TableError::Twice { table: TABLE, row: name });
        }
    }
    match Measure::ALL.iter().find(|&&measure| !all.iter().any(|row| row.measure == measure && row.country.is_empty()))
    {
        None => Ok(all),
        Some(measure) => Err(TableError::Missing { table: TABLE, row: measure.to_string() }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_measure_has_a_size_anywhere() {
        read(include_str!("measures.csv")).unwrap();
        for &measure in Measure::ALL {
            let size = size(measure, Some("XX"), None);
            assert!(size.litres > Litres::ZERO && (0.0..1.5).contains(&size.spread), "{measure}: {size:?}");
        }
        assert!(matches!(read("measure,country,litres,low_l,high_l,sure,source\n"), Err(TableError::Missing { .. })));
    }

    #[test]
    fn the_households_word_goes_before_the_countrys_custom_before_the_worlds() {
        let check = |country, told: Option<f64>, litres: f64| {
            assert_eq!(
                size(Measure::Bucket, country, told.map(Litres::of)).litres.get(),
                litres,
                "{country:?} {told:?}"
            );
        };
        check(None, None, 15.0);
        check(Some("DO"), None, 18.93);
        check(Some("DO"), Some(12.0), 12.0);
        check(Some("DO"), Some(0.0), 18.93);
    }

    #[test]
    fn a_told_size_carries_less_doubt_than_a_guessed_one() {
        let guessed = size(Measure::Bucket, Some("KE"), None);
        let told = size(Measure::Bucket, Some("KE"), Some(Litres::of(20.0)));
        assert!(told.spread < 0.5 * guessed.spread && told.told && !guessed.told);
    }
}
