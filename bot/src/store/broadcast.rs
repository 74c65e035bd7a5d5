//! Broadcasts: one word of staff to many families, queued with the rest, followed and stopped by its number.

use super::queue::enqueue_each;
use super::rows::{ms, time};
use super::trail::{PROGRAMME, write_down};
use super::{Store, StoreError};
use crate::deed::Did;
use crate::household::{HouseholdId, Phone};
use crate::message::Outbound;
use chrono::{DateTime, Utc};
use sqlx::Row;
use std::collections::BTreeMap;

/// A broadcast as it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Broadcast {
    pub id: i64,
    pub at: DateTime<Utc>,
    pub staff: String,
    pub text: String,
    /// To whom, in words.
    pub audience: String,
    pub stopped_at: Option<DateTime<Utc>>,
    pub queued: i64,
    pub sent: i64,
    /// Refused, reported as failed, stopped or gone stale.
    pub not_sent: i64,
    /// When the last that still waits may go.
    pub last_at: Option<DateTime<Utc>>,
}

/// A broadcast to be made.
pub struct NewBroadcast<'a> {
    /// Made with the form: the same form sent twice is one broadcast.
    pub key: &'a str,
    pub staff: &'a str,
    pub text: &'a str,
    pub audience: &'a str,
    pub texts: &'a [(HouseholdId, Outbound)],
}

const COUNTED: &str = "SELECT b.id, b.at, b.staff, b.text, b.audience, b.stopped_at, \
    (SELECT COUNT(*) FROM outbox o WHERE o.broadcast_id = b.id AND o.state = 'queued') AS queued, \
    (SELECT COUNT(*) FROM outbox o WHERE o.broadcast_id = b.id AND o.state IN ('sent', 'delivered')) AS sent, \
    (SELECT COUNT(*) FROM outbox o WHERE o.broadcast_id = b.id AND o.state IN ('failed', 'refused', 'expired')) AS not_sent, \
    (SELECT MAX(o.not_before) FROM outbox o WHERE o.broadcast_id = b.id AND o.state = 'queued') AS last_at \
    FROM broadcast b WHERE b.id = $1 OR $1 = 0 ORDER BY b.id DESC LIMIT 30";

impl Store {
    /// Queues all texts of a broadcast, or none; its number, the old one where the form came before.
    pub async fn add_broadcast(&self, new: &NewBroadcast<'_>, now: DateTime<Utc>) -> Result<i64, StoreError> {
        let mut tx = self.begin("broadcast").await?;
        let made: Option<i64> = sqlx::query_scalar(
            "INSERT INTO broadcast (key, at, staff, text, audience) VALUES ($1, $2, $3, $4, $5) \
             ON CONFLICT (key) DO NOTHING RETURNING id",
        )
        .bind(new.key)
        .bind(ms(now))
        .bind(new.staff)
        .bind(new.text)
        .bind(new.audience)
        .fetch_optional(&mut *tx)
        .await?;
        let Some(id) = made else {
            let sql = "SELECT id FROM broadcast WHERE key = $1";
            return Ok(sqlx::query_scalar(sql).bind(new.key).fetch_one(&mut *tx).await?);
        };
        let texts: Vec<(HouseholdId, &Outbound)> =
            new.texts.iter().map(|(household, text)| (*household, text)).collect();
        enqueue_each(&mut tx, Some(id), None, &texts, now).await?;
        let (households, audience) = (new.texts.len(), new.audience.to_owned());
        let sent = Did::SentBroadcast { households, audience, words: new.text.to_owned() }.by(new.staff);
        write_down(&mut tx, PROGRAMME, &sent, now).await?;
        self.commit("broadcast", tx).await?;
        Ok(id)
    }

    /// Takes back what is not on its way yet; how many.
    pub async fn stop_broadcast(&self, id: i64, staff: &str, now: DateTime<Utc>) -> Result<u64, StoreError> {
        let mut tx = self.begin("broadcast").await?;
        sqlx::query("UPDATE broadcast SET stopped_at = $2 WHERE id = $1 AND stopped_at IS NULL")
            .bind(id)
            .bind(ms(now))
            .execute(&mut *tx)
            .await?;
        let back = sqlx::query(
            "UPDATE outbox SET state = 'expired', why = 'broadcast stopped', settled_at = $2 \
             WHERE broadcast_id = $1 AND state = 'queued' AND until_at <= $2",
        )
        .bind(id)
        .bind(ms(now))
        .execute(&mut *tx)
        .await?;
        let stopped = Did::StoppedBroadcast { id, unsent: back.rows_affected() }.by(staff);
        write_down(&mut tx, PROGRAMME, &stopped, now).await?;
        self.commit("broadcast", tx).await?;
        Ok(back.rows_affected())
    }

    /// The latest broadcasts, the last first.
    pub async fn broadcasts(&self) -> Result<Vec<Broadcast>, StoreError> {
        self.counted(0).await
    }

    pub async fn broadcast(&self, id: i64) -> Result<Option<Broadcast>, StoreError> {
        Ok(if id > 0 { self.counted(id).await?.pop() } else { None })
    }

    async fn counted(&self, id: i64) -> Result<Vec<Broadcast>, StoreError> {
        let rows = sqlx::query(COUNTED).bind(id).fetch_all(&self.read).await?;
        rows.iter()
            .map(|row| {
                let when = |column| row.try_get::<Option<i64>, _>(column).map(|at| at.map(time).transpose());
                Ok(Broadcast {
                    id: row.try_get("id")?,
                    at: time(row.try_get("at")?)?,
                    staff: row.try_get("staff")?,
                    text: row.try_get("text")?,
                    audience: row.try_get("audience")?,
                    stopped_at: when("stopped_at")??,
                    queued: row.try_get("queued")?,
                    sent: row.try_get("sent")?,
                    not_sent: row.try_get("not_sent")?,
                    last_at: when("last_at")??,
                })
            })
            .collect()
    }

    /// The first phone of each household that did not say stop.
    pub async fn first_phones(&self) -> Result<BTreeMap<HouseholdId, Phone>, StoreError> {
        let rows = sqlx::query(
            "SELECT household_id, gateway, number FROM phone \
             WHERE NOT EXISTS (SELECT 1 FROM stopped s WHERE s.number = phone.number) \
             ORDER BY household_id, since_at DESC, number DESC",
        )
        .fetch_all(&self.read)
        .await?;
        // The last of a household's rows, its first phone, is the one that stays.
        rows.iter()
            .map(|row| {
                let phone = Phone { gateway: row.try_get("gateway")?, number: row.try_get("number")? };
                Ok((row.try_get("household_id")?, phone))
            })
            .collect()
    }
}
