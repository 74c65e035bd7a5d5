//! Atoms: the pieces of a clause that matter for portions: amounts, shares, and the things they can be of.

use super::super::clauses::Clause;
use super::super::dishes::beast;
use super::super::foods::counted;
use super::super::nodes::{Kind, Node, Number, Quantity};
use super::super::notions::{Cue, Cues, UnitWord};
use super::super::reader::Reader;
use super::super::wordlist::Side;
use bellyful_core::fact::AlkaliKind;
use bellyful_core::feeds::Feed;

/// The share that is what the feed leaves of its vessel: "half a bucket of dung and the rest water".
pub(super) const REST: f64 = 0.0;

/// What an amount can be of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Thing {
    Feed(Feed),
    Water,
    Alkali(AlkaliKind),
    Slurry,
    /// "that thing": something, but what?
    Pointed,
    /// A word that is not listed, where a feed should stand.
    Strange,
}

/// A piece of a clause that matters for portions.
#[derive(Debug, Clone, Copy)]
pub(super) struct Atom {
    pub(super) at: usize,
    pub(super) what: Piece,
    /// Parted from the atom before by "and" or a comma.
    pub(super) and: bool,
    pub(super) comma: bool,
    /// Joined to the atom before by "of".
    pub(super) of: bool,
}

#[derive(Debug, Clone, Copy)]
pub(super) enum Piece {
    Amount(Quantity),
    Bare(Number),
    /// A share of the feed told before: of water, mostly.
    Share(f64),
    Thing(Thing),
}

impl Atom {
    pub(super) fn thing(&self) -> Option<Thing> {
        if let Piece::Thing(thing) = self.what { Some(thing) } else { None }
    }
    pub(super) fn parted(&self) -> bool {
        self.and || self.comma
    }
}

