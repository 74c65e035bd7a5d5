//! Rules for all households: numbers to call, words of a district, how long texts are kept.

use super::super::access::Worker;
use super::super::tongue::counted;
use super::super::{Broken, Pages};
use super::whole;
use crate::deed::Did;
use crate::places;
use crate::store::{EMERGENCY, FeedWord, KEEP_TEXTS_DAYS, NEEDS_PIN};
use crate::taught::{Meaning, Taught, WORDS_MOST, already_means, folded};
use axum::Extension;
use axum::extract::{Form, State};
use axum::response::Response;
use bellyful_core::feeds::Feed;
use serde::Deserialize;
use std::sync::Arc;

#[derive(Deserialize)]
pub struct Number {
    country: String,
    number: String,
}

/// Sets the number to call in a country; an empty one gives back the built-in one.
pub async fn emergency(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Form(form): Form<Number>,
) -> Result<Response, Broken> {
    let tongue = pages.tongue(&worker);
    let country = country(&form.country)?;
    let number = form.number.trim();
    if number.len() > 15 || !number.bytes().all(|b| b.is_ascii_digit() || matches!(b, b'+' | b' ' | b'*' | b'#')) {
        return Err(Broken::Form("form-call-digits".into()));
    }
    let (value, said) = match number {
        "" => (None, tongue.with("said-call-built-in", &[("country", country.as_str().into())])),
        number => {
            let values = [("country", country.as_str().into()), ("number", number.into())];
            (Some(number), tongue.with("said-call", &values))
        }
    };
    let name = format!("{EMERGENCY}{country}");
    let deed = Did::SetNumberToCall { country, number: value.map(str::to_owned) }.by(&worker.name);
    pages.store.set(&name, value, &deed, (pages.clock)()).await?;
    pages.mind.teach(Taught::load(&pages.store).await?);
    whole(&pages, &worker, said).await
}

/// A country that there is.
fn country(typed: &str) -> Result<String, Broken> {
    let code = typed.trim().to_uppercase();
    let known = code.len() == 2 && places::time_zone_of(&code).is_some();
    if known { Ok(code) } else { Err(Broken::Form("form-country".into())) }
}

#[derive(Deserialize)]
pub struct Word {
    #[serde(default)]
    remove: Option<i64>,
    #[serde(default)]
    word: String,
    #[serde(default)]
    feed: String,
    #[serde(default)]
    country: String,
    #[serde(default)]
    place: String,
}

const WORD_MOST: usize = 40;

/// Teaches a word of a district for a feed, or takes one away.
pub async fn word(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Form(form): Form<Word>,
) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let tongue = pages.tongue(&worker);
    let said = match form.remove {
        Some(id) => {
            pages.store.remove_feed_word(id, &worker.name, now).await?;
            tongue.say("said-word-off")
        }
        None => {
            let word = read(&pages, &worker, &form)?;
            if pages.store.feed_words().await?.iter().any(|known| {
                folded(&known.word) == folded(&word.word)
                    && known.country == word.country
                    && folded(&known.place) == folded(&word.place)
            }) {
                return Err(Broken::Form("form-word-taught".into()));
            }
            pages.store.add_feed_word(&word, now).await?;
            let place = if word.place.is_empty() { word.country.clone() } else { word.place.clone() };
            {
                let feed = tongue.say(&word.feed_id());
                tongue.with("said-word", &[("place", place.into()), ("word", word.word.into()), ("feed", feed.into())])
            }
        }
    };
    pages.mind.teach(Taught::load(&pages.store).await?);
    whole(&pages, &worker, said).await
}

fn read(pages: &Pages, worker: &Worker, form: &Word) -> Result<FeedWord, Broken> {
    let word = form.word.split_whitespace().collect::<Vec<_>>().join(" ");
    let words = folded(&word);
    let fits = !words.is_empty() && word.chars().count() <= WORD_MOST && words.split(' ').count() <= WORDS_MOST;
    if !fits || words.chars().any(|c| c.is_ascii_digit()) {
        return Err(Broken::form("form-word-shape", [("most", counted(WORDS_MOST))]));
    }
    let tongue = pages.tongue(worker);
    match already_means(&pages.mind, &word) {
        None => {}
        Some(Meaning::Danger) => return Err(Broken::Form("form-word-danger".into())),
        Some(Meaning::Else) => return Err(Broken::Form("form-word-else".into())),
        Some(Meaning::Feed(feed)) => {
            return Err(Broken::form("form-word-known", [("feed", tongue.say(&format!("feed-{feed}")).into())]));
        }
    }
    let feed = Feed::from_id(&form.feed).ok_or_else(|| Broken::Form("form-choose".into()))?;
    let country = country(&form.country)?;
    Ok(FeedWord { id: 0, word, feed, country, place: form.place.trim().to_owned(), staff: worker.name.clone() })
}

#[derive(Deserialize)]
pub struct Keeping {
    days: String,
}

/// Fewer days than this would blank a text while its household still speaks of it. Units: d. Source: our choice.
const KEEP_LEAST: i64 = 30;

/// Sets how long the words of texts are kept.
pub async fn keeping(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Form(form): Form<Keeping>,
) -> Result<Response, Broken> {
    let tongue = pages.tongue(&worker);
    let typed = form.days.trim();
    let days = match typed {
        "" => None,
        typed => Some(
            typed
                .parse::<i64>()
                .ok()
                .filter(|days| (KEEP_LEAST..=36_500).contains(days))
                .ok_or_else(|| Broken::form("form-days", [("least", counted(KEEP_LEAST))]))?,
        ),
    };
    let said = match days {
        Some(days) => tongue.count("said-keep", days),
        None => tongue.say("said-keep-ever"),
    };
    let deed = Did::SetKeeping { days }.by(&worker.name);
    let value = days.map(|days| days.to_string());
    pages.store.set(KEEP_TEXTS_DAYS, value.as_deref(), &deed, (pages.clock)()).await?;
    whole(&pages, &worker, said).await
}

#[derive(Deserialize)]
pub struct Pin {
    needs: String,
}

/// Sets whether field workers need a PIN before they are told of any household by text.
pub async fn pin(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Form(form): Form<Pin>,
) -> Result<Response, Broken> {
    let needs = form.needs == "yes";
    let said = match needs {
        true => "said-pin-all",
        false => "said-pin-own",
    };
    let deed = Did::SetPinNeed { all: needs }.by(&worker.name);
    pages.store.set(NEEDS_PIN, needs.then_some("yes"), &deed, (pages.clock)()).await?;
    let said = pages.tongue(&worker).say(said);
    whole(&pages, &worker, said).await
}
