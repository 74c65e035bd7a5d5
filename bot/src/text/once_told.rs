//! Once told: what the facts of one text say about each other, put right when all of them are there.

use super::notions::{Cue, Cues};
use super::reader::Reader;
use super::reading::Told;
use bellyful_core::fact::{FlameLook, Sign, What};
use bellyful_core::feeds::Feed;

fn is_sign(what: &What, of: Sign) -> bool {
    matches!(what, What::Sign { sign } if *sign == of)
}

impl Reader<'_> {
    pub fn once_told(&mut self) {
        self.torn_bag_smells();
        self.fire_put_out();
        self.what_the_waste_was();
    }

    fn sentence_at(&self, at: usize) -> Option<usize> {
        self.clause_at(at).map(|clause| clause.sentence)
    }

    /// The sentences that tell of `sign`.
    fn told_in(&self, sign: Sign) -> Vec<usize> {
        let told = self.facts.iter().filter(|(_, told)| is_sign(&told.what, sign));
        told.filter_map(|&(at, _)| self.sentence_at(at)).collect()
    }

    /// "the bag is torn and it smells all over the yard": what smells is the gas.
    fn torn_bag_smells(&mut self) {
        let torn = self.told_in(Sign::BagTorn);
        for index in 0..self.facts.len() {
            let (at, told) = &self.facts[index];
            let here = self.sentence_at(*at).is_some_and(|sentence| torn.contains(&sentence));
            if here && is_sign(&told.what, Sign::BadSmell) {
                self.facts[index].1.what = What::Sign { sign: Sign::GasLeak };
            }
        }
    }

    /// "it caught fire at the hose, it is out now": what went out is that fire.
    fn fire_put_out(&mut self) {
        let burns = self.told_in(Sign::Fire);
        let of_the_fire = |(at, told): &(usize, Told)| {
            let out = matches!(told.what, What::Flame { look: FlameLook::GoesOut });
            out && self.sentence_at(*at).is_some_and(|sentence| burns.contains(&sentence))
        };
        let kept: Vec<_> = self.facts.iter().filter(|told| !of_the_fire(told)).cloned().collect();
        self.facts = kept;
    }

    /// "5 kg of leftovers, rice and meat": foods without amounts, in a clause of their own, are what it was.
    fn what_the_waste_was(&mut self) {
        let mut index = 0;
        while index + 1 < self.facts.len() {
            let (at, told) = &self.facts[index];
            let what = match told.what {
                What::Fed { feed: Feed::FoodWaste, amount: Some(amount), unit } => Some((amount, unit)),
                _ => None,
            };
            let Some((amount, unit)) = what else {
                index += 1;
                continue;
            };
            let named = |(next, more): &&(usize, Told)| {
                matches!(more.what, What::Fed { feed, amount: None, unit: None } if feed != Feed::FoodWaste)
                    && more.day == told.day
                    && self.sentence_at(*next) == self.sentence_at(*at)
            };
            let count = self.facts[index + 1..].iter().take_while(named).count();
            if count == 0 || !self.lists_what_it_was(*at, self.facts[index + 1].0) {
                index += 1;
                continue;
            }
            // "1 bucket of each, dung and peels"
            let each = self.clause_at(*at).is_some_and(|clause| clause.has(Cue::Each));
            let part_of = if each { amount } else { amount / count as f64 };
            for (_, more) in &mut self.facts[index + 1..=index + count] {
                if let What::Fed { amount: part, unit: of, .. } = &mut more.what {
                    (*part, *of) = (Some(part_of), unit);
                }
            }
            self.facts.remove(index);
            index += count;
        }
    }

    /// Whether the foods that start at `first` stand in the clause after the amount at `at`, and are not put in besides.
    fn lists_what_it_was(&self, at: usize, first: usize) -> bool {
        const BESIDES: Cues = Cues::of(&[Cue::And, Cue::Put, Cue::Again, Cue::Fell, Cue::With]);
        let (Some(amount), Some(list)) = (self.clause_of(at), self.clause_of(first)) else { return false };
        let lead = self.clauses[list].from..first;
        list == amount + 1
            && self.clauses[list].range().all(|i| !self.has(i, Cue::Put) || self.has(i, Cue::Modifier))
            && !lead.clone().any(|i| self.node(i).any(&BESIDES))
    }
}
