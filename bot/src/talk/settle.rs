//! A bare answer to the question that waits: "15", "3 weeks ago", "Kisumu" mean what was asked.
//!
//! Takes the pending question and the reading of the new text; gives the reading that was meant. A text that stands
//! on its own is left as it is.

use crate::household::{Household, Pending, Talk, Topic};
use crate::message::Inbound;
use crate::mind::Mind;
use crate::places;
use crate::record::local_date;
use crate::text::reading::{About, LONG_AGO, Reading, Told};
use crate::text::{Answer, Expected, Likely, likely, put_right, read, read_answer};
use bellyful_core::fact::{Measure, Unit, What};
use bellyful_core::feeds::{Feed, Kind, make_up};
use chrono::{DateTime, Duration, Utc};

/// A reading with the waiting question taken into account.
#[derive(Debug, Clone, PartialEq)]
pub struct Settled {
    pub reading: Reading,
    /// The question that the text answered.
    pub answered: Option<Topic>,
    /// Yes or no to a question that takes it.
    pub agreed: Option<bool>,
}

impl Settled {
    /// A text to which no question waits.
    pub fn alone(reading: Reading) -> Settled {
        Settled { reading, answered: None, agreed: None }
    }
}

/// The first text of a number that nobody knows.
pub fn first(reading: &Reading) -> Settled {
    Settled::alone(with_starter(&Talk::default(), reading))
}

/// The text as an answer, where it is one: to the question of the last reply, else to an earlier one still open.
pub fn settle(mind: &Mind, household: &Household, reading: &Reading, inbound: &Inbound) -> Settled {
    let talk = &household.talk;
    if let Some(reading) = repeated(mind, household, reading, inbound) {
        return Settled::alone(reading);
    }
    // "Going to my mother for 10 days" is no answer to a question of last week.
    let few_words = inbound.text.split_whitespace().count() <= ANSWER_WORDS;
    let fresh = move |pending: &&Pending| few_words || inbound.sent_at - pending.asked_at < FRESH;
    let waiting = || talk.pending.iter().filter(fresh).chain(talk.open.iter().filter(move |_| few_words));
    if !reading.facts.is_empty() && reading.unsure.is_empty() {
        if nothing_but_litres(reading, inbound) {
            return waiting()
                .find_map(|pending| answer_to(mind, household, pending, reading, inbound))
                .or_else(|| measure_just_used(household, reading))
                .unwrap_or_else(|| Settled::alone(reading.clone()));
        }
        let Some(pending) = &talk.pending else { return Settled::alone(with_starter(talk, reading)) };
        if names_a_food(pending, reading)
            && let Some(settled) = answer_to(mind, household, pending, reading, inbound)
        {
            return settled;
        }
        let reading = meant_as(pending, &with_starter(talk, reading), inbound.sent_at);
        let answered = reading.facts.iter().any(|told| pending.topic.is_answered_by(&told.what));
        return Settled { reading, answered: answered.then_some(pending.topic), agreed: None };
    }
    if !reading.asks.is_empty() {
        return Settled::alone(reading.clone());
    }
    waiting()
        .filter_map(|pending| answer_to(mind, household, pending, reading, inbound))
        .next()
        .or_else(|| place_named(mind, household, reading, inbound))
        .unwrap_or_else(|| Settled::alone(reading.clone()))
}

/// "rice", asked what food it was: of itself a meal of no amount.
fn names_a_food(pending: &Pending, reading: &Reading) -> bool {
    let [Told { what: What::Fed { amount: None, .. }, .. }] = reading.facts.as_slice() else { return false };
    pending.topic == Topic::FeedName
}

/// "10 litres" and no more: of itself a meal, but an answer where a size was asked.
fn nothing_but_litres(reading: &Reading, inbound: &Inbound) -> bool {
    /// More than this is no family's meal: "lita elfu moja" is a tank.
    const NO_MEAL_LITRES: f64 = 200.0;
    let words = inbound.text.split_whitespace().count();
    let [told] = reading.facts.as_slice() else { return false };
    match told.what {
        What::Fed { feed: Feed::FoodWaste, amount: Some(litres), unit: Some(Unit::L) } => {
            words <= 2 || litres >= NO_MEAL_LITRES && words <= ANSWER_WORDS
        }
        _ => false,
    }
}

