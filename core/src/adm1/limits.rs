//! What the speeds share: what hinders them, the acid-base state, and the gas that leaves the liquid.
//!
//! Takes concentrations of one tank and its constants; gives factors, shares and slopes. Source: as [`super::rates`].

use super::component::*;
use super::constants::Constants;
use super::petersen::*;

/// Keeps valerate and butyrate apart when neither is there. Units: kg COD/m³. Source: BSM2.
pub(super) const EPS_C4: f64 = 1e-6;
/// Half-saturation of what takes inorganic carbon up (users of hydrogen, butyrate, valerate and long-chain acids, and
/// hydrolysis of lipids, by their carbon balance). Units: kmol/m³. Source: not in ADM1, where nothing stops them when
/// there is no carbon left and S_IC falls below zero; our choice, so small that BSM2's steady state does not feel it.
pub(super) const K_S_IC: f64 = 1e-7;

#[inline(always)]
pub(super) fn not_below_zero(x: f64) -> f64 {
    if x > 0.0 { x } else { 0.0 }
}

/// So little that it is none, but can be divided by.
#[inline(always)]
pub(super) fn not_zero(x: f64) -> f64 {
    if x > 1e-30 { x } else { 1e-30 }
}

/// What still runs of each speed: 1 unhindered, 0 stopped.
pub(super) struct Limits {
    pub ph_aa: f64,
    pub ph_ac: f64,
    pub ph_h2: f64,
    pub h2_fa: f64,
    pub h2_c4: f64,
    pub h2_pro: f64,
    /// Relative slopes by S_h2.
    pub h2_fa_slope: f64,
    pub h2_c4_slope: f64,
    pub h2_pro_slope: f64,
    pub nh3: f64,
    pub fa: f64,
    pub salt: f64,
    pub ic: f64,
}

impl Limits {
    #[inline(always)]
    pub fn of(c: &Constants, a: &Acids, up: impl Fn(usize) -> f64) -> Limits {
        let (x_aa, x_ac, x_h2) = (a.h * c.per_k_ph_aa, a.h * c.per_k_ph_ac, a.h * c.per_k_ph_h2);
        let h = up(S_H2);
        let (per_fa, per_c4, per_pro) = (1.0 / (c.k_i_h2_fa + h), 1.0 / (c.k_i_h2_c4 + h), 1.0 / (c.k_i_h2_pro + h));
        let salt = up(S_CAT) * c.per_k_i_salt;
        Limits {
            ph_aa: 1.0 / (1.0 + x_aa * x_aa),
            ph_ac: 1.0 / (1.0 + x_ac * x_ac * x_ac),
            ph_h2: 1.0 / (1.0 + x_h2 * x_h2 * x_h2),
            h2_fa: c.k_i_h2_fa * per_fa,
            h2_c4: c.k_i_h2_c4 * per_c4,
            h2_pro: c.k_i_h2_pro * per_pro,
            h2_fa_slope: -per_fa,
            h2_c4_slope: -per_c4,
            h2_pro_slope: -per_pro,
            nh3: 1.0 / (1.0 + a.nh3 * c.per_k_i_nh3),
            fa: 1.0 / (1.0 + up(S_FA) * c.per_k_i_fa),
            salt: 1.0 / (1.0 + salt * salt * salt),
            ic: not_zero(up(S_IC)) / (up(S_IC) + K_S_IC),
        }
    }
}

/// Hydrogen's makers and its users as if hydrogen hindered nobody. Units: kg COD/(m³·d).
pub(super) struct Unhindered {
    /// From sugars and amino acids, which hydrogen does not hinder.
    pub always: f64,
    pub fa: f64,
    pub c4: f64,
    pub pro: f64,
    /// Uptake at plenty of hydrogen.
    pub used: f64,
}

impl Unhindered {
    pub fn of(c: &Constants, a: &Acids, up: impl Fn(usize) -> f64 + Copy) -> Unhindered {
        let limits = Limits::of(c, a, up);
        let n = up(S_IN) / (up(S_IN) + c.k_s_in);
        let aa = limits.ph_aa * n;
        let m = |s: f64, k_s: f64| s / (s + k_s);
        let (va, bu) = (up(S_VA), up(S_BU));
        let c4 = c.k_m_c4 * up(X_C4) / (va + bu + EPS_C4) * aa * limits.ic;
        let h2_of = |process: usize| hydrogen_from(process);
        Unhindered {
            always: aa
                * (h2_of(UPTAKE_SU) * c.k_m_su * m(up(S_SU), c.k_s_su) * up(X_SU)
                    + h2_of(UPTAKE_AA) * c.k_m_aa * m(up(S_AA), c.k_s_aa) * up(X_AA)),
            fa: h2_of(UPTAKE_FA) * c.k_m_fa * m(up(S_FA), c.k_s_fa) * up(X_FA) * aa * limits.ic,
            c4: c4 * (h2_of(UPTAKE_VA) * m(va, c.k_s_c4) * va + h2_of(UPTAKE_BU) * m(bu, c.k_s_c4) * bu),
            pro: h2_of(UPTAKE_PRO) * c.k_m_pro * m(up(S_PRO), c.k_s_pro) * up(X_PRO) * aa,
            used: c.k_m_h2 * up(X_H2) * limits.ph_h2 * n * limits.ic,
        }
    }
}

