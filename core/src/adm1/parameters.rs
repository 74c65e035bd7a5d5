//! Constants of one digester's biology and vessel, with their sources.
//!
//! Takes nothing; gives BSM2's values and the ways in which a digester may differ from them. Temperature is not in
//! here: these are values at 35 °C, see [`super::temperature`].
//!
//! Source of every value, unless said otherwise: Rosen & Jeppsson, Aspects on ADM1 Implementation within the BSM2
//! Framework (Lund University, TEIE-7224, 2006/2008), table of parameters; checked against tests/reference/
//! bsm2_reference.json.

use super::temperature::KineticsTemperature;

/// The groups of degraders: one uptake speed, one half-saturation and one decay each.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PerGroup {
    /// Sugars.
    pub su: f64,
    /// Amino acids.
    pub aa: f64,
    /// Long-chain fatty acids.
    pub fa: f64,
    /// Valerate and butyrate.
    pub c4: f64,
    pub pro: f64,
    pub ac: f64,
    pub h2: f64,
}

impl PerGroup {
    pub const fn all(value: f64) -> PerGroup {
        PerGroup { su: value, aa: value, fa: value, c4: value, pro: value, ac: value, h2: value }
    }

    /// Group by group.
    pub fn times(self, by: PerGroup) -> PerGroup {
        PerGroup {
            su: self.su * by.su,
            aa: self.aa * by.aa,
            fa: self.fa * by.fa,
            c4: self.c4 * by.c4,
            pro: self.pro * by.pro,
            ac: self.ac * by.ac,
            h2: self.h2 * by.h2,
        }
    }
}

/// Speeds and limits of the processes at 35 °C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kinetics {
    /// Disintegration of X_c. Units: 1/d.
    pub k_dis: f64,
    /// Hydrolysis. Units: 1/d.
    pub k_hyd_ch: f64,
    pub k_hyd_pr: f64,
    pub k_hyd_li: f64,
    /// Uptake. Units: kg COD/(kg COD·d).
    pub k_m: PerGroup,
    /// Half saturation. Units: kg COD/m³.
    pub k_s: PerGroup,
    /// Decay. Units: 1/d.
    pub k_dec: PerGroup,
    /// Half saturation of inorganic nitrogen. Units: kmol/m³.
    pub k_s_in: f64,
    /// pH at which half of the speed is left; the curves' exponents are BSM2's 2 (amino acids and other
    /// acidogens, acetogens), 3 (acetate) and 3 (hydrogen).
    pub ph_half_aa: f64,
    pub ph_half_ac: f64,
    pub ph_half_h2: f64,
    /// Inhibition of the LCFA, C4 and propionate degraders by hydrogen. Units: kg COD/m³.
    pub k_i_h2_fa: f64,
    pub k_i_h2_c4: f64,
    pub k_i_h2_pro: f64,
    /// Inhibition of acetate uptake by free ammonia. Units: kmol/m³.
    pub k_i_nh3: f64,
    /// Inhibition of acetate uptake by long-chain fatty acids, off when `None`. Units: kg COD/m³.
    pub k_i_fa: Option<f64>,
    /// Inhibition of acetate uptake by salt, as S_cat, off when `None`. Units: kmol/m³.
    pub k_i_salt: Option<f64>,
    /// How the speeds follow temperature.
    pub temperature: KineticsTemperature,
}

/// LCFA that halve acetate use: 2.5 kg COD/m³.
///
/// Source: oleate 3.1 mmol/L (unadapted granular sludge, batch) at 2.89 kg COD/kg; a constant of this size in
/// non-competitive form is our choice, because the mix of a household's fats is not known. Linoleate alone: 0.6.
pub const K_I_FA_KG_COD_PER_M3: f64 = 2.5;

/// Salt that halves acetate use: 8 g Na/L = 0.348 kmol/m³, with exponent 3.
///
/// Source: US EPA, Process Design Manual for Sludge Treatment (1979): 3.5-5.5 g/L moderately, 8 g/L strongly
/// inhibiting. The exponent is our choice, because it leaves 94% of the speed at 8 g NaCl/L, where less than 10% loss
/// is reported for kitchen waste (Energies 12 (2019) 3571).
pub const K_I_SALT_KMOL_PER_M3: f64 = 0.348;

