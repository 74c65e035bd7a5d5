//! When what the family finds belies every guess: the ensemble begins anew as a tank that works.
//!
//! Weighing helps only while some guess is near the truth. A model that is sure of a souring which never was would have
//! them rest a sound tank for ever: guesses that soured stay sour unfed.

use super::ensemble::Ensemble;
use crate::fact::{FlameLook, GasLevel, Sign};
use crate::ledger::{DayAccount, Ledger};
use crate::units::Day;

/// Belief in a sour tank from which on it can be belied.
const SURE_OF_SOUR: f64 = 0.8;
/// A pH measured of a tank that works. Source: handbooks' 6.8 to 7.5, a strip's step lower.
const PH_SOUND: f64 = 6.6;
/// Days of good gas that speak as loud as a pH, and of how many: what is left in store burns off in less.
/// Source: our choice.
const SOUND_DAYS: usize = 4;
const OF_DAYS: i32 = 7;

/// Whether the ensemble is sure of a souring and what was told up to `day` cannot be of a sour tank.
pub(super) fn is_belied(ensemble: &Ensemble, ledger: &Ledger, day: Day) -> bool {
    ensemble.sourness() > SURE_OF_SOUR && is_sound(ledger, day)
}

fn is_sound(ledger: &Ledger, day: Day) -> bool {
    let sour = |account: &DayAccount| account.signs.contains(&Sign::SourSmell);
    if ledger.window(day, OF_DAYS / 2).any(sour) {
        return false;
    }
    let measured = ledger.on(day).and_then(|account| account.ph).is_some_and(|ph| ph >= PH_SOUND);
    let good_gas = |account: &&DayAccount| {
        account.flame == Some(FlameLook::Blue) || matches!(account.gas, Some(GasLevel::Good | GasLevel::Full))
    };
    measured || ledger.window(day, OF_DAYS).filter(good_gas).count() >= SOUND_DAYS
}

#[cfg(test)]
mod tests {
    use crate::fact::{Fact, FlameLook, Sign, Unit, What};
    use crate::feeds::Feed;
    use crate::twin::Twin;
    use crate::units::Day;

    /// A weak seed fed far too much for two weeks, then rested; what they find after is `found`, from day 22 on.
    fn after(found: &[What]) -> f64 {
        let at = |day: i32, what: What| Fact { id: 0, day: Day(day), told_at: 0, what };
        let seed = What::Seeded { feed: Feed::CattleManure, amount: Some(60.0), unit: Some(Unit::Kg) };
        let rice = What::Fed { feed: Feed::CookedRice, amount: Some(6.0), unit: Some(Unit::Kg) };
        let mut facts = vec![at(0, seed)];
        facts.extend((1..15).map(|day| at(day, rice.clone())));
        facts.extend((15..30).map(|day| at(day, What::NotFed { days: 1 })));
        facts.extend((22..).zip(found).map(|(day, what)| at(day, what.clone())));
        let ph = |today| Twin::new(3, Day(0)).settle(&facts, Day(today)).ensemble.expect("followed").ph();
        assert!(ph(22) < 5.5, "sure of a sour tank before: {}", ph(22));
        ph(30)
    }

    #[test]
    fn a_sound_ph_or_days_of_blue_flame_are_believed_over_every_guess() {
        assert!(after(&[]) < 5.5);
        assert!(after(&[What::Ph { value: 7.0 }]) > 6.6);
        let blue = || What::Flame { look: FlameLook::Blue };
        assert!(after(&[blue()]) < 5.5, "one good flame may be of what was left");
        assert!(after(&[blue(), blue(), blue(), blue()]) > 6.6);
        assert!(after(&[What::Sign { sign: Sign::SourSmell }, What::Ph { value: 7.0 }]) < 5.5);
    }
}
