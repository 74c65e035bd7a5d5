//! Places: where a family lives, a name as written.
//!
//! Takes a clause; tells the place that it names. A name is any word that is not listed, where a name should stand.

use super::clauses::Clause;
use super::nodes::Kind;
use super::notions::{Cue, Cues};
use super::reader::Reader;
use bellyful_core::fact::What;

impl Reader<'_> {
    /// "I live in Kisumu", "hum sikar se", "hamara gaon Rampur hai".
    pub(super) fn place(&mut self, clause: &Clause) {
        if clause.asks && !clause.has(Cue::LiveIn) {
            return;
        }
        for at in clause.range() {
            // "my hand hurts from stirring"
            // "spent grain from the brewing"
            let from = self.has(at, Cue::Since);
            let other = |i: usize| self.has(i, Cue::Body) || from && self.node(i).feed().is_some();
            if self.has(at, Cue::LiveIn) && !(clause.from..at).any(other) {
                let start = (at + 1..clause.to).find(|&i| !self.leads_to_name(i)).unwrap_or(clause.to);
                if let Some(end) = self.name_end(start, clause.to) {
                    self.name_place(start, end);
                    return;
                }
                // "moro no interior, em Quixadá"
                let next = self.clause_after(clause, clause.to).cloned();
                if let Some(next) = next.filter(|_| start == clause.to) {
                    let start = (next.from..next.to).find(|&i| !self.leads_to_name(i)).unwrap_or(next.to);
                    if let Some(end) = self.name_end(start, next.to) {
                        self.name_place(start, end);
                        return;
                    }
                }
            }
            let leads = || clause.from..at;
            // "pokhar se jalkumbhi dala", "usme se gas nikal rahi": where a thing comes from, not who tells of it.
            let bare = self.has(at, Cue::In) && (at + 1..clause.to).any(|i| self.is_told_of(i));
            let lives = self.has(at, Cue::LiveAfter) && !bare;
            let sure = !self.has(at, Cue::In);
            let typed = |i: usize| sure && self.row.misspelt(self.node(i));
            if lives && at > clause.from && !leads().any(|i| self.is_of_the_digester(i) && !typed(i)) {
                let end = (clause.from..at)
                    .rev()
                    .find(|&i| !self.node(i).has(Cue::In) && !self.node(i).has(Cue::Of))
                    .map_or(clause.from, |i| i + 1);
                let mut start = end;
                // Where people say that they live, what is a listed word only by a changed letter is a name.
                let name = |i: usize| self.nameable(i) || typed(i);
                while start > clause.from && name(start - 1) && end - start < 3 {
                    start -= 1;
                }
                if start < end {
                    self.name_place(start, end);
                    return;
                }
            }
        }
    }

    /// "new tank 1,000 L in Bulawayo": a name after "in", where the tank is told of.
    pub(super) fn place_of_the_tank(&mut self, clause: &Clause) {
        let told = |what: &What| matches!(what, What::Tank { .. } | What::Place { .. } | What::People { .. });
        let here: Vec<&What> =
            self.facts.iter().filter(|(at, _)| clause.range().contains(at)).map(|(_, told)| &told.what).collect();
        let place = self.facts.iter().any(|(_, told)| matches!(told.what, What::Place { .. }));
        let new = clause.has(Cue::NewTank) && !clause.asks;
        // "tank 1000 L, black, in Swabi"
        let sentence = self.sentence(clause);
        // A name that is a letter away from a word of ours is a name here.
        let near = |at: usize| self.row.misspelt(self.node(at)) && self.row.written_large(self.node(at));
        let alone =
            clause.range().all(|at| self.leads_to_name(at) || self.has(at, Cue::At) || self.nameable(at) || near(at))
                && self.facts.iter().any(|(at, fact)| (sentence.from..sentence.to).contains(at) && told(&fact.what));
        if place || !(new || alone || here.into_iter().any(told)) {
            return;
        }
        let name = |at: usize| self.node(at).unknown() && !self.node(at).used && self.row.written_large(self.node(at));
        let leads = Cues::of(&[Cue::In, Cue::At]);
        let named = |at: usize| name(at) || alone && near(at);
        let start = (clause.from + 1..clause.to).find(|&at| named(at) && self.node(at - 1).any(&leads));
        if let Some((start, end)) = start.and_then(|start| Some((start, self.name_end(start, clause.to)?))) {
            self.name_place(start, end);
        }
    }

    fn is_told_of(&self, at: usize) -> bool {
        let node = self.node(at);
        self.is_of_the_digester(at) || node.any(&Cues::of(&[Cue::Smell, Cue::Leak, Cue::Water]))
    }

    /// "tanki chhune se haath jalta hai": no place is named where the digester is spoken of.
    fn is_of_the_digester(&self, at: usize) -> bool {
        const THINGS: Cues = Cues::of(&[
            Cue::GasBag,
            Cue::Bag,
            Cue::Tank,
            Cue::Slurry,
            Cue::Pipe,
            Cue::Stove,
            Cue::Flame,
            Cue::Gas,
            Cue::Put,
        ]);
        let node = self.node(at);
        node.any(&THINGS) || node.feed().is_some() || node.meaning.sign.is_some()
    }

    fn leads_to_name(&self, at: usize) -> bool {
        let node = self.node(at);
        node.number().is_some_and(|n| n.weak)
            || node.kind == Kind::Phrase
                && node.any(&Cues::of(&[
                    Cue::In,
                    Cue::Of,
                    Cue::Region,
                    Cue::Is,
                    Cue::Colon,
                    Cue::With,
                    Cue::My,
                    Cue::LiveIn,
                    Cue::Holds,
                    Cue::To,
                ]))
    }

    fn nameable(&self, at: usize) -> bool {
        let node = self.node(at);
        node.unknown() && !node.used
            || node.kind == Kind::Phrase && node.has(Cue::Other) && self.row.capital(node) && !node.used
    }

    /// Where the name that starts at `start` ends, if one does.
    fn name_end(&self, start: usize, to: usize) -> Option<usize> {
        if start >= to {
            return None;
        }
        // The first word may be any that is written as a name or is not listed.
        // Where a name should stand, what is a listed word only by a changed letter is a name ("Kisumu", "kidumu").
        let node = self.node(start);
        let large = node.kind == Kind::Phrase && self.row.written_large(node);
        let first = self.nameable(start) || large || self.row.misspelt(node);
        if !first {
            return None;
        }
        let mut end = start + 1;
        while end < to && end < start + 4 {
            // "Pinar del Río", "Tierra del Fuego": written large on both sides, listed or not.
            let linked = self.node(end).has(Cue::Of) && end + 1 < to && {
                let next = self.node(end + 1);
                self.row.capital(next)
                    && (self.nameable(end + 1) || next.kind == Kind::Phrase && self.row.written_large(next))
            };
            if self.nameable(end) && (self.row.capital(self.node(end)) || !self.row.capital(self.node(start))) {
                end += 1;
            } else if linked {
                end += 2;
            } else if self.of_a_name(end) {
                end += 1;
            } else {
                break;
            }
        }
        Some(end)
    }

    /// "Pinar del Río", where "del río" is a phrase of ours: "of" and a word written large.
    fn of_a_name(&self, at: usize) -> bool {
        let of = self.row.words_of(at).next().is_some_and(|word| word.cues.has(Cue::Of));
        let said = self.row.said(at, at + 1);
        let large = |word: &str| word.starts_with(char::is_uppercase);
        of && said.split_once(' ').is_some_and(|(of, name)| !large(of) && large(name))
    }

    fn name_place(&mut self, start: usize, end: usize) {
        let name = self.row.said(start, end);
        self.tell(start, None, What::Place { name });
        self.use_up(start..end);
    }
}
