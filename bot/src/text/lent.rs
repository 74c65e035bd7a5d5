//! Lent: a day or a plan told in one clause holds in its neighbours too.

use super::clauses::Clause;
use super::nodes::{Node, Row, When};
use super::notions::{Cue, Cues};

pub(super) fn lend_days(row: &Row, clauses: &mut [Clause]) {
    let mut lent = None;
    for at in 0..clauses.len() {
        let clause = &mut clauses[at];
        // "pas alimenté depuis 4 jours" is up to now.
        let up_to_now = clause.has(Cue::PutNot)
            && clause.days.len() == 1
            && matches!(row.nodes[clause.days[0].0].when(), Some(When::Ago(_)));
        if let Some(&(_, day)) = clause.days.last().filter(|_| !up_to_now) {
            lent = Some(day);
        } else if clause.present
            || row.nodes[clause.range()].iter().any(|node| matches!(node.when(), Some(When::Since(_) | When::Span(_))))
        {
            lent = None;
        }
        clause.lent = lent;
    }
}

/// "2 sacks leaves, 3 jerrycans water, all yesterday": a day that ends its sentence alone is of all that it told.
pub(super) fn lend_to_all(row: &Row, clauses: &mut [Clause]) {
    const LITTLE: Cues = Cues::of(&[Cue::Some, Cue::ThatOne, Cue::Is, Cue::Was, Cue::Chatter, Cue::Morning]);
    for at in 1..clauses.len() {
        let here = &clauses[at];
        let [(_, day)] = here.days[..] else { continue };
        let ends = clauses.get(at + 1).is_none_or(|next| next.sentence != here.sentence);
        let alone = row.nodes[here.range()].iter().all(|node| node.when().is_some() || node.any(&LITTLE));
        let first = clauses.partition_point(|clause| clause.sentence < here.sentence);
        let open = clauses[first..at].iter().all(|before| before.days.is_empty() && !before.asks && !before.habit);
        if ends && alone && open {
            for before in &mut clauses[first..at] {
                before.lent = Some(day);
            }
        }
    }
}

/// "4 yams, cut up and put in last Wednesday": a doing and its day alone are of what was named just before.
pub(super) fn lend_back(row: &Row, clauses: &mut [Clause]) {
    const OTHER: Cues = Cues::of(&[Cue::Not, Cue::Nothing, Cue::PutNot, Cue::Gas, Cue::Flame, Cue::Cook, Cue::Smell]);
    let says = |node: &Node| {
        node.feed().is_some() || node.quantity().is_some() || node.number().is_some_and(|number| !number.weak)
    };
    for at in 1..clauses.len() {
        let (before, here) = (&clauses[at - 1], &clauses[at]);
        let [(_, day)] = here.days[..] else { continue };
        let alone = here.any(&Cues::of(&[Cue::Put, Cue::Fell])) && !here.any(&OTHER) && !here.asks && !here.plan;
        let open = before.days.is_empty() && before.sentence == here.sentence && !before.asks && !before.habit;
        let named = row.nodes[before.range()].iter().any(says);
        if alone && open && named && !row.nodes[here.range()].iter().any(says) {
            clauses[at - 1].lent = Some(day);
        }
    }
}

/// A plan goes on over commas until something done or now is said.
pub(super) fn spread_plans(row: &Row, clauses: &mut [Clause]) {
    for at in 1..clauses.len() {
        let (before, here) = (clauses[at - 1].clone(), &clauses[at]);
        let own = !here.days.is_empty()
            || here.present
            || here.any(&Cues::of(&[
                Cue::Put,
                Cue::PutNot,
                Cue::Cook,
                Cue::Gas,
                Cue::Flame,
                Cue::Smell,
                Cue::PeopleAre,
                Cue::LiveIn,
            ]));
        let bare =
            row.nodes[here.range()].iter().all(|node| node.meaning.sign.is_none() && node.meaning.control.is_none());
        if before.plan && before.sentence == here.sentence && !own && bare && !here.asks {
            clauses[at].plan = true;
        }
    }
}
