//! What if they fed this much every day: two weeks ahead, by the same belief and rules as the answers.
//!
//! Takes belief and an amount as typed; gives a sentence and the days ahead as a chart. Keeps nothing.

use super::super::Tongue;
use super::super::chart::chart;
use super::panels::of_belief;
use crate::household::Situation;
use crate::reply::catalog::Value;
use crate::twins::Believed;
use bellyful_core::advice::{Advice, advise};
use bellyful_core::fact::{Fact, Unit, What};
use bellyful_core::ledger::Load;
use bellyful_core::twin::{Past, Twin};

/// How far ahead.
const DAYS: i32 = 14;
/// More than this a day is a slip of the finger. Units: kg, l.
const MOST: f64 = 500.0;
/// Numbers of facts that are only supposed: above any that is kept.
const SUPPOSED: i64 = i64::MAX / 2;

/// What comes of it.
pub struct Ahead {
    pub sentence: String,
    /// Empty where nothing could be worked out.
    pub chart: String,
}

/// What two weeks of `ration` and `water` a day come to, or what is wrong with what was typed. `None`: nothing asked.
pub fn told(tongue: &Tongue, situation: &Situation, believed: &Believed, ration: &str, water: &str) -> Option<Ahead> {
    if ration.trim().is_empty() {
        return None;
    }
    let number = |typed: &str| {
        let typed = if typed.trim().is_empty() { "0" } else { typed.trim() };
        typed.replace(',', ".").parse::<f64>().ok().filter(|n| (0.0..=MOST).contains(n))
    };
    let (Some(kg), Some(water_l)) = (number(ration), number(water)) else {
        return Some(Ahead { sentence: tongue.with("if-wrong", &[("most", MOST.into())]), chart: String::new() });
    };
    let facts = supposed(situation, believed, kg, water_l);
    let then = believed.today.plus(DAYS);
    let (days, twin) = Past::along(believed.dawn.clone(), &facts, then);
    let (load, advice) = ahead(twin, &facts);
    let number = |value, decimals| Value::Text(tongue.number(value, decimals));
    let hrt = load.hrt_d.map_or(tongue.say("if-no-end"), |days| format!("{days:.0} d"));
    let values = [
        ("kg", number(kg, 1)),
        ("water", number(water_l, 1)),
        ("days", f64::from(DAYS).into()),
        ("olr", number(load.olr, 2)),
        ("hrt", hrt.into()),
        ("risk", number(advice.risk * 100.0, 0)),
        ("gas", number(advice.gas_minutes, 0)),
        ("verdict", tongue.say(&format!("verdict-{}", advice.verdict)).into()),
        ("ration", number(advice.ration_kg, 1)),
    ];
    let chart = chart(tongue, "if-chart", then, DAYS, of_belief(tongue, &days).into());
    Some(Ahead { sentence: tongue.with("if-told", &values), chart })
}

/// What was told, and the same feed every day from tomorrow.
fn supposed(situation: &Situation, believed: &Believed, kg: f64, water_l: f64) -> Vec<Fact> {
    let mut facts = situation.facts.clone();
    let mut suppose = |day, what| {
        let id = SUPPOSED + facts.len() as i64;
        facts.push(Fact { id, day, told_at: i64::from(day.0) * 86_400, what });
    };
    for ahead in 1..=DAYS {
        let day = believed.today.plus(ahead);
        if kg <= 0.0 {
            suppose(day, What::NotFed { days: 1 });
            continue;
        }
        for (feed, share) in believed.mix() {
            suppose(day, What::Fed { feed, amount: Some(kg * share), unit: Some(Unit::Kg) });
        }
        suppose(day, What::Water { amount: Some(water_l), unit: Some(Unit::L) });
    }
    facts
}

/// Load over the last week and advice, when the last of the days supposed is over too.
fn ahead(twin: Twin, facts: &[Fact]) -> (Load, Advice) {
    let then = twin.day.plus(1);
    let twin = twin.settle(facts, then);
    (twin.ledger.load(then.plus(-1), 7, twin.liquid()), advise(&twin, then))
}
