//! What to do next, and why.
//!
//! Takes the twin with today's facts in it; gives a verdict, a ration with its water, and the reasons. Knows no words.

mod belief;
mod burning;
mod causes;
mod diet;
mod outlook;
mod remedy;
mod rules;
#[cfg(test)]
mod told;

use crate::fact::GasLevel;
use crate::feeds::make_up;
use crate::ids;
use crate::twin::Twin;
use crate::units::Day;
pub use causes::{Cause, Trouble, causes, days_told};
pub use outlook::Outlook;
pub use remedy::{Remedy, remedy};
use rules::{BESIDE_BELIEF, BESIDE_RATION, Finding, RULES};
use serde::{Deserialize, Serialize};

ids!(/// The one thing to do.
    Verdict {
    /// Up to the ration.
    Feed = "feed",
    /// Below the usual.
    Less = "less",
    /// None for `hold_days`.
    Hold = "hold",
    Water = "water",
    /// Check or raise the temperature.
    Warm = "warm",
    /// Something other than feed: see the reasons.
    Check = "check",
    /// Get out.
    Danger = "danger",
});

ids!(/// Why: the same ids that the reply words explain.
    Reason {
    Usual = "usual",
    // Loading
    Overloaded = "overloaded", LoadRising = "load_rising", Underfed = "underfed", FedToday = "fed_today",
    SpreadOut = "spread_out", AfterGap = "after_gap",
    // Start-up
    NoSeed = "no_seed", SeedResting = "seed_resting", StartUp = "start_up", FirstGas = "first_gas",
    // Souring and mending
    Souring = "souring", Recovering = "recovering", SourRisk = "sour_risk",
    // What went in
    TooThick = "too_thick", TooThin = "too_thin", Grease = "grease", Citrus = "citrus", Protein = "protein",
    Salt = "salt", Inhibitor = "inhibitor", NotFood = "not_food", NeedsDung = "needs_dung",
    // Warmth
    Cold = "cold", TooHot = "too_hot", ColdComing = "cold_coming",
    // Gas and parts
    LowGas = "low_gas", LeakSuspected = "leak_suspected", GasUnused = "gas_unused", Part = "part",
    // Danger
    PeopleAtRisk = "people_at_risk",
    // Not knowing
    SizeUnknown = "size_unknown", AmountUnknown = "amount_unknown",
});

/// The decision that a reply words. Amounts are per day; see the field docs for what they count.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Advice {
    pub verdict: Verdict,
    /// Of the family's usual mix as it goes in, before water: what may still go in today if nothing was told fed
    /// today, else tomorrow's.
    pub ration_kg: f64,
    /// Water to go with the ration.
    pub water_l: f64,
    /// Days without feed, counted from the day the ration is for.
    pub hold_days: u32,
    /// Burner minutes in store and coming today.
    pub gas_minutes: f64,
    /// Chance that the digester sours within 14 days if the advice is followed.
    pub risk: f64,
    /// Most weighty first.
    pub reasons: Vec<Reason>,
}

/// The advice on `today`: the strictest of what the rules allow.
pub fn advise(twin: &Twin, today: Day) -> Advice {
    let o = Outlook::of(twin, today);
    let believed = belief::ration(&o);
    let rules: &[rules::Rule] = if believed.is_some() { &BESIDE_BELIEF } else { &RULES };
    let found = |rules: &[rules::Rule]| rules.iter().filter_map(|rule| rule(&o)).collect::<Vec<Finding>>();
    let bounds: Vec<Finding> = found(rules).into_iter().chain(believed.map(|believed| believed.finding)).collect();
    let beside = found(&BESIDE_RATION);
    let findings = || bounds.iter().chain(&beside);
    let hold_days = findings().map(|found| found.hold_days).max().unwrap_or(0);
    let most_vs = findings().filter_map(|found| found.most_vs).fold(f64::INFINITY, f64::min);
    let cap_kg = if hold_days > 0 || !most_vs.is_finite() { 0.0 } else { most_vs / o.mix_vs };
    let ration_kg = tenths(cap_kg);
    let below_usual = ration_kg < 0.8 * o.usual.get();
    let mut verdict =
        findings().map(|found| found.verdict).max_by_key(|verdict| weight(*verdict)).unwrap_or(Verdict::Feed);
    if hold_days == 0 && verdict == Verdict::Feed && below_usual {
        verdict = Verdict::Less;
    }
    let said = |findings: &[Finding]| {
        findings
            .iter()
            .filter(|found| found.reason != Reason::Usual)
            .filter(|found| found.verdict != Verdict::Feed || found.most_vs.is_none_or(|vs| vs <= most_vs + 1e-9))
            .map(|found| found.reason)
            .collect::<Vec<Reason>>()
    };
    let mut reasons = said(&bounds);
    if reasons.is_empty() {
        reasons.extend(match verdict {
            Verdict::Less => Some(Reason::SourRisk),
            _ if rules::hungry(&o) && o.week.told_days > 3 && o.usual.get() < 0.6 * ration_kg => Some(Reason::Underfed),
            _ => None,
        });
    }
    reasons.extend(said(&beside));
    if reasons.is_empty() {
        reasons.push(Reason::Usual);
    }
    let mut given = vec![];
    reasons.retain(|reason| {
        let first = !given.contains(reason);
        given.push(*reason);
        first
    });
    Advice {
        verdict,
        ration_kg,
        water_l: water_for(&o, ration_kg),
        hold_days,
        gas_minutes: gas_minutes(&o),
        risk: believed.map_or_else(|| risk(&o), |believed| thousandths(believed.risk)),
        reasons,
    }
}

