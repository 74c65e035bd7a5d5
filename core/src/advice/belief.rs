//! The ration that belief gives: the largest whose chance of souring stays small, found by running the ensemble ahead.
//!
//! Takes the outlook; gives a finding like the rules do, and the chance. `None` while nothing is followed yet.

use super::outlook::Outlook;
use super::rules::Finding;
use super::{Reason, Verdict, water_for};
use crate::ledger::{DAYS_KEPT, DayAccount};
use crate::twin::Ration;
use crate::units::{Day, Litres, WetKg};

/// Most chance of souring within the days ahead that a ration may have, in a cold tank and in a warm one. In the warm what
/// goes wrong is smelt within days, and mends within days of rest; in the cold it comes slowly, is told late and stays.
/// Source: our choice, set by the households of tests/households.
const RISK_COLD: f64 = 0.025;
const RISK_WARM: f64 = 0.12;
/// Where a tank counts as cold and as warm, as [`Outlook::warmth_share`]: 24 and 32 degC. Source: the same.
const COLD_SHARE: f64 = 0.42;
const WARM_SHARE: f64 = 0.85;
/// A tank held yesterday is fed again only below this, so that advice does not flicker.
const RISK_AFTER_HOLD: f64 = 0.03;
/// Rations tried, as shares of the cap, largest first.
const SHARES: [f64; 18] =
    [1.0, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.62, 0.54, 0.46, 0.39, 0.33, 0.27, 0.22, 0.18, 0.14, 0.11, 0.08];
/// Share of the days of following on which they must have told something, for the twin to be sure.
/// Source: our choice: families forget one to two days in ten.
const SURE_SHARE: f64 = 0.7;
/// A week's load over the cap, from which it is said. Source: our choice, as wide as measures are rough.
const OVER: f64 = 1.1;
/// The least that is worth carrying. Units: kg VS/m3/d. Source: our choice: a handful of scraps.
const LEAST: f64 = 0.1;
/// Share of a load that soured it which is tried again, and how fast what lives in a warm tank outgrows it. Source: our
/// choice, set by the households of tests/households.
const LESSON: f64 = 0.75;
const GROWS_PER_D: f64 = 0.02;
/// Days after which a sour sign is of another souring. Source: our choice.
const EPISODE_D: i32 = 7;
/// Chance of souring unfed above which a tank is called souring.
const UNFED_MOST: f64 = 0.4;
/// The same for a seed that is not yet through its first days, which is left to work.
const RESTING_MOST: f64 = 0.03;
/// Believed pH below which a tank is called souring.
const SOURING_PH: f64 = 6.2;

/// What belief says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Believed {
    pub finding: Finding,
    /// Chance of souring if it is followed.
    pub risk: f64,
}

pub fn ration(o: &Outlook) -> Option<Believed> {
    let ensemble = o.twin.ensemble.as_ref()?;
    let followed = o.twin.ledger.days.iter().filter(|day| day.is_told()).count() as f64;
    let sure = followed >= SURE_SHARE * o.limits.followed_before_sure_d && o.age_d.is_none_or(|age| age >= 90);
    let cap = if sure { o.limits.olr_sure_kg_vs_per_m3_d } else { o.limits.olr_unstirred_kg_vs_per_m3_d };
    let over = o.week.olr > OVER * cap;
    let stepped = cap.min(o.limits.olr_first_kg_vs_per_m3_d.max(next_step(o)));
    let taught = lesson(o);
    let cap = stepped.min(taught);
    let today = o.twin.ledger.on(o.today);
    let fed = today.map(Ration::of).unwrap_or_default();
    let told_today = today.is_some_and(|account| !account.portions.is_empty());
    let risk_of = |vs: f64, enough: f64| {
        let later = of_mix(o, vs);
        let first = if told_today || vs == 0.0 { fed.clone() } else { fed.with(&later) };
        o.twin.forecast(&first, &later, enough).map_or(1.0, |forecast| forecast.risk)
    };
    let held_before = today.is_some_and(DayAccount::is_told) && fed.feeds.is_empty();
    let most = if held_before { risk_most(o).min(RISK_AFTER_HOLD) } else { risk_most(o) };
    // Guesses that sour even unfed speak half of what is inside, half of what to beware of.
    let unfed = risk_of(0.0, 1.0);
    let sours = unfed > UNFED_MOST || ensemble.ph() < SOURING_PH;
    let most = most + 0.5 * unfed;
    let age_d = o.age_d.map_or(f64::INFINITY, f64::from);
    let rests = age_d < o.limits.ramp_step_d && unfed > RESTING_MOST;
    if sours || rests {
        let finding = Finding {
            reason: if age_d < 2.0 * o.limits.ramp_step_d { Reason::SeedResting } else { Reason::Souring },
            verdict: Verdict::Hold,
            most_vs: Some(0.0),
            hold_days: o.limits.hold_sour_least_d as u32,
        };
        return Some(Believed { finding, risk: unfed });
    }
    let vs_of = |share: f64| o.vs_at((cap * share).max(LEAST.min(cap)));
    let tried = |share: f64| (share, risk_of(vs_of(share), most));
    let found = largest(tried, most);
    let (share, risk) = found.unwrap_or_else(|| tried(SHARES[SHARES.len() - 1]));
    let reason = match () {
        () if over => Reason::Overloaded,
        () if share >= 1.0 && taught < stepped => Reason::Recovering,
        () if share >= 1.0 => Reason::Usual,
        () => why_less(o),
    };
    // Where even the least is a risk, the least keeps its helpers alive: rest is for tanks that sour.
    // Who has fed nothing yet cannot feed less.
    let enough = found.is_some() || o.usual.get() == 0.0 && !told_today;
    let verdict = if enough && !over { Verdict::Feed } else { Verdict::Less };
    let finding = Finding { reason, verdict, most_vs: Some(vs_of(share)), hold_days: 0 };
    Some(Believed { finding, risk })
}

