//! SMPP 3.4: one connection to a message centre, bound as transceiver.
//!
//! Takes texts of ours and submits them, long ones in parts; gives what the centre delivers, and acknowledges it to the
//! centre only when it is kept. Asks after the link, and binds anew when it breaks. Never logs words or numbers.

mod read;

pub use read::{Alphabet, Unreadable, delivered};

use super::Sent;
use super::link::{Arrived, down};
use crate::reply::segments::{Encoding, size};
use futures_util::{Stream, StreamExt};
use rusmpp::extra::concatenation::SubmitSmMultipartExt;
use rusmpp::pdus::{BindTransceiver, DeliverSmResp, SubmitSm};
use rusmpp::types::COctetString;
use rusmpp::values::{InterfaceVersion, MCDeliveryReceipt, Npi, RegisteredDelivery, Ton};
use rusmpp::{Command, CommandStatus, Pdu};
use rusmppc::error::Error;
use rusmppc::{Client, ConnectionBuilder, Event};
use serde::Deserialize;
use sha2::{Digest, Sha256};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{PoisonError, RwLock};
use std::time::Duration;
use tokio::sync::{mpsc, oneshot, watch};
use tokio::time::{sleep, timeout};

/// What a message centre is like.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct SmppShape {
    pub system_type: String,
    /// How often to ask whether the link is there.
    pub enquire_every_s: u64,
    /// A centre that says nothing for this long is taken to be away.
    pub answer_within_s: u64,
    pub alphabet: Alphabet,
    /// The link goes through TLS; the centre's certificate must be of one that this computer trusts.
    pub tls: bool,
}

impl Default for SmppShape {
    fn default() -> SmppShape {
        SmppShape {
            system_type: String::new(),
            enquire_every_s: 30,
            answer_within_s: 10,
            alphabet: Alphabet::Gsm7,
            tls: false,
        }
    }
}

pub struct Smpp {
    shape: SmppShape,
    address: String,
    user: String,
    secret: String,
    /// Ours, that texts come from.
    number: String,
    client: RwLock<Option<Client>>,
    under_way: AtomicUsize,
}

const CONNECT_WITHIN: Duration = Duration::from_secs(5);
/// Waits between tries to bind, doubling from the first to the last.
const FIRST_WAIT: Duration = Duration::from_millis(500);
const LAST_WAIT: Duration = Duration::from_secs(30);
/// How often a part is submitted again at once when the centre is short of breath.
const BREATHS: usize = 5;
const BREATH: Duration = Duration::from_secs(1);
/// How long sends under way may take when we are told to stop.
const STOP_WITHIN: Duration = Duration::from_secs(10);

impl Smpp {
    pub fn new(shape: SmppShape, setting: impl Fn(&str) -> Option<String>) -> Smpp {
        let setting = |name: &str| setting(name).unwrap_or_default();
        Smpp {
            shape,
            address: setting("address"),
            user: setting("user"),
            secret: setting("secret"),
            number: setting("number"),
            client: RwLock::default(),
            under_way: AtomicUsize::new(0),
        }
    }

    pub fn is_up(&self) -> bool {
        self.client().is_some()
    }

    fn client(&self) -> Option<Client> {
        self.client.read().unwrap_or_else(PoisonError::into_inner).clone().filter(Client::is_active)
    }

    fn put(&self, client: Option<Client>) {
        *self.client.write().unwrap_or_else(PoisonError::into_inner) = client;
    }

    /// Submits one text, in parts if it is long; the report asked for is that of the last part.
    pub async fn send(&self, id: &str, to: &str, text: &str) -> Sent {
        let Some(client) = self.client() else { return down() };
        let parts = match self.parts(id, to, text) {
            Ok(parts) => parts,
            Err(why) => return Sent::Refused { why },
        };
        self.under_way.fetch_add(1, Ordering::Relaxed);
        let mut sent = Sent::Taken { wire_id: None };
        for part in parts {
            sent = submit(&client, part).await;
            if !matches!(sent, Sent::Taken { .. }) {
                break;
            }
        }
        self.under_way.fetch_sub(1, Ordering::Relaxed);
        sent
    }

