//! Quantities: numbers joined to their units.
//!
//! Takes a row whose numbers are joined; gives it with "2 kg", "ndoo mbili", "two 5-litre buckets", "1 hr 20" each as
//! one node. Decides nothing about what is measured.

use super::nodes::{Kind, Node, Number, Quantity, Row};
use super::notions::{BEASTS, Cue, Cues, UnitWord};
use super::numbers::and_fraction;
use super::parts::{halves, of_what_follows, sized_behind, thousandths};
use super::sized::sized;
use super::tokens::Mark;
use super::wordlist::Side;
use bellyful_core::fact::Measure;

pub fn join(row: &mut Row) {
    halves(row);
    apart(row);
    units(row);
    sums(row);
    sized(row);
    sized_behind(row);
}

/// Words that may stand between a number and its unit ("2 big buckets", "half of a bucket").
const BETWEEN: Cues = Cues::of(&[Cue::Modifier, Cue::Of, Cue::About]);

/// "ek ghode ki leed ka tokra": where a part stands behind its whole, the number may stand before both, and is the
/// measure's.
fn apart(row: &mut Row) {
    const FURTHEST: usize = 6;
    if row.lexicon.habits.part != Side::After || row.lexicon.habits.number != Side::Before {
        return;
    }
    let mut at = 0;
    while at + 3 < row.nodes.len() {
        let nodes = &row.nodes;
        let of_food = |node: &Node| {
            node.kind == Kind::Phrase
                && (node.meaning.feed.is_some() || node.has(Cue::Dung) || node.any(&BEASTS) || between(node))
                && node.meaning.unit.is_none()
        };
        let end = (at + 1..nodes.len().min(at + FURTHEST)).find(|&end| !of_food(&nodes[end]));
        let measured = end.filter(|&end| {
            let food = nodes[at + 1..end].iter().any(|node| node.meaning.feed.is_some() || node.has(Cue::Dung));
            food && nodes[end - 1].has(Cue::Of) && !nodes[at + 1].has(Cue::Of)
        });
        let found = nodes[at].number().filter(|number| !number.weak).zip(measured);
        let unit = |end: usize| unit_of(&nodes[end]).filter(|unit| matches!(unit, UnitWord::Of(_)));
        if let Some((number, end, unit)) = found.and_then(|(number, end)| Some((number, end, unit(end)?))) {
            let quantity = Quantity { number: Some(number), unit: Some(unit), implied: false, sized: None };
            row.nodes[end].kind = Kind::Quantity(quantity);
            row.nodes.remove(at);
        }
        at += 1;
    }
}

fn units(row: &mut Row) {
    let mut out: Vec<Node> = Vec::with_capacity(row.nodes.len());
    let mut at = 0;
    while at < row.nodes.len() {
        match quantity_at(row, at) {
            Some((quantity, next)) => {
                let mut node = row.nodes[at];
                let unit_meaning =
                    row.nodes[at..next].iter().find(|node| node.meaning.unit.is_some()).map(|node| node.meaning);
                node.kind = Kind::Quantity(quantity);
                node.meaning = unit_meaning.unwrap_or(node.meaning);
                node.to = row.nodes[next - 1].to;
                out.push(node);
                at = next;
            }
            None => {
                out.push(row.nodes[at]);
                at += 1;
            }
        }
    }
    row.nodes = out;
}

pub(super) fn unit_of(node: &Node) -> Option<UnitWord> {
    if node.kind == Kind::Phrase { node.meaning.unit } else { None }
}

