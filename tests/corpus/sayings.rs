//! Plays the sayings and prints what was not read as meant:
//! `cargo run -p bellyful-tests --example sayings -- [en] [samples|own|held] [quiet|told]`; `told`: those missed when the
//! language has to be told from the text.

use bellyful_tests::corpus::{own, play, samples, table};

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
    let mut sets = vec![("samples", samples()), ("own", own(false)), ("held", own(true))];
    sets.retain(|(name, _)| if has("samples") || has("own") || has("held") { has(name) } else { *name != "held" });
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
