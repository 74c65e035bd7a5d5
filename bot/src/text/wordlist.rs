//! Word lists: `words.toml` taken apart.
//!
//! Takes the file's text; gives every phrase with its meaning, and the language's habits. Says in one sentence which
//! entry is wrong. The format is told at the top of `lang/en/words.toml`.

use super::fold::{self, fold};
use super::keys::{day_of, number_of, scaled};
use super::lexicon::LexiconError;
use super::notions::{CONTROLS, Cue, Cues, Meaning, UNITS, UnitWord};
use super::ordinary::Ordinary;
use super::phrases::expand_list;
use super::verbs::Verbs;
use bellyful_core::fact::{GasLevel, Measure, Sign};
use bellyful_core::feeds::Feed;
use serde::Deserialize;
use std::collections::{BTreeMap, HashSet};

/// How a language puts its words in order.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Habits {
    /// The language's name in itself.
    pub name: String,
    /// Where "not" stands to what it denies.
    pub negation: Side,
    /// Where the number stands to its unit, mostly; both ways are read.
    pub number: Side,
    /// Where the whole stands to its part: "peel of banana" is `before`, "banana peel" is `after`.
    pub part: Side,
    /// Whether an apostrophe parts two words ("d'eau") or is a letter ("ng'ombe").
    pub apostrophe_splits: bool,
    /// The mark before decimals; the other of `.` and `,` parts thousands.
    pub decimal: char,
    /// Whether a space may part thousands ("4 000").
    pub thousands_space: bool,
    /// Whether "hundred" stands before or after its number.
    pub scale: Side,
    /// Whether "and" may join tens and ones ("treinta y cinco").
    pub tens_and: bool,
    /// Of "3 not 5", which is meant.
    pub contrast: Contrast,
    #[serde(default)]
    pub borrows: Vec<String>,
    #[serde(default)]
    pub not_borrowed: Vec<String>,
    /// Letters mixed up in writing: (typed, made into), in order.
    #[serde(default)]
    pub sounds: Vec<(String, String)>,
    /// Short forms of a word: (typed, meant).
    #[serde(default)]
    pub aliases: Vec<(String, String)>,
    /// Figures typed for the words they sound like.
    #[serde(default)]
    pub figures: Vec<Figure>,
    /// What stands before a verb in one word with it.
    #[serde(default)]
    pub verbs: Verbs,
    /// Words whose accents matter.
    #[serde(default)]
    pub distinct: Vec<String>,
}

