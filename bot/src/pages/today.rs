//! Today: every household in order of need, each with why in one line, a month at a glance, and one click to act.
//!
//! Takes what the store sees of all households; gives the page. The order is a pure rule, [`need`].

use super::access::{Bar, Role, Worker};
use super::map::{Map, Within, drawn};
use super::need::{CARE_HOURS, Hands, Need, hands, need};
use super::tongue::counted;
use super::{Broken, Pages, Tongue, page, spark};
use crate::record::local_day;
use crate::reply::word::Voice;
use crate::staff::name_of;
use crate::store::{Care, Seen};
use askama::Template;
use axum::Extension;
use axum::extract::{Form, Path, Query, State};
use axum::response::{Redirect, Response};
use bellyful_core::twin::Twin;
use chrono::{DateTime, Duration, Utc};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::Arc;

/// Rows of one page: more would weigh too much for a cheap phone.
const ROWS: usize = 50;
/// Longest word searched for.
const FIND_MOST: usize = 60;

struct Row {
    id: i64,
    name: String,
    named: bool,
    class: &'static str,
    label: String,
    why: String,
    last: String,
    risk: String,
    fed: String,
    cooked: String,
    hands: String,
    /// What a click does: take it on, say it is done, or nothing.
    act: &'static str,
}

impl Row {
    fn act_name(&self) -> &'static str {
        if self.act == "take" { "today-take" } else { "today-done" }
    }
}

struct Tally {
    need: &'static str,
    label: String,
    class: &'static str,
    count: usize,
    chosen: bool,
}

#[derive(Template)]
#[template(path = "today.html")]
struct Today {
    tongue: Tongue,
    date: String,
    worker: Bar,
    rows: Vec<Row>,
    tallies: Vec<Tally>,
    pressing: usize,
    all: usize,
    found: usize,
    find: String,
    need: String,
    page: usize,
    pages: usize,
    /// "2 of 40, 1980 households".
    turn: String,
    map: Option<Map>,
    /// The part of the map that is looked at; empty: all.
    within: String,
}

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    find: String,
    #[serde(default)]
    need: String,
    #[serde(default)]
    within: String,
    page: Option<usize>,
}

/// A household in the order of need.
pub(crate) struct Placed {
    pub(crate) need: Need,
    pub(crate) hands: Hands,
    pub(crate) risk: f64,
    pub(crate) seen: Seen,
}

pub async fn show(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Query(asked): Query<Asked>,
) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let cares = pages.store.cares(now - Duration::hours(CARE_HOURS)).await?;
    let placed = in_order(pages.store.overview().await?, &cares, now);
    let open = |placed: &&Placed| placed.need.is_pressing() && placed.hands == Hands::Nobody;
    let pressing = placed.iter().filter(open).count();
    let tongue = pages.tongue(&worker);
    let wanted = Need::from_id(&asked.need);
    let tallies = Need::ALL
        .iter()
        .map(|need| Tally {
            need: need.id(),
            label: need.label(&tongue),
            class: need.class(),
            count: placed.iter().filter(|placed| placed.need == *need).count(),
            chosen: wanted == Some(*need),
        })
        .filter(|tally| tally.count > 0 || tally.chosen)
        .collect();
    let find: String = asked.find.trim().chars().take(FIND_MOST).collect();
    let all = placed.len();
    let within = Within::read(&asked.within);
    let found: Vec<Placed> = placed
        .into_iter()
        .filter(|placed| wanted.is_none_or(|need| placed.need == need) && is_meant(&placed.seen, &find))
        .filter(|placed| within.is_none_or(|within| within.holds(&placed.seen)))
        .collect();
    let last_page = found.len().div_ceil(ROWS).max(1);
    let page_no = asked.page.unwrap_or(1).clamp(1, last_page);
    let shown = &found[(page_no - 1) * ROWS..found.len().min(page_no * ROWS)];
    let ids: Vec<i64> = shown.iter().map(|placed| placed.seen.household.id).collect();
    let twins = pages.store.kept_twins(&ids).await?;
    let voice = Voice::in_lang(&pages.mind.catalog, &worker.lang);
    let acts = worker.role >= Role::Field;
    let rows = shown.iter().map(|placed| row(&tongue, &voice, placed, &twins, acts, now)).collect();
    let pages_all = [("page", counted(page_no)), ("pages", counted(last_page)), ("n", counted(found.len()))];
    let turn = tongue.with("today-page", &pages_all);
    page(&Today {
        date: tongue.full_date(now.date_naive()),
        map: drawn(&tongue, &found, wanted.map_or("", Need::id)),
        within: within.map(|within| within.to_string()).unwrap_or_default(),
        tongue,
        worker: worker.bar("/"),
        rows,
        tallies,
        pressing,
        all,
        found: found.len(),
        find,
        need: wanted.map_or(String::new(), |need| need.id().to_owned()),
        turn,
        page: page_no,
        pages: last_page,
    })
}

