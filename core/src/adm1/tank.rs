//! One tank's contents, and what people do to it at once: feed, water, alkali, emptying.
//!
//! Takes amounts and compositions; changes the contents exactly (no time passes, nothing reacts) and keeps the account
//! of COD and nitrogen that came and went. It never lets time pass: that is [`super::run`].

use super::algebra;
use super::component::*;
use super::constants::{COD_PER_KMOL_CH4, Constants};
use super::parameters::{Kinetics, Vessel};
use super::petersen::nitrogen_of;
use crate::units::OutOfBounds;

/// One digester as the model knows it: its biology and its vessel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Member {
    pub kinetics: Kinetics,
    pub vessel: Vessel,
}

/// COD and nitrogen that came and went, all told, besides what is there. Units: kg COD, kmol N.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Account {
    pub cod_in_kg: f64,
    pub cod_out_kg: f64,
    pub n_in_kmol: f64,
    pub n_out_kmol: f64,
}

/// What is in one tank at one moment.
#[derive(Debug, Clone, PartialEq)]
pub struct Tank {
    pub(super) liquid: Composition,
    pub(super) gas: [f64; GASES],
    pub(super) h_ion: f64,
    pub(super) liquid_m3: f64,
    /// Days since the pH was last under [`super::run::SOUR_PH`].
    pub(super) calm_d: f64,
    /// While algebraic, S_h2 follows from the rest and holds no COD of its own.
    pub(super) hydrogen_is_algebraic: bool,
    pub(super) account: Account,
}

impl Tank {
    /// A full tank with this liquid and head space.
    ///
    /// Shape: see [`Composition`]; gas in the order of [`GAS_NAMES`]. Errors: [`OutOfBounds`] when an amount is not
    /// finite, below 0 or beyond 1000.
    pub fn full(member: &Member, liquid: &Composition, gas: &[f64; GASES]) -> Result<Tank, OutOfBounds> {
        check_all(liquid)?;
        gas.iter().zip(GAS_NAMES).try_for_each(|(&value, name)| check(name, "per m3", value, MOST_PER_M3))?;
        let vessel = &member.vessel;
        check("liquid volume", "m3", vessel.liquid_m3, MOST_M3)?;
        check("head space", "m3", vessel.head_m3, MOST_M3)?;
        Ok(Tank {
            liquid: *liquid,
            gas: *gas,
            h_ion: 1e-7,
            liquid_m3: vessel.liquid_m3,
            calm_d: super::run::CALM_D,
            hydrogen_is_algebraic: false,
            account: Account::default(),
        })
    }

    /// A full tank under a head space of air's pressure of methane and carbon dioxide, three to two.
    pub fn filled_with(member: &Member, liquid: &Composition, celsius: f64) -> Result<Tank, OutOfBounds> {
        let rt = super::temperature::R * (celsius + super::temperature::ZERO_C_K);
        let dry_bar = member.vessel.p_atm_bar - super::temperature::Physics::at(celsius).p_h2o;
        Tank::full(member, liquid, &[0.0, 0.6 * dry_bar / rt * COD_PER_KMOL_CH4, 0.4 * dry_bar / rt])
    }

    pub fn liquid(&self) -> &Composition {
        &self.liquid
    }

    pub fn gas(&self) -> &[f64; GASES] {
        &self.gas
    }

    pub fn liquid_m3(&self) -> f64 {
        self.liquid_m3
    }

    pub fn account(&self) -> &Account {
        &self.account
    }

