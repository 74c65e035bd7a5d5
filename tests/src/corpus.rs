//! Sayings and what they mean: loading, playing and scoring them.
//!
//! Takes files of sayings; gives figures by language. Samples are JSON lines as outside judges hold them. Our own
//! sayings are written value first: a line `= reading`, then every way people say it, a line each.

use bellyful::text::reading::Reading;
use bellyful::text::{Lexicons, read};
use chrono::NaiveDate;
use serde_json::{Map, Value, json};
use std::path::{Path, PathBuf};

/// One saying with the reading it should get.
#[derive(Debug, Clone)]
pub struct Saying {
    pub id: String,
    pub lang: String,
    pub text: String,
    pub expected: Value,
}

/// The day on which all sayings are said: 2026-03-04, a Wednesday.
pub fn day_of_sayings() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 3, 4).expect("a date")
}

pub fn folder(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("corpus").join(name)
}

/// The samples, `{"id","lang","text","expect"}` a line.
pub fn samples() -> Vec<Saying> {
    lines("samples")
}

/// Sayings that nobody has looked at while making rules or lists.
pub fn blind() -> Vec<Saying> {
    lines("blind")
}

fn lines(name: &str) -> Vec<Saying> {
    files(name, "jsonl").iter().flat_map(|(_, text)| text.lines().map(sample).collect::<Vec<_>>()).collect()
}

/// Sayings in a file of the samples' form that lies anywhere, such as new ones of another writer.
pub fn samples_in(path: &str) -> Vec<Saying> {
    std::fs::read_to_string(path).expect("readable").lines().map(sample).collect()
}

fn sample(line: &str) -> Saying {
    let mut row: Value = serde_json::from_str(line).expect("samples are JSON lines");
    let text_of = |row: &Value, key: &str| row[key].as_str().expect("a text").to_owned();
    Saying {
        id: text_of(&row, "id"),
        lang: text_of(&row, "lang"),
        text: text_of(&row, "text"),
        expected: row["expect"].take(),
    }
}

/// Our own sayings. About every fifth is held back, by its words, so that new ones move none: rules are made without
/// looking at it.
pub fn own(held_back: bool) -> Vec<Saying> {
    let mut sayings = Vec::new();
    for (lang, text) in files("own", "txt") {
        let mut expected = Value::Null;
        for (number, line) in text.lines().enumerate() {
            let line = line.trim();
            if line.is_empty() || line.starts_with('#') {
                continue;
            }
            if let Some(reading) = line.strip_prefix('=') {
                expected = notation(reading.trim());
            } else {
                sayings.push(Saying {
                    id: format!("{lang}:{}", number + 1),
                    lang: lang.clone(),
                    text: line.to_owned(),
                    expected: expected.clone(),
                });
            }
        }
    }
    sayings.retain(|saying| is_held_back(&saying.text) == held_back);
    sayings
}

/// By FNV-1a of the text, which is the same on every machine.
fn is_held_back(text: &str) -> bool {
    let hash = text
        .bytes()
        .fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3));
    (hash >> 32).is_multiple_of(5)
}

fn files(name: &str, ending: &str) -> Vec<(String, String)> {
    let mut found: Vec<(String, String)> = std::fs::read_dir(folder(name))
        .expect("the corpus folder is there")
        .filter_map(|entry| {
            let path = entry.expect("readable").path();
            let lang = path.file_stem()?.to_str()?.to_owned();
            (path.extension()? == ending).then(|| (lang, std::fs::read_to_string(&path).expect("readable")))
        })
        .collect();
    found.sort();
    found
}

