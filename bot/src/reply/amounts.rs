//! Amounts as a family says them: whole, half and quarter buckets, round kilograms; never 1.87.

use super::catalog::{Catalog, Value};
use bellyful_core::fact::{Measure, Unit};

/// An amount in words, such as "2.5 kg", "half a bucket", "1 1/2 buckets".
pub fn amount(catalog: &Catalog, lang: &str, value: f64, unit: Unit) -> String {
    match unit {
        Unit::Kg if value < 0.95 => said(catalog, lang, "unit-g", round_to(value * 1000.0, 50.0), None),
        Unit::Kg => said(catalog, lang, "unit-kg", round_to(value, if value < 10.0 { 0.1 } else { 1.0 }), None),
        Unit::L => said(catalog, lang, "unit-l", round_to(value, if value < 10.0 { 0.1 } else { 1.0 }), None),
        Unit::Of(measure) => measured(catalog, lang, value, measure),
    }
}

/// The nearest amount that can be weighed or measured out without going over: for what we advise.
pub fn sayable_below(value: f64, unit: Unit) -> f64 {
    let per_unit = match unit {
        Unit::Kg | Unit::L if value < 1.0 => 10.0,
        Unit::Kg | Unit::L if value < 10.0 => 2.0,
        Unit::Kg | Unit::L => 1.0,
        Unit::Of(_) if value < 3.0 => 4.0,
        Unit::Of(_) => 1.0,
    };
    (value * per_unit + 1e-9).floor().max(0.0) / per_unit
}

fn measured(catalog: &Catalog, lang: &str, value: f64, measure: Measure) -> String {
    let id = format!("unit-{measure}");
    let quarters = (value * 4.0).round();
    if value >= 10.0 || (quarters - value * 4.0).abs() > 0.05 {
        return said(catalog, lang, &id, round_to(value, 0.1), None);
    }
    let (whole, rest) = ((quarters / 4.0).floor(), quarters as i64 % 4);
    if whole == 0.0 && rest == 2 {
        let name = catalog.say(lang, &format!("measure-{measure}"), &[]);
        return catalog.say(lang, "number-half", &[("measure", name.into()), ("unit", measure.id().into())]);
    }
    let fraction = ["", "1/4", "1/2", "3/4"][rest as usize];
    let number = match (whole, rest) {
        (_, 0) => number(catalog, lang, whole),
        (0.0, _) => fraction.to_owned(),
        _ => format!("{} {fraction}", number(catalog, lang, whole)),
    };
    said(catalog, lang, &id, value, Some(number))
}

fn said(catalog: &Catalog, lang: &str, id: &str, value: f64, written: Option<String>) -> String {
    let written = written.unwrap_or_else(|| number(catalog, lang, value));
    let count = if value <= 1.0 && value > 0.0 { 1.0 } else { value };
    catalog.say(lang, id, &[("n", Value::Text(written)), ("count", Value::Number(count))])
}

/// A number with the language's decimal mark and no needless zeros.
pub fn number(catalog: &Catalog, lang: &str, value: f64) -> String {
    // An empty sum is -0.
    let text = format!("{:.2}", value + 0.0);
    let text = text.trim_end_matches('0').trim_end_matches('.');
    text.replace('.', catalog.say(lang, "decimal-mark", &[]).trim())
}

fn round_to(value: f64, step: f64) -> f64 {
    let steps = (value / step).round();
    if step < 1.0 { steps / (1.0 / step).round() } else { steps * step }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lang::folders;

    #[test]
    fn amounts_are_said_as_people_say_them() {
        let catalog = Catalog::new(&folders(None).expect("folders")).expect("catalog");
        let check = |value, unit, said: &str| assert_eq!(amount(&catalog, "en", value, unit), said);
        check(2.0, Unit::Kg, "2 kg");
        check(2.268, Unit::Kg, "2.3 kg");
        check(0.25, Unit::Kg, "250 g");
        check(7.57, Unit::L, "7.6 L");
        check(0.5, Unit::Of(Measure::Bucket), "half a bucket");
        check(1.5, Unit::Of(Measure::Bucket), "1 1/2 buckets");
        check(0.75, Unit::Of(Measure::Cup), "3/4 cup");
        check(1.0, Unit::Of(Measure::Bucket), "1 bucket");
        check(4.0, Unit::Of(Measure::Piece), "4");
    }

    #[test]
    fn advice_is_rounded_down_never_up() {
        assert_eq!(sayable_below(2.87, Unit::Kg), 2.5);
        assert_eq!(sayable_below(0.37, Unit::Kg), 0.3);
        assert_eq!(sayable_below(1.9, Unit::Of(Measure::Bucket)), 1.75);
        assert_eq!(sayable_below(12.0, Unit::L), 12.0);
    }
}
