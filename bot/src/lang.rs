//! The language folders: `bot/lang/xx` built in, and any more from a folder named at start.
//!
//! Gives what we say in each language as text; `reply` reads it. What people say, `words.toml`, is read by `text`.

use include_dir::{Dir, include_dir};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

static BUILT_IN: Dir = include_dir!("$CARGO_MANIFEST_DIR/lang");

const REPLIES: &str = "replies.ftl";
/// The same sentences in Latin letters, for a language that is texted in those and in its own.
const IN_LATIN: &str = "latin.ftl";
/// What the staff pages say: a language may do without, and is then shown those of another.
const PAGES: &str = "pages.ftl";

/// The BCP 47 tag of a language written in Latin letters, such as `hi-Latn`.
pub fn in_latin(lang: &str) -> String {
    format!("{lang}-Latn")
}

/// One language's sentences in one script.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Folder {
    /// ISO 639-1 code, the folder's name; for the second script with its tag.
    pub code: String,
    /// What we write: `replies.ftl` or `latin.ftl`.
    pub replies: String,
    /// What the staff pages say: `pages.ftl`; empty where there is none.
    pub pages: String,
}

#[derive(Debug, thiserror::Error)]
pub enum LangError {
    #[error("cannot read {path}: {why}; give a folder that holds xx/replies.ftl and xx/words.toml for each language")]
    Unreadable { path: PathBuf, why: std::io::Error },
    #[error("{code}/{file}: {why}")]
    Wrong { code: String, file: &'static str, why: String },
}

/// Every language we can write, by code: the built-in ones, with those in `more` added or put in their place. A folder
/// without sentences is one we can only read.
pub fn folders(more: Option<&Path>) -> Result<Vec<Folder>, LangError> {
    let mut folders = BTreeMap::new();
    for dir in BUILT_IN.dirs() {
        let code = dir.path().to_string_lossy().into_owned();
        let text = |file| dir.get_file(dir.path().join(file)).and_then(|file| file.contents_utf8()).map(str::to_owned);
        let mut pages = text(PAGES).unwrap_or_default();
        for (file, code) in [(REPLIES, code.clone()), (IN_LATIN, in_latin(&code))] {
            if let Some(replies) = text(file) {
                folders.insert(code.clone(), Folder { code, replies, pages: std::mem::take(&mut pages) });
            }
        }
    }
    if let Some(more) = more {
        let unreadable = |path: &Path| {
            let path = path.to_owned();
            move |why| LangError::Unreadable { path, why }
        };
        for entry in std::fs::read_dir(more).map_err(unreadable(more))? {
            let dir = entry.map_err(unreadable(more))?.path();
            let Some(code) = dir.file_name().map(|name| name.to_string_lossy().into_owned()) else { continue };
            let text = |file: &str| {
                let file = dir.join(file);
                file.is_file().then(|| std::fs::read_to_string(&file).map_err(unreadable(&file))).transpose()
            };
            // Who only puts other replies in place keeps the pages that are built in.
            let built_in = folders.get(&code).map(|folder: &Folder| folder.pages.clone());
            let mut pages = text(PAGES)?.or(built_in).unwrap_or_default();
            for (file, code) in [(REPLIES, code.clone()), (IN_LATIN, in_latin(&code))] {
                if let Some(replies) = text(file)? {
                    folders.insert(code.clone(), Folder { code, replies, pages: std::mem::take(&mut pages) });
                }
            }
        }
    }
    Ok(folders.into_values().collect())
}
