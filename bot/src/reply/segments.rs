//! What a text costs to send: its encoding, units and segments, and how to keep it in the cheap alphabet.
//!
//! Source: 3GPP TS 23.038 (GSM 7-bit default alphabet and extension table) and TS 23.040 (concatenation).

use serde::Serialize;
use unicode_normalization::UnicodeNormalization;

const BASIC: &str = "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà";
/// Each costs an escape before it.
const EXTENSION: &str = "\u{c}^{}\\[~]|€";

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Encoding {
    Gsm7,
    Ucs2,
}

impl Encoding {
    pub const fn id(self) -> &'static str {
        match self {
            Encoding::Gsm7 => "gsm7",
            Encoding::Ucs2 => "ucs2",
        }
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
pub struct Size {
    pub encoding: Encoding,
    /// Septets, or UTF-16 code units.
    pub units: usize,
    pub segments: usize,
}

fn septets(c: char) -> Option<usize> {
    if BASIC.contains(c) {
        Some(1)
    } else if EXTENSION.contains(c) {
        Some(2)
    } else {
        None
    }
}

/// Reads the GSM 7-bit default alphabet, one character an octet; a letter of no table is none of its.
pub fn from_gsm7(octets: &[u8]) -> Option<String> {
    // What follows an escape. Source: 3GPP TS 23.038, section 6.2.1.1.
    const ESCAPED: [(u8, char); 10] = [
        (0x0a, '\u{c}'),
        (0x14, '^'),
        (0x28, '{'),
        (0x29, '}'),
        (0x2f, '\\'),
        (0x3c, '['),
        (0x3d, '~'),
        (0x3e, ']'),
        (0x40, '|'),
        (0x65, '€'),
    ];
    let mut text = String::with_capacity(octets.len());
    let mut octets = octets.iter().copied();
    while let Some(octet) = octets.next() {
        match octet {
            // An escape to a table that is not there shows as a space.
            0x1b => match octets.next() {
                Some(next) => text.push(ESCAPED.iter().find(|(code, _)| *code == next).map_or(' ', |(_, c)| *c)),
                None => text.push(' '),
            },
            // The escape has a place in the table, but no letter.
            _ => text.push(BASIC.chars().nth(usize::from(octet) - usize::from(octet > 0x1b))?),
        }
    }
    Some(text)
}

/// Encoding, units and segments of a text as it would be sent.
pub fn size(text: &str) -> Size {
    let gsm: Option<Vec<usize>> = text.chars().map(septets).collect();
    match gsm {
        Some(widths) => measured(Encoding::Gsm7, &widths, 160, 153),
        None => measured(Encoding::Ucs2, &text.chars().map(char::len_utf16).collect::<Vec<_>>(), 70, 67),
    }
}

/// An escape or surrogate pair is never cut: one that does not fit goes on to the next part.
fn measured(encoding: Encoding, widths: &[usize], alone: usize, part: usize) -> Size {
    let units = widths.iter().sum();
    if units <= alone {
        return Size { encoding, units, segments: 1 };
    }
    let mut segments = 1;
    let mut room = part;
    for &width in widths {
        if width > room {
            segments += 1;
            room = part;
        }
        room -= width;
    }
    Size { encoding, units, segments }
}

/// The text with look-alikes from the GSM alphabet in place of letters outside it, where there are any.
///
/// Source of the pairs: how people text these languages; common practice, no source.
pub fn plain(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.nfc() {
        match c {
            'á' | 'â' | 'ã' | 'ª' => out.push('a'),
            'Á' | 'À' | 'Â' | 'Ã' => out.push('A'),
            'í' | 'î' | 'ï' => out.push('i'),
            'Í' | 'Ì' | 'Î' | 'Ï' => out.push('I'),
            'ó' | 'ô' | 'õ' | 'º' => out.push('o'),
            'Ó' | 'Ò' | 'Ô' | 'Õ' => out.push('O'),
            'ú' | 'û' => out.push('u'),
            'Ú' | 'Ù' | 'Û' => out.push('U'),
            'ê' | 'ë' => out.push('e'),
            'È' | 'Ê' | 'Ë' => out.push('E'),
            'ç' => out.push('c'),
            'ÿ' => out.push('y'),
            'œ' => out.push_str("oe"),
            'Œ' => out.push_str("OE"),
            '’' | '‘' | '´' | '`' => out.push('\''),
            '“' | '”' | '«' | '»' => out.push('"'),
            '–' | '—' | '−' => out.push('-'),
            '…' => out.push_str("..."),
            '•' => out.push('*'),
            '\u{a0}' | '\u{202f}' | '\t' => out.push(' '),
            '°' | '\u{2068}' | '\u{2069}' => {}
            other => out.push(other),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 588 strings, each agreed by at least two general libraries named in the file.
    #[test]
    fn sizes_agree_with_independent_counters() {
        let file: serde_json::Value =
            serde_json::from_str(include_str!("../../../tests/reference/segments.json")).expect("reads");
        let rows = file["vectors"].as_array().expect("rows");
        assert!(rows.len() > 500);
        for row in rows {
            let text = row["text"].as_str().expect("text");
            let got = size(text);
            let encoding = if got.encoding == Encoding::Gsm7 { "GSM-7" } else { "UCS-2" };
            assert_eq!(
                (encoding, got.units as u64, got.segments as u64),
                (
                    row["encoding"].as_str().expect("encoding"),
                    row["units"].as_u64().expect("units"),
                    row["segments"].as_u64().expect("segments")
                ),
                "{text:?}"
            );
        }
    }

    #[test]
    fn letters_outside_the_alphabet_are_texted_plain() {
        let check = |from: &str, to: &str| {
            assert_eq!(plain(from), to);
            assert_eq!(size(&plain(from)).encoding, Encoding::Gsm7);
        };
        check("¿Cuánto más? Años", "¿Cuanto mas? Años");
        check("Não ponha pão; é já", "Nao ponha pao; é ja");
        check("e\u{301}te\u{301} çà", "été cà");
        check("l’odeur – “œuf”…", "l'odeur - \"oeuf\"...");
    }
}