/// What nobody has in hand comes first, then what somebody has, then what is done; within each, by need, then risk.
pub(crate) fn in_order(seen: Vec<Seen>, cares: &BTreeMap<i64, Care>, now: DateTime<Utc>) -> Vec<Placed> {
    let mut placed: Vec<Placed> = seen
        .into_iter()
        .map(|seen| {
            let care = cares.get(&seen.household.id);
            let (need, risk) = need(&seen.household, seen.alarms.len(), care, now);
            let hands = if seen.alarms.is_empty() { hands(need, care, now) } else { Hands::Nobody };
            Placed { need, hands, risk, seen }
        })
        .collect();
    let done = |placed: &Placed| matches!(placed.hands, Hands::Done(_));
    placed.sort_by(|a, b| {
        (done(a).cmp(&done(b)))
            .then(a.need.cmp(&b.need))
            .then(b.risk.total_cmp(&a.risk))
            .then(a.seen.household.id.cmp(&b.seen.household.id))
    });
    placed
}

/// Whether a household is meant by a number or by a part of its name.
fn is_meant(seen: &Seen, find: &str) -> bool {
    let household = &seen.household;
    let number = find.strip_prefix('#').unwrap_or(find);
    find.is_empty()
        || household.id.to_string() == number
        || household.name.to_lowercase().contains(&find.to_lowercase())
}

fn row(
    tongue: &Tongue,
    voice: &Voice,
    placed: &Placed,
    twins: &BTreeMap<i64, Vec<u8>>,
    acts: bool,
    now: DateTime<Utc>,
) -> Row {
    let Placed { need, hands, risk, seen } = placed;
    let household = &seen.household;
    let today = local_day(now, &household.time_zone);
    let ago = household.talk.last_heard.map(|day| today.since(day));
    let twin = twins.get(&household.id).and_then(|bytes| Twin::from_bytes(bytes).ok());
    let sparks = |twin: Twin| (spark::fed(tongue, &twin.ledger, today), spark::cooked(tongue, &twin.ledger, today));
    let (fed, cooked) = twin.map(sparks).unwrap_or_default();
    Row {
        id: household.id,
        name: name_of(household),
        named: !household.name.is_empty(),
        class: need.class(),
        label: need.label(tongue),
        why: why(tongue, voice, *need, seen, ago),
        last: match ago {
            Some(days) => tongue.count("today-last", days),
            None => tongue.say("today-last-never"),
        },
        risk: format!("{:.0}%", risk * 100.0),
        fed,
        cooked,
        hands: match hands {
            Hands::Nobody => String::new(),
            Hands::Taken(name) => tongue.of_name("today-taken-by", name),
            Hands::Done(name) => tongue.of_name("today-done-by", name),
        },
        act: match hands {
            _ if !acts || *need == Need::Well => "",
            Hands::Nobody => "take",
            Hands::Taken(_) => "done",
            Hands::Done(_) => "",
        },
    }
}

fn why(tongue: &Tongue, voice: &Voice, need: Need, seen: &Seen, ago: Option<i32>) -> String {
    match (need, seen.alarms.first()) {
        (Need::Danger, Some((at, signs))) => {
            let signs: Vec<String> = signs.iter().map(|sign| voice.sign_name(*sign)).collect();
            tongue.with("today-alarm", &[("signs", signs.join(", ").into()), ("when", tongue.moment(*at).into())])
        }
        (Need::Danger, None) => tongue.say("today-danger-open"),
        (Need::Person, _) => {
            let when = seen.household.talk.asked_at.map(|at| tongue.moment(at)).unwrap_or_default();
            tongue.with("today-asked", &[("when", when.into())])
        }
        (Need::StartUp, _) if seen.household.talk.last_advice.is_none() => tongue.say("today-never"),
        (Need::Silent, _) => match ago {
            Some(days) => tongue.count("today-silent", days),
            None => tongue.say("today-never"),
        },
        _ => {
            let last = seen.household.talk.last_advice.as_ref();
            let reason = last.and_then(|last| last.advice.reasons.first());
            reason.map(|reason| voice.say(&format!("why-{reason}"), &[])).unwrap_or_default()
        }
    }
}

#[derive(Deserialize)]
pub struct Act {
    act: String,
}

/// Takes a household's need on, or says it is seen to: for everybody.
pub async fn care(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Form(act): Form<Act>,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    if act.act == "done" {
        pages.store.end_care(id, &worker.name, now).await?;
        return Ok(Redirect::to("/"));
    }
    let situation = pages.store.situation_of(id).await?;
    let household = situation.household.as_ref().ok_or(Broken::NoHousehold(id))?;
    let (need, _) = need(household, situation.alarms.len(), None, now);
    pages.store.take_care(id, need.id(), &worker.name, now).await?;
    if !situation.alarms.is_empty() {
        super::household::take_alarm(&pages, &situation, &worker, now).await?;
    }
    Ok(Redirect::to("/"))
}