/// The acid-base state at one H⁺.
pub(super) struct Acids {
    pub h: f64,
    pub nh3: f64,
    pub hco3: f64,
    /// Cations less anions. Units: kmol/m³.
    pub charge: f64,
    /// Its slope by H⁺.
    pub charge_h: f64,
    pub nh3_in: f64,
    pub nh3_h: f64,
    pub hco3_h: f64,
    /// Share of each total that carries a charge (kmol per unit of the total), and of S_IC that is CO₂.
    pub nh4_share: f64,
    pub hco3_share: f64,
    pub co2_share: f64,
    pub ac_share: f64,
    pub pro_share: f64,
    pub bu_share: f64,
    pub va_share: f64,
}

impl Acids {
    #[inline(always)]
    pub fn of(c: &Constants, of: impl Fn(usize) -> f64, up: impl Fn(usize) -> f64) -> Acids {
        let h = up(H_ION);
        let (per_in, per_co2) = (1.0 / (c.k_a_in + h), 1.0 / (c.k_a_co2 + h));
        let (per_ac, per_pro) = (1.0 / (c.k_a_ac + h), 1.0 / (c.k_a_pro + h));
        let (per_bu, per_va) = (1.0 / (c.k_a_bu + h), 1.0 / (c.k_a_va + h));
        let (nh3_in, hco3_share) = (c.k_a_in * per_in, c.k_a_co2 * per_co2);
        let (nh3, hco3) = (nh3_in * of(S_IN), hco3_share * of(S_IC));
        // Charge a kg COD: a mole of acetate is 64 g COD, of propionate 112, of butyrate 160, of valerate 208.
        let (ac_share, pro_share) = (c.k_a_ac * per_ac * (1.0 / 64.0), c.k_a_pro * per_pro * (1.0 / 112.0));
        let (bu_share, va_share) = (c.k_a_bu * per_bu * (1.0 / 160.0), c.k_a_va * per_va * (1.0 / 208.0));
        let (ac, pro, bu, va) = (ac_share * of(S_AC), pro_share * of(S_PRO), bu_share * of(S_BU), va_share * of(S_VA));
        let per_h = 1.0 / h;
        let oh = c.k_w * per_h;
        let nh4_share = h * per_in;
        Acids {
            h,
            nh3,
            hco3,
            charge: of(S_CAT) - of(S_AN) + nh4_share * of(S_IN) + h - hco3 - ac - pro - bu - va - oh,
            charge_h: 1.0
                + nh3 * per_in
                + hco3 * per_co2
                + ac * per_ac
                + pro * per_pro
                + bu * per_bu
                + va * per_va
                + oh * per_h,
            nh3_in,
            nh3_h: -nh3 * per_in,
            hco3_h: -hco3 * per_co2,
            nh4_share,
            hco3_share,
            co2_share: h * per_co2,
            ac_share,
            pro_share,
            bu_share,
            va_share,
        }
    }
}

/// How far liquid and gas are from balance, and the gas that flows out.
pub(super) struct Transfer {
    pub h2: f64,
    pub ch4: f64,
    pub co2: f64,
    /// Units: m³/d at head space pressure.
    pub flow: f64,
}

impl Transfer {
    #[inline(always)]
    pub fn of(c: &Constants, a: &Acids, of: impl Fn(usize) -> f64) -> Transfer {
        let (h2, ch4, co2) = (of(GAS + GAS_H2), of(GAS + GAS_CH4), of(GAS + GAS_CO2));
        let over = h2 * c.rt_per_h2 + ch4 * c.rt_per_ch4 + co2 * c.rt + c.vapour_less_air;
        Transfer {
            h2: of(S_H2) - c.in_liquid_h2 * h2,
            ch4: of(S_CH4) - c.in_liquid_ch4 * ch4,
            co2: of(S_IC) - a.hco3 - c.in_liquid_co2 * co2,
            flow: c.k_p * not_below_zero(over),
        }
    }
}
