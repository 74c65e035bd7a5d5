//! Visits: the check of a new tank before its first feed, and a look at a fault, on a form for a phone in the yard.
//!
//! Takes what was found; keeps it with the household's story. What is looked at is one list, [`CHECKS`].

use super::access::{Bar, Worker};
use super::household::known;
use super::{Broken, Pages, Tongue, page};
use crate::record::local_day;
use crate::staff::name_of;
use crate::store::Visit;
use askama::Template;
use axum::Extension;
use axum::extract::{Form, Path, Query, State};
use axum::response::{Redirect, Response};
use bellyful_core::ids;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::Arc;

ids!(/// What staff come for.
    Errand { NewTank = "new_tank", Fault = "fault" });

impl Errand {
    pub fn name(self) -> &'static str {
        match self {
            Errand::NewTank => "Check of a new tank",
            Errand::Fault => "A look at a fault",
        }
    }
}

/// One thing to look at, and on which errands.
pub struct Check {
    pub id: &'static str,
    pub what: &'static str,
    on: &'static [Errand],
}

const BOTH: &[Errand] = &[Errand::NewTank, Errand::Fault];
const NEW: &[Errand] = &[Errand::NewTank];
const FAULT: &[Errand] = &[Errand::Fault];

/// Source of every row: common practice, no source. The last three of a new tank keep people safe.
pub const CHECKS: [Check; 19] = [
    Check { id: "walls_dark", what: "Walls dark: no light reaches the slurry", on: NEW },
    Check { id: "gas_tight", what: "Gas-tight: soapy water on every joint, seal and seam shows no bubble", on: BOTH },
    Check { id: "overflow_low", what: "Overflow about 50 mm lower than the mouth of the inlet", on: NEW },
    Check { id: "overflow_open", what: "Overflow runs through a tee that is open to the air", on: BOTH },
    Check { id: "inlet_floor", what: "Inlet pipe 50 mm wide, reaches the floor, foot cut at 45 degrees", on: NEW },
    Check { id: "outlet_middle", what: "Outlet opens at about half height, diagonally across from the inlet", on: NEW },
    Check {
        id: "gas_high",
        what: "Gas opening about 20 mm below the top; its pipe rises above the water line",
        on: NEW,
    },
    Check { id: "pipe_seals", what: "Seals sit tight where the pipes go through the wall", on: BOTH },
    Check { id: "valve", what: "Gas valve turns easily and shuts; half inch, joints not glued", on: BOTH },
    Check { id: "water_trap", what: "Water trap at the lowest point of the gas line, drained", on: BOTH },
    Check { id: "bag", what: "Gas bag whole, in shade, fixed, nothing sharp near it", on: BOTH },
    Check { id: "hose", what: "Hose and stove fittings without cracks, clamped", on: BOTH },
    Check { id: "inlet_free", what: "Inlet free: water poured in goes down", on: FAULT },
    Check { id: "outlet_free", what: "Outlet free: as much comes out as goes in", on: FAULT },
    Check { id: "level", what: "Slurry stands at the overflow", on: FAULT },
    Check { id: "flame_blue", what: "Flame steady and blue", on: FAULT },
    Check { id: "flame_far", what: "Flame and sparks far from tank, bag and pipes; kitchen has moving air", on: BOTH },
    Check { id: "nobody_falls_in", what: "Lids shut; no child or animal can fall in; slurry pit fenced", on: BOTH },
    Check {
        id: "family_told",
        what: "Family knows: gas explodes, egg smell poisons, wash hands, never enter",
        on: BOTH,
    },
];

/// Longest note.
const NOTE_MOST: usize = 1000;
/// Visits shown on a household's page.
pub const SHOWN: u32 = 20;

#[derive(Template)]
#[template(path = "visit.html")]
struct VisitPage {
    tongue: Tongue,
    id: i64,
    name: String,
    worker: Bar,
    errand: Errand,
    checks: Vec<&'static Check>,
}

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    errand: String,
}

