//! One digester: vessel, gas store, walls, place.
//!
//! Folded from facts; never guessed here: what is not told is `None`, and who uses it chooses the default aloud.

use crate::fact::{Fact, Measure, Walls, What};
use crate::feeds::measures::Measures;
use crate::units::Day;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// The climate of a place, as monthly normals.
///
/// Source: GeoNames (CC BY 4.0) for the place, ERA5 (Copernicus) for the normals.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Normals {
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub elevation_m: f64,
    /// Mean air temperature, January to December.
    pub air_c: [f64; 12],
    /// Mean difference between a day's warmest and coldest hour, over the year.
    pub day_range_c: f64,
    /// Mean global horizontal irradiation, January to December. Units: MJ/m2/d.
    pub sun_mj_per_m2_d: [f64; 12],
}

/// What is known of one digester and its household's measures.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Site {
    pub tank_l: Option<f64>,
    pub liquid_l: Option<f64>,
    pub store_l: Option<f64>,
    pub walls: Option<Walls>,
    pub started: Option<Day>,
    pub normals: Option<Normals>,
    pub people: Option<u32>,
    pub place: Option<String>,
    /// ISO 3166 code: whose customs the measures follow.
    pub country: Option<String>,
    /// Litres, as the household said.
    pub measures_l: BTreeMap<Measure, f64>,
}

impl Site {
    /// The site after one more fact; facts that say nothing of it leave it as it was.
    pub fn learn(&mut self, fact: &Fact) {
        match &fact.what {
            What::Tank { litres } => self.tank_l = Some(*litres),
            What::Liquid { litres } => self.liquid_l = Some(*litres),
            What::Store { litres } => self.store_l = Some(*litres),
            What::Walls { look } => self.walls = Some(*look),
            What::Started => self.started = Some(fact.day),
            What::Seeded { .. } => self.started = Some(self.started.map_or(fact.day, |day| day.min(fact.day))),
            What::Sited { normals } => self.normals = Some(normals.clone()),
            What::Place { name } => self.place = Some(name.clone()),
            What::Country { code } => self.country = Some(code.clone()),
            What::People { count } => self.people = Some(*count),
            What::Measure { unit, litres } => {
                self.measures_l.insert(*unit, *litres);
            }
            _ => {}
        }
    }

    /// Slurry up to the overflow: as told, else four fifths of the tank, else of a tank of 1,000 l. Units: l.
    ///
    /// Source: common practice, no source (the outlet stands near that height; the rest holds gas).
    pub fn slurry_l(&self) -> f64 {
        self.liquid_l.unwrap_or_else(|| self.tank_l.unwrap_or(1000.0) * 0.8)
    }

    /// The measures this household counts in.
    pub fn measures(&self) -> Measures<'_> {
        Measures { country: self.country.as_deref(), told: Some(&self.measures_l) }
    }
}
