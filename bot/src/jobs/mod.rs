//! What runs beside the web server: texts are worked, answers are sent, leases are kept alive.
//!
//! Each job does one small step at a time and may be killed at any instruction: what it had begun is taken up again,
//! by itself or by another node.

pub mod guard;
pub mod hook;
pub mod link;
pub mod send;
pub mod tidy;
pub mod work;

use crate::message::{Inbound, Outbound};
use crate::store::{Claim, Kept, Store, StoreError, Wake};
use chrono::{DateTime, Duration, Utc};
use std::future::Future;
use std::pin::Pin;
use std::sync::Arc;

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

/// Tells the time; the machine's, but in simulations.
pub type Clock = Arc<dyn Fn() -> DateTime<Utc> + Send + Sync>;

/// The machine's own clock.
pub fn machine_clock() -> Clock {
    Arc::new(Utc::now)
}

/// Doubling waits from `first`, capped, up to a quarter more or less by `row`, so that those who failed together do
/// not come back together.
pub fn backoff(tries: i64, row: i64, first: Duration, most: Duration) -> Duration {
    let doubled = first * 2_i32.pow(tries.clamp(1, 16) as u32 - 1);
    let wait = doubled.min(most).num_milliseconds();
    // Fibonacci hashing spreads neighbouring rows over the whole range.
    let spread = (row.wrapping_add(tries) as u64).wrapping_mul(0x9E37_79B9_7F4A_7C15) >> 54;
    Duration::milliseconds(wait * 3 / 4 + wait * spread as i64 / 2048)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn waits_double_up_to_the_cap_and_differ_by_row() {
        let wait = |tries, row| backoff(tries, row, Duration::seconds(1), Duration::minutes(5)).num_milliseconds();
        for row in 0..1000 {
            assert!((750..=1250).contains(&wait(1, row)), "{}", wait(1, row));
            assert!((3000..=5000).contains(&wait(3, row)), "{}", wait(3, row));
            assert!((225_000..=375_000).contains(&wait(60, row)), "{}", wait(60, row));
        }
        let mut first: Vec<i64> = (0..100).map(|row| wait(1, row)).collect();
        first.sort_unstable();
        first.dedup();
        assert!(first.len() > 80, "spread over {} waits", first.len());
    }
}