fn quantity_at(row: &Row, at: usize) -> Option<(Quantity, usize)> {
    let nodes = &row.nodes;
    let node = nodes.get(at)?;
    let full = |number: Number, unit: UnitWord| Quantity {
        number: Some(number),
        unit: Some(unit),
        implied: false,
        sized: None,
    };
    if let Some(number) = node.number() {
        let mut next = at + 1;
        let mut skipped = 0;
        // "half the bucket"
        let whose =
            |node: &Node| number.fraction && node.has(Cue::My) && node.kind == Kind::Phrase && unit_of(node).is_none();
        // "half a kilo"; "120 a kilo" is a price.
        let article = |node: &Node| node.number().is_some_and(|n| n.weak) && (number.fraction || number.weak);
        let little = |node: &Node| between(node) || whose(node) || article(node);
        while skipped < 3 && nodes.get(next).is_some_and(little) {
            next += 1;
            skipped += 1;
        }
        // "5-litre"
        if skipped == 0
            && nodes.get(next).is_some_and(|n| n.mark() == Some(Mark::Dash))
            && nodes.get(next + 1).and_then(unit_of).is_some()
        {
            next += 1;
        }
        // "one whole pot": the word for a piece says how full the vessel is.
        let vessel = |at: usize| {
            let measure = |unit: &UnitWord| matches!(unit, UnitWord::Of(of) if *of != Measure::Piece);
            nodes.get(at).and_then(unit_of).filter(measure)
        };
        if nodes.get(next).and_then(unit_of) == Some(UnitWord::Of(Measure::Piece)) && vessel(next + 1).is_some() {
            next += 1;
        }
        let unit_node = nodes.get(next)?;
        let unit = unit_of(unit_node).filter(|_| !row.elides(unit_node))?;
        // "temp 29 bag full": what was measured has the number.
        const MEASURED: Cues = Cues::of(&[Cue::Temp, Cue::Ph, Cue::Gauge]);
        let measured = at > 0 && nodes[at - 1].any(&MEASURED) && nodes[at - 1].kind == Kind::Phrase;
        if measured && matches!(unit, UnitWord::Of(_)) {
            return None;
        }
        if unit_node.meaning.letter && (skipped > 0 || number.weak) {
            return None;
        }
        if number.weak && skipped > 0 && nodes[at + 1].has(Cue::Of) {
            return None;
        }
        // "chapati 3 ndoo 2": where numbers follow units, this unit has its own.
        let own = row.lexicon.habits.number == Side::After
            && !number.fraction
            && !unit_node.glued
            && number_after(row, next).is_some();
        if own {
            return None;
        }
        let mut quantity = full(number, unit);
        let mut end = next + 1;
        // "kilo y medio", "an hour and a half"
        if !number.fraction
            && number.range.is_none()
            && let Some((fraction, sign, after)) = and_fraction(row, end)
            && nodes.get(after).and_then(unit_of).is_none()
        {
            quantity.number = Some(Number { value: number.value + sign * fraction, weak: false, ..number });
            end = after;
        } else if let Some(half) = half_behind(row, end).filter(|_| !number.fraction && number.range.is_none()) {
            quantity.number = Some(Number { value: number.value + half, ..number });
            end += 1;
        }
        return Some((quantity, end));
    }
    if node.has(Cue::Some) && node.kind == Kind::Phrase {
        let mut next = at + 1;
        while nodes.get(next).is_some_and(|n| n.has(Cue::Modifier) || n.has(Cue::Of)) && next < at + 3 {
            next += 1;
        }
        let vague = Quantity { number: None, unit: None, implied: false, sized: None };
        return match nodes.get(next).and_then(unit_of).filter(|unit| {
            matches!(unit, UnitWord::Of(_) | UnitWord::Mass(_) | UnitWord::Volume(_) | UnitWord::Time(_))
        }) {
            Some(unit) if !nodes[next].meaning.letter => Some((Quantity { unit: Some(unit), ..vague }, next + 1)),
            _ => Some((vague, at + 1)),
        };
    }
    let unit = unit_of(node)?;
    if let Some((number, next)) = number_after(row, at) {
        let mut end = next;
        let mut number = number;
        if let Some((fraction, sign, after)) = and_fraction(row, end)
            .filter(|&(.., after)| !number.fraction && nodes.get(after).and_then(unit_of).is_none())
        {
            number.value += sign * fraction;
            end = after;
        }
        return Some((full(number, unit), end));
    }
    if node.meaning.letter {
        return None;
    }
    // "kilo na nusu", "litro y medio"
    if !node.meaning.plural
        && let Some((fraction, sign, after)) = and_fraction(row, at + 1)
        && nodes.get(after).and_then(unit_of).is_none()
        && !matches!(unit, UnitWord::Unclear)
    {
        return Some((full(Number::plain(1.0 + sign * fraction), unit), after));
    }
    // "lit a fire", "the whole kitchen": a word that is a unit only where it is counted.
    if node.any(&Cues::of(&[Cue::Other, Cue::Cook, Cue::Modifier])) {
        return None;
    }
    match unit {
        UnitWord::Of(_) | UnitWord::Mass(_) | UnitWord::Volume(_) | UnitWord::Unclear => {
            let number = (!node.meaning.plural).then_some(Number::plain(1.0));
            Some((Quantity { number, unit: Some(unit), implied: true, sized: None }, at + 1))
        }
        _ => None,
    }
}

/// "1 kg 1/2": the fraction that ends an amount, where no unit or count of its own follows.
fn half_behind(row: &Row, at: usize) -> Option<f64> {
    let half = row.nodes.get(at)?.number().filter(|half| half.fraction && half.digits)?;
    let own = row.nodes.get(at + 1).is_some_and(|next| unit_of(next).is_some() || between(next) && !next.has(Cue::Of));
    (!own).then_some(half.value)
}

fn between(node: &Node) -> bool {
    node.kind == Kind::Phrase && node.any(&BETWEEN) && node.meaning.unit.is_none() && node.meaning.feed.is_none()
}

