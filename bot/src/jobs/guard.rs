//! Which texts get no answer: pure rules over what a number sent and was told lately.
//!
//! Danger is never asked here: it is answered whatever the number did before.

use crate::message::Inbound;
use crate::store::{Past, PastState};
use chrono::Duration;

bellyful_core::ids!(/// Why a text gets no answer.
    Silent {
    /// A name or a short number: nobody who could read an answer.
    NotAPhone = "not_a_phone",
    /// From our own number.
    Ourselves = "ourselves",
    /// The same words twice within seconds: one text that came by two ways.
    Repeated = "repeated",
    /// Our own words back: another machine.
    Echo = "echo",
    /// Too many a minute, or the same again and again: a machine.
    Looping = "looping",
    /// More texts today than are answered in a day. Facts are kept.
    Capped = "capped",
});

/// Source: texting practice in the field, two webhooks for one text within seconds; common practice, no source.
const SAME_WORDS_WITHIN: Duration = Duration::seconds(10);
/// The same words this often within the hour are a machine's. Source: our choice.
const SAME_WORDS_MOST: usize = 5;

/// How far back the rules look.
pub const PAST: Duration = Duration::hours(24);

#[derive(Debug, Clone, Copy)]
pub struct Limits {
    pub texts_per_day: usize,
    pub texts_per_minute: usize,
    /// Names and short numbers are fine: a chat.
    pub any_sender: bool,
}

/// Why `inbound` gets no answer, if so. `past`: what the number sent before it within [`PAST`]; `said`: our words to
/// it within the same.
pub fn silent(inbound: &Inbound, past: &[Past], said: &[String], limits: Limits) -> Option<Silent> {
    let age = |past: &Past| inbound.received_at - past.received_at;
    let words = normal(&inbound.text);
    let same: Vec<_> = past.iter().filter(|past| normal(&past.text) == words).collect();
    if !limits.any_sender && !is_phone(&inbound.from) {
        Some(Silent::NotAPhone)
    } else if inbound.to.as_deref() == Some(inbound.from.as_str()) {
        Some(Silent::Ourselves)
    } else if said.iter().any(|said| normal(said) == words) {
        Some(Silent::Echo)
    } else if same.iter().any(|past| age(past) <= SAME_WORDS_WITHIN) {
        Some(Silent::Repeated)
    } else if past.iter().filter(|past| age(past) < Duration::minutes(1)).count() >= limits.texts_per_minute
        || same.iter().filter(|past| age(past) < Duration::hours(1)).count() >= SAME_WORDS_MOST
    {
        Some(Silent::Looping)
    } else if past.iter().filter(|past| past.state == PastState::Answered).count() >= limits.texts_per_day {
        Some(Silent::Capped)
    } else {
        None
    }
}

/// Small letters, single spaces, nothing but letters and digits: what stays the same on the way through two gateways.
fn normal(text: &str) -> String {
    let kept = text.to_lowercase().replace(|c: char| !c.is_alphanumeric(), " ");
    kept.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A number that a person can be reached at: E.164 or a national one of seven digits and more.
fn is_phone(number: &str) -> bool {
    let digits = number.strip_prefix('+').unwrap_or(number);
    (7..=15).contains(&digits.len()) && digits.bytes().all(|b| b.is_ascii_digit())
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::DateTime;

    /// `past` are the words and age in seconds of what was sent before.
    fn check(from: &str, text: &str, past: &[(&str, i64)], said: &[&str], expected: Option<Silent>) {
        let now = DateTime::from_timestamp(1_780_000_000, 0).expect("in range");
        let inbound = Inbound {
            gateway: "plain".into(),
            id: "1".into(),
            from: from.into(),
            to: Some("+15550999".into()),
            text: text.into(),
            sent_at: now,
            received_at: now,
        };
        let past: Vec<Past> = past
            .iter()
            .map(|(text, age)| Past {
                row: 1,
                text: text.to_string(),
                received_at: now - Duration::seconds(*age),
                state: PastState::Answered,
            })
            .collect();
        let said: Vec<String> = said.iter().map(|said| said.to_string()).collect();
        let limits = Limits { texts_per_day: 12, texts_per_minute: 4, any_sender: false };
        assert_eq!(silent(&inbound, &past, &said, limits), expected, "{from} {text} {past:?}");
    }

    #[test]
    fn people_are_answered_and_machines_are_not() {
        let phone = "+15550100";
        check(phone, "fed 3 kg", &[], &[], None);
        check(phone, "fed 3 kg", &[("fed 3 kg", 11)], &["Good."], None);
        check(phone, "Fed  3kg.", &[("fed 3kg", 9)], &[], Some(Silent::Repeated));
        check(phone, "good", &[], &["Good."], Some(Silent::Echo));
        check(phone, "e", &[("a", 1), ("b", 2), ("c", 3)], &[], None);
        check(phone, "e", &[("a", 1), ("b", 2), ("c", 3), ("d", 59)], &[], Some(Silent::Looping));
        check(phone, "gas?", &[("gas?", 600); 5], &[], Some(Silent::Looping));
        check(phone, "gas?", &[("gas?", 7200); 5], &[], None);
        check(phone, "x", &[("y", 7200); 12], &[], Some(Silent::Capped));
        check("INFO", "hello", &[], &[], Some(Silent::NotAPhone));
        check("12345", "hello", &[], &[], Some(Silent::NotAPhone));
        check("+15550999", "hello", &[], &[], Some(Silent::Ourselves));
        check("0712345678", "hello", &[], &[], None);
    }
}
