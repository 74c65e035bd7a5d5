//! Language: told from the text itself.
//!
//! Takes a text and, where known, the language its writer used before; gives the lexicon that explains most of it. A
//! word that few languages share says more than one that many do, and one spelt with its accents more than one without.

use super::lexicon::{Lexicon, Lexicons};
use super::nodes::{Kind, Node};
use super::notions::{Cue, Cues, Meaning};
use super::reader::Reader;
use super::tokens::{TokenKind, Tokens};
use super::wordlist::Side;
use chrono::NaiveDate;

/// Words looked at; a longer text says no more.
const ENOUGH: usize = 60;
/// What a word's own accents are worth beside the word: lists leave many out, as writers do.
const ACCENT: f64 = 0.1;
/// Two languages explain a text alike when they stand no further apart.
const ALIKE: f64 = 0.35;

/// How well each language explains the text: (words' worth, share of words known), in the order of the lexicons.
pub fn scores(lexicons: &Lexicons, text: &str) -> Vec<(f64, f64)> {
    let all = lexicons.all();
    let mut worth = vec![0.0; all.len()];
    let mut known = vec![0_usize; all.len()];
    let Some(cutter) = all.first() else { return Vec::new() };
    let tokens = Tokens::new(clip(text), cutter);
    let mut words = 0;
    let which = |is: &dyn Fn(&Lexicon) -> bool| {
        all.iter().enumerate().take(64).fold(0_u64, |mask, (at, lexicon)| mask | u64::from(is(lexicon)) << at)
    };
    let mut count = |word: &str, typed: &str| {
        let mask = which(&|lexicon| lexicon.is_own(word));
        // One letter is a word of any language.
        let weight = if word.chars().count() < 2 { 0.2 } else { 1.0 } / f64::from(mask.count_ones().max(1));
        if !typed.is_ascii() {
            let typed = typed.to_lowercase();
            let spelt = which(&|lexicon| lexicon.spells(&typed));
            (0..all.len().min(64)).filter(|at| spelt & (1 << at) != 0).for_each(|at| worth[at] += ACCENT);
        }
        for at in 0..all.len().min(64) {
            if mask & (1 << at) != 0 {
                worth[at] += weight;
                known[at] += 1;
            }
        }
        mask != 0
    };
    for token in tokens.list.iter().take(ENOUGH) {
        let TokenKind::Word(..) = token.kind else { continue };
        let word = tokens.text(token);
        words += 1;
        let typed = &text[token.start as usize..token.end as usize];
        if !count(word, typed) && typed.contains(['\'', '’']) {
            for part in typed.split(['\'', '’']) {
                count(&super::fold::fold(part), part);
            }
        }
    }
    worth.iter().zip(&known).map(|(&worth, &known)| (worth, known as f64 / words.max(1) as f64)).collect()
}

/// The language to read `text` in.
pub fn choose<'a>(lexicons: &'a Lexicons, text: &str, known: Option<&str>) -> &'a Lexicon {
    let all = lexicons.all();
    let scores = scores(lexicons, text);
    let before = known.and_then(|code| all.iter().position(|lexicon| lexicon.code == code));
    let best = (0..all.len()).max_by(|&a, &b| {
        let bias = |at: usize| scores[at].0 + if all[at].code == "en" { 0.01 } else { 0.0 };
        bias(a).total_cmp(&bias(b)).then(b.cmp(&a))
    });
    let plain = before.or_else(|| all.iter().position(|lexicon| lexicon.code == "en")).unwrap_or(0);
    let chosen = match (before, best) {
        // Writers mix; only a text that the known language hardly explains is in another.
        (Some(before), Some(best)) => {
            let (better, more) = (scores[best].0 - scores[before].0, scores[best].1 - scores[before].1);
            let clear = better >= 1.5 && more > 0.25 && scores[before].1 < 0.5
                || better >= 1.0 && more > 0.25 && scores[best].1 > 0.9;
            let sole = scores[before].0 == 0.0 && scores[best].0 >= 1.0 && scores[best].1 >= 0.99;
            if clear || sole { best } else { before }
        }
        (None, Some(best)) if scores[best].0 > 0.0 => in_fewest_phrases(lexicons, text, &scores, best),
        _ => plain,
    };
    &all[chosen]
}

/// Whether `lang` explains `text` about as well as any language does.
pub fn explains(lexicons: &Lexicons, text: &str, lang: &str) -> bool {
    let scores = scores(lexicons, text);
    let best = scores.iter().map(|&(worth, _)| worth).fold(0.0, f64::max);
    let own = lexicons.all().iter().zip(&scores).find(|(lexicon, _)| lexicon.code == lang);
    own.is_some_and(|(_, &(worth, _))| best - worth <= ALIKE)
}

/// Of the languages that explain `text` about as well as the best, the one that has most of it as whole phrases: "no
/// hay" is one in Spanish and two words of English, "dos kilos" an amount there and none in Portuguese.
fn in_fewest_phrases(lexicons: &Lexicons, text: &str, scores: &[(f64, f64)], best: usize) -> usize {
    let all = lexicons.all();
    let alike = (0..all.len()).filter(|&at| scores[at].0 > 0.0 && scores[best].0 - scores[at].0 <= ALIKE);
    // A word that says nothing there counts double: "2 kg de son" is bran in French and a boy in English.
    const IDLE: Cues = Cues::of(&[Cue::Other, Cue::Folk]);
    let idle = |node: &Node| {
        node.meaning == Meaning { cues: node.meaning.cues, ..Meaning::default() } && node.meaning.cues.only(&IDLE)
    };
    let phrases = |at: usize| {
        let row = Reader::new(&all[at], clip(text), NaiveDate::default()).row;
        // So does an "are" that ends the text where the verb stands before what it says.
        let verb_first = row.lexicon.habits.negation == Side::Before;
        let ends = |at: usize, node: &Node| verb_first && at > 0 && at + 1 == row.nodes.len() && node.has(Cue::Is);
        let twice = |at: usize, node: &Node| node.kind == Kind::Phrase && (idle(node) || ends(at, node));
        row.nodes.iter().enumerate().map(|(at, node)| 1 + usize::from(twice(at, node))).sum::<usize>()
    };
    alike.min_by_key(|&at| (phrases(at), at != best)).unwrap_or(best)
}

/// The first 2,000 bytes: enough to tell a language by.
fn clip(text: &str) -> &str {
    let mut end = text.len().min(2000);
    while !text.is_char_boundary(end) {
        end -= 1;
    }
    &text[..end]
}
