//! A field worker's line: the PIN that guards personal data once a day, the lock after wrong ones, and MORE.
//!
//! Takes the line as kept and a text; gives what follows, or nothing when the text may go on. A PIN is kept as a hash.
//! A danger is never held up: neither telling of one nor taking an alarm needs a PIN.

use super::{Order, answered};
use crate::deed::Did;
use crate::household::{Decision, Staff};
use crate::message::{Inbound, Kind, Outbound, answer_id};
use crate::mind::Mind;
use crate::pages::access::Role;
use crate::reply::compose::{Piece, Rank};
use crate::reply::word::Voice;
use crate::text::reading::{Control, Reading};
use argon2::password_hash::phc::PasswordHash;
use argon2::{Argon2, PasswordVerifier};
use chrono::{DateTime, Duration, Utc};
use serde::{Deserialize, Serialize};

/// Wrong PINs before the line is locked, and for how long. Source: our choice.
const TRIES: u32 = 5;
const LOCKED: Duration = Duration::hours(1);
/// A PIN given holds for a working day and its evening. Source: our choice.
const HOLDS: Duration = Duration::hours(20);

/// Where the talk with a field worker stands.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Line {
    pub pin_hash: Option<String>,
    pub given_at: Option<DateTime<Utc>>,
    pub wrong: u32,
    pub locked_until: Option<DateTime<Utc>>,
    /// Texts that MORE goes on with.
    pub more: Vec<String>,
}

/// What the store knows of a field worker's line.
#[derive(Debug, Clone, PartialEq)]
pub struct Known {
    pub line: Line,
    pub role: Role,
    /// The programme wants everybody to have a PIN.
    pub needs_pin: bool,
    /// Managers with a phone: who is told of a lock.
    pub managers: Vec<Staff>,
}

/// What follows before anything is looked at; `None` when the text may go on.
pub fn gate(
    mind: &Mind,
    worker: &Staff,
    known: &Known,
    order: Option<&Order>,
    reading: &Reading,
    inbound: &Inbound,
) -> Option<Decision> {
    let voice = Voice::in_lang(&mind.catalog, &worker.lang);
    let say = |piece: Piece, line: Option<Line>, did: Option<Did>| {
        Some(Decision {
            replies: vec![answered(mind, worker, inbound, vec![piece])],
            line: line.map(|line| (worker.id, line)),
            audit: did.map(|did| did.by(&worker.name)),
            ..Decision::default()
        })
    };
    let now = inbound.received_at;
    let mut line = known.line.clone();
    if reading.danger() {
        return None;
    }
    if let Some(Order::Pin(pin)) = order {
        return tried(mind, worker, known, pin, inbound);
    }
    let personal = order.is_some()
        || super::household_meant(reading, &inbound.text).is_some()
        || reading.control == Some(Control::More);
    let least = match order {
        Some(order) => order.least(),
        None if reading.facts.is_empty() => Role::Viewer,
        None => Role::Field,
    };
    if personal && known.role < least {
        return say(voice.must("staff-viewer", &[]), None, None);
    }
    if matches!(order, Some(Order::Acknowledge(_))) {
        return None;
    }
    let locked = line.locked_until.is_some_and(|until| until > now);
    let given = line.given_at.is_some_and(|at| now - at < HOLDS);
    if personal && line.pin_hash.is_none() && known.needs_pin {
        return say(voice.must("staff-pin-choose", &[]), None, None);
    }
    if personal && line.pin_hash.is_some() && (locked || !given) {
        return say(voice.must(if locked { "staff-pin-locked" } else { "staff-pin-ask" }, &[]), None, None);
    }
    if order.is_none() && reading.control == Some(Control::More) {
        if line.more.is_empty() {
            return say(voice.must("nothing-more", &[]), None, None);
        }
        let next = line.more.remove(0);
        return say(Piece::new(Rank::Must, next), Some(line), Some(Did::AskedMore));
    }
    None
}

/// What follows from "pin 4711": the first one given is theirs from then on.
fn tried(mind: &Mind, worker: &Staff, known: &Known, pin: &str, inbound: &Inbound) -> Option<Decision> {
    let voice = Voice::in_lang(&mind.catalog, &worker.lang);
    let now = inbound.received_at;
    let mut line = known.line.clone();
    let mut told = vec![];
    let formed = (4..=8).contains(&pin.len()) && pin.bytes().all(|b| b.is_ascii_digit());
    let (piece, did) = match &line.pin_hash {
        _ if line.locked_until.is_some_and(|until| until > now) => {
            (voice.must("staff-pin-locked", &[]), Did::TriedWhileLocked)
        }
        _ if !formed => (voice.must("staff-pin-form", &[]), Did::GaveNoPin),
        None => {
            line.pin_hash = Some(crate::pages::hash(pin).ok()?);
            line.given_at = Some(now);
            (voice.must("staff-pin-set", &[]), Did::SetPin)
        }
        Some(hash) if fits(hash, pin) => {
            (line.given_at, line.wrong) = (Some(now), 0);
            (voice.must("staff-pin-ok", &[]), Did::GavePin)
        }
        Some(_) if line.wrong + 1 >= TRIES => {
            (line.wrong, line.given_at, line.locked_until) = (0, None, Some(now + LOCKED));
            told = known.managers.iter().enumerate().filter_map(|(at, m)| tell(mind, worker, m, at, inbound)).collect();
            (voice.must("staff-pin-locked", &[]), Did::GotLocked)
        }
        Some(_) => {
            line.wrong += 1;
            let left = f64::from(TRIES - line.wrong);
            (voice.must("staff-pin-wrong", &[("left", left.into())]), Did::GaveWrongPin)
        }
    };
    let mut replies = vec![answered(mind, worker, inbound, vec![piece])];
    replies.extend(told);
    let audit = Some(did.by(&worker.name));
    Some(Decision { replies, line: Some((worker.id, line)), audit, secret: true, ..Decision::default() })
}

/// The word to a manager that a line is locked.
fn tell(mind: &Mind, worker: &Staff, manager: &Staff, at: usize, inbound: &Inbound) -> Option<Outbound> {
    let (to, gateway) = (manager.phone.clone()?, manager.gateway.clone()?);
    let voice = Voice::in_lang(&mind.catalog, &manager.lang);
    let values = [("worker", worker.name.as_str().into()), ("number", inbound.from.as_str().into())];
    Some(Outbound {
        id: answer_id(&inbound.gateway, &inbound.from, &inbound.id, at + 1),
        gateway,
        to,
        text: voice.say("staff-pin-told", &values),
        kind: Kind::Staff,
        advice: None,
        not_before: inbound.received_at,
    })
}

fn fits(hash: &str, pin: &str) -> bool {
    PasswordHash::new(hash).is_ok_and(|hash| Argon2::default().verify_password(pin.as_bytes(), &hash).is_ok())
}
