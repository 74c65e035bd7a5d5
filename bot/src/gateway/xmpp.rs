//! XMPP: a component of a chat server (XEP-0114), so that anybody with a chat account can text the bot.
//!
//! Takes texts of ours; gives what people and their clients say. A message is answered by an error that says "wait" when
//! it cannot be kept. Asks after the link, and connects anew when it breaks. Never logs words or addresses.
//! Source: RFC 6120 and 6121; XEP-0184 for receipts, XEP-0199 for pings, XEP-0203 for late messages.

use super::link::{Arrived, Came, down};
use super::{Heard, Sent};
use crate::store::Receipt;
use chrono::{DateTime, Utc};
use futures_util::{SinkExt, StreamExt};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::str::FromStr;
use std::sync::{PoisonError, RwLock};
use std::time::Duration;
use tokio::sync::{mpsc, oneshot, watch};
use tokio::time::{Instant, MissedTickBehavior, interval, sleep, timeout};
use tokio_xmpp::connect::{DnsConfig, TcpServerConnector};
use tokio_xmpp::xmlstream::Timeouts;
use tokio_xmpp::{Component, Stanza};
use xmpp_parsers::delay::Delay;
use xmpp_parsers::iq::Iq;
use xmpp_parsers::jid::Jid;
use xmpp_parsers::message::{Id, Lang, Message, MessageType};
use xmpp_parsers::ping::Ping;
use xmpp_parsers::presence::{Presence, Type as PresenceType};
use xmpp_parsers::receipts::{Received, Request};
use xmpp_parsers::stanza_error::{DefinedCondition, ErrorType, StanzaError};

/// What a chat server is like.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct XmppShape {
    /// How often to ask whether the link is there; three times without an answer, and it is not.
    pub ping_every_s: u64,
}

impl Default for XmppShape {
    fn default() -> XmppShape {
        XmppShape { ping_every_s: 20 }
    }
}

type Order = (Stanza, oneshot::Sender<bool>);
type Connected = Component<TcpServerConnector>;

pub struct Xmpp {
    shape: XmppShape,
    address: String,
    /// The domain that the server gave us.
    user: String,
    secret: String,
    /// Ours, that texts come from: NAME@DOMAIN.
    number: String,
    orders: RwLock<Option<mpsc::Sender<Order>>>,
}

const CONNECT_WITHIN: Duration = Duration::from_secs(10);
const SEND_WITHIN: Duration = Duration::from_secs(10);
const FIRST_WAIT: Duration = Duration::from_millis(500);
const LAST_WAIT: Duration = Duration::from_secs(30);
/// Stanzas that wait to be written.
const ROOM: usize = 256;

impl Xmpp {
    pub fn new(shape: XmppShape, setting: impl Fn(&str) -> Option<String>) -> Xmpp {
        let setting = |name: &str| setting(name).unwrap_or_default();
        Xmpp {
            shape,
            address: setting("address"),
            user: setting("user"),
            secret: setting("secret"),
            number: setting("number"),
            orders: RwLock::default(),
        }
    }

    pub fn is_up(&self) -> bool {
        self.orders().is_some()
    }

    fn orders(&self) -> Option<mpsc::Sender<Order>> {
        self.orders.read().unwrap_or_else(PoisonError::into_inner).clone().filter(|orders| !orders.is_closed())
    }

    fn put(&self, orders: Option<mpsc::Sender<Order>>) {
        *self.orders.write().unwrap_or_else(PoisonError::into_inner) = orders;
    }

    /// Writes one message to the server. Its id is ours, so that a client can drop a double.
    pub async fn send(&self, id: &str, to: &str, text: &str) -> Sent {
        let Some(orders) = self.orders() else { return down() };
        let (Ok(to), Ok(from)) = (Jid::from_str(to), Jid::from_str(&self.number)) else {
            return Sent::Refused { why: "the recipient or our own address is no chat address".to_owned() };
        };
        let mut message = Message::chat(Some(to)).with_body(Lang::new(), visible(text)).with_payload(Request);
        message.from = Some(from);
        message.id = Some(Id(id.to_owned()));
        let (done, written) = oneshot::channel();
        if orders.send((message.into(), done)).await.is_err() {
            return down();
        }
        match timeout(SEND_WITHIN, written).await {
            Ok(Ok(true)) => Sent::Taken { wire_id: Some(id.to_owned()) },
            _ => Sent::Again { why: "the message could not be written to the server".to_owned(), after: None },
        }
    }

