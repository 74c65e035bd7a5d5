//! Taken back: a text that opens by denying an amount and then names another.
//!
//! Takes the row; says where what is kept begins.

use super::nodes::{Kind, Node};
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::tokens::Mark;
use super::wordlist::Side;

/// Any number but one of hours or days.
fn is_amount(node: &Node) -> bool {
    let quantity = node.quantity().filter(|q| !q.implied && q.number.is_some());
    node.number().is_some_and(|n| !n.weak)
        || quantity.is_some_and(|q| !matches!(q.unit, Some(UnitWord::Time(_) | UnitWord::Days(_))))
}

impl Reader<'_> {
    /// "2 litre tha 3 litre nahi": where "not" stands behind, an amount that ends the text and is denied takes back
    /// none, but keeps the one told before it. Gives where the denied one stands.
    pub(super) fn denied_last(&self) -> Option<usize> {
        const LITTLE: Cues = Cues::of(&[Cue::Is, Cue::Was, Cue::Chatter, Cue::Put, Cue::WeAre, Cue::Of, Cue::But]);
        let nodes = &self.row.nodes;
        if self.row.lexicon.habits.negation != Side::After {
            return None;
        }
        let amount = |at: usize| {
            let quantity = nodes[at].quantity().filter(|q| !q.implied && q.number.is_some());
            let measured = |unit| matches!(unit, Some(UnitWord::Mass(_) | UnitWord::Volume(_) | UnitWord::Of(_)));
            nodes[at].number().is_some_and(|n| !n.weak) || quantity.is_some_and(|q| measured(q.unit))
        };
        let last = (0..nodes.len()).rev().find(|&at| nodes[at].mark().is_none() && !nodes[at].any(&LITTLE))?;
        let not = nodes[last].kind == Kind::Phrase && nodes[last].has(Cue::Not);
        let denied = last.checked_sub(1).filter(|&at| not && amount(at))?;
        let mut amounts = (0..denied).filter(|&at| amount(at));
        let kept = amounts.next().filter(|_| amounts.next().is_none())?;
        let parted = (kept + 1..denied)
            .any(|at| nodes[at].mark().is_some() || nodes[at].any(&Cues::of(&[Cue::Is, Cue::Was, Cue::Put])));
        let plain = (0..denied).all(|at| {
            let node = &nodes[at];
            at == kept || node.mark().is_some() || node.feed().is_some() || node.when().is_some() || node.any(&LITTLE)
        });
        (parted && plain).then_some(denied)
    }

    /// "it was not 3 kg, it was 2": a text that opens by denying an amount, and names another after a pause.
    pub(super) fn denied_first(&self) -> Option<usize> {
        const LEADS: Cues = Cues::of(&[
            Cue::Is,
            Cue::Was,
            Cue::Meant,
            Cue::Sorry,
            Cue::Chatter,
            Cue::Put,
            Cue::WeAre,
            Cue::Of,
            Cue::Not,
            Cue::No,
        ]);
        let nodes = &self.row.nodes;
        // "I don put", where it means "I have put".
        let done = |at: usize| self.has(at, Cue::Put) && !self.has(at, Cue::Not);
        let denies = |at: usize| {
            self.speaks_of(at, &Cues::of(&[Cue::Not, Cue::No])) && nodes[at].kind == Kind::Phrase && !done(at)
        };
        let amount = |at: usize| is_amount(&nodes[at]);
        // "it was not rice, it was pasta"
        let was = !self.anywhere(&Cues::of(&[Cue::Put, Cue::PutNot, Cue::Cook]));
        let named = |at: usize| {
            amount(at) || was && !nodes[at].used && nodes[at].kind == Kind::Phrase && nodes[at].feed().is_some()
        };
        let first = (0..nodes.len().min(8)).find(|&at| named(at))?;
        let lead = |at: usize| nodes[at].mark().is_some() || nodes[at].kind == Kind::Phrase && nodes[at].any(&LEADS);
        let from = (0..first).rev().find(|&at| nodes[at].mark().is_some()).map_or(0, |at| at + 1);
        // "no, 3 kg": the "no" denies what was told, and "não 3 kg" is no denial for want of a verb.
        let verb = (from..first).any(|at| self.speaks_of(at, &Cues::of(&[Cue::Is, Cue::Was, Cue::Put])));
        let denied = (from..first).filter(|&at| denies(at)).count();
        // "not 2 buckets, 2 basins": a "not" that is no "no".
        let at_once = first > from && nodes[first - 1].has(Cue::Not) && nodes[first - 1].meaning.control.is_none();
        let opens = (0..first).all(lead) && denied > 0 && (verb || denied > 1 || at_once);
        let pause = (first + 1..nodes.len().min(first + 6))
            .find(|&at| {
                let is = nodes[at].kind == Kind::Phrase && nodes[at].has(Cue::Is);
                nodes[at].mark() == Some(Mark::Comma) || nodes[at].has(Cue::But) || is
            })
            .filter(|_| opens)?;
        let next = (pause + 1..nodes.len().min(pause + 6)).find(|&at| named(at))?;
        (!(pause + 1..next).any(denies)).then_some(pause + 1)
    }

    /// "I said 5 kg but it's 3": what was told earlier, and what it is. Gives where that begins.
    pub(super) fn said_before(&self) -> Option<usize> {
        const NEAR: usize = 4;
        let nodes = &self.row.nodes;
        let amount = |at: usize| is_amount(&nodes[at]);
        if self.anywhere(&Cues::of(&[Cue::Put, Cue::PutPlan])) || self.clauses.iter().any(|clause| clause.asks) {
            return None;
        }
        let said = (0..nodes.len()).find(|&at| nodes[at].has(Cue::ISaid) && nodes[at].kind == Kind::Phrase)?;
        let told = (said + 1..nodes.len().min(said + NEAR)).find(|&at| amount(at))?;
        let parts = |at: usize| nodes[at].mark() == Some(Mark::Comma) || nodes[at].any(&Cues::of(&[Cue::But, Cue::Is]));
        let pause = (told + 1..nodes.len().min(told + NEAR)).find(|&at| parts(at))?;
        let next = (pause + 1..nodes.len().min(pause + NEAR)).find(|&at| amount(at))?;
        let another_day = (pause + 1..nodes.len()).any(|at| nodes[at].when().is_some());
        (!another_day && next > pause).then_some(pause + 1)
    }
}
