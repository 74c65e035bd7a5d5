//! Parts of long texts, kept until all of a text are there.
//!
//! Takes parts; gives wholes. A part is acknowledged to the network, so it is kept as durably as a text.

use super::rows::{Value, insert_many, ms, time};
use super::{Store, StoreError};
use chrono::{DateTime, Utc};
use sqlx::Row;
use sqlx::any::AnyRow;

/// What parts of one text have in common.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct PartKey {
    pub gateway: String,
    pub sender: String,
    /// Ours; empty if not said.
    pub recipient: String,
    pub reference: u16,
    pub total: u8,
}

/// What keeping a part came to.
#[derive(Debug, Clone, PartialEq)]
pub enum PartKept {
    /// Others are still to come.
    Waits,
    /// It was the last that was missing.
    Whole(Whole),
    /// Not kept: its place is taken by a part of an older text whose reference was used again. That one first.
    Taken(Whole),
}

/// A text put together again.
#[derive(Debug, Clone, PartialEq)]
pub struct Whole {
    pub key: PartKey,
    pub text: String,
    /// When its first part came.
    pub since: DateTime<Utc>,
}

const OF_ONE: &str = "SELECT number, text, received_at FROM part WHERE gateway = $1 AND sender = $2 AND recipient = $3 \
                      AND reference = $4 AND total = $5 ORDER BY number";

impl Store {
    /// Keeps a part. One that comes again changes nothing.
    pub async fn keep_part(
        &self,
        key: &PartKey,
        number: u8,
        text: &str,
        now: DateTime<Utc>,
    ) -> Result<PartKept, StoreError> {
        let mut tx = self.begin("keep_part").await?;
        let row = vec![
            Value::Text(key.gateway.clone()),
            Value::Text(key.sender.clone()),
            Value::Text(key.recipient.clone()),
            Value::Int(key.reference.into()),
            Value::Int(key.total.into()),
            Value::Int(number.into()),
            Value::Text(text.to_owned()),
            Value::Int(ms(now)),
        ];
        insert_many(
            &mut tx,
            "INSERT INTO part (gateway, sender, recipient, reference, total, number, text, received_at) VALUES",
            "({}, {}, {}, {}, {}, {}, {}, {})",
            "ON CONFLICT DO NOTHING",
            vec![row],
        )
        .await?;
        let rows = of_one(key).fetch_all(&mut *tx).await?;
        self.commit("keep_part", tx).await?;
        let mut stands = false;
        for row in &rows {
            stands |=
                row.try_get::<i64, _>("number")? == i64::from(number) && row.try_get::<String, _>("text")? == text;
        }
        Ok(if !stands {
            PartKept::Taken(whole(key.clone(), &rows)?)
        } else if rows.len() < usize::from(key.total) {
            PartKept::Waits
        } else {
            PartKept::Whole(whole(key.clone(), &rows)?)
        })
    }

    /// What there is of texts whose first part came before this moment: the rest will not come any more.
    pub async fn overdue_parts(&self, gateway: &str, before: DateTime<Utc>) -> Result<Vec<Whole>, StoreError> {
        let keys = sqlx::query(
            "SELECT sender, recipient, reference, total FROM part WHERE gateway = $1 \
             GROUP BY sender, recipient, reference, total HAVING MIN(received_at) < $2 LIMIT 100",
        )
        .bind(gateway)
        .bind(ms(before))
        .fetch_all(&self.read)
        .await?;
        let mut wholes = Vec::with_capacity(keys.len());
        for row in keys {
            let number = |column| row.try_get::<i64, _>(column);
            let unreadable =
                |_| StoreError::Unreadable { what: "part", why: "its numbers are out of range".to_owned() };
            let key = PartKey {
                gateway: gateway.to_owned(),
                sender: row.try_get("sender")?,
                recipient: row.try_get("recipient")?,
                reference: number("reference")?.try_into().map_err(unreadable)?,
                total: number("total")?.try_into().map_err(unreadable)?,
            };
            let rows = of_one(&key).fetch_all(&self.read).await?;
            if !rows.is_empty() {
                wholes.push(whole(key, &rows)?);
            }
        }
        Ok(wholes)
    }

    /// Drops the parts of a text that is kept by now.
    pub async fn drop_parts(&self, key: &PartKey) -> Result<(), StoreError> {
        let mut tx = self.begin("drop_parts").await?;
        sqlx::query(
            "DELETE FROM part WHERE gateway = $1 AND sender = $2 AND recipient = $3 AND reference = $4 AND total = $5",
        )
        .bind(&key.gateway)
        .bind(&key.sender)
        .bind(&key.recipient)
        .bind(i64::from(key.reference))
        .bind(i64::from(key.total))
        .execute(&mut *tx)
        .await?;
        self.commit("drop_parts", tx).await
    }
}

fn of_one(key: &PartKey) -> sqlx::query::Query<'_, sqlx::Any, sqlx::any::AnyArguments> {
    sqlx::query(OF_ONE)
        .bind(&key.gateway)
        .bind(&key.sender)
        .bind(&key.recipient)
        .bind(i64::from(key.reference))
        .bind(i64::from(key.total))
}

fn whole(key: PartKey, rows: &[AnyRow]) -> Result<Whole, StoreError> {
    let mut text = String::new();
    let mut since = i64::MAX;
    for row in rows {
        text.push_str(row.try_get("text")?);
        since = since.min(row.try_get("received_at")?);
    }
    Ok(Whole { key, text, since: time(since)? })
}
