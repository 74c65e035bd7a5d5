//! Portions: what went in, how much of it, and what for: feed, water, starter, habit, alkali, or slurry taken out.
//!
//! Takes the clauses; pairs each amount with what it is of, in either order, and tells the fact that the clause makes
//! of it. What has no unit, or could be two amounts, is a doubt.

use super::clauses::Clause;
use super::foods::counted;
use super::measured::round;
use super::nodes::{Kind, Node, Number, Quantity, When};
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::About;
use super::wordlist::Side;
use bellyful_core::fact::{AlkaliKind, Measure, Unit, What};
use bellyful_core::feeds::Feed;

/// What an amount can be of.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Thing {
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
struct Atom {
    at: usize,
    what: Piece,
    /// Parted from the atom before by "and" or a comma.
    and: bool,
    comma: bool,
    /// Joined to the atom before by "of".
    of: bool,
}

#[derive(Debug, Clone, Copy)]
enum Piece {
    Amount(Quantity),
    Bare(Number),
    /// A share of the feed told before: of water, mostly.
    Share(f64),
    Thing(Thing),
}

impl Atom {
    fn thing(&self) -> Option<Thing> {
        if let Piece::Thing(thing) = self.what { Some(thing) } else { None }
    }
    fn parted(&self) -> bool {
        self.and || self.comma
    }
}

/// An amount made ready to be told.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Portion {
    amount: Option<f64>,
    unit: Option<Unit>,
}

/// What a clause makes of its portions.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Purpose {
    Fed,
    Usual,
    Seeded,
    Removed,
}

