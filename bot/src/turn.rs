//! The spine: one text in, what follows from it out.
//!
//! ```text
//! text -> reading -> facts -> twin -> advice -> reply
//!         read      record   assimilate  advise   word
//! ```
//!
//! `answer` loads, decides and saves; `decide` is pure: the same situation, text and time give the same decision.

use crate::clock;
use crate::household::{Decision, Household, Phone, Sender, Situation, Staff};
use crate::message::Inbound;
use crate::mind::Mind;
use crate::pages::need::CARE_HOURS;
use crate::record::{local_date, local_day, record};
use crate::reply::reply;
use crate::staff::line::Line;
use crate::staff::{self, Order};
use crate::store::{Cause, Claim, Kept, Store, StoreError, Wake, Wanted};
use crate::talk::{self, Settled};
use crate::text::fold::mostly_latin;
use crate::text::reading::{Control, Reading};
use crate::text::{explains, read};
use crate::twins::Believed;
use bellyful_core::fact::What;
use bellyful_core::units::Day;
use chrono::{DateTime, Duration, Utc};

/// What the text says, in the language known of its writer.
fn read_for(mind: &Mind, inbound: &Inbound, lang: Option<&str>, time_zone: &str) -> Reading {
    read(&mind.lexicons, &inbound.text, lang, local_date(inbound.sent_at, time_zone))
}

/// The same of a household's text, with the words that its district uses.
fn read_of(mind: &Mind, inbound: &Inbound, household: &Household, place: &str) -> Reading {
    let country = household.country.as_deref();
    let text = mind.taught().in_known_words(mind, &inbound.text, &household.lang, country, place);
    let today = local_date(inbound.sent_at, &household.time_zone);
    let known = Some(household.lang.as_str())
        .filter(|lang| !household.talk.lang_guessed || explains(&mind.lexicons, &inbound.text, lang));
    let reading = read(&mind.lexicons, &text, known, today);
    if text == inbound.text {
        return reading;
    }
    // No word of a district may hide a danger.
    let as_written = read_for(mind, inbound, known, &household.time_zone);
    if as_written.danger() { as_written } else { reading }
}

/// What follows from a text.
pub fn decide(mind: &Mind, situation: &Situation, settled: &Settled, inbound: &Inbound) -> Decision {
    if let Sender::Staff(worker) = &situation.sender {
        return staff::decide(mind, worker, Line::default(), situation, &settled.reading, inbound);
    }
    let household = situation.household.clone().unwrap_or_else(|| mind.newcomer(inbound, &settled.reading.lang));
    let decision = decide_for(mind, situation, household, settled, inbound);
    match situation.sender {
        Sender::Stranger { .. } => {
            let join = vec![Phone { gateway: inbound.gateway.clone(), number: inbound.from.clone() }];
            Decision { join, ..decision }
        }
        _ => decision,
    }
}

fn decide_for(
    mind: &Mind,
    situation: &Situation,
    household: Household,
    settled: &Settled,
    inbound: &Inbound,
) -> Decision {
    let household = heard_in(mind, household, settled, &inbound.text);
    if settled.reading.danger() {
        return talk::alarm(mind, situation, household, &settled.reading, inbound);
    }
    if let Some(decision) = talk::obey(mind, situation, &household, settled, inbound) {
        return decision;
    }
    let recorded = record(household, &situation.facts, &settled.reading, inbound.sent_at);
    let believed = Believed::with(situation, &recorded, local_day(inbound.received_at, &recorded.household.time_zone));
    reply(mind, situation, recorded, settled, believed, inbound)
}

/// A family that writes in another language twice in a row is answered in it, and always in the letters it writes.
fn heard_in(mind: &Mind, mut household: Household, settled: &Settled, text: &str) -> Household {
    let reading = &settled.reading;
    let says_something = !reading.facts.is_empty() || !reading.asks.is_empty();
    if text.chars().any(char::is_alphabetic) && (says_something || settled.answered.is_some() || !household.talk.met) {
        household.talk.latin_script = mostly_latin(text);
    }
    let speaks = mind.catalog.speaks(&reading.lang);
    if says_something && household.talk.lang_guessed && speaks {
        household.lang = reading.lang.clone();
    }
    household.talk.lang_guessed = !says_something && (household.talk.lang_guessed || !household.talk.met);
    if reading.lang == household.lang {
        household.talk.other_lang = None;
    } else if says_something && speaks {
        match household.talk.other_lang.take() {
            Some(other) if other == reading.lang => household.lang = other,
            _ => household.talk.other_lang = Some(reading.lang.clone()),
        }
    }
    household
}

