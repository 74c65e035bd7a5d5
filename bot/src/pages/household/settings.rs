//! What is known of a digester and its family, seen and changed by staff.
//!
//! Takes a form; gives facts, told on the day of the change, so that the history of each setting is kept with all else.

use super::super::access::Worker;
use super::super::tongue::date_of;
use super::super::{Broken, Pages, Sentence, Tongue};
use super::acts::{known, told_by_hand};
use crate::deed::Did;
use crate::household::{Household, Sender, Staff};
use crate::mind::Mind;
use crate::places;
use crate::record::{Recorded, local_day};
use crate::reply::word::Voice;
use crate::store::{Cause, Wanted};
use crate::twins::Believed;
use axum::Extension;
use axum::extract::{Form, Path, State};
use axum::response::Redirect;
use bellyful_core::fact::{Fact, Measure, Walls, What};
use bellyful_core::site::Site;
use bellyful_core::units::Day;
use chrono::NaiveDate;
use serde::Deserialize;
use std::sync::Arc;

/// A field of the form.
pub struct Setting {
    pub field: &'static str,
    pub name: String,
    pub value: String,
    pub kind: &'static str,
}

/// One of a list.
pub struct Choice {
    pub id: String,
    pub name: String,
    pub chosen: bool,
}

/// The fields that are typed.
pub fn numbers(tongue: &Tongue, household: &Household, site: &Site) -> Vec<Setting> {
    let litres = |value: Option<f64>| value.map_or(String::new(), |value| format!("{value}"));
    let setting =
        |field: &'static str, kind, value| Setting { field, name: tongue.say(&format!("set-{field}")), value, kind };
    let text = |field, value| setting(field, "text", value);
    let started = site.started.map(date_of);
    vec![
        text("name", household.name.clone()),
        text("place", site.place.clone().unwrap_or_default()),
        text("tank_l", litres(site.tank_l)),
        text("liquid_l", litres(site.liquid_l)),
        text("store_l", litres(site.store_l)),
        text("people", site.people.map_or(String::new(), |count| count.to_string())),
        setting("started", "date", started.map_or(String::new(), |day| day.format("%Y-%m-%d").to_string())),
    ]
}

pub fn langs(mind: &Mind, household: &Household) -> Vec<Choice> {
    let name = |code: &str| mind.catalog.say(code, "language-name", &[]);
    let choice = |code: &str| Choice { id: code.to_owned(), name: name(code), chosen: household.lang == code };
    mind.catalog.languages().map(choice).collect()
}

pub fn walls(tongue: &Tongue, site: &Site) -> Vec<Choice> {
    let nothing = Choice { id: String::new(), name: tongue.say("not-told"), chosen: site.walls.is_none() };
    let of = |walls: &Walls| Choice {
        id: walls.id().into(),
        name: tongue.say(&format!("walls-{walls}")),
        chosen: site.walls == Some(*walls),
    };
    std::iter::once(nothing).chain(Walls::ALL.iter().map(of)).collect()
}

pub fn workers(tongue: &Tongue, staff: &[Staff], household: &Household) -> Vec<Choice> {
    let nobody = Choice { id: String::new(), name: tongue.say("nobody"), chosen: household.staff_id.is_none() };
    let of = |staff: &Staff| Choice {
        id: staff.id.to_string(),
        name: staff.name.clone(),
        chosen: household.staff_id == Some(staff.id),
    };
    std::iter::once(nobody).chain(staff.iter().map(of)).collect()
}

/// The measures that people count in, as the staff's language calls them.
pub fn measures(voice: &Voice) -> Vec<Choice> {
    let of = |measure: &Measure| Choice { id: measure.id().into(), name: voice.measure(*measure), chosen: false };
    Measure::ALL.iter().map(of).collect()
}

/// What was told of the digester, latest first: the day it holds from, and what.
pub fn told(tongue: &Tongue, voice: &Voice, facts: &[Fact]) -> Vec<(String, String)> {
    let what = |fact: &Fact| match &fact.what {
        What::Liquid { litres } => Some(tongue.count("told-liquid", litres)),
        What::Started => Some(tongue.say("told-started")),
        What::Tank { .. }
        | What::Store { .. }
        | What::Walls { .. }
        | What::Seeded { .. }
        | What::People { .. }
        | What::Place { .. }
        | What::Measure { .. } => voice.undated(fact, fact.day),
        _ => None,
    };
    facts.iter().rev().filter_map(|fact| Some((tongue.day(fact.day), what(fact)?))).take(TOLD_MOST).collect()
}

const TOLD_MOST: usize = 40;

#[derive(Deserialize)]
pub struct Settings {
    name: String,
    lang: String,
    staff: String,
    place: String,
    tank_l: String,
    liquid_l: String,
    store_l: String,
    people: String,
    started: String,
    walls: String,
}

const NAME_MOST: usize = 80;

/// Keeps what was changed. Errors: one sentence on what was typed wrongly; nothing is kept then.
pub async fn settle(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Form(form): Form<Settings>,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    let mut situation = known(&pages, id).await?;
    let household = situation.household.clone().ok_or(Broken::NoHousehold(id))?;
    let today = local_day(now, &household.time_zone);
    let site = Believed::on(&situation, &household, today).so_far.site;
    let mut changed = Changed { household, facts: vec![], told_at: now.timestamp() };
    changed.read(&form, &site, &pages.mind, &pages.store.staff().await?, today).map_err(Broken::Form)?;
    let Changed { household, facts, .. } = changed;
    // What holds from an earlier day on is folded in from that day.
    let first = facts.iter().map(|fact| fact.day).min().unwrap_or(today);
    if first < today {
        let sender = Sender::Family { household: id, stopped: false };
        situation = pages.store.situation(&sender, Wanted { household: None, since: Some(first) }).await?;
    }
    let audit = Did::ChangedSettings { facts: facts.clone() }.by(&worker.name);
    let recorded = Recorded { household, facts, taken_back: vec![], doubt: None };
    let decision = told_by_hand(&situation, recorded, today, audit);
    pages.store.keep(Cause::Hand, &situation, decision, now).await?;
    Ok(Redirect::to(&format!("/household/{id}#settings")))
}

