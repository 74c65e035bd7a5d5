//! What a page says, in its reader's language: the staff member's, before the log-in the browser's, else English.
//!
//! Takes message ids of `bot/lang/xx/pages.ftl` and values; gives words, numbers and dates. Decides nothing.

use crate::mind::Mind;
use crate::reply::catalog::{Catalog, FALLBACK, Value, Values};
use axum::http::{HeaderMap, header};
use bellyful_core::units::Day;
use chrono::{DateTime, Datelike, Duration, NaiveDate, Utc};
use fluent_langneg::{NegotiationStrategy, accepted_languages, negotiate_languages};
use std::fmt::Display;
use std::sync::Arc;
use unic_langid::LanguageIdentifier;

/// A language with pages has this message.
const MARK: &str = "nav-today";

/// A language that pages are written in.
#[derive(Clone)]
pub struct Tongue {
    mind: Arc<Mind>,
    lang: String,
}

impl Tongue {
    /// Of a member of staff; a language without pages of its own is shown the English ones.
    pub fn of(mind: &Arc<Mind>, lang: &str) -> Tongue {
        let lang = mind.catalog.written(lang, false);
        let lang = if mind.catalog.has(lang, MARK) { lang } else { FALLBACK };
        Tongue { mind: mind.clone(), lang: lang.to_owned() }
    }

    /// What a browser asks for in its headers.
    pub fn of_browser(mind: &Arc<Mind>, headers: &HeaderMap) -> Tongue {
        let accepted = headers.get(header::ACCEPT_LANGUAGE).and_then(|value| value.to_str().ok());
        Tongue::asked_for(mind, accepted.unwrap_or_default())
    }

    /// What a browser asks for: the value of `Accept-Language` (RFC 9110, 12.5.4).
    pub fn asked_for(mind: &Arc<Mind>, accepted: &str) -> Tongue {
        let weight = |part: &&str| part.split_once(";q=").and_then(|(_, q)| q.trim().parse().ok()).unwrap_or(1.0_f64);
        let mut parts: Vec<&str> = accepted.split(',').collect();
        parts.sort_by(|a, b| weight(b).total_cmp(&weight(a)));
        let wanted = accepted_languages::parse(&parts.join(","));
        let with_pages = |code: &&str| mind.catalog.has(code, MARK);
        let ours: Vec<LanguageIdentifier> =
            mind.catalog.languages().filter(with_pages).filter_map(|code| code.parse().ok()).collect();
        let fitting = negotiate_languages(&wanted, &ours, None, NegotiationStrategy::Filtering);
        Tongue::of(mind, fitting.first().map_or(FALLBACK, |lang| lang.language.as_str()))
    }

    /// For `<html lang>`.
    pub fn lang(&self) -> &str {
        &self.lang
    }

    fn catalog(&self) -> &Catalog {
        &self.mind.catalog
    }

    pub fn say(&self, id: &str) -> String {
        self.with(id, &[])
    }

    pub fn with(&self, id: &str, values: Values) -> String {
        let said = self.catalog().say(&self.lang, id, values);
        // What no catalogue has is at least seen.
        if said.is_empty() { id.to_owned() } else { said }
    }

    /// A sentence that counts: its `$n` is a number.
    pub fn count(&self, id: &str, n: impl Display) -> String {
        self.with(id, &[("n", counted(n))])
    }

    /// A sentence about somebody or something: its `$name`.
    pub fn of_name(&self, id: &str, name: impl Display) -> String {
        self.with(id, &[("name", name.to_string().into())])
    }

    pub fn tell(&self, sentence: &Sentence) -> String {
        self.with(sentence.id, &sentence.values)
    }

    /// A number with the language's decimal mark.
    pub fn number(&self, value: f64, decimals: usize) -> String {
        format!("{:.*}", decimals, value + 0.0).replace('.', self.say("decimal-mark").trim())
    }

    /// "Thursday 26 November 2026".
    pub fn full_date(&self, date: NaiveDate) -> String {
        self.dated("date-full", date, "")
    }

