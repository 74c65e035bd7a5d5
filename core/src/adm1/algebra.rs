//! What is in balance at once: H⁺ by the charge balance, dissolved hydrogen by its makers and users.
//!
//! Takes constants and a liquid; gives the one root of each, by Newton. Plain Newton is safe for both: the charge
//! balance rises and is concave in H⁺, the hydrogen balance falls and is convex in S_h2.

use super::component::*;
use super::constants::Constants;
use super::limits::{Acids, Limits, Unhindered, not_below_zero};

const MOST_TURNS: usize = 200;
const CLOSE: f64 = 1e-13;

/// H⁺ of a liquid, from a first guess. Units: kmol/m³. `None` when there is none (a charge beyond any acid or base).
pub(super) fn h_ion(c: &Constants, liquid: &Composition, guess: f64) -> Option<f64> {
    let mut h = guess;
    for _ in 0..MOST_TURNS {
        let a = acids(c, liquid, h);
        let next = h - a.charge / a.charge_h;
        let next = if next > 0.02 * h { next } else { 0.02 * h };
        let moved = (next - h).abs();
        h = next;
        if moved <= CLOSE * h {
            return (h > 0.0 && h < 10.0).then_some(h);
        }
    }
    None
}

/// The acid-base state of a liquid at a given H⁺.
pub(super) fn acids(c: &Constants, liquid: &Composition, h: f64) -> Acids {
    let of = |unknown: usize| if unknown == H_ION { h } else { liquid[unknown] };
    Acids::of(c, of, of)
}

/// Dissolved hydrogen at which as much is made as is used and leaves for the gas. Units: kg COD/m³.
pub(super) fn hydrogen(c: &Constants, liquid: &Composition, h: f64, gas_h2: f64) -> f64 {
    let at = |s_h2: f64| {
        move |unknown: usize| match unknown {
            H_ION => h,
            S_H2 => s_h2,
            _ => not_below_zero(liquid[unknown]),
        }
    };
    let up = at(liquid[S_H2]);
    let made = Unhindered::of(c, &acids(c, liquid, h), up);
    let from_gas = c.k_la * c.in_liquid_h2 * gas_h2;
    let mut s = not_below_zero(liquid[S_H2]);
    for _ in 0..MOST_TURNS {
        let limits = Limits::of(c, &acids(c, liquid, h), at(s));
        let per = 1.0 / (s + c.k_s_h2);
        let (fa, c4, pro) = (made.fa * limits.h2_fa, made.c4 * limits.h2_c4, made.pro * limits.h2_pro);
        let left = made.always + fa + c4 + pro + from_gas - c.k_la * s - made.used * s * per;
        let slope = fa * limits.h2_fa_slope + c4 * limits.h2_c4_slope + pro * limits.h2_pro_slope
            - c.k_la
            - made.used * c.k_s_h2 * per * per;
        let next = not_below_zero(s - left / slope);
        let moved = (next - s).abs();
        s = next;
        if moved <= CLOSE * s + 1e-22 {
            break;
        }
    }
    s
}
