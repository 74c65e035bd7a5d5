//! The time loop: RODAS3, a linearly implicit (Rosenbrock) method of order 3 with an embedded one of order 2.
//!
//! Stiffly accurate and L-stable, so algebraic rows and fast transients are met at the end of each step. Takes a
//! system, settings, a span and a state; moves the state to the end of the span.
//!
//! Source: Sandu, Verwer, Blom, Spee, Carmichael & Potra, Benchmarking stiff ODE solvers for atmospheric chemistry
//! problems II: Rosenbrock solvers, Atmospheric Environment 31 (1997) 3459, method RODAS3; in the form without
//! matrix-vector products of Hairer & Wanner, Solving Ordinary Differential Equations II (1996), section IV.7.

use super::{Effort, InstructionSet, Plan, Settings, SolveError, Stiff};

/// `γ`. The stages: `u1` at y, `u2` at y, `u3` at y + 2 u1, `u4` at y + 2 u1 + u3; the end is the last point + `u4`,
/// which is also the error's estimate.
const GAMMA: f64 = 0.5;
const C21: f64 = 4.0;
const C31: f64 = 1.0;
const C32: f64 = -1.0;
const C41: f64 = 1.0;
const C42: f64 = -1.0;
const C43: f64 = -8.0 / 3.0;

/// A step changes by no more than this, either way.
const GROWTH: (f64, f64) = (0.1, 6.0);
const SAFETY: f64 = 0.9;
/// Shortest step, as a share of the span, before the run is given up.
const SHORTEST: f64 = 1e-12;
const MOST_STEPS: u64 = 2_000_000;

/// Room for one group of lanes: made once, used for any number of runs.
#[derive(Debug, Clone)]
pub struct Workspace<const L: usize> {
    set: InstructionSet,
    end: Vec<[f64; L]>,
    least: Vec<[f64; L]>,
    point: Vec<[f64; L]>,
    rates: Vec<[f64; L]>,
    u: [Vec<[f64; L]>; 4],
    jacobian: Vec<[f64; L]>,
    factors: Vec<[f64; L]>,
    /// Step that the last run would have gone on with.
    next_step: f64,
    /// The next run is the last one's continuation: it starts with that step.
    goes_on: bool,
}

impl<const L: usize> Workspace<L> {
    pub fn new(plan: &Plan) -> Self {
        let rows = || vec![[0.0; L]; plan.pattern().size()];
        Workspace {
            set: InstructionSet::widest(),
            end: rows(),
            least: rows(),
            point: rows(),
            rates: rows(),
            u: [rows(), rows(), rows(), rows()],
            jacobian: vec![[0.0; L]; plan.pattern().entries().len()],
            factors: vec![[0.0; L]; plan.factor_entries()],
            next_step: 0.0,
            goes_on: false,
        }
    }

    /// The next run goes on where the last one ended, nothing having changed: it starts with the step that one had
    /// come to.
    pub fn go_on(&mut self) {
        self.goes_on = self.next_step > 0.0;
    }

    /// Runs on this instruction set if the processor has it: for comparing.
    pub fn on(mut self, set: InstructionSet) -> Self {
        self.set = set.or_widest();
        self
    }

    fn fit(&mut self, plan: &Plan) {
        self.jacobian.resize(plan.pattern().entries().len(), [0.0; L]);
        self.factors.resize(plan.factor_entries(), [0.0; L]);
    }
}

/// Moves `y` over `span`. On an error `y` is the state at the time the error tells.
///
/// Shape: `y` has one row a component. Errors: [`SolveError`].
pub fn integrate<const L: usize, S: Stiff<L>>(
    system: &S,
    settings: &Settings,
    span: f64,
    y: &mut [[f64; L]],
    work: &mut Workspace<L>,
) -> Result<Effort, SolveError> {
    work.fit(system.plan());
    match work.set {
        InstructionSet::Baseline => advance(system, settings, span, y, work),
        #[cfg(target_arch = "x86_64")]
        #[allow(unsafe_code)]
        // SAFETY: a workspace holds an instruction set only after the processor was asked for it.
        InstructionSet::Avx2 => unsafe { advance_avx2(system, settings, span, y, work) },
        #[cfg(target_arch = "x86_64")]
        #[allow(unsafe_code)]
        // SAFETY: as above.
        InstructionSet::Avx512 => unsafe { advance_avx512(system, settings, span, y, work) },
        #[cfg(not(target_arch = "x86_64"))]
        _ => advance(system, settings, span, y, work),
    }
}

