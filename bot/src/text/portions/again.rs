//! Again: an amount of nothing named that goes on from the portion told before it: the same at another hour, its water.

use super::super::clauses::Clause;
use super::super::measured::round;
use super::super::nodes::{Kind, Number, Quantity};
use super::super::notions::{Cue, Cues, UnitWord};
use super::super::reader::Reader;
use super::super::reading::Told;
use super::super::tokens::Mark;
use super::atoms::{Atom, Piece, Thing};
use super::tell::Portion;
use bellyful_core::fact::{Unit, What};
use bellyful_core::feeds::Feed;

impl Reader<'_> {
    /// What was told last, where it is a portion with an amount: where it was said, of which day, of what, in which unit.
    fn portion_told_last(&self) -> Option<(usize, Option<i32>, Thing, Option<Unit>)> {
        let (told_at, told) = self.facts.last()?;
        match told.what {
            What::Fed { feed, amount: Some(_), unit } => Some((*told_at, told.day, Thing::Feed(feed), unit)),
            What::Water { amount: Some(_), unit } => Some((*told_at, told.day, Thing::Water, unit)),
            _ => None,
        }
    }

    /// "1 kg rice in the morning and 2 kg in the evening": the same again at another hour.
    pub(super) fn of_another_hour(&self, clause: &Clause, amount: Atom, day: i32) -> Option<Atom> {
        const NEAR: usize = 5;
        let (told_at, told_on, thing, unit) = self.portion_told_last()?;
        // "2 buckets of dung in the morning and 2 in the evening"
        let quantity = match amount.what {
            Piece::Amount(quantity) => quantity,
            Piece::Bare(number)
                if !number.weak && !self.is_phone_or_clock(amount.at) && self.hour_follows(clause, amount.at) =>
            {
                Quantity { number: Some(number), unit: None, implied: false, sized: None }
            }
            _ => return None,
        };
        let alike = match quantity.unit {
            None => unit.is_some() && matches!(amount.what, Piece::Bare(_)),
            Some(UnitWord::Mass(_)) => unit == Some(Unit::Kg),
            Some(UnitWord::Volume(_)) => unit == Some(Unit::L),
            Some(UnitWord::Of(measure)) => unit == Some(Unit::Of(measure)),
            _ => false,
        };
        let sentence = self.sentence(clause);
        let apart = told_at < amount.at && told_at >= sentence.from;
        let hours = (told_at.saturating_sub(NEAR).max(sentence.from)..sentence.to.min(amount.at + NEAR))
            .filter(|&at| self.has(at, Cue::Morning));
        let other = (told_at..amount.at).any(|at| self.has(at, Cue::Put));
        (alike && apart && told_on == Some(day) && !quantity.implied && !other && hours.count() >= 2).then_some(Atom {
            at: told_at,
            what: Piece::Thing(thing),
            of: quantity.unit.is_none(),
            ..amount
        })
    }

    fn hour_follows(&self, clause: &Clause, at: usize) -> bool {
        const JOINTS: Cues = Cues::of(&[Cue::In, Cue::Of, Cue::Chatter, Cue::At]);
        let joint = |i: &usize| self.node(*i).any(&JOINTS) && !self.has(*i, Cue::Morning);
        (at + 1..clause.to.min(at + 4)).find(|i| !joint(i)).is_some_and(|i| self.has(i, Cue::Morning))
    }

    /// "subah 2 balti, sham ko 1 balti gobar": what went in is named at the last hour only.
    pub(super) fn named_at_the_other_hour(&mut self) {
        for later in 1..self.facts.len() {
            let (at, before) = (&self.facts[later - 1].0, &self.facts[later - 1].1);
            let (named_at, after) = (&self.facts[later].0, &self.facts[later].1);
            let (
                What::Fed { feed: Feed::FoodWaste, amount: Some(_), unit },
                What::Fed { feed, amount: Some(_), unit: same },
            ) = (&before.what, &after.what)
            else {
                continue;
            };
            let Some(clause) = self.clause_of(*at).map(|index| &self.clauses[index]) else { continue };
            let span = clause.from..*named_at;
            let hours = span.clone().filter(|&at| self.has(at, Cue::Morning)).count();
            let one = self.clause_of(*named_at).is_some_and(|index| self.clauses[index].sentence == clause.sentence);
            let unnamed = (clause.from..clause.to.min(*named_at)).all(|at| self.node(at).feed().is_none());
            let apart = before.day == after.day && hours >= 2
                || before.day != after.day && clause.range().any(|at| self.node(at).when().is_some());
            if unit == same && apart && one && unnamed && at < named_at {
                let (feed, unit) = (*feed, *unit);
                if let What::Fed { feed: of, unit: its, .. } = &mut self.facts[later - 1].1.what {
                    (*of, *its) = (feed, unit);
                }
            }
        }
    }

    /// "2 kg on Monday, 3 on Tuesday", "5 kg of dung yesterday, 4 kg today": an amount alone for another day is of what was
    /// told just before, in its unit.
    pub(super) fn of_another_day(&self, clause: &Clause, amount: Atom, day: i32) -> Option<(Thing, Portion)> {
        const BESIDE: Cues = Cues::of(&[Cue::And, Cue::Put, Cue::Chatter, Cue::In, Cue::Of, Cue::Only, Cue::Colon]);
        let (told_at, told_on, thing, unit) = self.portion_told_last()?;
        let number = match amount.what {
            Piece::Bare(number) => number,
            Piece::Amount(quantity) if !quantity.implied => {
                let alike = self.portion_of(amount, None, false, None).ok().filter(|portion| portion.unit == unit)?;
                Number { value: alike.amount?, ..quantity.number? }
            }
            _ => return None,
        };
        let other_day = told_on.is_some_and(|told_on| told_on != day);
        let sentence = self.sentence(clause);
        let apart = told_at < amount.at && told_at >= sentence.from;
        let beside = |at: usize| {
            let node = self.node(at);
            let amount = node.quantity().is_some() || node.number().is_some();
            let said = node.when().is_some() || node.feed().is_some() || amount;
            said || node.any(&BESIDE) || node.mark() == Some(Mark::Comma)
        };
        let plain = (told_at..amount.at).chain(amount.at + 1..clause.to).all(|at| beside(at) || self.ordinary(at));
        (other_day && apart && plain && unit.is_some() && !number.weak && !number.doubtful() && number.value > 0.0)
            .then_some((thing, Portion { amount: Some(number.value), unit }))
    }

    /// "3 kg scraps 6 L": right after food in kilos, litres of nothing named are its water, where none is spoken of.
    pub(super) fn litres_beside_kilos(&self, clause: &Clause, amount: Atom) -> Option<f64> {
        const BESIDE: Cues = Cues::of(&[Cue::And, Cue::Put, Cue::With, Cue::Chatter, Cue::About, Cue::But]);
        let Piece::Amount(quantity) = amount.what else { return None };
        let litres =
            matches!(quantity.unit, Some(UnitWord::Volume(_))) && !quantity.implied && quantity.sized.is_none();
        let (fed_at, told) = self.facts.last()?;
        let fed = matches!(told.what, What::Fed { amount: Some(_), unit: Some(Unit::Kg), .. }) && *fed_at < amount.at;
        let here = self.clause_at(*fed_at).is_some_and(|near| near.sentence == clause.sentence);
        let beside = (*fed_at..amount.at).all(|at| {
            let node = self.node(at);
            let little = self.ordinary(at) && !self.row.is_long(node);
            node.kind != Kind::Unknown
                && (node.kind != Kind::Phrase || node.feed().is_some() || node.any(&BESIDE) || little)
        });
        if !(litres && fed && here && beside) || self.anywhere(&Cues::of(&[Cue::Water])) {
            return None;
        }
        self.portion_of(amount, None, false, None).ok()?.amount
    }

    /// "put cow dung 3 weeks ago, 4 buckets": an amount alone is of the one thing told before it without any.
    pub(super) fn amount_comes_after(&mut self, clause: &Clause, at: usize, portion: Portion) -> bool {
        // Only what was told just before can be meant, which also keeps a text of a thousand amounts cheap.
        const BACK: usize = 6;
        let sentence = self.sentence(clause).from;
        let open = |(told_at, told): &(usize, Told)| {
            (sentence..at).contains(told_at)
                && matches!(
                    told.what,
                    What::Fed { amount: None, unit: None, .. }
                        | What::Seeded { amount: None, unit: None, .. }
                        | What::Water { amount: None, unit: None }
                        | What::Alkali { amount: None, unit: None, .. }
                )
        };
        let late = self.facts.len().saturating_sub(BACK);
        let found = self.facts[late..].iter().filter(|told| open(told)).count();
        // "casca de manga e casca de banana, 4 kg": of all that one clause lists.
        let first = self.facts.len() - found;
        let listed = |(at, told): &(usize, Told)| {
            open(&(*at, told.clone()))
                && matches!(told.what, What::Fed { .. })
                && self.clause_of(*at) == self.clause_of(self.facts[first].0)
        };
        if found > 1 && portion.amount.is_some() && self.facts[first..].iter().all(listed) {
            let share = portion.amount.map(|all| round(all / found as f64, 4));
            for (_, told) in &mut self.facts[first..] {
                if let What::Fed { amount, unit, .. } = &mut told.what {
                    (*amount, *unit) = (share, portion.unit);
                }
            }
            return true;
        }
        let Some(last) = self.facts.iter().rposition(open).filter(|_| found == 1) else { return false };
        if last + 1 != self.facts.len() || portion.amount.is_none() {
            return false;
        }
        match &mut self.facts[last].1.what {
            What::Fed { amount, unit, .. }
            | What::Seeded { amount, unit, .. }
            | What::Water { amount, unit }
            | What::Alkali { amount, unit, .. } => {
                (*amount, *unit) = (portion.amount, portion.unit);
            }
            _ => return false,
        }
        true
    }

    /// "2 buckets, only water": the amount of nothing named that was told just before is the water's.
    pub(super) fn amount_came_before(&mut self, clause: &Clause, water: usize) -> bool {
        let Some((at, told)) = self.facts.last() else { return false };
        let What::Fed { feed: Feed::FoodWaste, amount: Some(amount), unit } = told.what else { return false };
        let unnamed = self.clause_at(*at).is_some_and(|before| {
            before.sentence == clause.sentence
                && before.to < clause.from
                && before.range().all(|i| self.node(i).feed().is_none())
        });
        if unnamed && let Some((at, told)) = self.facts.last_mut() {
            *at = water;
            told.what = What::Water { amount: Some(amount), unit };
        }
        unnamed
    }
}
