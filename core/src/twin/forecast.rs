//! What would come of a ration: the ensemble run ahead through the season's weather.
//!
//! Takes the ensemble and meals to come; gives the chance of souring, finer than one guess in thirty-two, and the gas.

use super::ensemble::{Ensemble, Surroundings, move_on, put_in};
use super::meal::Meal;
use crate::adm1::{Accuracy, Member, Room, Tank};
use crate::site::Site;
use crate::units::{Day, Litres};
use crate::warmth::{self, Fed};

/// Days whose gas is foreseen.
pub const AHEAD_D: i32 = 14;
/// Where a tank counts as half on its way to souring, and how sharply. Source: our choice, set by the households of
/// tests/households: souring itself is pH under 6.2, or acids over alkalinity above 1.5.
const PH_HALFWAY: f64 = 6.3;
const PH_SCALE: f64 = 0.05;
const ACIDS_HALFWAY: f64 = 0.5;
const ACIDS_SCALE: f64 = 0.2;

/// What comes of a ration.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Forecast {
    /// Chance that it sours within [`AHEAD_D`] days or the week after.
    pub risk: f64,
    /// Chance that it is sour, or near it, on the last day looked at.
    pub sour_at_the_end: f64,
    /// Methane a day over the last half of the days ahead. Units: Nm³/d.
    pub methane_nm3_per_d: f64,
}

/// Runs ahead from the dawn of `today` with `first` going in today and `later` on each day after.
/// Beyond a risk of `enough` it looks no further: what comes is only worse.
pub fn ahead(
    ensemble: &Ensemble,
    today: Day,
    site: &Site,
    liquid: Litres,
    first: &Meal,
    later: &Meal,
    enough: f64,
) -> Forecast {
    let mut tanks: Vec<Tank> = ensemble.tanks().to_vec();
    let mut celsius = ensemble.slurry_c().to_vec();
    let guesses = ensemble.guesses();
    let members = ensemble.members(&Surroundings::of(site, liquid, today));
    let (mut near, mut last) = (vec![0.0_f64; tanks.len()], vec![0.0; tanks.len()]);
    let mut methane = vec![0.0; tanks.len()];
    let mut room = Room::new(Accuracy::ENSEMBLE, Accuracy::of(1e-3));
    let weights = ensemble.weights();
    let risk = |near: &[f64]| near.iter().zip(&weights).map(|(near, weight)| near * weight).sum::<f64>();
    for (from, days) in SPANS {
        let day = today.plus(from);
        let around = Surroundings::of(site, liquid, day);
        for (i, (member, tank)) in members.iter().zip(&mut tanks).enumerate() {
            let meal = if from == 0 { *first } else { later.scaled(f64::from(days)) };
            let going_in = meal.for_guess(&guesses[i]);
            put_in(member, tank, going_in);
            let warmed = Fed { kg_per_d: going_in.volume.get() / f64::from(days), celsius: around.weather.air_c };
            let (shell, weather, offset) = (&around.shell, &around.weather, guesses[i].warmth_k());
            celsius[i] = warmth::step(celsius[i], shell, weather, warmed, offset, f64::from(days));
        }
        let made = move_on(&members, &mut tanks, &celsius, f64::from(days), &mut room);
        for (i, made) in made.iter().enumerate() {
            last[i] = made.map_or(1.0, |_| nearness(&members[i], &tanks[i], celsius[i]));
            near[i] = near[i].max(last[i]);
            if (AHEAD_D / 2..AHEAD_D).contains(&from) {
                methane[i] += made.map_or(0.0, |gas| gas.ch4_nm3) / f64::from(AHEAD_D - AHEAD_D / 2);
            }
        }
        if risk(&near) > enough {
            break;
        }
    }
    Forecast { risk: risk(&near), sour_at_the_end: risk(&last), methane_nm3_per_d: ensemble.mean(|i| methane[i]) }
}

/// First day and length of each stretch, meals of its days together. A slow slide shows only after [`AHEAD_D`], so the
/// risk is looked for beyond it.
const SPANS: [(i32, i32); 10] = [(0, 1), (1, 1), (2, 2), (4, 2), (6, 2), (8, 2), (10, 2), (12, 2), (14, 4), (18, 4)];

/// How near a tank stands to souring: 0 far, 1 there.
fn nearness(member: &Member, tank: &Tank, celsius: f64) -> f64 {
    let by_ph = (PH_HALFWAY - tank.ph()) / PH_SCALE;
    let acids = tank.acids_over_alkalinity(member, celsius).clamp(1e-3, 1e3);
    let by_acids = libm::log(acids / ACIDS_HALFWAY) / ACIDS_SCALE;
    1.0 / (1.0 + libm::exp(-by_ph.max(by_acids).clamp(-30.0, 30.0)))
}
