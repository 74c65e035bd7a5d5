//! Texts out: leased by whoever sends them, settled by what the gateway says. How they got here is [`super::queue`].
//!
//! To one recipient they go one after the other, in the order decided; an alarm waits for nothing.

use super::rows::{listed, ms, time};
use super::{Store, StoreError};
use crate::household::HouseholdId;
use crate::message::Kind;
use chrono::{DateTime, Duration, Utc};
use sqlx::Row;

/// A text that is ours to send now.
#[derive(Debug, Clone, PartialEq)]
pub struct ToSend {
    pub seq: i64,
    pub id: String,
    pub household: HouseholdId,
    pub gateway: String,
    pub to: String,
    pub text: String,
    pub kind: Kind,
    /// Sends begun, this one counted.
    pub tries: i64,
    /// A former send has no known outcome: the gateway may have it already.
    pub maybe_sent: bool,
    /// The household asked to be forgotten: nothing of this stays once it is sent.
    pub erase: bool,
    /// Not before this: other nodes send by the same gateway.
    pub at: DateTime<Utc>,
}

/// What came of a send.
#[derive(Debug, Clone, PartialEq)]
pub enum Outcome {
    /// Taken, under the gateway's own id if it gave one.
    Sent {
        wire_id: Option<String>,
    },
    /// Will never be taken.
    Refused {
        why: String,
    },
    Again {
        at: DateTime<Utc>,
        why: String,
    },
}

bellyful_core::ids!(/// What a delivery report says.
    Receipt { Delivered = "delivered", Failed = "failed" });

