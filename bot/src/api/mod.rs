//! JSON for programmes: households, what they told, what they were advised. Reads only.
//!
//! Takes calls with a token; gives pages of JSON as `openapi.json` describes. Names need the scope `people`; numbers
//! and texts are never given.

mod series;

use crate::household::Household;
use crate::pages::Pages;
use crate::pages::need::need;
use crate::pages::programme::Asked as MonthsAsked;
use crate::store::{Seen, Store, StoreError};
use axum::extract::rejection::{PathRejection, QueryRejection};
use axum::extract::{Path, Query, State};
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use axum::routing::get;
use axum::{Extension, Json, Router};
use bellyful_core::advice::Advice;
use bellyful_core::fact::{Fact, What};
use bellyful_core::ids;
use chrono::{DateTime, Duration, NaiveDate, Utc};
use serde::{Deserialize, Serialize};
use std::sync::Arc;

ids!(/// What a token may see; each may all that those before may.
    Scope { Read = "read", People = "people" });

/// Most of anything in one answer.
const MOST: u32 = 500;
const USUAL: u32 = 100;

/// The description of all this, open to everybody.
pub const OPENAPI: &str = include_str!("openapi.json");

/// The routes, each open to those that the table of [`crate::pages::access`] names.
pub fn routes() -> Router<Arc<Pages>> {
    let described = get(|| async { ([(header::CONTENT_TYPE, "application/json")], OPENAPI) });
    Router::new()
        .route("/api/openapi.json", described)
        .route("/api/households", get(households))
        .route("/api/households/{id}", get(household))
        .route("/api/households/{id}/facts", get(facts))
        .route("/api/households/{id}/series", get(series::series))
        .route("/api/households/{id}/advice", get(series::advice))
        .route("/api/programme", get(programme))
}

