//! For tests: a digester of 800 litres of which this was told, up to day 100.

use crate::fact::{Fact, Unit, What};
use crate::feeds::Feed;
use crate::twin::Twin;
use crate::units::Day;

pub const TODAY: Day = Day(100);

pub fn twin(of: &[(i32, What)]) -> Twin {
    let mut twin = Twin::new(1, TODAY);
    twin.site.liquid_l = Some(800.0);
    for (day, what) in of {
        twin.ledger.enter(&fact(*day, what.clone()), &twin.site.clone());
    }
    twin
}

/// One that is followed by the ensemble from its first fact on.
pub fn followed(of: &[(i32, What)]) -> Twin {
    let facts: Vec<Fact> = of.iter().map(|(day, what)| fact(*day, what.clone())).collect();
    let first = facts.iter().map(|fact| fact.day).min().unwrap_or(TODAY);
    let mut twin = Twin::new(1, first);
    twin.site.liquid_l = Some(800.0);
    twin.settle(&facts, TODAY).so_far(&facts)
}

fn fact(day: i32, what: What) -> Fact {
    Fact { id: 0, day: Day(day), told_at: 0, what }
}

pub fn fed(feed: Feed, kg: f64) -> What {
    What::Fed { feed, amount: Some(kg), unit: Some(Unit::Kg) }
}

pub fn water(litres: f64) -> What {
    What::Water { amount: Some(litres), unit: Some(Unit::L) }
}
