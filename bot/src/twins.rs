//! The household's twin as a turn uses it: taken from its kept bytes, moved to today's dawn, shown the day so far.
//!
//! Takes the kept twin and the facts; gives belief, and what is to be kept of it. A fact of a past day replays the
//! twin from the checkpoint that was loaded with the situation.

use crate::household::{Household, KeptTwin, Situation};
use crate::record::Recorded;
use bellyful_core::advice::{Advice, Outlook, advise, water_for};
use bellyful_core::fact::Fact;
use bellyful_core::feeds::Feed;
use bellyful_core::twin::Twin;
use bellyful_core::units::Day;

/// Dawns of these days are kept to replay from.
const CHECKPOINT_EVERY_DAYS: i32 = 7;

/// What is believed once a text has been taken in.
#[derive(Debug, Clone)]
pub struct Believed {
    pub today: Day,
    pub dawn: Twin,
    pub so_far: Twin,
    checkpoints: Vec<KeptTwin>,
    drop_from: Option<Day>,
}

impl Believed {
    /// Belief on `today`, with the facts of the situation and those just recorded.
    pub fn with(situation: &Situation, recorded: &Recorded, today: Day) -> Believed {
        let facts: Vec<Fact> = situation.facts.iter().chain(&recorded.facts).cloned().collect();
        let reached_back = recorded.facts.iter().map(|fact| fact.day).min().filter(|day| *day < today);
        Believed::folding(situation, &recorded.household, &facts, today, reached_back)
    }

    /// Belief on `today` with nothing new told.
    pub fn on(situation: &Situation, household: &Household, today: Day) -> Believed {
        Believed::folding(situation, household, &situation.facts, today, None)
    }

    /// The twin at the dawn of `today`, from nothing but the facts and the stored seed.
    pub fn rebuilt(household: &Household, facts: &[Fact], today: Day) -> KeptTwin {
        let first = facts.iter().map(|fact| fact.day).min().unwrap_or(today).min(today);
        let dawn = (first.0 + 1..=today.0)
            .fold(Twin::new(household.seed as u64, first), |twin, day| twin.settle(facts, Day(day)));
        KeptTwin { day: dawn.day, bytes: dawn.to_bytes() }
    }

    fn folding(
        situation: &Situation,
        household: &Household,
        facts: &[Fact],
        today: Day,
        reached_back: Option<Day>,
    ) -> Believed {
        let first = facts.iter().map(|fact| fact.day).min().unwrap_or(today).min(today);
        let kept = situation.twin.as_ref().and_then(|kept| Twin::from_bytes(&kept.bytes).ok());
        let mut dawn = kept.unwrap_or_else(|| Twin::new(household.seed as u64, first));
        let mut checkpoints = vec![];
        while dawn.day < today {
            let next = dawn.day.plus(1);
            dawn = dawn.settle(facts, next);
            if next.0.rem_euclid(CHECKPOINT_EVERY_DAYS) == 0 {
                checkpoints.push(KeptTwin { day: next, bytes: dawn.to_bytes() });
            }
        }
        let so_far = dawn.so_far(facts);
        Believed { today, dawn, so_far, checkpoints, drop_from: reached_back.map(|day| day.plus(1)) }
    }

    pub fn advise(&self) -> Advice {
        advise(&self.so_far, self.today)
    }

    /// What would be advised tomorrow if no more is told today.
    pub fn tomorrow(&self, situation: &Situation, recorded: &Recorded) -> Advice {
        let facts: Vec<Fact> = situation.facts.iter().chain(&recorded.facts).cloned().collect();
        let next = self.today.plus(1);
        advise(&self.dawn.clone().settle(&facts, next), next)
    }

    /// Whether the ration is for today still: nothing was told fed today.
    pub fn for_today(&self) -> bool {
        self.so_far.ledger.on(self.today).is_none_or(|account| account.portions.is_empty())
    }

    /// The family's usual mix, as shares of wet mass.
    pub fn mix(&self) -> Vec<(Feed, f64)> {
        self.so_far.ledger.mix(self.today)
    }

    /// Water that goes with an amount of the usual mix. Units: l.
    pub fn water_for(&self, kg: f64) -> f64 {
        water_for(&Outlook::of(&self.so_far, self.today), kg)
    }

    /// What is to be kept: the twin at today's dawn, checkpoints on the way, and the day from which older ones are
    /// wrong.
    pub fn keep(self) -> (KeptTwin, Vec<KeptTwin>, Option<Day>) {
        (KeptTwin { day: self.dawn.day, bytes: self.dawn.to_bytes() }, self.checkpoints, self.drop_from)
    }
}