/// Water that brings a ration to the thickness a tank digests best, within what keeps it from washing out.
///
/// Source: limits `slurry_ts_best_high`, `water_per_kg_food_*`, `hrt_least_temperate_d`.
pub fn water_for(o: &Outlook, ration_kg: f64) -> f64 {
    let thin_enough = ration_kg * (o.mix_ts / o.limits.slurry_ts_best_high - 1.0);
    let least = ration_kg * o.limits.water_per_kg_scarce_l;
    let most = (ration_kg * o.limits.water_per_kg_food_most_l)
        .min(o.liquid.get() / o.limits.hrt_least_temperate_d - ration_kg)
        .max(0.0);
    tenths(thin_enough.max(least).min(most))
}

/// Burner minutes in store and coming today, less what was burned today: as the ensemble has it, and before there is
/// one, what today's digestion gives; no more than they are used to find.
fn gas_minutes(o: &Outlook) -> f64 {
    let burned = o.twin.ledger.on(o.today).and_then(|day| day.burned).map_or(0.0, |minutes| minutes.get());
    let there = match &o.twin.ensemble {
        Some(ensemble) => ensemble.gas_minutes(),
        None => digested_minutes(o),
    };
    (there.min(used_to(o)) - burned).max(0.0).round()
}

/// What they find on a good day: most burn what there is, so gas believed beyond that leaks or was never made. Endless
/// where too little is told of burning, or the store was lately found well filled.
///
/// Source: our choice, held to the stores of tests/households.
fn used_to(o: &Outlook) -> f64 {
    let burned = o.burned_lately();
    let filled = o.last(2, |day| matches!(day.gas, Some(GasLevel::Good | GasLevel::Full))).is_some();
    match burned.len() {
        ..3 => f64::INFINITY,
        _ if filled => f64::INFINITY,
        _ => 1.2 * burned.iter().copied().fold(0.0, f64::max),
    }
}

/// First-order digestion of each portion of the last month, slowed by cold. Methane 0.35 m3 (0 °C) per kg COD; biogas
/// of 58 % methane; a burner of 0.3 m3/h. Source: stoichiometry; burner within the 0.2-0.45 m3/h of the handbooks.
fn digested_minutes(o: &Outlook) -> f64 {
    let warmth = o.warmth_share();
    let methane: f64 = o
        .twin
        .ledger
        .window(o.today, 30)
        .flat_map(|day| day.portions.iter().map(move |portion| (o.today.since(day.day), portion)))
        .map(|(ago, portion)| {
            let made = make_up(portion.feed);
            let k = made.hydrolysis_35c_per_d * warmth;
            let left = libm::exp(-k * f64::from(ago));
            0.35 * made.oxygen_demand(portion.wet).get() * made.biodegradable * left * (1.0 - libm::exp(-k))
        })
        .sum();
    let biogas_m3 = methane / 0.58 * (273.15 + o.slurry_c) / 273.15;
    biogas_m3 / 0.3 * 60.0
}

/// A first estimate of the chance of souring, from how near the load stands to what sours tanks.
///
/// Source: our choice, because no survey gives it: 2 % well below the limit, half at twice the limit.
fn risk(o: &Outlook) -> f64 {
    let most = o.limits.olr_unstirred_kg_vs_per_m3_d * o.warmth_share();
    let over = o.week.olr / most - 2.0;
    let risk = 1.0 / (1.0 + libm::exp(-4.0 * over));
    thousandths(risk)
}

fn thousandths(value: f64) -> f64 {
    (value * 1000.0).round() / 1000.0
}

/// The heavier verdict is the one said.
fn weight(verdict: Verdict) -> u8 {
    match verdict {
        Verdict::Feed => 0,
        Verdict::Water => 1,
        Verdict::Less => 2,
        Verdict::Warm => 3,
        Verdict::Check => 4,
        Verdict::Hold => 5,
        Verdict::Danger => 6,
    }
}

/// Rounded down to what can be weighed.
fn tenths(value: f64) -> f64 {
    ((value * 10.0 + 1e-9).floor() / 10.0).max(0.0)
}
