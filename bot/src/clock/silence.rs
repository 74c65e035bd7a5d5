//! A family that has gone silent is asked how things are; twice, then not any more.

use super::{must_wait, start};
use crate::household::{Decision, Due, Household, Situation};
use crate::mind::Mind;
use crate::record::local_day;
use chrono::{DateTime, Duration, Utc};

/// Days without a word after which we ask how things are; asked again after twice as long, then not any more.
/// Source: our choice.
pub const SILENCE_DAYS: i64 = 7;
const SILENCE_TIMES: u32 = 2;

pub fn ask(
    mind: &Mind,
    situation: &Situation,
    household: &Household,
    at: DateTime<Utc>,
    now: DateTime<Utc>,
) -> Decision {
    if household.talk.muted || situation.phones.is_empty() {
        return Decision::default();
    }
    if let Some(later) = must_wait(household, at, now) {
        return Decision { due: vec![(Due::Silence, Some(later))], ..Decision::default() };
    }
    let mut household = household.clone();
    household.talk.silences += 1;
    let today = local_day(now, &household.time_zone);
    let quiet_days = household.talk.last_heard.map_or(SILENCE_DAYS, |day| i64::from(today.since(day)));
    let again = (household.talk.silences < SILENCE_TIMES).then(|| at + Duration::days(2 * SILENCE_DAYS));
    let decision = start(mind, situation, household, Due::Silence, at, now, |voice, _| {
        vec![voice.must("remind-silence", &[("days", (quiet_days as f64).into())])]
    });
    Decision { due: again.map(|again| (Due::Silence, Some(again))).into_iter().collect(), ..decision }
}
