//! Stiff systems of ordinary and algebraic equations, one at a time or many side by side. Knows no biology.
//!
//! Takes a [`Stiff`] system `M·dy/dt = f(y)` with a constant diagonal `M` (0 marks an algebraic row), its analytic
//! sparse Jacobian, a state and a span of time; gives the state at the end and the effort spent. It never allocates
//! inside the time loop, never clamps a state, and gives the same bytes on every instruction set.
//!
//! `L` independent systems of the same shape ("lanes") share step sizes and are advanced together, so that one
//! instruction serves several of them. `L = 1` is the plain single system.
//!
//! ```
//! use bellyful_core::solve::{Pattern, Plan, Settings, Stiff, Workspace, integrate};
//!
//! /// Two decays: dy/dt = -k y with k = 1000 and 1.
//! struct Decay { plan: Plan, mass: Vec<[f64; 1]> }
//! impl Stiff<1> for Decay {
//!     fn plan(&self) -> &Plan { &self.plan }
//!     fn mass(&self) -> &[[f64; 1]] { &self.mass }
//!     fn rates(&self, y: &[[f64; 1]], f: &mut [[f64; 1]]) {
//!         f[0][0] = -1000.0 * y[0][0];
//!         f[1][0] = -y[1][0];
//!     }
//!     fn rates_and_jacobian(&self, y: &[[f64; 1]], f: &mut [[f64; 1]], jacobian: &mut [[f64; 1]]) {
//!         self.rates(y, f);
//!         jacobian[0][0] = -1000.0; // in the order of the pattern's entries
//!         jacobian[1][0] = -1.0;
//!     }
//! }
//! let system = Decay { plan: Plan::new(&Pattern::new(2, [(0, 0), (1, 1)])), mass: vec![[1.0]; 2] };
//! let settings = Settings { relative: 1e-6, absolute: vec![1e-9; 2], least: vec![-1e-9; 2], first_step: 1e-3 };
//! let mut work = Workspace::new(system.plan());
//! let mut y = vec![[1.0], [1.0]];
//! let effort = integrate(&system, &settings, 1.0, &mut y, &mut work).unwrap();
//! assert!((y[1][0] - 0.36788).abs() < 1e-5, "{}", y[1][0]);
//! assert!(y[0][0].abs() < 1e-8, "{}", y[0][0]);
//! assert!(effort.steps < 500, "{}", effort.steps);
//! ```

mod lanes;
mod rodas3;
mod sparse;

pub use lanes::InstructionSet;
pub use rodas3::{Workspace, integrate};
pub use sparse::{Pattern, Plan};

/// `L` systems `M·dy/dt = f(y)` of one shape.
pub trait Stiff<const L: usize> {
    /// How the Jacobian's pattern is factorised.
    fn plan(&self) -> &Plan;
    /// Diagonal of `M`, one row a component: 1 for a differential row, 0 for an algebraic one.
    fn mass(&self) -> &[[f64; L]];
    /// `f(y)`; an algebraic row's residual.
    fn rates(&self, y: &[[f64; L]], f: &mut [[f64; L]]);
    /// `f(y)` and `df/dy`, the latter in the order of the plan's pattern.
    fn rates_and_jacobian(&self, y: &[[f64; L]], f: &mut [[f64; L]], jacobian: &mut [[f64; L]]);
}

/// How exact to be.
#[derive(Debug, Clone, PartialEq)]
pub struct Settings {
    /// Error of a step allowed, as a share of each component.
    pub relative: f64,
    /// Added to it, per component; infinite for components that only count (they steer no step).
    pub absolute: Vec<f64>,
    /// The least value a component may have. A step that goes below is repeated with a smaller one.
    pub least: Vec<f64>,
    /// First step tried after a jump. Units: those of time.
    pub first_step: f64,
}

/// Work done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Effort {
    /// Steps taken.
    pub steps: u64,
    /// Steps tried and found too long.
    pub rejected: u64,
    /// Evaluations of `f`, each for all lanes.
    pub evaluations: u64,
    /// Evaluations of the Jacobian, each for all lanes.
    pub jacobians: u64,
    /// Factorisations, each for all lanes.
    pub factorisations: u64,
}

impl std::ops::AddAssign for Effort {
    fn add_assign(&mut self, other: Self) {
        self.steps += other.steps;
        self.rejected += other.rejected;
        self.evaluations += other.evaluations;
        self.jacobians += other.jacobians;
        self.factorisations += other.factorisations;
    }
}

/// Why the end of the span was not reached.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum SolveError {
    /// No step, however short, was exact enough.
    #[error("at time {at} component {component} of lane {lane} needs a step shorter than {step}")]
    StepTooSmall { at: f64, step: f64, component: usize, lane: usize },
    /// A state left its bounds in even the shortest step.
    #[error("at time {at} component {component} of lane {lane} fell to {value}, below {least}")]
    OutOfBounds { at: f64, component: usize, lane: usize, value: f64, least: f64 },
    /// More steps than any sound run needs.
    #[error("at time {at} the {steps} steps allowed were used up")]
    TooManySteps { at: f64, steps: u64 },
}
