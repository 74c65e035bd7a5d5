//! Smells: of what it smells, and whether that is a danger.

use super::clauses::Clause;
use super::nodes::Kind;
use super::notions::{Cue, Cues};
use super::reader::Reader;
use super::reading::Told;
use super::wordlist::Side;
use bellyful_core::fact::{GasLevel, Sign, What};
use bellyful_core::feeds::Feed;
use std::collections::HashSet;

impl Reader<'_> {
    /// "2 kg fish that smelt": the food did before it was put in.
    pub(super) fn of_measured_food(&self, at: usize, sign: Sign) -> bool {
        const JOINTS: Cues = Cues::of(&[Cue::Was, Cue::Is, Cue::ThatOne, Cue::Other, Cue::Chatter]);
        if !matches!(sign, Sign::BadSmell | Sign::SourSmell | Sign::Worms) {
            return false;
        }
        let Some(clause) = self.clause_at(at) else { return false };
        let joint = |i: &usize| {
            let node = self.node(*i);
            node.kind == Kind::Phrase && node.any(&JOINTS) && node.feed().is_none()
        };
        let food = (clause.from..at).rev().find(|i| !joint(i)).filter(|food| food + 1 < at);
        let measured = |i: usize| self.node(i).quantity().is_some_and(|q| !q.implied && q.unit.is_some());
        let of = |food: usize| usize::from(food > clause.from + 1 && self.has(food - 1, Cue::Of));
        food.is_some_and(|food| {
            self.node(food).feed().is_some() && food > clause.from + of(food) && measured(food - 1 - of(food))
        })
    }

    pub fn smells(&mut self, clause: &Clause) {
        for at in clause.range() {
            if !self.free(at, Cue::Smell) {
                continue;
            }
            if self.denied(clause, at) {
                self.use_up(self.smell_words(clause, at));
                continue;
            }
            let kind = self.smell_kind(clause, at);
            if !matches!(kind, Some((_, Sign::GasLeak))) && self.is_over(clause, at) {
                self.use_up(self.smell_words(clause, at));
                continue;
            }
            let day = clause.day(at);
            let words = self.smell_words(clause, at);
            match kind {
                Some((what, Sign::GasLeak)) => {
                    if !clause.has(Cue::OutletUsual)
                        && !(clause.has(Cue::Outlet) && !clause.has(Cue::Indoors))
                        && !self.denied(clause, what)
                    {
                        self.tell_sign(at, day, Sign::GasLeak);
                    }
                    self.use_up([what]);
                }
                Some((what, sign)) => {
                    if !self.denied(clause, what) {
                        self.tell_sign(at, day, sign);
                    }
                    self.use_up([what]);
                }
                None if clause.asks && !clause.has(Cue::Why) => {}
                // The leak was told by a phrase that has the gas in it.
                None if (clause.range()).any(|i| self.node(i).meaning.sign == Some(Sign::GasLeak)) => {}
                // "the food smells good"
                None if self.smells_good(clause, at) || self.smells_of_dinner(clause, at) => {
                    self.use_up(clause.range())
                }
                None => self.tell_sign(at, day, Sign::BadSmell),
            }
            self.use_up(words);
        }
    }

    /// "strong smell of gas", "gas ki tez badbu": a smell listed as bad is gas when only joints stand between.
    pub fn is_of_gas(&self, clause: &Clause, at: usize) -> bool {
        const JOINTS: Cues =
            Cues::of(&[Cue::Of, Cue::Is, Cue::In, Cue::Modifier, Cue::Stink, Cue::About, Cue::My, Cue::Odd]);
        let joint = |i: &usize| {
            let node = self.node(*i);
            let little = node.has(Cue::Other) && !self.row.is_long(node);
            node.any(&JOINTS) || little || node.number().is_some_and(|n| n.weak)
        };
        let gas = |i: usize| self.has(i, Cue::Gas) && self.node(i).meaning.level.is_none();
        let after = (at + 1..clause.to).find(|i| !joint(i) || gas(*i));
        let before = (clause.from..at).rev().find(|i| !joint(i) || gas(*i));
        let of = |gas: usize| (gas + 1..at).any(|i| self.has(i, Cue::Of));
        after.is_some_and(|i| gas(i) && !self.has_its_own(clause, i)) || before.is_some_and(|i| gas(i) && of(i))
    }

    /// "smells bad, gas low": the gas has words of its own after it.
    fn has_its_own(&self, clause: &Clause, gas: usize) -> bool {
        (gas + 1..clause.to.min(gas + 4)).any(|i| self.node(i).meaning.level.is_some())
    }

    /// "the joint whistles and the smell is strong": the smell is the leak's.
    pub fn only_the_leak_smells(&mut self) {
        self.smells_of_a_leak();
        let sentence = |at: usize| self.clause_at(at).map(|clause| clause.sentence);
        let is = |what: &What, of: Sign| matches!(what, What::Sign { sign } if *sign == of);
        let leaks: HashSet<_> =
            self.facts.iter().filter(|(_, told)| is(&told.what, Sign::GasLeak)).map(|&(at, _)| sentence(at)).collect();
        let kept = |(at, told): &(usize, Told)| !(is(&told.what, Sign::BadSmell) && leaks.contains(&sentence(*at)));
        let facts = self.facts.iter().filter(|told| kept(told)).cloned().collect();
        self.facts = facts;
    }

    /// "the hose is cracked, smell everywhere", "it smells inside though the stove is off": what stinks is the gas.
    fn smells_of_a_leak(&mut self) {
        const BROKEN: Cues = Cues::of(&[Cue::Cracked, Cue::Torn, Cue::Loose, Cue::Leak]);
        let of_gas = |at: usize| {
            let Some(clause) = self.clause_at(at) else { return false };
            let sentence = self.sentence(clause);
            let all = || sentence.from..sentence.to;
            let says = |cues: Cues| all().any(|i| self.speaks_of(i, &cues));
            let inside = (at + 1..clause.to.min(at + 3))
                .any(|i| self.has(i, Cue::In) && !self.node(i).has(Cue::Of) && i + 2 >= clause.to);
            let indoors = says(Cues::of(&[Cue::Indoors])) || inside || self.has(at + 1, Cue::In);
            let tank = says(Cues::of(&[Cue::Tank, Cue::Slurry, Cue::Outlet, Cue::Inlet]));
            // "it smells of burnt beans in the kitchen"
            let food = all().any(|i| self.node(i).feed().is_some());
            !tank
                && !food
                && (sentence.cues.has(Cue::Pipe) && sentence.cues.any(&BROKEN)
                    || says(Cues::of(&[Cue::Stove])) && indoors && !sentence.cues.has(Cue::Burning))
        };
        let leaks: Vec<usize> = (0..self.facts.len())
            .filter(|&i| {
                let (at, told) = &self.facts[i];
                told.what == What::Sign { sign: Sign::BadSmell } && of_gas(*at)
            })
            .collect();
        for i in leaks {
            self.facts[i].1.what = What::Sign { sign: Sign::GasLeak };
        }
    }

    fn smells_good(&self, clause: &Clause, at: usize) -> bool {
        (at.saturating_sub(2).max(clause.from)..(at + 3).min(clause.to))
            .any(|i| self.node(i).meaning.level == Some(GasLevel::Good))
    }

    /// "that bad egg stink"
    pub fn is_of_eggs(&self, clause: &Clause, at: usize) -> bool {
        let eggs = |i: usize| self.has(i, Cue::RottenEgg) || self.node(i).feed() == Some(Feed::Egg);
        (at.saturating_sub(2).max(clause.from)..clause.to.min(at + 4)).any(eggs)
    }

    /// Where the word for sour stands that says of what it smells.
    pub fn sour_follows(&self, clause: &Clause, at: usize) -> Option<usize> {
        const JOINTS: Cues = Cues::of(&[Cue::Of, Cue::Like, Cue::In, Cue::Modifier, Cue::Stink]);
        let next = (at + 1..clause.to).find(|&i| !self.node(i).any(&JOINTS) || self.has(i, Cue::Sour))?;
        (self.has(next, Cue::Sour) && next <= at + 3 && self.row.lexicon.habits.part != Side::After).then_some(next)
    }

    pub fn eggs_follow(&self, clause: &Clause, at: usize) -> bool {
        (at + 1..clause.to.min(at + 4)).any(|i| self.node(i).meaning.sign == Some(Sign::EggSmell))
    }

    /// Whether a room is named, in a word or within a phrase.
    pub fn indoors(&self, clause: &Clause) -> bool {
        clause.range().any(|at| self.speaks_of(at, &Cues::of(&[Cue::Indoors])))
    }

    /// Eggs smelt in a room, or where gas is led and kept, are gas that got out; at the outlet and the tank they are usual.
    pub fn where_gas_is(&self, clause: &Clause) -> bool {
        const GAS_LINE: Cues = Cues::of(&[Cue::GasBag, Cue::Bag, Cue::Pipe, Cue::Stove]);
        const SLURRY_SIDE: Cues = Cues::of(&[Cue::Inlet, Cue::Tank, Cue::Slurry]);
        let line = clause.range().any(|at| self.speaks_of(at, &GAS_LINE)) && !clause.any(&SLURRY_SIDE);
        (self.indoors(clause) || line) && !clause.has(Cue::Outlet)
    }

    /// "the kitchen smells of fried fish"
    fn smells_of_dinner(&self, clause: &Clause, at: usize) -> bool {
        const JOINTS: Cues = Cues::of(&[Cue::Of, Cue::Modifier, Cue::With, Cue::In, Cue::Put, Cue::Chatter]);
        let joint = |i: &usize| self.node(*i).feed().is_none() && self.node(*i).any(&JOINTS);
        let of = (at + 1..clause.to).find(|i| !joint(i));
        let dish = of.and_then(|i| self.node(i).feed()).is_some_and(|feed| !matches!(feed, Feed::Egg | Feed::Eggshell));
        dish && clause.has(Cue::Indoors) && !clause.any(&Cues::of(&[Cue::Stink, Cue::Sour, Cue::Tank, Cue::Outlet]))
    }

    fn smell_words(&self, clause: &Clause, at: usize) -> Vec<usize> {
        clause
            .range()
            .filter(|&i| i.abs_diff(at) <= 2 && self.node(i).any(&Cues::of(&[Cue::Smell, Cue::Stink])))
            .collect()
    }

    /// What a smell is of: the nearest word that says so.
    fn smell_kind(&self, clause: &Clause, at: usize) -> Option<(usize, Sign)> {
        let egg = |i: usize| {
            self.has(i, Cue::RottenEgg)
                || self.node(i).meaning.feed == Some(Feed::Egg)
                || self.node(i).meaning.feed == Some(Feed::Eggshell)
        };
        let in_reach = self.where_gas_is(clause);
        let mut best: Option<(usize, usize, Sign)> = None;
        for i in clause.range() {
            let apart = i.abs_diff(at);
            let reach = if i > at { 6 } else { 4 };
            if apart == 0 && !self.has(i, Cue::Sour) && !self.has(i, Cue::RottenEgg)
                || apart > reach
                || self.node(i).used
            {
                continue;
            }
            // Another smell, or a new thing, stands between.
            let (low, high) = (at.min(i), at.max(i));
            let parted = (low + 1..high).any(|k| {
                self.has(k, Cue::And) && k + 1 != high
                    || self.node(k).any(&Cues::of(&[Cue::Flame, Cue::Put]))
                    || self.node(k).meaning.level.is_some()
            });
            if parted {
                continue;
            }
            let sign = if self.has(i, Cue::Sour) {
                Sign::SourSmell
            } else if egg(i) {
                if in_reach { Sign::GasLeak } else { Sign::EggSmell }
            } else if self.has(i, Cue::Gas) {
                let between = (low + 1..high)
                    .filter(|&k| {
                        !self.node(k).any(&Cues::of(&[
                            Cue::Of,
                            Cue::Is,
                            Cue::In,
                            Cue::Modifier,
                            Cue::Stink,
                            Cue::Odd,
                            Cue::My,
                            Cue::Other,
                            Cue::Still,
                            Cue::Again,
                            Cue::Now,
                            Cue::Chatter,
                        ]))
                    })
                    .count();
                if between > 0 || self.gas_is_levelled(clause, i, at) {
                    continue;
                }
                Sign::GasLeak
            } else if self.has(i, Cue::Stink) {
                Sign::BadSmell
            } else {
                continue;
            };
            // Gas outweighs "bad"; a taste outweighs both by standing nearer.
            let rank = match sign {
                Sign::GasLeak => apart.min(3),
                Sign::BadSmell => apart + 8,
                _ => apart,
            };
            if best.is_none_or(|(was, ..)| rank < was) {
                best = Some((rank, i, sign));
            }
        }
        best.map(|(_, i, sign)| (i, sign))
    }

    /// "gas low smells": the gas has its own word.
    fn gas_is_levelled(&self, clause: &Clause, gas: usize, smell: usize) -> bool {
        let (low, high) = (gas.min(smell), gas.max(smell));
        (low + 1..high).any(|k| self.node(k).meaning.level.is_some())
            || gas > clause.from && smell > gas && self.node(gas - 1).any(&Cues::of(&[Cue::Not])) && smell > gas + 1
    }
}
