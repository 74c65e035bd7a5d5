//! Belief now: a digester's facts, folded day by day.
//!
//! Takes standing facts; gives the twin at the dawn of a day, and from it what is believed with today's facts seen
//! so far: an account of what went in, and an ensemble of what may be inside. Never looks at a clock: the day is
//! handed in.

mod afresh;
mod chance;
mod ensemble;
mod forecast;
mod guess;
mod meal;
mod notice;
mod past;
mod season;

pub use ensemble::Ensemble;
pub use forecast::{AHEAD_D, Forecast};
pub use past::Past;
pub use season::slurry_over;

use crate::adm1::Room;
use crate::fact::{Fact, Walls, standing};
use crate::feeds::Feed;
use crate::ledger::{DayAccount, Ledger};
use crate::site::Site;
use crate::units::{Day, Litres, WetKg};
use serde::{Deserialize, Serialize};

/// Written first in the stored bytes; older versions are rebuilt from the facts.
const VERSION: u8 = 4;

#[derive(Debug, thiserror::Error)]
pub enum TwinError {
    #[error("the stored twin is of version {found}, this program keeps version {VERSION}")]
    Version { found: u8 },
    #[error("the stored twin cannot be read: {0}")]
    Torn(#[from] postcard::Error),
}

/// Belief about one digester at the dawn of a day: everything told of earlier days is in it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Twin {
    /// The day whose dawn this is.
    pub day: Day,
    /// Seed of all its chance.
    pub seed: u64,
    pub site: Site,
    pub ledger: Ledger,
    /// From the day on which a starter or some days of feeding are told.
    pub ensemble: Option<Ensemble>,
}

/// Of one day: two in three guesses lie between `low` and `high`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band {
    pub day: Day,
    pub low: f64,
    pub middle: f64,
    pub high: f64,
}

/// Days of feeding told after which a tank without a told starter is followed all the same: by then its family was asked
/// how old it is. Source: our choice.
const FOLLOWED_AFTER_D: i32 = 2;
/// A tank this old works, whatever was put in to start it: it is followed from its first meal on. Units: d. Source: our
/// choice: past the weeks in which a starter comes to work.
pub const WORKS_AFTER_D: i32 = 42;

impl Twin {
    /// Of a digester of which nothing is known yet.
    pub fn new(seed: u64, day: Day) -> Twin {
        Twin { day, seed, site: Site::default(), ledger: Ledger::default(), ensemble: None }
    }

    /// The same belief gives the same bytes.
    pub fn to_bytes(&self) -> Vec<u8> {
        postcard::to_extend(self, vec![VERSION]).expect("a Vec takes any length")
    }

    /// Errors: bytes of another version, or torn ones.
    pub fn from_bytes(bytes: &[u8]) -> Result<Twin, TwinError> {
        match bytes.split_first() {
            Some((&VERSION, rest)) => Ok(postcard::from_bytes(rest)?),
            found => Err(TwinError::Version { found: found.map_or(0, |(version, _)| *version) }),
        }
    }

    /// The twin at the dawn of `today`, every standing fact of the days before it folded in.
    ///
    /// Facts of days before the twin's own have been folded already and are passed over.
    pub fn settle(self, facts: &[Fact], today: Day) -> Twin {
        self.settle_seeing(facts, today, |_| {})
    }

    /// As [`Twin::settle`]; `see` is shown the twin at each dawn on the way, the last too.
    fn settle_seeing(mut self, facts: &[Fact], today: Day, mut see: impl FnMut(&Twin)) -> Twin {
        let facts: Vec<&Fact> = standing(facts).into_iter().filter(|fact| fact.day < today).collect();
        let mut room = None;
        while self.day < today {
            let day = self.day;
            facts.iter().filter(|fact| fact.day == day).for_each(|fact| self.learn(fact));
            self.pass_day(room.get_or_insert_with(Room::default));
            self.day = day.plus(1);
            self.ledger.forget_before(self.day);
            see(&self);
        }
        self
    }

    /// The day that ends: the ensemble begins on it, or lives through it.
    fn pass_day(&mut self, room: &mut Room) {
        let (seed, day, liquid) = (self.seed, self.day, self.liquid());
        self.follow(room);
        if let Some(ensemble) = &mut self.ensemble {
            ensemble.pass_day(seed, day, &self.site, &self.ledger, liquid, room);
        }
    }

    /// Begins to follow the tank, if enough is told: with the first meal, and what was told since.
    fn follow(&mut self, room: &mut Room) {
        let (seed, liquid) = (self.seed, self.liquid());
        if self.ensemble.is_some() {
            return;
        }
        let Some(first) = self.followed_from() else { return };
        let mut ensemble = Ensemble::start(seed, first, &self.site, liquid, &self.ledger.seeds);
        for day in first.0..self.day.0 {
            ensemble.pass_day(seed, Day(day), &self.site, &self.ledger, liquid, room);
        }
        self.ensemble = Some(ensemble);
    }

    fn followed_from(&self) -> Option<Day> {
        if !self.ledger.seeds.is_empty() {
            return Some(self.day);
        }
        let first = self.ledger.days.iter().find(|account| !account.portions.is_empty())?.day;
        let works = self.site.started.is_some_and(|started| first.since(started) >= WORKS_AFTER_D);
        (works || self.day.since(first) >= FOLLOWED_AFTER_D).then_some(first)
    }

    /// What comes of feeding `first` today and `later` on each day after, each an amount of feeds and litres of water.
    /// `None` while nothing is followed. Once the risk is beyond `enough`, how far beyond is not worked out.
    pub fn forecast(&self, first: &Ration, later: &Ration, enough: f64) -> Option<Forecast> {
        let ensemble = self.ensemble.as_ref()?;
        let (first, later) = (first.meal(), later.meal());
        Some(forecast::ahead(ensemble, self.day, &self.site, self.liquid(), &first, &later, enough))
    }

