//! A digester as it truly is: the bot never sees it. Its settings are drawn apart from the twin's own guesses: slower
//! users of acetate and propionate, food that is not what the table says, a tank warmer or colder than its place.

use crate::two_step::TwoStep;
use bellyful::places;
use bellyful_core::adm1::*;
use bellyful_core::climate;
use bellyful_core::feeds::{Feed, influent, make_up};
use bellyful_core::site::Normals;
use bellyful_core::units::{Day, WetKg};
use rand::Rng;
use rand::rngs::StdRng;

pub const TOWNS: [&str; 6] = ["Kisumu", "Mombasa", "Nairobi", "Addis Ababa", "Lucknow", "Kampala"];
const LIQUID_M3: f64 = 0.8;
/// Of the well water in the two-step truth. Source: our choice, as a middling to hard well.
const HARD_MEQ_PER_L: f64 = 3.0;
/// A litre of biogas an hour of the stove.
const BURNER_L_PER_H: f64 = 320.0;

/// What works inside.
pub enum Inside {
    /// The equations of the bot's own model, on other settings.
    SameBuild(Box<(Member, Tank)>),
    /// Other equations.
    TwoStep(TwoStep),
}

/// One household's digester, with what is in it.
pub struct Truth {
    pub town: &'static str,
    pub inside: Inside,
    pub seed_kg: f64,
    pub age_d: i32,
    normals: Normals,
    slurry_c: f64,
    warmer_k: f64,
    /// Solids of the food over the table's.
    strength: f64,
    /// Share of each food in the mix, and VS of it.
    pub mix: Vec<(Feed, f64)>,
    /// Kitchen and yard give so much a day. Units: kg VS/m3/d.
    pub there_is: f64,
    /// Told over true amounts.
    pub measure: f64,
    leak: f64,
    pub held_l: f64,
    room: Room,
    sour_days: u32,
    pub soured: bool,
    pub methane_nm3: f64,
}

/// What a family may notice at the end of a day.
pub struct Noticed {
    pub cooked_min: f64,
    pub gas_low: bool,
    pub sour_smell: bool,
    pub yellow: bool,
}

impl Truth {
    pub fn draw(rng: &mut StdRng, two_step: bool) -> Truth {
        let town = TOWNS[rng.random_range(0..TOWNS.len())];
        let normals = places::find(town, None).expect("a known town").place.normals.clone();
        let kinetics = Kinetics {
            k_hyd_ch: 0.22,
            k_hyd_pr: 0.18,
            k_hyd_li: 0.12,
            k_i_fa: Some(parameters::K_I_FA_KG_COD_PER_M3),
            temperature: KineticsTemperature::Cardinal { adapted_c: rng.random_range(2.0..6.0) },
            ..Kinetics::BSM2
        }
        .varied(&Variation {
            hydrolysis: rng.random_range(0.6..1.5),
            k_m: PerGroup {
                ac: rng.random_range(0.5..1.0),
                pro: rng.random_range(0.5..1.0),
                c4: rng.random_range(0.6..1.0),
                ..PerGroup::all(1.0)
            },
            inhibition_ph: rng.random_range(-0.1..0.1),
            ..Variation::default()
        });
        let vessel = Vessel { solids_leaving: rng.random_range(0.3..0.95), ..Vessel::household(LIQUID_M3, 0.2) };
        let member = Member { kinetics, vessel };
        let (seed_kg, age_d) = (rng.random_range(80.0..240.0), rng.random_range(0..20));
        let living = rng.random_range(6.0..20.0);
        let mut seed = influent::of(Feed::CattleManure, WetKg::of(seed_kg));
        seed.x_living *= living;
        seed += influent::of_water(bellyful_core::units::Litres::of(800.0 - seed_kg));
        let slurry_c = normals.air_c.iter().sum::<f64>() / 12.0 + 2.0;
        let tank = Tank::filled_with(&member, &seed.composition(), slurry_c).expect("a slurry");
        let foods = [Feed::FoodWaste, Feed::CookedRice, Feed::VegetableWaste, Feed::MaizeMeal, Feed::FruitWaste];
        let shares: Vec<f64> = foods.iter().map(|_| rng.random_range(0.0..1.0_f64).powi(2)).collect();
        let all: f64 = shares.iter().sum();
        let mut truth = Truth {
            town,
            inside: match two_step {
                true => Inside::TwoStep(TwoStep::filled(rng, seed_kg)),
                false => Inside::SameBuild(Box::new((member, tank))),
            },
            seed_kg,
            age_d,
            slurry_c,
            warmer_k: rng.random_range(0.0..6.0),
            strength: rng.random_range(0.95..1.3),
            mix: foods.into_iter().zip(shares.iter().map(|share| share / all)).collect(),
            there_is: rng.random_range(3.5..8.0),
            measure: rng.random_range(0.85..1.2),
            leak: rng.random_range(0.0..0.15),
            held_l: 0.0,
            room: Room::new(Accuracy::of(1e-3), Accuracy::of(1e-3)),
            normals,
            sour_days: 0,
            soured: false,
            methane_nm3: 0.0,
        };
        // Dung digests slowly; what is fed later digests as food does.
        let faster = truth.slowed(0.35);
        for day in 0..age_d {
            truth.pass(Day(20_500 + day - age_d), 0.0, 0.0);
        }
        truth.slowed(faster);
        if truth.ph() < 6.5 || truth.acids_over_alkalinity() > 0.9 {
            // A tank that never started is another story: nobody can feed it.
            return Truth::draw(rng, two_step);
        }
        (truth.methane_nm3, truth.held_l) = (0.0, 200.0);
        (truth.soured, truth.sour_days) = (false, 0);
        truth
    }

