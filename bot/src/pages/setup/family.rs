//! A new household, or a second tank of one, set up on the page.

use super::super::access::Worker;
use super::super::{Broken, Pages};
use super::people::{gateway, number};
use crate::deed::Did;
use crate::household::Sender;
use crate::setup::{Setup, SetupError, VESSEL_MOST, set_up};
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
        return Err(Broken::Form("form-agreed".into()));
    }
    let phone = number(&form.phone)?.ok_or_else(|| Broken::Form("form-number-needed".into()))?;
    if pages.store.sender(&phone).await? != (Sender::Stranger { stopped: false }) {
        return Err(Broken::Form("form-number-taken".into()));
    }
    if !pages.mind.catalog.speaks(&form.lang) {
        return Err(Broken::Form("form-choose".into()));
    }
    let place = form.place.trim();
    let known_place = place.is_empty() || crate::places::find(place, crate::number::country(&phone)).is_some();
    if !known_place {
        return Err(Broken::form("form-no-town", [("name", place.into())]));
    }
    let above = |field: &str, most: f64| Broken::form("form-above", [("field", field.into()), ("most", most.into())]);
    let litres = |field: &str, typed: &str| match typed.trim().replace(',', ".") {
        typed if typed.is_empty() => Ok(None),
        typed => typed.parse::<f64>().map(Some).map_err(|_| above(field, VESSEL_MOST)),
    };
    let setup = Setup {
        lang: Some(form.lang.clone()),
        name: Some(form.name.trim().chars().take(NAME_MOST).collect()),
        tank_l: litres("tank_l", &form.tank_l)?,
        liquid_l: litres("liquid_l", &form.liquid_l)?,
        gas_store_l: litres("store_l", &form.store_l)?,
        place: (!place.is_empty()).then(|| place.to_owned()),
        seeded: None,
        shade: Walls::from_id(&form.walls),
        people: None,
    };
    if let (Some(tank), Some(liquid)) = (setup.tank_l, setup.liquid_l)
        && liquid > tank
    {
        return Err(Broken::form("form-slurry-fits", [("liquid", liquid.into()), ("tank", tank.into())]));
    }
    let gateway = gateway(&pages, &form.gateway)?;
    let mut decision = set_up(&pages.mind, &phone, &gateway, &setup, now)
        .map_err(|SetupError::Number { what, most, .. }| above(what, most))?;
    decision.audit = Some(Did::SetUp.by(&worker.name));
    let kept = pages.store.keep(Cause::Hand, &nobody(), decision, now).await?;
    Ok(Redirect::to(&format!("/household/{}", kept.household)))
}
