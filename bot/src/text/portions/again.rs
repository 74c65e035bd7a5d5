//! Again: an amount of nothing named that goes on from the portion told before it: the same at another hour, its water.

use super::super::clauses::Clause;
use super::super::nodes::Kind;
use super::super::notions::{Cue, Cues, UnitWord};
use super::super::reader::Reader;
use super::atoms::{Atom, Piece, Thing};
use bellyful_core::fact::{Unit, What};

impl Reader<'_> {
    /// "1 kg rice in the morning and 2 kg in the evening": the same again at another hour.
    pub(super) fn of_another_hour(&self, clause: &Clause, amount: Atom) -> Option<Atom> {
        const NEAR: usize = 5;
        let Piece::Amount(quantity) = amount.what else { return None };
        let (told_at, told) = self.facts.last()?;
        let (thing, unit) = match told.what {
            What::Fed { feed, amount: Some(_), unit } => (Thing::Feed(feed), unit),
            What::Water { amount: Some(_), unit } => (Thing::Water, unit),
            _ => return None,
        };
        let alike = match quantity.unit {
            Some(UnitWord::Mass(_)) => unit == Some(Unit::Kg),
            Some(UnitWord::Volume(_)) => unit == Some(Unit::L),
            Some(UnitWord::Of(measure)) => unit == Some(Unit::Of(measure)),
            _ => false,
        };
        let sentence = self.sentence(clause);
        let apart = *told_at < amount.at && *told_at >= sentence.from;
        let hours = (told_at.saturating_sub(NEAR).max(sentence.from)..sentence.to.min(amount.at + NEAR))
            .filter(|&at| self.has(at, Cue::Morning));
        let other = (*told_at..amount.at).any(|at| self.has(at, Cue::Put));
        (alike && apart && !quantity.implied && !other && hours.count() >= 2).then_some(Atom {
            at: *told_at,
            what: Piece::Thing(thing),
            ..amount
        })
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
        self.portion_of(amount, None, None).ok()?.amount
    }
}
