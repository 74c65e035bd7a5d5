//! Folding: one spelling for the many ways a word is typed.
//!
//! Takes a word as typed; gives it in lower case, without accents, invisible marks or nukta, so that text and word
//! lists meet. Works a character at a time and never looks at meaning.

use unicode_normalization::char::{decompose_canonical, is_combining_mark};

/// First of each run of ten decimal digits (Unicode category Nd).
/// Source: Unicode Character Database 16, DerivedNumericType.txt, the scripts in use on phones.
const ZEROS: [u32; 37] = [
    0x30, 0x660, 0x6F0, 0x7C0, 0x966, 0x9E6, 0xA66, 0xAE6, 0xB66, 0xBE6, 0xC66, 0xCE6, 0xD66, 0xDE6, 0xE50, 0xED0,
    0xF20, 0x1040, 0x1090, 0x17E0, 0x1810, 0x1946, 0x19D0, 0x1A80, 0x1A90, 0x1B50, 0x1BB0, 0x1C40, 0x1C50, 0xA620,
    0xA8D0, 0xA900, 0xA9D0, 0xA9F0, 0xAA50, 0xABF0, 0xFF10,
];

/// Whether a text is written in Latin letters, a borrowed word in another script apart.
pub fn mostly_latin(text: &str) -> bool {
    let letters = text.chars().filter(|c| c.is_alphabetic());
    let (latin, other): (Vec<char>, Vec<char>) = letters.partition(|&c| c < '\u{250}');
    latin.len() > other.len()
}

/// The value of a decimal digit of any script.
pub fn digit(c: char) -> Option<u8> {
    if c.is_ascii() {
        return c.is_ascii_digit().then(|| c as u8 - b'0');
    }
    let code = c as u32;
    let after = ZEROS.partition_point(|&zero| zero <= code);
    let zero = ZEROS[..after].last()?;
    (code - zero < 10).then(|| (code - zero) as u8)
}

/// Marks that are seen by nobody: joiners, direction marks, variation selectors, soft hyphen.
pub fn invisible(c: char) -> bool {
    matches!(c, '\u{ad}' | '\u{61c}' | '\u{180e}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}'
        | '\u{2060}'..='\u{2069}' | '\u{fe00}'..='\u{fe0f}' | '\u{feff}' | '\u{1f3fb}'..='\u{1f3ff}')
}

/// Whether `c` may stand inside a word.
pub fn in_word(c: char) -> bool {
    if c.is_ascii() {
        c.is_ascii_alphabetic()
    } else {
        (c.is_alphabetic() && digit(c).is_none()) || is_combining_mark(c) || matches!(c, '²' | '³')
    }
}

/// Adds `c` to a folded word.
pub fn push(word: &mut String, c: char) {
    if c.is_ascii() {
        word.push(c.to_ascii_lowercase());
        return;
    }
    match c {
        _ if invisible(c) => {}
        'œ' | 'Œ' => word.push_str("oe"),
        'æ' | 'Æ' => word.push_str("ae"),
        'ß' => word.push_str("ss"),
        '²' => word.push('2'),
        '³' => word.push('3'),
        '\u{900}'..='\u{97f}' => push_devanagari(word, c),
        _ => decompose_canonical(c, |part| {
            if !is_combining_mark(part) {
                part.to_lowercase().for_each(|low| word.push(low));
            }
        }),
    }
}

/// Devanagari as people type it: nukta left out, every nasal sign as anusvara, the newer spelling of -यी and -ये.
fn push_devanagari(word: &mut String, c: char) {
    decompose_canonical(c, |part| match part {
        '\u{93c}' => {}
        '\u{901}' => word.push('\u{902}'),
        'ी' if word.ends_with('य') => replace_last(word, 'ई'),
        'े' if word.ends_with('य') => replace_last(word, 'ए'),
        'क'..='ह' => {
            let mut back = word.chars().rev();
            let cut = back.next() == Some('\u{94d}') && matches!(back.next(), Some('ङ' | 'ञ' | 'ण' | 'न' | 'म'));
            if cut && !matches!(part, 'न' | 'म' | 'य' | 'र' | 'व' | 'ह' | 'ण') {
                word.pop();
                replace_last(word, '\u{902}');
            }
            word.push(part);
        }
        _ => word.push(part),
    });
}

fn replace_last(word: &mut String, with: char) {
    word.pop();
    word.push(with);
}

/// A whole word or phrase folded.
pub fn fold(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    text.chars().for_each(|c| push(&mut folded, c));
    folded
}

/// `word` with every run of one letter cut to `most`; `None` when nothing was cut.
pub fn unstretched(word: &str, most: usize) -> Option<String> {
    let mut out = String::with_capacity(word.len());
    let (mut last, mut run) = ('\0', 0);
    for c in word.chars() {
        run = if c == last { run + 1 } else { 1 };
        last = c;
        if run <= most {
            out.push(c);
        }
    }
    (out.len() < word.len()).then_some(out)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_many_spellings_of_a_word_meet() {
        for (typed, folded) in [
            ("Estiércol", "estiercol"),
            ("e\u{301}chelle", "echelle"),
            ("PEÑA", "pena"),
            ("cœur", "coeur"),
            ("m³", "m3"),
            ("पन्द्रह", "पंद्रह"),
            ("पाँच", "पांच"),
            ("बड़ा", "बडा"),
            ("गयी", "गई"),
            ("ga\u{200b}s", "gas"),
        ] {
            assert_eq!(fold(typed), fold(folded), "{typed}");
        }
    }

    #[test]
    fn digits_of_every_script_count() {
        for (c, value) in [('7', 7), ('७', 7), ('٣', 3), ('၉', 9), ('０', 0), ('৫', 5)] {
            assert_eq!(digit(c), Some(value));
        }
        assert_eq!(digit('क'), None);
        assert_eq!(digit('½'), None);
    }
}
