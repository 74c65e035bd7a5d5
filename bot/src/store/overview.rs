//! All households at a glance: for the page of today.

use super::rows::{from_json, time};
use super::{Store, StoreError};
use crate::household::{Foreseen, Household, LastAdvice, Talk};
use bellyful_core::fact::Sign;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};
use serde::Deserialize;
use sqlx::{AssertSqlSafe, Row};
use std::collections::BTreeMap;

/// A household as the page of today sees it.
#[derive(Debug, Clone, PartialEq)]
pub struct Seen {
    /// Of its talk only what `Standing` reads; its last advice is the last night's, where that is newer.
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
    asked_at: Option<DateTime<Utc>>,
    last_heard: Option<Day>,
    last_advice: Option<LastAdvice>,
}

impl From<Standing> for Talk {
    fn from(standing: Standing) -> Talk {
        let Standing { latin_script, muted, closed, asked_at, last_heard, last_advice } = standing;
        Talk { latin_script, muted, closed, asked_at, last_heard, last_advice, ..Talk::default() }
    }
}

/// A household's row, as a line of [`LINES`].
#[derive(Deserialize)]
struct Line(
    i64,
    String,
    String,
    Option<String>,
    String,
    i64,
    i64,
    Option<i64>,
    i64,
    Standing,
    String,
    Option<Foreseen>,
    Option<i64>,
);

impl Line {
    fn seen(self, alarms: Vec<(DateTime<Utc>, Vec<Sign>)>) -> Result<Seen, StoreError> {
        let Line(
            id,
            name,
            lang,
            country,
            time_zone,
            since,
            seed,
            staff_id,
            next_fact,
            standing,
            place,
            foreseen,
            done_at,
        ) = self;
        let (since, mut talk) = (time(since)?, Talk::from(standing));
        talk.seen_to(done_at.map(time).transpose()?);
        let told_at = talk.last_advice.as_ref().map(|last| last.at);
        if let Some(foreseen) = foreseen.filter(|foreseen| told_at.is_some_and(|told_at| told_at < foreseen.at)) {
            talk.last_advice = Some(LastAdvice { at: foreseen.at, text: String::new(), advice: foreseen.advice });
        }
        let household = Household { id, name, lang, country, time_zone, since, seed, staff_id, next_fact, talk };
        Ok(Seen { household, place, alarms })
    }
}

/// Households after number $1, $2 at the most, a thousand to a row: each row costs a hand-over between threads and a
/// copy of each column, which for ten thousand was more than all else. Source: `--bench pages`.
const LINES: &str = "SELECT '[' || string_agg('[' || id || ',' || QUOTE(name) || ',' || QUOTE(lang) || ',' || \
    coalesce(QUOTE(country), 'null') || ',' || QUOTE(time_zone) || ',' || since_at || ',' || seed || ',' || \
    coalesce(CAST(staff_id AS TEXT), 'null') || ',' || next_fact || ',' || talk || ',' || QUOTE(place) || ',' || \
    coalesce(foreseen, 'null') || ',' || coalesce(CAST(done_at AS TEXT), 'null') || ']', ',') || ']' \
    FROM (SELECT h.*, t.foreseen, c.done_at FROM household h LEFT JOIN twin t ON t.household_id = h.id \
    LEFT JOIN care c ON c.household_id = h.id \
    WHERE h.erased_at IS NULL AND h.id > $1 ORDER BY h.id LIMIT $2) AS listed GROUP BY id / 1000";

impl Store {
    /// Households that were not erased, in order of number.
    pub async fn overview(&self) -> Result<Vec<Seen>, StoreError> {
        self.overview_after(0, u32::MAX).await
    }

    /// A page of them: those after a number.
    pub async fn overview_after(&self, after: i64, most: u32) -> Result<Vec<Seen>, StoreError> {
        let mut reader = self.read.acquire().await?;
        let lines: Vec<String> =
            sqlx::query_scalar(AssertSqlSafe(LINES.replace("QUOTE", self.sql("json_quote", "to_json"))))
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
        let mut seen: Vec<Seen> = vec![];
        for lines in &lines {
            for line in from_json::<Vec<Line>>("household", lines)? {
                let alarms = alarms.remove(&line.0).unwrap_or_default();
                seen.push(line.seen(alarms)?);
            }
        }
        seen.sort_by_key(|seen| seen.household.id);
        Ok(seen)
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
