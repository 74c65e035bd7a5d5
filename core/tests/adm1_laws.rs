//! Laws that the model keeps whatever is done to a tank: it runs, COD and nitrogen are kept, the same gives the same.

use bellyful_core::adm1::component::*;
use bellyful_core::adm1::*;
use proptest::prelude::*;

/// What a household might do to its tank, drawn at random: some of it foolish, all of it physical.
#[derive(Debug, Clone)]
struct Story {
    celsius: f64,
    /// kg COD/m³ of living groups at the start, each.
    living: f64,
    /// Bicarbonate and ammonia at the start. Units: kmol/m³.
    bicarbonate: f64,
    ammonia: f64,
    /// kg COD a day of starch, protein, fat and sugar; litres of water; kmol of alkali in the feed a kg COD.
    feed: [f64; 4],
    water_l: f64,
    salts: f64,
    /// Fed on every so many days.
    every: usize,
    speeds: [f64; 3],
    solids_leaving: f64,
}

fn story() -> impl Strategy<Value = Story> {
    let start = (5.0..45.0, 0.002..2.0, 0.0..0.2, 0.0..0.2);
    let feed = (prop::array::uniform4(0.0..6.0), 0.0..30.0, 0.0..2e-3, 1usize..6);
    let member = (prop::array::uniform3(0.2..1.5), 0.1..1.0);
    (start, feed, member).prop_map(|(start, feed, member)| Story {
        celsius: start.0,
        living: start.1,
        bicarbonate: start.2,
        ammonia: start.3,
        feed: feed.0,
        water_l: feed.1,
        salts: feed.2,
        every: feed.3,
        speeds: member.0,
        solids_leaving: member.1,
    })
}

impl Story {
    fn member(&self) -> Member {
        let [hydrolysis, ac, pro] = self.speeds;
        let kinetics = Kinetics {
            k_i_fa: Some(parameters::K_I_FA_KG_COD_PER_M3),
            k_i_salt: Some(parameters::K_I_SALT_KMOL_PER_M3),
            temperature: KineticsTemperature::Cardinal { adapted_c: 2.0 },
            ..Kinetics::BSM2
        }
        .varied(&Variation {
            hydrolysis: 0.05 * hydrolysis,
            k_m: PerGroup { ac, pro, ..PerGroup::all(1.0) },
            ..Variation::default()
        });
        Member { kinetics, vessel: Vessel { solids_leaving: self.solids_leaving, ..Vessel::household(0.8, 0.15) } }
    }

    fn tank(&self, member: &Member) -> Tank {
        let mut slurry = [0.01; LIQUIDS];
        slurry[X_SU..=X_H2].fill(self.living);
        (slurry[S_IC], slurry[S_IN]) = (self.bicarbonate, self.ammonia);
        (slurry[S_CAT], slurry[S_AN]) = (self.bicarbonate, 0.9 * self.ammonia);
        Tank::filled_with(member, &slurry, self.celsius).expect("a physical slurry")
    }

    /// Composition and volume of a day's feed. Units: m³.
    fn meal(&self) -> (Composition, f64) {
        let cod: f64 = self.feed.iter().sum();
        let m3 = cod.max(0.1) / 250.0;
        let mut what = [0.0; LIQUIDS];
        let [starch, protein, fat, sugar] = self.feed;
        (what[X_CH], what[X_PR], what[X_LI], what[S_SU]) = (starch / m3, protein / m3, fat / m3, sugar / m3);
        what[S_CAT] = self.salts * cod / m3;
        what[S_IC] = what[S_CAT];
        (what, m3)
    }

    fn feed(&self, day: usize, member: &Member, tank: &mut Tank) {
        if day.is_multiple_of(self.every) {
            let (what, m3) = self.meal();
            tank.feed(member, m3, &what).expect("a physical meal");
        }
        tank.add_water(member, self.water_l / 1000.0).expect("water");
    }
}

/// COD and nitrogen unaccounted for, as shares of what went through and what is there.
fn astray(member: &Member, tank: &Tank, at_first: (f64, f64)) -> (f64, f64) {
    let (cod, n, account) = (tank.cod_kg(member), tank.nitrogen_kmol(), tank.account());
    let (through, n_through) = (at_first.0 + account.cod_in_kg, at_first.1 + account.n_in_kmol);
    (
        (at_first.0 + account.cod_in_kg - account.cod_out_kg - cod).abs() / through,
        (at_first.1 + account.n_in_kmol - account.n_out_kmol - n).abs() / n_through,
    )
}

