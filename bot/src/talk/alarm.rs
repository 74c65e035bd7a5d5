//! Danger: everyone out, in one text, before and above all else; then the field worker is told until one answers.
//!
//! Never asks, never names a dose, never waits for the model.

use crate::household::{Alarm, Decision, Due, Household, Situation, Staff};
use crate::message::{Inbound, Kind, Outbound, answer_id};
use crate::mind::Mind;
use crate::record::record;
use crate::reply::catalog::Value;
use crate::reply::compose::{Piece, Rank, Room, compose};
use crate::reply::word::Voice;
use crate::text::reading::Reading;
use bellyful_core::advice::{Advice, Reason, Verdict};
use bellyful_core::fact::{Sign, What};
use chrono::{DateTime, Duration, Utc};

/// Staff are told again after this long without an answer.
/// Source: our choice; long enough to reach a phone, short enough to send the next person the same hour.
pub const AGAIN_AFTER: Duration = Duration::minutes(15);

/// The text that gets people out, in the household's language, with the number to call where it is known.
pub fn alarm_text(mind: &Mind, lang: &str, country: Option<&str>) -> String {
    let number = mind.emergency_number(country).unwrap_or_else(|| "none".into());
    mind.catalog.say(lang, "alarm", &[("number", number.into())])
}

/// What follows from a text that tells of danger, whatever else it says.
pub fn alarm(
    mind: &Mind,
    situation: &Situation,
    household: Household,
    reading: &Reading,
    inbound: &Inbound,
) -> Decision {
    let signs: Vec<Sign> = reading
        .facts
        .iter()
        .filter_map(|told| match told.what {
            What::Sign { sign } if sign.is_danger() => Some(sign),
            _ => None,
        })
        .collect();
    let mut recorded = record(household, &situation.facts, reading, inbound.sent_at);
    recorded.household.talk.pending = None;
    recorded.household.talk.alarmed = true;
    let household = &recorded.household;
    let voice = Voice::to(&mind.catalog, household);
    let text = alarm_text(mind, voice.lang, household.country.as_deref());
    let text = compose(vec![Piece::new(Rank::Must, text)], Room::USUAL, voice.latin());
    let mut replies = vec![Outbound {
        id: answer_id(&inbound.gateway, &inbound.from, &inbound.id, 0),
        gateway: inbound.gateway.clone(),
        to: inbound.from.clone(),
        text,
        kind: Kind::Alarm,
        advice: Some(Advice {
            verdict: Verdict::Danger,
            ration_kg: 0.0,
            water_l: 0.0,
            hold_days: 0,
            gas_minutes: 0.0,
            risk: 0.0,
            reasons: vec![Reason::PeopleAtRisk],
        }),
        not_before: inbound.received_at,
    }];
    let alarm = Alarm { signs, said: inbound.text.clone(), at: inbound.received_at };
    // A household that is new has its number only once it is kept: the clock tells of it then, at once.
    let numbered = household.id != 0;
    if let Some(worker) = situation.on_call.first().filter(|_| numbered) {
        let id = answer_id(&inbound.gateway, &inbound.from, &inbound.id, 1);
        replies.extend(tell_staff(
            mind,
            worker,
            household,
            &inbound.from,
            &alarm,
            "staff-alarm",
            id,
            inbound.received_at,
        ));
    }
    Decision {
        facts: recorded.facts,
        replies,
        due: vec![(Due::Alarm, Some(if numbered { inbound.received_at + AGAIN_AFTER } else { inbound.received_at }))],
        alarm: Some(alarm),
        household: Some(recorded.household),
        ..Decision::default()
    }
}

/// The text that tells a field worker of an alarm; `None` when they have no phone.
#[expect(clippy::too_many_arguments, reason = "each is one word of the text")]
pub fn tell_staff(
    mind: &Mind,
    worker: &Staff,
    household: &Household,
    number: &str,
    alarm: &Alarm,
    message: &str,
    id: String,
    at: DateTime<Utc>,
) -> Option<Outbound> {
    let (to, gateway) = (worker.phone.clone()?, worker.gateway.clone()?);
    let voice = Voice::in_lang(&mind.catalog, &worker.lang);
    let signs = alarm.signs.iter().map(|sign| voice.sign_name(*sign)).collect::<Vec<_>>().join(", ");
    let said: String = alarm.said.chars().take(60).collect();
    let values: [(&'static str, Value); 5] = [
        ("name", crate::staff::name_of(household).into()),
        ("number", number.into()),
        ("signs", signs.into()),
        ("said", said.into()),
        ("id", Value::Text(household.id.to_string())),
    ];
    let text = compose(vec![voice.must(message, &values)], Room::STAFF, voice.latin());
    Some(Outbound { id, gateway, to, text, kind: Kind::Staff, advice: None, not_before: at })
}