impl Kinetics {
    /// BSM2, all options off.
    pub const BSM2: Kinetics = Kinetics {
        k_dis: 0.5,
        k_hyd_ch: 10.0,
        k_hyd_pr: 10.0,
        k_hyd_li: 10.0,
        k_m: PerGroup { su: 30.0, aa: 50.0, fa: 6.0, c4: 20.0, pro: 13.0, ac: 8.0, h2: 35.0 },
        k_s: PerGroup { su: 0.5, aa: 0.3, fa: 0.4, c4: 0.2, pro: 0.1, ac: 0.15, h2: 7e-6 },
        k_dec: PerGroup::all(0.02),
        k_s_in: 1e-4,
        ph_half_aa: 4.75, // (5.5 + 4) / 2
        ph_half_ac: 6.5,  // (7 + 6) / 2
        ph_half_h2: 5.5,  // (6 + 5) / 2
        k_i_h2_fa: 5e-6,
        k_i_h2_c4: 1e-5,
        k_i_h2_pro: 3.5e-6,
        k_i_nh3: 0.0018,
        k_i_fa: None,
        k_i_salt: None,
        temperature: KineticsTemperature::None,
    };

    /// These kinetics as another digester may have them.
    pub fn varied(mut self, by: &Variation) -> Kinetics {
        self.k_dis *= by.hydrolysis;
        self.k_hyd_ch *= by.hydrolysis * by.hydrolysis_ch;
        self.k_hyd_pr *= by.hydrolysis * by.hydrolysis_pr;
        self.k_hyd_li *= by.hydrolysis * by.hydrolysis_li;
        self.k_m = self.k_m.times(by.k_m);
        self.k_s = self.k_s.times(by.k_s);
        self.k_dec = self.k_dec.times(PerGroup::all(by.decay));
        self.ph_half_aa += by.inhibition_ph;
        self.ph_half_ac += by.inhibition_ph;
        self.ph_half_h2 += by.inhibition_ph;
        self.k_i_nh3 *= by.k_i_nh3;
        self
    }
}

impl Default for Kinetics {
    fn default() -> Self {
        Self::BSM2
    }
}

/// How one digester differs from the book: factors, but `inhibition_ph` is a shift in pH units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Variation {
    /// Of disintegration and all hydrolysis.
    pub hydrolysis: f64,
    /// On top of it, of carbohydrates, proteins and lipids.
    pub hydrolysis_ch: f64,
    pub hydrolysis_pr: f64,
    pub hydrolysis_li: f64,
    pub k_m: PerGroup,
    pub k_s: PerGroup,
    pub decay: f64,
    pub inhibition_ph: f64,
    pub k_i_nh3: f64,
}

impl Default for Variation {
    fn default() -> Self {
        Variation {
            hydrolysis: 1.0,
            hydrolysis_ch: 1.0,
            hydrolysis_pr: 1.0,
            hydrolysis_li: 1.0,
            k_m: PerGroup::all(1.0),
            k_s: PerGroup::all(1.0),
            decay: 1.0,
            inhibition_ph: 0.0,
            k_i_nh3: 1.0,
        }
    }
}

/// The tank as the model sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Vessel {
    /// Slurry up to the overflow. Units: m³.
    pub liquid_m3: f64,
    /// Gas above it. Units: m³.
    pub head_m3: f64,
    /// Gas line: flow per overpressure. Units: m³/(d·bar).
    pub k_p_m3_per_d_bar: f64,
    /// Liquid to gas. Units: 1/d.
    pub k_la_per_d: f64,
    pub p_atm_bar: f64,
    /// Concentration of solids in what overflows, as a share of that in the tank: 1 when fully mixed, 0 when all
    /// solids stay.
    pub solids_leaving: f64,
}

impl Vessel {
    /// BSM2's plant: 3400 m³ of liquid, 300 m³ of gas.
    pub const BSM2: Vessel = Vessel {
        liquid_m3: 3400.0,
        head_m3: 300.0,
        k_p_m3_per_d_bar: 5e4,
        k_la_per_d: 200.0,
        p_atm_bar: 1.013,
        solids_leaving: 1.0,
    };

    /// A family's tank: fully mixed, with a gas line as wide, for its head space, as BSM2's.
    ///
    /// Source: k_p scales with the head space (5·10⁴ m³/(d·bar) for 300 m³ in BSM2).
    pub fn household(liquid_m3: f64, head_m3: f64) -> Vessel {
        let k_p_m3_per_d_bar = Vessel::BSM2.k_p_m3_per_d_bar * head_m3 / Vessel::BSM2.head_m3;
        Vessel { liquid_m3, head_m3, k_p_m3_per_d_bar, ..Vessel::BSM2 }
    }
}
