//! A household set up in one line, as a programme hands over what it knows.
//!
//! Takes the set-up object of `converse`; gives the decision that makes the household. Counts as consent.

use crate::household::{Decision, Phone};
use crate::message::Inbound;
use crate::mind::Mind;
use crate::record::local_day;
use crate::{number, places};
use bellyful_core::fact::{Fact, Unit, Walls, What};
use bellyful_core::feeds::Feed;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};
use serde::Deserialize;

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Setup {
    pub lang: Option<String>,
    pub name: Option<String>,
    pub tank_l: Option<f64>,
    pub liquid_l: Option<f64>,
    pub gas_store_l: Option<f64>,
    pub place: Option<String>,
    pub seeded: Option<Seeded>,
    pub shade: Option<Walls>,
    pub people: Option<u32>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Seeded {
    pub feed: Feed,
    pub kg: f64,
    pub days_ago: u32,
}

/// Largest vessel that is set up. Units: l. Source: our choice.
pub const VESSEL_MOST: f64 = 1e6;

#[derive(Debug, thiserror::Error)]
pub enum SetupError {
    #[error("{what} cannot be {value}: give a number above 0 and at most {most}")]
    Number { what: &'static str, value: f64, most: f64 },
}

impl Setup {
    /// Errors: a size that no household's digester has.
    pub fn check(&self) -> Result<(), SetupError> {
        let within = |what, value: Option<f64>, most: f64| match value {
            Some(value) if !(value > 0.0 && value <= most) => Err(SetupError::Number { what, value, most }),
            _ => Ok(()),
        };
        within("tank_l", self.tank_l, VESSEL_MOST)?;
        within("liquid_l", self.liquid_l, VESSEL_MOST)?;
        within("gas_store_l", self.gas_store_l, VESSEL_MOST)?;
        within("seeded.kg", self.seeded.as_ref().map(|seeded| seeded.kg), 1e5)?;
        within("seeded.days_ago", self.seeded.as_ref().map(|s| f64::from(s.days_ago) + 1.0), 10_000.0)
    }
}

/// The household of `from`, made with all that is known of it.
pub fn set_up(
    mind: &Mind,
    from: &str,
    gateway: &str,
    setup: &Setup,
    at: DateTime<Utc>,
) -> Result<Decision, SetupError> {
    setup.check()?;
    let inbound = Inbound {
        gateway: gateway.to_owned(),
        id: "setup".into(),
        from: from.to_owned(),
        to: None,
        text: String::new(),
        sent_at: at,
        received_at: at,
    };
    let mut household = mind.newcomer(&inbound, setup.lang.as_deref().unwrap_or("en"));
    household.talk.met = true;
    household.name = setup.name.clone().unwrap_or_default();
    let found = setup.place.as_deref().and_then(|place| places::find(place, number::country(from)));
    if let Some(found) = &found {
        household.country = Some(found.place.country.clone());
        household.time_zone = found.place.time_zone.clone();
    }
    let today = local_day(at, &household.time_zone);
    // What the vessel is like was so from its first day on.
    let first = today.plus(-(setup.seeded.as_ref().map_or(0, |seeded| seeded.days_ago) as i32));
    let mut known: Vec<(Day, What)> = vec![];
    known.extend(household.country.clone().map(|code| (first, What::Country { code })));
    known.extend(setup.place.clone().map(|name| (first, What::Place { name })));
    known.extend(found.map(|found| (first, What::Sited { normals: found.place.normals.clone() })));
    known.extend(setup.tank_l.map(|litres| (first, What::Tank { litres })));
    known.extend(setup.liquid_l.map(|litres| (first, What::Liquid { litres })));
    known.extend(setup.gas_store_l.map(|litres| (first, What::Store { litres })));
    known.extend(setup.shade.map(|look| (first, What::Walls { look })));
    known.extend(setup.people.map(|count| (first, What::People { count })));
    if let Some(seeded) = &setup.seeded {
        let what = What::Seeded { feed: seeded.feed, amount: Some(seeded.kg), unit: Some(Unit::Kg) };
        known.extend([(first, What::Started), (first, what)]);
    }
    let facts: Vec<Fact> =
        (1..).zip(known).map(|(id, (day, what))| Fact { id, day, told_at: at.timestamp(), what }).collect();
    household.next_fact = facts.len() as i64 + 1;
    Ok(Decision {
        household: Some(household),
        join: vec![Phone { gateway: gateway.to_owned(), number: from.to_owned() }],
        facts,
        ..Decision::default()
    })
}
