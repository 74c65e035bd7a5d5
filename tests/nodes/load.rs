//! Texts in great number, handed in as a gateway does: again until they are acknowledged.

use bellyful::message::answer_id;
use bellyful_tests::network::{Network, text_in};
use std::collections::BTreeSet;
use std::fmt::{Display, Formatter, Result};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::time::{Duration, Instant};
use tokio::task::JoinSet;

/// Clients that text until they are told to end.
pub struct Load {
    stop: Arc<AtomicBool>,
    clients: JoinSet<Vec<Text>>,
}

/// A text that got its 202.
struct Text {
    answer: String,
    at: Instant,
    took: Duration,
    tries: usize,
}

pub struct Loaded {
    /// Ids of the answers that must come.
    pub acknowledged: Vec<String>,
    pub longest_gap: Duration,
    again: usize,
    slowest: Duration,
}

impl Load {
    pub fn begin(url: &str, phase: &'static str, clients: usize) -> Load {
        let stop = Arc::new(AtomicBool::new(false));
        let mut all = JoinSet::new();
        for client in 0..clients {
            let (url, stop) = (url.to_owned(), stop.clone());
            all.spawn(async move {
                let mut texts = vec![];
                while !stop.load(Ordering::Relaxed) {
                    // Families of their own: one that says the same again within seconds gets no second answer.
                    let number = 1_000_000 + client * 100_000 + texts.len();
                    texts.push(hand_in(&url, phase, number).await);
                    tokio::time::sleep(Duration::from_millis(200)).await;
                }
                texts
            });
        }
        Load { stop, clients: all }
    }

    pub async fn end(self) -> Loaded {
        self.stop.store(true, Ordering::Relaxed);
        let mut texts: Vec<Text> = self.clients.join_all().await.into_iter().flatten().collect();
        texts.sort_by_key(|text| text.at);
        Loaded {
            longest_gap: texts.windows(2).map(|two| two[1].at - two[0].at).max().unwrap_or_default(),
            again: texts.iter().map(|text| text.tries - 1).sum(),
            slowest: texts.iter().map(|text| text.took).max().unwrap_or_default(),
            acknowledged: texts.into_iter().map(|text| text.answer).collect(),
        }
    }
}

impl Display for Loaded {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        let (texts, slowest) = (self.acknowledged.len(), self.slowest.as_secs_f64());
        write!(f, "{texts} texts acknowledged, {} calls repeated, slowest {slowest:.2} s", self.again)
    }
}

/// Hands in the text of a family of its own until it gets its 202.
async fn hand_in(url: &str, phase: &str, number: usize) -> Text {
    let from = format!("+1555{number:07}");
    let start = Instant::now();
    for tries in 1.. {
        if text_in(url, phase, &from, "fed 3 kg scraps 6 L water").await == Some(202) {
            let answer = answer_id("plain", &from, phase, 0);
            return Text { answer, at: Instant::now(), took: start.elapsed(), tries };
        }
        tokio::time::sleep(Duration::from_millis(100)).await;
    }
    unreachable!("it tries for ever")
}

/// Hands in so many texts as fast as they are taken, waits for all answers, and prints what came of it.
pub async fn measured(name: &str, url: &str, network: &Network, texts: usize, clients: usize) {
    let next = Arc::new(AtomicUsize::new(0));
    let start = Instant::now();
    let mut all = JoinSet::new();
    for _ in 0..clients {
        let (url, next) = (url.to_owned(), next.clone());
        all.spawn(async move {
            let mut mine = vec![];
            loop {
                let number = next.fetch_add(1, Ordering::Relaxed);
                if number >= texts {
                    return mine;
                }
                mine.push(hand_in(&url, "load", number).await);
            }
        });
    }
    let handed: Vec<Text> = all.join_all().await.into_iter().flatten().collect();
    let taken = start.elapsed().as_secs_f64();
    let mut waits: Vec<Duration> = handed.iter().map(|text| text.took).collect();
    waits.sort();
    let wait = |part: f64| waits[((waits.len() - 1) as f64 * part) as usize].as_secs_f64() * 1e3;
    let ids: Vec<String> = handed.into_iter().map(|text| text.answer).collect();
    all_answered(network, &ids, Duration::from_secs(600)).await;
    let answered = start.elapsed().as_secs_f64();
    let count = texts as f64;
    println!(
        "{name}, {texts} texts, {clients} clients: {:.0} acknowledged/s (p50 {:.0} ms, p99 {:.0} ms), {:.0} answered/s, \
         drained {:.1} s after the last was taken in",
        count / taken,
        wait(0.5),
        wait(0.99),
        count / answered,
        answered - taken
    );
}

/// Waits for the answers; panics where one does not come.
pub async fn all_answered(network: &Network, ids: &[String], within: Duration) {
    let start = Instant::now();
    loop {
        let there: BTreeSet<String> = network.delivered().into_iter().map(|taken| taken.id).collect();
        let missing = ids.iter().filter(|id| !there.contains(*id)).count();
        if missing == 0 {
            return;
        }
        assert!(start.elapsed() < within, "{missing} of {} acknowledged texts have no answer", ids.len());
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
}

/// Rows a second that the database itself makes durable, one row a commit, by as many writers as a node has.
pub async fn bare_inserts(database: &str) -> f64 {
    const FOR: Duration = Duration::from_secs(2);
    sqlx::any::install_default_drivers();
    let sqlite = database.starts_with("sqlite:");
    let writers = if sqlite { 1 } else { 8 };
    let pool = sqlx::any::AnyPoolOptions::new().max_connections(writers).connect(database).await.expect("opens");
    if sqlite {
        sqlx::query("PRAGMA synchronous=FULL").execute(&pool).await.expect("is obeyed");
    }
    sqlx::query("CREATE TABLE bare (n BIGINT, words TEXT)").execute(&pool).await.expect("a new table");
    let start = Instant::now();
    let mut all = JoinSet::new();
    for _ in 0..writers {
        let pool = pool.clone();
        all.spawn(async move {
            let mut rows = 0_u64;
            while start.elapsed() < FOR {
                let insert = "INSERT INTO bare VALUES (1, 'plain +15550100 load fed 3 kg scraps 6 L water')";
                sqlx::query(insert).execute(&pool).await.expect("is kept");
                rows += 1;
            }
            rows
        });
    }
    let rows: u64 = all.join_all().await.into_iter().sum();
    sqlx::query("DROP TABLE bare").execute(&pool).await.expect("our own table");
    pool.close().await;
    rows as f64 / start.elapsed().as_secs_f64()
}
