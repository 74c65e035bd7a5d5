//! The store: all SQL. One file a table group; SQLite and PostgreSQL with the same words where they agree.
//!
//! Takes and gives the bot's own types; never decides anything. Rules it holds: a text is committed before it is
//! acknowledged; all that follows from one text is kept in one transaction or not at all; what was decided on a
//! household row that has moved since is refused ([`StoreError::Stale`]), so that no turn overwrites another.

mod accept;
mod broadcast;
mod care;
mod dump;
mod forget;
mod health;
mod hook;
mod household;
mod inbox;
mod keep;
mod lease;
mod migrations;
mod night;
mod outbox;
mod overview;
mod part;
mod photo;
mod programme;
mod queue;
mod rows;
mod session;
mod setting;
mod staff;
mod story;
mod token;
mod trail;
mod visit;

pub use accept::{Arrival, Intake};
pub use broadcast::{Broadcast, NewBroadcast};
pub use care::Care;
pub use dump::CopyError;
pub use health::Traffic;
pub use hook::AlarmOut;
pub use household::Wanted;
pub use inbox::{Past, PastState};
pub use keep::{Cause, Kept};
pub use lease::{Claim, Lane, Waiting, Wake};
pub use outbox::{ByWire, Outcome, Receipt, ToSend};
pub use overview::Seen;
pub use part::{PartKept, PartKey, Whole};
pub use photo::{Photo, Size};
pub use programme::Counted;
pub use session::Sessions;
pub use setting::{EMERGENCY, FeedWord, KEEP_TEXTS_DAYS, NEEDS_PIN};
pub use staff::{Member, NewStaff};
pub use story::Said;
pub use token::Token;
pub use trail::PROGRAMME;
pub use visit::Visit;

use sqlx::any::{AnyConnectOptions, AnyPoolOptions};
use sqlx::migrate::MigrateError;
use sqlx::{Any, AnyPool, ConnectOptions, Executor, Transaction};
use std::str::FromStr;
use std::sync::{Arc, Once};
use std::time::Duration;

/// Keeping or loading went wrong.
#[derive(Debug, thiserror::Error)]
pub enum StoreError {
    #[error("the database could not do it: {0}")]
    Database(#[from] sqlx::Error),
    #[error("the database's tables could not be brought up to date: {0}")]
    Migration(#[from] MigrateError),
    #[error(
        "its tables were moved on by a newer version of bellyful (step {0}): start that version, or restore the copy that was \
         taken before the upgrade"
    )]
    Newer(i64),
    #[error("what is kept as {what} cannot be read: {why}")]
    Unreadable { what: &'static str, why: String },
    #[error("household {0} was changed by another turn: load it again and decide again")]
    Stale(i64),
    #[error("this work is done already")]
    Done,
    #[error("a fault on purpose at {0}")]
    Fault(&'static str),
}

/// Where a transaction stands when a fault strikes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Moment {
    /// Nothing was written.
    Before,
    /// All was written, nothing committed.
    Within,
    /// Written and committed, but the caller does not get to know.
    After,
}

/// Decides, for tests, whether a transaction fails on purpose: its name and the moment in, whether to fail out.
pub type Faults = Arc<dyn Fn(&'static str, Moment) -> bool + Send + Sync>;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Dialect {
    Sqlite,
    Postgres,
}

/// A handle on the database; clones share it.
#[derive(Clone)]
pub struct Store {
    /// One connection on SQLite, where only one can write; several on PostgreSQL.
    write: AnyPool,
    read: AnyPool,
    dialect: Dialect,
    faults: Option<Faults>,
}

type Tx = Transaction<'static, Any>;

/// Connections a node holds to PostgreSQL for writing; each waits for its own commit.
const POSTGRES_WRITERS: u32 = 8;
const READERS: u32 = 4;
const ACQUIRE_WITHIN: Duration = Duration::from_secs(10);

impl Store {
    /// Opens (and where needed creates and migrates) the database at `sqlite:FILE` or `postgres://...`.
    pub async fn open(url: &str) -> Result<Store, StoreError> {
        if url.starts_with("sqlite:") {
            let url = if url.contains('?') { url.to_owned() } else { format!("{url}?mode=rwc") };
            let write = pool(&url, 1, SQLITE_WRITE).await?;
            migrations::sqlite().run(&write).await.map_err(moved)?;
            let read = pool(&url, READERS, SQLITE_READ).await?;
            Ok(Store { write, read, dialect: Dialect::Sqlite, faults: None })
        } else {
            let write = pool(url, POSTGRES_WRITERS, POSTGRES).await?;
            migrations::postgres().run(&write).await.map_err(moved)?;
            let read = pool(url, READERS, POSTGRES).await?;
            Ok(Store { write, read, dialect: Dialect::Postgres, faults: None })
        }
    }

