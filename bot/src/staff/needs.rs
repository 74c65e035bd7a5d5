//! "Who needs me": the households a field worker should see to, in the order of the page of today.
//!
//! Takes what the store sees of all households; gives as many as two segments hold, and how many more there are.

use super::answered;
use crate::household::{Decision, Household, Staff};
use crate::message::Inbound;
use crate::mind::Mind;
use crate::pages::need::Hands;
use crate::pages::today::in_order;
use crate::reply::catalog::Value;
use crate::reply::compose::{Piece, Rank};
use crate::reply::word::Voice;
use crate::store::{Care, Seen};
use std::collections::BTreeMap;

/// The pressing ones that are the worker's own or nobody's, and that nobody else has in hand.
pub fn needs(mind: &Mind, worker: &Staff, seen: Vec<Seen>, cares: &BTreeMap<i64, Care>, inbound: &Inbound) -> Decision {
    let voice = Voice::in_lang(&mind.catalog, &worker.lang);
    let mine = |household: &Household| household.staff_id.is_none_or(|id| id == worker.id);
    let items: Vec<String> = in_order(seen, cares, inbound.received_at)
        .into_iter()
        .filter(|placed| placed.need.is_pressing() && mine(&placed.seen.household))
        .filter(|placed| match &placed.hands {
            Hands::Nobody => true,
            Hands::Taken(by) => *by == worker.name,
            Hands::Done(_) => false,
        })
        .map(|placed| {
            let household = &placed.seen.household;
            let name = format!("{} {}", household.id, household.name);
            let values = [("name", Value::Text(name.trim().to_owned())), ("need", placed.need.id().into())];
            voice.say("staff-needs-item", &values)
        })
        .collect();
    let piece = match items.len() {
        0 => voice.must("staff-needs-none", &[]),
        // From all of them to the first alone: the fullest that fits is sent.
        all => Piece::or(Rank::Must, (1..=all.min(MOST)).rev().map(|shown| list(&voice, &items, shown)).collect()),
    };
    Decision {
        replies: vec![answered(mind, worker, inbound, vec![piece])],
        audit: Some(format!("{} asked who needs them", worker.name)),
        ..Decision::default()
    }
}

/// Households that two segments can hold at the very most.
const MOST: usize = 40;

fn list(voice: &Voice, items: &[String], shown: usize) -> String {
    let values = [("count", Value::Number(items.len() as f64)), ("list", items[..shown].join(" ").into())];
    let said = voice.say("staff-needs", &values);
    match items.len() - shown {
        0 => said,
        rest => format!("{said} {}", voice.say("staff-needs-rest", &[("count", Value::Number(rest as f64))])),
    }
}
