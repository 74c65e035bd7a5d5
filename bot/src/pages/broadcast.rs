//! Broadcast: one word of staff to many families, looked at before it goes, followed, and stopped half-way.
//!
//! Takes who and what; gives texts for the outbox, each in its family's own morning. Who said STOP or MUTE gets none.

use super::access::{Bar, Worker};
use super::need::{CARE_HOURS, Need};
use super::tongue::counted;
use super::{Broken, Pages, Tongue, page};
use crate::clock::out_of_quiet;
use crate::household::{HouseholdId, Phone, Staff};
use crate::message::{Kind, Outbound, answer_id};
use crate::reply::catalog::{Catalog, Value};
use crate::reply::segments::size;
use crate::staff::word_from;
use crate::store::{self, NewBroadcast, Seen};
use crate::taught::folded;
use askama::Template;
use axum::Extension;
use axum::extract::{Form, Path, State};
use axum::response::{IntoResponse, Redirect, Response};
use chrono::{DateTime, Duration, Utc};
use serde::Deserialize;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// Texts a minute, so that answers to families are not kept waiting behind a broadcast. Source: our choice.
const A_MINUTE: i32 = 60;
/// Longest word of staff.
const TEXT_MOST: usize = 300;

#[derive(Deserialize, Default)]
pub struct Asked {
    #[serde(default)]
    act: String,
    #[serde(default)]
    key: String,
    #[serde(default)]
    text: String,
    #[serde(default)]
    lang: String,
    #[serde(default)]
    place: String,
    #[serde(default)]
    staff: String,
    #[serde(default)]
    need: String,
}

struct Choice {
    id: String,
    name: String,
    chosen: bool,
}

/// What would go, before anything goes.
struct Preview {
    households: usize,
    without: usize,
    /// How many get it and what they cost; when the first and the last go.
    would: String,
    when: String,
    samples: Vec<(String, String, usize)>,
}

#[derive(Template)]
#[template(path = "broadcast.html")]
struct BroadcastPage {
    tongue: Tongue,
    worker: Bar,
    key: String,
    text: String,
    langs: Vec<Choice>,
    places: Vec<Choice>,
    workers: Vec<Choice>,
    needs: Vec<Choice>,
    preview: Option<Preview>,
    past: Vec<Row>,
}

struct Row {
    id: i64,
    when: String,
    staff: String,
    text: String,
    audience: String,
    state: String,
    queued: i64,
    sent: i64,
    not_sent: i64,
    all: i64,
    until: String,
}

impl Row {
    fn to(&self, tongue: &Tongue) -> String {
        tongue.with("cast-to", &self.whom())
    }

    fn progress(&self, tongue: &Tongue) -> String {
        tongue.with("cast-progress", &[("sent", counted(self.sent)), ("all", counted(self.all))])
    }

    fn told(&self, tongue: &Tongue) -> String {
        let [when, staff, audience] = self.whom();
        let (progress, state) = (self.progress(tongue).into(), self.state.as_str().into());
        tongue.with("cast-row", &[when, staff, audience, ("progress", progress), ("state", state)])
    }

    fn whom(&self) -> [(&'static str, Value); 3] {
        [("when", self.when.as_str()), ("staff", self.staff.as_str()), ("audience", self.audience.as_str())]
            .map(|(name, said)| (name, said.into()))
    }
}

#[derive(Template)]
#[template(path = "broadcast_one.html")]
struct One {
    tongue: Tongue,
    worker: Bar,
    row: Row,
}

pub async fn show(State(pages): State<Arc<Pages>>, Extension(worker): Extension<Worker>) -> Result<Response, Broken> {
    form(&pages, &worker, Asked::default(), None).await
}

/// Shows what would go; sends it only when that was looked at.
pub async fn send(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Form(asked): Form<Asked>,
) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let said = asked.text.trim();
    if said.is_empty() || said.chars().count() > TEXT_MOST {
        return Err(Broken::form("form-letters", [("most", counted(TEXT_MOST))]));
    }
    let key = if asked.key.is_empty() { hex::encode(rand::random::<[u8; 8]>()) } else { asked.key.clone() };
    let (meant, without) = meant(&pages, &asked, now).await?;
    let texts = worded(&pages, &worker.name, said, &key, &meant, now)?;
    if asked.act != "send" {
        let preview = preview(&pages, &worker, &meant, &texts, without);
        return form(&pages, &worker, Asked { key, ..asked }, Some(preview)).await;
    }
    if texts.is_empty() {
        return Err(Broken::Form("form-nobody-fits".into()));
    }
    let workers = pages.store.staff().await?;
    let audience = audience(&pages.tongue(&worker), &pages.mind.catalog, &workers, &asked);
    let new = NewBroadcast { key: &key, staff: &worker.name, text: said, audience: &audience, texts: &texts };
    let id = pages.store.add_broadcast(&new, now).await?;
    Ok(Redirect::to(&format!("/broadcast/{id}")).into_response())
}