    /// Stays connected until told to stop.
    pub async fn run(&self, name: &str, came: mpsc::Sender<Arrived>, mut stop: watch::Receiver<bool>) {
        let mut wait = FIRST_WAIT;
        while !*stop.borrow() {
            // Silence is ours to judge, by pings.
            let patient = Timeouts { read_timeout: Duration::MAX / 4, response_timeout: Duration::MAX / 4 };
            let address = DnsConfig::addr(&self.address);
            let connecting = Component::new_plaintext(&self.user, &self.secret, address, patient);
            match timeout(CONNECT_WITHIN, connecting).await {
                Ok(Ok(component)) => {
                    tracing::info!(gateway = name, "the link is up");
                    metrics::gauge!("bellyful_link_up", "gateway" => name.to_owned()).set(1.0);
                    wait = FIRST_WAIT;
                    let (orders, to_write) = mpsc::channel(ROOM);
                    self.put(Some(orders.clone()));
                    self.listen(component, orders, to_write, &came, &mut stop).await;
                    self.put(None);
                    metrics::gauge!("bellyful_link_up", "gateway" => name.to_owned()).set(0.0);
                }
                // Not the error itself: it may hold what was said.
                Ok(Err(_)) => tracing::warn!(gateway = name, "the chat server is away or does not know us"),
                Err(_) => tracing::warn!(gateway = name, "the chat server does not answer"),
            }
            tokio::select! {
                () = sleep(wait) => wait = (wait * 2).min(LAST_WAIT),
                _ = stop.changed() => {}
            }
        }
    }

    async fn listen(
        &self,
        mut component: Connected,
        orders: mpsc::Sender<Order>,
        mut to_write: mpsc::Receiver<Order>,
        came: &mpsc::Sender<Arrived>,
        stop: &mut watch::Receiver<bool>,
    ) {
        let every = Duration::from_secs(self.shape.ping_every_s.max(1));
        let mut beat = interval(every);
        beat.set_missed_tick_behavior(MissedTickBehavior::Delay);
        let mut heard = Instant::now();
        loop {
            tokio::select! {
                stanza = component.next() => {
                    let Some(stanza) = stanza else { return };
                    heard = Instant::now();
                    self.incoming(stanza, &orders, came).await;
                }
                Some((stanza, done)) = to_write.recv() => {
                    let written = component.send(stanza).await.is_ok();
                    let _ = done.send(written);
                    if !written { return }
                }
                _ = beat.tick() => {
                    if heard.elapsed() > every * 3 || component.send(self.ping()).await.is_err() { return }
                }
                _ = stop.changed() => break,
            }
        }
        // What was handed to us is written yet.
        to_write.close();
        while let Some((stanza, done)) = to_write.recv().await {
            let _ = done.send(component.send(stanza).await.is_ok());
        }
        let _ = timeout(SEND_WITHIN, component.send_end()).await;
    }

    fn ping(&self) -> Stanza {
        // The server answers for its parent domain; an error is an answer too.
        let server = self.user.split_once('.').map_or(self.user.as_str(), |(_, parent)| parent);
        let (from, to) = (Jid::from_str(&self.user).ok(), Jid::from_str(server).ok());
        Iq::Get { from, to, id: "bellyful-ping".to_owned(), payload: Ping.into() }.into()
    }

    async fn incoming(&self, stanza: Stanza, orders: &mpsc::Sender<Order>, came: &mpsc::Sender<Arrived>) {
        let reply = |stanza: Stanza| {
            // With no room the other side asks again.
            let _ = orders.try_send((stanza, oneshot::channel().0));
        };
        match stanza {
            Stanza::Message(message) => {
                let Some(what) = said(&message) else { return };
                let is_text = matches!(what, Came::Text(_));
                let (kept, answer) = oneshot::channel();
                if came.send(Arrived { came: what, kept }).await.is_err() {
                    return;
                }
                let orders = orders.clone();
                tokio::spawn(async move {
                    if is_text && !answer.await.unwrap_or(false) {
                        let _ = orders.send((come_again(message).into(), oneshot::channel().0)).await;
                    }
                });
            }
            Stanza::Iq(Iq::Get { from, to, id, payload }) if payload.is("ping", "urn:xmpp:ping") => {
                reply(Iq::Result { from: to, to: from, id, payload: None }.into());
            }
            Stanza::Iq(Iq::Get { from, to, id, payload } | Iq::Set { from, to, id, payload }) => {
                let error = error(ErrorType::Cancel, DefinedCondition::ServiceUnavailable);
                reply(Iq::Error { from: to, to: from, id, error, payload: Some(payload) }.into());
            }
            // Who asks to see us may.
            Stanza::Presence(asked) if asked.type_ == PresenceType::Subscribe => {
                let mut yes = Presence::new(PresenceType::Subscribed);
                (yes.from, yes.to) = (asked.to, asked.from);
                reply(yes.into());
            }
            Stanza::Iq(_) | Stanza::Presence(_) => {}
        }
    }
}