/// `fed -1 banana_peel 2 kg; water 0 4 l | ration; can_feed bone | stop | unit`: facts, asks, control, doubts.
/// Fields stand in the contract's order, `-` for null; a part may be empty, and the last ones left out.
pub fn notation(reading: &str) -> Value {
    let mut parts = reading.split('|').map(str::trim);
    let list = |part: Option<&str>| -> Vec<String> {
        part.unwrap_or("").split(';').map(str::trim).filter(|item| !item.is_empty()).map(str::to_owned).collect()
    };
    let facts: Vec<Value> = list(parts.next()).iter().map(|fact| fact_of(fact)).collect();
    let asks: Vec<Value> = list(parts.next())
        .iter()
        .map(|ask| match ask.split_once(' ') {
            Some(("can_feed", feed)) => json!({"ask": "can_feed", "feed": feed}),
            Some(("history", of)) => json!({"ask": "history", "of": of}),
            _ => json!({"ask": ask}),
        })
        .collect();
    let control = match parts.next().unwrap_or("") {
        "" => Value::Null,
        "language" => json!({"language": null}),
        word => match word.strip_prefix("language ") {
            Some(code) => json!({"language": code}),
            None => json!(word),
        },
    };
    let unsure: Vec<Value> = list(parts.next()).iter().map(|about| json!({"about": about})).collect();
    json!({"facts": facts, "asks": asks, "control": control, "unsure": unsure})
}

fn fact_of(fact: &str) -> Value {
    let words: Vec<&str> = fact.split_whitespace().collect();
    let fields: &[&str] = match words[0] {
        "fed" | "seeded" => &["day", "feed", "amount", "unit"],
        "usual" => &["feed", "amount", "unit"],
        "water" | "removed" => &["day", "amount", "unit"],
        "not_fed" => &["day", "days"],
        "gas" => &["day", "level"],
        "burned" => &["day", "minutes"],
        "flame" | "walls" => {
            if words[0] == "flame" {
                &["day", "look"]
            } else {
                &["look"]
            }
        }
        "temperature" => &["day", "celsius", "of"],
        "ph" => &["day", "value"],
        "pressure" => &["day", "cm_water"],
        "sign" => &["day", "sign"],
        "tank" | "store" => &["litres"],
        "started" => &["day"],
        "alkali" => &["day", "what", "amount", "unit"],
        "measure" => &["unit", "litres"],
        "people" => &["count"],
        "place" => &["name"],
        "corrected" => &["amount", "unit", "feed"],
        other => panic!("no fact `{other}`"),
    };
    let mut made = Map::new();
    made.insert("fact".into(), json!(words[0]));
    if words[0] == "place" {
        made.insert("name".into(), json!(words[1..].join(" ")));
        return Value::Object(made);
    }
    assert_eq!(words.len(), fields.len() + 1, "`{fact}` has not the fields {fields:?}");
    for (field, word) in fields.iter().zip(&words[1..]) {
        let value = match (*word, word.parse::<f64>()) {
            ("-", _) => Value::Null,
            (_, Ok(number)) => json!(number),
            (text, _) => json!(text),
        };
        made.insert((*field).into(), value);
    }
    Value::Object(made)
}

/// How one saying was read.
#[derive(Debug, Clone)]
pub struct Verdict {
    pub exact: bool,
    /// A wrong amount or feed taken as said, a danger missed or invented, a wrong stop.
    pub harmful: Option<String>,
    pub dangers_expected: usize,
    pub dangers_missed: usize,
    pub false_alarms: usize,
    pub got: Value,
}

/// Numbers within 2 %, a day left out is 0, order and the words quoted do not count.
pub fn judge(saying: &Saying, reading: &Reading) -> Verdict {
    let got = serde_json::to_value(reading).expect("readings are JSON");
    let expected = &saying.expected;
    let facts = |value: &Value| -> Vec<Value> { value["facts"].as_array().cloned().unwrap_or_default() };
    let (want, have) = (facts(expected), facts(&got));
    let same_facts = matched(&want, &have, fact_eq);
    let empty = Vec::new();
    let array = |value: &'_ Value, key: &str| -> Vec<Value> { value[key].as_array().unwrap_or(&empty).clone() };
    let same_asks = matched(&array(expected, "asks"), &array(&got, "asks"), |a, b| a == b);
    let same_control = expected["control"] == got["control"];
    let same_unsure = array(expected, "unsure").is_empty() == array(&got, "unsure").is_empty();
    let dangers = |facts: &[Value]| -> Vec<String> {
        facts
            .iter()
            .filter_map(|fact| fact["sign"].as_str())
            .filter(|sign| ["gas_leak", "fire", "unwell"].contains(sign))
            .map(str::to_owned)
            .collect()
    };
    let (danger_want, danger_have) = (dangers(&want), dangers(&have));
    let missed = danger_want.iter().filter(|sign| !danger_have.contains(sign)).count();
    let invented = danger_have.iter().filter(|sign| !danger_want.contains(sign)).count();
    let portion = |fact: &Value| {
        ["fed", "water", "seeded", "usual", "corrected", "removed", "alkali"]
            .contains(&fact["fact"].as_str().unwrap_or(""))
    };
    let wrong_amount = have
        .iter()
        .filter(|fact| portion(fact) && !fact["amount"].is_null())
        .find(|fact| !want.iter().any(|other| fact_eq(fact, other)));
    let stop = |value: &Value| value["control"] == json!("stop") || value["control"] == json!("forget");
    let harmful = if missed > 0 && danger_have.is_empty() {
        Some("danger missed".to_owned())
    } else if invented > 0 && danger_want.is_empty() {
        Some("danger invented".to_owned())
    } else if stop(expected) != stop(&got) {
        Some("wrong stop".to_owned())
    } else {
        wrong_amount.map(|fact| format!("wrong portion {fact}"))
    };
    Verdict {
        exact: same_facts && same_asks && same_control && same_unsure,
        harmful,
        dangers_expected: danger_want.len(),
        dangers_missed: missed,
        false_alarms: invented,
        got,
    }
}

