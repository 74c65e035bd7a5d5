//! Thirty-two guesses at one digester, moved on by the mechanistic model and weighed by what the family noticed.
//!
//! Takes the site, the day's account and chance from the stored seed; gives belief: weights, gas, and (in
//! [`super::forecast`]) what would come of a ration. Never looks at a clock.

use super::Band;
use super::WORKS_AFTER_D;
use super::afresh;
use super::chance::Chance;
use super::guess::{Guess, MEMBERS};
use super::meal::{Meal, borne, usual_meal, water_of};
use super::notice;
use crate::adm1::component::LIQUIDS;
use crate::adm1::{Composition, GasOut, Member, Room, TANK_BYTES, Tank, advance, advance_one};
use crate::climate::{self, Weather};
use crate::feeds::Feed;
use crate::feeds::influent::{self, Influent};
use crate::gas::{self, Store};
use crate::ledger::{DayAccount, Ledger};
use crate::site::Site;
use crate::units::{Day, GasLitres, Litres, WetKg};
use crate::warmth::{self, Fed, Shell};
use serde::de::Error as _;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

/// What chance is drawn for.
const GUESSES: u64 = 1;
const FEEDING: u64 = 2;
const CHOICE: u64 = 3;
/// Guesses are drawn anew when fewer than this many carry the weight.
const FEW: f64 = MEMBERS as f64 * 0.4;
/// How far a guess that is drawn again moves from the one it was; every fourth is drawn from the whole range, since
/// what was noticed so far says little of what a heavier load would do.
const JITTER: f64 = 0.35;
const ANEW_EVERY: usize = 4;
/// Seed taken for granted where none was told: a tank that somebody has run for a while. Source: our choice.
const UNTOLD_SEED_SHARE: f64 = 0.15;
const UNTOLD_SEED_D: i32 = 60;
/// What went longer before is as good as forgotten. Units: d. Source: our choice: three retention times.
const UNTOLD_MOST_D: i32 = 120;
/// Its feedings are put together to so many days' worth, for speed. Units: d.
const UNTOLD_STEP_D: i32 = 2;
/// Days that a new tank is left alone unless feeding is told. Source: common practice, no source.
const REST_D: i32 = 20;
/// Logarithm of the chance that a tank soured in silence, against one that works. Source: our choice.
const SILENT_AND_SOUR: f64 = -4.0;
/// Burned in a day where nothing was told of it. Units: min. Source: our choice.
const UNTOLD_BURNED_MIN: f64 = 60.0;
/// How far a thermometer is believed over the weather. Source: our choice.
pub(super) const BY_THERMOMETER: f64 = 0.8;
/// Doubts beyond this are as good as certain. Units: natural logarithm of likelihood.
const LIGHTEST: f64 = -30.0;

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Ensemble {
    /// First day that it followed.
    pub since: Day,
    /// First-order hydrolysis of what is in the tank, at 35 °C. Units: 1/d.
    speed_per_d: f64,
    guesses: Vec<Guess>,
    #[serde(serialize_with = "keep", deserialize_with = "bring_back")]
    tanks: Vec<Tank>,
    slurry_c: Vec<f64>,
    /// Gas in store, as it is there. Units: l.
    held_l: Vec<f64>,
    /// Made on the last day. Units: l.
    made_l: Vec<f64>,
    /// Logarithm of each guess's weight, the heaviest 0.
    weight: Vec<f64>,
}

fn keep<S: Serializer>(tanks: &[Tank], to: S) -> Result<S::Ok, S::Error> {
    tanks.iter().flat_map(Tank::to_bytes).collect::<Vec<u8>>().serialize(to)
}

fn bring_back<'de, D: Deserializer<'de>>(from: D) -> Result<Vec<Tank>, D::Error> {
    let bytes = Vec::<u8>::deserialize(from)?;
    bytes.chunks(TANK_BYTES).map(|bytes| Tank::from_bytes(bytes).map_err(D::Error::custom)).collect()
}

