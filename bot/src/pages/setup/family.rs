//! A new household, or a second tank of one, set up on the page.

use super::super::access::Worker;
use super::super::{Broken, Pages};
use super::people::{gateway, number};
use crate::household::Sender;
use crate::setup::{Setup, set_up};
use crate::store::Cause;
use crate::workbench::nobody;
use axum::Extension;
use axum::extract::{Form, State};
use axum::response::Redirect;
use bellyful_core::fact::Walls;
use serde::Deserialize;
use std::sync::Arc;

#[derive(Deserialize)]
pub struct NewHousehold {
    name: String,
    phone: String,
    gateway: String,
    lang: String,
    place: String,
    tank_l: String,
    liquid_l: String,
    store_l: String,
    walls: String,
    /// They said yes to texts.
    #[serde(default)]
    agreed: String,
}

const NAME_MOST: usize = 80;

/// Sets a household up. Errors: a sentence on what was typed; nothing is kept then.
pub async fn household(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Form(form): Form<NewHousehold>,
) -> Result<Redirect, Broken> {
    let now = (pages.clock)();
    if form.agreed != "yes" {
        return Err(Broken::Form("Ask the family first; only who agreed to texts is set up.".into()));
    }
    let phone = number(&form.phone)?.ok_or_else(|| Broken::Form("Give the number they text from.".into()))?;
    if pages.store.sender(&phone).await? != (Sender::Stranger { stopped: false }) {
        return Err(Broken::Form(
            "This number belongs to a household or to staff, or said STOP; give another one.".into(),
        ));
    }
    if !pages.mind.catalog.speaks(&form.lang) {
        return Err(Broken::Form("Choose a language of the list.".into()));
    }
    let place = form.place.trim();
    let known_place = place.is_empty() || crate::places::find(place, crate::number::country(&phone)).is_some();
    if !known_place {
        return Err(Broken::Form(format!(
            "The bot knows no town called {place}; give the nearest town or the district's."
        )));
    }
    let litres = |name: &str, typed: &str| match typed.trim().replace(',', ".") {
        typed if typed.is_empty() => Ok(None),
        typed => {
            typed.parse::<f64>().map(Some).map_err(|_| Broken::Form(format!("{name} must be a number of litres.")))
        }
    };
    let setup = Setup {
        lang: Some(form.lang.clone()),
        name: Some(form.name.trim().chars().take(NAME_MOST).collect()),
        tank_l: litres("The tank", &form.tank_l)?,
        liquid_l: litres("The slurry", &form.liquid_l)?,
        gas_store_l: litres("The gas store", &form.store_l)?,
        place: (!place.is_empty()).then(|| place.to_owned()),
        seeded: None,
        shade: Walls::from_id(&form.walls),
        people: None,
    };
    if let (Some(tank), Some(liquid)) = (setup.tank_l, setup.liquid_l)
        && liquid > tank
    {
        return Err(Broken::Form(format!(
            "Slurry of {liquid} L does not fit a tank of {tank} L; mend one of the two."
        )));
    }
    let gateway = gateway(&pages, &form.gateway)?;
    let mut decision =
        set_up(&pages.mind, &phone, &gateway, &setup, now).map_err(|error| Broken::Form(error.to_string()))?;
    decision.audit = Some(format!("{} set the household up; they agreed to texts", worker.name));
    let kept = pages.store.keep(Cause::Hand, &nobody(), decision, now).await?;
    Ok(Redirect::to(&format!("/household/{}", kept.household)))
}
