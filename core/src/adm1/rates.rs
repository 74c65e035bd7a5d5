//! How fast everything happens, and how each speed leans on each concentration.
//!
//! Takes the unknowns and the constants of `L` tanks; gives the rates of [`super::petersen`] and, where asked, their
//! derivatives. Written for one tank; the loop over lanes is around it, so that one instruction serves all lanes. It
//! never sums rates into derivatives of states: that is [`super::dynamics`].
//!
//! Source: Batstone et al. (2002), table 3.1; inhibition, pH and gas flow as in Rosen & Jeppsson (2006). A negative
//! concentration (round-off within the solver's bounds) has the speed of zero.

use super::component::*;
use super::parameters::{Kinetics, Vessel};
use super::petersen::*;
use super::temperature::Physics;

/// Keeps valerate and butyrate apart when neither is there. Units: kg COD/m³. Source: BSM2.
const EPS_C4: f64 = 1e-6;
/// Half-saturation of what takes inorganic carbon up (users of hydrogen, butyrate, valerate and long-chain acids, and
/// hydrolysis of lipids, by their carbon balance). Units: kmol/m³. Source: not in ADM1, where nothing stops them when
/// there is no carbon left and S_IC falls below zero; our choice, so small that BSM2's steady state does not feel it.
const K_S_IC: f64 = 1e-7;
/// Methane and hydrogen: kg COD/kmol.
pub const COD_PER_KMOL_H2: f64 = 16.0;
pub const COD_PER_KMOL_CH4: f64 = 64.0;

macro_rules! per_lane {
    ($($name:ident),+ $(,)?) => {
        /// What the rates of one tank need, at its temperature.
        #[derive(Debug, Clone, Copy)]
        pub(super) struct Constants { $(pub $name: f64),+ }

        /// The same for `L` tanks side by side.
        #[derive(Debug, Clone)]
        pub(super) struct LaneConstants<const L: usize> { $(pub $name: [f64; L]),+ }

        impl<const L: usize> LaneConstants<L> {
            pub fn gather(tanks: &[Constants; L]) -> Self {
                LaneConstants { $($name: std::array::from_fn(|l| tanks[l].$name)),+ }
            }

            #[inline(always)]
            fn lane(&self, l: usize) -> Constants {
                Constants { $($name: self.$name[l]),+ }
            }
        }
    };
}

per_lane! {
    k_dis, k_hyd_ch, k_hyd_pr, k_hyd_li,
    k_m_su, k_m_aa, k_m_fa, k_m_c4, k_m_pro, k_m_ac, k_m_h2,
    k_s_su, k_s_aa, k_s_fa, k_s_c4, k_s_pro, k_s_ac, k_s_h2, k_s_in,
    k_dec_su, k_dec_aa, k_dec_fa, k_dec_c4, k_dec_pro, k_dec_ac, k_dec_h2,
    per_k_ph_aa, per_k_ph_ac, per_k_ph_h2,
    k_i_h2_fa, k_i_h2_c4, k_i_h2_pro, per_k_i_nh3, per_k_i_fa, per_k_i_salt,
    k_w, k_a_va, k_a_bu, k_a_pro, k_a_ac, k_a_co2, k_a_in,
    // Henry's constants times R·T: what is dissolved over what is in the gas.
    in_liquid_h2, in_liquid_ch4, in_liquid_co2,
    rt_per_h2, rt_per_ch4, rt, vapour_less_air,
    k_la, k_la_per_head, k_p, per_head,
}

impl Constants {
    pub fn new(kinetics: &Kinetics, vessel: &Vessel, liquid_m3: f64, celsius: f64) -> Constants {
        let k = kinetics.temperature.moved(kinetics, celsius);
        let p = Physics::at(celsius);
        let head_m3 = vessel.head_m3 + vessel.liquid_m3 - liquid_m3;
        let per_k_ph = |half: f64| libm::pow(10.0, half);
        Constants {
            k_dis: k.k_dis,
            k_hyd_ch: k.k_hyd_ch,
            k_hyd_pr: k.k_hyd_pr,
            k_hyd_li: k.k_hyd_li,
            k_m_su: k.k_m.su,
            k_m_aa: k.k_m.aa,
            k_m_fa: k.k_m.fa,
            k_m_c4: k.k_m.c4,
            k_m_pro: k.k_m.pro,
            k_m_ac: k.k_m.ac,
            k_m_h2: k.k_m.h2,
            k_s_su: k.k_s.su,
            k_s_aa: k.k_s.aa,
            k_s_fa: k.k_s.fa,
            k_s_c4: k.k_s.c4,
            k_s_pro: k.k_s.pro,
            k_s_ac: k.k_s.ac,
            k_s_h2: k.k_s.h2,
            k_s_in: k.k_s_in,
            k_dec_su: k.k_dec.su,
            k_dec_aa: k.k_dec.aa,
            k_dec_fa: k.k_dec.fa,
            k_dec_c4: k.k_dec.c4,
            k_dec_pro: k.k_dec.pro,
            k_dec_ac: k.k_dec.ac,
            k_dec_h2: k.k_dec.h2,
            per_k_ph_aa: per_k_ph(k.ph_half_aa),
            per_k_ph_ac: per_k_ph(k.ph_half_ac),
            per_k_ph_h2: per_k_ph(k.ph_half_h2),
            k_i_h2_fa: k.k_i_h2_fa,
            k_i_h2_c4: k.k_i_h2_c4,
            k_i_h2_pro: k.k_i_h2_pro,
            per_k_i_nh3: 1.0 / k.k_i_nh3,
            per_k_i_fa: k.k_i_fa.map_or(0.0, |k| 1.0 / k),
            per_k_i_salt: k.k_i_salt.map_or(0.0, |k| 1.0 / k),
            k_w: p.k_w,
            k_a_va: p.k_a_va,
            k_a_bu: p.k_a_bu,
            k_a_pro: p.k_a_pro,
            k_a_ac: p.k_a_ac,
            k_a_co2: p.k_a_co2,
            k_a_in: p.k_a_in,
            in_liquid_h2: p.k_h_h2 * p.rt,
            in_liquid_ch4: p.k_h_ch4 * p.rt,
            in_liquid_co2: p.k_h_co2 * p.rt,
            rt_per_h2: p.rt / COD_PER_KMOL_H2,
            rt_per_ch4: p.rt / COD_PER_KMOL_CH4,
            rt: p.rt,
            vapour_less_air: p.p_h2o - vessel.p_atm_bar,
            k_la: vessel.k_la_per_d,
            k_la_per_head: vessel.k_la_per_d * liquid_m3 / head_m3,
            k_p: vessel.k_p_m3_per_d_bar,
            per_head: 1.0 / head_m3,
        }
    }
}

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

