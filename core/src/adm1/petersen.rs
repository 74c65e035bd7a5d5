//! Who eats what and what becomes of it: the stoichiometry as a table of process, component, coefficient.
//!
//! Takes nothing; gives the table (Petersen's matrix). Inorganic carbon and nitrogen are whatever closes the balance
//! of each process, so no process can make or lose carbon, nitrogen or COD.
//!
//! Source: Batstone et al. (2002), tables 3.1 and 3.2, with the yields, fractions and contents of Rosen & Jeppsson
//! (2006).

use super::component::*;

/// Yields of biomass. Units: kg COD/kg COD.
const Y_SU: f64 = 0.1;
const Y_AA: f64 = 0.08;
const Y_FA: f64 = 0.06;
const Y_C4: f64 = 0.06;
const Y_PRO: f64 = 0.04;
const Y_AC: f64 = 0.05;
const Y_H2: f64 = 0.06;

/// Nitrogen contents. Units: kmol N/kg COD.
const N_XC: f64 = 0.0376 / 14.0;
const N_I: f64 = 0.06 / 14.0;
const N_AA: f64 = 0.007;
const N_BAC: f64 = 0.08 / 14.0;

/// Nitrogen in one unit of a component. Units: kmol N/kg COD, kmol N/kmol for `S_IN`.
pub const fn nitrogen_of(component: usize) -> f64 {
    match component {
        S_AA | X_PR => N_AA,
        S_IN => 1.0,
        S_I | X_I => N_I,
        X_C => N_XC,
        X_SU | X_AA | X_FA | X_C4 | X_PRO | X_AC | X_H2 => N_BAC,
        _ => 0.0,
    }
}

/// Carbon in one unit of a component. Units: kmol C/kg COD, kmol C/kmol for `S_IC`.
pub const fn carbon_of(component: usize) -> f64 {
    match component {
        S_SU | S_AC | X_CH => 0.0313,
        S_AA | X_PR | S_I | X_I => 0.03,
        S_FA => 0.0217,
        S_VA => 0.024,
        S_BU => 0.025,
        S_PRO => 0.0268,
        S_CH4 => 0.0156,
        S_IC => 1.0,
        X_C => 0.02786,
        X_LI => 0.022,
        X_SU | X_AA | X_FA | X_C4 | X_PRO | X_AC | X_H2 => 0.0313,
        _ => 0.0,
    }
}

// Rates, in the order in which they are computed.
pub(super) const DISINTEGRATION: usize = 0;
pub(super) const HYDROLYSIS_CH: usize = 1;
pub(super) const HYDROLYSIS_PR: usize = 2;
pub(super) const HYDROLYSIS_LI: usize = 3;
pub(super) const UPTAKE_SU: usize = 4;
pub(super) const UPTAKE_AA: usize = 5;
pub(super) const UPTAKE_FA: usize = 6;
pub(super) const UPTAKE_VA: usize = 7;
pub(super) const UPTAKE_BU: usize = 8;
pub(super) const UPTAKE_PRO: usize = 9;
pub(super) const UPTAKE_AC: usize = 10;
pub(super) const UPTAKE_H2: usize = 11;
/// Seven decays, in the order X_su to X_h2.
pub(super) const DECAY: usize = 12;
/// Liquid to gas per volume of liquid: H₂, CH₄, CO₂.
pub(super) const TRANSFER: usize = 19;
/// What the head space gains: H₂, CH₄, CO₂, per volume of gas.
pub(super) const HEAD: usize = 22;
/// The charge balance.
pub(super) const CHARGE: usize = 25;
/// What leaves the head space: H₂, CH₄, CO₂, whole tank.
pub(super) const LEAVING: usize = 26;
pub(super) const RATES: usize = 29;

/// A coefficient of the table: so much of `unknown` per unit of `rate`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Coefficient {
    pub rate: usize,
    pub unknown: usize,
    pub value: f64,
}

