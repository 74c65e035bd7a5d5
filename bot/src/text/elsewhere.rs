//! Elsewhere: what is said of other things than the digester: a roof that leaks, a cow that is ill, a bad road.
//!
//! Takes a clause and a place in it; says whether another thing is meant there. Tells no facts.

use super::clauses::Clause;
use super::nodes::Kind;
use super::notions::{BEASTS, Cue, Cues, OF_ORDERS, OF_PERIL, UnitWord};
use super::reader::Reader;
use super::reading::About;
use bellyful_core::fact::{Measure, Sign, What};
use bellyful_core::feeds::Feed;

impl Reader<'_> {
    /// "the road is bad", "a problem with my phone": an ordinary word stands where the digester could.
    pub fn said_of_another(&self, clause: &Clause, at: usize) -> bool {
        const JOINTS: Cues = Cues::of(&[Cue::Is, Cue::With, Cue::Of, Cue::My, Cue::Modifier, Cue::In]);
        let joint = |i: &usize| {
            let node = self.node(*i);
            node.number().is_some_and(|n| n.weak) || node.kind == Kind::Phrase && node.any(&JOINTS)
        };
        let before = (clause.from..at).rev().find(|i| !joint(i));
        let linked = at + 1 < clause.to && joint(&(at + 1));
        let after = (at + 1..clause.to).find(|i| !joint(i)).filter(|_| linked);
        before.is_some_and(|i| self.ordinary(i)) || after.is_some_and(|i| self.ordinary(i))
    }

    /// A word of daily life that is no matter of the digester's, a beast among them.
    pub fn ordinary(&self, at: usize) -> bool {
        const DAILY: Cues = OF_PERIL.and(Cue::Other).and(Cue::Figure).and(Cue::Burden).and(Cue::Drops);
        let node = self.node(at);
        let mut cues = node.meaning.cues;
        cues.remove_all(&OF_ORDERS);
        let spoken = cues.is_empty() && node.any(&OF_ORDERS);
        let daily = spoken || node.any(&DAILY) && cues.only(&DAILY);
        node.kind == Kind::Phrase && (daily || node.any(&BEASTS.and(Cue::NotOurs)))
    }

    /// "the cow fell sick": no person is, and no gas is spoken of.
    pub fn of_beast(&self, clause: &Clause, at: usize) -> bool {
        let gas = self.anywhere(&Cues::of(&[Cue::Gas, Cue::Smell, Cue::Leak, Cue::Hiss, Cue::FireWord]));
        let near = (at.saturating_sub(4).max(clause.from)..(at + 5).min(clause.to)).any(|i| self.node(i).any(&BEASTS));
        near && !gas
    }

    /// "a goat fell in the pit": nobody is unwell; whether it stayed in there, as feed, must be asked.
    pub fn beast_in_the_tank(&mut self, clause: &Clause) {
        const FALLS: Cues = Cues::of(&[Cue::Enters, Cue::Fell]);
        const INTO: Cues = Cues::of(&[Cue::In, Cue::To]);
        const MOUTH: Cues = Cues::of(&[Cue::Tank, Cue::Inlet]);
        const REACH: usize = 5;
        let Some(falls) = self.find(clause, &FALLS).filter(|&at| !self.node(at).used) else { return };
        let near = falls.saturating_sub(REACH).max(clause.from)..clause.to.min(falls + REACH + 1);
        let folk = Cues::of(&[Cue::Folk]);
        let one = |at: &usize| {
            let food = self.node(*at).feed().is_some() && !self.node(*at).any(&BEASTS);
            food || self.node(*at).any(&BEASTS) || self.speaks_of(*at, &folk)
        };
        let who = (near.start..falls).rev().find(one).or_else(|| (falls + 1..near.end).find(one));
        let mouth = near.clone().find(|&at| self.speaks_of(at, &MOUTH));
        let died = clause.has(Cue::Lifeless);
        let (Some(who), Some(mouth)) = (who, mouth.or(Some(falls).filter(|_| died))) else { return };
        let beast = self.node(who).any(&BEASTS)
            && !self.has(who, Cue::Dung)
            && !(who.min(falls)..who.max(falls)).any(|at| self.has(at, Cue::Put));
        let into = (mouth.min(falls)..=(mouth.max(falls) + 1).min(clause.to - 1)).any(|at| self.speaks_of(at, &INTO));
        if beast && into && !self.denied(clause, falls) {
            if died {
                let what = What::Fed { feed: Feed::Meat, amount: None, unit: None };
                self.tell(who, Some(clause.day(who)), what);
                self.use_up(clause.range().filter(|&at| self.has(at, Cue::Lifeless)).collect::<Vec<_>>());
            } else {
                self.doubt(About::Feed, who, who + 1);
            }
            self.use_up([who, falls]);
            // "and my son went in after it"
            let after = (falls.max(mouth) + 1..clause.to).skip_while(|&at| !self.speaks_of(at, &folk));
            if let Some(enters) = after.take(REACH).find(|&at| self.free(at, Cue::Enters)) {
                self.tell_sign(enters, clause.day(enters), Sign::Unwell);
                self.use_up([enters]);
            }
        }
    }

    /// Something that is not the digester's does the leaking.
    pub fn other_thing(&self, clause: &Clause) -> bool {
        clause.range().any(|i| {
            let node = self.node(i);
            let vessel = node.quantity().is_some_and(
                |q| matches!(q.unit, Some(UnitWord::Of(measure)) if !matches!(measure, Measure::Bag | Measure::Sack)),
            );
            node.unknown() || node.any(&Cues::of(&[Cue::BurnThing, Cue::NotOurs])) || vessel
        })
    }

    /// "3 cows", "the power went yesterday": said of what is no matter of the digester's.
    pub fn of_another(&self, at: usize) -> bool {
        let clause = self.clause_at(at);
        clause.is_some_and(|clause| {
            self.said_of_another(clause, at)
                || at + 1 < clause.to && (self.ordinary(at + 1) || self.has(at + 1, Cue::Tank))
                || (clause.from..clause.to).any(|i| i != at && self.ordinary(i) && self.row.is_long(self.node(i)))
        })
    }
}
