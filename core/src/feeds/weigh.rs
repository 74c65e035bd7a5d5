//! What an amount weighs, as told: kilograms, litres, measures or pieces.
//!
//! Takes a feed, a number and a unit, and whose measures they are; gives wet mass (or litres of water) and the doubt
//! in it. Never asks: who calls decides whether the doubt is too wide to act on.

use super::measures::{Measures, spread_between};
use super::{Feed, Kind, make_up};
use crate::fact::{Measure, Unit};
use crate::units::{Litres, OutOfBounds, WetKg};

/// Wet mass; `spread` is the standard deviation of its natural logarithm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weighed {
    pub wet: WetKg,
    pub spread: f64,
}

/// Water, alike.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Poured {
    pub litres: Litres,
    pub spread: f64,
}

/// Kilograms are read off a scale by some and guessed by most. Source: our choice.
const KG_SPREAD: f64 = 0.08;
/// A litre of something that lies loose, filled by eye. Source: our choice.
const FILL_SPREAD: f64 = 0.10;

/// What `amount` `unit`s of `feed` weigh. Loose feeds count as chopped; a piece of a feed that has no pieces listed is
/// a lump of the unlisted piece's size.
///
/// Errors: [`OutOfBounds`] for a negative, endless or absurd amount.
pub fn weigh(feed: Feed, amount: f64, unit: Unit, measures: &Measures) -> Result<Weighed, OutOfBounds> {
    let made = make_up(feed);
    let (each, spread) = match unit {
        Unit::Kg => (1.0, KG_SPREAD),
        Unit::L => (made.density.chopped, both(loose(feed), FILL_SPREAD)),
        Unit::Of(Measure::Piece) if made.piece.is_some() => {
            let piece = made.piece.expect("asked in the guard of this arm");
            (piece.mass.get(), spread_between(piece.low.get(), piece.high.get()))
        }
        Unit::Of(measure) => {
            let size = measures.size(measure);
            (size.litres.get() * made.density.chopped, both(both(size.spread, loose(feed)), FILL_SPREAD))
        }
    };
    Ok(Weighed { wet: WetKg::new(amount * each)?, spread })
}

/// How much water `amount` `unit`s are.
///
/// Errors: [`OutOfBounds`] for a negative, endless or absurd amount.
pub fn pour(amount: f64, unit: Unit, measures: &Measures) -> Result<Poured, OutOfBounds> {
    let (each, spread) = match unit {
        Unit::Kg | Unit::L => (1.0, KG_SPREAD),
        Unit::Of(measure) => {
            let size = measures.size(measure);
            (size.litres.get(), both(size.spread, FILL_SPREAD / 2.0))
        }
    };
    Ok(Poured { litres: Litres::new(amount * each)?, spread })
}

/// Whole, chopped or mashed was not said: a third of the way between is the doubt. Liquids have none.
fn loose(feed: Feed) -> f64 {
    let made = make_up(feed);
    let (least, most) = (made.density.whole.min(made.density.chopped), made.density.mashed.max(made.density.chopped));
    if made.is(Kind::Dung) { spread_between(least, most).min(0.15) } else { spread_between(least, most).min(0.35) }
}

/// Independent doubts together.
fn both(a: f64, b: f64) -> f64 {
    libm::sqrt(a * a + b * b)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeMap;

    fn check(feed: Feed, amount: f64, unit: &str, country: Option<&str>, low: f64, high: f64) {
        let unit = Unit::from_id(unit).unwrap();
        let weighed = weigh(feed, amount, unit, &Measures { country, told: None }).unwrap();
        assert!((low..=high).contains(&weighed.wet.get()), "{amount} {} of {feed}: {weighed:?}", unit.id());
        assert!((0.0..1.3).contains(&weighed.spread), "{feed}: {weighed:?}");
    }

    /// Ranges: field sizes of common practice, no source, but USDA SR28 portions for cups, eggs and bananas.
    #[test]
    fn amounts_weigh_what_people_carry() {
        check(Feed::CookedRice, 2.0, "kg", None, 2.0, 2.0);
        check(Feed::CookedRice, 1.0, "cup", Some("US"), 0.14, 0.18);
        check(Feed::Egg, 6.0, "piece", None, 0.25, 0.33);
        check(Feed::Banana, 4.0, "piece", None, 0.45, 0.8);
        check(Feed::CattleManure, 1.0, "basin", Some("KE"), 14.0, 21.0);
        check(Feed::CattleManure, 1.0, "wheelbarrow", Some("KE"), 45.0, 90.0);
        check(Feed::CattleManure, 1.0, "basket", Some("NP"), 20.0, 45.0);
        check(Feed::CattleManure, 1.0, "sack", Some("TZ"), 30.0, 80.0);
        check(Feed::FoodWaste, 1.0, "bucket", Some("DO"), 9.0, 15.0);
        check(Feed::FoodWaste, 1.0, "plate", None, 0.2, 0.4);
        check(Feed::Leaves, 1.0, "handful", None, 0.01, 0.03);
        check(Feed::Milk, 0.25, "l", None, 0.255, 0.26);
        check(Feed::CookingOil, 1.0, "spoon", None, 0.012, 0.016);
        check(Feed::VegetableWaste, 3.0, "piece", None, 0.1, 1.0);
    }

    #[test]
    fn a_told_bucket_weighs_by_its_own_size() {
        let told = BTreeMap::from([(Measure::Bucket, 10.0)]);
        let measures = Measures { country: Some("DO"), told: Some(&told) };
        let half = weigh(Feed::CattleManure, 0.5, Unit::Of(Measure::Bucket), &measures).unwrap();
        assert_eq!(half.wet.get(), 0.5 * 10.0 * 0.9);
        assert_eq!(pour(2.0, Unit::Of(Measure::Bucket), &measures).unwrap().litres.get(), 20.0);
    }

    #[test]
    fn no_amount_from_outside_panics() {
        for amount in [-1.0, f64::NAN, f64::INFINITY, 1e300] {
            for &feed in Feed::ALL {
                for unit in [Unit::Kg, Unit::L].into_iter().chain(Measure::ALL.iter().map(|&of| Unit::Of(of))) {
                    assert!(weigh(feed, amount, unit, &Measures::default()).is_err(), "{amount} {feed}");
                    assert!(pour(amount, unit, &Measures::default()).is_err());
                }
            }
        }
    }
}
