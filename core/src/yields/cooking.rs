//! Gas as minutes at the stove and as dishes.

use crate::gas::Burner;
use crate::ids;
use crate::units::{GasLitres, Minutes};

ids!(/// What families cook.
    Dish { Water = "water", Rice = "rice", Pulses = "pulses", Meal = "meal" });

impl Dish {
    /// Gas for one litre of water, half a kilo of rice, half a kilo of pulses or vegetables, one person's meal.
    ///
    /// Source: SSWM and Compendium pages citing GTZ (read): 30-40, 120-140, 160-190, 150-300 l.
    pub const fn gas(self) -> GasLitres {
        GasLitres::of(match self {
            Dish::Water => 35.0,
            Dish::Rice => 130.0,
            Dish::Pulses => 175.0,
            Dish::Meal => 225.0,
        })
    }
}

/// What can be cooked today and tomorrow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outlook {
    pub today: Minutes,
    pub tomorrow: Minutes,
}

/// Burner minutes of gas `held` now and `coming` in each of the two days, if today's are used; `holds` is the store:
/// what cannot be held is not counted on.
pub fn outlook(held: GasLitres, coming: [GasLitres; 2], holds: GasLitres, burner: Burner) -> Outlook {
    // Gas that comes while the family cooks is burned as it comes: half a day's stands beside a full store.
    let most = |gas: GasLitres, comes: GasLitres| {
        let room = holds + comes / 2.0;
        if gas < room { gas } else { room }
    };
    Outlook {
        today: burner.minutes(most(held + coming[0], coming[0])),
        tomorrow: burner.minutes(most(coming[1], coming[1])),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn minutes_count_what_is_held_and_comes_but_not_what_the_bag_cannot_hold() {
        let litres = GasLitres::of;
        let check = |held, coming, holds, today: f64, tomorrow: f64| {
            let got = outlook(litres(held), [litres(coming); 2], litres(holds), Burner::of(300.0));
            assert_eq!((got.today.get(), got.tomorrow.get()), (today, tomorrow));
        };
        check(100.0, 300.0, 1_000.0, 80.0, 60.0);
        check(400.0, 300.0, 400.0, 110.0, 60.0);
        check(0.0, 0.0, 400.0, 0.0, 0.0);
    }

    /// Estoppey, read: 3 l boiled on 75 l of gas; GTZ 30-40 l a litre.
    #[test]
    fn water_takes_about_what_was_measured() {
        let three = Dish::Water.gas() * 3.0;
        assert!((75.0..=120.0).contains(&three.get()));
    }
}
