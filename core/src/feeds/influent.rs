//! Feed as ADM1 takes it in.
//!
//! Takes a feed and its wet mass; gives kg COD and kmol in the model's components. COD and nitrogen are kept to
//! round-off: what ADM1's fixed nitrogen contents cannot hold goes to ammonia or to fibre without nitrogen, never
//! away.

use super::buswell::{FAT, PROTEIN, STARCH, SUGARS};
use super::{Feed, Kind, MakeUp, make_up};
use crate::adm1::component::*;
use crate::adm1::{Composition, nitrogen_of};
use crate::units::{Litres, WetKg};

/// Nitrogen contents of the model. Units: kmol N/kg COD.
const N_AA: f64 = nitrogen_of(X_PR);
const N_I: f64 = nitrogen_of(X_I);
const N_BAC: f64 = nitrogen_of(X_AC);
/// Molar mass of nitrogen as ADM1's contents count it. Units: kg/kmol.
const N_KG_PER_KMOL: f64 = 14.0;
/// One kmol of acetate as COD. Units: kg COD/kmol.
const ACETATE_KG_COD_PER_KMOL: f64 = 64.0;
/// Units: kg NaCl/kmol.
const SALT_KG_PER_KMOL: f64 = 58.44;
/// Dissolved share of what never digests. Source: our choice, because BSM2 gives 0.1 of 0.3 for sludge and food holds
/// less.
const INERT_DISSOLVED: f64 = 0.05;

/// How living biomass divides between the groups.
///
/// Source: BSM2's steady state (Rosen and Jeppsson 2006), each over the sum of 3.489 kg COD/m3.
const LIVING: [(usize, f64); 7] = [
    (X_SU, 0.4202 / 3.4892),
    (X_AA, 1.1792 / 3.4892),
    (X_FA, 0.2430 / 3.4892),
    (X_C4, 0.4319 / 3.4892),
    (X_PRO, 0.1373 / 3.4892),
    (X_AC, 0.7606 / 3.4892),
    (X_H2, 0.3170 / 3.4892),
];

/// What a portion brings into the tank. Units: kg COD but `s_in`, `s_ic`, `s_cat`, `s_an` kmol (kmol C, N or charge).
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Influent {
    pub s_su: f64,
    /// The food's organic acids, as far as its cations are theirs, counted as acetate.
    pub s_ac: f64,
    pub x_ch: f64,
    pub x_pr: f64,
    pub x_li: f64,
    pub x_i: f64,
    pub s_i: f64,
    /// Fibre that never digests and holds no nitrogen: solids to the tank, nothing to the biology.
    pub x_fibre: f64,
    /// Living biomass of all groups together, of dung and digestate.
    pub x_living: f64,
    pub s_in: f64,
    pub s_ic: f64,
    pub s_cat: f64,
    pub s_an: f64,
    /// Σ hydrolysis at 35 °C × kg COD hydrolysed (`x_ch + x_pr + x_li`): divide to get the mix's speed. Units: kg COD/d.
    pub speed: f64,
    /// Room it takes in the slurry.
    pub volume: Litres,
    /// Units: kg VS.
    pub vs: f64,
    /// Units: kg TS.
    pub ts: f64,
}

impl Influent {
    /// All COD. Units: kg.
    pub fn cod(&self) -> f64 {
        self.s_su + self.s_ac + self.x_ch + self.x_pr + self.x_li + self.x_i + self.s_i + self.x_fibre + self.x_living
    }
    /// All nitrogen, by ADM1's contents. Units: kmol.
    pub fn nitrogen(&self) -> f64 {
        self.s_in + N_AA * self.x_pr + N_I * (self.x_i + self.s_i) + N_BAC * self.x_living
    }
    /// What must be hydrolysed first. Units: kg COD.
    pub fn to_hydrolyse(&self) -> f64 {
        self.x_ch + self.x_pr + self.x_li
    }
    /// The mix's first-order hydrolysis at 35 °C; `None` where there is nothing to hydrolyse. Units: 1/d.
    pub fn hydrolysis_35c_per_d(&self) -> Option<f64> {
        (self.to_hydrolyse() > 0.0).then(|| self.speed / self.to_hydrolyse())
    }
    /// As the model takes it: per m3 of the room it takes; nothing of it where it takes none. `x_fibre` stays out: the
    /// model has no solids without nitrogen, and none of its processes would touch them.
    pub fn composition(&self) -> Composition {
        let mut per_m3 = [0.0; LIQUIDS];
        let m3 = self.volume.get() / 1_000.0;
        if m3 > 0.0 {
            let parts = [
                (S_SU, self.s_su),
                (S_AC, self.s_ac),
                (X_CH, self.x_ch),
                (X_PR, self.x_pr),
                (X_LI, self.x_li),
                (X_I, self.x_i),
                (S_I, self.s_i),
                (S_IN, self.s_in),
                (S_IC, self.s_ic),
                (S_CAT, self.s_cat),
                (S_AN, self.s_an),
            ];
            let living = LIVING.map(|(group, share)| (group, share * self.x_living));
            for (component, amount) in parts.into_iter().chain(living) {
                per_m3[component] = amount / m3;
            }
        }
        per_m3
    }
    pub fn scaled(mut self, by: f64) -> Influent {
        self.volume = self.volume * by;
        self.numbers().into_iter().for_each(|number| *number *= by);
        self
    }
    fn numbers(&mut self) -> [&mut f64; 16] {
        [
            &mut self.s_su,
            &mut self.s_ac,
            &mut self.x_ch,
            &mut self.x_pr,
            &mut self.x_li,
            &mut self.x_i,
            &mut self.s_i,
            &mut self.x_fibre,
            &mut self.x_living,
            &mut self.s_in,
            &mut self.s_ic,
            &mut self.s_cat,
            &mut self.s_an,
            &mut self.speed,
            &mut self.vs,
            &mut self.ts,
        ]
    }
}

