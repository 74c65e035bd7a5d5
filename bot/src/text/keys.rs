//! Keys of word lists that are worked out, not looked up: numbers, local units, days.
//!
//! Takes the key as it stands in `words.toml`; gives what its phrases mean, or nothing where it is no such key.

use super::notions::{DayWord, NumberWord, UnitWord};

/// `7`, `0.5` (a fraction), `article`, `x100` (scale), `+0.5` and `-0.25` (moves the number after it).
pub fn number_of(key: &str) -> Option<NumberWord> {
    if key == "article" {
        return Some(NumberWord::Article);
    }
    if let Some(scale) = key.strip_prefix('x') {
        return scale.parse().ok().map(NumberWord::Scale);
    }
    if let Some(up) = key.strip_prefix('+') {
        return up.parse().ok().map(NumberWord::Shift);
    }
    let value: f64 = key.parse().ok()?;
    if key.starts_with('-') {
        return Some(NumberWord::Shift(value));
    }
    Some(if value > 0.0 && value < 1.0 { NumberWord::Fraction(value) } else { NumberWord::Value(value) })
}

pub fn scaled(unit: UnitWord, by: f64) -> Option<UnitWord> {
    match unit {
        UnitWord::Mass(kg) => Some(UnitWord::Mass(kg * by)),
        UnitWord::Volume(l) => Some(UnitWord::Volume(l * by)),
        UnitWord::Time(min) => Some(UnitWord::Time(min * by)),
        UnitWord::Days(days) => Some(UnitWord::Days(days * by)),
        other => (by == 1.0).then_some(other),
    }
}

/// `today`, `yesterday`, `-2`, `tomorrow`, `last_night`, `either_1`, `monday`, `january`.
pub fn day_of(key: &str) -> Option<DayWord> {
    const WEEK: [&str; 7] = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];
    const YEAR: [&str; 12] = [
        "january",
        "february",
        "march",
        "april",
        "may",
        "june",
        "july",
        "august",
        "september",
        "october",
        "november",
        "december",
    ];
    let at = |list: &[&str]| list.iter().position(|name| *name == key).map(|at| at as u8);
    match key {
        "today" => Some(DayWord::Offset(0)),
        "yesterday" => Some(DayWord::Offset(-1)),
        "tomorrow" => Some(DayWord::Offset(1)),
        "last_night" => Some(DayWord::LastNight),
        _ => at(&WEEK)
            .map(DayWord::Weekday)
            .or_else(|| at(&YEAR).map(|month| DayWord::Month(month + 1)))
            .or_else(|| key.strip_prefix("either_").and_then(|days| days.parse().ok()).map(DayWord::EitherWay))
            .or_else(|| key.parse().ok().map(DayWord::Offset)),
    }
}
