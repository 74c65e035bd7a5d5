//! A message centre on loopback that speaks SMPP 3.4 and misbehaves to order.

use futures_util::{SinkExt, StreamExt};
use rusmpp::pdus::{BindTransceiverResp, DeliverSm, SubmitSm, SubmitSmResp};
use rusmpp::tlvs::MessageDeliveryRequestTlvValue;
use rusmpp::tokio_codec::CommandCodec;
use rusmpp::types::{COctetString, OctetString};
use rusmpp::values::{DataCoding, EsmClass, MCDeliveryReceipt, MessageState, Ton};
use rusmpp::{Command, CommandStatus, Pdu};
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};
use tokio::io::{AsyncRead, AsyncWrite};
use tokio::net::TcpListener;
use tokio::sync::{mpsc, oneshot};
use tokio::task::JoinHandle;
use tokio_rustls::TlsAcceptor;
use tokio_rustls::rustls::ServerConfig;
use tokio_rustls::rustls::pki_types::{PrivateKeyDer, PrivatePkcs8KeyDer};
use tokio_util::codec::Framed;

pub const PASSWORD: &str = "sesame";

/// A part as it was submitted.
#[derive(Debug, Clone)]
pub struct Submitted {
    pub id: String,
    pub from: String,
    pub to: String,
    /// 0 for the default alphabet, 8 for UCS-2.
    pub coding: u8,
    /// Reference, number and total, if it is one of several.
    pub part: Option<(u8, u8, u8)>,
    pub text: String,
    pub report: bool,
}

struct Order {
    deliver: DeliverSm,
    answer: oneshot::Sender<u32>,
}

#[derive(Default)]
struct State {
    submitted: Vec<Submitted>,
    /// Statuses that the next submits are answered with.
    refusals: Vec<u32>,
    reports: Option<MessageState>,
    deaf: bool,
    binds: usize,
    enquiries: usize,
    link: Option<mpsc::UnboundedSender<Order>>,
    sessions: Vec<JoinHandle<()>>,
}

pub struct Centre {
    pub address: String,
    tls: Option<TlsAcceptor>,
    state: Arc<Mutex<State>>,
    listening: Mutex<Option<JoinHandle<()>>>,
}

impl Centre {
    pub async fn start() -> Centre {
        Centre::start_through(None).await
    }

    /// One that is spoken to through TLS, and its certificate, which nobody trusts by himself.
    pub async fn start_tls() -> (Centre, String) {
        let made = rcgen::generate_simple_self_signed(["127.0.0.1".to_owned()]).expect("a certificate");
        let key = PrivateKeyDer::Pkcs8(PrivatePkcs8KeyDer::from(made.signing_key.serialize_der()));
        let provider = Arc::new(tokio_rustls::rustls::crypto::ring::default_provider());
        let config = ServerConfig::builder_with_provider(provider)
            .with_safe_default_protocol_versions()
            .expect("known versions")
            .with_no_client_auth()
            .with_single_cert(vec![made.cert.der().clone()], key)
            .expect("key and certificate fit");
        (Centre::start_through(Some(TlsAcceptor::from(Arc::new(config)))).await, made.cert.pem())
    }

    async fn start_through(tls: Option<TlsAcceptor>) -> Centre {
        let listener = TcpListener::bind("127.0.0.1:0").await.expect("loopback");
        let address = listener.local_addr().expect("bound").to_string();
        let centre = Centre { address, tls, state: Arc::default(), listening: Mutex::default() };
        centre.listen(listener);
        centre
    }

    fn listen(&self, listener: TcpListener) {
        let (state, tls) = (self.state.clone(), self.tls.clone());
        let listening = tokio::spawn(async move {
            while let Ok((stream, _)) = listener.accept().await {
                let (inner, tls) = (state.clone(), tls.clone());
                let session = tokio::spawn(async move {
                    match tls {
                        None => serve(stream, inner).await,
                        Some(tls) => {
                            if let Ok(stream) = tls.accept(stream).await {
                                serve(stream, inner).await;
                            }
                        }
                    }
                });
                state.lock().expect("no test panics inside").sessions.push(session);
            }
        });
        *self.listening.lock().expect("no test panics inside") = Some(listening);
    }

    /// Cuts all links and answers nobody.
    pub async fn go_down(&self) {
        let listening = self.listening.lock().expect("no test panics inside").take();
        let sessions = std::mem::take(&mut self.with().sessions);
        for task in listening.into_iter().chain(sessions) {
            task.abort();
            let _ = task.await;
        }
        self.with().link = None;
    }

    pub async fn come_back(&self) {
        self.listen(TcpListener::bind(&self.address).await.expect("the address is free again"));
    }

    fn with(&self) -> std::sync::MutexGuard<'_, State> {
        self.state.lock().expect("no test panics inside")
    }

    /// Answers the next submits with these statuses.
    pub fn refuse(&self, statuses: &[u32]) {
        self.with().refusals = statuses.to_vec();
    }

    /// Reports this of all that is submitted from now on.
    pub fn report(&self, state: MessageState) {
        self.with().reports = Some(state);
    }

    /// Hears, but says nothing more on the link that is there.
    pub fn go_deaf(&self, deaf: bool) {
        self.with().deaf = deaf;
    }

    pub fn submitted(&self) -> Vec<Submitted> {
        self.with().submitted.clone()
    }

    pub fn binds(&self) -> usize {
        self.with().binds
    }

    pub fn enquiries(&self) -> usize {
        self.with().enquiries
    }

    pub async fn until(&self, within: Duration, enough: impl Fn(&Centre) -> bool) {
        let start = Instant::now();
        while !enough(self) && start.elapsed() < within {
            tokio::time::sleep(Duration::from_millis(20)).await;
        }
    }

    /// Hands a text or part over; the status it is answered with, `None` if nobody is there.
    pub async fn deliver(&self, from: &str, esm_class: u8, coding: u8, octets: &[u8]) -> Option<u32> {
        let deliver = DeliverSm::builder()
            .source_addr_ton(Ton::International)
            .source_addr(word(from))
            .destination_addr(word("12345"))
            .esm_class(EsmClass::from(esm_class))
            .data_coding(DataCoding::from(coding))
            .short_message(OctetString::from_slice(octets).expect("short"))
            .build();
        let link = self.with().link.clone()?;
        let (answer, said) = oneshot::channel();
        link.send(Order { deliver, answer }).ok()?;
        said.await.ok()
    }
}

