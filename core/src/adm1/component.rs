//! The letters of ADM1, listed once: what is counted in a tank, in which order and unit.
//!
//! Source: Batstone et al., Anaerobic Digestion Model No. 1 (IWA Scientific and Technical Report 13, 2002); the 26
//! liquid and 3 gas components as in Rosen & Jeppsson, Aspects on ADM1 Implementation within the BSM2 Framework
//! (Lund University, TEIE-7224, 2006), with the six ion states and H⁺ by algebra.

/// Components of the liquid.
pub const LIQUIDS: usize = 26;
/// Components of the head space.
pub const GASES: usize = 3;

/// What a liquid holds. Shape: one value a liquid component, in the order of [`LIQUID_NAMES`]. Units: kg COD/m³,
/// but kmol/m³ for `S_IC`, `S_IN`, `S_cat` and `S_an`.
pub type Composition = [f64; LIQUIDS];

macro_rules! letters {
    ($($name:ident = $letter:literal),+ $(,)?) => {
        letters!(@ 0usize; $($name)+);
        /// ADM1's letters in order.
        pub const LIQUID_NAMES: [&str; LIQUIDS] = [$($letter),+];
    };
    (@ $at:expr; $name:ident $($rest:ident)*) => {
        pub const $name: usize = $at;
        letters!(@ $at + 1usize; $($rest)*);
    };
    (@ $at:expr;) => {};
}

letters! {
    S_SU = "S_su", S_AA = "S_aa", S_FA = "S_fa", S_VA = "S_va", S_BU = "S_bu", S_PRO = "S_pro", S_AC = "S_ac",
    S_H2 = "S_h2", S_CH4 = "S_ch4", S_IC = "S_IC", S_IN = "S_IN", S_I = "S_I",
    X_C = "X_c", X_CH = "X_ch", X_PR = "X_pr", X_LI = "X_li",
    X_SU = "X_su", X_AA = "X_aa", X_FA = "X_fa", X_C4 = "X_c4", X_PRO = "X_pro", X_AC = "X_ac", X_H2 = "X_h2",
    X_I = "X_I", S_CAT = "S_cat", S_AN = "S_an",
}

/// Gas components in order: kg COD/m³ of head space for H₂ and CH₄, kmol C/m³ for CO₂.
pub const GAS_NAMES: [&str; GASES] = ["S_gas_h2", "S_gas_ch4", "S_gas_co2"];
pub const GAS_H2: usize = 0;
pub const GAS_CH4: usize = 1;
pub const GAS_CO2: usize = 2;

/// Whether a component is solid: it may leave more slowly than the water.
pub const fn is_solid(component: usize) -> bool {
    component >= X_C && component <= X_I
}

/// COD of one unit of a component: 1 for what is counted in COD, 0 for what is counted in kmol.
pub const fn cod_of(component: usize) -> f64 {
    if matches!(component, S_IC | S_IN | S_CAT | S_AN) { 0.0 } else { 1.0 }
}

// Where the unknowns of the solver stand: liquids, gases, H⁺, then what has left since the start of the run.
pub(super) const GAS: usize = LIQUIDS;
pub(super) const H_ION: usize = LIQUIDS + GASES;
/// H₂ and CH₄ in kg COD, CO₂ in kmol, out of the head space.
pub(super) const OUT_GAS: usize = H_ION + 1;
/// COD (kg) and nitrogen (kmol) in the overflow.
pub(super) const OUT_COD: usize = OUT_GAS + GASES;
pub(super) const OUT_N: usize = OUT_COD + 1;
pub(super) const UNKNOWNS: usize = OUT_N + 1;

/// The name of an unknown of the solver, for messages.
pub(super) fn unknown_name(unknown: usize) -> &'static str {
    match unknown {
        H_ION => "S_H_ion",
        OUT_COD => "COD in the overflow",
        OUT_N => "nitrogen in the overflow",
        _ if unknown < LIQUIDS => LIQUID_NAMES[unknown],
        _ if unknown < H_ION => GAS_NAMES[unknown - GAS],
        _ => "gas out",
    }
}
