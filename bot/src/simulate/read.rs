//! A scenario file to a [`Scenario`], each field checked by name.
//!
//! Takes a path; gives the scenario, its name and its columns. It never runs anything.

use super::{SimulateError, is_column};
use bellyful_core::adm1::component::{GAS_NAMES, LIQUID_NAMES};
use bellyful_core::adm1::scenario::{FeedEvent, Scenario, kinetics_temperature_named};
use bellyful_core::adm1::{Kinetics, KineticsTemperature, Member, Vessel};
use serde_json::Value;
use std::path::Path;

/// A scenario as its file tells it.
pub struct ScenarioFile {
    pub name: String,
    pub columns: Vec<String>,
    pub scenario: Scenario,
}

/// Longest run taken: a hundred years.
const MOST_DAYS: f64 = 36_525.0;
/// Beyond any slurry. Units: kg COD/m³ or kmol/m³.
const MOST_PER_M3: f64 = 5000.0;

/// Errors: [`SimulateError`] naming the field.
pub fn scenario(path: &Path) -> Result<ScenarioFile, SimulateError> {
    let file = path.display().to_string();
    let text = std::fs::read_to_string(path).map_err(|why| SimulateError::Unreadable { file: file.clone(), why })?;
    let value: Value = serde_json::from_str(&text).map_err(|why| SimulateError::NotJson { file: file.clone(), why })?;
    whole(&Field { path: String::new(), value: &value }).map_err(|BadField { field, what }| SimulateError::BadField {
        file,
        field,
        what,
    })
}

struct BadField {
    field: String,
    what: String,
}

/// A value and where it stands in the file.
struct Field<'a> {
    path: String,
    value: &'a Value,
}

impl<'a> Field<'a> {
    fn bad<T>(&self, what: impl Into<String>) -> Result<T, BadField> {
        let field = if self.path.is_empty() { "the file".to_owned() } else { self.path.clone() };
        Err(BadField { field, what: what.into() })
    }

    fn get(&self, name: &str) -> Option<Field<'a>> {
        let path = if self.path.is_empty() { name.to_owned() } else { format!("{}.{name}", self.path) };
        self.value.get(name).map(|value| Field { path, value })
    }

    fn need(&self, name: &str) -> Result<Field<'a>, BadField> {
        if !self.value.is_object() {
            return self.bad(format!("must be an object with {name}"));
        }
        let path = if self.path.is_empty() { name.to_owned() } else { format!("{}.{name}", self.path) };
        self.get(name).map_or_else(|| Err(BadField { field: path, what: "is missing: add it".into() }), Ok)
    }

    fn number(&self, least: f64, most: f64) -> Result<f64, BadField> {
        match self.value.as_f64() {
            Some(number) if number.is_finite() && (least..=most).contains(&number) => Ok(number),
            _ => self.bad(format!("is {}: it must be a number from {least} to {most}", short(self.value))),
        }
    }

    fn whole_number(&self, least: f64, most: f64) -> Result<usize, BadField> {
        let number = self.number(least, most)?;
        if number.fract() == 0.0 {
            Ok(number as usize)
        } else {
            self.bad(format!("is {number}: it must be a whole number"))
        }
    }

    fn text(&self) -> Result<&'a str, BadField> {
        self.value.as_str().map_or_else(|| self.bad(format!("is {}: it must be a text", short(self.value))), Ok)
    }

    fn list(&self) -> Result<Vec<Field<'a>>, BadField> {
        let Some(all) = self.value.as_array() else {
            return self.bad(format!("is {}: it must be a list", short(self.value)));
        };
        let entry = |(at, value)| Field { path: format!("{}[{at}]", self.path), value };
        Ok(all.iter().enumerate().map(entry).collect())
    }

    fn numbers<const N: usize>(&self, names: [&str; N]) -> Result<[f64; N], BadField> {
        let mut all = [0.0; N];
        for (number, name) in all.iter_mut().zip(names) {
            *number = self.need(name)?.number(0.0, MOST_PER_M3)?;
        }
        Ok(all)
    }
}

