//! The gas store: what was made, burned, leaked and lost when full; and gas to burner minutes and back.
//!
//! Takes litres of biogas as they are in the store, wet, at slurry temperature and the place's air pressure
//! ([`GasLitres`]); gives the store a day later ([`day`]), its pressure, minutes of cooking ([`Burner`]) and the dry
//! volume at 0 °C and 1 atm that chemistry counts in ([`normal_m3`]). Never makes gas: that is the model's.

use crate::ids;
use crate::units::{GasLitres, Minutes};

/// Units: kPa. Source: standard atmosphere.
pub const ATM_KPA: f64 = 101.325;
const ZERO_C_K: f64 = 273.15;
/// Lower heating value of methane. Units: MJ per m3 at 0 °C and 1 atm. Source: 802.3 kJ/mol over 22.414 l/mol.
pub const METHANE_MJ_PER_M3: f64 = 35.8;

/// Air pressure at a height. Units: kPa. Source: ISO 2533 standard atmosphere, troposphere.
pub fn air_pressure_kpa(elevation_m: f64) -> f64 {
    ATM_KPA * libm::pow(1.0 - 2.255_77e-5 * elevation_m.clamp(-500.0, 9_000.0), 5.255_88)
}

/// Pressure of saturated water vapour. Units: kPa. Source: FAO-56, equation 11 (Tetens).
pub fn vapour_pressure_kpa(celsius: f64) -> f64 {
    0.6108 * libm::exp(17.27 * celsius / (celsius + 237.3))
}

/// Share of a wet volume that is left when it is dried and brought to 0 °C and 1 atm.
pub fn normal_share(gas_c: f64, air_kpa: f64) -> f64 {
    ZERO_C_K / (ZERO_C_K + gas_c) * ((air_kpa - vapour_pressure_kpa(gas_c)) / ATM_KPA).max(0.0)
}

/// Dry gas at 0 °C and 1 atm. Units: m3.
pub fn normal_m3(wet: GasLitres, gas_c: f64, air_kpa: f64) -> f64 {
    wet.get() / 1_000.0 * normal_share(gas_c, air_kpa)
}

/// Back from dry gas at 0 °C and 1 atm to what a store sees.
pub fn wet_litres(normal_m3: f64, gas_c: f64, air_kpa: f64) -> GasLitres {
    GasLitres::of(1_000.0 * normal_m3 / normal_share(gas_c, air_kpa).max(1e-3))
}

/// A stove's appetite. Units: litres of biogas an hour, as in the store.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Burner {
    litres_per_h: f64,
}

impl Burner {
    /// Source: SSWM and Compendium pages citing GTZ: 200-450 l/h; measured in Nepal and Tanzania 300-400 (read).
    pub const LOW_L_PER_H: f64 = 200.0;
    pub const USUAL: Burner = Burner { litres_per_h: 300.0 };
    pub const HIGH_L_PER_H: f64 = 450.0;

    /// What is outside 50 to 2,000 l/h is no household's burner and is brought to the nearer end.
    pub fn of(litres_per_h: f64) -> Burner {
        Burner { litres_per_h: litres_per_h.clamp(50.0, 2_000.0) }
    }
    pub fn litres_per_h(self) -> f64 {
        self.litres_per_h
    }
    pub fn minutes(self, gas: GasLitres) -> Minutes {
        Minutes::of(gas.get() / self.litres_per_h * 60.0)
    }
    pub fn gas(self, minutes: Minutes) -> GasLitres {
        GasLitres::of(minutes.get() / 60.0 * self.litres_per_h)
    }
}

ids!(/// What holds the gas.
    Holder { Bag = "bag", Drum = "drum" });

/// The store of one digester.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Store {
    pub holds: GasLitres,
    /// Share of what is held that leaks out in a day.
    pub leak_per_d: f64,
}

impl Store {
    /// Where its size was never told: half the slurry's volume. Source: our choice, because bags sold for such tanks
    /// hold 0.5 to 2 m3 (common practice, no source).
    pub fn usual_size(liquid_l: f64) -> GasLitres {
        GasLitres::of(0.5 * liquid_l.max(0.0))
    }

    /// How full, 0 to 1.
    pub fn fill(&self, held: GasLitres) -> f64 {
        if self.holds > GasLitres::ZERO { (held / self.holds).clamp(0.0, 1.0) } else { 0.0 }
    }

    /// Units: cm of water. Source: bags 1-5, floating drums 7-10 (from memory).
    pub fn pressure_cm_water(&self, holder: Holder, held: GasLitres) -> f64 {
        let fill = self.fill(held);
        match holder {
            Holder::Bag => 5.0 * fill,
            Holder::Drum if fill > 0.0 => 7.0 + 3.0 * fill,
            Holder::Drum => 0.0,
        }
    }
}

/// Where a day's gas went. What was held and made is held, burned, leaked or lost: nothing else.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Flow {
    pub held: GasLitres,
    pub burned: GasLitres,
    pub leaked: GasLitres,
    /// Pushed out past the water seal because the store was full.
    pub lost: GasLitres,
}