/// One broadcast, as far as it has come.
pub async fn follow(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
) -> Result<Response, Broken> {
    let broadcast = pages.store.broadcast(id).await?.ok_or(Broken::NoBroadcast(id))?;
    let tongue = pages.tongue(&worker);
    page(&One { worker: worker.bar("/broadcast"), row: row(&tongue, broadcast), tongue })
}

/// Takes back what has not gone yet.
pub async fn stop(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
) -> Result<Redirect, Broken> {
    pages.store.broadcast(id).await?.ok_or(Broken::NoBroadcast(id))?;
    pages.store.stop_broadcast(id, &worker.name, (pages.clock)()).await?;
    Ok(Redirect::to(&format!("/broadcast/{id}")))
}

async fn form(pages: &Pages, worker: &Worker, asked: Asked, preview: Option<Preview>) -> Result<Response, Broken> {
    let seen = pages.store.overview().await?;
    let all_places: BTreeSet<String> = seen.iter().map(|seen| seen.place.clone()).filter(|p| !p.is_empty()).collect();
    let anybody = |name: &str, chosen: bool| Choice { id: String::new(), name: name.to_owned(), chosen };
    let list = |first: Choice, rest: Vec<(String, String)>, chosen: &str| {
        let choice = |(id, name): (String, String)| Choice { chosen: !id.is_empty() && id == chosen, id, name };
        std::iter::once(first).chain(rest.into_iter().map(choice)).collect::<Vec<_>>()
    };
    let (tongue, catalog) = (pages.tongue(worker), &pages.mind.catalog);
    let langs = catalog.languages().map(|code| (code.to_owned(), catalog.say(code, "language-name", &[]))).collect();
    let staff = pages.store.staff().await?.into_iter().map(|staff| (staff.id.to_string(), staff.name)).collect();
    let needs = Need::ALL.iter().map(|need| (need.id().to_owned(), need.label(&tongue))).collect();
    let places = all_places.into_iter().map(|place| (place.clone(), place)).collect();
    let past = pages.store.broadcasts().await?.into_iter().map(|broadcast| row(&tongue, broadcast)).collect();
    page(&BroadcastPage {
        worker: worker.bar("/broadcast"),
        key: asked.key,
        langs: list(anybody(&tongue.say("cast-all-langs"), asked.lang.is_empty()), langs, &asked.lang),
        places: list(anybody(&tongue.say("cast-all-places"), asked.place.is_empty()), places, &asked.place),
        workers: list(anybody(&tongue.say("cast-all-staff"), asked.staff.is_empty()), staff, &asked.staff),
        needs: list(anybody(&tongue.say("cast-all-needs"), asked.need.is_empty()), needs, &asked.need),
        text: asked.text,
        preview,
        past,
        tongue: tongue.clone(),
    })
}

fn row(tongue: &Tongue, broadcast: store::Broadcast) -> Row {
    let store::Broadcast { id, at, staff, text, audience, stopped_at, queued, sent, not_sent, last_at } = broadcast;
    Row {
        id,
        when: tongue.full_moment(at),
        staff,
        text,
        audience,
        state: match (stopped_at, queued) {
            (Some(at), _) => tongue.of_name("cast-stopped", tongue.moment(at)),
            (None, 0) => tongue.say("cast-done"),
            (None, _) => tongue.say("cast-going"),
        },
        queued,
        sent,
        not_sent,
        all: queued + sent + not_sent,
        until: last_at.map_or(String::new(), |at| tongue.moment(at)),
    }
}

/// The filter in words of the one who sends.
fn audience(tongue: &Tongue, catalog: &Catalog, workers: &[Staff], asked: &Asked) -> String {
    let lang = (!asked.lang.is_empty()).then(|| catalog.say(&asked.lang, "language-name", &[]));
    let place = (!asked.place.is_empty()).then(|| asked.place.clone());
    let worker = workers.iter().find(|staff| staff.id.to_string() == asked.staff).map(|staff| staff.name.clone());
    let need = Need::from_id(&asked.need).map(|need| need.label(tongue));
    let said: Vec<String> = [lang, place, worker, need].into_iter().flatten().collect();
    if said.is_empty() { tongue.say("cast-everybody") } else { said.join(", ") }
}

