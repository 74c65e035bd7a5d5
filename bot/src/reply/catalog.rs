//! The sentences of every language, by message id (Fluent files `bot/lang/xx/replies.ftl` and `pages.ftl`).
//!
//! Takes an id and its values; gives the sentence. Never decides what to say.

use crate::lang::{Folder, LangError, in_latin};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::collections::{BTreeMap, BTreeSet};

/// The language that every message is sure to exist in.
pub const FALLBACK: &str = "en";

pub struct Catalog {
    languages: BTreeMap<String, FluentBundle<FluentResource>>,
}

impl std::fmt::Debug for Catalog {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_list().entries(self.languages.keys()).finish()
    }
}

/// Values for a sentence's places.
pub type Values<'a> = &'a [(&'static str, Value)];

/// What can stand in a sentence's place.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    Text(String),
    Number(f64),
}

impl From<String> for Value {
    fn from(text: String) -> Self {
        Value::Text(text)
    }
}
impl From<&str> for Value {
    fn from(text: &str) -> Self {
        Value::Text(text.to_owned())
    }
}
impl From<f64> for Value {
    fn from(number: f64) -> Self {
        Value::Number(number)
    }
}
impl From<i32> for Value {
    fn from(number: i32) -> Self {
        Value::Number(f64::from(number))
    }
}
impl From<u32> for Value {
    fn from(number: u32) -> Self {
        Value::Number(f64::from(number))
    }
}

impl Catalog {
    /// Errors: a file that is not Fluent, or names no language.
    pub fn new(folders: &[Folder]) -> Result<Catalog, LangError> {
        let mut languages = BTreeMap::new();
        for folder in folders {
            let code = folder.code.parse::<unic_langid::LanguageIdentifier>().map_err(|error| {
                let why = error.to_string();
                LangError::Wrong { code: folder.code.clone(), file: "replies.ftl", why }
            })?;
            let mut bundle = FluentBundle::new_concurrent(vec![code]);
            bundle.set_use_isolating(false);
            for (file, sentences) in [("replies.ftl", &folder.replies), ("pages.ftl", &folder.pages)] {
                let wrong =
                    |why: Vec<String>| LangError::Wrong { code: folder.code.clone(), file, why: why.join("; ") };
                let resource = FluentResource::try_new(sentences.clone())
                    .map_err(|(_, errors)| wrong(errors.iter().map(ToString::to_string).collect()))?;
                bundle
                    .add_resource(resource)
                    .map_err(|errors| wrong(errors.iter().map(ToString::to_string).collect()))?;
            }
            languages.insert(folder.code.clone(), bundle);
        }
        Ok(Catalog { languages })
    }

    pub fn speaks(&self, lang: &str) -> bool {
        self.languages.contains_key(lang)
    }

    /// Whether the language itself has the sentence.
    pub fn has(&self, lang: &str, id: &str) -> bool {
        self.languages.get(lang).is_some_and(|bundle| bundle.has_message(id))
    }

    /// Each language once, in however many scripts we write it.
    pub fn languages(&self) -> impl Iterator<Item = &str> {
        self.languages.keys().map(String::as_str).filter(|code| !code.contains('-'))
    }

    /// The key of the sentences in the script they write, where the language has them in Latin letters too.
    pub fn written(&self, lang: &str, latin_script: bool) -> &str {
        let key_of = |code: &str| self.languages.get_key_value(code).map(|(code, _)| code.as_str());
        let latin = latin_script.then(|| key_of(&in_latin(lang))).flatten();
        latin.or_else(|| key_of(lang)).unwrap_or(FALLBACK)
    }

    /// The sentence, in the language asked for, else in the one that has them all.
    pub fn say(&self, lang: &str, id: &str, values: Values) -> String {
        self.try_say(lang, id, values).or_else(|| self.try_say(FALLBACK, id, values)).unwrap_or_default()
    }

    /// The sentence, if the language has it.
    pub fn try_say(&self, lang: &str, id: &str, values: Values) -> Option<String> {
        let bundle = self.languages.get(lang)?;
        let pattern = bundle.get_message(id)?.value()?;
        let mut args = FluentArgs::new();
        for (name, value) in values {
            match value {
                Value::Text(text) => args.set(*name, FluentValue::from(text.as_str())),
                Value::Number(number) => args.set(*name, FluentValue::from(*number)),
            }
        }
        let mut errors = vec![];
        let said = bundle.format_pattern(pattern, Some(&args), &mut errors);
        errors.is_empty().then(|| said.into_owned())
    }
}

/// The message ids of a language's file.
pub fn ids(replies: &str) -> BTreeSet<&str> {
    let starts = |line: &&str| line.starts_with(|c: char| c.is_ascii_lowercase());
    replies.lines().filter(starts).filter_map(|line| Some(line.split_once(" =")?.0)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lang::folders;
    use crate::reply::compose::Room;
    use crate::reply::samples::longest;
    use crate::reply::segments::{Encoding, size};
    use crate::reply::word::Voice;

    /// A language without replies is answered in English; one with some must have all.
    #[test]
    fn every_language_has_every_message() {
        let folders = folders(None).expect("the built-in languages");
        let english = folders.iter().find(|folder| folder.code == FALLBACK).expect("English");
        for folder in folders.iter().filter(|folder| !folder.replies.is_empty()) {
            let (want, have) = (ids(&english.replies), ids(&folder.replies));
            let missing: Vec<_> = want.difference(&have).collect();
            let strange: Vec<_> = have.difference(&want).collect();
            assert!(missing.is_empty() && strange.is_empty(), "{}: no {missing:?}, too much {strange:?}", folder.code);
        }
    }

    /// A language without pages is shown the English ones; one with some must have all, with the same places in them.
    #[test]
    fn every_language_with_pages_has_every_message_of_them() {
        let place = regex::Regex::new(r"\$([a-z_]+)").expect("a pattern");
        let folders = folders(None).expect("the built-in languages");
        let places = |pages: &str| -> BTreeMap<String, BTreeSet<String>> {
            let mut of: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
            let mut id = String::new();
            for line in pages.lines() {
                if let Some((name, _)) =
                    line.split_once(" =").filter(|_| line.starts_with(|c: char| c.is_ascii_lowercase()))
                {
                    id = name.to_owned();
                }
                let found = place.captures_iter(line).map(|found| found[1].to_owned());
                of.entry(id.clone()).or_default().extend(found);
            }
            of
        };
        let english = folders.iter().find(|folder| folder.code == FALLBACK).map(|folder| places(&folder.pages));
        let english = english.expect("English");
        let with_pages: Vec<_> = folders.iter().filter(|folder| !folder.pages.is_empty()).collect();
        assert!(with_pages.len() >= 6, "{with_pages:?}");
        for folder in with_pages {
            let have = places(&folder.pages);
            let missing: Vec<_> = english.keys().filter(|id| !have.contains_key(*id)).collect();
            let strange: Vec<_> = have.keys().filter(|id| !english.contains_key(*id)).collect();
            assert!(missing.is_empty() && strange.is_empty(), "{}: no {missing:?}, too much {strange:?}", folder.code);
            for (id, of) in have {
                let unknown: Vec<_> = of.difference(&english[&id]).collect();
                assert!(unknown.is_empty(), "{} {id}: nothing fills {unknown:?}", folder.code);
            }
        }
    }

    /// Ids stand as literals in templates and modules, `"need-{` for a family of them, or in another message.
    #[test]
    fn no_message_of_the_pages_is_unused_and_none_is_used_that_is_not_there() {
        let here = std::path::Path::new(env!("CARGO_MANIFEST_DIR"));
        let mut sources = vec![];
        let mut folders_left = vec![here.join("templates"), here.join("src")];
        while let Some(folder) = folders_left.pop() {
            for entry in std::fs::read_dir(folder).expect("readable") {
                let path = entry.expect("readable").path();
                if path.is_dir() {
                    folders_left.push(path)
                } else {
                    sources.push(std::fs::read_to_string(path).expect("text"))
                }
            }
        }
        let folders = folders(None).expect("the built-in languages");
        let english = folders.iter().find(|folder| folder.code == FALLBACK).expect("English");
        let source = sources.join("\n");
        let pages = ids(&english.pages);
        let is_used = |id: &&str| {
            let family = id.match_indices('-').any(|(at, _)| source.contains(&format!("\"{}{{", &id[..=at])));
            family || source.contains(&format!("\"{id}\"")) || english.pages.contains(&format!("{{ {id} }}"))
        };
        let unused: Vec<_> = pages.iter().filter(|id| !is_used(id)).collect();
        assert!(unused.is_empty(), "{unused:?}");
        let said = regex::Regex::new(
            r#"(?:tongue\.(?:say|count|with|of_name)|Broken::form|Broken::Form|Sentence::with)\("([^"{]+)""#,
        );
        let said = said.expect("a pattern");
        let replies = ids(&english.replies);
        let used: BTreeSet<&str> =
            said.captures_iter(&source).filter_map(|found| Some(found.get(1)?.as_str())).collect();
        let strange: Vec<_> = used.iter().filter(|id| !pages.contains(*id) && !replies.contains(*id)).collect();
        assert!(used.len() > 20 && strange.is_empty(), "{strange:?}");
    }

    /// Whatever stands alone in a text fits one segment; the first hello and help have their own room.
    #[test]
    fn every_message_is_texted_in_one_segment_of_the_cheap_alphabet() {
        let folders = folders(None).expect("the built-in languages");
        let catalog = Catalog::new(&folders).expect("sound sentences");
        let (values, mut wrong) = (longest(), vec![]);
        for folder in folders.iter().filter(|folder| !folder.replies.is_empty()) {
            for id in ids(&folder.replies) {
                let Some(text) = catalog.try_say(&folder.code, id, &values) else {
                    wrong.push(format!("{} {id}: a place of it has no sample here", folder.code));
                    continue;
                };
                let size = size(&text);
                let own_letters = !Voice::in_lang(&catalog, &folder.code).latin();
                if !own_letters && size.encoding != Encoding::Gsm7 {
                    wrong.push(format!("{} {id}: not the cheap alphabet: {text}", folder.code));
                }
                let most = if matches!(id, "hello" | "help" | "staff-history") { 2 } else { 1 };
                let most = if own_letters { 2 * most } else { most };
                if size.segments > most {
                    wrong.push(format!("{} {id}: {} segments: {text}", folder.code, size.segments));
                }
            }
        }
        assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    }

    /// Neither is ever left out, so both must fit beside each other.
    #[test]
    fn a_step_and_what_to_feed_fit_one_text() {
        let folders = folders(None).expect("the built-in languages");
        let catalog = Catalog::new(&folders).expect("sound sentences");
        let mut wrong = vec![];
        for folder in folders.iter().filter(|folder| !folder.replies.is_empty()) {
            let code = &folder.code;
            let steps =
                ids(&folder.replies).into_iter().filter(|id| id.starts_with("sign-") || id.starts_with("cause-"));
            for (step, feeding) in steps.flat_map(|step| ["do-hold", "do-hold-tomorrow"].map(|feeding| (step, feeding)))
            {
                let text = [(step, &[][..]), (feeding, &[("days", 14.0.into())][..])];
                let text = text.map(|(id, values)| catalog.say(code, id, values)).join(" ");
                if !Room::USUAL.fits(&text) {
                    wrong.push(format!("{code} {step}: {text}"));
                }
            }
        }
        assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    }
}
