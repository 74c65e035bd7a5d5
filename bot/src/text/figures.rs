//! Figures of speech: what burns or aches only in words, such as a price in flames or a debt that is a headache.
//!
//! Takes a danger as told; says whether it is a manner of speaking. It must be one beyond doubt: whatever speaks of the
//! house, the gas or a cry for help makes it a danger again.

use super::clauses::Clause;
use super::nodes::{Found, Node, Row};
use super::notions::{Cue, Cues};
use super::reader::Reader;
use super::wordlist::Side;
use bellyful_core::fact::Sign;

/// What truly burns or chokes.
const REAL: Cues = Cues::of(&[
    Cue::Indoors,
    Cue::BurnThing,
    Cue::Pipe,
    Cue::GasBag,
    Cue::Bag,
    Cue::Gas,
    Cue::Tank,
    Cue::Stove,
    Cue::Smell,
    Cue::Leak,
    Cue::Hiss,
    Cue::Slurry,
    Cue::Outlet,
    Cue::Inlet,
]);

/// What burns in earnest where it is named.
const OF_THE_HOUSE: Cues = Cues::of(&[
    Cue::Indoors,
    Cue::BurnThing,
    Cue::Pipe,
    Cue::GasBag,
    Cue::Bag,
    Cue::Tank,
    Cue::Stove,
    Cue::Smell,
    Cue::Leak,
    Cue::Hiss,
]);
/// Words on either side of a figure that are looked at, so that a long text costs no more a word.
const NEAR: usize = 12;

impl Row<'_> {
    /// A listed figure beside a thing of the house is none: "the party caught fire in the kitchen". Its words are
    /// matched again, each for what it says.
    pub(super) fn take_at_their_word(&mut self, words: &[Found]) {
        let Some(first) = self.nodes.iter().position(|node| node.has(Cue::InWords)) else { return };
        let matched = std::mem::take(&mut self.nodes);
        self.nodes.extend(&matched[..first]);
        for (at, node) in matched.iter().enumerate().skip(first) {
            let of_clause = |other: &&Node| other.mark().is_none() && !other.has(Cue::But);
            let before = matched[..at].iter().rev().take_while(of_clause).take(NEAR);
            let after = matched[at + 1..].iter().take_while(of_clause).take(NEAR);
            if node.has(Cue::InWords) && before.chain(after).any(|other| other.any(&OF_THE_HOUSE)) {
                self.match_phrases(words, node.from as usize..node.to as usize, false);
            } else {
                self.nodes.push(*node);
            }
        }
    }
}

impl Reader<'_> {
    pub fn only_in_words(&self, at: usize, sign: Sign) -> bool {
        let Some(clause) = self.clause_at(at) else { return false };
        if self.cries {
            return false;
        }
        if self.only_hot(clause, at) {
            return true;
        }
        match sign {
            Sign::Fire => !self.is_real(clause, at) && (self.burns_in_words(clause, at) || self.jokes(clause, at)),
            Sign::Unwell => self.burdens(clause, at) && !self.clauses.iter().any(|clause| self.is_real(clause, at)),
            _ => false,
        }
    }

    /// "the tank burns my hand in this sun": hot to the touch, where no fire, steam or gas is spoken of.
    fn only_hot(&self, clause: &Clause, at: usize) -> bool {
        const HURTS: Cues = Cues::of(&[Cue::Burning, Cue::Harm, Cue::Body, Cue::Heat]);
        const TRULY: Cues = Cues::of(&[
            Cue::Flame,
            Cue::FireWord,
            Cue::Smoke,
            Cue::Stove,
            Cue::Leak,
            Cue::Hiss,
            Cue::Smell,
            Cue::Blast,
            Cue::Torn,
            Cue::Rises,
            Cue::Ache,
        ]);
        clause.has(Cue::Heat) && self.speaks_of(at, &HURTS) && !clause.range().any(|i| self.speaks_of(i, &TRULY))
    }

    /// Whether what truly burns or chokes is spoken of in the clause.
    fn is_real(&self, clause: &Clause, at: usize) -> bool {
        // "jikoni kunaungua": the place is in the phrase.
        if self.row.words_of(at).any(|meaning| meaning.cues.any(&OF_THE_HOUSE)) {
            return true;
        }
        clause.range().any(|i| i != at && self.node(i).any(&REAL) && !self.is_priced(clause, i))
    }

    /// "the price of gas", "the debt for the digester": it is the price or the debt that is meant.
    fn is_priced(&self, clause: &Clause, at: usize) -> bool {
        const WORDS: Cues = Cues::of(&[Cue::Figure, Cue::Burden]);
        let joint = |i: &usize| {
            self.node(*i).any(&Cues::of(&[Cue::Of, Cue::My])) || self.node(*i).number().is_some_and(|n| n.weak)
        };
        let owner = (clause.from..at).rev().find(|i| self.node(*i).any(&WORDS) || !joint(i));
        let of = |owner: usize| (owner..at).any(|i| self.has(i, Cue::Of));
        self.node(at).any(&WORDS) || owner.is_some_and(|i| self.node(i).any(&WORDS) && of(i))
    }

    /// "the price of sugar is on fire", "yesterday the match was on fire": the figure opens the clause, as what burns.
    fn burns_in_words(&self, clause: &Clause, at: usize) -> bool {
        const OPENING: Cues = Cues::of(&[
            Cue::My,
            Cue::And,
            Cue::But,
            Cue::Modifier,
            Cue::Chatter,
            Cue::Morning,
            Cue::Now,
            Cue::Of,
            Cue::To,
        ]);
        let opens = |i: &usize| {
            let node = self.node(*i);
            node.when().is_some() || node.number().is_some_and(|n| n.weak) || node.any(&OPENING)
        };
        let figure = (clause.from..at).find(|i| self.has(*i, Cue::Figure) || !opens(i));
        figure.is_some_and(|i| {
            // "the team bus is on fire": the bus, not the team.
            let other = |at: usize| self.node(at).unknown() || self.ordinary(at) && self.row.is_long(self.node(at));
            let itself = self.has(i, Cue::Elsewhere) || !(i + 1..at).any(other);
            self.has(i, Cue::Figure) && itself && !self.is_place(clause, i)
        })
    }

    /// "my phone is on fire haha": of a thing of daily life, laughing.
    fn jokes(&self, clause: &Clause, at: usize) -> bool {
        self.anywhere(&Cues::of(&[Cue::Laugh])) && self.said_of_another(clause, at)
    }

    /// "school fees give me a headache", "I nearly fainted when I saw the bill": a burden does it, no gas.
    fn burdens(&self, clause: &Clause, at: usize) -> bool {
        if clause.range().any(|i| self.has(i, Cue::Almost)) {
            return self.sentence(clause).cues.has(Cue::Burden);
        }
        let burden = clause.range().find(|&i| self.has(i, Cue::Burden) && !self.is_place(clause, i));
        self.has(at, Cue::Ache)
            && burden.is_some_and(|i| !(i.min(at) + 1..i.max(at)).any(|between| self.has(between, Cue::And)))
    }

    /// "at the party", "party me": where it burns, not what.
    fn is_place(&self, clause: &Clause, at: usize) -> bool {
        if self.row.lexicon.habits.negation == Side::After {
            return at + 1 < clause.to && self.has(at + 1, Cue::In) && !self.has(at + 1, Cue::Since);
        }
        let joint = |i: &usize| self.node(*i).number().is_some_and(|n| n.weak) || self.has(*i, Cue::My);
        (clause.from..at).rev().find(|i| !joint(i)).is_some_and(|i| self.has(i, Cue::In))
    }
}
