//! A household's month in numbers, and what the gas burned in it stood in for.
//!
//! Takes facts and texts; gives sums, month by month. Counts only gas that was told burned: what was made and not
//! used spares nothing.

use crate::reply::segments::size;
use crate::store::Counted;
use bellyful_core::fact::{Fact, What, standing};
use bellyful_core::gas::{ATM_KPA, Burner, normal_m3};
use bellyful_core::ledger::Ledger;
use bellyful_core::site::Site;
use bellyful_core::units::{Day, Minutes};
use bellyful_core::yields::emissions::{AR6, leaked_kg};
use bellyful_core::yields::fuel::Fuel;
use chrono::{DateTime, Datelike, Duration, NaiveDate, Utc};
use std::collections::BTreeMap;

/// First day of a month.
pub type Month = NaiveDate;

pub fn month_of(date: NaiveDate) -> Month {
    date.with_day(1).unwrap_or(date)
}

/// Sums of one household in one month, or of many.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Sums {
    /// Texted or told something.
    pub heard: u32,
    /// Told of gas burned.
    pub working: u32,
    pub days_told: u32,
    pub fed_kg: f64,
    pub water_l: f64,
    pub cooked_min: f64,
    pub texts_in: u32,
    pub texts_out: u32,
    pub segments_out: u32,
}

impl std::ops::AddAssign for Sums {
    fn add_assign(&mut self, other: Sums) {
        self.heard += other.heard;
        self.working += other.working;
        self.days_told += other.days_told;
        self.fed_kg += other.fed_kg;
        self.water_l += other.water_l;
        self.cooked_min += other.cooked_min;
        self.texts_in += other.texts_in;
        self.texts_out += other.texts_out;
        self.segments_out += other.segments_out;
    }
}

/// One household's months, and the place it told.
pub fn of_household(facts: &[Fact], texts: &[Counted], since: Day) -> (BTreeMap<Month, Sums>, Option<String>) {
    let (mut site, mut ledger) = (Site::default(), Ledger::default());
    for fact in standing(facts) {
        site.learn(fact);
        if fact.day >= since && matters(&fact.what) {
            ledger.enter(fact, &site);
        }
    }
    let mut months: BTreeMap<Month, Sums> = BTreeMap::new();
    for day in ledger.days.iter().filter(|day| day.day >= since) {
        let date = NaiveDate::default() + Duration::days(i64::from(day.day.0));
        let sums = months.entry(month_of(date)).or_default();
        sums.days_told += u32::from(day.is_told());
        sums.fed_kg += day.wet().get();
        sums.water_l += day.water.get();
        sums.cooked_min += day.burned.map_or(0.0, |minutes| minutes.get());
    }
    for text in texts {
        let sums = months.entry(month_of(text.at.date_naive())).or_default();
        if text.ours {
            sums.texts_out += 1;
            sums.segments_out += size(&text.text).segments as u32;
        } else {
            sums.texts_in += 1;
        }
    }
    for sums in months.values_mut() {
        sums.heard = u32::from(sums.texts_in > 0 || sums.days_told > 0);
        sums.working = u32::from(sums.cooked_min > 0.0);
    }
    (months, site.place)
}

fn matters(what: &What) -> bool {
    matches!(
        what,
        What::Fed { .. } | What::Water { .. } | What::NotFed { .. } | What::Burned { .. } | What::Usual { .. }
    )
}

/// What a programme assumes when it counts what was spared.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Method {
    pub fuel: Fuel,
    /// Share of the fuel that does not grow again; 1 for fossil fuels.
    pub non_renewable: f64,
}

/// Methane of biogas. Source: 55 to 65 % of kitchen and yard digesters' gas (common practice, no source).
pub const METHANE: f64 = 0.58;
/// Gas at the stove. Source: our choice, because stores stand in the shade of warm countries. Units: °C.
pub const GAS_C: f64 = 25.0;
/// Methane at 0 °C and 1 atm. Units: kg/m3. Source: 16.043 g/mol over 22.414 l/mol.
const METHANE_KG_PER_M3: f64 = 0.7158;
/// Of the methane made, where leaks are not measured. Source: AMS-III.R (from memory).
pub const LEAK: f64 = 0.10;