    /// VS of the mix, by the table, as a share of wet mass.
    pub fn vs_share(&self) -> f64 {
        self.mix.iter().map(|(feed, share)| share * make_up(*feed).vs()).sum()
    }

    /// Wet kg a day that a load means for this mix.
    pub fn kg_at(&self, olr: f64) -> f64 {
        olr * LIQUID_M3 / self.vs_share()
    }

    /// Slows what dissolves by this factor; gives the factor that undoes it.
    fn slowed(&mut self, by: f64) -> f64 {
        match &mut self.inside {
            Inside::SameBuild(inside) => {
                inside.0.kinetics = inside.0.kinetics.varied(&Variation { hydrolysis: by, ..Variation::default() })
            }
            Inside::TwoStep(tank) => tank.dissolves *= by,
        }
        1.0 / by
    }

    fn ph(&self) -> f64 {
        match &self.inside {
            Inside::SameBuild(inside) => inside.1.ph(),
            Inside::TwoStep(tank) => tank.ph(),
        }
    }

    fn acids_over_alkalinity(&self) -> f64 {
        match &self.inside {
            Inside::SameBuild(inside) => inside.1.acids_over_alkalinity(&inside.0, self.slurry_c),
            Inside::TwoStep(tank) => tank.acids_over_alkalinity(),
        }
    }

    fn put_in_two_step(&self, tank: &mut TwoStep, kg: f64, water_l: f64) {
        let foods: Vec<(Feed, f64)> = self.mix.iter().map(|(feed, share)| (*feed, kg * share)).collect();
        tank.put_in(&foods, self.strength, water_l, HARD_MEQ_PER_L);
    }

    fn put_in(&self, member: &Member, tank: &mut Tank, kg: f64, water_l: f64) {
        let mut what: influent::Influent =
            self.mix.iter().map(|(feed, share)| influent::of(*feed, WetKg::of(kg * share))).sum();
        let volume = what.volume;
        what = what.scaled(self.strength);
        what.volume = volume;
        // Well water is harder than the table's middling one.
        let hard = influent::of_water(bellyful_core::units::Litres::of(water_l));
        what += influent::Influent { s_ic: 2.0 * hard.s_ic, s_cat: 2.0 * hard.s_cat, ..hard };
        let m3 = what.volume.get() / 1000.0;
        if m3 > 0.0 {
            tank.feed(member, m3, &what.composition()).expect("a meal");
        }
    }

    fn warm(&self, from_c: f64, day: Day) -> f64 {
        from_c + 0.25 * (climate::on(&self.normals, day).air_c + 3.0 + self.warmer_k - from_c)
    }