fn word<const MOST: usize>(word: &str) -> COctetString<1, MOST> {
    COctetString::from_string(word.to_owned()).expect("short and plain")
}

async fn serve(stream: impl AsyncRead + AsyncWrite + Unpin, state: Arc<Mutex<State>>) {
    let with = || state.lock().expect("no test panics inside");
    let mut framed = Framed::new(stream, CommandCodec::new());
    let (link, mut orders) = mpsc::unbounded_channel::<Order>();
    let mut asked: BTreeMap<u32, oneshot::Sender<u32>> = BTreeMap::new();
    let mut sequence = 1_000;
    loop {
        tokio::select! {
            Some(order) = orders.recv() => {
                sequence += 1;
                asked.insert(sequence, order.answer);
                let command = Command::new(CommandStatus::EsmeRok, sequence, order.deliver);
                if framed.send(command).await.is_err() { return }
            }
            command = framed.next() => {
                let Some(Ok(command)) = command else { return };
                let number = command.sequence_number();
                let answer = match command.pdu() {
                    Some(Pdu::BindTransceiver(bind)) => {
                        let known = bind.password.as_str() == PASSWORD;
                        let mut state = with();
                        state.binds += usize::from(known);
                        state.link = known.then(|| link.clone());
                        let status = if known { CommandStatus::EsmeRok } else { CommandStatus::EsmeRinvpaswd };
                        Command::new(status, number, BindTransceiverResp::default())
                    }
                    Some(Pdu::SubmitSm(submit)) => {
                        let (answer, report) = submitted(submit, number, &mut with());
                        if let Some(deliver) = report {
                            let link = link.clone();
                            tokio::spawn(async move {
                                tokio::time::sleep(Duration::from_millis(50)).await;
                                let _ = link.send(Order { deliver, answer: oneshot::channel().0 });
                            });
                        }
                        answer
                    }
                    Some(Pdu::EnquireLink) => {
                        with().enquiries += 1;
                        Command::new(CommandStatus::EsmeRok, number, Pdu::EnquireLinkResp)
                    }
                    Some(Pdu::Unbind) => Command::new(CommandStatus::EsmeRok, number, Pdu::UnbindResp),
                    Some(Pdu::DeliverSmResp(_)) => {
                        if let Some(answer) = asked.remove(&number) {
                            let _ = answer.send(u32::from(command.status()));
                        }
                        continue;
                    }
                    _ => continue,
                };
                let deaf = with().deaf;
                if !deaf && framed.send(answer).await.is_err() { return }
            }
        }
    }
}

/// The answer to a submit, and the report that follows it.
fn submitted(submit: &SubmitSm, number: u32, state: &mut State) -> (Command, Option<DeliverSm>) {
    if !state.refusals.is_empty() {
        let status = CommandStatus::from(state.refusals.remove(0));
        return (Command::new(status, number, SubmitSmResp::default()), None);
    }
    let octets: &[u8] = submit.short_message().as_ref();
    let (header, body) = if u8::from(submit.esm_class) & 0x40 != 0 { octets.split_at(6) } else { octets.split_at(0) };
    let coding = u8::from(submit.data_coding);
    let text = if coding == 8 {
        let units: Vec<u16> = body.chunks(2).map(|pair| u16::from_be_bytes([pair[0], pair[1]])).collect();
        String::from_utf16(&units).expect("UTF-16")
    } else {
        bellyful::reply::segments::from_gsm7(body).expect("the GSM alphabet")
    };
    let id = format!("{:x}", 4_096 + state.submitted.len());
    let report = submit.registered_delivery.mc_delivery_receipt() != MCDeliveryReceipt::NoMcDeliveryReceiptRequested;
    state.submitted.push(Submitted {
        id: id.clone(),
        from: submit.source_addr.as_str().to_owned(),
        to: submit.destination_addr.as_str().to_owned(),
        coding,
        part: (header.len() == 6).then(|| (header[3], header[5], header[4])),
        text,
        report,
    });
    let deliver = state.reports.filter(|_| report).map(|said| {
        let mut deliver = DeliverSm::builder()
            .source_addr(submit.destination_addr.clone())
            .destination_addr(submit.source_addr.clone())
            .esm_class(EsmClass::from(4))
            .build();
        // In decimal, though the answer had it in hexadecimal.
        let id = u64::from_str_radix(&id, 16).expect("made above").to_string();
        deliver.set_tlvs(vec![
            MessageDeliveryRequestTlvValue::ReceiptedMessageId(word(&id)),
            MessageDeliveryRequestTlvValue::MessageState(said),
        ]);
        deliver
    });
    let taken = SubmitSmResp::builder().message_id(word(&id)).build();
    (Command::new(CommandStatus::EsmeRok, number, taken), deliver)
}