#[cfg(target_arch = "x86_64")]
#[target_feature(enable = "avx2")]
fn advance_avx2<const L: usize, S: Stiff<L>>(
    system: &S,
    settings: &Settings,
    span: f64,
    y: &mut [[f64; L]],
    work: &mut Workspace<L>,
) -> Result<Effort, SolveError> {
    advance(system, settings, span, y, work)
}

#[cfg(target_arch = "x86_64")]
#[target_feature(enable = "avx512f,avx512dq,avx512vl")]
fn advance_avx512<const L: usize, S: Stiff<L>>(
    system: &S,
    settings: &Settings,
    span: f64,
    y: &mut [[f64; L]],
    work: &mut Workspace<L>,
) -> Result<Effort, SolveError> {
    advance(system, settings, span, y, work)
}

#[inline(always)]
fn advance<const L: usize, S: Stiff<L>>(
    system: &S,
    settings: &Settings,
    span: f64,
    y: &mut [[f64; L]],
    work: &mut Workspace<L>,
) -> Result<Effort, SolveError> {
    set_least(settings, y, &mut work.least);
    let mut effort = Effort::default();
    let mut at = 0.0;
    let first_step = if std::mem::take(&mut work.goes_on) { work.next_step } else { settings.first_step };
    let mut step = first_step.min(span);
    let shortest = SHORTEST * span;
    while at < span {
        if effort.steps >= MOST_STEPS {
            return Err(SolveError::TooManySteps { at, steps: effort.steps });
        }
        system.rates_and_jacobian(y, &mut work.rates, &mut work.jacobian);
        effort.evaluations += 1;
        effort.jacobians += 1;
        let mut failed = false;
        loop {
            let (left, wanted) = (span - at, step);
            let last = step >= left * (1.0 - 1e-12);
            if last {
                step = left;
            } else if step > 0.5 * left {
                step = 0.5 * left;
            }
            try_step(system, step, y, work);
            effort.evaluations += 2;
            effort.factorisations += 1;
            let error = error_of(settings, y, &work.end, &work.u[3]);
            let low = below_least(&work.least, &work.end);
            if error.size <= 1.0 && low.is_none() {
                y.copy_from_slice(&work.end);
                at = if last { span } else { at + step };
                effort.steps += 1;
                let factor = growth(error.size);
                let shortened = step < wanted;
                step *= if failed { factor.min(1.0) } else { factor };
                if shortened && !failed {
                    step = step.max(wanted);
                }
                break;
            }
            effort.rejected += 1;
            failed = true;
            step *= if error.size <= 1.0 { 0.5 } else { growth(error.size).min(0.8) };
            if step < shortest {
                return Err(match low {
                    Some((component, lane, value)) if error.size <= 1.0 => {
                        SolveError::OutOfBounds { at, component, lane, value, least: work.least[component][lane] }
                    }
                    _ => SolveError::StepTooSmall { at, step, component: error.component, lane: error.lane },
                });
            }
        }
    }
    work.next_step = step;
    Ok(effort)
}

#[inline(always)]
fn try_step<const L: usize, S: Stiff<L>>(system: &S, step: f64, y: &[[f64; L]], work: &mut Workspace<L>) {
    let (plan, mass) = (system.plan(), system.mass());
    let Workspace { end, point, rates, u: [u1, u2, u3, u4], jacobian, factors, .. } = work;
    plan.factorise(1.0 / (GAMMA * step), mass, jacobian, factors);
    let per_step = 1.0 / step;

    u1.copy_from_slice(rates);
    plan.solve(factors, u1);

    for (((u2, f), u1), m) in u2.iter_mut().zip(rates.iter()).zip(u1.iter()).zip(mass) {
        for l in 0..L {
            u2[l] = f[l] + m[l] * per_step * (C21 * u1[l]);
        }
    }
    plan.solve(factors, u2);

    for ((p, y), u1) in point.iter_mut().zip(y).zip(u1.iter()) {
        for l in 0..L {
            p[l] = y[l] + 2.0 * u1[l];
        }
    }
    system.rates(point, u3);
    for (((u3, u1), u2), m) in u3.iter_mut().zip(u1.iter()).zip(u2.iter()).zip(mass) {
        for l in 0..L {
            u3[l] += m[l] * per_step * (C31 * u1[l] + C32 * u2[l]);
        }
    }
    plan.solve(factors, u3);

    for (p, u3) in point.iter_mut().zip(u3.iter()) {
        for l in 0..L {
            p[l] += u3[l];
        }
    }
    system.rates(point, u4);
    for ((((u4, u1), u2), u3), m) in u4.iter_mut().zip(u1.iter()).zip(u2.iter()).zip(u3.iter()).zip(mass) {
        for l in 0..L {
            u4[l] += m[l] * per_step * (C41 * u1[l] + C42 * u2[l] + C43 * u3[l]);
        }
    }
    plan.solve(factors, u4);

    for ((end, p), u4) in end.iter_mut().zip(point.iter()).zip(u4.iter()) {
        for l in 0..L {
            end[l] = p[l] + u4[l];
        }
    }
}

