//! How each speed leans on each concentration: the derivatives of [`super::rates`] by the unknowns, worked out by hand.
//!
//! Takes the unknowns and the constants of `L` tanks; gives a value for each pair of [`LEANINGS`]. That they are the
//! slopes of the rates is tested in [`super::dynamics`], against differences.

use super::component::*;
use super::constants::LaneConstants;
use super::limits::{Acids, EPS_C4, K_S_IC, Limits, Transfer, not_below_zero, not_zero};
use super::petersen::*;
use super::rates::store;

/// On what each rate leans: the derivatives are computed in this order.
pub(super) const LEANINGS: [(usize, usize); 94] = [
    (DISINTEGRATION, X_C),
    (HYDROLYSIS_CH, X_CH),
    (HYDROLYSIS_PR, X_PR),
    (HYDROLYSIS_LI, X_LI),
    (HYDROLYSIS_LI, S_IC),
    (UPTAKE_SU, S_SU),
    (UPTAKE_SU, X_SU),
    (UPTAKE_SU, S_IN),
    (UPTAKE_SU, H_ION),
    (UPTAKE_AA, S_AA),
    (UPTAKE_AA, X_AA),
    (UPTAKE_AA, S_IN),
    (UPTAKE_AA, H_ION),
    (UPTAKE_FA, S_FA),
    (UPTAKE_FA, X_FA),
    (UPTAKE_FA, S_IN),
    (UPTAKE_FA, H_ION),
    (UPTAKE_FA, S_H2),
    (UPTAKE_FA, S_IC),
    (UPTAKE_VA, S_VA),
    (UPTAKE_VA, S_BU),
    (UPTAKE_VA, X_C4),
    (UPTAKE_VA, S_IN),
    (UPTAKE_VA, H_ION),
    (UPTAKE_VA, S_H2),
    (UPTAKE_VA, S_IC),
    (UPTAKE_BU, S_BU),
    (UPTAKE_BU, S_VA),
    (UPTAKE_BU, X_C4),
    (UPTAKE_BU, S_IN),
    (UPTAKE_BU, H_ION),
    (UPTAKE_BU, S_H2),
    (UPTAKE_BU, S_IC),
    (UPTAKE_PRO, S_PRO),
    (UPTAKE_PRO, X_PRO),
    (UPTAKE_PRO, S_IN),
    (UPTAKE_PRO, H_ION),
    (UPTAKE_PRO, S_H2),
    (UPTAKE_AC, S_AC),
    (UPTAKE_AC, X_AC),
    (UPTAKE_AC, S_IN),
    (UPTAKE_AC, H_ION),
    (UPTAKE_AC, S_FA),
    (UPTAKE_AC, S_CAT),
    (UPTAKE_H2, S_H2),
    (UPTAKE_H2, X_H2),
    (UPTAKE_H2, S_IN),
    (UPTAKE_H2, H_ION),
    (UPTAKE_H2, S_IC),
    (DECAY, X_SU),
    (DECAY + 1, X_AA),
    (DECAY + 2, X_FA),
    (DECAY + 3, X_C4),
    (DECAY + 4, X_PRO),
    (DECAY + 5, X_AC),
    (DECAY + 6, X_H2),
    (TRANSFER, S_H2),
    (TRANSFER, GAS + GAS_H2),
    (TRANSFER + 1, S_CH4),
    (TRANSFER + 1, GAS + GAS_CH4),
    (TRANSFER + 2, S_IC),
    (TRANSFER + 2, H_ION),
    (TRANSFER + 2, GAS + GAS_CO2),
    (HEAD, S_H2),
    (HEAD, GAS + GAS_H2),
    (HEAD, GAS + GAS_CH4),
    (HEAD, GAS + GAS_CO2),
    (HEAD + 1, S_CH4),
    (HEAD + 1, GAS + GAS_H2),
    (HEAD + 1, GAS + GAS_CH4),
    (HEAD + 1, GAS + GAS_CO2),
    (HEAD + 2, S_IC),
    (HEAD + 2, H_ION),
    (HEAD + 2, GAS + GAS_H2),
    (HEAD + 2, GAS + GAS_CH4),
    (HEAD + 2, GAS + GAS_CO2),
    (CHARGE, S_CAT),
    (CHARGE, S_AN),
    (CHARGE, S_IN),
    (CHARGE, S_IC),
    (CHARGE, S_AC),
    (CHARGE, S_PRO),
    (CHARGE, S_BU),
    (CHARGE, S_VA),
    (CHARGE, H_ION),
    (LEAVING, GAS + GAS_H2),
    (LEAVING, GAS + GAS_CH4),
    (LEAVING, GAS + GAS_CO2),
    (LEAVING + 1, GAS + GAS_H2),
    (LEAVING + 1, GAS + GAS_CH4),
    (LEAVING + 1, GAS + GAS_CO2),
    (LEAVING + 2, GAS + GAS_H2),
    (LEAVING + 2, GAS + GAS_CH4),
    (LEAVING + 2, GAS + GAS_CO2),
];

