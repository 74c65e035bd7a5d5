//! Orders to the bot itself: stop, start, help, undo, more, mute, forget, language.

use super::settle::Settled;
use crate::household::{Decision, Household, Pending, Sender, Situation, Topic};
use crate::message::{Inbound, Kind};
use crate::mind::Mind;
use crate::record::{Recorded, local_day, undo};
use crate::reply::answer::{notice, with_reply};
use crate::reply::compose::{Piece, Rank, Room, compose};
use crate::reply::word::Voice;
use crate::text::reading::Control;
use crate::twins::Believed;

/// What follows from an order; `None` when the text is none, or its facts come first.
pub fn obey(
    mind: &Mind,
    situation: &Situation,
    household: &Household,
    settled: &Settled,
    inbound: &Inbound,
) -> Option<Decision> {
    let stopped = matches!(situation.sender, Sender::Family { stopped: true, .. });
    let mut household = household.clone();
    household.talk.met = true;
    let say = |household: &Household, id: &str| {
        let voice = Voice::to(&mind.catalog, household);
        compose(vec![voice.must(id, &[])], Room::FIRST, voice.latin())
    };
    if let Some(agreed) = settled.agreed.filter(|_| asked_to_forget(&household)) {
        household.talk.pending = None;
        let text = say(&household, if agreed { "forgotten" } else { "kept" });
        let decision = notice(situation, household, text, inbound);
        return Some(Decision { forget: agreed, ..decision });
    }
    let notice_of = |household: Household, id: &str| {
        let text = say(&household, id);
        Some(notice(situation, household, text, inbound))
    };
    match settled.reading.control.as_ref()? {
        Control::Stop if stopped => Some(Decision { household: Some(household), ..Decision::default() }),
        Control::Stop => notice_of(household, "stopped").map(|d| Decision { stop: Some(true), ..d }),
        Control::Start => {
            household.talk.muted = false;
            notice_of(household, "started").map(|d| Decision { stop: Some(false), ..d })
        }
        Control::Help => notice_of(household, "help"),
        _ if stopped => None,
        Control::Mute => {
            household.talk.muted = true;
            notice_of(household, "muted")
        }
        Control::Forget => {
            household.talk.pending = Some(Pending::about(Topic::Forget, inbound.sent_at));
            notice_of(household, "forget-sure")
        }
        Control::More => match household.talk.more.is_empty() {
            true => notice_of(household, "nothing-more"),
            false => {
                let text = household.talk.more.remove(0);
                Some(notice(situation, household, text, inbound))
            }
        },
        Control::Language(Some(lang)) if mind.catalog.speaks(lang) => {
            household.lang = lang.clone();
            notice_of(household, "language-is")
        }
        Control::Language(_) => {
            let voice = Voice::to(&mind.catalog, &household);
            let written = |lang| mind.catalog.written(lang, voice.latin());
            let names: Vec<String> =
                mind.catalog.languages().map(|lang| mind.catalog.say(written(lang), "language-name", &[])).collect();
            let said = voice.say("language-unknown", &[("languages", names.join(", ").into())]);
            let text = compose(vec![Piece::new(Rank::Must, said)], Room::FIRST, voice.latin());
            Some(notice(situation, household, text, inbound))
        }
        Control::Undo => Some(take_back(mind, situation, household, inbound)),
        Control::Yes | Control::No => None,
    }
}

fn asked_to_forget(household: &Household) -> bool {
    household.talk.pending.as_ref().is_some_and(|pending| pending.topic == Topic::Forget)
}

fn take_back(mind: &Mind, situation: &Situation, household: Household, inbound: &Inbound) -> Decision {
    let today = local_day(inbound.received_at, &household.time_zone);
    match undo(household.clone(), &situation.facts, inbound.sent_at) {
        Ok(recorded) => {
            let Recorded { ref taken_back, .. } = recorded;
            let voice = Voice::to(&mind.catalog, &recorded.household);
            let pieces = voice.heard("undone", taken_back, today).into_iter().collect();
            let believed = Believed::with(situation, &recorded, today);
            with_reply(mind, situation, recorded, believed, pieces, Kind::Notice, inbound)
        }
        Err(_) => {
            let voice = Voice::to(&mind.catalog, &household);
            let text = compose(vec![voice.must("nothing-to-undo", &[])], Room::USUAL, voice.latin());
            notice(situation, household, text, inbound)
        }
    }
}
