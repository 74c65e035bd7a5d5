//! How the gateways do: what came and went by each since a moment, and what waits.

use super::rows::{ms, time};
use super::{Store, StoreError};
use chrono::{DateTime, Utc};
use sqlx::Row;
use std::collections::BTreeMap;

/// One gateway's traffic.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Traffic {
    pub texts_in: i64,
    pub last_in: Option<DateTime<Utc>>,
    /// Handed over, whatever became of them.
    pub sent: i64,
    /// Reported as delivered.
    pub delivered: i64,
    /// Refused by the gateway, reported as failed, or too old to be worth sending.
    pub lost: i64,
    pub waiting: i64,
    pub waiting_since: Option<DateTime<Utc>>,
    /// What the gateway said last when it did not take a text.
    pub trouble: Option<String>,
}

impl Store {
    /// Traffic since a moment, by gateway; a gateway that saw none is not there.
    pub async fn traffic(
        &self,
        since: DateTime<Utc>,
        now: DateTime<Utc>,
    ) -> Result<BTreeMap<String, Traffic>, StoreError> {
        let mut all: BTreeMap<String, Traffic> = BTreeMap::new();
        let mut reader = self.read.acquire().await?;
        let sql = "SELECT gateway, COUNT(*) AS n, MAX(received_at) AS last FROM inbox WHERE received_at >= $1 GROUP BY gateway";
        for row in &sqlx::query(sql).bind(ms(since)).fetch_all(&mut *reader).await? {
            let traffic = all.entry(row.try_get("gateway")?).or_default();
            traffic.texts_in = row.try_get("n")?;
            traffic.last_in = row.try_get::<Option<i64>, _>("last")?.map(time).transpose()?;
        }
        let sql = "SELECT gateway, state, COUNT(*) AS n, MAX(why) AS why FROM outbox \
                   WHERE created_at >= $1 AND state <> 'queued' GROUP BY gateway, state";
        for row in &sqlx::query(sql).bind(ms(since)).fetch_all(&mut *reader).await? {
            let traffic = all.entry(row.try_get("gateway")?).or_default();
            let n: i64 = row.try_get("n")?;
            let why: Option<String> = row.try_get("why")?;
            match row.try_get::<&str, _>("state")? {
                "sent" => traffic.sent += n,
                "delivered" => (traffic.sent, traffic.delivered) = (traffic.sent + n, traffic.delivered + n),
                _ => (traffic.lost, traffic.trouble) = (traffic.lost + n, why.or(traffic.trouble.take())),
            }
        }
        let sql = "SELECT gateway, COUNT(*) AS n, MIN(not_before) AS since, MAX(why) AS why FROM outbox \
                   WHERE state = 'queued' AND not_before <= $1 GROUP BY gateway";
        for row in &sqlx::query(sql).bind(ms(now)).fetch_all(&mut *reader).await? {
            let traffic = all.entry(row.try_get("gateway")?).or_default();
            traffic.waiting = row.try_get("n")?;
            traffic.waiting_since = row.try_get::<Option<i64>, _>("since")?.map(time).transpose()?;
            traffic.trouble = row.try_get::<Option<String>, _>("why")?.or(traffic.trouble.take());
        }
        Ok(all)
    }
}
