//! How warm the slurry is: a lumped heat balance of one tank.
//!
//! Takes the tank's [`Shell`] (from its walls and size), the [`Weather`] and what was fed; gives the slurry's
//! temperature later ([`step`], exact for steady weather, so a day is one exponential), where it would settle
//! ([`settles_at_c`]) and how much it swings within a day ([`day_swing_c`]). A told temperature corrects it
//! ([`Offset`]). Never knows a family: walls not told are taken as bare, grey plastic.
//!
//! Balance: m c dT/dt = H_air (T_sol-air − T) + H_ground (T_ground − T) + m_fed c (T_fed − T) + heater.
//! Sol-air temperature: T_air + (absorbed sun − sky loss)/h_out (ASHRAE Fundamentals, from memory).

use crate::climate::Weather;
use crate::fact::Walls;
use serde::{Deserialize, Serialize};

/// Water's, and near enough slurry's. Units: J/kg/K. Source: IAPWS, from memory.
const HEAT_CAPACITY_J_PER_KG_K: f64 = 4_187.0;
const SECONDS_PER_DAY: f64 = 86_400.0;
/// Upright walls of a box get this much of what falls on the level, all sides and the day averaged.
/// Source: our choice: half the sky and a fifth off the ground give 0.3 to 0.4 of global, fences and houses take some.
const UPRIGHT_SHARE: f64 = 0.30;
/// What a clear to half-clear sky takes from a level surface beyond what air takes. Units: W/m2.
/// Source: ASHRAE sol-air method, ε ΔR = 63 W/m2 for a clear sky, 2/3 of it for a usual one (from memory).
const SKY_LOSS_W_PER_M2: f64 = 42.0;
/// Still slurry against a wall. Units: W/m2/K. Source: natural convection in water, 100 to 200 (from memory); one
/// digester heat model fits 177 to the walls (TU Delft, secondary).
const INNER_FILM_W_PER_M2_K: f64 = 150.0;

/// What lies between slurry and weather. Areas in m2 of a tank of the size it was made for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shell {
    /// Slurry in the tank. Units: kg.
    pub mass_kg: f64,
    /// Level and upright surface to the air.
    pub top_m2: f64,
    pub sides_m2: f64,
    pub ground_m2: f64,
    /// Wall between the two films. Units: W/m2/K.
    pub wall_w_per_m2_k: f64,
    pub to_ground_w_per_m2_k: f64,
    /// Of sunlight, by what the sun first meets.
    pub absorptance: f64,
    pub cover: Option<Cover>,
    /// Kept at least at this by a heater. Units: °C.
    pub heated_to_c: Option<f64>,
}

/// A greenhouse or plastic tent about the tank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cover {
    /// Of sunlight through the film.
    pub transmittance: f64,
    /// Film, draughts included, per m2 of film. Units: W/m2/K.
    pub w_per_m2_k: f64,
    pub film_m2: f64,
    /// Lit ground and walls inside, beyond the tank.
    pub lit_m2: f64,
    /// Share of the light on them that stays as warmth of the air inside.
    pub kept: f64,
}

/// Polyethylene film of a family's greenhouse. Source: 0.85 new (from memory), less for dust and drops; 6 to 8 W/m2/K
/// for a single film (from memory), half as much again for draughts.
const FILM_TRANSMITTANCE: f64 = 0.75;
const FILM_W_PER_M2_K: f64 = 12.0;
/// Outer film inside a cover: still air and the cover's own warmth. Units: W/m2/K. Source: natural convection 3 to 4,
/// radiation 5 (from memory).
const SHELTERED_W_PER_M2_K: f64 = 8.5;

