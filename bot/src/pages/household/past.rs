//! What was believed over the days of the chart: folded anew from a twin that was kept before them.
//!
//! Takes the store and the facts; gives bands a day. What is worked out anew keeps nothing and is soon done, or not begun.

use super::super::{Broken, Pages};
use crate::household::Household;
use bellyful_core::fact::Fact;
use bellyful_core::twin::{Past, Twin};
use bellyful_core::units::Day;

/// Days that are folded anew for one page at the most: each costs the server about a third of a millisecond.
const FOLDED_MOST: i32 = 160;

/// What was believed on the days from `first` to `today`; nothing where that would take too long.
pub async fn past(
    pages: &Pages,
    household: &Household,
    facts: &[Fact],
    first: Day,
    today: Day,
) -> Result<Past, Broken> {
    let soon = |from: Day| today.since(from) <= FOLDED_MOST;
    let kept = pages.store.kept_before(household.id, first).await?;
    let kept = kept.and_then(|kept| Twin::from_bytes(&kept.bytes).ok());
    let begun = facts.iter().map(|fact| fact.day).min().unwrap_or(today);
    let start = match kept {
        Some(kept) if soon(kept.day) => kept,
        _ if soon(begun) => Twin::new(household.seed as u64, begun),
        _ => return Ok(Past::default()),
    };
    Ok(Past::since(start, facts, today))
}
