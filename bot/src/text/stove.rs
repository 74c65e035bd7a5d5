//! Gas and stove: how full the bag is, how the flame looks.

use super::clauses::Clause;
use super::nodes::{Kind, Node, Quantity};
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::Told;
use bellyful_core::fact::{FlameLook, GasLevel, Sign, What};

pub(super) const FLAMES: Cues = Cues::of(&[Cue::Flame, Cue::FireWord]);

impl Reader<'_> {
    pub fn flame(&mut self, clause: &Clause) {
        if clause.plan || clause.has(Cue::How) && clause.has(Cue::AskDigestate) {
            return;
        }
        let flame = clause.any(&FLAMES) || self.flame_goes_on(clause);
        let stove = clause.any(&Cues::of(&[Cue::Stove, Cue::Lights]))
            || clause.has(Cue::Burning) && !clause.has(Cue::BurnThing);
        let earlier = self.anywhere(&FLAMES);
        let cooks = self.anywhere(&Cues::of(&[Cue::Stove, Cue::Gas, Cue::GasBag, Cue::Pipe, Cue::Lights]))
            || self.only_no_light(clause);
        for at in clause.range() {
            let node = *self.node(at);
            if node.used || node.meaning.feed.is_some() && !node.has(Cue::Yellow) {
                continue;
            }
            // "a small boy got burnt lighting the stove"
            if self.said_of_folk(clause, at) {
                continue;
            }
            let colour = node.has(Cue::Blue) || node.has(Cue::Yellow);
            // "chhoti si aag lag gayi": a small fire is no weak flame.
            let fire = |i: usize| self.node(i).meaning.sign == Some(Sign::Fire) && self.node(i).kind == Kind::Phrase;
            if node.any(&Cues::of(&[Cue::Weak])) && (at + 1..clause.to).any(fire) {
                continue;
            }
            let look = if node.has(Cue::NoLight) && (flame || stove || cooks || earlier)
                || node.has(Cue::Lights) && self.denied(clause, at) && (flame || stove || cooks || earlier)
            {
                FlameLook::WillNotLight
            } else if node.has(Cue::GoesOut) && (flame || stove || earlier || cooks) && !self.put_out_at(clause, at) {
                FlameLook::GoesOut
            } else if colour && (flame || stove || earlier) && !self.coloured_other(clause, at) {
                if node.has(Cue::Blue) { FlameLook::Blue } else { FlameLook::Yellow }
            } else if (node.has(Cue::Weak) || node.meaning.level == Some(GasLevel::Low))
                && self.near_flame(clause, at, flame, stove)
            {
                FlameLook::Weak
            } else {
                continue;
            };
            if !node.has(Cue::NoLight) && !node.has(Cue::Lights) && self.denied(clause, at) {
                self.use_up([at]);
                continue;
            }
            self.tell(at, Some(clause.day(at)), What::Flame { look });
            self.use_up([at]);
            let words: Vec<usize> = clause.range().filter(|&i| self.node(i).any(&FLAMES)).collect();
            self.use_up(words);
        }
    }

    /// "blue flame but small", "... on Sunday, weak yesterday": a clause of nothing but a look, after one of the flame.
    fn flame_goes_on(&self, clause: &Clause) -> bool {
        const LOOKS: Cues = Cues::of(&[
            Cue::Weak,
            Cue::Blue,
            Cue::Yellow,
            Cue::GoesOut,
            Cue::Is,
            Cue::Was,
            Cue::Now,
            Cue::Still,
            Cue::Chatter,
            Cue::And,
            Cue::Modifier,
            Cue::Some,
            Cue::About,
            Cue::Morning,
        ]);
        let before = self.clause_before(clause).filter(|before| !before.any(&Cues::of(&[Cue::Gas, Cue::GasBag])));
        let told = before.is_some_and(|before| {
            let look = |told: &Told| matches!(told.what, What::Flame { .. });
            self.facts.iter().any(|(at, told)| before.range().contains(at) && look(told))
        });
        told && clause.range().all(|at| {
            let node = self.node(at);
            node.when().is_some()
                || node.any(&LOOKS) && node.feed().is_none()
                || node.meaning.level == Some(GasLevel::Low)
        })
    }

    /// "lit at 18.10, out at 18.55": when the cooking was over.
    fn put_out_at(&self, clause: &Clause, at: usize) -> bool {
        let hour = |i: usize| {
            let time = |q: Quantity| !q.implied && matches!(q.unit, Some(UnitWord::Time(_)));
            self.node(i).number().is_some() || self.node(i).quantity().is_some_and(time)
        };
        clause.any(&Cues::of(&[Cue::Cook, Cue::Lights]))
            && at + 2 < clause.to
            && self.has(at + 1, Cue::At)
            && hour(at + 2)
    }

    /// "small boy": what the word right before somebody says is of them, or of a thing that burns.
    pub(super) fn said_of_folk(&self, clause: &Clause, at: usize) -> bool {
        let another =
            |node: &Node| node.any(&Cues::of(&[Cue::Folk, Cue::BurnThing])) || node.meaning.sign == Some(Sign::Unwell);
        at + 1 < clause.to && another(self.node(at + 1))
    }

    /// "was blue then turned yellow", "from blue to yellow": a look that gave way to another told later is no more.
    pub fn flame_turned(&mut self) {
        let flame = |told: &Told| if let What::Flame { look } = told.what { Some((told.day, look)) } else { None };
        let looks: Vec<_> = self.facts.iter().filter_map(|(at, told)| Some((*at, flame(told)?))).collect();
        let gave_way = |at: usize, day: Option<i32>, look: FlameLook| {
            let before = |cues: &[Cue]| at > 0 && self.node(at - 1).any(&Cues::of(cues));
            let was = before(&[Cue::Was, Cue::Since]) && !before(&[Cue::Is]);
            let later = |&(other, said): &(usize, (Option<i32>, FlameLook))| {
                other > at && said.0 == day && said.1 != look && self.same_sentence(at, other)
            };
            was && looks.iter().any(later)
        };
        let kept = |(at, told): &(usize, Told)| flame(told).is_none_or(|(day, look)| !gave_way(*at, day, look));
        let facts = self.facts.iter().filter(|told| kept(told)).cloned().collect();
        self.facts = facts;
    }

    fn same_sentence(&self, one: usize, other: usize) -> bool {
        let of = |at: usize| self.clause_at(at).map(|clause| clause.sentence);
        of(one) == of(other)
    }

    /// "won't light this morning", with nothing named: of all that is told here, there is only the stove.
    fn only_no_light(&self, clause: &Clause) -> bool {
        const BESIDE: Cues = Cues::of(&[
            Cue::NoLight,
            Cue::GoesOut,
            Cue::Chatter,
            Cue::Is,
            Cue::Now,
            Cue::Still,
            Cue::Again,
            Cue::Morning,
        ]);
        clause.any(&Cues::of(&[Cue::NoLight, Cue::GoesOut]))
            && clause.range().all(|i| self.node(i).when().is_some() || self.node(i).any(&BESIDE))
    }

    /// A colour said of the slurry, the tank or a food.
    fn coloured_other(&self, clause: &Clause, at: usize) -> bool {
        const OTHERS: Cues = Cues::of(&[Cue::Slurry, Cue::Water, Cue::Painted]);
        // "lau ka rang laal hai": the flame's own colour.
        let own = |i: usize| {
            i >= clause.from + 2
                && self.has(i, Cue::Painted)
                && self.has(i - 1, Cue::Of)
                && self.node(i - 2).any(&FLAMES)
        };
        let near = |cues: &Cues| {
            clause
                .range()
                .filter(|&i| self.node(i).any(cues) && !own(i))
                .map(|i| i.abs_diff(at))
                .min()
                .unwrap_or(usize::MAX)
        };
        let flame = near(&Cues::of(&[Cue::Flame, Cue::FireWord, Cue::Stove, Cue::Burning]));
        let food = (at + 1 < clause.to && self.node(at + 1).feed().is_some())
            // "lau puri neeli": a word that is a food as well, right behind the flame.
            || (at > clause.from
                && self.node(at - 1).feed().is_some()
                && !(at > clause.from + 1 && self.node(at - 2).any(&FLAMES)));
        food || near(&OTHERS) < flame
    }

    /// Whether "weak" or "low" at `at` is said of the flame rather than of the gas.
    pub(super) fn near_flame(&self, clause: &Clause, at: usize, flame: bool, stove: bool) -> bool {
        let weak = self.node(at).has(Cue::Weak);
        if !flame && !(stove && weak) {
            return false;
        }
        if !clause.any(&FLAMES) && flame {
            return true;
        }
        let near = |cues: &Cues| {
            let before = (clause.from..at).rev().find(|&i| self.node(i).any(cues)).map(|i| at - i);
            let after = (at + 1..clause.to).find(|&i| self.node(i).any(cues)).map(|i| i - at);
            // What stands before is meant rather than what comes after, unless that is at once.
            before
                .map(|d| d * 2)
                .into_iter()
                .chain(after.map(|d| if d == 1 { 3 } else { d * 3 }))
                .min()
                .unwrap_or(usize::MAX)
        };
        let to_flame = near(&Cues::of(&[Cue::Flame, Cue::FireWord, Cue::Stove, Cue::Burning, Cue::Lights]));
        to_flame < near(&Cues::of(&[Cue::Gas, Cue::GasBag, Cue::Bag, Cue::Level, Cue::Slurry, Cue::Tank]))
            && !self.node(at).quantity().is_some_and(|q| q.unit.is_some())
    }
}
