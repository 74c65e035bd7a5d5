//! A language is a folder: a seventh one, invented here, is added without a line of Rust and talked from end to end;
//! and every language reads the words that it tells families to text.

mod messages;

use bellyful::converse::Conversation;
use bellyful::lang::folders;
use bellyful::mind::Mind;
use bellyful::reply::catalog::Catalog;
use bellyful::reply::samples::longest;
use bellyful::text::reading::Control;
use bellyful::text::{Lexicons, read};
use bellyful_tests::corpus::{day_of_sayings, notation};
use serde_json::json;
use std::path::PathBuf;

const WORDS: &str = include_str!("qx/words.toml");
const REPLIES: &str = include_str!("qx/replies.ftl");

/// A folder of languages as an operator would lay it out, gone when the test ends.
struct Languages(PathBuf);

impl Languages {
    fn with_tolmi(test: &str) -> Languages {
        let folder = std::env::temp_dir().join(format!("bellyful-languages-{test}-{}", std::process::id()));
        let tolmi = folder.join("qx");
        std::fs::create_dir_all(&tolmi).expect("the temporary folder can be written");
        std::fs::write(tolmi.join("words.toml"), WORDS).expect("writable");
        std::fs::write(tolmi.join("replies.ftl"), REPLIES).expect("writable");
        Languages(folder)
    }
}

