//! A family's phones, measures and reminders, and a tank that begins anew, changed by staff.
//!
//! Takes forms; gives facts and rows, with who did it in the household's trail.

use super::super::access::{Role, Worker};
use super::super::setup::{gateway, number};
use super::super::{Broken, Pages};
use super::acts::{known, told_by_hand};
use super::settings;
use crate::deed::Did;
use crate::household::{CareNow, Decision, Due, Household, Phone, Sender, Talk};
use crate::record::{Recorded, local_day};
use crate::store::Cause;
use crate::workbench::nobody;
use axum::Extension;
use axum::extract::{Form, Path, State};
use axum::response::Redirect;
use bellyful_core::fact::{Fact, Measure, Unit, What, standing};
use bellyful_core::feeds::Feed;
use bellyful_core::units::Day;
use serde::Deserialize;
use std::sync::Arc;

/// A phone as the page shows it.
pub struct PhoneRow {
    /// As the role may see it.
    pub shown: String,
    pub number: String,
    pub gateway: String,
    pub stopped: bool,
}

pub fn rows(phones: Vec<(Phone, bool)>, role: Role) -> Vec<PhoneRow> {
    let row = |(phone, stopped): (Phone, bool)| PhoneRow {
        shown: super::shown(&phone.number, role),
        number: if role >= Role::Field { phone.number } else { String::new() },
        gateway: phone.gateway,
        stopped,
    };
    phones.into_iter().map(row).collect()
}

#[derive(Deserialize)]
pub struct PhoneForm {
    act: String,
    number: String,
    #[serde(default)]
    gateway: String,
}

/// A number joins the household, or leaves it.
pub async fn phone(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Form(form): Form<PhoneForm>,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    let situation = known(&pages, id).await?;
    if form.act == "remove" {
        if !pages.store.part_phone(id, form.number.trim(), &worker.name, now).await? {
            return Err(Broken::Form("form-not-theirs".into()));
        }
        return Ok(back(id));
    }
    let number = number(&form.number)?.ok_or_else(|| Broken::Form("form-number-needed".into()))?;
    match pages.store.sender(&number).await? {
        Sender::Stranger { stopped: false } => {}
        Sender::Stranger { stopped: true } => {
            return Err(Broken::Form("form-number-stopped".into()));
        }
        Sender::Family { household, .. } => {
            return Err(Broken::form("form-number-household", [("id", household.to_string().into())]));
        }
        Sender::Staff(staff) => return Err(Broken::form("form-number-staff", [("name", staff.name.into())])),
    }
    let join = vec![Phone { gateway: gateway(&pages, &form.gateway)?, number }];
    let audit = Some(Did::AddedPhone.by(&worker.name));
    pages.store.keep(Cause::Hand, &situation, Decision { join, audit, ..Decision::default() }, now).await?;
    Ok(back(id))
}

fn back(id: i64) -> Redirect {
    Redirect::to(&format!("/household/{id}#phones"))
}

#[derive(Deserialize)]
pub struct MeasureForm {
    measure: String,
    litres: String,
}

/// Largest thing that people carry feed or water in. Units: l.
const MEASURE_MOST: f64 = 250.0;

/// What one of their measures holds.
pub async fn measure(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Form(form): Form<MeasureForm>,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    let unit = Measure::from_id(&form.measure).ok_or_else(|| Broken::Form("form-choose".into()))?;
    let litres = form.litres.trim().replace(',', ".").parse::<f64>().ok();
    let litres = litres
        .filter(|litres| *litres > 0.0 && *litres <= MEASURE_MOST)
        .ok_or_else(|| Broken::form("form-measure-litres", [("most", MEASURE_MOST.into())]))?;
    let situation = known(&pages, id).await?;
    let mut household = situation.household.clone().ok_or(Broken::NoHousehold(id))?;
    let today = local_day(now, &household.time_zone);
    let what = What::Measure { unit, litres };
    let fact = Fact { id: household.next_fact, day: today, told_at: now.timestamp(), what };
    household.next_fact += 1;
    let recorded = Recorded { household, facts: vec![fact], taken_back: vec![], doubt: None };
    let audit = Did::ToldMeasure { unit, litres }.by(&worker.name);
    let decision = told_by_hand(&situation, recorded, today, audit);
    pages.store.keep(Cause::Hand, &situation, decision, now).await?;
    Ok(Redirect::to(&format!("/household/{id}#settings")))
}

#[derive(Deserialize)]
pub struct RemindersForm {
    reminders: String,
}

/// Ends reminders, or begins them again for a family that asked.
pub async fn reminders(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Form(form): Form<RemindersForm>,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    let situation = known(&pages, id).await?;
    let mut household = situation.household.clone().ok_or(Broken::NoHousehold(id))?;
    household.talk.muted = form.reminders != "on";
    let did = if household.talk.muted { Did::EndedReminders } else { Did::BeganReminders };
    let audit = Some(did.by(&worker.name));
    let decision = Decision { household: Some(household), audit, ..Decision::default() };
    pages.store.keep(Cause::Hand, &situation, decision, now).await?;
    Ok(back(id))
}

#[derive(Deserialize)]
pub struct RestartForm {
    #[serde(default)]
    sure: String,
    #[serde(default)]
    manure_kg: String,
    /// Where it stands now, if the family moved.
    #[serde(default)]
    place: String,
}

/// Most starter that a tank is filled with. Units: kg.
const STARTER_MOST: f64 = 100_000.0;

