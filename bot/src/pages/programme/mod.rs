//! Programme: what all households did, month by month and place by place, and what it spared, with the method stated.
//!
//! Takes facts and texts of all households; gives a page and rows for a spreadsheet.

mod sums;

use super::access::{Bar, Worker};
use super::{Broken, Pages, Tongue, page};
use crate::staff::name_of;
use crate::store::Seen;
use askama::Template;
use axum::Extension;
use axum::extract::{Query, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use bellyful_core::yields::fuel::Fuel;
use chrono::Months;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::sync::Arc;
use sums::{GAS_C, LEAK, METHANE, Method, Month, Spared, Sums, day_of, month_of, of_household, spared};

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
    #[serde(default)]
    fuel: String,
    non_renewable: Option<f64>,
}

impl Asked {
    fn months(&self) -> u32 {
        self.months.unwrap_or(MONTHS).clamp(1, MONTHS_MOST)
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
}

/// One household's months.
struct Lived {
    id: i64,
    name: String,
    place: String,
    months: BTreeMap<Month, Sums>,
}

async fn lived(pages: &Pages, months: u32) -> Result<Vec<Lived>, Broken> {
    lived_of(pages, pages.store.overview().await?, months).await
}

async fn lived_of(pages: &Pages, seen: Vec<Seen>, months: u32) -> Result<Vec<Lived>, Broken> {
    let now = (pages.clock)();
    let first = month_of(now.date_naive()) - Months::new(months - 1);
    let since = first.and_time(chrono::NaiveTime::MIN).and_utc();
    let mut lived = Vec::with_capacity(seen.len());
    for some in seen.chunks(IN_ONE_GO) {
        let (Some(from), Some(to)) = (some.first(), some.last()) else { continue };
        let (from, to) = (from.household.id, to.household.id);
        let facts = pages.store.facts_of_many(from, to, day_of(since)).await?;
        let texts = pages.store.texts_of_many(from, to, since).await?;
        for Seen { household, .. } in some {
            let of = |id| facts.get(&id).map_or(&[][..], Vec::as_slice);
            let said = texts.get(&household.id).map_or(&[][..], Vec::as_slice);
            let (months, place) = of_household(of(household.id), said, day_of(since));
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
    let lived = lived(&pages, asked.months()).await?;
    let mut months: BTreeMap<Month, Sums> = BTreeMap::new();
    let mut places: BTreeMap<&str, Sums> = BTreeMap::new();
    for household in &lived {
        let mut all = Sums::default();
        for (month, sums) in &household.months {
            *months.entry(*month).or_default() += *sums;
            all += *sums;
        }
        // Of a place, a household counts once, however many months it was heard in.
        let once = Sums { heard: all.heard.min(1), working: all.working.min(1), ..all };
        *places.entry(&household.place).or_default() += once;
    }
    let by_month = months.iter().rev().map(|(month, sums)| row(&tongue, tongue.month(*month), sums, method));
    let by_place = places.iter().map(|(place, sums)| {
        let name = if place.is_empty() { tongue.say("prog-no-place") } else { (*place).to_owned() };
        row(&tongue, name, sums, method)
    });
    let table = |title: &str, first: &str, rows| (tongue.say(title), tongue.say(first), rows);
    let fuel_name = |fuel: Fuel| tongue.say(&format!("fuel-{fuel}"));
    let by_month = table("prog-by-month", "prog-month", by_month.collect());
    let by_place = table("prog-by-place", "prog-place", by_place.collect());
    let values = [
        ("methane", tongue.number(METHANE * 100.0, 0).into()),
        ("celsius", tongue.number(GAS_C, 0).into()),
        ("share", tongue.number(method.non_renewable, 2).into()),
        ("name", fuel_name(method.fuel).into()),
        ("leak", tongue.number(LEAK * 100.0, 0).into()),
    ];
    page(&Programme {
        method: tongue.with("prog-method", &values),
        worker: worker.bar(),
        months: asked.months(),
        tables: vec![by_month, by_place],
        fuels: Fuel::ALL
            .iter()
            .map(|fuel| FuelChoice { id: fuel.id(), name: fuel_name(*fuel), chosen: *fuel == method.fuel })
            .collect(),
        fuel: method.fuel.id(),
        fuel_name: fuel_name(method.fuel),
        non_renewable: method.non_renewable,
        tongue: tongue.clone(),
    })
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
    let lived = lived_of(pages, seen, asked.months()).await?;
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

/// A row a household and month. Errors: the store's.
pub async fn table(State(pages): State<Arc<Pages>>, Query(asked): Query<Asked>) -> Result<Response, Broken> {
    let method = asked.method();
    let mut out = csv::Writer::from_writer(vec![]);
    let wrong = |error: csv::Error| Broken::Table(error.to_string());
    out.write_record(HEAD).map_err(wrong)?;
    for household in lived(&pages, asked.months()).await? {
        for (month, sums) in &household.months {
            out.write_record(record(&household, month, sums, method)).map_err(wrong)?;
        }
    }
    let body = out.into_inner().map_err(|error| Broken::Table(error.to_string()))?;
    let headers = [
        (header::CONTENT_TYPE, "text/csv; charset=utf-8"),
        (header::CONTENT_DISPOSITION, "attachment; filename=\"programme.csv\""),
        (header::CACHE_CONTROL, "no-store"),
    ];
    Ok((headers, body).into_response())
}

const HEAD: [&str; 16] = [
    "month",
    "household",
    "name",
    "place",
    "days_told",
    "fed_kg",
    "water_l",
    "cooked_min",
    "biogas_m3",
    "spared_fuel",
    "non_renewable_share",
    "spared_fuel_kg",
    "spared_co2e_kg",
    "texts_in",
    "texts_out",
    "segments_out",
];

fn record(household: &Lived, month: &Month, sums: &Sums, method: Method) -> [String; 16] {
    let Spared { biogas_m3, fuel_kg, co2e_kg } = spared(sums.cooked_min, method);
    [
        month.format("%Y-%m").to_string(),
        household.id.to_string(),
        plain(&household.name),
        plain(&household.place),
        sums.days_told.to_string(),
        format!("{:.1}", sums.fed_kg),
        format!("{:.1}", sums.water_l),
        format!("{:.0}", sums.cooked_min),
        format!("{biogas_m3:.3}"),
        method.fuel.id().to_owned(),
        format!("{}", method.non_renewable),
        format!("{fuel_kg:.2}"),
        format!("{co2e_kg:.2}"),
        sums.texts_in.to_string(),
        sums.texts_out.to_string(),
        sums.segments_out.to_string(),
    ]
}

/// Words that a spreadsheet will not take for a formula.
fn plain(words: &str) -> String {
    if words.starts_with(['=', '+', '-', '@', '\t', '\r']) { format!("'{words}") } else { words.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_never_a_formula() {
        assert_eq!(plain("=HYPERLINK(1)"), "'=HYPERLINK(1)");
        assert_eq!(plain("Otelo"), "Otelo");
    }
}
