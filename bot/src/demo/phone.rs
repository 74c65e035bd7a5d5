//! The phone on a page: pick a household or start as a new one, text, see the answer as a basic phone shows it.
//!
//! Takes forms; gives pages that work without scripts. Texts go the same way through as any gateway's.

use super::DemoClock;
use super::families::{DAYS, FAMILIES};
use super::history::{Progress, text_in};
use crate::household::Sender;
use crate::mind::Mind;
use crate::pages::{Broken, Tongue, guarded, page, spoken};
use crate::reply::segments::{Encoding, size};
use crate::store::{Said, Store};
use crate::workbench::{work_all, work_lane};
use askama::Template;
use axum::extract::{Form, Query, Request, State};
use axum::http::header;
use axum::middleware::Next;
use axum::response::{Redirect, Response};
use axum::routing::{get, post};
use axum::{Extension, Router};
use chrono::{DateTime, Duration, Utc};
use serde::Deserialize;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use tokio::sync::Mutex;

/// Texts of a conversation that are shown.
const SHOWN: u32 = 60;
/// Longest text a phone sends here: ten segments.
const TEXT_MOST: usize = 1530;

pub struct Phone {
    store: Store,
    mind: Arc<Mind>,
    clock: DemoClock,
    progress: Arc<Progress>,
    sent: AtomicU64,
    /// The clock is moved, and texts are worked, by one call at a time.
    one_at_a_time: Mutex<()>,
}

impl Phone {
    pub fn new(store: Store, mind: Arc<Mind>, clock: DemoClock, progress: Arc<Progress>) -> Phone {
        Phone { store, mind, clock, progress, sent: AtomicU64::new(0), one_at_a_time: Mutex::new(()) }
    }
}

pub fn routes(phone: Arc<Phone>) -> Router {
    let routes = Router::new()
        .route("/try", get(show))
        .route("/try/text", post(text))
        .route("/try/new", post(newcomer))
        .route("/try/day", post(day))
        .route_layer(axum::middleware::from_fn_with_state(phone.clone(), speak))
        .with_state(phone);
    guarded(routes)
}

/// The phone's page speaks the browser's language.
async fn speak(State(phone): State<Arc<Phone>>, mut request: Request, next: Next) -> Response {
    let accepted = request.headers().get(header::ACCEPT_LANGUAGE).and_then(|value| value.to_str().ok());
    let tongue = Tongue::asked_for(&phone.mind, accepted.unwrap_or_default());
    request.extensions_mut().insert(tongue.clone());
    spoken(tongue, next.run(request).await)
}

#[derive(Debug, Deserialize)]
struct Which {
    #[serde(default)]
    phone: String,
}

#[derive(Debug, Deserialize)]
struct Sent {
    phone: String,
    text: String,
}

/// A household on the list.
struct Entry {
    name: &'static str,
    number: &'static str,
    days: i32,
    whole: bool,
    chosen: bool,
}

impl Entry {
    fn day_of(&self, tongue: &Tongue, days: &i32) -> String {
        tongue.with("try-day-of", &[("day", self.days.into()), ("days", (*days).into())])
    }
}

/// A text on the phone's screen.
struct Bubble {
    ours: bool,
    when: String,
    text: String,
    kind: String,
    note: String,
}

#[derive(Template)]
#[template(path = "try.html")]
struct Screen {
    tongue: Tongue,
    today: String,
    entries: Vec<Entry>,
    days: i32,
    percent: i32,
    filling: bool,
    phone: String,
    name: String,
    bubbles: Vec<Bubble>,
    text_most: usize,
}

