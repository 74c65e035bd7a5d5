//! Time passes in tanks: one alone, or the members of an ensemble side by side.
//!
//! Takes tanks, how each differs, a temperature each and a number of days; moves the tanks and tells the gas that
//! left them. Members in health share lanes, with hydrogen algebraic; members that sour are told apart, advanced
//! among themselves with hydrogen as a state and a tighter tolerance, and counted. A tank on which the lanes' solver
//! fails is tried alone before it is an error.

use super::component::*;
use super::constants::{COD_PER_KMOL_CH4, COD_PER_KMOL_H2, Constants, LaneConstants};
use super::dynamics::{Dynamics, Inflow, mass, still_plan};
use super::tank::{Member, Tank, cod_per_m3, nitrogen_per_m3};
use crate::solve::{Effort, InstructionSet, Settings, SolveError, Workspace, integrate};
use crate::units::OutOfBounds;

/// Members advanced side by side.
pub const LANES: usize = 8;

/// Below this pH a tank is souring. Units: pH.
pub const SOUR_PH: f64 = 6.5;
/// A tank is taken as healthy again after so many days above it. Units: d.
pub const CALM_D: f64 = 5.0;

/// A gas volume a kmol at 0 °C and 1.01325 bar. Units: Nm³/kmol.
pub const NM3_PER_KMOL: f64 = 22.414;

/// Why a tank could not be moved on.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum Adm1Error {
    #[error(transparent)]
    Impossible(#[from] OutOfBounds),
    #[error("tank {member}: no pH balances the charges at day {at_d}: check its cations and anions")]
    NoPh { member: usize, at_d: f64 },
    #[error("tank {member}: {component} fell to {value} at day {at_d}, below {least}")]
    LeftBounds { member: usize, component: &'static str, value: f64, least: f64, at_d: f64 },
    #[error("tank {member}: {component} moves too fast at day {at_d} for steps of {step_d} d")]
    StepTooSmall { member: usize, component: &'static str, step_d: f64, at_d: f64 },
    #[error("tank {member}: {steps} steps were not enough, at day {at_d}")]
    TooManySteps { member: usize, steps: u64, at_d: f64 },
}

/// How exact a run is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Accuracy {
    /// Share of each concentration a step may err.
    pub relative: f64,
    /// Added to it, for a concentration in kg COD/m³; scaled for the others. Units: kg COD/m³.
    pub absolute: f64,
    /// First step after a jump. Units: d.
    pub first_step_d: f64,
}

impl Accuracy {
    /// For ensembles in health: pH to 0.02, daily methane to 1%.
    pub const ENSEMBLE: Accuracy = Accuracy { relative: 3e-3, absolute: 3e-3, first_step_d: 3e-3 };
    /// For a single digester and for souring: pH to 0.001, acids to 0.5%.
    pub const CAREFUL: Accuracy = Accuracy { relative: 1e-4, absolute: 1e-6, first_step_d: 1e-4 };

    /// Steps scaled to a relative tolerance.
    pub fn of(relative: f64) -> Accuracy {
        Accuracy { relative, absolute: 1e-2 * relative, first_step_d: relative.min(1e-3) }
    }

    fn settings(self) -> Settings {
        let scale = |unknown: usize| match unknown {
            S_I | X_I | S_CAT | S_AN => f64::INFINITY, // they steer nothing that moves
            S_IC | S_IN => 0.01,
            S_H2 => 1e-5,
            S_CH4 => 0.1,
            H_ION => 1e-5,
            _ if unknown == GAS + GAS_H2 => 1e-2,
            _ if unknown == GAS + GAS_CO2 => 0.01,
            _ if unknown >= OUT_GAS => f64::INFINITY,
            _ => 1.0,
        };
        Settings {
            relative: self.relative,
            absolute: (0..UNKNOWNS).map(|i| self.absolute * scale(i)).collect(),
            least: (0..UNKNOWNS).map(least).map(|share| share * self.absolute).collect(),
            first_step: self.first_step_d,
        }
    }
}

/// How far under zero an unknown may come, as a share of the absolute tolerance: a step's error, no more.
fn least(unknown: usize) -> f64 {
    match unknown {
        S_IC | S_IN | S_CAT | S_AN => -0.01,
        S_H2 => -1e-5,
        H_ION => 1e-12,
        _ if unknown == GAS + GAS_H2 => -1e-2,
        _ if unknown >= OUT_GAS => f64::NEG_INFINITY,
        _ => -1.0,
    }
}

/// Gas that left a head space: dry, at 0 °C and 1.01325 bar.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct GasOut {
    pub ch4_nm3: f64,
    pub co2_nm3: f64,
    pub h2_nm3: f64,
}

