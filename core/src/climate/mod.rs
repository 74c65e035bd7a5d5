//! The weather that a place has on a usual day of the year: air, ground and sun.
//!
//! Takes the monthly normals of a place and a day; gives what warms and cools a tank there ([`on`] for the day's mean,
//! [`at`] for an hour of it). Never knows this year's weather: what departs from the usual is the ensemble's doubt.

mod air;
mod calendar;
pub mod sun;

pub use air::{air_c, ground_c};
pub use calendar::{day_of_year, month_of};

use crate::site::Normals;
use crate::units::Day;

/// What surrounds a tank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weather {
    pub air_c: f64,
    /// Of the ground half a metre down.
    pub ground_c: f64,
    /// Global irradiance on the level. Units: W/m2.
    pub sun_w_per_m2: f64,
    pub wind_m_per_s: f64,
}

/// Wind about a tank, where none is measured. Units: m/s. Source: FAO-56, chapter 3: 2 m/s.
pub const WIND_M_PER_S: f64 = 2.0;

/// Depth of the ground that counts for a tank on or in it. Units: m. Source: our choice, half a tank's height.
pub const GROUND_DEPTH_M: f64 = 0.5;

const SECONDS_PER_DAY: f64 = 86_400.0;

/// The usual weather of `day`, as its mean.
pub fn on(normals: &Normals, day: Day) -> Weather {
    Weather {
        air_c: air_c(normals, day),
        ground_c: ground_c(normals, day, GROUND_DEPTH_M),
        sun_w_per_m2: air::between_months(&normals.sun_mj_per_m2_d, day) * 1e6 / SECONDS_PER_DAY,
        wind_m_per_s: WIND_M_PER_S,
    }
}

/// The usual weather at an hour of `day`. `hour` is local solar time, 0 to 24.
///
/// The air runs as a cosine with its peak at 15 h (our choice: FAO-56 puts the warmest hour two to three hours after
/// noon); the sun follows the cosine of its zenith angle.
pub fn at(normals: &Normals, day: Day, hour: f64) -> Weather {
    let mean = on(normals, day);
    let swing = libm::cos((hour - 15.0) / 24.0 * 2.0 * std::f64::consts::PI);
    let latitude = normals.latitude_deg.to_radians();
    let declination = sun::declination(day_of_year(day));
    let height = sun::cos_zenith(latitude, declination, sun::hour_angle(hour)).max(0.0);
    let day_mean = sun::mean_cos_zenith(latitude, declination);
    Weather {
        air_c: mean.air_c + 0.5 * normals.day_range_c * swing,
        sun_w_per_m2: if day_mean > 1e-6 { mean.sun_w_per_m2 * height / day_mean } else { 0.0 },
        ..mean
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn nairobi() -> Normals {
        Normals {
            latitude_deg: -1.28,
            longitude_deg: 36.82,
            elevation_m: 1684.0,
            air_c: [20.5, 21.4, 21.3, 20.4, 19.4, 18.1, 17.5, 18.0, 19.4, 20.4, 19.7, 19.8],
            day_range_c: 11.0,
            sun_mj_per_m2_d: [21.0, 22.4, 21.5, 19.0, 17.0, 15.6, 14.5, 15.7, 19.3, 20.1, 18.9, 20.2],
        }
    }

    #[test]
    fn the_hours_of_a_day_average_to_the_day() {
        let (normals, day) = (nairobi(), Day(20_533));
        let mean = on(&normals, day);
        let hours: Vec<Weather> = (0..240).map(|tenth| at(&normals, day, f64::from(tenth) / 10.0)).collect();
        let average = |of: fn(&Weather) -> f64| hours.iter().map(of).sum::<f64>() / hours.len() as f64;
        assert!((average(|hour| hour.air_c) - mean.air_c).abs() < 1e-9);
        assert!((average(|hour| hour.sun_w_per_m2) / mean.sun_w_per_m2 - 1.0).abs() < 0.01);
        let warmest = hours.iter().map(|hour| hour.air_c).fold(f64::MIN, f64::max);
        let coldest = hours.iter().map(|hour| hour.air_c).fold(f64::MAX, f64::min);
        assert!((warmest - coldest - normals.day_range_c).abs() < 1e-9);
        assert_eq!(at(&normals, day, 0.0).sun_w_per_m2, 0.0);
    }
}
