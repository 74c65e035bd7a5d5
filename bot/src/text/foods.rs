//! Foods: parts and wholes made one feed: "peel of banana", "goat droppings", "leftover rice", "rice water".
//!
//! Takes a row of nodes; gives it with each such pair as the one node of the feed it names.

use super::dishes::{beast, bones, dung, from_a_digester, leftover, made_of, same, soapy, starch_water};
use super::likened;
use super::nodes::{Kind, Node, Row};
use super::notions::Cue;
use super::tokens::Mark;
use super::wordlist::Side;
use bellyful_core::feeds::Feed;

pub fn join(row: &mut Row) {
    let mut at = 0;
    while at < row.nodes.len() {
        if !(peel(row, at)
            || dung(row, at)
            || bones(row, at)
            || same(row, at)
            || made_of(row, at)
            || starch_water(row, at)
            || soapy(row, at)
            || leftover(row, at)
            || from_a_digester(row, at))
        {
            at += 1;
        }
    }
    and_of(row);
    beasts_of_the_dung(row);
    likened::gas_left_over(row);
    likened::likened(row);
}

/// "maganda ya viazi na ya muhogo", "estiércol de vaca 2 kg y de cerdo 1 kg": "and of that" is of the same part.
fn and_of(row: &mut Row) {
    if row.lexicon.habits.part == Side::After {
        of_that_too(row);
        return;
    }
    for at in 2..row.nodes.len() {
        let and = row.nodes[at - 2].has(Cue::And) && row.nodes[at - 2].kind == Kind::Phrase;
        if !(and || row.nodes[at - 2].mark() == Some(Mark::Comma)) || !is_of(row, at - 1) {
            continue;
        }
        let part = |part: Cue| part_named(row, at, at - 2, part);
        let feed = if part(Cue::Peel) {
            peel_of(&row.nodes[at])
        } else if part(Cue::Dung) {
            beast(&row.nodes[at])
        } else {
            None
        };
        if let Some(feed) = feed {
            becomes(row, at, feed);
        }
    }
}

/// "cow and goat dung", "10 kg cow + 2 kg chicken droppings": the dung is of both beasts.
fn beasts_of_the_dung(row: &mut Row) {
    if row.lexicon.habits.part == Side::After && row.lexicon.habits.negation == Side::After {
        return;
    }
    for at in 2..row.nodes.len() {
        let dung = |node: &Node| node.feed().is_some_and(|feed| feed.id().ends_with("manure"));
        if !(dung(&row.nodes[at]) && row.words_of(at).any(|word| word.cues.has(Cue::Dung))) {
            continue;
        }
        let counted = |node: &Node| node.quantity().is_some_and(|q| q.unit.is_some());
        let mut before = at - 1;
        if counted(&row.nodes[before]) && before > 0 {
            before -= 1;
        }
        let joined =
            row.nodes[before].has(Cue::And) || matches!(row.nodes[before].mark(), Some(Mark::Comma | Mark::Plus));
        let Some(first) = before.checked_sub(1).filter(|_| joined) else { continue };
        let own = before + 1 < at;
        let measured = first > 0 && counted(&row.nodes[first - 1]);
        if let Some(feed) = beast(&row.nodes[first]).filter(|_| own == measured || measured) {
            becomes(row, first, feed);
        }
    }
}

/// "bakri ka gobar 1 kg aur gaay ka 3 kg", "kele ke chilke 2 kg, aam ke 1 kg": the part is said once.
fn of_that_too(row: &mut Row) {
    for at in 2..row.nodes.len() {
        let joined = row.nodes[at - 1].mark() == Some(Mark::Comma)
            || row.nodes[at - 1].has(Cue::And) && row.nodes[at - 1].kind == Kind::Phrase;
        let amount = |node: &Node| node.quantity().is_some() || node.number().is_some();
        // "gaay ka" may be one phrase.
        let whole = row.words_of(at).last().is_some_and(|word| word.cues.has(Cue::Of));
        let next = if whole { at + 1 } else { at + 2 };
        if !joined || !(whole || is_of(row, at + 1)) || !row.nodes.get(next).is_some_and(amount) {
            continue;
        }
        let part = |part: Cue| part_named(row, at, at - 1, part);
        let feed = if beast(&row.nodes[at]).is_some() && part(Cue::Dung) {
            beast(&row.nodes[at])
        } else if part(Cue::Peel) {
            peel_of(&row.nodes[at])
        } else {
            None
        };
        if let Some(feed) = feed {
            becomes(row, at, feed);
        }
    }
}

/// Whether a food that names this part, peel or dung, stands before `end` in the sentence, not far from `at`.
fn part_named(row: &Row, at: usize, end: usize, part: Cue) -> bool {
    const BACK: usize = 8;
    let mut before = (at.saturating_sub(BACK)..end).rev().take_while(|&at| row.nodes[at].mark() != Some(Mark::Stop));
    before.any(|at| row.nodes[at].feed().is_some() && row.words_of(at).any(|word| word.cues.has(part)))
}

/// The word at `at` names this food and nothing else.
fn becomes(row: &mut Row, at: usize, feed: Feed) {
    row.nodes[at].meaning = super::notions::Meaning { feed: Some(feed), ..Default::default() };
}