/// A household being changed.
struct Changed {
    household: Household,
    facts: Vec<Fact>,
    told_at: i64,
}

impl Changed {
    fn add(&mut self, day: Day, what: What) {
        self.facts.push(Fact { id: self.household.next_fact, day, told_at: self.told_at, what });
        self.household.next_fact += 1;
    }

    /// Takes over what differs from what is known. Errors: the sentence to show.
    fn read(&mut self, form: &Settings, site: &Site, mind: &Mind, staff: &[Staff], today: Day) -> Result<(), Sentence> {
        self.household.name = form.name.trim().chars().take(NAME_MOST).collect();
        if !mind.catalog.speaks(&form.lang) {
            return Err("form-choose".into());
        }
        self.household.lang = form.lang.clone();
        self.household.staff_id = match form.staff.as_str() {
            "" => None,
            id => Some(staff.iter().map(|staff| staff.id).find(|of| of.to_string() == id).ok_or("form-choose")?),
        };
        let tank = litres("tank_l", &form.tank_l, site.tank_l)?;
        let liquid = litres("liquid_l", &form.liquid_l, site.liquid_l)?;
        let store = litres("store_l", &form.store_l, site.store_l)?;
        if let (Some(tank), Some(liquid)) = (tank.or(site.tank_l), liquid.or(site.liquid_l))
            && liquid > tank
        {
            return Err(Sentence::with("form-slurry-fits", [("liquid", liquid.into()), ("tank", tank.into())]));
        }
        tank.into_iter().for_each(|litres| self.add(today, What::Tank { litres }));
        liquid.into_iter().for_each(|litres| self.add(today, What::Liquid { litres }));
        store.into_iter().for_each(|litres| self.add(today, What::Store { litres }));
        if let Some(count) = number("people", &form.people, site.people.map(f64::from), 500.0)? {
            self.add(today, What::People { count: count as u32 });
        }
        if let Some(look) = Walls::from_id(&form.walls).filter(|look| site.walls != Some(*look)) {
            self.add(today, What::Walls { look });
        }
        if !form.started.trim().is_empty() {
            let day = NaiveDate::parse_from_str(form.started.trim(), "%Y-%m-%d").map_err(|_| "form-date")?;
            let day = Day(day.signed_duration_since(NaiveDate::default()).num_days() as i32);
            if day > today || day < today.plus(-STARTED_MOST) {
                return Err("form-date-range".into());
            }
            if site.started != Some(day) {
                self.add(day, What::Started);
            }
        }
        self.place(form.place.trim(), site, today)
    }

    fn place(&mut self, typed: &str, site: &Site, today: Day) -> Result<(), Sentence> {
        if typed.is_empty() || site.place.as_deref() == Some(typed) {
            return Ok(());
        }
        moved(&mut self.household, typed)?.into_iter().for_each(|what| self.add(today, what));
        Ok(())
    }
}

/// The household lives in the place typed from now on, and what is known of it there. Errors: no such town.
pub(super) fn moved(household: &mut Household, typed: &str) -> Result<[What; 3], Sentence> {
    let found = places::find(typed, household.country.as_deref())
        .ok_or_else(|| Sentence::with("form-no-town", [("name", typed.into())]))?;
    household.country = Some(found.place.country.clone());
    household.time_zone = found.place.time_zone.clone();
    let (code, normals) = (found.place.country.clone(), found.place.normals.clone());
    Ok([What::Place { name: typed.to_owned() }, What::Country { code }, What::Sited { normals }])
}

const STARTED_MOST: i32 = 30 * 366;
/// Largest vessel of a household. Units: l.
const LITRES_MOST: f64 = 100_000.0;

/// What was typed, if it differs from what is known.
fn litres(field: &'static str, typed: &str, known: Option<f64>) -> Result<Option<f64>, Sentence> {
    number(field, typed, known, LITRES_MOST)
}

fn number(field: &'static str, typed: &str, known: Option<f64>, most: f64) -> Result<Option<f64>, Sentence> {
    if typed.trim().is_empty() {
        return Ok(None);
    }
    let value = typed.trim().replace(',', ".").parse::<f64>().ok().filter(|value| *value > 0.0 && *value <= most);
    let value = value.ok_or_else(|| Sentence::with("form-above", [("field", field.into()), ("most", most.into())]))?;
    Ok(Some(value).filter(|value| known != Some(*value)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_differs_is_told_and_nonsense_is_a_sentence() {
        assert_eq!(number("tank_l", "1000", Some(1000.0), 1e5), Ok(None));
        assert_eq!(number("tank_l", " 1,5 ", Some(1000.0), 1e5), Ok(Some(1.5)));
        assert_eq!(number("tank_l", "", Some(1000.0), 1e5), Ok(None));
        for wrong in ["-3", "0", "NaN", "inf", "1e9", "ten"] {
            assert!(number("tank_l", wrong, None, 1e5).is_err_and(|told| told.id == "form-above"), "{wrong}");
        }
    }
}