/// "2" for "to", and before "much" for "too".
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Figure {
    pub figure: String,
    pub word: String,
    #[serde(default)]
    pub degree: Option<String>,
    /// Whether it stands for a part of a word: "2ko" for "tuko", "wa2" for "watu".
    #[serde(default)]
    pub within: bool,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    Before,
    After,
    Either,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Contrast {
    First,
    Second,
}

/// One entry of the file: a hundred thousand phrases a language, kept as one text an entry.
#[derive(Debug)]
struct Entry {
    meaning: Meaning,
    /// Each on a line of its own.
    phrases: String,
}

/// One language's file, taken apart.
#[derive(Debug)]
pub struct WordList {
    pub code: String,
    pub habits: Habits,
    pub languages: Vec<String>,
    entries: Vec<Entry>,
    /// Words as the list spells them, accents and all; only those that have any.
    pub accented: HashSet<String>,
    /// What field workers order, with the order's id, the longest first.
    pub staff: Vec<(String, String)>,
    pub ordinary: Ordinary,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    habits: Habits,
    #[serde(default)]
    sets: toml::map::Map<String, toml::Value>,
    #[serde(default)]
    numbers: BTreeMap<String, String>,
    #[serde(default)]
    units: BTreeMap<String, String>,
    #[serde(default)]
    measures: BTreeMap<String, String>,
    #[serde(default)]
    feeds: BTreeMap<String, String>,
    #[serde(default)]
    signs: BTreeMap<String, String>,
    #[serde(default)]
    levels: BTreeMap<String, String>,
    #[serde(default)]
    days: BTreeMap<String, String>,
    #[serde(default)]
    cues: BTreeMap<String, String>,
    #[serde(default)]
    controls: BTreeMap<String, String>,
    #[serde(default)]
    languages: BTreeMap<String, String>,
    #[serde(default)]
    words: BTreeMap<String, String>,
    #[serde(default)]
    staff: BTreeMap<String, String>,
}

impl WordList {
    pub fn parse(code: &str, text: &str) -> Result<WordList, LexiconError> {
        let wrong = |reason: String| LexiconError::Wrong { language: code.to_owned(), reason };
        let file: File = toml::from_str(text).map_err(|error| wrong(error.to_string()))?;
        let sets = sets_of(&file.sets).map_err(wrong)?;
        let mut list = WordList {
            code: code.to_owned(),
            habits: file.habits,
            languages: Vec::new(),
            entries: Vec::new(),
            accented: HashSet::new(),
            staff: Vec::new(),
            ordinary: Ordinary::default(),
        };
        for (order, phrases) in &file.staff {
            let phrases = expand_list(phrases, &sets).map_err(|reason| wrong(format!("[staff] {order}: {reason}")))?;
            list.staff.extend(phrases.iter().map(|phrase| (fold(phrase), order.clone())));
        }
        list.staff.sort_by_key(|(phrase, _)| std::cmp::Reverse(phrase.split(' ').count()));
        for (section, entries) in [
            ("numbers", &file.numbers),
            ("units", &file.units),
            ("measures", &file.measures),
            ("feeds", &file.feeds),
            ("signs", &file.signs),
            ("levels", &file.levels),
            ("days", &file.days),
            ("cues", &file.cues),
            ("controls", &file.controls),
            ("languages", &file.languages),
            ("words", &file.words),
        ] {
            for (key, phrases) in entries {
                let meaning =
                    list.meaning_of(section, key).ok_or_else(|| wrong(format!("[{section}] has no key `{key}`")))?;
                let mut entry = Entry { meaning, phrases: String::new() };
                for phrase in
                    expand_list(phrases, &sets).map_err(|reason| wrong(format!("[{section}] {key}: {reason}")))?
                {
                    let words = phrase.split([' ', '-', '\'', '’']).filter(|word| !word.is_ascii());
                    list.accented.extend(words.map(str::to_lowercase));
                    for phrase in list.twins(list.folded(&phrase)) {
                        entry.phrases.extend([&phrase, "\n"]);
                    }
                }
                list.entries.push(entry);
            }
        }
        Ok(list)
    }

    /// Every phrase and what it means, in the order of the file.
    pub fn phrases(&self) -> impl Iterator<Item = (&str, &Meaning)> {
        self.entries.iter().flat_map(|entry| entry.phrases.lines().map(|phrase| (phrase, &entry.meaning)))
    }

    /// A phrase in the form that tokens take: folded, hyphens and apostrophes as the language has them.
    fn folded(&self, phrase: &str) -> String {
        let spaced = phrase.replace(['-', '/'], " ");
        let apart = if self.habits.apostrophe_splits { " " } else { "" };
        let spaced = spaced.replace(['\'', '’'], apart);
        let words: Vec<String> = spaced
            .split_whitespace()
            .map(|word| if self.habits.distinct.iter().any(|kept| kept == word) { word.to_owned() } else { fold(word) })
            .collect();
        words.join(" ")
    }

    /// A phrase of several words is the same with and without the accents that tell single words apart: "cómo está" is
    /// typed "como esta", though "como" alone is not "cómo".
    fn twins(&self, phrase: String) -> Vec<String> {
        let mut all = vec![phrase];
        if !all[0].contains(' ') {
            return all;
        }
        for accented in &self.habits.distinct {
            let plain = fold(accented);
            for at in 0..all.len() {
                for (from, to) in [(accented, &plain), (&plain, accented)] {
                    let words: Vec<&str> = all[at].split(' ').map(|w| if w == from { to } else { w }).collect();
                    let twin = words.join(" ");
                    if !all.contains(&twin) {
                        all.push(twin);
                    }
                }
            }
        }
        all
    }

    fn meaning_of(&mut self, section: &str, key: &str) -> Option<Meaning> {
        let mut meaning = Meaning::default();
        match section {
            "numbers" => meaning.number = Some(number_of(key)?),
            "units" => {
                let (key, letter) = key.strip_suffix("_letter").map_or((key, false), |key| (key, true));
                meaning.letter = letter;
                meaning.unit = if key == "unclear" {
                    Some(UnitWord::Unclear)
                } else {
                    let (number, name) =
                        key.split_once("_of_").map_or((1.0, key), |(n, name)| (n.parse().unwrap_or(0.0), name));
                    let unit = UNITS.iter().find(|(id, _)| *id == name)?.1;
                    Some(scaled(unit, number)?)
                };
            }
            "measures" => {
                let (key, plural) = key.strip_suffix("_many").map_or((key, false), |key| (key, true));
                meaning.unit = Some(UnitWord::Of(Measure::from_id(key)?));
                meaning.plural = plural;
            }
            "feeds" => meaning.feed = Some(Feed::from_id(key)?),
            "signs" => meaning.sign = Some(Sign::from_id(key)?),
            "levels" => meaning.level = Some(GasLevel::from_id(key)?),
            "days" => meaning.day = Some(day_of(key)?),
            "cues" => meaning.cues.insert(Cue::from_id(key)?),
            "controls" => meaning.control = Some(CONTROLS.iter().position(|(id, _)| *id == key)? as u8),
            "languages" => {
                self.languages.push(key.to_owned());
                meaning.language = Some(self.languages.len() as u16 - 1);
            }
            "words" => match key {
                "chatter" => meaning.cues.insert(Cue::Chatter),
                "figure" => meaning.cues = Cues::of(&[Cue::Other, Cue::InWords]),
                _ => meaning.cues.insert(Cue::Other),
            },
            _ => return None,
        }
        Some(meaning)
    }
}

/// Sets may name sets that stand before them in the file's order of need: they are unfolded until nothing changes.
fn sets_of(raw: &toml::map::Map<String, toml::Value>) -> Result<BTreeMap<String, Vec<String>>, String> {
    let mut waiting: Vec<(&String, &str)> = Vec::new();
    for (name, value) in raw {
        waiting.push((name, value.as_str().ok_or_else(|| format!("[sets] {name} is not a text"))?));
    }
    let mut sets = BTreeMap::new();
    while !waiting.is_empty() {
        let before = waiting.len();
        let mut problem = String::new();
        waiting.retain(|(name, list)| match expand_list(list, &sets) {
            Ok(phrases) => {
                sets.insert((*name).clone(), phrases);
                false
            }
            Err(reason) => {
                problem = format!("[sets] {name}: {reason}");
                true
            }
        });
        if waiting.len() == before {
            return Err(problem);
        }
    }
    Ok(sets)
}

/// Whether `word`, as typed, keeps its accents in `habits`.
pub fn kept_as_typed(habits: &Habits, word: &str) -> Option<String> {
    if habits.distinct.is_empty() || word.is_ascii() {
        return None;
    }
    use unicode_normalization::UnicodeNormalization;
    let lower: String = word.to_lowercase().nfc().filter(|&c| !fold::invisible(c)).collect();
    habits.distinct.contains(&lower).then_some(lower)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lang::folders;
    use std::collections::BTreeSet;

    /// Said by other means where a language has no word of its own for them.
    const OWN_WAYS: [&str; 3] = [
        // "Three days ago" in one word; elsewhere it is said in three.
        "days -3",
        // Local weights, made of the units that all have.
        "units half_kg",
        "units quarter_kg",
    ];

    /// What one list can mean, apart from how it says it: forms of one word and local multiples count as one.
    fn meanings(text: &str) -> BTreeSet<String> {
        let file: File = toml::from_str(text).expect("built-in lists are right");
        let plain = |section: &str, key: &str| {
            let key = key.trim_end_matches("_many").trim_end_matches("_letter");
            let key = key.split_once("_of_").map_or(key, |(_, unit)| unit);
            match (section, key) {
                ("days", "either_1") => "days yesterday".to_owned(),
                ("days", "either_2") => "days -2".to_owned(),
                _ => format!("{section} {key}"),
            }
        };
        let sections = [
            ("units", &file.units),
            ("measures", &file.measures),
            ("feeds", &file.feeds),
            ("signs", &file.signs),
            ("levels", &file.levels),
            ("days", &file.days),
            ("cues", &file.cues),
            ("controls", &file.controls),
            ("staff", &file.staff),
        ];
        let all = sections.iter().flat_map(|(section, keys)| keys.keys().map(|key| plain(section, key)));
        all.filter(|meaning| !OWN_WAYS.contains(&meaning.as_str())).collect()
    }

    #[test]
    fn every_language_can_say_what_any_other_can() {
        let lists: Vec<(String, BTreeSet<String>)> =
            crate::text::lexicon::built_in_files().map(|(code, text)| (code, meanings(text))).collect();
        assert!(lists.len() >= 6, "the built-in languages");
        let all: BTreeSet<&String> = lists.iter().flat_map(|(_, meanings)| meanings).collect();
        for (code, have) in &lists {
            let missing: Vec<_> = all.iter().filter(|meaning| !have.contains(**meaning)).collect();
            assert!(missing.is_empty(), "{code}/words.toml has no words for {missing:?}");
        }
    }

    /// A phrase that only ached would hide the sign that it is.
    #[test]
    fn what_may_ache_in_words_is_listed_as_unwell_too() {
        for (code, text) in crate::text::lexicon::built_in_files() {
            let list = WordList::parse(&code, text).expect("built-in lists are right");
            let of = |which: &dyn Fn(&Meaning) -> bool| -> BTreeSet<&str> {
                list.phrases().filter(|(_, meaning)| which(meaning)).map(|(phrase, _)| phrase).collect()
            };
            let (ache, unwell) = (of(&|m| m.cues.has(Cue::Ache)), of(&|m| m.sign == Some(Sign::Unwell)));
            assert!(!ache.is_empty() && ache.is_subset(&unwell), "{code}: {:?}", ache.difference(&unwell));
        }
    }

    #[test]
    fn every_language_names_those_that_we_write() {
        let written: BTreeSet<String> = folders(None)
            .expect("the built-in languages")
            .into_iter()
            .filter(|folder| !folder.replies.is_empty() && !folder.code.contains('-'))
            .map(|folder| folder.code)
            .collect();
        for (code, text) in crate::text::lexicon::built_in_files() {
            let list = WordList::parse(&code, text).expect("built-in lists are right");
            let missing: Vec<_> = written.iter().filter(|lang| !list.languages.contains(lang)).collect();
            assert!(missing.is_empty(), "{code}/words.toml names no {missing:?}");
        }
    }
}
