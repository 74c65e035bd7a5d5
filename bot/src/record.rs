//! Reading to facts: days made absolute, corrections turned into retractions, places looked up.
//!
//! Takes what a text says and what the household told before; gives the facts to keep and the doubt to ask about.
//! Never guesses: what the reading was unsure of becomes a question.

use crate::household::{Household, Pending, Topic};
use crate::places;
use crate::text::reading::{About, Reading};
use bellyful_core::fact::{Fact, Unit, What, standing};
use bellyful_core::units::Day;
use chrono::{DateTime, NaiveDate, Utc};
use chrono_tz::Tz;

/// What follows from one reading.
#[derive(Debug, Clone, PartialEq)]
pub struct Recorded {
    pub household: Household,
    pub facts: Vec<Fact>,
    /// Retracted by this text: for telling what was taken back.
    pub taken_back: Vec<Fact>,
    pub doubt: Option<Pending>,
}

/// A correction or "undo" that had nothing to mend.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("there is nothing in the last text to mend")]
pub struct NothingToMend;

/// The calendar date of a moment where the household lives.
pub fn local_date(at: DateTime<Utc>, time_zone: &str) -> NaiveDate {
    at.with_timezone(&time_zone.parse().unwrap_or(Tz::UTC)).date_naive()
}

/// The same, as the digester's facts count days.
pub fn local_day(at: DateTime<Utc>, time_zone: &str) -> Day {
    Day(local_date(at, time_zone).signed_duration_since(NaiveDate::default()).num_days() as i32)
}

/// Most days back that a text may speak of: beyond it a day is taken as misread.
const DAYS_BACK: i32 = 3 * 366;

/// Facts of a text sent at `said_at`. `known` are the household's facts, those of the last text among them.
pub fn record(mut household: Household, known: &[Fact], reading: &Reading, said_at: DateTime<Utc>) -> Recorded {
    let today = local_day(said_at, &household.time_zone);
    let mut next = Numbered { next: household.next_fact, told_at: said_at.timestamp(), facts: vec![] };
    let mut taken_back = vec![];
    for told in &reading.facts {
        let day = today.plus(told.day.unwrap_or(0).clamp(-DAYS_BACK, 0));
        match &told.what {
            What::Corrected { amount, unit, feed } => {
                let wanted = Mend { amount: *amount, unit: *unit, feed: *feed };
                if let Some(old) = wanted.target(&household.talk.last_facts, known) {
                    next.add(today, What::Retracted { id: old.id });
                    next.add(old.day, wanted.mended(&old.what));
                    taken_back.push(old.clone());
                }
            }
            What::Place { name } => {
                next.add(today, told.what.clone());
                if let Some(found) = places::find(name, household.country.as_deref()) {
                    household.country = Some(found.place.country.clone());
                    household.time_zone = found.place.time_zone.clone();
                    next.add(today, What::Country { code: found.place.country.clone() });
                    next.add(today, What::Sited { normals: found.place.normals.clone() });
                }
            }
            what => next.add(day, what.clone()),
        }
    }
    household.next_fact = next.next;
    if !next.facts.is_empty() {
        let counts = |fact: &&Fact| !matches!(fact.what, What::Retracted { .. });
        household.talk.last_facts = next.facts.iter().filter(counts).map(|fact| fact.id).collect();
        household.talk.last_day = next.facts.iter().map(|fact| fact.day).min();
    }
    Recorded { doubt: doubt(reading, said_at), household, facts: next.facts, taken_back }
}

/// Takes back all that the last text told.
pub fn undo(mut household: Household, known: &[Fact], said_at: DateTime<Utc>) -> Result<Recorded, NothingToMend> {
    let today = local_day(said_at, &household.time_zone);
    let last: Vec<Fact> =
        standing(known).into_iter().filter(|fact| household.talk.last_facts.contains(&fact.id)).cloned().collect();
    if last.is_empty() {
        return Err(NothingToMend);
    }
    let mut next = Numbered { next: household.next_fact, told_at: said_at.timestamp(), facts: vec![] };
    for fact in &last {
        next.add(today, What::Retracted { id: fact.id });
    }
    household.next_fact = next.next;
    household.talk.last_facts.clear();
    Ok(Recorded { household, facts: next.facts, taken_back: last, doubt: None })
}

/// The first thing a reading was unsure of, as a question that waits.
fn doubt(reading: &Reading, asked_at: DateTime<Utc>) -> Option<Pending> {
    let unsure = reading.unsure.first()?;
    let topic = match unsure.about {
        About::Amount => Topic::Amount,
        About::Unit => Topic::Unit,
        About::Feed => Topic::FeedName,
        About::Day => Topic::DayName,
        About::Sign => Topic::SignName,
        About::Word => Topic::Word,
    };
    Some(Pending { said: unsure.said.clone(), ..Pending::about(topic, asked_at) })
}

/// Facts being numbered within their household.
struct Numbered {
    next: i64,
    told_at: i64,
    facts: Vec<Fact>,
}

impl Numbered {
    fn add(&mut self, day: Day, what: What) {
        self.facts.push(Fact { id: self.next, day, told_at: self.told_at, what });
        self.next += 1;
    }
}

/// What a correction names.
struct Mend {
    amount: Option<f64>,
    unit: Option<Unit>,
    feed: Option<bellyful_core::feeds::Feed>,
}

impl Mend {
    /// The amount of the last text that is meant: of the feed named, else in the unit named, else the last one.
    fn target<'a>(&self, last: &[i64], known: &'a [Fact]) -> Option<&'a Fact> {
        let amounts: Vec<&Fact> = standing(known)
            .into_iter()
            .filter(|f| last.contains(&f.id) && matches!(f.what, What::Fed { .. } | What::Water { .. }))
            .collect();
        let fed = |f: &&&Fact| matches!(f.what, What::Fed { .. });
        let named = |f: &&&Fact| matches!(f.what, What::Fed { feed, .. } if Some(feed) == self.feed);
        let in_unit = |f: &&&Fact| match f.what {
            What::Fed { unit, .. } | What::Water { unit, .. } => self.unit.is_some() && unit == self.unit,
            _ => false,
        };
        let found = amounts
            .iter()
            .rfind(named)
            .or_else(|| amounts.iter().rfind(in_unit))
            .or_else(|| amounts.iter().rfind(fed))
            .or(amounts.last());
        found.copied()
    }

    fn mended(&self, old: &What) -> What {
        match old {
            What::Fed { feed, amount, unit } => What::Fed {
                feed: self.feed.unwrap_or(*feed),
                amount: self.amount.or(*amount),
                unit: self.unit.or(*unit),
            },
            What::Water { amount, unit } => What::Water { amount: self.amount.or(*amount), unit: self.unit.or(*unit) },
            other => other.clone(),
        }
    }
}