impl std::ops::AddAssign for Influent {
    fn add_assign(&mut self, mut other: Influent) {
        self.volume += other.volume;
        for (to, of) in self.numbers().into_iter().zip(other.numbers()) {
            *to += *of;
        }
    }
}

impl std::iter::Sum for Influent {
    fn sum<I: Iterator<Item = Influent>>(portions: I) -> Influent {
        portions.fold(Influent::default(), |mut all, portion| {
            all += portion;
            all
        })
    }
}

/// What `wet` of `feed` brings in.
pub fn of(feed: Feed, wet: WetKg) -> Influent {
    of_made_up(make_up(feed)).scaled(wet.get())
}

/// What water brings in: the hardness of a middling well or tap.
///
/// Source: our choice, 2 meq/l of bicarbonate (100 mg CaCO3/l), because drinking water lies between 0.5 and 6.
pub fn of_water(litres: Litres) -> Influent {
    const HARDNESS_KMOL_PER_L: f64 = 2e-6;
    Influent {
        s_ic: HARDNESS_KMOL_PER_L * litres.get(),
        s_cat: HARDNESS_KMOL_PER_L * litres.get(),
        volume: litres,
        ..Influent::default()
    }
}

/// Living biomass in the COD of dung and of a working digester's slurry.
///
/// Source: our choice. A digester on dung holds 1 to 2 kg COD/m3 of it in 20 to 40 (BSM2's steady state scaled); fresh
/// dung as much as lets a tank of it start by itself from about a tenth of dung on, as practice has it, and not below.
fn living_share(made: &MakeUp) -> f64 {
    if made.is(Kind::Seed) {
        0.05
    } else if made.is(Kind::Dung) {
        0.015
    } else {
        0.0
    }
}