impl Drop for Languages {
    fn drop(&mut self) {
        // What is left behind in a temporary folder harms nobody.
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

#[test]
fn a_seventh_language_is_read_from_its_folder() {
    let languages = Languages::with_tolmi("read");
    let lexicons = Lexicons::with_folder(&languages.0).expect("the words are right");
    let check = |text: &str, expected: &str| {
        // Told from the text: nobody said which language it is.
        let reading = read(&lexicons, text, None, day_of_sayings());
        assert_eq!(reading.lang, "qx", "{text}");
        let got = serde_json::to_value(&reading).expect("readings are JSON");
        let want = notation(expected);
        let got_facts: Vec<String> = facts(&got);
        assert_eq!(got_facts, facts(&want), "{text}");
        assert_eq!((&got["asks"], &got["control"]), (&want["asks"], &want["control"]), "{text}");
    };
    check("metuk skrapi kilt sorv", "fed 0 food_waste 3 kg");
    check("metuk rizumi kilt 2,5 ok e vodur lurt penk", "fed 0 cooked_rice 2.5 kg; water 0 5 l");
    check("forgo metuk gobolo bakulo hofi", "fed -1 cattle_manure 0.5 bucket");
    check("dagsi sorv nenmetuk skrapi", "not_fed 0 3");
    check("gazol esk malto, flambo esk gelbo", "gas 0 low; flame 0 yellow");
    check("bolkuk mirk dulo", "burned 0 10");
    check("smelk gazoli", "sign 0 gas_leak");
    check("smelk akri nenk, flambo azuk", "flame 0 blue");
    check("tankor lurt 1.000", "tank 1000");
    check("povuk mi metuk ostrix?", "| can_feed bone");
    check("kvontu metuk?", "| ration");
    check("haltuk", "| | stop");
    // A letter may slip, as in any language.
    check("metuk skrapy kilt sorv", "fed 0 food_waste 3 kg");
}

/// Facts with numbers made alike, so that 3 and 3.0 are one.
fn facts(reading: &serde_json::Value) -> Vec<String> {
    let plain = |value: &serde_json::Value| value.as_f64().map_or_else(|| value.clone(), |number| json!(number));
    let facts = reading["facts"].as_array().expect("facts are a list");
    let one = |fact: &serde_json::Value| {
        let fields = fact.as_object().expect("a fact is an object");
        fields.iter().map(|(key, value)| format!("{key}={}", plain(value))).collect::<Vec<_>>().join(" ")
    };
    facts.iter().map(one).collect()
}

#[tokio::test]
async fn a_seventh_language_is_talked_from_end_to_end() {
    let languages = Languages::with_tolmi("talk");
    let mind = Mind::new(Some(&languages.0), 1).expect("the language is right");
    let mut talk = Conversation::new(mind).await.expect("a store in memory");
    let mut minute = 0;
    let mut said = async |text: &str| {
        minute += 1;
        let line = json!({"at": format!("2026-03-01T08:{minute:02}:00Z"), "from": "+15550177", "text": text});
        let texts = talk.line(&line.to_string()).await.expect("a text is taken");
        texts.into_iter().map(|out| out.text).collect::<Vec<_>>().join("\n")
    };
    for (text, answer) in [
        ("saluk", "Saluk! Mi Bellyful"),
        ("tankor lurt 1.000", "Auduk: tankor lurt 1000."),
        ("metuk skrapi kilt 2,5 ok e vodur lurt penk", "Auduk: skrapi kilt 2,5, vodur lurt 5."),
        ("gazol malto", "Auduk: gazol malto."),
        ("malfuk", "Malfuk: gazol malto."),
        ("povuk mi metuk ostrix?", "Nejo: ostrix di tankor nenk."),
        ("smelk gazoli", "Ekstero nunk! Flambo nenk."),
        ("haltuk", "Nulgo skribuk plu."),
        ("denovuk", "Saluk denovuk!"),
        ("helpok", "Skribuk: metuk skrapi"),
    ] {
        let answered = said(text).await;
        assert!(answered.contains(answer), "to {text:?} the bot says {answered:?}, without {answer:?}");
    }
}

#[test]
fn what_families_are_told_to_text_is_read() {
    use Control::{Help, Mute, Start, Stop, Undo, Yes};
    let lexicons = Lexicons::built_in();
    let told: [(&str, &[Control]); 10] = [
        ("hello", &[Stop, Help]),
        ("help", &[Stop, Undo]),
        ("stopped", &[Start]),
        ("forget-sure", &[Yes]),
        ("remind-silence", &[Mute]),
        ("remind-cold", &[Mute]),
        ("remind-oil", &[Mute]),
        ("remind-trap", &[Mute]),
        ("remind-yearly", &[Mute]),
        ("remind-leak", &[Mute]),
    ];
    let folders = folders(None).expect("the built-in languages");
    let catalog = Catalog::new(&folders).expect("the built-in sentences");
    for folder in &folders {
        let lang = folder.code.split('-').next().expect("a code has a first part");
        for (id, controls) in &told {
            let message = catalog.try_say(&folder.code, id, &longest()).unwrap_or_default();
            let orders: Vec<Control> = ordering_words(&message)
                .filter_map(|word| read(&lexicons, word, Some(lang), day_of_sayings()).control)
                .collect();
            for control in *controls {
                assert!(
                    orders.contains(control),
                    "{} {id}: no word in it is read as {control:?}: {message}",
                    folder.code
                );
            }
        }
    }
}

/// The words that a message tells to text: those in capitals; in letters that have none, any could be.
fn ordering_words(message: &str) -> impl Iterator<Item = &str> {
    let words = message.split(|c: char| !c.is_alphanumeric() && !('\u{900}'..='\u{97f}').contains(&c));
    words.filter(|word| word.chars().count() > 1 && !word.chars().any(char::is_lowercase) && !word.is_empty())
}

/// Phone companies and families everywhere know the English words, whatever language the talk is in.
#[test]
fn the_english_orders_are_read_in_every_language() {
    use Control::{Help, Mute, No, Start, Stop, Undo, Yes};
    let lexicons = Lexicons::built_in();
    for lexicon in lexicons.all() {
        for (word, control) in [
            ("STOP", Stop),
            ("stop", Stop),
            ("UNSUBSCRIBE", Stop),
            ("START", Start),
            ("HELP", Help),
            ("UNDO", Undo),
            ("MUTE", Mute),
            ("YES", Yes),
            ("NO", No),
        ] {
            let reading = read(&lexicons, word, Some(&lexicon.code), day_of_sayings());
            assert_eq!(reading.control, Some(control), "{word} in {}", lexicon.code);
        }
    }
}
