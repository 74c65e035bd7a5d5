//! How likely a person is to say what was said, were their digester in a given state.
//!
//! Takes a day's account and what one guess has of that day; gives the logarithm of its likelihood. People see
//! roughly, say little and are sometimes wrong: no single word may decide.

use crate::fact::{FlameLook, GasLevel, Sign};
use crate::ledger::DayAccount;

/// What one guess had in its store over the day.
#[derive(Debug, Clone, Copy, Default)]
pub struct Stored {
    /// Share of the store that is full in the evening.
    pub fill: f64,
    /// What it could burn of what was wished for.
    pub burned_min: f64,
    /// Share of methane in what was made.
    pub methane: f64,
}

/// What one guess has.
#[derive(Debug, Clone, Copy)]
pub struct Seen {
    pub ph: f64,
    pub slurry_c: f64,
    pub stored: Stored,
}

/// Words of one day weigh so much less than if each were sure and apart from the others. Source: our choice.
const TEMPER: f64 = 0.5;
/// A day's words count no more against a guess than this. Source: our choice.
const WORST: f64 = -3.0;

pub fn log_likelihood(account: &DayAccount, seen: &Seen) -> f64 {
    let mut log = 0.0;
    if let Some(level) = account.gas {
        let told = match level {
            GasLevel::None => 0.02,
            GasLevel::Low => 0.2,
            GasLevel::Half => 0.5,
            GasLevel::Good => 0.7,
            GasLevel::Full => 0.95,
        };
        log += bell(seen.stored.fill - told, 0.25);
    }
    if let Some(minutes) = account.burned {
        // Burned as told: a guess that had too little gas for it is wrong. One that had more is not.
        let told = minutes.get();
        log += bell((told - seen.stored.burned_min).max(0.0), 10.0 + 0.3 * told);
    }
    let sour = sourness(seen.ph);
    log += match account.signs.contains(&Sign::SourSmell) {
        true => libm::log(0.03 + 0.6 * sour),
        // Few say what does not smell; of a sour one two in five of those who text would.
        false => libm::log(1.0 - 0.4 * sour),
    };
    if let Some(told) = account.ph {
        log += bell(seen.ph - told, 0.25);
    }
    if let Some(told) = account.slurry_c {
        log += bell(seen.slurry_c - told, 2.0);
    }
    log += match account.flame {
        Some(FlameLook::WillNotLight | FlameLook::GoesOut) => libm::log(0.15 + 0.6 * shy(seen.stored.methane, 0.48)),
        Some(FlameLook::Blue) => libm::log(0.2 + 0.8 * (1.0 - shy(seen.stored.methane, 0.42))),
        _ => 0.0,
    };
    (TEMPER * log).max(WORST)
}

/// How much a tank of this pH is one that smells: 0 to 1.
pub fn sourness(ph: f64) -> f64 {
    shy(ph, 6.5)
}

/// Logarithm of a bell about nothing.
fn bell(off: f64, spread: f64) -> f64 {
    -0.5 * (off / spread) * (off / spread)
}

/// 1 well below the mark, 0 well above, over a tenth of it either way.
fn shy(value: f64, mark: f64) -> f64 {
    1.0 / (1.0 + libm::exp((value - mark) / (0.03 * mark)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Minutes;

    fn check(account: DayAccount, likely: Seen, unlikely: Seen) {
        let (more, less) = (log_likelihood(&account, &likely), log_likelihood(&account, &unlikely));
        assert!(more > less + 0.2, "{more} {less}");
        assert!((WORST..=0.1).contains(&less), "{less}");
    }

    #[test]
    fn words_speak_for_the_state_they_come_from() {
        let well = Seen { ph: 7.1, slurry_c: 28.0, stored: Stored { fill: 0.7, burned_min: 60.0, methane: 0.58 } };
        let sour = Seen { ph: 5.9, slurry_c: 20.0, stored: Stored { fill: 0.05, burned_min: 5.0, methane: 0.35 } };
        check(DayAccount { signs: vec![Sign::SourSmell], ..DayAccount::default() }, sour, well);
        check(DayAccount { gas: Some(GasLevel::Good), ..DayAccount::default() }, well, sour);
        check(DayAccount { gas: Some(GasLevel::None), ..DayAccount::default() }, sour, well);
        check(DayAccount { burned: Some(Minutes::of(60.0)), ..DayAccount::default() }, well, sour);
        check(DayAccount { ph: Some(6.0), ..DayAccount::default() }, sour, well);
        check(DayAccount { slurry_c: Some(29.0), ..DayAccount::default() }, well, sour);
        check(DayAccount { flame: Some(FlameLook::Blue), ..DayAccount::default() }, well, sour);
        check(DayAccount { flame: Some(FlameLook::WillNotLight), ..DayAccount::default() }, sour, well);
    }
}
