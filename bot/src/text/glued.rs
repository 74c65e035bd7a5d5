//! Words written together: "2kgpeels", "cowdung", "degaz".
//!
//! Takes a token that is in no list; pushes the nodes of its two halves where both are.

use super::nodes::{Kind, Node, Row};
use super::notions::{Cue, Cues, Meaning};
use super::tokens::TokenKind;

impl Row<'_> {
    /// "2kgpeels", "3Lwater": a unit and its thing written together behind a number: both are pushed.
    pub(super) fn split_unit(&mut self, at: usize) -> bool {
        const LONGEST_UNIT: usize = 6;
        let token = self.tokens.list[at];
        let word = self.tokens.text(&token);
        let number = at > 0 && matches!(self.tokens.list[at - 1].kind, TokenKind::Digits(..));
        if !token.glued || !number || word.len() > 40 || self.lexicon.exact(word).is_some() {
            return false;
        }
        let pair = word.char_indices().skip(1).take(LONGEST_UNIT).find_map(|(cut, _)| {
            let (unit, thing) = word.split_at(cut);
            let unit = self.lexicon.look_up(unit).copied().filter(|meaning| meaning.unit.is_some())?;
            let thing = self.lexicon.look_up(thing).copied();
            let thing =
                thing.filter(|m| m.feed.is_some() || m.cues.any(&Cues::of(&[Cue::Water, Cue::Peel, Cue::Dung])))?;
            (word.len() >= cut + 3).then_some([unit, thing])
        });
        let Some(pair) = pair else { return false };
        self.push_halves(at, pair, true);
        true
    }

    /// An unlisted word that is two listed ones written together ("cowdung"): both are pushed.
    pub(super) fn split(&mut self, at: usize) -> bool {
        let token = self.tokens.list[at];
        let word = self.tokens.text(&token);
        if word.chars().count() < 6 || word.len() > 40 {
            return false;
        }
        for (cut, _) in word.char_indices().skip(2) {
            let (head, tail) = word.split_at(cut);
            // "dobalti": of two letters only a number.
            if head.chars().count() == 2 && self.lexicon.look_up(head).is_none_or(|meaning| meaning.number.is_none()) {
                continue;
            }
            if tail.chars().count() < 3 {
                break;
            }
            let pair = [head, tail].map(|part| {
                self.lexicon.look_up(part).copied().filter(|m| !m.cues.has(Cue::Other) && *m != Meaning::default())
            });
            if let [Some(first), Some(second)] = pair {
                self.push_halves(at, [first, second], false);
                self.known += 1;
                return true;
            }
        }
        false
    }

    /// "degaz", "agas": an unlisted word that is a joint of a letter or two and the gas or water: both are pushed.
    pub(super) fn split_joint(&mut self, at: usize) -> bool {
        const JOINTS: Cues = Cues::of(&[Cue::Of, Cue::In, Cue::To, Cue::With]);
        const MATTER: Cues = Cues::of(&[Cue::Gas, Cue::Water]);
        let token = self.tokens.list[at];
        let word = self.tokens.text(&token);
        if !(4..=12).contains(&word.len()) || self.lexicon.exact(word).is_some() {
            return false;
        }
        let pair = (1..=2).filter_map(|cut| word.split_at_checked(cut)).find_map(|(joint, thing)| {
            let joint = self.lexicon.look_up(joint).copied().filter(|meaning| meaning.cues.any(&JOINTS))?;
            let thing = self.lexicon.look_up(thing).copied().filter(|meaning| meaning.cues.any(&MATTER))?;
            Some([joint, thing])
        });
        if let Some(pair) = pair {
            self.push_halves(at, pair, false);
        }
        pair.is_some()
    }
    /// Two nodes of one token; `glued` where the first stands against the number before it.
    fn push_halves(&mut self, at: usize, halves: [Meaning; 2], glued: bool) {
        let (from, to) = (at as u32, at as u32 + 1);
        for (part, meaning) in halves.into_iter().enumerate() {
            let glued = glued && part == 0;
            self.nodes.push(Node { kind: Kind::Phrase, meaning, from, to, glued, used: false });
        }
    }
}
