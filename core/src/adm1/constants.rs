//! What the rates of one tank need at its temperature, worked out once for all steps, and the same for tanks side by side.
//!
//! Takes kinetics, vessel, liquid and temperature; gives [`Constants`], and [`LaneConstants`] of `L` tanks.

use super::parameters::{Kinetics, Vessel};
use super::temperature::Physics;

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
            pub fn lane(&self, l: usize) -> Constants {
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
