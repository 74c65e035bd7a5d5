//! What the bot asks next: one short question, nothing twice, what matters most for the advice first.

use crate::household::{Household, Pending, Topic};
use bellyful_core::fact::{Fact, Measure, Unit, What};
use bellyful_core::twin::{Twin, WORKS_AFTER_D};
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};

/// Measures whose size differs from home to home and matters.
const SIZED: [Measure; 11] = [
    Measure::Bucket,
    Measure::Basin,
    Measure::Jerrycan,
    Measure::Tin,
    Measure::Pot,
    Measure::Jug,
    Measure::Sack,
    Measure::Bag,
    Measure::Basket,
    Measure::Crate,
    Measure::Wheelbarrow,
];

/// The question to put into this reply, if any. `answered`: this text answered the one before, so that the talk goes
/// on; otherwise one question a day is enough.
pub fn next_question(
    household: &Household,
    twin: &Twin,
    facts: &[Fact],
    today: Day,
    answered: bool,
    now: DateTime<Utc>,
) -> Option<Pending> {
    let talk = &household.talk;
    if !answered && talk.asked.values().any(|day| *day == today) {
        return None;
    }
    let pending = |topic, measure| Pending { measure, ..Pending::about(topic, now) };
    let unsized_measure = facts.iter().find_map(|fact| match fact.what {
        What::Fed { unit: Some(Unit::Of(measure)), .. } | What::Water { unit: Some(Unit::Of(measure)), .. }
            if SIZED.contains(&measure)
                && !twin.site.measures_l.contains_key(&measure)
                && !talk.measures_asked.contains(&measure) =>
        {
            Some(measure)
        }
        _ => None,
    });
    let site = &twin.site;
    let fresh = !talk.asked.contains_key(&Topic::Tank) && site.tank_l.is_none();
    if fresh {
        return Some(pending(Topic::Tank, None));
    }
    if let Some(measure) = unsized_measure {
        return Some(pending(Topic::Bucket, Some(measure)));
    }
    let seedable = twin.ledger.seeds.is_empty() && site.started.is_some_and(|day| today.since(day) < WORKS_AFTER_D);
    [
        (Topic::Started, site.started.is_none()),
        (Topic::Seed, seedable),
        (Topic::Place, site.place.is_none() && site.normals.is_none()),
        (Topic::Usual, twin.ledger.days.iter().all(|day| day.portions.is_empty()) && twin.ledger.usual.is_empty()),
        (Topic::Store, site.store_l.is_none()),
        (Topic::Walls, site.walls.is_none()),
    ]
    .into_iter()
    .find(|(topic, unknown)| *unknown && !talk.asked.contains_key(topic))
    .map(|(topic, _)| pending(topic, None))
}
