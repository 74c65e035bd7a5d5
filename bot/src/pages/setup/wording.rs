//! What the bot says, message by message, in one language, with the segments each takes.
//!
//! Takes a language; gives a page. Places in a sentence are filled with the longest plausible values, so that the length is true.

use super::super::access::{Bar, Worker};
use super::super::tongue::counted;
use super::super::{Broken, Pages, Tongue, page};
use super::Choice;
use crate::lang::folders;
use crate::reply::catalog::{FALLBACK, ids};
use crate::reply::samples::longest;
use crate::reply::segments::{plain, size};
use crate::reply::word::Voice;
use askama::Template;
use axum::Extension;
use axum::extract::{Query, State};
use axum::response::Response;
use serde::Deserialize;
use std::sync::Arc;

struct Row {
    id: String,
    text: String,
    letters: usize,
    segments: usize,
    cheap: bool,
}

#[derive(Template)]
#[template(path = "wording.html")]
struct Wording {
    tongue: Tongue,
    worker: Bar,
    langs: Vec<Choice>,
    lang: String,
    lang_name: String,
    rows: Vec<Row>,
    lead: String,
}

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    lang: String,
}

pub async fn wording(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Query(asked): Query<Asked>,
) -> Result<Response, Broken> {
    let catalog = &pages.mind.catalog;
    let lang = if catalog.speaks(&asked.lang) { asked.lang } else { worker.lang.clone() };
    let name = |code: &str| catalog.say(code, "language-name", &[]);
    let english = folders(None).map_err(|error| Broken::Table(error.to_string()))?;
    let english = english.into_iter().find(|folder| folder.code == FALLBACK).map(|folder| folder.replies);
    let english = english.unwrap_or_default();
    let latin = Voice::in_lang(catalog, &lang).latin();
    let values = longest();
    let rows: Vec<Row> = ids(&english)
        .into_iter()
        .map(|id| {
            let text = catalog.say(&lang, id, &values);
            let text = if latin { plain(&text) } else { text };
            let size = size(&text);
            Row {
                id: id.to_owned(),
                letters: text.chars().count(),
                segments: size.segments,
                cheap: size.encoding.id() == "gsm7",
                text,
            }
        })
        .filter(|row| !row.text.is_empty())
        .collect();
    let tongue = pages.tongue(&worker);
    let long = rows.iter().filter(|row| row.segments > 1).count();
    let lead = tongue.with("wording-lead", &[("n", counted(rows.len())), ("long", counted(long))]);
    page(&Wording {
        tongue,
        worker: worker.bar("/setup"),
        langs: catalog.languages().map(|code| Choice { id: code.into(), name: name(code) }).collect(),
        lang_name: name(&lang),
        lang,
        lead,
        rows,
    })
}
