//! Mends: corrections of what an earlier text told. What a text mends within itself is [`super::slips`].

use super::dishes::beast;
use super::foods::counted;
use super::measured::round;
use super::nodes::Kind;
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::{About, Control};
use super::wordlist::Contrast;
use bellyful_core::fact::{Measure, Unit, What};
use bellyful_core::feeds::Feed;

pub(super) const SLIPS: Cues = Cues::of(&[Cue::Meant, Cue::Sorry]);

/// What a contrast is about, so that like is matched with like.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Matter {
    Amount,
    Feed,
}

impl Reader<'_> {
    /// Whether the text mends an earlier one: "no, 3 not 5", "I meant cups". In-text mendings are made on the way.
    pub fn mends(&mut self) -> bool {
        self.mend_within();
        let Some(first) = (0..self.row.nodes.len()).find(|&at| !self.chatter(at)) else { return false };
        let leading_no = self.is_no(first) && self.no_stands_alone(first);
        // "it was", where the words say both: told of the tank when something was put in.
        let puts = self.anywhere(&Cues::of(&[Cue::Put]));
        let slip = (0..self.row.nodes.len()).any(|at| {
            let was = self.has(at, Cue::Was);
            // "that pepper was hot": nothing after it that could be meant.
            let after = || (at + 1..self.row.nodes.len()).any(|later| self.mendable(later));
            self.has(at, Cue::Meant) && !(was && (puts || !after()))
        });
        let contrast = self.contrast().is_some()
            || self.only_beasts() && self.kept_after_denied().is_some()
            || self.denied_first().is_some()
            || self.said_before().is_some()
            || self.denied_last().is_some();
        let sorry = self.has(first, Cue::Sorry) && (self.sorry_for_an_amount(first) || self.beasts_alone(1));
        if !(leading_no || slip || contrast || sorry) {
            return false;
        }
        // Something else than an amount or a feed is mended by stating it.
        let any = (0..self.row.nodes.len()).any(|at| self.mendable(at));
        any && !self.states_other() && self.clauses.iter().all(|clause| self.sized_barely(clause).is_none())
    }

    fn chatter(&self, at: usize) -> bool {
        let node = self.node(at);
        matches!(node.kind, Kind::Mark(_)) || node.kind == Kind::Phrase && node.has(Cue::Chatter) && !node.any(&SLIPS)
    }

    pub(super) fn is_no(&self, at: usize) -> bool {
        let node = self.node(at);
        node.kind == Kind::Phrase && (node.has(Cue::No) || node.meaning.order() == Some(&Control::No))
    }

    /// "no, 3": and not "no water" or "no gas".
    fn no_stands_alone(&self, at: usize) -> bool {
        let next =
            (at + 1..self.row.nodes.len()).find(|&i| matches!(self.node(i).kind, Kind::Mark(_)) || !self.chatter(i));
        let Some(next) = next.map(|next| self.node(next)) else { return false };
        match next.kind {
            Kind::Mark(_) | Kind::Number(_) => true,
            Kind::Quantity(q) => {
                !q.implied && q.unit.is_some() && q.number.is_some_and(|n| !n.fraction || q.unit.is_some())
            }
            Kind::Phrase => {
                next.any(&Cues::of(&[Cue::Is, Cue::Was, Cue::Meant, Cue::Sorry, Cue::No]))
                    || self.only_so_much(at)
                    || next.meaning.control == self.node(at).meaning.control && next.meaning.control.is_some()
            }
            _ => false,
        }
    }

    /// "no I only put 1 kg": one amount of nothing named, and no more than that. "no solo puse 1 kg" denies the only.
    fn only_so_much(&self, no: usize) -> bool {
        const LITTLE: Cues = Cues::of(&[
            Cue::Put,
            Cue::Only,
            Cue::My,
            Cue::Other,
            Cue::Chatter,
            Cue::Was,
            Cue::Is,
            Cue::Sorry,
            Cue::About,
            Cue::In,
            Cue::Tank,
            Cue::WeAre,
            Cue::What,
        ]);
        let after = no + 1..self.row.nodes.len();
        let amount = |&at: &usize| {
            let node = self.node(at);
            node.quantity().is_some_and(|q| !q.implied && q.number.is_some()) || node.number().is_some_and(|n| !n.weak)
        };
        let little = |at: usize| {
            let node = self.node(at);
            node.mark().is_some() || node.kind == Kind::Phrase && node.any(&LITTLE) && node.feed().is_none()
        };
        after.clone().skip(1).any(|at| self.has(at, Cue::Only))
            && after.clone().any(|at| self.has(at, Cue::Put))
            && after.clone().filter(amount).count() == 1
            && after.clone().all(|at| amount(&at) || little(at))
    }

    /// "sorry it was 3 kg", "sorry 3 kg": and not "sorry, fed 3 kg" or "sorry, 3 kg rice", a report that comes late.
    fn sorry_for_an_amount(&self, sorry: usize) -> bool {
        let nodes = &self.row.nodes[sorry + 1..];
        let Some(next) = nodes.iter().find(|node| node.mark().is_none()) else { return false };
        let was = next.kind == Kind::Phrase && next.any(&Cues::of(&[Cue::Is, Cue::Was]));
        let only = next.quantity().is_some_and(|q| !q.implied) && nodes.iter().all(|node| node.feed().is_none());
        (was || only) && !self.anywhere(&Cues::of(&[Cue::Put, Cue::PutNot, Cue::Water, Cue::Cook]))
    }

    fn mendable(&self, at: usize) -> bool {
        let node = self.node(at);
        !node.used
            && !node.has(Cue::But)
            && (self.beast_at(at).is_some()
                || node.number().is_some_and(|n| !n.weak)
                || node.feed().is_some()
                || node.quantity().is_some_and(|q| !matches!(q.unit, Some(UnitWord::Time(_) | UnitWord::Days(_)))))
    }

    /// The text states something that is not an amount of feed: minutes, temperature, flame.
    fn states_other(&self) -> bool {
        (0..self.row.nodes.len()).any(|at| {
            let node = self.node(at);
            node.quantity().is_some_and(|q| {
                matches!(
                    q.unit,
                    Some(
                        UnitWord::Time(_)
                            | UnitWord::Celsius
                            | UnitWord::Fahrenheit
                            | UnitWord::Degree
                            | UnitWord::Pressure(_)
                    )
                )
            }) || node.kind == Kind::Phrase
                && node.any(&Cues::of(&[
                    Cue::Temp,
                    Cue::Ph,
                    Cue::Gauge,
                    Cue::Flame,
                    Cue::PeopleAre,
                    Cue::People,
                    Cue::LiveIn,
                ]))
        }) && !self.anywhere(&Cues::of(&[Cue::Put]))
            || self.anywhere(&Cues::of(&[Cue::Temp, Cue::Ph, Cue::Gauge]))
    }

    /// The dung of a beast named alone, where the text speaks of nothing but beasts and their dung: "not cow, pig".
    fn beast_at(&self, at: usize) -> Option<Feed> {
        beast(self.node(at))
            .filter(|_| self.node(at).feed().is_none_or(|feed| feed == Feed::Meat) && self.only_beasts())
    }

    fn only_beasts(&self) -> bool {
        *self.only_beasts.get_or_init(|| self.beasts_alone(2))
    }

    /// Whether the text names so many beasts or their dung, and says nothing else.
    fn beasts_alone(&self, least: usize) -> bool {
        const JOINTS: Cues = Cues::of(&[
            Cue::Not,
            Cue::No,
            Cue::But,
            Cue::Of,
            Cue::Is,
            Cue::Was,
            Cue::My,
            Cue::In,
            Cue::And,
            Cue::Dung,
            Cue::Sorry,
            Cue::Meant,
            Cue::Chatter,
            Cue::Put,
            Cue::Holds,
        ]);
        let mut beasts = 0;
        let all = self.row.nodes.iter().all(|node| {
            let dung = node.feed().is_some_and(|feed| feed.id().ends_with("manure"));
            beasts += usize::from(dung || beast(node).is_some());
            let article = node.number().is_some_and(|number| number.weak);
            let said = node.kind == Kind::Phrase && (node.any(&JOINTS) || node.meaning.control.is_some());
            dung || beast(node).is_some() || article || said || node.mark().is_some()
        });
        all && beasts >= least
    }

    /// "not cow, pig": what stands after the denied one and a pause.
    fn kept_after_denied(&self) -> Option<usize> {
        const PAUSE: Cues = Cues::of(&[Cue::But, Cue::Is, Cue::Was, Cue::Holds]);
        let nodes = &self.row.nodes;
        let named = |at: &usize| beast(&nodes[*at]).is_some() || nodes[*at].feed().is_some();
        let denied = (0..nodes.len()).find(named)?;
        // "no era": the denial is within the phrase.
        let says_not = |at: usize| {
            self.is_no(at) || self.row.words_of(at).any(|meaning| meaning.cues.any(&Cues::of(&[Cue::Not, Cue::No])))
        };
        let not = (0..denied).rev().take_while(|&at| nodes[at].mark().is_none()).any(says_not);
        let pause = (denied + 1..nodes.len()).find(|&at| nodes[at].mark().is_some() || nodes[at].any(&PAUSE))?;
        (not && (pause + 1..nodes.len()).any(|at| named(&at))).then_some(pause + 1)
    }

    /// Where a "not" parts two values of one kind: (node of the not).
    fn contrast(&self) -> Option<usize> {
        let matter = |at: usize| {
            let node = self.node(at);
            if node.feed().is_some() || self.beast_at(at).is_some() {
                Some(Matter::Feed)
            } else if node.number().is_some_and(|n| !n.weak)
                || node
                    .quantity()
                    .is_some_and(|q| !matches!(q.unit, Some(UnitWord::Time(_) | UnitWord::Days(_)) | None))
            {
                Some(Matter::Amount)
            } else {
                None
            }
        };
        for at in 1..self.row.nodes.len() {
            let node = self.node(at);
            // "2 kg riz plus 1 kg manioc": the word for "no more" joins as well.
            // "ni viande ni os": neither is kept.
            let neither = node.has(Cue::And) || node.has(Cue::Or);
            if node.kind != Kind::Phrase || !node.has(Cue::Not) || neither {
                continue;
            }
            let after: Vec<Matter> = (at + 1..self.row.nodes.len().min(at + 4)).filter_map(matter).collect();
            let before: Vec<Matter> = (at.saturating_sub(6)..at).filter_map(matter).collect();
            let put_after = (at + 1..self.row.nodes.len().min(at + 4))
                .any(|i| self.has(i, Cue::Put) && self.node(i).kind == Kind::Phrase);
            let near = (at + 1..self.row.nodes.len().min(at + 3)).any(|i| matter(i).is_some());
            if near && !put_after && after.first().is_some_and(|first| before.contains(first)) {
                return Some(at);
            }
        }
        None
    }

    /// Tells the corrected value: what the text keeps, not what it takes back.
    /// "no eran 5, eran 3": where what it was stands, after what it was not.
    fn was_not_but_was(&self) -> Option<usize> {
        const WAS: Cues = Cues::of(&[Cue::Was, Cue::Is, Cue::Meant]);
        let end = self.row.nodes.len();
        let not = (0..end).find(|&at| self.has(at, Cue::Meant) && self.speaks_of(at, &Cues::of(&[Cue::Not])))?;
        let was = (not + 2..end).find(|&at| self.node(at).any(&WAS) && (at + 1..end).any(|i| self.mendable(i)))?;
        self.mendable(not + 1).then_some(was)
    }

    pub fn corrected(&mut self) {
        let contrast = self.contrast();
        let second = self.row.lexicon.habits.contrast == Contrast::Second;
        let all = 0..self.row.nodes.len();
        let kept: Vec<usize> = match contrast {
            Some(not) if second => all.filter(|&at| at > not).collect(),
            Some(not) => all.filter(|&at| at < not).collect(),
            None => match self.denied_last() {
                Some(end) => all.filter(|&at| at < end).collect(),
                None => {
                    let beast = || self.only_beasts().then(|| self.kept_after_denied().unwrap_or(0));
                    let first = self.denied_first().or_else(|| self.was_not_but_was());
                    let from = first.or_else(|| self.said_before()).or_else(beast).unwrap_or(0);
                    all.filter(|&at| at >= from).collect()
                }
            },
        };
        let first = kept.iter().copied().find(|&at| self.mendable(at));
        let (mut amount, mut unit, mut feed, mut doubt) = (None, None, None, None);
        let said = |reader: &Self, at: usize| (!reader.node(at).used).then(|| reader.node(at).kind);
        for &at in &kept {
            match said(self, at) {
                Some(Kind::Number(number)) if !number.weak && amount.is_none() => {
                    amount = Some(number.value);
                    doubt = number.doubtful().then_some(at);
                }
                Some(Kind::Quantity(quantity)) if amount.is_none() || unit.is_none() => {
                    let named = match quantity.unit {
                        Some(UnitWord::Mass(_)) => Some(Unit::Kg),
                        Some(UnitWord::Volume(_)) => Some(Unit::L),
                        Some(UnitWord::Of(measure)) => Some(Unit::Of(measure)),
                        _ => continue,
                    };
                    unit = named;
                    let own = self.row.nodes[at].meaning.number.is_some();
                    if !quantity.implied || own {
                        amount = quantity.in_base().or(amount);
                    }
                }
                Some(Kind::Phrase) if feed.is_none() => feed = self.beast_at(at).or(self.node(at).feed()),
                _ => {}
            }
        }
        // "gobar 4 nahi 6 kg tha": of what it was is said with what is taken back.
        if second && feed.is_none() && amount.is_some() && contrast.is_some() {
            feed = (0..self.row.nodes.len()).find_map(|at| self.node(at).feed());
        }
        if unit.is_none() && amount.is_some() && feed.is_some_and(counted) {
            unit = Some(Unit::Of(Measure::Piece));
        }
        if let Some(at) = doubt {
            self.doubt(About::Amount, at, at + 1);
        } else if let Some(at) = first {
            let amount = amount.map(|amount| round(amount, 4));
            self.tell(at, None, What::Corrected { amount, unit, feed });
        }
    }
}
