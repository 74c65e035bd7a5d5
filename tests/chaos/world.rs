//! One seeded world: families text through a careless gateway, nodes share one store and die, the store fails, the
//! phone network cuts. Time is simulated; every choice comes from the seed.
//!
//! Gives what happened, or the first promise that was broken.

use bellyful::gateway::Sent;
use bellyful::jobs::guard::Limits;
use bellyful::jobs::work::Worker;
use bellyful::jobs::{Answerer, lease, send};
use bellyful::message::{Inbound, answer_id};
use bellyful::mind::Mind;
use bellyful::store::{Arrival, Lane, Moment, Store, ToSend, Wanted};
use bellyful_core::fact::What;
use chrono::{DateTime, Duration, Utc};
use rand::rngs::StdRng;
use rand::{Rng, SeedableRng};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, LazyLock, Mutex};
use tokio::sync::Notify;

/// Reading words and places takes long and is the same in every world.
static MIND: LazyLock<Arc<Mind>> = LazyLock::new(|| Arc::new(Mind::new(None, 1).expect("the words are sound")));
const GATEWAY: &str = "sim";
const FAMILIES: usize = 3;
const TEXTS: usize = 5;
/// Steps after which all must be calm, once no more goes wrong.
const CALM_STEPS: usize = 2_000;

/// What happened in a world, or in many.
#[derive(Debug, Default, Clone, PartialEq)]
pub struct Counts {
    pub texts: usize,
    pub faults: usize,
    pub deaths: usize,
    pub cuts: usize,
    pub doubled: usize,
}

impl Counts {
    pub fn add(&mut self, more: &Counts) {
        self.texts += more.texts;
        self.faults += more.faults;
        self.deaths += more.deaths;
        self.cuts += more.cuts;
        self.doubled += more.doubled;
    }
}

impl std::fmt::Display for Counts {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(
            f,
            "{} texts, {} faults of the store, {} deaths of nodes, {} cuts of the network, {} sent twice",
            self.texts, self.faults, self.deaths, self.cuts, self.doubled
        )
    }
}

/// A node: its name, which dies with it, and the lanes and texts to send it holds.
struct Node {
    owner: String,
    worker: Worker,
    lanes: Vec<Lane>,
    done: Vec<Lane>,
    sends: Vec<ToSend>,
}

pub struct World {
    seed: u64,
    rng: StdRng,
    /// Chance in a thousand that a transaction fails.
    faulty: Arc<Mutex<(StdRng, u32, usize)>>,
    now: Arc<Mutex<DateTime<Utc>>>,
    /// Not acknowledged yet, in the order sent.
    to_hand_in: Vec<Inbound>,
    acknowledged: BTreeSet<(String, String)>,
    /// By the text's id: how often the network took it.
    taken: BTreeMap<String, usize>,
    /// Ids whose outcome a node did not get to write down.
    may_double: BTreeSet<String>,
    born: usize,
    counts: Counts,
}

impl World {
    pub fn of(seed: u64) -> World {
        let mut rng = StdRng::seed_from_u64(seed);
        let start: DateTime<Utc> = "2026-03-01T08:00:00Z".parse().expect("a time");
        let mut texts = vec![];
        for n in 0..TEXTS {
            for family in 0..FAMILIES {
                let danger = rng.random_range(0..12) == 0;
                let text = match danger {
                    true => format!("strong gas smell in kitchen {n}"),
                    // The amount is the text's number: none may be lost, doubled or out of order.
                    false => format!("fed {} kg scraps", n + 1),
                };
                texts.push(Inbound {
                    gateway: GATEWAY.into(),
                    id: format!("{family}-{n}"),
                    from: format!("+1555010{family}"),
                    to: None,
                    text,
                    sent_at: start + Duration::seconds((n * 20 + family) as i64),
                    received_at: start,
                });
            }
        }
        let faulty = Arc::new(Mutex::new((StdRng::seed_from_u64(seed ^ 0xFA17), rng.random_range(0..120), 0)));
        World {
            seed,
            faulty,
            now: Arc::new(Mutex::new(start)),
            counts: Counts { texts: texts.len(), ..Counts::default() },
            to_hand_in: texts,
            acknowledged: BTreeSet::new(),
            taken: BTreeMap::new(),
            may_double: BTreeSet::new(),
            born: 0,
            rng,
        }
    }

    fn chance(&mut self, in_hundred: u32) -> bool {
        self.rng.random_range(0..100) < in_hundred
    }

    fn now(&self) -> DateTime<Utc> {
        *self.now.lock().expect("one thread")
    }

