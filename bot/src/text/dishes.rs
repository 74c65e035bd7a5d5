//! Dishes: foods put together from words: dung of a beast, soup of a thing, water of another, what was left over.

use super::foods::{after, is_of, set};
use super::nodes::{Kind, Node, Row};
use super::notions::Cue;
use super::wordlist::Side;
use bellyful_core::feeds::Feed;

/// The dung of the beast that `node` names.
pub fn beast(node: &Node) -> Option<Feed> {
    [
        (Cue::Pig, Feed::PigManure),
        (Cue::Chicken, Feed::ChickenManure),
        (Cue::Goat, Feed::GoatManure),
        (Cue::Horse, Feed::HorseManure),
        (Cue::Human, Feed::HumanWaste),
        (Cue::Cow, Feed::CattleManure),
    ]
    .into_iter()
    .find(|&(cue, _)| node.kind == Kind::Phrase && node.has(cue))
    .map(|(_, feed)| feed)
}

pub(super) fn dung(row: &mut Row, at: usize) -> bool {
    let (next, _) = after(row, at);
    let (Some(second), first) = (row.nodes.get(next), &row.nodes[at]) else { return false };
    let feed = if first.has(Cue::Dung) {
        beast(second)
    } else if second.has(Cue::Dung) {
        beast(first)
    } else {
        None
    };
    let Some(feed) = feed else { return false };
    set(row, at, next, feed);
    true
}

/// "chane ka bhusa", "lakdi ki rakh", "aam ki guthli": the straw, ash or stone of a plant is no food of that plant. The
/// leaves of a vegetable are greens.
pub(super) fn made_of(row: &mut Row, at: usize) -> bool {
    use Feed::*;
    let (next, of) = after(row, at);
    // "bele leaves": side by side in the order of the language.
    let beside = next == at + 1 && row.lexicon.habits.negation == Side::Before;
    if !(of || beside) || row.lexicon.habits.part != Side::After {
        return false;
    }
    let feed = |at: usize| row.nodes.get(at).and_then(Node::feed);
    let (Some(plant), Some(part)) = (feed(at), feed(next)) else { return false };
    let greens = matches!(plant, Cabbage | Carrot | Onion | LeafyGreens | Pumpkin | VegetableWaste | Beans | Potato);
    let made = match part {
        Leaves if greens => LeafyGreens,
        Straw | Leaves | Grass | Ash | Flour | Wood => part,
        _ => return false,
    };
    set(row, at, next, made);
    true
}

/// "makai ke bhutte": a food of itself is one.
pub(super) fn same(row: &mut Row, at: usize) -> bool {
    let (next, of) = after(row, at);
    let named = |at: usize| row.nodes.get(at).and_then(Node::feed);
    let found = of && named(at).is_some_and(|feed| feed != Feed::FoodWaste) && named(at) == named(next);
    if found && let Some(feed) = named(at) {
        set(row, at, next, feed);
    }
    found
}

/// "fish bones", "machhli ki haddi": bones, of whatever beast.
pub(super) fn bones(row: &mut Row, at: usize) -> bool {
    let flesh = |node: &Node| matches!(node.feed(), Some(Feed::Fish | Feed::Meat)) && node.kind == Kind::Phrase;
    let bone = |node: &Node| node.feed() == Some(Feed::Bone) && node.kind == Kind::Phrase;
    let (next, of) = after(row, at);
    let (Some(second), first) = (row.nodes.get(next), &row.nodes[at]) else { return false };
    let joined = of || next == at + 1;
    let found = joined
        && match row.lexicon.habits.part {
            Side::Before => of && bone(first) && flesh(second),
            _ => flesh(first) && bone(second) || of && bone(first) && flesh(second),
        };
    if found {
        set(row, at, next, Feed::Bone);
        return true;
    }
    // "beef tallow", "goat fat"
    let fat = row.lexicon.habits.part == Side::After && flesh(first) && second.feed() == Some(Feed::Fat);
    let fat = fat && joined && second.kind == Kind::Phrase;
    if fat {
        set(row, at, next, Feed::Fat);
    }
    fat
}

/// "rice water", "agua de hervir fideos", "chawal ka pani".
pub(super) fn starch_water(row: &mut Row, at: usize) -> bool {
    let starchy = |node: &Node| {
        matches!(
            node.feed(),
            Some(
                Feed::CookedRice
                    | Feed::Pasta
                    | Feed::Potato
                    | Feed::Beans
                    | Feed::Lentils
                    | Feed::Maize
                    | Feed::Cassava
                    | Feed::Plantain
                    | Feed::Yam
                    | Feed::SweetPotato
            )
        )
    };
    let water = |node: &Node| node.kind == Kind::Phrase && node.has(Cue::Water);
    let boil = |node: &Node| node.kind == Kind::Phrase && node.has(Cue::Boil);
    if row.nodes[at].feed() == Some(Feed::StarchWater) && row.nodes[at].kind == Kind::Phrase {
        let (next, _) = after(row, at);
        let more = row.lexicon.habits.part != Side::After && row.nodes.get(next).is_some_and(starchy);
        if more {
            set(row, at, next, Feed::StarchWater);
        }
        return more;
    }
    if water(&row.nodes[at]) {
        let (mut next, mut linked) = after(row, at);
        while row.nodes.get(next).is_some_and(boil) {
            linked = true;
            next = after(row, next).0;
        }
        if linked && row.lexicon.habits.part != Side::After && row.nodes.get(next).is_some_and(starchy) {
            set(row, at, next, Feed::StarchWater);
            return true;
        }
        return false;
    }
    if starchy(&row.nodes[at]) || boil(&row.nodes[at]) {
        let (mut next, mut of) = after(row, at);
        while row.nodes.get(next).is_some_and(|node| boil(node) || starchy(node) && boil(&row.nodes[at])) {
            of = true;
            next = after(row, next).0;
        }
        let named = (at..next).any(|i| starchy(&row.nodes[i]));
        if named
            && row.nodes.get(next).is_some_and(water)
            && (of && row.lexicon.habits.part != Side::Before
                || next == at + 1 && row.lexicon.habits.part == Side::After)
        {
            set(row, at, next, Feed::StarchWater);
            return true;
        }
    }
    false
}

