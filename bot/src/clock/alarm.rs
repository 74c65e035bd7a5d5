//! An alarm that no field worker has taken is told again, to the next person each time round; the first time, too,
//! where the household was new when it came.

use super::clock_id;
use crate::household::{Decision, Due, Household, Situation};
use crate::mind::Mind;
use crate::talk::{AGAIN_AFTER, tell_staff};
use chrono::{DateTime, Utc};

pub fn again(
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
    let message = if times == 0 { "staff-alarm" } else { "staff-alarm-again" };
    Decision {
        replies: tell_staff(mind, worker, household, number, alarm, message, id, at).into_iter().collect(),
        due: vec![(Due::Alarm, Some(now.max(at) + AGAIN_AFTER))],
        ..Decision::default()
    }
}