/// Stores values one after another, lane `l` of each: written out so that the loop over lanes stays the innermost.
macro_rules! store {
    ($to:ident, $l:ident; $($value:expr),+ $(,)?) => { store!(@ $to, $l, 0usize; $($value,)+) };
    (@ $to:ident, $l:ident, $at:expr; $value:expr, $($rest:expr,)*) => {
        $to[$at][$l] = $value;
        store!(@ $to, $l, $at + 1usize; $($rest,)*);
    };
    (@ $to:ident, $l:ident, $at:expr;) => { const { assert!($at == STORED) } };
}

/// Rates of all lanes.
#[inline(always)]
pub(super) fn rates<const L: usize>(c: &LaneConstants<L>, y: &[[f64; L]; UNKNOWNS], rate: &mut [[f64; L]; RATES]) {
    const STORED: usize = RATES;
    for l in 0..L {
        let c = c.lane(l);
        let of = |unknown: usize| y[unknown][l];
        let up = |unknown: usize| not_below_zero(y[unknown][l]);
        let a = Acids::of(&c, of, up);
        let n = up(S_IN) / (up(S_IN) + c.k_s_in);
        let limits = Limits::of(&c, &a, up);
        let (aa, ac, h2) = (limits.ph_aa * n, limits.ph_ac * n, limits.ph_h2 * n);
        let m = |s: f64, k_s: f64| s / (s + k_s);
        let (va, bu) = (up(S_VA), up(S_BU));
        let shared = 1.0 / (va + bu + EPS_C4);
        let h = up(S_H2);
        let t = Transfer::of(&c, &a, of);
        store!(rate, l;
            c.k_dis * up(X_C),
            c.k_hyd_ch * up(X_CH),
            c.k_hyd_pr * up(X_PR),
            c.k_hyd_li * up(X_LI) * limits.ic,
            c.k_m_su * m(up(S_SU), c.k_s_su) * up(X_SU) * aa,
            c.k_m_aa * m(up(S_AA), c.k_s_aa) * up(X_AA) * aa,
            c.k_m_fa * m(up(S_FA), c.k_s_fa) * up(X_FA) * aa * limits.h2_fa * limits.ic,
            c.k_m_c4 * m(va, c.k_s_c4) * up(X_C4) * va * shared * aa * limits.h2_c4 * limits.ic,
            c.k_m_c4 * m(bu, c.k_s_c4) * up(X_C4) * bu * shared * aa * limits.h2_c4 * limits.ic,
            c.k_m_pro * m(up(S_PRO), c.k_s_pro) * up(X_PRO) * aa * limits.h2_pro,
            c.k_m_ac * m(up(S_AC), c.k_s_ac) * up(X_AC) * ac * limits.nh3 * limits.fa * limits.salt,
            c.k_m_h2 * m(h, c.k_s_h2) * up(X_H2) * h2 * limits.ic,
            c.k_dec_su * up(X_SU),
            c.k_dec_aa * up(X_AA),
            c.k_dec_fa * up(X_FA),
            c.k_dec_c4 * up(X_C4),
            c.k_dec_pro * up(X_PRO),
            c.k_dec_ac * up(X_AC),
            c.k_dec_h2 * up(X_H2),
            c.k_la * t.h2,
            c.k_la * t.ch4,
            c.k_la * t.co2,
            c.k_la_per_head * t.h2 - t.flow * c.per_head * of(GAS + GAS_H2),
            c.k_la_per_head * t.ch4 - t.flow * c.per_head * of(GAS + GAS_CH4),
            c.k_la_per_head * t.co2 - t.flow * c.per_head * of(GAS + GAS_CO2),
            a.charge,
            t.flow * of(GAS + GAS_H2),
            t.flow * of(GAS + GAS_CH4),
            t.flow * of(GAS + GAS_CO2),
        );
    }
}

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

#[inline(always)]
pub(super) fn not_below_zero(x: f64) -> f64 {
    if x > 0.0 { x } else { 0.0 }
}

/// So little that it is none, but can be divided by.
#[inline(always)]
fn not_zero(x: f64) -> f64 {
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
struct Transfer {
    h2: f64,
    ch4: f64,
    co2: f64,
    /// Units: m³/d at head space pressure.
    flow: f64,
}

impl Transfer {
    #[inline(always)]
    fn of(c: &Constants, a: &Acids, of: impl Fn(usize) -> f64) -> Transfer {
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