impl Shell {
    /// A tank of the usual proportions: 1,000 l of it is 1.2 × 1.0 × 1.0 m, other sizes alike. `walls` not told are
    /// bare plastic, darkened by dirt.
    ///
    /// Source of walls: 2-3 mm polyethylene at 0.45 W/m/K (from memory); absorptance black 0.975 and white 0.19-0.25
    /// new (SCIRP 88555), aged white 0.4 (from memory); 50 mm expanded polystyrene at 0.037 W/m/K, U about 0.6;
    /// ground 1.2 W/m/K over half a metre (from memory).
    pub fn of(walls: Option<Walls>, tank_l: f64, liquid_l: f64) -> Shell {
        let tank_l = tank_l.clamp(20.0, 200_000.0);
        let liquid_l = liquid_l.clamp(0.2 * tank_l, tank_l);
        let (size, wetted) = (libm::pow(tank_l / 1_000.0, 2.0 / 3.0), liquid_l / tank_l);
        let bare = Shell {
            mass_kg: liquid_l,
            top_m2: 1.2 * size,
            sides_m2: 4.4 * size * wetted,
            ground_m2: 1.2 * size,
            wall_w_per_m2_k: 180.0,
            to_ground_w_per_m2_k: 2.0,
            absorptance: 0.60,
            cover: None,
            heated_to_c: None,
        };
        match walls {
            None => bare,
            Some(Walls::Black) => Shell { absorptance: 0.95, ..bare },
            Some(Walls::White) => Shell { absorptance: 0.30, ..bare },
            Some(Walls::Insulated) => Shell { wall_w_per_m2_k: 0.70, to_ground_w_per_m2_k: 0.6, ..bare },
            // Kept by a coil at what practice aims for in a cold place; behind some insulation, or it would never pay.
            Some(Walls::Heated) => {
                Shell { wall_w_per_m2_k: 1.0, to_ground_w_per_m2_k: 0.8, heated_to_c: Some(32.0), ..bare }
            }
            Some(Walls::Buried) => {
                Shell { sides_m2: 0.0, ground_m2: bare.ground_m2 + bare.sides_m2, to_ground_w_per_m2_k: 1.8, ..bare }
            }
            // A tent of twice the tank's length and breadth, its sides lit as well.
            Some(Walls::Greenhouse) => Shell {
                cover: Some(Cover {
                    transmittance: FILM_TRANSMITTANCE,
                    w_per_m2_k: FILM_W_PER_M2_K,
                    film_m2: 10.0 * size,
                    lit_m2: 2.0 * size,
                    kept: 0.5,
                }),
                ..bare
            },
        }
    }

    /// Heat that passes to the air for each degree. Units: W/K.
    fn air_w_per_k(&self, wind_m_per_s: f64) -> f64 {
        let area = self.top_m2 + self.sides_m2;
        let outer = self.outer_film_w_per_m2_k(wind_m_per_s);
        let tank = area / (1.0 / outer + 1.0 / self.wall_w_per_m2_k + 1.0 / INNER_FILM_W_PER_M2_K);
        match self.cover {
            None => tank,
            Some(cover) => 1.0 / (1.0 / tank + 1.0 / (cover.w_per_m2_k * cover.film_m2)),
        }
    }

    /// Outer film, radiation to the surroundings included. Units: W/m2/K. Source: McAdams, 5.7 + 3.8 v, from memory.
    fn outer_film_w_per_m2_k(&self, wind_m_per_s: f64) -> f64 {
        if self.cover.is_some() { SHELTERED_W_PER_M2_K } else { 5.7 + 3.8 * wind_m_per_s }
    }

    fn ground_w_per_k(&self) -> f64 {
        self.to_ground_w_per_m2_k * self.ground_m2
    }

    /// What the tank feels as the temperature outside: air, sun and sky together. Units: °C.
    fn outside_c(&self, weather: &Weather) -> f64 {
        let area = self.top_m2 + self.sides_m2;
        let on_tank = weather.sun_w_per_m2 * self.absorptance * (self.top_m2 + UPRIGHT_SHARE * self.sides_m2);
        let film = self.outer_film_w_per_m2_k(weather.wind_m_per_s) * area;
        match self.cover {
            None => weather.air_c + (on_tank - SKY_LOSS_W_PER_M2 * self.top_m2) / film,
            // What the tank takes warms it against its own film, then with what the rest takes against the cover.
            Some(cover) => {
                let on_rest = weather.sun_w_per_m2 * cover.lit_m2 * cover.kept;
                let through = cover.w_per_m2_k * cover.film_m2;
                weather.air_c + cover.transmittance * (on_tank / film + (on_tank + on_rest) / through)
            }
        }
    }
}

