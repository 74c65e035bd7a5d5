//! Pieces of a reply to one text: the weightiest kept whole, the lightest shortened or left out until it fits.

use super::segments::{Encoding, plain, size};

/// One thought of a reply: its wordings from the fullest to the shortest, and how readily it goes.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    wordings: Vec<String>,
    rank: Rank,
}

/// What may be left out, weightiest first: the last is shortened or dropped first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rank {
    /// Never left out.
    Must,
    Question,
    Heard,
    Why,
    Extra,
}

impl Piece {
    pub fn new(rank: Rank, wording: String) -> Piece {
        Piece { wordings: vec![wording], rank }
    }

    pub fn never_dropped(self) -> Piece {
        Piece { rank: Rank::Must, ..self }
    }

    /// The thought in full.
    pub fn fullest(&self) -> &str {
        self.wordings.first().map_or("", String::as_str)
    }

    /// With shorter wordings, each shorter than the one before.
    pub fn or(rank: Rank, wordings: Vec<String>) -> Piece {
        Piece { wordings, rank }
    }
}

/// Segments a text may take: one; an alphabet of two-byte letters needs two for the same words.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Room {
    pub gsm7: usize,
    pub ucs2: usize,
}

impl Room {
    pub const USUAL: Room = Room { gsm7: 1, ucs2: 2 };
    /// The first reply says who we are and how to stop.
    pub const FIRST: Room = Room { gsm7: 2, ucs2: 4 };
    pub const STAFF: Room = Room { gsm7: 2, ucs2: 4 };

    pub fn fits(self, text: &str) -> bool {
        let size = size(text);
        size.segments <= if size.encoding == Encoding::Gsm7 { self.gsm7 } else { self.ucs2 }
    }
}

/// The text, in the order of the pieces. `latin`: the language can be written in the cheap alphabet.
///
/// The lightest is shortened and left out until the rest fits; what was left out for a heavier one that had to go too
/// comes back, if there is room.
pub fn compose(pieces: Vec<Piece>, room: Room, latin: bool) -> String {
    let mut pieces: Vec<Piece> = pieces.into_iter().filter(|p| p.wordings.iter().any(|w| !w.is_empty())).collect();
    let mut out = vec![false; pieces.len()];
    let mut left_out = vec![];
    let text = |pieces: &[Piece], out: &[bool]| {
        joined(pieces.iter().zip(out).filter(|(_, out)| !**out).map(|(piece, _)| piece.fullest()), latin)
    };
    while !room.fits(&text(&pieces, &out)) {
        let lightest = pieces
            .iter()
            .enumerate()
            .filter(|(at, p)| !out[*at] && (p.rank != Rank::Must || p.wordings.len() > 1))
            .max_by_key(|(at, p)| (p.rank, *at))
            .map(|(at, _)| at);
        match lightest {
            Some(at) if pieces[at].wordings.len() > 1 => {
                pieces[at].wordings.remove(0);
            }
            Some(at) => {
                out[at] = true;
                left_out.push(at);
            }
            None => break,
        }
    }
    for at in left_out.into_iter().rev() {
        out[at] = false;
        out[at] = !room.fits(&text(&pieces, &out));
    }
    text(&pieces, &out)
}

/// Whether what must be said and what was heard, both in full, leave room for one thought more.
pub fn fit_with(pieces: &[Piece], more: &Piece, room: Room, latin: bool) -> bool {
    let said = pieces.iter().filter(|piece| matches!(piece.rank, Rank::Must | Rank::Heard)).chain([more]);
    room.fits(&joined(said.map(Piece::fullest).filter(|said| !said.is_empty()), latin))
}

fn joined<'a>(said: impl Iterator<Item = &'a str>, latin: bool) -> String {
    let text = said.collect::<Vec<_>>().join(" ");
    // A sentence may open with the name of a food.
    let mut letters = text.chars();
    let text = letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect());
    if latin { plain(&text) } else { text }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_lightest_goes_first_and_the_order_stays() {
        let pieces = vec![
            Piece::new(Rank::Heard, "Noted: 3 kg scraps.".into()),
            Piece::new(Rank::Must, "m".repeat(100)),
            Piece::or(Rank::Why, vec!["w".repeat(60), "short why".into()]),
            Piece::new(Rank::Extra, "e".repeat(60)),
        ];
        let text = compose(pieces, Room::USUAL, true);
        assert_eq!(text, format!("Noted: 3 kg scraps. {} short why", "m".repeat(100)));
    }

    #[test]
    fn what_went_for_a_heavier_one_that_went_too_comes_back() {
        let pieces = vec![
            Piece::new(Rank::Heard, "Noted: 3 kg scraps.".into()),
            Piece::new(Rank::Must, "m".repeat(100)),
            Piece::new(Rank::Question, "q".repeat(100)),
        ];
        assert_eq!(compose(pieces, Room::USUAL, true), format!("Noted: 3 kg scraps. {}", "m".repeat(100)));
    }

    #[test]
    fn a_must_is_never_cut() {
        let text = compose(vec![Piece::new(Rank::Must, "m".repeat(200))], Room::USUAL, true);
        assert_eq!(text.len(), 200);
    }
}