    /// A day: fed so much, a day passes. Gives what the family notices.
    pub fn pass(&mut self, day: Day, kg: f64, water_l: f64) -> Noticed {
        self.slurry_c = self.warm(self.slurry_c, day);
        let (ch4_nm3, co2_nm3) = match &self.inside {
            Inside::SameBuild(inside) => {
                let (member, mut tank) = (inside.0, inside.1.clone());
                self.put_in(&member, &mut tank, kg, water_l);
                let gas = advance_one(&member, &mut tank, self.slurry_c, 1.0, None, &mut self.room);
                let gas = gas.map_or(GasOut::default(), |(gas, _)| gas);
                self.inside = Inside::SameBuild(Box::new((member, tank)));
                (gas.ch4_nm3, gas.co2_nm3)
            }
            Inside::TwoStep(tank) => {
                let mut tank = tank.clone();
                self.put_in_two_step(&mut tank, kg, water_l);
                let gas = tank.pass_day(self.slurry_c);
                self.inside = Inside::TwoStep(tank);
                gas
            }
        };
        self.methane_nm3 += ch4_nm3;
        let litres = bellyful_core::gas::wet_litres(ch4_nm3 + co2_nm3, self.slurry_c, 95.0).get();
        let there = self.held_l * (1.0 - self.leak) + litres * (1.0 - 0.5 * self.leak);
        let burned = there.min(500.0).min(BURNER_L_PER_H * 1.5);
        self.held_l = (there - burned).min(600.0);
        let ph = self.ph();
        self.sour_days = if ph < 6.2 { self.sour_days + 1 } else { 0 };
        self.soured |= self.sour_days >= 3 || self.acids_over_alkalinity() > 1.5;
        Noticed {
            cooked_min: burned / BURNER_L_PER_H * 60.0,
            gas_low: there < 80.0,
            sour_smell: ph < 6.4,
            yellow: ch4_nm3 < 0.45 * (ch4_nm3 + co2_nm3),
        }
    }

    /// Which of these loads, fed for 14 days, would keep it well; one truth, all loads side by side.
    pub fn keeps_well(&mut self, day: Day, loads: &[f64; LANES]) -> [bool; LANES] {
        let (member, tank) = match &self.inside {
            Inside::SameBuild(inside) => (inside.0, inside.1.clone()),
            Inside::TwoStep(tank) => return loads.map(|olr| self.two_step_keeps_well(tank.clone(), day, olr)),
        };
        let mut tanks: Vec<Tank> = vec![tank; LANES];
        let members = [member; LANES];
        let (mut celsius, mut well) = (self.slurry_c, [true; LANES]);
        for ahead in 0..14 {
            celsius = self.warm(celsius, day.plus(ahead));
            for (tank, olr) in tanks.iter_mut().zip(loads) {
                let kg = self.kg_at(*olr);
                self.put_in(&member, tank, kg, 2.0 * kg);
            }
            let mut gas = [GasOut::default(); LANES];
            if advance(&members, &mut tanks, &[celsius; LANES], 1.0, &mut gas, &mut self.room).is_err() {
                return [false; LANES];
            }
            for (well, tank) in well.iter_mut().zip(&tanks) {
                *well &= tank.ph() > 6.4 && tank.acids_over_alkalinity(&member, celsius) < 0.9;
            }
        }
        well
    }

    fn two_step_keeps_well(&self, mut tank: TwoStep, day: Day, olr: f64) -> bool {
        let (mut celsius, kg) = (self.slurry_c, self.kg_at(olr));
        (0..14).all(|ahead| {
            celsius = self.warm(celsius, day.plus(ahead));
            self.put_in_two_step(&mut tank, kg, 2.0 * kg);
            tank.pass_day(celsius);
            tank.ph() > 6.4 && tank.acids_over_alkalinity() < 0.9
        })
    }

    /// Minutes that the gas in store would burn.
    pub fn held_min(&self) -> f64 {
        self.held_l / BURNER_L_PER_H * 60.0
    }

    pub fn state(&self) -> String {
        format!("pH {:.2}, acids/alk {:.2}, {:.1} degC", self.ph(), self.acids_over_alkalinity(), self.slurry_c)
    }
}
