//! Peril told sideways: somebody in the tank, fire along a pipe.
//!
//! Takes a clause; tells the danger that its words make together, where no listed phrase says it.

use super::clauses::Clause;
use super::nodes::Kind;
use super::notions::{Cue, Cues};
use super::reader::Reader;
use bellyful_core::fact::Sign;

impl Reader<'_> {
    /// "two men went down into the tank": somebody, then what takes them in, and the tank on either side of it.
    pub fn in_the_tank(&mut self, clause: &Clause) {
        const REACH: usize = 5;
        if clause.plan || clause.asks && !clause.has(Cue::Why) || !clause.has(Cue::Folk) {
            return;
        }
        let Some(enters) = clause.range().find(|&at| self.free(at, Cue::Enters)) else { return };
        // "my son says a spoon fell in": the spoon did.
        let things = |from: usize| {
            (from + 1..enters).any(|at| self.node(at).feed().is_some() || self.node(at).quantity().is_some())
        };
        let folk = (clause.from..enters).rev().take(REACH).find(|&at| self.has(at, Cue::Folk) && !things(at));
        // "dans la cuve": the tank and what leads into it may be within a phrase.
        let says = |at: usize, cue: Cue| self.has(at, cue) || self.row.words_of(at).any(|m| m.cues.has(cue));
        let tank = (folk.unwrap_or(enters)..clause.to.min(enters + REACH)).find(|&at| says(at, Cue::Tank));
        // "went down to the tank" is to feed it.
        let tank = tank.is_some_and(|tank| (tank.min(enters)..=tank.max(enters)).any(|at| says(at, Cue::In)));
        let Some(folk) = folk.filter(|_| tank) else { return };
        if !self.denied(clause, enters) && !self.denied(clause, folk) {
            self.tell_sign(enters, clause.day(enters), Sign::Unwell);
            // "two men": no count of who lives here.
            self.use_up(folk.saturating_sub(1).max(clause.from)..=enters);
        }
    }

    /// "smoke and fire from the hose", "fire all along the pipe": no fire belongs there.
    pub fn fire_on_the_pipe(&mut self, clause: &Clause) {
        const ON: Cues = Cues::of(&[Cue::Pipe, Cue::GasBag, Cue::Bag]);
        // What is said of the flame on the stove.
        const STOVE: Cues = Cues::of(&[
            Cue::Blue,
            Cue::Yellow,
            Cue::Weak,
            Cue::NoLight,
            Cue::GoesOut,
            Cue::Lights,
            Cue::Stove,
            Cue::Cook,
            Cue::Water,
            Cue::Blocked,
            Cue::Flame,
        ]);
        const LINKS: Cues = Cues::of(&[Cue::In, Cue::Of, Cue::To, Cue::ComesOut, Cue::Escape, Cue::With]);
        const REACH: usize = 5;
        let Some(fire) = clause.range().find(|&at| self.free(at, Cue::FireWord)) else { return };
        let levelled = clause.range().any(|at| self.node(at).meaning.level.is_some());
        if clause.any(&STOVE) || levelled || clause.plan || clause.asks && !clause.has(Cue::Why) {
            return;
        }
        let near = fire.saturating_sub(REACH).max(clause.from)..clause.to.min(fire + REACH + 1);
        let Some(on) = near.clone().find(|&at| self.node(at).any(&ON) && self.node(at).kind == Kind::Phrase) else {
            return;
        };
        let linked = clause.has(Cue::Smoke) || (on.min(fire)..=on.max(fire)).any(|at| self.node(at).any(&LINKS));
        if linked && !self.denied(clause, fire) && !self.is_over(clause, fire) {
            self.tell_sign(fire, clause.day(fire), Sign::Fire);
            self.use_up([fire]);
        }
    }
}
