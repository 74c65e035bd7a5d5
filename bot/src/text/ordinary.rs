//! Ordinary words: what a language's writers use often, whatever it means.
//!
//! Takes a folder's `ordinary.txt`, words parted by white space, `#` before a remark; tells whether a word is one. A word
//! that is somebody's plain word is not a slip for another: "centro" (middle) is not "dentro" (in).

use super::fold::fold;
use super::fuzzy::hash;

/// Hashes of the words, sorted: a wrong answer in a hundred thousand costs one misspelling.
#[derive(Debug, Clone, Default)]
pub struct Ordinary(Box<[u32]>);

impl Ordinary {
    pub fn parse(text: &str) -> Ordinary {
        let lines = text.lines().filter(|line| !line.starts_with('#'));
        let mut hashes: Vec<u32> = lines.flat_map(str::split_whitespace).map(|word| of(&fold(word))).collect();
        hashes.sort_unstable();
        hashes.dedup();
        Ordinary(hashes.into())
    }

    pub fn has(&self, folded: &str) -> bool {
        self.0.binary_search(&of(folded)).is_ok()
    }
}

fn of(folded: &str) -> u32 {
    hash(&folded.chars().collect::<Vec<char>>())
}

/// Whether two words are forms of one, alike but for their ends: "melhores" and "melhorar", not "partir" and "parado".
pub fn alike(a: &str, b: &str) -> bool {
    let same = a.chars().zip(b.chars()).take_while(|(a, b)| a == b).count();
    let (a, b) = (a.chars().count(), b.chars().count());
    same >= a.min(b).saturating_sub(ENDING).max(3) && a.abs_diff(b) <= ENDING
}

/// Letters that a form may end in otherwise.
const ENDING: usize = 1;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_ordinary_word_is_known_by_its_folded_form() {
        let ordinary = Ordinary::parse("# a remark\ncentro vidéo\nplan");
        assert!(ordinary.has("centro") && ordinary.has("video") && ordinary.has("plan"));
        assert!(!ordinary.has("dentro") && !ordinary.has("remark"));
    }

    #[test]
    fn forms_of_one_word_are_alike() {
        assert!(alike("tienes", "tiene") && alike("visto", "vista") && alike("baldes", "balde"));
        assert!(!alike("valor", "vapor") && !alike("centro", "dentro") && !alike("morte", "monte"));
    }
}