/// The biological processes as published, without S_IC and S_IN.
const PUBLISHED: &[(usize, &[(usize, f64)])] = &[
    (DISINTEGRATION, &[(X_C, -1.0), (S_I, 0.1), (X_I, 0.2), (X_CH, 0.2), (X_PR, 0.2), (X_LI, 0.3)]),
    (HYDROLYSIS_CH, &[(X_CH, -1.0), (S_SU, 1.0)]),
    (HYDROLYSIS_PR, &[(X_PR, -1.0), (S_AA, 1.0)]),
    (HYDROLYSIS_LI, &[(X_LI, -1.0), (S_SU, 1.0 - 0.95), (S_FA, 0.95)]),
    (
        UPTAKE_SU,
        &[
            (S_SU, -1.0),
            (S_BU, (1.0 - Y_SU) * 0.13),
            (S_PRO, (1.0 - Y_SU) * 0.27),
            (S_AC, (1.0 - Y_SU) * 0.41),
            (S_H2, hydrogen_from(UPTAKE_SU)),
            (X_SU, Y_SU),
        ],
    ),
    (
        UPTAKE_AA,
        &[
            (S_AA, -1.0),
            (S_VA, (1.0 - Y_AA) * 0.23),
            (S_BU, (1.0 - Y_AA) * 0.26),
            (S_PRO, (1.0 - Y_AA) * 0.05),
            (S_AC, (1.0 - Y_AA) * 0.40),
            (S_H2, hydrogen_from(UPTAKE_AA)),
            (X_AA, Y_AA),
        ],
    ),
    (UPTAKE_FA, &[(S_FA, -1.0), (S_AC, (1.0 - Y_FA) * 0.7), (S_H2, hydrogen_from(UPTAKE_FA)), (X_FA, Y_FA)]),
    (
        UPTAKE_VA,
        &[
            (S_VA, -1.0),
            (S_PRO, (1.0 - Y_C4) * 0.54),
            (S_AC, (1.0 - Y_C4) * 0.31),
            (S_H2, hydrogen_from(UPTAKE_VA)),
            (X_C4, Y_C4),
        ],
    ),
    (UPTAKE_BU, &[(S_BU, -1.0), (S_AC, (1.0 - Y_C4) * 0.8), (S_H2, hydrogen_from(UPTAKE_BU)), (X_C4, Y_C4)]),
    (UPTAKE_PRO, &[(S_PRO, -1.0), (S_AC, (1.0 - Y_PRO) * 0.57), (S_H2, hydrogen_from(UPTAKE_PRO)), (X_PRO, Y_PRO)]),
    (UPTAKE_AC, &[(S_AC, -1.0), (S_CH4, 1.0 - Y_AC), (X_AC, Y_AC)]),
    (UPTAKE_H2, &[(S_H2, -1.0), (S_CH4, 1.0 - Y_H2), (X_H2, Y_H2)]),
    (DECAY, &[(X_SU, -1.0), (X_C, 1.0)]),
    (DECAY + 1, &[(X_AA, -1.0), (X_C, 1.0)]),
    (DECAY + 2, &[(X_FA, -1.0), (X_C, 1.0)]),
    (DECAY + 3, &[(X_C4, -1.0), (X_C, 1.0)]),
    (DECAY + 4, &[(X_PRO, -1.0), (X_C, 1.0)]),
    (DECAY + 5, &[(X_AC, -1.0), (X_C, 1.0)]),
    (DECAY + 6, &[(X_H2, -1.0), (X_C, 1.0)]),
];

/// Hydrogen made per unit of an uptake.
pub(super) const fn hydrogen_from(process: usize) -> f64 {
    match process {
        UPTAKE_SU => (1.0 - Y_SU) * 0.19,
        UPTAKE_AA => (1.0 - Y_AA) * 0.06,
        UPTAKE_FA => (1.0 - Y_FA) * 0.3,
        UPTAKE_VA => (1.0 - Y_C4) * 0.15,
        UPTAKE_BU => (1.0 - Y_C4) * 0.2,
        UPTAKE_PRO => (1.0 - Y_PRO) * 0.43,
        _ => 0.0,
    }
}

/// The whole table: biology with S_IC and S_IN closing each balance, transfer, head space, charge, gas out.
pub(super) fn table() -> Vec<Coefficient> {
    let mut all = vec![];
    for &(rate, products) in PUBLISHED {
        all.extend(products.iter().map(|&(unknown, value)| Coefficient { rate, unknown, value }));
        for (inorganic, content) in [(S_IC, carbon_of as fn(usize) -> f64), (S_IN, nitrogen_of)] {
            let value = -products.iter().map(|&(component, value)| value * content(component)).sum::<f64>();
            // What is left of a balance that closes by itself is round-off, not a process.
            if value.abs() > 1e-15 {
                all.push(Coefficient { rate, unknown: inorganic, value });
            }
        }
    }
    for (gas, dissolved) in [S_H2, S_CH4, S_IC].into_iter().enumerate() {
        all.push(Coefficient { rate: TRANSFER + gas, unknown: dissolved, value: -1.0 });
        all.push(Coefficient { rate: HEAD + gas, unknown: GAS + gas, value: 1.0 });
        all.push(Coefficient { rate: LEAVING + gas, unknown: OUT_GAS + gas, value: 1.0 });
    }
    all.push(Coefficient { rate: CHARGE, unknown: H_ION, value: 1.0 });
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    fn left_over(rate: usize, content: fn(usize) -> f64) -> f64 {
        table().iter().filter(|c| c.rate == rate).map(|c| c.value * content(c.unknown)).sum()
    }

    #[test]
    fn every_process_keeps_cod_carbon_and_nitrogen() {
        for &(process, _) in PUBLISHED {
            for (what, content) in [("COD", cod_of as fn(usize) -> f64), ("C", carbon_of), ("N", nitrogen_of)] {
                let left = left_over(process, content);
                assert!(left.abs() < 1e-15, "process {process} makes {left} of {what}");
            }
        }
    }

    #[test]
    fn inorganic_carbon_and_nitrogen_are_those_written_out_in_bsm2() {
        let of =
            |rate, unknown| table().iter().find(|c| c.rate == rate && c.unknown == unknown).map_or(0.0, |c| c.value);
        // Rosen & Jeppsson (2006): s_5 to s_12 of the carbon balance, and the S_IN row.
        let rows = [
            (UPTAKE_SU, S_IC, 0.0313 - (0.9 * (0.13 * 0.025 + 0.27 * 0.0268 + 0.41 * 0.0313) + 0.1 * 0.0313)),
            (UPTAKE_AC, S_IC, 0.0313 - (0.95 * 0.0156 + 0.05 * 0.0313)),
            (UPTAKE_H2, S_IC, -(0.94 * 0.0156 + 0.06 * 0.0313)),
            (UPTAKE_AA, S_IN, 0.007 - 0.08 * 0.08 / 14.0),
            (UPTAKE_SU, S_IN, -0.1 * 0.08 / 14.0),
            (DECAY, S_IN, 0.08 / 14.0 - 0.0376 / 14.0),
        ];
        for (rate, unknown, expected) in rows {
            assert!((of(rate, unknown) - expected).abs() < 1e-16, "rate {rate}, {}", unknown_name(unknown));
        }
    }
}
