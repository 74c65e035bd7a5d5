//! The language folders: `bot/lang/xx` built in, and any more from a folder named at start.
//!
//! Gives what we say in each language as text; `reply` reads it. What people say, `words.toml`, is read by `text`.

use include_dir::{Dir, include_dir};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

static BUILT_IN: Dir = include_dir!("$CARGO_MANIFEST_DIR/lang");

/// One language's sentences.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Folder {
    /// ISO 639-1 code: the folder's name.
    pub code: String,
    /// What we write: `replies.ftl`.
    pub replies: String,
}

#[derive(Debug, thiserror::Error)]
pub enum LangError {
    #[error("cannot read {path}: {why}; each language folder needs a replies.ftl")]
    Unreadable { path: PathBuf, why: std::io::Error },
    #[error("language folder {code} has no {file}")]
    Missing { code: String, file: &'static str },
    #[error("{code}/{file}: {why}")]
    Wrong { code: String, file: &'static str, why: String },
}

/// Every language, by code: the built-in ones, with those in `more` added or put in their place.
pub fn folders(more: Option<&Path>) -> Result<Vec<Folder>, LangError> {
    let mut folders = BTreeMap::new();
    for dir in BUILT_IN.dirs() {
        let code = dir.path().to_string_lossy().into_owned();
        let file = |file: &'static str| {
            dir.get_file(dir.path().join(file))
                .and_then(|found| found.contents_utf8())
                .map(str::to_owned)
                .ok_or_else(|| LangError::Missing { code: code.clone(), file })
        };
        let folder = Folder { code: code.clone(), replies: file("replies.ftl")? };
        folders.insert(code.clone(), folder);
    }
    if let Some(more) = more {
        let unreadable = |path: &Path| {
            let path = path.to_owned();
            move |why| LangError::Unreadable { path, why }
        };
        for entry in std::fs::read_dir(more).map_err(unreadable(more))? {
            let dir = entry.map_err(unreadable(more))?.path();
            if !dir.is_dir() {
                continue;
            }
            let code = dir.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
            let read = |file: &str| std::fs::read_to_string(dir.join(file)).map_err(unreadable(&dir.join(file)));
            let folder = Folder { code: code.clone(), replies: read("replies.ftl")? };
            folders.insert(code, folder);
        }
    }
    Ok(folders.into_values().collect())
}
