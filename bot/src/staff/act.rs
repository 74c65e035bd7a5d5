//! What follows from an order about one household: a note, a word to the family, who looks after them, a cap lifted.
//!
//! Everything done here is written to the household's trail.

use super::{Order, answered, name_of};
use crate::clock::out_of_quiet;
use crate::deed::Did;
use crate::household::{CareNow, Decision, Due, Household, Situation, Staff};
use crate::message::{Inbound, Kind, Outbound, answer_id};
use crate::mind::Mind;
use crate::pages::need::{Need, need};
use crate::reply::catalog::Value;
use crate::reply::compose::{Room, compose};
use crate::reply::word::Voice;
use chrono::Duration;

/// How long a lifted cap stays lifted.
const UNCAPPED: Duration = Duration::days(1);

pub fn act(
    mind: &Mind,
    worker: &Staff,
    situation: &Situation,
    household: &Household,
    order: &Order,
    inbound: &Inbound,
) -> Decision {
    let voice = Voice::in_lang(&mind.catalog, &worker.lang);
    let values = [("name", Value::Text(name_of(household))), ("id", Value::Text(household.id.to_string()))];
    let say = |id: &str| vec![answered(mind, worker, inbound, vec![voice.must(id, &values)])];
    let done =
        |id: &str, did: Did| Decision { replies: say(id), audit: Some(did.by(&worker.name)), ..Decision::default() };
    let with = |change: &dyn Fn(&mut Household), decision: Decision| {
        let mut household = household.clone();
        change(&mut household);
        Decision { household: Some(household), ..decision }
    };
    match order {
        Order::Acknowledge(_) => Decision {
            acknowledged_by: Some(worker.id),
            due: vec![(Due::Alarm, None)],
            care: hands(worker, situation, household, inbound),
            ..done("staff-ok", Did::TookAlarm)
        },
        Order::Note(_, said) | Order::Tell(_, said) if said.is_empty() => {
            Decision { replies: say("staff-what"), ..Decision::default() }
        }
        Order::Note(_, said) => done("staff-note", Did::Noted { words: said.clone() }),
        Order::Tell(_, said) => match word(mind, worker, situation, household, said, inbound) {
            Err(id) => Decision { replies: say(id), ..Decision::default() },
            Ok(words) => {
                let mut decision = done("staff-tell", Did::ToldFamily { words: said.clone() });
                decision.replies.extend(words);
                decision
            }
        },
        Order::Take(_) => with(
            &|household| household.staff_id = Some(worker.id),
            Decision {
                acknowledged_by: (!situation.alarms.is_empty()).then_some(worker.id),
                due: vec![(Due::Alarm, None)],
                care: hands(worker, situation, household, inbound),
                ..done("staff-take", Did::TookOver)
            },
        ),
        Order::HandBack(_) if household.staff_id != Some(worker.id) => {
            Decision { replies: say("staff-not-yours"), ..Decision::default() }
        }
        Order::HandBack(_) => {
            let handed = done("staff-hand-back", Did::HandedBack);
            with(&|household| household.staff_id = None, Decision { care: Some(CareNow::GivenBack), ..handed })
        }
        Order::Done(_) if !situation.in_hand => Decision { replies: say("staff-done-none"), ..Decision::default() },
        Order::Done(_) => Decision { care: Some(CareNow::Done), ..done("staff-done", Did::HasSeenToIt) },
        Order::Lift(_) => with(
            &|household| household.talk.uncapped_until = Some(inbound.received_at + UNCAPPED),
            done("staff-lift", Did::LiftedCap),
        ),
        Order::Needs | Order::Pin(_) => Decision::default(),
    }
}

/// A worker's words as a family gets them, under the worker's name; `None` when they are too long.
pub fn word_from(mind: &Mind, worker: &str, household: &Household, said: &str) -> Option<String> {
    let voice = Voice::to(&mind.catalog, household);
    let piece = voice.must("staff-word", &[("worker", worker.into()), ("text", said.into())]);
    let text = compose(vec![piece], Room::STAFF, voice.latin());
    Room::STAFF.fits(&text).then_some(text)
}

/// The worker sees to the household's need from now on, as on the page of today; nothing where there is none.
fn hands(worker: &Staff, situation: &Situation, household: &Household, inbound: &Inbound) -> Option<CareNow> {
    let (need, _) = need(household, situation.alarms.len(), None, inbound.received_at);
    (need != Need::Well).then(|| CareNow::Taken { staff: worker.name.clone(), need: need.id().to_owned() })
}

/// The field worker's words, to each phone of the family that did not say stop, by day. Errors: the message to say why not.
fn word(
    mind: &Mind,
    worker: &Staff,
    situation: &Situation,
    household: &Household,
    said: &str,
    inbound: &Inbound,
) -> Result<Vec<Outbound>, &'static str> {
    if situation.phones.is_empty() {
        return Err("staff-tell-none");
    }
    let text = word_from(mind, &worker.name, household, said).ok_or("too-long")?;
    let words = situation.phones.iter().enumerate().map(|(at, phone)| Outbound {
        id: answer_id(&inbound.gateway, &inbound.from, &inbound.id, at + 1),
        gateway: phone.gateway.clone(),
        to: phone.number.clone(),
        text: text.clone(),
        kind: Kind::Notice,
        advice: None,
        not_before: out_of_quiet(inbound.received_at, &household.time_zone),
    });
    Ok(words.collect())
}
