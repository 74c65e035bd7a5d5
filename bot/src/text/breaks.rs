//! Breaks: where one clause ends and the next begins though no comma says so.

use super::clauses::{ASKING, LONGEST};
use super::nodes::{Kind, Node, Row, When};
use super::notions::{Cue, Cues, UnitWord};
use super::tokens::Mark;
use super::wordlist::Side;
use bellyful_core::feeds::Feed;

/// Whether the verb at `at`, where verbs come last, ends how big a vessel is, and an amount follows.
pub(super) fn tells_a_size(row: &Row, from: usize, at: usize) -> bool {
    let node = &row.nodes[at];
    let ends = row.lexicon.habits.negation == Side::After
        && node.kind == Kind::Phrase
        && node.any(&Cues::of(&[Cue::Is, Cue::Holds]));
    let amount = |node: &Node| node.quantity().is_some_and(|q| !q.implied) || node.number().is_some_and(|n| !n.weak);
    let volume =
        |node: &Node| node.quantity().is_some_and(|q| !q.implied && matches!(q.unit, Some(UnitWord::Volume(_))));
    let vessel = |node: &Node| node.quantity().is_some_and(|q| q.implied && matches!(q.unit, Some(UnitWord::Of(_))));
    let told = &row.nodes[from..at];
    ends && row.nodes.get(at + 1).is_some_and(amount)
        && told.iter().any(volume)
        && told.iter().any(vessel)
        && told.iter().all(|node| node.feed().is_none() && !node.has(Cue::Put))
}

/// "rice - 1 kg beans - 2 kg": a dash between a thing and its amount, where the first such thing has none before it.
pub(super) fn names_an_amount(row: &Row, at: usize, kept: &[Node], again: bool) -> bool {
    let counts = |node: &Node| node.quantity().is_some_and(|q| !q.implied) || node.number().is_some_and(|n| !n.weak);
    let thing = |node: &Node| node.kind == Kind::Phrase && (node.feed().is_some() || node.has(Cue::Water));
    let free = again || kept.iter().rev().nth(1).is_none_or(|before| !counts(before) && !before.has(Cue::Of));
    free && kept.last().is_some_and(thing) && row.nodes.get(at + 1).is_some_and(counts)
}

/// Whether it is told what was put in, fell in or was measured, and nothing is asked of it.
pub(super) fn tells_a_portion(row: &Row, from: usize, at: usize) -> bool {
    let told = &row.nodes[from..at];
    let done = Cues::of(&[Cue::Put, Cue::Fell]);
    let amount = |node: &Node| node.quantity().is_some_and(|q| !q.implied) || node.number().is_some();
    (told.iter().any(|node| node.kind == Kind::Phrase && node.any(&done))
        && told.iter().any(|node| node.feed().is_some() || amount(node))
        || told.iter().any(|node| node.any(&Cues::of(&[Cue::Ph, Cue::Temp, Cue::Gauge]))) && told.iter().any(amount))
        && !told.iter().any(|node| node.any(&ASKING) || node.has(Cue::PutPlan))
}

/// "fed 2 kg rice can I add more", "gas is little how long will it last": told, and then asked about, where questions
/// open with their word.
pub(super) fn tells_then_asks(row: &Row, from: usize, at: usize) -> bool {
    const OPENS: Cues = Cues::of(&[Cue::HowMuch, Cue::HowLong, Cue::How, Cue::CanI, Cue::AskGas, Cue::StartUp]);
    let node = &row.nodes[at];
    // "how much water", one phrase; "add more water" asks nothing.
    const ASKED: Cues = Cues::of(&[Cue::How, Cue::HowMuch, Cue::What]);
    let water = || node.has(Cue::AskWater) && row.words_of(at).any(|word| word.cues.any(&ASKED));
    let whole = node.has(Cue::Ration) && node.to >= node.from + 3 || water();
    let asks = node.kind == Kind::Phrase && node.feed().is_none() && (node.any(&OPENS) || whole);
    if !asks || row.lexicon.habits.negation != Side::Before {
        return false;
    }
    let told = &row.nodes[from..at];
    let says = |cues: Cues| told.iter().any(|node| node.kind == Kind::Phrase && node.any(&cues));
    let level =
        says(Cues::of(&[Cue::Gas, Cue::GasBag, Cue::Bag])) && told.iter().any(|node| node.meaning.level.is_some());
    let volume = |node: &Node| node.quantity().is_some_and(|q| matches!(q.unit, Some(UnitWord::Volume(_))));
    let size = says(Cues::of(&[Cue::Tank])) && told.iter().any(volume);
    // "no gas can I cook tonight"
    let none = told.windows(2).any(|two| two[0].any(&Cues::of(&[Cue::Not, Cue::Nothing])) && two[1].has(Cue::Gas));
    let unfed = says(Cues::of(&[Cue::PutNot]));
    (level || none || size || unfed) && !told.iter().any(|node| node.any(&ASKING) || node.has(Cue::PutPlan))
        || tells_a_portion(row, from, at)
}

