//! Plays the sayings and prints what was not read as meant:
//! `cargo run -p bellyful-tests --example sayings -- [en] [samples|own|held] [file/of.jsonl [odd|even]] [quiet|told]`;
//! `told`: those missed when the language has to be told from the text; `odd`, `even`: of a file, every other line.

use bellyful_tests::corpus::{own, play, samples, samples_in, table};

fn main() {
    // Word lists can be changed and tried without building again.
    let lexicons = match std::env::var_os("BELLYFUL__LANG_DIR") {
        Some(folder) => {
            bellyful::text::Lexicons::with_folder(std::path::Path::new(&folder)).expect("the word lists are right")
        }
        None => bellyful::text::Lexicons::built_in(),
    };
    let words: Vec<String> = std::env::args().skip(1).collect();
    let lang = words.iter().find(|word| word.len() == 2);
    let has = |name: &str| words.iter().any(|word| word == name);
    let files: Vec<&str> = words.iter().map(String::as_str).filter(|word| word.ends_with(".jsonl")).collect();
    let mut sets = vec![("samples", samples()), ("own", own(false)), ("held", own(true))];
    let named = has("samples") || has("own") || has("held") || !files.is_empty();
    sets.retain(|(name, _)| if named { has(name) } else { *name != "held" });
    for file in files {
        let lines = samples_in(file).into_iter().zip([true, false].into_iter().cycle());
        let kept = lines.filter(|(_, odd)| if *odd { !has("even") } else { !has("odd") });
        sets.push((file, kept.map(|(saying, _)| saying).collect()));
    }
    for (name, mut sayings) in sets {
        sayings.retain(|saying| lang.is_none_or(|lang| saying.lang == *lang));
        for told in [true, false] {
            let figures = play(&lexicons, &sayings, told, |saying, verdict| {
                if told != has("told") && !has("quiet") {
                    let want = serde_json::json!({"facts": saying.expected["facts"], "asks": saying.expected["asks"], "control": saying.expected["control"], "unsure": saying.expected["unsure"]});
                    println!(
                        "{} {}\n   want {want}\n   got  {}\n   {}",
                        saying.id,
                        saying.text,
                        verdict.got,
                        verdict.harmful.as_deref().unwrap_or("")
                    );
                }
            });
            println!(
                "{}",
                table(&format!("{name}, language {}", if told { "known" } else { "told from the text" }), &figures)
            );
        }
    }
}
