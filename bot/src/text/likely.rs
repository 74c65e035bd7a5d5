//! Likely: what a word that is in no list may have been meant as, for the question that offers it.
//!
//! Takes quoted words and the language of the talk; gives at most two foods or signs, the likelier first, or water.
//! Decides nothing: they are asked. Looks at every listed word, so only where a question is asked.

use super::fuzzy::{LONGEST, distance};
use super::lexicon::{Lexicon, Lexicons};
use super::nodes::{Kind, Node};
use super::notions::Cue;
use super::reader::Reader;
use super::tokens::TokenKind;
use bellyful_core::fact::Sign;
use bellyful_core::feeds::Feed;
use chrono::NaiveDate;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Likely {
    Food(Feed),
    Sign(Sign),
    /// An amount of nothing named: water, before anything else.
    Water,
    /// "that thing": what they feed on other days.
    Usual,
}

/// No more are offered: a question has two answers.
const MOST: usize = 2;
/// Letters that may be wrong, as a share of the longer word; beyond it two words only look alike by chance.
/// Source: our choice.
const WRONG: f64 = 0.4;
/// What a wrong first letter adds to that. Source: our choice.
const OTHER_START: f64 = 0.1;
/// Of fewer letters nothing is guessed.
const SHORTEST: usize = 3;
/// Unlisted words of one text that are looked at.
const WORDS: usize = 4;

/// What the unlisted words of `said` may mean, in the language `lang`.
pub fn likely(lexicons: &Lexicons, said: &str, lang: &str) -> Vec<Likely> {
    let Some(lexicon) = lexicons.get(lang) else { return vec![] };
    let row = Reader::new(lexicon, said, NaiveDate::default()).row;
    if !row.nodes.is_empty() && row.nodes.iter().all(|node| node.quantity().is_some()) {
        return vec![Likely::Water];
    }
    if row.nodes.iter().any(|node| node.kind == Kind::Phrase && node.has(Cue::Thing)) {
        return vec![Likely::Usual];
    }
    let strange = |node: &&Node| node.kind == Kind::Unknown;
    let words = row.nodes.iter().filter(strange).take(WORDS).filter_map(|node| {
        let token = &row.tokens.list[node.from as usize];
        matches!(token.kind, TokenKind::Word(..)).then(|| row.tokens.text(token))
    });
    let mut found: Vec<(f64, &str, Likely)> = words.flat_map(|word| near(lexicon, word)).collect();
    found.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(b.1)));
    let mut offered: Vec<Likely> = Vec::new();
    for (.., likely) in found {
        if !offered.contains(&likely) {
            offered.push(likely);
        }
    }
    offered.truncate(MOST);
    offered
}

/// `said` with the word that was asked about replaced by the food it is: "2 kg of zork", "rice" make "2 kg of rice".
pub fn put_right(lexicons: &Lexicons, said: &str, lang: &str, food: &str) -> Option<String> {
    let row = Reader::new(lexicons.get(lang)?, said, NaiveDate::default()).row;
    let asked = |node: &&Node| node.kind == Kind::Unknown || node.kind == Kind::Phrase && node.has(Cue::Thing);
    let node = row.nodes.iter().find(asked)?;
    let (first, last) = (row.tokens.list.get(node.from as usize)?, row.tokens.list.get(node.to as usize - 1)?);
    Some(format!("{}{food}{}", &said[..first.start as usize], &said[last.end as usize..]))
}

/// Listed words near `typed` that name a food or a sign, with the share of letters that are wrong. A danger is never
/// offered: whoever smells gas is not asked which word it was.
fn near<'a>(lexicon: &'a Lexicon, typed: &str) -> Vec<(f64, &'a str, Likely)> {
    let bare = without_vowels(typed);
    let letters = once_each(typed);
    if letters.is_empty() || letters.len() > LONGEST || typed.chars().count() < SHORTEST {
        return vec![];
    }
    let mut found = Vec::new();
    for (word, meaning) in lexicon.single_words() {
        let sign = meaning.sign.filter(|sign| !sign.is_danger()).map(Likely::Sign);
        let Some(likely) = meaning.feed.map(Likely::Food).or(sign) else { continue };
        let listed = once_each(word);
        if listed.is_empty() || listed.len() > LONGEST || word.chars().count() < SHORTEST {
            continue;
        }
        // "bnn" for "banana": whoever is in a hurry leaves the vowels out.
        let hurried = bare.len() >= 2 && bare == without_vowels(word);
        let wrong = distance(&letters, &listed) as f64 / letters.len().max(listed.len()) as f64;
        let wrong = if hurried { wrong / 2.0 } else { wrong };
        let wrong = if listed[0] == letters[0] { wrong } else { wrong + OTHER_START };
        if wrong <= WRONG {
            found.push((wrong, word, likely));
        }
    }
    found
}

/// Doubled and stretched letters once.
fn once_each(word: &str) -> Vec<char> {
    let mut letters: Vec<char> = word.chars().take(LONGEST + 1).collect();
    letters.dedup();
    letters
}

fn without_vowels(word: &str) -> Vec<char> {
    let rest = word.chars().skip(1).filter(|c| !matches!(c, 'a' | 'e' | 'i' | 'o' | 'u' | 'y'));
    word.chars().take(1).chain(rest).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_two_likeliest_meanings_of_a_strange_word_are_offered() {
        let lexicons = Lexicons::built_in();
        let check = |lang: &str, said: &str, expected: &[Likely]| {
            assert_eq!(likely(&lexicons, said, lang), expected, "{lang}: {said}");
        };
        let food = Likely::Food;
        check("en", "2 kg of bnn", &[food(Feed::Banana), food(Feed::Bread)]);
        check("es", "2 kg de plantox", &[food(Feed::Plantain), food(Feed::Banana)]);
        check("en", "qqqqqq", &[]);
        check("en", "2 kg rice", &[]);
        check("en", "2 kg of kasavvva", &[food(Feed::Cassava)]);
        check("en", "6 bowls", &[Likely::Water]);
        check("en", "1 kg of that thing", &[Likely::Usual]);
    }

    #[test]
    fn the_strange_word_is_replaced_by_what_it_is() {
        let right = put_right(&Lexicons::built_in(), "2 kg of zorkel", "en", "rice");
        assert_eq!(right.as_deref(), Some("2 kg of rice"));
    }
}
