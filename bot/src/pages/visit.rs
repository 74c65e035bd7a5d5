//! Visits: the check of a new tank before its first feed, and a look at a fault, on a form for a phone in the yard.
//!
//! Takes what was found; keeps it with the household's story. What is looked at is one list, [`CHECKS`].

use super::access::{Bar, Worker};
use super::household::known;
use super::photo::{self, Filled};
use super::tongue::counted;
use super::{Broken, Pages, Tongue, page};
use crate::record::local_day;
use crate::staff::name_of;
use crate::store::Visit;
use askama::Template;
use axum::Extension;
use axum::extract::{Path, Query, State};
use axum::response::{Redirect, Response};
use bellyful_core::ids;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::Arc;

ids!(/// What staff come for.
    Errand { NewTank = "new_tank", Fault = "fault" });

impl Errand {
    pub fn name(self, tongue: &Tongue) -> String {
        tongue.say(&format!("errand-{self}"))
    }
}

/// One thing to look at, and on which errands; what it is stands in the pages' messages as `check-` and its id.
pub struct Check {
    pub id: &'static str,
    on: &'static [Errand],
}

impl Check {
    fn what(&self, tongue: &Tongue) -> String {
        tongue.say(&format!("check-{}", self.id))
    }

    /// What it is called where only its name has room: what stands before the colon.
    fn short(&self, tongue: &Tongue) -> String {
        let what = self.what(tongue);
        what.split(':').next().unwrap_or(&what).trim_end().to_owned()
    }
}

const BOTH: &[Errand] = &[Errand::NewTank, Errand::Fault];
const NEW: &[Errand] = &[Errand::NewTank];
const FAULT: &[Errand] = &[Errand::Fault];

/// Source of every row: common practice, no source. The last three of a new tank keep people safe.
pub const CHECKS: [Check; 19] = [
    Check { id: "walls_dark", on: NEW },
    Check { id: "gas_tight", on: BOTH },
    Check { id: "overflow_low", on: NEW },
    Check { id: "overflow_open", on: BOTH },
    Check { id: "inlet_floor", on: NEW },
    Check { id: "outlet_middle", on: NEW },
    Check { id: "gas_high", on: NEW },
    Check { id: "pipe_seals", on: BOTH },
    Check { id: "valve", on: BOTH },
    Check { id: "water_trap", on: BOTH },
    Check { id: "bag", on: BOTH },
    Check { id: "hose", on: BOTH },
    Check { id: "inlet_free", on: FAULT },
    Check { id: "outlet_free", on: FAULT },
    Check { id: "level", on: FAULT },
    Check { id: "flame_blue", on: FAULT },
    Check { id: "flame_far", on: BOTH },
    Check { id: "nobody_falls_in", on: BOTH },
    Check { id: "family_told", on: BOTH },
];

/// Longest note.
const NOTE_MOST: usize = 1000;
/// Visits shown on a household's page, and to who fills in the next one.
pub const SHOWN: u32 = 20;
const EARLIER: u32 = 5;

#[derive(Template)]
#[template(path = "visit.html")]
struct VisitPage {
    tongue: Tongue,
    id: i64,
    name: String,
    worker: Bar,
    errand: Errand,
    /// Id and words of each.
    checks: Vec<(&'static str, String)>,
    /// Earlier ones, latest first.
    visits: Vec<Visited>,
    /// Photos can be taken away here.
    acts: bool,
}

/// A visit, as it is listed.
pub struct Visited {
    pub when: String,
    pub told: String,
    pub photos: Vec<i64>,
}

pub fn listed(tongue: &Tongue, visits: &[Visit]) -> Vec<Visited> {
    let one = |visit: &Visit| Visited {
        when: format!("{}, {}", tongue.day(visit.day), visit.staff),
        told: told(tongue, visit),
        photos: visit.photos.clone(),
    };
    visits.iter().map(one).collect()
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
    let tongue = pages.tongue(&worker);
    page(&VisitPage {
        id,
        name: situation.household.as_ref().map(name_of).unwrap_or_default(),
        worker: worker.bar(""),
        errand,
        checks: of(errand).map(|check| (check.id, check.what(&tongue))).collect(),
        visits: listed(&tongue, &pages.store.visits(id, EARLIER).await?),
        acts: false,
        tongue,
    })
}

/// What is looked at on an errand.
pub fn of(errand: Errand) -> impl Iterator<Item = &'static Check> {
    CHECKS.iter().filter(move |check| check.on.contains(&errand))
}

/// Keeps what was found.
pub async fn keep(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Filled { typed: form, photos }: Filled,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    let situation = known(&pages, id).await?;
    let zone = situation.household.as_ref().map_or("UTC", |household| household.time_zone.as_str());
    let asked = form.get("errand").map_or("", String::as_str);
    let errand = Errand::from_id(asked).ok_or_else(|| Broken::Form("form-choose".into()))?;
    let found = found(errand, &form);
    let note: String = form.get("note").map_or("", |note| note.trim()).chars().take(NOTE_MOST).collect();
    if found.is_empty() && note.is_empty() && photos.is_empty() {
        return Err(Broken::Form("form-visit-empty".into()));
    }
    let visit = Visit {
        at: now,
        day: local_day(now, zone),
        kind: errand,
        staff: worker.name.clone(),
        found,
        note,
        photos: vec![],
    };
    pages.store.keep_visit(id, &visit, photo::fit(photos).await?).await?;
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
pub fn told(tongue: &Tongue, visit: &Visit) -> String {
    let bad: Vec<String> = CHECKS
        .iter()
        .filter(|check| visit.found.get(check.id) == Some(&false))
        .map(|check| check.short(tongue))
        .collect();
    let good = visit.found.values().filter(|good| **good).count();
    let id = if bad.is_empty() { "visit-told-good" } else { "visit-told" };
    let values = [("errand", visit.kind.name(tongue).into()), ("good", counted(good)), ("bad", bad.join("; ").into())];
    format!("{} {}", tongue.with(id, &values), visit.note).trim_end().to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mind::Mind;
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
            kind: Errand::NewTank,
            staff: "Asha".into(),
            found,
            note: "Back on Monday".into(),
            photos: vec![],
        };
        let tongue = Tongue::of(&Arc::new(Mind::new(None, 1).expect("sound words")), "en");
        assert_eq!(told(&tongue, &visit), "Check of a new tank: 1 good, to mend: Gas-tight. Back on Monday");
    }

    #[test]
    fn each_check_has_a_name_of_its_own() {
        let ids: std::collections::BTreeSet<_> = CHECKS.iter().map(|check| check.id).collect();
        assert_eq!(ids.len(), CHECKS.len());
    }
}
