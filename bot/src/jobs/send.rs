//! The sender of one gateway: takes texts that wait, sends them, writes down what came of it.
//!
//! An outcome that is lost to a crash means the text is sent again with the same id.

use super::{HEARTBEAT, LOOK_EVERY, backoff, lease};
use crate::gateway::{Gateway, Sent};
use crate::store::{Outcome, Store, ToSend};
use chrono::{DateTime, Duration, Utc};
use std::collections::BTreeSet;
use std::sync::Arc;
use tokio::sync::{Notify, mpsc, watch};
use tokio::time::Instant;

pub struct Sender {
    pub store: Store,
    pub gateway: Arc<Gateway>,
    pub owner: String,
}

impl Sender {
    /// Sends until told to stop, and then waits for what is under way.
    pub async fn run(self, to_send: Arc<Notify>, mut stop: watch::Receiver<bool>) {
        // Without a way of our own, texts wait for the gateway's next call.
        if !self.gateway.sends() {
            return;
        }
        let (done, mut outcomes) = mpsc::unbounded_channel::<(ToSend, Sent)>();
        let mut under_way = BTreeSet::new();
        let mut beat = Instant::now();
        let mut settled = Vec::new();
        loop {
            while let Ok(outcome) = outcomes.try_recv() {
                settled.push(outcome);
            }
            self.settle(&mut settled, &mut under_way).await;
            let stopping = *stop.borrow();
            if stopping && under_way.is_empty() {
                return;
            }
            let now = Utc::now();
            if beat.elapsed() > HEARTBEAT {
                beat = Instant::now();
                let sends: Vec<i64> = under_way.iter().copied().collect();
                if let Err(error) = self.store.renew_sends(&self.owner, &sends, now + lease()).await {
                    tracing::warn!(%error, "leases of sends could not be moved on");
                }
            }
            let room = self.gateway.profile.out.at_once.saturating_sub(under_way.len());
            // While a link is down, texts wait without counting it as a try.
            let most = if stopping || !self.gateway.is_up() { 0 } else { room };
            let taken = if most == 0 { Vec::new() } else { self.take(most, now).await };
            let any = !taken.is_empty();
            for send in taken {
                under_way.insert(send.seq);
                let (gateway, done) = (self.gateway.clone(), done.clone());
                let wait = (send.at - now).to_std().unwrap_or_default();
                tokio::spawn(async move {
                    tokio::time::sleep(wait).await;
                    let sent = gateway.send(&send.id, &send.to, &send.text).await;
                    let _ = done.send((send, sent));
                });
            }
            if any && under_way.len() < self.gateway.profile.out.at_once {
                continue;
            }
            tokio::select! {
                Some(outcome) = outcomes.recv() => settled.push(outcome),
                () = to_send.notified(), if !stopping => {}
                () = tokio::time::sleep(LOOK_EVERY) => {}
                _ = stop.changed(), if !stopping => {}
            }
        }
    }

    async fn take(&self, most: usize, now: DateTime<Utc>) -> Vec<ToSend> {
        // Rounded up: never more a second than the gateway bears.
        let apart = |rate: f64| Duration::milliseconds((1000.0 / rate.max(0.001)).ceil() as i64);
        let apart = self.gateway.profile.out.rate_per_s.map(apart);
        match self.store.claim_sends_at(&self.owner, &self.gateway.name, most, apart, now, now + lease()).await {
            Ok(sends) => {
                let again = sends.iter().filter(|send| send.maybe_sent).count() as u64;
                metrics::counter!("bellyful_sends_maybe_doubled_total").increment(again);
                sends
            }
            Err(error) => {
                tracing::error!(%error, "texts to send could not be taken up");
                Vec::new()
            }
        }
    }

    /// Writes outcomes down; what cannot be written down now stays for the next round.
    async fn settle(&self, settled: &mut Vec<(ToSend, Sent)>, under_way: &mut BTreeSet<i64>) {
        if settled.is_empty() {
            return;
        }
        let now = Utc::now();
        let outcomes: Vec<_> = settled.iter().map(|(send, sent)| (send.clone(), outcome(send, sent, now))).collect();
        match self.store.settle(&outcomes, now).await {
            Ok(()) => {
                for (send, outcome) in &outcomes {
                    under_way.remove(&send.seq);
                    let outcome = match outcome {
                        Outcome::Sent { .. } => "sent",
                        Outcome::Refused { .. } => "refused",
                        Outcome::Again { .. } => "again",
                    };
                    metrics::counter!("bellyful_sends_total", "outcome" => outcome).increment(1);
                }
                settled.clear();
            }
            Err(error) => {
                tracing::error!(%error, "outcomes of sends could not be kept");
                tokio::time::sleep(LOOK_EVERY).await;
            }
        }
    }
}

/// What is written down of a send.
pub fn outcome(send: &ToSend, sent: &Sent, now: DateTime<Utc>) -> Outcome {
    match sent {
        Sent::Taken { wire_id } => Outcome::Sent { wire_id: wire_id.clone() },
        Sent::Refused { why } => Outcome::Refused { why: why.clone() },
        Sent::Again { why, after } => {
            let wait = backoff(send.tries, send.seq, Duration::seconds(1), Duration::minutes(10));
            let asked = after.and_then(|after| Duration::from_std(after).ok()).unwrap_or_default();
            Outcome::Again { at: now + wait.max(asked), why: why.clone() }
        }
    }
}
