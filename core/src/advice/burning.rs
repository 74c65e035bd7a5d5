//! Rules on the gas: the first of a new tank, gas that is made and not found, gas that nobody uses.
//!
//! Takes the outlook; gives findings, none of which bounds the ration.

use super::outlook::Outlook;
use super::rules::Finding;
use super::{Reason, Trouble, Verdict, days_told};
use crate::fact::{FlameLook, GasLevel};
use crate::ledger::{DAYS_KEPT, DayAccount};

/// Days old until which a tank that never burned is one whose first gas is yet to come. Source: our choice.
const FIRST_GAS_UNTIL_D: i32 = 45;
/// Minutes of gas believed made in a day from which there is some to let out. Source: our choice.
const SOME_GAS_MIN: f64 = 10.0;
/// Gas made over gas burned, days of a week with little gas, and days with the burning told, that together speak of a
/// leak. Source: our choice.
const LEAKS_OVER: f64 = 2.0;
const LEAKS_LITTLE_D: usize = 3;
const LEAKS_BURNED_D: usize = 4;
/// Belief in a sour tank up to which little gas is not its doing. Source: our choice.
const NOT_SOUR: f64 = 0.15;
/// Days in three with a full store from which gas goes to waste. Source: our choice.
const WASTED_D: usize = 2;

/// A new tank of which no flame is known: its first bagful holds air and must not be lit.
pub fn first_gas(o: &Outlook) -> Option<Finding> {
    o.age_d.filter(|age| *age <= FIRST_GAS_UNTIL_D)?;
    let burned = |day: &DayAccount| {
        day.burned.is_some_and(|minutes| minutes.get() > 0.0)
            || matches!(day.flame, Some(FlameLook::Blue | FlameLook::Yellow | FlameLook::Weak))
    };
    let told_some = matches!(
        o.twin.ledger.on(o.today).and_then(|day| day.gas),
        Some(GasLevel::Half | GasLevel::Good | GasLevel::Full)
    );
    let some = told_some || o.twin.ensemble.as_ref().is_some_and(|ensemble| ensemble.made_minutes() > SOME_GAS_MIN);
    (some && o.last(DAYS_KEPT, burned).is_none()).then(|| Finding::new(Reason::FirstGas, Verdict::Feed))
}

/// More gas made than was burned, and the store found low all the same, in a tank that does well.
pub fn leak(o: &Outlook) -> Option<Finding> {
    let ensemble = o.twin.ensemble.as_ref()?;
    let burned = o.burned_lately();
    let little = days_told(o.twin, o.today, Trouble::LittleGas);
    let mean = burned.iter().sum::<f64>() / burned.len().max(1) as f64;
    (little >= LEAKS_LITTLE_D
        && burned.len() >= LEAKS_BURNED_D
        && ensemble.made_minutes() > LEAKS_OVER * mean
        && ensemble.sourness() < NOT_SOUR)
        .then(|| Finding::new(Reason::LeakSuspected, Verdict::Check))
}

/// The store stands full: more feed would only blow off.
pub fn gas_unused(o: &Outlook) -> Option<Finding> {
    let full = o.twin.ledger.window(o.today, 3).filter(|day| day.gas == Some(GasLevel::Full)).count();
    (full >= WASTED_D).then(|| Finding::new(Reason::GasUnused, Verdict::Feed))
}

#[cfg(test)]
mod tests {
    use super::super::told::{TODAY, fed, followed, twin};
    use super::super::{Reason, advise};
    use crate::fact::{FlameLook, GasLevel, Unit, What};
    use crate::feeds::Feed;

    fn named(told: &[(i32, What)], reason: Reason) -> bool {
        advise(&twin(told), TODAY).reasons.contains(&reason)
    }

    #[test]
    fn gas_of_a_new_tank_is_let_out_until_a_flame_was_seen() {
        let new = |more: &[(i32, What)]| [&[(80, What::Started), (100, fed(Feed::FoodWaste, 1.0))], more].concat();
        let good = (100, What::Gas { level: GasLevel::Good });
        let first = |told: &[(i32, What)]| {
            let mut twin = twin(told);
            twin.site.started = Some(crate::units::Day(80));
            advise(&twin, TODAY).reasons.contains(&Reason::FirstGas)
        };
        assert!(first(&new(std::slice::from_ref(&good))));
        assert!(!first(&new(&[])));
        assert!(!first(&new(&[good.clone(), (95, What::Flame { look: FlameLook::Blue })])));
        assert!(!first(&new(&[good.clone(), (95, What::Burned { minutes: 20.0 })])));
        assert!(first(&new(&[good.clone(), (95, What::Flame { look: FlameLook::WillNotLight })])));
        assert!(!named(&new(&[good]), Reason::FirstGas), "its age is not known");
    }

    #[test]
    fn a_full_bag_day_after_day_is_to_be_used() {
        let full = |day| (day, What::Gas { level: GasLevel::Full });
        assert!(named(&[full(99), full(100)], Reason::GasUnused));
        assert!(!named(&[full(100)], Reason::GasUnused));
    }

    #[test]
    fn gas_that_is_made_and_neither_burned_nor_found_leaks() {
        let dung = What::Seeded { feed: Feed::CattleManure, amount: Some(200.0), unit: Some(Unit::Kg) };
        let days = |burned: f64, level: GasLevel| {
            let well =
                (60..95).flat_map(|day| [(day, fed(Feed::FoodWaste, 2.0)), (day, What::Burned { minutes: 60.0 })]);
            let then = (95..=100).flat_map(move |day| {
                [(day, fed(Feed::FoodWaste, 2.0)), (day, What::Burned { minutes: burned }), (day, What::Gas { level })]
            });
            [(40, dung.clone())].into_iter().chain(well).chain(then).collect::<Vec<_>>()
        };
        let suspects = |told: &[(i32, What)]| advise(&followed(told), TODAY).reasons.contains(&Reason::LeakSuspected);
        assert!(!suspects(&days(60.0, GasLevel::Good)));
        assert!(suspects(&days(5.0, GasLevel::Low)));
    }
}
