//! Clauses: a row parted where people pause, with what holds for each part: its day, whether it asks, plans or is a habit.
//!
//! Takes a row whose numbers, times and foods are joined; gives clauses. A day word covers its clause and the clauses
//! after it until another day word or a change to the present tense.

use super::breaks::{
    empties_into, goes_on_to_do, is_because, is_told, names_an_amount, takes_out, tells_a_portion, tells_a_size,
    tells_then_asks, turns, turns_to_now, was_otherwise,
};
use super::lent::{lend_back, lend_days, lend_to_all, spread_plans};
use super::nodes::{Kind, Node, Row, When};
use super::notions::{Cue, Cues, UnitWord};
use super::tokens::Mark;
use super::wordlist::Side;

/// No clause is longer, so that rules that compare words within a clause stay linear in the text.
pub(super) const LONGEST: usize = 60;

#[derive(Debug, Clone, Default)]
pub struct Clause {
    pub from: usize,
    pub to: usize,
    pub sentence: usize,
    pub cues: Cues,
    /// Ends in a question mark, or asks by its words.
    pub asks: bool,
    /// Speaks of what will or may be.
    pub plan: bool,
    pub habit: bool,
    /// Days named in it: (node, offset).
    pub days: Vec<(usize, i32)>,
    /// A day that an earlier clause lends.
    pub lent: Option<i32>,
    pub past: bool,
    pub present: bool,
    /// Where its first number, feed or sign stands.
    first_said: usize,
}

impl Clause {
    pub fn has(&self, cue: Cue) -> bool {
        self.cues.has(cue)
    }
    pub fn any(&self, cues: &Cues) -> bool {
        self.cues.any(cues)
    }
    pub fn range(&self) -> std::ops::Range<usize> {
        self.from..self.to
    }

    /// The day of what stands at node `at`.
    pub fn day(&self, at: usize) -> i32 {
        match self.days.as_slice() {
            [] => self.lent.unwrap_or(0),
            [(_, day)] => *day,
            days => {
                let leading = days[0].0 <= self.first_said;
                let found = if leading {
                    days.iter().rev().find(|(node, _)| *node < at)
                } else {
                    days.iter().find(|(node, _)| *node > at)
                };
                found.or(if leading { days.first() } else { days.last() }).map_or(0, |&(_, day)| day)
            }
        }
    }
}

/// With these a "what" asks.
const ASKS: Cues = Cues::of(&[Cue::HowMuch, Cue::CanI, Cue::Status, Cue::Why]);

pub const ASKING: Cues = Cues::of(&[
    Cue::HowMuch,
    Cue::HowLong,
    Cue::How,
    Cue::What,
    Cue::Why,
    Cue::CanI,
    Cue::Status,
    Cue::Ration,
    Cue::AskGas,
    Cue::AskWater,
    Cue::StartUp,
    Cue::AskDigestate,
    Cue::Good4,
]);

/// Makes marks into what they stand for, and drops those that part nothing.
pub fn tidy(row: &mut Row) {
    let mut kept = Vec::with_capacity(row.nodes.len());
    let mut dashes = false;
    for at in 0..row.nodes.len() {
        let mut node = row.nodes[at];
        let glued = node.glued && row.nodes.get(at + 1).is_some_and(|next| next.glued);
        let cue = match node.mark() {
            Some(Mark::Colon | Mark::Equals) => Cue::Is,
            Some(Mark::Plus | Mark::Slash) => Cue::And,
            Some(Mark::Dash) if glued => continue,
            Some(Mark::Dash) if names_an_amount(row, at, &kept, dashes) => {
                dashes = true;
                Cue::Is
            }
            Some(Mark::Dash) => {
                node.kind = Kind::Mark(Mark::Comma);
                kept.push(node);
                continue;
            }
            // "temp. 27", "approx. 5 kg": the point of an abbreviation.
            Some(Mark::Stop)
                if node.glued
                    && row.nodes.get(at + 1).is_some_and(|next| next.number().is_some())
                    && kept.last().is_some_and(|last: &Node| last.any(&SHORTENED)) =>
            {
                continue;
            }
            _ => {
                kept.push(node);
                continue;
            }
        };
        let colon = matches!(node.mark(), Some(Mark::Colon | Mark::Dash));
        node.kind = Kind::Phrase;
        node.meaning.cues.insert(cue);
        if colon {
            // Binds like "is", but speaks of no tense.
            node.meaning.cues = Cues::of(&[Cue::Colon]);
        }
        kept.push(node);
    }
    row.nodes = kept;
}