    fn parts(&self, id: &str, to: &str, text: &str) -> Result<Vec<SubmitSm>, String> {
        // The library's UCS-2 has no letters beyond the first 65,536.
        let text: String = text.chars().map(|c| if c.len_utf16() > 1 { '?' } else { c }).collect();
        let (to_ton, to_npi, to) = address(to)?;
        let (from_ton, from_npi, from) = address(&self.number)?;
        let whole = SubmitSm::builder()
            .source_addr_ton(from_ton)
            .source_addr_npi(from_npi)
            .source_addr(from)
            .dest_addr_ton(to_ton)
            .dest_addr_npi(to_npi)
            .destination_addr(to)
            .build();
        let size = size(&text);
        // The same over retries, so that a phone that has some parts already puts in the others.
        let reference = Sha256::digest(id)[0];
        let in_parts = whole.multipart(&text).reference_u8(reference);
        // A header of six octets takes the room of seven septets.
        let most = match (size.encoding, size.segments) {
            (Encoding::Ucs2, _) => 140,
            (Encoding::Gsm7, 1) => 160,
            (Encoding::Gsm7, _) => 159,
        };
        let in_parts = in_parts.max_short_message_size(most);
        let parts = match (size.encoding, self.shape.alphabet) {
            (Encoding::Gsm7, Alphabet::Gsm7) => in_parts.gsm7bit_unpacked().build().map_err(|e| e.to_string()),
            _ => in_parts.max_short_message_size(140).ucs2().build().map_err(|e| e.to_string()),
        };
        let mut parts = parts.map_err(|_| "the text cannot be written for the message centre".to_owned())?;
        if let Some(last) = parts.last_mut() {
            last.registered_delivery = RegisteredDelivery::new(
                MCDeliveryReceipt::McDeliveryReceiptRequestedWhereFinalDeliveryOutcomeIsSuccessOrFailure,
                Default::default(),
                Default::default(),
                0,
            );
        }
        Ok(parts)
    }

    /// Stays bound until told to stop.
    pub async fn run(&self, name: &str, came: mpsc::Sender<Arrived>, mut stop: watch::Receiver<bool>) {
        let mut wait = FIRST_WAIT;
        while !*stop.borrow() {
            match self.bind().await {
                Ok((client, events)) => {
                    tracing::info!(gateway = name, "the link is up");
                    metrics::gauge!("bellyful_link_up", "gateway" => name.to_owned()).set(1.0);
                    wait = FIRST_WAIT;
                    self.put(Some(client.clone()));
                    self.listen(&client, events, &came, &mut stop).await;
                    self.put(None);
                    metrics::gauge!("bellyful_link_up", "gateway" => name.to_owned()).set(0.0);
                }
                Err(why) => tracing::warn!(gateway = name, why, "the link cannot be made"),
            }
            tokio::select! {
                () = sleep(wait) => wait = (wait * 2).min(LAST_WAIT),
                _ = stop.changed() => {}
            }
        }
    }

    async fn bind(&self) -> Result<(Client, impl Stream<Item = Event> + Unpin + 'static), String> {
        let within = Duration::from_secs(self.shape.answer_within_s);
        let link = ConnectionBuilder::new()
            .enquire_link_interval(Duration::from_secs(self.shape.enquire_every_s))
            .enquire_link_response_timeout(within)
            .response_timeout(within)
            .disable_interface_version_check();
        // Whoever was first to install one is as good: there is only one kind.
        let _ = rustls::crypto::ring::default_provider().install_default();
        let scheme = if self.shape.tls { "ssmpp" } else { "smpp" };
        let (client, events) = timeout(CONNECT_WITHIN, link.connect(format!("{scheme}://{}", self.address)))
            .await
            .map_err(|_| "nobody answers at the address".to_owned())?
            .map_err(|error| plain(&error))?;
        let bind = BindTransceiver::builder()
            .system_id(word(&self.user)?)
            .password(word(&self.secret)?)
            .system_type(word(&self.shape.system_type)?)
            .interface_version(InterfaceVersion::Smpp3_4)
            .build();
        match client.bind_transceiver(bind).await {
            Ok(_) => Ok((client, events)),
            Err(error) => Err(plain(&error)),
        }
    }

    async fn listen(
        &self,
        client: &Client,
        mut events: impl Stream<Item = Event> + Unpin,
        came: &mpsc::Sender<Arrived>,
        stop: &mut watch::Receiver<bool>,
    ) {
        loop {
            tokio::select! {
                event = events.next() => match event {
                    Some(Event::Incoming(command)) => self.incoming(client, command, came).await,
                    Some(Event::Error(error)) => tracing::warn!(why = plain(&error), "the link is in trouble"),
                    None => return,
                },
                _ = stop.changed() => break,
            }
        }
        // No new texts go out by now; those under way come to their end.
        let _ = timeout(STOP_WITHIN, async {
            while self.under_way.load(Ordering::Relaxed) > 0 {
                sleep(Duration::from_millis(50)).await;
            }
        })
        .await;
        let _ = client.unbind().await;
        let _ = client.close().await;
    }

