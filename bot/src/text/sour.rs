//! Sourness told as a state: "still sour", "the slurry is sour".

use super::clauses::Clause;
use super::notions::{Cue, Cues};
use super::reader::Reader;
use bellyful_core::fact::Sign;
use bellyful_core::feeds::Feed;

impl Reader<'_> {
    /// What is sour is the tank, where no food is named, nothing is put in and nothing is asked.
    pub fn sours(&mut self, clause: &Clause) {
        const MENDS: Cues = Cues::of(&[Cue::Mend, Cue::Soda, Cue::Lime]);
        const ELSEWHERE: Cues = Cues::of(&[Cue::Put]);
        let food = |i: usize| self.node(i).feed().is_some_and(|feed| feed != Feed::Digestate);
        // "added ash because it was sour": what is mended, told already.
        let sentence = self.sentence(clause);
        let mended = sentence.cues.any(&MENDS) || sentence.ash;
        if mended || clause.any(&ELSEWHERE) || clause.range().any(food) || clause.asks && !clause.has(Cue::Why) {
            return;
        }
        for at in clause.range() {
            if !self.free(at, Cue::Sour) {
                continue;
            }
            if !self.denied(clause, at) && !self.is_over(clause, at) {
                self.tell_sign(at, clause.day(at), Sign::SourSmell);
            }
            self.use_up([at]);
        }
    }
}