impl Reader<'_> {
    pub(super) fn atoms(&self, first: usize, end: usize) -> Vec<Atom> {
        let mut atoms = Vec::new();
        for (index, clause) in self.clauses[first..end].iter().enumerate() {
            // "dung and water, 1 bucket each": the amount is of what stands before the comma.
            let (mut and, mut of, mut comma) = (false, false, index > 0 && !clause.has(Cue::Each));
            for at in clause.range() {
                let node = self.node(at);
                if node.used {
                    continue;
                }
                let what = match node.kind {
                    // "two pound a plantain": the article is no second amount.
                    Kind::Number(number)
                        if number.weak
                            && atoms.last().is_some_and(|last: &Atom| last.at + 1 == at && last.thing().is_none()) =>
                    {
                        None
                    }
                    // "3 logo ka khana", "7 baje", "3 baar": so many people, a clock, how often; no amount.
                    Kind::Number(_) if at + 1 < clause.to && self.of_people(at + 1) => None,
                    Kind::Number(number) if !number.weak || self.weak_counts(at) => {
                        Some(self.share(clause, at).map_or(Piece::Bare(number), Piece::Share))
                    }
                    // "20 kg dung in 3 wheelbarrows": what it came in.
                    Kind::Quantity(q) if !q.implied && at > clause.from && self.came_in(&atoms, at) => None,
                    // "burnt in the pot": where, not how much.
                    Kind::Quantity(q) if q.implied && self.stands_in(clause, at) => None,
                    // "2 kilo panni", "2 kilo thali ka jutha": where the weight is told, a vessel is no second amount.
                    Kind::Quantity(q) if q.implied && self.weight_is_told(clause, at) => {
                        node.meaning.feed.map(|feed| Piece::Thing(Thing::Feed(feed)))
                    }
                    // "maans ka tukda aadha kilo": the weight says how much.
                    Kind::Quantity(q) if q.implied && at + 1 < clause.to && self.is_weighed(at + 1) => None,
                    Kind::Quantity(q) if q.unit.is_none() => (self.thing_near(clause, at)).then_some(Piece::Amount(q)),
                    Kind::Quantity(q) => matches!(
                        q.unit,
                        Some(UnitWord::Mass(_) | UnitWord::Volume(_) | UnitWord::Of(_) | UnitWord::Unclear)
                    )
                    .then_some(Piece::Amount(q)),
                    // "5 kg of zibwa": what only looks like a word of ours that is no food.
                    Kind::Phrase
                        if of
                            && !node.any(&Cues::of(&[Cue::Water, Cue::Dung, Cue::Thing]))
                            && self.row.misspelt(node)
                            && node.feed().is_none()
                            && self.lacks_a_thing(&atoms) =>
                    {
                        Some(Piece::Thing(Thing::Strange))
                    }
                    Kind::Phrase => {
                        self.share(clause, at).map(Piece::Share).or_else(|| self.thing(clause, at).map(Piece::Thing))
                    }
                    // "2 kilo bhakri": a word that is not listed, right behind an amount of nothing else.
                    Kind::Unknown => {
                        (at > clause.from && (of || self.amount_is_right_before(at)) && self.lacks_a_thing(&atoms)
                            || self.amount_is_right_after(clause, at))
                        .then_some(Piece::Thing(Thing::Strange))
                    }
                    _ => None,
                };
                match what {
                    Some(what) => {
                        atoms.push(Atom { at, what, and, comma, of });
                        (and, of, comma) = (false, false, false);
                    }
                    // "two 10-litre buckets with dung"
                    None if node.has(Cue::With) && self.vessel_with(clause, at) && self.lacks_a_thing(&atoms) => {
                        of = true;
                    }
                    None if node.kind == Kind::Phrase => {
                        and |= node.has(Cue::And) || node.has(Cue::Or) || node.has(Cue::With) && !node.has(Cue::Of);
                        of |= node.has(Cue::Of);
                        // "food not, only a bucket of water": the amount is not of what was denied.
                        let thing = atoms.last().is_some_and(|last: &Atom| last.thing().is_some());
                        comma |= thing && node.any(&Cues::of(&[Cue::Not, Cue::Nothing]));
                    }
                    None => {}
                }
            }
        }
        atoms
    }

    /// Whether a measure after "in" only holds an amount told by weight before it.
    fn came_in(&self, atoms: &[Atom], at: usize) -> bool {
        let measure = self.node(at).quantity().is_some_and(|q| matches!(q.unit, Some(UnitWord::Of(_))));
        let of_more = at + 1 < self.row.nodes.len() && self.has(at + 1, Cue::Of);
        let [.., amount, thing] = atoms else { return false };
        let weighed = matches!(amount.what, Piece::Amount(q) if matches!(q.unit, Some(UnitWord::Mass(_))));
        measure
            && !of_more
            && self.has(at - 1, Cue::In)
            && !self.has(at - 1, Cue::Put)
            && weighed
            && thing.thing().is_some()
    }

    fn of_people(&self, at: usize) -> bool {
        let behind = self.row.lexicon.habits.part == Side::After && self.row.lexicon.habits.negation == Side::After;
        behind
            && (self.has(at, Cue::People) && self.has(at + 1, Cue::Of)
                || self.has(at, Cue::At) && !self.has(at, Cue::In))
    }

    /// Whether an amount stands right before the vessel at `at`, or before the food that it is a piece of.
    fn weight_is_told(&self, clause: &Clause, at: usize) -> bool {
        let told = |at: usize| self.node(at).quantity().is_some_and(|q| !q.implied && q.number.is_some());
        let weighed = |at: usize| told(at) && self.is_weighed(at);
        // "2 cup bacha hua daliya": the word for a basket names the food here.
        let food = self.node(at).meaning.feed.is_some();
        let before = (clause.from..at).rev().find(|&i| !self.has(i, Cue::Modifier) || self.node(i).feed().is_some());
        if food && before.is_some_and(told) {
            return true;
        }
        let of_food = at >= clause.from + 3 && self.has(at - 1, Cue::Of) && self.node(at - 2).feed().is_some();
        at > clause.from && weighed(at - 1) || of_food && told(at - 3)
    }

    /// Whether "with" at `at` says what the vessel right before it holds.
    fn vessel_with(&self, clause: &Clause, at: usize) -> bool {
        let vessel = |q: Quantity| q.sized.is_some() || matches!(q.unit, Some(UnitWord::Of(_)));
        let counted = |at: usize| self.node(at).number().is_some() || self.node(at).quantity().is_some();
        at > clause.from && self.node(at - 1).quantity().is_some_and(vessel) && at + 1 < clause.to && !counted(at + 1)
    }

    fn is_weighed(&self, at: usize) -> bool {
        self.node(at).quantity().is_some_and(|q| !q.implied && matches!(q.unit, Some(UnitWord::Mass(_))))
    }

    fn amount_is_right_before(&self, at: usize) -> bool {
        self.row.lexicon.habits.part == Side::After && self.is_weighed(at - 1)
    }

    /// "bambaru kilo 2", where numbers follow what they count; a name written large is somebody's.
    fn amount_is_right_after(&self, clause: &Clause, at: usize) -> bool {
        self.row.lexicon.habits.number == Side::After
            && at == clause.from
            && !self.row.capital(self.node(at))
            && at + 1 < clause.to
            && self.is_weighed(at + 1)
            && clause.range().all(|i| self.node(i).feed().is_none())
    }

    /// Whether the last atom is an amount that no food before it could be told by: "posho kilo 2 za wanafunzi".
    fn lacks_a_thing(&self, atoms: &[Atom]) -> bool {
        let Some((last, before)) = atoms.split_last() else { return false };
        let named = before.last().is_some_and(|before| before.thing().is_some()) && !last.parted();
        matches!(last.what, Piece::Amount(q) if q.unit.is_some()) && !named
    }

    fn stands_in(&self, clause: &Clause, at: usize) -> bool {
        // "balti me": where the verb comes last, "in" stands behind.
        let behind = self.row.lexicon.habits.negation == Side::After;
        let beside = if behind { at + 1 } else { at.wrapping_sub(1) };
        clause.range().contains(&beside)
            && self.has(beside, Cue::In)
            && !self.has(beside, Cue::Put)
            && !self.has(beside, Cue::Of)
            && !self.has(at + 1, Cue::Of)
    }

    fn weak_counts(&self, at: usize) -> bool {
        // "two basins of peels and one of water"
        let one_of = self.has(at + 1, Cue::Of) && self.row.nodes.get(at + 2).is_some_and(|node| node.has(Cue::Water));
        one_of && at > 0 && self.has(at - 1, Cue::And)
            || self.row.nodes.get(at + 1).and_then(Node::feed).is_some_and(counted)
    }

    fn thing_near(&self, clause: &Clause, at: usize) -> bool {
        (at.saturating_sub(2).max(clause.from)..(at + 4).min(clause.to))
            .any(|i| i != at && self.thing(clause, i).is_some())
    }

    fn thing(&self, clause: &Clause, at: usize) -> Option<Thing> {
        let node = self.node(at);
        if node.kind != Kind::Phrase || node.used {
            return None;
        }
        // "soda" is drunk as well as put in against sourness.
        let drunk = |what| what == AlkaliKind::Soda && node.feed().is_some() && !self.mends_sourness(clause);
        if let Some(what) = node.alkali().filter(|what| !drunk(*what)) {
            return Some(Thing::Alkali(what));
        }
        if node.feed() == Some(Feed::Ash) && self.mends_sourness(clause) {
            return Some(Thing::Alkali(AlkaliKind::Ash));
        }
        if clause.has(Cue::Remove)
            && (self.speaks_of(at, &Cues::of(&[Cue::Slurry])) || node.feed() == Some(Feed::Digestate))
        {
            return Some(Thing::Slurry);
        }
        // "chokaa kurekebisha asidi": what the lime is against.
        let against = node.has(Cue::Sour) && clause.any(&Cues::of(&[Cue::Soda, Cue::Lime, Cue::Mend]));
        // "reste un peu de gaz": it is left, and no leftover.
        let is_left = node.has(Cue::Is) && clause.any(&Cues::of(&[Cue::Gas, Cue::GasBag]));
        // "eggs that my hen left": a living beast.
        let beast = node.feed() == Some(Feed::Meat) && beast(node).is_some();
        let mine = at > clause.from && self.has(at - 1, Cue::My);
        let alive = beast && (mine || self.drops_another(clause, at));
        if let Some(feed) = node.feed().filter(|_| !against && !is_left && !alive) {
            return Some(Thing::Feed(feed));
        }
        if node.has(Cue::Slurry) && clause.has(Cue::Put) && (self.swaps(clause) || self.measured_out(clause, at)) {
            return Some(Thing::Feed(Feed::Digestate));
        }
        // "my phone fell in water"
        let where_it_fell = clause.has(Cue::Fell)
            && !clause.has(Cue::Put)
            && at > clause.from
            && self.node(at - 1).any(&Cues::of(&[Cue::In, Cue::Fell]));
        if node.has(Cue::Water) {
            // "pani ka level": how high it stands.
            let level = (at + 1..clause.to.min(at + 3)).find(|&i| !self.has(i, Cue::Of));
            let high = level.is_some_and(|i| self.has(i, Cue::Level));
            return (!high && !where_it_fell).then_some(Thing::Water);
        }
        if node.has(Cue::Dung) {
            return Some(Thing::Feed(Feed::CattleManure));
        }
        node.has(Cue::Thing).then_some(Thing::Pointed)
    }

    /// "le mouton a fait tomber un sac dedans": who dropped it, where an amount comes after.
    fn drops_another(&self, clause: &Clause, at: usize) -> bool {
        let leads = (clause.from..at).all(|i| self.has(i, Cue::Chatter) || self.node(i).when().is_some());
        let next = (at + 1..clause.to.min(at + 3)).any(|i| self.node(i).any(&Cues::of(&[Cue::Put, Cue::Fell])));
        leads && next && (at + 1..clause.to).any(|i| self.node(i).quantity().is_some())
    }

    /// "took out 400 L and put in 400 L slurry": what goes in comes from a tank too.
    fn swaps(&self, clause: &Clause) -> bool {
        self.sentence(clause).removes
    }

    /// "put 200 kg slurry": slurry by the measure goes in, where no garden is spoken of.
    fn measured_out(&self, clause: &Clause, slurry: usize) -> bool {
        const JOINTS: Cues = Cues::of(&[Cue::Of, Cue::Modifier, Cue::My]);
        let measured = |at: usize| {
            let Some(quantity) = self.node(at).quantity().filter(|q| q.number.is_some() && !q.implied) else {
                return false;
            };
            matches!(quantity.unit, Some(UnitWord::Mass(_) | UnitWord::Volume(_) | UnitWord::Of(_)))
        };
        let joint = |at: &usize| self.node(*at).any(&JOINTS) && self.node(*at).quantity().is_none();
        let before = (clause.from..slurry).rev().find(|at| !joint(at));
        let after = (slurry + 1..clause.to).find(|at| !joint(at));
        // "slurry 2 balti tank me dali"
        let habits = &self.row.lexicon.habits;
        let after = after.filter(|_| habits.number == Side::After || habits.negation == Side::After);
        !clause.any(&Cues::of(&[Cue::Crops, Cue::Remove]))
            && (before.is_some_and(measured) || after.is_some_and(measured))
    }

    fn mends_sourness(&self, clause: &Clause) -> bool {
        self.sour_told || self.sentence(clause).cues.any(&Cues::of(&[Cue::Mend, Cue::Sour]))
    }

    /// "3 times the water", "water 1:2".
    fn so_many_times(&self, at: usize) -> Option<f64> {
        const MOST: f64 = 10.0;
        let node = self.node(at);
        let number = node.number().filter(|number| !number.weak && number.value <= MOST)?;
        if number.range.is_none() && self.has(at + 1, Cue::Times) {
            return Some(number.value);
        }
        let parts = self.row.figures(node)?.strip_prefix("1:")?.parse().ok()?;
        (parts > 0.0 && parts <= MOST).then_some(parts)
    }

    fn share(&self, clause: &Clause, at: usize) -> Option<f64> {
        let node = self.node(at);
        let share = if node.has(Cue::Same) {
            1.0
        } else if node.has(Cue::Double) {
            2.0
        } else if node.has(Cue::Triple) {
            3.0
        } else if node.has(Cue::HalfShare) {
            0.5
        } else if node.has(Cue::Rest) {
            REST
        } else if let Some(times) = self.so_many_times(at) {
            times
        } else {
            return None;
        };
        let water = (at.saturating_sub(3).max(clause.from)..(at + 4).min(clause.to)).any(|i| self.free(i, Cue::Water));
        water.then_some(share)
    }
}
