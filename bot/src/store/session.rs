//! Log-ins of staff, kept so that every node knows them. Their ids are kept as hashes: the table gives no way in.

use super::rows::{json, ms};
use super::{Store, StoreError};
use crate::household::Staff;
use async_trait::async_trait;
use chrono::Utc;
use sha2::{Digest, Sha256};
use sqlx::Row;
use tower_sessions::SessionStore;
use tower_sessions::cookie::time::OffsetDateTime;
use tower_sessions::session::{Id, Record};
use tower_sessions::session_store::{Error, Result};

/// Sessions in the store.
#[derive(Clone)]
pub struct Sessions(Store);

impl std::fmt::Debug for Sessions {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Sessions")
    }
}

impl Store {
    pub fn sessions(&self) -> Sessions {
        Sessions(self.clone())
    }

    /// A member of staff with role and password hash, for the log-in.
    pub async fn login(&self, name: &str) -> std::result::Result<Option<(Staff, String, Option<String>)>, StoreError> {
        let row = sqlx::query("SELECT id, name, phone, gateway, lang, role, password_hash FROM staff WHERE name = $1")
            .bind(name)
            .fetch_optional(&self.read)
            .await?;
        row.map(|row| Ok((super::household::staff(&row)?, row.try_get("role")?, row.try_get("password_hash")?)))
            .transpose()
    }

    async fn keep_session(&self, record: &Record) -> std::result::Result<(), StoreError> {
        let mut tx = self.begin("session").await?;
        sqlx::query("DELETE FROM session WHERE until_at < $1").bind(ms(Utc::now())).execute(&mut *tx).await?;
        sqlx::query(
            "INSERT INTO session (id_hash, data, until_at) VALUES ($1, $2, $3) ON CONFLICT (id_hash) DO UPDATE \
             SET data = excluded.data, until_at = excluded.until_at",
        )
        .bind(hashed(&record.id))
        .bind(json(&record.data))
        .bind(record.expiry_date.unix_timestamp() * 1000)
        .execute(&mut *tx)
        .await?;
        self.commit("session", tx).await
    }

    async fn drop_session(&self, id: &Id) -> std::result::Result<(), StoreError> {
        let mut tx = self.begin("session").await?;
        sqlx::query("DELETE FROM session WHERE id_hash = $1").bind(hashed(id)).execute(&mut *tx).await?;
        self.commit("session", tx).await
    }
}

fn hashed(id: &Id) -> String {
    hex::encode(Sha256::digest(id.to_string().as_bytes()))
}

fn failed(error: impl std::fmt::Display) -> Error {
    Error::Backend(error.to_string())
}

#[async_trait]
impl SessionStore for Sessions {
    async fn save(&self, record: &Record) -> Result<()> {
        self.0.keep_session(record).await.map_err(failed)
    }

    async fn load(&self, id: &Id) -> Result<Option<Record>> {
        let row = sqlx::query("SELECT data, until_at FROM session WHERE id_hash = $1 AND until_at >= $2")
            .bind(hashed(id))
            .bind(ms(Utc::now()))
            .fetch_optional(&self.0.read)
            .await
            .map_err(failed)?;
        let Some(row) = row else { return Ok(None) };
        let data: String = row.try_get("data").map_err(failed)?;
        let until: i64 = row.try_get("until_at").map_err(failed)?;
        let data = serde_json::from_str(&data).map_err(|error| Error::Decode(error.to_string()))?;
        let expiry_date = OffsetDateTime::from_unix_timestamp(until / 1000).map_err(failed)?;
        Ok(Some(Record { id: *id, data, expiry_date }))
    }

    async fn delete(&self, id: &Id) -> Result<()> {
        self.0.drop_session(id).await.map_err(failed)
    }
}
