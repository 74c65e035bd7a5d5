//! How temperature moves the constants: van 't Hoff for the physico-chemistry, a choice of forms for the biology.
//!
//! Takes constants at 25 °C (physico-chemistry) or 35 °C (kinetics) and a temperature; gives the constants there.

use super::parameters::{Kinetics, PerGroup};

/// Gas constant. Units: bar·m³/(kmol·K). Source: BSM2.
pub const R: f64 = 0.083145;
/// 0 °C. Units: K.
pub const ZERO_C_K: f64 = 273.15;

/// Equilibria, solubilities and vapour at one temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Physics {
    /// R·T. Units: bar·m³/kmol.
    pub rt: f64,
    /// Acid constants. Units: kmol/m³ (K_w: its square).
    pub k_w: f64,
    pub k_a_va: f64,
    pub k_a_bu: f64,
    pub k_a_pro: f64,
    pub k_a_ac: f64,
    pub k_a_co2: f64,
    pub k_a_in: f64,
    /// Henry's constants. Units: kmol/(m³·bar).
    pub k_h_h2: f64,
    pub k_h_ch4: f64,
    pub k_h_co2: f64,
    /// Water vapour. Units: bar.
    pub p_h2o: f64,
}

impl Physics {
    /// Source: Rosen & Jeppsson (2006): constants at 25 °C, `X(T) = X₂₅·exp(ΔH/(100 R)·(1/298.15 - 1/T))` with ΔH in
    /// J/mol, acids without temperature dependence, `p_h2o = 0.0313·exp(5290·(1/298.15 - 1/T))`.
    pub fn at(celsius: f64) -> Physics {
        let kelvin = celsius + ZERO_C_K;
        let away = 1.0 / 298.15 - 1.0 / kelvin;
        let moved = |at_25: f64, joule_per_mol: f64| at_25 * libm::exp(joule_per_mol / (100.0 * R) * away);
        Physics {
            rt: R * kelvin,
            k_w: moved(1e-14, 55_900.0),
            k_a_va: 1.380_384_264_602_885_3e-5,  // 10^-4.86
            k_a_bu: 1.513_561_248_436_207_5e-5,  // 10^-4.82
            k_a_pro: 1.318_256_738_556_406_8e-5, // 10^-4.88
            k_a_ac: 1.737_800_828_749_374_6e-5,  // 10^-4.76
            k_a_co2: moved(libm::pow(10.0, -6.35), 7_646.0),
            k_a_in: moved(libm::pow(10.0, -9.25), 51_965.0),
            k_h_h2: moved(7.8e-4, -4_180.0),
            k_h_ch4: moved(0.0014, -14_240.0),
            k_h_co2: moved(0.035, -19_410.0),
            p_h2o: 0.0313 * libm::exp(5_290.0 * away),
        }
    }
}

/// How the kinetics follow temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum KineticsTemperature {
    /// As at 35 °C whatever the temperature: BSM2.
    None,
    /// Uptake and decay × (0.013 T - 0.129)/0.326, disintegration and hydrolysis by Arrhenius with 64 kJ/mol.
    ///
    /// Source: linear form after Hashimoto et al. (1981), 64 kJ/mol after Veeken & Hamelers, Bioresource Technology 69
    /// (1999) 249; both from memory.
    HashimotoArrhenius,
    /// Rosso's cardinal temperatures, a set for each kind of degrader, relative to 35 °C.
    Cardinal {
        /// Degrees by which the seed is adapted to cold: its curve below the optimum is that of a slurry so much
        /// warmer. 0 for unadapted seed.
        adapted_c: f64,
    },
}

/// The least, best and most a group lives at. Units: °C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cardinals {
    pub least_c: f64,
    pub best_c: f64,
    pub most_c: f64,
}

/// Source of all five: fitted for ADM1 in a model of TU Delft, as cited in secondary literature.
pub const HYDROLYSIS: Cardinals = Cardinals { least_c: 8.3, best_c: 37.4, most_c: 45.0 };
pub const METHANOGENS: Cardinals = Cardinals { least_c: 8.1, best_c: 37.7, most_c: 45.0 };
pub const PROPIONATE: Cardinals = Cardinals { least_c: 2.4, best_c: 34.9, most_c: 45.0 };
pub const BUTYRATE_VALERATE: Cardinals = Cardinals { least_c: 1.7, best_c: 35.8, most_c: 45.0 };
pub const ACIDOGENS: Cardinals = Cardinals { least_c: 12.6, best_c: 40.9, most_c: 45.0 };

/// What is left of the speed at 35 °C in the cold, where the cardinal curves fall under what is measured.
///
/// Source: Elsgaard et al. (2016), methane from unadapted slurry at 10 °C: 0.07 of that at 35 °C.
pub const COLD_FLOOR: f64 = 0.06;
/// Below this the floor holds. Units: °C.
const COLD_C: f64 = 12.0;

impl Cardinals {
    /// Speed as a share of the best.
    ///
    /// Source: Rosso, Lobry & Flandrois, Journal of Theoretical Biology 162 (1993) 447.
    pub fn share_of_best(self, celsius: f64) -> f64 {
        let Cardinals { least_c: least, best_c: best, most_c: most } = self;
        if celsius <= least || celsius >= most {
            return 0.0;
        }
        let up = (celsius - most) * (celsius - least) * (celsius - least);
        let down =
            (best - least) * ((best - least) * (celsius - best) - (best - most) * (best + least - 2.0 * celsius));
        up / down
    }

