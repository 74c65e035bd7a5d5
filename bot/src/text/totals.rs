//! Totals: an amount and its parts told in one sentence: "10 kg (6 dung, 4 peels)", "3 kg rice, 2 kg beans, total 5 kg".
//!
//! Takes a row whose foods are joined; gives it without the total, and with its unit at parts that have none. Only what
//! adds up is a total.

use super::nodes::{Kind, Node, Quantity, Row};
use super::notions::{Cue, Cues, UnitWord};
use super::tokens::Mark;
use bellyful_core::feeds::Feed;
use std::ops::Range;

/// What is told of a part: its place, its amount in the total's unit, and whether the unit is said with it.
struct Part {
    at: usize,
    value: f64,
    own: bool,
}

pub fn take_off(row: &mut Row) {
    let mut from = 0;
    while from < row.nodes.len() {
        let ends = |node: &Node| matches!(node.mark(), Some(Mark::Stop | Mark::Question));
        let to = (from..row.nodes.len()).find(|&at| ends(&row.nodes[at])).unwrap_or(row.nodes.len());
        let amounts = (from..to).filter(|&at| portion(row, at).is_some() || row.nodes[at].number().is_some());
        let removed = if amounts.take(3).count() == 3 { of_sentence(row, from..to) } else { 0 };
        from = to + 1 - removed;
    }
}

/// The amount and unit of a portion at `at`.
fn portion(row: &Row, at: usize) -> Option<(f64, UnitWord)> {
    let quantity = row.nodes[at].quantity().filter(|q| !q.implied && q.sized.is_none())?;
    let unit =
        quantity.unit.filter(|unit| matches!(unit, UnitWord::Mass(_) | UnitWord::Volume(_) | UnitWord::Of(_)))?;
    Some((quantity.in_base()?, unit))
}

fn alike(one: UnitWord, other: UnitWord) -> bool {
    match (one, other) {
        (UnitWord::Mass(_), UnitWord::Mass(_)) | (UnitWord::Volume(_), UnitWord::Volume(_)) => true,
        (one, other) => one == other,
    }
}

/// What is measured by the amount at `at`, "of" and the like between them: a feed, or `Some(None)` for water.
fn is_of(row: &Row, at: usize) -> Option<Option<Feed>> {
    const JOINTS: Cues = Cues::of(&[Cue::Of, Cue::Modifier]);
    let joint = |node: &&Node| node.any(&JOINTS) && node.feed().is_none() && node.kind == Kind::Phrase;
    let next = row.nodes[at + 1..].iter().take(4).find(|node| !joint(node))?;
    let thing = next.feed().is_some() || next.any(&Cues::of(&[Cue::Water, Cue::Dung]));
    (thing && next.kind == Kind::Phrase).then(|| next.feed())
}

/// Takes the total off one sentence; says how many nodes are gone.
fn of_sentence(row: &mut Row, of: Range<usize>) -> usize {
    let (first, last) = {
        let mut portions = of.clone().filter(|&at| portion(row, at).is_some());
        let Some(first) = portions.next() else { return 0 };
        (first, portions.next_back().unwrap_or(first))
    };
    // Portions of several days or hours are no parts of one.
    let timed =
        |at: &usize| row.nodes[*at].when().is_some() || row.nodes[*at].any(&Cues::of(&[Cue::Morning, Cue::Night]));
    if of.clone().filter(timed).count() > 1 {
        return 0;
    }
    for (total, parts) in [(first, first + 1..of.end), (last, of.start..last)] {
        let Some((whole, unit)) = portion(row, total) else { continue };
        let named = is_of(row, total).is_some_and(|feed| feed != Some(Feed::FoodWaste));
        let found: Vec<Part> = parts.clone().filter_map(|at| part(row, at, unit)).collect();
        let sum: f64 = found.iter().map(|part| part.value).sum();
        let own = found.iter().all(|part| part.own);
        // "2 kg scraps, 1 kg rice and 1 kg beans" may be three portions.
        let loose = own && is_of(row, total).is_some();
        let behind_it = !own && found.first().is_some_and(|part| part.at < total);
        let adds_up = found.len() >= 2 && (sum - whole).abs() < 1e-6;
        if named || loose || behind_it || !adds_up || !between_is_plain(row, &found, total) {
            continue;
        }
        let by = match unit {
            UnitWord::Mass(by) | UnitWord::Volume(by) => by,
            _ => 1.0,
        };
        for part in found.iter().filter(|part| !part.own) {
            let number = row.nodes[part.at].number().map(|n| super::nodes::Number { value: part.value / by, ..n });
            row.nodes[part.at].kind =
                Kind::Quantity(Quantity { number, unit: Some(unit), implied: false, sized: None });
        }
        let food = usize::from(row.nodes.get(total + 1).is_some_and(|node| node.feed() == Some(Feed::FoodWaste)));
        row.nodes.drain(total..total + 1 + food);
        return 1 + food;
    }
    0
}

fn part(row: &Row, at: usize, of: UnitWord) -> Option<Part> {
    is_of(row, at).or_else(|| row.nodes[at.checked_sub(1)?].feed().map(Some))?;
    let by = match of {
        UnitWord::Mass(by) | UnitWord::Volume(by) => by,
        _ => 1.0,
    };
    if let Some((value, unit)) = portion(row, at) {
        return alike(unit, of).then_some(Part { at, value, own: true });
    }
    let number = row.nodes[at].number().filter(|number| !number.weak && number.range.is_none())?;
    Some(Part { at, value: number.value * by, own: false })
}

/// No other amount of the kind stands between the parts and their total.
fn between_is_plain(row: &Row, parts: &[Part], total: usize) -> bool {
    let (Some(first), Some(last)) = (parts.first(), parts.last()) else { return false };
    (first.at.min(total)..last.at.max(total)).all(|at| {
        let counted = portion(row, at).is_some() || row.nodes[at].number().is_some_and(|n| !n.weak);
        !counted || at == total || parts.iter().any(|part| part.at == at)
    })
}
