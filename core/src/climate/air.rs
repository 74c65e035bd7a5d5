//! Temperature of the air and the ground on a day, from monthly means.

use super::calendar::day_of_year;
use crate::site::Normals;
use crate::units::Day;
use std::f64::consts::PI;

/// Days of a mean year.
const YEAR_D: f64 = 365.25;

/// The usual mean temperature of the air on `day`. Units: °C.
pub fn air_c(normals: &Normals, day: Day) -> f64 {
    between_months(&normals.air_c, day)
}

/// A value of `day` between two monthly means: straight from one mid-month to the next.
pub(super) fn between_months(months: &[f64; 12], day: Day) -> f64 {
    let at = (f64::from(day_of_year(day)) - 0.5) / YEAR_D * 12.0 - 0.5;
    let before = libm::floor(at);
    let share = at - before;
    let month = |index: f64| months[(index as i64).rem_euclid(12) as usize];
    month(before) * (1.0 - share) + month(before + 1.0) * share
}

/// The usual temperature of the ground `depth_m` under open soil on `day`. Units: °C.
///
/// The year's first harmonic, damped and late with depth: T = mean + A e^(−z/d) cos(ω(t − t0) − z/d), d = √(2κ/ω).
/// Source: Hillel, Introduction to Environmental Soil Physics (from memory); κ 0.5e-6 m2/s for moist loam (from
/// memory).
pub fn ground_c(normals: &Normals, day: Day, depth_m: f64) -> f64 {
    const DIFFUSIVITY_M2_PER_S: f64 = 0.5e-6;
    let omega_per_s = 2.0 * PI / (YEAR_D * 86_400.0);
    let depth = depth_m / libm::sqrt(2.0 * DIFFUSIVITY_M2_PER_S / omega_per_s);

    let mean = normals.air_c.iter().sum::<f64>() / 12.0;
    let month = |index: usize| 2.0 * PI * (index as f64 + 0.5) / 12.0;
    let fold = |wave: fn(f64) -> f64| {
        normals.air_c.iter().enumerate().map(|(index, c)| (c - mean) * wave(month(index))).sum::<f64>() / 6.0
    };
    let (cosine, sine) = (fold(libm::cos), fold(libm::sin));
    let phase = 2.0 * PI * (f64::from(day_of_year(day)) - 0.5) / YEAR_D - depth;
    mean + libm::exp(-depth) * (cosine * libm::cos(phase) + sine * libm::sin(phase))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn normals(air_c: [f64; 12]) -> Normals {
        Normals {
            latitude_deg: 0.0,
            longitude_deg: 0.0,
            elevation_m: 0.0,
            air_c,
            day_range_c: 10.0,
            sun_mj_per_m2_d: [20.0; 12],
        }
    }

    /// Pretoria, ERA5.
    const PRETORIA: [f64; 12] = [22.3, 22.2, 20.8, 17.7, 14.7, 11.9, 11.7, 15.1, 19.0, 20.8, 21.2, 22.0];

    #[test]
    fn mid_month_has_its_months_mean_and_the_days_between_run_from_one_to_the_next() {
        let pretoria = normals(PRETORIA);
        assert!((air_c(&pretoria, Day(20_454 + 15)) - 22.3).abs() < 0.05, "16 January 2026");
        let july: Vec<f64> = (0..31).map(|of| air_c(&pretoria, Day(20_635 + of))).collect();
        assert!(july.iter().all(|c| (11.6..13.5).contains(c)), "{july:?}");
        let year = (0..365).map(|of| air_c(&pretoria, Day(20_454 + of))).sum::<f64>() / 365.0;
        assert!((year - PRETORIA.iter().sum::<f64>() / 12.0).abs() < 0.1);
    }

    #[test]
    fn the_ground_is_steadier_and_later_than_the_air() {
        let pretoria = normals(PRETORIA);
        let year = |depth: f64| (0..365).map(|of| ground_c(&pretoria, Day(20_454 + of), depth)).collect::<Vec<f64>>();
        let range =
            |of: &[f64]| of.iter().fold(f64::MIN, |a, &b| a.max(b)) - of.iter().fold(f64::MAX, |a, &b| a.min(b));
        let coldest = |of: &[f64]| of.iter().enumerate().min_by(|a, b| a.1.total_cmp(b.1)).unwrap().0;
        let (surface, deep) = (year(0.0), year(2.0));
        assert!(range(&deep) < 0.5 * range(&surface));
        assert!((20..100).contains(&(coldest(&deep) - coldest(&surface))));
    }
}
