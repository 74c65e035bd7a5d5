//! Telling: an amount and its things made facts, or a doubt where the amount cannot be known.

use super::super::clauses::Clause;
use super::super::foods::counted;
use super::super::measured::round;
use super::super::nodes::{Number, Quantity, When};
use super::super::notions::{Cue, Cues, UnitWord};
use super::super::reader::Reader;
use super::super::reading::About;
use super::super::wordlist::Side;
use super::Purpose;
use super::atoms::{Atom, Piece, Thing};
use bellyful_core::fact::{Measure, Unit, What};
use bellyful_core::feeds::Feed;

/// An amount made ready to be told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Portion {
    pub(super) amount: Option<f64>,
    pub(super) unit: Option<Unit>,
}

impl Reader<'_> {
    pub(super) fn tell_portion(
        &mut self,
        clause: &Clause,
        things: &[Atom],
        amount: Option<Atom>,
        purpose: Purpose,
        fed_before: usize,
        last_unit: &mut Option<Unit>,
    ) {
        let from = things.iter().map(|a| a.at).chain(amount.map(|a| a.at)).min().unwrap_or(clause.from);
        let to = things.iter().map(|a| a.at).chain(amount.map(|a| a.at)).max().unwrap_or(clause.from);
        let day = match purpose {
            Purpose::Seeded => self.start_day(clause).unwrap_or_else(|| match self.portion_day(clause, from) {
                // "3 months old, begun with 500 kg of dung": on the day it began.
                0 => self.started_on().unwrap_or(0),
                day => day,
            }),
            _ => self.portion_day(clause, from),
        };
        let purpose = match purpose {
            Purpose::Fed if self.filled_it(things, day) => Purpose::Seeded,
            other => other,
        };
        let doing = self.done_here(clause);
        let first = things.first().and_then(Atom::thing);
        if let Some(thing) = things.first()
            && self.denied_thing(clause, thing.at, amount)
        {
            self.denied_portion(clause, thing, day);
            return;
        }
        // "bachcho ne polythene phenk diya": the bag itself.
        let one = |q: Quantity| q.implied || q.number.is_some_and(|n| n.weak);
        let itself = amount.filter(|amount| things.is_empty() && matches!(amount.what, Piece::Amount(q) if one(q)));
        let made_of = |at: usize| self.row.words_of(at).find_map(|word| word.feed);
        let itself = itself.and_then(|amount| self.node(amount.at).meaning.feed.or_else(|| made_of(amount.at)));
        let itself = itself.filter(|_| clause.has(Cue::Fell));
        if let Some(feed) = itself {
            let portion = Portion { amount: None, unit: None };
            self.tell_one(clause, from, day, Thing::Feed(feed), portion, purpose, false);
            self.use_up([from]);
            return;
        }
        if things.is_empty() && amount.is_some_and(|amount| self.fell_itself(clause, amount)) {
            self.doubt(About::Feed, from, to + 1);
            self.use_up([from]);
            return;
        }
        if let Some(water) = amount.filter(|_| things.is_empty() && purpose == Purpose::Fed)
            && let Some(litres) = self.litres_beside_kilos(clause, water)
        {
            self.tell(from, Some(day), What::Water { amount: Some(litres), unit: Some(Unit::L) });
            return;
        }
        let again = amount.filter(|_| things.is_empty()).and_then(|amount| self.of_another_hour(clause, amount, day));
        if let Some(again) = again {
            self.tell_portion(clause, &[again], amount, purpose, fed_before, last_unit);
            return;
        }
        let other_day = amount.filter(|_| things.is_empty() && purpose == Purpose::Fed);
        if let Some((thing, portion)) = other_day.and_then(|amount| self.of_another_day(clause, amount, day)) {
            self.tell_one(clause, from, day, thing, portion, purpose, false);
            return;
        }
        if things.is_empty() && !self.stands_alone(clause, amount, doing, purpose) {
            return;
        }
        if amount.is_none() && !self.bare_counts(clause, from, to, doing) {
            return;
        }
        if amount.is_none()
            && matches!(first, Some(Thing::Water))
            && clause.has(Cue::Only)
            && self.amount_came_before(clause, from)
        {
            return;
        }
        // "there is a lot of water in it" puts none in.
        let vague =
            amount.is_some_and(|a| matches!(a.what, Piece::Amount(q) if q.number.is_none() && q.unit.is_none()));
        // "it leaves soot on my pots": where it is, and no amount.
        let implied = amount.is_some_and(|a| matches!(a.what, Piece::Amount(q) if q.implied && q.number.is_none()));
        // "the bag of cement is 50 kg"
        let the_one = amount.is_some_and(|a| {
            matches!(a.what, Piece::Amount(q) if q.implied) && clause.has(Cue::Is) && self.is_the_thing(clause, a.at)
        });
        // "digestat un peu épais": how it is.
        let slurry = !things.is_empty() && things.iter().all(|one| one.thing() == Some(Thing::Feed(Feed::Digestate)));
        if (vague || implied || the_one) && !doing && (slurry || !self.only_portions(clause)) {
            return;
        }
        // A word that is a food only by a changed letter, among amounts of others, is no food.
        let misread = amount.is_none() && things.len() == 1 && self.row.misspelt(self.node(from));
        if misread && !things[0].parted() && self.facts.len() > fed_before {
            return;
        }
        if matches!(first, Some(Thing::Feed(_)))
            && !doing
            && amount.is_some_and(|a| matches!(a.what, Piece::Bare(n) if n.weak))
            && !self.only_portions(clause)
        {
            return;
        }
        if let (Some(Thing::Water), Some(Piece::Share(share))) = (first, amount.map(|a| a.what)) {
            self.water_share(clause, from, to, day, share, fed_before);
            return;
        }
        // "2 balti gobar aur 2 pani": of buckets too; kilos are no measure of water.
        let water_too = |unit: &Unit| {
            let counted = |amount: Atom| {
                matches!(amount.what, Piece::Bare(n) if !n.fraction) && (amount.parted() || amount.at == clause.from)
            };
            matches!(unit, Unit::Of(_)) && first == Some(Thing::Water) && amount.is_some_and(counted)
        };
        let carried = last_unit.filter(|unit| things.first().is_some_and(|thing| thing.of) || water_too(unit));
        // "half water": a half of the feed; "half a bucket of peels and half of water": of the bucket.
        if let (Some(Thing::Water), Some(Piece::Bare(number))) = (first, amount.map(|a| a.what))
            && number.fraction
            && carried.is_none()
        {
            self.water_share(clause, from, to, day, number.value, fed_before);
            return;
        }
        let carried = carried.or_else(|| amount.and_then(|_| self.of_the_measured(clause)));
        let one_by_one = things.first().is_some_and(|thing| self.has(thing.at, Cue::Counted));
        let whole = |a: Atom| matches!(a.what, Piece::Bare(n) if !n.fraction && !n.weak);
        let leads = self.row.lexicon.habits.part == Side::Before;
        // "2 douzaines d'avocats": a number of more words than one brings its "of".
        let plain = |a: Atom| whole(a) && self.node(a.at).to == self.node(a.at).from + 1;
        let of = leads && amount.is_some_and(plain) && things.first().is_some_and(|thing| thing.of);
        let amount = amount.map(|amount| self.in_the_sized(clause, amount, carried));
        let portion = match amount {
            // "3 of papaya": of something that "of" parts from its number, the unit is missing.
            Some(amount) => match self.portion_of(amount, first.filter(|_| one_by_one || !of), one_by_one, carried) {
                Ok(portion) => portion,
                Err(about) => {
                    // "three of that thing": what it is comes first.
                    let about = if first == Some(Thing::Pointed) { About::Feed } else { about };
                    self.doubt(about, from, to + 1);
                    return;
                }
            },
            None => Portion { amount: None, unit: None },
        };
        if matches!(first, Some(Thing::Pointed | Thing::Strange)) {
            self.doubt(About::Feed, from, to + 1);
            return;
        }
        if things.is_empty() {
            // "put some stuff from the market, 3 kg": of what is asked about already.
            let asked = self.unsure.last().is_some_and(|doubt| doubt.about == About::Feed);
            if asked && self.clause_before(clause).is_some_and(|before| before.has(Cue::Thing)) {
                self.use_up(from..=to);
                return;
            }
            if self.amount_comes_after(clause, from, portion) {
                return;
            }
            if let Some(strange) = self.strange_beside(clause, from) {
                self.doubt(About::Feed, from.min(strange), to.max(strange) + 1);
                return;
            }
            // "3 kg scraps 6 bowls": six bowls of what?
            let told = self.facts[fed_before.min(self.facts.len())..].iter();
            let fed = told.filter(|(_, told)| matches!(told.what, What::Fed { amount: Some(_), .. })).count();
            if fed > 0 && purpose == Purpose::Fed && !matches!(portion.unit, Some(Unit::Kg)) {
                self.doubt(About::Feed, from, to + 1);
                return;
            }
        }
        *last_unit = portion.unit.or(*last_unit);
        // "1 kg meat with a dead rat" is meat alone.
        let again =
            |at: usize| portion.amount.is_some() && things[..at].iter().any(|one| one.thing() == things[at].thing());
        let kept: Vec<Atom> = (0..things.len()).filter(|&at| !again(at)).map(|at| things[at]).collect();
        let things = kept.as_slice();
        // "2 kg each of cassava and yam peels"
        let each = (from.saturating_sub(1)..clause.to.min(to + 3)).any(|i| self.has(i, Cue::Each));
        let parts = if each { 1 } else { things.len().max(1) };
        let share = portion.amount.map(|total| total / parts as f64);
        if things.is_empty() {
            let thing = if self.water_was_meant(clause) { Thing::Water } else { Thing::Feed(Feed::FoodWaste) };
            self.tell_one(clause, from, day, thing, portion, purpose, true);
        }
        for thing in things {
            let part = Portion { amount: share.map(|s| round(s, 4)), unit: portion.unit };
            self.tell_one(
                clause,
                thing.at.min(from.max(thing.at)),
                day,
                thing.thing().expect("things are things"),
                part,
                purpose,
                false,
            );
        }
    }

    /// The amount as told: `Err` when it cannot be known.
    pub(super) fn portion_of(
        &self,
        amount: Atom,
        thing: Option<Thing>,
        one_by_one: bool,
        carried: Option<Unit>,
    ) -> Result<Portion, About> {
        let plain = |amount: Option<f64>, unit: Option<Unit>| Ok(Portion { amount: amount.map(|a| round(a, 4)), unit });
        match amount.what {
            Piece::Bare(number) => {
                if number.doubtful() {
                    return Err(About::Amount);
                }
                if number.value == 0.0 {
                    return plain(Some(0.0), Some(Unit::Kg));
                }
                match thing {
                    Some(Thing::Feed(feed)) if one_by_one || counted(feed) => {
                        plain(Some(number.value), Some(Unit::Of(Measure::Piece)))
                    }
                    _ if number.weak && carried.is_none() => plain(None, None),
                    _ => match carried {
                        Some(unit) => plain(Some(number.value), Some(unit)),
                        None => Err(About::Unit),
                    },
                }
            }
            Piece::Amount(quantity) => {
                let number = quantity.number;
                if number.is_some_and(|n| n.doubtful()) {
                    return Err(About::Amount);
                }
                let unit = match quantity.unit {
                    Some(UnitWord::Mass(_)) => Some(Unit::Kg),
                    Some(UnitWord::Volume(_)) => Some(Unit::L),
                    Some(UnitWord::Of(measure)) => Some(Unit::Of(measure)),
                    Some(UnitWord::Unclear) => return Err(About::Unit),
                    _ => None,
                };
                // "paav bhar" is a quarter of a kilo, "kilo" alone nothing certain.
                let whole =
                    matches!(quantity.unit, Some(UnitWord::Mass(by) | UnitWord::Volume(by)) if by != 0.25 && by != 0.5);
                let amount = if quantity.implied && whole { None } else { quantity.in_base() };
                // "1.500 kg" where a point parts thousands could be one and a half.
                if let (Some(value), Some(other)) = (amount, number.and_then(|n| n.other)) {
                    let by = value / number.map_or(1.0, |n| n.value).max(1e-9);
                    if (value >= 500.0 && other * by < 500.0)
                        || (value < 20.0 && other * by >= 20.0 && other * by < 5000.0 && matches!(unit, Some(Unit::L)))
                    {
                        return Err(About::Amount);
                    }
                }
                plain(amount, unit)
            }
            Piece::Share(_) | Piece::Thing(_) => plain(None, None),
        }
    }

    /// "one 10-litre bucket of dung and two of water": a number carried over is of measures as large.
    fn in_the_sized(&self, clause: &Clause, amount: Atom, carried: Option<Unit>) -> Atom {
        let Piece::Bare(number) = amount.what else { return amount };
        let sized = (clause.from..amount.at).rev().find_map(|at| self.node(at).quantity().filter(|q| q.unit.is_some()));
        match sized.and_then(|q| q.sized).filter(|_| carried == Some(Unit::L)) {
            Some((measure, one)) => {
                let number = Some(Number { value: number.value * one, ..number });
                let unit = Some(UnitWord::Volume(1.0));
                let quantity = Quantity { number, unit, implied: false, sized: Some((measure, one)) };
                Atom { what: Piece::Amount(quantity), ..amount }
            }
            None => amount,
        }
    }

    /// "my bucket is 18 litres, I put 2", "... 2 of water": of what was measured before.
    pub(super) fn of_the_measured(&self, clause: &Clause) -> Option<Unit> {
        let sentence = self.sentence(clause);
        self.facts.iter().rev().find_map(|(at, told)| match told.what {
            What::Measure { unit, .. } if *at < clause.to && *at >= sentence.from => Some(Unit::Of(unit)),
            _ => None,
        })
    }

    /// "old kpomo 2 kg": a word that is not listed stands where the food is said, so it is not just anything.
    fn strange_beside(&self, clause: &Clause, amount: usize) -> Option<usize> {
        let strange = |at: &usize| {
            let node = self.node(*at);
            node.unknown() && self.row.is_long(node) && !self.row.capital(node)
        };
        let near = amount.saturating_sub(3).max(clause.from)..clause.to.min(amount + 4);
        near.into_iter().find(strange)
    }

    /// "I forgot water, so added one bucket": the clause before names water, and nothing is fed in the text.
    fn water_was_meant(&self, clause: &Clause) -> bool {
        let before = self.clause_before(clause);
        let denied = Cues::of(&[Cue::PutNot, Cue::Not, Cue::Without, Cue::DontKnow]);
        before.is_some_and(|before| before.has(Cue::Water) && before.any(&denied))
            && self.row.nodes.iter().all(|node| node.feed().is_none())
    }

    /// "a spoon fell in": the spoon itself, or what was on it?
    fn fell_itself(&self, clause: &Clause, amount: Atom) -> bool {
        let Piece::Amount(q) = amount.what else { return false };
        let inside = !q.implied || clause.any(&Cues::of(&[Cue::In, Cue::Tank, Cue::Inlet]));
        let done = clause.any(&Cues::of(&[Cue::Put, Cue::Remove]));
        matches!(q.unit, Some(UnitWord::Of(_))) && clause.has(Cue::Fell) && inside && !done && !clause.asks
    }

    #[allow(clippy::too_many_arguments)]
    fn tell_one(
        &mut self,
        clause: &Clause,
        at: usize,
        day: i32,
        thing: Thing,
        portion: Portion,
        purpose: Purpose,
        unnamed: bool,
    ) {
        let Portion { amount, unit } = portion;
        let what = match (purpose, thing) {
            (Purpose::Removed, Thing::Slurry) => What::Removed { amount, unit },
            (Purpose::Removed, Thing::Feed(_)) if unnamed => What::Removed { amount, unit },
            (Purpose::Removed, _) => return,
            (_, Thing::Alkali(what)) => What::Alkali { what, amount, unit },
            (Purpose::Usual, Thing::Water) => return,
            (_, Thing::Water) => What::Water { amount, unit },
            (Purpose::Seeded, Thing::Feed(feed)) => What::Seeded { feed, amount, unit },
            (Purpose::Usual, Thing::Feed(feed)) => What::Usual { feed, amount, unit },
            (Purpose::Fed, Thing::Feed(feed)) => What::Fed { feed, amount, unit },
            (_, Thing::Slurry | Thing::Pointed | Thing::Strange) => return,
        };
        // None given is none fed.
        if amount == Some(0.0) {
            match what {
                What::Fed { .. } => self.tell(at, Some(day), What::NotFed { days: 1 }),
                What::Water { .. } => self.tell(at, Some(day), What::Water { amount: Some(0.0), unit: Some(Unit::L) }),
                _ => {}
            }
            return;
        }
        if clause.has(Cue::Blocked) && matches!(what, What::Fed { .. }) && !clause.has(Cue::Put) {
            return;
        }
        let dated = !matches!(what, What::Usual { .. });
        self.tell(at, dated.then_some(day), what);
    }

    /// "started 3 weeks ago with 8 buckets of dung"
    fn start_day(&self, clause: &Clause) -> Option<i32> {
        let ago = |at: usize| if let Some(When::Ago(days)) = self.node(at).when() { Some(-days) } else { None };
        clause.range().find_map(ago)
    }

    fn started_on(&self) -> Option<i32> {
        self.facts.iter().find(|(_, told)| told.what == What::Started).and_then(|(_, told)| told.day)
    }

    fn portion_day(&self, clause: &Clause, at: usize) -> i32 {
        // The clause may be a list of several; days stand in the first.
        self.clause_at(at)
            .map_or_else(|| clause.day(at), |own| if own.days.is_empty() { clause.day(at) } else { own.day(at) })
    }
}
