//! Plants: slurry put on what grows feeds no tank, and neither does what it is put on.

use super::super::clauses::Clause;
use super::super::notions::{Cue, Cues};
use super::super::reader::Reader;
use super::super::wordlist::Side;
use bellyful_core::feeds::Feed;

impl Reader<'_> {
    /// "took 3 buckets of slurry and put on beans": the beans are where it went.
    pub(super) fn on_plants(&mut self, clause: &mut Clause) {
        const JOINTS: Cues = Cues::of(&[Cue::In, Cue::To, Cue::At, Cue::Crops, Cue::Since]);
        let slurry = |clause: &Clause| {
            clause.range().any(|at| {
                self.speaks_of(at, &Cues::of(&[Cue::Slurry])) || self.node(at).feed() == Some(Feed::Digestate)
            })
        };
        let taken = self.clause_before(clause).is_some_and(|before| before.has(Cue::Remove) && slurry(before));
        if !clause.has(Cue::Put) && !clause.has(Cue::Remove) || clause.has(Cue::Tank) || !taken && !slurry(clause) {
            return;
        }
        let postposed = self.row.lexicon.habits.negation == Side::After;
        let little = |at: usize| {
            self.node(at).any(&Cues::of(&[Cue::My, Cue::Chatter])) || self.node(at).number().is_some_and(|n| n.weak)
        };
        let on = |plant: usize| {
            let joint = if postposed {
                (plant + 1..clause.to).next()
            } else {
                (clause.from..plant).rev().find(|&at| self.node(at).any(&JOINTS) || !little(at))
            };
            joint.is_some_and(|at| self.speaks_of(at, &JOINTS))
        };
        let plants: Vec<usize> =
            clause.range().filter(|&at| self.node(at).feed().is_some_and(grows) && on(at)).collect();
        if !plants.is_empty() {
            clause.cues.insert(Cue::Crops);
            self.use_up(plants);
        }
    }
}

fn grows(feed: Feed) -> bool {
    matches!(
        feed,
        Feed::Maize
            | Feed::CookedRice
            | Feed::Potato
            | Feed::Cassava
            | Feed::SweetPotato
            | Feed::Yam
            | Feed::Plantain
            | Feed::Banana
            | Feed::Mango
            | Feed::Papaya
            | Feed::Pineapple
            | Feed::Avocado
            | Feed::Apple
            | Feed::FruitWaste
            | Feed::Tomato
            | Feed::Onion
            | Feed::Cabbage
            | Feed::LeafyGreens
            | Feed::Carrot
            | Feed::Pumpkin
            | Feed::VegetableWaste
            | Feed::Beans
            | Feed::Lentils
            | Feed::Grass
    )
}
