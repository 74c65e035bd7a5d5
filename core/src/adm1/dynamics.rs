//! The equations of `L` tanks as the solver wants them: rates summed into derivatives, and the sparse Jacobian.
//!
//! Takes constants, an inflow and whether hydrogen is algebraic; gives a [`Stiff`] system of 35 unknowns. It never
//! looks at time: feeding by jumps happens between runs, a steady inflow is part of the constants.

#![allow(clippy::needless_range_loop)] // lanes of several arrays are walked together

use super::component::*;
use super::constants::LaneConstants;
use super::leanings::{LEANINGS, derivatives};
use super::petersen::{RATES, nitrogen_of, table};
use super::rates::rates;
use crate::solve::{Pattern, Plan, Stiff};
use std::sync::LazyLock;

/// A steady inflow and equal overflow.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Inflow<const L: usize> {
    /// Units: 1/d.
    pub per_volume_per_d: [f64; L],
    /// Units: m³/d.
    pub m3_per_d: [f64; L],
    pub composition: [[f64; L]; LIQUIDS],
    pub solids_leaving: [f64; L],
}

/// `L` tanks between two jumps.
pub(super) struct Dynamics<const L: usize> {
    pub constants: LaneConstants<L>,
    pub inflow: Option<Inflow<L>>,
    /// 1 for differential rows, 0 for the charge balance, and for S_h2 where hydrogen is algebraic.
    pub mass: [[f64; L]; UNKNOWNS],
}

/// The mass of a tank's rows.
pub(super) fn mass(hydrogen_is_algebraic: bool) -> [f64; UNKNOWNS] {
    let mut mass = [1.0; UNKNOWNS];
    mass[H_ION] = 0.0;
    if hydrogen_is_algebraic {
        mass[S_H2] = 0.0;
    }
    mass
}

/// Sums over a source, one target after another: `to[target] += value * from[source]`.
struct Sums {
    targets: Vec<(u16, u16)>,
    terms: Vec<(f64, u16)>,
}

impl Sums {
    fn new(targets: usize, mut terms: Vec<(usize, f64, usize)>) -> Sums {
        terms.sort_by_key(|&(target, _, source)| (target, source));
        let ends = (0..targets).map(|t| {
            let start = terms.partition_point(|term| term.0 < t);
            (start as u16, terms.partition_point(|term| term.0 <= t) as u16)
        });
        Sums {
            targets: ends.collect(),
            terms: terms.iter().map(|&(_, value, source)| (value, source as u16)).collect(),
        }
    }

    #[inline(always)]
    fn sum<const L: usize>(&self, from: &[[f64; L]], to: &mut [[f64; L]]) {
        for (to, &(start, end)) in to.iter_mut().zip(&self.targets) {
            let mut sum = [0.0; L];
            for &(value, source) in &self.terms[usize::from(start)..usize::from(end)] {
                let from = &from[usize::from(source)];
                for l in 0..L {
                    sum[l] += value * from[l];
                }
            }
            *to = sum;
        }
    }
}

/// What is settled once for all tanks: the sums, and the plans without and with a steady inflow.
struct Layout {
    rates: Sums,
    still: Half,
    flowing: Half,
}

struct Half {
    plan: Plan,
    jacobian: Sums,
    /// Diagonal places of the liquids, and where the overflow's accounts lean on them.
    diagonal: Vec<usize>,
    out_cod: Vec<(usize, usize)>,
    out_n: Vec<(usize, usize)>,
}

static LAYOUT: LazyLock<Layout> = LazyLock::new(|| {
    let rates = table().iter().map(|c| (c.unknown, c.value, c.rate)).collect();
    Layout { rates: Sums::new(UNKNOWNS, rates), still: Half::new(false), flowing: Half::new(true) }
});

impl Half {
    fn new(flowing: bool) -> Half {
        let links: Vec<(usize, f64, usize, usize)> = table()
            .iter()
            .flat_map(|c| {
                let leanings = LEANINGS.iter().enumerate().filter(|(_, (rate, _))| *rate == c.rate);
                leanings.map(|(at, &(_, column))| (c.unknown, c.value, at, column)).collect::<Vec<_>>()
            })
            .collect();
        let counted = |row: usize, content: fn(usize) -> f64| {
            (0..LIQUIDS).filter(move |&i| flowing && content(i) != 0.0).map(move |i| (row, i))
        };
        let accounts = counted(OUT_COD, cod_of).chain(counted(OUT_N, nitrogen_of));
        let pattern = Pattern::new(UNKNOWNS, links.iter().map(|&(row, _, _, column)| (row, column)).chain(accounts));
        let place = |row, column| pattern.position(row, column).expect("the pattern was made from these");
        let sums = links.iter().map(|&(row, value, at, column)| (place(row, column), value, at)).collect();
        Half {
            jacobian: Sums::new(pattern.entries().len(), sums),
            diagonal: (0..LIQUIDS).map(|i| place(i, i)).collect(),
            out_cod: counted(OUT_COD, cod_of).map(|(row, i)| (i, place(row, i))).collect(),
            out_n: counted(OUT_N, nitrogen_of).map(|(row, i)| (i, place(row, i))).collect(),
            plan: Plan::new(&pattern),
        }
    }
}

/// The plan of a tank without inflow, for making room.
pub(super) fn still_plan() -> &'static Plan {
    &LAYOUT.still.plan
}

impl<const L: usize> Inflow<L> {
    /// Concentration in the overflow as a share of that in the tank.
    #[inline(always)]
    fn leaving(&self, component: usize, l: usize) -> f64 {
        if is_solid(component) { self.solids_leaving[l] } else { 1.0 }
    }

