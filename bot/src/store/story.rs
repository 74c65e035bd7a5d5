//! What was said between a household and the bot, both ways, in order: for pages.

use super::rows::{from_json, time};
use super::{Store, StoreError};
use crate::household::HouseholdId;
use bellyful_core::advice::Advice;
use chrono::{DateTime, Utc};
use sqlx::Row;

/// One text of a conversation.
#[derive(Debug, Clone, PartialEq)]
pub struct Said {
    pub at: DateTime<Utc>,
    /// Ours, or theirs.
    pub ours: bool,
    pub number: String,
    pub text: String,
    /// Of ours only.
    pub kind: Option<String>,
    pub advice: Option<Advice>,
}

impl Store {
    /// A page of what a household was advised, in the order decided, after a number: number, moment, kind of text.
    pub async fn advice_after(
        &self,
        household: HouseholdId,
        after: i64,
        most: u32,
    ) -> Result<Vec<(i64, DateTime<Utc>, String, Advice)>, StoreError> {
        let rows = sqlx::query(
            "SELECT seq, created_at, kind, advice FROM outbox WHERE household_id = $1 AND seq > $2 \
             AND advice IS NOT NULL ORDER BY seq LIMIT $3",
        )
        .bind(household)
        .bind(after)
        .bind(i64::from(most))
        .fetch_all(&self.read)
        .await?;
        rows.iter()
            .map(|row| {
                let advice: String = row.try_get("advice")?;
                let at = time(row.try_get("created_at")?)?;
                Ok((row.try_get("seq")?, at, row.try_get("kind")?, from_json("advice", &advice)?))
            })
            .collect()
    }

    /// The last `most` texts with a household, oldest first; of numbers of no household, by number.
    pub async fn story(&self, household: HouseholdId, number: &str, most: u32) -> Result<Vec<Said>, StoreError> {
        let rows = sqlx::query(
            "SELECT * FROM (SELECT sent_at AS at, 0 AS ours, sender AS number, text, '' AS kind, NULL AS advice, id AS n \
             FROM inbox WHERE (household_id <> 0 AND household_id = $1) OR sender = $2 \
             UNION ALL SELECT CASE WHEN not_before > created_at THEN not_before ELSE created_at END, 1, recipient, text, \
             kind, advice, seq FROM outbox WHERE ((household_id <> 0 AND household_id = $1) OR recipient = $2) \
             AND kind <> 'staff') said ORDER BY at DESC, ours DESC, n DESC LIMIT $3",
        )
        .bind(household)
        .bind(number)
        .bind(i64::from(most))
        .fetch_all(&self.read)
        .await?;
        rows.iter()
            .rev()
            .map(|row| {
                let kind: String = row.try_get("kind")?;
                let advice: Option<String> = row.try_get("advice")?;
                Ok(Said {
                    at: time(row.try_get("at")?)?,
                    ours: row.try_get::<i64, _>("ours")? == 1,
                    number: row.try_get("number")?,
                    text: row.try_get("text")?,
                    kind: (!kind.is_empty()).then_some(kind),
                    advice: advice.map(|advice| from_json("advice", &advice)).transpose()?,
                })
            })
            .collect()
    }
}
