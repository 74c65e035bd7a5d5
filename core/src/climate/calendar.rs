//! Days of the year.

use crate::units::Day;

/// Day of the year, 1 to 366.
pub fn day_of_year(day: Day) -> u32 {
    let (year, month, of_month) = civil(day);
    const BEFORE: [u32; 12] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];
    let leap = year.rem_euclid(4) == 0 && (year.rem_euclid(100) != 0 || year.rem_euclid(400) == 0);
    BEFORE[month as usize - 1] + of_month + u32::from(leap && month > 2)
}

/// Month, 1 to 12.
pub fn month_of(day: Day) -> u32 {
    civil(day).1
}

/// Year, month and day of the month of the Gregorian calendar.
///
/// Source: Hinnant, "chrono-compatible low-level date algorithms", `civil_from_days`.
fn civil(day: Day) -> (i64, u32, u32) {
    let days = i64::from(day.0) + 719_468;
    let era = days.div_euclid(146_097);
    let of_era = days.rem_euclid(146_097);
    let year_of_era = (of_era - of_era / 1_460 + of_era / 36_524 - of_era / 146_096) / 365;
    let of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    let month_from_march = (5 * of_year + 2) / 153;
    let of_month = of_year - (153 * month_from_march + 2) / 5 + 1;
    let month = if month_from_march < 10 { month_from_march + 3 } else { month_from_march - 9 };
    (year_of_era + era * 400 + i64::from(month <= 2), month as u32, of_month as u32)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_fall_where_the_calendar_puts_them() {
        let check = |days: i32, date: (i64, u32, u32), of_year: u32| {
            assert_eq!((civil(Day(days)), day_of_year(Day(days))), (date, of_year));
        };
        check(0, (1970, 1, 1), 1);
        check(-1, (1969, 12, 31), 365);
        check(19_782, (2024, 2, 29), 60);
        check(19_783, (2024, 3, 1), 61);
        check(20_088, (2024, 12, 31), 366);
        check(20_782, (2026, 11, 25), 329);
    }

    #[test]
    fn no_day_is_too_far() {
        for days in [i32::MIN, i32::MAX] {
            assert!((1..=366).contains(&day_of_year(Day(days))));
        }
    }
}