/// The tank and its weather on one day, as far as they are told.
pub(super) struct Surroundings {
    pub liquid: Litres,
    pub head_m3: f64,
    pub shell: Shell,
    pub weather: Weather,
    pub air_kpa: f64,
    pub store_l: f64,
}

impl Surroundings {
    pub fn of(site: &Site, liquid: Litres, day: Day) -> Surroundings {
        let tank_l = site.tank_l.unwrap_or(liquid.get() / 0.8).max(liquid.get());
        // Without a place: a warm country's mean. Source: our choice.
        let weather = site
            .normals
            .as_ref()
            .map_or(Weather { air_c: 24.0, ground_c: 24.0, sun_w_per_m2: 190.0, wind_m_per_s: 1.5 }, |normals| {
                climate::on(normals, day)
            });
        Surroundings {
            liquid,
            head_m3: ((tank_l - liquid.get()) / 1000.0).max(0.05 * liquid.get() / 1000.0),
            shell: Shell::of(site.walls, tank_l, liquid.get()),
            weather,
            air_kpa: gas::air_pressure_kpa(site.normals.as_ref().map_or(0.0, |normals| normals.elevation_m)),
            store_l: site.store_l.unwrap_or_else(|| Store::usual_size(liquid.get()).get()),
        }
    }
}

impl Ensemble {
    /// A tank filled on `day` with this starter and water; without any starter told, one that has run for a while.
    pub(super) fn start(seed: u64, day: Day, site: &Site, liquid: Litres, seeds: &[(Day, Feed, WetKg)]) -> Ensemble {
        let around = Surroundings::of(site, liquid, day);
        let guesses = Guess::all(&mut Chance::of(seed, day.0, GUESSES));
        let told: Influent = seeds.iter().map(|(_, feed, wet)| influent::of(*feed, *wet)).sum();
        // A tank that has worked for weeks has no less in it than one of which nothing is told.
        let works = site.started.is_some_and(|started| day.since(started) >= WORKS_AFTER_D);
        let untold = seeds.is_empty() || works && told.volume.get() < UNTOLD_SEED_SHARE * liquid.get();
        let starter = match untold {
            true => influent::of(Feed::CattleManure, WetKg::of(UNTOLD_SEED_SHARE * liquid.get())),
            // No more than the tank holds.
            false => told.scaled((0.9 * liquid.get() / told.volume.get().max(1e-9)).min(1.0)),
        };
        let speed_per_d = starter.hydrolysis_35c_per_d().unwrap_or(0.1);
        let settles =
            |guess: &Guess| warmth::settles_at_c(&around.shell, &around.weather, Fed::NOTHING, guess.warmth_k());
        let slurry_c: Vec<f64> = guesses.iter().map(|guess| settles(guess).clamp(2.0, 60.0)).collect();
        let mut ensemble = Ensemble {
            since: day,
            speed_per_d,
            tanks: vec![],
            held_l: vec![0.0; guesses.len()],
            made_l: vec![0.0; guesses.len()],
            weight: vec![0.0; guesses.len()],
            guesses,
            slurry_c,
        };
        let members = ensemble.members(&around);
        let fill = |(guess, (member, celsius)): (&Guess, (&Member, &f64))| {
            let mut filled = starter;
            filled.x_living *= guess.seed_activity();
            filled += water_of(guess, liquid - starter.volume);
            Tank::filled_with(member, &bounded(filled.composition()), *celsius).expect("a slurry of bounded strength")
        };
        ensemble.tanks = ensemble.guesses.iter().zip(members.iter().zip(&ensemble.slurry_c)).map(fill).collect();
        let ran_d = match site.started {
            Some(started) => day.since(started).clamp(0, UNTOLD_MOST_D),
            None if untold => UNTOLD_SEED_D,
            None => 0,
        };
        if ran_d > 0 {
            ensemble.run_in(&members, ran_d, if untold { 0 } else { REST_D }, liquid);
            ensemble.held_l = vec![0.3 * around.store_l; MEMBERS];
        }
        ensemble
    }

