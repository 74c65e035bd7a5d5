//! Soda, lime and ash: what a field worker may put in against sourness.
//!
//! Takes a kind and an amount as told; gives the charge and the carbon that the model takes in.

use super::influent::Influent;
use crate::fact::{AlkaliKind, Unit};
use crate::feeds::{measures::Measures, weigh::pour};
use crate::units::{Litres, WetKg};
use serde::{Deserialize, Serialize};

/// Units: kmol of charge, kmol C.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub struct Alkali {
    pub s_cat: f64,
    pub s_ic: f64,
}

/// Bulk density. Units: kg/l. Source: from memory, middling values of powders as bought and of sieved wood ash.
fn density(kind: AlkaliKind) -> f64 {
    match kind {
        AlkaliKind::Soda => 1.0,
        AlkaliKind::Lime | AlkaliKind::Ash => 0.6,
    }
}

/// What `amount` `unit`s bring; nothing where the amount is absurd.
///
/// Source: molar masses (NaHCO3 84.0 kg/kmol, Ca(OH)2 74.1 kg/kmol with two charges); wood ash as 40 % of its mass in
/// CaCO3 (100.1 kg/kmol, two charges), within the 25 to 60 % of a farm bulletin (from memory).
pub fn alkali(kind: AlkaliKind, amount: f64, unit: Unit, measures: &Measures) -> Alkali {
    let kg = match unit {
        Unit::Kg => WetKg::new(amount).map_or(0.0, WetKg::get),
        _ => pour(amount, unit, measures).map_or(0.0, |poured| poured.litres.get() * density(kind)),
    };
    match kind {
        AlkaliKind::Soda => Alkali { s_cat: kg / 84.0, s_ic: kg / 84.0 },
        AlkaliKind::Lime => Alkali { s_cat: 2.0 * kg / 74.1, s_ic: 0.0 },
        AlkaliKind::Ash => Alkali { s_cat: 0.4 * 2.0 * kg / 100.1, s_ic: 0.4 * kg / 100.1 },
    }
}

impl Alkali {
    /// Stirred into a litre of water, as it must be to go in; nothing where there is none.
    pub fn stirred(self) -> Influent {
        match self == Alkali::default() {
            true => Influent::default(),
            false => Influent { s_cat: self.s_cat, s_ic: self.s_ic, volume: Litres::of(1.0), ..Influent::default() },
        }
    }
}

impl std::ops::AddAssign for Alkali {
    fn add_assign(&mut self, other: Alkali) {
        (self.s_cat, self.s_ic) = (self.s_cat + other.s_cat, self.s_ic + other.s_ic);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_kilogram_of_each_brings_its_charge() {
        let charge = |kind, amount, unit| {
            alkali(kind, amount, Unit::from_id(unit).unwrap(), &Measures { country: None, told: None }).s_cat
        };
        assert!((charge(AlkaliKind::Soda, 0.84, "kg") - 0.01).abs() < 1e-12);
        assert!((charge(AlkaliKind::Lime, 0.741, "kg") - 0.02).abs() < 1e-12);
        assert!(charge(AlkaliKind::Ash, 1.0, "kg") < charge(AlkaliKind::Soda, 1.0, "kg"));
        assert!((0.00005..0.0003).contains(&charge(AlkaliKind::Soda, 1.0, "spoon")));
        assert_eq!(charge(AlkaliKind::Lime, -1.0, "kg"), 0.0);
        assert_eq!(charge(AlkaliKind::Lime, 1e12, "kg"), 0.0);
    }
}