/// Which text a delivery report is about.
#[derive(Debug, Clone, PartialEq)]
pub enum ByWire<'a> {
    Ours(&'a str),
    Theirs(&'a str),
}

macro_rules! claim {
    ($lock:literal) => {
        concat!(
            "SELECT seq, id, household_id, gateway, recipient, text, kind, tries, owner, expires_at, ",
            "(SELECT erased_at FROM household h WHERE h.id = o.household_id) AS erased_at FROM outbox o ",
            "WHERE state = 'queued' AND gateway = $1 AND next_at <= $2 AND until_at <= $2 AND (urgent = 1 OR ",
            "NOT EXISTS (SELECT 1 FROM outbox p WHERE p.state = 'queued' AND p.recipient = o.recipient ",
            "AND p.seq < o.seq AND p.not_before <= $2)) ORDER BY urgent DESC, next_at, seq LIMIT $3",
            $lock
        )
    };
}

/// How far ahead texts are taken up whose moment is still to come: as long as a sender may sleep, and again.
const AHEAD: Duration = Duration::seconds(1);

/// A gateway's way out is a lane that nobody holds: the next text may go when its lease is over.
fn way_out(gateway: &str) -> String {
    format!("out:{gateway}")
}

/// When the next text may go by this gateway; no other node gets to know before this transaction is over.
async fn next_free(tx: &mut super::Tx, gateway: &str, now: DateTime<Utc>) -> Result<DateTime<Utc>, StoreError> {
    let until: i64 = sqlx::query_scalar(
        "INSERT INTO lease (lane, owner, until_at) VALUES ($1, '', $2) \
         ON CONFLICT (lane) DO UPDATE SET owner = '' RETURNING until_at",
    )
    .bind(way_out(gateway))
    .bind(ms(now))
    .fetch_one(&mut **tx)
    .await?;
    time(until)
}

impl Store {
    /// Leases up to `most` texts of a gateway that are to be sent now; those that are stale by now are dropped.
    pub async fn claim_sends(
        &self,
        owner: &str,
        gateway: &str,
        most: usize,
        now: DateTime<Utc>,
        until: DateTime<Utc>,
    ) -> Result<Vec<ToSend>, StoreError> {
        self.claim_sends_at(owner, gateway, most, None, now, until).await
    }

    /// The same, with `apart` between any two texts that go by this gateway, whichever nodes send them.
    pub async fn claim_sends_at(
        &self,
        owner: &str,
        gateway: &str,
        most: usize,
        apart: Option<Duration>,
        now: DateTime<Utc>,
        until: DateTime<Utc>,
    ) -> Result<Vec<ToSend>, StoreError> {
        const NAME: &str = "claim_sends";
        let waiting: i64 = sqlx::query_scalar(
            "SELECT COUNT(*) FROM (SELECT 1 FROM outbox WHERE state = 'queued' AND gateway = $1 AND next_at <= $2 \
             AND until_at <= $2 LIMIT 1) one",
        )
        .bind(gateway)
        .bind(ms(now))
        .fetch_one(&self.read)
        .await?;
        if waiting == 0 {
            return Ok(Vec::new());
        }
        let mut tx = self.begin(NAME).await?;
        let mut free = now;
        let mut most = most as i64;
        if let Some(apart) = apart {
            free = next_free(&mut tx, gateway, now).await?.max(now);
            let room = (now + AHEAD - free).num_milliseconds();
            most = most.min(if room < 0 { 0 } else { room / apart.num_milliseconds().max(1) + 1 });
            if most == 0 {
                tx.rollback().await?;
                return Ok(Vec::new());
            }
        }
        let rows = sqlx::query(self.sql(claim!(""), claim!(" FOR UPDATE SKIP LOCKED")))
            .bind(gateway)
            .bind(ms(now))
            .bind(most)
            .fetch_all(&mut *tx)
            .await?;
        let mut texts = Vec::with_capacity(rows.len());
        for row in &rows {
            let seq: i64 = row.try_get("seq")?;
            if row.try_get::<i64, _>("expires_at")? <= ms(now) {
                metrics::counter!("bellyful_sends_total", "outcome" => "expired").increment(1);
                sqlx::query("UPDATE outbox SET state = 'expired', settled_at = $2 WHERE seq = $1")
                    .bind(seq)
                    .bind(ms(now))
                    .execute(&mut *tx)
                    .await?;
                if row.try_get::<Option<i64>, _>("erased_at")?.is_some() {
                    super::forget::forget_sent(&mut tx, seq).await?;
                }
                continue;
            }
            sqlx::query("UPDATE outbox SET owner = $2, until_at = $3, tries = tries + 1 WHERE seq = $1")
                .bind(seq)
                .bind(owner)
                .bind(ms(until))
                .execute(&mut *tx)
                .await?;
            texts.push(ToSend {
                seq,
                id: row.try_get("id")?,
                household: row.try_get("household_id")?,
                gateway: row.try_get("gateway")?,
                to: row.try_get("recipient")?,
                text: row.try_get("text")?,
                kind: listed("kind", row.try_get("kind")?, Kind::from_id)?,
                tries: row.try_get::<i64, _>("tries")? + 1,
                maybe_sent: row.try_get::<Option<String>, _>("owner")?.is_some(),
                erase: row.try_get::<Option<i64>, _>("erased_at")?.is_some(),
                at: free,
            });
            free += apart.unwrap_or_default();
        }
        if apart.is_some() {
            sqlx::query("UPDATE lease SET until_at = $2 WHERE lane = $1")
                .bind(way_out(gateway))
                .bind(ms(free))
                .execute(&mut *tx)
                .await?;
        }
        self.commit(NAME, tx).await?;
        Ok(texts)
    }

    /// Leases the one text with this id, if it waits, to be handed over in a response.
    pub async fn claim_one(
        &self,
        owner: &str,
        id: &str,
        now: DateTime<Utc>,
        until: DateTime<Utc>,
    ) -> Result<Option<ToSend>, StoreError> {
        let waiting = sqlx::query(
            "SELECT seq, household_id, gateway, recipient, text, kind, tries, owner, \
             (SELECT erased_at FROM household h WHERE h.id = o.household_id) AS erased_at FROM outbox o \
             WHERE id = $1 AND state = 'queued' AND until_at <= $2",
        )
        .bind(id)
        .bind(ms(now))
        .fetch_optional(&self.read)
        .await?;
        let Some(row) = waiting else { return Ok(None) };
        let mut tx = self.begin("claim_one").await?;
        let taken = sqlx::query(
            "UPDATE outbox SET owner = $2, until_at = $3, tries = tries + 1 \
             WHERE id = $1 AND state = 'queued' AND until_at <= $4",
        )
        .bind(id)
        .bind(owner)
        .bind(ms(until))
        .bind(ms(now))
        .execute(&mut *tx)
        .await?;
        self.commit("claim_one", tx).await?;
        if taken.rows_affected() == 0 {
            return Ok(None);
        }
        Ok(Some(ToSend {
            seq: row.try_get("seq")?,
            id: id.to_owned(),
            household: row.try_get("household_id")?,
            gateway: row.try_get("gateway")?,
            to: row.try_get("recipient")?,
            text: row.try_get("text")?,
            kind: listed("kind", row.try_get("kind")?, Kind::from_id)?,
            tries: row.try_get::<i64, _>("tries")? + 1,
            maybe_sent: row.try_get::<Option<String>, _>("owner")?.is_some(),
            erase: row.try_get::<Option<i64>, _>("erased_at")?.is_some(),
            at: now,
        }))
    }

    /// Recipient and words of the text with this id, if it was sent and is not erased.
    pub async fn sent_before(&self, id: &str) -> Result<Option<(String, String)>, StoreError> {
        let sql = "SELECT recipient, text FROM outbox WHERE id = $1 AND state IN ('sent', 'delivered') AND text <> ''";
        let row = sqlx::query(sql).bind(id).fetch_optional(&self.read).await?;
        row.map(|row| Ok((row.try_get("recipient")?, row.try_get("text")?))).transpose()
    }

    /// Moves the leases of texts that are being sent on.
    pub async fn renew_sends(&self, owner: &str, sends: &[i64], until: DateTime<Utc>) -> Result<(), StoreError> {
        if sends.is_empty() {
            return Ok(());
        }
        let mut tx = self.begin("renew").await?;
        for seq in sends {
            sqlx::query("UPDATE outbox SET until_at = $3 WHERE seq = $1 AND owner = $2 AND state = 'queued'")
                .bind(seq)
                .bind(owner)
                .bind(ms(until))
                .execute(&mut *tx)
                .await?;
        }
        self.commit("renew", tx).await
    }

    /// Writes down what came of sends.
    pub async fn settle(&self, sends: &[(ToSend, Outcome)], now: DateTime<Utc>) -> Result<(), StoreError> {
        let mut tx = self.begin("settle").await?;
        for (send, outcome) in sends {
            match outcome {
                Outcome::Again { at, why } => {
                    sqlx::query(
                        "UPDATE outbox SET next_at = $2, why = $3, owner = NULL, until_at = 0 \
                         WHERE seq = $1 AND state = 'queued'",
                    )
                    .bind(send.seq)
                    .bind(ms(*at))
                    .bind(why)
                    .execute(&mut *tx)
                    .await?;
                }
                Outcome::Sent { wire_id } => {
                    // A delivery report may have been faster; it stands.
                    sqlx::query(
                        "UPDATE outbox SET state = CASE WHEN state = 'queued' THEN 'sent' ELSE state END, \
                         wire_id = $2, why = NULL, until_at = 0, settled_at = $3 WHERE seq = $1",
                    )
                    .bind(send.seq)
                    .bind(wire_id)
                    .bind(ms(now))
                    .execute(&mut *tx)
                    .await?;
                }
                Outcome::Refused { why } => {
                    sqlx::query(
                        "UPDATE outbox SET state = 'refused', why = $2, until_at = 0, settled_at = $3 \
                         WHERE seq = $1 AND state = 'queued'",
                    )
                    .bind(send.seq)
                    .bind(why)
                    .bind(ms(now))
                    .execute(&mut *tx)
                    .await?;
                }
            }
            if send.erase && !matches!(outcome, Outcome::Again { .. }) {
                super::forget::forget_sent(&mut tx, send.seq).await?;
            }
        }
        self.commit("settle", tx).await
    }

    /// All that waits for a gateway by now is sent: for simulations, whose network takes everything at once.
    pub async fn all_sent(&self, gateway: &str, now: DateTime<Utc>) -> Result<u64, StoreError> {
        let mut tx = self.begin("all_sent").await?;
        let sent = sqlx::query(
            "UPDATE outbox SET state = 'sent', settled_at = $2 \
             WHERE gateway = $1 AND state = 'queued' AND not_before <= $2",
        )
        .bind(gateway)
        .bind(ms(now))
        .execute(&mut *tx)
        .await?;
        self.commit("all_sent", tx).await?;
        Ok(sent.rows_affected())
    }

    /// The text with this id was sent outside the queue: it is not sent again.
    pub async fn sent_directly(&self, id: &str, now: DateTime<Utc>) -> Result<(), StoreError> {
        let mut tx = self.begin("sent_directly").await?;
        sqlx::query("UPDATE outbox SET state = 'sent', settled_at = $2 WHERE id = $1 AND state = 'queued'")
            .bind(id)
            .bind(ms(now))
            .execute(&mut *tx)
            .await?;
        self.commit("sent_directly", tx).await
    }

    /// Writes down a delivery report; whether its text is known. Reports may come twice and in any order: delivered
    /// is the last word.
    pub async fn receipt(
        &self,
        gateway: &str,
        text: ByWire<'_>,
        receipt: Receipt,
        now: DateTime<Utc>,
    ) -> Result<bool, StoreError> {
        let (sql, id) = match text {
            ByWire::Ours(id) => ("SELECT seq FROM outbox WHERE gateway = $1 AND id = $2", id),
            ByWire::Theirs(id) => ("SELECT seq FROM outbox WHERE gateway = $1 AND wire_id = $2", id),
        };
        let found: Vec<i64> = sqlx::query_scalar(sql).bind(gateway).bind(id).fetch_all(&self.read).await?;
        if found.is_empty() {
            return Ok(false);
        }
        let mut tx = self.begin("receipt").await?;
        for seq in found {
            sqlx::query(
                "UPDATE outbox SET state = $2, settled_at = $3 WHERE seq = $1 AND (state IN ('queued', 'sent') \
                 OR (state = 'failed' AND $2 = 'delivered'))",
            )
            .bind(seq)
            .bind(receipt.id())
            .bind(ms(now))
            .execute(&mut *tx)
            .await?;
        }
        self.commit("receipt", tx).await?;
        Ok(true)
    }

    /// When the next text of a gateway that waits is to be sent.
    pub async fn next_send(&self) -> Result<Option<DateTime<Utc>>, StoreError> {
        let at: Option<i64> =
            sqlx::query_scalar("SELECT MIN(next_at) FROM outbox WHERE state = 'queued'").fetch_one(&self.read).await?;
        at.map(time).transpose()
    }

    /// How many texts of ours wait to be sent.
    pub async fn unsent(&self) -> Result<i64, StoreError> {
        Ok(sqlx::query_scalar("SELECT COUNT(*) FROM outbox WHERE state = 'queued'").fetch_one(&self.read).await?)
    }
}
