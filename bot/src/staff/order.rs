//! What a field worker orders: a word of the language first, then the household, then what is to be written.
//!
//! Takes a text; gives an [`Order`], or nothing when the text is to be read as any other. Never looks anything up.

use crate::pages::access::Role;
use crate::text::Lexicons;
use crate::text::fold;

/// One order. Households are as written: number, name or place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Order {
    /// "ok 12": the alarm is taken. A bare "ok" means the one this worker was told of.
    Acknowledge(Option<String>),
    Note(String, String),
    Tell(String, String),
    Take(String),
    HandBack(String),
    Lift(String),
    /// "done 12": what was taken is seen to, for everybody.
    Done(String),
    /// "who needs me".
    Needs,
    Pin(String),
}

impl Order {
    /// The household it is about.
    pub fn household(&self) -> Option<&str> {
        match self {
            Order::Needs | Order::Pin(_) => None,
            Order::Acknowledge(of) => of.as_deref(),
            Order::Take(of) | Order::HandBack(of) => Some(of),
            Order::Lift(of) | Order::Done(of) => Some(of),
            Order::Note(of, _) | Order::Tell(of, _) => Some(of),
        }
    }

    /// The least role that may give it.
    pub fn least(&self) -> Role {
        match self {
            Order::Needs | Order::Pin(_) => Role::Viewer,
            Order::Acknowledge(_) | Order::Note(..) | Order::Tell(..) => Role::Field,
            Order::Take(_) | Order::HandBack(_) | Order::Lift(_) | Order::Done(_) => Role::Field,
        }
    }
}

/// Most words of a household's name.
pub const NAME_MOST: usize = 4;

/// The order that `text` is, in the words of any language, the worker's own first.
pub fn order(lexicons: &Lexicons, lang: &str, text: &str) -> Option<Order> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let folded: Vec<String> = words.iter().map(|word| bare(&fold(word)).to_owned()).collect();
    if let Some(order) = acknowledged(&folded) {
        return Some(order);
    }
    match folded.first()?.as_str() {
        "pin" if words.len() <= 2 => return Some(Order::Pin(words.get(1).copied().unwrap_or_default().to_owned())),
        _ => {}
    }
    let own = lexicons.get(lang).into_iter();
    own.chain(lexicons.all()).find_map(|lexicon| {
        let house: Vec<&str> =
            lexicon.staff.iter().filter(|(_, order)| order == "house").map(|(word, _)| word.as_str()).collect();
        let starts = |phrase: &str| {
            let phrase: Vec<&str> = phrase.split(' ').collect();
            let same = folded.len() >= phrase.len() && phrase.iter().zip(&folded).all(|(a, b)| bare(a) == b);
            same.then_some(phrase.len())
        };
        lexicon.staff.iter().filter(|(_, order)| order != "house").find_map(|(phrase, order)| {
            let mut from = starts(phrase)?;
            if order == "needs" {
                return (from == words.len()).then_some(Order::Needs);
            }
            while from + 1 < words.len() && house.contains(&folded[from].as_str()) {
                from += 1;
            }
            ordered(order, &words[from..], &folded[from..])
        })
    })
}

/// "ok", "okay 12", "ok12": the same word in every language, as the alarm asks for it.
fn acknowledged(folded: &[String]) -> Option<Order> {
    let first = folded.first()?;
    let rest = first.strip_prefix("okay").or_else(|| first.strip_prefix("ok"))?;
    match folded {
        [_] if rest.is_empty() => Some(Order::Acknowledge(None)),
        [_] if number(rest) => Some(Order::Acknowledge(Some(rest.to_owned()))),
        [_, of] if rest.is_empty() && number(of) => Some(Order::Acknowledge(Some(of.clone()))),
        _ => None,
    }
}