/// A day's fires. Source: common practice, no source: morning, noon and evening.
const MEALS: u32 = 3;

/// One day of the store: gas comes evenly, fires burn `wish` in three meals as far as there is gas.
pub fn day(store: &Store, held: GasLitres, made: GasLitres, wish: GasLitres) -> Flow {
    let meals = f64::from(MEALS);
    let kept = libm::exp(-store.leak_per_d.max(0.0) / meals);
    let mut flow = Flow { held, ..Flow::default() };
    for _ in 0..MEALS {
        let before = flow.held + made / meals;
        let after_leak = flow.held * kept + made / meals * (0.5 + 0.5 * kept);
        flow.leaked += before - after_leak;
        let after_seal = least(after_leak, store.holds);
        flow.lost += after_leak - after_seal;
        let burned = least(wish / meals, after_seal);
        flow.burned += burned;
        flow.held = after_seal - burned;
    }
    flow
}

fn least(a: GasLitres, b: GasLitres) -> GasLitres {
    if a < b { a } else { b }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn near(value: f64, expected: f64, within: f64, what: &str) {
        assert!((value - expected).abs() <= within, "{what}: {value}, expected {expected} ± {within}");
    }

    /// Saturation pressures of IAPWS-95 and of FAO-56's table, standard atmospheres, and the shares they make.
    #[test]
    fn pressures_and_normal_shares_are_those_of_the_tables() {
        for (celsius, fao, iapws) in [
            (10.0, 1.228, 1.2282),
            (20.0, 2.3383, 2.3393),
            (25.0, 3.1678, 3.1699),
            (30.0, 4.2431, 4.247),
            (35.0, 5.6227, 5.629),
            (40.0, 7.3756, 7.3849),
        ] {
            near(vapour_pressure_kpa(celsius), fao, 0.0006, "FAO-56");
            near(vapour_pressure_kpa(celsius), iapws, 0.002 * iapws, "IAPWS-95");
        }
        near(air_pressure_kpa(1_684.0), 82.669, 0.01, "Nairobi");
        near(air_pressure_kpa(3_640.0), 64.605, 0.02, "La Paz");
        near(normal_share(30.0, ATM_KPA), 0.8633, 0.0002, "30 °C at the sea");
        near(normal_share(20.0, 82.669), 0.7387, 0.0002, "20 °C at 1,684 m");
        near(normal_share(15.0, 64.605), 0.5883, 0.0003, "15 °C at 3,640 m");
    }

    #[test]
    fn there_and_back_is_the_same_gas() {
        let wet = GasLitres::of(640.0);
        near(wet_litres(normal_m3(wet, 30.0, 88.0), 30.0, 88.0).get(), 640.0, 1e-9, "litres");
        let burner = Burner::of(350.0);
        near(burner.minutes(burner.gas(Minutes::of(70.0))).get(), 70.0, 1e-9, "minutes");
    }

    /// SSWM citing GTZ: a burner of 300 l/h runs an hour on 300 l; a meal takes 150-300 l a head.
    #[test]
    fn a_bag_of_gas_is_so_many_minutes() {
        near(Burner::USUAL.minutes(GasLitres::of(300.0)).get(), 60.0, 1e-9, "minutes");
        assert_eq!(Burner::of(0.0).litres_per_h(), 50.0);
    }

    #[test]
    fn a_full_bag_loses_what_comes_and_an_empty_one_burns_no_more_than_there_is() {
        let store = Store { holds: GasLitres::of(500.0), leak_per_d: 0.0 };
        let full = day(&store, GasLitres::of(500.0), GasLitres::of(300.0), GasLitres::ZERO);
        assert_eq!((full.held.get(), full.burned.get()), (500.0, 0.0));
        near(full.lost.get(), 300.0, 1e-9, "lost");
        let empty = day(&store, GasLitres::ZERO, GasLitres::of(300.0), GasLitres::of(900.0));
        near(empty.burned.get(), 300.0, 1e-9, "burned");
        assert_eq!(store.pressure_cm_water(Holder::Bag, GasLitres::of(500.0)), 5.0);
        assert_eq!(store.pressure_cm_water(Holder::Drum, GasLitres::ZERO), 0.0);
    }

    proptest! {
        #[test]
        fn no_gas_comes_from_nowhere_or_goes_astray(
            holds in 0.0..5_000.0, leak in 0.0..2.0, held in 0.0..1.0, made in 0.0..5_000.0, wish in 0.0..5_000.0,
        ) {
            let store = Store { holds: GasLitres::of(holds), leak_per_d: leak };
            let held = GasLitres::of(holds * held);
            let flow = day(&store, held, GasLitres::of(made), GasLitres::of(wish));
            let out = flow.held + flow.burned + flow.leaked + flow.lost;
            prop_assert!((out.get() - held.get() - made).abs() < 1e-9 * (1.0 + made + holds));
            for part in [flow.held, flow.burned, flow.leaked, flow.lost] {
                prop_assert!(part.get() >= -1e-12, "{flow:?}");
            }
            prop_assert!(flow.held <= store.holds);
        }
    }
}
