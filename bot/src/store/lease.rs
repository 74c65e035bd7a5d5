//! Who works what: lanes, leased to a node until it is done or its heart stops.
//!
//! A lane is all the work of one household (or of one number that has none yet): its texts in the order sent, and
//! what the clock wakes us for. One node at a time holds a lane, so that texts of one household never overtake each
//! other; many lanes go in parallel. A node that dies stops moving its leases on, and others take them over.

use super::rows::{ms, time};
use super::{Dialect, Moment, Store, StoreError};
use crate::household::{Due, HouseholdId};
use crate::message::Inbound;
use chrono::{DateTime, Duration, Utc};
use sqlx::Row;
use std::collections::BTreeSet;

/// `h:12` for a household, `n:+15550100` for a number of none.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Lane(pub String);

impl Lane {
    pub fn of_household(id: HouseholdId) -> Lane {
        Lane(format!("h:{id}"))
    }

    pub fn household(&self) -> Option<HouseholdId> {
        self.0.strip_prefix("h:").and_then(|id| id.parse().ok())
    }
}

/// A text whose turn it is.
#[derive(Debug, Clone, PartialEq)]
pub struct Claim {
    pub row: i64,
    pub inbound: Inbound,
    /// Its alarm was answered on receipt.
    pub alarmed: bool,
    /// Turns that failed on it so far.
    pub tries: i64,
    /// Facts are kept, but of the replies only alarms and words to staff: why.
    pub quiet: Option<&'static str>,
}

/// The clock wakes us for a household.
#[derive(Debug, Clone, PartialEq)]
pub struct Wake {
    pub household: HouseholdId,
    pub due: Due,
    /// When it was to be.
    pub at: DateTime<Utc>,
    pub tries: i64,
}

/// What waits in a lane.
#[derive(Debug, Clone, PartialEq)]
pub enum Waiting {
    Text(Box<Claim>),
    Wake(Wake),
}

const NAME: &str = "claim";
/// A lease this far behind what a living node has is nobody's.
const LEFT_OVER: Duration = Duration::minutes(1);

/// Takes a lane if it is free; whether it was.
pub(super) async fn take(
    tx: &mut super::Tx,
    lane: &str,
    owner: &str,
    now_ms: i64,
    until_ms: i64,
) -> Result<bool, StoreError> {
    let taken = sqlx::query(
        "INSERT INTO lease (lane, owner, until_at) VALUES ($1, $2, $3) ON CONFLICT (lane) DO UPDATE \
         SET owner = excluded.owner, until_at = excluded.until_at WHERE lease.until_at <= $4",
    )
    .bind(lane)
    .bind(owner)
    .bind(until_ms)
    .bind(now_ms)
    .execute(&mut **tx)
    .await?;
    Ok(taken.rows_affected() == 1)
}

pub(super) async fn give_back(tx: &mut super::Tx, lane: &str, owner: &str) -> Result<(), StoreError> {
    sqlx::query("DELETE FROM lease WHERE lane = $1 AND owner = $2").bind(lane).bind(owner).execute(&mut **tx).await?;
    Ok(())
}

impl Store {
    /// Gives back the `finished` lanes and takes up to `most` free ones that have work waiting, texts before the
    /// clock's.
    pub async fn claim(
        &self,
        owner: &str,
        finished: &[Lane],
        most: usize,
        now: DateTime<Utc>,
        until: DateTime<Utc>,
    ) -> Result<Vec<Lane>, StoreError> {
        let mut tx = self.begin(NAME).await?;
        for lane in finished {
            give_back(&mut tx, &lane.0, owner).await?;
        }
        let texts = self.sql(
            "SELECT lane FROM inbox WHERE state = 'open' AND next_at <= $1 AND NOT EXISTS \
             (SELECT 1 FROM lease l WHERE l.lane = inbox.lane AND l.until_at > $1) ORDER BY next_at, id LIMIT $2",
            "SELECT lane FROM inbox WHERE state = 'open' AND next_at <= $1 AND NOT EXISTS \
             (SELECT 1 FROM lease l WHERE l.lane = inbox.lane AND l.until_at > $1) ORDER BY next_at, id LIMIT $2 \
             FOR UPDATE SKIP LOCKED",
        );
        let wakes = self.sql(
            "SELECT 'h:' || household_id FROM due WHERE at <= $1 AND NOT EXISTS \
             (SELECT 1 FROM lease l WHERE l.lane = 'h:' || due.household_id AND l.until_at > $1) \
             ORDER BY at LIMIT $2",
            "SELECT 'h:' || household_id FROM due WHERE at <= $1 AND NOT EXISTS \
             (SELECT 1 FROM lease l WHERE l.lane = 'h:' || due.household_id AND l.until_at > $1) \
             ORDER BY at LIMIT $2 FOR UPDATE SKIP LOCKED",
        );
        let mut lanes = Vec::new();
        let mut seen = BTreeSet::new();
        for sql in [texts, wakes] {
            if lanes.len() >= most {
                break;
            }
            let candidates: Vec<String> =
                sqlx::query_scalar(sql).bind(ms(now)).bind(most as i64).fetch_all(&mut *tx).await?;
            for lane in candidates {
                if lanes.len() >= most || !seen.insert(lane.clone()) {
                    continue;
                }
                if take(&mut tx, &lane, owner, ms(now), ms(until)).await? {
                    lanes.push(Lane(lane));
                }
            }
        }
        if lanes.is_empty() && finished.is_empty() {
            tx.rollback().await?;
            return Ok(lanes);
        }
        self.commit(NAME, tx).await?;
        Ok(lanes)
    }

