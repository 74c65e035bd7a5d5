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
        for (file, code) in [(REPLIES, code.clone()), (IN_LATIN, in_latin(&code))] {
            if let Some(replies) = dir.get_file(dir.path().join(file)).and_then(|file| file.contents_utf8()) {
                folders.insert(code.clone(), Folder { code, replies: replies.to_owned() });
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
            for (file, code) in [(dir.join(REPLIES), code.clone()), (dir.join(IN_LATIN), in_latin(&code))] {
                if file.is_file() {
                    let replies = std::fs::read_to_string(&file).map_err(unreadable(&file))?;
                    folders.insert(code.clone(), Folder { code, replies });
                }
            }
        }
    }
    Ok(folders.into_values().collect())
}
