//! What if they fed this much every day: two weeks ahead, by the same belief and rules as the answers.
//!
//! Takes belief and an amount as typed; gives a sentence. Keeps nothing.

use crate::household::Situation;
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
pub fn told(situation: &Situation, believed: &Believed, ration: &str, water: &str) -> Option<String> {
    if ration.trim().is_empty() {
        return None;
    }
    let number = |typed: &str| {
        let typed = if typed.trim().is_empty() { "0" } else { typed.trim() };
        typed.replace(',', ".").parse::<f64>().ok().filter(|n| (0.0..=MOST).contains(n))
    };
    let (Some(kg), Some(water_l)) = (number(ration), number(water)) else {
        return Some(format!("Give kilograms and litres a day as numbers from 0 to {MOST:.0}."));
    };
    let (load, advice) = ahead(situation, believed, kg, water_l);
    Some(format!(
        "With {kg:.1} kg of the usual mix and {water_l:.1} L water every day: in {DAYS} days OLR {:.2} kg VS/m3/d, HRT {}, \
         risk of souring {:.0}%, gas {:.0} min a day. Then the bot would say: {}, up to {:.1} kg.",
        load.olr,
        load.hrt_d.map_or("without end".into(), |days| format!("{days:.0} d")),
        advice.risk * 100.0,
        advice.gas_minutes,
        advice.verdict,
        advice.ration_kg
    ))
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
