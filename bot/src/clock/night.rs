//! The nightly pass over one household: its twin moved to today, its risk as it stands, and a warning where rest is due.
//!
//! Takes the situation and the time; gives a decision that sends nothing itself: a warning waits for the morning.

use super::{MORNING, SILENT_DAYS, at_hour};
use crate::household::{Decision, Due, Foreseen, Household, Situation};
use crate::record::local_day;
use crate::twins::Believed;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};

/// What follows from the night at `now`; nothing where the twin stands at today already.
pub fn night(situation: &Situation, now: DateTime<Utc>) -> Decision {
    let (Some(household), Some(kept)) = (&situation.household, &situation.twin) else { return Decision::default() };
    let today = local_day(now, &household.time_zone);
    if kept.day >= today {
        return Decision::default();
    }
    let believed = Believed::on(situation, household, today);
    let advice = believed.advise();
    let warned = (advice.hold_days > 0 && follows_a_ration(household, today))
        .then(|| (Due::Ration, Some(at_hour(today, MORNING, &household.time_zone))));
    let (twin, checkpoints, _) = believed.keep();
    Decision {
        household: Some(household.clone()),
        twin: Some(twin),
        checkpoints,
        foreseen: Some(Foreseen { at: now, advice }),
        due: warned.into_iter().collect(),
        ..Decision::default()
    }
}

/// Whether they were told to feed, lately, so that a rest is news to them.
fn follows_a_ration(household: &Household, today: Day) -> bool {
    let heard = household.talk.last_heard.is_some_and(|day| today.since(day) <= SILENT_DAYS);
    heard && household.talk.last_advice.as_ref().is_some_and(|last| last.advice.hold_days == 0)
}