/// Rise over the air of a body in the sun: absorbed light over what is lost for each degree. Units: K.
pub fn rise_in_sun_k(absorptance: f64, sun_w_per_m2: f64, lit_m2: f64, lost_w_per_m2_k: f64, area_m2: f64) -> f64 {
    absorptance * sun_w_per_m2 * lit_m2 / (lost_w_per_m2_k * area_m2)
}

/// Feed and water that went in: how much in a day, and how warm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fed {
    pub kg_per_d: f64,
    pub celsius: f64,
}

impl Fed {
    pub const NOTHING: Fed = Fed { kg_per_d: 0.0, celsius: 0.0 };
}

/// Where the slurry would settle if the weather stayed. `offset_k` shifts it by what this tank departs from the
/// usual. Units: °C.
pub fn settles_at_c(shell: &Shell, weather: &Weather, fed: Fed, offset_k: f64) -> f64 {
    balance(shell, weather, fed, offset_k).0
}

/// Days in which two thirds of a difference are gone.
pub fn time_constant_d(shell: &Shell, weather: &Weather, fed: Fed) -> f64 {
    balance(shell, weather, fed, 0.0).1
}

/// The slurry's temperature after `days` of steady weather and feeding. Units: °C.
pub fn step(slurry_c: f64, shell: &Shell, weather: &Weather, fed: Fed, offset_k: f64, days: f64) -> f64 {
    let (settles, constant_d) = balance(shell, weather, fed, offset_k);
    let later = settles + (slurry_c - settles) * libm::exp(-days / constant_d);
    later.clamp(0.0, 65.0)
}

/// Half of what the slurry's temperature rises and falls by in a day in which the outside does so by
/// `outside_range_k` in all. Source: first-order lag, 1/√(1 + (ωτ)²). Units: K.
pub fn day_swing_c(shell: &Shell, weather: &Weather, outside_range_k: f64) -> f64 {
    let omega_tau = 2.0 * std::f64::consts::PI * time_constant_d(shell, weather, Fed::NOTHING);
    let share =
        shell.air_w_per_k(weather.wind_m_per_s) / (shell.air_w_per_k(weather.wind_m_per_s) + shell.ground_w_per_k());
    0.5 * outside_range_k * share / libm::sqrt(1.0 + omega_tau * omega_tau)
}

/// Where it settles (°C) and how fast (d).
fn balance(shell: &Shell, weather: &Weather, fed: Fed, offset_k: f64) -> (f64, f64) {
    let air = shell.air_w_per_k(weather.wind_m_per_s);
    let ground = shell.ground_w_per_k();
    let feed = fed.kg_per_d.max(0.0) * HEAT_CAPACITY_J_PER_KG_K / SECONDS_PER_DAY;
    let all = air + ground + feed;
    let outside = (air * shell.outside_c(weather) + ground * weather.ground_c + feed * fed.celsius) / all;
    let settles = shell.heated_to_c.map_or(outside, |least| outside.max(least)) + offset_k;
    (settles, shell.mass_kg * HEAT_CAPACITY_J_PER_KG_K / all / SECONDS_PER_DAY)
}

/// How far this tank's settling temperature lies from the usual one: a belief, mean and standard deviation. Units: K.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Offset {
    pub mean_k: f64,
    pub spread_k: f64,
}

impl Offset {
    /// Before anything is told. Source: our choice: shade, wind and colour not told move a bare tank by some 3 K.
    pub const UNKNOWN: Offset = Offset { mean_k: 0.0, spread_k: 3.0 };
    /// A household thermometer, held where it is easy to reach. Source: our choice.
    const THERMOMETER_K: f64 = 1.0;

    /// After a temperature was told where the model, with this offset's mean, had `modelled_c`.
    /// Source: the normal-normal update.
    pub fn told(self, modelled_c: f64, told_c: f64) -> Offset {
        let (before, noise) = (self.spread_k * self.spread_k, Self::THERMOMETER_K * Self::THERMOMETER_K);
        let gain = before / (before + noise);
        Offset { mean_k: self.mean_k + gain * (told_c - modelled_c), spread_k: libm::sqrt((1.0 - gain) * before) }
    }
}

#[cfg(test)]
mod tests;