fn risk_most(o: &Outlook) -> f64 {
    let warm = ((o.warmth_share() - COLD_SHARE) / (WARM_SHARE - COLD_SHARE)).clamp(0.0, 1.0);
    RISK_COLD + (RISK_WARM - RISK_COLD) * warm
}

/// The largest share whose risk stays small: the cap if it may be, else one of the next two, where it is on most days,
/// else by halving, since more is never safer.
fn largest(tried: impl Fn(f64) -> (f64, f64), most: f64) -> Option<(f64, f64)> {
    let safe = |share: f64| Some(tried(share)).filter(|(_, risk)| *risk <= most);
    let [cap, next, after, rest @ ..] = SHARES;
    if let Some(found) = safe(cap) {
        return Some(found);
    }
    if let Some(found) = safe(after) {
        return safe(next).or(Some(found));
    }
    let (mut low, mut high, mut found) = (0, rest.len(), None);
    while low < high {
        let middle = (low + high) / 2;
        match safe(rest[middle]) {
            Some(this) => (found, high) = (Some(this), middle),
            None => low = middle + 1,
        }
    }
    found
}

/// A step above the second heaviest day of the last two weeks; after souring, of the days since. The heaviest alone may
/// be a slip, or the very load that it did not bear. Of few days, above their mean.
/// Units: kg VS/m3/d. Source: our choice, set by the households of tests/households; the risk does the rest.
fn next_step(o: &Outlook) -> f64 {
    let days = o.told_sour(14).unwrap_or(14);
    let mut told: Vec<f64> =
        o.twin.ledger.window(o.today, days).filter(|day| day.is_told()).map(|day| day.vs().get()).collect();
    told.sort_by(|a, b| b.total_cmp(a));
    let borne = if told.len() > 3 { told[1] } else { told.iter().sum::<f64>() / told.len().max(1) as f64 };
    1.2 * borne / (o.liquid.get() / 1000.0) + 0.04
}

/// What the load that last soured it teaches: less than that, until what lives inside has had time to grow.
/// Units: kg VS/m3/d. Source: our choice, set by the households of tests/households.
fn lesson(o: &Outlook) -> f64 {
    let sour: Vec<Day> =
        o.twin.ledger.window(o.today, DAYS_KEPT).filter(|day| o.is_sour(day)).map(|day| day.day).collect();
    let begins = |at: usize| at == 0 || sour[at].since(sour[at - 1]) > EPISODE_D;
    let taught = |day: Day| {
        let borne = o.twin.ledger.load(day.plus(-1), EPISODE_D, o.liquid).olr;
        let grown = libm::pow(1.0 + GROWS_PER_D * o.warmth_share(), f64::from(o.today.since(day)));
        (borne > 0.0).then_some(LESSON * borne * grown)
    };
    (0..sour.len()).filter(|at| begins(*at)).filter_map(|at| taught(sour[at])).fold(f64::INFINITY, f64::min)
}

/// An amount of the usual mix, with its water.
fn of_mix(o: &Outlook, vs: f64) -> Ration {
    let kg = vs / o.mix_vs;
    Ration {
        feeds: o.mix.iter().map(|(feed, share)| (*feed, WetKg::of(kg * share))).collect(),
        water: Litres::of(water_for(o, kg)),
    }
}

/// Why it gets less than the cap.
fn why_less(o: &Outlook) -> Reason {
    match () {
        () if o.told_sour(14).is_some() => Reason::Recovering,
        () if o.age_d.is_some_and(|age| age < 60) => Reason::StartUp,
        () if o.slurry_c < o.limits.temperature_fair_c => Reason::Cold,
        () if o.week.olr > 1.5 * o.month.olr && o.month.told_days > 14 => Reason::LoadRising,
        () => Reason::SourRisk,
    }
}
