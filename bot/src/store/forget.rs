//! A family that is forgotten: name, numbers and words go, and no way back is kept.
//!
//! Takes a household; erases it in the transaction that decided so. Bare amounts and days stay for the sums. Ids that were
//! made from a number go too: numbers are few enough to be tried one after the other.

use super::rows::{from_json, json, ms};
use super::{StoreError, Tx};
use crate::household::HouseholdId;
use crate::staff::line::Line;
use chrono::{DateTime, Utc};
use sqlx::Row;

/// Its numbers, as long as they are there.
macro_rules! of_theirs {
    ($before:literal $(, $after:literal)?) => {
        concat!($before, " IN (SELECT number FROM phone WHERE household_id = $1)" $(, $after)?)
    };
}

/// In this order: the phones, by which the rest is found, go last. Beside each table, what is erased of it.
const ERASE: [(&str, &str); 18] = [
    // What waits still is of somebody whom we do not know any more.
    ("inbox", of_theirs!("UPDATE inbox SET household_id = 0, lane = 'n:' || sender WHERE state = 'open' AND sender")),
    (
        "inbox",
        of_theirs!(
            "UPDATE inbox SET sender = '#' || id, gateway_id = '#' || id, text = '', recipient = NULL, lane = '', \
             why = NULL WHERE state <> 'open' AND (household_id = $1 OR sender",
            ")"
        ),
    ),
    (
        "outbox",
        of_theirs!(
            "UPDATE outbox SET id = '#' || seq, wire_id = NULL, recipient = '', text = '', advice = NULL, why = NULL, \
             state = CASE WHEN state = 'queued' THEN 'expired' ELSE state END WHERE household_id = $1 OR recipient"
        ),
    ),
    ("stopped", of_theirs!("DELETE FROM stopped WHERE household_id = $1 OR number")),
    ("part", of_theirs!("DELETE FROM part WHERE sender")),
    ("lease", of_theirs!("DELETE FROM lease WHERE substr(lane, 1, 2) = 'n:' AND substr(lane, 3)")),
    ("phone", "DELETE FROM phone WHERE household_id = $1"),
    ("alarm", "UPDATE alarm SET said = '' WHERE household_id = $1"),
    ("audit", "DELETE FROM audit WHERE household_id = $1"),
    (
        "fact",
        "DELETE FROM fact WHERE household_id = $1 AND (what LIKE '%\"fact\":\"place\"%' OR what LIKE '%\"fact\":\"sited\"%')",
    ),
    // Both know the climate of their place.
    ("twin", "DELETE FROM twin WHERE household_id = $1"),
    ("glance", "DELETE FROM glance WHERE household_id = $1"),
    ("checkpoint", "DELETE FROM checkpoint WHERE household_id = $1"),
    ("due", "DELETE FROM due WHERE household_id = $1"),
    ("care", "DELETE FROM care WHERE household_id = $1"),
    ("photo", "DELETE FROM photo WHERE household_id = $1"),
    ("visit", "DELETE FROM visit WHERE household_id = $1"),
    ("household", "UPDATE household SET name = '', place = '', talk = '{}', staff_id = NULL WHERE id = $1"),
];

pub(super) async fn forget(tx: &mut Tx, household: HouseholdId, now: DateTime<Utc>) -> Result<(), StoreError> {
    for (_, sql) in ERASE {
        sqlx::query(sql).bind(household).execute(&mut **tx).await?;
    }
    sqlx::query("UPDATE household SET erased_at = $2 WHERE id = $1")
        .bind(household)
        .bind(ms(now))
        .execute(&mut **tx)
        .await?;
    forget_what_staff_would_read_on(tx).await
}

/// What MORE goes on with may tell of any household.
async fn forget_what_staff_would_read_on(tx: &mut Tx) -> Result<(), StoreError> {
    for row in sqlx::query("SELECT id, line FROM staff").fetch_all(&mut **tx).await? {
        let mut line: Line = from_json("line", row.try_get("line")?)?;
        if !line.more.is_empty() {
            line.more.clear();
            sqlx::query("UPDATE staff SET line = $2 WHERE id = $1")
                .bind(row.try_get::<i64, _>("id")?)
                .bind(json(&line))
                .execute(&mut **tx)
                .await?;
        }
    }
    Ok(())
}

/// Erases what stayed only so that the last word could find its way.
pub(super) async fn forget_sent(tx: &mut Tx, seq: i64) -> Result<(), StoreError> {
    let sql = "UPDATE outbox SET id = '#' || seq, wire_id = NULL, recipient = '', text = '', why = NULL WHERE seq = $1";
    sqlx::query(sql).bind(seq).execute(&mut **tx).await?;
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::Store;

    /// Nothing of a family stands here: what staff, the programme and its computers are and set.
    const NOT_OF_FAMILIES: [&str; 6] = ["staff", "session", "token", "setting", "feed_word", "broadcast"];

    #[tokio::test]
    async fn every_table_is_thought_of() {
        let store = Store::in_memory().await.expect("a store");
        let tables: Vec<String> = sqlx::query_scalar(
            "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE '_sqlx%'",
        )
        .fetch_all(&store.read)
        .await
        .expect("reads");
        for table in tables {
            let erased = ERASE.iter().any(|(of, _)| *of == table);
            assert!(erased != NOT_OF_FAMILIES.contains(&table.as_str()), "is a family's data in {table} erased?");
        }
    }
}
