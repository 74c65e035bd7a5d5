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
        if let Some(replies) = dir.get_file(dir.path().join("replies.ftl")).and_then(|file| file.contents_utf8()) {
            folders.insert(code.clone(), Folder { code, replies: replies.to_owned() });
        }
    }
    if let Some(more) = more {
        let unreadable = |path: &Path| {
            let path = path.to_owned();
            move |why| LangError::Unreadable { path, why }
        };
        for entry in std::fs::read_dir(more).map_err(unreadable(more))? {
            let file = entry.map_err(unreadable(more))?.path().join("replies.ftl");
            let code = file.parent().and_then(Path::file_name).map(|name| name.to_string_lossy().into_owned());
            if let (true, Some(code)) = (file.is_file(), code) {
                let replies = std::fs::read_to_string(&file).map_err(unreadable(&file))?;
                folders.insert(code.clone(), Folder { code, replies });
            }
        }
    }
    Ok(folders.into_values().collect())
}
