//! A household's story as a table, a row a day: what the chart shows, to be read off without scripts or a mouse.
//!
//! Takes the store's facts and texts; gives the page. The latest day comes first.

use super::super::access::{Bar, Worker};
use super::super::tongue::Tongue;
use super::super::{Broken, Pages, page};
use super::past::past;
use super::{Asked, Span, TEXTS_A_DAY, known, spans};
use crate::record::local_day;
use crate::reply::word::Voice;
use crate::staff::name_of;
use crate::twins::Believed;
use askama::Template;
use axum::Extension;
use axum::extract::{Path, Query, State};
use axum::response::Response;
use bellyful_core::advice::Advice;
use bellyful_core::ledger::{DayAccount, Ledger};
use bellyful_core::twin::{Band, Past};
use bellyful_core::units::Day;
use std::collections::BTreeMap;
use std::sync::Arc;

/// Lengths that can be asked for: more rows would weigh too much. Units: d.
const SPANS: [i32; 2] = [30, 120];
/// The columns, as messages; that of the day comes before them.
const COLUMNS: [&str; 11] = [
    "chart-fed",
    "chart-water",
    "days-advised",
    "days-olr",
    "chart-cooked",
    "days-gas",
    "chart-risk",
    "days-slurry",
    "days-ph",
    "days-acids",
    "chart-signs",
];

struct Row {
    day: String,
    cells: [String; COLUMNS.len()],
}

#[derive(Template)]
#[template(path = "days.html")]
struct Days {
    tongue: Tongue,
    id: i64,
    name: String,
    worker: Bar,
    spans: Vec<Span>,
    columns: [String; COLUMNS.len()],
    rows: Vec<Row>,
}

pub async fn days(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Query(asked): Query<Asked>,
) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let situation = known(&pages, id).await?;
    let household = situation.household.as_ref().ok_or(Broken::NoHousehold(id))?;
    let today = local_day(now, &household.time_zone);
    let days = asked.days.filter(|days| SPANS.contains(days)).unwrap_or(SPANS[0]);
    let first = today.plus(1 - days);
    let facts = pages.store.facts(id).await?;
    let said = pages.store.story(id, "", (TEXTS_A_DAY * days) as u32).await?;
    let believed = Believed::on(&situation, household, today);
    let advised: BTreeMap<Day, Advice> =
        said.into_iter().filter_map(|said| Some((local_day(said.at, &household.time_zone), said.advice?))).collect();
    let ledger = Ledger::of(&facts, &believed.so_far.site);
    let past = past(&pages, household, &facts, first, today).await?;
    let (tongue, voice) = (pages.tongue(&worker), Voice::in_lang(&pages.mind.catalog, &worker.lang));
    let row = |day: Day| {
        let olr = ledger.load(day, 7, believed.so_far.liquid()).olr;
        Row {
            day: tongue.short_day(day),
            cells: cells(&tongue, &voice, ledger.on(day), advised.get(&day), &past, day, olr),
        }
    };
    page(&Days {
        id,
        name: name_of(household),
        worker: worker.bar(""),
        spans: spans(&tongue, &SPANS, days),
        columns: COLUMNS.map(|name| tongue.say(name)),
        rows: (0..days).map(|back| row(today.plus(-back))).collect(),
        tongue,
    })
}

fn cells(
    tongue: &Tongue,
    voice: &Voice,
    account: Option<&DayAccount>,
    advised: Option<&Advice>,
    past: &Past,
    day: Day,
    olr: f64,
) -> [String; COLUMNS.len()] {
    let number = |value: f64, decimals| tongue.number(value, decimals);
    let told = |value: Option<f64>, decimals| value.map(|value| number(value, decimals)).unwrap_or_default();
    let of = |bands: &[Band], decimals| {
        let band = bands.iter().find(|band| band.day == day);
        band.map(|band| number(band.middle, decimals)).unwrap_or_default()
    };
    let fed = account.map_or(String::new(), |account| {
        let parts = account
            .portions
            .iter()
            .map(|portion| format!("{} {}", number(portion.wet.get(), 1), voice.feed(portion.feed)));
        parts.collect::<Vec<_>>().join(", ")
    });
    let signs = account.map_or(String::new(), |account| {
        account.signs.iter().map(|sign| voice.sign_name(*sign)).collect::<Vec<_>>().join(", ")
    });
    let water = account.map(|account| account.water.get()).filter(|litres| *litres > 0.0);
    let (made, left) = (of(&past.made_min, 0), of(&past.left_min, 0));
    [
        fed,
        told(water, 1),
        told(advised.map(|advice| advice.ration_kg), 1),
        number(olr, 2),
        told(account.and_then(|account| account.burned).map(|minutes| minutes.get()), 0),
        if made.is_empty() { left } else { format!("{made} / {left}") },
        told(advised.map(|advice| advice.risk * 100.0), 0),
        told(account.and_then(|account| account.slurry_c), 0),
        account.and_then(|account| account.ph).map_or_else(|| of(&past.ph, 1), |ph| format!("{} *", number(ph, 1))),
        of(&past.acids, 1),
        signs,
    ]
}
