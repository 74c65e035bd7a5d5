//! A copy of everything, while the bot goes on: taken as of one moment, fit for either kind of database.
//!
//! Takes and gives lines of JSON: first what this is, then each table's name and its rows. Leases and log-ins are left
//! out: they are of the moment.

use super::rows::{Value, insert_many};
use super::{Dialect, Store, StoreError};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use futures_util::TryStreamExt;
use serde::{Deserialize, Serialize};
use sqlx::any::AnyRow;
use sqlx::{AssertSqlSafe, Row};
use std::io::{BufRead, Write};

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Int,
    Text,
    Bytes,
}
use Kind::{Bytes, Int, Text};

type Table = (&'static str, &'static [(&'static str, Kind)]);

/// Every table that is kept, whole.
const TABLES: [Table; 21] = [
    (
        "household",
        &[
            ("id", Int),
            ("version", Int),
            ("name", Text),
            ("lang", Text),
            ("country", Text),
            ("time_zone", Text),
            ("since_at", Int),
            ("seed", Int),
            ("staff_id", Int),
            ("next_fact", Int),
            ("talk", Text),
            ("erased_at", Int),
            ("place", Text),
        ],
    ),
    ("phone", &[("number", Text), ("household_id", Int), ("gateway", Text), ("since_at", Int)]),
    ("stopped", &[("number", Text), ("household_id", Int), ("at", Int)]),
    ("fact", &[("household_id", Int), ("id", Int), ("day", Int), ("told_at", Int), ("what", Text)]),
    ("twin", &[("household_id", Int), ("day", Int), ("bytes", Bytes), ("foreseen", Text)]),
    ("glance", &[("household_id", Int), ("version", Int), ("standing", Text), ("foreseen", Text)]),
    ("checkpoint", &[("household_id", Int), ("day", Int), ("bytes", Bytes)]),
    (
        "staff",
        &[
            ("id", Int),
            ("name", Text),
            ("phone", Text),
            ("gateway", Text),
            ("lang", Text),
            ("role", Text),
            ("password_hash", Text),
            ("line", Text),
        ],
    ),
    (
        "part",
        &[
            ("gateway", Text),
            ("sender", Text),
            ("recipient", Text),
            ("reference", Int),
            ("total", Int),
            ("number", Int),
            ("text", Text),
            ("received_at", Int),
        ],
    ),
    (
        "inbox",
        &[
            ("id", Int),
            ("gateway", Text),
            ("sender", Text),
            ("gateway_id", Text),
            ("recipient", Text),
            ("text", Text),
            ("sent_at", Int),
            ("received_at", Int),
            ("household_id", Int),
            ("lane", Text),
            ("state", Text),
            ("why", Text),
            ("alarmed", Int),
            ("tries", Int),
            ("next_at", Int),
            ("done_at", Int),
        ],
    ),
    (
        "outbox",
        &[
            ("seq", Int),
            ("id", Text),
            ("household_id", Int),
            ("inbox_id", Int),
            ("gateway", Text),
            ("recipient", Text),
            ("text", Text),
            ("kind", Text),
            ("advice", Text),
            ("urgent", Int),
            ("state", Text),
            ("why", Text),
            ("not_before", Int),
            ("next_at", Int),
            ("expires_at", Int),
            ("tries", Int),
            ("owner", Text),
            ("until_at", Int),
            ("wire_id", Text),
            ("created_at", Int),
            ("settled_at", Int),
            ("broadcast_id", Int),
        ],
    ),
    ("due", &[("household_id", Int), ("kind", Text), ("at", Int), ("tries", Int)]),
    (
        "alarm",
        &[
            ("id", Int),
            ("household_id", Int),
            ("at", Int),
            ("signs", Text),
            ("said", Text),
            ("acknowledged_by", Int),
            ("acknowledged_at", Int),
            ("called_at", Int),
            ("calls", Int),
            ("call_next_at", Int),
        ],
    ),
    ("audit", &[("id", Int), ("household_id", Int), ("at", Int), ("what", Text)]),
    ("setting", &[("name", Text), ("value", Text)]),
    (
        "feed_word",
        &[
            ("id", Int),
            ("word", Text),
            ("feed", Text),
            ("country", Text),
            ("place", Text),
            ("staff", Text),
            ("at", Int),
        ],
    ),
    (
        "broadcast",
        &[
            ("id", Int),
            ("key", Text),
            ("at", Int),
            ("staff", Text),
            ("text", Text),
            ("audience", Text),
            ("stopped_at", Int),
        ],
    ),
    ("token", &[("name", Text), ("hash", Text), ("scope", Text), ("created_at", Int)]),
    ("care", &[("household_id", Int), ("need", Text), ("staff", Text), ("at", Int), ("done_at", Int)]),
    (
        "visit",
        &[
            ("id", Int),
            ("household_id", Int),
            ("at", Int),
            ("day", Int),
            ("kind", Text),
            ("staff", Text),
            ("found", Text),
            ("note", Text),
        ],
    ),
    (
        "photo",
        &[("id", Int), ("household_id", Int), ("visit_id", Int), ("at", Int), ("whole", Bytes), ("small", Bytes)],
    ),
];
/// Tables that grew since the first copies were made, and how many columns they had: an older copy has no more.
const GREW: [(&str, usize); 5] = [("household", 12), ("twin", 3), ("staff", 7), ("outbox", 21), ("alarm", 7)];
/// Tables that came with a number of their own, and the column that counts.
const COUNTED: [(&str, &str); 10] = [
    ("household", "id"),
    ("staff", "id"),
    ("inbox", "id"),
    ("outbox", "seq"),
    ("alarm", "id"),
    ("audit", "id"),
    ("visit", "id"),
    ("photo", "id"),
    ("feed_word", "id"),
    ("broadcast", "id"),
];

/// Written first.
#[derive(Debug, Serialize, Deserialize, PartialEq)]
struct Head {
    bellyful_copy: u32,
}
const HEAD: Head = Head { bellyful_copy: 1 };

#[derive(Debug, Serialize, Deserialize)]
struct TableLine {
    table: String,
}

/// A copy could not be made or taken in.
#[derive(Debug, thiserror::Error)]
pub enum CopyError {
    #[error(transparent)]
    Store(#[from] StoreError),
    #[error("the database could not do it: {0}")]
    Database(#[from] sqlx::Error),
    #[error("the copy could not be read or written: {0}")]
    Io(#[from] std::io::Error),
    #[error("line {line} of the copy is not as it should be: {why}; give the file that `bellyful backup` wrote")]
    Line { line: usize, why: String },
    #[error("the database is not empty; give one without households, texts or staff")]
    NotEmpty,
}

impl Store {
    /// Writes everything as of one moment; gives how many rows. Nothing is locked out meanwhile.
    pub async fn dump(&self, out: &mut impl Write) -> Result<u64, CopyError> {
        let begin = self.sql("BEGIN", "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY");
        let mut tx = self.read.begin_with(begin).await?;
        writeln!(out, "{}", super::rows::json(&HEAD))?;
        let mut count = 0;
        for (table, columns) in TABLES {
            writeln!(out, "{}", super::rows::json(&TableLine { table: table.into() }))?;
            let names: Vec<&str> = columns.iter().map(|(name, _)| *name).collect();
            // Safe: names of tables and columns are ours.
            let sql = AssertSqlSafe(format!("SELECT {} FROM {table}", names.join(", ")));
            let mut rows = sqlx::query(sql).fetch(&mut *tx);
            while let Some(row) = rows.try_next().await? {
                let cells: Result<Vec<serde_json::Value>, sqlx::Error> =
                    columns.iter().map(|(name, kind)| cell(&row, name, *kind)).collect();
                writeln!(out, "{}", super::rows::json(&cells?))?;
                count += 1;
            }
        }
        out.flush()?;
        Ok(count)
    }

    /// Takes a copy in; the database must be empty. All or nothing.
    pub async fn take_in(&self, copy: impl BufRead) -> Result<u64, CopyError> {
        let mut tx = self.begin("take_in").await?;
        for table in ["household", "inbox", "staff"] {
            let rows: i64 =
                sqlx::query_scalar(AssertSqlSafe(format!("SELECT COUNT(*) FROM {table}"))).fetch_one(&mut *tx).await?;
            if rows > 0 {
                return Err(CopyError::NotEmpty);
            }
        }
        let mut table: Option<Table> = None;
        let mut waiting: Vec<Vec<Value>> = vec![];
        let mut count = 0;
        for (n, line) in copy.lines().enumerate() {
            let (line, wrong) = (line?, |why: String| CopyError::Line { line: n + 1, why });
            if n == 0 {
                let head: Head = serde_json::from_str(&line).map_err(|error| wrong(error.to_string()))?;
                if head != HEAD {
                    return Err(wrong(format!("it is of kind {}, this program reads {}", head.bellyful_copy, 1)));
                }
            } else if line.starts_with('{') {
                count += insert(&mut tx, table, &mut waiting).await?;
                let next: TableLine = serde_json::from_str(&line).map_err(|error| wrong(error.to_string()))?;
                let found = TABLES.iter().find(|(name, _)| *name == next.table).copied();
                table = Some(found.ok_or_else(|| wrong(format!("there is no table {}", next.table)))?);
            } else {
                let (name, columns) = table.ok_or_else(|| wrong("rows come before any table".into()))?;
                let cells: Vec<serde_json::Value> =
                    serde_json::from_str(&line).map_err(|error| wrong(error.to_string()))?;
                let least = GREW.iter().find(|(grew, _)| *grew == name).map_or(columns.len(), |(_, least)| *least);
                if !(least..=columns.len()).contains(&cells.len()) {
                    return Err(wrong(format!("{} cells instead of {}", cells.len(), columns.len())));
                }
                // What an older copy lacks takes its default.
                table = Some((name, &columns[..cells.len()]));
                let row = columns.iter().zip(cells).map(|((name, kind), cell)| {
                    value(*kind, cell).ok_or_else(|| wrong(format!("`{name}` holds what it cannot")))
                });
                waiting.push(row.collect::<Result<_, _>>()?);
                if waiting.len() >= 64 {
                    count += insert(&mut tx, table, &mut waiting).await?;
                }
            }
        }
        count += insert(&mut tx, table, &mut waiting).await?;
        if self.dialect == Dialect::Postgres {
            for (table, column) in COUNTED {
                let sql = format!(
                    "SELECT setval(pg_get_serial_sequence('{table}', '{column}'), \
                     (SELECT COALESCE(MAX({column}), 0) + 1 FROM {table}), false)"
                );
                sqlx::query(AssertSqlSafe(sql)).execute(&mut *tx).await?;
            }
        }
        self.commit("take_in", tx).await?;
        Ok(count)
    }
}

fn cell(row: &AnyRow, name: &str, kind: Kind) -> Result<serde_json::Value, sqlx::Error> {
    Ok(match kind {
        Int => row.try_get::<Option<i64>, _>(name)?.into(),
        Text => row.try_get::<Option<String>, _>(name)?.into(),
        Bytes => STANDARD.encode(row.try_get::<Vec<u8>, _>(name)?).into(),
    })
}

/// Whole numbers go in as words and are cast: a missing one has no type that both databases agree on.
fn value(kind: Kind, cell: serde_json::Value) -> Option<Value> {
    use serde_json::Value as Json;
    Some(match (kind, cell) {
        (Int | Text, Json::Null) => Value::MaybeText(None),
        (Int, Json::Number(number)) => Value::MaybeText(Some(number.as_i64()?.to_string())),
        (Text, Json::String(text)) => Value::MaybeText(Some(text)),
        (Bytes, Json::String(text)) => Value::Bytes(STANDARD.decode(text).ok()?),
        _ => return None,
    })
}

async fn insert(tx: &mut super::Tx, table: Option<Table>, waiting: &mut Vec<Vec<Value>>) -> Result<u64, StoreError> {
    let Some((table, columns)) = table else { return Ok(0) };
    let names: Vec<&str> = columns.iter().map(|(name, _)| *name).collect();
    let places: Vec<&str> =
        columns.iter().map(|(_, kind)| if *kind == Int { "CAST({} AS BIGINT)" } else { "{}" }).collect();
    let before = format!("INSERT INTO {table} ({}) VALUES", names.join(", "));
    insert_many(tx, &before, &format!("({})", places.join(", ")), "", std::mem::take(waiting)).await
}

#[cfg(test)]
mod tests {
    use super::*;

    #[tokio::test]
    async fn every_table_and_column_is_copied_but_what_is_of_the_moment() {
        let store = Store::in_memory().await.expect("a store");
        let tables: Vec<String> = sqlx::query_scalar(
            "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name",
        )
        .fetch_all(&store.read)
        .await
        .expect("reads");
        for table in tables {
            if ["_sqlx_migrations", "lease", "session"].contains(&table.as_str()) {
                continue;
            }
            let columns: Vec<String> =
                sqlx::query_scalar(AssertSqlSafe(format!("SELECT name FROM pragma_table_info('{table}')")))
                    .fetch_all(&store.read)
                    .await
                    .expect("reads");
            let copied = TABLES.iter().find(|(name, _)| *name == table);
            let copied = copied.unwrap_or_else(|| panic!("{table} is not copied"));
            assert_eq!(copied.1.iter().map(|(name, _)| *name).collect::<Vec<_>>(), columns, "{table}");
        }
    }

    #[tokio::test]
    async fn a_copy_made_before_a_table_grew_is_taken_in() {
        let copy = |staff: &str| format!("{{\"bellyful_copy\":1}}\n{{\"table\":\"staff\"}}\n{staff}\n");
        let store = Store::in_memory().await.expect("a store");
        let old = copy(r#"[1,"Asha",null,null,"en","lead",null]"#);
        assert_eq!(store.take_in(old.as_bytes()).await.expect("taken in"), 1);
        let members = store.members().await.expect("read");
        assert_eq!((members[0].staff.name.as_str(), members[0].has_pin), ("Asha", false));
        let store = Store::in_memory().await.expect("a store");
        let short = copy(r#"[1,"Asha",null,null,"en","lead"]"#);
        let told = store.take_in(short.as_bytes()).await.expect_err("too short").to_string();
        assert!(told.contains("6 cells instead of 8"), "{told}");
    }
}
