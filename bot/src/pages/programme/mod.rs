//! Programme: what all households did, month by month and place by place, and what it spared, with the method stated.
//!
//! Takes facts and texts of all households; gives a page and rows for a spreadsheet.

mod report;
mod sums;
mod table;

use super::access::{Bar, Worker};
use super::{Broken, Pages, Tongue, page};
use crate::staff::name_of;
use crate::store::Seen;
use askama::Template;
use axum::Extension;
use axum::extract::{Query, State};
use axum::response::Response;
use bellyful_core::yields::fuel::Fuel;
use chrono::{DateTime, Datelike, Months, NaiveDate, Utc};
pub use report::report;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::sync::Arc;
use sums::{GAS_C, LEAK, METHANE, Method, Month, Spared, Sums, day_of, month_of, of_household, spared};
pub use table::{csv, xlsx};

/// Months shown at first, and at most.
const MONTHS: u32 = 6;
const MONTHS_MOST: u32 = 36;
/// Households looked at in one go, so that a big programme does not fill the memory.
const IN_ONE_GO: usize = 200;
/// Share of wood that does not grow again, where nobody says. Source: our choice, to be set by the programme.
const NON_RENEWABLE: f64 = 0.3;

#[derive(Deserialize)]
pub struct Asked {
    months: Option<u32>,
    /// First and last month, such as 2026-03; the first alone is that month.
    #[serde(default)]
    from: String,
    #[serde(default)]
    to: String,
    #[serde(default)]
    fuel: String,
    non_renewable: Option<f64>,
}

/// Months looked at, both ends in.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Span {
    first: Month,
    last: Month,
}

impl Asked {
    fn months(&self) -> u32 {
        self.months.unwrap_or(MONTHS).clamp(1, MONTHS_MOST)
    }
    /// The months asked for, or those back from now; never more than are borne.
    fn span(&self, now: DateTime<Utc>) -> Span {
        let this = month_of(now.date_naive());
        let read = |typed: &str| {
            let month = NaiveDate::parse_from_str(&format!("{}-01", typed.trim()), "%Y-%m-%d").ok();
            month.filter(|month| (1970..2200).contains(&month.year()))
        };
        match (read(&self.from), read(&self.to)) {
            (None, _) => Span { first: this - Months::new(self.months() - 1), last: this },
            (Some(first), last) => {
                let last = last.unwrap_or(first);
                let (first, last) = (first.min(last), first.max(last));
                let least = last.checked_sub_months(Months::new(MONTHS_MOST - 1)).unwrap_or(first);
                Span { first: first.max(least), last }
            }
        }
    }
    fn method(&self) -> Method {
        let fuel = Fuel::from_id(&self.fuel).unwrap_or(Fuel::Wood);
        let grows = matches!(fuel, Fuel::Wood | Fuel::Charcoal);
        let share = self.non_renewable.filter(|share| share.is_finite()).unwrap_or(NON_RENEWABLE).clamp(0.0, 1.0);
        Method { fuel, non_renewable: if grows { share } else { 1.0 } }
    }
}

struct Row {
    name: String,
    households: String,
    working: String,
    fed: String,
    slurry: String,
    hours: String,
    gas: String,
    fuel: String,
    co2e: String,
    texts: String,
    segments: String,
}

struct FuelChoice {
    id: &'static str,
    name: String,
    chosen: bool,
}

#[derive(Template)]
#[template(path = "programme.html")]
struct Programme {
    tongue: Tongue,
    worker: Bar,
    months: u32,
    /// Heading, name of the first column, rows.
    tables: Vec<(String, String, Vec<Row>)>,
    fuels: Vec<FuelChoice>,
    fuel: &'static str,
    fuel_name: String,
    non_renewable: f64,
    /// How it is counted, with what was assumed.
    method: String,
    /// The month that a report is offered for first.
    this_month: String,
}

/// One household's months.
struct Lived {
    id: i64,
    name: String,
    place: String,
    months: BTreeMap<Month, Sums>,
}

