//! What every table group needs to turn rows into the bot's types and back.

use super::StoreError;
use chrono::{DateTime, Utc};
use serde::Serialize;
use serde::de::DeserializeOwned;
use sqlx::AssertSqlSafe;
use sqlx::any::{AnyQueryResult, AnyRow};
use sqlx::{Any, Row};

/// Milliseconds since 1970-01-01 UTC, as the tables keep time.
pub fn ms(at: DateTime<Utc>) -> i64 {
    at.timestamp_millis()
}

pub fn time(ms: i64) -> Result<DateTime<Utc>, StoreError> {
    DateTime::from_timestamp_millis(ms)
        .ok_or_else(|| StoreError::Unreadable { what: "time", why: format!("{ms} ms is out of range") })
}

pub fn json<T: Serialize>(value: &T) -> String {
    serde_json::to_string(value).expect("the bot's own types always have a JSON form")
}

pub fn from_json<T: DeserializeOwned>(what: &'static str, text: &str) -> Result<T, StoreError> {
    serde_json::from_str(text).map_err(|error| StoreError::Unreadable { what, why: error.to_string() })
}

/// The value of an id from one of the closed lists.
pub fn listed<T>(what: &'static str, id: &str, from_id: fn(&str) -> Option<T>) -> Result<T, StoreError> {
    from_id(id).ok_or_else(|| StoreError::Unreadable { what, why: format!("`{id}` is not known") })
}

pub fn day(row: &AnyRow, column: &str) -> Result<bellyful_core::units::Day, StoreError> {
    let day: i64 = row.try_get(column)?;
    i32::try_from(day)
        .map(bellyful_core::units::Day)
        .map_err(|_| StoreError::Unreadable { what: "day", why: format!("{day} is out of range") })
}

/// One parameter of a many-row statement.
#[derive(Debug, Clone)]
pub enum Value {
    Int(i64),
    Text(String),
    MaybeText(Option<String>),
    Bytes(Vec<u8>),
}

/// Inserts many rows in as few statements as there are powers of two in their number, so that the database meets
/// the same few statements again and again and keeps them prepared.
///
/// `row` is one row's placeholders with `{}` for each parameter, `before` and `after` what stands around them.
pub async fn insert_many(
    connection: &mut sqlx::AnyConnection,
    before: &str,
    row: &str,
    after: &str,
    rows: Vec<Vec<Value>>,
) -> Result<u64, StoreError> {
    const MOST: usize = 64;
    let mut inserted = 0;
    let mut left = rows.into_iter();
    while left.len() > 0 {
        let size = MOST.min(1 << left.len().ilog2());
        let mut sql = String::from(before);
        let mut parameter = 0;
        for n in 0..size {
            sql.push_str(if n == 0 { " " } else { ", " });
            for (part, text) in row.split("{}").enumerate() {
                if part > 0 {
                    parameter += 1;
                    sql.push('$');
                    sql.push_str(&parameter.to_string());
                }
                sql.push_str(text);
            }
        }
        sql.push(' ');
        sql.push_str(after);
        // Safe: the text is built from literals and counted placeholders; every value is bound.
        let mut query = sqlx::query::<Any>(AssertSqlSafe(sql));
        for value in left.by_ref().take(size).flatten() {
            query = match value {
                Value::Int(int) => query.bind(int),
                Value::Text(text) => query.bind(text),
                Value::MaybeText(text) => query.bind(text),
                Value::Bytes(bytes) => query.bind(bytes),
            };
        }
        let result: AnyQueryResult = query.execute(&mut *connection).await?;
        inserted += result.rows_affected();
    }
    Ok(inserted)
}
