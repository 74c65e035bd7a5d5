//! The account of each day: what went in and what was noticed, in the trade's own quantities.
//!
//! Takes standing facts and the site; gives OLR, HRT and total solids over any window. Central estimates only: the
//! doubt in a bucket's size is the ensemble's business.

use crate::fact::Unit;
use crate::fact::{Fact, FlameLook, GasLevel, Medium, Sign, What, standing};
use crate::feeds::alkali::{Alkali, alkali};
use crate::feeds::weigh::pour;
use crate::feeds::{Feed, make_up, weigh};
use crate::site::Site;
use crate::units::{CodKg, Day, DryKg, Litres, Minutes, VsKg, WetKg};
use serde::{Deserialize, Serialize};

/// Days kept: enough for the longest window asked of it and for a start-up to be seen whole.
pub const DAYS_KEPT: i32 = 60;
/// Starters kept, the first and the last: some put back a bucket of slurry each day.
const SEEDS_MOST: usize = 24;

/// One portion that went in.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Portion {
    pub feed: Feed,
    pub wet: WetKg,
    /// The amount was not said: a usual portion was assumed.
    pub assumed: bool,
}

/// One day's account.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct DayAccount {
    pub day: Day,
    pub portions: Vec<Portion>,
    pub water: Litres,
    /// Told how much water went in, were it none.
    pub water_told: bool,
    /// Told that nothing was fed.
    pub none_told: bool,
    pub burned: Option<Minutes>,
    pub gas: Option<GasLevel>,
    pub flame: Option<FlameLook>,
    pub slurry_c: Option<f64>,
    pub ph: Option<f64>,
    pub signs: Vec<Sign>,
    /// Soda, lime or ash put in.
    pub alkali: Alkali,
}

impl DayAccount {
    pub fn wet(&self) -> WetKg {
        self.portions.iter().map(|p| p.wet).sum()
    }
    pub fn dry(&self) -> DryKg {
        self.portions.iter().map(|p| make_up(p.feed).dry(p.wet)).sum()
    }
    pub fn vs(&self) -> VsKg {
        self.portions.iter().map(|p| make_up(p.feed).volatile(p.wet)).sum()
    }
    pub fn cod(&self) -> CodKg {
        self.portions.iter().map(|p| make_up(p.feed).oxygen_demand(p.wet)).sum()
    }
    /// The store looked empty or low.
    pub fn found_little_gas(&self) -> bool {
        matches!(self.gas, Some(GasLevel::None | GasLevel::Low))
    }
    /// Fed, or told not fed: the day's load is known.
    pub fn is_told(&self) -> bool {
        self.none_told || !self.portions.is_empty()
    }
}

/// The last [`DAYS_KEPT`] days, oldest first; days without a word are left out.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Ledger {
    pub days: Vec<DayAccount>,
    /// What they say they give on a usual day.
    pub usual: Vec<Portion>,
    /// Starter put in, with the day.
    pub seeds: Vec<(Day, Feed, WetKg)>,
}

/// Means over a window of days.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Load {
    /// Organic loading rate. Units: kg VS/m3/d.
    pub olr: f64,
    /// Units: kg COD/m3/d.
    pub cod_rate: f64,
    /// Hydraulic retention time; `None` when nothing went in. Units: d.
    pub hrt_d: Option<f64>,
    /// Total solids of what went in, water included, as a share; `None` when nothing went in.
    pub ts_share: Option<f64>,
    /// Days of the window of which the load is known.
    pub told_days: u32,
}

impl Ledger {
    /// All standing facts in their days, in the measures and sizes of `site`.
    pub fn of(facts: &[Fact], site: &Site) -> Ledger {
        let mut ledger = Ledger::default();
        standing(facts).into_iter().for_each(|fact| ledger.enter(fact, site));
        ledger
    }

    fn account(&mut self, day: Day) -> &mut DayAccount {
        let at = match self.days.binary_search_by_key(&day, |d| d.day) {
            Ok(at) => at,
            Err(at) => {
                self.days.insert(at, DayAccount { day, ..DayAccount::default() });
                at
            }
        };
        &mut self.days[at]
    }

    /// Writes one standing fact into its day.
    pub fn enter(&mut self, fact: &Fact, site: &Site) {
        match &fact.what {
            // Slurry of a tank that works is no meal: it brings more of what lives than of what is eaten.
            What::Fed { feed: feed @ Feed::Digestate, amount, unit } | What::Seeded { feed, amount, unit } => {
                if let Some(wet) = amount.and_then(|amount| wet_of(*feed, amount, (*unit)?, site)) {
                    self.seeds.push((fact.day, *feed, wet));
                    if self.seeds.len() > SEEDS_MOST {
                        self.seeds.remove(1);
                    }
                }
            }
            What::Fed { feed, amount, unit } => {
                let told = amount.and_then(|amount| wet_of(*feed, amount, (*unit)?, site));
                let wet = told.unwrap_or_else(|| self.usual_portion(*feed));
                self.account(fact.day).portions.push(Portion { feed: *feed, wet, assumed: told.is_none() });
            }
            What::Usual { feed, amount, unit } => {
                if let Some(wet) = amount.and_then(|amount| wet_of(*feed, amount, (*unit)?, site)) {
                    self.usual.retain(|portion| portion.feed != *feed);
                    self.usual.push(Portion { feed: *feed, wet, assumed: false });
                }
            }
            What::Water { amount, unit } => {
                let litres = amount.zip(*unit).and_then(|(amount, unit)| litres_of(amount, unit, site));
                let account = self.account(fact.day);
                account.water += litres.unwrap_or(Litres::ZERO);
                account.water_told |= litres.is_some();
            }
            What::NotFed { days } => {
                for back in 0..(*days).min(DAYS_KEPT as u32) as i32 {
                    let account = self.account(fact.day.plus(-back));
                    account.none_told = account.portions.is_empty();
                }
            }
            What::Gas { level } => self.account(fact.day).gas = Some(*level),
            What::Burned { minutes } => {
                if let Ok(minutes) = Minutes::new(*minutes) {
                    let account = self.account(fact.day);
                    account.burned = Some(account.burned.unwrap_or_default() + minutes);
                }
            }
            What::Flame { look } => self.account(fact.day).flame = Some(*look),
            What::Temperature { celsius, of: Medium::Tank } => self.account(fact.day).slurry_c = Some(*celsius),
            What::Ph { value } => self.account(fact.day).ph = Some(*value),
            What::Sign { sign } => {
                let signs = &mut self.account(fact.day).signs;
                if !signs.contains(sign) {
                    signs.push(*sign);
                }
            }
            What::Alkali { what, amount, unit } => {
                if let Some((amount, unit)) = amount.zip(*unit) {
                    self.account(fact.day).alkali += alkali(*what, amount, unit, &site.measures());
                }
            }
            _ => {}
        }
    }