    /// The heartbeat: moves the leases of the lanes that a node knows it holds on, and clears away what dead nodes left
    /// and nobody wanted. A lease that was taken without its node getting to know runs out like a dead node's.
    pub async fn renew(&self, owner: &str, held: &[Lane], until: DateTime<Utc>) -> Result<(), StoreError> {
        let mut tx = self.begin("renew").await?;
        let mut touched = 0;
        for lane in held {
            let moved = sqlx::query("UPDATE lease SET until_at = $3 WHERE lane = $1 AND owner = $2")
                .bind(&lane.0)
                .bind(owner)
                .bind(ms(until))
                .execute(&mut *tx)
                .await?;
            touched += moved.rows_affected();
        }
        let cleared =
            sqlx::query("DELETE FROM lease WHERE until_at < $1").bind(ms(until - LEFT_OVER)).execute(&mut *tx).await?;
        match touched + cleared.rows_affected() {
            0 => Ok(tx.rollback().await?),
            _ => self.commit("renew", tx).await,
        }
    }

    /// Gives up all leases of a node that stops.
    pub async fn release(&self, owner: &str) -> Result<(), StoreError> {
        let mut tx = self.begin("release").await?;
        sqlx::query("DELETE FROM lease WHERE owner = $1").bind(owner).execute(&mut *tx).await?;
        sqlx::query("UPDATE outbox SET until_at = 0 WHERE state = 'queued' AND owner = $1")
            .bind(owner)
            .execute(&mut *tx)
            .await?;
        self.commit("release", tx).await
    }

    /// SQLite serves one process: what a former one still held when it died is free at once.
    pub async fn release_left_over(&self) -> Result<(), StoreError> {
        if self.dialect == Dialect::Postgres {
            return Ok(());
        }
        let mut tx = self.begin("release").await?;
        sqlx::query("DELETE FROM lease").execute(&mut *tx).await?;
        sqlx::query("UPDATE outbox SET until_at = 0 WHERE state = 'queued' AND until_at > 0").execute(&mut *tx).await?;
        self.commit("release", tx).await
    }

    /// Leases that are held, by anyone.
    pub async fn leases(&self) -> Result<i64, StoreError> {
        Ok(sqlx::query_scalar("SELECT COUNT(*) FROM lease").fetch_one(&self.read).await?)
    }

    /// The next thing to do in a lane that is ours: its oldest text by time sent, else what the clock wakes us for.
    pub async fn waiting(&self, lane: &Lane, now: DateTime<Utc>) -> Result<Option<Waiting>, StoreError> {
        self.strike("waiting", Moment::Before)?;
        let row = sqlx::query(
            "SELECT id, gateway, sender, gateway_id, recipient, text, sent_at, received_at, alarmed, tries, next_at, \
             (SELECT household_id FROM phone WHERE number = inbox.sender) AS household_now \
             FROM inbox WHERE lane = $1 AND state = 'open' ORDER BY sent_at, id LIMIT 1",
        )
        .bind(&lane.0)
        .fetch_optional(&self.read)
        .await?;
        if let Some(row) = row {
            if row.try_get::<i64, _>("next_at")? > ms(now) {
                return Ok(None);
            }
            let id: i64 = row.try_get("id")?;
            if let Some(household) = row.try_get::<Option<i64>, _>("household_now")?
                && lane.household() != Some(household)
            {
                self.move_to_lane(id, household).await?;
                return Box::pin(self.waiting(lane, now)).await;
            }
            return Ok(Some(Waiting::Text(Box::new(Claim {
                row: id,
                inbound: Inbound {
                    gateway: row.try_get("gateway")?,
                    id: row.try_get("gateway_id")?,
                    from: row.try_get("sender")?,
                    to: row.try_get("recipient")?,
                    text: row.try_get("text")?,
                    sent_at: time(row.try_get("sent_at")?)?,
                    received_at: time(row.try_get("received_at")?)?,
                },
                alarmed: row.try_get::<i64, _>("alarmed")? != 0,
                tries: row.try_get("tries")?,
                quiet: None,
            }))));
        }
        let Some(household) = lane.household() else { return Ok(None) };
        let row = sqlx::query(
            "SELECT kind, at, tries FROM due WHERE household_id = $1 AND at <= $2 ORDER BY at, kind LIMIT 1",
        )
        .bind(household)
        .bind(ms(now))
        .fetch_optional(&self.read)
        .await?;
        row.map(|row| {
            Ok(Waiting::Wake(Wake {
                household,
                due: super::rows::listed("due", row.try_get("kind")?, Due::from_id)?,
                at: time(row.try_get("at")?)?,
                tries: row.try_get("tries")?,
            }))
        })
        .transpose()
    }

    /// A text came in while its sender's household was being set up or joined: it belongs in that lane.
    async fn move_to_lane(&self, row: i64, household: HouseholdId) -> Result<(), StoreError> {
        let mut tx = self.begin("move").await?;
        sqlx::query("UPDATE inbox SET lane = $2, household_id = $3 WHERE id = $1 AND state = 'open'")
            .bind(row)
            .bind(Lane::of_household(household).0)
            .bind(household)
            .execute(&mut *tx)
            .await?;
        self.commit("move", tx).await
    }
}
