//! Today: every household in order of need, each with why in one line.
//!
//! Takes what the store sees of all households; gives the page. The order is a pure rule, [`need`].

use super::access::Worker;
use super::{Broken, Pages, page};
use crate::household::Household;
use crate::record::local_day;
use crate::reply::word::Voice;
use crate::staff::name_of;
use crate::store::Seen;
use askama::Template;
use axum::Extension;
use axum::extract::State;
use axum::response::Response;
use bellyful_core::advice::{Reason, Verdict};
use chrono::{DateTime, Utc};
use std::sync::Arc;

/// Days without a word after which somebody should look in. Source: our choice.
const SILENT_DAYS: i32 = 10;
/// Chance of souring that calls for a visit. Source: our choice.
const RISKY: f64 = 0.15;

/// Why a household needs somebody, the most pressing first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Need {
    Danger,
    Souring,
    Rest,
    Leak,
    Silent,
    StartUp,
    Watch,
    None,
}

impl Need {
    fn class(self) -> &'static str {
        match self {
            Need::Danger | Need::Souring => "red",
            Need::Rest | Need::Leak | Need::Silent => "amber",
            Need::StartUp | Need::Watch => "blue",
            Need::None => "green",
        }
    }
    fn label(self) -> &'static str {
        match self {
            Need::Danger => "Danger",
            Need::Souring => "Souring",
            Need::Rest => "Resting",
            Need::Leak => "Leak?",
            Need::Silent => "Silent",
            Need::StartUp => "Starting",
            Need::Watch => "Watch",
            Need::None => "Well",
        }
    }
}

/// What a household needs today, and its chance of souring.
fn need(household: &Household, dangers: usize, now: DateTime<Utc>) -> (Need, f64) {
    let today = local_day(now, &household.time_zone);
    let silent = household.talk.last_heard.is_none_or(|day| today.since(day) >= SILENT_DAYS);
    let Some(last) = &household.talk.last_advice else {
        return (if dangers > 0 { Need::Danger } else { Need::Silent }, 0.0);
    };
    let advice = &last.advice;
    let because = |reason: Reason| advice.reasons.contains(&reason);
    let need = match () {
        () if dangers > 0 => Need::Danger,
        () if because(Reason::Souring) => Need::Souring,
        () if silent => Need::Silent,
        () if advice.hold_days > 0 => Need::Rest,
        () if because(Reason::LeakSuspected) => Need::Leak,
        () if because(Reason::StartUp) || because(Reason::SeedResting) || because(Reason::NoSeed) => Need::StartUp,
        () if advice.risk >= RISKY || !matches!(advice.verdict, Verdict::Feed | Verdict::Less) => Need::Watch,
        () => Need::None,
    };
    (need, advice.risk)
}

struct Row {
    id: i64,
    name: String,
    named: bool,
    class: &'static str,
    label: &'static str,
    why: String,
    last: String,
    risk: String,
}

#[derive(Template)]
#[template(path = "today.html")]
struct Today {
    date: String,
    worker: String,
    rows: Vec<Row>,
    pressing: usize,
}

pub async fn show(State(pages): State<Arc<Pages>>, Extension(worker): Extension<Worker>) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let mut seen: Vec<(Need, f64, Seen)> = pages
        .store
        .overview()
        .await?
        .into_iter()
        .map(|seen| {
            let (need, risk) = need(&seen.household, seen.alarms.len(), now);
            (need, risk, seen)
        })
        .collect();
    seen.sort_by(|a, b| a.0.cmp(&b.0).then(b.1.total_cmp(&a.1)).then(a.2.household.id.cmp(&b.2.household.id)));
    let pressing = seen.iter().filter(|(need, _, _)| *need <= Need::Silent).count();
    let voice = Voice::in_lang(&pages.mind.catalog, "en");
    let rows = seen.iter().map(|(need, risk, seen)| row(&voice, *need, *risk, seen, now)).collect();
    page(&Today { date: now.format("%A %-d %B %Y").to_string(), worker: worker.name, rows, pressing })
}

fn row(voice: &Voice, need: Need, risk: f64, seen: &Seen, now: DateTime<Utc>) -> Row {
    let household = &seen.household;
    let today = local_day(now, &household.time_zone);
    let ago = household.talk.last_heard.map(|day| today.since(day));
    let why = match (need, seen.alarms.first()) {
        (Need::Danger, Some((at, signs))) => {
            let signs: Vec<String> = signs.iter().map(|sign| voice.sign_name(*sign)).collect();
            format!("{} told {}, nobody has taken it", signs.join(", "), at.format("%-d %b %H:%M"))
        }
        (Need::Silent, _) => match ago {
            Some(days) => format!("No text for {days} days"),
            None => "Has not texted yet".into(),
        },
        _ => household
            .talk
            .last_advice
            .as_ref()
            .and_then(|last| last.advice.reasons.first())
            .map(|reason| voice.say(&format!("why-{reason}"), &[]))
            .unwrap_or_default(),
    };
    Row {
        id: household.id,
        name: name_of(household),
        named: !household.name.is_empty(),
        class: need.class(),
        label: need.label(),
        why,
        last: match ago {
            Some(0) => "today".into(),
            Some(1) => "yesterday".into(),
            Some(days) => format!("{days} days ago"),
            None => "never".into(),
        },
        risk: format!("{:.0}%", risk * 100.0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::household::{LastAdvice, Talk};
    use bellyful_core::advice::Advice;

    #[test]
    fn danger_comes_before_souring_and_both_before_silence() {
        let now = DateTime::from_timestamp(1_780_000_000, 0).expect("in range");
        let check = |reasons: Vec<Reason>, hold_days, silent_days: i32, dangers, expected| {
            let advice = Advice {
                verdict: Verdict::Feed,
                ration_kg: 2.0,
                water_l: 4.0,
                hold_days,
                gas_minutes: 30.0,
                risk: 0.02,
                reasons,
            };
            let heard = local_day(now, "UTC").plus(-silent_days);
            let talk = Talk {
                last_heard: Some(heard),
                last_advice: Some(LastAdvice { at: now, text: String::new(), advice }),
                ..Talk::default()
            };
            let household = Household {
                id: 1,
                name: String::new(),
                lang: "en".into(),
                country: None,
                time_zone: "UTC".into(),
                since: now,
                seed: 1,
                staff_id: None,
                next_fact: 1,
                talk,
            };
            assert_eq!(need(&household, dangers, now).0, expected);
        };
        check(vec![Reason::Souring], 3, 0, 1, Need::Danger);
        check(vec![Reason::Souring], 3, 30, 0, Need::Souring);
        check(vec![Reason::Overloaded], 3, 0, 0, Need::Rest);
        check(vec![Reason::Usual], 0, 30, 0, Need::Silent);
        check(vec![Reason::Usual], 0, 0, 0, Need::None);
    }
}