/// "pus bicarbonato porque cheirava azedo": the word for "why" gives the reason of what was told before it.
pub(super) fn is_because(row: &Row, from: usize, at: usize) -> bool {
    let rest = || row.nodes[at + 1..].iter().take(LONGEST).map(|node| node.mark());
    let end = rest().find(|mark| matches!(mark, Some(Mark::Stop | Mark::Question)));
    let told = row.nodes[from..at].iter().filter(|node| !node.has(Cue::Chatter)).count() >= 2;
    told && end != Some(Some(Mark::Question)) && rest().next().is_some_and(|mark| mark.is_none())
}

pub(super) fn was_otherwise(row: &Row, from: usize, at: usize) -> bool {
    let past = row.nodes.get(at + 1).is_some_and(|next| matches!(next.when(), Some(When::Day(day)) if day < 0));
    past && row.nodes[from..at].iter().any(|node| node.has(Cue::Why))
}

pub(super) fn is_told(node: &Node) -> bool {
    node.feed().is_some() || node.quantity().is_some_and(|q| !q.implied)
}

pub(super) fn is_slurry(node: &Node) -> bool {
    node.has(Cue::Slurry) || node.feed() == Some(Feed::Digestate)
}

/// Whether slurry is taken out. "Took" is listed as an ordinary word too: it does so only where slurry is named.
pub(super) fn takes_out(nodes: &[Node]) -> bool {
    // "1 saco" is a sack, "saco 3 baldes" takes out.
    let bare = |node: &Node| node.kind == Kind::Phrase || node.quantity().is_some_and(|q| q.implied);
    let takes = |node: &&Node| bare(node) && node.has(Cue::Remove);
    nodes.iter().filter(takes).any(|node| !node.has(Cue::Other)) || nodes.iter().any(is_slurry)
}

/// "emptied 2 kg rice into the digester": a food and where it went.
pub(super) fn empties_into(nodes: &[Node]) -> bool {
    let into = nodes.windows(3).any(|three| {
        three[0].has(Cue::In) && three[0].kind == Kind::Phrase && three[1..].iter().any(|node| node.has(Cue::Tank))
    });
    into && nodes.iter().any(|node| node.feed().is_some()) && !nodes.iter().any(is_slurry)
}

/// "took out ten buckets and put in ten": what came out before the joint at `at`, and what goes in after it.
pub(super) fn turns(row: &Row, from: usize, at: usize) -> bool {
    let ends = |node: &Node| matches!(node.mark(), Some(Mark::Comma | Mark::Stop | Mark::Question));
    let most = row.nodes.len().min(at + LONGEST);
    let to = (at..most).find(|&i| ends(&row.nodes[i])).unwrap_or(most);
    let does = |nodes: &[Node], cue: Cue, not: Cue| {
        let has = |cue: Cue| nodes.iter().any(|node| node.kind == Kind::Phrase && node.has(cue));
        has(cue) && !has(not)
    };
    // "my bucket holds 18 L and I put 2 buckets"
    let puts = |nodes: &[Node]| nodes.iter().any(|node| node.has(Cue::Put) && !node.has(Cue::Holds));
    let sized = |node: &Node| node.has(Cue::Holds) && node.kind == Kind::Phrase;
    let (before, after) = (&row.nodes[from..at], &row.nodes[at..to]);
    let holds = before.iter().any(sized) && !puts(before) && puts(after) && !after.iter().any(sized);
    if holds && before.iter().any(|node| node.quantity().is_some_and(|q| !q.implied)) {
        return true;
    }
    takes_out(&row.nodes[from..at])
        && does(&row.nodes[from..at], Cue::Remove, Cue::Put)
        && does(&row.nodes[at..to], Cue::Put, Cue::Remove)
}

/// Whether what was on a day gone by is told before the "now" at `at`, and what is so after it.
pub(super) fn turns_to_now(row: &Row, from: usize, at: usize) -> bool {
    let says = |node: &Node| node.meaning.level.is_some() || node.meaning.sign.is_some();
    let past = |node: &Node| matches!(node.when(), Some(When::Day(day)) if day < 0) || node.has(Cue::Was);
    let after = row.nodes[at + 1..].iter().take(LONGEST).take_while(|node| node.mark().is_none());
    let before = &row.nodes[from..at];
    before.iter().any(past) && before.iter().any(says) && after.into_iter().any(says)
}

/// Whether what is so stands before the joint at `at`, and somebody who puts something in after it.
pub(super) fn goes_on_to_do(row: &Row, from: usize, at: usize) -> bool {
    const SO: Cues = Cues::of(&[Cue::Gas, Cue::GasBag, Cue::Flame, Cue::FireWord, Cue::Smell]);
    const DONE: Cues = Cues::of(&[Cue::Put, Cue::Cook]);
    const REACH: usize = 3;
    let before = &row.nodes[from..at];
    let so = before.iter().any(|node| node.any(&SO) && node.kind == Kind::Phrase);
    let most = row.nodes.len().min(at + 1 + REACH);
    let who = row.nodes.get(at + 1).is_some_and(|node| node.has(Cue::WeAre));
    so && who
        && !before.iter().any(|node| node.any(&DONE))
        && row.nodes[at + 1..most].iter().any(|node| node.any(&DONE))
}
