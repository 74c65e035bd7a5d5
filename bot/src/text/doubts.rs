//! Doubts: what could be meant two ways or not at all, once all else is read.

use super::clauses::Clause;
use super::nodes::{Kind, When};
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::{About, Told, Unsure};
use bellyful_core::fact::What;
use std::ops::Range;

impl Reader<'_> {
    /// What is left: a text that says nothing that can be placed.
    pub fn doubts(&mut self) {
        self.unclear_days();
        let nothing = self.facts.is_empty() && self.asks.is_empty() && self.control.is_none() && self.unsure.is_empty();
        if !nothing || self.for_household.is_some() && self.row.words < 3 {
            return;
        }
        let planned = self.clauses.iter().any(|clause| clause.plan);
        let denied = self.anywhere(&Cues::of(&[Cue::Not, Cue::Without, Cue::Nothing]));
        if planned || denied && self.row.known * 2 > self.row.words {
            return;
        }
        let bare = (0..self.row.nodes.len()).find(|&at| {
            let said = self.node(at).number().is_some_and(|n| !n.weak)
                || self.node(at).quantity().is_some_and(|q| {
                    // "the pipe is 2 inches"
                    !q.implied && q.unit.is_some_and(|unit| !matches!(unit, UnitWord::Pressure(_)))
                });
            said && !self.node(at).used && !self.of_another(at) && !self.is_phone_or_clock(at)
        });
        let time = (0..self.row.nodes.len()).find(|&at| self.node(at).when().is_some() && !self.of_another(at));
        let content = self.row.nodes.iter().filter(|node| node.kind == Kind::Unknown).count();
        if let Some(at) = bare.filter(|_| self.row.words <= 3 || content == 0 && self.row.words <= 4) {
            self.doubt(About::Amount, at, at + 1);
        } else if let Some(at) = time.filter(|_| content == 0 && (self.row.words <= 3 || self.only_time_said())) {
            self.doubt(About::Day, at, at + 1);
        } else if self.row.words > 0 && self.row.known * 5 < self.row.words * 2 {
            let last = self.row.nodes.len();
            let said = self.row.said(0, last);
            self.unsure.push(Unsure { about: About::Word, said });
        }
    }

    /// "il y a 3 semaines": a bare answer of more words.
    pub(super) fn only_time_said(&self) -> bool {
        const LITTLE: Cues = Cues::of(&[Cue::Ago, Cue::Since, Cue::About, Cue::Chatter, Cue::Is]);
        self.row.nodes.iter().all(|node| node.when().is_some() || node.mark().is_some() || node.any(&LITTLE))
    }

    /// "0712345678", "at 6": no amount.
    pub(super) fn is_phone_or_clock(&self, at: usize) -> bool {
        let phone = self.row.figures(self.node(at)).is_some_and(|f| f.len() >= 7 || f.len() >= 5 && f.starts_with('0'));
        phone || self.has(at + 1, Cue::At) || at > 0 && self.has(at - 1, Cue::At)
    }

    /// What was done on a day, and is told for its amount.
    pub(super) fn of_a_day(told: &Told) -> bool {
        matches!(told.what, What::Fed { .. } | What::Water { .. } | What::Burned { .. } | What::NotFed { .. })
    }

    /// "Monday or Tuesday, I forget which": neither is guessed.
    pub(super) fn one_of_two_days(&mut self) {
        let day = |at: usize| self.row.nodes.get(at).and_then(|node| node.when());
        let either = (0..self.row.nodes.len()).find_map(|or| {
            let named = |at: &usize| matches!(day(*at), Some(When::Day(_)));
            let first = or.checked_sub(1).filter(named)?;
            // "neither yesterday nor today" names both.
            let choice = self.has(or, Cue::Or) && !self.has(or, Cue::Not);
            let second = (or + 1..or + 3).find(named).filter(|_| choice)?;
            (day(first) != day(second)).then_some((first, second))
        });
        let Some((first, second)) = either else { return };
        // "didn't feed yesterday or today" denies both.
        let denied = |clause: &Clause| {
            let not = |at: usize| self.has(at, Cue::PutNot) || self.has(at, Cue::Put) && self.denied(clause, at);
            clause.range().any(not)
        };
        let Some(clause) = self.clause_at(first).filter(|clause| !denied(clause)) else { return };
        let sentence = self.sentence(clause);
        self.doubt_the_day(sentence.from..sentence.to, first..second + 1);
    }

    /// What was done in `told` is not taken as said, for its day, named in `said`, is open.
    pub(super) fn doubt_the_day(&mut self, told: Range<usize>, said: Range<usize>) {
        let before = self.facts.len();
        self.facts.retain(|(at, fact)| !(told.contains(at) && Self::of_a_day(fact)));
        if self.facts.len() < before {
            self.doubt(About::Day, said.start, said.end);
        }
    }

    /// A fact on a day that could be yesterday or tomorrow is a doubt.
    pub(super) fn unclear_days(&mut self) {
        self.one_of_two_days();
        for index in 0..self.clauses.len() {
            let clause = self.clauses[index].clone();
            if clause.plan || clause.asks {
                continue;
            }
            let open = clause.range().find(|&i| {
                matches!(self.node(i).when(), Some(When::EitherWay(_))) && !clause.days.iter().any(|&(at, _)| at == i)
            });
            let vague = clause.range().find(|&i| self.has(i, Cue::PastDay) && !self.node(i).used);
            let Some(at) = open.or(vague) else { continue };
            self.doubt_the_day(clause.range(), at..at + 1);
        }
    }
}
