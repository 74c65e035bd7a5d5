//! A digester's story told in full: vessel, start, temperatures and feeds, run to one row a day.
//!
//! Takes a [`Scenario`]; gives a [`DayRow`] for the end of each day, before the next feed. The tank is run alone with
//! hydrogen as a state. It reads no file: that is the caller's.

use super::component::*;
use super::parameters::{Kinetics, Vessel};
use super::run::{Accuracy, Adm1Error, GasOut, Room, SteadyFeed, advance_one};
use super::tank::{Member, Tank};
use super::temperature::KineticsTemperature;
use super::view::Pressures;
use crate::solve::Effort;

/// One feed: a jump when it takes no time, else a steady inflow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FeedEvent {
    pub day: usize,
    /// From the start of the day, under 1. Units: d.
    pub start_d: f64,
    /// May run into the days after.
    pub duration_d: f64,
    pub volume_m3: f64,
    /// Which of the influents.
    pub influent: usize,
}

/// All that determines a run. `celsius` has one entry a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Scenario {
    pub member: Member,
    pub initial: Composition,
    pub initial_gas: [f64; GASES],
    pub influents: Vec<Composition>,
    pub celsius: Vec<f64>,
    pub feeds: Vec<FeedEvent>,
}

/// The end of one day.
#[derive(Debug, Clone, PartialEq)]
pub struct DayRow {
    /// 1 for the end of the first day.
    pub day: usize,
    pub celsius: f64,
    pub ph: f64,
    pub h_ion_kmol_per_m3: f64,
    pub vfa_kg_cod_per_m3: f64,
    /// What left the head space in the day.
    pub gas: GasOut,
    pub pressures: Pressures,
    pub free_ammonia_kmol_per_m3: f64,
    pub bicarbonate_kmol_per_m3: f64,
    pub liquid: Composition,
    pub gas_phase: [f64; GASES],
    /// COD put in during the day. Units: kg.
    pub cod_in_kg: f64,
}

impl Scenario {
    /// BSM2's own test: a steady inflow of 170 m³/d for so many days.
    pub fn bsm2(initial: &Composition, initial_gas: &[f64; GASES], influent: &Composition, days: usize) -> Scenario {
        let member = Member { kinetics: Kinetics::BSM2, vessel: Vessel::BSM2 };
        let feed = |day| FeedEvent { day, start_d: 0.0, duration_d: 1.0, volume_m3: 170.0, influent: 0 };
        Scenario {
            member,
            initial: *initial,
            initial_gas: *initial_gas,
            influents: vec![*influent],
            celsius: vec![35.0; days],
            feeds: (0..days).map(feed).collect(),
        }
    }
}

/// A scenario under way: ask for the next day until there is none.
pub struct Story<'a> {
    scenario: &'a Scenario,
    tank: Tank,
    room: Room,
    day: usize,
    effort: Effort,
    /// COD (kg) and nitrogen (kmol) in it at the start.
    at_first: (f64, f64),
    /// Temperature and inflow of the last stretch of time; `None` where something changed at once since.
    steady: Option<(f64, f64, Composition)>,
}

