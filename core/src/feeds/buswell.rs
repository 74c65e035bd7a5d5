//! What a substance's atoms say it must give: oxygen demand, methane and carbon dioxide.
//!
//! Takes mass shares of carbon, hydrogen, oxygen and nitrogen; gives COD and the methane of complete digestion
//! (Buswell and Mueller 1952, with nitrogen after Boyle 1977: ammonia is not oxidised). Never knows how fast.

/// Molar mass. Units: g/mol. Source: IUPAC standard atomic weights, from memory.
const C: f64 = 12.011;
const H: f64 = 1.008;
const O: f64 = 15.999;
const N: f64 = 14.007;
/// Molar volume of an ideal gas at 0 °C and 1 atm. Units: m3/kmol. Source: CODATA, from memory.
pub const NORMAL_M3_PER_KMOL: f64 = 22.414;
/// Methane of one kg COD: one kmol CH4 takes two of O2. Units: m3 (0 °C, 1 atm)/kg COD.
pub const METHANE_M3_PER_KG_COD: f64 = NORMAL_M3_PER_KMOL / (4.0 * O);

/// What one kg of a substance is made of. Units: kg/kg.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Elements {
    pub carbon: f64,
    pub hydrogen: f64,
    pub oxygen: f64,
    pub nitrogen: f64,
}

impl Elements {
    /// From a formula's counts of atoms.
    pub const fn of(carbon: f64, hydrogen: f64, oxygen: f64, nitrogen: f64) -> Self {
        let mass = carbon * C + hydrogen * H + oxygen * O + nitrogen * N;
        Self {
            carbon: carbon * C / mass,
            hydrogen: hydrogen * H / mass,
            oxygen: oxygen * O / mass,
            nitrogen: nitrogen * N / mass,
        }
    }

    /// Oxygen that burns it to CO2, H2O and NH3. Units: kg COD/kg.
    pub const fn cod(self) -> f64 {
        let (c, h, o, n) = self.atoms();
        (c + h / 4.0 - o / 2.0 - 3.0 * n / 4.0) * 2.0 * O
    }

    /// Methane of complete digestion. Units: m3 (0 °C, 1 atm)/kg.
    pub const fn methane_m3_per_kg(self) -> f64 {
        self.cod() * METHANE_M3_PER_KG_COD
    }

    /// Share of methane in CH4 + CO2, no CO2 held in solution.
    pub const fn methane_share(self) -> f64 {
        let (c, h, o, n) = self.atoms();
        (c / 2.0 + h / 8.0 - o / 4.0 - 3.0 * n / 8.0) / c
    }

    /// kmol of atoms per kg.
    const fn atoms(self) -> (f64, f64, f64, f64) {
        (self.carbon / C, self.hydrogen / H, self.oxygen / O, self.nitrogen / N)
    }
}

/// Starch and cellulose: C6H10O5.
pub const STARCH: Elements = Elements::of(6.0, 10.0, 5.0, 0.0);
/// Food sugars, half hexose and half disaccharide by mass of C12H22O11 and C6H12O6.
pub const SUGARS: Elements = Elements::of(12.0, 23.0, 11.5, 0.0);
/// Triolein-like fat: C57H104O6 (Angelidaki and Sanders 2004, from memory).
pub const FAT: Elements = Elements::of(57.0, 104.0, 6.0, 0.0);
/// Food protein: 53 % C, 7 % H, 23 % O, 16 % N, the rest sulphur; textbook composition behind nitrogen × 6.25, from
/// memory.
pub const PROTEIN: Elements = Elements { carbon: 0.53, hydrogen: 0.07, oxygen: 0.23, nitrogen: 0.16 };
/// The protein of ADM1's yields: C5H7NO2.
pub const PROTEIN_ADM1: Elements = Elements::of(5.0, 7.0, 2.0, 1.0);

#[cfg(test)]
mod tests {
    use super::*;

    fn near(value: f64, expected: f64, within: f64, what: &str) {
        assert!((value - expected).abs() <= within, "{what}: {value}, expected {expected} ± {within}");
    }

    /// Angelidaki and Sanders 2004: 0.415, 0.496 and 1.014 m3 CH4/kg; 50, 50 and 70 % methane.
    #[test]
    fn pure_substances_give_their_textbook_methane() {
        let check = |of: Elements, methane: f64, share: f64, what: &str| {
            near(of.methane_m3_per_kg(), methane, 0.002, what);
            near(of.methane_share(), share, 0.003, what);
        };
        check(STARCH, 0.415, 0.50, "carbohydrate");
        check(PROTEIN_ADM1, 0.496, 0.50, "protein");
        check(FAT, 1.014, 0.702, "lipid");
    }

    /// Foods of the USDA table with COD and methane reckoned elsewhere from the same nutrients: `foods.csv`.
    #[test]
    fn every_food_of_the_table_gives_its_oxygen_demand_and_methane() {
        #[derive(serde::Deserialize)]
        #[allow(non_snake_case)]
        struct Food {
            food: String,
            protein: f64,
            fat: f64,
            carb_available: f64,
            sugars: f64,
            fibre: f64,
            alcohol: Option<f64>,
            COD_g_g_fresh: f64,
            CH4_mL_g_fresh_theor: f64,
            CH4_fraction_dry_theor: f64,
        }
        let foods: Vec<Food> = super::super::table::rows("foods.csv", include_str!("foods.csv")).unwrap();
        assert!(foods.len() > 140);
        for food in foods.iter().filter(|food| food.alcohol.unwrap_or(0.0) == 0.0) {
            let parts = [
                (food.protein, PROTEIN),
                (food.fat, FAT),
                (food.sugars, SUGARS),
                (food.carb_available - food.sugars + food.fibre, STARCH),
            ];
            let sum =
                |of: fn(Elements) -> f64| parts.iter().map(|&(share, what)| share / 100.0 * of(what)).sum::<f64>();
            let (cod, methane) = (sum(Elements::cod), sum(Elements::methane_m3_per_kg) * 1000.0);
            near(cod, food.COD_g_g_fresh, 0.01 * food.COD_g_g_fresh + 0.003, &food.food);
            near(methane, food.CH4_mL_g_fresh_theor, 0.01 * food.CH4_mL_g_fresh_theor + 1.0, &food.food);
            let carbon_gas = sum(|what| what.carbon) / C * NORMAL_M3_PER_KMOL * 1000.0;
            near(methane / carbon_gas, food.CH4_fraction_dry_theor, 0.012, &food.food);
        }
    }
}