fn matched(want: &[Value], have: &[Value], eq: impl Fn(&Value, &Value) -> bool) -> bool {
    let mut left: Vec<&Value> = have.iter().collect();
    want.len() == have.len()
        && want.iter().all(|one| left.iter().position(|other| eq(one, other)).map(|at| left.swap_remove(at)).is_some())
}

fn fact_eq(a: &Value, b: &Value) -> bool {
    let (Some(a), Some(b)) = (a.as_object(), b.as_object()) else { return false };
    let keys: std::collections::BTreeSet<&String> = a.keys().chain(b.keys()).collect();
    keys.into_iter().all(|key| {
        let nothing = if key == "day" { json!(0) } else { Value::Null };
        let (a, b) = (a.get(key).unwrap_or(&nothing), b.get(key).unwrap_or(&nothing));
        match (a.as_f64(), b.as_f64()) {
            (Some(a), Some(b)) => (a - b).abs() <= 0.02 * a.abs().max(b.abs()) + 1e-9,
            _ => a == b,
        }
    })
}

/// Figures of one language.
#[derive(Debug, Clone, Default)]
pub struct Figures {
    pub lang: String,
    pub sayings: usize,
    pub exact: usize,
    pub harmful: usize,
    pub dangers: usize,
    pub dangers_missed: usize,
    pub false_alarms: usize,
}

/// Plays the sayings and gives figures by language; those not read exactly are handed to `miss`.
pub fn play(
    lexicons: &Lexicons,
    sayings: &[Saying],
    with_language: bool,
    mut miss: impl FnMut(&Saying, &Verdict),
) -> Vec<Figures> {
    let mut figures: Vec<Figures> = Vec::new();
    for saying in sayings {
        let lang = with_language.then_some(saying.lang.as_str());
        let verdict = judge(saying, &read(lexicons, &saying.text, lang, day_of_sayings()));
        let at = figures.iter().position(|f| f.lang == saying.lang).unwrap_or_else(|| {
            figures.push(Figures { lang: saying.lang.clone(), ..Figures::default() });
            figures.len() - 1
        });
        let of = &mut figures[at];
        of.sayings += 1;
        of.exact += usize::from(verdict.exact);
        of.harmful += usize::from(verdict.harmful.is_some());
        of.dangers += verdict.dangers_expected;
        of.dangers_missed += verdict.dangers_missed;
        of.false_alarms += verdict.false_alarms;
        if !verdict.exact {
            miss(saying, &verdict);
        }
    }
    figures
}

/// The figures as a table.
pub fn table(title: &str, figures: &[Figures]) -> String {
    let mut out = format!("{title}\nlang  sayings  exact   %exact  harmful  dangers  missed  false alarms\n");
    for f in figures {
        out += &format!(
            "{:<5} {:>7} {:>6} {:>8.1} {:>8} {:>8} {:>7} {:>13}\n",
            f.lang,
            f.sayings,
            f.exact,
            100.0 * f.exact as f64 / f.sayings.max(1) as f64,
            f.harmful,
            f.dangers,
            f.dangers_missed,
            f.false_alarms
        );
    }
    out
}
