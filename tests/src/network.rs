//! A phone network that misbehaves to order: takes the bot's texts over HTTP and remembers them.

use crate::server::SECRET;
use hmac::{Hmac, KeyInit, Mac};
use serde_json::Value;
use sha2::Sha256;
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::{TcpListener, TcpStream};

/// What the network does with one call.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Does {
    Takes,
    Says(u16),
    /// Takes the text after a while.
    TakesSlowly(Duration),
    /// Takes the text and hangs up without a word.
    TakesAndCuts,
    /// Hangs up before it has taken anything.
    Cuts,
}

/// A text that reached the network.
#[derive(Debug, Clone, PartialEq)]
pub struct Taken {
    pub id: String,
    pub to: String,
    pub text: String,
    /// As it came.
    pub body: String,
    pub at: Instant,
}

/// By the text's id and how often it came before, what to do.
type Plan = Box<dyn Fn(&str, usize) -> Does + Send>;

#[derive(Default)]
struct Seen {
    taken: Vec<Taken>,
    tries: BTreeMap<String, usize>,
    unsigned: usize,
}

pub struct Network {
    pub send_url: String,
    seen: Arc<Mutex<Seen>>,
    plan: Arc<Mutex<Plan>>,
}

impl Network {
    pub async fn start(plan: impl Fn(&str, usize) -> Does + Send + 'static) -> Network {
        let listener = TcpListener::bind("127.0.0.1:0").await.expect("loopback");
        let send_url = format!("http://{}/send", listener.local_addr().expect("bound"));
        let seen = Arc::new(Mutex::new(Seen::default()));
        let plan: Arc<Mutex<Plan>> = Arc::new(Mutex::new(Box::new(plan)));
        let (all, orders) = (seen.clone(), plan.clone());
        tokio::spawn(async move {
            while let Ok((stream, _)) = listener.accept().await {
                tokio::spawn(serve(stream, all.clone(), orders.clone()));
            }
        });
        Network { send_url, seen, plan }
    }

    pub fn replan(&self, plan: impl Fn(&str, usize) -> Does + Send + 'static) {
        *self.plan.lock().expect("no test panics inside") = Box::new(plan);
    }

    pub fn taken(&self) -> Vec<Taken> {
        self.seen.lock().expect("no test panics inside").taken.clone()
    }

    /// Texts as the phones get them: a double id is dropped.
    pub fn delivered(&self) -> Vec<Taken> {
        let mut ids = std::collections::BTreeSet::new();
        self.taken().into_iter().filter(|taken| ids.insert(taken.id.clone())).collect()
    }

    pub fn tries(&self, id: &str) -> usize {
        self.seen.lock().expect("no test panics inside").tries.get(id).copied().unwrap_or(0)
    }

    /// Calls whose signature was missing or wrong.
    pub fn unsigned(&self) -> usize {
        self.seen.lock().expect("no test panics inside").unsigned
    }

    /// Waits until `enough` says so of what was delivered.
    pub async fn until(&self, within: Duration, enough: impl Fn(&[Taken]) -> bool) -> Vec<Taken> {
        let start = Instant::now();
        loop {
            let delivered = self.delivered();
            if enough(&delivered) || start.elapsed() > within {
                return delivered;
            }
            tokio::time::sleep(Duration::from_millis(20)).await;
        }
    }
}

async fn serve(mut stream: TcpStream, seen: Arc<Mutex<Seen>>, plan: Arc<Mutex<Plan>>) {
    let mut bytes = Vec::new();
    loop {
        let Some((head, body)) = request(&mut stream, &mut bytes).await else { return };
        let json: Value = serde_json::from_slice(&body).unwrap_or_default();
        let word = |name: &str| json[name].as_str().unwrap_or_default().to_owned();
        let (id, to, text) = (word("id"), word("to"), word("text"));
        let taken = Taken { id, to, text, body: String::from_utf8_lossy(&body).into_owned(), at: Instant::now() };
        let does = {
            let mut seen = seen.lock().expect("no test panics inside");
            let before = seen.tries.entry(taken.id.clone()).or_default();
            *before += 1;
            let before = *before - 1;
            let signed = head.to_lowercase().contains(&format!("x-signature: {}", sign(&body)));
            seen.unsigned += usize::from(!signed);
            (plan.lock().expect("no test panics inside"))(&taken.id, before)
        };
        if let Does::TakesSlowly(wait) = does {
            tokio::time::sleep(wait).await;
        }
        if matches!(does, Does::Takes | Does::TakesSlowly(_) | Does::TakesAndCuts) {
            seen.lock().expect("no test panics inside").taken.push(taken);
        }
        let status = match does {
            Does::Says(status) => status,
            Does::Takes | Does::TakesSlowly(_) => 200,
            Does::TakesAndCuts | Does::Cuts => return,
        };
        let answer = format!("HTTP/1.1 {status} X\r\ncontent-length: 2\r\n\r\n{{}}");
        if stream.write_all(answer.as_bytes()).await.is_err() {
            return;
        }
    }
}

/// One request's head and body; what comes after them stays in `bytes`.
async fn request(stream: &mut TcpStream, bytes: &mut Vec<u8>) -> Option<(String, Vec<u8>)> {
    loop {
        if let Some(end) = bytes.windows(4).position(|four| four == b"\r\n\r\n") {
            let head = String::from_utf8_lossy(&bytes[..end]).into_owned();
            let length =
                head.lines().find_map(|line| line.to_lowercase().strip_prefix("content-length:")?.trim().parse().ok());
            let length: usize = length.unwrap_or(0);
            if bytes.len() >= end + 4 + length {
                let body = bytes[end + 4..end + 4 + length].to_vec();
                bytes.drain(..end + 4 + length);
                return Some((head, body));
            }
        }
        let mut more = [0; 4096];
        match stream.read(&mut more).await {
            Ok(n) if n > 0 => bytes.extend_from_slice(&more[..n]),
            _ => return None,
        }
    }
}

/// The header's value over a body.
pub fn sign(body: &[u8]) -> String {
    let mut mac = Hmac::<Sha256>::new_from_slice(SECRET.as_bytes()).expect("any length");
    mac.update(body);
    format!("sha256={}", hex::encode(mac.finalize().into_bytes()))
}

/// Hands one text to a server; the status it answers with, `None` when it does not.
pub async fn text_in(url: &str, id: &str, from: &str, text: &str) -> Option<u16> {
    let body = serde_json::json!({ "id": id, "from": from, "to": "+15550999", "text": text }).to_string();
    post(&format!("{url}/in/plain"), &body, &sign(body.as_bytes())).await.map(|(status, _)| status)
}

/// A signed call; the status and body of its answer.
pub async fn post(url: &str, body: &str, signature: &str) -> Option<(u16, String)> {
    let request = client().post(url).header("x-signature", signature).body(body.to_owned());
    let response = request.send().await.ok()?;
    Some((response.status().as_u16(), response.text().await.ok()?))
}

pub fn client() -> reqwest::Client {
    // Whoever was first to install one is as good: there is only one kind.
    let _ = rustls::crypto::ring::default_provider().install_default();
    thread_local! { static CLIENT: reqwest::Client = reqwest::Client::builder()
    .timeout(Duration::from_secs(40)).build().expect("builds"); }
    CLIENT.with(Clone::clone)
}

/// A client that stops at a redirection, as one looks at it.
pub fn client_without_redirects() -> reqwest::Client {
    let _ = rustls::crypto::ring::default_provider().install_default();
    reqwest::Client::builder().redirect(reqwest::redirect::Policy::none()).build().expect("builds")
}