    fn node(&mut self, store: &Store) -> Node {
        self.born += 1;
        let owner = format!("node {}", self.born);
        let now = self.now.clone();
        let worker = Worker {
            store: store.clone(),
            answerer: MIND.clone(),
            owner: owner.clone(),
            limits: Limits { texts_per_day: 1000, texts_per_minute: 1000, any_sender: false },
            any_sender: BTreeMap::new(),
            to_send: Arc::new(Notify::new()),
            clock: Arc::new(move || *now.lock().expect("one thread")),
            held: Mutex::default(),
        };
        Node { owner, worker, lanes: vec![], done: vec![], sends: vec![] }
    }

    /// Runs the world to its calm end.
    pub async fn run(mut self) -> Result<Counts, String> {
        let faulty = self.faulty.clone();
        let strike = Arc::new(move |_: &'static str, _: Moment| {
            let (rng, chance, struck) = &mut *faulty.lock().expect("one thread");
            let strikes = rng.random_range(0..1000) < *chance;
            *struck += usize::from(strikes);
            strikes
        });
        let sound = Store::in_memory().await.map_err(|error| error.to_string())?;
        let store = sound.clone().with_faults(strike);
        let mut nodes = vec![self.node(&store), self.node(&store)];
        for _ in 0..150 {
            self.step(&store, &mut nodes, true).await;
        }
        // From here on nothing goes wrong any more: all must come to rest.
        self.counts.faults = {
            let mut faulty = self.faulty.lock().expect("one thread");
            faulty.1 = 0;
            faulty.2
        };
        for _ in 0..CALM_STEPS {
            self.step(&store, &mut nodes, false).await;
            if self.to_hand_in.is_empty() && self.at_rest(&sound).await? {
                break;
            }
        }
        let much_later = self.now() + Duration::minutes(5);
        for node in &nodes {
            sound.release(&node.owner).await.map_err(|error| error.to_string())?;
            sound.renew(&node.owner, &[], much_later).await.map_err(|error| error.to_string())?;
        }
        self.check(&sound).await?;
        Ok(self.counts)
    }

    async fn at_rest(&self, store: &Store) -> Result<bool, String> {
        let (open, _) = store.backlog().await.map_err(|error| error.to_string())?;
        Ok(open == 0 && self.expected().iter().all(|id| self.taken.contains_key(id)))
    }

    /// The first answer to each text that was acknowledged.
    fn expected(&self) -> Vec<String> {
        self.acknowledged.iter().map(|(from, id)| answer_id(GATEWAY, from, id, 0)).collect()
    }

    async fn step(&mut self, store: &Store, nodes: &mut [Node], trouble: bool) {
        let passes = Duration::milliseconds(self.rng.random_range(1..1_500));
        *self.now.lock().expect("one thread") += passes;
        let now = self.now();
        for node in nodes.iter() {
            // The heart beats beside all work; a beat that fails is made up for by the next.
            let held: Vec<Lane> = node.lanes.iter().chain(&node.done).cloned().collect();
            let _ = store.renew(&node.owner, &held, now + lease()).await;
            let sends: Vec<i64> = node.sends.iter().map(|send| send.seq).collect();
            let _ = store.renew_sends(&node.owner, &sends, now + lease()).await;
        }
        let which = self.rng.random_range(0..nodes.len());
        match self.rng.random_range(0..10) {
            0..3 => self.hand_in(store, trouble).await,
            3..6 => self.work(store, &mut nodes[which]).await,
            6..9 => self.send(store, &mut nodes[which], trouble).await,
            _ if trouble && self.chance(25) => {
                // kill -9: what it held stays leased until the lease runs out.
                self.may_double.extend(nodes[which].sends.iter().map(|send| send.id.clone()));
                self.counts.deaths += 1;
                nodes[which] = self.node(store);
            }
            _ => {}
        }
    }

    /// The gateway hands a text in, not always the next one, not always once; without a 202 it comes again.
    async fn hand_in(&mut self, store: &Store, trouble: bool) {
        if self.to_hand_in.is_empty() {
            return;
        }
        let most = if trouble { self.to_hand_in.len().min(4) } else { 1 };
        let which = self.rng.random_range(0..most);
        let mut inbound = self.to_hand_in[which].clone();
        inbound.received_at = self.now().max(inbound.sent_at);
        let arrival = Arrival { alarm: MIND.alarm(&inbound), inbound };
        if store.accept(std::slice::from_ref(&arrival)).await.is_ok() {
            let key = (arrival.inbound.from.clone(), arrival.inbound.id.clone());
            self.acknowledged.insert(key);
            // The gateway does not always hear the 202.
            if !(trouble && self.chance(20)) {
                self.to_hand_in.remove(which);
            }
        }
    }

    async fn work(&mut self, store: &Store, node: &mut Node) {
        let now = self.now();
        if node.lanes.is_empty() {
            let most = self.rng.random_range(1..4);
            if let Ok(lanes) = store.claim(&node.owner, &node.done, most, now, now + lease()).await {
                node.done.clear();
                node.lanes = lanes;
            }
            return;
        }
        let lane = node.lanes.remove(0);
        // A turn that fails leaves its text for another turn.
        let _ = node.worker.work(&lane).await;
        node.done.push(lane);
    }

    async fn send(&mut self, store: &Store, node: &mut Node, trouble: bool) {
        let now = self.now();
        if node.sends.is_empty() {
            let most = self.rng.random_range(1..4);
            if let Ok(sends) = store.claim_sends(&node.owner, GATEWAY, most, now, now + lease()).await {
                node.sends = sends;
            }
            return;
        }
        let text = node.sends.remove(0);
        let fate = if trouble { self.rng.random_range(0..10) } else { 9 };
        let sent = match fate {
            0 => Sent::Again { why: "500".into(), after: None },
            // Taken, but the word of it was lost.
            1 => {
                self.take(&text);
                self.counts.cuts += 1;
                self.may_double.insert(text.id.clone());
                Sent::Again { why: "cut".into(), after: None }
            }
            _ => {
                self.take(&text);
                Sent::Taken { wire_id: None }
            }
        };
        let outcome = send::outcome(&text, &sent, now);
        if store.settle(&[(text.clone(), outcome)], now).await.is_err() {
            // Not written down, as far as this node knows: it may be sent again.
            self.may_double.insert(text.id);
        }
    }

    fn take(&mut self, text: &ToSend) {
        let times = self.taken.entry(text.id.clone()).or_default();
        *times += 1;
        self.counts.doubled += usize::from(*times > 1);
    }

    async fn check(&self, store: &Store) -> Result<(), String> {
        if !self.to_hand_in.is_empty() {
            return Err(format!("{} texts were never taken", self.to_hand_in.len()));
        }
        for (from, id) in &self.acknowledged {
            let answer = answer_id(GATEWAY, from, id, 0);
            if !self.taken.contains_key(&answer) {
                let past = store.past(from, DateTime::UNIX_EPOCH).await.map_err(|error| error.to_string())?;
                let said = store.said_to(from, DateTime::UNIX_EPOCH).await.map_err(|error| error.to_string())?;
                return Err(format!("text {id} of {from} has no answer {answer}: {past:?}, said {said:?}"));
            }
        }
        let answers: BTreeSet<String> = self.expected().into_iter().collect();
        for (id, times) in &self.taken {
            if !answers.contains(id) {
                return Err(format!("somebody was sent a text that answers nothing ({id})"));
            }
            if *times > 1 && !self.may_double.contains(id) {
                return Err(format!("a text was sent {times} times without need ({id})"));
            }
        }
        if store.leases().await.map_err(|error| error.to_string())? != 0 {
            return Err("a lease was left over".into());
        }
        self.check_facts(store).await
    }

    /// Each amount told is kept once, whatever failed in between.
    async fn check_facts(&self, store: &Store) -> Result<(), String> {
        let texts = World::of(self.seed).to_hand_in;
        for family in 0..FAMILIES {
            let number = format!("+1555010{family}");
            let sender = store.sender(&number).await.map_err(|error| error.to_string())?;
            let since = Some(bellyful_core::units::Day(0));
            let situation =
                store.situation(&sender, Wanted { household: None, since }).await.map_err(|error| error.to_string())?;
            let mut kept: Vec<i64> = situation
                .facts
                .iter()
                .filter_map(|fact| match fact.what {
                    What::Fed { amount: Some(kg), .. } => Some(kg.round() as i64),
                    _ => None,
                })
                .collect();
            kept.sort_unstable();
            let mut told: Vec<i64> = texts
                .iter()
                .filter(|inbound| inbound.from == number && inbound.text.starts_with("fed"))
                .filter_map(|inbound| inbound.text.split(' ').nth(1)?.parse().ok())
                .collect();
            told.sort_unstable();
            if kept != told {
                return Err(format!("{number} told {told:?} kg, kept are {kept:?}"));
            }
        }
        Ok(())
    }
}