fn ordered(order: &str, words: &[&str], folded: &[String]) -> Option<Order> {
    let whole = || {
        let plain = !words.is_empty() && (words.len() == 1 || words.len() <= NAME_MOST && !number(&folded[0]));
        // "take out 3 buckets" is none: a name bears no digits.
        let name = words.len() == 1 || folded.iter().all(|word| !word.chars().any(|c| c.is_ascii_digit()));
        (plain && name).then(|| bare(&words.join(" ")).to_owned())
    };
    match order {
        "take" => whole().map(Order::Take),
        "hand_back" => whole().map(Order::HandBack),
        "lift" => whole().map(Order::Lift),
        // "done with the digester" is talk: what is seen to is named by its number.
        "done" => whole().filter(|of| number(of)).map(Order::Done),
        "note" => split(words).map(|(of, said)| Order::Note(of, said)),
        "tell" => split(words).map(|(of, said)| Order::Tell(of, said)),
        _ => None,
    }
}

/// The household and the words for it: "12 valve replaced", "Amina Odhiambo: valve replaced".
fn split(words: &[&str]) -> Option<(String, String)> {
    let first = words.first()?;
    let colon = words.iter().take(NAME_MOST).position(|word| word.ends_with(':'));
    let named = if number(bare(first)) { 1 } else { colon.map_or(1, |at| at + 1) };
    Some((bare(&words[..named].join(" ")).to_owned(), words[named..].join(" ")))
}

fn bare(word: &str) -> &str {
    word.trim_matches(|c: char| c.is_ascii_punctuation())
}

fn number(word: &str) -> bool {
    !word.is_empty() && word.bytes().all(|b| b.is_ascii_digit())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(lang: &str, text: &str, expected: Option<Order>) {
        assert_eq!(order(&Lexicons::built_in(), lang, text), expected, "{text}");
    }

    #[test]
    fn orders_are_known_by_their_first_words_in_every_language() {
        let note = |of: &str, said: &str| Some(Order::Note(of.into(), said.into()));
        let tell = |of: &str, said: &str| Some(Order::Tell(of.into(), said.into()));
        check("en", "note 12 valve replaced", note("12", "valve replaced"));
        check("en", "Note house 12: valve replaced", note("12", "valve replaced"));
        check("en", "note Amina Odhiambo: new bag", note("Amina Odhiambo", "new bag"));
        check("en", "tell 12 I come Tuesday", tell("12", "I come Tuesday"));
        check("es", "dile a 12 voy el martes", tell("12", "voy el martes"));
        check("sw", "mwambie 12 nakuja kesho", tell("12", "nakuja kesho"));
        check("pt", "avise a 12 vou amanhã", tell("12", "vou amanhã"));
        check("fr", "note 12 vanne changée", note("12", "vanne changée"));
        check("hi", "batao 12 kal aata hun", tell("12", "kal aata hun"));
        check("en", "take 12", Some(Order::Take("12".into())));
        check("en", "take over #12.", Some(Order::Take("12".into())));
        check("en", "Hand back house 12", Some(Order::HandBack("12".into())));
        check("en", "lift cap 12", Some(Order::Lift("12".into())));
        check("en", "Who needs me?", Some(Order::Needs));
        check("fr", "qui a besoin de moi", Some(Order::Needs));
        for text in ["ok 12", "OK12", "Okay, 12.", "ok #12"] {
            check("en", text, Some(Order::Acknowledge(Some("12".into()))));
        }
        check("sw", "Ok.", Some(Order::Acknowledge(None)));
        check("en", "pin 4711", Some(Order::Pin("4711".into())));
        check("en", "Done house 12.", Some(Order::Done("12".into())));
        check("sw", "tayari 12", Some(Order::Done("12".into())));
        check("hi", "ho gaya 12", Some(Order::Done("12".into())));
    }

    #[test]
    fn what_is_told_or_asked_for_a_family_is_no_order() {
        check("en", "for 12: fed 5 kg", None);
        check("en", "history 12", None);
        check("en", "took out 3 buckets", None);
        check("en", "take out 3 buckets", None);
        check("en", "ok thanks", None);
        check("en", "done", None);
        check("en", "done feeding", None);
    }
}
