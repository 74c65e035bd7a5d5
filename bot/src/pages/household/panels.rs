//! A household's story as panels over one time axis.
//!
//! Takes facts, texts and what is believed; gives panels. Draws what was told, advised and believed, concludes nothing.

use super::super::Tongue;
use super::super::chart::{Bar, Dot, Mark, Panel};
use crate::household::Household;
use crate::record::local_day;
use crate::reply::word::Voice;
use crate::store::Said;
use crate::twins::Believed;
use bellyful_core::advice::Advice;
use bellyful_core::fact::{Fact, What, standing};
use bellyful_core::ledger::{DayAccount, Ledger};
use bellyful_core::limits::limits;
use bellyful_core::twin::slurry_over;
use bellyful_core::units::Day;

/// What the story is told from.
pub struct Told<'a> {
    pub household: &'a Household,
    pub facts: &'a [Fact],
    pub said: &'a [Said],
    pub believed: &'a Believed,
    /// Days on which staff were there, and what for.
    pub visits: Vec<(Day, String)>,
}

/// What was told, advised and believed, over the `days` days up to `today`.
pub fn panels(told: &Told, tongue: &Tongue, voice: &Voice, today: Day, days: i32) -> Vec<Panel> {
    let ledger = ledger(told);
    let liquid = told.believed.so_far.liquid();
    let all = || (0..=days).map(|back| today.plus(back - days));
    let bars = |value: fn(&DayAccount) -> Option<f64>| -> Vec<Bar> {
        ledger.days.iter().filter_map(|day| Some(Bar { day: day.day, value: value(day)? })).collect()
    };
    let dots = |value: fn(&DayAccount) -> Option<f64>| -> Vec<Dot> {
        ledger.days.iter().filter_map(|day| Some(Dot { day: day.day, value: value(day)? })).collect()
    };
    let advised = |value: fn(&Advice) -> f64| -> Vec<Dot> {
        let of = told.said.iter().filter_map(|said| Some((said.at, said.advice.as_ref()?)));
        of.map(|(at, advice)| Dot { day: local_day(at, &told.household.time_zone), value: value(advice) }).collect()
    };
    let olr = all().map(|day| Dot { day, value: ledger.load(day, 7, liquid).olr }).collect();
    let told_c = |day: Day| ledger.on(day)?.slurry_c;
    let slurry = slurry_over(&told.believed.so_far.site, liquid, today.plus(-days), today, told_c);
    let olr_most = limits().olr_unstirred_kg_vs_per_m3_d;
    let signs = standing(told.facts).into_iter().filter_map(|fact| match &fact.what {
        What::Sign { sign } => Some(Mark { day: fact.day, danger: sign.is_danger(), what: voice.sign_name(*sign) }),
        _ => None,
    });
    let visits = told.visits.iter().map(|(day, what)| Mark { day: *day, danger: false, what: what.clone() });
    vec![
        Panel::bars(tongue.say("chart-fed"), bars(|day| (!day.portions.is_empty()).then(|| day.wet().get())))
            .with_steps(tongue.say("chart-advised"), advised(|advice| advice.ration_kg)),
        Panel::bars(tongue.say("chart-water"), bars(|day| (day.water.get() > 0.0).then(|| day.water.get()))),
        Panel::line(tongue.say("chart-olr"), olr).with_limit(olr_most, tongue.say("chart-most")),
        Panel::bars(tongue.say("chart-cooked"), bars(|day| day.burned.map(|minutes| minutes.get())))
            .with_steps(tongue.say("chart-gas"), advised(|advice| advice.gas_minutes)),
        Panel::line(tongue.say("chart-risk"), advised(|advice| advice.risk * 100.0)),
        Panel::band(tongue.say("chart-slurry"), slurry).and_dots(tongue.say("chart-told"), dots(|day| day.slurry_c)),
        Panel::dots(tongue.say("chart-ph"), dots(|day| day.ph)),
        Panel::marks(tongue.say("chart-signs"), signs.collect()),
        Panel::marks(tongue.say("visits-head"), visits.collect()),
    ]
    .into_iter()
    .filter(|panel| !panel.is_empty())
    .collect()
}

/// The account of every day of the axis, in the measures and sizes known today.
fn ledger(told: &Told) -> Ledger {
    let site = &told.believed.so_far.site;
    let mut ledger = Ledger::default();
    standing(told.facts).into_iter().for_each(|fact| ledger.enter(fact, site));
    ledger
}
