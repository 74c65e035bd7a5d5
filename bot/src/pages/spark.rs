//! A month in a thumbnail: what was fed and what was cooked, a stroke a day.
//!
//! Takes the days' account; gives SVG that a page of many rows can bear.

use super::chart::escaped;
use super::tongue::{Tongue, counted};
use bellyful_core::ledger::{DayAccount, Ledger};
use bellyful_core::units::Day;
use std::fmt::Write;

const DAYS: i32 = 30;
const STEP: i32 = 4;
const TALL: f64 = 26.0;
/// What a full stroke stands for at least, so that a quiet month looks quiet.
const FED_KG: f64 = 4.0;
const COOKED_MIN: f64 = 60.0;

/// Strokes of the last month for what was fed. Empty when nothing was told.
pub fn fed(tongue: &Tongue, ledger: &Ledger, today: Day) -> String {
    spark(tongue, "spark-fed", ledger, today, FED_KG, |day| (!day.portions.is_empty()).then(|| day.wet().get()))
}

/// Strokes of the last month for what was cooked. Empty when nothing was told.
pub fn cooked(tongue: &Tongue, ledger: &Ledger, today: Day) -> String {
    spark(tongue, "spark-cooked", ledger, today, COOKED_MIN, |day| day.burned.map(|burned| burned.get()))
}

fn spark(
    tongue: &Tongue,
    title: &str,
    ledger: &Ledger,
    today: Day,
    full: f64,
    value: impl Fn(&DayAccount) -> Option<f64>,
) -> String {
    let days: Vec<(i32, f64)> = ledger
        .window(today, DAYS)
        .filter_map(|day| Some((DAYS - 1 - today.since(day.day), value(day)?)))
        .filter(|(_, value)| *value > 0.0)
        .collect();
    if days.is_empty() {
        return String::new();
    }
    let most = days.iter().map(|(_, value)| *value).fold(full, f64::max);
    let total: f64 = days.iter().map(|(_, value)| value).sum();
    let mut path = String::new();
    for (at, value) in &days {
        let _ = write!(path, "M{},{TALL}v-{:.0}", at * STEP + 2, (value / most * (TALL - 2.0)).max(1.0));
    }
    let title = tongue.with(title, &[("total", tongue.number(total, 0).into()), ("n", counted(days.len()))]);
    format!(
        "<svg class=\"spark\" viewBox=\"0 0 {} {TALL}\" role=\"img\" aria-label=\"{}\">\
         <path class=\"rule\" d=\"M0,{TALL}h{}\"/><path d=\"{path}\"/></svg>",
        DAYS * STEP,
        escaped(&title),
        DAYS * STEP
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mind::Mind;
    use bellyful_core::fact::{Fact, Unit, What};
    use bellyful_core::feeds::Feed;
    use bellyful_core::site::Site;
    use std::sync::Arc;

    #[test]
    fn each_day_told_is_a_stroke_and_days_before_the_month_are_not() {
        let mut ledger = Ledger::default();
        for (id, day) in [1, 65, 70, 99].into_iter().enumerate() {
            let what = What::Fed { feed: Feed::CattleManure, amount: Some(2.0), unit: Some(Unit::Kg) };
            ledger.enter(&Fact { id: id as i64, day: Day(day), told_at: 0, what }, &Site::default());
        }
        let tongue = Tongue::of(&Arc::new(Mind::new(None, 1).expect("sound words")), "en");
        let svg = fed(&tongue, &ledger, Day(99));
        assert_eq!(svg.matches('v').count() - svg.matches("viewBox").count() - svg.matches("svg").count(), 2, "{svg}");
        assert!(svg.contains("4 kg on 2 days"), "{svg}");
        assert_eq!(cooked(&tongue, &ledger, Day(99)), "");
    }
}
