//! Gas and stove: how full the bag is, how the flame looks, how long it burned.

use super::clauses::Clause;
use super::measured::round;
use super::nodes::{Kind, Number, When};
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::About;
use bellyful_core::fact::{FlameLook, GasLevel, Measure, What};

const FLAMES: Cues = Cues::of(&[Cue::Flame, Cue::FireWord]);
const COOKING: Cues = Cues::of(&[Cue::Cook, Cue::Stove, Cue::Lasted, Cue::Gas, Cue::GasBag, Cue::Flame, Cue::FireWord]);

impl Reader<'_> {
    pub fn flame(&mut self, clause: &Clause) {
        if clause.plan || clause.has(Cue::How) && clause.has(Cue::AskDigestate) {
            return;
        }
        let flame = clause.any(&FLAMES);
        let stove = clause.has(Cue::Stove) || clause.has(Cue::Burning) && !clause.has(Cue::BurnThing);
        let earlier = self.anywhere(&FLAMES);
        let cooks = self.anywhere(&Cues::of(&[Cue::Stove, Cue::Gas, Cue::GasBag, Cue::Lights]));
        for at in clause.range() {
            let node = *self.node(at);
            if node.used || node.meaning.feed.is_some() && !node.has(Cue::Yellow) {
                continue;
            }
            let colour = node.has(Cue::Blue) || node.has(Cue::Yellow);
            let look = if node.has(Cue::NoLight) && (flame || stove || cooks || earlier)
                || node.has(Cue::Lights) && self.denied(clause, at) && (flame || stove || cooks || earlier)
            {
                FlameLook::WillNotLight
            } else if node.has(Cue::GoesOut) && (flame || stove || earlier || cooks) {
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

    /// A colour said of the slurry, the tank or a food.
    fn coloured_other(&self, clause: &Clause, at: usize) -> bool {
        const OTHERS: Cues = Cues::of(&[Cue::Slurry, Cue::Water, Cue::Painted]);
        let near = |cues: &Cues| {
            clause.range().filter(|&i| self.node(i).any(cues)).map(|i| i.abs_diff(at)).min().unwrap_or(usize::MAX)
        };
        let flame = near(&Cues::of(&[Cue::Flame, Cue::FireWord, Cue::Stove, Cue::Burning]));
        let food = (at + 1 < clause.to && self.node(at + 1).feed().is_some())
            || (at > clause.from && self.node(at - 1).feed().is_some());
        food || near(&OTHERS) < flame
    }

    /// Whether "weak" or "low" at `at` is said of the flame rather than of the gas.
    fn near_flame(&self, clause: &Clause, at: usize, flame: bool, stove: bool) -> bool {
        let weak = self.node(at).has(Cue::Weak);
        if !flame && !(stove && weak) {
            return false;
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
        let to_flame = near(&Cues::of(&[Cue::Flame, Cue::FireWord, Cue::Stove, Cue::Burning]));
        to_flame < near(&Cues::of(&[Cue::Gas, Cue::GasBag, Cue::Level, Cue::Slurry, Cue::Tank]))
            && !self.node(at).quantity().is_some_and(|q| q.unit.is_some())
    }

    pub fn gas(&mut self, clause: &Clause) {
        if clause.plan {
            return;
        }
        let things: Vec<usize> = clause
            .range()
            .filter(|&at| self.node(at).any(&Cues::of(&[Cue::Gas, Cue::GasBag])) && !self.node(at).used)
            .collect();
        let bags: Vec<usize> = clause.range().filter(|&at| self.is_bag(at)).collect();
        let Some(&thing) = things.first().or(bags.first()) else {
            self.gas_goes_on(clause);
            return;
        };
        let fed = clause.any(&Cues::of(&[Cue::Put, Cue::Seed]));
        if things.is_empty() && (fed || clause.range().any(|at| self.node(at).feed().is_some())) {
            return;
        }
        if clause.asks && !clause.has(Cue::Why) && clause.any(&Cues::of(&[Cue::HowMuch, Cue::HowLong, Cue::AskGas])) {
            return;
        }
        let Some((at, level)) = self.level(clause, &things, &bags) else { return };
        self.tell(at.min(thing), Some(clause.day(at)), What::Gas { level });
        self.use_up([at, thing]);
    }

    /// "yesterday the bag was full, today half": the bag is not named again.
    fn gas_goes_on(&mut self, clause: &Clause) {
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
        if !after_gas || clause.days.is_empty() || clause.any(&OTHERS) || spoken || clause.asks {
            return;
        }
        let all: Vec<usize> = clause.range().collect();
        if let Some((at, level)) = self.level(clause, &all, &[]) {
            self.tell(at, Some(clause.day(at)), What::Gas { level });
            self.use_up([at]);
        }
    }

    /// "bag" without anything in it.
    fn is_bag(&self, at: usize) -> bool {
        let node = self.node(at);
        !node.used
            && (node.has(Cue::Bag)
                || node.quantity().is_some_and(|q| matches!(q.unit, Some(UnitWord::Of(Measure::Bag | Measure::Sack)))))
    }

    fn level(&self, clause: &Clause, things: &[usize], bags: &[usize]) -> Option<(usize, GasLevel)> {
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
            if node.used || !near(at) || part.is_none() && !half {
                continue;
            }
            let part = part.unwrap_or(0.5);
            return Some((
                at,
                if part < 0.4 {
                    Low
                } else if part <= 0.6 {
                    Half
                } else {
                    Good
                },
            ));
        }
        let mut found = None;
        for at in clause.range() {
            let node = self.node(at);
            let Some(level) = node.meaning.level.filter(|_| !node.used && near(at) && !flame_first(at)) else {
                continue;
            };
            let denied = self.denied(clause, at) && !(self.has(at, Cue::Not));
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
            if found.is_none() {
                found = Some((at, level));
            }
        }
        if found.is_some() {
            return found;
        }
        // "no gas"
        let &gas = things.iter().find(|&&at| self.has(at, Cue::Gas) || self.has(at, Cue::GasBag))?;
        let smelt = clause.any(&Cues::of(&[Cue::Smell, Cue::Leak, Cue::Escape, Cue::Hiss]));
        (!smelt && self.denied(clause, gas) && !clause.any(&Cues::of(&[Cue::Put, Cue::Cook, Cue::Blocked]))
            || self.denied_at_once(clause, gas))
        .then_some((gas, GasLevel::None))
    }

    fn denied_at_once(&self, clause: &Clause, at: usize) -> bool {
        at > clause.from
            && self.node(at - 1).any(&Cues::of(&[Cue::Not, Cue::Without]))
            && !self.has(at + 1, Cue::Smell)
            && !self.has(at + 1, Cue::Leak)
    }

    /// "cooked 1 hr 20", "gas lasted 35 min", "from 6 to 7.30".
    pub fn burned(&mut self, clause: &Clause, index: usize) {
        if clause.plan || clause.has(Cue::If) {
            return;
        }
        let context = clause.any(&COOKING)
            || clause.any(&Cues::of(&[Cue::CookNot]))
            || self.cooking_near(index)
            || self.timed_food(clause);
        let asks_amount = clause.asks && !clause.has(Cue::Why);
        if let Some((from, to, minutes)) = self.clock_range(clause).filter(|_| context && !asks_amount) {
            self.tell(from, Some(clause.day(from)), What::Burned { minutes });
            self.use_up(from..to);
        }
        for at in clause.range() {
            let node = *self.node(at);
            let Some(quantity) = node.quantity().filter(|q| !node.used && matches!(q.unit, Some(UnitWord::Time(_))))
            else {
                continue;
            };
            if asks_amount || quantity.implied {
                continue;
            }
            let hours = quantity.in_base().is_some_and(|minutes| minutes >= 60.0);
            let o_clock = at > clause.from
                && (self.node(at - 1).any(&Cues::of(&[Cue::At, Cue::Ago])) || hours && self.has(at - 1, Cue::Morning))
                || self.has(at + 1, Cue::Ago)
                || self.has(at + 1, Cue::At);
            let fed_only =
                clause.any(&Cues::of(&[Cue::Put])) && !clause.any(&Cues::of(&[Cue::Cook, Cue::Stove, Cue::Lasted]));
            if o_clock || !context || fed_only {
                let alone = !context && !o_clock && !fed_only && self.clauses.len() == 1;
                // "1hr": of all that is told in minutes, there is only the stove.
                let stove = alone && self.only_time(clause);
                let open = alone && !stove && !self.of_another(at);
                if open && clause.range().all(|i| i == at || !self.says(i)) {
                    self.doubt(About::Amount, at, at + 1);
                }
                if !stove {
                    continue;
                }
            }
            match (quantity.in_base(), quantity.number) {
                (Some(minutes), Some(number)) if !number.doubtful() => {
                    if minutes > 0.0 && minutes <= 24.0 * 60.0 {
                        self.tell(at, Some(clause.day(at)), What::Burned { minutes: round(minutes, 1) });
                    }
                }
                _ => self.doubt(About::Amount, at, at + 1),
            }
            self.use_up([at]);
        }
        let told =
            self.facts.iter().any(|(at, told)| clause.range().contains(at) && matches!(told.what, What::Burned { .. }));
        if clause.has(Cue::VagueTime) && !told && !clause.asks && context {
            let at = self.find(clause, &Cues::of(&[Cue::VagueTime])).unwrap_or(clause.from);
            if !self.denied(clause, at) {
                self.doubt(About::Amount, clause.from, clause.to);
            }
        }
    }

    /// "tea 10 min and rice 15 min": food with times and no amounts is what was cooked.
    pub fn timed_food(&self, clause: &Clause) -> bool {
        const OTHER: Cues = Cues::of(&[Cue::Put, Cue::Fell, Cue::Seed, Cue::Remove, Cue::Ago, Cue::At, Cue::Elsewhere]);
        let mut timed = false;
        for at in clause.range() {
            match self.node(at).quantity() {
                Some(q) if matches!(q.unit, Some(UnitWord::Time(_))) => timed |= !q.implied,
                Some(q) if q.unit.is_some() => return false,
                _ => {}
            }
        }
        timed && !clause.any(&OTHER) && clause.range().any(|at| self.node(at).feed().is_some())
    }

    /// Whether a clause says a length of time and no more, politeness and days apart.
    fn only_time(&self, clause: &Clause) -> bool {
        const BESIDE: Cues = Cues::of(&[Cue::About, Cue::Of, Cue::And, Cue::Only, Cue::Chatter, Cue::Morning]);
        clause.range().all(|at| {
            let node = self.node(at);
            match node.kind {
                Kind::Quantity(q) => matches!(q.unit, Some(UnitWord::Time(_))) && q.number.is_some(),
                Kind::When(When::Day(_)) => true,
                Kind::Phrase => node.any(&BESIDE) && node.feed().is_none() && !node.has(Cue::Since),
                Kind::Number(number) => number.weak,
                _ => false,
            }
        })
    }

    fn says(&self, at: usize) -> bool {
        let node = self.node(at);
        node.feed().is_some() || node.unknown() || node.quantity().is_some() || node.meaning.sign.is_some()
    }

    /// Cooking is spoken of in the clause before or after, of the same kind as this one.
    fn cooking_near(&self, index: usize) -> bool {
        let cooks = |clause: &Clause| {
            clause.any(&Cues::of(&[Cue::Cook, Cue::Stove, Cue::Lasted]))
                || clause.range().any(|at| {
                    self.facts.iter().any(|(told, fact)| *told == at && matches!(fact.what, What::Burned { .. }))
                })
        };
        let here = &self.clauses[index];
        let feeds = here.any(&Cues::of(&[Cue::Put]))
            || here.range().any(|at| self.node(at).feed().is_some() && !self.node(at).used);
        !feeds && self.clauses.iter().any(cooks)
    }

    /// A span between two clock times: (first node, one past the last, minutes).
    fn clock_range(&self, clause: &Clause) -> Option<(usize, usize, f64)> {
        let mut clocks: Vec<(usize, usize, f64)> = Vec::new();
        let mut at = clause.from;
        let mut joined = false;
        while at < clause.to {
            if let Some((minutes, next)) = self.clock_at(clause, at) {
                // A range joined as a number: both ends are in it.
                if let Some((low, high)) = self.node(at).number().and_then(|n| n.range) {
                    if high <= 24.0 && self.has_clock_words(clause) {
                        let high_clock = self.range_end_clock(at).unwrap_or(high * 60.0);
                        let low_clock = self.node(at).number().and_then(|n| n.clock).unwrap_or(low * 60.0);
                        return Some((at, next, span(low_clock, high_clock)));
                    }
                    return None;
                }
                if joined && let Some(&(from, _, first)) = clocks.last() {
                    return Some((from, next, span(first, minutes)));
                }
                clocks.push((at, next, minutes));
                joined = false;
                at = next;
                continue;
            }
            joined |= self.has(at, Cue::To) || self.node(at).mark() == Some(super::tokens::Mark::Dash);
            at += 1;
        }
        None
    }

    fn has_clock_words(&self, clause: &Clause) -> bool {
        let cooks = clause.any(&Cues::of(&[
            Cue::Cook,
            Cue::Stove,
            Cue::At,
            Cue::Morning,
            Cue::Lasted,
            Cue::Gas,
            Cue::Flame,
            Cue::FireWord,
        ]));
        cooks
            && !clause.range().any(|i| {
                self.node(i).feed().is_some()
                    || self
                        .node(i)
                        .quantity()
                        .is_some_and(|q| matches!(q.unit, Some(UnitWord::Mass(_) | UnitWord::Volume(_))))
            })
    }

    fn range_end_clock(&self, at: usize) -> Option<f64> {
        let node = self.node(at);
        let last = self.row.tokens.list.get(node.to as usize - 1)?;
        super::numbers::parse(self.row.tokens.text(last), '.')?.clock
    }

    /// A clock time at `at`: "6", "7.30", "6 y 20", "7h30", "half past" is not read.
    fn clock_at(&self, clause: &Clause, at: usize) -> Option<(f64, usize)> {
        let node = self.node(at);
        let fits = |number: Number| !number.weak && !number.fraction && number.value <= 24.5;
        let (mut minutes, mut next) = match node.kind {
            Kind::Number(number) if fits(number) && !node.used => (number.clock.unwrap_or(number.value * 60.0), at + 1),
            Kind::Quantity(q) if !node.used && !q.implied && matches!(q.unit, Some(UnitWord::Time(_))) => {
                let minutes = q.in_base()?;
                if minutes % 60.0 != 0.0 && q.unit == Some(UnitWord::Time(1.0)) && minutes < 60.0 {
                    return None;
                }
                (minutes, at + 1)
            }
            _ => return None,
        };
        if next < clause.to
            && self.node(next).meaning.unit.is_some()
            && !matches!(self.node(next).meaning.unit, Some(UnitWord::Time(_)))
        {
            return None;
        }
        // "5 y 20"
        if self.has(next, Cue::And)
            && let Some(more) =
                self.row.nodes.get(next + 1).and_then(|n| n.number()).filter(|n| !n.weak && n.value < 60.0)
        {
            minutes += if more.fraction { more.value * 60.0 } else { more.value };
            next += 2;
        }
        Some((minutes, next.min(clause.to)))
    }
}

/// Minutes from one clock time to the next, over noon or midnight if need be.
fn span(from: f64, to: f64) -> f64 {
    let apart = to - from;
    if apart > 0.0 {
        apart
    } else if apart + 720.0 > 0.0 {
        apart + 720.0
    } else {
        apart + 1440.0
    }
}