    #[inline(always)]
    fn add_to_rates(&self, y: &[[f64; L]; UNKNOWNS], f: &mut [[f64; L]]) {
        for i in 0..LIQUIDS {
            for l in 0..L {
                let leaves = self.leaving(i, l) * y[i][l];
                f[i][l] += self.per_volume_per_d[l] * (self.composition[i][l] - leaves);
                f[OUT_COD][l] += self.m3_per_d[l] * cod_of(i) * leaves;
                f[OUT_N][l] += self.m3_per_d[l] * nitrogen_of(i) * leaves;
            }
        }
    }

    #[inline(always)]
    fn add_to_jacobian(&self, half: &Half, jacobian: &mut [[f64; L]]) {
        for (i, &at) in half.diagonal.iter().enumerate() {
            for l in 0..L {
                jacobian[at][l] -= self.per_volume_per_d[l] * self.leaving(i, l);
            }
        }
        for (accounts, content) in [(&half.out_cod, cod_of as fn(usize) -> f64), (&half.out_n, nitrogen_of)] {
            for &(i, at) in accounts {
                for l in 0..L {
                    jacobian[at][l] = self.m3_per_d[l] * content(i) * self.leaving(i, l);
                }
            }
        }
    }
}

impl<const L: usize> Dynamics<L> {
    fn half(&self) -> &'static Half {
        if self.inflow.is_some() { &LAYOUT.flowing } else { &LAYOUT.still }
    }
}

impl<const L: usize> Stiff<L> for Dynamics<L> {
    fn plan(&self) -> &Plan {
        &self.half().plan
    }

    fn mass(&self) -> &[[f64; L]] {
        &self.mass
    }

    #[inline(always)]
    fn rates(&self, y: &[[f64; L]], f: &mut [[f64; L]]) {
        let y: &[[f64; L]; UNKNOWNS] = y.try_into().expect("the solver's rows are the unknowns");
        let mut rate = [[0.0; L]; RATES];
        rates(&self.constants, y, &mut rate);
        LAYOUT.rates.sum(&rate, f);
        if let Some(inflow) = &self.inflow {
            inflow.add_to_rates(y, f);
        }
    }

    #[inline(always)]
    fn rates_and_jacobian(&self, y: &[[f64; L]], f: &mut [[f64; L]], jacobian: &mut [[f64; L]]) {
        self.rates(y, f);
        let y: &[[f64; L]; UNKNOWNS] = y.try_into().expect("the solver's rows are the unknowns");
        let mut lean = [[0.0; L]; LEANINGS.len()];
        derivatives(&self.constants, y, &mut lean);
        let half = self.half();
        half.jacobian.sum(&lean, jacobian);
        if let Some(inflow) = &self.inflow {
            inflow.add_to_jacobian(half, jacobian);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::adm1::constants::Constants;
    use crate::adm1::parameters::{Kinetics, Vessel};
    use crate::adm1::run::tests::bsm2_start;
    use proptest::prelude::*;

    fn system(kinetics: Kinetics, flows: bool) -> Dynamics<1> {
        let constants = Constants::new(&kinetics, &Vessel::household(0.8, 0.15), 0.8, 35.0);
        let inflow = flows.then_some(Inflow {
            per_volume_per_d: [0.4],
            m3_per_d: [0.32],
            composition: [[2.0]; LIQUIDS],
            solids_leaving: [0.6],
        });
        Dynamics { constants: LaneConstants::gather(&[constants]), inflow, mass: mass(false).map(|m| [m]) }
    }

    /// Every entry of the Jacobian against central differences, and no entry missing.
    fn check(system: &Dynamics<1>, y: &[[f64; 1]; UNKNOWNS]) {
        let pattern = system.plan().pattern();
        let mut f = [[0.0]; UNKNOWNS];
        let mut jacobian = vec![[0.0]; pattern.entries().len()];
        system.rates_and_jacobian(y, &mut f, &mut jacobian);
        for column in 0..UNKNOWNS {
            let step = 1e-6 * y[column][0].abs().max(1e-9);
            let at = |by: f64| {
                let mut y = *y;
                y[column][0] += by;
                let mut f = [[0.0]; UNKNOWNS];
                system.rates(&y, &mut f);
                f
            };
            let (less, more) = (at(-step), at(step));
            for row in 0..UNKNOWNS {
                let by_difference = (more[row][0] - less[row][0]) / (2.0 * step);
                let analytic = pattern.position(row, column).map_or(0.0, |at| jacobian[at][0]);
                let noise = 1e-15 * (more[row][0].abs() + 1e3 * y[row][0].abs() + 1.0) / step;
                assert!(
                    (by_difference - analytic).abs() <= 2e-5 * analytic.abs() + 1e-6 + noise,
                    "d {}/d {}: {analytic} by hand, {by_difference} by difference",
                    unknown_name(row),
                    unknown_name(column)
                );
            }
        }
    }

    fn unknowns(liquid: &[f64; LIQUIDS], gas: [f64; 3], h: f64) -> [[f64; 1]; UNKNOWNS] {
        let mut y = [[0.0]; UNKNOWNS];
        liquid.iter().chain(&gas).chain([&h]).zip(&mut y).for_each(|(&value, y)| y[0] = value);
        y
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]
        #[test]
        fn the_jacobian_is_the_slope_of_the_rates(
            shares in prop::array::uniform26(0.05f64..3.0), ph in 4.5f64..8.5, flows: bool, options: bool
        ) {
            let mut kinetics = Kinetics::BSM2;
            if options {
                (kinetics.k_i_fa, kinetics.k_i_salt) = (Some(2.5), Some(0.348));
            }
            let (start, gas) = bsm2_start();
            let liquid = std::array::from_fn(|i| start[i] * shares[i]);
            check(&system(kinetics, flows), &unknowns(&liquid, gas, libm::pow(10.0, -ph)));
        }
    }
}
