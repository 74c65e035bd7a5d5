//! Foods: parts and wholes made one feed: "peel of banana", "goat droppings", "leftover rice", "rice water".
//!
//! Takes a row of nodes; gives it with each such pair as the one node of the feed it names.

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
    likened::gas_left_over(row);
    likened::likened(row);
}

/// "maganda ya viazi na ya muhogo", "estiércol de vaca 2 kg y de cerdo 1 kg": "and of that" is of the same part.
fn and_of(row: &mut Row) {
    const BACK: usize = 8;
    if row.lexicon.habits.part == Side::After {
        of_that_too(row);
        return;
    }
    for at in 2..row.nodes.len() {
        let and = row.nodes[at - 2].has(Cue::And) && row.nodes[at - 2].kind == Kind::Phrase;
        if !(and || row.nodes[at - 2].mark() == Some(Mark::Comma)) || !is_of(row, at - 1) {
            continue;
        }
        let before = (at.saturating_sub(BACK)..at - 2).rev().take_while(|&at| row.nodes[at].mark() != Some(Mark::Stop));
        let part = |cue: Cue| {
            before.clone().any(|at| row.nodes[at].feed().is_some() && row.words_of(at).any(|word| word.cues.has(cue)))
        };
        let feed = if part(Cue::Peel) {
            peel_of(&row.nodes[at])
        } else if part(Cue::Dung) {
            beast(&row.nodes[at])
        } else {
            None
        };
        if let Some(feed) = feed {
            row.nodes[at].meaning = super::notions::Meaning { feed: Some(feed), ..Default::default() };
        }
    }
}

/// "bakri ka gobar 1 kg aur gaay ka 3 kg", "kele ke chilke 2 kg, aam ke 1 kg": the part is said once.
fn of_that_too(row: &mut Row) {
    const BACK: usize = 8;
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
        let before = (at.saturating_sub(BACK)..at - 1).rev().take_while(|&at| row.nodes[at].mark() != Some(Mark::Stop));
        let part = |cue: Cue| {
            before.clone().any(|at| row.nodes[at].feed().is_some() && row.words_of(at).any(|word| word.cues.has(cue)))
        };
        let feed = if beast(&row.nodes[at]).is_some() && part(Cue::Dung) {
            beast(&row.nodes[at])
        } else if part(Cue::Peel) {
            peel_of(&row.nodes[at])
        } else {
            None
        };
        if let Some(feed) = feed {
            row.nodes[at].meaning = super::notions::Meaning { feed: Some(feed), ..Default::default() };
        }
    }
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

fn is_of(row: &Row, at: usize) -> bool {
    row.nodes.get(at).is_some_and(|node| node.kind == Kind::Phrase && node.has(Cue::Of) && node.feed().is_none())
}

fn skippable(row: &Row, at: usize) -> bool {
    row.nodes.get(at).is_some_and(|node| {
        (is_of(row, at) || node.has(Cue::Modifier) && node.feed().is_none() && node.kind == Kind::Phrase)
            || node.number().is_some_and(|n| n.weak)
    })
}

/// The node after `at`, past "of" and adjectives, and whether "of" was there.
fn after(row: &Row, at: usize) -> (usize, bool) {
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

fn set(row: &mut Row, from: usize, to: usize, feed: Feed) {
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
                row.nodes[at + 6].meaning = super::notions::Meaning { feed: Some(more), ..Default::default() };
            }
            row.nodes[at + 3].meaning = super::notions::Meaning { feed: Some(feed), ..Default::default() };
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
                row.nodes[second].meaning = super::notions::Meaning { feed: Some(more), ..Default::default() };
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
                row.nodes[at - 2].meaning = super::notions::Meaning { feed: Some(first), ..Default::default() };
            }
        }
        set(row, at, next, feed);
        return true;
    }
    false
}

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

fn dung(row: &mut Row, at: usize) -> bool {
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
fn made_of(row: &mut Row, at: usize) -> bool {
    use Feed::*;
    let (next, of) = after(row, at);
    if !of || row.lexicon.habits.part != Side::After {
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
fn same(row: &mut Row, at: usize) -> bool {
    let (next, of) = after(row, at);
    let named = |at: usize| row.nodes.get(at).and_then(Node::feed);
    let found = of && named(at).is_some_and(|feed| feed != Feed::FoodWaste) && named(at) == named(next);
    if found && let Some(feed) = named(at) {
        set(row, at, next, feed);
    }
    found
}

/// "fish bones", "machhli ki haddi": bones, of whatever beast.
fn bones(row: &mut Row, at: usize) -> bool {
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
    }
    found
}

/// "rice water", "agua de hervir fideos", "chawal ka pani".
fn starch_water(row: &mut Row, at: usize) -> bool {
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
fn soapy(row: &mut Row, at: usize) -> bool {
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
fn leftover(row: &mut Row, at: usize) -> bool {
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
fn from_a_digester(row: &mut Row, at: usize) -> bool {
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
