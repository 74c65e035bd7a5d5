//! What the clock wakes us for: an alarm nobody took, a family that has gone silent, a rest that begins or is over,
//! chores; and the nightly pass.
//!
//! Takes the situation and the time; gives a decision. Never more than one text a day to a family, none in the
//! quiet of its night, none to who muted us, but for danger.

mod alarm;
mod chores;
mod night;
mod rest;
mod silence;

use crate::household::{Decision, Due, Household, Situation};
use crate::message::{Kind, Outbound, answer_id};
use crate::mind::Mind;
use crate::record::local_day;
use crate::reply::compose::{Piece, Room, compose};
use crate::reply::word::Voice;
use crate::twins::Believed;
use bellyful_core::units::Day;
pub use chores::first_chore_at;
use chrono::{DateTime, Duration, NaiveTime, TimeZone, Utc};
use chrono_tz::Tz;
pub use night::night;
pub use rest::rest_over_at;
pub use silence::SILENCE_DAYS;

/// Nothing of ours starts between these hours where the household lives. Source: our choice.
const QUIET_FROM: NaiveTime = NaiveTime::from_hms_opt(20, 0, 0).expect("a time of day");
const QUIET_UNTIL: NaiveTime = NaiveTime::from_hms_opt(7, 0, 0).expect("a time of day");

/// What follows from being woken for `due` at `at`.
pub fn decide(mind: &Mind, situation: &Situation, due: Due, at: DateTime<Utc>, now: DateTime<Utc>) -> Decision {
    let Some(household) = &situation.household else { return Decision::default() };
    match due {
        Due::Alarm => alarm::again(mind, situation, household, at, now),
        Due::Silence => silence::ask(mind, situation, household, at, now),
        Due::Ration => rest::over(mind, situation, household, at, now),
        Due::Chore => chores::remind(mind, situation, household, at, now),
    }
}

/// The first moment from `at` on that is not in the quiet of the household's night.
pub fn out_of_quiet(at: DateTime<Utc>, time_zone: &str) -> DateTime<Utc> {
    let tz: Tz = time_zone.parse().unwrap_or(Tz::UTC);
    let local = at.with_timezone(&tz);
    let day = match local.time() {
        time if time < QUIET_UNTIL => local.date_naive(),
        time if time >= QUIET_FROM => local.date_naive() + Duration::days(1),
        _ => return at,
    };
    tz.from_local_datetime(&day.and_time(QUIET_UNTIL)).earliest().map_or(at, |local| local.with_timezone(&Utc))
}

/// `hour` o'clock of a day where the household lives.
fn at_hour(day: Day, hour: u32, time_zone: &str) -> DateTime<Utc> {
    let tz: Tz = time_zone.parse().unwrap_or(Tz::UTC);
    let date = chrono::NaiveDate::default() + Duration::days(i64::from(day.0));
    let local = date.and_time(NaiveTime::from_hms_opt(hour, 0, 0).unwrap_or(QUIET_UNTIL));
    tz.from_local_datetime(&local).earliest().map_or_else(|| local.and_utc(), |local| local.with_timezone(&Utc))
}

/// The id of a text that the clock started: the same however often it is worked out.
fn clock_id(household: &Household, due: Due, at: DateTime<Utc>) -> String {
    answer_id("clock", &household.id.to_string(), &format!("{due} {}", at.timestamp_millis()), 0)
}

/// When a text of ours may start at the earliest, if not now: after the night, or tomorrow where one started today.
fn must_wait(household: &Household, at: DateTime<Utc>, now: DateTime<Utc>) -> Option<DateTime<Utc>> {
    let starts = out_of_quiet(now.max(at), &household.time_zone);
    let today = local_day(now, &household.time_zone);
    match household.talk.started_on == Some(today) {
        true => Some(at_hour(today.plus(1), MORNING, &household.time_zone)),
        false => (starts > now).then_some(starts),
    }
}

/// A family silent for longer is asked how it is, before it is told anything else. Source: our choice.
const SILENT_DAYS: i32 = 6;
/// The hour that texts put off to another day start at. Source: our choice.
const MORNING: u32 = 8;

/// A text that we start, with what stands of the advice; the twin is kept as far as it was moved.
fn start(
    mind: &Mind,
    situation: &Situation,
    mut household: Household,
    due: Due,
    at: DateTime<Utc>,
    now: DateTime<Utc>,
    pieces: impl FnOnce(&Voice, &Believed) -> Vec<Piece>,
) -> Decision {
    let Some(phone) = situation.phones.first() else { return Decision::default() };
    let today = local_day(now, &household.time_zone);
    let believed = Believed::on(situation, &household, today);
    let voice = Voice::to(&mind.catalog, &household);
    let text = compose(pieces(&voice, &believed), Room::USUAL, voice.latin());
    let advice = believed.advise();
    let (twin, checkpoints, _) = believed.keep();
    household.talk.started_on = Some(today);
    Decision {
        replies: vec![Outbound {
            id: clock_id(&household, due, at),
            gateway: phone.gateway.clone(),
            to: phone.number.clone(),
            text,
            kind: Kind::Reminder,
            advice: Some(advice),
            not_before: at,
        }],
        household: Some(household),
        twin: Some(twin),
        checkpoints,
        ..Decision::default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_we_start_waits_for_the_familys_morning() {
        let check = |at: &str, zone: &str, expected: &str| {
            let at: DateTime<Utc> = at.parse().expect("a time");
            assert_eq!(out_of_quiet(at, zone), expected.parse::<DateTime<Utc>>().expect("a time"));
        };
        check("2026-03-01T09:00:00Z", "UTC", "2026-03-01T09:00:00Z");
        check("2026-03-01T03:00:00Z", "UTC", "2026-03-01T07:00:00Z");
        check("2026-03-01T21:00:00Z", "UTC", "2026-03-02T07:00:00Z");
        check("2026-03-01T21:00:00Z", "Africa/Nairobi", "2026-03-02T04:00:00Z");
        check("2026-03-01T02:00:00Z", "Asia/Kolkata", "2026-03-01T02:00:00Z");
    }
}