const SHORTENED: Cues = Cues::of(&[Cue::Temp, Cue::TempLetter, Cue::Gauge, Cue::Ph, Cue::About, Cue::NumberSign]);

pub fn part(row: &Row) -> Vec<Clause> {
    let mut clauses: Vec<Clause> = Vec::new();
    let mut sentence = 0;
    let mut from = 0;
    let mut close = |from: usize, to: usize, sentence: usize, question: bool| {
        if from < to {
            clauses.push(clause(row, from, to, sentence, question));
        } else if question && let Some(last) = clauses.last_mut() {
            last.asks = true;
        }
    };
    for (at, node) in row.nodes.iter().enumerate() {
        match node.mark() {
            Some(Mark::Comma) => {
                close(from, at, sentence, false);
                from = at + 1;
            }
            Some(mark @ (Mark::Stop | Mark::Question)) => {
                close(from, at, sentence, mark == Mark::Question);
                from = at + 1;
                sentence += 1;
            }
            _ if node.kind == Kind::Phrase
                && node.has(Cue::But)
                && (!node.has(Cue::Why) || is_because(row, from, at)) =>
            {
                close(from, at, sentence, false);
                from = at + 1;
            }
            // Where the verb comes last, a day after it opens a new clause.
            _ if row.lexicon.habits.negation == Side::After
                && node.kind == Kind::Phrase
                && node.any(&Cues::of(&[Cue::Is, Cue::Was]))
                && row.nodes.get(at + 1).is_some_and(|next| next.when().is_some())
                // "bhari thi 10 din pehle": a day that ends the sentence is of what stands before it.
                && row.nodes.get(at + 2).is_some_and(|after| after.mark().is_none()) =>
            {
                close(from, at + 1, sentence, false);
                from = at + 1;
            }
            // "meri balti 16 litre ki hai 2 balti pani dala": how big it is, and how much went in.
            _ if tells_a_size(row, from, at) => {
                close(from, at + 1, sentence, false);
                from = at + 1;
            }
            // "1 chammach phenyl gir gaya ab kya karu": what was done is told, and then asked about.
            _ if node.kind == Kind::Phrase && node.has(Cue::Status) && tells_a_portion(row, from, at) => {
                close(from, at, sentence, false);
                from = at;
            }
            _ if tells_then_asks(row, from, at) => {
                close(from, at, sentence, false);
                from = at;
            }
            // "why is it yellow if yesterday it was blue": what was is told.
            _ if node.kind == Kind::Phrase && node.has(Cue::If) && was_otherwise(row, from, at) => {
                close(from, at, sentence, false);
                from = at + 1;
            }
            _ if node.kind == Kind::Phrase && node.has(Cue::And) && turns(row, from, at) => {
                close(from, at, sentence, false);
                from = at + 1;
            }
            // "yesterday the bag was empty now it is full"
            _ if node.kind == Kind::Phrase && node.has(Cue::Now) && turns_to_now(row, from, at) => {
                close(from, at, sentence, false);
                from = at;
            }
            // "no more gas and I gave it 5 kg on Monday": what is so, and what was done on a day of its own.
            _ if node.kind == Kind::Phrase && node.has(Cue::And) && goes_on_to_do(row, from, at) => {
                close(from, at, sentence, false);
                from = at + 1;
            }
            // "3 days without feeding and this morning 5 kg": what was not done, and what was.
            _ if node.kind == Kind::Phrase
                && node.has(Cue::And)
                && matches!(row.nodes.get(at + 1).and_then(|next| next.when()), Some(When::Day(_)))
                && row.nodes[from..at].iter().any(|node| node.has(Cue::PutNot))
                && row.nodes[at + 2..].iter().take_while(|node| node.mark().is_none()).any(is_told) =>
            {
                close(from, at, sentence, false);
                from = at + 1;
            }
            // "put in 2 kg of rice and tomorrow 3": what was done is no plan.
            _ if node.kind == Kind::Phrase
                && node.has(Cue::And)
                && matches!(row.nodes.get(at + 1).and_then(|next| next.when()), Some(When::Ahead))
                && row.nodes[from..at].iter().any(|node| node.quantity().is_some()) =>
            {
                close(from, at, sentence, false);
                from = at + 1;
            }
            _ if at - from >= LONGEST => {
                close(from, at, sentence, false);
                from = at;
            }
            _ => {}
        }
    }
    close(from, row.nodes.len(), sentence, false);
    lend_days(row, &mut clauses);
    lend_back(row, &mut clauses);
    lend_to_all(row, &mut clauses);
    spread_plans(row, &mut clauses);
    clauses
}

