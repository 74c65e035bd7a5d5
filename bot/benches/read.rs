//! What reading costs: texts a second on one core over every saying of the corpora, with the language known and told
//! from the text; danger alone; and hostile texts of two sizes, whose cost a letter must not grow.
//!
//! `cargo bench -p bellyful --bench read`

use bellyful::text::{Lexicons, danger, read};
use chrono::NaiveDate;
use std::hint::black_box;
use std::path::Path;
use std::time::{Duration, Instant};

const ROUND: Duration = Duration::from_secs(2);

fn main() {
    let lexicons = Lexicons::built_in();
    let today = NaiveDate::from_ymd_opt(2026, 3, 4).expect("a date");
    let sayings = sayings();
    let count = sayings.len();
    let a_second = |read_all: &dyn Fn()| {
        read_all();
        let (start, mut rounds) = (Instant::now(), 0);
        while start.elapsed() < ROUND {
            read_all();
            rounds += 1;
        }
        (rounds * count) as f64 / start.elapsed().as_secs_f64()
    };
    let known = a_second(&|| {
        for (lang, text) in &sayings {
            black_box(read(&lexicons, text, Some(lang), today));
        }
    });
    let told = a_second(&|| {
        for (_, text) in &sayings {
            black_box(read(&lexicons, text, None, today));
        }
    });
    let alarms = a_second(&|| {
        for (_, text) in &sayings {
            black_box(danger(&lexicons, text));
        }
    });
    println!(
        "{count} sayings: language known {known:.0} texts/s, told {told:.0} texts/s, danger alone {alarms:.0} texts/s"
    );
    for (name, piece) in HOSTILE {
        let nanoseconds_a_byte = |size: usize| {
            let text = piece.repeat(size / piece.len());
            let start = Instant::now();
            black_box(read(&lexicons, &text, None, today));
            start.elapsed().as_nanos() as f64 / text.len() as f64
        };
        let (small, large) = (nanoseconds_a_byte(4 << 10), nanoseconds_a_byte(64 << 10));
        println!("{name}: {small:.0} ns a byte at 4 KiB, {large:.0} at 64 KiB");
    }
}

const HOSTILE: [(&str, &str); 9] = [
    ("digits", "9"),
    ("digits and marks", "1,1.1/2-"),
    ("combining marks", "a\u{301}\u{327}"),
    ("zero width", "k\u{200b}g\u{200d}"),
    ("bidi", "\u{202e}2 kg\u{202c}"),
    ("emoji", "🔥👍"),
    ("misspelt words", "bannanna peeels "),
    ("clauses", "2 kg rice, not 3 kg, "),
    ("one word", "abcdefghij"),
];

/// Every saying of the corpora with its language.
fn sayings() -> Vec<(String, String)> {
    let corpus = Path::new(env!("CARGO_MANIFEST_DIR")).join("../tests/corpus");
    let mut sayings = Vec::new();
    for lang in ["en", "es", "fr", "hi", "pt", "sw"] {
        let file = |name: String| std::fs::read_to_string(corpus.join(name)).expect("the corpora are there");
        for line in file(format!("own/{lang}.txt")).lines() {
            if !line.is_empty() && !line.starts_with(['=', '#']) {
                sayings.push((lang.to_owned(), line.to_owned()));
            }
        }
        for line in file(format!("samples/{lang}.jsonl")).lines() {
            let row: serde_json::Value = serde_json::from_str(line).expect("samples are JSON lines");
            sayings.push((lang.to_owned(), row["text"].as_str().expect("a text").to_owned()));
        }
    }
    sayings
}
