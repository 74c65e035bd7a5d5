//! Slips: what a text mends within itself, "2 kg rice sorry 3".
//!
//! Takes the row before portions are read; strikes what was said first. What mends an earlier text is [`super::mends`].

use super::foods::peel_of;
use super::mends::SLIPS;
use super::nodes::{Kind, Quantity};
use super::notions::{Cue, Cues};
use super::reader::Reader;
use super::reading::Control;
use super::tokens::Mark;
use super::wordlist::Contrast;
use bellyful_core::feeds::Feed;

impl Reader<'_> {
    /// "2 kg rice sorry 3": the number said first is struck, its unit and feed stay.
    pub(super) fn mend_within(&mut self) {
        for slip in 1..self.row.nodes.len() {
            let slips = || self.node(slip).any(&SLIPS) || self.no_between_amounts(slip);
            if self.node(slip).kind != Kind::Phrase || !slips() {
                continue;
            }
            let earlier = (0..slip).rev().find(|&at| {
                self.node(at).quantity().is_some_and(|q| q.number.is_some() && !q.implied)
                    || self.node(at).number().is_some_and(|n| !n.weak)
            });
            let later = (slip + 1..self.row.nodes.len().min(slip + 4)).find(|&at| {
                self.node(at).number().is_some_and(|n| !n.weak)
                    || self.node(at).quantity().is_some_and(|q| q.number.is_some() && !q.implied)
            });
            if later.is_none() {
                self.mend_unit(slip, earlier);
                self.mend_feed(slip);
            }
            let (Some(earlier), Some(later)) = (earlier, later) else { continue };
            if self.has(slip + 1, Cue::Not) {
                continue;
            }
            let fed = |reader: &Self| (earlier..slip).any(|at| reader.node(at).feed().is_some());
            if self.no_right_between(slip) && (self.is_of_a_feed(later) || self.has(later + 1, Cue::Water)) {
                self.strike(earlier, slip);
                continue;
            }
            let mended: Quantity = match (self.node(earlier).quantity(), self.node(later).kind) {
                (Some(was), Kind::Number(number)) => Quantity { number: Some(number), ..was },
                (Some(_), Kind::Quantity(now)) if !self.is_of_a_feed(later) => now,
                (None, Kind::Quantity(now)) if !self.is_of_a_feed(later) || fed(self) => now,
                // "2 kg rice oops sorry 4 kg rice": the same again, with another number.
                (Some(_), Kind::Quantity(_)) if self.feed_between(earlier, slip) == self.feed_behind(later) => {
                    let struck: Vec<usize> = (earlier..slip).filter(|&at| self.node(at).feed().is_some()).collect();
                    self.use_up(struck);
                    self.strike(earlier, slip);
                    continue;
                }
                // "5 kg, no, 4 kg of kale", "3, sorry, 2 kg of chicken": the first was of nothing named.
                (_, Kind::Quantity(_)) if !fed(self) => {
                    self.strike(earlier, slip);
                    continue;
                }
                _ => continue,
            };
            self.row.nodes[earlier].kind = Kind::Quantity(mended);
            self.use_up([slip, later]);
            self.slip_is_mended(slip);
        }
        self.note_sentences();
    }

    /// "2 buckets sorry jerrycans of water": the number stays, the measure is another.
    fn mend_unit(&mut self, slip: usize, earlier: Option<usize>) {
        let Some(earlier) = earlier.filter(|at| slip - at <= 3) else { return };
        let Some(later) = self.row.nodes.get(slip + 1).and_then(|node| node.quantity()) else { return };
        let Some(was) = self.node(earlier).quantity().filter(|_| later.implied && later.unit.is_some()) else { return };
        self.row.nodes[earlier].kind = Kind::Quantity(Quantity { unit: later.unit, ..was });
        self.use_up([slip, slip + 1]);
        self.slip_is_mended(slip);
    }

    fn feed_between(&self, from: usize, to: usize) -> Option<Feed> {
        (from..to).find_map(|at| self.node(at).feed())
    }

    fn feed_behind(&self, amount: usize) -> Option<Feed> {
        let next =
            (amount + 1..self.row.nodes.len()).find(|&at| !self.has(at, Cue::Of) || self.node(at).feed().is_some());
        next.and_then(|at| self.node(at).feed())
    }

    fn is_of_a_feed(&self, amount: usize) -> bool {
        self.feed_behind(amount).is_some()
    }

    fn strike(&mut self, earlier: usize, slip: usize) {
        self.use_up([earlier, slip]);
        self.slip_is_mended(slip);
    }

    /// The slip is mended here, so that it mends nothing told earlier.
    fn slip_is_mended(&mut self, slip: usize) {
        self.row.nodes[slip].meaning = Default::default();
        if let Some(clause) = self.clause_of(slip).map(|index| &mut self.clauses[index]) {
            let nodes = &self.row.nodes[clause.from..clause.to];
            clause.cues = nodes.iter().fold(Cues::default(), |mut all, node| {
                all.join(&node.meaning.cues);
                all
            });
        }
    }

    /// "2 buckets no 3 buckets of water": what stands before a "no" is struck, in languages whose "no" is no "not", or
    /// whose "not" denies what stands before it.
    fn no_right_between(&self, at: usize) -> bool {
        let whole = |at: usize| {
            let quantity = self.row.nodes.get(at).and_then(|node| node.quantity());
            quantity.is_some_and(|q| !q.implied && q.number.is_some() && q.unit.is_some())
        };
        let denies = match self.row.lexicon.habits.contrast {
            Contrast::Second => self.is_no(at) || self.has(at, Cue::Not),
            Contrast::First => self.is_no(at) && !self.has(at, Cue::Not),
        };
        let told = || {
            self.anywhere(&Cues::of(&[Cue::Put, Cue::Water])) || self.row.nodes.iter().any(|node| node.feed().is_some())
        };
        denies && at >= 1 && whole(at - 1) && whole(at + 1) && told()
    }

    /// "5 kg, no, 4 kg of kale": a "no" between pauses, and an amount on either side.
    fn no_between_amounts(&self, at: usize) -> bool {
        let pause = |at: usize| self.row.nodes.get(at).is_some_and(|node| node.mark() == Some(Mark::Comma));
        let amount = |at: usize| self.row.nodes.get(at).is_some_and(|node| node.quantity().is_some_and(|q| !q.implied));
        // "no, it was 2 pots, not 2 buckets": it is told what was wrong already.
        let opened = || (0..at).any(|i| self.is_no(i) || self.node(i).any(&SLIPS));
        // "2 basins, not 2 buckets": a "not" that is no answer denies what follows it.
        let not = self.row.lexicon.habits.contrast == Contrast::First
            && self.has(at, Cue::Not)
            && self.node(at).meaning.order() != Some(&Control::No);
        self.no_right_between(at)
            || self.is_no(at)
                && !not
                && pause(at - 1)
                && at >= 2
                && (at.saturating_sub(4)..at).any(amount)
                && amount(at + 1 + usize::from(pause(at + 1)))
                && !opened()
    }

    /// "2 kg plantain peels sorry banana": the feed said first is struck; what was a peel stays one.
    fn mend_feed(&mut self, slip: usize) {
        const JOINTS: Cues = Cues::of(&[Cue::Of, Cue::Is, Cue::Was]);
        let joint = |at: &usize| {
            self.node(*at).number().is_some_and(|n| n.weak)
                || self.node(*at).feed().is_none() && self.node(*at).any(&JOINTS)
        };
        let later = (slip + 1..self.row.nodes.len()).find(|at| !joint(at));
        let earlier = (slip.saturating_sub(3)..slip).rev().find(|&at| self.node(at).feed().is_some());
        let (Some(earlier), Some(later)) = (earlier, later) else { return };
        let Some(feed) = self.node(later).feed().filter(|_| later + 1 == self.row.nodes.len()) else { return };
        let was_peel = self.row.words_of(earlier).any(|meaning| meaning.cues.has(Cue::Peel));
        let feed = if was_peel { peel_of(self.node(later)).unwrap_or(feed) } else { feed };
        self.row.nodes[earlier].meaning.feed = Some(feed);
        self.row.nodes[slip].meaning.cues = Cues::default();
        self.use_up([slip, later]);
    }
}
