//! What a household needs of staff today: one rule, the most pressing first.
//!
//! Takes the household's row, open alarms and who took it on; gives a [`Need`]. Decides nothing about feeding.

use super::Tongue;
use crate::household::Household;
use crate::record::local_day;
use crate::store::Care;
use bellyful_core::advice::{Reason, Verdict};
use bellyful_core::ids;
use chrono::{DateTime, Duration, Utc};

/// Days without a word after which somebody should look in. Source: our choice.
const SILENT_DAYS: i32 = 10;
/// Chance of souring that calls for a visit. Source: our choice.
const RISKY: f64 = 0.15;
/// How long what was taken on or seen to counts: a working day and the night after it. Source: our choice.
pub const CARE_HOURS: i64 = 20;

ids!(/// Why a household needs somebody, the most pressing first.
    Need {
    Danger = "danger", Souring = "souring", Person = "person", Silent = "silent", Rest = "rest", Leak = "leak", StartUp = "start_up",
    Watch = "watch", Well = "well",
});

impl Need {
    /// Class in the style sheet.
    pub fn class(self) -> &'static str {
        match self {
            Need::Danger | Need::Souring => "red",
            Need::Person | Need::Rest | Need::Leak | Need::Silent => "amber",
            Need::StartUp | Need::Watch => "blue",
            Need::Well => "green",
        }
    }
    pub fn label(self, tongue: &Tongue) -> String {
        tongue.say(&format!("need-{self}"))
    }
    /// Somebody should go or call.
    pub fn is_pressing(self) -> bool {
        matches!(self, Need::Danger | Need::Souring | Need::Person | Need::Silent | Need::Rest | Need::Leak)
    }
}

/// What a household needs today, and its chance of souring. A danger stays one until somebody has seen to it.
pub fn need(household: &Household, alarms: usize, care: Option<&Care>, now: DateTime<Utc>) -> (Need, f64) {
    let today = local_day(now, &household.time_zone);
    // Who was set up today has not been silent yet.
    let heard = household.talk.last_heard.unwrap_or_else(|| local_day(household.since, &household.time_zone));
    let silent = today.since(heard) >= SILENT_DAYS;
    let danger = alarms > 0 || care.is_some_and(|care| care.need == Need::Danger.id() && care.done_at.is_none());
    let asked = household.talk.asked_at.is_some();
    if household.talk.closed {
        return (if danger { Need::Danger } else { Need::Well }, 0.0);
    }
    let Some(last) = &household.talk.last_advice else {
        let need = match () {
            () if danger => Need::Danger,
            () if asked => Need::Person,
            () if silent => Need::Silent,
            () => Need::StartUp,
        };
        return (need, 0.0);
    };
    let advice = &last.advice;
    let because = |reason: Reason| advice.reasons.contains(&reason);
    let need = match () {
        () if danger => Need::Danger,
        () if because(Reason::Souring) => Need::Souring,
        () if asked => Need::Person,
        () if silent => Need::Silent,
        () if advice.hold_days > 0 => Need::Rest,
        () if because(Reason::LeakSuspected) => Need::Leak,
        () if because(Reason::StartUp) || because(Reason::SeedResting) || because(Reason::NoSeed) => Need::StartUp,
        () if advice.risk >= RISKY || !matches!(advice.verdict, Verdict::Feed | Verdict::Less) => Need::Watch,
        () => Need::Well,
    };
    (need, advice.risk)
}

/// Who has a household's need in hand.
#[derive(Debug, Clone, PartialEq)]
pub enum Hands {
    Nobody,
    Taken(String),
    Done(String),
}

