//! The reader against sayings: the samples, our own, and our own that were held back.

mod reference;

use bellyful::text::{Lexicons, danger, read};
use bellyful_tests::corpus::{Figures, Saying, blind, day_of_sayings, own, play, samples, table};
use proptest::prelude::*;
use std::sync::LazyLock;

static LEXICONS: LazyLock<Lexicons> = LazyLock::new(Lexicons::built_in);

fn figures(title: &str, sayings: &[Saying]) -> Vec<Figures> {
    let lexicons = Lexicons::built_in();
    let (readable, waiting): (Vec<Saying>, Vec<Saying>) =
        sayings.iter().cloned().partition(|saying| lexicons.get(&saying.lang).is_some());
    if let Some(saying) = waiting.first() {
        println!("{} sayings wait for their language's words, {} among them", waiting.len(), saying.lang);
    }
    assert!(readable.len() * 3 >= sayings.len() * 2, "most sayings are in languages that can be read");
    let figures = play(&lexicons, &readable, true, |saying, verdict| {
        println!(
            "{} {}\n   got {}\n   {}",
            saying.id,
            saying.text,
            verdict.got,
            verdict.harmful.as_deref().unwrap_or("")
        );
    });
    println!("{}", table(title, &figures));
    figures
}

fn share(f: &Figures) -> f64 {
    f.exact as f64 / f.sayings.max(1) as f64
}

#[test]
fn samples_are_read_as_meant_and_no_danger_is_missed() {
    for f in figures("samples", &samples()) {
        assert!(share(&f) >= 0.97, "{} of {} exact in {}", f.exact, f.sayings, f.lang);
        assert_eq!((f.dangers_missed, f.false_alarms), (0, 0), "dangers in {}", f.lang);
    }
}

#[test]
fn own_sayings_are_read_as_meant() {
    for f in figures("own", &own(false)) {
        assert!(share(&f) >= 0.97, "{} of {} exact in {}", f.exact, f.sayings, f.lang);
        assert!(f.harmful * 200 <= f.sayings, "{} harmful of {} in {}", f.harmful, f.sayings, f.lang);
        assert_eq!((f.dangers_missed, f.false_alarms), (0, 0), "dangers in {}", f.lang);
    }
}

#[test]
fn held_back_sayings_are_read_as_meant() {
    for f in figures("held back", &own(true)) {
        assert!(share(&f) >= 0.93, "{} of {} exact in {}", f.exact, f.sayings, f.lang);
        assert_eq!((f.dangers_missed, f.false_alarms), (0, 0), "dangers in {}", f.lang);
    }
}

/// How texts fare that the reader has not learnt from; their texts are not printed, so that nobody learns from them.
#[test]
fn blind_sayings_fare_no_worse_than_they_did() {
    let figures = play(&LEXICONS, &blind(), true, |_, _| {});
    println!("{}", table("blind", &figures));
    for f in figures {
        assert!(share(&f) >= 0.75, "{} of {} exact in {}", f.exact, f.sayings, f.lang);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_bytes_are_read_without_panic(bytes in any::<Vec<u8>>()) {
        read(&LEXICONS, &String::from_utf8_lossy(&bytes), None, day_of_sayings());
    }

    /// Pieces of real sayings in any order, with any letters between: what random letters alone never reach.
    #[test]
    fn any_patchwork_is_read_without_panic(
        pieces in proptest::collection::vec((0usize..4_000, 0usize..40, 0usize..40, "\\PC{0,3}"), 1..6),
        lang in 0usize..6,
    ) {
        let sayings = own(false);
        let text: String = pieces
            .iter()
            .map(|(which, from, most, between)| {
                let text = &sayings[which % sayings.len()].text;
                text.chars().skip(*from).take(*most).collect::<String>() + between
            })
            .collect();
        let lang = &LEXICONS.all()[lang % LEXICONS.all().len()].code;
        read(&LEXICONS, &text, Some(lang), day_of_sayings());
    }
}

#[test]
fn hostile_texts_say_nothing() {
    for piece in ["9", "1,1.1/2-", "a\u{301}\u{327}", "\u{200b}\u{200d}", "\u{202e}\u{202c}", "½", "-", "\u{0}", "xq"]
    {
        let text = piece.repeat((64 << 10) / piece.len());
        let reading = read(&LEXICONS, &text, None, day_of_sayings());
        assert!(reading.facts.is_empty() && reading.asks.is_empty() && reading.control.is_none(), "{piece:?} was read");
        assert!(danger(&LEXICONS, &text).is_empty(), "{piece:?} raised an alarm");
    }
}