    pub(super) fn members(&self, around: &Surroundings) -> Vec<Member> {
        let (liquid_m3, air_bar) = (around.liquid.get() / 1000.0, around.air_kpa / 100.0);
        self.guesses.iter().map(|guess| guess.member(liquid_m3, around.head_m3, air_bar, self.speed_per_d)).collect()
    }

    pub(super) fn guesses(&self) -> &[Guess] {
        &self.guesses
    }
    pub(super) fn tanks(&self) -> &[Tank] {
        &self.tanks
    }
    pub(super) fn slurry_c(&self) -> &[f64] {
        &self.slurry_c
    }

    /// Share of belief that each guess carries; they add to 1.
    pub fn weights(&self) -> Vec<f64> {
        let raw: Vec<f64> = self.weight.iter().map(|log| libm::exp(*log)).collect();
        let all: f64 = raw.iter().sum();
        raw.iter().map(|weight| weight / all).collect()
    }

    /// A weighed mean over the guesses.
    pub(super) fn mean(&self, of: impl Fn(usize) -> f64) -> f64 {
        self.weights().iter().enumerate().map(|(i, weight)| weight * of(i)).sum()
    }

    /// Where two in three guesses lie, by weight, and their middle.
    pub(super) fn band(&self, day: Day, of: impl Fn(usize) -> f64) -> Band {
        let mut values: Vec<(f64, f64)> = self.weights().into_iter().enumerate().map(|(i, w)| (of(i), w)).collect();
        values.sort_by(|a, b| a.0.total_cmp(&b.0));
        let at = |share: f64| {
            let mut sum = 0.0;
            let reached = values.iter().find(|(_, weight)| {
                sum += weight;
                sum >= share
            });
            reached.or(values.last()).map_or(0.0, |(value, _)| *value)
        };
        Band { day, low: at(1.0 / 6.0), middle: at(0.5), high: at(5.0 / 6.0) }
    }

    pub(super) fn made_minutes_of(&self, i: usize) -> f64 {
        self.made_l[i] / self.guesses[i].burner_l_per_h() * 60.0
    }

    pub(super) fn left_minutes_of(&self, i: usize) -> f64 {
        self.held_l[i] / self.guesses[i].burner_l_per_h() * 60.0
    }

    /// Slurry at the dawn. Units: °C.
    pub fn slurry_mean_c(&self) -> f64 {
        self.mean(|i| self.slurry_c[i])
    }

    /// pH at the dawn.
    pub fn ph(&self) -> f64 {
        self.mean(|i| self.tanks[i].ph())
    }

    /// Burner minutes in store at dawn and coming in the day, if it makes as much as the day before.
    pub fn gas_minutes(&self) -> f64 {
        self.mean(|i| (self.held_l[i] + self.made_l[i]) / self.guesses[i].burner_l_per_h() * 60.0)
    }

    /// Belief that what is inside smells sour.
    pub fn sourness(&self) -> f64 {
        self.mean(|i| notice::sourness(self.tanks[i].ph()))
    }

    /// Burner minutes that the last day's gas gives.
    pub fn made_minutes(&self) -> f64 {
        self.mean(|i| self.made_minutes_of(i))
    }

    /// Litres of gas made on the last day.
    pub fn made_l(&self) -> f64 {
        self.mean(|i| self.made_l[i])
    }

