//! Likened: foods that are named and not meant: what something is like, where it comes from, what is left of the gas.
//!
//! Takes a row whose foods are joined; gives it with such words as the ordinary ones they are.

use super::nodes::{Node, Row};
use super::notions::{Cue, Cues, Meaning};
use super::tokens::Mark;
use super::wordlist::Side;

/// "plenty of gas left over": no leftovers of a meal.
pub(super) fn gas_left_over(row: &mut Row) {
    for at in 1..row.nodes.len() {
        if row.nodes[at].has(Cue::Leftover) && row.nodes[at - 1].has(Cue::Gas) && row.nodes[at - 1].feed().is_none() {
            let cues = Cues::of(&[Cue::Other]);
            row.nodes[at].meaning = Meaning { cues, ..Default::default() };
        }
    }
}

/// "flat like a chapati", "thick as porridge", "from the juice stall": what is only likened to or comes from is no food.
pub(super) fn likened(row: &mut Row) {
    let quality = |node: &Node| node.meaning.level.is_some() || node.meaning.sign.is_some() || node.any(&QUALITIES);
    // "spoiled milk"
    let quality_of = |node: &Node| node.has(Cue::Modifier) && node.feed().is_none() && !node.has(Cue::Like);
    for at in 1..row.nodes.len() {
        if row.nodes[at].feed().is_none() {
            continue;
        }
        let little = |i: &usize| {
            row.nodes[*i].number().is_some_and(|n| n.weak) || row.nodes[*i].has(Cue::My) || quality_of(&row.nodes[*i])
        };
        let Some(lead) = (0..at).rev().find(|i| !little(i)) else { continue };
        let said = lead.checked_sub(1).map(|i| &row.nodes[i]);
        let said = |says: &dyn Fn(&Node) -> bool| said.is_some_and(says);
        // "smells like spoiled milk", its first words one phrase
        let whole =
            row.nodes[lead].has(Cue::Smell) && row.words_of(lead).last().is_some_and(|word| word.cues.has(Cue::Like));
        let likened =
            whole || row.nodes[lead].has(Cue::Like) && said(&|node| quality(node) || node.mark() == Some(Mark::Comma));
        // "oil from frying mandazi"
        const MADE: Cues = Cues::of(&[Cue::Cook, Cue::Boil]);
        let fried = row.nodes[lead].any(&MADE) && row.nodes[lead].feed().is_none();
        let since =
            said(&|node| node.has(Cue::Since)) || row.words_of(lead).next().is_some_and(|w| w.cues.has(Cue::Since));
        let likened = likened || fried && since && row.lexicon.habits.part == Side::After;
        // "from the juice stall"
        let place = row.nodes.get(at + 1).is_some_and(|next| next.has(Cue::Other) && next.meaning.feed.is_none());
        let from = row.lexicon.habits.part == Side::After && row.nodes[lead].has(Cue::Since);
        if likened || from && place {
            let cues = Cues::of(&[Cue::Other]);
            row.nodes[at].meaning = Meaning { cues, ..Default::default() };
        }
    }
}

const QUALITIES: Cues = Cues::of(&[
    Cue::Thick,
    Cue::Watery,
    Cue::Green,
    Cue::Yellow,
    Cue::Blue,
    Cue::Black,
    Cue::White,
    Cue::Weak,
    Cue::Sour,
    Cue::Smell,
    Cue::Stink,
]);