fn clause(row: &Row, from: usize, to: usize, sentence: usize, question: bool) -> Clause {
    let mut made = Clause { from, to, sentence, asks: question, first_said: to, ..Clause::default() };
    for (at, node) in row.nodes.iter().enumerate().take(to).skip(from) {
        if matches!(node.kind, Kind::Phrase | Kind::Quantity(_)) {
            let mut cues = node.meaning.cues;
            // "hace 3 días que", "2 baldes de aserrín que él tiró": a joint, no question.
            let joins = |before: &Node| {
                before.when().is_some() || (before.feed().is_some() || before.has(Cue::Thing)) && !question
            };
            if at > from && joins(&row.nodes[at - 1]) && !(node.any(&ASKS) && row.nodes[at - 1].feed().is_some()) {
                cues.remove(Cue::What);
            }
            // "e agora o pano está em chamas": and now, with more to come, asks nothing; "tudo certo" tells that all is well.
            let more = row.nodes[at + 1..to].iter().any(|node| !node.has(Cue::Chatter));
            if cues.has(Cue::Status) && !question && (cues.has(Cue::Now) && more || cues.has(Cue::Other)) {
                cues.remove(Cue::Status);
            }
            // "there is enough gas for supper" tells, where nothing asks.
            if cues.has(Cue::AskGas) && node.meaning.level.is_some() && !question {
                cues.remove(Cue::AskGas);
            }
            // "gesi iko sawa", "gesi ni nzuri": how much gas there is, not whether all is well or may go in.
            let gas = |node: &Node| node.any(&Cues::of(&[Cue::Gas, Cue::GasBag]));
            if node.meaning.level.is_some() && !question && row.nodes[from..=at].iter().any(gas) {
                cues.remove_all(&Cues::of(&[Cue::Status, Cue::Good4]));
            }
            made.cues.join(&cues);
        }
        let says = node.number().is_some()
            || node.quantity().is_some()
            || node.feed().is_some()
            || node.meaning.sign.is_some();
        if says && made.first_said == to {
            made.first_said = at;
        }
    }
    if !takes_out(&row.nodes[from..to]) {
        made.cues.remove(Cue::Remove);
    } else if empties_into(&row.nodes[from..to]) {
        made.cues.remove(Cue::Remove);
        made.cues.insert(Cue::Put);
    }
    // "added a bit more water than normal"
    let asks_water = |node: &Node| node.has(Cue::AskWater) && !node.has(Cue::Water);
    if made.has(Cue::Put) && !question && !made.has(Cue::CanI) && !row.nodes[from..to].iter().any(asks_water) {
        made.cues.remove(Cue::AskWater);
    }
    // "drained ten buckets for the garden", "slurry got in my eye" tell, and ask nothing.
    // "j'ai utilisé le digestat sur mes bananiers" too.
    const ASKS_HOW: Cues = Cues::of(&[Cue::How, Cue::HowMuch, Cue::CanI, Cue::What, Cue::Ration, Cue::Good4]);
    let used = made.has(Cue::Is) && made.any(&Cues::of(&[Cue::Put, Cue::Cook])) && !made.any(&ASKS_HOW);
    if (used || made.any(&Cues::of(&[Cue::Remove, Cue::Drinks, Cue::Body]))) && !question {
        made.cues.remove(Cue::AskDigestate);
    }
    // "2 jerrycans of slurry to the garden", "got 2 buckets from the outlet": taken out, though no verb says so.
    let nodes = &row.nodes[from..to];
    let measured = |node: &Node| {
        let portion = |unit| matches!(unit, UnitWord::Mass(_) | UnitWord::Volume(_) | UnitWord::Of(_));
        node.quantity().is_some_and(|q| !q.implied && q.unit.is_some_and(portion))
    };
    let from_outlet = nodes.iter().any(|node| node.has(Cue::Outlet))
        && nodes.iter().any(|node| node.has(Cue::Since))
        && !made.any(&Cues::of(&[Cue::Tank, Cue::Inlet, Cue::ComesOut]))
        && nodes.iter().all(|node| node.feed().is_none());
    if (from_outlet || made.has(Cue::AskDigestate)) && !question && !made.any(&ASKS_HOW) && nodes.iter().any(measured) {
        made.cues.remove(Cue::AskDigestate);
        made.cues.remove(Cue::Put);
        made.cues.insert(Cue::Remove);
    }
    // "gave the ration: 4 kg": told, and not asked for.
    let puts = |node: &Node| node.kind == Kind::Phrase && node.has(Cue::Put) && !node.has(Cue::Ration);
    let given = row.nodes[from..to].iter().any(puts)
        && row.nodes[from..to].iter().any(|node| node.quantity().is_some_and(|q| !q.implied));
    if made.has(Cue::Ration) && given && !question && !made.any(&Cues::of(&[Cue::HowMuch, Cue::CanI, Cue::What])) {
        made.cues.remove(Cue::Ration);
    }
    // "gas is full, it's good": said of nothing that could go in, and asked by nothing.
    let named = row.nodes[from..to].iter().any(|node| node.feed().is_some()) && !made.has(Cue::Smell);
    if made.has(Cue::Good4) && !question && !named && !made.any(&ASKS) {
        made.cues.remove(Cue::Good4);
    }
    made.habit = made.has(Cue::Habit);
    made.past = made.has(Cue::Was);
    made.present = made.has(Cue::Is) && !made.past || made.has(Cue::Now) || made.has(Cue::Still);
    // "the slurry straight on the beans or with water": which of the two is asked.
    let either = made.has(Cue::Or) && made.has(Cue::Fertilizer) && made.has(Cue::Crops);
    made.asks |= made.any(&ASKING) || either || asks_first(&row.nodes[from..to]);
    made.plan = made.any(&Cues::of(&[Cue::Will, Cue::PutPlan])) && !made.asks
        // "sí, 3 kg" typed without its accent is no "if".
        || made.has(Cue::If) && !(to == from + 1 && row.nodes[from].meaning.control.is_some())
        || made.has(Cue::Hypothetical);
    // "4 kg scraps last night" was done, though no verb says so.
    let done = made.past
        || made.any(&Cues::of(&[Cue::Put, Cue::PutNot, Cue::Cook]))
        || row.nodes[from..to].iter().any(measured);
    for at in from..to {
        match row.nodes[at].when() {
            Some(When::Day(day)) => made.days.push((at, day)),
            Some(When::LastNight) => made.days.push((at, if done { -1 } else { 0 })),
            Some(When::Ahead) => made.plan = true,
            Some(When::EitherWay(days)) => {
                if made.plan {
                } else if made.past
                    || made.any(&Cues::of(&[
                        Cue::Put,
                        Cue::Cook,
                        Cue::Fell,
                        Cue::Remove,
                        Cue::PutNot,
                        Cue::Start,
                        Cue::Ph,
                        Cue::Gauge,
                    ]))
                {
                    made.days.push((at, -days));
                }
            }
            Some(When::Ago(days)) if !made.has(Cue::Start) => made.days.push((at, -days)),
            _ => {}
        }
    }
    // "budhwar wali dawat ka pulao aaj dala": beside another day, one that a thing is said to be of dates the thing.
    let of_a_thing = |&(at, _): &(usize, i32)| {
        let part = row.lexicon.habits.part == Side::After && at + 2 < to && row.nodes[at + 1].kind == Kind::Phrase;
        let amount = |node: &Node| node.quantity().is_some() || node.number().is_some();
        part && row.nodes[at + 1].any(&Cues::of(&[Cue::Of, Cue::Sized])) && !amount(&row.nodes[at + 2])
    };
    if made.days.iter().any(|day| !of_a_thing(day)) {
        made.days.retain(|day| !of_a_thing(day));
    }
    // "yesterday 6 kg and now foam": now is a day of its own beside another.
    if !made.days.is_empty() {
        for at in from..to {
            if row.nodes[at].kind == Kind::Phrase && row.nodes[at].has(Cue::Now) {
                made.days.push((at, 0));
            }
        }
        made.days.sort_unstable();
    }
    made
}

/// "is my tank full", "does it smell": the word that asks opens the clause, and who or what follows at once.
fn asks_first(nodes: &[Node]) -> bool {
    const LEADS: Cues = Cues::of(&[Cue::And, Cue::But]);
    const WHAT: Cues = Cues::of(&[
        Cue::My,
        Cue::Gas,
        Cue::GasBag,
        Cue::Tank,
        Cue::Flame,
        Cue::Slurry,
        Cue::Water,
        Cue::ThatOne,
        Cue::WeAre,
        Cue::Chatter,
    ]);
    let first = nodes.iter().position(|node| !node.any(&LEADS) && !node.has(Cue::Chatter) && node.mark().is_none());
    let Some(first) = first.filter(|&at| nodes[at].has(Cue::AsksFirst) && nodes[at].kind == Kind::Phrase) else {
        return false;
    };
    nodes.get(first + 1).is_some_and(|next| {
        next.any(&WHAT) || next.number().is_some() || next.quantity().is_some() || next.feed().is_some()
    })
}
