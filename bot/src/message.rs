//! Texts in and texts out, as every room of the bot knows them.
//!
//! Takes nothing; gives the two ends of the way through. Neither knows which wire it came by beyond its name.

use bellyful_core::advice::Advice;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

/// A text as a gateway handed it over.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Inbound {
    pub gateway: String,
    /// The gateway's own id of it: with gateway and sender, the key against doubles.
    pub id: String,
    pub from: String,
    pub to: Option<String>,
    pub text: String,
    /// When it was sent, if the gateway said so and it is not in the future; else when it arrived.
    pub sent_at: DateTime<Utc>,
    pub received_at: DateTime<Utc>,
}

bellyful_core::ids!(/// What a text of ours is for.
    Kind {
    Advice = "advice", Answer = "answer", Question = "question", Alarm = "alarm", Reminder = "reminder",
    Staff = "staff", Notice = "notice",
});

/// A text of ours, before it is kept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Outbound {
    /// Stable over retries, so that a gateway can drop a double.
    pub id: String,
    pub gateway: String,
    pub to: String,
    pub text: String,
    pub kind: Kind,
    pub advice: Option<Advice>,
    /// Not sent before this: quiet hours.
    pub not_before: DateTime<Utc>,
}

/// The id of the `ordinal`th answer to a text: the same whenever and wherever it is worked out.
pub fn answer_id(gateway: &str, from: &str, inbound_id: &str, ordinal: usize) -> String {
    let mut hash = Sha256::new();
    for part in [gateway, from, inbound_id] {
        hash.update((part.len() as u64).to_be_bytes());
        hash.update(part.as_bytes());
    }
    hash.update((ordinal as u64).to_be_bytes());
    hex::encode(&hash.finalize()[..12])
}
