//! Text to reading: what one text states, asks and orders, in any language; nothing that the model concludes.
//!
//! `text -> tokens -> nodes -> numbers -> quantities -> times -> foods -> clauses -> rules -> reading`. Words stand only in
//! `lang/xx/words.toml`; rules stand only here. [`read`] reads a text that stands alone, [`read_answer`] one that
//! answers a question the bot asked, [`danger`] looks for danger alone, in every language.

pub mod answers;
mod asks;
mod breaks;
mod burned;
mod clauses;
mod dishes;
mod doubts;
mod elsewhere;
mod figures;
pub mod fold;
mod foods;
mod fuzzy;
mod glued;
mod keys;
mod language;
mod leaks;
mod lent;
mod levels;
mod lexicon;
mod likely;
mod likened;
mod measured;
mod mends;
mod named_days;
mod nodes;
mod notions;
mod numbers;
mod once_told;
mod orders;
mod ordinary;
mod parts;
mod people;
mod peril;
mod phrases;
mod place;
mod portions;
mod quantities;
mod reader;
pub mod reading;
mod script;
mod setup;
mod signs;
mod sized;
mod slips;
mod smells;
mod sour;
mod steps;
mod stove;
mod taken_back;
mod thumbs;
mod times;
mod tokens;
mod totals;
mod verbs;
mod vessels;
mod vowels;
mod wordlist;

pub use answers::{Answer, Expected, read_answer};
pub use fold::fold;
pub use language::explains;
pub use lexicon::{LexiconError, Lexicons};
pub use likely::{Likely, likely, put_right};

use bellyful_core::fact::{Sign, What};
use chrono::NaiveDate;
use reading::{Reading, Told};

/// Reads one text on its own. `known_lang` is the language its writer used before, `today` the day where it was written.
pub fn read(lexicons: &Lexicons, text: &str, known_lang: Option<&str>, today: NaiveDate) -> Reading {
    let mut reading = reader::read_as(language::choose(lexicons, text, known_lang), text, today);
    // A danger is a danger in whatever language it is told.
    if !reading.danger() {
        for sign in danger_in(lexicons, text, today, Some(&reading.lang)) {
            reading.facts.push(Told { day: Some(0), what: What::Sign { sign } });
        }
    }
    reading
}

/// The dangers that `text` tells of, in the words of any language.
pub fn danger(lexicons: &Lexicons, text: &str) -> Vec<Sign> {
    danger_in(lexicons, text, NaiveDate::default(), None)
}

fn danger_in(lexicons: &Lexicons, text: &str, today: NaiveDate, done: Option<&str>) -> Vec<Sign> {
    let scores = language::scores(lexicons, text);
    let best = scores.iter().map(|&(worth, _)| worth).fold(0.0, f64::max);
    // Beside the language read in, only one that explains the text better can tell more.
    let read = lexicons
        .all()
        .iter()
        .zip(&scores)
        .find(|(lexicon, _)| done == Some(lexicon.code.as_str()))
        .map_or(0.0, |(_, s)| s.0);
    let mut found = Vec::new();
    for (lexicon, (worth, share)) in lexicons.all().iter().zip(scores) {
        if worth < best * 0.7 || worth <= read || worth <= 0.0 || share < 0.5 || done == Some(lexicon.code.as_str()) {
            continue;
        }
        for told in reader::read_as(lexicon, text, today).facts {
            if let What::Sign { sign } = told.what
                && told.endangers()
                && !found.contains(&sign)
            {
                found.push(sign);
            }
        }
    }
    found
}