    /// "26 Nov 2026".
    pub fn date(&self, date: NaiveDate) -> String {
        self.dated("date-day", date, "")
    }

    pub fn day(&self, day: Day) -> String {
        self.date(date_of(day))
    }

    /// "26 Nov": within a year.
    pub fn short_day(&self, day: Day) -> String {
        self.dated("date-short", date_of(day), "")
    }

    /// "November 2026".
    pub fn month(&self, date: NaiveDate) -> String {
        self.dated("date-month", date, "")
    }

    /// "26 Nov 14:05".
    pub fn moment(&self, at: DateTime<Utc>) -> String {
        self.dated("date-moment", at.date_naive(), &at.format("%H:%M").to_string())
    }

    /// "26 Nov 2026 14:05".
    pub fn full_moment(&self, at: DateTime<Utc>) -> String {
        self.dated("date-full-moment", at.date_naive(), &at.format("%H:%M").to_string())
    }

    fn dated(&self, id: &str, date: NaiveDate, time: &str) -> String {
        let values = [
            ("weekday", date.weekday().number_from_monday().into()),
            ("day", date.day().into()),
            ("month", date.month().into()),
            ("year", Value::Text(date.year().to_string())),
            ("time", time.into()),
        ];
        self.with(id, &values)
    }
}

/// The date of a day as facts count them.
pub fn date_of(day: Day) -> NaiveDate {
    NaiveDate::default() + Duration::days(i64::from(day.0))
}

/// A whole number of any kind, as sentences take it.
pub fn counted(n: impl Display) -> Value {
    let written = n.to_string();
    written.parse::<f64>().map_or(Value::Text(written), Value::Number)
}

/// A message and its values, until it is known to whom it is said.
#[derive(Debug, Clone, PartialEq)]
pub struct Sentence {
    pub id: &'static str,
    pub values: Vec<(&'static str, Value)>,
}

impl Sentence {
    pub fn with(id: &'static str, values: impl IntoIterator<Item = (&'static str, Value)>) -> Sentence {
        Sentence { id, values: values.into_iter().collect() }
    }
}

impl From<&'static str> for Sentence {
    fn from(id: &'static str) -> Sentence {
        Sentence { id, values: vec![] }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mind() -> Arc<Mind> {
        Arc::new(Mind::new(None, 1).expect("sound words"))
    }

    #[test]
    fn a_browser_is_answered_in_the_language_it_likes_best_of_ours() {
        let mind = mind();
        let check =
            |accepted: &str, lang: &str| assert_eq!(Tongue::asked_for(&mind, accepted).lang(), lang, "{accepted}");
        check("", "en");
        check("hi-IN,hi;q=0.9,en;q=0.8", "hi");
        check("en;q=0.2, sw;q=0.9", "sw");
        check("de-AT, fr-CH;q=0.7", "fr");
        check("pt-BR", "pt");
        check("de", "en");
        check(";;;,=q, \u{7}", "en");
    }

    #[test]
    fn a_language_without_pages_of_its_own_is_shown_the_english_ones() {
        let mind = mind();
        for unknown in ["", "qx", "hi-Latn", "nonsense of any kind"] {
            assert_eq!(Tongue::of(&mind, unknown).lang(), "en", "{unknown}");
        }
    }

    #[test]
    fn dates_and_numbers_are_written_as_the_language_writes_them() {
        let mind = mind();
        let date = NaiveDate::from_ymd_opt(2026, 3, 5).expect("a date");
        let check = |lang: &str, full: &str, number: &str| {
            let tongue = Tongue::of(&mind, lang);
            assert_eq!((tongue.full_date(date).as_str(), tongue.number(1.25, 2).as_str()), (full, number), "{lang}");
        };
        check("en", "Thursday 5 March 2026", "1.25");
        check("es", "jueves 5 de marzo de 2026", "1.25");
        check("fr", "jeudi 5 mars 2026", "1,25");
        check("hi", "गुरुवार 5 मार्च 2026", "1.25");
        check("pt", "quinta-feira, 5 de março de 2026", "1,25");
        check("sw", "Alhamisi 5 Machi 2026", "1.25");
    }
}