/// One kg.
fn of_made_up(made: &MakeUp) -> Influent {
    let (protein, fat) = (made.protein * PROTEIN.cod(), made.fat * FAT.cod());
    let (sugars, starch, fibre) = (made.sugars * SUGARS.cod(), made.starch * STARCH.cod(), made.fibre * STARCH.cod());
    let all = protein + fat + sugars + starch + fibre;

    // Protein digests as the whole does; of the rest, sugars, starch and fat go before fibre.
    let x_pr = made.biodegradable * protein;
    let (easy, digested) = (sugars + starch + fat, made.biodegradable * (all - protein));
    let of_easy = if easy > 0.0 { (digested / easy).min(1.0) } else { 0.0 };
    let from_fibre = (digested - of_easy * easy).max(0.0);
    let (s_su, x_li, x_ch) = (of_easy * sugars, of_easy * fat, of_easy * starch + from_fibre);
    let inert = (all - x_pr - s_su - x_li - x_ch).max(0.0);

    // Inerts hold as much nitrogen as protein leaves; fibre beyond that holds none, nitrogen beyond that is ammonia.
    let nitrogen = made.nitrogen() / N_KG_PER_KMOL;
    let ammonia = made.ammonia_n_g_per_kg / 1000.0 / N_KG_PER_KMOL;
    let left = (nitrogen - ammonia - N_AA * x_pr).max(0.0);
    let x_living = (living_share(made) * all).min(inert).min(left / N_BAC);
    let with_nitrogen = (inert - x_living).min((left - N_BAC * x_living) / N_I).max(0.0);
    let (s_i, x_i) = (INERT_DISSOLVED * with_nitrogen, (1.0 - INERT_DISSOLVED) * with_nitrogen);
    let bound = N_AA * x_pr + N_BAC * x_living + N_I * (x_i + s_i);

    // Cations that neither bicarbonate nor chloride stands against came as salts of malic, citric and other acids.
    // Where there is too little carbohydrate to have held those, bicarbonate stands for the rest.
    let (charge, bicarbonate) = (made.strong_cations_meq_per_kg * 1e-6, made.bicarbonate_mmol_per_kg * 1e-6);
    let unmet = (charge + ammonia - bicarbonate).max(0.0);
    let s_ac = (ACETATE_KG_COD_PER_KMOL * unmet).min(s_su + x_ch);
    let s_ic = bicarbonate + unmet - s_ac / ACETATE_KG_COD_PER_KMOL;
    let from_sugars = s_ac.min(s_su);
    let (s_su, x_ch) = (s_su - from_sugars, x_ch - (s_ac - from_sugars));
    let salt = made.salt_g_per_kg / 1_000.0 / SALT_KG_PER_KMOL;
    Influent {
        s_su,
        s_ac,
        x_ch,
        x_pr,
        x_li,
        x_i,
        s_i,
        x_fibre: inert - x_living - x_i - s_i,
        x_living,
        s_in: nitrogen - bound,
        s_ic,
        s_cat: charge.max(0.0) + salt,
        s_an: (-charge).max(0.0) + salt,
        speed: made.hydrolysis_35c_per_d * (x_ch + x_pr + x_li),
        // Sunk in water, food is about as dense as water whatever its bulk density.
        volume: Litres::of(1.0),
        vs: made.vs(),
        ts: made.ts(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cod_and_nitrogen_are_kept_to_round_off_in_every_feed() {
        for &feed in Feed::ALL {
            let (made, portion) = (make_up(feed), of(feed, WetKg::of(2.5)));
            let close = |got: f64, expected: f64, what: &str| {
                assert!((got - expected).abs() <= 1e-13 + 1e-12 * expected.abs(), "{feed} {what}: {got} {expected}");
            };
            close(portion.cod(), 2.5 * made.cod(), "COD");
            close(portion.nitrogen() * 14.0, 2.5 * made.nitrogen(), "N");
            close(portion.vs, 2.5 * made.vs(), "VS");
        }
    }

    #[test]
    fn the_model_gets_all_but_the_fibre_and_all_nitrogen() {
        for &feed in Feed::ALL {
            let portion = of(feed, WetKg::of(2.5));
            let per_m3 = portion.composition();
            let m3 = portion.volume.get() / 1_000.0;
            let sum = |content: fn(usize) -> f64| (0..LIQUIDS).map(|at| content(at) * per_m3[at]).sum::<f64>() * m3;
            let cod = sum(crate::adm1::component::cod_of);
            assert!((cod + portion.x_fibre - portion.cod()).abs() < 1e-12 * (1.0 + cod), "{feed}: {cod}");
            assert!((sum(nitrogen_of) - portion.nitrogen()).abs() < 1e-14, "{feed}");
        }
        assert_eq!(Influent::default().composition(), [0.0; LIQUIDS]);
    }

    #[test]
    fn no_feed_brings_a_negative_amount() {
        for &feed in Feed::ALL {
            let mut portion = of(feed, WetKg::of(1.0));
            for (index, number) in portion.numbers().into_iter().enumerate() {
                assert!(*number >= -1e-15, "{feed}: number {index} is {number}");
            }
        }
    }

    /// Charges of fresh feed and water stand against each other: cations and ammonium, acids and bicarbonate.
    #[test]
    fn fresh_feed_is_neither_lye_nor_acid() {
        for &feed in Feed::ALL.iter().filter(|&&feed| !make_up(feed).is(Kind::NotFood)) {
            let portion = of(feed, WetKg::of(1.0));
            let ammonium = make_up(feed).ammonia_n_g_per_kg * 1e-3 / 14.0;
            let net = portion.s_cat + ammonium - portion.s_an - portion.s_ic - portion.s_ac / ACETATE_KG_COD_PER_KMOL;
            assert!(net.abs() < 1e-9 || make_up(feed).strong_cations_meq_per_kg < 0.0, "{feed}: {net}");
        }
    }

    #[test]
    fn what_digests_is_the_biodegradable_share() {
        let check = |feed: Feed| {
            let portion = of(feed, WetKg::of(1.0));
            let digests = portion.s_su + portion.s_ac + portion.to_hydrolyse();
            let expected = make_up(feed).biodegradable * portion.cod();
            assert!((digests - expected).abs() < 1e-12, "{feed}: {digests} of {expected}");
        };
        Feed::ALL.iter().copied().for_each(check);
    }

    #[test]
    fn portions_add_up_and_water_dilutes_with_a_little_alkalinity() {
        let both: Influent = [of(Feed::CookedRice, WetKg::of(3.0)), of_water(Litres::of(6.0))].into_iter().sum();
        assert_eq!(both.volume.get(), 9.0);
        assert_eq!(both.cod(), of(Feed::CookedRice, WetKg::of(3.0)).cod());
        assert!((both.s_ic - 12e-6).abs() < 1e-12);
        let speed = both.hydrolysis_35c_per_d().unwrap();
        assert!((speed - make_up(Feed::CookedRice).hydrolysis_35c_per_d).abs() < 1e-12);
        assert_eq!(of_water(Litres::of(6.0)).hydrolysis_35c_per_d(), None);
    }
}
