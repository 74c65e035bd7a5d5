//! Visits of staff: what was looked at, and what was found.

use super::photo::{self, Photo};
use super::rows::{from_json, json, listed, ms, time};
use super::trail::write_down;
use super::{Store, StoreError};
use crate::deed::Did;
use crate::pages::visit::Errand;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};
use sqlx::Row;
use std::collections::BTreeMap;

/// One visit.
#[derive(Debug, Clone, PartialEq)]
pub struct Visit {
    pub at: DateTime<Utc>,
    pub day: Day,
    pub kind: Errand,
    pub staff: String,
    /// Whether each check that was looked at was good.
    pub found: BTreeMap<String, bool>,
    pub note: String,
    /// Numbers of the photos taken on it.
    pub photos: Vec<i64>,
}

impl Store {
    /// Keeps a visit with its photos, and a line of it in the household's trail.
    pub async fn keep_visit(&self, household: i64, visit: &Visit, photos: Vec<Photo>) -> Result<(), StoreError> {
        let mut tx = self.begin("visit").await?;
        let id: i64 = sqlx::query_scalar(
            "INSERT INTO visit (household_id, at, day, kind, staff, found, note) VALUES ($1, $2, $3, $4, $5, $6, $7) \
             RETURNING id",
        )
        .bind(household)
        .bind(ms(visit.at))
        .bind(i64::from(visit.day.0))
        .bind(visit.kind.id())
        .bind(&visit.staff)
        .bind(json(&visit.found))
        .bind(&visit.note)
        .fetch_one(&mut *tx)
        .await?;
        photo::keep(&mut tx, household, id, photos, visit.at).await?;
        write_down(&mut tx, household, &Did::Visited { errand: visit.kind }.by(&visit.staff), visit.at).await?;
        self.commit("visit", tx).await
    }

    /// A household's visits, latest first.
    pub async fn visits(&self, household: i64, most: u32) -> Result<Vec<Visit>, StoreError> {
        let rows = sqlx::query(
            "SELECT id, at, day, kind, staff, found, note FROM visit WHERE household_id = $1 ORDER BY day DESC, id DESC \
             LIMIT $2",
        )
        .bind(household)
        .bind(i64::from(most))
        .fetch_all(&self.read)
        .await?;
        let mut photos = self.photos_by_visit(household).await?;
        rows.iter()
            .map(|row| {
                Ok(Visit {
                    at: time(row.try_get("at")?)?,
                    day: super::rows::day(row, "day")?,
                    kind: listed("errand", row.try_get("kind")?, Errand::from_id)?,
                    staff: row.try_get("staff")?,
                    found: from_json("found", row.try_get("found")?)?,
                    note: row.try_get("note")?,
                    photos: photos.remove(&row.try_get("id")?).unwrap_or_default(),
                })
            })
            .collect()
    }
}