/// Whether people count this one by one, so that a bare number means pieces.
pub fn counted(feed: Feed) -> bool {
    use Feed::*;
    matches!(
        feed,
        Flatbread
            | Bread
            | Potato
            | Cassava
            | SweetPotato
            | Yam
            | Plantain
            | PlantainPeel
            | Maize
            | Banana
            | BananaPeel
            | Mango
            | Papaya
            | Pineapple
            | CitrusPeel
            | MelonRind
            | Avocado
            | Apple
            | FruitWaste
            | Tomato
            | Onion
            | Cabbage
            | Carrot
            | Pumpkin
            | Egg
            | Fish
            | Eggshell
            | Bone
            | Soap
            | PotatoPeel
            | CassavaPeel
    )
}

/// The feed that the peel of `node` is.
pub fn peel_of(node: &Node) -> Option<Feed> {
    use Feed::*;
    if node.has(Cue::Citrus) {
        return Some(CitrusPeel);
    }
    if node.has(Cue::Melon) {
        return Some(MelonRind);
    }
    Some(match node.feed()? {
        Banana => BananaPeel,
        Plantain => PlantainPeel,
        Potato => PotatoPeel,
        Cassava => CassavaPeel,
        Egg => Eggshell,
        Mango | Papaya | Pineapple | Avocado | Apple | FruitWaste => FruitWaste,
        Yam | SweetPotato | Tomato | Onion | Cabbage | LeafyGreens | Carrot | Pumpkin | VegetableWaste | Beans
        | Maize => VegetableWaste,
        _ => return None,
    })
}

pub(super) fn is_of(row: &Row, at: usize) -> bool {
    row.nodes.get(at).is_some_and(|node| node.kind == Kind::Phrase && node.has(Cue::Of) && node.feed().is_none())
}

pub(super) fn skippable(row: &Row, at: usize) -> bool {
    row.nodes.get(at).is_some_and(|node| {
        (is_of(row, at) || node.has(Cue::Modifier) && node.feed().is_none() && node.kind == Kind::Phrase)
            || node.number().is_some_and(|n| n.weak)
    })
}

/// The node after `at`, past "of" and adjectives, and whether "of" was there.
pub(super) fn after(row: &Row, at: usize) -> (usize, bool) {
    let mut next = at + 1;
    let mut of = false;
    while next < at + 4 && skippable(row, next) {
        of |= is_of(row, next);
        next += 1;
    }
    // "maganda kidogo ya karoti": how much, within or before the "of".
    let little = |node: &Node| node.has(Cue::Some) && node.feed().is_none();
    if next == at + 1 && row.nodes.get(next).is_some_and(little) {
        if is_of(row, next + 1) {
            return (next + 2, true);
        }
        if row.words_of(next).last().is_some_and(|word| word.cues.has(Cue::Of)) {
            return (next + 1, true);
        }
    }
    (next, of)
}

pub(super) fn set(row: &mut Row, from: usize, to: usize, feed: Feed) {
    let mut node = row.nodes[from];
    node.meaning = super::notions::Meaning { feed: Some(feed), ..Default::default() };
    node.kind = Kind::Phrase;
    node.to = row.nodes[to].to.max(node.to);
    row.nodes[from] = node;
    row.nodes.drain(from + 1..=to);
}

fn peel(row: &mut Row, at: usize) -> bool {
    let is_peel = |node: &Node| node.kind == Kind::Phrase && node.has(Cue::Peel);
    let (next, of) = after(row, at);
    let side = row.lexicon.habits.part;
    if is_peel(&row.nodes[at]) {
        // "the skins of ten bananas"
        let from = |at: usize| is_of(row, at) || side == Side::After && row.nodes[at].has(Cue::Since);
        let counted = |at: usize| row.nodes.get(at).and_then(Node::number).is_some_and(|n| !n.weak && !n.fraction);
        if let Some(feed) = row.nodes.get(at + 3).and_then(peel_of)
            && from(at + 1)
            && counted(at + 2)
        {
            // "... and four bananas"
            let and = row.nodes.get(at + 4).is_some_and(|node| node.has(Cue::And) && node.kind == Kind::Phrase);
            if let Some(more) = row.nodes.get(at + 6).and_then(peel_of).filter(|_| and && counted(at + 5)) {
                becomes(row, at + 6, more);
            }
            becomes(row, at + 3, feed);
            row.nodes.drain(at..at + 2);
            return true;
        }
        // "peel of banana (and plantain)"
        if (of || side == Side::Before || side == Side::Either)
            && let Some(feed) = row.nodes.get(next).and_then(peel_of)
        {
            let (second, _) = after(row, next + 1);
            let joined = row.nodes.get(next + 1).is_some_and(|node| node.has(Cue::And) && node.kind == Kind::Phrase);
            set(row, at, next, feed);
            let second = second - (next - at);
            if joined
                && side != Side::After
                && let Some(more) =
                    row.nodes.get(second).filter(|node| second <= at + 3 && !is_peel(node)).and_then(peel_of)
                && row.nodes.get(second).is_some_and(|node| node.from == row.nodes[at + 1].to || is_of(row, second - 1))
            {
                becomes(row, second, more);
            }
            return true;
        }
        return false;
    }
    // "banana peel", "kele ke chilke"
    if let Some(feed) = peel_of(&row.nodes[at])
        && row.nodes.get(next).is_some_and(is_peel)
        && (of || next == at + 1 || side != Side::Before)
    {
        // "mango and banana peels"
        if side != Side::Before && at >= 2 && row.nodes[at - 1].has(Cue::And) {
            if let Some(first) = peel_of(&row.nodes[at - 2]) {
                becomes(row, at - 2, first);
            }
        }
        set(row, at, next, feed);
        return true;
    }
    false
}