/// An answer that says what to do.
#[derive(Debug, thiserror::Error)]
pub enum Refused {
    #[error("Give a token as `Authorization: Bearer TOKEN`; `bellyful token add NAME` makes one.")]
    Token,
    #[error("This token's scope does not allow this; `bellyful token add NAME --scope people` makes one that does.")]
    Scope,
    #[error("Give `after` and `most` as whole numbers of 0 or more.")]
    Page(#[from] QueryRejection),
    #[error("Give `after` as a day such as 2026-03-01, and `most` as a whole number.")]
    Days,
    #[error(
        "Give `months` from 1 to 36, `fuel` by its id, `non_renewable` from 0 to 1, `after` and `most` as whole numbers."
    )]
    Months,
    #[error("Give a household's number in the path.")]
    Path(#[from] PathRejection),
    #[error("There is no household {0}.")]
    NoHousehold(i64),
    #[error("The store cannot be read just now; ask again later.")]
    Store(#[from] StoreError),
    #[error("The answer could not be made; ask again later.")]
    Broken(#[from] crate::pages::Broken),
}

impl IntoResponse for Refused {
    fn into_response(self) -> Response {
        let status = match &self {
            Refused::Token => StatusCode::UNAUTHORIZED,
            Refused::Scope => StatusCode::FORBIDDEN,
            Refused::Page(_) | Refused::Path(_) | Refused::Days | Refused::Months => StatusCode::BAD_REQUEST,
            Refused::NoHousehold(_) => StatusCode::NOT_FOUND,
            Refused::Store(error) => {
                tracing::error!(%error, "an answer could not be made");
                StatusCode::SERVICE_UNAVAILABLE
            }
            Refused::Broken(error) => {
                tracing::error!(%error, "an answer could not be made");
                StatusCode::SERVICE_UNAVAILABLE
            }
        };
        (status, Json(serde_json::json!({ "error": self.to_string() }))).into_response()
    }
}

#[derive(Deserialize)]
pub struct Page {
    /// The last number of the page before.
    #[serde(default)]
    after: i64,
    most: Option<u32>,
}

impl Page {
    fn most(&self) -> u32 {
        self.most.unwrap_or(USUAL).clamp(1, MOST)
    }
}

#[derive(Serialize)]
struct HouseholdOut {
    id: i64,
    #[serde(skip_serializing_if = "Option::is_none")]
    name: Option<String>,
    lang: String,
    country: Option<String>,
    time_zone: String,
    since: DateTime<Utc>,
    last_heard: Option<NaiveDate>,
    need: &'static str,
    open_alarms: usize,
    advised_at: Option<DateTime<Utc>>,
    advice: Option<Advice>,
}

fn out(seen: Seen, scope: Scope, now: DateTime<Utc>) -> HouseholdOut {
    let (need, _) = need(&seen.household, seen.alarms.len(), None, now);
    let Household { id, name, lang, country, time_zone, since, talk, .. } = seen.household;
    HouseholdOut {
        id,
        name: (scope >= Scope::People).then_some(name),
        lang,
        country,
        time_zone,
        since,
        last_heard: talk.last_heard.map(|day| date(day.0)),
        need: need.id(),
        open_alarms: seen.alarms.len(),
        advised_at: talk.last_advice.as_ref().map(|last| last.at),
        advice: talk.last_advice.map(|last| last.advice),
    }
}

fn date(day: i32) -> NaiveDate {
    NaiveDate::default() + Duration::days(i64::from(day))
}

async fn households(
    State(pages): State<Arc<Pages>>,
    Extension(scope): Extension<Scope>,
    page: Result<Query<Page>, QueryRejection>,
) -> Result<Response, Refused> {
    let Query(page) = page?;
    let now = (pages.clock)();
    let seen = pages.store.overview_after(page.after, page.most()).await?;
    let next = (seen.len() == page.most() as usize).then(|| seen.last().map(|seen| seen.household.id)).flatten();
    let households: Vec<HouseholdOut> = seen.into_iter().map(|seen| out(seen, scope, now)).collect();
    Ok(Json(serde_json::json!({ "households": households, "next": next })).into_response())
}

async fn one(store: &Store, id: i64) -> Result<Seen, Refused> {
    let found = store.overview_after(id.saturating_sub(1), 1).await?;
    found.into_iter().find(|seen| seen.household.id == id).ok_or(Refused::NoHousehold(id))
}

async fn household(
    State(pages): State<Arc<Pages>>,
    Extension(scope): Extension<Scope>,
    id: Result<Path<i64>, PathRejection>,
) -> Result<Response, Refused> {
    let Path(id) = id?;
    let seen = one(&pages.store, id).await?;
    Ok(Json(out(seen, scope, (pages.clock)())).into_response())
}

#[derive(Serialize)]
struct FactOut {
    id: i64,
    day: NaiveDate,
    told_at: Option<DateTime<Utc>>,
    #[serde(flatten)]
    what: What,
}

/// What they told, in the order told; a place is told only to those who may know names.
async fn facts(
    State(pages): State<Arc<Pages>>,
    Extension(scope): Extension<Scope>,
    id: Result<Path<i64>, PathRejection>,
    page: Result<Query<Page>, QueryRejection>,
) -> Result<Response, Refused> {
    let (Path(id), Query(page)) = (id?, page?);
    one(&pages.store, id).await?;
    let found: Vec<Fact> = pages.store.facts_after(id, page.after, page.most()).await?;
    let next = (found.len() == page.most() as usize).then(|| found.last().map(|fact| fact.id)).flatten();
    let shown = |fact: &Fact| scope >= Scope::People || !matches!(fact.what, What::Place { .. } | What::Sited { .. });
    let facts: Vec<FactOut> = found
        .into_iter()
        .filter(shown)
        .map(|Fact { id, day, told_at, what }| FactOut {
            id,
            day: date(day.0),
            told_at: DateTime::from_timestamp(told_at, 0),
            what,
        })
        .collect();
    Ok(Json(serde_json::json!({ "facts": facts, "next": next })).into_response())
}

/// A row a household and month, counted as the page does; names and places only to those who may know them.
async fn programme(
    State(pages): State<Arc<Pages>>,
    Extension(scope): Extension<Scope>,
    page: Result<Query<Page>, QueryRejection>,
    asked: Result<Query<MonthsAsked>, QueryRejection>,
) -> Result<Response, Refused> {
    let (Ok(Query(page)), Ok(Query(asked))) = (page, asked) else { return Err(Refused::Months) };
    let seen = pages.store.overview_after(page.after, page.most()).await?;
    let next = (seen.len() == page.most() as usize).then(|| seen.last().map(|seen| seen.household.id)).flatten();
    let months = crate::pages::programme::rows(&pages, seen, &asked, scope >= Scope::People).await?;
    Ok(Json(serde_json::json!({ "months": months, "next": next })).into_response())
}
