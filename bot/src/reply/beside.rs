//! What stands beside the ration in a reply: why, what heals, what thins, the gas.
//!
//! Takes advice, belief and what was said last; gives pieces. Says nothing twice that was just said.

use super::compose::{Piece, Rank};
use super::word::Voice;
use crate::household::Household;
use crate::record::Recorded;
use crate::twins::Believed;
use bellyful_core::advice::{Advice, Reason, Verdict, remedy};
use bellyful_core::fact::{Fact, Sign, What};
use bellyful_core::ledger::DayAccount;
use bellyful_core::units::Day;
use chrono::{DateTime, Duration, Utc};

/// What to do; the same twice in a row is worded shorter.
pub(super) fn doing(
    voice: &Voice,
    household: &Household,
    advice: &Advice,
    believed: &Believed,
    for_today: bool,
    now: DateTime<Utc>,
) -> Piece {
    let (site, mix) = (&believed.so_far.site, believed.mix());
    let last = household.talk.last_advice.as_ref().filter(|last| now - last.at < STILL_IN_MIND);
    last.and_then(|last| voice.doing_again(last, advice, for_today, site, &mix))
        .unwrap_or_else(|| voice.doing(advice, for_today, site, &mix))
}

/// What was said longer ago is said in full again. Source: our choice.
const STILL_IN_MIND: Duration = Duration::hours(48);

/// The weightiest reason, unless all is as usual or the same was said last time: then the others have their turn, each
/// on one day of the week.
pub(super) fn whys(voice: &Voice, household: &Household, advice: &Advice, today: Day) -> Option<Piece> {
    // What is in the text already: the gas to let out, the joints to check.
    let worded = |reason: &&Reason| !matches!(reason, Reason::Usual | Reason::FirstGas | Reason::LeakSuspected);
    let reasons: Vec<Reason> = advice.reasons.iter().filter(worded).copied().collect();
    let first = *reasons.first()?;
    let last = household.talk.last_advice.as_ref().map(|last| &last.advice);
    let repeated = advice.verdict == Verdict::Feed
        && last.is_some_and(|last| last.verdict == advice.verdict && last.reasons.iter().find(worded) == Some(&first));
    let turn = today.0.rem_euclid(7) as usize;
    let said = if repeated { *reasons.get(turn).filter(|_| turn > 0)? } else { first };
    Some(voice.why(Rank::Why, said))
}

/// What a sour tank needs beyond rest, once rest alone has not healed it.
pub fn heals(voice: &Voice, household: &Household, believed: &Believed, advice: &Advice) -> Option<Piece> {
    if advice.hold_days == 0 || !advice.reasons.contains(&Reason::Souring) {
        return None;
    }
    let remedy = remedy(&believed.so_far, believed.today)?;
    let amount = voice.slurry(remedy.slurry_kg, &believed.so_far.site);
    let said = voice.say("remedy-slurry", &[("amount", amount.into())]);
    // What was said last time gives way to what was heard.
    let again = household.talk.last_advice.as_ref().is_some_and(|last| last.text.contains(&said));
    Some(Piece::new(if again { Rank::Why } else { Rank::Question }, said))
}

/// Whether the last advice did not give this reason.
fn is_new(recorded: &Recorded, reason: Reason) -> bool {
    let last = recorded.household.talk.last_advice.as_ref();
    last.is_none_or(|last| !last.advice.reasons.contains(&reason))
}

/// Water for a slurry that is too thick: when they tell so, and when it was not said last time.
pub(super) fn thinning(voice: &Voice, recorded: &Recorded, believed: &Believed, advice: &Advice) -> Option<Piece> {
    let thick = |fact: &Fact| matches!(fact.what, What::Sign { sign: Sign::ThickSlurry });
    let said = recorded.facts.iter().any(thick) || is_new(recorded, Reason::TooThick);
    (said && advice.hold_days == 0 && advice.reasons.contains(&Reason::TooThick))
        .then(|| voice.thinning(&believed.so_far.site))
}

/// The gas they can count on; of a new tank what to do with the first of it, once and whenever they speak of gas.
pub(super) fn gas(voice: &Voice, recorded: &Recorded, believed: &Believed, advice: &Advice) -> Option<Piece> {
    let ledger = &believed.so_far.ledger;
    let found_little = ledger.on(believed.today).is_some_and(DayAccount::found_little_gas);
    if advice.reasons.contains(&Reason::FirstGas) {
        let speaks_of_it = recorded.facts.iter().any(|fact| matches!(fact.what, What::Gas { .. } | What::Flame { .. }));
        let rank = if speaks_of_it { Rank::Question } else { Rank::Why };
        let said = !found_little && (speaks_of_it || is_new(recorded, Reason::FirstGas));
        return said.then(|| voice.why(rank, Reason::FirstGas));
    }
    // Of a tank of which no meal is known yet, nothing can be said of its gas; nor where they just found little.
    let known = !found_little && ledger.days.iter().any(|day| !day.portions.is_empty());
    known.then(|| voice.gas(advice.gas_minutes))
}