/// The households that fit and may be texted, each with its phone; and how many fit but get nothing.
async fn meant(pages: &Pages, asked: &Asked, now: DateTime<Utc>) -> Result<(Vec<(Seen, Phone)>, usize), Broken> {
    let cares = pages.store.cares(now - Duration::hours(CARE_HOURS)).await?;
    let mut phones = pages.store.first_phones().await?;
    let mut meant = vec![];
    let mut without = 0;
    for seen in pages.store.overview().await? {
        let household = &seen.household;
        let fits = |asked: &str, is: bool| asked.is_empty() || is;
        let need = || super::need::need(household, seen.alarms.len(), cares.get(&household.id), now).0.id();
        let all = fits(&asked.lang, household.lang == asked.lang)
            && fits(&asked.place, folded(&seen.place) == folded(&asked.place))
            && fits(&asked.staff, household.staff_id.is_some_and(|id| id.to_string() == asked.staff))
            && fits(&asked.need, asked.need.is_empty() || need() == asked.need)
            && !household.talk.closed;
        if !all {
            continue;
        }
        match phones.remove(&household.id).filter(|_| !household.talk.muted) {
            Some(phone) => meant.push((seen, phone)),
            None => without += 1,
        }
    }
    Ok((meant, without))
}

/// The texts, spread over time and out of each family's night. Errors: a text that is too long in some language.
fn worded(
    pages: &Pages,
    worker: &str,
    said: &str,
    key: &str,
    meant: &[(Seen, Phone)],
    now: DateTime<Utc>,
) -> Result<Vec<(HouseholdId, Outbound)>, Broken> {
    let mut mornings: BTreeMap<DateTime<Utc>, i32> = BTreeMap::new();
    let apart = |n: i32| Duration::seconds(60) * n / A_MINUTE;
    let text = |(n, (seen, phone)): (usize, &(Seen, Phone))| {
        let household = &seen.household;
        let text =
            word_from(&pages.mind, worker, household, said).ok_or_else(|| Broken::Form("form-text-long".into()))?;
        let turn = now + apart(n as i32);
        let mut not_before = out_of_quiet(turn, &household.time_zone);
        if not_before != turn {
            let before = mornings.entry(not_before).or_default();
            not_before += apart(*before);
            *before += 1;
        }
        let outbound = Outbound {
            id: answer_id("broadcast", key, &household.id.to_string(), 0),
            gateway: phone.gateway.clone(),
            to: phone.number.clone(),
            text,
            kind: Kind::Notice,
            advice: None,
            not_before,
        };
        Ok((household.id, outbound))
    };
    meant.iter().enumerate().map(text).collect()
}

/// Languages whose text is shown before it goes.
const SAMPLES: usize = 8;

fn preview(
    pages: &Pages,
    worker: &Worker,
    meant: &[(Seen, Phone)],
    texts: &[(HouseholdId, Outbound)],
    without: usize,
) -> Preview {
    let tongue = pages.tongue(worker);
    let mut samples: BTreeMap<&str, (String, usize)> = BTreeMap::new();
    for ((seen, _), (_, text)) in meant.iter().zip(texts) {
        samples.entry(&seen.household.lang).or_insert_with(|| (text.text.clone(), size(&text.text).segments));
    }
    let at =
        |at: Option<DateTime<Utc>>| Value::Text(at.map_or(String::new(), |at| format!("{} UTC", tongue.moment(at))));
    let first = at(texts.iter().map(|(_, text)| text.not_before).min());
    let last = at(texts.iter().map(|(_, text)| text.not_before).max());
    let paid: usize = texts.iter().map(|(_, text)| size(&text.text).segments).sum();
    let would = [("n", counted(texts.len())), ("segments", tongue.count("segments", paid).into())];
    Preview {
        households: texts.len(),
        without,
        would: if texts.is_empty() { tongue.say("cast-nobody") } else { tongue.with("cast-would", &would) },
        when: tongue.with("cast-when", &[("first", first), ("last", last)]),
        samples: samples
            .into_iter()
            .take(SAMPLES)
            .map(|(lang, (text, segments))| (pages.mind.catalog.say(lang, "language-name", &[]), text, segments))
            .collect(),
    }
}
