//! Lexicons: one language's word list made ready for matching.
//!
//! Takes `words.toml` of each language, built in or from a folder; gives the meaning of a run of words, the nearest
//! listed word of a misspelt one, and the language's habits of order. Never looks at a whole text.

use super::fold::{fold, unstretched};
use super::fuzzy::Fuzzy;
use super::notions::{Cue, Cues, Meaning, OF_PERIL};
use super::ordinary::{Ordinary, alike};
use super::script;
use super::steps::Steps;
use super::vowels::Vowelless;
use super::wordlist::{Habits, WordList};
use include_dir::{Dir, include_dir};
use std::collections::{BTreeMap, HashMap, HashSet};
use std::path::Path;
use std::sync::{Arc, OnceLock};

static BUILT_IN: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/lang");

/// A language's words could not be taken in.
#[derive(Debug, thiserror::Error)]
pub enum LexiconError {
    #[error("{path} cannot be read: {source}; give a folder that holds xx/words.toml for each language")]
    Unreadable { path: String, source: std::io::Error },
    #[error("{language}/words.toml: {reason}")]
    Wrong { language: String, reason: String },
}

/// Every language that can be read. Cheap to clone.
#[derive(Debug, Clone)]
pub struct Lexicons {
    languages: Arc<[Lexicon]>,
}

impl Lexicons {
    /// The languages compiled in, made ready once.
    pub fn built_in() -> Lexicons {
        static ONCE: OnceLock<Lexicons> = OnceLock::new();
        ONCE.get_or_init(|| {
            Lexicons::build(built_in_lists().expect("built-in word lists are tested"))
                .expect("built-in word lists are tested")
        })
        .clone()
    }

    /// The languages compiled in, with those of `folder` (one folder a language, `words.toml` in each) added; a
    /// language of the same code is replaced.
    pub fn with_folder(folder: &Path) -> Result<Lexicons, LexiconError> {
        let unreadable = |path: &Path| {
            let path = path.display().to_string();
            move |source| LexiconError::Unreadable { path, source }
        };
        let mut lists = built_in_lists()?;
        for entry in std::fs::read_dir(folder).map_err(unreadable(folder))? {
            let path = entry.map_err(unreadable(folder))?.path();
            let file = path.join("words.toml");
            let (true, Some(code)) = (file.is_file(), path.file_name().and_then(|name| name.to_str())) else {
                continue;
            };
            let text = std::fs::read_to_string(&file).map_err(unreadable(&file))?;
            let mut list = WordList::parse(code, &text)?;
            let file = path.join("ordinary.txt");
            if file.is_file() {
                list.ordinary = Ordinary::parse(&std::fs::read_to_string(&file).map_err(unreadable(&file))?);
            }
            lists.insert(code.to_owned(), list);
        }
        Lexicons::build(lists)
    }

    fn build(lists: BTreeMap<String, WordList>) -> Result<Lexicons, LexiconError> {
        let languages: Result<Vec<Lexicon>, LexiconError> =
            lists.values().map(|list| Lexicon::build(list, &lists)).collect();
        Ok(Lexicons { languages: languages?.into() })
    }

    pub fn all(&self) -> &[Lexicon] {
        &self.languages
    }

    pub fn get(&self, code: &str) -> Option<&Lexicon> {
        self.languages.iter().find(|language| language.code == code)
    }
}

fn built_in_lists() -> Result<BTreeMap<String, WordList>, LexiconError> {
    let mut lists = BTreeMap::new();
    for (code, text) in built_in_files() {
        let mut list = WordList::parse(&code, text)?;
        let ordinary = BUILT_IN.get_file(format!("{code}/ordinary.txt")).and_then(|file| file.contents_utf8());
        list.ordinary = Ordinary::parse(ordinary.unwrap_or_default());
        lists.insert(code, list);
    }
    Ok(lists)
}

/// The word lists compiled in: code and text.
pub(super) fn built_in_files() -> impl Iterator<Item = (String, &'static str)> {
    BUILT_IN.dirs().filter_map(|folder| {
        let file = folder.get_file(folder.path().join("words.toml"))?;
        let text = file.contents_utf8().expect("a built-in list is UTF-8, as tested");
        Some((folder.path().to_string_lossy().into_owned(), text))
    })
}

/// A word of the lexicon.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WordId(u32);

/// Other words that sound like one.
pub type Twins = [Option<WordId>; 8];

