//! The worker: takes lanes that have work waiting and works each in order, several lanes side by side.
//!
//! Takes the store and the bot's mind; gives nothing but what the mind keeps. A turn that fails is tried again, and
//! after many tries is set aside with an apology, so that one text never blocks its family for good.

use super::guard::{self, Limits, Silent};
use super::{Answerer, Clock, LOOK_EVERY, backoff, lease};
use crate::household::Sender;
use crate::store::{Claim, Lane, Store, StoreError, Waiting, Wake};
use chrono::{DateTime, Duration, Utc};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, Mutex, PoisonError};
use tokio::sync::{Notify, mpsc, watch};

/// Turns tried before a text is set aside: with the waits between, about ten minutes.
const TRIES_MOST: i64 = 8;
/// Works of one lane in one go, so that one family cannot keep the others waiting.
const IN_ONE_GO: usize = 16;
/// How much of a text is read: ten segments. All of it is kept.
pub const READ_MOST_CHARS: usize = 1_600;
/// A field worker speaks for many families.
const STAFF_TEXTS_FACTOR: usize = 10;

/// What all workers of a node share.
pub struct Worker {
    pub store: Store,
    pub answerer: Arc<dyn Answerer>,
    /// Name of this node, on its leases.
    pub owner: String,
    pub limits: Limits,
    /// Limits of gateways that differ.
    pub any_sender: BTreeMap<String, bool>,
    /// Rung when there is something to send.
    pub to_send: Arc<Notify>,
    pub clock: Clock,
    /// Lanes that are ours until they are given back: what the heartbeat keeps alive.
    pub held: Mutex<BTreeSet<Lane>>,
}

impl Worker {
    /// Works until told to stop; `arrived` rings when texts came in here.
    pub async fn run(self: Arc<Self>, arrived: Arc<Notify>, workers: usize, mut stop: watch::Receiver<bool>) {
        let (done, mut finished) = mpsc::unbounded_channel::<Lane>();
        let mut busy = 0;
        let mut give_back = Vec::new();
        loop {
            while let Ok(lane) = finished.try_recv() {
                busy -= 1;
                give_back.push(lane);
            }
            let stopping = *stop.borrow();
            let room = if stopping { 0 } else { workers - busy };
            let now = (self.clock)();
            let mut taken = 0;
            if room > 0 || !give_back.is_empty() {
                match self.store.claim(&self.owner, &give_back, room, now, now + lease()).await {
                    Ok(lanes) => {
                        let mut held = self.held.lock().unwrap_or_else(PoisonError::into_inner);
                        for lane in give_back.drain(..) {
                            held.remove(&lane);
                        }
                        held.extend(lanes.iter().cloned());
                        drop(held);
                        taken = lanes.len();
                        busy += taken;
                        lanes.into_iter().for_each(|lane| self.clone().start(lane, done.clone()));
                    }
                    Err(error) => {
                        tracing::error!(%error, "no work could be taken up");
                        tokio::time::sleep(LOOK_EVERY).await;
                    }
                }
            }
            if stopping && busy == 0 && give_back.is_empty() {
                return;
            }
            if taken > 0 && busy < workers {
                continue;
            }
            tokio::select! {
                Some(lane) = finished.recv() => {
                    busy -= 1;
                    give_back.push(lane);
                }
                () = arrived.notified(), if busy < workers => {}
                () = tokio::time::sleep(LOOK_EVERY) => {}
                _ = stop.changed(), if !stopping => {}
            }
        }
    }

    /// Says that this node lives: what it holds stays its own.
    pub async fn beat(&self) -> Result<(), StoreError> {
        let held: Vec<Lane> = self.held.lock().unwrap_or_else(PoisonError::into_inner).iter().cloned().collect();
        self.store.renew(&self.owner, &held, (self.clock)() + lease()).await
    }

    /// Works a lane on a thread of its own: the model is arithmetic and must not hold up those who wait for a 202.
    fn start(self: Arc<Self>, lane: Lane, done: mpsc::UnboundedSender<Lane>) {
        let here = tokio::runtime::Handle::current();
        tokio::task::spawn_blocking(move || {
            let worked = std::panic::AssertUnwindSafe(|| here.block_on(self.work(&lane)));
            match std::panic::catch_unwind(worked) {
                Ok(Ok(())) => {}
                Ok(Err(error)) => {
                    tracing::error!(%error, "a lane could not be worked");
                    here.block_on(tokio::time::sleep(LOOK_EVERY));
                }
                Err(_) => tracing::error!("a lane's work broke off"),
            }
            let _ = done.send(lane);
        });
    }

    /// Works a lane that this node holds, for one go. Errors: what keeps it from being worked now.
    pub async fn work(&self, lane: &Lane) -> Result<(), StoreError> {
        for _ in 0..IN_ONE_GO {
            let now = (self.clock)();
            match self.store.waiting(lane, now).await? {
                Some(Waiting::Text(claim)) => self.text(*claim, now).await?,
                Some(Waiting::Wake(wake)) => self.wake(&wake, now).await?,
                None => return Ok(()),
            }
        }
        Ok(())
    }

