//! Greenhouse gases spared and leaked, in the forms of IPCC and of the small-scale CDM methods.
//!
//! Takes fuel, animals and gas; gives kilograms or tonnes of CO2 equivalents over 100 years. Never mixes reports: a
//! [`Gwp`] carries both gases of one report.

use super::fuel::Fuel;

/// Global warming potentials over 100 years, biogenic methane.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gwp {
    pub methane: f64,
    pub nitrous_oxide: f64,
}

/// IPCC AR5: 28, 265 (read at second hand).
pub const AR5: Gwp = Gwp { methane: 28.0, nitrous_oxide: 265.0 };
/// IPCC AR6: 27.0 for methane that is not fossil, 273 (read at second hand).
pub const AR6: Gwp = Gwp { methane: 27.0, nitrous_oxide: 273.0 };

/// Density of methane at 20 °C and 1 atm. Units: kg/m3. Source: IPCC 2006 vol. 4 equation 10.23.
pub const METHANE_KG_PER_M3_20C: f64 = 0.67;
/// Lower heating value of methane. Units: MJ/kg. Source: 802.57 kJ/mol over 16.0425 g/mol.
const METHANE_MJ_PER_KG: f64 = 50.03;
/// Taken off for leakage elsewhere. Source: AMS-I.E.
const NET_OF_LEAKAGE: f64 = 0.95;
/// Uncertainty factor. Source: AMS-III.R (from memory).
const UNCERTAINTY: f64 = 0.89;
/// Of all the methane that a digester's feed can give, where leaks are not measured. Source: AMS-III.R (from memory).
const UNMEASURED_LEAK: f64 = 0.10;

impl Fuel {
    /// Units: kg CO2/GJ. Source: IPCC 2006 vol. 2 table 1.4 (read at second hand; charcoal from memory).
    pub const fn co2_kg_per_gj(self) -> f64 {
        match self {
            Fuel::Wood | Fuel::Charcoal => 112.0,
            Fuel::Lpg => 63.1,
            Fuel::Kerosene => 71.9,
        }
    }

    /// Methane and nitrous oxide of household stoves. Units: kg CO2e/GJ. Source: IPCC 2006 vol. 2 table 2.5 (from
    /// memory): CH4 300, 200, 5, 10 and N2O 4, 1, 0.1, 0.6 kg/TJ.
    pub fn other_gases_kg_per_gj(self, gwp: Gwp) -> f64 {
        let (methane, nitrous_oxide) = match self {
            Fuel::Wood => (300.0, 4.0),
            Fuel::Charcoal => (200.0, 1.0),
            Fuel::Lpg => (5.0, 0.1),
            Fuel::Kerosene => (10.0, 0.6),
        };
        (methane * gwp.methane + nitrous_oxide * gwp.nitrous_oxide) / 1_000.0
    }

    /// CO2e of burning `kg`, of which CO2 counts at `non_renewable` (1 for fossil fuels). Units: kg.
    pub fn co2e_kg(self, kg: f64, non_renewable: f64, gwp: Gwp) -> f64 {
        let gj = kg * self.mj_per_kg() / 1_000.0;
        gj * (non_renewable * self.co2_kg_per_gj() + self.other_gases_kg_per_gj(gwp))
    }

    /// What counts as spared when `kg` are not burned, in the form of AMS-I.E and TPDDTEC. Units: kg CO2e.
    pub fn reduction_kg(self, kg: f64, non_renewable: f64, gwp: Gwp) -> f64 {
        NET_OF_LEAKAGE * self.co2e_kg(kg, non_renewable, gwp)
    }
}

/// CO2e of methane let out. Units: kg.
pub fn leaked_kg(methane_kg: f64, gwp: Gwp) -> f64 {
    methane_kg * gwp.methane
}

/// Methane in a year of `biogas_m3_per_d` at 20 °C. Units: kg.
pub fn methane_kg_per_year(biogas_m3_per_d: f64, methane_share: f64) -> f64 {
    365.0 * biogas_m3_per_d * methane_share * METHANE_KG_PER_M3_20C
}

/// Animals whose dung would have lain in pits, and now is digested.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Herd {
    pub animals: f64,
    /// Units: kg VS per animal and day.
    pub vs_kg_per_d: f64,
    /// Most methane its dung can give. Units: m3 CH4 (20 °C)/kg VS.
    pub b0_m3_per_kg_vs: f64,
    /// Share of it that the pit would have given.
    pub pit_mcf: f64,
}

