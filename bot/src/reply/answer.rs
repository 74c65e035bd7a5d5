//! The reply to a text, put together: what was heard, what to do, why, what we ask.
//!
//! Takes what was recorded, believed and advised; gives the decision with its one text in it.

use super::beside::{doing, gas, heals, thinning, whys};
use super::catalog::Value;
use super::cause::suspect;
use super::compose::{Piece, Rank, Room, compose, fit_with};
use super::doubt::offered;
use super::word::Voice;
use crate::clock::{SILENCE_DAYS, first_chore_at, rest_over_at};
use crate::household::{Decision, Due, Household, LastAdvice, Pending, Sender, Situation, Topic};
use crate::message::{Inbound, Kind, Outbound, answer_id};
use crate::mind::Mind;
use crate::record::Recorded;
use crate::talk::{Settled, next_question};
use crate::text::reading::Ask;
use crate::twins::Believed;
use bellyful_core::advice::{Advice, Reason, Trouble, Verdict};
use bellyful_core::fact::{Fact, FlameLook, Sign, Unit, What};
use bellyful_core::feeds::{Feed, Kind as FeedKind, make_up};
use chrono::Duration;

/// What follows from a text that told or asked something.
pub fn reply(
    mind: &Mind,
    situation: &Situation,
    mut recorded: Recorded,
    settled: &Settled,
    believed: Believed,
    inbound: &Inbound,
) -> Decision {
    let advice = believed.advise();
    let first = !recorded.household.talk.met;
    let after_alarm = std::mem::take(&mut recorded.household.talk.alarmed);
    remember_meal(&mut recorded);
    let suspicion = suspect(&recorded, &believed, &advice, settled);
    let ask_cause = suspicion
        .and_then(|suspicion| suspicion.ask)
        .map(|cause| Pending { cause: Some(cause), ..Pending::about(Topic::Cause, inbound.sent_at) });
    let question = recorded.doubt.clone().or(ask_cause).or_else(|| {
        let household = &recorded.household;
        next_question(
            household,
            &believed.so_far,
            &recorded.facts,
            believed.today,
            settled.answered.is_some(),
            inbound.sent_at,
        )
    });
    let voice = Voice::to(&mind.catalog, &recorded.household);
    let asks = &settled.reading.asks;
    let mut pieces = vec![];
    if first {
        pieces.push(voice.must("hello", &[]));
    }
    let heard = if recorded.taken_back.is_empty() { "heard" } else { "corrected" };
    pieces.extend(voice.heard(heard, &recorded.facts, believed.today));
    if wanted_mending(settled) && recorded.taken_back.is_empty() {
        pieces.push(voice.must("not-mended", &[]));
    }
    // After an alarm the first step is to light nothing before the joints are checked; what else they told or asked
    // comes after it, but no word of cooking.
    let untold = recorded.facts.is_empty() && asks.is_empty();
    let only_safe = after_alarm && untold;
    if after_alarm {
        let said = [voice.say("safe-again", &[]), voice.say("safe-again-first", &[])];
        pieces.push(Piece::or(Rank::Must, said.into()));
    }
    if !only_safe {
        let signs = signs(&recorded);
        pieces.extend(signs.iter().take(1).map(|sign| voice.sign(*sign)));
        let mended = recorded.facts.iter().any(|fact| matches!(fact.what, What::Alkali { .. }));
        pieces.extend(mended.then(|| Piece::new(Rank::Question, voice.say("alkali-careful", &[]))));
        pieces.extend(yellow(&recorded).then(|| Piece::new(Rank::Why, voice.say("flame-yellow", &[]))));
        // One step at a time: a sign that has its own comes first.
        if let (Some(suspicion), true) = (suspicion, signs.is_empty() || settled.answered == Some(Topic::Cause)) {
            pieces.extend(suspicion.pieces(&voice));
        }
    }
    let asks_now: Vec<Ask> = asks.iter().filter(|ask| !after_alarm || **ask != Ask::Gas).cloned().collect();
    let answered = answers(&voice, &asks_now, situation, &recorded, &believed, &advice);
    let known = known_enough(&believed);
    // "Yes, it likes scraps" alone would be taken for leave to feed any amount, and a tank that rests.
    let of_itself = |ask: &Ask| match ask {
        Ask::Ration | Ask::Status | Ask::CanMend { .. } => false,
        Ask::CanFeed { feed } => !known || !make_up(*feed).is_food(),
        _ => true,
    };
    let answered_all = !answered.is_empty() && asks.iter().all(of_itself);
    pieces.extend(answered);
    let doubtful = recorded.doubt.is_some() && untold;
    let nothing_said = recorded.doubt.is_none() && untold;
    if !only_safe && !answered_all && !doubtful && (known || !nothing_said) {
        // Asked in the evening for tomorrow, as if nothing more goes in today.
        let ahead =
            (settled.reading.asks_ahead && believed.for_today()).then(|| believed.tomorrow(situation, &recorded));
        let (sought, for_today) = ahead.as_ref().map_or((&advice, believed.for_today()), |ahead| (ahead, false));
        pieces.extend(thinning(&voice, &recorded, &believed, sought));
        pieces.push(doing(&voice, &recorded.household, sought, &believed, for_today, inbound.sent_at));
        match heals(&voice, &recorded.household, &believed, sought) {
            Some(remedy) => pieces.push(remedy),
            None => pieces.extend(whys(&voice, &recorded.household, sought, believed.today)),
        }
        if advice.reasons.contains(&Reason::LeakSuspected) && suspicion.is_none() {
            pieces.push(Piece::new(Rank::Why, voice.say("do-check-gas", &[])));
        }
        if !after_alarm {
            pieces.extend(gas(&voice, &recorded, &believed, &advice));
        }
    } else if nothing_said && !first && !after_alarm {
        pieces.push(voice.must("hello-again", &[]));
    }
    let room = if first { Room::FIRST } else { Room::USUAL };
    let measured = recorded.facts.iter().any(|fact| matches!(fact.what, What::Fed { .. } | What::Water { .. }));
    let question = question.filter(|pending| {
        // How an amount was heard is said now; how black the tank is can be asked tomorrow.
        let waits = measured && matches!(pending.topic, Topic::Store | Topic::Walls);
        !waits || fit_with(&pieces, &voice.question(pending), room, voice.latin())
    });
    pieces.extend(question.as_ref().map(|pending| {
        match recorded.doubt {
            Some(_) => offered(mind, &voice, &recorded, pending)
                .map_or_else(|| voice.question(pending).never_dropped(), |said| Piece::new(Rank::Must, said)),
            None => voice.question(pending),
        }
    }));
    let kind = match () {
        () if doubtful => Kind::Question,
        () if !asks.is_empty() && recorded.facts.is_empty() => Kind::Answer,
        () => Kind::Advice,
    };
    recorded.household.talk.ask(question, believed.today, settled.answered, &recorded.facts);
    recorded.household.talk.met = true;
    if asks.contains(&Ask::Person) {
        recorded.household.talk.asked_at = Some(inbound.received_at);
    }
    let mut decision = finished(mind, situation, recorded, believed, advice, known, pieces, room, kind, inbound);
    if asks.contains(&Ask::Person) {
        decision.replies.extend(call_for(mind, situation, decision.household.as_ref(), inbound));
    }
    decision
}