/// What gas stood in for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spared {
    pub biogas_m3: f64,
    pub fuel_kg: f64,
    /// Less what leaked.
    pub co2e_kg: f64,
}

/// What the gas of some cooking stood in for: fuel for the same heat in the pot, its CO2e in the form of AMS-I.E, less
/// the unmeasured leak of the digester.
pub fn spared(cooked_min: f64, method: Method) -> Spared {
    let gas = Burner::USUAL.gas(Minutes::of(cooked_min));
    let methane_m3 = METHANE * normal_m3(gas, GAS_C, ATM_KPA);
    let fuel_kg = method.fuel.spared_kg(methane_m3);
    let leaked = methane_m3 * METHANE_KG_PER_M3 * LEAK / (1.0 - LEAK);
    let co2e_kg = method.fuel.reduction_kg(fuel_kg, method.non_renewable, AR6) - leaked_kg(leaked, AR6);
    Spared { biogas_m3: gas.get() / 1_000.0, fuel_kg, co2e_kg }
}

/// The day a moment falls on, as facts count days.
pub fn day_of(at: DateTime<Utc>) -> Day {
    Day(at.date_naive().signed_duration_since(NaiveDate::default()).num_days() as i32)
}

#[cfg(test)]
mod tests {
    use super::*;
    use bellyful_core::fact::Unit;
    use bellyful_core::feeds::Feed;

    fn day(y: i32, m: u32, d: u32) -> Day {
        let date = NaiveDate::from_ymd_opt(y, m, d).expect("a date");
        Day(date.signed_duration_since(NaiveDate::default()).num_days() as i32)
    }

    #[test]
    fn months_hold_their_own_days_and_what_was_taken_back_does_not_count() {
        let fed = |kg| What::Fed { feed: Feed::CattleManure, amount: Some(kg), unit: Some(Unit::Kg) };
        let facts: Vec<Fact> = [
            (day(2026, 2, 28), fed(9.0)),
            (day(2026, 3, 1), fed(2.0)),
            (day(2026, 3, 31), fed(3.0)),
            (day(2026, 3, 31), fed(100.0)),
            (day(2026, 4, 1), What::Burned { minutes: 45.0 }),
            (day(2026, 4, 2), What::Retracted { id: 3 }),
        ]
        .into_iter()
        .enumerate()
        .map(|(id, (day, what))| Fact { id: id as i64, day, told_at: id as i64, what })
        .collect();
        let at = DateTime::parse_from_rfc3339("2026-04-01T08:00:00Z").expect("a time").to_utc();
        let texts = [false, true].map(|ours| Counted { at, ours, text: "Noted.".into() });
        let (months, _) = of_household(&facts, &texts, day(2026, 3, 1));
        let march = months[&NaiveDate::from_ymd_opt(2026, 3, 1).expect("a date")];
        assert_eq!((march.fed_kg, march.days_told, march.working, march.heard), (5.0, 2, 0, 1));
        let april = months[&NaiveDate::from_ymd_opt(2026, 4, 1).expect("a date")];
        assert_eq!((april.cooked_min, april.working, april.texts_in, april.segments_out), (45.0, 1, 1, 1));
        assert_eq!(months.len(), 2);
    }

    /// Derived by hand: 60 min is 0.300 m3 at 25 °C, wet: 0.2662 m3 dry at 0 °C (vapour 3.168 kPa), 0.1544 m3 methane,
    /// 5.527 MJ, 3.040 MJ in the pot; wood at 15.6 MJ/kg and 12 %: 1.624 kg. CO2e of wood, half not renewable:
    /// 1.624 kg is 0.02533 GJ at 56 + 9.192 kg/GJ, net of 5 %: 1.569 kg; leaked 0.01228 kg CH4: 0.332 kg.
    #[test]
    fn an_hour_at_the_stove_stands_in_for_a_kilo_and_a_half_of_wood() {
        let got = spared(60.0, Method { fuel: Fuel::Wood, non_renewable: 0.5 });
        assert!((got.biogas_m3 - 0.300).abs() < 1e-9);
        assert!((got.fuel_kg - 1.624).abs() < 0.003, "{got:?}");
        assert!((got.co2e_kg - (1.569 - 0.332)).abs() < 0.004, "{got:?}");
    }
}
