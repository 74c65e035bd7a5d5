//! Conversations played end to end on a simulated clock: each file under `talks/` is one, with what the bot said.
//!
//! A line `2026-03-01 07:30 +15550100: text` is a text (the date may be left out: same day; the number too: same
//! number), `setup {json}` sets the number up, `staff NAME +1555...` adds a field worker, `join +1555... +1555...` a
//! second phone, `wait 2026-03-09 08:00` moves the clock. What the bot says stands below, indented. `expect ...` lines
//! hold the last advice to what it must be, whatever the words. `BELLYFUL_BLESS=1 cargo test -p bellyful-tests
//! --test conversations` writes the answers anew: read them before you keep them.

use bellyful::converse::{Conversation, LineOut};
use bellyful::mind::Mind;
use bellyful::reply::compose::Room;
use serde_json::{Value, json};
use std::fmt::Write;
use std::path::{Path, PathBuf};

#[tokio::test]
async fn every_conversation_goes_as_written() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("conversations/talks");
    let mut files: Vec<PathBuf> = std::fs::read_dir(&folder)
        .expect("the talks are there")
        .map(|entry| entry.expect("readable").path())
        .filter(|path| path.extension().is_some_and(|ext| ext == "talk"))
        .collect();
    files.sort();
    assert!(files.len() >= 25, "at least 25 conversations, not {}", files.len());
    let bless = std::env::var_os("BELLYFUL_BLESS").is_some();
    let mut wrong = vec![];
    for file in &files {
        let written = std::fs::read_to_string(file).expect("readable");
        let name = file.file_name().expect("named").to_string_lossy().into_owned();
        match play(&written).await {
            Ok(played) if played == written => {}
            Ok(played) if bless => std::fs::write(file, played).expect("writable"),
            Ok(played) => wrong.push(format!("{name}: the bot now says\n{}", difference(&written, &played))),
            Err(why) => wrong.push(format!("{name}: {why}")),
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n\n"));
}

/// The same file with what the bot says now.
async fn play(written: &str) -> Result<String, String> {
    let mind = Mind::new(None, 1).map_err(|e| e.to_string())?;
    let mut talk = Conversation::new(mind).await.map_err(|e| e.to_string())?;
    let mut played = String::new();
    let (mut date, mut time, mut number) = (String::new(), "00:00".to_owned(), String::new());
    let mut met: std::collections::BTreeSet<String> = Default::default();
    let mut last: Vec<LineOut> = vec![];
    for (at_line, line) in written.lines().enumerate() {
        let place = format!("line {}: {line}", at_line + 1);
        if line.starts_with("    ") {
            continue;
        }
        writeln!(played, "{line}").expect("a String takes it");
        let line = line.trim_end();
        if line.is_empty() || line.starts_with('#') {
            continue;
        }
        if let Some(expectation) = line.strip_prefix("expect ") {
            expect(expectation, &last).map_err(|why| format!("{place}: {why}"))?;
            continue;
        }
        let (stamp, rest) = stamped(line, &mut date, &mut time);
        let at = format!("{date}T{time}:00Z");
        let words: Vec<&str> = rest.splitn(3, ' ').collect();
        let input = match words[..] {
            ["wait"] | ["wait", ..] => json!({"at": at}),
            ["setup", from, object] => {
                number = from.to_owned();
                met.insert(number.clone());
                let setup: Value = serde_json::from_str(object).map_err(|e| format!("{place}: {e}"))?;
                json!({"at": at, "from": from, "setup": setup})
            }
            ["staff", name, from] => json!({"at": at, "from": from, "staff": name}),
            ["join", from, household] => {
                met.insert(from.to_owned());
                json!({"at": at, "from": from, "household": household})
            }
            _ => {
                let text = match rest.split_once(": ") {
                    Some((from, text)) if from.starts_with('+') => {
                        number = from.to_owned();
                        text
                    }
                    _ => rest,
                };
                json!({"at": at, "from": number, "text": text})
            }
        };
        if stamp.is_none() && date.is_empty() {
            return Err(format!("{place}: give a date first"));
        }
        let texts = talk.line(&input.to_string()).await.map_err(|e| format!("{place}: {e}"))?;
        for text in &texts {
            let advice = text.advice.as_ref().map_or("-".to_owned(), |a| {
                format!("{} {} kg {} l hold {} gas {}", a.verdict, a.ration_kg, a.water_l, a.hold_days, a.gas_minutes)
            });
            writeln!(played, "    {} {} [{}; {advice}]", text.to, text.kind, text.segments).expect("a String takes it");
            writeln!(played, "        {}", text.text).expect("a String takes it");
            let first = met.insert(text.to.clone()) || text.text.contains("Text STOP to end");
            let room = if first || text.kind.id() == "staff" { Room::FIRST } else { Room::USUAL };
            if !room.fits(&text.text) {
                return Err(format!("{place}: {} segments: {}", text.segments, text.text));
            }
        }
        if !texts.is_empty() || input.get("text").is_some() {
            last = texts;
        }
    }
    Ok(played)
}

/// Takes a leading date and time off a line.
fn stamped<'a>(line: &'a str, date: &mut String, time: &mut String) -> (Option<()>, &'a str) {
    let mut rest = line;
    let mut found = None;
    if rest.len() > 10 && rest.as_bytes()[4] == b'-' && rest.as_bytes()[7] == b'-' && rest.is_char_boundary(10) {
        *date = rest[..10].to_owned();
        rest = rest[10..].trim_start();
        found = Some(());
    }
    if rest.len() >= 5 && rest.as_bytes()[2] == b':' && rest.as_bytes()[..2].iter().all(u8::is_ascii_digit) {
        *time = rest[..5].to_owned();
        rest = rest[5..].trim_start();
        found = Some(());
    }
    (found, rest)
}