/// How much the bucket of the meal just told holds, said without being asked.
fn measure_just_used(household: &Household, reading: &Reading) -> Option<Settled> {
    let [Told { what: What::Fed { amount: Some(litres), .. }, .. }] = reading.facts.as_slice() else { return None };
    let unit = household.talk.last_meal.iter().rev().find_map(|fact| match fact.what {
        What::Fed { unit: Some(Unit::Of(measure)), .. } | What::Water { unit: Some(Unit::Of(measure)), .. } => {
            Some(measure)
        }
        _ => None,
    })?;
    let facts = vec![Told { day: None, what: What::Measure { unit, litres: *litres } }];
    Some(Settled { reading: Reading { facts, ..reading.clone() }, answered: Some(Topic::Bucket), agreed: None })
}

fn answer_to(
    mind: &Mind,
    household: &Household,
    pending: &Pending,
    reading: &Reading,
    inbound: &Inbound,
) -> Option<Settled> {
    let date = local_date(inbound.sent_at, &household.time_zone);
    let answer = expected(pending.topic)
        .and_then(|expected| read_answer(&mind.lexicons, &inbound.text, &household.lang, date, expected));
    let bare = |facts| Reading { facts, unsure: vec![], control: None, ..reading.clone() };
    let settled = |facts, agreed| Settled { reading: bare(facts), answered: Some(pending.topic), agreed };
    match answer {
        Some(Answer::Yes) => Some(settled(vec![], Some(true))),
        Some(Answer::No) => Some(settled(vec![], Some(false))),
        Some(Answer::Unknown) => Some(settled(vec![], None)),
        // Late, only a town that is known is taken for one.
        Some(Answer::Place(name)) if inbound.sent_at - pending.asked_at >= FRESH && !is_a_town(&name, household) => {
            None
        }
        Some(answer) => told(pending, answer).map(|told| settled(vec![told], None)),
        None => {
            let reading = mended(mind, household, pending, inbound)?;
            Some(Settled { reading, answered: Some(pending.topic), agreed: None })
        }
    }
}

/// A short name that the gazetteer has.
fn is_a_town(name: &str, household: &Household) -> bool {
    let words = name.split_whitespace().count();
    let found = places::find(name, household.country.as_deref());
    found.is_some_and(|found| words <= 2 || found.place.name.split_whitespace().count() == words)
}

/// A text that is nothing but the name of a town tells where they live, asked or not.
fn place_named(mind: &Mind, household: &Household, reading: &Reading, inbound: &Inbound) -> Option<Settled> {
    let [unsure] = reading.unsure.as_slice() else { return None };
    if unsure.about != About::Word || !reading.facts.is_empty() || reading.control.is_some() {
        return None;
    }
    let date = local_date(inbound.sent_at, &household.time_zone);
    let Some(Answer::Place(name)) = read_answer(&mind.lexicons, &inbound.text, &household.lang, date, Expected::Place)
    else {
        return None;
    };
    if !is_a_town(&name, household) {
        return None;
    }
    let facts = vec![Told { day: None, what: What::Place { name } }];
    let reading = Reading { facts, unsure: vec![], ..reading.clone() };
    Some(Settled { reading, answered: Some(Topic::Place), agreed: None })
}

/// "Same as yesterday": the last meal told, said again.
fn repeated(mind: &Mind, household: &Household, reading: &Reading, inbound: &Inbound) -> Option<Reading> {
    let last = &household.talk.last_meal;
    let fed = reading.facts.iter().any(|told| matches!(told.what, What::Fed { .. } | What::NotFed { .. }));
    if last.is_empty() || fed || !reading.unsure.iter().any(|unsure| unsure.about == About::Amount) {
        return None;
    }
    let date = local_date(inbound.sent_at, &household.time_zone);
    let same = read_answer(&mind.lexicons, &inbound.text, &household.lang, date, Expected::Sameness);
    let Some(Answer::Same { day }) = same else { return None };
    let mut meant = reading.clone();
    meant.unsure.retain(|unsure| unsure.about != About::Amount);
    let watered = meant.facts.iter().any(|told| matches!(told.what, What::Water { .. }));
    let again = last.iter().filter(|fact| !watered || matches!(fact.what, What::Fed { .. }));
    meant.facts.extend(again.map(|fact| Told { day: Some(day), what: fact.what.clone() }));
    Some(meant)
}

/// An answer that comes late, or after other questions, is short. Source: our choice.
const ANSWER_WORDS: usize = 4;
const FRESH: Duration = Duration::days(1);

/// An answer to a question comes soon; what is told later may well be the day's meal.
const SOON: Duration = Duration::hours(6);

