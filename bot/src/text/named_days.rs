//! Days named one by one: "fed 2 kg on Monday and Tuesday" is a portion of each.
//!
//! Takes the facts of all clauses; tells again, of the other days, what a clause tells of several days in a row.

use super::clauses::Clause;
use super::nodes::When;
use super::notions::Cue;
use super::reader::Reader;
use super::tokens::Mark;
use bellyful_core::fact::What;

impl Reader<'_> {
    pub fn on_named_days(&mut self) {
        for index in 0..self.clauses.len() {
            let days = self.named_together(index);
            if days.len() < 2 {
                continue;
            }
            let range = self.clauses[index].range();
            let here = |at: &usize| range.contains(at);
            let dated = |what: &What| {
                !matches!(what, What::Usual { .. } | What::Started | What::Sign { .. } | What::NotFed { .. })
            };
            let facts: Vec<_> = self.facts.iter().filter(|(at, told)| here(at) && dated(&told.what)).cloned().collect();
            let told_of = |day: &i32| facts.iter().any(|(_, told)| told.day == Some(*day));
            let several = days.iter().filter(|day| told_of(day)).count() > 1;
            for (at, told) in facts.iter().filter(|_| !several) {
                let Some(said) = told.day.filter(|said| days.contains(said)) else { continue };
                for &again in days.iter().filter(|&&day| day != said) {
                    self.tell(*at, Some(again), told.what.clone());
                }
            }
        }
    }

    /// The days that a clause names in a row, and those that the clauses after it, of nothing but days, go on with.
    fn named_together(&self, index: usize) -> Vec<i32> {
        let clause = &self.clauses[index];
        let joint = |at: usize| self.has(at, Cue::And) || self.node(at).mark() == Some(Mark::Slash);
        let many = clause.days.len() > 2;
        let beside = |one: usize, other: usize| other == one + 2 && joint(one + 1) || many && other == one + 1;
        if !clause.days.windows(2).all(|pair| beside(pair[0].0, pair[1].0) && pair[1].0 < clause.to) {
            return Vec::new();
        }
        let bare = |next: &&Clause| {
            let day = |at: usize| matches!(self.node(at).when(), Some(When::Day(_))) || joint(at);
            next.sentence == clause.sentence && next.range().all(day)
        };
        let ends_with_day = clause.days.last().is_some_and(|&(at, _)| at + 1 == clause.to);
        let more = self.clauses[index + 1..].iter().take_while(bare).filter(|_| ends_with_day);
        let mut days: Vec<i32> =
            clause.days.iter().chain(more.flat_map(|next| &next.days)).map(|&(_, day)| day).collect();
        days.dedup();
        days
    }
}
