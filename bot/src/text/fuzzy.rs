//! Misspellings: the listed word nearest to a typed one, by a deletion index.
//!
//! Takes the words once; answers in time that does not grow with their number. Every word is stored under itself and
//! under itself with one or two letters left out; a typed word meets its neighbours under the same forms.
//! Source: symmetric deletion, Bocek, Hunt and Stiller, "Fast similarity search in large dictionaries", 2007.

use std::hash::{BuildHasher, BuildHasherDefault, DefaultHasher};

/// Only the first letters are indexed; the full words are compared afterwards.
const PREFIX: usize = 9;
/// Longer words are compared with none.
pub const LONGEST: usize = 24;

#[derive(Debug, Default)]
pub struct Fuzzy {
    /// (hash of a form, word), sorted.
    forms: Box<[(u32, u32)]>,
    words: Box<[(u32, Box<str>)]>,
}

/// Letters that may be wrong in a word of this length.
pub fn allowance(letters: usize) -> usize {
    match letters {
        0..=3 => 0,
        4..=7 => 1,
        _ => 2,
    }
}

impl Fuzzy {
    pub fn new<'a>(words: impl Iterator<Item = (u32, &'a str)>) -> Fuzzy {
        let fits = |word: &str| (4..=LONGEST).contains(&word.chars().count());
        let words: Box<[(u32, Box<str>)]> =
            words.filter(|(_, word)| fits(word)).map(|(id, word)| (id, word.into())).collect();
        let mut forms = Vec::new();
        for (at, (_, word)) in words.iter().enumerate() {
            let word: Vec<char> = word.chars().collect();
            each_form(&word, allowance(word.len()), |form| forms.push((hash(form), at as u32)));
        }
        forms.sort_unstable();
        forms.dedup();
        Fuzzy { forms: forms.into(), words }
    }

    /// The nearest listed word within what its length allows, if one is nearer than all others of other meaning.
    pub fn nearest(&self, typed: &str) -> Option<(u32, String)> {
        let typed: Vec<char> = typed.chars().take(LONGEST + 1).collect();
        if typed.len() < 4 || typed.len() > LONGEST {
            return None;
        }
        let most = allowance(typed.len());
        let mut best: Option<(usize, bool, u32, u32)> = None;
        let mut listed = Vec::with_capacity(LONGEST);
        each_form(&typed, most, |form| {
            let hashed = hash(form);
            let from = self.forms.partition_point(|&(h, _)| h < hashed);
            for &(_, at) in self.forms[from..].iter().take_while(|&&(h, _)| h == hashed).take(64) {
                let (id, word) = &self.words[at as usize];
                listed.clear();
                listed.extend(word.chars());
                let word = &listed;
                let most = most.min(allowance(word.len()));
                if typed.len().abs_diff(word.len()) > most {
                    continue;
                }
                let apart = distance(&typed, word);
                let other_start = word[0] != typed[0];
                // Four letters say little: the first and the length must hold, or letters merely changed places.
                if apart > most || (other_start && (typed.len() < 6 || apart > 1)) {
                    continue;
                }
                if best.is_none_or(|(a, o, w, _)| (apart, other_start, *id) < (a, o, w)) {
                    best = Some((apart, other_start, *id, at));
                }
            }
        });
        best.map(|(_, _, id, at)| (id, self.words[at as usize].1.to_string()))
    }
}

/// What a form is kept by.
pub fn hash(form: &[char]) -> u32 {
    BuildHasherDefault::<DefaultHasher>::default().hash_one(form) as u32
}

/// The word's first letters, and the same with up to `most` left out.
fn each_form(word: &[char], most: usize, mut visit: impl FnMut(&[char])) {
    let head = &word[..word.len().min(PREFIX)];
    visit(head);
    let mut short = Vec::with_capacity(PREFIX);
    for skip in 0..head.len() {
        if most >= 1 {
            short.clear();
            short.extend(head.iter().enumerate().filter(|&(at, _)| at != skip).map(|(_, &c)| c));
            visit(&short);
        }
        for other in skip + 1..head.len() {
            if most >= 2 {
                short.clear();
                short.extend(head.iter().enumerate().filter(|&(at, _)| at != skip && at != other).map(|(_, &c)| c));
                visit(&short);
            }
        }
    }
}

/// Optimal string alignment distance: insertions, deletions, changes, swaps of neighbours. Of words of at most [`LONGEST`] letters.
pub fn distance(a: &[char], b: &[char]) -> usize {
    let mut before = [0_usize; LONGEST + 2];
    let mut last: [usize; LONGEST + 2] = std::array::from_fn(|j| j);
    for i in 1..=a.len() {
        let mut row = [0_usize; LONGEST + 2];
        row[0] = i;
        for j in 1..=b.len() {
            let change = usize::from(a[i - 1] != b[j - 1]);
            row[j] = (last[j] + 1).min(row[j - 1] + 1).min(last[j - 1] + change);
            if i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] {
                row[j] = row[j].min(before[j - 2] + 1);
            }
        }
        before = last;
        last = row;
    }
    last[b.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn near_words_are_found_and_far_ones_are_not() {
        let words = ["banana", "bucket", "rice", "smell", "temperature", "yesterday"];
        let fuzzy = Fuzzy::new(words.iter().enumerate().map(|(at, word)| (at as u32, *word)));
        let check = |typed: &str, expected: Option<&str>| {
            assert_eq!(fuzzy.nearest(typed).as_ref().map(|(_, word)| word.as_str()), expected, "{typed}");
        };
        check("bananna", Some("banana"));
        check("buckt", Some("bucket"));
        check("temprture", Some("temperature"));
        check("yestreday", Some("yesterday"));
        check("smel", Some("smell"));
        check("ice", None);
        check("nice", None);
        check("socket", None);
        check("banister", None);
    }
}
