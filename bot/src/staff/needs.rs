//! "Who needs me": the households a field worker should see to, in the order of the page of today.
//!
//! Takes what the store sees of all households; gives as many as two segments hold, and how many more there are.

use super::answered;
use super::line::Line;
use crate::deed::Did;
use crate::household::{Decision, Household, Staff};
use crate::message::Inbound;
use crate::mind::Mind;
use crate::pages::need::Hands;
use crate::pages::today::in_order;
use crate::reply::catalog::Value;
use crate::reply::compose::{Piece, Rank, Room};
use crate::reply::word::Voice;
use crate::store::{Care, Seen};
use std::collections::BTreeMap;

/// The pressing ones that are the worker's own or nobody's, and that nobody else has in hand.
pub fn needs(
    mind: &Mind,
    worker: &Staff,
    line: Line,
    seen: Vec<Seen>,
    cares: &BTreeMap<i64, Care>,
    inbound: &Inbound,
) -> Decision {
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
    let mut texts = in_texts(&voice, &items, Some("staff-needs"));
    let first = match texts.is_empty() {
        true => voice.must("staff-needs-none", &[]),
        false => Piece::new(Rank::Must, texts.remove(0)),
    };
    Decision {
        replies: vec![answered(mind, worker, inbound, vec![first])],
        line: Some((worker.id, Line { more: texts, ..line })),
        audit: Some(Did::AskedNeeds.by(&worker.name)),
        ..Decision::default()
    }
}

/// Items that are listed at the very most, over all texts.
const MOST: usize = 200;

/// A list in texts of two segments, each saying how many are still to come; `head` is what the first begins with.
pub fn in_texts(voice: &Voice, items: &[String], head: Option<&str>) -> Vec<String> {
    let listed = &items[..items.len().min(MOST)];
    let (mut texts, mut from) = (vec![], 0);
    while from < listed.len() {
        let text = |to: usize| {
            let list = listed[from..to].join(" ");
            let said = match head.filter(|_| from == 0) {
                Some(head) => {
                    let values = [("count", Value::Number(items.len() as f64)), ("list", list.into())];
                    voice.say(head, &values)
                }
                None => list,
            };
            match items.len() - to {
                0 => said,
                rest => format!("{said} {}", voice.say("staff-needs-rest", &[("count", Value::Number(rest as f64))])),
            }
        };
        let to = (from + 1..=listed.len()).take_while(|&to| Room::STAFF.fits(&text(to))).last().unwrap_or(from + 1);
        texts.push(text(to));
        from = to;
    }
    texts
}
