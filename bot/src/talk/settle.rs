//! A bare answer to the question that waits: "15", "3 weeks ago", "Kisumu" mean what was asked.
//!
//! Takes the pending question and the reading of the new text; gives the reading that was meant. A text that stands
//! on its own is left as it is.

use crate::household::{Household, Pending, Topic};
use crate::message::Inbound;
use crate::mind::Mind;
use crate::record::local_date;
use crate::text::reading::{Reading, Told};
use crate::text::{Answer, Expected, read, read_answer};
use bellyful_core::fact::{Measure, What};

/// A reading with the waiting question taken into account.
#[derive(Debug, Clone, PartialEq)]
pub struct Settled {
    pub reading: Reading,
    /// The text answered the question.
    pub answered: bool,
    /// Yes or no to a question that takes it.
    pub agreed: Option<bool>,
}

impl Settled {
    /// A text to which no question waits.
    pub fn alone(reading: Reading) -> Settled {
        Settled { reading, answered: false, agreed: None }
    }
}

/// The text as an answer, where it is one.
pub fn settle(mind: &Mind, household: &Household, reading: &Reading, inbound: &Inbound) -> Settled {
    let unchanged = Settled { reading: reading.clone(), answered: false, agreed: None };
    let Some(pending) = &household.talk.pending else { return unchanged };
    if !reading.facts.is_empty() && reading.unsure.is_empty() {
        let reading = meant_as(pending.topic, reading);
        let answered = reading.facts.iter().any(|told| answers(pending.topic, &told.what));
        return Settled { reading, answered, agreed: None };
    }
    if !reading.asks.is_empty() {
        return unchanged;
    }
    let date = local_date(inbound.sent_at, &household.time_zone);
    let answer = expected(pending.topic)
        .and_then(|expected| read_answer(&mind.lexicons, &inbound.text, &household.lang, date, expected));
    let bare = |facts| Reading { facts, unsure: vec![], control: None, ..reading.clone() };
    match answer {
        Some(Answer::Yes) => Settled { reading: bare(vec![]), answered: true, agreed: Some(true) },
        Some(Answer::No) => Settled { reading: bare(vec![]), answered: true, agreed: Some(false) },
        Some(Answer::Unknown) => Settled { reading: bare(vec![]), answered: true, agreed: None },
        Some(answer) => match told(pending, answer) {
            Some(told) => Settled { reading: bare(vec![told]), answered: true, agreed: None },
            None => unchanged,
        },
        None => match mended(mind, household, pending, inbound) {
            Some(reading) => Settled { reading, answered: true, agreed: None },
            None => unchanged,
        },
    }
}

/// Food told in answer to "what was put in to start it" is the starter; told in answer to "what do you feed on most
/// days" it is the habit too.
fn meant_as(topic: Topic, reading: &Reading) -> Reading {
    let mut meant = reading.clone();
    match topic {
        Topic::Seed => {
            for told in &mut meant.facts {
                if let What::Fed { feed, amount, unit } = told.what {
                    told.what = What::Seeded { feed, amount, unit };
                }
            }
        }
        Topic::Usual => {
            let habits = reading.facts.iter().filter_map(|told| match told.what {
                What::Fed { feed, amount, unit } => Some(Told { day: None, what: What::Usual { feed, amount, unit } }),
                _ => None,
            });
            meant.facts.extend(habits);
        }
        _ => {}
    }
    meant
}

/// Whether a fact is what the question was after.
fn answers(topic: Topic, what: &What) -> bool {
    match topic {
        Topic::Tank => matches!(what, What::Tank { .. }),
        Topic::Store => matches!(what, What::Store { .. }),
        Topic::Bucket => matches!(what, What::Measure { .. }),
        Topic::Started => matches!(what, What::Started | What::Seeded { .. }),
        Topic::Seed => matches!(what, What::Seeded { .. } | What::Fed { .. }),
        Topic::Place => matches!(what, What::Place { .. }),
        Topic::Usual => matches!(what, What::Usual { .. } | What::Fed { .. }),
        Topic::Walls => matches!(what, What::Walls { .. }),
        Topic::People => matches!(what, What::People { .. }),
        Topic::Amount | Topic::Unit | Topic::FeedName | Topic::DayName | Topic::SignName | Topic::Word => true,
        Topic::Language | Topic::Use | Topic::Forget | Topic::Cause => false,
    }
}

fn expected(topic: Topic) -> Option<Expected> {
    match topic {
        Topic::Tank | Topic::Store | Topic::Bucket => Some(Expected::Litres),
        Topic::Started => Some(Expected::Day),
        Topic::Place => Some(Expected::Place),
        Topic::People => Some(Expected::Count),
        Topic::Language => Some(Expected::Language),
        Topic::Forget => Some(Expected::YesNo),
        _ => None,
    }
}

fn told(pending: &Pending, answer: Answer) -> Option<Told> {
    let undated = |what| Some(Told { day: None, what });
    match (pending.topic, answer) {
        (Topic::Tank, Answer::Litres(litres)) => undated(What::Tank { litres }),
        (Topic::Store, Answer::Litres(litres)) => undated(What::Store { litres }),
        (Topic::Bucket, Answer::Litres(litres)) => {
            undated(What::Measure { unit: pending.measure.unwrap_or(Measure::Bucket), litres })
        }
        (Topic::Started, Answer::Day(day)) => Some(Told { day: Some(day), what: What::Started }),
        (Topic::Place, Answer::Place(name)) => undated(What::Place { name }),
        (Topic::People, Answer::Count(count)) => undated(What::People { count }),
        _ => None,
    }
}

/// Their earlier words with the answer put in: "3 porridge" and "bowls" make "3 bowls porridge".
fn mended(mind: &Mind, household: &Household, pending: &Pending, inbound: &Inbound) -> Option<Reading> {
    let answer = inbound.text.trim();
    let said = pending.said.trim();
    let date = local_date(inbound.sent_at, &household.time_zone);
    let candidates = match pending.topic {
        Topic::Unit => vec![after_first_number(said, answer), format!("{said} {answer}")],
        Topic::Amount | Topic::FeedName | Topic::DayName => {
            vec![format!("{answer} {said}"), format!("{said} {answer}")]
        }
        _ => vec![],
    };
    candidates
        .iter()
        .map(|text| read(&mind.lexicons, text, Some(&household.lang), date))
        .find(|reading| reading.unsure.is_empty() && !reading.facts.is_empty())
}

fn after_first_number(said: &str, unit: &str) -> String {
    let end = said
        .char_indices()
        .skip_while(|(_, c)| !c.is_numeric())
        .find(|(_, c)| !c.is_numeric() && *c != '.' && *c != ',' && *c != '/')
        .map_or(said.len(), |(at, _)| at);
    format!("{} {unit} {}", &said[..end], &said[end..])
}
