//! One household: its story on one time axis, the whole conversation beside it, what staff did.
//!
//! Takes the store's facts and texts; gives the page. Draws what was told and advised, concludes nothing.

use super::access::{Role, Worker};
use super::chart::{Bar, Dot, Panel, chart};
use super::{Broken, Pages, page};
use crate::household::{Decision, Due, Household, Sender, Situation};
use crate::mind::Mind;
use crate::record::local_day;
use crate::reply::segments::size;
use crate::reply::word::Voice;
use crate::staff::name_of;
use crate::store::{Cause, Said, Wanted};
use crate::twins::Believed;
use askama::Template;
use axum::Extension;
use axum::extract::{Form, Path, State};
use axum::response::{Redirect, Response};
use bellyful_core::fact::{What, standing};
use bellyful_core::ledger::Ledger;
use bellyful_core::site::Site;
use bellyful_core::units::Day;
use chrono::{DateTime, Duration, NaiveDate, Utc};
use serde::Deserialize;
use std::sync::Arc;

/// Days of the time axis.
const DAYS: i32 = 120;
/// Texts shown.
const SHOWN: u32 = 80;
/// Longest note.
const NOTE_MOST: usize = 1000;

struct Line {
    ours: bool,
    when: String,
    text: String,
    note: String,
    reasons: Vec<String>,
}

struct Figure {
    name: &'static str,
    value: String,
}

#[derive(Template)]
#[template(path = "household.html")]
struct Story {
    id: i64,
    name: String,
    worker: String,
    acts: bool,
    number: String,
    doing: String,
    figures: Vec<Figure>,
    chart: String,
    lines: Vec<Line>,
    trail: Vec<(String, String)>,
    alarm: String,
}

pub async fn show(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let situation = loaded(&pages, id, now).await?;
    let household = situation.household.as_ref().ok_or(Broken::NoHousehold(id))?;
    let today = local_day(now, &household.time_zone);
    let said = pages.store.story(id, "", SHOWN.max(4 * DAYS as u32)).await?;
    let believed = Believed::on(&situation, household, today);
    let advice = believed.advise();
    let voice = Voice::in_lang(&pages.mind.catalog, "en");
    let doing = voice.doing(&advice, believed.for_today(), &believed.so_far.site, &believed.mix()).fullest().to_owned();
    let trail = pages.store.trail(id, 30).await?;
    let recent = said.len().saturating_sub(SHOWN as usize);
    page(&Story {
        id,
        name: name_of(household),
        worker: worker.name,
        acts: worker.role >= Role::Field,
        number: shown_number(&situation, worker.role),
        doing,
        figures: figures(&situation, &believed, &advice, today),
        chart: chart(today, DAYS, &panels(&situation, &said, household, today)),
        lines: said[recent..].iter().map(|said| line(&pages.mind, said)).collect(),
        trail: trail.into_iter().map(|(at, what)| (at.format("%-d %b %Y %H:%M").to_string(), what)).collect(),
        alarm: alarm(&voice, &situation),
    })
}

async fn loaded(pages: &Pages, id: i64, now: DateTime<Utc>) -> Result<Situation, Broken> {
    let since = Some(local_day(now, "UTC").plus(-DAYS));
    let sender = Sender::Family { household: id, stopped: false };
    let situation = pages.store.situation(&sender, Wanted { household: None, since }).await?;
    if situation.household.is_none() { Err(Broken::NoHousehold(id)) } else { Ok(situation) }
}

fn shown_number(situation: &Situation, role: Role) -> String {
    let number = situation.phones.first().map(|phone| phone.number.clone()).unwrap_or_default();
    match role {
        Role::Viewer => {
            number.char_indices().map(|(at, c)| if at > 3 && c.is_ascii_digit() { '*' } else { c }).collect()
        }
        _ => number,
    }
}

fn alarm(voice: &Voice, situation: &Situation) -> String {
    let Some(alarm) = situation.alarms.first() else { return String::new() };
    let signs: Vec<String> = alarm.signs.iter().map(|sign| voice.sign_name(*sign)).collect();
    format!("{}, told {}: \"{}\"", signs.join(", "), alarm.at.format("%-d %b %H:%M"), alarm.said)
}

fn figures(
    situation: &Situation,
    believed: &Believed,
    advice: &bellyful_core::advice::Advice,
    today: Day,
) -> Vec<Figure> {
    let load = believed.so_far.ledger.load(today, 7, believed.so_far.liquid());
    let site = &believed.so_far.site;
    let day = |day: Day| (NaiveDate::default() + Duration::days(i64::from(day.0))).format("%-d %b %Y").to_string();
    let litres = |litres: Option<f64>| litres.map_or("not told".into(), |litres| format!("{litres:.0} L"));
    let figure = |name, value: String| Figure { name, value };
    vec![
        figure("Risk of souring, 14 days", format!("{:.0}%", advice.risk * 100.0)),
        figure("OLR, 7 days", format!("{:.2} kg VS/m3/d", load.olr)),
        figure("HRT, 7 days", load.hrt_d.map_or("no feed".into(), |days| format!("{days:.0} d"))),
        figure("Slurry", format!("{:.0} °C", believed.so_far.slurry_c(today))),
        figure("Gas today", format!("{:.0} min", advice.gas_minutes)),
        figure("Tank", litres(site.tank_l)),
        figure("Gas store", litres(site.store_l)),
        figure("Started", site.started.map_or("not told".into(), day)),
        figure("Writes", situation.household.as_ref().map_or(String::new(), |household| household.lang.clone())),
    ]
}

