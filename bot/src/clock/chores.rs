//! What keeps a digester well beside feeding: one small chore a week at most, the most overdue first.

use super::{SILENT_DAYS, at_hour, must_wait, start};
use crate::household::{Chore, Decision, Due, Household, Situation};
use crate::mind::Mind;
use crate::record::local_day;
use crate::twins::Believed;
use bellyful_core::site::Site;
use bellyful_core::units::Day;
use chrono::{DateTime, Duration, Utc};

/// Days between two chores told. Source: our choice; a text costs money and patience.
const EVERY_DAYS: i32 = 7;
/// The hour they are told at. Source: our choice.
const HOUR: u32 = 10;

/// Every how many days each is due. Source: common practice, no source.
const CHORES: [(Chore, i32); 4] = [(Chore::Trap, 14), (Chore::Oil, 14), (Chore::Leak, 30), (Chore::Yearly, 365)];

/// Told once a cold season. Source: our choice.
const COLD_AGAIN_DAYS: i32 = 150;
/// Air that gets colder by this much within a month, to below `COLD_C`, calls for a warning.
/// Source: common practice, no source; below 20 degC mean the digestion slows.
const COLDER_BY_C: f64 = 2.0;
const COLD_C: f64 = 20.0;

/// When a new family is first told of a chore.
pub fn first_chore_at(household: &Household, today: Day) -> DateTime<Utc> {
    at_hour(today.plus(2 * EVERY_DAYS), HOUR, &household.time_zone)
}

pub fn remind(
    mind: &Mind,
    situation: &Situation,
    household: &Household,
    at: DateTime<Utc>,
    now: DateTime<Utc>,
) -> Decision {
    let mut household = household.clone();
    if household.talk.muted || situation.phones.is_empty() {
        // Their next text sets it again, should they want it.
        household.talk.chores_set = false;
        return Decision { household: Some(household), ..Decision::default() };
    }
    let again = |at| vec![(Due::Chore, Some(at))];
    if let Some(later) = must_wait(&household, at, now) {
        return Decision { due: again(later), ..Decision::default() };
    }
    let today = local_day(now, &household.time_zone);
    let next = at_hour(today.plus(EVERY_DAYS), HOUR, &household.time_zone);
    let silent = household.talk.last_heard.is_some_and(|day| today.since(day) > SILENT_DAYS);
    if silent {
        return Decision { due: again(next), ..Decision::default() };
    }
    let site = Believed::on(situation, &household, today).so_far.site;
    let Some(chore) = most_overdue(&household, &site, today) else {
        return Decision { due: again(next), ..Decision::default() };
    };
    household.talk.chores.insert(chore, today);
    let decision = start(mind, situation, household, Due::Chore, at, now, |voice, _| {
        vec![voice.must(&format!("remind-{chore}"), &[])]
    });
    Decision { due: again(next), ..decision }
}

fn most_overdue(household: &Household, site: &Site, today: Day) -> Option<Chore> {
    let told = |chore: Chore| household.talk.chores.get(&chore).copied();
    let since = local_day(household.since, &household.time_zone);
    let cold = told(Chore::Cold).is_none_or(|day| today.since(day) >= COLD_AGAIN_DAYS)
        && site.normals.as_ref().is_some_and(|normals| cold_is_coming(&normals.air_c, today));
    if cold {
        return Some(Chore::Cold);
    }
    // Of a digester that makes nothing yet there is nothing to tend.
    let young = site.started.is_none_or(|day| today.since(day) < 30) && today.since(since) < 30;
    let overdue = |(chore, every): (Chore, i32)| {
        let last = told(chore).unwrap_or(since);
        (chore, today.since(last) - every)
    };
    let due = CHORES.map(overdue).into_iter().filter(|(_, days)| *days >= 0 && !young);
    due.max_by_key(|(_, days)| *days).map(|(chore, _)| chore)
}

/// Whether the month to come is markedly colder than this one, and cold.
fn cold_is_coming(air_c: &[f64; 12], today: Day) -> bool {
    let month = |day: Day| {
        let date = chrono::NaiveDate::default() + Duration::days(i64::from(day.0));
        chrono::Datelike::month0(&date) as usize
    };
    let (now, soon) = (air_c[month(today)], air_c[month(today.plus(30))]);
    soon < COLD_C && now - soon >= COLDER_BY_C
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cold_comes_where_the_year_has_a_winter() {
        let check = |air_c: [f64; 12], date: &str, expected: bool| {
            let date: chrono::NaiveDate = date.parse().expect("a date");
            let day = Day(date.signed_duration_since(chrono::NaiveDate::default()).num_days() as i32);
            assert_eq!(cold_is_coming(&air_c, day), expected, "{date}");
        };
        let winter = [8.0, 9.0, 12.0, 16.0, 20.0, 25.0, 27.0, 27.0, 23.0, 18.0, 13.0, 9.0];
        check(winter, "2026-09-10", true);
        check(winter, "2026-04-10", false);
        check(winter, "2026-07-10", false);
        check([23.0; 12], "2026-09-10", false);
    }
}
