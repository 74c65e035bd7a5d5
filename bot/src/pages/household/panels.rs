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
use bellyful_core::feeds::Feed;
use bellyful_core::ledger::{DayAccount, Ledger};
use bellyful_core::limits::limits;
use bellyful_core::twin::{Past, slurry_over};
use bellyful_core::units::Day;
use std::collections::BTreeMap;

/// What the story is told from.
pub struct Told<'a> {
    pub household: &'a Household,
    pub facts: &'a [Fact],
    pub said: &'a [Said],
    pub believed: &'a Believed,
    pub past: &'a Past,
    /// Days on which staff were there, and what for.
    pub visits: Vec<(Day, String)>,
}

/// What was told, advised and believed, over the `days` days up to `today`.
pub fn panels(told: &Told, tongue: &Tongue, voice: &Voice, today: Day, days: i32) -> Vec<Panel> {
    // In the measures and sizes known today.
    let ledger = Ledger::of(told.facts, &told.believed.so_far.site);
    let (liquid, first) = (told.believed.so_far.liquid(), today.plus(-days));
    let all = || (0..=days).map(|back| first.plus(back));
    let bars = |value: fn(&DayAccount) -> Option<f64>| -> Vec<Bar> {
        ledger.days.iter().filter_map(|day| Some(Bar::whole(day.day, value(day)?))).collect()
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
    let slurry = slurry_over(&told.believed.so_far.site, liquid, first, today, told_c);
    let olr_most = limits().olr_unstirred_kg_vs_per_m3_d;
    let signs = standing(told.facts).into_iter().filter_map(|fact| match &fact.what {
        What::Sign { sign } => Some(Mark { day: fact.day, danger: sign.is_danger(), what: voice.sign_name(*sign) }),
        _ => None,
    });
    let visits = told.visits.iter().map(|(day, what)| Mark { day: *day, danger: false, what: what.clone() });
    let (fed, feeds) = by_feed(&ledger, first, tongue, voice);
    let [made, acidity, acids] = of_belief(tongue, told.past);
    let ph_told = dots(|day| day.ph);
    let acidity = match acidity.is_empty() {
        true => Panel::line(tongue.say("chart-ph-told"), ph_told).as_level(),
        false => acidity.and_dots(tongue.say("chart-told"), ph_told),
    };
    vec![
        Panel::bars(tongue.say("chart-fed"), fed)
            .of_parts(feeds)
            .with_steps(tongue.say("chart-advised"), advised(|advice| advice.ration_kg)),
        Panel::bars(tongue.say("chart-water"), bars(|day| (day.water.get() > 0.0).then(|| day.water.get()))),
        Panel::line(tongue.say("chart-olr"), olr).with_limit(olr_most, tongue.say("chart-most")),
        Panel::bars(tongue.say("chart-cooked"), bars(|day| day.burned.map(|minutes| minutes.get())))
            .with_steps(tongue.say("chart-gas"), advised(|advice| advice.gas_minutes)),
        made,
        Panel::line(tongue.say("chart-risk"), advised(|advice| advice.risk * 100.0)),
        Panel::band(tongue.say("chart-slurry"), slurry)
            .as_level()
            .and_dots(tongue.say("chart-told"), dots(|day| day.slurry_c)),
        acidity,
        acids,
        Panel::marks(tongue.say("chart-signs"), signs.collect()),
        Panel::marks(tongue.say("visits-head"), visits.collect()),
    ]
}

/// What is believed of the gas, the pH and the acids, day by day.
pub fn of_belief(tongue: &Tongue, days: &Past) -> [Panel; 3] {
    let left = days.left_min.iter().map(|band| Dot { day: band.day, value: band.middle }).collect();
    [
        Panel::band(tongue.say("chart-made"), days.made_min.clone()).with_steps(tongue.say("chart-left"), left),
        Panel::band(tongue.say("chart-ph"), days.ph.clone()).as_level(),
        Panel::band(tongue.say("chart-acids"), days.acids.clone()),
    ]
}

/// Feeds with a part of their own in the bars; all others share one.
const FEEDS_MOST: usize = 3;

/// What was fed on each day since `first`, by the feeds that most was given of, and what the parts are called.
fn by_feed(ledger: &Ledger, first: Day, tongue: &Tongue, voice: &Voice) -> (Vec<Bar>, Vec<String>) {
    let fed = || ledger.days.iter().filter(|day| day.day >= first && !day.portions.is_empty());
    let mut sums: BTreeMap<Feed, f64> = BTreeMap::new();
    for portion in fed().flat_map(|day| &day.portions) {
        *sums.entry(portion.feed).or_default() += portion.wet.get();
    }
    let mut feeds: Vec<(Feed, f64)> = sums.into_iter().collect();
    feeds.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
    let others = feeds.len() > FEEDS_MOST;
    feeds.truncate(FEEDS_MOST);
    let bar = |day: &DayAccount| {
        let mut parts = vec![0.0; feeds.len() + usize::from(others)];
        for portion in &day.portions {
            let at = feeds.iter().position(|(feed, _)| *feed == portion.feed).unwrap_or(feeds.len());
            parts[at] += portion.wet.get();
        }
        Bar { day: day.day, parts }
    };
    let bars = fed().map(bar).collect();
    let names = feeds.iter().map(|(feed, _)| voice.feed(*feed));
    (bars, names.chain(others.then(|| tongue.say("chart-other"))).collect())
}