/// A tank that was emptied and filled anew: its story begins again under a number of its own, with the same phones;
/// what came before stays to be read under the old one.
pub async fn restart(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path(id): Path<i64>,
    Form(form): Form<RestartForm>,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    if form.sure != "yes" {
        return Err(Broken::Form("form-restart-sure".into()));
    }
    let kg = match form.manure_kg.trim().replace(',', ".") {
        typed if typed.is_empty() => None,
        typed => Some(
            typed
                .parse::<f64>()
                .ok()
                .filter(|kg| *kg > 0.0 && *kg <= STARTER_MOST)
                .ok_or_else(|| Broken::Form("form-starter".into()))?,
        ),
    };
    let situation = known(&pages, id).await?;
    let old = situation.household.clone().ok_or(Broken::NoHousehold(id))?;
    let mut here = old.clone();
    let moved = match form.place.trim() {
        "" => vec![],
        place => settings::moved(&mut here, place).map_err(Broken::Form)?.to_vec(),
    };
    if old.talk.closed {
        return Err(Broken::Form("form-closed".into()));
    }
    let today = local_day(now, &here.time_zone);
    let facts = begun_anew(moved, &pages.store.facts(id).await?, today, now.timestamp(), kg);
    let household = Household {
        id: 0,
        seed: rand::random(),
        next_fact: facts.len() as i64 + 1,
        talk: Talk {
            met: true,
            latin_script: old.talk.latin_script,
            muted: old.talk.muted,
            feed_unit: old.talk.feed_unit,
            water_unit: old.talk.water_unit,
            last_heard: old.talk.last_heard,
            came_from: Some(id),
            ..Talk::default()
        },
        ..here
    };
    let join = pages.store.all_phones(id).await?.into_iter().map(|(phone, _)| phone).collect();
    let audit = Some(Did::BeganAnew { before: id }.by(&worker.name));
    let begun = Decision { household: Some(household), join, facts, audit, ..Decision::default() };
    // The old one first: a number can leave a closed story, but two open ones must not share it.
    let mut closed = Household { name: String::new(), staff_id: None, ..old };
    closed.talk.closed = true;
    let end = Decision {
        household: Some(closed),
        due: Due::ALL.iter().map(|due| (*due, None)).collect(),
        acknowledged_by: Some(worker.id),
        care: Some(CareNow::GivenBack),
        audit: Some(Did::ClosedStory.by(&worker.name)),
        ..Decision::default()
    };
    pages.store.keep(Cause::Hand, &situation, end, now).await?;
    let kept = pages.store.keep(Cause::Hand, &nobody(), begun, now).await?;
    let situation = known(&pages, id).await?;
    let mut closed = situation.household.clone().ok_or(Broken::NoHousehold(id))?;
    closed.talk.goes_on = Some(kept.household);
    let link = Decision { household: Some(closed), ..Decision::default() };
    pages.store.keep(Cause::Hand, &situation, link, now).await?;
    Ok(Redirect::to(&format!("/household/{}", kept.household)))
}

/// What still holds of the vessel, its place and its people, told anew for a tank filled today. What `moved` them says
/// goes before what was told earlier.
fn begun_anew(moved: Vec<What>, facts: &[Fact], today: Day, told_at: i64, manure_kg: Option<f64>) -> Vec<Fact> {
    let mut holds: Vec<What> = moved.into_iter().rev().collect();
    for fact in standing(facts).into_iter().rev() {
        let kind = std::mem::discriminant(&fact.what);
        let lasting = matches!(
            fact.what,
            What::Tank { .. }
                | What::Liquid { .. }
                | What::Store { .. }
                | What::Walls { .. }
                | What::People { .. }
                | What::Place { .. }
                | What::Country { .. }
                | What::Sited { .. }
                | What::Measure { .. }
        );
        let same = |known: &What| match (known, &fact.what) {
            (What::Measure { unit: a, .. }, What::Measure { unit: b, .. }) => a == b,
            (known, _) => std::mem::discriminant(known) == kind,
        };
        if lasting && !holds.iter().any(same) {
            holds.push(fact.what.clone());
        }
    }
    holds.reverse();
    holds.push(What::Started);
    let starter = |kg| What::Seeded { feed: Feed::CattleManure, amount: Some(kg), unit: Some(Unit::Kg) };
    holds.extend(manure_kg.map(starter));
    (1..).zip(holds).map(|(id, what)| Fact { id, day: today, told_at, what }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tank_begun_anew_keeps_its_sizes_and_nothing_of_what_was_fed() {
        let told = [
            What::Tank { litres: 800.0 },
            What::Tank { litres: 1000.0 },
            What::Place { name: "Ngara".into() },
            What::Started,
            What::Fed { feed: Feed::CattleManure, amount: Some(3.0), unit: Some(Unit::Kg) },
            What::Measure { unit: Measure::Bucket, litres: 8.0 },
            What::Measure { unit: Measure::Bucket, litres: 10.0 },
        ];
        let facts: Vec<Fact> =
            (1..).zip(told).map(|(id, what)| Fact { id, day: Day(id as i32), told_at: 0, what }).collect();
        let moved = What::Place { name: "Kibondo".into() };
        let anew = begun_anew(vec![moved.clone()], &facts, Day(90), 7, Some(50.0));
        let whats: Vec<&What> = anew.iter().map(|fact| &fact.what).collect();
        let starter = What::Seeded { feed: Feed::CattleManure, amount: Some(50.0), unit: Some(Unit::Kg) };
        let bucket = What::Measure { unit: Measure::Bucket, litres: 10.0 };
        assert_eq!(whats, [&What::Tank { litres: 1000.0 }, &bucket, &moved, &What::Started, &starter]);
        assert!(anew.iter().all(|fact| fact.day == Day(90)) && anew[4].id == 5);
    }
}
