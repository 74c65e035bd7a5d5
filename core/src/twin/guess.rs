//! What is not known of a digester, guessed 32 ways.
//!
//! Takes chance; gives guesses, each a set of standard normal scores, and what each score means in the model's own
//! quantities. Never looks at what was told: weighing guesses by that is [`super::notice`]'s.

use super::chance::{Chance, quantile};
use crate::adm1::parameters::{K_I_FA_KG_COD_PER_M3, K_I_SALT_KMOL_PER_M3};
use crate::adm1::{Kinetics, KineticsTemperature, Member, PerGroup, Variation, Vessel};
use serde::{Deserialize, Serialize};

/// Guesses side by side: four lots of the model's lanes.
pub(super) const MEMBERS: usize = 32;

/// Departure of where the slurry settles from the usual tank's: see [`Guess::warmth_k`]. Units: K.
pub(super) const WARMTH_SPREAD_K: f64 = 3.2;
pub(super) const WARMTH_MEAN_K: f64 = -1.5;

/// What differs between guesses, in the order of their scores.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Unknown {
    Hydrolysis,
    AcetateSpeed,
    PropionateSpeed,
    ButyrateSpeed,
    InhibitionPh,
    SolidsLeaving,
    SeedActivity,
    Adapted,
    Warmth,
    Leak,
    Burner,
    Alkalinity,
    Hardness,
    Amounts,
    Strength,
    SilentFeeding,
    UntoldLoad,
}

const UNKNOWNS: usize = Unknown::UntoldLoad as usize + 1;

/// One guess at all that is not known.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Guess([f32; UNKNOWNS]);

impl Guess {
    /// A guess of each kind, spread evenly over every unknown. Source: Latin hypercube (McKay et al. 1979).
    pub(super) fn all(chance: &mut Chance) -> Vec<Guess> {
        let mut guesses = vec![Guess([0.0; UNKNOWNS]); MEMBERS];
        for unknown in 0..UNKNOWNS {
            for (guess, at) in guesses.iter_mut().zip(chance.shuffled(MEMBERS)) {
                guess.0[unknown] = quantile((at as f64 + chance.uniform()) / MEMBERS as f64) as f32;
            }
        }
        guesses
    }

    /// A guess near this one; many such are spread as the first were. `by` is 0 for the same, 1 for any other.
    pub(super) fn near(&self, by: f64, chance: &mut Chance) -> Guess {
        let keeps = libm::sqrt(1.0 - by * by);
        Guess(self.0.map(|z| (keeps * f64::from(z) + by * chance.normal()) as f32))
    }

    fn score(&self, unknown: Unknown) -> f64 {
        f64::from(self.0[unknown as usize])
    }

    fn factor(&self, unknown: Unknown, middle: f64, spread: f64) -> f64 {
        middle * libm::exp(spread * self.score(unknown).clamp(-3.0, 3.0))
    }

    /// Share of the living in fresh dung or slurry that was alive, against the table of feeds.
    /// Source: our choice: weak to strong starters differ tenfold.
    pub(super) fn seed_activity(&self) -> f64 {
        self.factor(Unknown::SeedActivity, 7.0, 0.6)
    }

    /// Departure of where the slurry settles from the usual tank's. Units: K. Source: spread as
    /// [`crate::warmth::Offset`]; a little to the cold side, our choice, since yards shade their tanks more than they say.
    pub(super) fn warmth_k(&self) -> f64 {
        WARMTH_SPREAD_K * self.score(Unknown::Warmth) + WARMTH_MEAN_K
    }

    /// Share of the stored gas that leaks in a day. Source: our choice: a tight one loses 1 %, a bad one a third.
    pub(super) fn leak_per_d(&self) -> f64 {
        self.factor(Unknown::Leak, 0.04, 1.0)
    }

    /// Units: l/h. Source: handbooks' 200-450 l/h, one in ten below and one in ten above.
    pub(super) fn burner_l_per_h(&self) -> f64 {
        self.factor(Unknown::Burner, 300.0, 0.25)
    }

    /// Alkalinity of what is fed, against the table of feeds. Source: our choice.
    pub(super) fn alkalinity(&self) -> f64 {
        self.factor(Unknown::Alkalinity, 1.0, 0.25)
    }

