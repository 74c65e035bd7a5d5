//! What runs beside the web server: texts are worked, answers are sent, leases are kept alive.
//!
//! Each job does one small step at a time and may be killed at any instruction: what it had begun is taken up again,
//! by itself or by another node.

pub mod guard;
pub mod send;
pub mod work;

use crate::message::{Inbound, Outbound};
use crate::store::{Claim, Kept, Store, StoreError, Wake};
use chrono::{DateTime, Duration, Utc};
use std::future::Future;
use std::pin::Pin;

pub type Answering<'a> = Pin<Box<dyn Future<Output = Result<Kept, StoreError>> + Send + 'a>>;

/// What the jobs and the door ask of the bot's mind.
pub trait Answerer: Send + Sync + 'static {
    /// The alarm that a text of danger is answered with, from its words alone. Its id is that of the first answer.
    fn alarm(&self, inbound: &Inbound) -> Option<Outbound>;
    /// Works out what follows from a text, and keeps it.
    fn answer<'a>(&'a self, store: &'a Store, claim: &'a Claim, now: DateTime<Utc>) -> Answering<'a>;
    /// Works out what follows from the clock, and keeps it.
    fn wake<'a>(&'a self, store: &'a Store, wake: &'a Wake, now: DateTime<Utc>) -> Answering<'a>;
    /// What is said when a text could not be worked in many tries.
    fn apology(&self, inbound: &Inbound) -> Option<Outbound>;
}

/// How long a node that died keeps its work from others; well below the ten seconds promised.
pub fn lease() -> Duration {
    Duration::seconds(7)
}

/// How often a node says it lives.
pub const HEARTBEAT: std::time::Duration = std::time::Duration::from_secs(2);

/// How often to look for work that another node took in, or that the clock made due.
pub const LOOK_EVERY: std::time::Duration = std::time::Duration::from_millis(500);

/// Doubling waits from `first`, capped, with a quarter of chance either way so that those who failed together do not
/// come back together.
pub fn backoff(tries: i64, first: Duration, most: Duration) -> Duration {
    let doubled = first * 2_i32.pow(tries.clamp(1, 16) as u32 - 1);
    let wait = doubled.min(most).num_milliseconds() as f64;
    Duration::milliseconds((wait * rand::random_range(0.75..1.25)) as i64)
}
