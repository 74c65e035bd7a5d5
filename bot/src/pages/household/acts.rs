//! What staff do for a household on its page: notes, and taking an alarm.

use super::super::access::Worker;
use super::super::need::Need;
use super::super::{Broken, Pages};
use crate::deed::{Deed, Did};
use crate::household::{Decision, Due, Situation};
use crate::record::Recorded;
use crate::store::Cause;
use crate::twins::Believed;
use axum::Extension;
use axum::extract::{Form, Path, State};
use axum::response::Redirect;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};
use serde::Deserialize;
use std::sync::Arc;

/// Longest note.
const NOTE_MOST: usize = 1000;

#[derive(Deserialize)]
pub struct Note {
    note: String,
}

/// What staff told by hand, with the belief that comes of it.
pub(super) fn told_by_hand(situation: &Situation, recorded: Recorded, today: Day, audit: Deed) -> Decision {
    let (twin, checkpoints, drop_checkpoints_from) = Believed::with(situation, &recorded, today).keep();
    Decision {
        household: Some(recorded.household),
        facts: recorded.facts,
        twin: Some(twin),
        checkpoints,
        drop_checkpoints_from,
        audit: Some(audit),
        ..Decision::default()
    }
}

/// A note of staff, kept in the household's trail.
pub async fn note(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Form(form): Form<Note>,
) -> Result<Redirect, Broken> {
    let note: String = form.note.trim().chars().take(NOTE_MOST).collect();
    if !note.is_empty() {
        let now = (pages.clock)();
        let situation = known(&pages, id).await?;
        let decision = Decision { audit: Some(Did::Noted { words: note }.by(&worker.name)), ..Decision::default() };
        pages.store.keep(Cause::Hand, &situation, decision, now).await?;
    }
    Ok(Redirect::to(&format!("/household/{id}")))
}

/// An alarm is taken: it is not told again, and all see who has it.
pub async fn taken(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    let situation = known(&pages, id).await?;
    pages.store.take_care(id, Need::Danger.id(), &worker.name, now).await?;
    take_alarm(&pages, &situation, &worker, now).await?;
    Ok(Redirect::to(&format!("/household/{id}")))
}

/// Acknowledges a household's open alarms.
pub async fn take_alarm(
    pages: &Pages,
    situation: &Situation,
    worker: &Worker,
    now: DateTime<Utc>,
) -> Result<(), Broken> {
    let decision = Decision {
        acknowledged_by: Some(worker.id),
        due: vec![(Due::Alarm, None)],
        audit: Some(Did::TookAlarm.by(&worker.name)),
        ..Decision::default()
    };
    pages.store.keep(Cause::Hand, situation, decision, now).await?;
    Ok(())
}

/// The situation of a household that there is.
pub async fn known(pages: &Pages, id: i64) -> Result<Situation, Broken> {
    let situation = pages.store.situation_of(id).await?;
    if situation.household.is_none() { Err(Broken::NoHousehold(id)) } else { Ok(situation) }
}
