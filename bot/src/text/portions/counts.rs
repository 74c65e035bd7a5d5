//! What counts: whether an amount or a thing said in passing is a portion at all, and what a denied one means.

use super::super::clauses::Clause;
use super::super::nodes::Kind;
use super::super::notions::{Cue, Cues, UnitWord};
use super::super::reader::Reader;
use super::super::reading::{About, Told};
use super::super::wordlist::Side;
use super::Purpose;
use super::atoms::{Atom, Piece, Thing};
use bellyful_core::fact::{Sign, Unit, What};
use bellyful_core::feeds::Feed;

impl Reader<'_> {
    /// Whether something was done with a feed here: put in, fallen in, taken out, started with.
    pub(super) fn done_here(&self, clause: &Clause) -> bool {
        clause.any(&Cues::of(&[Cue::Put, Cue::Fell, Cue::Remove, Cue::Seed, Cue::Start, Cue::NewTank]))
            || clause.has(Cue::Mend)
                && clause.range().any(|at| self.node(at).alkali().is_some() || self.node(at).feed() == Some(Feed::Ash))
    }

    /// "he has 5 sacks of droppings": what somebody has went in nowhere yet.
    pub(super) fn only_owned(&self, clause: &Clause, atoms: &[Atom]) -> bool {
        const LEADS: Cues = Cues::of(&[Cue::About, Cue::Some, Cue::Only, Cue::Modifier, Cue::Still, Cue::At]);
        let (Some(first), true) = (atoms.first(), clause.has(Cue::Owns)) else { return false };
        let lead = (clause.from..first.at).rev().find(|&at| !self.node(at).any(&LEADS) || self.has(at, Cue::Owns));
        // Where what is owned stands before the verb, the owner opens the clause.
        let opens = (clause.from..first.at).any(|at| self.has(at, Cue::Owns));
        let owned = match self.row.lexicon.habits.negation {
            Side::Before => lead.is_some_and(|at| self.has(at, Cue::Owns)),
            _ => opens,
        };
        owned
            && !self.done_here(clause)
            && !self.put_in_after(clause)
            && !clause.any(&Cues::of(&[Cue::Water, Cue::Gas, Cue::GasBag, Cue::Tank]))
    }

    /// An amount of nothing named: of feed, when it can be.
    pub(super) fn stands_alone(
        &mut self,
        clause: &Clause,
        amount: Option<Atom>,
        doing: bool,
        purpose: Purpose,
    ) -> bool {
        const DONE: Cues = Cues::of(&[Cue::Put, Cue::Fell, Cue::Remove]);
        let Some(amount) = amount else { return false };
        // "it holds 20 litres": how big something is, but what?
        if matches!(amount.what, Piece::Amount(q) if !q.implied && matches!(q.unit, Some(UnitWord::Volume(_))))
            && clause.has(Cue::Holds)
            // One word may hold and carry in ("leva").
            && !clause.range().any(|i| self.node(i).any(&DONE) && !self.has(i, Cue::Holds))
        {
            self.doubt(About::Unit, amount.at, amount.at + 1);
            self.use_up([amount.at]);
            return false;
        }
        // "1 sack weighs about 25 kg"
        let is = amount.at > clause.from && self.has(amount.at - 1, Cue::Is);
        let of_one = is && clause.range().any(|i| self.node(i).quantity().is_some_and(|q| q.implied) && i < amount.at);
        let weighed = (clause.has(Cue::Holds) || of_one)
            && !clause.any(&DONE)
            && clause.range().any(|i| {
                self.node(i).quantity().is_some_and(|q| !q.implied && matches!(q.unit, Some(UnitWord::Mass(_))))
            });
        if weighed {
            return false;
        }
        let gas_talk = clause.any(&Cues::of(&[Cue::Gas, Cue::GasBag, Cue::Flame, Cue::Cook, Cue::Stove, Cue::Tank]))
            && !clause.has(Cue::Put)
            && !doing;
        match amount.what {
            // "got the drum yesterday", "puts the big pot": the thing itself.
            Piece::Amount(q) if q.implied && self.is_the_thing(clause, amount.at) => false,
            Piece::Amount(q) if q.implied || q.unit.is_none() => {
                clause.any(&Cues::of(&[Cue::Put])) && q.unit.is_some() && !gas_talk
            }
            Piece::Amount(q) => {
                if q.number.is_none() {
                    return doing;
                }
                let measured = matches!(q.unit, Some(UnitWord::Mass(_) | UnitWord::Of(_) | UnitWord::Unclear))
                    || doing
                    || matches!(q.unit, Some(UnitWord::Volume(_))) && self.only_portions(clause);
                measured && !gas_talk
            }
            Piece::Bare(number) => {
                // "the bus leaves at 6"
                let clock = self.has(amount.at + 1, Cue::At) || amount.at > 0 && self.has(amount.at - 1, Cue::At);
                if number.weak || number.fraction && !doing || clock {
                    return false;
                }
                if number.value == 0.0 && (doing || clause.has(Cue::Tank) || clause.to - clause.from <= 3) {
                    return true;
                }
                let put = doing && purpose != Purpose::Removed && clause.any(&Cues::of(&[Cue::Put]));
                if put && self.of_the_measured(clause).is_some() {
                    return true;
                }
                if put {
                    self.doubt(About::Unit, amount.at, amount.at + 1);
                    self.use_up([amount.at]);
                }
                false
            }
            _ => false,
        }
    }

    pub(super) fn is_the_thing(&self, clause: &Clause, at: usize) -> bool {
        let lead = (clause.from..at).rev().find(|&i| !self.has(i, Cue::Modifier) || self.has(i, Cue::My));
        self.row.lexicon.habits.part == Side::After && lead.is_some_and(|i| self.has(i, Cue::My))
    }

    /// A feed named with no amount: told as fed only where feeding is spoken of or nothing else is.
    pub(super) fn bare_counts(&self, clause: &Clause, from: usize, to: usize, doing: bool) -> bool {
        let cooks =
            clause.any(&Cues::of(&[Cue::Cook, Cue::Lasted])) && !clause.has(Cue::Put) || self.timed_food(clause);
        // "it smells of vinegar, acid"
        let tasted = !doing && (from..=to).all(|i| self.node(i).feed().is_none() || self.has(i, Cue::Sour));
        // "fried fish and put the oil in": what was cooked stands behind its own verb.
        let verb =
            (clause.from..from).rev().find(|&at| self.node(at).any(&Cues::of(&[Cue::Cook, Cue::Put, Cue::Fell])));
        let verb_first = self.row.lexicon.habits.negation == Side::Before;
        let cooked = verb_first
            && verb
                .is_some_and(|at| self.has(at, Cue::Cook) && !self.has(at, Cue::Put) && self.node(at).feed().is_none());
        let cooks = cooks || cooked && (to + 1..clause.to).any(|at| self.free(at, Cue::Put));
        let burns = clause.has(Cue::Burning) && !doing;
        // "the slurry is too thin": nobody fed it.
        if !doing && (from..=to).all(|i| self.node(i).feed() == Some(Feed::Digestate)) {
            return false;
        }
        // "dome of bricks": what the tank is made of.
        let built = |i: usize| matches!(self.node(i).feed(), Some(Feed::Soil | Feed::Wood | Feed::Plastic));
        if !doing && clause.any(&Cues::of(&[Cue::Tank, Cue::GasBag])) && (from..=to).any(built) {
            return false;
        }
        let blocks = [Sign::InletBlocked, Sign::OutletBlocked, Sign::GasLineBlocked];
        let named_blocked = |i: usize| self.node(i).meaning.sign.is_some_and(|sign| blocks.contains(&sign));
        let blocked = self.facts.iter().rev().take(8).any(|(at, told)| {
            let sentence = self.sentence(clause);
            (sentence.from..sentence.to).contains(at)
                && matches!(told.what, What::Sign { sign } if blocks.contains(&sign))
        });
        if cooks
            || burns
            || blocked && !clause.has(Cue::Put)
            || clause.has(Cue::Blocked)
            || clause.range().any(named_blocked)
            || tasted && (from..=to).any(|i| self.has(i, Cue::Sour))
        {
            return false;
        }
        // "the tank is empty": a word that is a food as well.
        let level = (from..=to).any(|i| self.node(i).feed().is_some() && self.node(i).meaning.level.is_some());
        if level && !clause.has(Cue::Put) {
            return false;
        }
        let water_only = (from..=to).all(|i| self.node(i).feed().is_none());
        // "why does it overflow when I put water"
        if water_only && self.sentence(clause).cues.has(Cue::Why) {
            return false;
        }
        // "the effluent comes out clear, pure water": how it looks.
        let looks = |(_, told): &(usize, Told)| told.what == What::Sign { sign: Sign::WaterySlurry };
        if water_only && (from..=to).any(|i| self.has(i, Cue::Watery)) && self.facts.iter().any(looks) {
            return false;
        }
        if water_only && !doing {
            let only = clause.has(Cue::Only) && !clause.has(Cue::Tank) || self.amount_follows(clause);
            // "Leo ni maji tu"
            let little = |at: usize| {
                self.has(at, Cue::Is)
                    || self.has(at, Cue::Only)
                    || self.has(at, Cue::Water)
                    || self.node(at).when().is_some()
            };
            return only && (self.only_portions(clause) || clause.has(Cue::PutNot) || clause.range().all(little));
        }
        doing || self.only_portions(clause)
    }

    /// "water, 2 buckets": the clause after this one says how much, and no more.
    fn amount_follows(&self, clause: &Clause) -> bool {
        let next = self.clause_after(clause, clause.from);
        next.is_some_and(|next| {
            let amounts = next.range().filter(|&at| self.node(at).quantity().is_some_and(|q| q.amount().is_some()));
            amounts.count() == 1
                && self.only_portions(next)
                && next.range().all(|at| self.node(at).feed().is_none() && !self.has(at, Cue::Water))
        })
    }

    /// Whether the clause holds nothing but foods, amounts, days and joints.
    pub(super) fn only_portions(&self, clause: &Clause) -> bool {
        const PLAIN: Cues = Cues::of(&[
            Cue::And,
            Cue::Of,
            Cue::In,
            Cue::With,
            Cue::Only,
            Cue::About,
            Cue::Some,
            Cue::Modifier,
            Cue::My,
            Cue::Morning,
            Cue::At,
            Cue::Chatter,
            Cue::Colon,
            Cue::Water,
            Cue::Put,
            Cue::Tank,
            Cue::Now,
            Cue::Again,
            Cue::Yes,
            Cue::No,
            Cue::Same,
            Cue::Double,
            Cue::HalfShare,
            Cue::Habit,
            Cue::Sized,
        ]);
        // "frm the canteen"
        let whence = (clause.from + 1..clause.to).find(|&at| self.has(at, Cue::Since) && clause.to - at <= 4);
        let prepositions = self.row.lexicon.habits.negation != Side::After;
        let whence =
            whence.filter(|&from| prepositions && (from + 1..clause.to).all(|at| self.node(at).kind == Kind::Phrase));
        (clause.from..whence.unwrap_or(clause.to)).all(|at| {
            let node = self.node(at);
            match node.kind {
                Kind::Phrase => {
                    node.feed().is_some()
                        || node.any(&PLAIN)
                        || node.meaning.number.is_some()
                        || node.used
                        || node.meaning.control.is_some()
                }
                Kind::Unknown => false,
                _ => true,
            }
        })
    }

    /// "no water", "didn't put meat": the thing itself is denied.
    pub(super) fn denied_thing(&self, clause: &Clause, at: usize, amount: Option<Atom>) -> bool {
        if let Some(amount) = amount.filter(|a| !matches!(a.what, Piece::Bare(n) if n.weak)) {
            // "no 3 kg" is a mending; an amount was given. But "without 2 kg" does not occur.
            let vague = matches!(amount.what, Piece::Amount(q) if q.number.is_none());
            // "don't put more than 3 kg"
            let forbidden = self.row.lexicon.habits.negation == Side::Before
                && (clause.from + 1..amount.at.min(at))
                    .rev()
                    .take(4)
                    .any(|i| self.node(i).kind == Kind::Phrase && self.has(i, Cue::Put) && self.has(i - 1, Cue::Not));
            return forbidden || vague && self.denied(clause, at);
        }
        // "didn't add water": the doing is denied, and the thing with it.
        let doing =
            (clause.from..at).rev().take(4).find(|&i| self.node(i).kind == Kind::Phrase && self.has(i, Cue::Put));
        let after = self.row.lexicon.habits.negation == Side::After
            && (at + 1..clause.to.min(at + 3)).any(|i| self.node(i).kind == Kind::Phrase && self.has(i, Cue::PutNot));
        after || self.denied(clause, at) || doing.is_some_and(|doing| self.denied(clause, doing))
    }

    /// "no water, 2 buckets of dung": a clause of nothing but an amount and a food.
    fn feeds_anywhere(&self) -> bool {
        self.clauses.iter().any(|clause| {
            let food = |at: usize| self.node(at).feed().is_some();
            let amount = |at: usize| self.node(at).quantity().is_some_and(|q| !q.implied && q.unit.is_some());
            !clause.asks && clause.range().any(food) && clause.range().any(amount) && self.only_portions(clause)
        })
    }

    pub(super) fn denied_portion(&mut self, clause: &Clause, thing: &Atom, day: i32) {
        let fed = |reader: &Self| {
            let put = |what: &What| matches!(what, What::Fed { .. } | What::Seeded { .. } | What::NotFed { .. });
            reader.facts.iter().any(|(_, told)| put(&told.what))
        };
        match thing.thing() {
            Some(Thing::Water)
                if self.done_here(clause)
                    || fed(self)
                    || self.anywhere(&Cues::of(&[Cue::Put]))
                    || self.feeds_anywhere() =>
            {
                self.tell(thing.at, Some(day), What::Water { amount: Some(0.0), unit: Some(Unit::L) });
                self.use_up([thing.at]);
            }
            Some(Thing::Feed(Feed::FoodWaste)) => {
                // "4 days nobody gave it food"
                let spans = clause.range().filter_map(|at| self.node(at).quantity());
                let days =
                    spans.filter(|span| matches!(span.unit, Some(UnitWord::Days(_)))).find_map(|span| span.in_base());
                let days = days.map_or(1, |days| days.round().max(1.0) as u32);
                let each = self.neither_day(clause);
                for &(at, day) in clause.days.iter().filter(|_| each) {
                    self.tell(at, Some(day), What::NotFed { days: 1 });
                }
                if !each {
                    self.tell(thing.at, Some(day), What::NotFed { days });
                }
            }
            Some(Thing::Feed(_)) if clause.has(Cue::Nothing) => {}
            _ => {}
        }
    }
}
