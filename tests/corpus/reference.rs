//! Number words and units as outside references write them, read in a sentence of each language.

use super::LEXICONS;
use bellyful::text::read;
use bellyful_tests::corpus::day_of_sayings;
use serde_json::Value;

/// By language: food fed, water, cooking and days without feeding, with `{}` for the amount.
const SENTENCES: [(&str, [&str; 4]); 6] = [
    ("en", ["fed {} of scraps", "water {}", "cooked {}", "not fed for {}"]),
    ("es", ["eché {} de sobras", "agua {}", "cociné {}", "hace {} que no le echo"]),
    ("fr", ["mis {} de restes", "eau {}", "cuisiné {}", "pas nourri depuis {}"]),
    ("pt", ["pus {} de restos", "água {}", "cozinhei {}", "não alimentei há {}"]),
    ("sw", ["nimeweka mabaki {}", "maji {}", "nimepika {}", "sijalisha kwa {}"]),
    ("hi", ["{} जूठन डाला", "{} पानी", "{} पकाया", "{} से कुछ नहीं डाला"]),
];

/// Units of the reference: what is told in them, and what one is worth in kg, litres, minutes or days.
/// Source: NIST SP 811 (2008) appendix B; a month counts 30 days, our choice.
const UNITS: [(&str, usize, f64); 14] = [
    ("mass-kilogram", 0, 1.0),
    ("mass-gram", 0, 0.001),
    ("mass-pound", 0, 0.453_592),
    ("mass-ounce", 0, 0.028_35),
    ("volume-liter", 1, 1.0),
    ("volume-milliliter", 1, 0.001),
    ("volume-cubic-meter", 1, 1000.0),
    ("volume-gallon", 1, 3.785),
    ("volume-gallon-imperial", 1, 4.546),
    ("duration-minute", 2, 1.0),
    ("duration-hour", 2, 60.0),
    ("duration-day", 3, 1.0),
    ("duration-week", 3, 7.0),
    ("duration-month", 3, 30.0),
];

/// Written as the reference has it, but meant otherwise by who texts, or by nobody.
const OTHERWISE: [(&str, &str); 17] = [
    ("fr", "livre"), // half a kilo, as at every market
    ("fr", "livres"),
    ("fr", "m."), // could be anything
    ("es", "m."),
    ("es", "sem."),
    ("es", "d"),     // is "de"
    ("pt", "galão"), // a can of any size
    ("pt", "galões"),
    ("pt", "gal. imp."), // nobody counts in these
    ("en", "Imp. gallon"),
    ("en", "Imp. gallons"),
    ("en", "gal Imp."),
    ("es", "gal imp."),
    ("sw", "gal Imp."),
    ("sw", "mita {0} ya ujazo"), // the number stands inside the unit
    ("sw", "mita {0} za ujazo"),
    ("sw", "m³"),
];

fn table(text: &str) -> impl Iterator<Item = Vec<&str>> {
    text.lines().skip(1).map(|line| line.split(',').collect())
}

fn sentence(lang: &str, of: usize, amount: &str) -> String {
    let (_, sentences) = SENTENCES.iter().find(|(code, _)| *code == lang).expect("a language of ours");
    sentences[of].replace("{}", amount)
}

/// The one number that is told, and whether anything is in doubt.
fn told(lang: &str, text: &str) -> Option<f64> {
    let reading = serde_json::to_value(read(&LEXICONS, text, Some(lang), day_of_sayings())).expect("a reading is JSON");
    let facts = reading["facts"].as_array()?;
    let number = |fact: &Value| ["amount", "minutes", "days"].iter().find_map(|key| fact[key].as_f64());
    match facts.as_slice() {
        [fact] if reading["unsure"].as_array()?.is_empty() => number(fact),
        _ => None,
    }
}

#[test]
fn number_words_are_worth_what_the_references_say() {
    let mut wrong = vec![];
    for row in table(include_str!("../reference/number_words.csv")) {
        let (lang, value) = (row[0], row[1].parse::<f64>().expect("a number"));
        let unit = if lang == "hi" {
            "किलो"
        } else if lang == "sw" {
            "kilo"
        } else {
            "kg"
        };
        for word in row[2].split('|') {
            let amount = if lang == "sw" { format!("{unit} {word}") } else { format!("{word} {unit}") };
            let text = sentence(lang, 0, &amount);
            let got = told(lang, &text);
            if got != Some(value) {
                wrong.push(format!("{text}: {got:?}, not {value}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn units_are_worth_what_the_references_say() {
    let mut wrong = vec![];
    for row in table(include_str!("../reference/units.csv")) {
        let (unit, lang) = (row[0], row[1]);
        let &(_, of, worth) = UNITS.iter().find(|(id, ..)| *id == unit).expect("a unit of ours");
        let count = if worth < 0.01 { 500.0 } else { 3.0 };
        let otherwise = |pattern: &str| {
            let plain = pattern.replace(['\u{a0}', '\u{202f}'], " ");
            OTHERWISE.iter().any(|(code, said)| {
                *code == lang
                    && (plain == *said || plain == format!("{{0}} {said}") || plain == format!("{said} {{0}}"))
            })
        };
        for pattern in row[3].split('|').filter(|pattern| !otherwise(pattern)) {
            let text = sentence(lang, of, &pattern.replace("{0}", &count.to_string()));
            let got = told(lang, &text);
            if got.is_none_or(|got| (got - count * worth).abs() > 0.02 * count * worth) {
                wrong.push(format!("{text}: {got:?}, not {}", count * worth));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
