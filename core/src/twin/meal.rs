//! What goes into a tank on a day: told, usual, or what it bore while nothing was told.
//!
//! Takes accounts and a guess; gives what flows in, as that guess has it.

use super::guess::Guess;
use crate::adm1::Tank;
use crate::feeds::influent::{self, Influent};
use crate::feeds::{Feed, Kind, make_up};
use crate::ledger::{DayAccount, Ledger, Portion};
use crate::units::{Day, Litres, WetKg};

/// Doubt in an amount that was told. Source: our choice, as [`crate::feeds::weigh()`].
const AMOUNT_SPREAD: f64 = 0.12;
/// pH below which an untold meal is left out. Source: our choice.
const BORNE_PH: f64 = 6.7;

pub(super) fn water_of(guess: &Guess, litres: Litres) -> Influent {
    let mut water = influent::of_water(litres);
    (water.s_ic, water.s_cat) = (water.s_ic * guess.hardness(), water.s_cat * guess.hardness());
    water
}

/// Food and water of a day.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Meal {
    pub food: Influent,
    pub water: Litres,
}

impl Meal {
    pub fn new(feeds: impl Iterator<Item = (Feed, WetKg)>, water: Litres) -> Meal {
        Meal { food: feeds.map(|(feed, wet)| influent::of(feed, wet)).sum(), water }
    }

    /// What went in on a day.
    pub fn of(account: &DayAccount) -> Meal {
        Meal::new(account.portions.iter().map(|portion| (portion.feed, portion.wet)), account.water)
    }

    /// As one guess has it: its measures, its food's strength and alkalinity, its water.
    pub fn for_guess(&self, guess: &Guess) -> Influent {
        let mut food = self.food.scaled(guess.amount(AMOUNT_SPREAD));
        let volume = food.volume;
        food = food.scaled(guess.strength());
        food.volume = volume;
        let alkalinity = food.s_ic * (guess.alkalinity() - 1.0);
        food.s_ic += alkalinity;
        food.s_cat = (food.s_cat + alkalinity).max(0.0);
        food += water_of(guess, self.water);
        food
    }

    pub fn scaled(&self, by: f64) -> Meal {
        Meal { food: self.food.scaled(by), water: self.water * by }
    }
}

/// What they usually give on a day of which nothing was told: the mean of the last two weeks' told days, else what
/// they say they give. `None` where they never said.
pub(super) fn usual_meal(ledger: &Ledger, day: Day) -> Option<Meal> {
    let told: Vec<&DayAccount> =
        ledger.window(day, 14).filter(|account| account.is_told() && account.day < day).collect();
    if !told.is_empty() {
        let all: Meal = told.iter().map(|account| Meal::of(account)).fold(Meal::default(), |sum, meal| Meal {
            food: [sum.food, meal.food].into_iter().sum(),
            water: sum.water + meal.water,
        });
        return Some(all.scaled(1.0 / told.len() as f64));
    }
    let dung = |feed: Feed| make_up(feed).is(Kind::Dung);
    let water_l = |portion: &Portion| portion.wet.get() * if dung(portion.feed) { 1.0 } else { 2.0 };
    let water = Litres::of(ledger.usual.iter().map(water_l).sum());
    (!ledger.usual.is_empty()).then(|| Meal::new(ledger.usual.iter().map(|portion| (portion.feed, portion.wet)), water))
}

/// What goes into a tank of which nothing is told: scraps with their water, as long as it bears them, for nobody asks
/// about one that soured long ago.
pub(super) fn borne(tank: &Tank, guess: &Guess, days: f64, liquid: Litres) -> Influent {
    if tank.ph() < BORNE_PH {
        return Influent::default();
    }
    let kg = guess.untold_olr() * days * liquid.get() / 1000.0 / make_up(Feed::FoodWaste).vs();
    Meal::new([(Feed::FoodWaste, WetKg::of(kg))].into_iter(), Litres::of(2.0 * kg)).for_guess(guess)
}
