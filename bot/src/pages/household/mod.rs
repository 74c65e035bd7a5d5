//! One household: its story on one time axis, the whole conversation beside it, what staff did and can do.
//!
//! Takes the store's facts and texts; gives the page. What it shows was told, advised or is believed now.

mod acts;
mod days;
mod family;
mod panels;
mod past;
mod settings;
mod what_if;

use super::access::{Bar, Role, Worker};
use super::chart::{WEEKS_OVER, chart};
use super::tongue::counted;
use super::{Broken, Pages, Tongue, page, trail, visit};
use crate::household::Situation;
use crate::message::Kind;
use crate::record::local_day;
use crate::reply::segments::size;
use crate::reply::word::Voice;
use crate::staff::name_of;
use crate::store::Said;
use crate::talk::alarm_text;
use crate::twins::Believed;
pub use acts::{known, note, take_alarm, taken};
use askama::Template;
use axum::Extension;
use axum::extract::{Path, Query, State};
use axum::response::Response;
use bellyful_core::units::Day;
pub use days::days;
use family::PhoneRow;
pub use family::{measure, phone, reminders, restart};
use panels::{Told, panels};
use serde::Deserialize;
use settings::{Choice, Setting};
pub use settings::{settle, told};
use std::sync::Arc;

/// Lengths of the time axis that can be asked for. Units: d.
const SPANS: [i32; 4] = [30, 120, 365, 1826];
const SPAN: i32 = 120;
/// Texts shown.
const SHOWN: usize = 60;
/// Texts a day that the chart looks at for what was advised.
const TEXTS_A_DAY: i32 = 5;
/// Notes and acts shown.
const TRAIL: u32 = 30;

struct Line {
    ours: bool,
    danger: bool,
    when: String,
    text: String,
    note: String,
    reasons: Vec<String>,
}

struct Figure {
    name: String,
    value: String,
}

struct Span {
    days: i32,
    name: String,
    chosen: bool,
}

#[derive(Template)]
#[template(path = "household.html")]
struct Story {
    tongue: Tongue,
    id: i64,
    name: String,
    worker: Bar,
    acts: bool,
    number: String,
    doing: String,
    figures: Vec<Figure>,
    spans: Vec<Span>,
    chart: String,
    /// A stroke stands for a week.
    weekly: bool,
    lines: Vec<Line>,
    trail: Vec<trail::Line>,
    alarm: String,
    what_if: Option<what_if::Ahead>,
    ration: String,
    water: String,
    settings: Vec<Setting>,
    langs: Vec<Choice>,
    walls: Vec<Choice>,
    workers: Vec<Choice>,
    phones: Vec<PhoneRow>,
    gateways: Vec<String>,
    measures: Vec<Choice>,
    muted: bool,
    closed: bool,
    /// Numbers under which the story goes on, and under which it began.
    goes_on: Option<i64>,
    came_from: Option<i64>,
    told: Vec<(String, String)>,
    visits: Vec<visit::Visited>,
}

#[derive(Deserialize)]
pub struct Asked {
    days: Option<i32>,
    /// For what-if, as typed. Units: kg, l.
    #[serde(default)]
    ration: String,
    #[serde(default)]
    water: String,
}

pub async fn show(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Query(asked): Query<Asked>,
) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let situation = pages.store.situation_of(id).await?;
    let household = situation.household.as_ref().ok_or(Broken::NoHousehold(id))?;
    let today = local_day(now, &household.time_zone);
    let days = asked.days.filter(|days| SPANS.contains(days)).unwrap_or(SPAN);
    let facts = pages.store.facts(id).await?;
    let said = pages.store.story(id, "", (TEXTS_A_DAY * days) as u32).await?;
    // Before anything was told there is nothing to draw.
    let begun = facts.iter().map(|fact| fact.day).min().unwrap_or(today);
    let drawn = days.min(today.since(begun).max(SPANS[0]));
    let believed = Believed::on(&situation, household, today);
    let advice = believed.advise();
    let voice = Voice::in_lang(&pages.mind.catalog, &worker.lang);
    let tongue = pages.tongue(&worker);
    // While a danger is open the one thing to do is to get out: no ration stands beside it.
    let doing = match situation.alarms.is_empty() {
        true => voice.doing(&advice, believed.for_today(), &believed.so_far.site, &believed.mix()).fullest().to_owned(),
        false => alarm_text(&pages.mind, voice.lang, household.country.as_deref()),
    };
    let trail = pages.store.trail(id, TRAIL).await?;
    let visits = pages.store.visits(id, visit::SHOWN).await?;
    let marks = visits.iter().map(|visit| (visit.day, visit::told(&tongue, visit))).collect();
    let past = past::past(&pages, household, &facts, today.plus(-drawn.min(SPAN)), today).await?;
    let told = Told { household, facts: &facts, said: &said, believed: &believed, past: &past, visits: marks };
    let chart = chart(&tongue, "chart-label", today, drawn, panels(&told, &tongue, &voice, today, drawn));
    let site = &believed.so_far.site;
    page(&Story {
        id,
        name: name_of(household),
        worker: worker.bar(""),
        acts: worker.role >= Role::Field && !household.talk.closed,
        number: shown_number(&situation, worker.role),
        doing,
        figures: figures(&tongue, &believed, &advice, today),
        spans: spans(&tongue, &SPANS, days),
        chart,
        weekly: drawn > WEEKS_OVER,
        lines: said.iter().rev().take(SHOWN).map(|said| line(&tongue, &voice, said)).collect(),
        trail: trail::lines(&tongue, &voice, trail),
        alarm: alarm(&tongue, &voice, &situation),
        what_if: what_if::told(&tongue, &situation, &believed, &asked.ration, &asked.water),
        ration: if asked.ration.is_empty() { tongue.number(advice.ration_kg, 1) } else { asked.ration },
        water: if asked.water.is_empty() { tongue.number(advice.water_l, 1) } else { asked.water },
        settings: settings::numbers(&tongue, household, site),
        langs: settings::langs(&pages.mind, household),
        walls: settings::walls(&tongue, site),
        workers: settings::workers(&tongue, &pages.store.staff().await?, household),
        phones: family::rows(pages.store.all_phones(id).await?, worker.role),
        gateways: pages.gateways.clone(),
        measures: settings::measures(&voice),
        muted: household.talk.muted,
        closed: household.talk.closed,
        goes_on: household.talk.goes_on,
        came_from: household.talk.came_from,
        told: settings::told(&tongue, &voice, &facts),
        visits: visit::listed(&tongue, &visits),
        tongue,
    })
}