proptest! {
    /// Eight stories side by side, in health and souring: no run fails, nothing comes from nowhere or goes astray.
    #[test]
    fn any_physical_story_runs_and_keeps_cod_and_nitrogen(stories in prop::collection::vec(story(), LANES)) {
        let members: Vec<Member> = stories.iter().map(Story::member).collect();
        let mut tanks: Vec<Tank> = stories.iter().zip(&members).map(|(s, m)| s.tank(m)).collect();
        let at_first: Vec<(f64, f64)> =
            tanks.iter().zip(&members).map(|(tank, member)| (tank.cod_kg(member), tank.nitrogen_kmol())).collect();
        let celsius: Vec<f64> = stories.iter().map(|story| story.celsius).collect();
        let mut gas = [GasOut::default(); LANES];
        let mut room = Room::default();
        for day in 0..20 {
            for ((story, member), tank) in stories.iter().zip(&members).zip(&mut tanks) {
                story.feed(day, member, tank);
            }
            let run = advance(&members, &mut tanks, &celsius, 1.0, &mut gas, &mut room);
            prop_assert!(run.is_ok(), "day {day}: {run:?}");
        }
        for ((member, tank), first) in members.iter().zip(&tanks).zip(at_first) {
            let (cod, n) = astray(member, tank, first);
            prop_assert!(cod < 1e-8 && n < 1e-8, "COD {cod:e}, nitrogen {n:e}");
            prop_assert!(tank.liquid().iter().all(|value| value.is_finite()));
        }
    }

    #[test]
    fn the_same_story_gives_the_same_bytes_and_a_day_in_two_halves_the_same_tank(story in story()) {
        let member = story.member();
        let run = |steps: usize| {
            let (mut tank, mut room) = (story.tank(&member), Room::default());
            let mut gas = GasOut::default();
            for day in 0..6 {
                story.feed(day, &member, &mut tank);
                for _ in 0..steps {
                    let days = 1.0 / steps as f64;
                    gas += advance_one(&member, &mut tank, story.celsius, days, None, &mut room).expect("runs").0;
                }
            }
            (tank, gas)
        };
        let (whole, again, halves) = (run(1), run(1), run(2));
        prop_assert_eq!(whole.0.to_bytes(), again.0.to_bytes());
        prop_assert!((whole.0.ph() - halves.0.ph()).abs() < 0.01, "{} {}", whole.0.ph(), halves.0.ph());
        prop_assert!((whole.1.ch4_nm3 - halves.1.ch4_nm3).abs() < 1e-3 * whole.1.ch4_nm3 + 1e-4);
    }

    #[test]
    fn a_tank_twice_as_large_fed_twice_as_much_gives_twice_the_gas(story in story()) {
        let run = |size: f64| {
            let mut member = story.member();
            member.vessel = Vessel { solids_leaving: story.solids_leaving, ..Vessel::household(0.8 * size, 0.15 * size) };
            let (mut tank, mut room) = (story.tank(&member), Room::default());
            let (what, m3) = story.meal();
            let mut gas = GasOut::default();
            for _ in 0..6 {
                tank.feed(&member, m3 * size, &what).expect("a meal");
                gas += advance_one(&member, &mut tank, story.celsius, 1.0, None, &mut room).expect("runs").0;
            }
            gas.ch4_nm3
        };
        let (one, two) = (run(1.0), run(2.0));
        prop_assert!((two - 2.0 * one).abs() < 2e-3 * two + 1e-6, "{one} {two}");
    }
}

#[test]
fn every_instruction_set_gives_the_same_bytes() {
    use bellyful_core::solve::InstructionSet::{Avx2, Avx512, Baseline};
    let run = |set| {
        let member = |n: usize| Member {
            kinetics: Kinetics::BSM2.varied(&Variation { hydrolysis: 0.5 + 0.1 * n as f64, ..Variation::default() }),
            vessel: Vessel::household(0.8, 0.15),
        };
        let members: Vec<Member> = (0..LANES + 3).map(member).collect();
        let mut slurry = [0.02; LIQUIDS];
        slurry[X_SU..=X_H2].fill(0.3);
        (slurry[S_IC], slurry[S_IN], slurry[S_CAT]) = (0.09, 0.08, 0.05);
        let mut food = [0.0; LIQUIDS];
        (food[X_CH], food[X_PR], food[S_SU]) = (150.0, 40.0, 60.0);
        let mut tanks: Vec<Tank> =
            members.iter().map(|member| Tank::filled_with(member, &slurry, 30.0).expect("a slurry")).collect();
        let (mut gas, mut room) = (vec![GasOut::default(); members.len()], Room::default().on(set));
        for _ in 0..10 {
            for (member, tank) in members.iter().zip(&mut tanks) {
                tank.feed(member, 0.02, &food).expect("a meal");
            }
            let celsius = vec![30.0; members.len()];
            advance(&members, &mut tanks, &celsius, 1.0, &mut gas, &mut room).expect("runs");
        }
        tanks.iter().flat_map(Tank::to_bytes).collect::<Vec<u8>>()
    };
    let baseline = run(Baseline);
    assert!(run(Avx2) == baseline && run(Avx512) == baseline);
}

#[test]
fn fed_no_more_it_gives_no_more_gas() {
    let member = Member { kinetics: Kinetics::BSM2, vessel: Vessel::household(0.8, 0.15) };
    let mut slurry = [0.05; LIQUIDS];
    (slurry[S_IC], slurry[S_IN], slurry[S_CAT]) = (0.1, 0.08, 0.05);
    let mut tank = Tank::filled_with(&member, &slurry, 35.0).expect("a slurry");
    let mut room = Room::default();
    let mut year = |days: f64| advance_one(&member, &mut tank, 35.0, days, None, &mut room).expect("runs").0.ch4_nm3;
    let (first, _, later) = (year(30.0), year(700.0), year(30.0));
    assert!(first > 1e-3 && later < 1e-3 * first, "{first} {later}");
}

#[test]
fn no_food_however_sour_leaves_no_carbon_below_none() {
    // Little seed, little alkalinity and much quick food: all inorganic carbon is stripped and taken up.
    let member = Member { kinetics: Kinetics::BSM2, vessel: Vessel::household(0.8, 0.15) };
    let mut slurry = [0.0; LIQUIDS];
    slurry[X_SU..=X_H2].fill(0.02);
    (slurry[S_IC], slurry[S_IN], slurry[S_CAT], slurry[S_AN]) = (0.05, 0.005, 0.05, 0.0);
    (slurry[X_CH], slurry[X_PR], slurry[X_LI]) = (10.0, 3.0, 2.0);
    let mut tank = Tank::filled_with(&member, &slurry, 35.0).expect("a slurry");
    let mut room = Room::default();
    for day in 0..40 {
        let run = advance_one(&member, &mut tank, 35.0, 1.0, None, &mut room);
        assert!(run.is_ok(), "day {day}: {run:?}");
    }
    assert!(tank.ph() < 6.0, "{}", tank.ph());
}
