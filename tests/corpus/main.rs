//! The reader against sayings: the samples, our own, and our own that were held back.

use bellyful::text::Lexicons;
use bellyful_tests::corpus::{Figures, Saying, own, play, samples, table};

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
        assert!(share(&f) >= 0.90, "{} of {} exact in {}", f.exact, f.sayings, f.lang);
        assert_eq!((f.dangers_missed, f.false_alarms), (0, 0), "dangers in {}", f.lang);
    }
}

#[test]
fn own_sayings_are_read_as_meant() {
    for f in figures("own", &own(false)) {
        assert!(share(&f) >= 0.90, "{} of {} exact in {}", f.exact, f.sayings, f.lang);
        assert_eq!((f.dangers_missed, f.false_alarms), (0, 0), "dangers in {}", f.lang);
    }
}

#[test]
fn held_back_sayings_are_read_as_meant() {
    for f in figures("held back", &own(true)) {
        assert!(share(&f) >= 0.85, "{} of {} exact in {}", f.exact, f.sayings, f.lang);
        assert_eq!(f.dangers_missed, 0, "dangers in {}", f.lang);
    }
}
