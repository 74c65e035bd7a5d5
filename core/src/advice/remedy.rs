//! What helps a sour tank beyond rest: slurry of one that works, where the ensemble sees it heal by that and not by rest.
//!
//! Takes the twin; gives how much to swap. Fresh dung is no such help: in the model its own acids come before its few
//! helpers. Soda and lime are never advised: those are a field worker's to decide.

use super::outlook::Outlook;
use crate::feeds::Feed;
use crate::twin::{Ration, Twin};
use crate::units::{Day, Litres, WetKg};

/// A swap of slurry for that of a tank that works.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Remedy {
    pub slurry_kg: f64,
    /// Chance that it is still sour in three weeks, with rest alone and with this.
    pub sour_by_rest: f64,
    pub sour_by_slurry: f64,
}

/// Swaps looked at, as shares of the slurry. Source: our choice.
const SWAPS: [f64; 3] = [0.1, 0.25, 0.5];
/// Less than this gained is not worth carrying slurry for; a larger swap must gain as much again. Source: our choice.
const WORTH: f64 = 0.1;

/// A swap, once rest has had its days and promises less.
pub fn remedy(twin: &Twin, today: Day) -> Option<Remedy> {
    let o = Outlook::of(twin, today);
    let rested = o.limits.hold_sour_least_d as i32;
    let first_told = o.twin.ledger.window(today, 14).find(|day| o.is_sour(day)).map(|day| today.since(day.day));
    first_told.filter(|ago| *ago >= rested)?;
    let nothing = Ration::default();
    let sour_after = |first: &Ration| Some(twin.forecast(first, &nothing, f64::INFINITY)?.sour_at_the_end);
    let sour_by_rest = sour_after(&nothing)?;
    let mut best: Option<Remedy> = None;
    for share in SWAPS {
        let slurry_kg = share * o.liquid.get();
        let swap = Ration { feeds: vec![(Feed::Digestate, WetKg::of(slurry_kg))], water: Litres::ZERO };
        let tried = Remedy { slurry_kg, sour_by_rest, sour_by_slurry: sour_after(&swap)? };
        if best.map_or(sour_by_rest, |best| best.sour_by_slurry) - tried.sour_by_slurry >= WORTH {
            best = Some(tried);
        }
    }
    best
}

#[cfg(test)]
mod tests {
    use super::super::told::{TODAY, fed, followed};
    use super::*;
    use crate::fact::{Sign, Unit, What};

    /// Rice too much for its seed, then sour; `rested` days ago it was first told.
    fn sour(rice_kg: f64, seed_kg: f64, rested: i32) -> Option<Remedy> {
        let first = TODAY.0 - rested;
        let seed = What::Seeded { feed: Feed::CattleManure, amount: Some(seed_kg), unit: Some(Unit::Kg) };
        let mut told = vec![(50, seed), (first, What::Ph { value: 6.3 })];
        told.extend((70..first).map(|day| (day, fed(Feed::CookedRice, rice_kg))));
        told.extend((first..=TODAY.0).map(|day| (day, What::Sign { sign: Sign::SourSmell })));
        told.extend((first + 1..=TODAY.0).map(|day| (day, What::NotFed { days: 1 })));
        remedy(&followed(&told), TODAY)
    }

    #[test]
    fn slurry_is_swapped_where_rest_does_not_heal() {
        let found = sour(2.0, 100.0, 6).expect("the seed is too weak to heal");
        assert!(found.sour_by_slurry <= found.sour_by_rest - WORTH && found.slurry_kg <= 400.0, "{found:?}");
        assert_eq!(sour(2.0, 100.0, 1), None, "rest comes first");
        assert_eq!(sour(4.0, 200.0, 6), None, "a strong one heals by rest");
    }
}
