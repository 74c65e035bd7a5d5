//! Words typed without their vowels, as on twelve keys: "kitchn", "plstic", "rotn egs", "cow dng".
//!
//! Takes the listed words once; gives the one that a typed word is, but for vowels and doubled letters left out. A short
//! word that could be two is none.

use super::fuzzy::LONGEST;

/// Fewer letters that stay say too little.
const BONES_LEAST: usize = 3;
/// Words typed shorter than this must fit one listed word alone.
const SHORT: usize = 5;

#[derive(Debug, Default)]
pub struct Vowelless {
    /// What is left of a word, and where the word stands in `words`; sorted.
    bones: Box<[(Box<str>, u32)]>,
    words: Box<[(Box<str>, u32)]>,
}

impl Vowelless {
    pub fn new<'a>(words: impl Iterator<Item = (u32, &'a str)>) -> Vowelless {
        let mut all = vec![];
        let mut left = vec![];
        for (id, word) in words {
            if let Some(bones) = bones(word) {
                left.push((bones.into_boxed_str(), all.len() as u32));
                all.push((Box::from(word), id));
            }
        }
        left.sort_unstable();
        Vowelless { bones: left.into(), words: all.into() }
    }

    /// The listed word that was meant.
    pub fn meant(&self, typed: &str) -> Option<u32> {
        let left = bones(typed)?;
        let from = self.bones.partition_point(|(bones, _)| **bones < *left);
        let found = self.bones[from..].iter().take_while(|(bones, _)| **bones == *left);
        let mut fits: Vec<(usize, u32)> = found
            .map(|&(_, at)| &self.words[at as usize])
            .filter(|(word, _)| is_left_of(typed, word))
            .map(|(word, id)| (word.len() - typed.len(), *id))
            .collect();
        fits.sort_unstable();
        match fits.as_slice() {
            [(_, id)] => Some(*id),
            [(fewest, id), (next, _), ..] if typed.len() >= SHORT && fewest < next => Some(*id),
            _ => None,
        }
    }
}

fn is_vowel(letter: char) -> bool {
    matches!(letter, 'a' | 'e' | 'i' | 'o' | 'u')
}

/// The first letter and the consonants after it, doubled ones once.
fn bones(word: &str) -> Option<String> {
    if word.len() > LONGEST || !word.bytes().all(|letter| letter.is_ascii_lowercase()) {
        return None;
    }
    let mut bones = String::with_capacity(word.len());
    for (at, letter) in word.chars().enumerate() {
        if (at == 0 || !is_vowel(letter)) && !bones.ends_with(letter) {
            bones.push(letter);
        }
    }
    (bones.len() >= BONES_LEAST).then_some(bones)
}

/// Whether `typed` is `word` but for vowels and doubled letters left out, some at least.
fn is_left_of(typed: &str, word: &str) -> bool {
    let mut left = typed.chars().peekable();
    let mut before = None;
    for letter in word.chars() {
        if left.peek() == Some(&letter) {
            left.next();
        } else if !is_vowel(letter) && before != Some(letter) {
            return false;
        }
        before = Some(letter);
    }
    left.peek().is_none() && typed.len() < word.len()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_without_their_vowels_are_found_and_others_are_not() {
        let words = ["rotten", "eggs", "kitchen", "plastic", "dung", "bread", "board", "scraps", "fallen"];
        let listed = Vowelless::new(words.iter().enumerate().map(|(at, word)| (at as u32, *word)));
        let check = |typed: &str, expected: Option<&str>| {
            assert_eq!(listed.meant(typed).map(|at| words[at as usize]), expected, "{typed}");
        };
        check("rotn", Some("rotten"));
        check("egs", Some("eggs"));
        check("kitchn", Some("kitchen"));
        check("plstic", Some("plastic"));
        check("dng", Some("dung"));
        check("scrps", Some("scraps"));
        check("brd", None);
        check("dang", None);
        check("fln", Some("fallen"));
        check("scarps", None);
        check("gs", None);
        check("éggs", None);
    }
}
