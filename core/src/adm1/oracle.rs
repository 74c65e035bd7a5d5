//! The same rates, moved on by a solver that is not ours: backward differences of the library diffsol.
//!
//! Only for tests: hydrogen is a state, H⁺ is solved for inside each evaluation, so the library sees plain
//! differential equations.

use super::algebra;
use super::component::*;
use super::constants::{Constants, LaneConstants};
use super::dynamics::{Dynamics, mass};
use super::*;
use crate::solve::Stiff;
use diffsol::{NalgebraLU, NalgebraMat, OdeBuilder, OdeSolverMethod};

const STATES: usize = LIQUIDS + GASES;

struct Rates {
    constants: Constants,
    system: Dynamics<1>,
}

impl Rates {
    fn of(member: &Member, celsius: f64) -> Rates {
        let constants = Constants::new(&member.kinetics, &member.vessel, member.vessel.liquid_m3, celsius);
        let system = Dynamics {
            constants: LaneConstants::gather(&[constants]),
            inflow: None,
            mass: mass(false).map(|mass| [mass]),
        };
        Rates { constants, system }
    }

    fn at(&self, x: &[f64], f: &mut [f64]) {
        let liquid: Composition = std::array::from_fn(|i| x[i]);
        let h = algebra::h_ion(&self.constants, &liquid, 1e-7).expect("charges that balance");
        let mut y = [[0.0]; UNKNOWNS];
        x.iter().zip(&mut y).for_each(|(&x, y)| y[0] = x);
        y[H_ION] = [h];
        let mut rates = [[0.0]; UNKNOWNS];
        self.system.rates(&y, &mut rates);
        f.iter_mut().zip(rates).for_each(|(f, rate)| *f = rate[0]);
    }

    /// Slope along `v`, by central differences: for the library's Newton only, not for its result.
    fn slope(&self, x: &[f64], v: &[f64], out: &mut [f64]) {
        let reach = |(x, v): (&f64, &f64)| if *v == 0.0 { f64::INFINITY } else { 1e-6 * x.abs().max(1e-9) / v.abs() };
        let step = x.iter().zip(v).map(reach).fold(f64::INFINITY, f64::min);
        if !step.is_finite() {
            return out.fill(0.0);
        }
        let at = |by: f64| {
            let moved: Vec<f64> = x.iter().zip(v).map(|(x, v)| x + by * v).collect();
            let mut f = [0.0; STATES];
            self.at(&moved, &mut f);
            f
        };
        let (less, more) = (at(-step), at(step));
        out.iter_mut().enumerate().for_each(|(i, out)| *out = (more[i] - less[i]) / (2.0 * step));
    }
}

/// The states after so many days, by the library.
fn theirs(member: &Member, tank: &Tank, celsius: f64, days: f64) -> Vec<f64> {
    let rates = Rates::of(member, celsius);
    let start: Vec<f64> = tank.liquid().iter().chain(tank.gas()).copied().collect();
    let problem = OdeBuilder::<NalgebraMat<f64>>::new()
        .rtol(1e-8)
        .atol(start.iter().map(|x| 1e-9 * x.abs().max(1e-6)).collect::<Vec<_>>())
        .h0(1e-6)
        .rhs_implicit(|x, _, _, f| rates.at(x, f), |x, _, _, v, out| rates.slope(x, v, out))
        .init(|_, _, x| x.copy_from_slice(&start), STATES)
        .build()
        .expect("a sound problem");
    let mut solver = problem.bdf::<NalgebraLU<f64>>().expect("a solver");
    solver.set_stop_time(days).expect("a time to come");
    while solver.state().t < days {
        solver.step().expect("a step");
    }
    (0..STATES).map(|i| solver.state().y[i]).collect()
}

fn check(name: &str, slurry: &Composition, food: &Composition, food_l: f64, celsius: f64, days: f64) -> f64 {
    let member = Member { kinetics: Kinetics::BSM2, vessel: Vessel::household(0.8, 0.15) };
    let mut tank = Tank::filled_with(&member, slurry, celsius).expect("a slurry");
    tank.take_hydrogen_as(false);
    tank.feed(&member, food_l / 1000.0, food).expect("a meal");
    let expected = theirs(&member, &tank, celsius, days);
    let mut room = Room::new(Accuracy::of(1e-8), Accuracy::of(1e-8));
    advance_one(&member, &mut tank, celsius, days, None, &mut room).expect("it runs");
    let ours: Vec<f64> = tank.liquid().iter().chain(tank.gas()).copied().collect();
    for (i, (ours, theirs)) in ours.iter().zip(&expected).enumerate() {
        let within = 2e-5 * theirs.abs() + 1e-9;
        assert!((ours - theirs).abs() <= within, "{name}: {}: {ours}, diffsol has {theirs}", unknown_name(i));
    }
    tank.ph()
}

#[test]
fn another_librarys_solver_agrees_in_health_and_in_souring() {
    let mut slurry = [0.02; LIQUIDS];
    slurry[X_SU..=X_H2].fill(0.4);
    (slurry[S_IC], slurry[S_IN], slurry[S_CAT], slurry[S_AN]) = (0.09, 0.08, 0.05, 0.02);
    slurry[S_H2] = 2e-7;
    let mut food = [0.0; LIQUIDS];
    (food[X_CH], food[X_PR], food[X_LI], food[S_SU]) = (120.0, 40.0, 30.0, 20.0);
    let healthy = check("health", &slurry, &food, 6.0, 35.0, 5.0);
    assert!(healthy > 6.8, "{healthy}");
    let mut weak = slurry;
    weak[X_SU..=X_AA].fill(0.4);
    weak[X_FA..=X_H2].fill(0.02);
    (weak[S_IC], weak[S_CAT]) = (0.03, 0.01);
    let sour = check("souring", &weak, &food, 40.0, 35.0, 5.0);
    assert!(sour < 6.0, "{sour}");
}