    /// Belief as of now: the twin with today's standing facts seen so far.
    pub fn so_far(&self, facts: &[Fact]) -> Twin {
        let mut twin = self.clone();
        for fact in standing(facts).into_iter().filter(|fact| fact.day >= self.day) {
            twin.learn(fact);
        }
        twin.follow(&mut Room::default());
        twin
    }

    fn learn(&mut self, fact: &Fact) {
        self.site.learn(fact);
        self.ledger.enter(fact, &self.site);
    }

    /// Slurry temperature: as the ensemble has it; before there is one, told within ten days, else the month's mean air, 3 degC warmer for dark or covered walls, else
    /// 25 degC. Units: °C.
    pub fn slurry_c(&self, today: Day) -> f64 {
        if let Some(ensemble) = &self.ensemble {
            return ensemble.slurry_mean_c();
        }
        let told = self.ledger.window(today, 10).rev().find_map(|day| day.slurry_c);
        told.unwrap_or_else(|| match &self.site.normals {
            Some(normals) => {
                let warmer = match self.site.walls {
                    Some(Walls::White) => 1.0,
                    Some(Walls::Greenhouse) => 6.0,
                    Some(Walls::Heated) => 8.0,
                    _ => 3.0,
                };
                normals.air_c[month_of(today)] + warmer
            }
            None => 25.0,
        })
    }

    /// Slurry up to the overflow: see [`Site::slurry_l`].
    pub fn liquid(&self) -> Litres {
        Litres::of(self.site.slurry_l())
    }
}

/// Feeds and the water with them.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Ration {
    pub feeds: Vec<(Feed, WetKg)>,
    pub water: Litres,
}

impl Ration {
    /// What went in on a day.
    pub fn of(account: &DayAccount) -> Ration {
        Ration { feeds: account.portions.iter().map(|p| (p.feed, p.wet)).collect(), water: account.water }
    }

    /// Both together.
    pub fn with(&self, more: &Ration) -> Ration {
        Ration { feeds: [&self.feeds[..], &more.feeds[..]].concat(), water: self.water + more.water }
    }

    fn meal(&self) -> meal::Meal {
        meal::Meal::new(self.feeds.iter().copied(), self.water)
    }
}

/// Month of a day, 0 to 11. Source: days of the Gregorian calendar (civil-from-days, H. Hinnant).
fn month_of(day: Day) -> usize {
    let z = i64::from(day.0) + 719_468;
    let day_of_era = z.rem_euclid(146_097);
    let year_of_era = (day_of_era - day_of_era / 1460 + day_of_era / 36_524 - day_of_era / 146_096) / 365;
    let day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    let from_march = (5 * day_of_year + 2) / 153;
    ((from_march + 2) % 12) as usize
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fact::{Unit, What};
    use crate::feeds::Feed;

    fn fed(id: i64, day: i32, kg: f64) -> Fact {
        let what = What::Fed { feed: Feed::CookedRice, amount: Some(kg), unit: Some(Unit::Kg) };
        Fact { id, day: Day(day), told_at: i64::from(day) * 86_400, what }
    }

    #[test]
    fn settling_in_one_go_or_day_by_day_is_the_same_to_the_byte() {
        let facts: Vec<Fact> = (0..8).map(|day| fed(i64::from(day) + 1, day, 1.0 + 0.2 * f64::from(day))).collect();
        let whole = Twin::new(7, Day(0)).settle(&facts, Day(9));
        let steps = (1..=9).fold(Twin::new(7, Day(0)), |twin, day| twin.settle(&facts, Day(day)));
        assert_eq!(whole.to_bytes(), steps.to_bytes());
        assert_eq!(Twin::from_bytes(&whole.to_bytes()).expect("reads back"), whole);
        assert!(whole.ensemble.is_some() && whole.to_bytes().len() < 24_000, "{} bytes", whole.to_bytes().len());
    }

    #[test]
    fn a_retracted_fact_leaves_no_trace() {
        let facts = [fed(1, 0, 2.0), fed(2, 0, 30.0)];
        let mended = [&facts[..], &[Fact { what: What::Retracted { id: 2 }, ..fed(3, 0, 0.0) }]].concat();
        assert_eq!(Twin::new(7, Day(0)).settle(&mended, Day(1)), Twin::new(7, Day(0)).settle(&facts[..1], Day(1)));
    }

    #[test]
    fn slurry_of_a_tank_that_works_is_a_starter_and_no_load() {
        let slurry = What::Fed { feed: Feed::Digestate, amount: Some(200.0), unit: Some(Unit::Kg) };
        let twin = Twin::new(7, Day(0)).settle(&[fed(1, 0, 2.0), Fact { what: slurry, ..fed(2, 0, 0.0) }], Day(1));
        assert_eq!(twin.ledger.seeds.len(), 1);
        assert!((twin.ledger.on(Day(0)).expect("told").wet().get() - 2.0).abs() < 1e-9);
        assert_eq!(twin.ledger.mix(Day(0)), vec![(Feed::CookedRice, 1.0)]);
    }

    #[test]
    fn torn_or_foreign_bytes_are_refused() {
        assert!(matches!(Twin::from_bytes(&[]), Err(TwinError::Version { found: 0 })));
        assert!(matches!(Twin::from_bytes(&[99, 1]), Err(TwinError::Version { found: 99 })));
        assert!(Twin::from_bytes(&[VERSION, 255]).is_err());
    }
}
