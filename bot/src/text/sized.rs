//! Sized: a measure with its size said, which is litres or kilograms: "20 L jerrycan", "bucket of 15 litres".

use super::nodes::{Kind, Node, Number, Quantity, Row};
use super::notions::{Cue, UnitWord};
use super::parts::measure_of_mass;
use super::tokens::Mark;
use super::wordlist::Side;
use bellyful_core::fact::Measure;

/// A measure with its size: "two 5-litre buckets", "2 buckets of 20 litres", "20 litre wali balti".
pub(super) fn sized(row: &mut Row) {
    let mut out: Vec<Node> = Vec::with_capacity(row.nodes.len());
    let mut at = 0;
    while at < row.nodes.len() {
        let mut node = row.nodes[at];
        let mut next = at + 1;
        let count = node.number().filter(|number| !number.weak);
        let volume_at = if count.is_some() || node.number().is_some() { after_article(row, at + 1) } else { at };
        if let Some((one, times, measure, end)) = volume_measure(row, volume_at) {
            // "20 litre wale dabbe se ek dabba": the size, then how many.
            let (times, end) = match (row.nodes.get(end), row.nodes.get(end + 1).and_then(self::measure)) {
                (Some(by), Some((used, same))) if by.has(Cue::In) && same == measure => {
                    (times * used.amount().unwrap_or(1.0), end + 2)
                }
                _ => (times, end),
            };
            let times = times * count.map_or(1.0, |number| number.value);
            node.kind = Kind::Quantity(litre_quantity(one, times, measure));
            node.meaning = Default::default();
            next = end;
        } else if let Some((one, times, measure, end)) = measure_of_volume(row, at) {
            node.kind = Kind::Quantity(litre_quantity(one, times, measure));
            node.meaning = Default::default();
            next = end;
        } else if let Some((kilos, end)) = measure_of_mass(row, at).or_else(|| mass_measure(row, at)) {
            let number = Some(Number::plain(kilos));
            node.kind =
                Kind::Quantity(Quantity { number, unit: Some(UnitWord::Mass(1.0)), implied: false, sized: None });
            node.meaning = Default::default();
            next = end;
        }
        node.to = row.nodes[next - 1].to;
        out.push(node);
        at = next;
    }
    row.nodes = out;
}

pub(super) fn after_article(row: &Row, at: usize) -> usize {
    at + usize::from(row.nodes.get(at).is_some_and(|node| node.number().is_some_and(|n| n.weak)))
}

pub(super) fn litre_quantity(one: f64, times: f64, measure: Measure) -> Quantity {
    Quantity {
        number: Some(Number::plain(one * times)),
        unit: Some(UnitWord::Volume(1.0)),
        implied: false,
        sized: Some((measure, one)),
    }
}

pub(super) fn volume(node: &Node) -> Option<f64> {
    let quantity = node.quantity()?;
    matches!(quantity.unit, Some(UnitWord::Volume(_)))
        .then(|| quantity.in_base())
        .flatten()
        .filter(|_| quantity.sized.is_none())
}

pub(super) fn measure(node: &Node) -> Option<(Quantity, Measure)> {
    let quantity = node.quantity()?;
    match quantity.unit? {
        UnitWord::Of(measure) => Some((quantity, measure)),
        // "un galón de 20 litros": a can, and no gallon.
        UnitWord::Volume(by) if by > 3.0 && by < 20.0 => Some((quantity, Measure::Jerrycan)),
        // A vessel of no fixed size that is told by its litres ("um galão de 20 litros") is nearest to a jerrycan.
        UnitWord::Unclear => Some((quantity, Measure::Jerrycan)),
        _ => None,
    }
}

/// "5 litre bucket(s)", "20 litre wali balti": litres of one, how many, which measure, and the node after.
pub(super) fn volume_measure(row: &Row, at: usize) -> Option<(f64, f64, Measure, usize)> {
    let litres = volume(row.nodes.get(at)?).filter(|_| !row.nodes[at].quantity().is_some_and(|q| q.implied))?;
    let mut next = at + 1;
    let mut by = 1.0;
    // "20 litre ke do dibbe": where "of" stands behind, it says whose size it is.
    let behind = row.lexicon.habits.negation == Side::After && row.lexicon.habits.part == Side::After;
    let linked = row
        .nodes
        .get(next)
        .is_some_and(|node| node.has(Cue::Sized) || node.mark() == Some(Mark::Dash) || behind && node.has(Cue::Of));
    if linked {
        next += 1;
    }
    let (quantity, unit) = measure(row.nodes.get(next)?)?;
    if !quantity.implied {
        // "20 litre wali 2 balti"
        if !linked {
            return None;
        }
        by = quantity.amount()?;
    }
    Some((litres, by, unit, next + 1))
}

/// "5 kg ke 2 thaile", "2 kilo wala packet": kilos of so many, and the node after.
pub(super) fn mass_measure(row: &Row, at: usize) -> Option<(f64, usize)> {
    let quantity = row.nodes.get(at)?.quantity().filter(|q| !q.implied && matches!(q.unit, Some(UnitWord::Mass(_))))?;
    let behind = row.lexicon.habits.negation == Side::After && row.lexicon.habits.part == Side::After;
    let link = row.nodes.get(at + 1).filter(|_| behind)?;
    let (vessels, _) = measure(row.nodes.get(at + 2)?)?;
    let linked = link.has(Cue::Sized) || link.has(Cue::Of) && !vessels.implied;
    linked.then_some(())?;
    Some((quantity.in_base()? * vessels.amount()?, at + 3))
}

/// "2 buckets of 20 litres".
pub(super) fn measure_of_volume(row: &Row, at: usize) -> Option<(f64, f64, Measure, usize)> {
    let (quantity, unit) = measure(row.nodes.get(at)?)?;
    let mut next = at + 1;
    // "dumu la" may be one listed phrase.
    let of = row.nodes.get(next)?.has(Cue::Of) || row.words_of(at).any(|word| word.cues.has(Cue::Of));
    // "2 buckets (20 L each)"
    let each = row.nodes[next].mark() == Some(Mark::Comma) && row.nodes.get(next + 2).is_some_and(|n| n.has(Cue::Each));
    if each && !quantity.implied {
        let litres = volume(&row.nodes[next + 1])?;
        let closed = row.nodes.get(next + 3).is_some_and(|n| n.mark() == Some(Mark::Comma));
        return Some((litres, quantity.amount()?, unit, next + 3 + usize::from(closed)));
    }
    if !of {
        return None;
    }
    while row.nodes.get(next).is_some_and(|node| node.has(Cue::Of)) && next < at + 3 {
        next += 1;
    }
    let litres = volume(row.nodes.get(next)?).filter(|_| !row.nodes[next].quantity().is_some_and(|q| q.implied))?;
    Some((litres, quantity.amount()?, unit, next + 1))
}