/// What was told and advised, day by day.
fn panels(situation: &Situation, said: &[Said], household: &Household, today: Day) -> Vec<Panel> {
    let mut site = Site::default();
    let mut ledger = Ledger::default();
    for fact in standing(&situation.facts) {
        site.learn(fact);
        ledger.enter(fact, &site);
    }
    let liquid = bellyful_core::units::Litres::of(site.liquid_l.unwrap_or(site.tank_l.unwrap_or(1000.0) * 0.8));
    let days = || (0..=DAYS).map(|back| today.plus(back - DAYS));
    let of = |value: fn(&bellyful_core::ledger::DayAccount) -> Option<f64>| {
        ledger.days.iter().filter_map(move |day| Some(Bar { day: day.day, value: value(day)? })).collect::<Vec<_>>()
    };
    let advised: Vec<Dot> = said
        .iter()
        .filter_map(|said| {
            Some(Dot { day: local_day(said.at, &household.time_zone), value: said.advice.as_ref()?.ration_kg })
        })
        .collect();
    let olr = days().map(|day| Dot { day, value: ledger.load(day, 7, liquid).olr }).collect();
    let warm = ledger.days.iter().filter_map(|day| Some(Dot { day: day.day, value: day.slurry_c? })).collect();
    let ph = ledger.days.iter().filter_map(|day| Some(Dot { day: day.day, value: day.ph? })).collect();
    let risk: Vec<Dot> = said
        .iter()
        .filter_map(|said| {
            Some(Dot { day: local_day(said.at, &household.time_zone), value: said.advice.as_ref()?.risk * 100.0 })
        })
        .collect();
    let marks = situation
        .facts
        .iter()
        .filter_map(|fact| match &fact.what {
            What::Sign { sign } => Some((fact.day, sign.is_danger(), sign.id().replace('_', " "))),
            _ => None,
        })
        .collect();
    vec![
        Panel::bars("Fed, kg a day", of(|day| (!day.portions.is_empty()).then(|| day.wet().get())))
            .with_steps("ration advised", advised),
        Panel::bars("Water, L a day", of(|day| (day.water.get() > 0.0).then(|| day.water.get()))),
        Panel::line("OLR over 7 days, kg VS/m3/d", olr).with_limit(2.0, "limit 2"),
        Panel::bars("Cooked, min a day", of(|day| day.burned.map(|minutes| minutes.get()))),
        Panel::line("Chance of souring in 14 days, %", risk),
        Panel::dots("Slurry told, °C", warm),
        Panel::dots("pH told", ph),
        Panel::marks("Signs told", marks),
    ]
    .into_iter()
    .filter(|panel| !panel.is_empty())
    .collect()
}

fn line(mind: &Mind, said: &Said) -> Line {
    let reasons = said.advice.as_ref().map_or(vec![], |advice| {
        advice.reasons.iter().map(|reason| mind.catalog.say("en", &format!("why-{reason}"), &[])).collect()
    });
    let note = match &said.advice {
        Some(advice) => format!(
            "{} · ration {:.1} kg, {:.1} L · risk {:.0}% · {} segment(s)",
            advice.verdict,
            advice.ration_kg,
            advice.water_l,
            advice.risk * 100.0,
            size(&said.text).segments
        ),
        None => String::new(),
    };
    Line {
        ours: said.ours,
        when: said.at.format("%a %-d %b %H:%M").to_string(),
        text: said.text.clone(),
        note,
        reasons,
    }
}

#[derive(Deserialize)]
pub struct Note {
    note: String,
}

/// A note of staff, kept in the household's trail.
pub async fn note(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Form(form): Form<Note>,
) -> Result<Redirect, Broken> {
    let note: String = form.note.trim().chars().take(NOTE_MOST).collect();
    if !note.is_empty() {
        let now = (pages.clock)();
        let situation = loaded(&pages, id, now).await?;
        let decision = Decision { audit: Some(format!("{}: {note}", worker.name)), ..Decision::default() };
        pages.store.keep(Cause::Hand, &situation, decision, now).await?;
    }
    Ok(Redirect::to(&format!("/household/{id}")))
}

/// An alarm is taken: it is not told again.
pub async fn taken(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    let situation = loaded(&pages, id, now).await?;
    let decision = Decision {
        acknowledged_by: Some(worker.id),
        due: vec![(Due::Alarm, None)],
        audit: Some(format!("{} took the alarm", worker.name)),
        ..Decision::default()
    };
    pages.store.keep(Cause::Hand, &situation, decision, now).await?;
    Ok(Redirect::to(&format!("/household/{id}")))
}