/// One language, ready.
#[derive(Debug)]
pub struct Lexicon {
    pub code: String,
    pub habits: Habits,
    /// Codes of languages that words name.
    pub languages: Vec<String>,
    /// What field workers order: phrase and the order's id, the longest first.
    pub staff: Vec<(String, String)>,
    words: HashMap<Box<str>, u32>,
    accented: HashSet<String>,
    /// By word: whether it is of this language, not borrowed.
    own: Vec<bool>,
    steps: Steps,
    /// By node: where its meaning stands in `said`; 0 where it has none. Phrases of one pattern share theirs.
    meanings: Vec<u32>,
    said: Vec<Meaning>,
    fuzzy: Fuzzy,
    ordinary: Ordinary,
    vowelless: Vowelless,
    /// Words by how they sound: those in Latin letters, and those in another script that is read.
    sounds: [HashMap<Box<str>, Vec<u32>>; 2],
}

impl Lexicon {
    fn build(list: &WordList, all: &BTreeMap<String, WordList>) -> Result<Lexicon, LexiconError> {
        let mut made = Lexicon {
            code: list.code.clone(),
            habits: list.habits.clone(),
            languages: list.languages.clone(),
            staff: list.staff.clone(),
            words: HashMap::new(),
            accented: list.accented.clone(),
            own: Vec::new(),
            steps: Steps::default(),
            meanings: vec![0],
            said: vec![Meaning::default()],
            fuzzy: Fuzzy::default(),
            ordinary: list.ordinary.clone(),
            vowelless: Vowelless::default(),
            sounds: Default::default(),
        };
        // By word: whether it helps to mean anything, so that a misspelling may be read as it.
        let mut matters = Vec::new();
        // A short form is its word from the start, so that phrases are the same with either.
        for (typed, meant) in &list.habits.aliases {
            let id = made.number(&fold(meant), true, &mut matters);
            made.words.insert(fold(typed).into_boxed_str(), id);
        }
        let folded = list.habits.aliases.iter().map(|(typed, meant)| (fold(typed), fold(meant)));
        let short: HashSet<String> = folded.filter(|(typed, meant)| typed != meant).map(|(typed, _)| typed).collect();
        for (phrase, meaning) in list.phrases().filter(|(phrase, _)| !short.contains(*phrase)) {
            made.add(phrase, meaning, true, &mut matters);
        }
        for lender in &list.habits.borrows {
            let Some(lender) = all.get(lender) else { continue };
            for (phrase, meaning) in lender.phrases().filter(|(phrase, meaning)| may_be_lent(phrase, meaning)) {
                let own = made.means_already(phrase) || made.is_own(phrase) && meaning.control.is_none();
                if !own && !list.habits.not_borrowed.iter().any(|kept| kept == phrase) {
                    let mut meaning = *meaning;
                    meaning.language = meaning.language.and_then(|at| {
                        let code = lender.languages.get(usize::from(at))?;
                        Some(index_of(&mut made.languages, code))
                    });
                    made.add(phrase, &meaning, false, &mut matters);
                }
            }
        }
        made.steps.pack();
        let tells = |&(word, &id): &(&Box<str>, &u32)| matters[id as usize] && !short.contains(&**word);
        let telling = || made.words.iter().filter(tells).map(|(word, &id)| (id, &**word));
        (made.fuzzy, made.vowelless) = (Fuzzy::new(telling()), Vowelless::new(telling()));
        let mut sounds: [HashMap<Box<str>, Vec<u32>>; 2] = Default::default();
        let mut words: Vec<(&Box<str>, &u32)> = made.words.iter().collect();
        words.sort_by_key(|&(_, &id)| id);
        for (word, &id) in words {
            if matters[id as usize] && word.chars().count() >= 2 {
                sounds[usize::from(script::devanagari(word))]
                    .entry(made.sound(word).into_boxed_str())
                    .or_default()
                    .push(id);
            }
        }
        made.sounds = sounds;
        Ok(made)
    }

    /// The number of a word, a new one for a new word.
    fn number(&mut self, word: &str, own: bool, matters: &mut Vec<bool>) -> u32 {
        let next = self.own.len() as u32;
        let id = *self.words.entry(word.into()).or_insert(next);
        if id == next {
            self.own.push(own);
            matters.push(false);
        }
        id
    }

    fn add(&mut self, phrase: &str, meaning: &Meaning, own: bool, matters: &mut Vec<bool>) {
        const IDLE: Cues =
            OF_PERIL.and(Cue::Other).and(Cue::Chatter).and(Cue::Figure).and(Cue::Burden).and(Cue::Laugh).and(Cue::Ails);
        let means = !meaning.cues.any(&IDLE);
        let mut node = 0_u32;
        for word in phrase.split(' ').filter(|word| !word.is_empty()) {
            let id = self.number(word, own, matters);
            self.own[id as usize] |= own;
            matters[id as usize] |= means;
            let fresh = self.meanings.len() as u32;
            node = self.steps.grow(node, id, fresh);
            if node == fresh {
                self.meanings.push(0);
            }
        }
        if node != 0 {
            let mut whole = self.said[self.meanings[node as usize] as usize];
            whole.join(meaning);
            if self.said.len() == 1 || self.said.last() != Some(&whole) {
                self.said.push(whole);
            }
            self.meanings[node as usize] = self.said.len() as u32 - 1;
        }
    }

