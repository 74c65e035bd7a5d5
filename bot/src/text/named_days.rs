//! Days named one by one: "fed 2 kg on Monday and Tuesday" is a portion of each.
//!
//! Takes the facts of all clauses; tells again, of the other days, what a clause tells of several days in a row.

use super::clauses::Clause;
use super::notions::Cue;
use super::reader::Reader;
use super::tokens::Mark;
use bellyful_core::fact::What;

impl Reader<'_> {
    pub fn on_named_days(&mut self) {
        for index in 0..self.clauses.len() {
            let clause = &self.clauses[index];
            let [(first, day), (_, other)] = clause.days[..] else { continue };
            if day == other || !self.named_together(clause, first) {
                continue;
            }
            let range = clause.range();
            let here = |at: &usize| range.contains(at);
            let dated = |what: &What| {
                !matches!(what, What::Usual { .. } | What::Started | What::Sign { .. } | What::NotFed { .. })
            };
            let facts: Vec<_> = self.facts.iter().filter(|(at, told)| here(at) && dated(&told.what)).cloned().collect();
            let both = facts.iter().any(|(_, told)| told.day == Some(day))
                && facts.iter().any(|(_, told)| told.day == Some(other));
            for (at, told) in facts.into_iter().filter(|_| !both) {
                let again = if told.day == Some(day) { other } else { day };
                if told.day.is_some_and(|said| said == day || said == other) {
                    self.tell(at, Some(again), told.what);
                }
            }
        }
    }

    /// Nothing but a joint stands between the day at `first` and the next.
    fn named_together(&self, clause: &Clause, first: usize) -> bool {
        let joint = |at: usize| self.has(at, Cue::And) || self.node(at).mark() == Some(Mark::Slash);
        clause.days.get(1).is_some_and(|&(second, _)| second == first + 2 && joint(first + 1) && second < clause.to)
    }
}
