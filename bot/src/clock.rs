//! What the clock wakes us for: an alarm nobody took, a family that has gone silent.
//!
//! Takes the situation and the time; gives a decision. Never more than one text a day to a family, none in the
//! quiet of its night but for danger.

use crate::household::{Decision, Due, Household, Situation};
use crate::message::{Kind, Outbound, answer_id};
use crate::mind::Mind;
use crate::record::local_day;
use crate::reply::compose::{Room, compose};
use crate::reply::word::Voice;
use crate::talk::{AGAIN_AFTER, tell_staff};
use crate::twins::Believed;
use chrono::{DateTime, Duration, NaiveTime, TimeZone, Utc};
use chrono_tz::Tz;

/// Days without a word after which we ask how things are; asked again after twice as long, then not any more.
/// Source: our choice.
pub const SILENCE_DAYS: i64 = 7;
const SILENCE_TIMES: u32 = 2;

/// Nothing of ours starts between these hours where the household lives. Source: our choice.
const QUIET_FROM: NaiveTime = NaiveTime::from_hms_opt(20, 0, 0).expect("a time of day");
const QUIET_UNTIL: NaiveTime = NaiveTime::from_hms_opt(7, 0, 0).expect("a time of day");

/// What follows from being woken for `due` at `at`.
pub fn decide(mind: &Mind, situation: &Situation, due: Due, at: DateTime<Utc>, now: DateTime<Utc>) -> Decision {
    let Some(household) = &situation.household else { return Decision::default() };
    match due {
        Due::Alarm => alarm_again(mind, situation, household, at, now),
        Due::Silence => silence(mind, situation, household, at, now),
        // Not set by anything yet: nothing follows.
        Due::Ration | Due::Cold | Due::Chore | Due::Night => Decision::default(),
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

/// The id of a text that the clock started: the same however often it is worked out.
fn clock_id(household: &Household, due: Due, at: DateTime<Utc>) -> String {
    answer_id("clock", &household.id.to_string(), &format!("{due} {}", at.timestamp_millis()), 0)
}

/// Told again, to the next person each time round.
fn alarm_again(
    mind: &Mind,
    situation: &Situation,
    household: &Household,
    at: DateTime<Utc>,
    now: DateTime<Utc>,
) -> Decision {
    let (Some(alarm), false) = (situation.alarms.first(), situation.on_call.is_empty()) else {
        return Decision::default();
    };
    let times = ((at - alarm.at).num_minutes() / AGAIN_AFTER.num_minutes()).max(0) as usize;
    let worker = &situation.on_call[times % situation.on_call.len()];
    let number = situation.phones.first().map(|phone| phone.number.as_str()).unwrap_or_default();
    let id = clock_id(household, Due::Alarm, at);
    Decision {
        replies: tell_staff(mind, worker, household, number, alarm, "staff-alarm-again", id, at).into_iter().collect(),
        due: vec![(Due::Alarm, Some(now.max(at) + AGAIN_AFTER))],
        ..Decision::default()
    }
}

fn silence(
    mind: &Mind,
    situation: &Situation,
    household: &Household,
    at: DateTime<Utc>,
    now: DateTime<Utc>,
) -> Decision {
    let mut household = household.clone();
    let (Some(phone), false) = (situation.phones.first(), household.talk.muted) else { return Decision::default() };
    let starts = out_of_quiet(at, &household.time_zone);
    if starts > now {
        return Decision { due: vec![(Due::Silence, Some(starts))], ..Decision::default() };
    }
    household.talk.silences += 1;
    let today = local_day(at, &household.time_zone);
    let believed = Believed::on(situation, &household, today);
    let quiet_days = household.talk.last_heard.map_or(SILENCE_DAYS, |day| i64::from(today.since(day)));
    let voice = Voice::to(&mind.catalog, &household);
    let text = voice.must("remind-silence", &[("days", (quiet_days as f64).into())]);
    let again = (household.talk.silences < SILENCE_TIMES).then(|| at + Duration::days(2 * SILENCE_DAYS));
    Decision {
        replies: vec![Outbound {
            id: clock_id(&household, Due::Silence, at),
            gateway: phone.gateway.clone(),
            to: phone.number.clone(),
            text: compose(vec![text], Room::USUAL, voice.latin()),
            kind: Kind::Reminder,
            advice: Some(believed.advise()),
            not_before: at,
        }],
        due: again.map(|again| (Due::Silence, Some(again))).into_iter().collect(),
        household: Some(household),
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