fn short(value: &Value) -> String {
    match value {
        Value::Array(_) => "a list".to_owned(),
        Value::Object(_) => "an object".to_owned(),
        other => other.to_string().chars().take(40).collect(),
    }
}

fn whole(file: &Field) -> Result<ScenarioFile, BadField> {
    let reactor = file.need("reactor")?;
    let vessel = Vessel {
        liquid_m3: reactor.need("V_liq_m3")?.number(1e-6, 1e6)?,
        head_m3: reactor.need("V_gas_m3")?.number(1e-6, 1e6)?,
        k_p_m3_per_d_bar: reactor.need("k_p_m3_per_d_bar")?.number(0.0, 1e9)?,
        k_la_per_d: reactor.need("kLa_per_d")?.number(0.0, 1e6)?,
        p_atm_bar: reactor.get("P_atm_bar").map_or(Ok(Vessel::BSM2.p_atm_bar), |p| p.number(0.3, 2.0))?,
        solids_leaving: reactor.get("solids_leaving").map_or(Ok(1.0), |share| share.number(0.0, 1.0))?,
    };
    let days = file.need("n_days")?.whole_number(1.0, MOST_DAYS)?;
    let influents: Vec<_> =
        file.need("influents")?.list()?.iter().map(|f| f.numbers(LIQUID_NAMES)).collect::<Result<_, _>>()?;
    let kinetics = Kinetics { temperature: kinetics_temperature(file)?, ..Kinetics::BSM2 };
    Ok(ScenarioFile {
        name: file.get("name").map_or(Ok("scenario"), |name| name.text())?.to_owned(),
        columns: columns(file)?,
        scenario: Scenario {
            member: Member { kinetics, vessel },
            initial: file.need("initial")?.numbers(LIQUID_NAMES)?,
            initial_gas: file.need("initial_gas")?.numbers(GAS_NAMES)?,
            celsius: temperatures(file, days)?,
            feeds: feeds(file, influents.len())?,
            influents,
        },
    })
}

fn kinetics_temperature(file: &Field) -> Result<KineticsTemperature, BadField> {
    let field = file.need("kinetics_temperature")?;
    if field.value.is_null() {
        return Ok(KineticsTemperature::None);
    }
    kinetics_temperature_named(field.text()?).map_or_else(
        || field.bad("is not known: use none, hashimoto_uptake_decay+arrhenius64kJ_hydrolysis or cardinal"),
        Ok,
    )
}

fn temperatures(file: &Field, days: usize) -> Result<Vec<f64>, BadField> {
    let field = file.need("temperature_C")?;
    let all = field.list()?;
    if all.len() < days {
        return field.bad(format!("has {} entries: give one for each of the n_days {days}", all.len()));
    }
    all.iter().take(days).map(|celsius| celsius.number(0.0, 70.0)).collect()
}

fn feeds(file: &Field, influents: usize) -> Result<Vec<FeedEvent>, BadField> {
    let feed = |field: &Field| {
        let influent = field.need("influent")?;
        let event = FeedEvent {
            day: field.need("day")?.whole_number(0.0, MOST_DAYS)?,
            start_d: field.need("start_d")?.number(0.0, 1.0)?,
            duration_d: field.need("duration_d")?.number(0.0, MOST_DAYS)?,
            volume_m3: field.need("volume_m3")?.number(0.0, 1e6)?,
            influent: influent.whole_number(0.0, MOST_DAYS)?,
        };
        if event.influent >= influents {
            return influent.bad(format!("is {}: there are {influents} influents, counted from 0", event.influent));
        }
        Ok(event)
    };
    file.need("feeds")?.list()?.iter().map(feed).collect()
}

/// The columns asked for, or the day's main figures.
fn columns(file: &Field) -> Result<Vec<String>, BadField> {
    let Some(field) = file.get("columns") else {
        return Ok(["day", "T_C", "pH", "VFA", "ch4_Nm3_d", "co2_Nm3_d"].map(str::to_owned).to_vec());
    };
    let column = |field: &Field| {
        let name = field.text()?;
        if is_column(name) { Ok(name.to_owned()) } else { field.bad(format!("is {name}: no such column is known")) }
    };
    field.list()?.iter().map(column).collect()
}
