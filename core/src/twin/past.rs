//! What was believed on past days, each by what was told until then: for drawing.
//!
//! Takes a twin of a past dawn and the facts since; gives bands a day. Keeps nothing.

use super::{Band, Ensemble, Twin};
use crate::fact::Fact;
use crate::units::Day;

/// Oxygen that a kilogram of acetic acid takes up: CH3COOH + 2 O2, 64 g a mole of 60.05 g.
const COD_PER_ACETIC: f64 = 64.0 / 60.05;

/// What was believed of a digester at the dawn of each day.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Past {
    pub ph: Vec<Band>,
    /// Volatile fatty acids, as acetic acid. Units: g/l.
    pub acids: Vec<Band>,
    /// Gas made on the day before, as minutes at the stove. Dated on the day on which it was made.
    pub made_min: Vec<Band>,
    /// Gas in store, as minutes at the stove.
    pub left_min: Vec<Band>,
}

impl Past {
    /// From the day after the twin's own to `today`.
    pub fn since(twin: Twin, facts: &[Fact], today: Day) -> Past {
        Past::along(twin, facts, today).0
    }

    /// The same, and the twin at the end of it.
    pub fn along(twin: Twin, facts: &[Fact], today: Day) -> (Past, Twin) {
        let mut past = Past::default();
        let twin = twin.settle_seeing(facts, today, |twin| {
            if let Some(ensemble) = &twin.ensemble {
                past.see(ensemble, twin.day);
            }
        });
        (past, twin)
    }

    fn see(&mut self, ensemble: &Ensemble, day: Day) {
        let tanks = ensemble.tanks();
        self.ph.push(ensemble.band(day, |i| tanks[i].ph()));
        self.acids.push(ensemble.band(day, |i| tanks[i].vfa_kg_cod_per_m3() / COD_PER_ACETIC));
        self.made_min.push(ensemble.band(day.plus(-1), |i| ensemble.made_minutes_of(i)));
        self.left_min.push(ensemble.band(day, |i| ensemble.left_minutes_of(i)));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fact::{Unit, What};
    use crate::feeds::Feed;

    #[test]
    fn a_past_looked_at_ends_where_belief_stands_now_and_shows_what_was_done() {
        let told = |id: i64, day, what| Fact { id, day: Day(day), told_at: 0, what };
        let fed = |kg| What::Fed { feed: Feed::FoodWaste, amount: Some(kg), unit: Some(Unit::Kg) };
        let mut facts =
            vec![told(1, 0, What::Seeded { feed: Feed::CattleManure, amount: Some(150.0), unit: Some(Unit::Kg) })];
        // A month of little, then far too much.
        facts.extend((30..40).map(|day| told(i64::from(day), day, fed(if day < 36 { 0.5 } else { 25.0 }))));
        let past = Past::since(Twin::new(7, Day(0)), &facts, Day(40));
        let now = Twin::new(7, Day(0)).settle(&facts, Day(40)).ensemble.expect("followed");
        let last = past.ph.last().expect("followed");
        assert_eq!(*last, now.band(Day(40), |i| now.tanks()[i].ph()));
        assert!(last.low <= last.middle && last.middle <= last.high, "{last:?}");
        let before = past.acids.iter().find(|band| band.day == Day(36)).expect("followed");
        let after = past.acids.last().expect("followed");
        assert!(after.middle > 2.0 * before.middle, "acids rise when far too much goes in: {before:?} {after:?}");
        assert!(past.left_min.iter().all(|band| band.low >= 0.0));
        assert_eq!(past.made_min.last().expect("followed").day, Day(39));
    }
}
