//! Pairs: which amount is of which thing, in either order, over lists of both.
//!
//! Takes atoms; hands each portion to `tell`.

use super::super::clauses::Clause;
use super::super::notions::{Cue, Cues};
use super::super::reader::Reader;
use super::super::wordlist::Side;
use super::Purpose;
use super::atoms::{Atom, Piece, Thing};
use bellyful_core::fact::Unit;
use bellyful_core::feeds::Feed;

impl Reader<'_> {
    /// Tells what starts at atom `i`; gives the next.
    pub(super) fn portion(
        &mut self,
        clause: &Clause,
        atoms: &[Atom],
        i: usize,
        purpose: Purpose,
        fed_before: usize,
        last_unit: &mut Option<Unit>,
    ) -> usize {
        let atom = atoms[i];
        let next = atoms.get(i + 1);
        let numbers_after = self.row.lexicon.habits.number == Side::After;
        match atom.what {
            Piece::Thing(_) => {
                // A list of things, and the amount that may follow it.
                let mut last = i;
                while let Some(more) = atoms.get(last + 1) {
                    // "fried fish and put the oil in": what is done to each is said of each.
                    let done_apart = (atoms[last].at + 1..more.at).any(|at| self.free(at, Cue::Put));
                    let joins = more.thing().is_some()
                        && !done_apart
                        && self.alike(atoms[last], *more)
                        && (more.and || more.comma || self.side_by_side(atoms[last], *more));
                    if !joins {
                        break;
                    }
                    last += 1;
                }
                let amount = atoms.get(last + 1).filter(|a| a.thing().is_none() && !a.parted());
                // "no water today just 4 kg dung": what was denied has no amount.
                let follows = atoms.get(last + 2).is_some_and(|after| after.thing().is_some() && !after.parted());
                let denied = follows && self.denied(clause, atom.at);
                let taken = amount.filter(|_| !denied).filter(|amount| {
                    // "bina pani ke 3 kilo gobar": of what there was none there is no amount.
                    let none = atom.at > clause.from && self.has(atom.at - 1, Cue::Without);
                    if none && self.row.lexicon.habits.part == Side::After {
                        return false;
                    }
                    // "2 kg" belongs to what follows when "of" says so.
                    let after = atoms.get(last + 2).filter(|after| after.thing().is_some() && !after.parted());
                    match after {
                        None => true,
                        Some(after) if after.of => false,
                        Some(after) => {
                            // "rice 2 kg beans 1 kg" goes by pairs; "banana 2 kg peels" by the number of what is left.
                            let later = atoms.get(last + 3).is_some_and(|a| a.thing().is_none() && !a.parted());
                            let _ = (after, amount);
                            later || numbers_after || i == 0 && self.leads_with_thing(clause, atoms)
                        }
                    }
                });
                match taken {
                    Some(amount) => {
                        let things: Vec<Atom> = atoms[i..=last].to_vec();
                        let fed = |a: &Atom| matches!(a.thing(), Some(Thing::Feed(_)));
                        let shared = things.iter().all(fed) || self.alike(things[0], things[things.len() - 1]);
                        if shared {
                            self.tell_portion(clause, &things, Some(*amount), purpose, fed_before, last_unit);
                        } else {
                            for thing in &things[..things.len() - 1] {
                                self.tell_portion(clause, &[*thing], None, purpose, fed_before, last_unit);
                            }
                            self.tell_portion(
                                clause,
                                &things[things.len() - 1..],
                                Some(*amount),
                                purpose,
                                fed_before,
                                last_unit,
                            );
                        }
                        last + 2
                    }
                    None => {
                        self.tell_portion(clause, &[atom], None, purpose, fed_before, last_unit);
                        i + 1
                    }
                }
            }
            _ => {
                let thing = next.filter(|next| next.thing().is_some() && !next.parted());
                let Some(thing) = thing else {
                    // "2 kg and water": the amount stands alone.
                    self.tell_portion(clause, &[], Some(atom), purpose, fed_before, last_unit);
                    return i + 1;
                };
                let mut things = vec![*thing];
                let mut last = i + 1;
                while let Some(more) = atoms.get(last + 1) {
                    let follows = atoms.get(last + 2);
                    // "peels 1 kg water 6 L" goes by pairs though "1 kg water" could be one.
                    let pairs = atoms.get(last + 4).is_some_and(|a| a.thing().is_none() && !a.parted());
                    let has_own = follows.is_some_and(|a| {
                        a.thing().is_none()
                            && !a.parted()
                            && !atoms.get(last + 3).is_some_and(|b| {
                                b.thing().is_some() && !b.parted() && (b.of || !numbers_after && !pairs)
                            })
                    });
                    // "5 roti sabji" counts the bread.
                    let counted = matches!(atom.what, Piece::Bare(_));
                    let parted = more.parted() || !counted && self.side_by_side(atoms[last], *more);
                    let joins = more.thing().is_some() && parted && self.alike(*thing, *more);
                    if !joins || has_own || self.is_definite(*more) {
                        break;
                    }
                    things.push(*more);
                    last += 1;
                }
                self.tell_portion(clause, &things, Some(atom), purpose, fed_before, last_unit);
                last + 1
            }
        }
    }

    /// "4 mangoes and the stones", "1 kg of peels plus the water they boiled in": the article tells of all there was.
    fn is_definite(&self, thing: Atom) -> bool {
        let before = thing.at.checked_sub(1).map(|at| self.node(at));
        before.is_some_and(|node| node.has(Cue::Chatter) && !node.any(&Cues::of(&[Cue::And, Cue::Of])))
    }

    fn leads_with_thing(&self, clause: &Clause, atoms: &[Atom]) -> bool {
        let first = atoms.first().map_or(clause.from, |atom| atom.at);
        !(clause.from..first).any(|at| self.node(at).has(Cue::Put))
            || atoms.first().is_some_and(|a| a.thing().is_some())
    }

    /// "dal chawal", "roti sabji", "rice beans": two foods of a meal side by side are two.
    fn side_by_side(&self, one: Atom, other: Atom) -> bool {
        const MEAL: [Feed; 12] = [
            Feed::CookedRice,
            Feed::Flatbread,
            Feed::Bread,
            Feed::Lentils,
            Feed::Beans,
            Feed::VegetableWaste,
            Feed::Fish,
            Feed::Meat,
            Feed::Potato,
            Feed::Cabbage,
            Feed::LeafyGreens,
            Feed::Milk,
        ];
        let named = |atom: Atom| self.node(atom.at).feed().is_some_and(|feed| MEAL.contains(&feed));
        named(one) && named(other) && other.at == one.at + 1 && !other.of
    }

    fn alike(&self, one: Atom, other: Atom) -> bool {
        let fed = |atom: Atom| matches!(atom.thing(), Some(Thing::Feed(_)));
        let wet = |atom: Atom| atom.thing() == Some(Thing::Water);
        // "dung and water, 1 bucket each"
        let each = || (one.at.saturating_sub(2)..other.at + 4).any(|at| self.has(at, Cue::Each));
        fed(one) && fed(other) || (fed(one) && wet(other) || wet(one) && fed(other)) && each()
    }
}
