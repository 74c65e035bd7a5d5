//! Tells a programme's own computer of alarms: a signed call for each, again until it is taken.
//!
//! Takes alarms as kept; sends household, moment and signs, never names, numbers or words. May be told twice after a
//! crash, with the same id. Families and field workers are told by text whether this works or not.

use super::{Clock, backoff};
use crate::config::WebhookConfig;
use crate::gateway::client;
use crate::store::{AlarmOut, Store, StoreError};
use chrono::{DateTime, Duration, Utc};
use hmac::{Hmac, KeyInit, Mac};
use sha2::Sha256;

/// How often to look for alarms.
const LOOK_EVERY: std::time::Duration = std::time::Duration::from_secs(1);
/// A call that takes longer is tried again.
const WITHIN: std::time::Duration = std::time::Duration::from_secs(10);
/// An alarm older than this is no news. Source: our choice.
const NEWS: Duration = Duration::hours(24);

/// Goes on until it is dropped.
pub async fn run(store: Store, to: WebhookConfig, clock: Clock) {
    let client = client();
    loop {
        if let Err(error) = tell_all(&store, &client, &to, &clock).await {
            tracing::error!(%error, "alarms could not be looked up for the webhook");
        }
        tokio::time::sleep(LOOK_EVERY).await;
    }
}

async fn tell_all(
    store: &Store,
    client: &reqwest::Client,
    to: &WebhookConfig,
    clock: &Clock,
) -> Result<(), StoreError> {
    let now = clock();
    for alarm in store.claim_alarms(now - NEWS, now, now + Duration::seconds(30)).await? {
        let body = body(&alarm);
        let signature = format!("sha256={}", signature(to.secret.reveal(), body.as_bytes()));
        let call = client
            .post(&to.url)
            .timeout(WITHIN)
            .header("content-type", "application/json")
            .header("x-signature", signature)
            .body(body);
        let taken = call.send().await.is_ok_and(|response| response.status().is_success());
        metrics::counter!("bellyful_alarm_calls_total", "outcome" => if taken { "taken" } else { "again" })
            .increment(1);
        let now = clock();
        let again = now + backoff(alarm.calls, alarm.id, Duration::seconds(2), Duration::minutes(10));
        store.settle_alarm(alarm.id, taken, again, now).await?;
    }
    Ok(())
}

fn body(alarm: &AlarmOut) -> String {
    let at: DateTime<Utc> = alarm.at;
    serde_json::json!({
        "id": format!("alarm-{}", alarm.id),
        "event": "alarm",
        "household": alarm.household,
        "at": at,
        "signs": alarm.signs,
    })
    .to_string()
}

/// HMAC-SHA256 in hex.
fn signature(secret: &str, body: &[u8]) -> String {
    let mut mac = Hmac::<Sha256>::new_from_slice(secret.as_bytes()).expect("HMAC takes keys of any length");
    mac.update(body);
    hex::encode(mac.finalize().into_bytes())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Source: RFC 4231, test case 2.
    #[test]
    fn the_signature_is_hmac_sha_256() {
        let expected = "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843";
        assert_eq!(signature("Jefe", b"what do ya want for nothing?"), expected);
    }
}