    /// Speed as a share of that at 35 °C, with the cold floor below 12 °C faded in over the 6 °C above it.
    pub fn share_of_35(self, celsius: f64) -> f64 {
        let share = self.share_of_best(celsius) / self.share_of_best(35.0);
        let floor = COLD_FLOOR * ((COLD_C + 6.0 - celsius) / 6.0).clamp(0.0, 1.0);
        if share > floor { share } else { floor }
    }
}

/// Factors on the kinetics at one temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Speeds {
    pub hydrolysis: f64,
    pub groups: PerGroup,
    pub decay: PerGroup,
}

impl KineticsTemperature {
    pub(super) fn speeds(self, celsius: f64) -> Speeds {
        match self {
            KineticsTemperature::None => {
                Speeds { hydrolysis: 1.0, groups: PerGroup::all(1.0), decay: PerGroup::all(1.0) }
            }
            KineticsTemperature::HashimotoArrhenius => {
                let linear = (0.013 * celsius - 0.129) / (0.013 * 35.0 - 0.129);
                let linear = if linear > 0.0 { linear } else { 0.0 };
                let arrhenius = libm::exp(-64_000.0 / 8.3145 * (1.0 / (celsius + ZERO_C_K) - 1.0 / 308.15));
                Speeds { hydrolysis: arrhenius, groups: PerGroup::all(linear), decay: PerGroup::all(linear) }
            }
            KineticsTemperature::Cardinal { adapted_c } => {
                let felt = if celsius < 35.0 { 35.0_f64.min(celsius + adapted_c) } else { celsius };
                let acidogens = ACIDOGENS.share_of_35(felt);
                let methanogens = METHANOGENS.share_of_35(felt);
                let groups = PerGroup {
                    su: acidogens,
                    aa: acidogens,
                    fa: acidogens,
                    c4: BUTYRATE_VALERATE.share_of_35(felt),
                    pro: PROPIONATE.share_of_35(felt),
                    ac: methanogens,
                    h2: methanogens,
                };
                Speeds { hydrolysis: HYDROLYSIS.share_of_35(felt), groups, decay: groups }
            }
        }
    }

    /// The kinetics at a temperature.
    pub(super) fn moved(self, kinetics: &Kinetics, celsius: f64) -> Kinetics {
        let Speeds { hydrolysis, groups, decay } = self.speeds(celsius);
        Kinetics {
            k_dis: kinetics.k_dis * hydrolysis,
            k_hyd_ch: kinetics.k_hyd_ch * hydrolysis,
            k_hyd_pr: kinetics.k_hyd_pr * hydrolysis,
            k_hyd_li: kinetics.k_hyd_li * hydrolysis,
            k_m: kinetics.k_m.times(groups),
            k_dec: kinetics.k_dec.times(decay),
            ..*kinetics
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Acid constants of the CRC Handbook of Chemistry and Physics and Henry's constants of Sander, Atmospheric
    /// Chemistry and Physics 15 (2015) 4399, both from memory; vapour of IAPWS-95. The model rounds some of them.
    #[test]
    fn equilibria_at_25_degrees_are_those_of_the_tables() {
        let at = Physics::at(25.0);
        let p = |k: f64| -libm::log10(k);
        let rows = [
            ("water", p(at.k_w), 14.0, 0.01),
            ("valeric acid", p(at.k_a_va), 4.84, 0.03),
            ("butyric acid", p(at.k_a_bu), 4.82, 0.02),
            ("propionic acid", p(at.k_a_pro), 4.87, 0.02),
            ("acetic acid", p(at.k_a_ac), 4.76, 0.01),
            ("carbon dioxide", p(at.k_a_co2), 6.35, 0.01),
            ("ammonium", p(at.k_a_in), 9.25, 0.01),
            ("methane, mol/m3/Pa", at.k_h_ch4 * 1e-2, 1.4e-5, 0.05e-5),
            ("carbon dioxide, mol/m3/Pa", at.k_h_co2 * 1e-2, 3.4e-4, 0.15e-4),
            ("hydrogen, mol/m3/Pa", at.k_h_h2 * 1e-2, 7.8e-6, 0.1e-6),
            ("vapour, kPa", at.p_h2o * 100.0, 3.1699, 0.05),
        ];
        for (name, ours, tabled, within) in rows {
            assert!((ours - tabled).abs() <= within, "{name}: {ours} instead of {tabled}");
        }
    }

    /// Methane from slurry that nobody adapted, against that at 35 °C. Source: Elsgaard et al. (2016), cattle and pig.
    #[test]
    fn the_cold_slows_methane_as_was_measured() {
        let rows = [(10.0, 0.07), (15.0, 0.14), (20.0, 0.26), (25.0, 0.44), (30.0, 0.73), (35.0, 1.0)];
        for (celsius, measured) in rows {
            let modelled = METHANOGENS.share_of_35(celsius);
            assert!((modelled - measured).abs() < 0.09, "{celsius} degC: {modelled}, measured {measured}");
        }
    }
}