    /// Puts a volume in: first up to the overflow, then as much leaves as comes, mixed all the while.
    ///
    /// Gives what overflowed, as kg COD or kmol of each component. Exact: between jumps nothing reacts. Errors:
    /// [`OutOfBounds`].
    pub fn feed(&mut self, member: &Member, volume_m3: f64, what: &Composition) -> Result<Composition, OutOfBounds> {
        check("fed volume", "m3", volume_m3, MOST_M3)?;
        check_all(what)?;
        let mut coming = *what;
        if self.hydrogen_is_algebraic {
            // Hydrogen's pool holds no COD: what comes with the feed is methane within a second.
            coming[S_CH4] += coming[S_H2];
            coming[S_H2] = 0.0;
        }
        self.account.cod_in_kg += volume_m3 * cod_per_m3(&coming);
        self.account.n_in_kmol += volume_m3 * nitrogen_per_m3(&coming);
        let room_m3 = (member.vessel.liquid_m3 - self.liquid_m3).max(0.0);
        let fills_m3 = volume_m3.min(room_m3);
        if fills_m3 > 0.0 {
            self.fill(member, fills_m3, &coming);
        }
        let out = self.displace(member, volume_m3 - fills_m3, &coming);
        self.account.cod_out_kg += cod_per_m3(&out);
        self.account.n_out_kmol += nitrogen_per_m3(&out);
        Ok(out)
    }

    /// Puts clean water in.
    pub fn add_water(&mut self, member: &Member, volume_m3: f64) -> Result<Composition, OutOfBounds> {
        self.feed(member, volume_m3, &[0.0; LIQUIDS])
    }

    /// Stirs in a dose that takes no room. Errors: [`OutOfBounds`].
    pub fn add_alkali(&mut self, dose: Alkali) -> Result<(), OutOfBounds> {
        check("alkali", "kmol", dose.cations_kmol, MOST_M3)?;
        check("carbonate", "kmol", dose.carbon_kmol, MOST_M3)?;
        self.liquid[S_CAT] += dose.cations_kmol / self.liquid_m3;
        self.liquid[S_IC] += dose.carbon_kmol / self.liquid_m3;
        Ok(())
    }

    /// Takes slurry out, mixed as it is; the level falls until something is put in. At least a twentieth of a full
    /// tank must stay. Errors: [`OutOfBounds`].
    pub fn remove(&mut self, member: &Member, volume_m3: f64) -> Result<(), OutOfBounds> {
        let most = (self.liquid_m3 - 0.05 * member.vessel.liquid_m3).max(0.0);
        check("removed volume", "m3", volume_m3, most)?;
        let hydrogen = if self.hydrogen_is_algebraic { self.liquid[S_H2] } else { 0.0 };
        self.account.cod_out_kg += volume_m3 * (cod_per_m3(&self.liquid) - hydrogen);
        self.account.n_out_kmol += volume_m3 * nitrogen_per_m3(&self.liquid);
        self.set_level(member, self.liquid_m3 - volume_m3);
        Ok(())
    }

    /// COD in liquid and gas. Units: kg.
    pub fn cod_kg(&self, member: &Member) -> f64 {
        let hydrogen = if self.hydrogen_is_algebraic { self.liquid[S_H2] } else { 0.0 };
        self.liquid_m3 * (cod_per_m3(&self.liquid) - hydrogen)
            + self.head_m3(member) * (self.gas[GAS_H2] + self.gas[GAS_CH4])
    }

    /// Nitrogen in the liquid. Units: kmol.
    pub fn nitrogen_kmol(&self) -> f64 {
        self.liquid_m3 * nitrogen_per_m3(&self.liquid)
    }

    pub(super) fn head_m3(&self, member: &Member) -> f64 {
        member.vessel.head_m3 + member.vessel.liquid_m3 - self.liquid_m3
    }

    pub(super) fn constants(&self, member: &Member, celsius: f64) -> Constants {
        Constants::new(&member.kinetics, &member.vessel, self.liquid_m3, celsius)
    }

    /// Takes hydrogen as algebraic or as a pool with COD of its own; the difference is booked to dissolved methane.
    pub(super) fn take_hydrogen_as(&mut self, algebraic: bool) {
        if algebraic == self.hydrogen_is_algebraic {
            return;
        }
        self.hydrogen_is_algebraic = algebraic;
        if algebraic {
            self.liquid[S_CH4] += self.liquid[S_H2];
        } else {
            // A pool cannot hold what nothing paid for.
            self.liquid[S_H2] = self.liquid[S_H2].min(self.liquid[S_CH4].max(0.0));
            self.liquid[S_CH4] -= self.liquid[S_H2];
        }
    }

