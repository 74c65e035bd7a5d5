//! A field worker's texts: history of a household, acting for a family, taking an alarm.
//!
//! Takes the situation of the household named; gives one answer of two segments at most.

mod act;
pub mod line;
mod needs;
mod order;

use crate::deed::Did;
use crate::household::{Decision, Household, Situation, Staff};
use crate::message::{Inbound, Kind, Outbound, answer_id};
use crate::mind::Mind;
use crate::record::{local_day, record};
use crate::reply::amounts::number;
use crate::reply::catalog::Value;
use crate::reply::compose::{Piece, Rank, Room, compose};
use crate::reply::segments::size;
use crate::reply::word::Voice;
use crate::talk;
use crate::text::reading::{Ask, Reading};
use crate::twins::Believed;
pub use act::word_from;
use bellyful_core::advice::Advice;
use bellyful_core::fact::standing;
use bellyful_core::units::Day;
use line::Line;
pub use needs::needs;
pub use order::{Order, order};

/// Days that a history by text goes back.
const HISTORY_DAYS: i32 = 7;

/// What staff see of a household that nobody has named.
pub fn name_of(household: &Household) -> String {
    if household.name.is_empty() { format!("#{}", household.id) } else { household.name.clone() }
}

/// The household a field worker's text is about, as written: a name may be small letters, or several words.
pub fn household_meant(reading: &Reading, text: &str) -> Option<String> {
    if reading.for_household.is_some() {
        return reading.for_household.clone();
    }
    let of = reading.asks.iter().find_map(|ask| match ask {
        Ask::History { of } => Some(of.clone()),
        _ => None,
    })?;
    let rest: Vec<&str> = text.split_whitespace().skip(1).collect();
    let after_the_word = (1..=order::NAME_MOST).contains(&rest.len()).then(|| rest.join(" "));
    match (of, after_the_word) {
        (Some(of), Some(rest)) if rest.starts_with(&of) => Some(rest),
        (None, rest) => rest,
        (of, _) => of,
    }
}

/// The answer to a field worker, alone or first of several texts.
fn answered(mind: &Mind, worker: &Staff, inbound: &Inbound, pieces: Vec<Piece>) -> Outbound {
    let voice = Voice::in_lang(&mind.catalog, &worker.lang);
    Outbound {
        id: answer_id(&inbound.gateway, &inbound.from, &inbound.id, 0),
        gateway: inbound.gateway.clone(),
        to: inbound.from.clone(),
        text: compose(pieces, Room::STAFF, voice.latin()),
        kind: Kind::Staff,
        advice: None,
        not_before: inbound.received_at,
    }
}

/// Which of several households is meant: as many as two segments hold, by number.
fn which(voice: &Voice, situation: &Situation) -> Piece {
    let named = |most: usize| {
        let some = situation.several.iter().take(most).map(|(id, name)| format!("{id} {name}").trim().to_owned());
        voice.say("staff-which", &[("list", some.collect::<Vec<_>>().join(", ").into())])
    };
    Piece::or(Rank::Must, (1..=situation.several.len()).rev().map(named).collect())
}

/// What MORE goes on with after a history: why the bot says what it says, and what was told, the latest first.
fn told_lately(voice: &Voice, situation: &Situation, advice: &Advice, today: Day) -> Vec<String> {
    let why = advice.reasons.iter().map(|reason| voice.say(&format!("why-{reason}"), &[]));
    let told = standing(&situation.facts).into_iter().rev().filter(|fact| today.since(fact.day) <= HISTORY_DAYS);
    let told = told.filter_map(|fact| voice.item(fact, today)).map(|item| format!("{item}."));
    why.chain(told).collect()
}

/// What follows from a field worker's text.
pub fn decide(
    mind: &Mind,
    worker: &Staff,
    line: Line,
    situation: &Situation,
    reading: &Reading,
    inbound: &Inbound,
) -> Decision {
    let voice = Voice::in_lang(&mind.catalog, &worker.lang);
    let answer = |pieces: Vec<Piece>| vec![answered(mind, worker, inbound, pieces)];
    let order = order(&mind.lexicons, &worker.lang, &inbound.text);
    let Some(household) = &situation.household else {
        let named = match &order {
            Some(order) => order.household().map(str::to_owned),
            None => household_meant(reading, &inbound.text),
        };
        let piece = match named {
            _ if !situation.several.is_empty() => which(&voice, situation),
            Some(said) => voice.must("staff-unknown", &[("said", said.into())]),
            None => voice.must("staff-help", &[]),
        };
        return Decision { replies: answer(vec![piece]), ..Decision::default() };
    };
    let name = || Value::Text(name_of(household));
    if let Some(order) = &order {
        return act::act(mind, worker, situation, household, order, inbound);
    }
    // A danger that a worker passes on is the family's: everybody out, and whoever is on call is told.
    if reading.danger() {
        let alarm = talk::alarm(mind, situation, household.clone(), reading, inbound);
        return Decision { audit: Some(Did::ToldDanger.by(&worker.name)), ..alarm };
    }
    let recorded = record(household.clone(), &situation.facts, reading, inbound.sent_at);
    let told = !recorded.facts.is_empty();
    let today = local_day(inbound.received_at, &household.time_zone);
    let believed = Believed::with(situation, &recorded, today);
    let advice = believed.advise();
    if !told {
        let load = believed.so_far.ledger.load(today, 7, believed.so_far.liquid());
        let window: Vec<_> = believed.so_far.ledger.window(today, 7).collect();
        let n = |value: f64| Value::Text(number(&mind.catalog, voice.lang, (value * 10.0).round() / 10.0));
        let last = window.iter().map(|day| day.day).max();
        let values = [
            ("name", name()),
            ("kg", n(window.iter().map(|day| day.wet().get()).sum())),
            ("days", n(window.iter().filter(|day| !day.portions.is_empty()).count() as f64)),
            ("olr", n(load.olr)),
            ("water", n(window.iter().map(|day| day.water.get()).sum())),
            ("minutes", n(window.iter().filter_map(|day| day.burned).map(|m| m.get()).sum())),
            ("verdict", advice.verdict.id().into()),
            ("ration", n(advice.ration_kg)),
            ("risk", n((advice.risk * 100.0).round())),
            ("ago", n(last.map_or(7.0, |day| f64::from(today.since(day))))),
        ];
        let more = needs::in_texts(&voice, &told_lately(&voice, situation, &advice, today), None);
        let history = voice.say("staff-history", &values);
        let hinted = format!("{history} {}", voice.say("staff-history-more", &[]));
        // The hint costs nothing, or is not given.
        let free = !more.is_empty() && size(&hinted).segments == size(&history).segments;
        return Decision {
            replies: answer(vec![Piece::new(Rank::Must, if free { hinted } else { history })]),
            line: Some((worker.id, Line { more, ..line })),
            audit: Some(Did::AskedHistory.by(&worker.name)),
            ..Decision::default()
        };
    }
    let pieces = voice
        .heard("heard", &recorded.facts, today)
        .into_iter()
        .chain([voice.doing(&advice, believed.for_today(), &believed.so_far.site, &believed.mix())])
        .collect();
    let said = compose(pieces, Room::USUAL, voice.latin());
    let (twin, checkpoints, drop_checkpoints_from) = believed.keep();
    Decision {
        replies: answer(vec![voice.must("staff-noted", &[("name", name()), ("reply", said.into())])]),
        household: Some(recorded.household),
        facts: recorded.facts,
        twin: Some(twin),
        checkpoints,
        drop_checkpoints_from,
        audit: Some(Did::ToldFacts.by(&worker.name)),
        ..Decision::default()
    }
}
