//! What staff did: written down in the transaction that did it.

use super::rows::{json, ms, time};
use super::{Store, StoreError, Tx};
use crate::deed::{Deed, Written};
use crate::household::HouseholdId;
use chrono::{DateTime, Utc};
use sqlx::Row;

/// Of no household: what is about the programme.
pub const PROGRAMME: HouseholdId = 0;

pub(super) async fn write_down(
    tx: &mut Tx,
    household: HouseholdId,
    deed: &Deed,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    sqlx::query("INSERT INTO audit (household_id, at, what) VALUES ($1, $2, $3)")
        .bind(household)
        .bind(ms(now))
        .bind(json(deed))
        .execute(&mut **tx)
        .await?;
    Ok(())
}

impl Store {
    /// Writes down what was done that is about no household.
    pub async fn write_down_alone(&self, deed: &Deed, now: DateTime<Utc>) -> Result<(), StoreError> {
        let mut tx = self.begin("audit").await?;
        write_down(&mut tx, PROGRAMME, deed, now).await?;
        self.commit("audit", tx).await
    }

    /// What staff did for a household, latest first.
    pub async fn trail(&self, household: HouseholdId, most: u32) -> Result<Vec<(DateTime<Utc>, Written)>, StoreError> {
        let rows = sqlx::query("SELECT at, what FROM audit WHERE household_id = $1 ORDER BY at DESC, id DESC LIMIT $2")
            .bind(household)
            .bind(i64::from(most))
            .fetch_all(&self.read)
            .await?;
        rows.iter().map(|row| Ok((time(row.try_get("at")?)?, Written::read(row.try_get("what")?)))).collect()
    }
}
