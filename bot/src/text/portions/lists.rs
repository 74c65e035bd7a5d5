//! Lists: clauses that go on with the list of the one before, or with its measure.
//!
//! Takes clauses; says which belong together. Tells no facts.

use super::super::clauses::Clause;
use super::super::nodes::Kind;
use super::super::notions::{Cue, Cues};
use super::super::reader::Reader;
use super::super::reading::Told;
use bellyful_core::fact::{Unit, What};

impl Reader<'_> {
    /// "potato, yuca and camote": a bare food after a comma, in a list that an "and" closes.
    pub(super) fn goes_on(&self, first: usize, next: usize) -> bool {
        let (head, tail) = (&self.clauses[first], &self.clauses[next]);
        if head.sentence != tail.sentence
            || tail.from != self.clauses[next - 1].to + 1
            || tail.asks
            || head.asks
            || tail.plan != head.plan
            || !tail.days.is_empty()
        {
            return false;
        }
        let bare = |clause: &Clause| {
            let last = clause.range().rev().find(|&at| self.node(at).feed().is_some());
            // "dal aur aloo mila ke dala": what follows the list says what was done with it.
            let tail = last.map_or(0..0, |last| last + 1..clause.to);
            let plain = |at: usize| self.node(at).kind == Kind::Phrase && self.node(at).meaning.sign.is_none();
            last.is_some()
                && tail.clone().all(plain)
                && (clause.from..last.map_or(clause.to, |last| last + 1)).all(|at| {
                    let node = self.node(at);
                    node.kind == Kind::Phrase
                        && (node.feed().is_some()
                            || node.any(&Cues::of(&[Cue::And, Cue::Of, Cue::Modifier, Cue::Other])))
                })
        };
        let closes = (next..self.clauses.len().min(next + 6))
            .take_while(|&i| bare(&self.clauses[i]))
            .any(|i| self.clauses[i].has(Cue::And));
        // "rice, beans and cabbage 3 kg": the amount of them all stands at the end.
        let measured =
            |at: usize| self.node(at).quantity().is_some() || self.node(at).number().is_some_and(|n| !n.weak);
        let amount = |clause: &Clause| {
            let at = clause.range().find(|&at| measured(at))?;
            let mut list = clause.clone();
            list.to = at;
            let rest = at + 1..clause.to;
            let plain =
                rest.clone().all(|at| self.node(at).feed().is_none() && !measured(at) && !self.has(at, Cue::Water));
            (plain && list.has(Cue::And) && bare(&list)).then_some(())
        };
        let unmeasured = |clause: &Clause| !clause.range().any(measured);
        let sums_up = (next..self.clauses.len().min(next + 6))
            .find(|&i| !(bare(&self.clauses[i]) && !self.clauses[i].has(Cue::And)))
            .is_some_and(|i| self.clauses[i].sentence == head.sentence && amount(&self.clauses[i]).is_some());
        // "dung and water, 1 bucket each"
        let each = tail.has(Cue::Each)
            && unmeasured(head)
            && tail.range().all(|at| measured(at) || self.node(at).any(&Cues::of(&[Cue::Each, Cue::Of])));
        (each || bare(tail) && closes || sums_up && unmeasured(head))
            && head.range().any(|at| self.node(at).feed().is_some())
    }

    /// "two buckets of dung, two of water": the measures of the clause before.
    pub(super) fn unit_before(&self, clause: &Clause) -> Option<Unit> {
        let whole = |at: usize| self.node(at).number().is_some_and(|n| !n.weak && !n.fraction);
        let before = self.clause_before(clause).filter(|before| before.to + 1 == clause.from && whole(clause.from))?;
        let unit = |told: &Told| match told.what {
            What::Fed { unit, .. } | What::Water { unit, .. } => unit,
            _ => None,
        };
        self.facts.iter().rev().filter(|(at, _)| before.range().contains(at)).find_map(|(_, told)| unit(told))
    }
}
