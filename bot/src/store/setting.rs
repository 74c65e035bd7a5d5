//! What a programme sets for all its households, the words of its districts, and the forgetting of old texts.

use super::rows::{listed, ms};
use super::trail::{PROGRAMME, write_down};
use super::{Dialect, Store, StoreError};
use crate::deed::{Deed, Did};
use bellyful_core::feeds::Feed;
use chrono::{DateTime, Utc};
use sqlx::Row;
use std::collections::BTreeMap;

/// Days that texts are kept; none set: for ever.
pub const KEEP_TEXTS_DAYS: &str = "keep_texts_days";
/// Set: field workers choose a PIN before they are told of any household.
pub const NEEDS_PIN: &str = "needs_pin";
/// The number to call in a country stands under this and the country's code.
pub const EMERGENCY: &str = "emergency:";

/// A word of a district for something that is fed.
#[derive(Debug, Clone, PartialEq)]
pub struct FeedWord {
    pub id: i64,
    pub word: String,
    pub feed: Feed,
    /// ISO 3166 code.
    pub country: String,
    /// Only there; empty: in the whole country.
    pub place: String,
    pub staff: String,
}

impl FeedWord {
    /// The message that names the feed.
    pub fn feed_id(&self) -> String {
        format!("feed-{}", self.feed)
    }
}

impl Store {
    pub async fn settings(&self) -> Result<BTreeMap<String, String>, StoreError> {
        let rows = sqlx::query("SELECT name, value FROM setting").fetch_all(&self.read).await?;
        rows.iter().map(|row| Ok((row.try_get("name")?, row.try_get("value")?))).collect()
    }

    /// Sets, or with `None` takes away; `deed` goes to the trail.
    pub async fn set(
        &self,
        name: &str,
        value: Option<&str>,
        deed: &Deed,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let mut tx = self.begin("setting").await?;
        match value {
            Some(value) => sqlx::query(
                "INSERT INTO setting (name, value) VALUES ($1, $2) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
            )
            .bind(name)
            .bind(value)
            .execute(&mut *tx)
            .await?,
            None => sqlx::query("DELETE FROM setting WHERE name = $1").bind(name).execute(&mut *tx).await?,
        };
        write_down(&mut tx, PROGRAMME, deed, now).await?;
        self.commit("setting", tx).await
    }

    /// The words taught, in order of country, place and word.
    pub async fn feed_words(&self) -> Result<Vec<FeedWord>, StoreError> {
        let sql = "SELECT id, word, feed, country, place, staff FROM feed_word ORDER BY country, place, word";
        let rows = sqlx::query(sql).fetch_all(&self.read).await?;
        rows.iter()
            .map(|row| {
                Ok(FeedWord {
                    id: row.try_get("id")?,
                    word: row.try_get("word")?,
                    feed: listed("feed", row.try_get("feed")?, Feed::from_id)?,
                    country: row.try_get("country")?,
                    place: row.try_get("place")?,
                    staff: row.try_get("staff")?,
                })
            })
            .collect()
    }

    /// Keeps a word; its number is given here.
    pub async fn add_feed_word(&self, word: &FeedWord, now: DateTime<Utc>) -> Result<(), StoreError> {
        let mut tx = self.begin("feed_word").await?;
        sqlx::query("INSERT INTO feed_word (word, feed, country, place, staff, at) VALUES ($1, $2, $3, $4, $5, $6)")
            .bind(&word.word)
            .bind(word.feed.id())
            .bind(&word.country)
            .bind(&word.place)
            .bind(&word.staff)
            .bind(ms(now))
            .execute(&mut *tx)
            .await?;
        let place = if word.place.is_empty() { word.country.clone() } else { word.place.clone() };
        let taught = Did::TaughtWord { word: word.word.clone(), feed: word.feed, place }.by(&word.staff);
        write_down(&mut tx, PROGRAMME, &taught, now).await?;
        self.commit("feed_word", tx).await
    }

    pub async fn remove_feed_word(&self, id: i64, staff: &str, now: DateTime<Utc>) -> Result<(), StoreError> {
        let mut tx = self.begin("feed_word").await?;
        let word: Option<String> = sqlx::query_scalar("DELETE FROM feed_word WHERE id = $1 RETURNING word")
            .bind(id)
            .fetch_optional(&mut *tx)
            .await?;
        if let Some(word) = word {
            write_down(&mut tx, PROGRAMME, &Did::TookWordAway { word }.by(staff), now).await?;
        }
        self.commit("feed_word", tx).await
    }

    /// Blanks the words of texts older than `before`, theirs and ours; facts, advice and counts stay. Gives how many.
    pub async fn forget_texts(&self, before: DateTime<Utc>) -> Result<u64, StoreError> {
        const OLD: [&str; 3] = [
            "UPDATE inbox SET text = '' WHERE received_at < $1 AND state <> 'open' AND text <> ''",
            "UPDATE outbox SET text = '' WHERE created_at < $1 AND state <> 'queued' AND text <> ''",
            "UPDATE alarm SET said = '' WHERE at < $1 AND acknowledged_at IS NOT NULL AND said <> ''",
        ];
        let mut tx = self.begin("forget_texts").await?;
        let mut blanked = 0;
        for sql in OLD {
            blanked += sqlx::query(sql).bind(ms(before)).execute(&mut *tx).await?.rows_affected();
        }
        self.commit("forget_texts", tx).await?;
        Ok(blanked)
    }

    /// Empties SQLite's log, in which what was erased stands until the log is written over. Other databases mind theirs.
    pub async fn empty_log(&self) -> Result<(), StoreError> {
        if self.dialect == Dialect::Sqlite {
            sqlx::query("PRAGMA wal_checkpoint(TRUNCATE)").execute(&self.write).await?;
        }
        Ok(())
    }
}
