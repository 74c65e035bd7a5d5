//! Levels: how much gas there is, by the bag, the drum or in a word.

use super::clauses::Clause;
use super::nodes::Kind;
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::stove::FLAMES;
use bellyful_core::fact::{GasLevel, Measure, Sign, What};

impl Reader<'_> {
    pub fn gas(&mut self, clause: &Clause) {
        if clause.plan {
            return;
        }
        let things: Vec<usize> = clause
            .range()
            .filter(|&at| self.node(at).any(&Cues::of(&[Cue::Gas, Cue::GasBag])) && !self.node(at).used)
            .collect();
        // "polythene tana hai, greenhouse jaisa": a cover over the tank.
        let cover = clause.has(Cue::Greenhouse);
        let bags: Vec<usize> = clause.range().filter(|&at| self.is_bag(at) && !cover).collect();
        let Some(&thing) = things.first().or(bags.first()) else {
            self.gas_goes_on(clause);
            return;
        };
        let fed = clause.any(&Cues::of(&[Cue::Put, Cue::Seed]));
        // "khali" is empty as well as a feed.
        let counted = bags.iter().any(|&at| self.node(at).quantity().is_some_and(|q| !q.implied));
        let food = |at: usize| self.node(at).feed().is_some() && (counted || self.node(at).meaning.level.is_none());
        if things.is_empty() && (fed || clause.range().any(food)) {
            if let Some((at, bag, level)) = self.bag_after_food(clause, &bags) {
                self.tell(bag, Some(clause.day(bag)), What::Gas { level });
                self.use_up([at, bag]);
            }
            return;
        }
        if clause.asks && !clause.has(Cue::Why) && clause.any(&Cues::of(&[Cue::HowMuch, Cue::HowLong, Cue::AskGas])) {
            return;
        }
        let Some((at, level)) = self.level(clause, &things, &bags) else { return };
        // "the gas barely lasted 12 minutes"
        let timed = |at: usize| {
            self.node(at).quantity().is_some_and(|q| !q.implied && matches!(q.unit, Some(UnitWord::Time(_))))
        };
        if level == GasLevel::Low && clause.has(Cue::Lasted) && clause.range().any(timed) {
            return;
        }
        self.tell(at.min(thing), Some(clause.day(at)), What::Gas { level });
        self.use_up([at, thing]);
    }

    /// "hier plein, ce matin reste un quart": days and levels and nothing else are of the bag.
    pub fn only_levels(&mut self) {
        const LITTLE: Cues = Cues::of(&[
            Cue::Is,
            Cue::Was,
            Cue::Now,
            Cue::Still,
            Cue::Almost,
            Cue::Only,
            Cue::Chatter,
            Cue::Morning,
            Cue::HalfLevel,
            Cue::But,
            Cue::And,
        ]);
        const DENIED: Cues = Cues::of(&[Cue::Not, Cue::Nothing, Cue::PutNot]);
        let day = |at: usize| self.node(at).when().is_some();
        let part = |at: usize| self.node(at).number().is_some_and(|n| n.fraction);
        let level = |at: usize| self.node(at).meaning.level.is_some() && !self.node(at).any(&DENIED);
        let plain = |at: usize| {
            let node = self.node(at);
            let said = level(at) || node.kind == Kind::Phrase && node.any(&LITTLE);
            day(at) || part(at) || said || node.mark().is_some()
        };
        let all = 0..self.row.nodes.len();
        let sure =
            |at: usize| level(at) && matches!(self.node(at).meaning.level, Some(GasLevel::Full | GasLevel::None));
        let told = !self.facts.is_empty() || !self.asks.is_empty() || self.clauses.iter().any(|clause| clause.asks);
        if told || !all.clone().any(day) || !all.clone().any(sure) || !all.clone().all(plain) {
            return;
        }
        for clause in self.clauses.clone() {
            let things: Vec<usize> = clause.range().collect();
            if let Some((at, level)) = self.level(&clause, &things, &[]).filter(|_| !clause.plan) {
                self.tell(at, Some(clause.day(at)), What::Gas { level });
            }
            self.use_up(clause.range());
        }
    }

    /// "fed 2 kg bag full", with no comma: a bag without a number that comes after the food, and how full it is at once.
    pub(super) fn bag_after_food(&self, clause: &Clause, bags: &[usize]) -> Option<(usize, usize, GasLevel)> {
        let measured = |at: usize| self.node(at).quantity().is_some_and(|q| !q.implied && q.unit.is_some());
        let joint = |at: usize| self.node(at).any(&Cues::of(&[Cue::Is, Cue::Now, Cue::Almost, Cue::In]));
        let &bag = bags.last().filter(|&&bag| (clause.from..bag).any(measured) && !measured(bag))?;
        let end = (bag + 1..clause.to).find(|&at| !joint(at))?;
        let said = self.node(end);
        let (at, level) = self.level(clause, &[], &[bag]).filter(|&(at, _)| (bag + 1..=end).contains(&at))?;
        let filled_with = self.has(end + 1, Cue::Of)
            || self.has(end + 1, Cue::Put)
            || self.row.nodes.get(end + 1).is_some_and(|n| n.feed().is_some());
        (!said.used && !(end + 1 < clause.to && filled_with)).then_some((at, bag, level))
    }

    /// "yesterday the bag was full, today half", "... now finished": the bag is not named again.
    pub(super) fn gas_goes_on(&mut self, clause: &Clause) {
        const OTHERS: Cues = Cues::of(&[
            Cue::Put,
            Cue::Flame,
            Cue::FireWord,
            Cue::Slurry,
            Cue::Level,
            Cue::Cook,
            Cue::Water,
            Cue::Stove,
        ]);
        let after_gas =
            self.facts.last().is_some_and(|(at, told)| *at < clause.from && matches!(told.what, What::Gas { .. }));
        let spoken = clause.range().any(|at| {
            self.node(at).feed().is_some()
                || self.node(at).unknown()
                || self.node(at).quantity().is_some_and(|q| q.unit.is_some())
        });
        let now = clause.days.is_empty() && clause.any(&Cues::of(&[Cue::Now, Cue::Morning]));
        if !after_gas || clause.days.is_empty() && !now || clause.any(&OTHERS) || spoken || clause.asks {
            return;
        }
        let all: Vec<usize> = clause.range().collect();
        if let Some((at, level)) = self.level(clause, &all, &[]) {
            let day = if now { 0 } else { clause.day(at) };
            self.tell(at, Some(day), What::Gas { level });
            self.use_up([at]);
        }
    }

    /// "bag" without anything in it.
    pub(super) fn is_bag(&self, at: usize) -> bool {
        let node = self.node(at);
        !node.used
            && (node.has(Cue::Bag)
                || node.quantity().is_some_and(|q| matches!(q.unit, Some(UnitWord::Of(Measure::Bag | Measure::Sack)))))
    }

    pub(super) fn level(&self, clause: &Clause, things: &[usize], bags: &[usize]) -> Option<(usize, GasLevel)> {
        use GasLevel::{Full, Good, Half, Low};
        let near = |at: usize| things.iter().chain(bags).any(|&thing| thing.abs_diff(at) <= 6);
        let flame_first = |at: usize| self.near_flame(clause, at, clause.any(&FLAMES), false);
        // A part of the bag: "half a bag", "three quarters full".
        for at in clause.range() {
            let node = self.node(at);
            let part = match node.kind {
                Kind::Number(n) if n.fraction => Some(n.value),
                Kind::Quantity(q)
                    if q.number.is_some_and(|n| n.fraction)
                        && matches!(q.unit, Some(UnitWord::Of(Measure::Bag | Measure::Sack))) =>
                {
                    q.amount()
                }
                _ => None,
            };
            let half = node.has(Cue::HalfLevel) && node.kind == Kind::Phrase;
            // "gas finished halfway"
            let ended = at > clause.from && self.node(at - 1).meaning.level == Some(GasLevel::None);
            // "took out half a tank of sludge"
            let of_tank = at + 1 < clause.to && self.has(at + 1, Cue::Tank) && !self.has(at + 1, Cue::GasBag);
            if ended || of_tank || node.used || !near(at) || part.is_none() && !half {
                continue;
            }
            let part = part.unwrap_or(0.5);
            return Some((
                at,
                if part < 0.4 {
                    Low
                } else if part <= 0.6 {
                    Half
                } else if part < 0.95 {
                    Good
                } else {
                    Full
                },
            ));
        }
        // "duró 40 min" is how long it lasted, not how hard the bag is.
        let timed =
            |at: usize| matches!(self.node(at).quantity(), Some(q) if matches!(q.unit, Some(UnitWord::Time(_))));
        let timed = clause.range().any(timed);
        let mut found = None;
        for at in clause.range() {
            let node = self.node(at);
            let lasted = node.has(Cue::Lasted) && timed;
            // "pipe me pani bhar gaya": full of water.
            let water = |i: usize| self.has(i, Cue::Water) || self.node(i).meaning.sign == Some(Sign::WaterInGasLine);
            let of_water = node.meaning.level == Some(Full) && at > clause.from && water(at - 1);
            // "a small boy burnt the curtain with the gas"
            // "a bit of water, bag full"
            let of_food = node.quantity().is_some()
                && (at + 1..clause.to.min(at + 3)).any(|i| self.node(i).feed().is_some() || self.has(i, Cue::Water));
            let of_gas = !flame_first(at) && !lasted && !of_food && !of_water && !self.said_of_folk(clause, at);
            let Some(level) = node.meaning.level.filter(|_| !node.used && near(at) && of_gas) else {
                continue;
            };
            let says_so = node.any(&Cues::of(&[Cue::Not, Cue::Nothing]));
            let denied = self.denied(clause, at) && !says_so && !self.smell_is_denied(clause, at);
            let almost = (at.saturating_sub(3).max(clause.from)..at).any(|i| self.has(i, Cue::Almost))
                || self.has(at + 1, Cue::Almost) && at + 1 < clause.to;
            let level = match (level, denied, almost) {
                (GasLevel::None, true, _) | (Low, true, _) => continue,
                (Good, true, _) => Low,
                (Full, true, _) => continue,
                (GasLevel::None, _, true) => Low,
                (Full, _, true) => Good,
                (level, ..) => level,
            };
            // "gesi ipo kidogo": how little is said after it.
            let little_after =
                level == Good && (at + 1..clause.to.min(at + 3)).any(|i| self.node(i).meaning.level == Some(Low));
            let level = if little_after { Low } else { level };
            // "the drum does not rise, there is little gas": a little is more than none.
            if found.is_none_or(|(_, told)| told == GasLevel::None && level == Low) {
                found = Some((at, level));
            }
        }
        if found.is_some() {
            return found;
        }
        // "no gas"
        let &gas = things.iter().find(|&&at| self.has(at, Cue::Gas) || self.has(at, Cue::GasBag))?;
        // "badbu aur ph 5.8 gas kuch nahi": the smell has words of its own.
        const SMELT: Cues = Cues::of(&[Cue::Smell, Cue::Leak, Cue::Escape, Cue::Hiss]);
        let and = |at: usize| self.has(at, Cue::And) && self.node(at).kind == Kind::Phrase;
        let smelt = clause.range().any(|at| self.node(at).any(&SMELT) && !(at..gas).any(and));
        (!smelt && self.denied(clause, gas) && !clause.any(&Cues::of(&[Cue::Put, Cue::Cook, Cue::Blocked]))
            || self.denied_at_once(clause, gas))
        .then_some((gas, GasLevel::None))
    }

    /// "no smell now gas ok": what is denied is the smell.
    pub(super) fn smell_is_denied(&self, clause: &Clause, at: usize) -> bool {
        let not = (clause.from..at).rev().find(|&i| self.node(i).any(&Cues::of(&[Cue::Not, Cue::Without])));
        not.is_some_and(|not| (not + 1..at).any(|i| self.node(i).any(&Cues::of(&[Cue::Smell, Cue::Leak]))))
    }

    pub(super) fn denied_at_once(&self, clause: &Clause, at: usize) -> bool {
        at > clause.from
            && self.node(at - 1).any(&Cues::of(&[Cue::Not, Cue::Without]))
            && !self.has(at + 1, Cue::Smell)
            && !self.has(at + 1, Cue::Leak)
    }
}