/// What a message says, if anything to us.
pub fn said(message: &Message) -> Option<Came> {
    if message.type_ == MessageType::Error {
        // One of ours came back.
        return Some(Came::Report { ids: vec![message.id.as_ref()?.0.clone()], receipt: Receipt::Failed });
    }
    if matches!(message.type_, MessageType::Groupchat | MessageType::Headline) {
        return None;
    }
    let payload = |name: &str, space: &str| message.payloads.iter().find(|payload| payload.is(name, space)).cloned();
    if let Some(received) = payload("received", "urn:xmpp:receipts") {
        let received = Received::try_from(received).ok()?;
        return Some(Came::Report { ids: vec![received.id], receipt: Receipt::Delivered });
    }
    let (_, body) = message.get_best_body(vec![""])?;
    let late = payload("delay", "urn:xmpp:delay").and_then(|delay| Delay::try_from(delay).ok());
    Some(Came::Text(Heard {
        id: message.id.as_ref().map(|id| id.0.clone()).filter(|id| !id.is_empty()),
        // Whatever client it was written with.
        from: Some(message.from.as_ref()?.to_bare().to_string()),
        to: message.to.as_ref().map(|to| to.to_bare().to_string()),
        text: body.clone(),
        sent_at: late.map(|late| DateTime::<Utc>::from(late.stamp.0)),
    }))
}

/// The message back to its sender, as one that cannot be taken just now.
fn come_again(mut message: Message) -> Message {
    (message.from, message.to) = (message.to, message.from);
    message.type_ = MessageType::Error;
    message.payloads = vec![error(ErrorType::Wait, DefinedCondition::ResourceConstraint).into()];
    message
}

fn error(type_: ErrorType, defined_condition: DefinedCondition) -> StanzaError {
    StanzaError { type_, by: None, defined_condition, texts: BTreeMap::new(), other: None }
}

/// Without the characters that no XML can hold.
fn visible(text: &str) -> String {
    text.chars().filter(|c| !c.is_control() || matches!(c, '\n' | '\t')).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(xml: &str, expected: Option<Came>) {
        let element: xmpp_parsers::minidom::Element = xml.parse().expect("XML");
        let message = Message::try_from(element).expect("a message");
        assert_eq!(said(&message), expected);
    }

    fn heard(id: Option<&str>, text: &str, sent_at: Option<&str>) -> Option<Came> {
        Some(Came::Text(Heard {
            id: id.map(str::to_owned),
            from: Some("amina@chat.example".to_owned()),
            to: Some("bot@texts.example".to_owned()),
            text: text.to_owned(),
            sent_at: sent_at.map(|at| at.parse().expect("a time")),
        }))
    }

    #[test]
    fn messages_receipts_and_bounces_are_told_apart() {
        let message = |more: &str, inside: &str| {
            format!(
                "<message xmlns='jabber:component:accept' from='amina@chat.example/phone' to='bot@texts.example' {more}>{inside}\
                 </message>"
            )
        };
        check(&message("id='m1' type='chat'", "<body>3 किलो गोबर</body>"), heard(Some("m1"), "3 किलो गोबर", None));
        check(&message("", "<body>gas low</body>"), heard(None, "gas low", None));
        check(
            &message("", "<body>gas low</body><delay xmlns='urn:xmpp:delay' stamp='2026-03-02T06:29:00Z'/>"),
            heard(None, "gas low", Some("2026-03-02T06:29:00Z")),
        );
        let report = |receipt| Some(Came::Report { ids: vec!["ours".to_owned()], receipt });
        check(&message("", "<received xmlns='urn:xmpp:receipts' id='ours'/>"), report(Receipt::Delivered));
        check(&message("id='ours' type='error'", "<body>x</body>"), report(Receipt::Failed));
        check(&message("type='groupchat'", "<body>x</body>"), None);
        check(&message("type='chat'", "<composing xmlns='http://jabber.org/protocol/chatstates'/>"), None);
    }
}
