//! How fast everything happens.
//!
//! Takes the unknowns and the constants of `L` tanks; gives the rates of [`super::petersen`]; how they lean on the
//! unknowns is [`super::leanings`]. Written for one tank; the loop over lanes is around it, so that one instruction
//! serves all lanes. It never sums rates into derivatives of states: that is [`super::dynamics`].
//!
//! Source: Batstone et al. (2002), table 3.1; inhibition, pH and gas flow as in Rosen & Jeppsson (2006). A negative
//! concentration (round-off within the solver's bounds) has the speed of zero.

use super::component::*;
use super::constants::LaneConstants;
use super::limits::{Acids, EPS_C4, Limits, Transfer, not_below_zero};
use super::petersen::*;

/// Stores values one after another, lane `l` of each: written out so that the loop over lanes stays the innermost.
macro_rules! store {
    ($to:ident, $l:ident; $($value:expr),+ $(,)?) => { store!(@ $to, $l, 0usize; $($value,)+) };
    (@ $to:ident, $l:ident, $at:expr; $value:expr, $($rest:expr,)*) => {
        $to[$at][$l] = $value;
        store!(@ $to, $l, $at + 1usize; $($rest,)*);
    };
    (@ $to:ident, $l:ident, $at:expr;) => { const { assert!($at == STORED) } };
}
pub(super) use store;

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
