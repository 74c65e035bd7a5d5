//! What becomes of a text that is not answered by a turn, and what a number sent lately.

use super::rows::{ms, time};
use super::{Claim, Store, StoreError, Wake};
use crate::message::Outbound;
use chrono::{DateTime, Utc};
use sqlx::Row;

bellyful_core::ids!(/// What became of a text.
    PastState { Open = "open", Answered = "answered", Skipped = "skipped", Failed = "failed" });

/// A text a number sent before.
#[derive(Debug, Clone, PartialEq)]
pub struct Past {
    pub row: i64,
    pub text: String,
    pub received_at: DateTime<Utc>,
    pub state: PastState,
}

/// Most of a number's past that the guards look at.
const PAST_MOST: i64 = 256;

impl Store {
    /// What this number sent since `since`, newest first.
    pub async fn past(&self, number: &str, since: DateTime<Utc>) -> Result<Vec<Past>, StoreError> {
        let rows = sqlx::query(
            "SELECT id, text, received_at, state FROM inbox WHERE sender = $1 AND received_at >= $2 \
             ORDER BY received_at DESC, id DESC LIMIT $3",
        )
        .bind(number)
        .bind(ms(since))
        .bind(PAST_MOST)
        .fetch_all(&self.read)
        .await?;
        rows.iter()
            .map(|row| {
                Ok(Past {
                    row: row.try_get("id")?,
                    text: row.try_get("text")?,
                    received_at: time(row.try_get("received_at")?)?,
                    state: super::rows::listed("state", row.try_get("state")?, PastState::from_id)?,
                })
            })
            .collect()
    }

    /// What we sent to this number since `since`, newest first.
    pub async fn said_to(&self, number: &str, since: DateTime<Utc>) -> Result<Vec<String>, StoreError> {
        Ok(sqlx::query_scalar(
            "SELECT text FROM outbox WHERE recipient = $1 AND created_at >= $2 ORDER BY created_at DESC LIMIT 8",
        )
        .bind(number)
        .bind(ms(since))
        .fetch_all(&self.read)
        .await?)
    }

    /// Leaves a text without an answer, for a reason that is counted.
    pub async fn skip(&self, claim: &Claim, why: &str, now: DateTime<Utc>) -> Result<(), StoreError> {
        let mut tx = self.begin("skip").await?;
        sqlx::query("UPDATE inbox SET state = 'skipped', why = $2, done_at = $3 WHERE id = $1 AND state = 'open'")
            .bind(claim.row)
            .bind(why)
            .bind(ms(now))
            .execute(&mut *tx)
            .await?;
        self.commit("skip", tx).await
    }

    /// A turn failed: the text is tried again at `again`, or else is set aside, answered with `apology`.
    pub async fn failed(
        &self,
        claim: &Claim,
        why: &str,
        again: Option<DateTime<Utc>>,
        apology: Option<Outbound>,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let mut tx = self.begin("failed").await?;
        let state = if again.is_some() { "open" } else { "failed" };
        let moved = sqlx::query(
            "UPDATE inbox SET state = $2, why = $3, tries = tries + 1, next_at = $4, done_at = $5 \
             WHERE id = $1 AND state = 'open'",
        )
        .bind(claim.row)
        .bind(state)
        .bind(why)
        .bind(ms(again.unwrap_or(now)))
        .bind(again.is_none().then_some(ms(now)))
        .execute(&mut *tx)
        .await?;
        if moved.rows_affected() == 1
            && again.is_none()
            && let Some(apology) = &apology
        {
            super::queue::enqueue(&mut tx, 0, Some(claim.row), &[apology], now).await?;
        }
        self.commit("failed", tx).await
    }

    /// What the clock woke us for failed, or left its own row as it was: it is tried again at `again`.
    pub async fn wake_again(&self, wake: &Wake, again: DateTime<Utc>) -> Result<(), StoreError> {
        let mut tx = self.begin("wake_again").await?;
        sqlx::query("UPDATE due SET at = $4, tries = tries + 1 WHERE household_id = $1 AND kind = $2 AND at = $3")
            .bind(wake.household)
            .bind(wake.due.id())
            .bind(ms(wake.at))
            .bind(ms(again))
            .execute(&mut *tx)
            .await?;
        self.commit("wake_again", tx).await
    }

    /// How many texts wait for their turn, and since when the oldest does.
    pub async fn backlog(&self) -> Result<(i64, Option<DateTime<Utc>>), StoreError> {
        let row = sqlx::query("SELECT COUNT(*) AS texts, MIN(received_at) AS oldest FROM inbox WHERE state = 'open'")
            .fetch_one(&self.read)
            .await?;
        let oldest: Option<i64> = row.try_get("oldest")?;
        Ok((row.try_get("texts")?, oldest.map(time).transpose()?))
    }
}