impl std::ops::AddAssign for GasOut {
    fn add_assign(&mut self, other: Self) {
        self.ch4_nm3 += other.ch4_nm3;
        self.co2_nm3 += other.co2_nm3;
        self.h2_nm3 += other.h2_nm3;
    }
}

/// What a run took.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Run {
    pub effort: Effort,
    /// Members that left the lanes of the healthy for the careful path.
    pub careful: usize,
}

impl std::ops::AddAssign for Run {
    fn add_assign(&mut self, other: Self) {
        self.effort += other.effort;
        self.careful += other.careful;
    }
}

/// A steady inflow while time passes; as much overflows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SteadyFeed<'a> {
    pub m3_per_d: f64,
    pub what: &'a Composition,
}

/// Room to work in: made once, used for any number of runs.
pub struct Room {
    one: Workspace<1>,
    many: Workspace<LANES>,
    healthy: Settings,
    careful: Settings,
}

impl Room {
    /// `healthy` is for members in lanes, `careful` for those that sour and for single tanks.
    pub fn new(healthy: Accuracy, careful: Accuracy) -> Room {
        Room {
            one: Workspace::new(still_plan()),
            many: Workspace::new(still_plan()),
            healthy: healthy.settings(),
            careful: careful.settings(),
        }
    }

    /// The next run of [`advance_one`] goes on where its last one ended, with the same tank, temperature and inflow.
    pub fn go_on(&mut self) {
        self.one.go_on();
    }

    /// Runs on this instruction set if the processor has it: for comparing.
    pub fn on(mut self, set: InstructionSet) -> Room {
        self.one = self.one.on(set);
        self.many = self.many.on(set);
        self
    }
}

impl Default for Room {
    fn default() -> Room {
        Room::new(Accuracy::ENSEMBLE, Accuracy::CAREFUL)
    }
}

/// Moves one tank on, hydrogen as a state all the while.
///
/// Errors: [`Adm1Error`], with the day since the start of this run; the tank then is as it was.
pub fn advance_one(
    member: &Member,
    tank: &mut Tank,
    celsius: f64,
    days: f64,
    inflow: Option<SteadyFeed>,
    room: &mut Room,
) -> Result<(GasOut, Effort), Adm1Error> {
    let started = tank.clone();
    tank.take_hydrogen_as(false);
    let mut tanks = [&mut *tank];
    let done = advance_lanes(&[*member], &mut tanks, &[celsius], days, inflow, &room.careful, &mut room.one);
    match done {
        Ok((gas, effort)) => Ok((gas[0], effort)),
        Err(failure) => {
            *tank = started;
            Err(failure.of_member(0))
        }
    }
}

