//! Names as they are compared: small letters without marks, and how far two of them are apart.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// The words of `text` in small letters, Latin marks taken off.
pub fn fold(text: &str) -> Vec<String> {
    let mut words = vec![String::new()];
    for letter in text.nfkd().flat_map(char::to_lowercase) {
        let word = words.last_mut().expect("there is always a word begun");
        match letter {
            'ł' => word.push('l'),
            'ı' => word.push('i'),
            'ø' => word.push('o'),
            'đ' | 'ð' => word.push('d'),
            'ħ' => word.push('h'),
            'ə' => word.push('e'),
            'þ' => word.push_str("th"),
            'ß' => word.push_str("ss"),
            'æ' => word.push_str("ae"),
            'œ' => word.push_str("oe"),
            // Marks of Indic scripts are vowels, and part of the name.
            letter if is_combining_mark(letter) && !is_indic(letter) => {}
            '\'' | '’' | '‘' | 'ʻ' | 'ʼ' | '`' | '\u{200c}' | '\u{200d}' => {}
            letter if letter.is_alphanumeric() || is_indic(letter) => word.push(letter),
            _ if word.is_empty() => {}
            _ => words.push(String::new()),
        }
    }
    words.retain(|word| !word.is_empty());
    words
}

/// Words around a place's name that are no part of it, in the languages of the bot.
pub fn is_noise(word: &str) -> bool {
    const NOISE: &[&str] = &[
        // English
        "i",
        "we",
        "my",
        "our",
        "live",
        "am",
        "are",
        "is",
        "in",
        "at",
        "from",
        "of",
        "the",
        "near",
        "close",
        "to",
        "next",
        "around",
        "outside",
        "place",
        "city",
        "town",
        "village",
        "district",
        "county",
        "region",
        "province",
        "area",
        "state",
        "side",
        // Spanish and Portuguese
        "cerca",
        "de",
        "del",
        "en",
        "la",
        "el",
        "los",
        "las",
        "vivo",
        "vivimos",
        "ciudad",
        "pueblo",
        "municipio",
        "provincia",
        "departamento",
        "aldea",
        "comunidad",
        "perto",
        "em",
        "no",
        "na",
        "da",
        "do",
        "moro",
        "cidade",
        "vila",
        "bairro",
        "distrito",
        "municipio",
        // French
        "pres",
        "du",
        "a",
        "au",
        "les",
        "le",
        "j",
        "habite",
        "ville",
        "quartier",
        "commune",
        "dans",
        "cote",
        "vers",
        // Swahili
        "karibu",
        "mji",
        "wa",
        "kijiji",
        "cha",
        "kaunti",
        "ya",
        "wilaya",
        "mkoa",
        "naishi",
        "niko",
        "tuko",
        "katika",
        // Hindi and Nepali in Latin letters, and in their own
        "ke",
        "ka",
        "ki",
        "paas",
        "pass",
        "gaon",
        "gaun",
        "jila",
        "zila",
        "jilla",
        "se",
        "me",
        "mein",
        "ma",
        "hum",
        "main",
        "nagar",
        "के",
        "का",
        "की",
        "पास",
        "गांव",
        "जिला",
        "से",
        "में",
        "हम",
        "मैं",
        "को",
        "मा",
        // Indonesian and Vietnamese
        "dekat",
        "di",
        "kota",
        "desa",
        "kabupaten",
        "gan",
        "o",
        "tinh",
        "huyen",
        "xa",
        "thanh",
        "pho",
    ];
    NOISE.contains(&word)
}

/// Changes of one letter (put in, left out, changed, swapped with its neighbour) from `a` to `b`, if at most `most`
/// and the first letter is the same.
pub fn slips(a: &str, b: &str, most: usize) -> Option<usize> {
    if most == 0 || a.len().abs_diff(b.len()) > most || a.as_bytes().first() != b.as_bytes().first() {
        return None;
    }
    Some(strsim::osa_distance(a, b)).filter(|&away| away <= most)
}

/// Devanagari and Bengali, whose code points run in parallel.
fn is_indic(letter: char) -> bool {
    ('\u{0900}'..='\u{09ff}').contains(&letter)
}

/// A name's bones, the same whether written in Devanagari, Bengali or Latin: consonants and vowels but for `a`, which
/// the first two leave unwritten or write where it is not spoken.
pub fn skeleton(name: &str) -> String {
    let mut latin = String::new();
    for letter in name.chars() {
        if is_indic(letter) {
            latin.push_str(indic(letter));
        } else {
            latin.push(letter);
        }
    }
    let latin = latin
        .replace("ee", "i")
        .replace("oo", "u")
        .replace("ph", "f")
        .replace("sh", "s")
        .replace("ch", "c")
        .replace('w', "v")
        .replace('y', "i")
        .replace('z', "j")
        .replace(['a', ' ', 'h'], "");
    let mut bones = String::new();
    for letter in latin.chars() {
        if !bones.ends_with(letter) {
            bones.push(letter);
        }
    }
    bones
}

/// A letter of Devanagari or Bengali in Latin letters; the unwritten `a` is left out.
fn indic(letter: char) -> &'static str {
    match (letter as u32 - 0x0900) % 0x80 {
        0x01 | 0x02 => "n",
        0x07 | 0x08 | 0x3f | 0x40 => "i",
        0x09 | 0x0a | 0x41 | 0x42 => "u",
        0x0b | 0x43 => "ri",
        0x0e | 0x0f | 0x46 | 0x47 => "e",
        0x10 | 0x48 => "ai",
        0x12 | 0x13 | 0x4a | 0x4b => "o",
        0x14 | 0x4c => "au",
        0x15 | 0x16 => "k",
        0x17 | 0x18 => "g",
        0x1a | 0x1b => "c",
        0x1c | 0x1d => "j",
        0x19 | 0x1e | 0x23 | 0x28 | 0x29 => "n",
        0x1f | 0x20 | 0x24 | 0x25 => "t",
        0x21 | 0x22 | 0x26 | 0x27 => "d",
        0x2a => "p",
        0x2b => "f",
        0x2c | 0x2d => "b",
        0x2e => "m",
        0x2f => "i",
        0x30 | 0x31 => "r",
        0x32..=0x34 => "l",
        0x35 => "v",
        0x36..=0x38 => "s",
        0x5c | 0x5d => "r",
        0x5f => "i",
        _ => "",
    }
}