    async fn incoming(&self, client: &Client, command: Command, came: &mpsc::Sender<Arrived>) {
        let number = command.sequence_number();
        match command.pdu() {
            Some(Pdu::DeliverSm(deliver)) => match delivered(deliver, self.shape.alphabet) {
                Ok(what) => {
                    let (kept, answer) = oneshot::channel();
                    // In order, and no more than there is room for: the centre waits meanwhile.
                    if came.send(Arrived { came: what, kept }).await.is_err() {
                        return;
                    }
                    let client = client.clone();
                    tokio::spawn(async move {
                        let kept = answer.await.unwrap_or(false);
                        // It comes again if it is not kept.
                        let status = if kept { CommandStatus::EsmeRok } else { CommandStatus::EsmeRxTAppn };
                        let _ = client.status(status).deliver_sm_resp(number, DeliverSmResp::default()).await;
                    });
                }
                Err(unreadable) => {
                    metrics::counter!("bellyful_calls_refused_total", "why" => "body").increment(1);
                    tracing::warn!(why = %unreadable, "something was delivered that is refused");
                    let refused = client.status(CommandStatus::EsmeRxPAppn);
                    let _ = refused.deliver_sm_resp(number, DeliverSmResp::default()).await;
                }
            },
            Some(Pdu::Unbind) => {
                let _ = client.unbind_resp(number).await;
                let _ = client.close().await;
            }
            _ => {}
        }
    }
}

async fn submit(client: &Client, part: SubmitSm) -> Sent {
    for _ in 0..BREATHS {
        match client.submit_sm(part.clone()).await {
            Ok(taken) => {
                let id = taken.message_id().as_str().to_owned();
                return Sent::Taken { wire_id: Some(id).filter(|id| !id.is_empty()) };
            }
            Err(Error::UnexpectedResponse { response }) => match response.status() {
                CommandStatus::EsmeRthrottled | CommandStatus::EsmeRmsgqful => sleep(BREATH).await,
                status => return judge(status),
            },
            Err(error) => return Sent::Again { why: plain(&error), after: None },
        }
    }
    Sent::Again { why: "the message centre takes no more just now".to_owned(), after: Some(BREATH * 10) }
}

/// What cannot be mended is refused for good; all else may be of the moment. Source: SMPP 3.4, section 5.1.3.
fn judge(status: CommandStatus) -> Sent {
    let why = format!("the message centre said {:#x}", u32::from(status));
    match status {
        CommandStatus::EsmeRinvmsglen
        | CommandStatus::EsmeRinvdstadr
        | CommandStatus::EsmeRinvdstton
        | CommandStatus::EsmeRinvdstnpi
        | CommandStatus::EsmeRinvdcs => Sent::Refused { why },
        _ => Sent::Again { why, after: None },
    }
}

type Address = (Ton, Npi, COctetString<1, 21>);

/// A number as the centre wants it: international without its plus, short, or a name.
fn address(number: &str) -> Result<Address, String> {
    let digits = number.strip_prefix('+').unwrap_or(number);
    let is_number = !digits.is_empty() && digits.bytes().all(|b| b.is_ascii_digit());
    let (ton, npi) = match (number.starts_with('+'), is_number) {
        (true, true) => (Ton::International, Npi::Isdn),
        (false, true) if digits.len() <= 8 => (Ton::NetworkSpecific, Npi::Unknown),
        (false, true) => (Ton::Unknown, Npi::Isdn),
        (_, false) => (Ton::Alphanumeric, Npi::Unknown),
    };
    Ok((ton, npi, word(digits)?))
}

fn word<const MOST: usize>(word: &str) -> Result<COctetString<1, MOST>, String> {
    COctetString::from_string(word.to_owned())
        .map_err(|_| format!("a setting or number is longer than {} letters or not plain", MOST - 1))
}

/// An error without what it was about.
fn plain(error: &Error) -> String {
    match error {
        Error::UnexpectedResponse { response } => {
            format!("the message centre said {:#x}", u32::from(response.status()))
        }
        other => other.to_string(),
    }
}