    /// Moves on from the dawn of `day` to the next, and weighs the guesses by what was noticed.
    pub(super) fn pass_day(
        &mut self,
        seed: u64,
        day: Day,
        site: &Site,
        ledger: &Ledger,
        liquid: Litres,
        room: &mut Room,
    ) {
        let around = Surroundings::of(site, liquid, day);
        let account = ledger.on(day);
        let told = account.is_some_and(DayAccount::is_told);
        let meal = match account.filter(|_| told) {
            Some(account) => Some(Meal::of(account)),
            None if day.since(self.since) >= REST_D => usual_meal(ledger, day),
            None => Some(Meal::default()),
        };
        if let Some(speed) = meal.and_then(|meal| meal.food.hydrolysis_35c_per_d()) {
            self.speed_per_d += 0.1 * (speed - self.speed_per_d);
        }
        let added: Influent = ledger
            .seeds
            .iter()
            .filter(|(at, _, _)| *at == day && day > self.since)
            .map(|(_, f, w)| influent::of(*f, *w))
            .chain(account.map(|account| account.alkali.stirred()))
            .sum();
        let members = self.members(&around);
        let mut chance = Chance::of(seed, day.0, FEEDING);
        for (i, (member, tank)) in members.iter().zip(&mut self.tanks).enumerate() {
            let guess = &self.guesses[i];
            let fed = told || chance.uniform() < guess.fed_in_silence();
            let going_in = match meal {
                _ if !fed => Influent::default(),
                Some(meal) => meal.for_guess(guess),
                None => borne(tank, guess, 1.0, liquid),
            };
            put_in(member, tank, going_in);
            let mut starter = added;
            starter.x_living *= guess.seed_activity();
            put_in(member, tank, starter);
            let warmed = Fed { kg_per_d: going_in.volume.get(), celsius: around.weather.air_c };
            self.slurry_c[i] =
                warmth::step(self.slurry_c[i], &around.shell, &around.weather, warmed, guess.warmth_k(), 1.0);
        }
        let made = move_on(&members, &mut self.tanks, &self.slurry_c, 1.0, room);
        let burned = account.and_then(|account| account.burned).map(|minutes| minutes.get());
        let wish_min = burned.or_else(|| usual_burned(ledger, day)).unwrap_or(UNTOLD_BURNED_MIN);
        let mut stores = vec![];
        for (i, made) in made.iter().enumerate() {
            let Some(out) = made else {
                self.weight[i] = LIGHTEST;
                stores.push(notice::Stored::default());
                continue;
            };
            let litres = gas::wet_litres(out.ch4_nm3 + out.co2_nm3, self.slurry_c[i], around.air_kpa);
            let guess = &self.guesses[i];
            let store = Store { holds: GasLitres::of(around.store_l), leak_per_d: guess.leak_per_d() };
            let wish = GasLitres::of(guess.burner_l_per_h() * wish_min / 60.0);
            let flow = gas::day(&store, GasLitres::of(self.held_l[i]), litres, wish);
            stores.push(notice::Stored {
                fill: store.fill(flow.held),
                burned_min: flow.burned.get() / guess.burner_l_per_h() * 60.0,
                methane: out.ch4_nm3 / (out.ch4_nm3 + out.co2_nm3).max(1e-9),
            });
            (self.held_l[i], self.made_l[i]) = (flow.held.get(), litres.get());
        }
        if meal.is_none() {
            self.doubt_sour_ones();
        }
        if let Some(account) = account {
            for (i, stored) in stores.into_iter().enumerate() {
                let seen = notice::Seen { ph: self.tanks[i].ph(), slurry_c: self.slurry_c[i], stored };
                self.weight[i] += notice::log_likelihood(account, &seen);
            }
            if let Some(told_c) = account.slurry_c {
                // The thermometer knows better than the weather does.
                self.slurry_c.iter_mut().for_each(|celsius| *celsius += BY_THERMOMETER * (told_c - *celsius));
            }
        }
        if afresh::is_belied(self, ledger, day) {
            let since = self.since;
            *self = Ensemble { since, ..Ensemble::start(seed, day, site, liquid, &[]) };
            return;
        }
        self.choose(seed, day);
    }

    /// What went before the first word: nothing for the days of rest, then what each guess's tank bore.
    fn run_in(&mut self, members: &[Member], days: i32, rest_d: i32, liquid: Litres) {
        let (celsius, mut room) = (self.slurry_c.clone(), Room::default());
        for step in 0..days / UNTOLD_STEP_D {
            for (member, (tank, guess)) in members.iter().zip(self.tanks.iter_mut().zip(&self.guesses)) {
                if step * UNTOLD_STEP_D >= rest_d {
                    put_in(member, tank, borne(tank, guess, f64::from(UNTOLD_STEP_D), liquid));
                }
            }
            move_on(members, &mut self.tanks, &celsius, f64::from(UNTOLD_STEP_D), &mut room);
        }
        self.doubt_sour_ones();
    }