async fn lived(pages: &Pages, span: Span) -> Result<Vec<Lived>, Broken> {
    lived_of(pages, pages.store.overview().await?, span).await
}

async fn lived_of(pages: &Pages, seen: Vec<Seen>, span: Span) -> Result<Vec<Lived>, Broken> {
    let since = span.first.and_time(chrono::NaiveTime::MIN).and_utc();
    let mut lived = Vec::with_capacity(seen.len());
    for some in seen.chunks(IN_ONE_GO) {
        let (Some(from), Some(to)) = (some.first(), some.last()) else { continue };
        let (from, to) = (from.household.id, to.household.id);
        let facts = pages.store.facts_of_many(from, to, day_of(since)).await?;
        let texts = pages.store.texts_of_many(from, to, since).await?;
        for Seen { household, .. } in some {
            let of = |id| facts.get(&id).map_or(&[][..], Vec::as_slice);
            let said = texts.get(&household.id).map_or(&[][..], Vec::as_slice);
            let (mut months, place) = of_household(of(household.id), said, day_of(since));
            months.retain(|month, _| *month <= span.last);
            let place = place.unwrap_or_default();
            lived.push(Lived { id: household.id, name: name_of(household), place, months });
        }
    }
    Ok(lived)
}

pub async fn show(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Query(asked): Query<Asked>,
) -> Result<Response, Broken> {
    let (tongue, method) = (pages.tongue(&worker), asked.method());
    let lived = lived(&pages, asked.span((pages.clock)())).await?;
    let totals = Totals::of(&lived);
    let by_month = totals.months.iter().rev().map(|(month, sums)| row(&tongue, tongue.month(*month), sums, method));
    let by_place = totals.places.iter().map(|(place, sums)| row(&tongue, place_name(&tongue, place), sums, method));
    let table = |title: &str, first: &str, rows| (tongue.say(title), tongue.say(first), rows);
    let by_month = table("prog-by-month", "prog-month", by_month.collect());
    let by_place = table("prog-by-place", "prog-place", by_place.collect());
    page(&Programme {
        method: method_said(&tongue, method),
        worker: worker.bar("/programme"),
        months: asked.months(),
        tables: vec![by_month, by_place],
        fuels: Fuel::ALL
            .iter()
            .map(|fuel| FuelChoice { id: fuel.id(), name: fuel_name(&tongue, *fuel), chosen: *fuel == method.fuel })
            .collect(),
        fuel: method.fuel.id(),
        fuel_name: fuel_name(&tongue, method.fuel),
        non_renewable: method.non_renewable,
        this_month: (pages.clock)().format("%Y-%m").to_string(),
        tongue: tongue.clone(),
    })
}

fn fuel_name(tongue: &Tongue, fuel: Fuel) -> String {
    tongue.say(&format!("fuel-{fuel}"))
}

fn place_name(tongue: &Tongue, place: &str) -> String {
    if place.is_empty() { tongue.say("prog-no-place") } else { place.to_owned() }
}

/// How the sums are counted and what they assume: beside every table, on paper and in the workbook.
fn method_said(tongue: &Tongue, method: Method) -> String {
    let values = [
        ("methane", tongue.number(METHANE * 100.0, 0).into()),
        ("celsius", tongue.number(GAS_C, 0).into()),
        ("share", tongue.number(method.non_renewable, 2).into()),
        ("name", fuel_name(tongue, method.fuel).into()),
        ("leak", tongue.number(LEAK * 100.0, 0).into()),
    ];
    tongue.with("prog-method", &values)
}

/// All households together, by month, by place, and in the whole time.
#[derive(Default)]
struct Totals<'a> {
    months: BTreeMap<Month, Sums>,
    places: BTreeMap<&'a str, Sums>,
    whole: Sums,
}