/// A reply whose pieces are settled already, with the advice that now holds.
pub fn with_reply(
    mind: &Mind,
    situation: &Situation,
    recorded: Recorded,
    believed: Believed,
    mut pieces: Vec<Piece>,
    kind: Kind,
    inbound: &Inbound,
) -> Decision {
    let advice = believed.advise();
    let known = known_enough(&believed);
    let voice = Voice::to(&mind.catalog, &recorded.household);
    pieces.push(voice.doing(&advice, believed.for_today(), &believed.so_far.site, &believed.mix()));
    finished(mind, situation, recorded, believed, advice, known, pieces, Room::USUAL, kind, inbound)
}

#[expect(clippy::too_many_arguments, reason = "the last step of a reply gathers all that was worked out before")]
fn finished(
    mind: &Mind,
    situation: &Situation,
    recorded: Recorded,
    believed: Believed,
    advice: Advice,
    known: bool,
    pieces: Vec<Piece>,
    room: Room,
    kind: Kind,
    inbound: &Inbound,
) -> Decision {
    let mut household = recorded.household;
    let latin = Voice::to(&mind.catalog, &household).latin();
    let text = compose(pieces, room, latin);
    household.talk.last_heard = Some(believed.today);
    household.talk.silences = 0;
    household.talk.last_advice = Some(LastAdvice { at: inbound.sent_at, text: text.clone(), advice: advice.clone() });
    let mut due = vec![(Due::Silence, Some(inbound.received_at + Duration::days(SILENCE_DAYS)))];
    let first_day = if believed.for_today() { believed.today } else { believed.today.plus(1) };
    let rests = known && advice.hold_days > 0;
    due.push((Due::Ration, rests.then(|| rest_over_at(&household, first_day, advice.hold_days))));
    if known && !household.talk.chores_set && !household.talk.muted {
        household.talk.chores_set = true;
        due.push((Due::Chore, Some(first_chore_at(&household, believed.today))));
    }
    let (twin, checkpoints, drop_checkpoints_from) = believed.keep();
    let silent = matches!(situation.sender, Sender::Family { stopped: true, .. } | Sender::Stranger { stopped: true });
    let replies = match silent {
        true => vec![],
        false => vec![Outbound {
            id: answer_id(&inbound.gateway, &inbound.from, &inbound.id, 0),
            gateway: inbound.gateway.clone(),
            to: inbound.from.clone(),
            text,
            kind,
            advice: known.then_some(advice),
            not_before: inbound.received_at,
        }],
    };
    Decision {
        household: Some(household),
        facts: recorded.facts,
        twin: Some(twin),
        checkpoints,
        drop_checkpoints_from,
        replies,
        due,
        ..Decision::default()
    }
}

