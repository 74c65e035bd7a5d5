//! Who sees to a household: taken by one, known to all, done once.

use super::rows::{ms, time};
use super::trail::write_down;
use super::{Store, StoreError};
use crate::deed::Did;
use chrono::{DateTime, Utc};
use sqlx::Row;
use std::collections::BTreeMap;

/// Somebody sees to a household's need, or has seen to it.
#[derive(Debug, Clone, PartialEq)]
pub struct Care {
    pub need: String,
    pub staff: String,
    pub at: DateTime<Utc>,
    pub done_at: Option<DateTime<Utc>>,
}

/// Puts a household's need into somebody's hands.
pub(super) async fn take(
    tx: &mut super::Tx,
    household: i64,
    need: &str,
    staff: &str,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    sqlx::query(
        "INSERT INTO care (household_id, need, staff, at, done_at) VALUES ($1, $2, $3, $4, NULL) \
         ON CONFLICT (household_id) DO UPDATE SET need = excluded.need, staff = excluded.staff, \
         at = excluded.at, done_at = NULL",
    )
    .bind(household)
    .bind(need)
    .bind(staff)
    .bind(ms(now))
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// What was taken is seen to. Whether anything was taken and open.
pub(super) async fn end(tx: &mut super::Tx, household: i64, now: DateTime<Utc>) -> Result<bool, StoreError> {
    let done = sqlx::query("UPDATE care SET done_at = $2 WHERE household_id = $1 AND done_at IS NULL")
        .bind(household)
        .bind(ms(now))
        .execute(&mut **tx)
        .await?;
    Ok(done.rows_affected() > 0)
}

impl Store {
    /// A member of staff takes a household's need on; the one who had it before has it no more.
    pub async fn take_care(
        &self,
        household: i64,
        need: &str,
        staff: &str,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let mut tx = self.begin("care").await?;
        take(&mut tx, household, need, staff, now).await?;
        write_down(&mut tx, household, &Did::SeesToIt.by(staff), now).await?;
        self.commit("care", tx).await
    }

    /// What was taken is seen to. Whether anything was taken and open.
    pub async fn end_care(&self, household: i64, staff: &str, now: DateTime<Utc>) -> Result<bool, StoreError> {
        let mut tx = self.begin("care").await?;
        let done = end(&mut tx, household, now).await?;
        if done {
            write_down(&mut tx, household, &Did::HasSeenToIt.by(staff), now).await?;
        }
        self.commit("care", tx).await?;
        Ok(done)
    }

    /// Who took what since, by household.
    pub async fn cares(&self, since: DateTime<Utc>) -> Result<BTreeMap<i64, Care>, StoreError> {
        let rows =
            sqlx::query("SELECT household_id, need, staff, at, done_at FROM care WHERE at >= $1 OR done_at >= $1")
                .bind(ms(since))
                .fetch_all(&self.read)
                .await?;
        rows.iter()
            .map(|row| {
                let care = Care {
                    need: row.try_get("need")?,
                    staff: row.try_get("staff")?,
                    at: time(row.try_get("at")?)?,
                    done_at: row.try_get::<Option<i64>, _>("done_at")?.map(time).transpose()?,
                };
                Ok((row.try_get("household_id")?, care))
            })
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[tokio::test]
    async fn what_is_done_is_done_for_everybody_and_taken_anew_is_open_again() {
        let store = Store::in_memory().await.expect("a store");
        let at = |minutes: i64| DateTime::from_timestamp(1_780_000_000 + minutes * 60, 0).expect("in range");
        store.take_care(7, "souring", "Asha", at(0)).await.expect("kept");
        assert_eq!(store.cares(at(0)).await.expect("read")[&7].done_at, None);
        assert!(store.end_care(7, "Ben", at(5)).await.expect("kept"));
        assert!(!store.end_care(7, "Asha", at(6)).await.expect("kept"), "done once");
        assert_eq!(store.cares(at(0)).await.expect("read")[&7].done_at, Some(at(5)));
        store.take_care(7, "leak", "Ben", at(9)).await.expect("kept");
        let care = store.cares(at(0)).await.expect("read").remove(&7).expect("there");
        assert_eq!((care.staff.as_str(), care.need.as_str(), care.done_at), ("Ben", "leak", None));
        assert_eq!(store.trail(7, 9).await.expect("read").len(), 3);
    }
}