impl Reader<'_> {
    pub fn portions(&mut self) {
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
    }

    /// "potato, yuca and camote": a bare food after a comma, in a list that an "and" closes.
    fn goes_on(&self, first: usize, next: usize) -> bool {
        let (head, tail) = (&self.clauses[first], &self.clauses[next]);
        if head.sentence != tail.sentence
            || tail.from != self.clauses[next - 1].to + 1
            || tail.asks
            || head.asks
            || tail.plan != head.plan
            || !tail.days.is_empty()
        {
            return false;
        }
        let bare = |clause: &Clause| {
            clause.range().any(|at| self.node(at).feed().is_some())
                && clause.range().all(|at| {
                    let node = self.node(at);
                    node.kind == Kind::Phrase
                        && (node.feed().is_some()
                            || node.any(&Cues::of(&[Cue::And, Cue::Of, Cue::Modifier, Cue::Other])))
                })
        };
        let closes = (next..self.clauses.len().min(next + 6))
            .take_while(|&i| bare(&self.clauses[i]))
            .any(|i| self.clauses[i].has(Cue::And));
        bare(tail) && closes && head.range().any(|at| self.node(at).feed().is_some())
    }

    fn atoms(&self, first: usize, end: usize) -> Vec<Atom> {
        let mut atoms = Vec::new();
        for (index, clause) in self.clauses[first..end].iter().enumerate() {
            let (mut and, mut of, mut comma) = (false, false, index > 0);
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
                    Kind::Number(number) if !number.weak || self.weak_counts(at) => Some(Piece::Bare(number)),
                    // "burnt in the pot": where, not how much.
                    Kind::Quantity(q) if q.implied && self.stands_in(clause, at) => None,
                    Kind::Quantity(q) if q.unit.is_none() => (self.thing_near(clause, at)).then_some(Piece::Amount(q)),
                    Kind::Quantity(q) => matches!(
                        q.unit,
                        Some(UnitWord::Mass(_) | UnitWord::Volume(_) | UnitWord::Of(_) | UnitWord::Unclear)
                    )
                    .then_some(Piece::Amount(q)),
                    Kind::Phrase => {
                        self.share(clause, at).map(Piece::Share).or_else(|| self.thing(clause, at).map(Piece::Thing))
                    }
                    Kind::Unknown => (at > clause.from
                        && of
                        && atoms
                            .last()
                            .is_some_and(|atom: &Atom| matches!(atom.what, Piece::Amount(q) if q.unit.is_some())))
                    .then_some(Piece::Thing(Thing::Strange)),
                    _ => None,
                };
                match what {
                    Some(what) => {
                        atoms.push(Atom { at, what, and, comma, of });
                        (and, of, comma) = (false, false, false);
                    }
                    None if node.kind == Kind::Phrase => {
                        and |= node.has(Cue::And) || node.has(Cue::Or) || node.has(Cue::With) && !node.has(Cue::Of);
                        of |= node.has(Cue::Of);
                    }
                    None => {}
                }
            }
        }
        atoms
    }

    fn stands_in(&self, clause: &Clause, at: usize) -> bool {
        at > clause.from && self.has(at - 1, Cue::In) && !self.has(at - 1, Cue::Put) && !self.has(at + 1, Cue::Of)
    }

    fn weak_counts(&self, at: usize) -> bool {
        self.row.nodes.get(at + 1).and_then(Node::feed).is_some_and(counted)
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
        if node.has(Cue::Soda) {
            return Some(Thing::Alkali(AlkaliKind::Soda));
        }
        if node.has(Cue::Lime) {
            return Some(Thing::Alkali(AlkaliKind::Lime));
        }
        if node.feed() == Some(Feed::Ash) && self.mends_sourness(clause) {
            return Some(Thing::Alkali(AlkaliKind::Ash));
        }
        if clause.has(Cue::Remove) && (node.has(Cue::Slurry) || node.feed() == Some(Feed::Digestate)) {
            return Some(Thing::Slurry);
        }
        if let Some(feed) = node.feed() {
            return Some(Thing::Feed(feed));
        }
        if node.has(Cue::Water) {
            return Some(Thing::Water);
        }
        if node.has(Cue::Dung) {
            return Some(Thing::Feed(Feed::CattleManure));
        }
        node.has(Cue::Thing).then_some(Thing::Pointed)
    }

    fn mends_sourness(&self, clause: &Clause) -> bool {
        clause.any(&Cues::of(&[Cue::Mend, Cue::Sour]))
            || self
                .facts
                .iter()
                .any(|(_, told)| matches!(told.what, What::Sign { sign: bellyful_core::fact::Sign::SourSmell }))
    }

    fn share(&self, clause: &Clause, at: usize) -> Option<f64> {
        let node = self.node(at);
        let share = if node.has(Cue::Same) {
            1.0
        } else if node.has(Cue::Double) {
            2.0
        } else if node.has(Cue::HalfShare) {
            0.5
        } else {
            return None;
        };
        let water = (at.saturating_sub(3).max(clause.from)..(at + 4).min(clause.to)).any(|i| self.free(i, Cue::Water));
        water.then_some(share)
    }

    fn portions_of(&mut self, first: usize, end: usize) {
        let mut clause = self.clauses[first].clone();
        clause.to = self.clauses[end - 1].to;
        if clause.plan {
            return;
        }
        let atoms = self.atoms(first, end);
        if clause.has(Cue::AsUsual)
            && !clause.asks
            && (clause.any(&Cues::of(&[Cue::Put])) || !atoms.is_empty() || end - first == self.clauses.len())
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
        if self.for_people(&clause, &atoms) {
            self.use_up(atoms.iter().map(|atom| atom.at));
            return;
        }
        let purpose = self.purpose(&clause, first);
        let fed_before = self.facts.len();
        let mut last_unit = None;
        let mut at = 0;
        while at < atoms.len() {
            at = self.portion(&clause, &atoms, at, purpose, fed_before, &mut last_unit);
        }
    }

    /// What was bought, eaten or cooked by the family went into no digester.
    fn for_people(&self, clause: &Clause, atoms: &[Atom]) -> bool {
        if clause.any(&Cues::of(&[Cue::Put, Cue::Fell, Cue::Seed, Cue::Tank, Cue::Slurry])) {
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
        let cooked = match (atoms.first(), atoms.last()) {
            (Some(first), Some(last)) => {
                let from = first.at.saturating_sub(2).max(clause.from);
                (from..first.at).any(cook) && first.thing().is_none()
                    || (last.at + 1..clause.to.min(last.at + 3)).any(cook)
            }
            _ => false,
        };
        cooked && !timed && atoms.iter().any(|atom| atom.thing().is_some())
    }

    fn purpose(&self, clause: &Clause, index: usize) -> Purpose {
        if clause.has(Cue::Remove) && !clause.has(Cue::Put) {
            return Purpose::Removed;
        }
        let new = Cues::of(&[Cue::Seed, Cue::Start, Cue::NewTank]);
        let starts = clause.any(&new) && !clause.has(Cue::Running)
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

    /// Tells what starts at atom `i`; gives the next.
    fn portion(
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
                    let joins = more.thing().is_some() && self.alike(atoms[last], *more) && (more.and || more.comma);
                    if !joins {
                        break;
                    }
                    last += 1;
                }
                let amount = atoms.get(last + 1).filter(|a| a.thing().is_none() && !a.parted());
                let taken = amount.filter(|amount| {
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
                        let shared = things.iter().all(|a| matches!(a.thing(), Some(Thing::Feed(_))));
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
                    if !(more.thing().is_some() && more.parted() && self.alike(*thing, *more))
                        || has_own
                        || matches!(more.thing(), Some(Thing::Water))
                    {
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

    fn leads_with_thing(&self, clause: &Clause, atoms: &[Atom]) -> bool {
        let first = atoms.first().map_or(clause.from, |atom| atom.at);
        !(clause.from..first).any(|at| self.node(at).has(Cue::Put))
            || atoms.first().is_some_and(|a| a.thing().is_some())
    }

    fn alike(&self, one: Atom, other: Atom) -> bool {
        matches!((one.thing(), other.thing()), (Some(Thing::Feed(_)), Some(Thing::Feed(_))))
    }

    /// The amount as told: `Err` when it cannot be known.
    fn portion_of(&self, amount: Atom, thing: Option<Thing>, carried: Option<Unit>) -> Result<Portion, About> {
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
                    Some(Thing::Feed(feed)) if counted(feed) => {
                        plain(Some(number.value), Some(Unit::Of(Measure::Piece)))
                    }
                    _ if number.weak => plain(None, None),
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
                let amount =
                    if quantity.implied && matches!(quantity.unit, Some(UnitWord::Mass(_) | UnitWord::Volume(_))) {
                        None
                    } else {
                        quantity.in_base()
                    };
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

    fn tell_portion(
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
        let day = self.portion_day(clause, from);
        let doing = self.done_here(clause);
        let first = things.first().and_then(Atom::thing);
        if let Some(thing) = things.first()
            && self.denied_thing(clause, thing.at, amount)
        {
            self.denied_portion(clause, thing, day);
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
        if vague && !doing && !self.only_portions(clause) {
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
        // "half water": a half of the feed.
        if let (Some(Thing::Water), Some(Piece::Bare(number))) = (first, amount.map(|a| a.what))
            && number.fraction
        {
            self.water_share(clause, from, to, day, number.value, fed_before);
            return;
        }
        let carried = last_unit.filter(|_| things.first().is_some_and(|thing| thing.of));
        let portion = match amount {
            Some(amount) => match self.portion_of(amount, first, carried) {
                Ok(portion) => portion,
                Err(about) => {
                    if matches!(first, Some(Thing::Pointed)) {
                        self.doubt(About::Feed, from, to + 1);
                    }
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
            if self.amount_comes_after(clause, from, portion) {
                return;
            }
            // "3 kg scraps 6 L": six litres of what?
            let told = self.facts[fed_before.min(self.facts.len())..].iter();
            let fed = told.filter(|(_, told)| matches!(told.what, What::Fed { amount: Some(_), .. })).count();
            if fed > 0 && purpose == Purpose::Fed && !matches!(portion.unit, Some(Unit::Kg)) {
                self.doubt(About::Feed, from, to + 1);
                return;
            }
        }
        *last_unit = portion.unit.or(*last_unit);
        let share = portion.amount.map(|total| total / things.len().max(1) as f64);
        if things.is_empty() {
            self.tell_one(clause, from, day, Thing::Feed(Feed::FoodWaste), portion, purpose, true);
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

    /// "put cow dung 3 weeks ago, 4 buckets": an amount alone is of the one thing told before it without any.
    fn amount_comes_after(&mut self, clause: &Clause, at: usize, portion: Portion) -> bool {
        let sentence = |at: usize| {
            self.clauses.iter().find(|clause| clause.range().contains(&at)).map_or(clause.sentence, |c| c.sentence)
        };
        let open = |(told_at, told): &(usize, super::reading::Told)| {
            *told_at < at
                && sentence(*told_at) == clause.sentence
                && matches!(
                    told.what,
                    What::Fed { amount: None, unit: None, .. }
                        | What::Seeded { amount: None, unit: None, .. }
                        | What::Water { amount: None, unit: None }
                )
        };
        let found = self.facts.iter().filter(|told| open(told)).count();
        let Some(last) = self.facts.iter().rposition(open).filter(|_| found == 1) else { return false };
        if last + 1 != self.facts.len() || portion.amount.is_none() {
            return false;
        }
        match &mut self.facts[last].1.what {
            What::Fed { amount, unit, .. } | What::Seeded { amount, unit, .. } | What::Water { amount, unit } => {
                (*amount, *unit) = (portion.amount, portion.unit);
            }
            _ => return false,
        }
        true
    }

    /// "2 buckets, only water": the amount of nothing named that was told just before is the water's.
    fn amount_came_before(&mut self, clause: &Clause, water: usize) -> bool {
        let Some((at, told)) = self.facts.last() else { return false };
        let What::Fed { feed: Feed::FoodWaste, amount: Some(amount), unit } = told.what else { return false };
        let unnamed = self.clauses.iter().any(|before| {
            before.range().contains(at)
                && before.sentence == clause.sentence
                && before.to < clause.from
                && before.range().all(|i| self.node(i).feed().is_none())
        });
        if unnamed && let Some((at, told)) = self.facts.last_mut() {
            *at = water;
            told.what = What::Water { amount: Some(amount), unit };
        }
        unnamed
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

    fn portion_day(&self, clause: &Clause, at: usize) -> i32 {
        // The clause may be a list of several; days stand in the first.
        self.clauses
            .iter()
            .find(|c| c.range().contains(&at))
            .map_or_else(|| clause.day(at), |own| if own.days.is_empty() { clause.day(at) } else { own.day(at) })
    }

    /// Whether something was done with a feed here: put in, fallen in, taken out, started with.
    fn done_here(&self, clause: &Clause) -> bool {
        clause.any(&Cues::of(&[Cue::Put, Cue::Fell, Cue::Remove, Cue::Seed, Cue::Start, Cue::NewTank]))
    }

    /// An amount of nothing named: of feed, when it can be.
    fn stands_alone(&mut self, clause: &Clause, amount: Option<Atom>, doing: bool, purpose: Purpose) -> bool {
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
        let gas_talk = clause.any(&Cues::of(&[Cue::Gas, Cue::GasBag, Cue::Flame, Cue::Cook, Cue::Stove, Cue::Tank]))
            && !clause.has(Cue::Put)
            && !doing;
        match amount.what {
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
                if number.weak || number.fraction && !doing {
                    return false;
                }
                if number.value == 0.0 && (doing || clause.has(Cue::Tank) || clause.to - clause.from <= 3) {
                    return true;
                }
                if doing && purpose != Purpose::Removed && clause.any(&Cues::of(&[Cue::Put])) {
                    self.doubt(About::Unit, amount.at, amount.at + 1);
                    self.use_up([amount.at]);
                }
                false
            }
            _ => false,
        }
    }

    /// A feed named with no amount: told as fed only where feeding is spoken of or nothing else is.
    fn bare_counts(&self, clause: &Clause, from: usize, to: usize, doing: bool) -> bool {
        let cooks = clause.any(&Cues::of(&[Cue::Cook, Cue::Lasted])) && !clause.has(Cue::Put);
        if cooks || clause.has(Cue::Blocked) {
            return false;
        }
        let water_only = (from..=to).all(|i| self.node(i).feed().is_none());
        if water_only && !doing {
            let only = clause.has(Cue::Only) && !clause.has(Cue::Tank) || self.amount_follows(clause);
            return only && (self.only_portions(clause) || clause.has(Cue::PutNot));
        }
        doing || self.only_portions(clause)
    }

    /// "water, 2 buckets": the clause after this one says how much, and no more.
    fn amount_follows(&self, clause: &Clause) -> bool {
        let next = self.clauses.iter().find(|next| next.from > clause.from && next.sentence == clause.sentence);
        next.is_some_and(|next| {
            let amounts = next.range().filter(|&at| self.node(at).quantity().is_some_and(|q| q.amount().is_some()));
            amounts.count() == 1
                && self.only_portions(next)
                && next.range().all(|at| self.node(at).feed().is_none() && !self.has(at, Cue::Water))
        })
    }

    /// Whether the clause holds nothing but foods, amounts, days and joints.
    fn only_portions(&self, clause: &Clause) -> bool {
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
        clause.range().all(|at| {
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
    fn denied_thing(&self, clause: &Clause, at: usize, amount: Option<Atom>) -> bool {
        if amount.is_some_and(|a| !matches!(a.what, Piece::Bare(n) if n.weak)) {
            // "no 3 kg" is a mending; an amount was given. But "without 2 kg" does not occur.
            return amount
                .is_some_and(|a| matches!(a.what, Piece::Amount(q) if q.number.is_none()) && self.denied(clause, at));
        }
        // "didn't add water": the doing is denied, and the thing with it.
        let doing =
            (clause.from..at).rev().take(4).find(|&i| self.node(i).kind == Kind::Phrase && self.has(i, Cue::Put));
        let after = self.row.lexicon.habits.negation == Side::After
            && (at + 1..clause.to.min(at + 3)).any(|i| self.node(i).kind == Kind::Phrase && self.has(i, Cue::PutNot));
        after || self.denied(clause, at) || doing.is_some_and(|doing| self.denied(clause, doing))
    }

    fn denied_portion(&mut self, clause: &Clause, thing: &Atom, day: i32) {
        let fed = |reader: &Self| {
            let put = |what: &What| matches!(what, What::Fed { .. } | What::Seeded { .. } | What::NotFed { .. });
            reader.facts.iter().any(|(_, told)| put(&told.what))
        };
        match thing.thing() {
            Some(Thing::Water) if self.done_here(clause) || fed(self) || self.anywhere(&Cues::of(&[Cue::Put])) => {
                self.tell(thing.at, Some(day), What::Water { amount: Some(0.0), unit: Some(Unit::L) });
                self.use_up([thing.at]);
            }
            Some(Thing::Feed(Feed::FoodWaste)) => self.tell(thing.at, Some(day), What::NotFed { days: 1 }),
            Some(Thing::Feed(_)) if clause.has(Cue::Nothing) => {}
            _ => {}
        }
    }

    /// "same water", "double the water": worked out from the feed told before.
    fn water_share(&mut self, clause: &Clause, from: usize, to: usize, day: i32, share: f64, fed_before: usize) {
        let of_clause = &self.facts[fed_before.min(self.facts.len())..];
        let feeds = |facts: &[(usize, super::reading::Told)]| -> Vec<(Option<f64>, Option<Unit>)> {
            facts
                .iter()
                .filter_map(|(_, told)| match told.what {
                    What::Fed { amount, unit, .. } | What::Seeded { amount, unit, .. }
                        if told.day.unwrap_or(0) == day =>
                    {
                        Some((amount, unit))
                    }
                    _ => None,
                })
                .collect()
        };
        let mut fed = feeds(of_clause);
        if fed.is_empty() {
            fed = feeds(&self.facts);
        }
        let unit = fed.first().and_then(|&(_, unit)| unit);
        let total: Option<f64> = fed.iter().map(|&(amount, u)| amount.filter(|_| u == unit)).sum();
        match (total, unit) {
            (Some(total), Some(unit)) if !fed.is_empty() && unit != Unit::Of(Measure::Piece) => {
                let unit = if unit == Unit::Kg { Unit::L } else { unit };
                self.tell(from, Some(day), What::Water { amount: Some(round(total * share, 4)), unit: Some(unit) });
            }
            _ => self.doubt(About::Amount, from, to + 1),
        }
        let _ = clause;
    }

    /// Days without feeding, and "only water".
    pub fn not_fed(&mut self) {
        for at in 0..self.clauses.len() {
            let clause = self.clauses[at].clone();
            if clause.plan || clause.asks && !clause.any(&Cues::of(&[Cue::Why, Cue::Status, Cue::CanI])) {
                continue;
            }
            self.only_water(&clause);
            if clause.asks && clause.has(Cue::CanI) {
                continue;
            }
            self.unfed_clause(&clause, at);
        }
        self.end_gap_at_feeding();
    }

    fn only_water(&mut self, clause: &Clause) {
        if !clause.has(Cue::Only) || clause.has(Cue::Gas) {
            return;
        }
        let here: Vec<&(usize, super::reading::Told)> =
            self.facts.iter().filter(|(at, _)| clause.range().contains(at)).collect();
        let water = here
            .iter()
            .find(|(_, told)| matches!(told.what, What::Water { amount, .. } if amount != Some(0.0)))
            .map(|(at, told)| (*at, told.day));
        let fed = self.facts.iter().any(|(_, told)| {
            matches!(told.what, What::Fed { .. } | What::NotFed { .. } | What::Seeded { .. })
                && water.is_some_and(|(_, day)| day == told.day)
        });
        if let Some((at, day)) = water.filter(|_| !fed) {
            self.tell(at, day, What::NotFed { days: 1 });
        }
    }

    fn unfed_clause(&mut self, clause: &Clause, index: usize) {
        let told_here = self.facts.iter().any(|(at, told)| {
            clause.range().contains(at)
                && matches!(
                    told.what,
                    What::Fed { .. }
                        | What::NotFed { .. }
                        | What::Water { amount: Some(0.0), .. }
                        | What::Seeded { .. }
                        | What::Removed { .. }
                )
        });
        if told_here
            && !self
                .facts
                .iter()
                .any(|(at, told)| clause.range().contains(at) && matches!(told.what, What::NotFed { .. }))
        {
            if !clause.has(Cue::PutNot)
                && !clause.range().any(|i| matches!(self.node(i).when(), Some(When::Span(_) | When::Since(_))))
            {
                return;
            }
        }
        let put_denied = clause.range().find(|&at| {
            let node = self.node(at);
            node.kind == Kind::Phrase
                && (node.has(Cue::PutNot)
                    || node.has(Cue::Put) && (self.denied(clause, at) || clause.has(Cue::Nothing)))
        });
        let nothing = self
            .find(clause, &Cues::of(&[Cue::Nothing]))
            .filter(|&at| !self.node(at).used && self.nothing_is_said_of_food(clause, index, at));
        let Some(at) = put_denied.or(nothing) else { return };
        // "didn't put water": of water only.
        let water = clause.range().find(|&i| self.has(i, Cue::Water) && self.node(i).feed().is_none());
        if water.is_some()
            && !clause.has(Cue::Only)
            && (self.facts.iter().any(|(told, _)| clause.range().contains(told))
                || put_denied.is_some()
                    && !clause.range().any(|i| self.node(i).feed().is_some())
                    && !clause.has(Cue::Nothing))
        {
            if !self
                .facts
                .iter()
                .any(|(told, fact)| clause.range().contains(told) && matches!(fact.what, What::Water { .. }))
            {
                self.tell(at, Some(clause.day(at)), What::Water { amount: Some(0.0), unit: Some(Unit::L) });
            }
            return;
        }
        // A named feed denied is not all feeding denied.
        let named = clause
            .range()
            .any(|i| self.node(i).feed().is_some_and(|feed| feed != Feed::FoodWaste) && !self.node(i).used);
        if named && nothing.is_none() {
            return;
        }
        let mut days = 1;
        let mut day = clause.day(at);
        for i in clause.range() {
            match self.node(i).when() {
                Some(When::Span(n)) | Some(When::Ago(n)) if n >= 1 => {
                    days = n;
                    day = 0;
                }
                Some(When::Since(n)) if n >= 1 => {
                    days = n;
                    day = 0;
                }
                _ => {}
            }
        }
        if let Some((from, _)) = self.unclear_day(clause) {
            self.doubt(About::Day, from, from + 1);
            return;
        }
        if days == 1 && self.days_in_a_row(clause) {
            // "neither yesterday nor today"
            for (node, day) in clause.days.clone() {
                self.tell(node, Some(day), What::NotFed { days: 1 });
            }
        } else {
            self.facts
                .retain(|(told, fact)| !(clause.range().contains(told) && matches!(fact.what, What::NotFed { .. })));
            self.tell(at, Some(day), What::NotFed { days: days as u32 });
        }
        self.use_up(clause.range());
    }

    /// Several days named one by one, with only joints between.
    fn days_in_a_row(&self, clause: &Clause) -> bool {
        const JOINTS: Cues = Cues::of(&[Cue::And, Cue::Or, Cue::Not, Cue::Of, Cue::In]);
        let (Some(first), Some(last)) = (clause.days.first(), clause.days.last()) else { return false };
        first.0 < last.0 && (first.0..last.0).all(|i| self.node(i).when().is_some() || self.node(i).any(&JOINTS))
    }

    /// "yesterday nothing": with only a day beside it, or food.
    fn nothing_is_said_of_food(&self, clause: &Clause, index: usize, at: usize) -> bool {
        let day = clause.range().any(|i| self.node(i).when().is_some());
        let food = clause.range().any(|i| self.node(i).feed() == Some(Feed::FoodWaste));
        let other = clause.range().any(|i| {
            i != at
                && self.node(i).any(&Cues::of(&[
                    Cue::Gas,
                    Cue::GasBag,
                    Cue::Leak,
                    Cue::Smell,
                    Cue::Outlet,
                    Cue::Inlet,
                    Cue::ComesOut,
                    Cue::GoesIn,
                    Cue::Cook,
                    Cue::Water,
                    Cue::Other,
                    Cue::Wrong,
                ]))
                || self.node(i).unknown()
        });
        let _ = index;
        (day || food) && !other
    }

    fn unclear_day(&self, clause: &Clause) -> Option<(usize, i32)> {
        clause.range().find_map(|i| match self.node(i).when() {
            Some(When::EitherWay(days)) if !clause.days.iter().any(|&(at, _)| at == i) => Some((i, days)),
            _ => None,
        })
    }

    /// "not fed for 3 days, today 2 kg": the gap ends yesterday.
    fn end_gap_at_feeding(&mut self) {
        let today = self.facts.iter().any(|(_, told)| told.day == Some(0) && matches!(told.what, What::Fed { .. }));
        if !today {
            return;
        }
        for (_, told) in &mut self.facts {
            if let What::NotFed { days } = told.what
                && days > 1
                && told.day == Some(0)
            {
                told.day = Some(-1);
            }
        }
    }
}