    /// Whether the language says this very phrase. A word of it that means nothing by itself may not be lent a meaning,
    /// but for an order to the bot: STOP is STOP everywhere, even where "stop sms" is said.
    fn means_already(&self, phrase: &str) -> bool {
        let mut node = Some(0);
        for word in phrase.split(' ') {
            let id = self.words.get(word).copied().filter(|&id| self.own[id as usize]);
            node = node.zip(id).and_then(|(node, id)| self.steps.get(node, id));
        }
        node.is_some_and(|node| self.meanings[node as usize] != 0)
    }

    /// The listed word that `folded` is, letter for letter.
    pub fn exact(&self, folded: &str) -> Option<WordId> {
        self.words.get(folded).map(|&id| WordId(id))
    }

    /// "loeuf", "dhuile": the listed word behind a joint of a letter or two, where an apostrophe parts them and was left
    /// out.
    fn elided(&self, folded: &str) -> Option<WordId> {
        let vowel = |word: &str| word.starts_with(['a', 'e', 'i', 'o', 'u', 'h']);
        let parts = (1..=2).filter_map(|cut| folded.split_at_checked(cut));
        let mut words = parts.filter(|(joint, word)| {
            self.habits.apostrophe_splits && word.len() >= 4 && vowel(word) && self.is_own(joint)
        });
        words.find_map(|(_, word)| self.exact(word).filter(|_| self.is_own(word)))
    }

    /// The listed word that `folded` is or was meant to be, and others that it may be within a phrase.
    pub fn word(&self, folded: &str) -> Option<(WordId, Twins)> {
        let alone = |&word: &WordId| self.step(0, word).is_some_and(|node| self.meaning(node).is_some());
        let listed = self.exact(folded).or_else(|| self.elided(folded));
        if let Some(word) = listed.filter(alone) {
            return Some((word, self.twins(folded, word)));
        }
        // A verb that is listed in other forms only, or in this one only as a part of phrases.
        let mut forms: Vec<WordId> = listed.into_iter().chain(self.verb_forms(folded)).collect();
        if let Some(at) = forms.iter().position(alone) {
            forms.swap(0, at);
        }
        if let Some((&first, others)) = forms.split_first()
            && (listed.is_none() || !others.is_empty())
        {
            let mut twins = Twins::default();
            twins.iter_mut().zip(others).for_each(|(twin, &form)| *twin = Some(form));
            return Some((first, twins));
        }
        let word = listed.or_else(|| self.meant(folded))?;
        Some((word, self.twins(folded, word)))
    }

    /// The listed forms of the same verb, done by others, at another time or to another thing.
    fn verb_forms(&self, folded: &str) -> impl Iterator<Item = WordId> {
        let own = self.habits.verbs.nearest(folded).into_iter();
        own.filter(|form| self.is_own(form)).filter_map(|form| self.exact(&form))
    }

    /// Whether `folded` is a word of this very language.
    pub fn is_own(&self, folded: &str) -> bool {
        self.words.get(folded).is_some_and(|&id| self.own[id as usize])
    }

    /// Whether this language spells a word with just these accents, given in lower case.
    pub fn spells(&self, typed: &str) -> bool {
        self.accented.contains(typed)
    }

    /// The listed word that `folded` was meant to be: by sound, stretched letters, or a slip.
    fn meant(&self, folded: &str) -> Option<WordId> {
        if folded.chars().count() < 3 {
            return None;
        }
        for most in [2, 1] {
            if let Some(id) = unstretched(folded, most).and_then(|word| self.exact(&word)) {
                return Some(id);
            }
        }
        let (same, other) = self.sounding(folded);
        let sounded = same.iter().chain(other).next().copied();
        if self.ordinary.has(folded) {
            let near = || self.fuzzy.nearest(folded).filter(|(_, word)| alike(folded, word)).map(|(id, _)| id);
            return sounded.or_else(near).filter(|&id| self.own[id as usize]).map(WordId);
        }
        let near = || self.fuzzy.nearest(folded).filter(|(_, word)| self.habits.verbs.may_be(folded, word));
        sounded.or_else(|| near().map(|(id, _)| id)).or_else(|| self.vowelless.meant(folded)).map(WordId)
    }

