//! Many known households: one that lived 120 days with the bot, copied with all it said, or with what is younger than so
//! many days where a million would not fit on the disk.

use bellyful::demo::history::{Progress, play, set_all_up};
use bellyful::mind::Mind;
use bellyful::store::Store;
use chrono::{DateTime, Utc};
use sqlx::AssertSqlSafe;
use std::sync::Arc;

/// Number of the phone of the household copied as this one.
pub fn number(household: usize) -> String {
    format!("+1555{household:07}")
}

/// Another household each time, from all over.
pub fn spread(n: usize, households: usize) -> String {
    number(n.wrapping_mul(7_919) % households)
}

pub async fn fill(database: &str, households: usize, now: DateTime<Utc>) {
    let store = Store::open(database).await.expect("a new store");
    let mind = Arc::new(Mind::new(None, 1).expect("built in"));
    set_all_up(&store, &mind, now).await.expect("kept");
    play(store.clone(), mind, 0, now, Arc::new(Progress::default())).await.expect("kept");
    store.close().await;
    sqlx::any::install_default_drivers();
    let pool = sqlx::any::AnyPoolOptions::new().max_connections(1).connect(database).await.expect("opens");
    let model: i64 =
        sqlx::query_scalar("SELECT household_id FROM fact GROUP BY household_id ORDER BY COUNT(*) DESC LIMIT 1")
            .fetch_one(&pool)
            .await
            .expect("it has facts");
    let mut tx = pool.begin().await.expect("begins");
    if let Ok(days) = std::env::var("BELLYFUL_LOAD_COPY_DAYS") {
        for table in ["fact", "checkpoint"] {
            let of = format!("FROM {table} WHERE household_id = {model}");
            let sql = format!(
                "DELETE {of} AND day < (SELECT MAX(day) {of}) - {}",
                days.parse::<u32>().expect("a whole number")
            );
            sqlx::query(AssertSqlSafe(sql)).execute(&mut *tx).await.expect("left out");
        }
    }
    let copies = [
        (
            "household",
            "id",
            "version, name, lang, country, time_zone, since_at, seed, staff_id, next_fact, talk, erased_at",
        ),
        ("fact", "household_id", "id, day, told_at, what"),
        ("twin", "household_id", "day, bytes"),
        ("glance", "household_id", "version, standing, foreseen"),
        ("checkpoint", "household_id", "day, bytes"),
    ];
    let counted = format!("WITH RECURSIVE n(v) AS (SELECT 0 UNION ALL SELECT v + 1 FROM n WHERE v + 1 < {households})");
    for (table, key, columns) in copies {
        let sql = format!(
            "{counted} INSERT INTO {table} ({key}, {columns}) SELECT 1000 + n.v, {columns} FROM n, {table} \
             WHERE {table}.{key} = {model}"
        );
        sqlx::query(AssertSqlSafe(sql)).execute(&mut *tx).await.expect("copied");
    }
    let sql = format!(
        "{counted} INSERT INTO phone (number, household_id, gateway, since_at) \
         SELECT '+1555' || substr('0000000' || n.v, length('0000000' || n.v) - 6), 1000 + n.v, 'plain', 0 FROM n"
    );
    sqlx::query(AssertSqlSafe(sql)).execute(&mut *tx).await.expect("copied");
    tx.commit().await.expect("kept");
    pool.close().await;
}
