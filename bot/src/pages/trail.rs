//! What staff did, in the reader's language.
//!
//! Takes rows of the trail; gives lines. The words of people stay as they wrote them.

use super::Tongue;
use super::household::told;
use super::tongue::counted;
use crate::deed::{Deed, Did, Written};
use crate::reply::catalog::Value;
use crate::reply::word::Voice;
use chrono::{DateTime, Utc};

/// A line of the trail: when, and who did what.
pub struct Line {
    pub when: String,
    pub what: String,
}

pub fn lines(tongue: &Tongue, voice: &Voice, trail: Vec<(DateTime<Utc>, Written)>) -> Vec<Line> {
    let line = |(at, written)| Line {
        when: tongue.full_moment(at),
        what: match written {
            Written::Deed(deed) => said(tongue, voice, &deed),
            Written::Words(words) => words,
        },
    };
    trail.into_iter().map(line).collect()
}

fn said(tongue: &Tongue, voice: &Voice, deed: &Deed) -> String {
    let words = |words: &str| Value::Text(words.to_owned());
    let (id, about): (&'static str, Vec<(&'static str, Value)>) = match &deed.did {
        Did::Noted { words: said } => ("did-noted", vec![("words", words(said))]),
        Did::TookAlarm => ("did-took_alarm", vec![]),
        Did::SeesToIt => ("did-sees_to_it", vec![]),
        Did::HasSeenToIt => ("did-has_seen_to_it", vec![]),
        Did::ToldDanger => ("did-told_danger", vec![]),
        Did::ToldFacts => ("did-told_facts", vec![]),
        Did::AskedHistory => ("did-asked_history", vec![]),
        Did::ToldFamily { words: said } => ("did-told_family", vec![("words", words(said))]),
        Did::TookOver => ("did-took_over", vec![]),
        Did::HandedBack => ("did-handed_back", vec![]),
        Did::LiftedCap => ("did-lifted_cap", vec![]),
        Did::AddedPhone => ("did-added_phone", vec![]),
        Did::TookPhoneOff => ("did-took_phone_off", vec![]),
        Did::ToldMeasure { unit, litres } => {
            let litres = tongue.number(*litres, if litres.fract() == 0.0 { 0 } else { 1 });
            ("did-told_measure", vec![("measure", voice.measure(*unit).into()), ("litres", litres.into())])
        }
        Did::EndedReminders => ("did-ended_reminders", vec![]),
        Did::BeganReminders => ("did-began_reminders", vec![]),
        Did::BeganAnew { before } => ("did-began_anew", vec![("id", words(&before.to_string()))]),
        Did::ClosedStory => ("did-closed_story", vec![]),
        Did::ChangedSettings { facts } => {
            let told: Vec<String> = told(tongue, voice, facts).into_iter().map(|(_, what)| what).collect();
            let id = if told.is_empty() { "did-changed_settings" } else { "did-changed_settings_to" };
            (id, vec![("settings", told.join(", ").into())])
        }
        Did::Visited { errand } => ("did-visited", vec![("errand", errand.name(tongue).into())]),
        Did::TookPhotoAway => ("did-took_photo_away", vec![]),
        Did::SetUp => ("did-set_up", vec![]),
        Did::AskedNeeds => ("did-asked_needs", vec![]),
        Did::AskedMore => ("did-asked_more", vec![]),
        Did::SetPin => ("did-set_pin", vec![]),
        Did::GavePin => ("did-gave_pin", vec![]),
        Did::GaveWrongPin => ("did-gave_wrong_pin", vec![]),
        Did::GaveNoPin => ("did-gave_no_pin", vec![]),
        Did::TriedWhileLocked => ("did-tried_while_locked", vec![]),
        Did::GotLocked => ("did-got_locked", vec![]),
        Did::AddedStaff { name, role } => {
            ("did-added_staff", vec![("name", words(name)), ("role", tongue.say(role.name()).into())])
        }
        Did::ChangedStaff { name, role } => {
            ("did-changed_staff", vec![("name", words(name)), ("role", tongue.say(role.name()).into())])
        }
        Did::GavePassword { name } => ("did-gave_password", vec![("name", words(name))]),
        Did::FreedOfPin { name } => ("did-freed_of_pin", vec![("name", words(name))]),
        Did::TookOffStaff { name } => ("did-took_off_staff", vec![("name", words(name))]),
        Did::MadeToken { name, scope } => {
            ("did-made_token", vec![("name", words(name)), ("scope", tongue.say(&format!("scope-{scope}")).into())])
        }
        Did::TookTokenBack { name } => ("did-took_token_back", vec![("name", words(name))]),
        Did::SetNumberToCall { country, number: Some(number) } => {
            ("did-set_call", vec![("country", words(country)), ("number", words(number))])
        }
        Did::SetNumberToCall { country, number: None } => ("did-set_call_back", vec![("country", words(country))]),
        Did::TaughtWord { word, feed, place } => (
            "did-taught_word",
            vec![("word", words(word)), ("feed", voice.feed(*feed).into()), ("place", words(place))],
        ),
        Did::TookWordAway { word } => ("did-took_word_away", vec![("word", words(word))]),
        Did::SetKeeping { days: Some(days) } => ("did-set_keeping", vec![("n", counted(days))]),
        Did::SetKeeping { days: None } => ("did-set_keeping_ever", vec![]),
        Did::SetPinNeed { all: true } => ("did-pin_for_all", vec![]),
        Did::SetPinNeed { all: false } => ("did-pin_for_some", vec![]),
        Did::SentBroadcast { households, audience, words: said } => {
            let n = counted(households);
            ("did-sent_broadcast", vec![("n", n), ("audience", words(audience)), ("words", words(said))])
        }
        Did::StoppedBroadcast { id, unsent } => {
            ("did-stopped_broadcast", vec![("id", words(&id.to_string())), ("n", counted(unsent))])
        }
    };
    let values: Vec<_> = std::iter::once(("by", words(&deed.by))).chain(about).collect();
    tongue.with(id, &values)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mind::Mind;
    use crate::pages::access::Role;
    use crate::pages::visit::Errand;
    use bellyful_core::fact::{Fact, Measure, What};
    use bellyful_core::feeds::Feed;
    use bellyful_core::units::Day;
    use std::sync::Arc;

    #[test]
    fn every_deed_is_told_in_every_language_with_all_that_it_is_about() {
        let tank = Fact { id: 1, day: Day(9), told_at: 0, what: What::Tank { litres: 1234.0 } };
        let name = || "Wanjiru".to_owned();
        let deeds = [
            (Did::Noted { words: "gave soap".into() }, "gave soap"),
            (Did::ToldFamily { words: "I come Tuesday".into() }, "I come Tuesday"),
            (Did::ToldMeasure { unit: Measure::Bucket, litres: 12.0 }, "12"),
            (Did::BeganAnew { before: 31 }, "31"),
            (Did::ChangedSettings { facts: vec![tank] }, "1234"),
            (Did::AddedStaff { name: name(), role: Role::Field }, "Wanjiru"),
            (Did::ChangedStaff { name: name(), role: Role::Lead }, "Wanjiru"),
            (Did::GavePassword { name: name() }, "Wanjiru"),
            (Did::FreedOfPin { name: name() }, "Wanjiru"),
            (Did::TookOffStaff { name: name() }, "Wanjiru"),
            (Did::MadeToken { name: name(), scope: "people".into() }, "Wanjiru"),
            (Did::TookTokenBack { name: name() }, "Wanjiru"),
            (Did::SetNumberToCall { country: "KE".into(), number: Some("112".into()) }, "112"),
            (Did::SetNumberToCall { country: "KE".into(), number: None }, "KE"),
            (Did::TaughtWord { word: "mavi".into(), feed: Feed::CattleManure, place: "KE".into() }, "mavi"),
            (Did::TookWordAway { word: "mavi".into() }, "mavi"),
            (Did::SetKeeping { days: Some(90) }, "90"),
            (Did::SentBroadcast { households: 7, audience: "Kisumu".into(), words: "cold".into() }, "Kisumu"),
            (Did::StoppedBroadcast { id: 3, unsent: 41 }, "41"),
        ];
        let plain = [
            Did::TookAlarm,
            Did::SeesToIt,
            Did::HasSeenToIt,
            Did::ToldDanger,
            Did::ToldFacts,
            Did::AskedHistory,
            Did::TookOver,
            Did::HandedBack,
            Did::LiftedCap,
            Did::AddedPhone,
            Did::TookPhoneOff,
            Did::EndedReminders,
            Did::BeganReminders,
            Did::ClosedStory,
            Did::ChangedSettings { facts: vec![] },
            Did::Visited { errand: Errand::Fault },
            Did::TookPhotoAway,
            Did::SetUp,
            Did::AskedNeeds,
            Did::AskedMore,
            Did::SetPin,
            Did::GavePin,
            Did::GaveWrongPin,
            Did::GaveNoPin,
            Did::TriedWhileLocked,
            Did::GotLocked,
            Did::SetKeeping { days: None },
            Did::SetPinNeed { all: true },
            Did::SetPinNeed { all: false },
        ];
        let mind = Arc::new(Mind::new(None, 1).expect("sound words"));
        for lang in ["en", "es", "fr", "hi", "pt", "sw"] {
            let (tongue, voice) = (Tongue::of(&mind, lang), Voice::in_lang(&mind.catalog, lang));
            let all = deeds.iter().cloned().chain(plain.iter().map(|did| (did.clone(), "Asha")));
            let mut told = std::collections::BTreeSet::new();
            for (did, about) in all {
                let line = said(&tongue, &voice, &did.clone().by("Asha"));
                assert!(line.contains("Asha") && line.contains(about), "{lang} {did:?}: {line}");
                assert!(told.insert(line), "{lang} {did:?}: told like another");
            }
        }
    }
}