/// What is told soon after "what was put in to start it", and dung at any time, is the starter; food told
/// soon after "what do you feed on most days" is the habit too.
fn meant_as(pending: &Pending, reading: &Reading, sent_at: DateTime<Utc>) -> Reading {
    let mut meant = reading.clone();
    let soon = sent_at - pending.asked_at < SOON;
    match pending.topic {
        Topic::Seed => {
            for told in &mut meant.facts {
                if let What::Fed { feed, amount, unit } = told.what
                    && (soon || make_up(feed).is(Kind::Dung))
                {
                    told.what = What::Seeded { feed, amount, unit };
                }
            }
        }
        Topic::Usual if soon => {
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

/// So much dung on the day a family tells of its tank, before any meal, is what it was filled with and no day's feed.
/// Source: common practice, no source.
const STARTER_KG: f64 = 40.0;

/// "tank 1200 litres, 80 kg dung", "8 buckets of dung 3 weeks ago": the starter, told among what is told once.
fn with_starter(talk: &Talk, reading: &Reading) -> Reading {
    let mut meant = reading.clone();
    let of_tank = |what: &What| matches!(what, What::Tank { .. } | What::Started);
    let waits = talk.pending.iter().any(|pending| matches!(pending.topic, Topic::Tank | Topic::Started));
    let setting_up = waits || reading.facts.iter().any(|told| of_tank(&told.what));
    if !talk.last_meal.is_empty() {
        return meant;
    }
    for told in &mut meant.facts {
        if let What::Fed { feed, amount: Some(amount), unit } = told.what
            && (setting_up && unit == Some(Unit::Kg) && amount >= STARTER_KG
                || told.day.is_some_and(|day| day <= LONG_AGO))
            && make_up(feed).is(Kind::Dung)
        {
            told.what = What::Seeded { feed, amount: Some(amount), unit };
        }
    }
    meant
}

fn expected(topic: Topic) -> Option<Expected> {
    match topic {
        Topic::Tank => Some(Expected::Litres),
        Topic::Store | Topic::Bucket => Some(Expected::Size),
        Topic::Started => Some(Expected::Day),
        Topic::Place => Some(Expected::Place),
        Topic::People => Some(Expected::Count),
        Topic::Language => Some(Expected::Language),
        Topic::Forget | Topic::Cause => Some(Expected::YesNo),
        _ => None,
    }
}

/// Sizes that a home's tank, gas bag or bucket can have; anything else was meant otherwise.
/// Source: common practice, no source.
fn plausible_litres(topic: Topic) -> std::ops::RangeInclusive<f64> {
    match topic {
        Topic::Tank => 50.0..=200_000.0,
        Topic::Store => 50.0..=100_000.0,
        _ => 0.1..=400.0,
    }
}

fn told(pending: &Pending, answer: Answer) -> Option<Told> {
    let undated = |what| Some(Told { day: None, what });
    match (pending.topic, answer) {
        (topic, Answer::Litres(litres)) if !plausible_litres(topic).contains(&litres) => None,
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
        Topic::FeedName => {
            let agreed = read_answer(&mind.lexicons, answer, &household.lang, date, Expected::YesNo);
            let offered = offered_alone(mind, household, pending).filter(|_| agreed == Some(Answer::Yes));
            // "yes" to two of them, or "no", names none: it is asked again.
            if agreed.is_some() && offered.is_none() && !answer.contains(' ') {
                let alone = read(&mind.lexicons, said, Some(&household.lang), date);
                return Some(alone).filter(|alone| alone.unsure.iter().any(|doubt| doubt.about == About::Feed));
            }
            let food = offered.as_deref().unwrap_or(answer);
            let right = put_right(&mind.lexicons, said, &household.lang, food);
            right.into_iter().chain([format!("{food} {said}"), format!("{said} {food}")]).collect()
        }
        Topic::Amount | Topic::DayName => vec![format!("{answer} {said}"), format!("{said} {answer}")],
        _ => vec![],
    };
    candidates
        .iter()
        .map(|text| read(&mind.lexicons, text, Some(&household.lang), date))
        .find(|reading| reading.unsure.is_empty() && !reading.facts.is_empty())
}

/// The name of the one food that was offered: "yes" says no more, and says nothing of two.
fn offered_alone(mind: &Mind, household: &Household, pending: &Pending) -> Option<String> {
    match likely(&mind.lexicons, &pending.said, &household.lang).as_slice() {
        [Likely::Food(feed)] => Some(mind.catalog.say(&household.lang, &format!("feed-{feed}"), &[])),
        _ => None,
    }
}

fn after_first_number(said: &str, unit: &str) -> String {
    let end = said
        .char_indices()
        .skip_while(|(_, c)| !c.is_numeric())
        .find(|(_, c)| !c.is_numeric() && *c != '.' && *c != ',' && *c != '/')
        .map_or(said.len(), |(at, _)| at);
    format!("{} {unit} {}", &said[..end], &said[end..])
}
