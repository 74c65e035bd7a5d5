//! Texts in: kept for good before anybody is told that they are.
//!
//! Takes arrivals, each with the alarm that answers it if it tells of danger; gives whether they are kept. Arrivals
//! from many clients at once share one commit, since the disk's flush is what a commit costs.

use super::queue::enqueue;
use super::rows::{Value, insert_many, ms};
use super::{Store, StoreError};
use crate::message::{Inbound, Outbound};
use std::sync::Arc;
use tokio::sync::{Notify, mpsc, oneshot};

/// A text at the door, and the alarm to answer it with at once.
#[derive(Debug, Clone)]
pub struct Arrival {
    pub inbound: Inbound,
    pub alarm: Option<Outbound>,
}

const NAME: &str = "accept";
/// Texts that tell of danger are worked before those that wait already.
const DANGER_AHEAD_MS: i64 = 3_600_000;

impl Store {
    /// Keeps arrivals in one transaction; one that was seen before changes nothing. Gives how many were new.
    pub async fn accept(&self, arrivals: &[Arrival]) -> Result<u64, StoreError> {
        let mut tx = self.begin(NAME).await?;
        let mut rows = Vec::with_capacity(arrivals.len());
        for Arrival { inbound, alarm } in arrivals {
            let received = ms(inbound.received_at);
            let next = if alarm.is_some() { received - DANGER_AHEAD_MS } else { received };
            rows.push(vec![
                Value::Text(inbound.gateway.clone()),
                Value::Text(inbound.from.clone()),
                Value::Text(inbound.id.clone()),
                Value::MaybeText(inbound.to.clone()),
                Value::Text(inbound.text.clone()),
                Value::Int(ms(inbound.sent_at)),
                Value::Int(received),
                Value::Text(inbound.from.clone()),
                Value::Text(inbound.from.clone()),
                Value::Text(inbound.from.clone()),
                Value::Int(alarm.is_some() as i64),
                Value::Int(next),
            ]);
        }
        let new = insert_many(
            &mut tx,
            "INSERT INTO inbox (gateway, sender, gateway_id, recipient, text, sent_at, received_at, household_id, \
             lane, state, alarmed, tries, next_at) VALUES",
            "({}, {}, {}, {}, {}, {}, {}, COALESCE((SELECT household_id FROM phone WHERE number = {}), 0), \
             COALESCE((SELECT 'h:' || household_id FROM phone WHERE number = {}), 'n:' || {}), 'open', {}, 0, {})",
            "ON CONFLICT (gateway, sender, gateway_id) DO NOTHING",
            rows,
        )
        .await?;
        let alarms: Vec<_> = arrivals.iter().filter_map(|arrival| arrival.alarm.as_ref()).collect();
        if !alarms.is_empty() {
            enqueue(&mut tx, 0, None, &alarms, arrivals[0].inbound.received_at).await?;
        }
        self.commit(NAME, tx).await?;
        Ok(new)
    }
}

struct Waiting {
    arrival: Arrival,
    kept: oneshot::Sender<Result<bool, Arc<StoreError>>>,
}

/// The door: gathers what many clients hand in at once into one commit.
#[derive(Clone)]
pub struct Intake {
    queue: mpsc::Sender<Waiting>,
    /// Rung whenever new texts were kept.
    pub arrived: Arc<Notify>,
}

impl Intake {
    /// Most that one commit gathers.
    const BATCH: usize = 256;
    /// Most that wait for their commit; more are turned away, to come again.
    const ROOM: usize = 4096;

    pub fn start(store: Store) -> Intake {
        let (queue, mut waiting) = mpsc::channel::<Waiting>(Self::ROOM);
        let arrived = Arc::new(Notify::new());
        let bell = arrived.clone();
        tokio::spawn(async move {
            let mut batch = Vec::with_capacity(Self::BATCH);
            while waiting.recv_many(&mut batch, Self::BATCH).await > 0 {
                let (arrivals, answers): (Vec<_>, Vec<_>) = batch.drain(..).map(|w| (w.arrival, w.kept)).unzip();
                match store.accept(&arrivals).await {
                    Ok(new) => {
                        bell.notify_waiters();
                        bell.notify_one();
                        let seen = arrivals.len() as u64 - new;
                        metrics::counter!("bellyful_texts_accepted_total").increment(new);
                        metrics::counter!("bellyful_texts_seen_before_total").increment(seen);
                        answers.into_iter().for_each(|answer| drop(answer.send(Ok(true))));
                    }
                    Err(error) => {
                        tracing::error!(%error, texts = arrivals.len(), "texts could not be kept");
                        let error = Arc::new(error);
                        answers.into_iter().for_each(|answer| drop(answer.send(Err(error.clone()))));
                    }
                }
            }
        });
        Intake { queue, arrived }
    }

    /// Waits until the text is kept for good. `Ok(false)`: too many wait already, it was not taken.
    pub async fn take(&self, arrival: Arrival) -> Result<bool, Arc<StoreError>> {
        let (kept, answer) = oneshot::channel();
        if self.queue.try_send(Waiting { arrival, kept }).is_err() {
            return Ok(false);
        }
        // A closed channel means the door is shutting: not taken either.
        answer.await.unwrap_or(Ok(false))
    }
}