    /// What a portion of unsaid size is taken to be: the mean of its kind told before, else of all told, else 1 kg.
    fn usual_portion(&self, feed: Feed) -> WetKg {
        let mean = |of: &dyn Fn(&Portion) -> bool| {
            let told: Vec<f64> = self
                .days
                .iter()
                .flat_map(|d| &d.portions)
                .filter(|p| !p.assumed && of(p))
                .map(|p| p.wet.get())
                .collect();
            (!told.is_empty()).then(|| told.iter().sum::<f64>() / told.len() as f64)
        };
        let usual = self.usual.iter().find(|p| p.feed == feed).map(|p| p.wet.get());
        WetKg::of(mean(&|p| p.feed == feed).or(usual).or_else(|| mean(&|_| true)).unwrap_or(1.0))
    }

    /// Lets go of what is older than any window needs.
    pub fn forget_before(&mut self, today: Day) {
        self.days.retain(|account| today.since(account.day) < DAYS_KEPT);
    }

    pub fn on(&self, day: Day) -> Option<&DayAccount> {
        self.days.binary_search_by_key(&day, |d| d.day).ok().map(|at| &self.days[at])
    }

    /// The accounts of the `days` days that end with `last`, where there are any.
    pub fn window(&self, last: Day, days: i32) -> impl DoubleEndedIterator<Item = &DayAccount> {
        self.days.iter().filter(move |d| d.day <= last && last.since(d.day) < days)
    }

    /// The load over the `days` days that end with `last`. Days without a word count as the mean of those told:
    /// silence about feeding is not "nothing fed".
    pub fn load(&self, last: Day, days: i32, liquid: Litres) -> Load {
        let told: Vec<&DayAccount> = self.window(last, days).filter(|d| d.is_told()).collect();
        let n = told.len().max(1) as f64;
        let volume_m3 = liquid.get() / 1000.0;
        let (wet, dry, vs, cod, water) = told.iter().fold((0.0, 0.0, 0.0, 0.0, 0.0), |sum, d| {
            (
                sum.0 + d.wet().get(),
                sum.1 + d.dry().get(),
                sum.2 + d.vs().get(),
                sum.3 + d.cod().get(),
                sum.4 + d.water.get(),
            )
        });
        let inflow_l = wet + water;
        Load {
            olr: vs / n / volume_m3,
            cod_rate: cod / n / volume_m3,
            hrt_d: (inflow_l > 0.0).then(|| liquid.get() / (inflow_l / n)),
            ts_share: (inflow_l > 0.0).then(|| dry / inflow_l),
            told_days: told.len() as u32,
        }
    }

    /// The family's usual mix, as shares of wet mass: what was told over the last two weeks, else what they say they
    /// give, else kitchen scraps.
    pub fn mix(&self, today: Day) -> Vec<(Feed, f64)> {
        let recent: Vec<&Portion> =
            self.window(today, 14).flat_map(|d| &d.portions).filter(|p| make_up(p.feed).is_food()).collect();
        let portions = if recent.is_empty() { self.usual.iter().collect() } else { recent };
        let mut mix: Vec<(Feed, f64)> = vec![];
        for portion in portions {
            match mix.iter_mut().find(|(feed, _)| *feed == portion.feed) {
                Some((_, wet)) => *wet += portion.wet.get(),
                None => mix.push((portion.feed, portion.wet.get())),
            }
        }
        let total: f64 = mix.iter().map(|(_, wet)| wet).sum();
        if total <= 0.0 {
            return vec![(Feed::FoodWaste, 1.0)];
        }
        mix.iter().map(|(feed, wet)| (*feed, wet / total)).collect()
    }
}

/// Wet mass of an amount as told; an absurd one counts as not said.
pub fn wet_of(feed: Feed, amount: f64, unit: Unit, site: &Site) -> Option<WetKg> {
    weigh(feed, amount, unit, &site.measures()).ok().map(|weighed| weighed.wet)
}

/// Litres of water as told; an absurd amount counts as not said.
pub fn litres_of(amount: f64, unit: Unit, site: &Site) -> Option<Litres> {
    pour(amount, unit, &site.measures()).ok().map(|poured| poured.litres)
}

/// What one `unit` of a mix weighs. Units: kg.
pub fn kg_per_unit(mix: &[(Feed, f64)], unit: Unit, site: &Site) -> Option<f64> {
    let units_per_kg: f64 = mix
        .iter()
        .map(|(feed, share)| wet_of(*feed, 1.0, unit, site).map(|wet| share / wet.get().max(1e-6)))
        .sum::<Option<f64>>()?;
    (units_per_kg > 0.0).then(|| 1.0 / units_per_kg)
}
