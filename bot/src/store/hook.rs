//! Alarms on their way to a programme's own computer: each is tried by one node at a time until it is taken there.

use super::rows::{from_json, ms, time};
use super::{Store, StoreError};
use crate::household::HouseholdId;
use bellyful_core::fact::Sign;
use chrono::{DateTime, Utc};
use sqlx::Row;

/// An alarm to be told.
#[derive(Debug, Clone, PartialEq)]
pub struct AlarmOut {
    pub id: i64,
    pub household: HouseholdId,
    pub at: DateTime<Utc>,
    pub signs: Vec<Sign>,
    /// Tries begun, this one counted.
    pub calls: i64,
}

impl Store {
    /// Alarms since `since` that are not taken there yet and whose next try is due; ours alone until `until`.
    pub async fn claim_alarms(
        &self,
        since: DateTime<Utc>,
        now: DateTime<Utc>,
        until: DateTime<Utc>,
    ) -> Result<Vec<AlarmOut>, StoreError> {
        let waiting = sqlx::query(
            "SELECT id, household_id, at, signs, calls, call_next_at FROM alarm \
             WHERE called_at IS NULL AND at >= $1 AND call_next_at <= $2 ORDER BY at, id LIMIT 16",
        )
        .bind(ms(since))
        .bind(ms(now))
        .fetch_all(&self.read)
        .await?;
        let mut ours = vec![];
        for row in &waiting {
            let id: i64 = row.try_get("id")?;
            let mut tx = self.begin("hook").await?;
            let taken = sqlx::query(
                "UPDATE alarm SET call_next_at = $2, calls = calls + 1 \
                 WHERE id = $1 AND call_next_at = $3 AND called_at IS NULL",
            )
            .bind(id)
            .bind(ms(until))
            .bind(row.try_get::<i64, _>("call_next_at")?)
            .execute(&mut *tx)
            .await?;
            self.commit("hook", tx).await?;
            if taken.rows_affected() == 1 {
                ours.push(AlarmOut {
                    id,
                    household: row.try_get("household_id")?,
                    at: time(row.try_get("at")?)?,
                    signs: from_json("signs", row.try_get("signs")?)?,
                    calls: row.try_get::<i64, _>("calls")? + 1,
                });
            }
        }
        Ok(ours)
    }

    /// What came of a try: taken, or to be tried again.
    pub async fn settle_alarm(
        &self,
        id: i64,
        taken: bool,
        again: DateTime<Utc>,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let mut tx = self.begin("hook").await?;
        let sql = match taken {
            true => "UPDATE alarm SET called_at = $2 WHERE id = $1",
            false => "UPDATE alarm SET call_next_at = $2 WHERE id = $1 AND called_at IS NULL",
        };
        sqlx::query(sql).bind(id).bind(ms(if taken { now } else { again })).execute(&mut *tx).await?;
        self.commit("hook", tx).await
    }
}
