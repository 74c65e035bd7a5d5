//! How warm the slurry was over past days, by the season, the walls and what a thermometer told: for drawing.
//!
//! Takes the site and the told temperatures; gives a band a day. Belief itself is the ensemble's.

use super::Band;
use super::ensemble::Surroundings;
use super::guess::{WARMTH_MEAN_K, WARMTH_SPREAD_K};
use crate::site::Site;
use crate::units::{Day, Litres};
use crate::warmth::{self, Fed};

/// The band on each day from `from` to `to`. Units: °C. `told`: what a thermometer told on a day.
pub fn slurry_over(site: &Site, liquid: Litres, from: Day, to: Day, told: impl Fn(Day) -> Option<f64>) -> Vec<Band> {
    let offsets = [-1.0, 0.0, 1.0].map(|z| WARMTH_MEAN_K + z * WARMTH_SPREAD_K);
    let first = Surroundings::of(site, liquid, from);
    let mut celsius = offsets.map(|k| warmth::settles_at_c(&first.shell, &first.weather, Fed::NOTHING, k));
    (from.0..=to.0)
        .map(|day| {
            let around = Surroundings::of(site, liquid, Day(day));
            for (celsius, offset) in celsius.iter_mut().zip(offsets) {
                *celsius = warmth::step(*celsius, &around.shell, &around.weather, Fed::NOTHING, offset, 1.0);
                if let Some(told) = told(Day(day)) {
                    *celsius += super::ensemble::BY_THERMOMETER * (told - *celsius);
                }
            }
            Band { day: Day(day), low: celsius[0], middle: celsius[1], high: celsius[2] }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_highland_year_swings_and_a_thermometer_narrows_it() {
        let normals = crate::site::Normals {
            latitude_deg: 28.0,
            longitude_deg: 84.0,
            elevation_m: 1300.0,
            air_c: [9.0, 11.0, 15.0, 19.0, 22.0, 24.0, 24.0, 24.0, 23.0, 19.0, 14.0, 10.0],
            day_range_c: 12.0,
            sun_mj_per_m2_d: [13.0; 12],
        };
        let site = Site { tank_l: Some(1000.0), normals: Some(normals), ..Site::default() };
        let over = |told: Option<f64>| slurry_over(&site, Litres::of(800.0), Day(20_454), Day(20_818), |_| told);
        let untold = over(None);
        assert_eq!(untold.len(), 365);
        assert!(untold.iter().all(|band| band.low < band.middle && band.middle < band.high));
        let warmest = untold.iter().map(|band| band.middle).fold(f64::MIN, f64::max);
        let coldest = untold.iter().map(|band| band.middle).fold(f64::MAX, f64::min);
        assert!((8.0..25.0).contains(&(warmest - coldest)), "{coldest} to {warmest}");
        let told = over(Some(20.0));
        assert!(told.iter().all(|band| band.high - band.low < 2.0), "{:?}", told.last());
    }
}
