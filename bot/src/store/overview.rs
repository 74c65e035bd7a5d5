//! All households at a glance: for the page of today.

use super::rows::{from_json, time};
use super::{Store, StoreError, household};
use crate::household::{Household, LastAdvice, Talk};
use bellyful_core::fact::Sign;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};
use serde::Deserialize;
use sqlx::Row;
use std::collections::BTreeMap;

/// A household as the page of today sees it.
#[derive(Debug, Clone, PartialEq)]
pub struct Seen {
    /// Of its talk only what [`Standing`] reads.
    pub household: Household,
    /// Where it is, in their words; empty until somebody says.
    pub place: String,
    /// Alarms that nobody has taken, oldest first.
    pub alarms: Vec<(DateTime<Utc>, Vec<Sign>)>,
}

/// What lists need of where the talk stands: reading all of it took them a quarter longer. Source: `--bench pages`.
#[derive(Deserialize, Default)]
#[serde(default)]
struct Standing {
    latin_script: bool,
    muted: bool,
    closed: bool,
    last_heard: Option<Day>,
    last_advice: Option<LastAdvice>,
}

impl From<Standing> for Talk {
    fn from(standing: Standing) -> Talk {
        let Standing { latin_script, muted, closed, last_heard, last_advice } = standing;
        Talk { latin_script, muted, closed, last_heard, last_advice, ..Talk::default() }
    }
}

impl Store {
    /// Households that were not erased, in order of number.
    pub async fn overview(&self) -> Result<Vec<Seen>, StoreError> {
        self.overview_after(0, u32::MAX).await
    }

    /// A page of them: those after a number.
    pub async fn overview_after(&self, after: i64, most: u32) -> Result<Vec<Seen>, StoreError> {
        let mut reader = self.read.acquire().await?;
        let rows = sqlx::query(
            "SELECT id, name, lang, country, time_zone, since_at, seed, staff_id, next_fact, talk, place FROM household \
             WHERE erased_at IS NULL AND id > $1 ORDER BY id LIMIT $2",
        )
        .bind(after)
        .bind(i64::from(most))
        .fetch_all(&mut *reader)
        .await?;
        let open = sqlx::query(
            "SELECT household_id, at, signs FROM alarm WHERE acknowledged_at IS NULL ORDER BY household_id, at",
        )
        .fetch_all(&mut *reader)
        .await?;
        let mut alarms: BTreeMap<i64, Vec<(DateTime<Utc>, Vec<Sign>)>> = BTreeMap::new();
        for row in &open {
            let signs: String = row.try_get("signs")?;
            let alarm = (time(row.try_get("at")?)?, from_json("signs", &signs)?);
            alarms.entry(row.try_get("household_id")?).or_default().push(alarm);
        }
        rows.iter()
            .map(|row| {
                let household = household::household_with::<Standing>(row)?;
                let alarms = alarms.remove(&household.id).unwrap_or_default();
                Ok(Seen { household, place: row.try_get("place")?, alarms })
            })
            .collect()
    }

    /// Kept twins of some households: what their pages' small charts are drawn from.
    pub async fn kept_twins(&self, households: &[i64]) -> Result<BTreeMap<i64, Vec<u8>>, StoreError> {
        let mut reader = self.read.acquire().await?;
        let mut twins = BTreeMap::new();
        for id in households {
            let bytes: Option<Vec<u8>> = sqlx::query_scalar("SELECT bytes FROM twin WHERE household_id = $1")
                .bind(id)
                .fetch_optional(&mut *reader)
                .await?;
            twins.extend(bytes.map(|bytes| (*id, bytes)));
        }
        Ok(twins)
    }
}
