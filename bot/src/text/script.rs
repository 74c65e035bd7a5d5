//! Script: a word written in Devanagari, read aloud in Latin letters, so that what is listed in one script is known in
//! the other.
//!
//! Takes a folded word; gives it as people spell it with Latin letters, vowels short. Never looks at meaning.

/// How one letter sounds: a consonant, which bears an `a` unless another vowel follows, or a vowel.
enum Sound {
    Consonant(&'static str),
    /// A vowel letter or the sign of one.
    Vowel(&'static str),
    Nasal,
    /// Takes the vowel from the consonant before it.
    Bare,
}

fn sound(c: char) -> Option<Sound> {
    use Sound::{Bare, Consonant, Nasal, Vowel};
    Some(match c {
        'क' => Consonant("k"),
        'ख' => Consonant("kh"),
        'ग' => Consonant("g"),
        'घ' => Consonant("gh"),
        'ङ' | 'ञ' | 'ण' | 'न' => Consonant("n"),
        'च' => Consonant("ch"),
        'छ' => Consonant("chh"),
        'ज' => Consonant("j"),
        'झ' => Consonant("jh"),
        'ट' | 'त' => Consonant("t"),
        'ठ' | 'थ' => Consonant("th"),
        'ड' | 'द' => Consonant("d"),
        'ढ' | 'ध' => Consonant("dh"),
        'प' => Consonant("p"),
        'फ' => Consonant("f"),
        'ब' => Consonant("b"),
        'भ' => Consonant("bh"),
        'म' => Consonant("m"),
        'य' => Consonant("y"),
        'र' => Consonant("r"),
        'ल' | 'ळ' => Consonant("l"),
        'व' => Consonant("v"),
        'श' | 'ष' => Consonant("sh"),
        'स' => Consonant("s"),
        'ह' | 'ः' => Consonant("h"),
        'अ' | 'आ' | 'ा' => Vowel("a"),
        'इ' | 'ई' | 'ि' | 'ी' => Vowel("i"),
        'उ' | 'ऊ' | 'ु' | 'ू' => Vowel("u"),
        'ए' | 'े' | 'ऍ' | 'ॅ' => Vowel("e"),
        'ऐ' | 'ै' => Vowel("ai"),
        'ओ' | 'ो' | 'ऑ' | 'ॉ' => Vowel("o"),
        'औ' | 'ौ' => Vowel("au"),
        'ऋ' | 'ृ' => Vowel("ri"),
        'ं' | 'ँ' => Nasal,
        '्' => Bare,
        _ => return None,
    })
}

/// Whether the word has a letter of the script.
pub fn devanagari(word: &str) -> bool {
    word.chars().any(|c| ('\u{900}'..='\u{97f}').contains(&c))
}

/// A consonant and the vowel after it; `None` where nobody has said which, and it may be silent.
struct Syllable {
    consonant: &'static str,
    vowel: Option<&'static str>,
}

/// `word` in Latin letters; `None` where a letter of it is of no script that is read here.
pub fn latin(word: &str) -> Option<String> {
    let mut said: Vec<Syllable> = Vec::with_capacity(word.len() / 3);
    for c in word.chars() {
        match sound(c)? {
            Sound::Consonant(consonant) => said.push(Syllable { consonant, vowel: None }),
            Sound::Vowel(vowel) => match said.last_mut() {
                Some(last) if last.vowel.is_none() && !matches!(c, '\u{904}'..='\u{914}') => last.vowel = Some(vowel),
                _ => said.push(Syllable { consonant: "", vowel: Some(vowel) }),
            },
            Sound::Nasal => {
                if let Some(last) = said.last_mut().filter(|last| last.vowel.is_none()) {
                    last.vowel = Some("a");
                }
                said.push(Syllable { consonant: "n", vowel: Some("") });
            }
            Sound::Bare => said.last_mut()?.vowel = Some(""),
        }
    }
    // The `a` that nobody writes is silent at the end, and between a spoken vowel and a syllable with a vowel of its own.
    let spoken = |syllable: &Syllable| syllable.vowel.is_some_and(|vowel| !vowel.is_empty());
    for at in (0..said.len()).rev().filter(|&at| at > 0) {
        let last = at + 1 == said.len();
        let open = |syllable: &Syllable| spoken(syllable) || syllable.vowel.is_none();
        if said[at].vowel.is_none() {
            let silent = last || open(&said[at - 1]) && said.get(at + 1).is_some_and(spoken);
            said[at].vowel = Some(if silent { "" } else { "a" });
        }
    }
    let mut out = String::with_capacity(word.len());
    for syllable in &said {
        out.push_str(syllable.consonant);
        out.push_str(syllable.vowel.unwrap_or("a"));
    }
    Some(out)
}

#[cfg(test)]
mod tests {
    use super::super::fold;
    use super::*;

    #[test]
    fn a_word_is_spelled_as_people_do() {
        for (word, spelled) in [
            ("गोबर", "gobar"),
            ("कचरा", "kachra"),
            ("टमाटर", "tamatar"),
            ("कटहल", "kathal"),
            ("बदबू", "badbu"),
            ("पपड़ी", "papdi"),
            ("नमक", "namak"),
            ("बाल्टी", "balti"),
            ("मूंगफली", "mungafli"),
            ("आलू", "alu"),
            ("गैस", "gais"),
            ("में", "men"),
            ("खिचड़ी", "khichdi"),
        ] {
            assert_eq!(latin(&fold(word)).as_deref(), Some(spelled), "{word}");
        }
        assert_eq!(latin("rice"), None);
    }
}
