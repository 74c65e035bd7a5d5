//! What stands in the places of the sentences when their length is measured, invented.
//!
//! Gives values; both the tests and the preview for staff fill sentences with them.

use super::catalog::Value;

/// The longest that is plausible in each place of a sentence.
pub fn longest() -> Vec<(&'static str, Value)> {
    let texts = [
        ("number", "112"),
        ("name", "Wanjiku Otieno"),
        ("worker", "Asha Hassan"),
        ("amount", "2.5 kg"),
        ("kg", "12.5"),
        ("litres", "12.5"),
        ("water", "12.5"),
        ("feed", "banana peels"),
        ("first", "banana peels"),
        ("second", "leftover food"),
        ("said", "half a gorogoro"),
        ("what", "banana peels"),
        ("measure", "gorogoro"),
        ("unit", "bucket"),
        ("item", "banana peels"),
        ("value", "112"),
        ("id", "112"),
        ("celsius", "32"),
        ("cm", "120"),
        ("olr", "2.75"),
        ("risk", "12"),
        ("left", "12"),
        ("ration", "2.5"),
        ("of", "gas"),
        ("need", "danger"),
        ("look", "yellow"),
        ("level", "none"),
        ("sign", "sour_smell"),
        ("verdict", "water"),
        ("signs", "sour_smell"),
        ("list", "12, 112, 7"),
        ("languages", "English, Español, Francais, Hindi, Portugues, Kiswahili"),
        ("reasons", "cold, sour smell"),
        ("reply", "Feed 2 kg and 4 L water."),
        ("text", "fed 2 kg peels"),
    ];
    let texts = texts.into_iter().map(|(place, said)| (place, said.into()));
    texts.chain(["n", "count", "days", "minutes", "ago"].map(|place| (place, 120.0.into()))).collect()
}