    async fn text(&self, mut claim: Claim, now: DateTime<Utc>) -> Result<(), StoreError> {
        if !claim.alarmed
            && let Some(silent) = self.silent(&claim).await?
        {
            metrics::counter!("bellyful_texts_unanswered_total", "why" => silent.id()).increment(1);
            if silent != Silent::Capped {
                return self.store.skip(&claim, silent.id(), now).await;
            }
            claim.quiet = Some(silent.id());
        }
        if let Some((end, _)) = claim.inbound.text.char_indices().nth(READ_MOST_CHARS) {
            claim.inbound.text.truncate(end);
        }
        let started = std::time::Instant::now();
        let answered = catch(self.answerer.answer(&self.store, &claim, now)).await;
        metrics::histogram!("bellyful_turn_seconds").record(started.elapsed().as_secs_f64());
        match answered {
            Ok(kept) => {
                metrics::counter!("bellyful_texts_answered_total").increment(1);
                if !kept.queued.is_empty() {
                    self.to_send.notify_one();
                }
                Ok(())
            }
            Err(Broken::Store(StoreError::Done)) => Ok(()),
            Err(broken) => {
                metrics::counter!("bellyful_turns_failed_total").increment(1);
                tracing::error!(row = claim.row, tries = claim.tries + 1, error = %broken, "a turn failed");
                let more = claim.tries + 1 < TRIES_MOST || broken.is_the_databases();
                let again =
                    more.then(|| now + backoff(claim.tries + 1, claim.row, Duration::seconds(1), Duration::minutes(5)));
                let apology = if again.is_none() { self.answerer.apology(&claim.inbound) } else { None };
                self.store.failed(&claim, &broken.to_string(), again, apology, now).await?;
                self.to_send.notify_one();
                Ok(())
            }
        }
    }

    async fn silent(&self, claim: &Claim) -> Result<Option<Silent>, StoreError> {
        let inbound = &claim.inbound;
        let since = inbound.received_at - guard::PAST;
        let mut past = self.store.past(&inbound.from, since).await?;
        past.retain(|past| past.row < claim.row && past.received_at <= inbound.received_at);
        let said = self.store.said_to(&inbound.from, since).await?;
        let any_sender = self.any_sender.get(&inbound.gateway).copied().unwrap_or(self.limits.any_sender);
        let limits = Limits { any_sender, ..self.limits };
        let silent = guard::silent(inbound, &past, &said, limits);
        if matches!(silent, Some(Silent::Capped | Silent::Looping))
            && matches!(self.store.sender(&inbound.from).await?, Sender::Staff(_))
        {
            let more = limits.texts_per_day * STAFF_TEXTS_FACTOR;
            let minute = limits.texts_per_minute * STAFF_TEXTS_FACTOR;
            let limits = Limits { texts_per_day: more, texts_per_minute: minute, ..limits };
            return Ok(guard::silent(inbound, &past, &said, limits));
        }
        if silent == Some(Silent::Capped)
            && let Sender::Family { household, .. } = self.store.sender(&inbound.from).await?
        {
            let household = self.store.situation_of(household).await?.household;
            let until = household.and_then(|household| household.talk.uncapped_until);
            return Ok(silent.filter(|_| until.is_none_or(|until| until <= inbound.received_at)));
        }
        Ok(silent)
    }

    async fn wake(&self, wake: &Wake, now: DateTime<Utc>) -> Result<(), StoreError> {
        match catch(self.answerer.wake(&self.store, wake, now)).await {
            Ok(kept) if kept.queued.is_empty() => Ok(()),
            Ok(_) => Ok(self.to_send.notify_one()),
            Err(Broken::Store(StoreError::Done)) => Ok(()),
            Err(broken) => {
                tracing::error!(household = wake.household, due = %wake.due, error = %broken, "a waking failed");
                let wait = backoff(wake.tries + 1, wake.household, Duration::seconds(30), Duration::hours(6));
                self.store.wake_again(wake, now + wait).await
            }
        }
    }
}

/// A turn that did not come to its end.
#[derive(Debug, thiserror::Error)]
enum Broken {
    #[error(transparent)]
    Store(#[from] StoreError),
    #[error("the turn broke off")]
    Panic,
}

impl Broken {
    /// Not this text's fault: the same would befall any other.
    fn is_the_databases(&self) -> bool {
        matches!(self, Broken::Store(StoreError::Database(_) | StoreError::Fault(_) | StoreError::Stale(_)))
    }
}

/// A promise of the code that is broken in a turn ends that turn, not the worker.
async fn catch(turn: super::Answering<'_>) -> Result<crate::store::Kept, Broken> {
    let mut turn = std::panic::AssertUnwindSafe(turn);
    let polled = std::future::poll_fn(move |context| {
        let poll = std::panic::AssertUnwindSafe(|| turn.as_mut().poll(context));
        match std::panic::catch_unwind(poll) {
            Ok(std::task::Poll::Ready(kept)) => std::task::Poll::Ready(kept.map_err(Broken::Store)),
            Ok(std::task::Poll::Pending) => std::task::Poll::Pending,
            Err(_) => std::task::Poll::Ready(Err(Broken::Panic)),
        }
    });
    polled.await
}