    /// The listed words that sound like `folded`, those of its script and those of another: "खिचड़ी" is "khichdi". The vowel
    /// of "bag" has no letter of its own there: "बैग" is it as well.
    fn sounding(&self, folded: &str) -> (&[u32], impl Iterator<Item = &u32>) {
        let devanagari = script::devanagari(folded);
        let sound = self.sound(folded);
        let listed =
            |sound: &str, script: bool| self.sounds[usize::from(script)].get(sound).map_or(&[][..], |words| words);
        let long = folded.chars().count() >= if devanagari { 2 } else { 3 };
        let other = if long { listed(&sound, !devanagari) } else { &[] };
        let open = folded.contains('\u{948}').then(|| self.sound(&folded.replace('\u{948}', "\u{93e}")));
        (listed(&sound, devanagari), other.iter().chain(open.map_or(&[][..], |open| listed(&open, false))))
    }

    /// Other spellings of a listed word and its twins in another script, so that a phrase is the same in any of them. An
    /// ordinary word has none: "kaam" (work) is not "kam" (little).
    fn twins(&self, folded: &str, word: WordId) -> Twins {
        let ordinary = self.step(0, word).and_then(|node| self.meaning(node)).is_some_and(|m| m.cues.has(Cue::Other));
        let mut twins = Twins::default();
        if ordinary {
            return twins;
        }
        const SHORT: usize = 4;
        let (same, other) = self.sounding(folded);
        let same = if folded.chars().count() < SHORT { &[] } else { same };
        let all = same.iter().chain(other).filter(|&&id| id != word.0);
        let verbs = self.habits.verbs.by_others(folded).into_iter().filter(|form| self.is_own(form));
        let verbs = verbs.filter_map(|form| self.exact(&form)).filter(|form| *form != word);
        for (twin, id) in twins.iter_mut().zip(all.map(|&id| WordId(id)).chain(verbs)) {
            *twin = Some(id);
        }
        twins
    }

    /// `folded` with the letters made one that the language's writers mix up.
    fn sound(&self, folded: &str) -> String {
        let mut word = script::latin(folded).unwrap_or_else(|| folded.to_owned());
        for (from, to) in &self.habits.sounds {
            if word.contains(from.as_str()) {
                word = word.replace(from.as_str(), to);
            }
        }
        word
    }

    /// The node after `word` at `node`.
    pub fn step(&self, node: u32, word: WordId) -> Option<u32> {
        self.steps.get(node, word.0)
    }

    /// What the phrase that ends at `node` means.
    pub fn meaning(&self, node: u32) -> Option<&Meaning> {
        let at = self.meanings[node as usize] as usize;
        (at != 0).then(|| &self.said[at])
    }

    /// Every listed phrase of one word, and what it means.
    pub fn single_words(&self) -> impl Iterator<Item = (&str, &Meaning)> {
        self.words.iter().filter_map(|(word, &id)| {
            let node = self.step(0, WordId(id))?;
            Some((&**word, self.meaning(node)?))
        })
    }

    /// What a phrase means that is in the list word for word.
    pub fn look_up(&self, phrase: &str) -> Option<&Meaning> {
        let mut node = 0;
        for word in fold(phrase).split_whitespace() {
            node = self.step(node, self.exact(word)?)?;
        }
        self.meaning(node)
    }
}

fn index_of(list: &mut Vec<String>, item: &str) -> u16 {
    let at = list.iter().position(|have| have == item).unwrap_or_else(|| {
        list.push(item.to_owned());
        list.len() - 1
    });
    at as u16
}

/// Joints of a sentence stay at home; names of things travel.
fn may_be_lent(phrase: &str, meaning: &Meaning) -> bool {
    use super::notions::Cues;
    const HOME: Cues = Cues::of(&[
        Cue::And,
        Cue::Or,
        Cue::But,
        Cue::Of,
        Cue::In,
        Cue::With,
        Cue::To,
        Cue::Is,
        Cue::Was,
        Cue::Only,
        Cue::About,
        Cue::My,
        Cue::Minus,
        Cue::At,
        Cue::Times,
        Cue::TempLetter,
        Cue::Some,
        Cue::If,
        Cue::Again,
    ]);
    phrase.len() > 2
        && !meaning.cues.any(&HOME)
        && !matches!(meaning.number, Some(super::notions::NumberWord::Article))
        && !meaning.letter
        || matches!(meaning.unit, Some(_) if phrase.len() <= 2 && !meaning.letter)
        || meaning.letter
}
