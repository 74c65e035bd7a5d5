//! Burned: how long the stove ran, in minutes, from spells said or clock times.

use super::clauses::Clause;
use super::measured::round;
use super::nodes::{Kind, Number, When};
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::About;
use super::wordlist::Side;
use bellyful_core::fact::What;

const COOKING: Cues = Cues::of(&[Cue::Cook, Cue::Stove, Cue::Lasted, Cue::Gas, Cue::GasBag, Cue::Flame, Cue::FireWord]);
const HALF_A_DAY: f64 = 12.0 * 60.0;

impl Reader<'_> {
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
        // "from 6 to 7 and from 18 to 18.30": each span is one.
        while let Some((from, to, minutes)) = self.clock_range(clause).filter(|_| context && !asks_amount) {
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
            let whole = quantity.in_base().is_none_or(|minutes| minutes % 60.0 == 0.0);
            // Where "at" stands after its hour, what stands before is "in the evening" of a spell.
            let postposed = self.row.lexicon.habits.negation == Side::After;
            let o_clock = at > clause.from
                && whole
                && !postposed
                && (self.node(at - 1).any(&Cues::of(&[Cue::At, Cue::Ago])) || hours && self.has(at - 1, Cue::Morning) && self.node(at - 1).kind == Kind::Phrase)
                || self.has(at + 1, Cue::Ago)
                || self.has(at + 1, Cue::At)
                // "visite de 10h: ...": the hour heads what is told.
                || whole && self.has(at + 1, Cue::Colon) && !(clause.from..at).any(|i| self.node(i).any(&COOKING));
            // "we got only 10 minutes of gas": what was got is no food.
            let of_gas =
                clause.any(&Cues::of(&[Cue::Gas, Cue::Flame])) && !clause.range().any(|i| self.says(i) && i != at);
            let fed_only = clause.any(&Cues::of(&[Cue::Put]))
                && !clause.any(&Cues::of(&[Cue::Cook, Cue::Stove, Cue::Lasted]))
                && !of_gas;
            // "visite 15h": no stove is said to have run for most of a day.
            let hour_of_day = quantity.in_base().is_some_and(|minutes| minutes > HALF_A_DAY)
                && !clause.any(&Cues::of(&[Cue::Cook, Cue::Lasted]));
            if hour_of_day {
                continue;
            }
            if o_clock || !context || fed_only {
                let alone = !context && !o_clock && !fed_only && self.says_no_more(clause);
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
        self.burned_again(clause);
        self.next_meal(clause);
        // "not enough gas for the meal": the level is told, and no time.
        let told = self.facts.iter().any(|(at, told)| {
            clause.range().contains(at) && matches!(told.what, What::Burned { .. } | What::Gas { .. })
        });
        let cooks = |i: usize| self.has(i, Cue::Cook) && !self.has(i, Cue::VagueTime);
        let weighed = !clause.range().any(cooks)
            && clause.range().any(|i| {
                self.node(i)
                    .quantity()
                    .is_some_and(|q| !q.implied && matches!(q.unit, Some(UnitWord::Mass(_) | UnitWord::Of(_))))
            });
        // "after some minutes the flame goes out": when, and not how long.
        let then = clause.has(Cue::GoesOut);
        if clause.has(Cue::VagueTime)
            && !told
            && !then
            && !clause.asks
            && context
            && !weighed
            && !self.endangers(clause)
        {
            let at = self.find(clause, &Cues::of(&[Cue::VagueTime])).unwrap_or(clause.from);
            if !self.denied(clause, at) {
                self.doubt(About::Amount, clause.from, clause.to);
            }
        }
    }

    /// Minutes in the unit of a spell that was told at this node.
    fn spell_told(&self, at: usize) -> Option<f64> {
        let Some(UnitWord::Time(by)) = self.node(at).quantity()?.unit else { return None };
        let told = self.facts.iter().any(|(told, fact)| *told == at && matches!(fact.what, What::Burned { .. }));
        told.then_some(by)
    }

    /// "35 minutes in the morning and 20 in the evening": a number at another hour, in the unit of the spell before it.
    fn burned_again(&mut self, clause: &Clause) {
        let Some(by) = clause.range().find_map(|at| self.spell_told(at)) else { return };
        let hour = |at: usize| self.has(at, Cue::Morning) || self.node(at).when().is_some();
        let bare = |at: usize| {
            let number = self.node(at).number().filter(|n| !self.node(at).used && !n.weak && !n.doubtful())?;
            let joined = at > clause.from && self.has(at - 1, Cue::And);
            let ends = (at + 1..clause.to.min(at + 3)).any(hour) || at + 1 == clause.to && clause.range().any(hour);
            (joined && ends).then_some((at, number.value * by))
        };
        let more: Vec<(usize, f64)> = clause.range().filter_map(bare).collect();
        for (at, minutes) in more {
            self.tell(at, Some(clause.day(at)), What::Burned { minutes: round(minutes, 1) });
            self.use_up([at]);
        }
    }

    /// "breakfast 20 mins, lunch 40": a meal and a number, in the unit of the one before.
    fn next_meal(&mut self, clause: &Clause) {
        const MEAL: Cues = Cues::of(&[Cue::VagueTime, Cue::Cook, Cue::Morning]);
        let Some(before) = self.clause_before(clause).cloned() else { return };
        let Some(by) = before.range().rev().find_map(|at| self.spell_told(at)) else { return };
        let bare = |at: usize| self.node(at).number().filter(|n| !n.weak && !n.doubtful() && !self.node(at).used);
        let numbers: Vec<(usize, f64)> = clause.range().filter_map(|at| Some((at, bare(at)?.value * by))).collect();
        let plain = |at: usize| bare(at).is_some() || self.node(at).any(&MEAL) || self.has(at, Cue::About);
        let [(at, minutes)] = numbers[..] else { return };
        if clause.any(&MEAL) && clause.range().all(plain) && before.any(&MEAL) {
            self.tell(at, Some(clause.day(at)), What::Burned { minutes: round(minutes, 1) });
            self.use_up([at]);
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

    /// Whether the other clauses only greet, or say no.
    fn says_no_more(&self, clause: &Clause) -> bool {
        const LITTLE: Cues = Cues::of(&[Cue::No, Cue::Sorry, Cue::Meant, Cue::Chatter]);
        let little = |at: usize| self.node(at).any(&LITTLE) && self.node(at).kind == Kind::Phrase;
        self.clauses.iter().all(|other| other.from == clause.from || other.range().all(little))
    }

    /// Whether a clause says a length of time and no more, politeness and days apart.
    fn only_time(&self, clause: &Clause) -> bool {
        const BESIDE: Cues = Cues::of(&[
            Cue::About,
            Cue::Of,
            Cue::And,
            Cue::Only,
            Cue::Chatter,
            Cue::Morning,
            Cue::No,
            Cue::Was,
            Cue::Is,
            Cue::Meant,
        ]);
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
            // "ao meio-dia": "to" is within the phrase.
            joined |= self.has(at, Cue::Noon) && self.node(at).to > self.node(at).from + 1;
            if let Some((minutes, next)) = self.clock_at(clause, at) {
                // A range joined as a number: both ends are in it.
                let number = self.node(at).number().or_else(|| {
                    // "saa 1:10 hadi 1:55": the word for hours before times of the clock.
                    self.node(at).quantity().and_then(|q| q.number).filter(|n| n.clock.is_some())
                });
                if let Some((low, high)) = number.and_then(|n| n.range) {
                    if high <= 24.0 && self.has_clock_words(clause) {
                        let high_clock = self.range_end_clock(at, high).unwrap_or(high * 60.0);
                        let low_clock = number.and_then(|n| n.clock).unwrap_or(low * 60.0);
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
            // "gas on at 6:05 off at 6:50"
            joined |= self.has(at, Cue::To)
                || self.has(at, Cue::TurnOff)
                || self.node(at).mark() == Some(super::tokens::Mark::Dash);
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
        // "cooked beans from 5 to 5.45"
        let from = clause.range().any(|i| {
            let range = self.node(i).number().is_some_and(|n| n.range.is_some());
            range && i > clause.from && self.has(i - 1, Cue::Since) && self.has(i - 1, Cue::At)
        });
        cooks && from && clause.has(Cue::Cook) && !clause.has(Cue::Put)
            || cooks
                && !clause.range().any(|i| {
                    self.node(i).feed().is_some()
                        || self
                            .node(i)
                            .quantity()
                            .is_some_and(|q| matches!(q.unit, Some(UnitWord::Mass(_) | UnitWord::Volume(_))))
                })
    }

    /// The clock time that ends a range; "11 se sadhe 12": not that of the figure alone.
    fn range_end_clock(&self, at: usize, end: f64) -> Option<f64> {
        let node = self.node(at);
        let last = self.row.tokens.list.get(node.to as usize - 1)?;
        let number = super::numbers::parse(self.row.tokens.text(last), '.')?;
        let clock = number.clock?;
        (number.value.fract() != 0.0 || number.value == end || clock % 60.0 != 0.0).then_some(clock)
    }

    /// A clock time at `at`: "6", "7.30", "6 y 20", "7h30", "half past" is not read.
    fn clock_at(&self, clause: &Clause, at: usize) -> Option<(f64, usize)> {
        let node = self.node(at);
        // "4 a 0": a bare nought is no hour.
        let fits = |number: Number| !number.weak && !number.fraction && number.value > 0.0 && number.value <= 24.5;
        let (mut minutes, mut next) = match node.kind {
            Kind::Phrase if node.has(Cue::Noon) => (12.0 * 60.0, at + 1),
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
            && minutes % 60.0 == 0.0
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