pub async fn show(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Query(asked): Query<Asked>,
) -> Result<Response, Broken> {
    let situation = known(&pages, id).await?;
    let errand = Errand::from_id(&asked.errand).unwrap_or(Errand::NewTank);
    page(&VisitPage {
        tongue: pages.tongue(&worker),
        id,
        name: situation.household.as_ref().map(name_of).unwrap_or_default(),
        worker: worker.bar(),
        errand,
        checks: of(errand).collect(),
    })
}

fn of(errand: Errand) -> impl Iterator<Item = &'static Check> {
    CHECKS.iter().filter(move |check| check.on.contains(&errand))
}

/// Keeps what was found.
pub async fn keep(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Form(form): Form<BTreeMap<String, String>>,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    let situation = known(&pages, id).await?;
    let zone = situation.household.as_ref().map_or("UTC", |household| household.time_zone.as_str());
    let asked = form.get("errand").map_or("", String::as_str);
    let errand = Errand::from_id(asked).ok_or_else(|| Broken::Form("form-choose".into()))?;
    let found = found(errand, &form);
    let note: String = form.get("note").map_or("", |note| note.trim()).chars().take(NOTE_MOST).collect();
    if found.is_empty() && note.is_empty() {
        return Err(Broken::Form("form-visit-empty".into()));
    }
    let visit =
        Visit { at: now, day: local_day(now, zone), kind: errand.id().into(), staff: worker.name.clone(), found, note };
    pages.store.keep_visit(id, &visit, &format!("{} was there. {}", worker.name, told(&visit))).await?;
    Ok(Redirect::to(&format!("/household/{id}#visits")))
}

/// What was looked at, and whether it was good.
fn found(errand: Errand, form: &BTreeMap<String, String>) -> BTreeMap<String, bool> {
    of(errand)
        .filter_map(|check| match form.get(check.id)?.as_str() {
            "good" => Some((check.id.to_owned(), true)),
            "bad" => Some((check.id.to_owned(), false)),
            _ => None,
        })
        .collect()
}

/// A visit in a line: what is to be mended first.
pub fn told(visit: &Visit) -> String {
    let name = Errand::from_id(&visit.kind).map_or("Visit", Errand::name);
    let bad: Vec<&str> = CHECKS
        .iter()
        .filter(|check| visit.found.get(check.id) == Some(&false))
        .map(|check| check.what.split(':').next().unwrap_or(check.what))
        .collect();
    let good = visit.found.values().filter(|good| **good).count();
    let mend = if bad.is_empty() { "nothing to mend".to_owned() } else { format!("to mend: {}", bad.join("; ")) };
    let note = if visit.note.is_empty() { String::new() } else { format!(" {}", visit.note) };
    format!("{name}: {good} good, {mend}.{note}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use bellyful_core::units::Day;

    #[test]
    fn what_is_to_be_mended_is_named_and_what_was_not_looked_at_is_not() {
        let form = [("gas_tight", "bad"), ("valve", "good"), ("bag", ""), ("flame_blue", "bad"), ("no_check", "bad")];
        let form = form.map(|(check, mark)| (check.to_owned(), mark.to_owned())).into();
        let found = found(Errand::NewTank, &form);
        assert_eq!(found, [("gas_tight".to_owned(), false), ("valve".to_owned(), true)].into());
        let at = chrono::DateTime::UNIX_EPOCH;
        let visit = Visit {
            at,
            day: Day(0),
            kind: "new_tank".into(),
            staff: "Asha".into(),
            found,
            note: "Back on Monday".into(),
        };
        assert_eq!(told(&visit), "Check of a new tank: 1 good, to mend: Gas-tight. Back on Monday");
    }

    #[test]
    fn each_check_has_a_name_of_its_own() {
        let ids: std::collections::BTreeSet<_> = CHECKS.iter().map(|check| check.id).collect();
        assert_eq!(ids.len(), CHECKS.len());
    }
}
