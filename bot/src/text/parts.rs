//! Parts: what belongs to an amount though it stands apart from it, such as the grams after a whole kilo.
//!
//! Takes a row whose units are being joined; gives the amount with its part, the weight of so many sacks, or the half
//! of what is counted.

use super::nodes::{Kind, Node, Number, Quantity, Row};
use super::notions::{Cue, UnitWord};
use super::numbers::and_fraction;
use super::quantities::unit_of;
use super::sized::measure;

/// "3 pains et demi": the half of what is counted, where nothing of its own follows.
pub(super) fn halves(row: &mut Row) {
    for at in 0..row.nodes.len() {
        let counted = row.nodes.get(at).and_then(Node::number).filter(|n| n.value.fract() == 0.0 && n.range.is_none());
        let food = row.nodes.get(at + 1).is_some_and(|node| node.kind == Kind::Phrase && node.meaning.feed.is_some());
        let (Some(number), true) = (counted, food) else { continue };
        let Some((fraction, sign, after)) = and_fraction(row, at + 2) else { continue };
        let own = |node: &Node| unit_of(node).is_some() || node.has(Cue::Of) || node.meaning.feed.is_some();
        if !row.nodes.get(after).is_some_and(own) {
            let value = number.value + sign * fraction;
            row.nodes[at].kind = Kind::Number(Number { value, weak: false, ..number });
            row.nodes.drain(at + 2..after);
        }
    }
}

/// "2 kilos e 300 g de cascas": the joint is of one amount, where no food stands before it.
pub(super) fn of_what_follows(row: &Row, at: usize, first: Quantity) -> bool {
    let whole = matches!(first.unit, Some(UnitWord::Mass(_) | UnitWord::Volume(_)));
    whole && !row.nodes[..at].iter().rev().take_while(|node| node.mark().is_none()).any(|node| node.feed().is_some())
}

/// "3kg200 de bouse", "2 kilos 500", "1l5", "un kilo cinq cents": what follows a whole kilo or litre, and has no unit, is of its parts.
pub(super) fn thousandths(row: &Row, first: Quantity, number: Number, node: &Node, after: usize) -> Option<f64> {
    let whole = matches!(first.unit, Some(UnitWord::Mass(1.0) | UnitWord::Volume(1.0))) && !first.implied;
    let own = row.nodes.get(after).is_some_and(|next| unit_of(next).is_some());
    let hundreds = !number.fraction && !number.weak && number.value >= 100.0;
    let plain = (number.digits || hundreds) && number.range.is_none() && number.value.fract() == 0.0;
    if !whole || own || !plain || first.number?.value.fract() != 0.0 {
        return None;
    }
    let part = match number.value {
        parts if (100.0..1000.0).contains(&parts) || node.glued && (10.0..100.0).contains(&parts) && parts >= 50.0 => {
            parts / 1000.0
        }
        tenths if node.glued && (1.0..10.0).contains(&tenths) => tenths / 10.0,
        _ => return None,
    };
    first.in_base().map(|big| big + part)
}

/// "1 sack of rice of 25 kg", "a drum of dregs of 200 litres": the size of one, told after what is in it.
pub(super) fn sized_behind(row: &mut Row) {
    let of =
        |row: &Row, at: usize| row.nodes.get(at).is_some_and(|node| node.has(Cue::Of) && node.quantity().is_none());
    for at in 0..row.nodes.len() {
        let Some((quantity, _)) = row.nodes.get(at).and_then(measure) else { continue };
        let named = |node: &Node| node.kind == Kind::Phrase && (node.meaning.feed.is_some() || node.has(Cue::Water));
        // "2 buckets dung of 10 kg each"
        let what = at + 1 + usize::from(of(row, at + 1));
        let joined = of(row, what + 1);
        let size = row.nodes.get(what + 2).and_then(Node::quantity).filter(|q| !q.implied && q.sized.is_none());
        let Some(size) = size.filter(|_| joined) else { continue };
        let unit = match size.unit {
            Some(UnitWord::Mass(_)) => UnitWord::Mass(1.0),
            Some(UnitWord::Volume(_)) => UnitWord::Volume(1.0),
            _ => continue,
        };
        let (Some(count), Some(one)) = (quantity.amount(), size.in_base()) else { continue };
        if row.nodes.get(what).is_some_and(named) {
            let number = Some(Number::plain(count * one));
            row.nodes[at].kind = Kind::Quantity(Quantity { number, unit: Some(unit), implied: false, sized: None });
            row.nodes[at].meaning = Default::default();
            row.nodes.drain(what + 1..what + 3);
        }
    }
}

/// "2 sacks of 50 kg": the weight of one, how often.
pub(super) fn measure_of_mass(row: &Row, at: usize) -> Option<(f64, usize)> {
    let (quantity, _) = measure(row.nodes.get(at)?)?;
    let mass = row.nodes.get(at + 2).filter(|_| row.nodes[at + 1].has(Cue::Of))?.quantity()?;
    let weighed = matches!(mass.unit, Some(UnitWord::Mass(_))) && !mass.implied && mass.sized.is_none();
    let kilos = mass.in_base().filter(|_| weighed)?;
    Some((kilos * quantity.amount()?, at + 3))
}
