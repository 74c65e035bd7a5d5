//! The listener of one link: hands what its peer says to the door, and says whether it is kept.
//!
//! Parts of a long text wait in the store for the others; when the rest does not come, what is there is a text.

use super::Clock;
use crate::door::Door;
use crate::gateway::Gateway;
use crate::gateway::link::{Arrived, Came, PartOf};
use crate::gateway::{Heard, Report};
use crate::store::{PartKept, PartKey, StoreError, Whole};
use chrono::Duration;
use futures_util::StreamExt;
use futures_util::stream::FuturesUnordered;
use std::sync::Arc;
use tokio::sync::{mpsc, watch};
use tokio::time::{MissedTickBehavior, interval, sleep};

/// How long parts wait for the others; networks take minutes. Common practice, no source.
const PARTS_WITHIN: Duration = Duration::minutes(10);
const LOOK_FOR_PARTS_EVERY: std::time::Duration = std::time::Duration::from_secs(5);
/// Most that wait to be kept; the peer waits meanwhile.
const ROOM: usize = 256;
/// A report may be faster than the note of the send it is about.
const REPORT_TRIES: usize = 8;
const REPORT_WAIT: std::time::Duration = std::time::Duration::from_millis(250);

pub struct Listener {
    pub door: Arc<Door>,
    pub gateway: Arc<Gateway>,
    pub clock: Clock,
}

impl Listener {
    /// Listens until told to stop.
    pub async fn run(self, stop: watch::Receiver<bool>) {
        let Some(link) = &self.gateway.link else { return };
        let (hands, mut comes) = mpsc::channel::<Arrived>(ROOM);
        let connected = link.run(&self.gateway.name, hands, stop);
        tokio::pin!(connected);
        // In this one task, so that each is handed to the store in the order it came.
        let mut keeping = FuturesUnordered::new();
        let mut look = interval(LOOK_FOR_PARTS_EVERY);
        look.set_missed_tick_behavior(MissedTickBehavior::Delay);
        loop {
            tokio::select! {
                () = &mut connected => break,
                Some(()) = keeping.next(), if !keeping.is_empty() => {}
                Some(arrived) = comes.recv(), if keeping.len() < ROOM => keeping.push(self.arrived(arrived)),
                _ = look.tick() => self.put_together_overdue().await,
            }
        }
        while keeping.next().await.is_some() {}
    }

    async fn arrived(&self, arrived: Arrived) {
        let kept = match arrived.came {
            Came::Text(heard) => self.text(heard).await,
            Came::Part(heard, part) => self.part(heard, part).await,
            Came::Report { ids, receipt } => self.report(ids, receipt).await,
        };
        // A peer that went away asks again.
        let _ = arrived.kept.send(kept);
    }

    async fn text(&self, heard: Heard) -> bool {
        match self.gateway.heard(heard, (self.clock)()) {
            Ok(inbound) => self.door.take(&self.gateway, inbound).await,
            Err(refusal) => {
                metrics::counter!("bellyful_calls_refused_total", "why" => "body").increment(1);
                tracing::warn!(why = %refusal, "a text is refused");
                // It would not get better by coming again.
                true
            }
        }
    }

    async fn part(&self, heard: Heard, part: PartOf) -> bool {
        // Danger does not wait for the other parts.
        let alarming = |heard: Heard| {
            let inbound = self.gateway.heard(heard, (self.clock)()).ok()?;
            self.door.answerer.alarm(&inbound).map(|_| inbound)
        };
        if let Some(inbound) = alarming(heard.clone()) {
            return self.door.take(&self.gateway, inbound).await;
        }
        let Some(sender) = heard.from else { return true };
        let key = PartKey {
            gateway: self.gateway.name.clone(),
            sender,
            recipient: heard.to.unwrap_or_default(),
            reference: part.reference,
            total: part.total,
        };
        // No database keeps a zero character in a text.
        let text = heard.text.replace('\0', " ");
        for _ in 0..2 {
            match self.door.store.keep_part(&key, part.number, &text, (self.clock)()).await {
                Ok(PartKept::Waits) => return true,
                Ok(PartKept::Whole(whole)) => return self.whole(whole).await,
                Ok(PartKept::Taken(older)) => {
                    if !self.whole(older).await {
                        break;
                    }
                }
                Err(error) => {
                    tracing::error!(%error, "a part could not be kept");
                    break;
                }
            }
        }
        false
    }

    /// Takes a whole text; its id hangs on when it began to come, so that one put together twice is one.
    async fn whole(&self, whole: Whole) -> bool {
        let Whole { key, text, since } = whole;
        let (from, to) = (Some(key.sender.clone()), Some(key.recipient.clone()).filter(|to| !to.is_empty()));
        let kept = self.text(Heard { from, to, text, sent_at: Some(since), ..Heard::default() }).await;
        if kept && let Err(error) = self.door.store.drop_parts(&key).await {
            tracing::error!(%error, "parts stay though their text is kept");
        }
        kept
    }

    async fn put_together_overdue(&self) {
        match self.door.store.overdue_parts(&self.gateway.name, (self.clock)() - PARTS_WITHIN).await {
            Ok(wholes) => {
                for whole in wholes {
                    metrics::counter!("bellyful_texts_with_parts_missing_total").increment(1);
                    self.whole(whole).await;
                }
            }
            Err(error) => tracing::error!(%error, "parts that wait could not be looked up"),
        }
    }

    async fn report(&self, ids: Vec<String>, receipt: crate::store::Receipt) -> bool {
        for attempt in 0..REPORT_TRIES {
            for id in &ids {
                let report = Report { ours: None, theirs: Some(id.clone()), receipt };
                match self.door.report(&self.gateway.name, &report).await {
                    Ok(true) => return true,
                    Ok(false) => {}
                    Err(error) => return not_kept(&error),
                }
            }
            if ids.is_empty() || attempt + 1 == REPORT_TRIES {
                break;
            }
            sleep(REPORT_WAIT).await;
        }
        // Of a text that is not ours, or of no last word: nothing to keep.
        true
    }
}

fn not_kept(error: &StoreError) -> bool {
    tracing::error!(%error, "a delivery report could not be kept");
    false
}