/// The number that follows the unit at `at` ("ndoo mbili", "lt15"), where it can be the unit's.
fn number_after(row: &Row, at: usize) -> Option<(Number, usize)> {
    let nodes = &row.nodes;
    let unit = nodes.get(at)?;
    let mut next = at + 1;
    while next < at + 2
        && nodes.get(next).is_some_and(|n| n.has(Cue::Modifier) && n.meaning.unit.is_none() && n.meaning.feed.is_none())
    {
        next += 1;
    }
    let number = nodes.get(next)?.number().filter(|number| !number.weak)?;
    let glued = nodes[next].glued && next == at + 1;
    // "dal ki katori 2": the number ends it.
    let ends =
        |node: &Node| node.mark().is_some() || node.kind == Kind::Phrase && node.any(&Cues::of(&[Cue::And, Cue::Put]));
    let behind = row.lexicon.habits.part == Side::After
        && number.digits
        && at > 0
        && nodes[at - 1].has(Cue::Of)
        && nodes.get(next + 1).is_none_or(ends);
    if row.lexicon.habits.number != Side::After && !(glued && number.digits) && !behind {
        return None;
    }
    if unit.meaning.letter && !glued {
        return None;
    }
    // The number is rather that of a unit stuck to it: "ndoo 3kg".
    if nodes.get(next + 1).is_some_and(|after| after.glued && unit_of(after).is_some()) {
        return None;
    }
    Some((number, next + 1))
}

fn small_part(big: UnitWord, small: UnitWord) -> bool {
    match (big, small) {
        (UnitWord::Mass(b), UnitWord::Mass(s))
        | (UnitWord::Volume(b), UnitWord::Volume(s))
        | (UnitWord::Time(b), UnitWord::Time(s)) => s < b,
        _ => false,
    }
}

/// "meat 1 kg and 200 g": a lesser amount that no food of its own follows.
fn nothing_named_after(row: &Row, at: usize) -> bool {
    let named = |node: &Node| node.has(Cue::Of) || node.has(Cue::Water) || node.unknown() || node.feed().is_some();
    !row.nodes.get(at + 1).is_some_and(named)
}

/// "1 kg 200 g", "1 hr 20 min", "1 hr 20".
fn sums(row: &mut Row) {
    let mut at = 0;
    while at + 1 < row.nodes.len() {
        let Some(first) = row.nodes[at].quantity() else {
            at += 1;
            continue;
        };
        let joint = Cues::of(&[Cue::And, Cue::With]);
        let small = |node: &Node| {
            node.quantity().is_some_and(|q| {
                q.number.is_some() && first.unit.zip(q.unit).is_some_and(|(big, small)| small_part(big, small))
            })
        };
        // "1 kg and 200 g of rice" is one amount, "rice 1 kg and 200 g beans" is two.
        let whole = || matches!(first.unit, Some(UnitWord::Time(_))) || of_what_follows(row, at, first);
        let ends = || row.nodes.get(at + 2).is_some_and(small) && nothing_named_after(row, at + 2);
        let joined = usize::from(row.nodes[at + 1].any(&joint) && (whole() || ends()));
        let second = row.nodes.get(at + 1 + joined);
        let add = match (first.unit, second.map(|node| (node.kind, node))) {
            (Some(big), Some((Kind::Quantity(second), _)))
                if !first.implied && !second.implied && second.unit.is_some_and(|small| small_part(big, small)) =>
            {
                second.in_base().zip(first.in_base()).map(|(small, big)| small + big)
            }
            (Some(UnitWord::Time(minutes)), Some((Kind::Number(number), node)))
                if minutes == 60.0
                    && (number.digits || number.value >= 5.0)
                    && number.value < 60.0
                    && number.value.fract() == 0.0
                    && !row
                        .nodes
                        .get(at + 2 + joined)
                        .is_some_and(|after| unit_of(after).is_some() || after.feed().is_some()) =>
            {
                let _ = node;
                first.in_base().map(|big| big + number.value)
            }
            (Some(_), Some((Kind::Number(number), node))) => thousandths(row, first, number, node, at + 2 + joined),
            _ => None,
        };
        if let (Some(total), Some(number)) = (add, first.number) {
            let unit = match first.unit {
                Some(UnitWord::Mass(_)) => UnitWord::Mass(1.0),
                Some(UnitWord::Volume(_)) => UnitWord::Volume(1.0),
                _ => UnitWord::Time(1.0),
            };
            let to = row.nodes[at + 1 + joined].to;
            let node = &mut row.nodes[at];
            node.kind = Kind::Quantity(Quantity {
                number: Some(Number { value: total, range: None, ..number }),
                unit: Some(unit),
                ..first
            });
            node.to = to;
            row.nodes.drain(at + 1..at + 2 + joined);
        } else {
            at += 1;
        }
    }
}
