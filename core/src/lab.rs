//! What field staff measure with a burette and a meter, and what the numbers mean.
//!
//! Takes titration volumes, ammonia nitrogen, pH and temperature; gives the FOS/TAC ratio with the customary next
//! step, and free ammonia. Never replaces a trend: each digester has its own normal.

use crate::ids;
use crate::limits::limits;

/// Acids, alkalinity and their ratio of a titrated sample.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Titration {
    /// Volatile organic acids. Units: mg acetic acid/l.
    pub fos_mg_per_l: f64,
    /// Alkalinity to pH 5. Units: mg CaCO3/l.
    pub tac_mg_per_l: f64,
}

impl Titration {
    /// From millilitres of 0.1 N sulphuric acid into 20 ml of sample: `to_ph_5`, then `on_to_ph_4_4`.
    ///
    /// Source: Nordmann's method after Mantech application note 127: TAC = 250 A, FOS = (1.66 B − 0.15) 500.
    pub fn of(to_ph_5_ml: f64, on_to_ph_4_4_ml: f64) -> Titration {
        Titration {
            fos_mg_per_l: ((1.66 * on_to_ph_4_4_ml - 0.15) * 500.0).max(0.0),
            tac_mg_per_l: 250.0 * to_ph_5_ml.max(0.0),
        }
    }

    /// FOS over TAC; `None` where there is no alkalinity left to divide by.
    pub fn ratio(self) -> Option<f64> {
        (self.tac_mg_per_l > 0.0).then(|| self.fos_mg_per_l / self.tac_mg_per_l)
    }

    /// The customary step (Lossie and Putz, from memory).
    pub fn step(self) -> Step {
        let limits = limits();
        match self.ratio() {
            None => Step::Stop,
            Some(ratio) if ratio > limits.fos_tac_stop => Step::Stop,
            Some(ratio) if ratio > limits.fos_tac_cut => Step::Cut,
            Some(ratio) if ratio > limits.fos_tac_watch => Step::Watch,
            Some(ratio) if ratio > limits.fos_tac_ideal => Step::Keep,
            Some(ratio) if ratio > limits.fos_tac_underfed => Step::RaiseSlowly,
            Some(_) => Step::Underfed,
        }
    }
}

ids!(/// What a FOS/TAC ratio asks for.
    Step { Stop = "stop", Cut = "cut", Watch = "watch", Keep = "keep", RaiseSlowly = "raise_slowly", Underfed = "underfed" });

/// Free ammonia of total ammonia nitrogen. Units: as `tan`.
///
/// Source: Emerson et al. 1975: pKa = 0.09018 + 2729.92/T.
pub fn free_ammonia(tan: f64, ph: f64, celsius: f64) -> f64 {
    let pka = 0.09018 + 2729.92 / (celsius + 273.15);
    tan / (1.0 + libm::pow(10.0, pka - ph))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(value: f64, expected: f64, within: f64) {
        assert!((value - expected).abs() <= within, "{value}, expected {expected} ± {within}");
    }

    /// Mantech application note 127: 8.97 ml and 0.84 ml give 2244.5 (as printed; 250 × 8.97 is 2242.5), 622.2 and 0.277.
    #[test]
    fn the_worked_titration_is_met() {
        let titration = Titration::of(8.97, 0.84);
        near(titration.tac_mg_per_l, 2_242.5, 2.1);
        near(titration.fos_mg_per_l, 622.2, 0.05);
        near(titration.ratio().unwrap(), 0.277, 0.0006);
        assert_eq!(titration.step(), Step::RaiseSlowly);
    }

    #[test]
    fn each_ratio_has_its_step() {
        let check = |ratio: f64, step| {
            assert_eq!(Titration { fos_mg_per_l: ratio * 2_000.0, tac_mg_per_l: 2_000.0 }.step(), step, "{ratio}");
        };
        check(0.1, Step::Underfed);
        check(0.25, Step::RaiseSlowly);
        check(0.35, Step::Keep);
        check(0.45, Step::Watch);
        check(0.55, Step::Cut);
        check(0.7, Step::Stop);
        assert_eq!(Titration::of(0.0, 2.0).step(), Step::Stop);
    }

    /// Derived from the same pKa: 68.6 and 35.2 of 2,000 at pH 7.5; 303 of 3,000 at pH 8.
    #[test]
    fn free_ammonia_is_that_of_the_tables() {
        near(free_ammonia(2_000.0, 7.5, 35.0), 68.6, 0.1);
        near(free_ammonia(2_000.0, 7.5, 25.0), 35.2, 0.1);
        near(free_ammonia(3_000.0, 8.0, 35.0), 303.0, 1.0);
    }
}