/// The error of the worst lane, and where its worst component is.
struct StepError {
    size: f64,
    component: usize,
    lane: usize,
}

#[inline(always)]
fn error_of<const L: usize>(
    settings: &Settings,
    start: &[[f64; L]],
    end: &[[f64; L]],
    error: &[[f64; L]],
) -> StepError {
    let mut sums = [0.0; L];
    for (((a, b), e), &absolute) in start.iter().zip(end).zip(error).zip(&settings.absolute) {
        for l in 0..L {
            let (a, b) = (a[l].abs(), b[l].abs());
            let share = e[l] / (absolute + settings.relative * if a > b { a } else { b });
            sums[l] += share * share;
        }
    }
    let counted = settings.absolute.iter().filter(|a| a.is_finite()).count().max(1) as f64;
    let (mut lane, mut worst) = (0, 0.0);
    for (l, &sum) in sums.iter().enumerate() {
        if !sum.is_finite() {
            return StepError { size: f64::INFINITY, component: 0, lane: l };
        }
        if sum > worst {
            (lane, worst) = (l, sum);
        }
    }
    let size = (worst / counted).sqrt();
    let component = if size > 1.0 { worst_component(settings, start, end, error, lane) } else { 0 };
    StepError { size, component, lane }
}

#[cold]
fn worst_component<const L: usize>(
    settings: &Settings,
    start: &[[f64; L]],
    end: &[[f64; L]],
    error: &[[f64; L]],
    lane: usize,
) -> usize {
    let share = |i: usize| {
        let size = start[i][lane].abs().max(end[i][lane].abs());
        error[i][lane].abs() / (settings.absolute[i] + settings.relative * size)
    };
    (0..start.len()).max_by(|&a, &b| share(a).total_cmp(&share(b))).unwrap_or(0)
}

#[inline(always)]
fn below_least<const L: usize>(least: &[[f64; L]], y: &[[f64; L]]) -> Option<(usize, usize, f64)> {
    let mut low = [false; L];
    for (y, least) in y.iter().zip(least) {
        for l in 0..L {
            low[l] |= y[l] < least[l];
        }
    }
    if low.contains(&true) { first_below(least, y) } else { None }
}

#[cold]
fn first_below<const L: usize>(least: &[[f64; L]], y: &[[f64; L]]) -> Option<(usize, usize, f64)> {
    y.iter().zip(least).enumerate().find_map(|(component, (y, least))| {
        let mut lanes = y.iter().zip(least).enumerate();
        lanes.find(|(_, (value, least))| value < least).map(|(lane, (&value, _))| (component, lane, value))
    })
}

/// The least each component may have in this run. One that a looser run left below it may stay there, and fall no
/// further than a step's error.
fn set_least<const L: usize>(settings: &Settings, y: &[[f64; L]], least: &mut [[f64; L]]) {
    for ((least, y), &bound) in least.iter_mut().zip(y).zip(&settings.least) {
        for l in 0..L {
            least[l] = if y[l] < bound { y[l] - bound.abs() } else { bound };
        }
    }
}

fn growth(error: f64) -> f64 {
    if error.is_finite() { (SAFETY / libm::cbrt(error.max(1e-9))).clamp(GROWTH.0, GROWTH.1) } else { GROWTH.0 }
}
