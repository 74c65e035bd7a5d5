//! What a laboratory would measure in a tank, told from its contents.
//!
//! Takes a tank; gives pH, acids, alkalinity, ammonia and head-space pressures. It never changes the tank.

use super::algebra;
use super::component::*;
use super::constants::{COD_PER_KMOL_CH4, COD_PER_KMOL_H2};
use super::run::CALM_D;
use super::tank::{Member, Tank};
use super::temperature::{Physics, R, ZERO_C_K};

/// Partial pressures of the head space. Units: bar.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pressures {
    pub h2_bar: f64,
    pub ch4_bar: f64,
    pub co2_bar: f64,
    pub h2o_bar: f64,
}

impl Pressures {
    pub fn total_bar(&self) -> f64 {
        self.h2_bar + self.ch4_bar + self.co2_bar + self.h2o_bar
    }
}

impl Tank {
    /// The pH at the end of the last run.
    pub fn ph(&self) -> f64 {
        -libm::log10(self.h_ion)
    }

    /// H⁺. Units: kmol/m³.
    pub fn h_ion_kmol_per_m3(&self) -> f64 {
        self.h_ion
    }

    /// Whether the pH has stayed out of the sour range for long enough to share lanes with the healthy.
    pub fn is_calm(&self) -> bool {
        self.calm_d >= CALM_D
    }

    /// Acetate, propionate, butyrate, valerate together. Units: kg COD/m³.
    pub fn vfa_kg_cod_per_m3(&self) -> f64 {
        self.liquid[S_VA] + self.liquid[S_BU] + self.liquid[S_PRO] + self.liquid[S_AC]
    }

    /// Total ammonia nitrogen. Units: kg N/m³.
    pub fn tan_kg_n_per_m3(&self) -> f64 {
        self.liquid[S_IN] * 14.007
    }

    /// Free ammonia. Units: kmol N/m³.
    pub fn free_ammonia_kmol_per_m3(&self, celsius: f64) -> f64 {
        let k = Physics::at(celsius).k_a_in;
        k * self.liquid[S_IN] / (k + self.h_ion)
    }

    /// Bicarbonate. Units: kmol C/m³.
    pub fn bicarbonate_kmol_per_m3(&self, celsius: f64) -> f64 {
        let k = Physics::at(celsius).k_a_co2;
        k * self.liquid[S_IC] / (k + self.h_ion)
    }

    /// Strong acid that brings the pH down to `ph`, with all carbonate kept in: what a titration measures. Below 0
    /// when the pH is already lower. Units: kmol/m³.
    pub fn acid_to_ph(&self, member: &Member, celsius: f64, ph: f64) -> f64 {
        algebra::acids(&self.constants(member, celsius), &self.liquid, libm::pow(10.0, -ph)).charge
    }

    /// Alkalinity as titrated to pH 5.0. Units: kg CaCO₃/m³ (50.04 kg an equivalent).
    pub fn alkalinity_kg_caco3_per_m3(&self, member: &Member, celsius: f64) -> f64 {
        50.04 * self.acid_to_ph(member, celsius, 5.0)
    }

    /// The share of acids in alkalinity, both in kg/m³: acids as acetic acid over alkalinity as CaCO₃. Infinite when
    /// no alkalinity is left.
    pub fn acids_over_alkalinity(&self, member: &Member, celsius: f64) -> f64 {
        let alkalinity = self.alkalinity_kg_caco3_per_m3(member, celsius);
        let acids = self.vfa_kg_cod_per_m3() * (60.05 / 64.0);
        if alkalinity > 0.0 { acids / alkalinity } else { f64::INFINITY }
    }

    pub fn pressures(&self, celsius: f64) -> Pressures {
        let rt = R * (celsius + ZERO_C_K);
        Pressures {
            h2_bar: self.gas[GAS_H2] * rt / COD_PER_KMOL_H2,
            ch4_bar: self.gas[GAS_CH4] * rt / COD_PER_KMOL_CH4,
            co2_bar: self.gas[GAS_CO2] * rt,
            h2o_bar: Physics::at(celsius).p_h2o,
        }
    }
}
