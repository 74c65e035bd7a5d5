//! Tokens of programmes that read by machine, kept as hashes: the table gives no way in.

use super::rows::{ms, time};
use super::{Store, StoreError};
use chrono::{DateTime, Utc};
use sha2::{Digest, Sha256};
use sqlx::Row;

fn hashed(token: &str) -> String {
    hex::encode(Sha256::digest(token.as_bytes()))
}

/// A token, as far as it is known after it was made.
#[derive(Debug, Clone, PartialEq)]
pub struct Token {
    pub name: String,
    pub scope: String,
    pub since: DateTime<Utc>,
}

impl Store {
    /// Keeps a token, in place of the one of that name.
    pub async fn add_token(&self, name: &str, token: &str, scope: &str, now: DateTime<Utc>) -> Result<(), StoreError> {
        let mut tx = self.begin("token").await?;
        sqlx::query(
            "INSERT INTO token (name, hash, scope, created_at) VALUES ($1, $2, $3, $4) ON CONFLICT (name) \
             DO UPDATE SET hash = excluded.hash, scope = excluded.scope, created_at = excluded.created_at",
        )
        .bind(name)
        .bind(hashed(token))
        .bind(scope)
        .bind(ms(now))
        .execute(&mut *tx)
        .await?;
        self.commit("token", tx).await
    }

    /// Name and scope of a token.
    pub async fn token(&self, token: &str) -> Result<Option<(String, String)>, StoreError> {
        let row = sqlx::query("SELECT name, scope FROM token WHERE hash = $1")
            .bind(hashed(token))
            .fetch_optional(&self.read)
            .await?;
        row.map(|row| Ok((row.try_get("name")?, row.try_get("scope")?))).transpose()
    }

    /// All tokens, by name.
    pub async fn tokens(&self) -> Result<Vec<Token>, StoreError> {
        let rows = sqlx::query("SELECT name, scope, created_at FROM token ORDER BY name").fetch_all(&self.read).await?;
        rows.iter()
            .map(|row| {
                Ok(Token {
                    name: row.try_get("name")?,
                    scope: row.try_get("scope")?,
                    since: time(row.try_get("created_at")?)?,
                })
            })
            .collect()
    }

    /// Whether there was one of that name.
    pub async fn remove_token(&self, name: &str) -> Result<bool, StoreError> {
        let mut tx = self.begin("token").await?;
        let gone = sqlx::query("DELETE FROM token WHERE name = $1").bind(name).execute(&mut *tx).await?;
        self.commit("token", tx).await?;
        Ok(gone.rows_affected() > 0)
    }
}
