//! A rest: a family told not to feed is told when it may again, or that it must wait longer; one that was told to feed
//! is told when the night found that it must not.

use super::{MORNING, at_hour, must_wait, start};
use crate::household::{Decision, Due, Household, Situation};
use crate::mind::Mind;
use crate::record::local_day;
use crate::reply::heals;
use crate::twins::Believed;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};

/// When a rest of `days` days from `first` on is over, for the family's morning.
pub fn rest_over_at(household: &Household, first: Day, days: u32) -> DateTime<Utc> {
    at_hour(first.plus(days.min(60) as i32), MORNING, &household.time_zone)
}

pub fn over(
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
        return Decision { due: vec![(Due::Ration, Some(later))], ..Decision::default() };
    }
    let today = local_day(now, &household.time_zone);
    let advice = Believed::on(situation, household, today).advise();
    let held = advice.hold_days > 0;
    let rested = household.talk.last_advice.as_ref().is_none_or(|last| last.advice.hold_days > 0);
    let lead = match (rested, held) {
        (true, true) => "remind-rest-on",
        (true, false) => "remind-rest-over",
        (false, true) => "answer-status-watch",
        // They texted since, and know.
        (false, false) => return Decision::default(),
    };
    let decision = start(mind, situation, household.clone(), Due::Ration, at, now, |voice, believed| {
        let doing = voice.doing(&advice, believed.for_today(), &believed.so_far.site, &believed.mix());
        let mut pieces = vec![voice.must(lead, &[]), doing];
        pieces.extend(heals(voice, household, believed, &advice));
        pieces
    });
    let again = held.then(|| (Due::Ration, Some(rest_over_at(household, today, advice.hold_days))));
    Decision { due: again.into_iter().collect(), ..decision }
}