/// "water with soap" is soap.
pub(super) fn soapy(row: &mut Row, at: usize) -> bool {
    if !row.nodes[at].has(Cue::Water) || row.nodes[at].kind != Kind::Phrase {
        return false;
    }
    let next = at + 1;
    let linked = row.nodes.get(next).is_some_and(|node| node.has(Cue::With) || node.has(Cue::Of));
    let found = linked && row.nodes.get(next + 1).is_some_and(|node| node.feed() == Some(Feed::Soap));
    if found {
        set(row, at, next + 1, Feed::Soap);
    }
    found
}

/// "leftover rice", "rice leftovers" is rice.
pub(super) fn leftover(row: &mut Row, at: usize) -> bool {
    let general = |node: &Node| node.kind == Kind::Phrase && node.has(Cue::Leftover);
    let named = |node: &Node| node.feed().is_some() && !general(node);
    let (next, of) = after(row, at);
    let Some(second) = row.nodes.get(next) else { return false };
    // "roti sabji": a dish and what goes with it, and no leftover of the dish.
    let dish = matches!(row.nodes[at].feed(), Some(Feed::Flatbread | Feed::CookedRice | Feed::Bread | Feed::Lentils));
    if dish && second.feed() == Some(Feed::VegetableWaste) && !of {
        return false;
    }
    let direct = next == at + 1 || of;
    let feed = if general(&row.nodes[at]) && (named(second) || general(second)) && direct {
        // "sabji ka jutha": leftovers of what is named.
        let of_named = of && row.lexicon.habits.part == Side::After && second.feed() == Some(Feed::FoodWaste);
        row.nodes[at].feed().filter(|_| of_named).or(second.feed()).or(row.nodes[at].feed())
    } else if named(&row.nodes[at])
        && general(second)
        && (next == at + 1 || of && row.lexicon.habits.part == Side::After)
    {
        row.nodes[at].feed()
    } else {
        None
    };
    let Some(feed) = feed else { return false };
    // What the second noun says besides (a beast, a peel) must stay.
    let mut meaning = if named(second) { second.meaning } else { row.nodes[at].meaning };
    meaning.feed = Some(feed);
    set(row, at, next, feed);
    row.nodes[at].meaning = meaning;
    true
}

/// "slurry from my neighbour's digester" is digestate; slurry of the own tank is none.
pub(super) fn from_a_digester(row: &mut Row, at: usize) -> bool {
    let slurry =
        |node: &Node| node.kind == Kind::Phrase && (node.has(Cue::Slurry) || node.feed() == Some(Feed::Digestate));
    if slurry(&row.nodes[at]) {
        let (mut tank, mut another, mut end) = (false, false, at);
        for next in at + 1..row.nodes.len().min(at + 9) {
            let node = &row.nodes[next];
            // "of", "from"
            let joint = is_of(row, next) || node.kind == Kind::Phrase && node.has(Cue::Since);
            let link = joint
                || node.has(Cue::My)
                || node.number().is_some_and(|n| n.weak)
                || node.has(Cue::Modifier) && node.feed().is_none();
            let owner = node.unknown() || node.has(Cue::Folk);
            let owned = owner && row.nodes.get(next + 1).is_some_and(|tank| tank.has(Cue::Tank));
            if node.has(Cue::Tank) && node.kind == Kind::Phrase && !node.has(Cue::Running) {
                tank = true;
                end = next;
            } else if next > at + 1 && !tank && owned {
                // "from my neighbour's tank"
                (another, end) = (true, next + 1);
                break;
            } else if node.kind == Kind::Phrase && node.has(Cue::Running) {
                (another, end) = (true, next);
            } else if tank && is_of(row, next - 1) | row.nodes[next - 1].has(Cue::My) && (owner || node.has(Cue::Other))
            {
                (another, end) = (true, next);
                break;
            } else if !link || next == at + 1 && !joint {
                break;
            }
        }
        if another {
            set(row, at, end, Feed::Digestate);
            return true;
        }
        return false;
    }
    // "dusre plant ki slurry"
    let (next, of) = after(row, at);
    if row.nodes[at].has(Cue::Running) && row.nodes[at].kind == Kind::Phrase && (of || next == at + 1) {
        let (slurry_at, _) =
            if row.nodes.get(next).is_some_and(|node| node.has(Cue::Tank)) { after(row, next) } else { (next, of) };
        if row.nodes.get(slurry_at).is_some_and(slurry) {
            set(row, at, slurry_at, Feed::Digestate);
            return true;
        }
    }
    false
}