impl<'a> Story<'a> {
    /// Errors: [`Adm1Error::Impossible`] when the start is none.
    pub fn begin(scenario: &'a Scenario, accuracy: Accuracy) -> Result<Story<'a>, Adm1Error> {
        let tank = Tank::full(&scenario.member, &scenario.initial, &scenario.initial_gas)?;
        let at_first = (tank.cod_kg(&scenario.member), tank.nitrogen_kmol());
        Ok(Story {
            at_first,
            scenario,
            tank,
            room: Room::new(accuracy, accuracy),
            day: 0,
            effort: Effort::default(),
            steady: None,
        })
    }

    pub fn tank(&self) -> &Tank {
        &self.tank
    }

    pub fn effort(&self) -> Effort {
        self.effort
    }

    /// COD and nitrogen unaccounted for so far, as shares of what was there and came.
    pub fn astray(&self) -> (f64, f64) {
        let (member, account) = (&self.scenario.member, self.tank.account());
        let (cod, n) = (self.at_first.0 + account.cod_in_kg, self.at_first.1 + account.n_in_kmol);
        (
            (cod - account.cod_out_kg - self.tank.cod_kg(member)).abs() / cod,
            (n - account.n_out_kmol - self.tank.nitrogen_kmol()).abs() / n,
        )
    }

    /// The next day's end; `None` after the last. Errors: [`Adm1Error`], told in days since the story began.
    pub fn next_day(&mut self) -> Result<Option<DayRow>, Adm1Error> {
        let Some(&celsius) = self.scenario.celsius.get(self.day) else { return Ok(None) };
        let fed_before = self.tank.account().cod_in_kg;
        let mut gas = GasOut::default();
        let flows: Vec<Flow> = self.scenario.feeds.iter().filter_map(|feed| Flow::on(feed, self.day)).collect();
        for edge in edges(&flows).windows(2) {
            let (from, to) = (edge[0], edge[1]);
            for flow in flows.iter().filter(|flow| flow.is_jump() && flow.start_d == from) {
                let what = &self.scenario.influents[flow.influent];
                self.tank.feed(&self.scenario.member, flow.volume_m3, what)?;
                self.steady = None;
            }
            gas += self.pass(&flows, from, to, celsius)?;
        }
        self.day += 1;
        let tank = &self.tank;
        Ok(Some(DayRow {
            day: self.day,
            celsius,
            ph: tank.ph(),
            h_ion_kmol_per_m3: tank.h_ion_kmol_per_m3(),
            vfa_kg_cod_per_m3: tank.vfa_kg_cod_per_m3(),
            gas,
            pressures: tank.pressures(celsius),
            free_ammonia_kmol_per_m3: tank.free_ammonia_kmol_per_m3(celsius),
            bicarbonate_kmol_per_m3: tank.bicarbonate_kmol_per_m3(celsius),
            liquid: *tank.liquid(),
            gas_phase: *tank.gas(),
            cod_in_kg: tank.account().cod_in_kg - fed_before,
        }))
    }

    fn pass(&mut self, flows: &[Flow], from: f64, to: f64, celsius: f64) -> Result<GasOut, Adm1Error> {
        let mut m3_per_d = 0.0;
        let mut what = [0.0; LIQUIDS];
        for flow in flows.iter().filter(|flow| !flow.is_jump() && flow.start_d <= from && flow.end_d >= to) {
            m3_per_d += flow.m3_per_d;
            let influent = &self.scenario.influents[flow.influent];
            what.iter_mut().zip(influent).for_each(|(what, c)| *what += flow.m3_per_d * c);
        }
        what.iter_mut().for_each(|what| *what /= if m3_per_d > 0.0 { m3_per_d } else { 1.0 });
        let inflow = (m3_per_d > 0.0).then_some(SteadyFeed { m3_per_d, what: &what });
        let now = (celsius, m3_per_d, what);
        if self.steady.replace(now).is_some_and(|before| before == now) {
            self.room.go_on();
        }
        let member = &self.scenario.member;
        let run = advance_one(member, &mut self.tank, celsius, to - from, inflow, &mut self.room);
        let (gas, effort) = run.map_err(|error| error.later(self.day as f64 + from))?;
        self.effort += effort;
        Ok(gas)
    }
}

/// A feed as one day sees it: times from that day's start, not beyond the day.
struct Flow {
    start_d: f64,
    end_d: f64,
    m3_per_d: f64,
    volume_m3: f64,
    influent: usize,
}

impl Flow {
    /// `None` when the feed has no part in the day.
    fn on(feed: &FeedEvent, day: usize) -> Option<Flow> {
        let start_d = feed.day as f64 - day as f64 + feed.start_d;
        let end_d = start_d + feed.duration_d;
        let jumps_today = feed.duration_d == 0.0 && feed.day == day;
        let flows_today = feed.duration_d > 0.0 && start_d < 1.0 && end_d > 0.0;
        (jumps_today || flows_today).then(|| Flow {
            start_d: start_d.max(0.0),
            end_d: end_d.min(1.0),
            m3_per_d: if jumps_today { 0.0 } else { feed.volume_m3 / feed.duration_d },
            volume_m3: feed.volume_m3,
            influent: feed.influent,
        })
    }

    fn is_jump(&self) -> bool {
        self.m3_per_d == 0.0
    }
}

/// Moments of a day at which a feed starts or ends, the day's own start and end among them.
fn edges(flows: &[Flow]) -> Vec<f64> {
    let mut edges: Vec<f64> = flows.iter().flat_map(|flow| [flow.start_d, flow.end_d]).chain([0.0, 1.0]).collect();
    edges.sort_by(f64::total_cmp);
    edges.dedup();
    edges
}

/// The name by which scenario files choose a form of [`KineticsTemperature`].
pub fn kinetics_temperature_named(name: &str) -> Option<KineticsTemperature> {
    match name {
        "none" => Some(KineticsTemperature::None),
        "hashimoto_uptake_decay+arrhenius64kJ_hydrolysis" => Some(KineticsTemperature::HashimotoArrhenius),
        "cardinal" => Some(KineticsTemperature::Cardinal { adapted_c: 0.0 }),
        _ => None,
    }
}