/// Loads, decides and keeps, for one text. Errors: the store's; a household that moved on meanwhile is decided again.
pub async fn answer(store: &Store, mind: &Mind, claim: &Claim, now: DateTime<Utc>) -> Result<Kept, StoreError> {
    let inbound = &claim.inbound;
    let mut tries = 0;
    loop {
        let sender = store.sender(&inbound.from).await?;
        let (situation, settled) = look(store, mind, sender, inbound).await?;
        let decision = match &situation.sender {
            Sender::Staff(worker) => staff_turn(store, mind, worker, &situation, &settled, inbound, now).await?,
            _ => decide(mind, &situation, &settled, inbound),
        };
        match store.keep(Cause::Text(claim), &situation, decision, now).await {
            Err(StoreError::Stale(_)) if tries < STALE_TRIES => tries += 1,
            kept => return kept,
        }
    }
}

/// A field worker's text: the PIN before all, then who needs them, then what is about one household.
async fn staff_turn(
    store: &Store,
    mind: &Mind,
    worker: &Staff,
    situation: &Situation,
    settled: &Settled,
    inbound: &Inbound,
    now: DateTime<Utc>,
) -> Result<Decision, StoreError> {
    let known = store.line(worker.id).await?;
    let order = staff::order(&mind.lexicons, &worker.lang, &inbound.text);
    if let Some(decision) = staff::line::gate(mind, worker, &known, order.as_ref(), &settled.reading, inbound) {
        return Ok(decision);
    }
    if order == Some(Order::Needs) {
        let cares = store.cares(now - Duration::hours(CARE_HOURS)).await?;
        return Ok(staff::needs(mind, worker, known.line, store.overview().await?, &cares, inbound));
    }
    Ok(staff::decide(mind, worker, known.line, situation, &settled.reading, inbound))
}

/// A household is worked by one at a time; only staff acting for it can come between.
const STALE_TRIES: u32 = 4;

/// The situation and what the text means in it: each needs a little of the other, the language and how far back it speaks.
async fn look(
    store: &Store,
    mind: &Mind,
    sender: Sender,
    inbound: &Inbound,
) -> Result<(Situation, Settled), StoreError> {
    if let Sender::Staff(worker) = &sender {
        let reading = read_for(mind, inbound, Some(&worker.lang), "UTC");
        let household = match staff::order(&mind.lexicons, &worker.lang, &inbound.text) {
            Some(Order::Acknowledge(None)) => {
                let told_of = store.told_of(&inbound.from).await?;
                if let [(id, _)] = told_of[..] {
                    Some(id.to_string())
                } else {
                    let nobody = store.situation(&sender, Wanted::default()).await?;
                    return Ok((Situation { several: told_of, ..nobody }, Settled::alone(reading)));
                }
            }
            Some(order) => order.household().map(str::to_owned),
            None => staff::household_meant(&reading, &inbound.text),
        };
        let situation = match household {
            Some(household) => {
                let since = Some(local_day(inbound.sent_at, "UTC").plus(-STAFF_BACK_DAYS));
                store.situation(&sender, Wanted { household: Some(household), since }).await?
            }
            None => store.situation(&sender, Wanted::default()).await?,
        };
        return Ok((situation, Settled::alone(reading)));
    }
    let situation = store.situation(&sender, Wanted::default()).await?;
    let reading = match &situation.household {
        Some(household) => read_of(mind, inbound, household, &situation.place),
        None => read_for(mind, inbound, None, "UTC"),
    };
    let settled = match &situation.household {
        Some(household) => talk::settle(mind, household, &reading, inbound),
        None => talk::first(&reading),
    };
    let reaches = situation.household.as_ref().and_then(|household| reach(household, &settled.reading, inbound));
    let kept_from = situation.twin.as_ref().map(|kept| kept.day);
    match (reaches, kept_from) {
        (Some(since), Some(from)) if since < from => {
            Ok((store.situation(&sender, Wanted { household: None, since: Some(since) }).await?, settled))
        }
        _ => Ok((situation, settled)),
    }
}

/// How far back a field worker's text is taken to speak.
const STAFF_BACK_DAYS: i32 = 7;

/// The earliest day that a text says something about.
fn reach(household: &Household, reading: &Reading, inbound: &Inbound) -> Option<Day> {
    let today = local_day(inbound.sent_at, &household.time_zone);
    let told = reading.facts.iter().map(|told| match told.what {
        What::Corrected { .. } => household.talk.last_day.unwrap_or(today),
        What::NotFed { days } => today.plus(told.day.unwrap_or(0) + 1 - days.clamp(1, 60) as i32),
        _ => today.plus(told.day.unwrap_or(0)),
    });
    let undone = matches!(reading.control, Some(Control::Undo)).then_some(household.talk.last_day).flatten();
    told.chain(undone).min()
}

/// What the clock wakes us for, in the same three steps.
pub async fn wake(store: &Store, mind: &Mind, wake: &Wake, now: DateTime<Utc>) -> Result<Kept, StoreError> {
    let situation = store.situation_of(wake.household).await?;
    let decision = clock::decide(mind, &situation, wake.due, wake.at, now);
    store.keep(Cause::Wake(wake), &situation, decision, now).await
}
