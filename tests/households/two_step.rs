//! A digester of another build than the bot's own: two living groups, one pool of acids, alkalinity and carbon.
//!
//! The structure is the two-step model of Bernard et al. 2001 (Biotechnology and Bioengineering 75: acid makers on
//! Monod, methane makers on Haldane kinetics, alkalinity and total inorganic carbon carried along), with solids that
//! must first dissolve and a charge balance over acids and bicarbonate for pH. Its numbers are stoichiometry where that
//! gives them, else our choice (from memory of what such models use), drawn for each household. Nothing of it is
//! shared with the bot's model but the table of foods.

use bellyful_core::feeds::{Feed, make_up};
use bellyful_core::units::WetKg;
use rand::Rng;
use rand::rngs::StdRng;

/// What is in a litre of the tank, and how its life works. Units: g COD/l, mmol/l.
#[derive(Debug, Clone)]
pub struct TwoStep {
    /// Solids to dissolve; dissolved food.
    solids: f64,
    dissolved: f64,
    acid_makers: f64,
    methane_makers: f64,
    /// Acids, as acetate. Units: mmol/l.
    acids: f64,
    /// Strong cations with ammonium, less strong anions. Units: meq/l.
    alkalinity: f64,
    /// Carbon dioxide with bicarbonate. Units: mmol/l.
    carbon: f64,
    /// Organic nitrogen in the solids. Units: mmol/l.
    bound_n: f64,
    /// Dissolving at 35 °C. Units: 1/d.
    pub dissolves: f64,
    settings: Settings,
}

/// Hidden, drawn once.
#[derive(Debug, Clone)]
struct Settings {
    /// Units: 1/d at 35 °C.
    methane_growth: f64,
    /// Change in speed over 1 °C.
    per_degree: f64,
    half_acids: f64,
    /// Acids at which the methane makers slow by themselves. Units: mmol/l.
    much_acid: f64,
    /// pH at which they work at half speed.
    half_ph: f64,
    /// Living and solids in the overflow over those in the tank.
    leaving: f64,
}

const LIQUID_L: f64 = 800.0;
const STEPS_A_DAY: usize = 24;
/// Mass of an acid that carries a mmol, as COD. Units: g. Source: acetate, 64 g COD/mol.
const ACID_G_COD: f64 = 0.064;
/// Carbon of food. Units: mmol/g COD. Source: glucose, 6 mol C to 192 g COD.
const CARBON_OF_FOOD: f64 = 31.25;
const ACID_YIELD: f64 = 0.1;
const METHANE_YIELD: f64 = 0.05;
/// Of what ferments, so much becomes acids; the rest hydrogen, made methane at once.
const TO_ACIDS: f64 = 0.65;
const PK_ACETATE: f64 = 4.76;
const PK_CARBON: f64 = 6.3;
/// Carbon dioxide that stays in liquid under gas of two fifths of it. Units: mmol/l.
const CO2_SOLUBLE: f64 = 11.0;
const LITRES_A_MOL: f64 = 22.414;

impl TwoStep {
    /// Filled with dung and water; `living` scales what is alive in the dung.
    pub fn filled(rng: &mut StdRng, dung_kg: f64) -> TwoStep {
        let settings = Settings {
            methane_growth: rng.random_range(0.35..0.7),
            per_degree: rng.random_range(0.055..0.085),
            half_acids: rng.random_range(2.0..8.0),
            much_acid: rng.random_range(60.0..160.0),
            half_ph: rng.random_range(6.25..6.55),
            leaving: rng.random_range(0.35..0.95),
        };
        let living = rng.random_range(1.5..5.0);
        let share = dung_kg / LIQUID_L;
        let mut tank = TwoStep {
            solids: 0.0,
            dissolved: 0.0,
            acid_makers: 0.6 * share * living,
            methane_makers: 0.3 * share * living,
            acids: 8.0 * share,
            alkalinity: 5.0 + 60.0 * share,
            carbon: 5.0 + 60.0 * share,
            bound_n: 0.0,
            dissolves: rng.random_range(0.18..0.4),
            settings,
        };
        tank.put_in(&[(Feed::CattleManure, 0.7 * dung_kg)], 1.0, 0.0, 0.0);
        tank
    }

