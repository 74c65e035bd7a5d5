//! What the bot says, message by message, in one language, with the segments each takes.
//!
//! Takes a language; gives a page. Places in a sentence are filled with plausible values, so that the length is true.

use super::super::access::{Bar, Worker};
use super::super::{Broken, Pages, page};
use super::Choice;
use crate::lang::folders;
use crate::reply::catalog::{FALLBACK, Value, ids};
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
    worker: Bar,
    langs: Vec<Choice>,
    lang: String,
    lang_name: String,
    rows: Vec<Row>,
    long: usize,
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
    let values = samples();
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
    page(&Wording {
        worker: worker.bar(),
        langs: catalog.languages().map(|code| Choice { id: code.into(), name: name(code) }).collect(),
        lang_name: name(&lang),
        lang,
        long: rows.iter().filter(|row| row.segments > 1).count(),
        rows,
    })
}

/// What stands in the places of the sentences, invented.
fn samples() -> Vec<(&'static str, Value)> {
    let text = |name, value: &str| (name, Value::Text(value.to_owned()));
    let number = |name, value| (name, Value::Number(value));
    vec![
        text("amount", "3 kg"),
        text("water", "6 L"),
        text("what", "3 kg, 6 L"),
        text("feed", "..."),
        text("measure", "..."),
        text("name", "Otelo"),
        text("worker", "Asha"),
        text("text", "..."),
        text("said", "..."),
        text("list", "12 Otelo, 15 Lumo"),
        text("number", "112"),
        text("signs", "..."),
        text("id", "12"),
        text("kg", "21"),
        text("verdict", "feed"),
        text("ration", "3"),
        text("olr", "0.8"),
        text("risk", "2"),
        text("ago", "1"),
        text("need", "danger"),
        text("reply", "..."),
        text("item", "3 kg"),
        text("litres", "1000"),
        text("celsius", "27"),
        text("value", "7"),
        text("cm", "10"),
        text("level", "good"),
        text("look", "blue"),
        text("of", "tank"),
        text("sign", "foam"),
        number("minutes", 45.0),
        number("days", 2.0),
        number("count", 4.0),
        number("left", 3.0),
        number("n", 3.0),
        text("reasons", "..."),
        text("languages", "English, Kiswahili"),
    ]
}