    /// A SQLite database that lives and dies with the handle.
    pub async fn in_memory() -> Result<Store, StoreError> {
        let write = pool("sqlite::memory:", 1, "PRAGMA synchronous=OFF; PRAGMA cache_size=-65536;").await?;
        migrations::sqlite().run(&write).await?;
        Ok(Store { read: write.clone(), write, dialect: Dialect::Sqlite, faults: None })
    }

    /// The same store, but its transactions fail when `faults` says so.
    pub fn with_faults(mut self, faults: Faults) -> Store {
        self.faults = Some(faults);
        self
    }

    /// Whether the database answers and can be written to.
    pub async fn ready(&self) -> Result<(), StoreError> {
        let mut tx = self.begin("ready").await?;
        sqlx::query("DELETE FROM lease WHERE lane = ''").execute(&mut *tx).await?;
        tx.rollback().await?;
        Ok(())
    }

    /// Waits for what runs and closes every connection.
    pub async fn close(&self) {
        self.read.close().await;
        self.write.close().await;
    }

    /// A transaction that is sure to write: SQLite is asked for its one write lock now, since a read that later
    /// turns to writing can meet a newer snapshot and fail for good.
    async fn begin(&self, name: &'static str) -> Result<Tx, StoreError> {
        self.strike(name, Moment::Before)?;
        Ok(match self.dialect {
            Dialect::Sqlite => self.write.begin_with("BEGIN IMMEDIATE").await?,
            Dialect::Postgres => self.write.begin().await?,
        })
    }

    async fn commit(&self, name: &'static str, tx: Tx) -> Result<(), StoreError> {
        self.strike(name, Moment::Within)?;
        tx.commit().await?;
        self.strike(name, Moment::After)
    }

    fn strike(&self, name: &'static str, moment: Moment) -> Result<(), StoreError> {
        match &self.faults {
            Some(faults) if faults(name, moment) => Err(StoreError::Fault(name)),
            _ => Ok(()),
        }
    }

    /// Picks the words where the two dialects differ.
    fn sql(&self, sqlite: &'static str, postgres: &'static str) -> &'static str {
        match self.dialect {
            Dialect::Sqlite => sqlite,
            Dialect::Postgres => postgres,
        }
    }
}

/// A 202 promises that the text outlives a power cut: WAL alone would lose the last commits, so FULL. What is erased is
/// overwritten, not only let go.
const SQLITE_WRITE: &str = "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA busy_timeout=5000; \
                            PRAGMA cache_size=-8192; PRAGMA wal_autocheckpoint=4000; PRAGMA secure_delete=ON;";
const SQLITE_READ: &str = "PRAGMA busy_timeout=5000; PRAGMA query_only=ON; PRAGMA cache_size=-2048;";
/// A statement or a lock that takes longer than this will not get better by waiting.
const POSTGRES: &str = "SET statement_timeout='30s'; SET lock_timeout='10s'; \
                        SET idle_in_transaction_session_timeout='30s';";

fn moved(error: MigrateError) -> StoreError {
    match error {
        MigrateError::VersionMissing(step) => StoreError::Newer(step),
        error => StoreError::Migration(error),
    }
}

async fn pool(url: &str, size: u32, setup: &'static str) -> Result<AnyPool, StoreError> {
    static DRIVERS: Once = Once::new();
    DRIVERS.call_once(sqlx::any::install_default_drivers);
    let options = AnyConnectOptions::from_str(url)?.disable_statement_logging();
    Ok(AnyPoolOptions::new()
        .max_connections(size)
        .min_connections(1)
        .idle_timeout(None)
        .max_lifetime(None)
        .acquire_timeout(ACQUIRE_WITHIN)
        .test_before_acquire(!url.starts_with("sqlite:"))
        .after_connect(move |connection, _| {
            Box::pin(async move {
                connection.execute(setup).await?;
                Ok(())
            })
        })
        .connect_with(options)
        .await?)
}
