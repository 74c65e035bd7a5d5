//! The door: whatever way a text comes, it is kept before anybody is told so, and danger is answered at once.
//!
//! Takes texts and delivery reports from calls and links; gives whether they are kept. Decides nothing else.

use crate::gateway::{Gateway, Report, Sent};
use crate::jobs::Answerer;
use crate::message::{Inbound, Outbound};
use crate::store::{Arrival, ByWire, Intake, Store, StoreError};
use chrono::Utc;
use metrics_exporter_prometheus::PrometheusHandle;
use std::collections::{BTreeMap, VecDeque};
use std::sync::{Arc, Mutex};
use std::time::Duration;
use tokio::sync::Notify;
use tokio::time::timeout;

/// How long an alarm waits for the store before it goes out without it.
const ALARM_WITHIN: Duration = Duration::from_millis(300);
/// Ids of alarms that went out without the store, so that the queue does not send them again.
const DIRECT_MOST: usize = 1_024;

/// What the door needs.
pub struct Door {
    pub store: Store,
    pub intake: Intake,
    pub gateways: BTreeMap<String, Arc<Gateway>>,
    pub answerer: Arc<dyn Answerer>,
    pub to_send: Arc<Notify>,
    pub public_url: Option<String>,
    pub metrics: Option<PrometheusHandle>,
    direct: Mutex<VecDeque<String>>,
}

impl Door {
    pub fn new(
        store: Store,
        intake: Intake,
        gateways: BTreeMap<String, Arc<Gateway>>,
        answerer: Arc<dyn Answerer>,
        to_send: Arc<Notify>,
    ) -> Door {
        Door {
            store,
            intake,
            gateways,
            answerer,
            to_send,
            public_url: None,
            metrics: None,
            direct: Mutex::new(VecDeque::new()),
        }
    }

    /// Keeps a text; whether it is kept. An alarm goes out whether the store is there or not.
    pub async fn take(&self, gateway: &Gateway, inbound: Inbound) -> bool {
        let arrival = Arrival { alarm: self.answerer.alarm(&inbound), inbound };
        let Some(alarm) = arrival.alarm.clone() else {
            return matches!(self.intake.take(arrival).await, Ok(true));
        };
        metrics::counter!("bellyful_alarms_total").increment(1);
        let intake = self.intake.clone();
        let mut keeping = tokio::spawn(async move { matches!(intake.take(arrival).await, Ok(true)) });
        let kept = match timeout(ALARM_WITHIN, &mut keeping).await {
            Ok(kept) => kept.unwrap_or(false),
            Err(_) => {
                self.send_directly(gateway, &alarm).await;
                keeping.await.unwrap_or(false)
            }
        };
        if !kept {
            self.send_directly(gateway, &alarm).await;
            return false;
        }
        let direct = self.direct.lock().is_ok_and(|direct| direct.contains(&alarm.id));
        if direct && let Err(error) = self.store.sent_directly(&alarm.id, Utc::now()).await {
            tracing::error!(%error, "an alarm that went out may go out again");
        }
        self.to_send.notify_waiters();
        self.to_send.notify_one();
        true
    }

    /// Sends an alarm past the queue, once.
    async fn send_directly(&self, gateway: &Gateway, alarm: &Outbound) {
        if self.direct.lock().is_ok_and(|direct| direct.contains(&alarm.id)) {
            return;
        }
        let sent = gateway.send(&alarm.id, &alarm.to, &alarm.text).await;
        metrics::counter!("bellyful_alarms_past_the_store_total").increment(1);
        if matches!(sent, Sent::Taken { .. })
            && let Ok(mut direct) = self.direct.lock()
        {
            direct.push_back(alarm.id.clone());
            if direct.len() > DIRECT_MOST {
                direct.pop_front();
            }
        }
    }

    /// Keeps a delivery report; whether its text is known.
    pub async fn report(&self, gateway: &str, report: &Report) -> Result<bool, StoreError> {
        let text = match (&report.ours, &report.theirs) {
            (Some(ours), _) => ByWire::Ours(ours),
            (None, Some(theirs)) => ByWire::Theirs(theirs),
            (None, None) => return Ok(false),
        };
        let known = self.store.receipt(gateway, text, report.receipt, Utc::now()).await?;
        metrics::counter!("bellyful_receipts_total", "says" => report.receipt.id()).increment(1);
        Ok(known)
    }
}