impl Herd {
    fn potential_kg_per_year(&self) -> f64 {
        365.0 * self.animals * self.vs_kg_per_d * self.b0_m3_per_kg_vs * METHANE_KG_PER_M3_20C
    }
    /// Spared in a year: the pit's methane less the digester's unmeasured leaks, in the form of AMS-III.R. Units: kg
    /// CO2e.
    pub fn reduction_kg_per_year(&self, gwp: Gwp) -> f64 {
        self.pit_kg_per_year(gwp) - self.digester_kg_per_year(gwp)
    }
    fn pit_kg_per_year(&self, gwp: Gwp) -> f64 {
        gwp.methane * UNCERTAINTY * self.pit_mcf * self.potential_kg_per_year()
    }
    fn digester_kg_per_year(&self, gwp: Gwp) -> f64 {
        gwp.methane * UNMEASURED_LEAK * self.potential_kg_per_year()
    }
}

/// Share of the gas that may leak before a digester does more harm than the fuel it spares.
pub fn break_even_leak(fuel: Fuel, non_renewable: f64, gwp: Gwp) -> f64 {
    let spared_kg = METHANE_MJ_PER_KG * super::fuel::BIOGAS_STOVE / (fuel.stove() * fuel.mj_per_kg());
    let spared = fuel.co2e_kg(spared_kg, non_renewable, gwp);
    spared / (spared + gwp.methane)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(value: f64, expected: f64, within: f64, what: &str) {
        assert!((value - expected).abs() <= within, "{what}: {value}, expected {expected} ± {within}");
    }

    /// Derived: 2 t of wood, half of it not renewable: CO2 1.747 t, with CH4 and N2O 2.042 t, net 1.940 t.
    #[test]
    fn two_tonnes_of_wood_spared() {
        near(Fuel::Wood.other_gases_kg_per_gj(AR5), 9.46, 0.005, "other gases, AR5");
        near(2_000.0 * 15.6e-3 * 0.5 * Fuel::Wood.co2_kg_per_gj(), 1_747.0, 0.5, "CO2");
        near(Fuel::Wood.co2e_kg(2_000.0, 0.5, AR5), 2_042.0, 0.5, "all gases");
        near(Fuel::Wood.reduction_kg(2_000.0, 0.5, AR5), 1_940.0, 0.5, "net of leakage");
    }

    /// Derived: 0.5 m3/d at 60 % is 73.4 kg CH4 a year; a tenth of it leaked is 205 kg CO2e (AR5) or 198 (AR6).
    #[test]
    fn a_tenth_of_half_a_cubic_metre_a_day_leaked() {
        let methane = methane_kg_per_year(0.5, 0.6);
        near(methane, 73.4, 0.05, "methane");
        near(leaked_kg(0.1 * methane, AR5), 205.0, 0.6, "AR5");
        near(leaked_kg(0.1 * methane, AR6), 198.0, 0.6, "AR6");
    }

    /// Derived: three pigs of 0.3 kg VS/d, B0 0.29, pit 0.80: 1.227 t less 0.172 t is 1.055 t.
    #[test]
    fn three_pigs_pit_replaced() {
        let herd = Herd { animals: 3.0, vs_kg_per_d: 0.3, b0_m3_per_kg_vs: 0.29, pit_mcf: 0.80 };
        near(herd.pit_kg_per_year(AR6), 1_227.0, 0.6, "pit");
        near(herd.digester_kg_per_year(AR6), 172.0, 0.6, "digester");
        near(herd.reduction_kg_per_year(AR6), 1_055.0, 0.6, "spared");
    }

    /// Derived: 47.3 MJ/kg at 63.1 g/MJ.
    #[test]
    fn a_kilogram_of_lpg() {
        near(Fuel::Lpg.mj_per_kg() * Fuel::Lpg.co2_kg_per_gj() / 1_000.0, 2.985, 0.0005, "CO2");
    }

    /// Derived: 10.5 % against LPG in the same stove; 35.7 % against wood (half not renewable, 55 against 12 %).
    #[test]
    fn leaks_eat_the_saving_at_a_tenth_against_lpg_and_a_third_against_wood() {
        near(break_even_leak(Fuel::Lpg, 1.0, AR6), 0.105, 0.0006, "LPG");
        near(break_even_leak(Fuel::Wood, 0.5, AR6), 0.357, 0.0015, "wood");
    }
}