/// Who has this need in hand: what was taken for another need, or too long ago, does not count.
pub fn hands(need: Need, care: Option<&Care>, now: DateTime<Utc>) -> Hands {
    let Some(care) = care.filter(|care| care.need == need.id()) else { return Hands::Nobody };
    let fresh = |at: DateTime<Utc>| now - at < Duration::hours(CARE_HOURS);
    match care.done_at {
        Some(done) if fresh(done) => Hands::Done(care.staff.clone()),
        None if fresh(care.at) => Hands::Taken(care.staff.clone()),
        _ => Hands::Nobody,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::household::{LastAdvice, Talk};
    use bellyful_core::advice::Advice;

    fn now() -> DateTime<Utc> {
        DateTime::from_timestamp(1_780_000_000, 0).expect("in range")
    }

    fn household(reasons: Vec<Reason>, hold_days: u32, silent_days: i32) -> Household {
        let advice = Advice {
            verdict: Verdict::Feed,
            ration_kg: 2.0,
            water_l: 4.0,
            hold_days,
            gas_minutes: 30.0,
            risk: 0.02,
            reasons,
        };
        let talk = Talk {
            last_heard: Some(local_day(now(), "UTC").plus(-silent_days)),
            last_advice: Some(LastAdvice { at: now(), text: String::new(), advice }),
            ..Talk::default()
        };
        Household {
            id: 1,
            name: String::new(),
            lang: "en".into(),
            country: None,
            time_zone: "UTC".into(),
            since: now(),
            seed: 1,
            staff_id: None,
            next_fact: 1,
            talk,
        }
    }

    fn care(need: Need, done: bool) -> Care {
        Care { need: need.id().into(), staff: "Asha".into(), at: now(), done_at: done.then(now) }
    }

    #[test]
    fn danger_comes_before_souring_and_both_before_silence() {
        let check = |reasons: Vec<Reason>, hold_days, silent_days, alarms, expected| {
            assert_eq!(need(&household(reasons, hold_days, silent_days), alarms, None, now()).0, expected);
        };
        check(vec![Reason::Souring], 3, 0, 1, Need::Danger);
        check(vec![Reason::Souring], 3, 30, 0, Need::Souring);
        check(vec![Reason::Overloaded], 3, 0, 0, Need::Rest);
        check(vec![Reason::Usual], 0, 30, 0, Need::Silent);
        check(vec![Reason::Usual], 0, 0, 0, Need::Well);
        assert!(Need::Danger < Need::Souring && Need::Souring < Need::Silent);
    }

    #[test]
    fn a_household_set_up_is_silent_only_after_days_without_a_word() {
        let check = |days, expected| {
            let mut family = household(vec![], 0, 0);
            (family.talk.last_heard, family.talk.last_advice) = (None, None);
            assert_eq!(need(&family, 0, None, now() + Duration::days(days)).0, expected);
        };
        check(0, Need::StartUp);
        check(9, Need::StartUp);
        check(10, Need::Silent);
    }

    #[test]
    fn a_danger_that_somebody_took_is_one_until_it_is_seen_to() {
        let family = household(vec![Reason::Usual], 0, 0);
        assert_eq!(need(&family, 0, Some(&care(Need::Danger, false)), now()).0, Need::Danger);
        assert_eq!(need(&family, 0, Some(&care(Need::Danger, true)), now()).0, Need::Well);
        assert_eq!(need(&family, 1, Some(&care(Need::Danger, true)), now()).0, Need::Danger);
    }

    #[test]
    fn who_asked_for_a_person_waits_until_somebody_has_seen_to_them() {
        let mut family = household(vec![Reason::Usual], 0, 30);
        family.talk.asked_at = Some(now());
        assert_eq!(need(&family, 0, None, now()).0, Need::Person);
        family.talk.seen_to(Some(now() - Duration::minutes(1)));
        assert_eq!(need(&family, 0, None, now()).0, Need::Person, "that was before they asked");
        family.talk.seen_to(Some(now() + Duration::minutes(1)));
        assert_eq!(need(&family, 0, None, now()).0, Need::Silent);
    }

    #[test]
    fn what_was_taken_counts_for_its_own_need_and_for_a_day() {
        let check = |of, care: &Care, hours, expected| {
            assert_eq!(hands(of, Some(care), now() + Duration::hours(hours)), expected);
        };
        check(Need::Leak, &care(Need::Leak, false), 1, Hands::Taken("Asha".into()));
        check(Need::Leak, &care(Need::Leak, true), 1, Hands::Done("Asha".into()));
        check(Need::Leak, &care(Need::Leak, true), 24, Hands::Nobody);
        check(Need::Souring, &care(Need::Leak, false), 1, Hands::Nobody);
    }
}
