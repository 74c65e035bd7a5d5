//! What if they fed this much every day: two weeks ahead, by the same belief and rules as the answers.
//!
//! Takes belief and an amount as typed; gives a sentence. Keeps nothing.

use super::super::Tongue;
use crate::household::Situation;
use crate::reply::catalog::Value;
use crate::twins::Believed;
use bellyful_core::advice::{Advice, advise};
use bellyful_core::fact::{Fact, Unit, What};
use bellyful_core::ledger::Load;

/// How far ahead.
const DAYS: i32 = 14;
/// More than this a day is a slip of the finger. Units: kg, l.
const MOST: f64 = 500.0;
/// Numbers of facts that are only supposed: above any that is kept.
const SUPPOSED: i64 = i64::MAX / 2;

/// What two weeks of `ration` and `water` a day come to, or what is wrong with what was typed. `None`: nothing asked.
pub fn told(tongue: &Tongue, situation: &Situation, believed: &Believed, ration: &str, water: &str) -> Option<String> {
    if ration.trim().is_empty() {
        return None;
    }
    let number = |typed: &str| {
        let typed = if typed.trim().is_empty() { "0" } else { typed.trim() };
        typed.replace(',', ".").parse::<f64>().ok().filter(|n| (0.0..=MOST).contains(n))
    };
    let (Some(kg), Some(water_l)) = (number(ration), number(water)) else {
        return Some(tongue.with("if-wrong", &[("most", MOST.into())]));
    };
    let (load, advice) = ahead(situation, believed, kg, water_l);
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
    Some(tongue.with("if-told", &values))
}

/// Load over the last week and advice, after two weeks of the same feed.
fn ahead(situation: &Situation, believed: &Believed, kg: f64, water_l: f64) -> (Load, Advice) {
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
    let then = believed.today.plus(DAYS + 1);
    let twin = (1..=DAYS + 1).fold(believed.dawn.clone(), |twin, n| twin.settle(&facts, believed.today.plus(n)));
    (twin.ledger.load(then.plus(-1), 7, twin.liquid()), advise(&twin, then))
}