    /// Where nothing is told, guesses that soured are doubted: who will yet text has a tank that works, mostly.
    fn doubt_sour_ones(&mut self) {
        for (weight, tank) in self.weight.iter_mut().zip(&self.tanks) {
            *weight = weight.min(SILENT_AND_SOUR * notice::sourness(tank.ph()));
        }
    }

    /// Draws the guesses anew, the weighty ones often, once few carry the weight. Source: systematic resampling.
    fn choose(&mut self, seed: u64, day: Day) {
        let heaviest = self.weight.iter().copied().fold(f64::MIN, f64::max);
        self.weight.iter_mut().for_each(|log| *log = (*log - heaviest).max(LIGHTEST));
        let weights = self.weights();
        if 1.0 / weights.iter().map(|weight| weight * weight).sum::<f64>() >= FEW {
            return;
        }
        let mut chance = Chance::of(seed, day.0, CHOICE);
        let (mut at, mut sum, step) = (0, weights[0], 1.0 / MEMBERS as f64);
        let start = chance.uniform() * step;
        let chosen: Vec<usize> = (0..MEMBERS)
            .map(|k| {
                while sum < start + step * k as f64 && at + 1 < MEMBERS {
                    at += 1;
                    sum += weights[at];
                }
                at
            })
            .collect();
        let mut before = usize::MAX;
        let pick = |of: &[f64]| chosen.iter().map(|i| of[*i]).collect::<Vec<f64>>();
        (self.slurry_c, self.held_l, self.made_l) = (pick(&self.slurry_c), pick(&self.held_l), pick(&self.made_l));
        self.tanks = chosen.iter().map(|i| self.tanks[*i].clone()).collect();
        self.guesses = chosen
            .iter()
            .enumerate()
            .map(|(k, &i)| {
                let first = std::mem::replace(&mut before, i) != i;
                match () {
                    () if k % ANEW_EVERY == ANEW_EVERY - 1 => self.guesses[i].near(1.0, &mut chance),
                    () if first => self.guesses[i].clone(),
                    () => self.guesses[i].near(JITTER, &mut chance),
                }
            })
            .collect();
        self.weight = vec![0.0; MEMBERS];
    }
}

fn usual_burned(ledger: &Ledger, day: Day) -> Option<f64> {
    let told: Vec<f64> = ledger.window(day, 14).filter_map(|account| Some(account.burned?.get())).collect();
    (!told.is_empty()).then(|| told.iter().sum::<f64>() / told.len() as f64)
}

/// Beyond any slurry the model takes: what is told so is brought to its bounds.
fn bounded(what: Composition) -> Composition {
    let mut bounded = [0.0; LIQUIDS];
    bounded.iter_mut().zip(what).for_each(|(to, of)| *to = of.clamp(0.0, 4000.0));
    bounded
}

/// Puts a day's feed in at once.
pub(super) fn put_in(member: &Member, tank: &mut Tank, what: Influent) {
    let volume_m3 = what.volume.get() / 1000.0;
    if volume_m3 > 0.0 {
        // More than a tankful in a day is a tankful.
        let most = member.vessel.liquid_m3;
        tank.feed(member, volume_m3.min(most), &bounded(what.composition())).expect("a feed of bounded strength");
    }
}

/// Lets time pass in every guess's tank; `None` for one that the model cannot follow.
pub(super) fn move_on(
    members: &[Member],
    tanks: &mut Vec<Tank>,
    celsius: &[f64],
    days: f64,
    room: &mut Room,
) -> Vec<Option<GasOut>> {
    let before = tanks.clone();
    let mut gas = vec![GasOut::default(); tanks.len()];
    if advance(members, tanks, celsius, days, &mut gas, room).is_ok() {
        return gas.into_iter().map(Some).collect();
    }
    *tanks = before;
    let alone = |(tank, (member, celsius)): (&mut Tank, (&Member, &f64))| {
        advance_one(member, tank, *celsius, days, None, room).ok().map(|(gas, _)| gas)
    };
    tanks.iter_mut().zip(members.iter().zip(celsius)).map(alone).collect()
}