/// Moves all members of an ensemble on, each at its own temperature.
///
/// Shape: `members`, `tanks`, `celsius` and `gas` have one entry a member; gas is added to what `gas` holds. Errors:
/// [`Adm1Error`] of the first member that fails even alone; tanks before it have moved on.
pub fn advance(
    members: &[Member],
    tanks: &mut [Tank],
    celsius: &[f64],
    days: f64,
    gas: &mut [GasOut],
    room: &mut Room,
) -> Result<Run, Adm1Error> {
    assert!(
        members.len() == tanks.len() && members.len() == celsius.len() && members.len() == gas.len(),
        "one member, one tank, one temperature, one account of gas"
    );
    let mut run = Run::default();
    let (healthy, mut sour): (Vec<usize>, Vec<usize>) = (0..tanks.len()).partition(|&i| tanks[i].is_calm());
    for group in healthy.chunks(LANES) {
        let before: Vec<Tank> = group.iter().map(|&i| tanks[i].clone()).collect();
        let (of_group, effort) = advance_group(members, tanks, celsius, days, group, true, room);
        run.effort += effort;
        for ((&i, before), out) in group.iter().zip(before).zip(of_group) {
            match out {
                Some(out) if tanks[i].ph() >= SOUR_PH => gas[i] += out,
                _ => {
                    tanks[i] = before;
                    sour.push(i);
                }
            }
        }
    }
    run.careful = sour.len();
    for group in sour.chunks(LANES) {
        let before: Vec<Tank> = group.iter().map(|&i| tanks[i].clone()).collect();
        let (of_group, effort) = advance_group(members, tanks, celsius, days, group, false, room);
        run.effort += effort;
        for ((&i, before), out) in group.iter().zip(before).zip(of_group) {
            gas[i] += match out {
                Some(out) => out,
                None => {
                    tanks[i] = before;
                    let alone = advance_one(&members[i], &mut tanks[i], celsius[i], days, None, room);
                    let (out, effort) = alone.map_err(|error| error.of_member(i))?;
                    run.effort += effort;
                    out
                }
            };
        }
    }
    Ok(run)
}

/// Advances up to a group of members in lanes; `None` for each when the solver failed on the group.
fn advance_group(
    members: &[Member],
    tanks: &mut [Tank],
    celsius: &[f64],
    days: f64,
    group: &[usize],
    healthy: bool,
    room: &mut Room,
) -> (Vec<Option<GasOut>>, Effort) {
    // Lanes left over do the last member's work again, on a copy.
    let of_lane = |l: usize| group[l.min(group.len() - 1)];
    let mut copies: [Tank; LANES] = std::array::from_fn(|l| tanks[of_lane(l)].clone());
    copies.iter_mut().for_each(|tank| tank.take_hydrogen_as(healthy));
    let lane_members: [Member; LANES] = std::array::from_fn(|l| members[of_lane(l)]);
    let lane_celsius: [f64; LANES] = std::array::from_fn(|l| celsius[of_lane(l)]);
    let settings = if healthy { &room.healthy } else { &room.careful };
    let mut lanes = copies.each_mut();
    match advance_lanes(&lane_members, &mut lanes, &lane_celsius, days, None, settings, &mut room.many) {
        Ok((gas, effort)) => {
            for (&i, copy) in group.iter().zip(copies) {
                tanks[i] = copy;
            }
            (gas[..group.len()].iter().copied().map(Some).collect(), effort)
        }
        Err(_) => (vec![None; group.len()], Effort::default()),
    }
}

/// A failure in one lane.
enum Failure {
    NoPh,
    Solver(SolveError),
}

impl Failure {
    fn of_member(self, member: usize) -> Adm1Error {
        match self {
            Failure::NoPh => Adm1Error::NoPh { member, at_d: 0.0 },
            Failure::Solver(SolveError::OutOfBounds { at, component, value, least, .. }) => {
                Adm1Error::LeftBounds { member, component: unknown_name(component), value, least, at_d: at }
            }
            Failure::Solver(SolveError::StepTooSmall { at, step, component, .. }) => {
                Adm1Error::StepTooSmall { member, component: unknown_name(component), step_d: step, at_d: at }
            }
            Failure::Solver(SolveError::TooManySteps { at, steps }) => {
                Adm1Error::TooManySteps { member, steps, at_d: at }
            }
        }
    }
}

impl Adm1Error {
    /// Told in days since an earlier beginning.
    pub(super) fn later(mut self, days: f64) -> Adm1Error {
        match &mut self {
            Adm1Error::NoPh { at_d, .. }
            | Adm1Error::LeftBounds { at_d, .. }
            | Adm1Error::StepTooSmall { at_d, .. }
            | Adm1Error::TooManySteps { at_d, .. } => *at_d += days,
            Adm1Error::Impossible(_) => {}
        }
        self
    }