/// Derivatives of all lanes, in the order of [`LEANINGS`].
#[inline(always)]
pub(super) fn derivatives<const L: usize>(c: &LaneConstants<L>, y: &[[f64; L]; UNKNOWNS], lean: &mut [[f64; L]; 94]) {
    const STORED: usize = 94;
    for l in 0..L {
        let c = c.lane(l);
        let of = |unknown: usize| y[unknown][l];
        let up = |unknown: usize| not_below_zero(y[unknown][l]);
        let a = Acids::of(&c, of, up);
        let per_n = 1.0 / (up(S_IN) + c.k_s_in);
        let (n, n_in) = (up(S_IN) * per_n, c.k_s_in * per_n * per_n);
        let limits = Limits::of(&c, &a, up);
        let Limits { ph_aa, ph_ac, ph_h2, .. } = limits;
        // Slope of 1/(1 + x^e), x = H/K, by H.
        let x_aa = a.h * c.per_k_ph_aa;
        let x_ac = a.h * c.per_k_ph_ac;
        let x_h2 = a.h * c.per_k_ph_h2;
        let ph_aa_h = -2.0 * x_aa * c.per_k_ph_aa * ph_aa * ph_aa;
        let ph_ac_h = -3.0 * x_ac * x_ac * c.per_k_ph_ac * ph_ac * ph_ac;
        let ph_h2_h = -3.0 * x_h2 * x_h2 * c.per_k_ph_h2 * ph_h2 * ph_h2;
        let aa = ph_aa * n;
        // Relative slope of x/(x + K): with the factor itself, K/(x + K)^2, finite at none.
        let ic_slope = K_S_IC / ((up(S_IC) + K_S_IC) * not_zero(up(S_IC)));

        let (per_su, per_aa) = (1.0 / (up(S_SU) + c.k_s_su), 1.0 / (up(S_AA) + c.k_s_aa));
        let su = c.k_m_su * up(S_SU) * per_su;
        let su_x = su * up(X_SU);
        let am = c.k_m_aa * up(S_AA) * per_aa;
        let am_x = am * up(X_AA);

        let per_fa = 1.0 / (up(S_FA) + c.k_s_fa);
        let fa = c.k_m_fa * up(S_FA) * per_fa * limits.h2_fa * limits.ic;
        let fa_x = fa * up(X_FA);

        let (va, bu) = (up(S_VA), up(S_BU));
        let shared = 1.0 / (va + bu + EPS_C4);
        let c4 = c.k_m_c4 * limits.h2_c4 * limits.ic;
        let c4_x = c4 * up(X_C4);
        let (per_va, per_bu) = (1.0 / (va + c.k_s_c4), 1.0 / (bu + c.k_s_c4));
        let (m_va, m_bu) = (va * per_va, bu * per_bu);
        let (share_va, share_bu) = (va * shared, bu * shared);
        let (va_1, bu_1) = (m_va * share_va, m_bu * share_bu);

        let per_pro = 1.0 / (up(S_PRO) + c.k_s_pro);
        let pro = c.k_m_pro * up(S_PRO) * per_pro * limits.h2_pro;
        let pro_x = pro * up(X_PRO);

        let per_ac = 1.0 / (up(S_AC) + c.k_s_ac);
        let ac_free = c.k_m_ac * up(S_AC) * per_ac * limits.nh3 * limits.fa * limits.salt;
        let ac_free_x = ac_free * up(X_AC);
        let nh3_slope = -c.per_k_i_nh3 * limits.nh3; // relative, per kmol/m3 of NH3
        let ac = ac_free_x * ph_ac * n;
        let salt = up(S_CAT) * c.per_k_i_salt;

        let h = up(S_H2);
        let per_h = 1.0 / (h + c.k_s_h2);
        let hu = c.k_m_h2 * h * per_h * limits.ic;
        let hu_x = hu * up(X_H2);

        let t = Transfer::of(&c, &a, of);
        // Gas flow by each gas: k_p·R·T per unit, none while no gas flows.
        let open = if t.flow > 0.0 { c.k_p } else { 0.0 };
        let (q_h2, q_ch4, q_co2) = (open * c.rt_per_h2, open * c.rt_per_ch4, open * c.rt);
        let (g_h2, g_ch4, g_co2) = (of(GAS + GAS_H2), of(GAS + GAS_CH4), of(GAS + GAS_CO2));
        let w = c.per_head;
        let co2_h = a.hco3_h; // CO2 gains what bicarbonate loses

        store!(lean, l;
            c.k_dis,
            c.k_hyd_ch,
            c.k_hyd_pr,
            c.k_hyd_li * limits.ic,
            c.k_hyd_li * up(X_LI) * limits.ic * ic_slope,
            // su
            c.k_m_su * c.k_s_su * per_su * per_su * up(X_SU) * aa,
            su * aa,
            su_x * ph_aa * n_in,
            su_x * n * ph_aa_h,
            // aa
            c.k_m_aa * c.k_s_aa * per_aa * per_aa * up(X_AA) * aa,
            am * aa,
            am_x * ph_aa * n_in,
            am_x * n * ph_aa_h,
            // fa
            c.k_m_fa * c.k_s_fa * per_fa * per_fa * limits.h2_fa * limits.ic * up(X_FA) * aa,
            fa * aa,
            fa_x * ph_aa * n_in,
            fa_x * n * ph_aa_h,
            fa_x * aa * limits.h2_fa_slope,
            fa_x * aa * ic_slope,
            // va
            c4_x * aa * (c.k_s_c4 * per_va * per_va * share_va + m_va * shared * (1.0 - share_va)),
            -c4_x * aa * va_1 * shared,
            c4 * aa * va_1,
            c4_x * va_1 * ph_aa * n_in,
            c4_x * va_1 * n * ph_aa_h,
            c4_x * va_1 * aa * limits.h2_c4_slope,
            c4_x * va_1 * aa * ic_slope,
            // bu
            c4_x * aa * (c.k_s_c4 * per_bu * per_bu * share_bu + m_bu * shared * (1.0 - share_bu)),
            -c4_x * aa * bu_1 * shared,
            c4 * aa * bu_1,
            c4_x * bu_1 * ph_aa * n_in,
            c4_x * bu_1 * n * ph_aa_h,
            c4_x * bu_1 * aa * limits.h2_c4_slope,
            c4_x * bu_1 * aa * ic_slope,
            // pro
            c.k_m_pro * c.k_s_pro * per_pro * per_pro * limits.h2_pro * up(X_PRO) * aa,
            pro * aa,
            pro_x * ph_aa * n_in,
            pro_x * n * ph_aa_h,
            pro_x * aa * limits.h2_pro_slope,
            // ac
            c.k_m_ac * c.k_s_ac * per_ac * per_ac * limits.nh3 * limits.fa * limits.salt * up(X_AC) * ph_ac * n,
            ac_free * ph_ac * n,
            ac_free_x * ph_ac * n_in + ac * nh3_slope * a.nh3_in,
            ac_free_x * n * ph_ac_h + ac * nh3_slope * a.nh3_h,
            -ac * c.per_k_i_fa * limits.fa,
            -ac * 3.0 * salt * salt * c.per_k_i_salt * limits.salt,
            // h2
            c.k_m_h2 * c.k_s_h2 * per_h * per_h * limits.ic * up(X_H2) * ph_h2 * n,
            hu * ph_h2 * n,
            hu_x * ph_h2 * n_in,
            hu_x * n * ph_h2_h,
            hu_x * ph_h2 * n * ic_slope,
            // decay
            c.k_dec_su,
            c.k_dec_aa,
            c.k_dec_fa,
            c.k_dec_c4,
            c.k_dec_pro,
            c.k_dec_ac,
            c.k_dec_h2,
            // transfer
            c.k_la,
            -c.k_la * c.in_liquid_h2,
            c.k_la,
            -c.k_la * c.in_liquid_ch4,
            c.k_la * a.co2_share,
            -c.k_la * co2_h,
            -c.k_la * c.in_liquid_co2,
            // head space
            c.k_la_per_head,
            -c.k_la_per_head * c.in_liquid_h2 - w * (t.flow + q_h2 * g_h2),
            -w * q_ch4 * g_h2,
            -w * q_co2 * g_h2,
            c.k_la_per_head,
            -w * q_h2 * g_ch4,
            -c.k_la_per_head * c.in_liquid_ch4 - w * (t.flow + q_ch4 * g_ch4),
            -w * q_co2 * g_ch4,
            c.k_la_per_head * a.co2_share,
            -c.k_la_per_head * co2_h,
            -w * q_h2 * g_co2,
            -w * q_ch4 * g_co2,
            -c.k_la_per_head * c.in_liquid_co2 - w * (t.flow + q_co2 * g_co2),
            // charge
            1.0,
            -1.0,
            a.nh4_share,
            -a.hco3_share,
            -a.ac_share,
            -a.pro_share,
            -a.bu_share,
            -a.va_share,
            a.charge_h,
            // leaving
            t.flow + q_h2 * g_h2,
            q_ch4 * g_h2,
            q_co2 * g_h2,
            q_h2 * g_ch4,
            t.flow + q_ch4 * g_ch4,
            q_co2 * g_ch4,
            q_h2 * g_co2,
            q_ch4 * g_co2,
            t.flow + q_co2 * g_co2,
        );
    }
}