/// A notice of the bot's own doings: no facts, and the advice that stands already.
pub fn notice(situation: &Situation, household: Household, text: String, inbound: &Inbound) -> Decision {
    let recorded = Recorded { household, facts: vec![], taken_back: vec![], doubt: None };
    let believed = Believed::with(
        situation,
        &recorded,
        crate::record::local_day(inbound.received_at, &recorded.household.time_zone),
    );
    let known = known_enough(&believed) && situation.household.is_some();
    let advice = known.then(|| believed.advise());
    Decision {
        household: Some(recorded.household),
        replies: vec![Outbound {
            id: answer_id(&inbound.gateway, &inbound.from, &inbound.id, 0),
            gateway: inbound.gateway.clone(),
            to: inbound.from.clone(),
            text,
            kind: Kind::Notice,
            advice,
            not_before: inbound.received_at,
        }],
        ..Decision::default()
    }
}

/// Whether we know enough of a digester for advice on it to be more than a guess.
fn known_enough(believed: &Believed) -> bool {
    let site = &believed.so_far.site;
    let told = !believed.so_far.ledger.days.is_empty();
    site.tank_l.is_some() || site.started.is_some() || told
}

/// The last meal, for "same as yesterday", and the measures they count in, so that we answer in the same.
fn remember_meal(recorded: &mut Recorded) {
    // Soap or oil that fell in is no meal, and is not given again.
    let meal = |fact: &&Fact| match fact.what {
        What::Fed { feed, .. } => make_up(feed).is_food() && !make_up(feed).is(FeedKind::Greasy),
        What::Water { .. } => true,
        _ => false,
    };
    let told: Vec<Fact> = recorded.facts.iter().filter(meal).cloned().collect();
    let last = &mut recorded.household.talk.last_meal;
    last.retain(|fact| recorded.taken_back.iter().all(|taken| taken.id != fact.id));
    let later_the_same_day = last.iter().zip(&told).all(|(last, told)| last.day == told.day);
    if told.iter().any(|fact| matches!(fact.what, What::Fed { .. })) || (later_the_same_day && !last.is_empty()) {
        if !later_the_same_day {
            last.clear();
        }
        last.extend(told);
        last.truncate(PORTIONS_MOST);
    }
    for fact in &recorded.facts {
        match fact.what {
            What::Fed { unit: Some(unit), feed, .. } if make_up(feed).is_food() => {
                recorded.household.talk.feed_unit = Some(unit);
            }
            What::Water { unit: Some(unit), .. } => recorded.household.talk.water_unit = Some(unit),
            _ => {}
        }
    }
}

/// Portions of a day that are remembered for "same as yesterday".
const PORTIONS_MOST: usize = 12;

fn wanted_mending(settled: &Settled) -> bool {
    settled.reading.facts.iter().any(|told| matches!(told.what, What::Corrected { .. }))
}

/// Signs that have one step of their own; those of several causes are [`suspect`]'s.
fn signs(recorded: &Recorded) -> Vec<Sign> {
    recorded
        .facts
        .iter()
        .filter_map(|fact| match fact.what {
            What::Sign { sign } => Some(sign),
            _ => None,
        })
        .filter(|sign| *sign == Sign::SourSmell || Trouble::told_by(&What::Sign { sign: *sign }).is_none())
        .collect()
}

fn yellow(recorded: &Recorded) -> bool {
    recorded.facts.iter().any(|fact| fact.what == What::Flame { look: FlameLook::Yellow })
}

