//! Texts out, queued with what they follow from.
//!
//! Takes what was decided; gives rows that [`super::outbox`] hands to the senders.

use super::StoreError;
use super::rows::{Value, insert_many, json, ms};
use crate::household::HouseholdId;
use crate::message::{Kind, Outbound};
use chrono::{DateTime, Duration, Utc};

/// How long a text is worth sending late.
fn worth_sending(kind: Kind) -> Duration {
    match kind {
        // Their day has moved on.
        Kind::Reminder => Duration::hours(12),
        Kind::Advice | Kind::Answer | Kind::Question | Kind::Notice => Duration::hours(24),
        Kind::Alarm | Kind::Staff => Duration::hours(48),
    }
}

/// Queues texts; one whose id is known already is left as it is. Gives how many are new.
pub(super) async fn enqueue(
    connection: &mut sqlx::AnyConnection,
    household: HouseholdId,
    inbox_row: Option<i64>,
    texts: &[&Outbound],
    now: DateTime<Utc>,
) -> Result<u64, StoreError> {
    let texts: Vec<(HouseholdId, &Outbound)> = texts.iter().map(|text| (household, *text)).collect();
    enqueue_each(connection, None, inbox_row, &texts, now).await
}

/// Queues texts to several households, as part of a broadcast or not.
pub(super) async fn enqueue_each(
    connection: &mut sqlx::AnyConnection,
    broadcast: Option<i64>,
    inbox_row: Option<i64>,
    texts: &[(HouseholdId, &Outbound)],
    now: DateTime<Utc>,
) -> Result<u64, StoreError> {
    let rows = texts.iter().map(|(household, text)| {
        let start = text.not_before.max(now);
        vec![
            Value::Text(text.id.clone()),
            Value::Int(*household),
            // 0 stands for none: a bound NULL has no type that all databases agree on.
            Value::Int(inbox_row.unwrap_or(0)),
            Value::Text(text.gateway.clone()),
            Value::Text(text.to.clone()),
            Value::Text(text.text.clone()),
            Value::Text(text.kind.id().to_owned()),
            Value::MaybeText(text.advice.as_ref().map(json)),
            Value::Int((text.kind == Kind::Alarm) as i64),
            Value::Int(ms(text.not_before)),
            Value::Int(ms(text.not_before)),
            Value::Int(ms(start + worth_sending(text.kind))),
            Value::Int(ms(now)),
            Value::Int(broadcast.unwrap_or(0)),
        ]
    });
    insert_many(
        connection,
        "INSERT INTO outbox (id, household_id, inbox_id, gateway, recipient, text, kind, advice, urgent, \
         not_before, next_at, expires_at, created_at, broadcast_id, state, tries, until_at) VALUES",
        "({}, {}, NULLIF({}, 0), {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, NULLIF({}, 0), 'queued', 0, 0)",
        "ON CONFLICT (id) DO NOTHING",
        rows.collect(),
    )
    .await
}
