//! Questions: what the text wants to know.

use super::clauses::Clause;
use super::nodes::{Kind, When};
use super::notions::{Cue, Cues};
use super::reader::Reader;
use super::reading::Ask;
use super::tokens::Mark;
use bellyful_core::fact::GasLevel;
use bellyful_core::feeds::Feed;

impl Reader<'_> {
    pub fn questions(&mut self) {
        for at in 0..self.clauses.len() {
            let clause = self.clauses[at].clone();
            self.question(&clause);
        }
    }

    fn question(&mut self, clause: &Clause) {
        let at = self.asks.len();
        if self.calls_for_somebody(clause) && !self.asks.contains(&Ask::Person) {
            self.ask(Ask::Person);
        }
        if clause.has(Cue::History) {
            let of = self.household_named(clause);
            self.ask(Ask::History { of });
            self.use_up(clause.range());
            return;
        }
        if !clause.asks {
            return;
        }
        let feeds: Vec<usize> =
            clause.range().filter(|&i| self.node(i).feed().is_some() && !self.has(i, Cue::Fertilizer)).collect();
        if feeds.is_empty() && self.asks_of_a_plan(clause) {
            return;
        }
        let how_much = clause.has(Cue::HowMuch);
        let gas = clause.any(&Cues::of(&[Cue::Gas, Cue::Cook, Cue::Stove, Cue::GasBag, Cue::Lasted, Cue::FireWord]));
        let put = clause.any(&Cues::of(&[Cue::Put, Cue::PutPlan, Cue::Ration]));
        let water = clause.range().find(|&i| self.has(i, Cue::Water) && self.node(i).feed().is_none());
        let fertilizer = clause.any(&Cues::of(&[Cue::Fertilizer, Cue::Crops]));
        if clause.has(Cue::Why) {
            self.ask(Ask::Why);
        }
        if clause.has(Cue::AskGas) {
            self.ask(Ask::Gas);
        }
        let new = Cues::of(&[Cue::Start, Cue::NewTank, Cue::Seed, Cue::Tank]);
        if clause.has(Cue::AskDigestate)
            || clause.has(Cue::Slurry) && clause.has(Cue::How) && put && !clause.any(&new)
            || fertilizer
                && clause.any(&Cues::of(&[Cue::How, Cue::HowMuch, Cue::CanI, Cue::What, Cue::Or, Cue::Ration]))
                && (clause.has(Cue::Fertilizer) || clause.has(Cue::Crops) && !put)
        {
            self.ask(Ask::Digestate);
        } else if clause.has(Cue::StartUp)
            || clause.any(&Cues::of(&[Cue::How, Cue::What, Cue::HowMuch]))
                && clause.any(&Cues::of(&[Cue::Start, Cue::NewTank, Cue::Seed]))
                && !clause.has(Cue::HowLong)
            || clause.any(&Cues::of(&[Cue::Status, Cue::Ration])) && clause.has(Cue::Seed) && feeds.is_empty()
        {
            self.ask(Ask::StartUp);
            // "how do I start it and how much water"
            if clause.has(Cue::AskWater) {
                self.ask(Ask::Water);
            }
        } else if clause.has(Cue::AskWater)
            || how_much && water.is_some() && feeds.is_empty()
            || self.litres_are_asked(clause) && !gas
            || clause.has(Cue::CanI) && put && self.water_before_feeds(&feeds, water)
        {
            self.ask(Ask::Water);
            // "how much water and how much dung do I put"
            let again = |i: usize| self.has(i, Cue::HowMuch) && self.node(i + 1).feed().is_some();
            if (clause.from..clause.to.saturating_sub(1)).any(again) {
                self.ask(Ask::Ration);
            }
        } else if (how_much || clause.has(Cue::HowLong)) && gas && !clause.has(Cue::Ration) {
            self.ask(Ask::Gas);
        } else if how_much && water.is_some() && self.water_is_asked(clause, water) {
            self.ask(Ask::Water);
        } else if let Some(what) = clause
            .range()
            .find_map(|at| self.node(at).alkali())
            .filter(|_| put || clause.any(&Cues::of(&[Cue::CanI, Cue::Good4])))
        {
            self.ask(Ask::CanMend { what });
        } else if clause.any(&Cues::of(&[Cue::CanI, Cue::Good4, Cue::Ration]))
            && !feeds.is_empty()
            && !(clause.has(Cue::Ration) && feeds.iter().all(|&i| self.node(i).feed() == Some(Feed::FoodWaste)))
            && !(how_much && !self.how_much_too(clause) || clause.has(Cue::AskGas))
            && (put || clause.has(Cue::Good4) || !self.only_cooks(clause))
        {
            self.may_go_in(&feeds);
            if self.how_much_too(clause) {
                self.ask(Ask::Ration);
            }
        } else if let Some(meant) = self.food_meant(clause) {
            self.may_go_in(&meant);
            self.use_up(meant);
        } else if clause.has(Cue::CanI) && put && feeds.is_empty() && water.is_some() && !how_much {
            self.ask(Ask::Water);
        } else if clause.has(Cue::Ration)
            || how_much && (put || !feeds.is_empty())
            || clause.has(Cue::CanI) && put && feeds.is_empty() && water.is_none()
        {
            self.ask(Ask::Ration);
        } else if how_much
            && !clause.has(Cue::Why)
            && clause.range().all(|i| !self.node(i).unknown())
            && clause.to - clause.from <= 4
        {
            self.ask(Ask::Ration);
        }
        // "is 2 kg per day enough for 6 people"
        let amount = |i: usize| {
            use super::notions::UnitWord;
            let food = |unit| matches!(unit, UnitWord::Mass(_) | UnitWord::Of(_));
            self.node(i).quantity().is_some_and(|q| !q.implied && q.unit.is_some_and(food))
        };
        let enough = clause.any(&Cues::of(&[Cue::TooMuch, Cue::Lasted]))
            || clause.range().any(|i| self.node(i).meaning.level.is_some());
        let of_gas = clause.any(&Cues::of(&[Cue::Gas, Cue::GasBag, Cue::Cook, Cue::Stove]));
        if self.asks.len() == at && enough && !of_gas && clause.range().any(amount) {
            self.ask(Ask::Ration);
        }
        if self.asks[at..].contains(&Ask::Ration) {
            let ahead = |i| matches!(self.node(i).when(), Some(When::Ahead | When::EitherWay(_)));
            self.asks_ahead |= clause.range().any(ahead);
        }
        // "gauge at 14 cm, is it good?"
        let question = self.row.nodes.get(clause.to).is_some_and(|node| node.mark() == Some(Mark::Question));
        let is_it_good = question && clause.has(Cue::Good4) && feeds.is_empty() && water.is_none();
        let good = |i: usize| self.node(i).meaning.level == Some(GasLevel::Good);
        let tank_is_good = question && clause.has(Cue::Tank) && !gas && clause.range().any(good);
        // Where only the voice asks, "está tudo bem" without its mark is an answer.
        let is_well = !question && clause.range().any(|i| self.has(i, Cue::Status) && good(i));
        if (clause.has(Cue::Status) && !is_well || is_it_good || tank_is_good) && self.asks.len() == at {
            self.ask(Ask::Status);
        }
        let cooked = !put && !clause.has(Cue::Good4) && self.only_cooks(clause);
        if self.asks.len() == at && !feeds.is_empty() && !cooked && self.plain_question(clause) {
            // "and soil?" after "may sawdust go in?"; "banana peels ok?"
            // "where do I put the slurry, on tomatoes?"
            if self.asks.contains(&Ask::Digestate) && clause.any(&Cues::of(&[Cue::To, Cue::Crops])) {
                return;
            }
            let earlier = self.asks.iter().any(|ask| matches!(ask, Ask::CanFeed { .. }));
            let short = clause.range().filter(|&i| matches!(self.node(i).kind, Kind::Unknown)).count() == 0
                && clause.range().all(|i| self.node(i).quantity().is_none_or(|q| q.implied));
            if earlier || short {
                self.may_go_in(&feeds);
            }
        }
        // Amounts inside a question are no facts; what is so may still be told by a "why".
        let amounts: Vec<usize> = clause
            .range()
            .filter(|&i| {
                let node = self.node(i);
                node.feed().is_some()
                    || node.number().is_some()
                    || node
                        .quantity()
                        .is_some_and(|q| q.unit.is_some() && !matches!(q.unit, Some(super::notions::UnitWord::Time(_))))
                    || self.asks.len() > at && node.has(Cue::Water)
            })
            .collect();
        let keep_amounts = self.asks.len() == at && !self.plain_question(clause);
        if !keep_amounts && !clause.any(&Cues::of(&[Cue::Why])) {
            self.use_up(amounts);
        }
    }

    /// "if I put 20 kg of hyacinth, is it ok?": what the clause before would put in.
    fn asks_of_a_plan(&mut self, clause: &Clause) -> bool {
        const MAY: Cues = Cues::of(&[Cue::CanI, Cue::Good4, Cue::Status]);
        let Some(before) = self.clause_before(clause).filter(|before| before.plan && clause.any(&MAY)) else {
            return false;
        };
        let supposed = before.any(&Cues::of(&[Cue::If, Cue::Hypothetical]));
        let feeds: Vec<usize> = before.range().filter(|&i| self.node(i).feed().is_some()).collect();
        if !supposed || feeds.is_empty() || clause.any(&Cues::of(&[Cue::Gas, Cue::Flame, Cue::HowMuch, Cue::Water])) {
            return false;
        }
        self.may_go_in(&feeds);
        true
    }

    /// "send somebody", or a bare "technician"; "the technician mended the pipe" calls for none.
    fn calls_for_somebody(&self, clause: &Clause) -> bool {
        let little = |at: usize| {
            let node = self.node(at);
            node.any(&Cues::of(&[Cue::Chatter, Cue::My, Cue::Person, Cue::Now]))
                || node.number().is_some_and(|n| n.weak)
        };
        clause.range().any(|at| {
            self.has(at, Cue::Person)
                && (!self.node(at).any(&Cues::of(&[Cue::Folk, Cue::Other])) || clause.range().all(little))
        })
    }

    /// "I can only cook tea": the food is the family's.
    fn only_cooks(&self, clause: &Clause) -> bool {
        clause.range().any(|at| {
            let node = self.node(at);
            node.kind == Kind::Phrase && node.has(Cue::Cook) && !node.has(Cue::Modifier) && node.feed().is_none()
        })
    }

    fn plain_question(&self, clause: &Clause) -> bool {
        clause.asks
    }

    /// "how much water with 3 kg peels": the water is asked for, not the peels.
    fn water_is_asked(&self, clause: &Clause, water: Option<usize>) -> bool {
        let Some(water) = water else { return false };
        clause.range().find(|&i| self.has(i, Cue::HowMuch)).is_some_and(|how| how.abs_diff(water) <= 2)
    }

    /// "how many litres should I mix with 3 kg peels"
    fn litres_are_asked(&self, clause: &Clause) -> bool {
        use super::notions::UnitWord;
        let litres = |at: usize| {
            let node = self.node(at);
            let unit = node.quantity().and_then(|q| q.unit).or(node.meaning.unit).filter(|_| !node.meaning.letter);
            matches!(unit, Some(UnitWord::Volume(_)))
        };
        (clause.from + 1..clause.to).any(|at| self.has(at - 1, Cue::HowMuch) && litres(at))
    }

    /// "do I have to add water if the dung is wet": the water is what may go in.
    fn water_before_feeds(&self, feeds: &[usize], water: Option<usize>) -> bool {
        let Some(water) = water else { return false };
        let joined =
            self.row.nodes.get(water + 1).is_some_and(|next| next.any(&Cues::of(&[Cue::And, Cue::With, Cue::Of])));
        let after = self.row.nodes.get(water + 1).is_some_and(|next| next.feed().is_some());
        !joined && !after && feeds.iter().all(|&feed| feed > water)
    }

    /// "a hen died of heat, can it go in": the food of the clause before, of which nothing else was told.
    fn food_meant(&self, clause: &Clause) -> Option<Vec<usize>> {
        const GOES: Cues = Cues::of(&[Cue::Put, Cue::PutPlan, Cue::GoesIn, Cue::Enters, Cue::In]);
        const DONE: Cues = Cues::of(&[Cue::Put, Cue::Fell, Cue::Remove, Cue::Seed, Cue::Smell]);
        let more = |at: usize| {
            let node = self.node(at);
            node.feed().is_some() || node.has(Cue::Water) || node.number().is_some() || node.quantity().is_some()
        };
        let before = self.clause_before(clause).filter(|before| !before.any(&DONE) && !before.asks)?;
        let asks = clause.has(Cue::CanI) && clause.any(&GOES) && !clause.has(Cue::HowMuch) && !clause.range().any(more);
        let named = before.range().any(|at| self.node(at).feed().is_some());
        (asks && named).then(|| before.range().filter(|&at| more(at)).collect())
    }

    /// "can I give orange peels and how much"
    fn how_much_too(&self, clause: &Clause) -> bool {
        const MUCH: Cues = Cues::of(&[Cue::HowMuch, Cue::Ration]);
        let and = |at: usize| self.has(at, Cue::And) && self.node(at).kind == Kind::Phrase;
        let feed = clause.range().find(|&at| self.node(at).feed().is_some());
        feed.is_some_and(|feed| {
            (feed + 1..clause.to.saturating_sub(1)).any(|at| and(at) && self.node(at + 1).any(&MUCH))
        })
    }

    fn may_go_in(&mut self, feeds: &[usize]) {
        let named: Vec<_> = feeds.iter().filter_map(|&at| self.node(at).feed().map(|feed| (at, feed))).collect();
        for (_, feed) in named {
            self.ask(Ask::CanFeed { feed });
        }
    }
}