/// `verdict hold|less`, `ration <= 2.5`, `ration > 0`, `water >= 3`, `hold >= 2`, `reason souring`, `kind alarm`,
/// `says WORDS`, `not says WORDS`, `silent`, `asks nothing`.
fn expect(expectation: &str, last: &[LineOut]) -> Result<(), String> {
    let words: Vec<&str> = expectation.split_whitespace().collect();
    if expectation == "silent" {
        return if last.is_empty() { Ok(()) } else { Err(format!("the bot said {:?}", last[0].text)) };
    }
    let reply = last.first().ok_or("the bot said nothing")?;
    let holds = |truth: bool| if truth { Ok(()) } else { Err(format!("it was {reply:?}")) };
    let any_says = |words: &str| last.iter().any(|text| text.text.to_lowercase().contains(&words.to_lowercase()));
    if let Some(said) = expectation.strip_prefix("says ") {
        return holds(any_says(said));
    }
    if let Some(said) = expectation.strip_prefix("not says ") {
        return holds(!any_says(said));
    }
    if expectation == "asks nothing" {
        return holds(!reply.text.contains('?'));
    }
    if let ["kind", kinds] = words[..] {
        return holds(kinds.split('|').any(|kind| kind == reply.kind.id()));
    }
    let advice = reply.advice.as_ref().ok_or("no advice came with it")?;
    match words[..] {
        ["verdict", verdicts] => holds(verdicts.split('|').any(|verdict| verdict == advice.verdict.id())),
        ["reason", reasons] => {
            holds(reasons.split('|').any(|reason| advice.reasons.iter().any(|given| given.id() == reason)))
        }
        [what, how, number] => {
            let value = match what {
                "ration" => advice.ration_kg,
                "water" => advice.water_l,
                "hold" => f64::from(advice.hold_days),
                "gas" => advice.gas_minutes,
                "risk" => advice.risk,
                other => return Err(format!("`{other}` is nothing that can be expected")),
            };
            let number: f64 = number.parse().map_err(|_| format!("`{number}` is no number"))?;
            holds(match how {
                "<=" => value <= number,
                ">=" => value >= number,
                "<" => value < number,
                ">" => value > number,
                _ => return Err(format!("`{how}` is no comparison")),
            })
        }
        _ => Err("this expectation cannot be read".into()),
    }
}

/// The first lines that differ.
fn difference(written: &str, played: &str) -> String {
    let pairs = written.lines().zip(played.lines()).enumerate();
    let mut differing = pairs.filter(|(_, (was, is))| was != is).take(3);
    let shown: Vec<String> =
        differing.by_ref().map(|(at, (was, is))| format!("line {}:\n- {was}\n+ {is}", at + 1)).collect();
    if shown.is_empty() { "more or fewer lines than before".into() } else { shown.join("\n") }
}
