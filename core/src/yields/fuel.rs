//! Fuel that gas stands in for.

use crate::gas::METHANE_MJ_PER_M3;
use crate::ids;

ids!(/// What a family cooked on before.
    Fuel { Wood = "wood", Charcoal = "charcoal", Lpg = "lpg", Kerosene = "kerosene" });

/// Share of a gas flame's heat that gets into the pot. Source: 55 to 60 % (FAO 1996, read), the lower.
pub const BIOGAS_STOVE: f64 = 0.55;

impl Fuel {
    /// Lower heating value. Units: MJ/kg. Source: IPCC 2006 vol. 2 table 1.2 (read at second hand).
    pub const fn mj_per_kg(self) -> f64 {
        match self {
            Fuel::Wood => 15.6,
            Fuel::Charcoal => 29.5,
            Fuel::Lpg => 47.3,
            Fuel::Kerosene => 43.8,
        }
    }

    /// Share of its heat that gets into the pot. Source: three-stone fire 12 %, charcoal stove 25 %, gas as biogas,
    /// wick stove 45 % (from memory).
    pub const fn stove(self) -> f64 {
        match self {
            Fuel::Wood => 0.12,
            Fuel::Charcoal => 0.25,
            Fuel::Lpg => BIOGAS_STOVE,
            Fuel::Kerosene => 0.45,
        }
    }

    /// What would have been burned for the same heat in the pot. `methane_m3` is dry, at 0 °C and 1 atm. Units: kg.
    pub fn spared_kg(self, methane_m3: f64) -> f64 {
        methane_m3 * METHANE_MJ_PER_M3 * BIOGAS_STOVE / (self.mj_per_kg() * self.stove())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 1 m3 of biogas of 60 % methane: 21.5 MJ, 0.454 kg LPG at equal efficiency (derived).
    #[test]
    fn a_cubic_metre_stands_in_for_the_lpg_of_its_heat() {
        assert!((0.6 * METHANE_MJ_PER_M3 - 21.5).abs() < 0.05);
        assert!((Fuel::Lpg.spared_kg(0.6) - 0.454).abs() < 0.001);
    }

    /// GTZ 1993 (read): 1 kg of wood 0.2 m3, of charcoal 0.5 m3, 1 m3 0.4 kg LPG; within a third, stoves differ.
    #[test]
    fn replacement_values_are_near_the_handbooks() {
        for (fuel, m3_per_kg) in [(Fuel::Wood, 0.2), (Fuel::Charcoal, 0.5), (Fuel::Lpg, 1.0 / 0.4)] {
            let got = 1.0 / fuel.spared_kg(0.6);
            assert!((got / m3_per_kg - 1.0).abs() < 0.34, "{fuel}: {got} m3 a kg");
        }
    }
}
