//! Shares: water told as a share of the feed ("the same of water", "double"), worked out from what was fed.

use super::super::clauses::Clause;
use super::super::measured::round;
use super::super::notions::Cue;
use super::super::reader::Reader;
use super::super::reading::{About, Told};
use super::atoms::REST;
use bellyful_core::fact::{Measure, Unit, What};

impl Reader<'_> {
    /// "same water", "double the water": worked out from the feed told before.
    pub(super) fn water_share(
        &mut self,
        clause: &Clause,
        from: usize,
        to: usize,
        day: i32,
        share: f64,
        fed_before: usize,
    ) {
        let of_clause = &self.facts[fed_before.min(self.facts.len())..];
        let feeds = |facts: &[(usize, Told)]| -> Vec<(Option<f64>, Option<Unit>)> {
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
        // "1 seau de bouse, 2 kg de manioc et autant d'eau": of all that the sentence fed.
        let sentence = self.sentence(clause);
        let whole: Vec<(usize, Told)> =
            self.facts.iter().filter(|(at, _)| (sentence.from..sentence.to).contains(at)).cloned().collect();
        let all = feeds(&whole);
        if fed.is_empty() {
            fed = feeds(&self.facts);
        } else if all.iter().any(|&(_, unit)| unit != fed[0].1) {
            fed = all;
        }
        // "2 kg of mango, 1 bucket of grass and the same of water": of both, which have no unit in common.
        if self.has(from.saturating_sub(1), Cue::And) && !self.has(from.saturating_sub(1), Cue::With) {
            let sentence = self.sentence(clause).from;
            fed = feeds(&self.facts[self.facts.partition_point(|&(at, _)| at < sentence)..]);
        }
        let unit = fed.first().and_then(|&(_, unit)| unit);
        let total: Option<f64> = fed.iter().map(|&(amount, u)| amount.filter(|_| u == unit)).sum();
        match (total, unit) {
            (Some(total), Some(Unit::Of(of))) if share == REST && total < 1.0 && of != Measure::Piece => {
                let left = What::Water { amount: Some(round(1.0 - total, 4)), unit };
                self.tell(from, Some(day), left);
            }
            _ if share == REST => self.doubt(About::Amount, from, to + 1),
            (Some(total), Some(unit)) if !fed.is_empty() && unit != Unit::Of(Measure::Piece) => {
                let unit = if unit == Unit::Kg { Unit::L } else { unit };
                self.tell(from, Some(day), What::Water { amount: Some(round(total * share, 4)), unit: Some(unit) });
            }
            _ => self.doubt(About::Amount, from, to + 1),
        }
    }
}
