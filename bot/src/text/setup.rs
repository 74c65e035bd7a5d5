//! What a household tells of itself once: tank, gas store, walls, people, place, measures, when it started.

use super::clauses::Clause;
use super::nodes::When;
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::About;
use bellyful_core::fact::{Walls, What};

impl Reader<'_> {
    pub fn set_up(&mut self, clause: &Clause) {
        self.people(clause);
        self.place(clause);
        if clause.plan || (clause.asks && !clause.has(Cue::Holds)) {
            return;
        }
        self.vessels(clause);
        self.place_of_the_tank(clause);
        self.measures(clause);
        self.in_litres_too(clause);
        self.walls(clause);
        self.started(clause);
    }
    fn walls(&mut self, clause: &Clause) {
        let about = clause.any(&Cues::of(&[Cue::Tank, Cue::Painted, Cue::NewTank]));
        for (cue, look, alone) in [
            (Cue::Insulated, Walls::Insulated, true),
            (Cue::Greenhouse, Walls::Greenhouse, true),
            (Cue::Heated, Walls::Heated, false),
            (Cue::Buried, Walls::Buried, false),
            (Cue::Black, Walls::Black, false),
            (Cue::White, Walls::White, false),
        ] {
            let said =
                |&at: &usize| self.has(at, cue) || self.has(at, Cue::Painted) && self.speaks_of(at, &Cues::of(&[cue]));
            let Some(at) = clause.range().find(said) else { continue };
            let other = clause.any(&Cues::of(&[Cue::Smell, Cue::Flame, Cue::FireWord, Cue::Slurry]));
            // "it is buried up to the neck": of what else would this text speak?
            let little = Cues::of(&[Cue::Is, Cue::In, Cue::To, Cue::Of, Cue::Buried, Cue::Chatter]);
            let only_buried = clause.range().all(|i| self.has(i, Cue::Buried));
            let itself = cue == Cue::Buried
                && (clause.has(Cue::Is) || only_buried && clause.to - clause.from > 1)
                && clause.range().all(|i| self.node(i).any(&little));
            let bare = clause.range().all(|i| i == at || self.node(i).any(&little))
                && self.clause_before(clause).is_some_and(|before| {
                    let tank = |told: &What| matches!(told, What::Tank { .. });
                    self.facts.iter().any(|(i, told)| before.range().contains(i) && tank(&told.what))
                });
            // "the tank is outside, it is white"
            let colour = Cues::of(&[Cue::Is, Cue::Chatter, Cue::Black, Cue::White]);
            let of_the_tank = clause.has(Cue::Is)
                && clause.range().all(|i| self.node(i).any(&colour))
                && self.clause_before(clause).is_some_and(|before| before.has(Cue::Tank));
            let of_it = alone || about || itself || bare || of_the_tank;
            if of_it && !other && !self.denied(clause, at) && !self.node(at).used {
                self.tell(at, None, What::Walls { look });
                self.use_up([at]);
            }
        }
    }

    /// "the tank is 3 months old", "1000 litre ki tanki, 3 mahine purani": a clause of its age and nothing else.
    fn aged(&mut self, clause: &Clause) {
        const TANK: Cues = Cues::of(&[Cue::Tank, Cue::NewTank]);
        /// Without a word for age, a shorter time is rather how long something has been so.
        const LONG: i32 = 14;
        // "a 1000 l tank, drum type, 8 weeks old"
        let before = |clause: &Clause| {
            let before = self.clause_before(clause);
            before.into_iter().chain(before.and_then(|before| self.clause_before(before))).any(|one| one.any(&TANK))
        };
        let word = clause.has(Cue::Aged);
        if !clause.any(&TANK) && !(word && before(clause)) {
            return;
        }
        let span = |at: &usize| match self.node(*at).when() {
            Some(When::Span(days)) if word || days >= LONG => Some((*at, days)),
            Some(When::Month(days)) => Some((*at, days)),
            _ => None,
        };
        let Some((at, days)) = clause.range().find_map(|at| span(&at)) else { return };
        let plain = |i: usize| {
            let node = self.node(i);
            node.used
                || i == at
                || node.any(&TANK.and(Cue::Aged))
                || self.joins(i) && !node.unknown() && !node.any(&Cues::of(&[Cue::With, Cue::Only]))
                || self.has(i, Cue::Since)
                || self.has(i, Cue::With) && i + 1 == at
        };
        if clause.range().all(plain) {
            self.tell(at, Some(-days), What::Started);
            self.use_up([at]);
        }
    }

    /// "started 3 weeks ago", "filled first in January".
    fn started(&mut self, clause: &Clause) {
        if clause.asks {
            return;
        }
        if !clause.any(&Cues::of(&[Cue::Start, Cue::NewTank])) {
            self.aged(clause);
            return;
        }
        let portion = clause.range().any(|at| {
            let node = self.node(at);
            !node.used
                && (node.feed().is_some()
                    || node
                        .quantity()
                        .is_some_and(|q| !q.implied && !matches!(q.unit, Some(UnitWord::Days(_) | UnitWord::Time(_)))))
        });
        if portion || !clause.has(Cue::Start) && !clause.has(Cue::NewTank) {
            return;
        }
        for at in clause.range() {
            let day = match self.node(at).when() {
                Some(When::Ago(days) | When::Span(days) | When::Since(days) | When::Month(days)) => -days,
                Some(When::Day(day)) if clause.has(Cue::Start) => day,
                Some(When::EitherWay(days)) if clause.has(Cue::Start) && clause.days.contains(&(at, -days)) => -days,
                _ => continue,
            };
            if let Some(vague) = self.node(at).quantity().filter(|q| q.number.is_none()) {
                let _ = vague;
                self.doubt(About::Day, at, at + 1);
                return;
            }
            self.tell(at, Some(day), What::Started);
            self.use_up([at]);
            return;
        }
    }
}
