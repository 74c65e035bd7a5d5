//! Weighed: one portion told twice, by its vessels and by its weight: "2 buckets of dung, 30 kg" is 30 kg of dung.
//!
//! Takes the facts that were told; where two of them are one, keeps the weight and the food that is named.

use super::super::nodes::Kind;
use super::super::notions::{Cue, Cues};
use super::super::reader::Reader;
use super::super::tokens::Mark;
use bellyful_core::fact::{Measure, Unit, What};
use bellyful_core::feeds::Feed;
use bellyful_core::feeds::measures::size;

/// What a vessel's usual fill may weigh, in kilograms a litre: leaves are light, and vessels are told by eye.
const PER_LITRE: std::ops::Range<f64> = 0.12..2.5;

impl Reader<'_> {
    pub fn told_by_weight_too(&mut self) {
        let mut at = 0;
        while at + 1 < self.facts.len() {
            if let Some(what) = self.one_portion(at) {
                self.facts[at].1.what = what;
                self.facts.remove(at + 1);
            }
            at += 1;
        }
    }

    fn one_portion(&self, at: usize) -> Option<What> {
        let (one, other) = (&self.facts[at], &self.facts[at + 1]);
        let (
            What::Fed { feed, amount: Some(count), unit: Some(unit) },
            What::Fed { feed: second, amount: Some(kg), unit: second_unit },
        ) = (&one.1.what, &other.1.what)
        else {
            return None;
        };
        let (measure, count, kg) = match (unit, second_unit) {
            (Unit::Of(measure), Some(Unit::Kg)) => (*measure, *count, *kg),
            (Unit::Kg, Some(Unit::Of(measure))) => (*measure, *kg, *count),
            _ => return None,
        };
        let named = match (*feed, *second) {
            (Feed::FoodWaste, named) | (named, Feed::FoodWaste) => named,
            _ => return None,
        };
        let fits = PER_LITRE.contains(&(kg / (count * size(measure, None, None).litres.get())));
        let scraps = usize::from(feed == second);
        (measure != Measure::Piece && one.1.day == other.1.day && fits && self.nothing_parts(one.0, other.0, scraps))
            .then_some(What::Fed { feed: named, amount: Some(kg), unit: Some(Unit::Kg) })
    }

    /// Neither "and" nor another hour stands between, and scraps are named no more than `scraps` times.
    fn nothing_parts(&self, one: usize, other: usize, scraps: usize) -> bool {
        const PARTS: Cues = Cues::of(&[Cue::And, Cue::Again, Cue::Morning, Cue::Put, Cue::With, Cue::Or, Cue::Water]);
        let (from, to) = (one.min(other), one.max(other));
        let near = from.saturating_sub(3)..(to + 4).min(self.row.nodes.len());
        let same_sentence =
            self.clause_at(one).zip(self.clause_at(other)).is_some_and(|(a, b)| a.sentence == b.sentence);
        let parts = |at: usize| {
            let node = self.node(at);
            node.kind == Kind::Phrase && node.any(&PARTS)
                || node.when().is_some()
                || matches!(node.mark(), Some(Mark::Plus | Mark::Stop))
        };
        same_sentence
            && !(from + 1..to).any(parts)
            && near.filter(|&at| self.node(at).feed() == Some(Feed::FoodWaste)).count() <= scraps
    }
}
