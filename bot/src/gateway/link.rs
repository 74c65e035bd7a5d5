//! Links: gateways that are spoken to over one lasting connection in place of calls.
//!
//! Takes texts of ours; gives what the peer says, each piece with a way to tell the peer whether it is kept. A link that
//! breaks comes back by itself.

use super::smpp::{Smpp, SmppShape};
use super::xmpp::{Xmpp, XmppShape};
use super::{Heard, Sent};
use crate::store::Receipt;
use serde::Deserialize;
use std::collections::BTreeSet;
use std::time::Duration;
use tokio::sync::{mpsc, oneshot, watch};

/// What kind of link, as the gateway's file says.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields, tag = "kind", rename_all = "snake_case")]
pub enum LinkShape {
    Smpp(SmppShape),
    Xmpp(XmppShape),
}

impl LinkShape {
    /// The settings that this kind of link needs.
    pub fn settings_named(&self) -> BTreeSet<String> {
        let names: &[&str] = match self {
            LinkShape::Smpp(_) | LinkShape::Xmpp(_) => &["address", "user", "secret", "number"],
        };
        names.iter().map(|name| name.to_string()).collect()
    }
}

/// What a peer says.
#[derive(Debug, Clone, PartialEq)]
pub enum Came {
    Text(Heard),
    /// One part of a long text.
    Part(Heard, PartOf),
    /// What became of a text of ours that the peer knows by one of these ids.
    Report {
        ids: Vec<String>,
        receipt: Receipt,
    },
}

/// Where a part belongs: parts of one sender with the same reference and total are one text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PartOf {
    pub reference: u16,
    /// From 1.
    pub number: u8,
    pub total: u8,
}

/// Something that came, and where to say whether it is kept.
#[derive(Debug)]
pub struct Arrived {
    pub came: Came,
    pub kept: oneshot::Sender<bool>,
}

/// The connection itself.
pub enum Link {
    Smpp(Smpp),
    Xmpp(Box<Xmpp>),
}

impl Link {
    pub fn new(shape: &LinkShape, setting: impl Fn(&str) -> Option<String>) -> Link {
        match shape {
            LinkShape::Smpp(shape) => Link::Smpp(Smpp::new(shape.clone(), setting)),
            LinkShape::Xmpp(shape) => Link::Xmpp(Box::new(Xmpp::new(shape.clone(), setting))),
        }
    }

    /// Whether texts can go out just now.
    pub fn is_up(&self) -> bool {
        match self {
            Link::Smpp(link) => link.is_up(),
            Link::Xmpp(link) => link.is_up(),
        }
    }

    pub async fn send(&self, id: &str, to: &str, text: &str) -> Sent {
        match self {
            Link::Smpp(link) => link.send(id, to, text).await,
            Link::Xmpp(link) => link.send(id, to, text).await,
        }
    }

    /// Stays connected until told to stop.
    pub async fn run(&self, name: &str, came: mpsc::Sender<Arrived>, stop: watch::Receiver<bool>) {
        match self {
            Link::Smpp(link) => link.run(name, came, stop).await,
            Link::Xmpp(link) => link.run(name, came, stop).await,
        }
    }
}

/// What a send comes to while the link is down.
pub fn down() -> Sent {
    Sent::Again { why: "the link is down".to_owned(), after: Some(Duration::from_secs(1)) }
}
