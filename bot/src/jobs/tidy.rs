//! What is done now and then on every node: what the programme taught is taken over, and old texts are forgotten.
//!
//! Safe to run twice, on any number of nodes.

use super::Clock;
use crate::mind::Mind;
use crate::store::{KEEP_TEXTS_DAYS, Store, StoreError};
use crate::taught::Taught;
use chrono::{DateTime, Duration, Utc};
use std::sync::Arc;

/// How long a word taught on one node may be unknown on another.
const LOOK_EVERY: std::time::Duration = std::time::Duration::from_secs(20);
/// Looks between two forgettings: an hour.
const LOOKS: u32 = 180;

/// Goes on until it is dropped.
pub async fn run(store: Store, mind: Arc<Mind>, clock: Clock) {
    for look in 0_u32.. {
        match Taught::load(&store).await {
            Ok(taught) => mind.teach(taught),
            Err(error) => tracing::warn!(%error, "what was taught could not be taken over"),
        }
        if look.is_multiple_of(LOOKS) {
            if let Err(error) = forget_old_texts(&store, clock()).await {
                tracing::error!(%error, "old texts could not be forgotten");
            }
            if let Err(error) = store.empty_log().await {
                tracing::warn!(%error, "the database's log could not be emptied");
            }
        }
        tokio::time::sleep(LOOK_EVERY).await;
    }
}

/// Forgets the words of texts that were kept as long as the programme wants; how many.
pub async fn forget_old_texts(store: &Store, now: DateTime<Utc>) -> Result<u64, StoreError> {
    let days = store.settings().await?.get(KEEP_TEXTS_DAYS).and_then(|days| days.parse::<i64>().ok());
    match days.filter(|days| *days > 0) {
        Some(days) => store.forget_texts(now - Duration::days(days)).await,
        None => Ok(0),
    }
}