fn spans(tongue: &Tongue, spans: &[i32], chosen: i32) -> Vec<Span> {
    let span = |days: &i32| Span { days: *days, name: tongue.say(&format!("span-{days}")), chosen: *days == chosen };
    spans.iter().map(span).collect()
}

fn alarm(tongue: &Tongue, voice: &Voice, situation: &Situation) -> String {
    let Some(alarm) = situation.alarms.first() else { return String::new() };
    let signs: Vec<String> = alarm.signs.iter().map(|sign| voice.sign_name(*sign)).collect();
    let (signs, when) = (signs.join(", ").into(), tongue.moment(alarm.at).into());
    tongue.with("house-alarm", &[("signs", signs), ("when", when), ("said", alarm.said.as_str().into())])
}

fn shown_number(situation: &Situation, role: Role) -> String {
    situation.phones.first().map(|phone| shown(&phone.number, role)).unwrap_or_default()
}

/// A number as a role may see it.
fn shown(number: &str, role: Role) -> String {
    match role {
        Role::Viewer => {
            number.char_indices().map(|(at, c)| if at > 3 && c.is_ascii_digit() { '*' } else { c }).collect()
        }
        _ => number.to_owned(),
    }
}

fn figures(tongue: &Tongue, believed: &Believed, advice: &bellyful_core::advice::Advice, today: Day) -> Vec<Figure> {
    let load = believed.so_far.ledger.load(today, 7, believed.so_far.liquid());
    let site = &believed.so_far.site;
    let figure = |name: &str, value: String| Figure { name: tongue.say(name), value };
    let no_feed = || tongue.say("figure-no-feed");
    vec![
        figure("figure-risk", format!("{:.0}%", advice.risk * 100.0)),
        figure("figure-olr", tongue.with("figure-olr-is", &[("n", tongue.number(load.olr, 2).into())])),
        figure("figure-hrt", load.hrt_d.map_or_else(no_feed, |days| format!("{days:.0} d"))),
        figure("figure-ts", load.ts_share.map_or_else(no_feed, |share| format!("{:.0}%", share * 100.0))),
        figure("figure-slurry", format!("{:.0} °C", believed.so_far.slurry_c(today))),
        figure("figure-gas", format!("{:.0} min", advice.gas_minutes)),
        figure("figure-started", site.started.map_or_else(|| tongue.say("not-told"), |day| tongue.day(day))),
    ]
}

fn line(tongue: &Tongue, voice: &Voice, said: &Said) -> Line {
    let reasons = said.advice.as_ref().map_or(vec![], |advice| {
        advice.reasons.iter().map(|reason| voice.say(&format!("why-{reason}"), &[])).collect()
    });
    let note = said.advice.as_ref().map_or(String::new(), |advice| {
        let values = [
            ("verdict", tongue.say(&format!("verdict-{}", advice.verdict)).into()),
            ("kg", tongue.number(advice.ration_kg, 1).into()),
            ("water", tongue.number(advice.water_l, 1).into()),
            ("risk", tongue.number(advice.risk * 100.0, 0).into()),
            ("segments", tongue.with("segments", &[("n", counted(size(&said.text).segments))]).into()),
        ];
        tongue.with("talk-note", &values)
    });
    Line {
        ours: said.ours,
        danger: said.kind.as_deref() == Some(Kind::Alarm.id()),
        when: tongue.moment(said.at),
        text: said.text.clone(),
        note,
        reasons,
    }
}