/// One piece for each thing they asked.
fn answers(
    voice: &Voice,
    asks: &[Ask],
    situation: &Situation,
    recorded: &Recorded,
    believed: &Believed,
    advice: &Advice,
) -> Vec<Piece> {
    asks.iter()
        .filter_map(|ask| match ask {
            Ask::Ration => None,
            Ask::Status => {
                let well = matches!(advice.verdict, Verdict::Feed);
                Some(Piece::new(
                    Rank::Heard,
                    voice.say(if well { "answer-status-good" } else { "answer-status-watch" }, &[]),
                ))
            }
            Ask::Water => {
                let of = super::amounts::amount(voice.catalog, voice.lang, advice.ration_kg.max(1.0), Unit::Kg);
                let water = voice.water(believed.water_for(advice.ration_kg.max(1.0)), &believed.so_far.site);
                Some(voice.must("answer-water", &[("feed", of.into()), ("water", water.into())]))
            }
            Ask::Gas if advice.reasons.contains(&Reason::FirstGas) => Some(voice.why(Rank::Must, Reason::FirstGas)),
            Ask::Gas => {
                let minutes = (advice.gas_minutes / 5.0).round() * 5.0;
                Some(voice.must("answer-gas", &[("minutes", Value::Number(minutes))]))
            }
            Ask::Why => {
                let last = recorded.household.talk.last_advice.as_ref().map_or(advice, |last| &last.advice);
                if last.reasons == [Reason::Usual] {
                    return Some(voice.must("answer-why-usual", &[]));
                }
                let reasons: Vec<String> =
                    last.reasons.iter().take(3).map(|reason| voice.say(&format!("why-{reason}"), &[])).collect();
                let shorter = (1..=reasons.len()).rev().map(|n| reasons[..n].join(" ")).collect();
                Some(Piece::or(Rank::Must, shorter))
            }
            Ask::Digestate => Some(voice.must("answer-digestate", &[])),
            Ask::StartUp => Some(voice.must("answer-start_up", &[])),
            Ask::Person => {
                let reachable = situation.on_call.iter().any(|worker| worker.phone.is_some());
                Some(voice.must(if reachable { "person-called" } else { "person-none" }, &[]))
            }
            Ask::CanMend { .. } => Some(voice.must("alkali-careful", &[])),
            Ask::CanFeed { feed } => Some(can_feed(voice, *feed)),
            Ask::History { .. } => Some(history(voice, believed)),
        })
        .collect()
}

/// Whether a food may go in, from what it is made of.
fn can_feed(voice: &Voice, feed: Feed) -> Piece {
    let made = make_up(feed);
    let sparing = [FeedKind::Greasy, FeedKind::Citrus, FeedKind::ProteinRich, FeedKind::Salty, FeedKind::Fibrous];
    let id = match () {
        () if !made.is_food() => "answer-can-no",
        () if sparing.iter().any(|kind| made.is(*kind)) => "answer-can-some",
        () => "answer-can-yes",
    };
    let feed = || [("feed", Value::from(voice.feed(feed)))];
    let mut said = vec![voice.say(id, &feed())];
    if id == "answer-can-yes" {
        said.push(voice.say("answer-can-yes-short", &feed()));
    }
    Piece::or(Rank::Must, said)
}

fn history(voice: &Voice, believed: &Believed) -> Piece {
    let days: Vec<_> = believed.so_far.ledger.window(believed.today, 7).collect();
    if days.is_empty() {
        return voice.must("answer-history-none", &[]);
    }
    let kg: f64 = days.iter().map(|day| day.wet().get()).sum();
    let water: f64 = days.iter().map(|day| day.water.get()).sum();
    let minutes: f64 = days.iter().filter_map(|day| day.burned).map(|m| m.get()).sum();
    let fed_days = days.iter().filter(|day| !day.portions.is_empty()).count();
    let say =
        |value: f64| Value::Text(super::amounts::number(voice.catalog, voice.lang, (value * 10.0).round() / 10.0));
    voice.must(
        "answer-history",
        &[("kg", say(kg)), ("days", Value::Number(fed_days as f64)), ("water", say(water)), ("minutes", say(minutes))],
    )
}

/// The text that asks the field worker to call them.
fn call_for(mind: &Mind, situation: &Situation, household: Option<&Household>, inbound: &Inbound) -> Option<Outbound> {
    let worker = situation.on_call.iter().find(|worker| worker.phone.is_some())?;
    let (to, gateway) = (worker.phone.clone()?, worker.gateway.clone()?);
    let voice = Voice::in_lang(&mind.catalog, &worker.lang);
    let name = household.map(crate::staff::name_of).unwrap_or_default();
    let text = voice.say("staff-person", &[("name", name.into()), ("number", inbound.from.as_str().into())]);
    Some(Outbound {
        id: answer_id(&inbound.gateway, &inbound.from, &inbound.id, 1),
        gateway,
        to,
        text: compose(vec![Piece::new(Rank::Must, text)], Room::STAFF, voice.latin()),
        kind: Kind::Staff,
        advice: None,
        not_before: inbound.received_at,
    })
}
