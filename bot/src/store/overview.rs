//! All households at a glance: for the page of today.

use super::rows::{from_json, json, time};
use super::{Store, StoreError, Tx};
use crate::household::{Foreseen, Household, HouseholdId, LastAdvice, Talk};
use bellyful_core::fact::Sign;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};
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

/// What lists need of where the talk stands, kept beside it: reading all of the talk took them more than all else.
/// Source: `--bench pages`.
#[derive(Serialize, Deserialize, Default)]
#[serde(default)]
pub(super) struct Standing {
    latin_script: bool,
    muted: bool,
    closed: bool,
    asked_at: Option<DateTime<Utc>>,
    last_heard: Option<Day>,
    /// Without its words.
    last_advice: Option<LastAdvice>,
}

impl From<&Talk> for Standing {
    fn from(talk: &Talk) -> Standing {
        let Talk { latin_script, muted, closed, asked_at, last_heard, last_advice, .. } = talk;
        let last_advice = last_advice.as_ref().map(|last| LastAdvice { text: String::new(), ..last.clone() });
        Standing {
            latin_script: *latin_script,
            muted: *muted,
            closed: *closed,
            asked_at: *asked_at,
            last_heard: *last_heard,
            last_advice,
        }
    }
}

impl From<Standing> for Talk {
    fn from(standing: Standing) -> Talk {
        let Standing { latin_script, muted, closed, asked_at, last_heard, last_advice } = standing;
        Talk { latin_script, muted, closed, asked_at, last_heard, last_advice, ..Talk::default() }
    }
}

/// Keeps what lists need of a household whose row now has this version.
pub(super) async fn keep_glance(
    tx: &mut Tx,
    household: HouseholdId,
    version: i64,
    talk: &Talk,
) -> Result<(), StoreError> {
    sqlx::query(
        "INSERT INTO glance (household_id, version, standing) VALUES ($1, $2, $3) ON CONFLICT (household_id) \
         DO UPDATE SET version = excluded.version, standing = excluded.standing",
    )
    .bind(household)
    .bind(version)
    .bind(json(&Standing::from(talk)))
    .execute(&mut **tx)
    .await?;
    Ok(())
}

/// A household's row, as a line of [`LINES`]: a JSON list, in this order.
#[derive(Deserialize)]
struct Line {
    id: i64,
    name: String,
    lang: String,
    country: Option<String>,
    time_zone: String,
    since: i64,
    seed: i64,
    staff_id: Option<i64>,
    next_fact: i64,
    standing: Standing,
    place: String,
    foreseen: Option<Foreseen>,
    done_at: Option<i64>,
}

impl Line {
    fn seen(self, alarms: Vec<(DateTime<Utc>, Vec<Sign>)>) -> Result<Seen, StoreError> {
        let Line { id, name, lang, country, time_zone, since, seed, staff_id, next_fact, .. } = self;
        let (place, standing, foreseen, done_at) = (self.place, self.standing, self.foreseen, self.done_at);
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

/// How many households are asked for at once.
const AT_ONCE: u32 = 10_000;

/// Households after number $1, $2 at the most, all in one row: each row costs a hand-over between threads and a copy of
/// each column, which for ten thousand was more than all else. A glance of another version was kept before the row last
/// changed, by a node that knew none: then the talk itself is read. Source: `--bench pages`.
const LINES: &str = "SELECT '[' || coalesce(string_agg('[' || id || ',' || QUOTE(name) || ',' || QUOTE(lang) || ',' || \
    coalesce(QUOTE(country), 'null') || ',' || QUOTE(time_zone) || ',' || since_at || ',' || seed || ',' || \
    coalesce(CAST(staff_id AS TEXT), 'null') || ',' || next_fact || ',' || standing || ',' || QUOTE(place) || ',' || \
    coalesce(foreseen, 'null') || ',' || coalesce(CAST(done_at AS TEXT), 'null') || ']', ','), '') || ']' \
    FROM (SELECT h.id, h.name, h.lang, h.country, h.time_zone, h.since_at, h.seed, h.staff_id, h.next_fact, h.place, \
    CASE WHEN g.version = h.version THEN g.standing ELSE h.talk END AS standing, g.foreseen, c.done_at \
    FROM household h LEFT JOIN glance g ON g.household_id = h.id LEFT JOIN care c ON c.household_id = h.id \
    WHERE h.erased_at IS NULL AND h.id > $1 ORDER BY h.id LIMIT $2) AS listed";

impl Store {
    /// Households that were not erased, in order of number.
    pub async fn overview(&self) -> Result<Vec<Seen>, StoreError> {
        let mut all = vec![];
        loop {
            let after = all.last().map_or(0, |seen: &Seen| seen.household.id);
            let page = self.overview_after(after, AT_ONCE).await?;
            let done = page.len() < AT_ONCE as usize;
            all.extend(page);
            if done {
                return Ok(all);
            }
        }
    }

    /// A page of them: those after a number.
    pub async fn overview_after(&self, after: i64, most: u32) -> Result<Vec<Seen>, StoreError> {
        let mut reader = self.read.acquire().await?;
        let lines: String =
            sqlx::query_scalar(AssertSqlSafe(LINES.replace("QUOTE", self.sql("json_quote", "to_json"))))
                .bind(after)
                .bind(i64::from(most))
                .fetch_one(&mut *reader)
                .await?;
        let mut lines: Vec<Line> = from_json("household", &lines)?;
        lines.sort_by_key(|line| line.id);
        let last = lines.last().map_or(after, |line| line.id);
        let open = sqlx::query(
            "SELECT household_id, at, signs FROM alarm \
             WHERE acknowledged_at IS NULL AND household_id > $1 AND household_id <= $2 ORDER BY household_id, at",
        )
        .bind(after)
        .bind(last)
        .fetch_all(&mut *reader)
        .await?;
        let mut alarms: BTreeMap<i64, Vec<(DateTime<Utc>, Vec<Sign>)>> = BTreeMap::new();
        for row in &open {
            let signs: String = row.try_get("signs")?;
            let alarm = (time(row.try_get("at")?)?, from_json("signs", &signs)?);
            alarms.entry(row.try_get("household_id")?).or_default().push(alarm);
        }
        lines
            .into_iter()
            .map(|line| {
                let alarms = alarms.remove(&line.id).unwrap_or_default();
                line.seen(alarms)
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::household::Decision;
    use crate::store::Cause;
    use crate::workbench::nobody;

    #[tokio::test]
    async fn a_row_that_an_older_node_wrote_is_seen_as_it_stands() {
        let store = Store::in_memory().await.expect("a store");
        let talk = Talk { last_heard: Some(Day(20_000)), ..Talk::default() };
        let household = Household {
            id: 0,
            name: "Asha".into(),
            lang: "en".into(),
            country: None,
            time_zone: "UTC".into(),
            since: DateTime::default(),
            seed: 1,
            staff_id: None,
            next_fact: 1,
            talk,
        };
        let decision = Decision { household: Some(household), ..Decision::default() };
        store.keep(Cause::Hand, &nobody(), decision, DateTime::default()).await.expect("kept");
        let heard = async || store.overview().await.expect("reads")[0].household.talk.last_heard;
        assert_eq!(heard().await, Some(Day(20_000)));
        // A node that knows no glance writes the talk and the version alone.
        let later = json(&Talk { last_heard: Some(Day(20_001)), ..Talk::default() });
        sqlx::query("UPDATE household SET version = version + 1, talk = $1")
            .bind(later)
            .execute(&store.write)
            .await
            .expect("written");
        assert_eq!(heard().await, Some(Day(20_001)));
    }
}