    /// Puts what is algebraic on its balance. `None` when the charge has no balance.
    pub(super) fn settle(&mut self, c: &Constants) -> Option<()> {
        self.h_ion = algebra::h_ion(c, &self.liquid, self.h_ion)?;
        if self.hydrogen_is_algebraic {
            self.liquid[S_H2] = algebra::hydrogen(c, &self.liquid, self.h_ion, self.gas[GAS_H2]);
        }
        Some(())
    }

    fn fill(&mut self, member: &Member, volume_m3: f64, coming: &Composition) {
        let total = self.liquid_m3 + volume_m3;
        for (held, coming) in self.liquid.iter_mut().zip(coming) {
            *held = (*held * self.liquid_m3 + coming * volume_m3) / total;
        }
        self.set_level(member, total);
    }

    /// The gas keeps its amount while the room for it changes.
    fn set_level(&mut self, member: &Member, liquid_m3: f64) {
        let before = self.head_m3(member);
        self.liquid_m3 = liquid_m3;
        let share = before / self.head_m3(member);
        self.gas.iter_mut().for_each(|gas| *gas *= share);
    }

    fn displace(&mut self, member: &Member, volume_m3: f64, coming: &Composition) -> Composition {
        let turns = volume_m3 / self.liquid_m3;
        let stays_of = |leaving: f64| libm::exp(-leaving * turns);
        let (liquids_stay, solids_stay) = (stays_of(1.0), stays_of(member.vessel.solids_leaving));
        let mut out = [0.0; LIQUIDS];
        for i in 0..LIQUIDS {
            if i == S_H2 && self.hydrogen_is_algebraic {
                continue;
            }
            let leaving = if is_solid(i) { member.vessel.solids_leaving } else { 1.0 };
            let stays = if is_solid(i) { solids_stay } else { liquids_stay };
            let after = if leaving > 0.0 {
                coming[i] / leaving + (self.liquid[i] - coming[i] / leaving) * stays
            } else {
                self.liquid[i] + coming[i] * turns
            };
            out[i] = volume_m3 * coming[i] + self.liquid_m3 * (self.liquid[i] - after);
            self.liquid[i] = after;
        }
        out
    }
}

/// A dose against sourness, as what it brings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Alkali {
    pub cations_kmol: f64,
    pub carbon_kmol: f64,
}

impl Alkali {
    /// Baking soda, NaHCO₃, 84.007 kg/kmol.
    pub fn soda(kg: f64) -> Alkali {
        Alkali { cations_kmol: kg / 84.007, carbon_kmol: kg / 84.007 }
    }

    /// Slaked lime, Ca(OH)₂, 74.093 kg/kmol, two charges.
    pub fn lime(kg: f64) -> Alkali {
        Alkali { cations_kmol: 2.0 * kg / 74.093, carbon_kmol: 0.0 }
    }
}

/// COD of a liquid. Units: kg COD/m³.
pub fn cod_per_m3(liquid: &Composition) -> f64 {
    liquid.iter().enumerate().map(|(i, value)| cod_of(i) * value).sum()
}

/// Nitrogen of a liquid. Units: kmol N/m³.
pub fn nitrogen_per_m3(liquid: &Composition) -> f64 {
    liquid.iter().enumerate().map(|(i, value)| nitrogen_of(i) * value).sum()
}

/// Beyond any slurry: pure lipid is about 2900 kg COD/m³.
const MOST_PER_M3: f64 = 5000.0;
const MOST_M3: f64 = 1e6;

fn check(quantity: &'static str, unit: &'static str, value: f64, most: f64) -> Result<(), OutOfBounds> {
    if value.is_finite() && (0.0..=most).contains(&value) {
        Ok(())
    } else {
        Err(OutOfBounds { quantity, unit, value, least: 0.0, most })
    }
}

fn check_all(liquid: &Composition) -> Result<(), OutOfBounds> {
    liquid.iter().zip(LIQUID_NAMES).try_for_each(|(&value, name)| check(name, "per m3", value, MOST_PER_M3))
}
