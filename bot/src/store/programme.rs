//! What a programme's month is summed from: facts and texts of many households at once.

use super::rows::time;
use super::{Store, StoreError};
use bellyful_core::fact::Fact;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};
use sqlx::Row;
use std::collections::BTreeMap;

/// A text, as the sums need it.
#[derive(Debug, Clone, PartialEq)]
pub struct Counted {
    pub at: DateTime<Utc>,
    pub ours: bool,
    /// Of ours; theirs are not paid by the programme.
    pub text: String,
}

impl Store {
    /// Facts of households `first` to `last` about the days from `since` on, with what is needed to read them: sizes
    /// of measures, country, place, and what was taken back.
    pub async fn facts_of_many(
        &self,
        first: i64,
        last: i64,
        since: Day,
    ) -> Result<BTreeMap<i64, Vec<Fact>>, StoreError> {
        let rows = sqlx::query(
            "SELECT household_id, id, day, told_at, what AS a FROM fact WHERE household_id BETWEEN $1 AND $2 AND \
             (day >= $3 OR what LIKE '%\"fact\":\"measure\"%' OR what LIKE '%\"fact\":\"country\"%' \
             OR what LIKE '%\"fact\":\"place\"%' OR what LIKE '%\"fact\":\"retracted\"%') ORDER BY household_id, id",
        )
        .bind(first)
        .bind(last)
        .bind(i64::from(since.0))
        .fetch_all(&self.read)
        .await?;
        let mut facts: BTreeMap<i64, Vec<Fact>> = BTreeMap::new();
        for row in &rows {
            facts.entry(row.try_get("household_id")?).or_default().push(super::household::fact(row)?);
        }
        Ok(facts)
    }

    /// Texts with households `first` to `last` since a moment, both ways.
    pub async fn texts_of_many(
        &self,
        first: i64,
        last: i64,
        since: DateTime<Utc>,
    ) -> Result<BTreeMap<i64, Vec<Counted>>, StoreError> {
        let rows = sqlx::query(
            "SELECT household_id, received_at AS at, 0 AS ours, '' AS text FROM inbox \
             WHERE household_id BETWEEN $1 AND $2 AND household_id <> 0 AND received_at >= $3 \
             UNION ALL SELECT household_id, created_at, 1, text FROM outbox \
             WHERE household_id BETWEEN $1 AND $2 AND household_id <> 0 AND created_at >= $3 \
             AND state IN ('queued', 'sent', 'delivered', 'failed')",
        )
        .bind(first)
        .bind(last)
        .bind(since.timestamp_millis())
        .fetch_all(&self.read)
        .await?;
        let mut texts: BTreeMap<i64, Vec<Counted>> = BTreeMap::new();
        for row in &rows {
            texts.entry(row.try_get("household_id")?).or_default().push(Counted {
                at: time(row.try_get("at")?)?,
                ours: row.try_get::<i64, _>("ours")? == 1,
                text: row.try_get("text")?,
            });
        }
        Ok(texts)
    }
}
