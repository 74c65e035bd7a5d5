//! A household day by day, as its page draws it: what was told, what the load came to, what is believed, what was advised.
//!
//! Takes a household's facts and the twin as it stands; gives rows of numbers. Keeps nothing.

use super::{Page, Refused, date};
use crate::pages::Pages;
use crate::record::local_day;
use crate::twins::Believed;
use axum::Json;
use axum::extract::rejection::{PathRejection, QueryRejection};
use axum::extract::{Path, Query, State};
use axum::response::{IntoResponse, Response};
use bellyful_core::advice::Advice;
use bellyful_core::ledger::Ledger;
use bellyful_core::units::Day;
use chrono::{DateTime, NaiveDate, Utc};
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// One day. Numbers that nobody told are left out.
#[derive(Serialize)]
struct DayOut {
    day: NaiveDate,
    fed_kg: Option<f64>,
    water_l: Option<f64>,
    cooked_min: Option<f64>,
    /// Over the seven days up to this one. Units: kg VS/m3/d.
    olr: f64,
    /// Believed. Units: °C.
    slurry_c: f64,
    slurry_told_c: Option<f64>,
    ph_told: Option<f64>,
}

#[derive(Deserialize)]
pub struct Days {
    /// The last day of the page before, or the day before the first wanted.
    after: Option<NaiveDate>,
    most: Option<u32>,
}

pub async fn series(
    State(pages): State<Arc<Pages>>,
    id: Result<Path<i64>, PathRejection>,
    days: Result<Query<Days>, QueryRejection>,
) -> Result<Response, Refused> {
    let Path(id) = id?;
    let Query(days) = days.map_err(|_| Refused::Days)?;
    let situation = pages.store.situation_of(id).await?;
    let household = situation.household.as_ref().ok_or(Refused::NoHousehold(id))?;
    let today = local_day((pages.clock)(), &household.time_zone);
    let facts = pages.store.facts(id).await?;
    let believed = Believed::on(&situation, household, today);
    let ledger = Ledger::of(&facts, &believed.so_far.site);
    let first = facts.iter().map(|fact| fact.day).min().unwrap_or(today);
    let after = days.after.map(|day| Day(day.signed_duration_since(NaiveDate::default()).num_days() as i32));
    let from = after.map_or(first, |after| first.max(after.plus(1)));
    let most = Page { after: 0, most: days.most }.most() as i32;
    let last = Day(today.0.min(from.0.saturating_add(most - 1)));
    let liquid = believed.so_far.liquid();
    let shown: Vec<DayOut> = (from.0..=last.0)
        .map(Day)
        .map(|day| {
            let told = ledger.on(day);
            DayOut {
                day: date(day.0),
                fed_kg: told.filter(|told| !told.portions.is_empty()).map(|told| told.wet().get()),
                water_l: told.map(|told| told.water.get()).filter(|water| *water > 0.0),
                cooked_min: told.and_then(|told| told.burned).map(|minutes| minutes.get()),
                olr: ledger.load(day, 7, liquid).olr,
                slurry_c: believed.so_far.slurry_c(day),
                slurry_told_c: told.and_then(|told| told.slurry_c),
                ph_told: told.and_then(|told| told.ph),
            }
        })
        .collect();
    let next = (last < today).then(|| shown.last().map(|day| day.day)).flatten();
    Ok(Json(serde_json::json!({ "days": shown, "next": next })).into_response())
}

/// One advice as it was given.
#[derive(Serialize)]
struct Advised {
    id: i64,
    at: DateTime<Utc>,
    kind: String,
    advice: Advice,
}

/// What a household was advised, in the order given.
pub async fn advice(
    State(pages): State<Arc<Pages>>,
    id: Result<Path<i64>, PathRejection>,
    page: Result<Query<Page>, QueryRejection>,
) -> Result<Response, Refused> {
    let (Path(id), Query(page)) = (id?, page?);
    super::one(&pages.store, id).await?;
    let kept = pages.store.advice_after(id, page.after, page.most()).await?;
    let found: Vec<Advised> = kept.into_iter().map(|(id, at, kind, advice)| Advised { id, at, kind, advice }).collect();
    let next = (found.len() == page.most() as usize).then(|| found.last().map(|advised| advised.id)).flatten();
    Ok(Json(serde_json::json!({ "advice": found, "next": next })).into_response())
}
