//! What a programme taught the bot beyond what is built in: numbers to call, and words of a district for its feeds.
//!
//! Takes the settings and words as kept; gives the number of a country, and a text with the district's words put into
//! words that every text is read by. Never reads a text itself.

use crate::mind::Mind;
use crate::store::{EMERGENCY, FeedWord, Store, StoreError};
use crate::text::fold;
use crate::text::reading::{About, Reading};
use bellyful_core::fact::What;
use bellyful_core::feeds::Feed;
use chrono::NaiveDate;
use std::collections::BTreeMap;

#[derive(Debug, Clone, PartialEq, Default)]
pub struct Taught {
    emergency: BTreeMap<String, String>,
    words: Vec<FeedWord>,
}

/// Most words that one taught name has.
pub const WORDS_MOST: usize = 4;

impl Taught {
    /// As the store has it now.
    pub async fn load(store: &Store) -> Result<Taught, StoreError> {
        let settings = store.settings().await?;
        let emergency = settings
            .into_iter()
            .filter_map(|(name, number)| Some((name.strip_prefix(EMERGENCY)?.to_owned(), number)))
            .collect();
        Ok(Taught { emergency, words: store.feed_words().await? })
    }

    /// The number that the programme set for a country.
    pub fn emergency_number(&self, country: &str) -> Option<&str> {
        self.emergency.get(country).map(String::as_str)
    }

    /// The text with the words of the household's district put as `lang` has them.
    pub fn in_known_words(&self, mind: &Mind, text: &str, lang: &str, country: Option<&str>, place: &str) -> String {
        let here = |word: &&FeedWord| {
            Some(word.country.as_str()) == country && (word.place.is_empty() || folded(&word.place) == folded(place))
        };
        let mut words: Vec<(String, Feed)> =
            self.words.iter().filter(here).map(|word| (folded(&word.word), word.feed)).collect();
        if words.is_empty() {
            return text.to_owned();
        }
        words.sort_by_key(|(word, _)| std::cmp::Reverse(word.split(' ').count()));
        let said: Vec<&str> = text.split_whitespace().collect();
        let plain: Vec<String> = said.iter().map(|word| folded(word)).collect();
        let (mut known, mut at) = (vec![], 0);
        while at < said.len() {
            let fits = words.iter().find_map(|(word, feed)| {
                let length = word.split(' ').count();
                let run = plain.get(at..at + length)?;
                (run.join(" ") == *word).then_some((length, *feed))
            });
            match fits {
                Some((length, feed)) => {
                    let last = said[at + length - 1];
                    let mark = last.trim_start_matches(|c: char| !matches!(c, ',' | '.' | ';' | '!' | '?' | '\n'));
                    known.push(format!("{}{mark}", known_word(mind, lang, feed)));
                    at += length;
                }
                None => {
                    known.push(said[at].to_owned());
                    at += 1;
                }
            }
        }
        known.join(" ")
    }
}

/// A word for a feed that every text in `lang` is read by.
pub fn known_word(mind: &Mind, lang: &str, feed: Feed) -> String {
    let ours = mind.catalog.say(mind.catalog.written(lang, false), &format!("feed-{feed}"), &[]);
    if reads_as(mind, &ours, lang) == Some(feed) { ours } else { feed.id().replace('_', " ") }
}

/// What a text would be taken to have fed.
fn reads_as(mind: &Mind, word: &str, lang: &str) -> Option<Feed> {
    let reading = crate::text::read(&mind.lexicons, &format!("3 kg {word}"), Some(lang), NaiveDate::default());
    reading.facts.iter().find_map(|told| match told.what {
        What::Fed { feed, amount: Some(_), .. } => Some(feed),
        _ => None,
    })
}

/// What a word means already.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Meaning {
    Danger,
    Feed(Feed),
    Else,
}

/// Why a word cannot be taught: it means something already, and no teaching may hide that.
pub fn already_means(mind: &Mind, word: &str) -> Option<Meaning> {
    let alone = |lang: &str| -> Reading { crate::text::read(&mind.lexicons, word, Some(lang), NaiveDate::default()) };
    mind.catalog.languages().find_map(|lang| {
        let reading = alone(lang);
        if reading.danger() {
            return Some(Meaning::Danger);
        }
        if reading.control.is_some() || !reading.asks.is_empty() || reading.facts.iter().any(|told| !fed(&told.what)) {
            return Some(Meaning::Else);
        }
        // What cannot be placed and has an amount is taken for waste of food: that is no knowing.
        let strange = reading.unsure.iter().any(|unsure| unsure.about == About::Word);
        reads_as(mind, word, lang).filter(|feed| !(strange && *feed == Feed::FoodWaste)).map(Meaning::Feed)
    })
}

fn fed(what: &What) -> bool {
    matches!(what, What::Fed { .. })
}

/// A word without capitals, accents and the marks around it.
pub fn folded(word: &str) -> String {
    let bare = |word: &str| fold(word.trim_matches(|c: char| c.is_ascii_punctuation()));
    word.split_whitespace().map(bare).filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn word(word: &str, country: &str, place: &str) -> FeedWord {
        let (country, place) = (country.to_owned(), place.to_owned());
        FeedWord { id: 1, word: word.into(), feed: Feed::CattleManure, country, place, staff: "Asha".into() }
    }

    #[test]
    fn every_feed_has_a_word_that_reads_as_it_in_every_language() {
        let mind = Mind::new(None, 1).expect("sound words");
        for lang in mind.catalog.languages() {
            for feed in Feed::ALL {
                let word = known_word(&mind, lang, *feed);
                assert_eq!(reads_as(&mind, &word, lang), Some(*feed), "{lang} {word}");
            }
        }
    }

    #[test]
    fn a_taught_word_counts_in_its_district_only() {
        let mind = Mind::new(None, 1).expect("sound words");
        let taught = Taught { words: vec![word("Zumbulu moto", "KE", "Kisumu")], ..Taught::default() };
        let said =
            |country, place| taught.in_known_words(&mind, "fed 3 kg zumbulu MOTO, 5 L water", "en", country, place);
        let known = known_word(&mind, "en", Feed::CattleManure);
        assert_eq!(said(Some("KE"), "kisumu"), format!("fed 3 kg {known}, 5 L water"));
        assert_eq!(said(Some("KE"), "Nakuru"), "fed 3 kg zumbulu MOTO, 5 L water");
        assert_eq!(said(Some("TZ"), "Kisumu"), "fed 3 kg zumbulu MOTO, 5 L water");
        let everywhere = Taught { words: vec![word("zumbulu moto", "KE", "")], ..Taught::default() };
        let text = "3 kg zumbulu moto";
        assert_eq!(everywhere.in_known_words(&mind, text, "en", Some("KE"), "Nakuru"), format!("3 kg {known}"));
    }

    #[test]
    fn what_means_something_already_is_not_taught() {
        let mind = Mind::new(None, 1).expect("sound words");
        assert_eq!(already_means(&mind, "zumbulu"), None);
        for taken in ["gas leak", "stop", "banana peels", "ugali", "how much", "gas smell in the kitchen"] {
            assert!(already_means(&mind, taken).is_some(), "{taken}");
        }
    }
}
