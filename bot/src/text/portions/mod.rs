//! Portions: what went in, how much of it, and what for: feed, water, starter, habit, alkali, or slurry taken out.
//!
//! Takes the clauses; tells the facts that they make of amounts and things. `atoms` picks out what matters, `pairs`
//! joins each amount to what it is of, `counts` says whether it is told at all, `tell` tells it; `unfed` tells of days
//! without feeding. What has no unit, or could be two amounts, is a doubt.

mod again;
mod atoms;
mod counts;
mod lists;
mod pairs;
mod plants;
mod shares;
mod tell;
mod unfed;
mod weighed;

use super::clauses::Clause;
use super::foods::peel_of;
use super::nodes::Kind;
use super::notions::{BEASTS, Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::{About, LONG_AGO, Told};
use super::wordlist::Side;
use atoms::{Atom, Piece, Thing};
use bellyful_core::fact::{Sign, What};
use bellyful_core::feeds::Feed;

/// What a clause makes of its portions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Purpose {
    Fed,
    Usual,
    Seeded,
    Removed,
}

impl Reader<'_> {
    pub fn portions(&mut self) {
        self.sour_told = self.facts.iter().any(|(_, told)| matches!(told.what, What::Sign { sign: Sign::SourSmell }));
        // Clauses that go on a list are read as one.
        let mut at = 0;
        while at < self.clauses.len() {
            let mut end = at + 1;
            while end < self.clauses.len() && self.goes_on(at, end) {
                end += 1;
            }
            self.portions_of(at, end);
            at = end;
        }
        self.named_at_the_other_hour();
    }

    fn portions_of(&mut self, first: usize, end: usize) {
        let mut clause = self.clauses[first].clone();
        clause.to = self.clauses[end - 1].to;
        if clause.plan {
            return;
        }
        self.peels_of_the_eaten(&clause);
        self.on_plants(&mut clause);
        let atoms = self.atoms(first, end);
        if self.put_off(&clause, end) {
            self.use_up(atoms.iter().map(|atom| atom.at));
            return;
        }
        if self.only_owned(&clause, &atoms) {
            self.use_up(atoms.iter().map(|atom| atom.at));
            return;
        }
        if self.same_alone(&clause) {
            self.doubt(About::Amount, clause.from, clause.to);
            return;
        }
        let put_later = self.put_in_after(&clause);
        if put_later {
            clause.cues.insert(Cue::Put);
            clause.cues.remove(Cue::Elsewhere);
        }
        let signs =
            self.facts.iter().any(|(at, told)| clause.range().contains(at) && matches!(told.what, What::Sign { .. }));
        // "usual feed is 2 kg scraps": how much that is.
        let told = (clause.from + 1..clause.to)
            .any(|at| self.has(at - 1, Cue::AsUsual) && self.node(at).any(&Cues::of(&[Cue::Is, Cue::Colon])));
        if told && atoms.iter().any(|atom| matches!(atom.what, Piece::Amount(q) if !q.implied && q.number.is_some())) {
            clause.cues.remove(Cue::AsUsual);
            clause.habit = true;
        }
        if clause.has(Cue::AsUsual)
            && !signs
            && !clause.any(&Cues::of(&[Cue::OutletUsual, Cue::Smell]))
            && !clause.asks
            && (clause.any(&Cues::of(&[Cue::Put]))
                || !atoms.is_empty()
                || clause.range().all(|at| self.node(at).any(&Cues::of(&[Cue::AsUsual, Cue::Chatter])))
                || end - first == self.clauses.len()
                || self.clause_before(&clause).is_some_and(|before| before.has(Cue::Put)))
        {
            self.doubt(About::Amount, clause.from, clause.to);
            return;
        }
        if clause.asks && !clause.has(Cue::Why) {
            return;
        }
        if self.half_the_tank(&clause) {
            return;
        }
        // "he burned rubbish and it ran to our gas bag": what is told with a danger, in no amount, went in nowhere.
        let amount = |atom: &Atom| matches!(atom.what, Piece::Amount(q) if !q.implied && q.number.is_some());
        // "and now the rag is on fire": what burns is no food.
        let mut atoms = atoms;
        if self.endangers(&clause) {
            atoms.retain(|atom| !self.has(atom.at, Cue::BurnThing) || self.node(atom.at).quantity().is_some());
        }
        // "a stick punctured the bag": with what.
        let tears = |told: &What| matches!(told, What::Sign { sign: Sign::BagTorn | Sign::TankCracked });
        let torn = self.facts.iter().any(|(at, told)| clause.range().contains(at) && tears(&told.what));
        if (torn || self.endangers(&clause)) && !self.done_here(&clause) && !atoms.iter().any(amount) {
            return;
        }
        // "fire near the hose, we poured sand": against the fire.
        let sentence = self.sentence(&clause);
        let fire = |told: &What| matches!(told, What::Sign { sign: Sign::Fire });
        let burns = self.facts.iter().any(|(at, told)| (sentence.from..sentence.to).contains(at) && fire(&told.what));
        let quenches = |atom: &Atom| {
            let against = matches!(atom.thing(), Some(Thing::Water | Thing::Feed(Feed::Soil)));
            against || atom.thing().is_none()
        };
        if burns && !clause.any(&Cues::of(&[Cue::Tank, Cue::Inlet])) && atoms.iter().all(quenches) {
            return;
        }
        // "threw the eggs to the dogs"
        let given = clause.has(Cue::ToOthers) && !clause.any(&Cues::of(&[Cue::Tank, Cue::Slurry]));
        // "poured 5 buckets of slurry at the trees"
        let poured =
            clause.has(Cue::Crops) && clause.has(Cue::Slurry) && !clause.any(&Cues::of(&[Cue::Remove, Cue::Tank]));
        if given || poured && clause.range().all(|at| self.node(at).feed().is_none() || self.node(at).used) {
            self.use_up(atoms.iter().map(|atom| atom.at));
            return;
        }
        if !put_later && self.for_people(&clause, &atoms) {
            self.use_up(atoms.iter().map(|atom| atom.at));
            return;
        }
        if self.only_holds(&clause) {
            self.use_up(atoms.iter().map(|atom| atom.at));
            return;
        }
        let purpose = self.purpose(&clause, first);
        let fed_before = self.facts.len();
        let mut last_unit = self.unit_before(&clause);
        // "double the water with 2 kg peels": a share of what is told after it.
        if atoms.len() > 2
            && matches!(atoms[0].what, Piece::Share(_))
            && atoms[1].thing() == Some(Thing::Water)
            && self.facts.iter().all(|(_, told)| !matches!(told.what, What::Fed { .. }))
        {
            atoms.rotate_left(2);
        }
        let mut at = 0;
        while at < atoms.len() {
            at = self.portion(&clause, &atoms, at, purpose, fed_before, &mut last_unit);
        }
        self.told_twice(fed_before);
    }

    /// "got 3 kg of mango, will put tomorrow": what the next clause only plans to put in.
    fn put_off(&self, clause: &Clause, next: usize) -> bool {
        const PUTS: Cues = Cues::of(&[Cue::Put, Cue::PutPlan]);
        let next =
            self.clauses.get(next).filter(|next| next.sentence == clause.sentence && next.plan && next.any(&PUTS));
        let own = |at: usize| {
            let node = self.node(at);
            node.feed().is_some() || node.has(Cue::Water) || node.quantity().is_some_and(|q| !q.implied)
        };
        !self.done_here(clause) && next.is_some_and(|next| !next.range().any(own))
    }

    /// "same": the whole text, so of all that was told last.
    fn same_alone(&self, clause: &Clause) -> bool {
        const SAME: Cues = Cues::of(&[Cue::Same, Cue::Modifier, Cue::Other]);
        let same = |at: usize| self.has(at, Cue::Same) && self.node(at).meaning.cues.only(&SAME);
        self.clauses.len() == 1 && !clause.asks && clause.range().all(same)
    }

    /// "1 kg meat, a dead rat in it": of one feed, what has no amount is within what has.
    fn told_twice(&mut self, from: usize) {
        let told = self.facts.split_off(from);
        let measured = |of: Feed| {
            told.iter().any(|(_, told)| matches!(told.what, What::Fed { feed, amount: Some(_), .. } if feed == of))
        };
        let bare = |told: &Told| matches!(told.what, What::Fed { amount: None, unit: None, .. });
        let twice = |at: usize| bare(&told[at].1) && told[..at].iter().any(|before| before.1 == told[at].1);
        let told: Vec<(usize, Told)> = (0..told.len()).filter(|&at| !twice(at)).map(|at| told[at].clone()).collect();
        let kept = |told: &&(usize, Told)| !matches!(told.1.what, What::Fed { feed, amount: None, unit: None } if measured(feed));
        self.facts.extend(told.iter().filter(kept).cloned());
    }

    /// "ate 3 mangoes and put the skins in": the peels of what stood before, in no amount.
    fn peels_of_the_eaten(&mut self, clause: &Clause) {
        const EATS: Cues = Cues::of(&[Cue::Elsewhere, Cue::Cook, Cue::Peel]);
        if self.row.lexicon.habits.part != Side::After {
            return;
        }
        let bare = |at: usize| self.has(at, Cue::Peel) && self.node(at).feed() == Some(Feed::VegetableWaste);
        let Some(peels) = (clause.from + 2..clause.to).find(|&at| bare(at) && self.has(at - 1, Cue::My)) else {
            return;
        };
        let and = |at: &usize| self.has(*at, Cue::And) && self.node(*at).kind == Kind::Phrase;
        let Some(joint) = (clause.from..peels).rev().find(and) else { return };
        let puts = (joint..peels).any(|at| self.has(at, Cue::Put));
        let eats = (clause.from..joint).any(|at| self.node(at).any(&EATS) && self.node(at).feed().is_none());
        let whole = (clause.from..joint).rev().find_map(|at| peel_of(self.node(at)));
        if let Some(feed) = whole.filter(|_| puts && eats) {
            self.row.nodes[peels].meaning.feed = Some(feed);
            self.use_up(clause.from..joint);
        }
    }

    /// "the bread was stale, I put it in", "cooked too much rice so threw the rest in the tank": what a clause names, a
    /// later one of its sentence puts in, naming nothing itself.
    fn put_in_after(&self, clause: &Clause) -> bool {
        const BESIDE: Cues = Cues::of(&[Cue::Put, Cue::Crops, Cue::Remove]);
        let food = clause.range().any(|at| self.node(at).feed().is_some() && !self.node(at).used);
        if !food || clause.any(&BESIDE) || clause.asks {
            return false;
        }
        let after =
            self.clauses.iter().filter(|next| next.from >= clause.to && next.sentence == clause.sentence).take(2);
        after.into_iter().any(|next| {
            let puts = next.range().find(|&at| self.has(at, Cue::Put) && self.node(at).kind == Kind::Phrase);
            let that =
                |at: usize| self.has(at, Cue::ThatOne) && self.node(at).quantity().is_none_or(|q| q.unit.is_none());
            let names = |at: usize| {
                let node = self.node(at);
                let amount =
                    node.number().is_some_and(|n| !n.weak) || node.quantity().is_some_and(|q| q.unit.is_some());
                !that(at) && (node.feed().is_some() || amount || node.any(&BEASTS) || node.has(Cue::Water))
            };
            puts.is_some_and(|at| !self.denied(next, at))
                && !next.plan
                && !next.asks
                && !next.any(&Cues::of(&[Cue::PutNot, Cue::ToOthers, Cue::Crops]))
                && next.range().any(that)
                && !next.range().any(names)
        })
    }

    /// "ek balti me 8 kilo gobar aata hai": what a vessel holds went in nowhere.
    fn only_holds(&self, clause: &Clause) -> bool {
        let vessel = |at: usize| {
            let measure =
                |q: super::nodes::Quantity| matches!(q.unit, Some(UnitWord::Of(_))) && q.amount() == Some(1.0);
            self.node(at).quantity().is_some_and(measure) && self.has(at + 1, Cue::In)
        };
        let holds = |at: usize| {
            self.has(at, Cue::Holds)
                && !self.row.words_of(at).any(|word| word.cues.any(&Cues::of(&[Cue::Of, Cue::Put])))
        };
        self.row.lexicon.habits.part == Side::After
            && clause.range().any(holds)
            && clause.range().any(vessel)
            && !clause.any(&Cues::of(&[Cue::Put, Cue::Fell, Cue::Tank]))
    }

    /// What was bought, eaten or cooked by the family went into no digester.
    fn for_people(&self, clause: &Clause, atoms: &[Atom]) -> bool {
        // "por", "nimelipa": words that may put in, but also pay.
        let puts = |at: usize| self.has(at, Cue::Put) && !self.node(at).any(&Cues::of(&[Cue::Since, Cue::Elsewhere]));
        if clause.any(&Cues::of(&[Cue::Fell, Cue::Seed, Cue::Tank, Cue::Slurry])) || clause.range().any(puts) {
            return false;
        }
        if clause.has(Cue::Elsewhere) {
            return true;
        }
        if clause.has(Cue::Remove) {
            return false;
        }
        let timed = clause
            .range()
            .any(|at| self.node(at).quantity().is_some_and(|q| matches!(q.unit, Some(UnitWord::Time(_)))));
        let cook = |at: usize| self.node(at).kind == Kind::Phrase && self.has(at, Cue::Cook);
        // "cooked 3 kg rice", "3 kilo chawal pakaya", and not "cooked rice 3 kg".
        let named = atoms.iter().any(|atom| atom.thing().is_some());
        let (Some(first), Some(last)) = (atoms.first().filter(|_| named), atoms.last()) else { return false };
        // "roasted 2 kg fish in 45 minutes": the cooking stands right before the amount.
        let right_before = first.at > clause.from && cook(first.at - 1) && first.thing().is_none();
        let from = first.at.saturating_sub(2).max(clause.from);
        let cooked = (from..first.at).any(cook) && first.thing().is_none()
            || (last.at + 1..clause.to.min(last.at + 3)).any(|at| cook(at) && !self.has(at, Cue::Modifier));
        // "the rice burned in the pot"
        let measured = |atom: &Atom| {
            matches!(atom.what, Piece::Amount(q) if !q.implied) || matches!(atom.what, Piece::Bare(n) if !n.weak)
        };
        let burnt = clause
            .range()
            .any(|at| self.speaks_of(at, &Cues::of(&[Cue::Burning, Cue::Harm])) && self.node(at).feed().is_none());
        let burnt = burnt && !atoms.iter().any(measured) && first.thing().is_some();
        right_before || cooked && !timed || burnt
    }

    fn purpose(&self, clause: &Clause, index: usize) -> Purpose {
        // "drew 3 buckets of slurry and put it in the garden" feeds nothing, unless a food is named.
        let food = |at: usize| {
            let node = self.node(at);
            node.feed().is_some_and(|feed| feed != Feed::Digestate) && !node.used
        };
        let garden = clause.has(Cue::Crops) && !clause.has(Cue::Tank) && !clause.range().any(food);
        // "emptied 5 barrows of slurry": of a word that may put in as well, the slurry says which.
        let both = |at: usize| !self.has(at, Cue::Put) || self.has(at, Cue::Remove);
        let emptied = clause.has(Cue::Slurry) && !clause.has(Cue::Tank) && clause.range().all(both);
        if clause.has(Cue::Remove) && (!clause.has(Cue::Put) || garden || emptied) {
            return Purpose::Removed;
        }
        let new = Cues::of(&[Cue::Seed, Cue::Start, Cue::NewTank]);
        let starts = clause.any(&new)
            && (!clause.has(Cue::Running) || clause.any(&Cues::of(&[Cue::NewTank, Cue::Seed])))
            || index > 0
                && self.clauses[index - 1].any(&Cues::of(&[Cue::NewTank]))
                && self.clauses[index - 1].sentence == clause.sentence
            || self.clauses.get(index + 1).is_some_and(|next| {
                next.sentence == clause.sentence
                    && next.any(&Cues::of(&[Cue::Seed]))
                    && next.range().all(|i| self.node(i).feed().is_none())
            });
        if starts {
            return Purpose::Seeded;
        }
        if clause.habit { Purpose::Usual } else { Purpose::Fed }
    }

    /// "tank 1000 L, 8 buckets of dung 3 weeks ago": told with the tank, dung of long ago is what it was started with.
    fn filled_it(&self, things: &[Atom], day: i32) -> bool {
        let starter = |thing: &Atom| {
            let feed = |feed: Feed| feed == Feed::Digestate || feed.id().ends_with("manure");
            matches!(thing.thing(), Some(Thing::Feed(of)) if feed(of))
        };
        let tank = self.facts.iter().any(|(_, told)| matches!(told.what, What::Tank { .. }));
        let fed = self.facts.iter().any(|(_, told)| matches!(told.what, What::Fed { .. }));
        tank && !fed && day <= LONG_AGO && !things.is_empty() && things.iter().all(starter)
    }

    /// "emptied half the tank"
    fn half_the_tank(&mut self, clause: &Clause) -> bool {
        if !clause.has(Cue::Remove) {
            return false;
        }
        let part = clause
            .range()
            .find(|&at| self.node(at).number().is_some_and(|n| n.fraction) || self.free(at, Cue::HalfLevel));
        let Some(at) = part else { return false };
        if (at + 1..clause.to.min(at + 5)).any(|i| self.has(i, Cue::Tank) || self.has(i, Cue::Slurry)) {
            self.doubt(About::Amount, clause.from, clause.to);
            return true;
        }
        false
    }
}
