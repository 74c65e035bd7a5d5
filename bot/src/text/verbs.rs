//! Verb forms: languages that write who does it, when and to what before a verb, all in one word.
//!
//! Takes a word and the language's beginnings of verbs; gives the other forms of the same verb, nearest first: "limevuja"
//! is "imevuja" said of another kind of thing, "tumeiweka" is "tumeweka". So a list need not hold every form of a verb,
//! and a misspelling is looked for in the verb and not in what stands before it.

use super::fuzzy::{LONGEST, allowance, distance};
use serde::Deserialize;

/// What may stand before a verb, in this order.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Verbs {
    /// People, things, and either of them that do not.
    pub kinds: Vec<Kind>,
    /// To what, and "which".
    pub objects: Vec<String>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Kind {
    /// Who or what does it.
    pub who: Vec<String>,
    /// When: (written, another way to say it; the same where there is none).
    pub tenses: Vec<(String, String)>,
}

/// Fewer letters are no verb to tell by.
const SHORTEST: usize = 3;

struct Form<'a> {
    kind: &'a Kind,
    who: &'a str,
    tense: &'a (String, String),
    stem: &'a str,
}

impl Verbs {
    /// Every way to part `word` into who, when and the verb.
    fn parted<'a>(&'a self, word: &'a str) -> impl Iterator<Item = Form<'a>> {
        let whoever = self.kinds.iter().flat_map(|kind| kind.who.iter().map(move |who| (kind, who)));
        whoever.flat_map(move |(kind, who)| {
            let rest = word.strip_prefix(who.as_str());
            kind.tenses.iter().filter_map(move |tense| {
                let stem = rest?.strip_prefix(tense.0.as_str())?;
                (stem.len() >= SHORTEST).then_some(Form { kind, who, tense, stem })
            })
        })
    }

    /// The same verb done by others of the same kind.
    pub fn by_others(&self, word: &str) -> Vec<String> {
        let others = |form: Form| -> Vec<String> {
            let others = form.kind.who.iter().filter(|other| *other != form.who);
            others.map(|other| format!("{other}{}{}", form.tense.0, form.stem)).collect()
        };
        self.parted(word).flat_map(others).collect()
    }

    /// The same verb by anybody of the kind, in the tense's other way, without its object.
    pub fn nearest(&self, word: &str) -> Vec<String> {
        let mut all = self.by_others(word);
        for form in self.parted(word) {
            let bare = self.objects.iter().filter_map(|object| form.stem.strip_prefix(object.as_str()));
            let stems = std::iter::once(form.stem).chain(bare.filter(|stem| stem.len() >= SHORTEST));
            for stem in stems {
                for tense in [&form.tense.0, &form.tense.1] {
                    let whoever = std::iter::once(form.who).chain(form.kind.who.iter().map(String::as_str));
                    all.extend(whoever.map(|who| format!("{who}{tense}{stem}")));
                }
            }
        }
        all
    }

    /// Whether `word` may be a slip for `meant`: where both are verbs, the verbs themselves have to be near.
    pub fn may_be(&self, word: &str, meant: &str) -> bool {
        let mut verbs = self.parted(word).peekable();
        if verbs.peek().is_none() {
            return true;
        }
        let letters = |word: &str| word.chars().take(LONGEST).collect::<Vec<char>>();
        let others: Vec<(&Kind, Vec<char>)> = self.parted(meant).map(|form| (form.kind, letters(form.stem))).collect();
        let near = |form: &Form, other: &[char]| {
            let stem = letters(form.stem);
            distance(&stem, other) <= allowance(stem.len().max(4))
        };
        others.is_empty()
            || verbs.any(|form| others.iter().any(|(kind, other)| std::ptr::eq(*kind, form.kind) && near(&form, other)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_verb_is_found_in_its_other_forms() {
        let of = |all: &[&str]| all.iter().map(|&s| s.to_owned()).collect::<Vec<String>>();
        let tenses = vec![("me".to_owned(), "me".to_owned()), ("mesha".to_owned(), "me".to_owned())];
        let kind = |who: &[&str]| Kind { who: of(who), tenses: tenses.clone() };
        let kinds = vec![kind(&["ni", "tu", "a"]), kind(&["i", "li", "u"])];
        let verbs = Verbs { kinds, objects: of(&["i", "li"]) };
        assert!(verbs.by_others("limevuja").contains(&"imevuja".to_owned()));
        assert!(verbs.nearest("tumeiweka").contains(&"nimeweka".to_owned()));
        assert!(verbs.nearest("imeshajaa").contains(&"umejaa".to_owned()));
        assert!(verbs.by_others("ndoo").is_empty());
        assert!(verbs.may_be("nimewka", "nimeweka") && !verbs.may_be("nimeshona", "nimechoma"));
    }
}
