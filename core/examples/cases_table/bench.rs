//! A cubic metre of slurry that is fed, stands, and is looked at.

use bellyful_core::adm1::component::{LIQUID_NAMES, LIQUIDS, S_CAT, S_IC};
use bellyful_core::adm1::{
    Composition, GasOut, Kinetics, KineticsTemperature, Member, Room, Tank, Vessel, advance_one,
};
use bellyful_core::feeds::influent::{self, Influent};
use bellyful_core::units::Litres;

/// A cubic metre of slurry fed every day.
pub struct Bench {
    pub member: Member,
    pub tank: Tank,
    room: Room,
    day: Influent,
}

impl Bench {
    /// Fed with `day` a day. `seed` is what it is full of at first.
    pub fn new(day: Influent, adapted_c: f64, seed: &Composition) -> Bench {
        let speed = day.hydrolysis_35c_per_d().unwrap_or(0.1);
        let kinetics = Kinetics {
            k_hyd_ch: speed,
            k_hyd_pr: speed,
            k_hyd_li: speed,
            temperature: KineticsTemperature::Cardinal { adapted_c },
            ..Kinetics::BSM2
        };
        let member = Member { kinetics, vessel: Vessel::household(1.0, 0.2) };
        let tank = Tank::filled_with(&member, seed, 30.0).expect("a published sludge is within bounds");
        Bench { member, tank, room: Room::default(), day }
    }

    pub fn feed(&mut self) {
        let m3 = self.day.volume.get() / 1_000.0;
        self.tank.feed(&self.member, m3, &self.day.composition()).expect("a day's feed is within bounds");
    }

    pub fn pass(&mut self, celsius: f64, days: f64) -> GasOut {
        let passed = advance_one(&self.member, &mut self.tank, celsius, days, None, &mut self.room);
        passed.expect("the model runs through sour and sound").0
    }
}

/// BSM2's steady state (Rosen and Jeppsson 2006).
pub fn sludge() -> Composition {
    let file: serde_json::Value =
        serde_json::from_str(include_str!("../../../tests/reference/bsm2_reference.json")).expect("checked in as JSON");
    let of = |name: &str| file["steady_state"][name]["published"].as_f64().expect("every letter has its value");
    LIQUID_NAMES.map(of)
}

/// A share of that sludge in water, with as much sodium bicarbonate. Units: kmol/m3.
pub fn seeded(share: f64, bicarbonate: f64) -> Composition {
    let water = influent::of_water(Litres::of(1.0)).composition();
    let mut start: Composition = std::array::from_fn(|at| share * sludge()[at] + (1.0 - share) * water[at]);
    start[S_IC] += bicarbonate;
    start[S_CAT] += bicarbonate;
    start
}

/// `liquid` with a portion stirred in.
pub fn with(liquid: &Composition, portion: &Influent) -> Composition {
    let (per_m3, m3) = (portion.composition(), portion.volume.get() / 1_000.0);
    std::array::from_fn::<f64, LIQUIDS, _>(|at| liquid[at] + m3 * per_m3[at])
}