impl Totals<'_> {
    fn of(lived: &[Lived]) -> Totals<'_> {
        let mut totals = Totals::default();
        for household in lived {
            let mut all = Sums::default();
            for (month, sums) in &household.months {
                *totals.months.entry(*month).or_default() += *sums;
                all += *sums;
            }
            // Of a place, a household counts once, however many months it was heard in.
            let once = Sums { heard: all.heard.min(1), working: all.working.min(1), ..all };
            *totals.places.entry(&household.place).or_default() += once;
            totals.whole += once;
        }
        totals
    }
}

fn row(tongue: &Tongue, name: String, sums: &Sums, method: Method) -> Row {
    let spared = spared(sums.cooked_min, method);
    let share = if sums.heard > 0 { 100.0 * f64::from(sums.working) / f64::from(sums.heard) } else { 0.0 };
    Row {
        name,
        households: sums.heard.to_string(),
        working: format!("{} ({share:.0}%)", sums.working),
        fed: format!("{:.0}", sums.fed_kg),
        slurry: format!("{:.0}", sums.fed_kg + sums.water_l),
        hours: format!("{:.0}", sums.cooked_min / 60.0),
        gas: tongue.number(spared.biogas_m3, 1),
        fuel: format!("{:.0}", spared.fuel_kg),
        co2e: format!("{:.0}", spared.co2e_kg),
        texts: format!("{} / {}", sums.texts_in, sums.texts_out),
        segments: sums.segments_out.to_string(),
    }
}

/// A household's month, for machines.
#[derive(Serialize)]
pub struct MonthOut {
    month: String,
    household: i64,
    #[serde(skip_serializing_if = "Option::is_none")]
    name: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    place: Option<String>,
    days_told: u32,
    fed_kg: f64,
    water_l: f64,
    cooked_min: f64,
    biogas_m3: f64,
    spared_fuel: &'static str,
    spared_fuel_kg: f64,
    spared_co2e_kg: f64,
    texts_in: u32,
    texts_out: u32,
    segments_out: u32,
}

/// A row a household and month, of some households.
pub async fn rows(pages: &Pages, seen: Vec<Seen>, asked: &Asked, people: bool) -> Result<Vec<MonthOut>, Broken> {
    let method = asked.method();
    let lived = lived_of(pages, seen, asked.span((pages.clock)())).await?;
    let row = |household: &Lived, month: &Month, sums: &Sums| {
        let Spared { biogas_m3, fuel_kg, co2e_kg } = spared(sums.cooked_min, method);
        MonthOut {
            month: month.format("%Y-%m").to_string(),
            household: household.id,
            name: people.then(|| household.name.clone()),
            place: people.then(|| household.place.clone()),
            days_told: sums.days_told,
            fed_kg: sums.fed_kg,
            water_l: sums.water_l,
            cooked_min: sums.cooked_min,
            biogas_m3,
            spared_fuel: method.fuel.id(),
            spared_fuel_kg: fuel_kg,
            spared_co2e_kg: co2e_kg,
            texts_in: sums.texts_in,
            texts_out: sums.texts_out,
            segments_out: sums.segments_out,
        }
    };
    Ok(lived.iter().flat_map(|one| one.months.iter().map(move |(month, sums)| row(one, month, sums))).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_span_is_a_month_or_months_in_order_and_never_more_than_are_borne() {
        let now = DateTime::parse_from_rfc3339("2026-06-15T08:00:00Z").expect("a time").to_utc();
        let check = |from: &str, to: &str, first: &str, last: &str| {
            let asked =
                Asked { months: None, from: from.into(), to: to.into(), fuel: String::new(), non_renewable: None };
            let span = asked.span(now);
            assert_eq!((span.first.to_string(), span.last.to_string()), (first.to_owned(), last.to_owned()));
        };
        check("2026-03", "", "2026-03-01", "2026-03-01");
        check("2026-05", "2026-02", "2026-02-01", "2026-05-01");
        check("1990-01", "2026-05", "2023-06-01", "2026-05-01");
        check("soon", "2026-05", "2026-01-01", "2026-06-01");
        check("-262143-01", "", "2026-01-01", "2026-06-01");
    }
}
