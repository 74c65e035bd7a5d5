//! Figures typed for the words they sound like: "nobody 2 feed it", "4 1 week", "2 much water".
//!
//! Takes a text's tokens; gives each such figure as the word that is meant. A figure that can count what follows stays one.

use super::lexicon::Lexicon;
use super::notions::{Cue, Cues, Meaning, NumberWord, UnitWord};
use super::tokens::{Token, TokenKind, Tokens};

/// After these a figure counts or names: "we are 4", "house 2 fed", "at 4 we cooked".
const COUNTED: Cues = Cues::of(&[
    Cue::Is,
    Cue::My,
    Cue::And,
    Cue::At,
    Cue::About,
    Cue::Household,
    Cue::NumberSign,
    Cue::PeopleAre,
    Cue::Gauge,
    Cue::Temp,
    Cue::Ph,
    Cue::Only,
    Cue::Point,
]);

pub fn spell_out(tokens: &mut Tokens, lexicon: &Lexicon) {
    within_words(tokens, lexicon);
    for at in 1..tokens.list.len().saturating_sub(1) {
        if let Some(word) = meant(tokens, lexicon, at) {
            let from = tokens.letters.len() as u32;
            tokens.letters.push_str(word);
            tokens.list[at].kind = TokenKind::Word(from, tokens.letters.len() as u32);
        }
    }
}

/// "2ko" for "tuko", "wa2" for "watu": where the figure and the letters that touch it make a listed word.
fn within_words(tokens: &mut Tokens, lexicon: &Lexicon) {
    if !lexicon.habits.figures.iter().any(|said| said.within) {
        return;
    }
    let mut kept: Vec<Token> = Vec::with_capacity(tokens.list.len());
    for at in 0..tokens.list.len() {
        let token = tokens.list[at];
        let joined = kept.last().filter(|_| token.glued).and_then(|last| {
            let part = |token: &Token| match token.kind {
                TokenKind::Word(..) => Some(tokens.text(token)),
                TokenKind::Digits(..) => {
                    let same = |said: &&super::wordlist::Figure| said.within && said.figure == tokens.text(token);
                    lexicon.habits.figures.iter().find(same).map(|said| said.word.as_str())
                }
                _ => None,
            };
            let one = |a: &Token, b: &Token| {
                matches!(
                    (a.kind, b.kind),
                    (TokenKind::Word(..), TokenKind::Digits(..)) | (TokenKind::Digits(..), TokenKind::Word(..))
                )
            };
            let word = if matches!(last.kind, TokenKind::Word(..)) { last } else { &token };
            // "1ère" is the first, and no hour.
            let counts = lexicon
                .look_up(tokens.text(word))
                .is_some_and(|m| (m.unit.is_some() || m.feed.is_some()) && !m.cues.has(Cue::Ordinal));
            let whole = format!("{}{}", part(last)?, part(&token)?);
            (one(last, &token) && !counts && lexicon.exact(&whole).is_some()).then_some(whole)
        });
        match (joined, kept.last_mut()) {
            (Some(whole), Some(last)) => {
                let from = tokens.letters.len() as u32;
                tokens.letters.push_str(&whole);
                last.kind = TokenKind::Word(from, tokens.letters.len() as u32);
                last.end = token.end;
            }
            _ => kept.push(token),
        }
    }
    tokens.list = kept;
}

fn meant<'a>(tokens: &Tokens, lexicon: &'a Lexicon, at: usize) -> Option<&'a str> {
    let token = &tokens.list[at];
    let figure = Some(tokens.text(token)).filter(|_| matches!(token.kind, TokenKind::Digits(..)))?;
    let said = lexicon.habits.figures.iter().find(|said| said.figure == figure && !said.within)?;
    let word = |token: &Token| matches!(token.kind, TokenKind::Word(..));
    let (before, next) = (&tokens.list[at - 1], &tokens.list[at + 1]);
    if token.glued || next.glued || !word(before) {
        return None;
    }
    // A word that is listed only within phrases is an ordinary one.
    let means = |token: &Token| {
        let text = tokens.text(token);
        let ordinary = || lexicon.exact(text).map(|_| Meaning { cues: Cues::of(&[Cue::Other]), ..Meaning::default() });
        lexicon.look_up(text).copied().or_else(ordinary).unwrap_or_default()
    };
    let counts = |meaning: &Meaning| meaning.unit.is_some() || meaning.feed.is_some();
    let (earlier, later) = (means(before), means(next));
    // "is 2 low", "2 much": a degree, unless what it is said of is counted: "2 full buckets".
    let listed = |degree: &&str| lexicon.look_up(&format!("{degree} {}", tokens.text(next))).is_some();
    let degree = said.degree.as_deref().filter(|_| word(next)).filter(listed);
    let thing_follows = tokens.list.get(at + 2).is_some_and(|thing| counts(&means(thing)));
    if degree.is_some() && !thing_follows {
        return degree;
    }
    if earlier.cues.any(&COUNTED) || earlier.number.is_some() || earlier.unit.is_some() {
        return None;
    }
    // "4 1 week"
    let spans = |token: &Token| matches!(means(token).unit, Some(UnitWord::Days(_) | UnitWord::Time(_)));
    let length = matches!(next.kind, TokenKind::Digits(..)) && tokens.list.get(at + 2).is_some_and(spans);
    let article = matches!(later.number, Some(NumberWord::Article));
    // "scraps 2 fed": so many were.
    let counted = earlier.feed.is_some() && !earlier.cues.has(Cue::Put);
    let mut beside = later.cues;
    beside.remove(Cue::Chatter);
    beside.remove(Cue::ThatOne);
    let done = later.cues.has(Cue::Put) || beside == Cues::of(&[Cue::Other]);
    let named = word(next) && (article || later.cues.has(Cue::My) || done && !counted);
    let led = length || named && !counts(&later);
    led.then_some(said.word.as_str())
}