async fn show(
    State(phone): State<Arc<Phone>>,
    Extension(tongue): Extension<Tongue>,
    Query(which): Query<Which>,
) -> Result<Response, Broken> {
    let chosen = FAMILIES.iter().position(|family| family.number == which.phone);
    let bubbles = match which.phone.is_empty() {
        true => vec![],
        false => {
            let household = match phone.store.sender(&which.phone).await? {
                Sender::Family { household, .. } => household,
                _ => 0,
            };
            let said = phone.store.story(household, &which.phone, SHOWN).await?;
            said.into_iter().filter(|said| said.number == which.phone).map(|said| bubble(&tongue, said)).collect()
        }
    };
    let entries = FAMILIES.iter().enumerate().map(|(n, family)| Entry {
        name: family.name,
        number: family.number,
        days: phone.progress.of(n),
        whole: phone.progress.whole(n),
        chosen: chosen == Some(n),
    });
    let now = phone.clock.now();
    let filling = !phone.progress.all_whole();
    let screen = Screen {
        today: format!("{}, {}", tongue.full_date(now.date_naive()), now.format("%H:%M")),
        entries: entries.collect(),
        days: DAYS,
        percent: phone.progress.percent(),
        filling,
        name: chosen.map_or_else(|| tongue.say("try-new-family"), |n| FAMILIES[n].name.to_owned()),
        phone: which.phone.clone(),
        bubbles,
        text_most: TEXT_MOST,
        tongue,
    };
    let mut response = page(&screen)?;
    if filling && which.phone.is_empty() {
        response.headers_mut().insert("refresh", "3".parse().expect("a plain value"));
    }
    Ok(response)
}

fn bubble(tongue: &Tongue, said: Said) -> Bubble {
    let size = size(&said.text);
    let letters = said.text.chars().count();
    let alphabet = if size.encoding == Encoding::Gsm7 { "GSM-7" } else { "UCS-2" };
    let [segments, letters] =
        [("segments", size.segments), ("wording-letters", letters)].map(|(id, n)| tongue.count(id, n));
    Bubble {
        ours: said.ours,
        when: tongue.moment(said.at),
        note: format!("{segments}, {letters}, {alphabet}"),
        kind: said.kind.unwrap_or_default(),
        text: said.text,
    }
}

fn back_to(number: &str) -> Redirect {
    let query = form_urlencoded::Serializer::new(String::new()).append_pair("phone", number).finish();
    Redirect::to(&format!("/try?{query}#end"))
}

async fn text(State(phone): State<Arc<Phone>>, Form(sent): Form<Sent>) -> Result<Redirect, Broken> {
    let text: String = sent.text.trim().chars().take(TEXT_MOST).collect();
    let filled = FAMILIES.iter().position(|family| family.number == sent.phone).is_none_or(|n| phone.progress.whole(n));
    if text.is_empty() || !plausible(&sent.phone) || !filled {
        return Ok(back_to(&sent.phone));
    }
    let _one = phone.one_at_a_time.lock().await;
    let at = phone.clock.now() + Duration::seconds(30);
    phone.clock.set(at);
    let id = format!("t{}", phone.sent.fetch_add(1, Ordering::Relaxed));
    text_in(&phone.store, &phone.mind, &sent.phone, &id, &text, at).await?;
    work_lane(&phone.store, &phone.mind, &sent.phone, at).await?;
    Ok(back_to(&sent.phone))
}

/// A number as phones have it.
fn plausible(number: &str) -> bool {
    number.strip_prefix('+').is_some_and(|digits| digits.len() <= 15 && digits.bytes().all(|b| b.is_ascii_digit()))
}

async fn newcomer(State(_): State<Arc<Phone>>) -> Redirect {
    back_to(&format!("+9990001{:05}", rand::random_range(0..100_000)))
}

/// A day goes by: what falls due in it is done in its order.
async fn day(State(phone): State<Arc<Phone>>, Form(which): Form<Which>) -> Result<Redirect, Broken> {
    if phone.progress.all_whole() {
        let _one = phone.one_at_a_time.lock().await;
        let until = next_morning(phone.clock.now());
        while let Some(due) = phone.store.next_due().await?.filter(|due| *due <= until) {
            work_all(&phone.store, &phone.mind, due.max(phone.clock.now())).await?;
        }
        phone.clock.set(until);
    }
    Ok(back_to(&which.phone))
}

fn next_morning(now: DateTime<Utc>) -> DateTime<Utc> {
    (now.date_naive() + Duration::days(1))
        .and_hms_opt(6, 0, 0)
        .map_or(now + Duration::days(1), |morning| morning.and_utc())
}