    pub(super) fn of_member(mut self, i: usize) -> Adm1Error {
        match &mut self {
            Adm1Error::NoPh { member, .. }
            | Adm1Error::LeftBounds { member, .. }
            | Adm1Error::StepTooSmall { member, .. }
            | Adm1Error::TooManySteps { member, .. } => *member = i,
            Adm1Error::Impossible(_) => {}
        }
        self
    }
}

fn advance_lanes<const L: usize>(
    members: &[Member; L],
    tanks: &mut [&mut Tank; L],
    celsius: &[f64; L],
    days: f64,
    inflow: Option<SteadyFeed>,
    settings: &Settings,
    work: &mut Workspace<L>,
) -> Result<([GasOut; L], Effort), Failure> {
    let constants: [Constants; L] = std::array::from_fn(|l| tanks[l].constants(&members[l], celsius[l]));
    for (tank, constants) in tanks.iter_mut().zip(&constants) {
        tank.settle(constants).ok_or(Failure::NoPh)?;
    }
    let masses: [[f64; UNKNOWNS]; L] = std::array::from_fn(|l| mass(tanks[l].hydrogen_is_algebraic));
    let system = Dynamics {
        constants: LaneConstants::gather(&constants),
        inflow: inflow.map(|feed| Inflow {
            per_volume_per_d: std::array::from_fn(|l| feed.m3_per_d / tanks[l].liquid_m3),
            m3_per_d: [feed.m3_per_d; L],
            composition: std::array::from_fn(|i| [feed.what[i]; L]),
            solids_leaving: std::array::from_fn(|l| members[l].vessel.solids_leaving),
        }),
        mass: std::array::from_fn(|i| std::array::from_fn(|l| masses[l][i])),
    };
    let mut y = [[0.0; L]; UNKNOWNS];
    for (l, tank) in tanks.iter().enumerate() {
        let held = tank.liquid.iter().chain(&tank.gas).chain([&tank.h_ion]);
        y.iter_mut().zip(held).for_each(|(y, &held)| y[l] = held);
    }
    let effort = integrate(&system, settings, days, &mut y, work).map_err(Failure::Solver)?;
    let mut gas = [GasOut::default(); L];
    for (l, (tank, constants)) in tanks.iter_mut().zip(&constants).enumerate() {
        let at = |unknown: usize| y[unknown][l];
        tank.liquid = std::array::from_fn(at);
        tank.gas = std::array::from_fn(|i| at(GAS + i));
        tank.h_ion = at(H_ION);
        let (h2_kg, ch4_kg, co2_kmol) = (at(OUT_GAS + GAS_H2), at(OUT_GAS + GAS_CH4), at(OUT_GAS + GAS_CO2));
        tank.account.cod_out_kg += h2_kg + ch4_kg + at(OUT_COD);
        tank.account.n_out_kmol += at(OUT_N);
        if let Some(feed) = inflow {
            tank.account.cod_in_kg += feed.m3_per_d * days * cod_per_m3(feed.what);
            tank.account.n_in_kmol += feed.m3_per_d * days * nitrogen_per_m3(feed.what);
        }
        tank.settle(constants).ok_or(Failure::NoPh)?;
        tank.calm_d = if tank.ph() < SOUR_PH { 0.0 } else { tank.calm_d + days };
        gas[l] = GasOut {
            ch4_nm3: ch4_kg / COD_PER_KMOL_CH4 * NM3_PER_KMOL,
            co2_nm3: co2_kmol * NM3_PER_KMOL,
            h2_nm3: h2_kg / COD_PER_KMOL_H2 * NM3_PER_KMOL,
        };
    }
    Ok((gas, effort))
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use serde_json::Value;

    fn reference() -> Value {
        serde_json::from_str(include_str!("../../../tests/reference/bsm2_reference.json")).expect("a JSON file")
    }

    /// The published steady state, liquid and gas.
    pub fn bsm2_start() -> (Composition, [f64; GASES]) {
        let file = reference();
        let of = |name: &str| file["steady_state"][name]["published"].as_f64().expect("a published value");
        (LIQUID_NAMES.map(of), GAS_NAMES.map(of))
    }
}
