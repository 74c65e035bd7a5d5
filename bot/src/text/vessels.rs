//! Vessels: how big the tank, the gas store and the family's own measures are.

use super::clauses::Clause;
use super::measured::round;
use super::nodes::{Kind, Quantity};
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::wordlist::Side;
use bellyful_core::fact::{Measure, What};

/// Words that only lead from one part of a clause to the next.
const JOINTS: Cues = Cues::of(&[
    Cue::Is,
    Cue::Was,
    Cue::Of,
    Cue::In,
    Cue::Holds,
    Cue::My,
    Cue::About,
    Cue::Modifier,
    Cue::Sized,
    Cue::Other,
    Cue::Colon,
    Cue::Only,
    Cue::With,
    Cue::Now,
    Cue::Chatter,
    Cue::NewTank,
    Cue::To,
    Cue::Buried,
    Cue::Insulated,
    Cue::Painted,
]);

impl Reader<'_> {
    pub(super) fn litres(quantity: Quantity) -> Option<f64> {
        if quantity.implied || !matches!(quantity.unit, Some(UnitWord::Volume(_))) || quantity.sized.is_some() {
            return None;
        }
        let number = quantity.number.filter(|number| !number.doubtful())?;
        let by = quantity.in_base()? / number.value.max(1e-9);
        let litres = number.value * by;
        // A tank of 1.5 litres is one of 1500 written the other way.
        Some(match number.other {
            Some(other) if litres < 20.0 && other * by >= 20.0 => other * by,
            _ => litres,
        })
    }

    /// "tank is 1000 L", "1000 L tank", "gas bag 500 litres".
    pub(super) fn vessels(&mut self, clause: &Clause) {
        const DOINGS: Cues = Cues::of(&[Cue::Put, Cue::Fell, Cue::Remove, Cue::Seed]);
        for at in clause.range() {
            let Some(litres) = self.node(at).quantity().and_then(Self::litres) else { continue };
            if self.node(at).used || litres < 20.0 {
                continue;
            }
            let reach = |found: &dyn Fn(usize) -> bool| {
                let before =
                    (clause.from..at).rev().take(7).take_while(|&i| found(i) || self.joins(i)).find(|&i| found(i));
                let mut after = (at + 1..clause.to)
                    .take(4)
                    .take_while(|&i| {
                        found(i)
                            || self.node(i).any(&Cues::of(&[
                                Cue::Of,
                                Cue::Sized,
                                Cue::Modifier,
                                Cue::Is,
                                Cue::My,
                                Cue::Other,
                            ]))
                    })
                    .find(|&i| found(i));
                // "2000 L tank we put 60 kg dung": what goes in is told after the tank.
                let done = clause.range().find(|&i| self.node(i).any(&DOINGS));
                if done.is_some_and(|done| after.is_none_or(|after| done < after || after > at + 1)) {
                    after = None;
                }
                before.or(after)
            };
            let tank = reach(&|i| self.node(i).any(&Cues::of(&[Cue::Tank, Cue::NewTank])) && !self.has(i, Cue::GasBag));
            let store = reach(&|i| self.node(i).has(Cue::GasBag));
            let thing_next =
                // "tank 1000 litres, put dung": what goes in is told after the doing.
                (at + 1..clause.to.min(at + 3))
                    .take_while(|&i| !self.has(i, Cue::Put))
                    .any(|i| self.node(i).feed().is_some() || self.has(i, Cue::Water));
            let behind = self.row.lexicon.habits.part == Side::After;
            let inside = |tank: usize| tank > 0 && self.has(tank - 1, Cue::In) || behind && self.has(tank + 1, Cue::In);
            let in_tank = tank.is_some_and(|tank| inside(tank) && clause.any(&DOINGS));
            // "tank 3000 L and gas bag 800 L": a size stands with what is named before it.
            let store = store.filter(|&store| store < at || tank.is_none_or(|tank| tank > at));
            if let Some(store) = store.filter(|_| !thing_next) {
                self.tell(at, None, What::Store { litres: round(litres, 2) });
                self.use_up([at, store]);
            } else if let Some(tank) = tank.filter(|_| !thing_next && !in_tank) {
                self.tell(at, None, What::Tank { litres: round(litres, 2) });
                self.use_up([at, tank]);
            } else if !thing_next && store.is_none() && (self.is_its_size(clause, at) || self.cubic_alone(clause, at)) {
                self.tell(at, None, What::Tank { litres: round(litres, 2) });
                self.use_up([at]);
            }
        }
    }

    /// "digester is buried, 6 m3": so many cubic metres are a tank's, where a tank was spoken of.
    pub(super) fn cubic_alone(&self, clause: &Clause, at: usize) -> bool {
        let cubic = self.node(at).quantity().is_some_and(|q| q.unit == Some(UnitWord::Volume(1000.0)));
        let tank = self.sentence(clause).cues.any(&Cues::of(&[Cue::Tank, Cue::NewTank]));
        cubic && tank && clause.range().all(|i| i == at || self.joins(i))
    }

    /// "gas bag 800 ltr ka aur tanki 1600 ki", "balti 20 litre, tasla 10 ka": after one that was told in litres, a bare
    /// number right behind a vessel is of litres too.
    pub(super) fn in_litres_too(&mut self, clause: &Clause) {
        let sentence = self.sentence(clause).from;
        let told = |(at, told): &(usize, super::reading::Told)| {
            let vessel = matches!(told.what, What::Tank { .. } | What::Store { .. } | What::Measure { .. });
            (sentence <= *at && *at < clause.to && vessel).then_some(*at)
        };
        let Some(first) = self.facts.iter().find_map(told) else { return };
        for at in clause.range().filter(|&at| at > first.max(clause.from)) {
            let number = self.node(at).number().filter(|n| !n.weak && !n.fraction && !n.doubtful() && n.value > 0.0);
            let Some(litres) = number.map(|n| n.value).filter(|_| !self.node(at).used) else { continue };
            let ends = at + 1 == clause.to || {
                let next = self.node(at + 1);
                next.meaning.unit.is_none()
                    && next.any(&Cues::of(&[Cue::Of, Cue::Is, Cue::Holds, Cue::Sized, Cue::And]))
            };
            let big = litres >= 20.0;
            // "el balde es de 12 litros y la palangana de 30"
            let of = at >= clause.from + 2 && self.has(at - 1, Cue::Of) && self.node(at - 1).meaning.unit.is_none();
            let vessel = if of { at - 2 } else { at - 1 };
            let what = match self.implied_measure(vessel) {
                Some(unit) => What::Measure { unit, litres: round(litres, 4) },
                None if self.has(vessel, Cue::GasBag) && big => What::Store { litres: round(litres, 2) },
                None if self.has(vessel, Cue::Tank) && big => What::Tank { litres: round(litres, 2) },
                None => continue,
            };
            if ends {
                self.tell(at, None, what);
                self.use_up([vessel, at]);
            }
        }
    }

    /// "started the tank with 80 kg dung and it is 1200 litres": what was named before is so big.
    pub(super) fn is_its_size(&self, clause: &Clause, at: usize) -> bool {
        const SIZE: Cues = Cues::of(&[Cue::Is, Cue::Holds]);
        const LITTLE: Cues = Cues::of(&[Cue::Of, Cue::About, Cue::Other, Cue::My, Cue::Chatter]);
        let little = |i: &usize| self.node(*i).any(&LITTLE) && !self.row.is_long(self.node(*i));
        let before = (clause.from..at).rev().find(|i| self.node(*i).any(&SIZE) || !little(i));
        let is = before.filter(|&i| self.node(i).any(&SIZE)).or_else(|| {
            let after = (at + 1..clause.to).find(|i| self.node(*i).any(&SIZE) || !little(i));
            after.filter(|&i| self.node(i).any(&SIZE))
        });
        let joined = is.is_some_and(|is| {
            (clause.from..is.min(at)).rev().take(3).any(|i| self.has(i, Cue::And) && self.node(i).kind == Kind::Phrase)
        });
        // "tangi limefukiwa ardhini, ni la lita 3000"
        let goes_on = is.is_some()
            && clause.range().all(|i| i == at || self.node(i).any(&SIZE) || little(&i))
            && self.clause_before(clause).is_some_and(|before| {
                before.has(Cue::Tank) && !before.has(Cue::GasBag) && !before.any(&Cues::of(&[Cue::Put, Cue::Remove]))
            });
        goes_on
            || self.only_litres(clause, at)
            || joined
                && clause.any(&Cues::of(&[Cue::Tank, Cue::NewTank]))
                && !clause.any(&Cues::of(&[Cue::Fell, Cue::Remove]))
    }

    /// "the tank is outside, it is white, 1500 L": so much and no more, where only the tank was spoken of.
    pub(super) fn only_litres(&self, clause: &Clause, at: usize) -> bool {
        const LEAST: f64 = 200.0;
        const OTHER: Cues = Cues::of(&[Cue::Put, Cue::Remove, Cue::Seed, Cue::Fell, Cue::Water, Cue::GasBag]);
        let large = self.node(at).quantity().and_then(Self::litres).is_some_and(|litres| litres >= LEAST);
        large
            && clause.range().all(|i| i == at || self.has(i, Cue::Chatter))
            && self.anywhere(&Cues::of(&[Cue::Tank]))
            && !self.anywhere(&OTHER)
            && !self.facts.iter().any(|(_, told)| matches!(told.what, What::Tank { .. }))
            && self.row.nodes.iter().all(|node| node.feed().is_none())
    }

    /// "my bucket is 10": what people count their vessels in is litres. The measure, and where its size stands.
    pub(super) fn sized_barely(&self, clause: &Clause) -> Option<(Measure, usize)> {
        const HELD: std::ops::RangeInclusive<f64> = 0.2..=400.0;
        const TELLS: Cues = Cues::of(&[Cue::Is, Cue::Holds, Cue::About, Cue::Of, Cue::My]);
        if !clause.has(Cue::My) || clause.has(Cue::Water) {
            return None;
        }
        let mine = |at: usize| {
            at > clause.from && self.has(at - 1, Cue::My) || at + 1 < clause.to && self.has(at + 1, Cue::My)
        };
        let at = clause.range().find(|&at| mine(at) && self.implied_measure(at).is_some())?;
        let size = (at + 1..clause.to.min(at + 4)).find(|&i| self.node(i).number().is_some_and(|n| !n.weak))?;
        let number = self.node(size).number().filter(|n| !n.doubtful() && HELD.contains(&n.value))?;
        let is = (at + 1..clause.to.min(size + 3)).any(|i| self.node(i).any(&Cues::of(&[Cue::Is, Cue::Holds])));
        let vessel = self.node(at).quantity().is_some_and(|q| q.implied || q.number.is_none());
        let only = clause.range().all(|i| self.node(i).feed().is_none());
        (number.value > 0.0 && vessel && is && only && (at + 1..size).all(|i| self.node(i).any(&TELLS)))
            .then(|| (self.implied_measure(at).expect("found as one"), size))
    }

    /// "my bucket is 15 litres", "balti 18 litre ki".
    pub(super) fn measures(&mut self, clause: &Clause) {
        if let Some((unit, at)) = self.sized_barely(clause) {
            let litres = self.node(at).number().map_or(0.0, |number| number.value);
            self.tell(at, None, What::Measure { unit, litres });
            // "not 20": what it was taken for before.
            self.use_up(clause.range());
            return;
        }
        const TELLS: Cues = Cues::of(&[Cue::Holds, Cue::My, Cue::Is, Cue::Colon]);
        let mut start = clause.from;
        for at in clause.range() {
            let node = self.node(at);
            let Some(litres) = node.quantity().filter(|_| !node.used) else { continue };
            let thing = |i: usize| self.node(i).feed().is_some() || self.has(i, Cue::Water) || self.has(i, Cue::Put);
            // A sized measure with nothing in it is its size told: "hamari 14 litre wali balti hai".
            if let Some((unit, one)) = litres.sized {
                // "2 buckets of 20 litres" is how much, not how big.
                if litres.amount() != Some(one) || self.follows_a_food(clause) {
                    continue;
                }
                let told = clause.any(&TELLS) || clause.range().all(|i| i == at || self.joins(i));
                if told && !clause.range().any(thing) && !clause.has(Cue::Put) {
                    let Some(amount) = litres.amount() else { continue };
                    // "I use a 55 gal drum as digester"
                    let what = if clause.has(Cue::Tank) && amount >= 50.0 {
                        What::Tank { litres: round(amount, 4) }
                    } else {
                        What::Measure { unit, litres: round(amount, 4) }
                    };
                    self.tell(at, None, what);
                    self.use_up([at]);
                }
                continue;
            }
            let weighed = matches!(litres.unit, Some(UnitWord::Mass(_))) && !litres.implied;
            let held = at > clause.from && self.implied_measure(at - 1).is_some() && self.has(at + 1, Cue::Of);
            if weighed && held && !clause.any(&Cues::of(&[Cue::Put, Cue::Fell])) && at + 2 >= clause.to {
                // "tasla 8 kilo ka": how much it holds by weight says no litres.
                self.use_up([at - 1, at]);
                continue;
            }
            let amount = Self::litres(litres).filter(|_| !weighed);
            if amount.is_none() && !weighed {
                continue;
            }
            let found = (clause.from..at)
                .rev()
                .take(8)
                .take_while(|&i| self.joins(i) || self.implied_measure(i).is_some() || self.holder(i))
                .find(|&i| self.implied_measure(i).is_some());
            let Some(measure) = found else { continue };
            let unit = self.implied_measure(measure).expect("found as one");
            let between = measure + 1..at;
            // "bowl small like half litre": it is spoken of, and nothing else is.
            let alone = at + 1 == clause.to && (clause.from..measure).all(|i| self.joins(i));
            let tells = clause.any(&TELLS) || between.is_empty() || alone;
            let used_for_feed = (at + 1..clause.to.min(at + 4)).any(thing)
                || (start..measure).any(thing) && !self.holder_before(clause, measure);
            let Some(amount) = amount else {
                // "the basin is about 8 kilos": no meal, and no litres either.
                let counted =
                    self.node(measure).quantity().is_some_and(|q| !q.implied && q.number.is_some_and(|n| !n.weak));
                if tells && !used_for_feed && !counted && !clause.any(&Cues::of(&[Cue::Put, Cue::Fell])) {
                    self.use_up(measure..=at);
                }
                continue;
            };
            if tells && !used_for_feed {
                // "drum 500 litre ka gas ke liye": what the gas is kept in.
                // Nobody carries half a cubic metre.
                let store = (clause.has(Cue::Gas) || unit == Measure::Bag) && amount >= 100.0
                    || matches!(unit, Measure::Sack | Measure::Bag) && amount >= 500.0;
                let litres = round(amount, 4);
                self.tell(at, None, if store { What::Store { litres } } else { What::Measure { unit, litres } });
                self.use_up(measure..=at);
                start = at + 1;
            }
        }
    }

    /// "swill, a 20 litre can": how much of it there was.
    pub(super) fn follows_a_food(&self, clause: &Clause) -> bool {
        let before = self.clause_before(clause);
        let food = |at: usize| self.node(at).feed().is_some();
        before.is_some_and(|before| {
            before.range().any(food) && before.range().all(|at| food(at) || self.joins(at) || self.has(at, Cue::Put))
        })
    }

    /// "the cup I use holds": use is no feeding.
    pub(super) fn holder(&self, at: usize) -> bool {
        self.has(at, Cue::Holds) || self.has(at, Cue::Put) || self.has(at, Cue::WeAre)
    }

    pub(super) fn holder_before(&self, clause: &Clause, measure: usize) -> bool {
        (clause.from..measure).all(|i| self.joins(i) || self.holder(i))
    }

    pub(super) fn implied_measure(&self, at: usize) -> Option<Measure> {
        let node = self.node(at);
        let quantity = node.quantity().filter(|q| !node.used && q.number.is_none_or(|n| n.value == 1.0))?;
        if let Some(UnitWord::Of(measure)) = quantity.unit { Some(measure) } else { None }
    }

    pub(super) fn joins(&self, at: usize) -> bool {
        let node = self.node(at);
        let implied = node.quantity().is_some_and(|q| q.implied && q.unit.is_none());
        (node.kind == Kind::Phrase && node.any(&JOINTS)
            || implied
            || node.number().is_some_and(|n| n.weak)
            || node.unknown())
            && node.feed().is_none()
            && !node.has(Cue::Water)
    }
}
