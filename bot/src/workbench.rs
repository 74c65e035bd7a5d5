//! Works all that waits, one thing after the other: for a simulated clock, where nothing happens between two lines.
//!
//! Takes the store and a moment; gives the texts that were queued. `serve` has workers of its own that share.

use crate::household::{Sender, Situation};
use crate::message::Outbound;
use crate::mind::Mind;
use crate::store::{Lane, Store, StoreError, Waiting};
use crate::turn;
use chrono::{DateTime, Duration, Utc};

const OWNER: &str = "workbench";
/// A lease here never runs out: nobody else takes any.
const LEASE: Duration = Duration::days(36_500);

/// Works all texts, and all that the clock wakes us for, up to `now`.
pub async fn work_all(store: &Store, mind: &Mind, now: DateTime<Utc>) -> Result<Vec<Outbound>, StoreError> {
    let mut queued = vec![];
    let mut finished: Vec<Lane> = vec![];
    loop {
        let lanes = store.claim(OWNER, &finished, 16, now, now + LEASE).await?;
        if lanes.is_empty() {
            return Ok(queued);
        }
        for lane in &lanes {
            while let Some(waiting) = store.waiting(lane, now).await? {
                let kept = match &waiting {
                    Waiting::Text(claim) => turn::answer(store, mind, claim, now).await?,
                    Waiting::Wake(wake) => turn::wake(store, mind, wake, now).await?,
                };
                queued.extend(kept.queued);
            }
        }
        finished = lanes;
    }
}

/// Works the texts of one number, and all that the clock wakes us for about its household, up to `now`; others wait.
pub async fn work_lane(
    store: &Store,
    mind: &Mind,
    number: &str,
    now: DateTime<Utc>,
) -> Result<Vec<Outbound>, StoreError> {
    let mut queued = vec![];
    loop {
        let lane = match store.sender(number).await? {
            Sender::Family { household, .. } => Lane::of_household(household),
            _ => Lane(format!("n:{number}")),
        };
        let kept = match store.waiting(&lane, now).await? {
            Some(Waiting::Text(claim)) => turn::answer(store, mind, &claim, now).await?,
            Some(Waiting::Wake(wake)) => turn::wake(store, mind, &wake, now).await?,
            None => return Ok(queued),
        };
        queued.extend(kept.queued);
    }
}

/// Nobody is known: for what a person at the keyboard sets up.
pub fn nobody() -> Situation {
    Situation {
        sender: Sender::Stranger { stopped: false },
        version: 0,
        household: None,
        place: String::new(),
        in_hand: false,
        several: vec![],
        twin: None,
        facts: vec![],
        phones: vec![],
        on_call: vec![],
        alarms: vec![],
    }
}
