//! The nightly pass: which twins stand before a day, in shares that one node at a time works.
//!
//! A share is a lane of leases like any other: a node that dies in mid-pass leaves it to the others.

use super::rows::ms;
use super::{Lane, Store, StoreError};
use crate::household::HouseholdId;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};

/// Households in a share.
const SHARE: i64 = 32;

impl Store {
    /// How many twins stand before a day.
    pub async fn behind(&self, day: Day) -> Result<i64, StoreError> {
        let sql = "SELECT COUNT(*) FROM twin WHERE day < $1";
        Ok(sqlx::query_scalar(sql).bind(i64::from(day.0)).fetch_one(&self.read).await?)
    }

    /// The shares in which twins stand before a day.
    pub async fn shares_behind(&self, day: Day) -> Result<Vec<i64>, StoreError> {
        let sql = "SELECT DISTINCT household_id / $2 FROM twin WHERE day < $1 ORDER BY 1";
        Ok(sqlx::query_scalar(sql).bind(i64::from(day.0)).bind(SHARE).fetch_all(&self.read).await?)
    }

    /// The households of a share whose twins stand before a day.
    pub async fn behind_in(&self, share: i64, day: Day) -> Result<Vec<HouseholdId>, StoreError> {
        let sql =
            "SELECT household_id FROM twin WHERE household_id >= $1 AND household_id < $2 AND day < $3 ORDER BY 1";
        Ok(sqlx::query_scalar(sql)
            .bind(share * SHARE)
            .bind((share + 1) * SHARE)
            .bind(i64::from(day.0))
            .fetch_all(&self.read)
            .await?)
    }

    /// Takes a share, unless another node has it.
    pub async fn take_share(
        &self,
        owner: &str,
        share: i64,
        now: DateTime<Utc>,
        until: DateTime<Utc>,
    ) -> Result<Option<Lane>, StoreError> {
        let lane = Lane(format!("night:{share}"));
        let mut tx = self.begin("night").await?;
        let taken = super::lease::take(&mut tx, &lane.0, owner, ms(now), ms(until)).await?;
        self.commit("night", tx).await?;
        Ok(taken.then_some(lane))
    }

    /// Gives a lane back.
    pub async fn give_back(&self, owner: &str, lane: &Lane) -> Result<(), StoreError> {
        let mut tx = self.begin("night").await?;
        super::lease::give_back(&mut tx, &lane.0, owner).await?;
        self.commit("night", tx).await
    }
}
