//! Where the sun stands and what it gives above the air.
//!
//! Takes latitude (radians), day of the year and hour; gives angles (radians) and MJ/m2/d. All of it after FAO
//! Irrigation and Drainage Paper 56 (Allen et al. 1998), equations named at each function.

use std::f64::consts::PI;

/// Units: MJ/m2/min. Source: FAO-56, equation 21.
const SOLAR_CONSTANT: f64 = 0.0820;

/// Angle of the sun over the equator. Source: FAO-56, equation 24.
pub fn declination(day_of_year: u32) -> f64 {
    0.409 * libm::sin(2.0 * PI / 365.0 * f64::from(day_of_year) - 1.39)
}

/// Square of mean over actual distance to the sun. Source: FAO-56, equation 23.
fn nearness(day_of_year: u32) -> f64 {
    1.0 + 0.033 * libm::cos(2.0 * PI / 365.0 * f64::from(day_of_year))
}

/// Hour angle of sunset: 0 in polar night, π in polar day. Source: FAO-56, equation 25.
pub fn sunset_hour_angle(latitude: f64, declination: f64) -> f64 {
    libm::acos((-libm::tan(latitude) * libm::tan(declination)).clamp(-1.0, 1.0))
}

/// Hour angle at `hour` of local solar time. Source: FAO-56, equation 31.
pub fn hour_angle(hour: f64) -> f64 {
    PI / 12.0 * (hour - 12.0)
}

/// Local solar time at `utc_hour`. Source: FAO-56, equations 31 to 33.
pub fn solar_hour(longitude_deg: f64, day_of_year: u32, utc_hour: f64) -> f64 {
    let b = 2.0 * PI * (f64::from(day_of_year) - 81.0) / 364.0;
    let seasonal = 0.1645 * libm::sin(2.0 * b) - 0.1255 * libm::cos(b) - 0.025 * libm::sin(b);
    utc_hour + longitude_deg / 15.0 + seasonal
}

/// Cosine of the angle from the vertical. Source: FAO-56, equation 28's integrand.
pub fn cos_zenith(latitude: f64, declination: f64, hour_angle: f64) -> f64 {
    libm::sin(latitude) * libm::sin(declination) + libm::cos(latitude) * libm::cos(declination) * libm::cos(hour_angle)
}

/// Mean over 24 hours of the cosine of the zenith angle, night counted as nought.
pub fn mean_cos_zenith(latitude: f64, declination: f64) -> f64 {
    let sunset = sunset_hour_angle(latitude, declination);
    (sunset * libm::sin(latitude) * libm::sin(declination)
        + libm::cos(latitude) * libm::cos(declination) * libm::sin(sunset))
        / PI
}

/// Radiation on the level above the air. Units: MJ/m2/d. Source: FAO-56, equation 21.
pub fn above_the_air_mj_per_m2_d(latitude: f64, day_of_year: u32) -> f64 {
    let mean = mean_cos_zenith(latitude, declination(day_of_year));
    24.0 * 60.0 * SOLAR_CONSTANT * nearness(day_of_year) * mean
}

/// Radiation on the level under a clear sky. Units: MJ/m2/d. Source: FAO-56, equation 37.
pub fn clear_sky_mj_per_m2_d(latitude: f64, day_of_year: u32, elevation_m: f64) -> f64 {
    (0.75 + 2e-5 * elevation_m) * above_the_air_mj_per_m2_d(latitude, day_of_year)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(value: f64, expected: f64, within: f64, what: &str) {
        assert!((value - expected).abs() <= within, "{what}: {value}, expected {expected} ± {within}");
    }

    /// FAO-56, example 8: 3 September (day 246) at 20° S: δ 0.120 rad, ωs 1.527 rad, Ra 32.2 MJ/m2/d.
    #[test]
    fn fao_56_example_8_is_met() {
        let latitude = (-20.0_f64).to_radians();
        near(declination(246), 0.120, 0.0005, "declination");
        near(sunset_hour_angle(latitude, declination(246)), 1.527, 0.0005, "sunset hour angle");
        near(above_the_air_mj_per_m2_d(latitude, 246), 32.2, 0.05, "Ra");
    }

    /// Figures reckoned with pvlib 0.x for the same days.
    #[test]
    fn pvlib_figures_are_met() {
        near(above_the_air_mj_per_m2_d((-1.2921_f64).to_radians(), 80), 37.82, 0.02, "Nairobi, day 80");
        near(above_the_air_mj_per_m2_d(27.7_f64.to_radians(), 15), 22.43, 0.02, "Kathmandu, day 15");
        let hour = solar_hour(36.8219, 80, 9.0);
        let zenith = libm::acos(cos_zenith((-1.2921_f64).to_radians(), declination(80), hour_angle(hour)));
        near(zenith.to_degrees(), 10.096, 0.3, "zenith at Nairobi, 2026-03-21 12:00+03");
        let clear = clear_sky_mj_per_m2_d((-1.2921_f64).to_radians(), 80, 1684.0);
        near(clear, 30.35, 0.03 * 30.35, "clear day at Nairobi, Ineichen with Linke turbidity 3.23");
    }

    #[test]
    fn polar_night_and_day_are_no_error() {
        let north = 80.0_f64.to_radians();
        assert_eq!(above_the_air_mj_per_m2_d(north, 355), 0.0);
        assert!(above_the_air_mj_per_m2_d(north, 172) > 40.0);
    }
}