    /// Hardness of the water, against 2 meq/l. Source: our choice: 0.5 to 6 meq/l.
    pub(super) fn hardness(&self) -> f64 {
        self.factor(Unknown::Hardness, 1.1, 0.6)
    }

    /// True over told amount, for a measure whose doubt is `spread`: this family fills its bucket the same every day.
    pub(super) fn amount(&self, spread: f64) -> f64 {
        self.factor(Unknown::Amounts, 1.0, spread)
    }

    /// Solids of their food, against the table of feeds. Source: our choice, as the table's own doubt.
    pub(super) fn strength(&self) -> f64 {
        self.factor(Unknown::Strength, 1.0, 0.15)
    }

    /// Chance that a day without a word of feeding was a day of feeding.
    pub(super) fn fed_in_silence(&self) -> f64 {
        (0.7 + 0.25 * self.score(Unknown::SilentFeeding)).clamp(0.05, 0.98)
    }

    /// What it gets, or got, while nothing at all is told of feeding. Units: kg VS/m3/d. Source: our choice: a small
    /// family's scraps to a large one's.
    pub(super) fn untold_olr(&self) -> f64 {
        self.factor(Unknown::UntoldLoad, 0.7, 0.5)
    }

    /// This guess as the model takes it, for a mix that hydrolyses at `speed_per_d` at 35 °C.
    ///
    /// Source of the spreads: users of acetate and propionate at 0.4 of BSM2's speed keep the measured time of a slow
    /// start (core/docs/cases.md), so they vary mostly downward; hydrolysis of mixes is read between 0.1 and 0.5 /d;
    /// solids met in full to a third in the overflow; the rest our choice.
    pub(super) fn member(&self, liquid_m3: f64, head_m3: f64, air_bar: f64, speed_per_d: f64) -> Member {
        let acetate = self.factor(Unknown::AcetateSpeed, 0.55, 0.35);
        let kinetics = Kinetics {
            k_hyd_ch: speed_per_d,
            k_hyd_pr: speed_per_d,
            k_hyd_li: speed_per_d,
            k_i_fa: Some(K_I_FA_KG_COD_PER_M3),
            k_i_salt: Some(K_I_SALT_KMOL_PER_M3),
            temperature: KineticsTemperature::Cardinal {
                adapted_c: (2.0 + 2.0 * self.score(Unknown::Adapted)).clamp(0.0, 8.0),
            },
            ..Kinetics::BSM2
        }
        .varied(&Variation {
            hydrolysis: self.factor(Unknown::Hydrolysis, 1.0, 0.35),
            k_m: PerGroup {
                c4: self.factor(Unknown::ButyrateSpeed, 0.8, 0.3),
                pro: self.factor(Unknown::PropionateSpeed, 0.55, 0.35),
                ac: acetate,
                ..PerGroup::all(1.0)
            },
            inhibition_ph: 0.15 * self.score(Unknown::InhibitionPh).clamp(-2.5, 2.5),
            ..Variation::default()
        });
        let solids_leaving = (0.65 + 0.2 * self.score(Unknown::SolidsLeaving)).clamp(0.2, 1.0);
        let vessel = Vessel { solids_leaving, p_atm_bar: air_bar, ..Vessel::household(liquid_m3, head_m3) };
        Member { kinetics, vessel }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_unknown_is_guessed_low_and_high_and_evenly() {
        let guesses = Guess::all(&mut Chance::of(1, 1, 1));
        for unknown in 0..UNKNOWNS {
            let mut scores: Vec<f32> = guesses.iter().map(|guess| guess.0[unknown]).collect();
            scores.sort_by(f32::total_cmp);
            assert!(scores[0] < -1.8 && scores[MEMBERS - 1] > 1.8, "{scores:?}");
            assert!(scores[MEMBERS / 2 - 1] < 0.0 && scores[MEMBERS / 2] > 0.0, "{scores:?}");
        }
    }

    #[test]
    fn a_near_guess_is_near_and_a_far_one_is_any() {
        let mut chance = Chance::of(2, 1, 1);
        let guess = Guess::all(&mut chance).remove(0);
        assert_eq!(guess.near(0.0, &mut chance), guess);
        let near = guess.near(0.1, &mut chance);
        assert!(near != guess && (near.leak_per_d() / guess.leak_per_d() - 1.0).abs() < 0.6);
    }
}