    /// Puts in foods and water; what was there is pushed out in its stead.
    pub fn put_in(&mut self, foods: &[(Feed, f64)], strength: f64, water_l: f64, hard_meq_per_l: f64) {
        let litres = foods.iter().map(|(_, kg)| kg).sum::<f64>() + water_l;
        let out = (litres / LIQUID_L).min(1.0);
        let kept = 1.0 - out * self.settings.leaving;
        for solid in [&mut self.solids, &mut self.bound_n, &mut self.acid_makers, &mut self.methane_makers] {
            *solid *= kept;
        }
        for free in [&mut self.dissolved, &mut self.acids, &mut self.alkalinity, &mut self.carbon] {
            *free *= 1.0 - out;
        }
        for (feed, kg) in foods {
            let made = make_up(*feed);
            let wet = WetKg::of(*kg);
            let cod = 1000.0 * made.oxygen_demand(wet).get() * made.biodegradable * strength / LIQUID_L;
            let at_once = made.sugars / made.vs().max(1e-9);
            self.solids += cod * (1.0 - at_once);
            self.dissolved += cod * at_once;
            let ammonia = made.ammonia_n_g_per_kg * kg * 1000.0 / 14.0 / LIQUID_L;
            let all_n = made.nitrogen() * kg * 1e6 / 14.0 / LIQUID_L * strength;
            self.bound_n += (all_n - ammonia).max(0.0) * made.biodegradable;
            self.alkalinity += ammonia + made.strong_cations_meq_per_kg.max(0.0) * kg / LIQUID_L;
            self.carbon += ammonia + made.bicarbonate_mmol_per_kg * kg / LIQUID_L;
        }
        self.alkalinity += hard_meq_per_l * water_l / LIQUID_L;
        self.carbon += hard_meq_per_l * water_l / LIQUID_L;
    }

    /// A day at this warmth. Gives methane and carbon dioxide. Units: Nm³.
    pub fn pass_day(&mut self, celsius: f64) -> (f64, f64) {
        let dt = 1.0 / STEPS_A_DAY as f64;
        let (mut methane, mut carbon_dioxide) = (0.0, 0.0);
        let s = self.settings.clone();
        let warm = (s.per_degree * (celsius - 35.0)).exp() * if celsius > 42.0 { 0.5 } else { 1.0 };
        for _ in 0..STEPS_A_DAY {
            let ph = self.ph();
            let acid_ph = 1.0 / (1.0 + 10_f64.powf(3.0 * (5.0 - ph)));
            let dissolved = (self.dissolves * warm * acid_ph * dt * self.solids).min(self.solids);
            let freed_n = if self.solids > 1e-9 { self.bound_n * dissolved / self.solids } else { 0.0 };
            let growth = 1.2 * warm * self.dissolved / (7.1 + self.dissolved) * acid_ph;
            let fermented = (growth * self.acid_makers / ACID_YIELD * dt).min(self.dissolved);
            let by_ph = 1.0 / (1.0 + 10_f64.powf(3.0 * (s.half_ph - ph)));
            let haldane = self.acids / (s.half_acids + self.acids + self.acids * self.acids / s.much_acid);
            let growth = s.methane_growth * warm * haldane * by_ph;
            let eaten = (growth * self.methane_makers / METHANE_YIELD / ACID_G_COD * dt).min(self.acids);
            self.solids -= dissolved;
            self.bound_n -= freed_n;
            self.dissolved += dissolved - fermented;
            let acids = fermented * (1.0 - ACID_YIELD) * TO_ACIDS / ACID_G_COD;
            let by_hydrogen = fermented * (1.0 - ACID_YIELD) * (1.0 - TO_ACIDS) / ACID_G_COD * 0.95;
            let by_acids = eaten * (1.0 - METHANE_YIELD);
            self.acids += acids - eaten;
            self.acid_makers += fermented * ACID_YIELD - 0.02 * warm * self.acid_makers * dt;
            self.methane_makers += eaten * ACID_G_COD * METHANE_YIELD - 0.02 * warm * self.methane_makers * dt;
            // Nitrogen freed is ammonium, and takes a proton's place.
            self.alkalinity += freed_n;
            self.carbon += fermented * CARBON_OF_FOOD * (1.0 - ACID_YIELD) - 2.0 * acids - by_hydrogen;
            self.carbon = (self.carbon + by_acids).max(0.0);
            methane += by_acids + by_hydrogen;
            let free = self.carbon / (1.0 + 10_f64.powf(ph - PK_CARBON));
            let leaves = (0.6 * (free - CO2_SOLUBLE)).max(0.0);
            self.carbon -= leaves;
            carbon_dioxide += leaves;
        }
        let m3 = |mmol_per_l: f64| mmol_per_l * LIQUID_L / 1000.0 * LITRES_A_MOL / 1000.0;
        (m3(methane), m3(carbon_dioxide))
    }

    /// Where acids and bicarbonate together carry the alkalinity.
    pub fn ph(&self) -> f64 {
        let (mut low, mut high) = (3.0, 9.0);
        for _ in 0..14 {
            let ph = 0.5 * (low + high);
            if self.charged(ph) < self.alkalinity + 1000.0 * 10_f64.powf(-ph) {
                low = ph;
            } else {
                high = ph;
            }
        }
        low
    }

    fn charged(&self, ph: f64) -> f64 {
        self.acids / (1.0 + 10_f64.powf(PK_ACETATE - ph)) + self.carbon / (1.0 + 10_f64.powf(PK_CARBON - ph))
    }

    /// As titrated to pH 5: acids as acetic acid over alkalinity as CaCO3, both by mass.
    pub fn acids_over_alkalinity(&self) -> f64 {
        let titrated = (self.alkalinity - self.charged(5.0)).max(0.05);
        60.0 * self.acids / (50.0 * titrated)
    }
}
