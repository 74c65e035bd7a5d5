//! Unfed: days on which nothing went in, and days of water only.

use super::super::clauses::Clause;
use super::super::nodes::{Kind, When};
use super::super::notions::{BEASTS, Cue, Cues, UnitWord};
use super::super::reader::Reader;
use super::super::reading::{About, Told};
use bellyful_core::fact::{GasLevel, Unit, What};
use bellyful_core::feeds::Feed;

fn named_food(reader: &Reader, clause: &Clause) -> bool {
    clause.range().any(|at| reader.node(at).feed().is_some())
}

impl Reader<'_> {
    /// Days without feeding, and "only water".
    pub fn not_fed(&mut self) {
        for at in 0..self.clauses.len() {
            let clause = self.clauses[at].clone();
            if clause.plan || clause.asks && !clause.any(&Cues::of(&[Cue::Why, Cue::Status, Cue::CanI])) {
                continue;
            }
            self.fed_unsaid(&clause);
            self.only_water(&clause);
            if clause.asks && clause.has(Cue::CanI) {
                continue;
            }
            self.unfed_clause(&clause, at);
        }
        self.end_gap_at_feeding();
    }

    /// "already fed today": that it was fed is told, and nothing of what.
    fn fed_unsaid(&mut self, clause: &Clause) {
        const LITTLE: Cues = Cues::of(&[
            Cue::Feeds,
            Cue::WeAre,
            Cue::Chatter,
            Cue::Tank,
            Cue::My,
            Cue::Still,
            Cue::Morning,
            Cue::At,
            Cue::Noon,
            Cue::ThatOne,
            Cue::Folk,
            Cue::Yes,
            Cue::Now,
            Cue::Only,
            Cue::Is,
        ]);
        let feeds = clause.range().find(|&at| self.free(at, Cue::Feeds));
        let Some(at) = feeds.filter(|_| !clause.asks && !clause.habit) else { return };
        let little = |i: usize| {
            let node = self.node(i);
            let said = node.kind == Kind::Phrase && node.any(&LITTLE) && node.meaning.sign.is_none();
            said && node.feed().is_none() || node.when().is_some()
        };
        let told = self.facts.iter().any(|(_, told)| matches!(told.what, What::Fed { .. } | What::NotFed { .. }));
        if clause.range().all(little) && !told && self.unsure.is_empty() {
            let what = What::Fed { feed: Feed::FoodWaste, amount: None, unit: None };
            self.tell(at, Some(clause.day(at)), what);
            self.use_up(clause.range());
        }
    }

    fn only_water(&mut self, clause: &Clause) {
        // "2 jugs of water, and nothing else"
        let little = |at: usize| self.node(at).any(&Cues::of(&[Cue::And, Cue::Nothing, Cue::Put, Cue::Only, Cue::Of]));
        let nothing_else = self
            .clause_after(clause, clause.to)
            .is_some_and(|next| next.has(Cue::Nothing) && next.has(Cue::And) && next.range().all(little));
        // "pani kam dala, 3 litre bas": less than on other days.
        let less = clause.range().any(|at| self.node(at).meaning.level == Some(GasLevel::Low));
        if !clause.has(Cue::Only) && !nothing_else || clause.has(Cue::Gas) || less {
            return;
        }
        // "my jerrycan leaks so only 12 litres of water went in": only so much, not nothing else.
        let vessel = |at: usize| self.node(at).quantity().is_some_and(|q| q.implied);
        let water = clause.range().find(|&at| self.has(at, Cue::Water)).unwrap_or(clause.to);
        let before = self.sentence(clause).from..water;
        let leaks = before.clone().any(vessel) && before.clone().any(|at| self.has(at, Cue::Leak));
        if before.len() < 14 && (leaks || before.clone().any(|at| self.has(at, Cue::NotOurs))) {
            return;
        }
        let here: Vec<&(usize, Told)> = self.facts.iter().filter(|(at, _)| clause.range().contains(at)).collect();
        let water = here
            .iter()
            .find(|(_, told)| matches!(told.what, What::Water { amount, .. } if amount != Some(0.0)))
            .map(|(at, told)| (*at, told.day));
        let fed = self.facts.iter().any(|(_, told)| {
            matches!(told.what, What::Fed { .. } | What::NotFed { .. } | What::Seeded { .. })
                && water.is_some_and(|(_, day)| day == told.day)
        });
        if let Some((at, day)) = water.filter(|_| !fed) {
            self.tell(at, day, What::NotFed { days: 1 });
        }
    }

    /// "yesterday I forgot": of what else would they, when nothing else is said.
    fn forgotten(&mut self, clause: &Clause) {
        const LITTLE: Cues = Cues::of(&[
            Cue::Forgot,
            Cue::My,
            Cue::Chatter,
            Cue::Sorry,
            Cue::Other,
            Cue::But,
            Cue::And,
            Cue::Morning,
            Cue::Now,
            Cue::Was,
            Cue::Again,
        ]);
        let forgot = clause.range().find(|&at| self.has(at, Cue::Forgot));
        let day = clause.range().find_map(|at| match self.node(at).when() {
            Some(When::Day(day)) if day <= 0 => Some(day),
            Some(When::LastNight) => Some(-1),
            _ => None,
        });
        let little = |at: usize| self.node(at).when().is_some() || self.node(at).any(&LITTLE);
        let (Some(at), Some(day)) = (forgot, day) else { return };
        if clause.range().all(little) && !clause.asks {
            self.tell(at, Some(day), What::NotFed { days: 1 });
        }
    }

    fn unfed_clause(&mut self, clause: &Clause, index: usize) {
        self.nothing_on_another_day(clause);
        self.forgotten(clause);
        let told_here = self.facts.iter().any(|(at, told)| {
            clause.range().contains(at)
                && matches!(
                    told.what,
                    What::Fed { .. }
                        | What::NotFed { .. }
                        | What::Water { amount: Some(0.0), .. }
                        | What::Seeded { .. }
                        | What::Removed { .. }
                )
        });
        if told_here
            && !self
                .facts
                .iter()
                .any(|(at, told)| clause.range().contains(at) && matches!(told.what, What::NotFed { .. }))
        {
            if !clause.has(Cue::PutNot)
                && !self.nor_water(clause)
                && !clause.range().any(|i| matches!(self.node(i).when(), Some(When::Span(_) | When::Since(_))))
            {
                return;
            }
        }
        let put_denied = clause.range().find(|&at| {
            let node = self.node(at);
            node.kind == Kind::Phrase
                && (node.has(Cue::PutNot)
                    || node.has(Cue::Put) && (self.denied(clause, at) || clause.has(Cue::Nothing)))
        });
        let nothing = self
            .find(clause, &Cues::of(&[Cue::Nothing]))
            .filter(|&at| !self.node(at).used && self.nothing_is_said_of_food(clause, index, at));
        let Some(at) = put_denied.or(nothing) else { return };
        // "somebody forgot the tap open"
        if clause.has(Cue::Pipe) && !clause.has(Cue::Put) && !named_food(self, clause) {
            return;
        }
        // "my cow is ill and does not eat": no tank is.
        if clause.any(&BEASTS) && !clause.any(&Cues::of(&[Cue::Dung, Cue::Tank, Cue::Put])) && !named_food(self, clause)
        {
            return;
        }
        // "didn't put water": of water only.
        let water = clause.range().find(|&i| self.has(i, Cue::Water) && self.node(i).feed().is_none());
        if water.is_some()
            && !self.nor_water(clause)
            && !clause.has(Cue::Only)
            && (self.facts.iter().any(|(told, _)| clause.range().contains(told))
                || put_denied.is_some()
                    && !clause.range().any(|i| self.node(i).feed().is_some())
                    && !clause.has(Cue::Nothing))
        {
            if !self
                .facts
                .iter()
                .any(|(told, fact)| clause.range().contains(told) && matches!(fact.what, What::Water { .. }))
            {
                self.tell(at, Some(clause.day(at)), What::Water { amount: Some(0.0), unit: Some(Unit::L) });
            }
            return;
        }
        // "no le eché comida ni agua"
        if let Some(water) = water
            && put_denied.is_some()
            && !clause.has(Cue::Only)
            && water > clause.from
            && self.node(water - 1).any(&Cues::of(&[Cue::Or, Cue::Not, Cue::Without]))
            && named_food(self, clause)
        {
            self.tell(water, Some(clause.day(water)), What::Water { amount: Some(0.0), unit: Some(Unit::L) });
        }
        // A named feed denied is not all feeding denied.
        let named = clause
            .range()
            .any(|i| self.node(i).feed().is_some_and(|feed| feed != Feed::FoodWaste) && !self.node(i).used);
        if named && nothing.is_none() {
            return;
        }
        let mut days = 1;
        let mut day = clause.day(at);
        for i in clause.range() {
            match self.node(i).when() {
                Some(When::Span(n)) | Some(When::Ago(n)) if n >= 1 => {
                    days = n;
                    day = 0;
                }
                // "há dois dias que não ponho nada"
                Some(When::Day(n)) if n < -1 && self.has(i + 1, Cue::What) => {
                    days = -n;
                    day = 0;
                }
                Some(When::Since(n)) if n >= 1 => {
                    days = n;
                    day = 0;
                }
                // "4 dias nadie lo alimento": with no "for" or "since".
                _ => match self.node(i).quantity().filter(|q| matches!(q.unit, Some(UnitWord::Days(_)))) {
                    Some(span) if days == 1 && !clause.asks => {
                        days = span.in_base().map_or(1, |days| days.round().max(1.0) as i32)
                    }
                    _ => {}
                },
            }
        }
        if let Some((from, _)) = self.unclear_day(clause) {
            self.doubt(About::Day, from, from + 1);
            return;
        }
        if days == 1 {
            days = self.whole_span(clause).or_else(|| self.span_beside(index)).unwrap_or(1);
        }
        if days == 1 && (self.days_in_a_row(clause) || self.each_day_denied(clause) || self.neither_day(clause)) {
            // "neither yesterday nor today"
            for (node, day) in clause.days.clone() {
                self.tell(node, Some(day), What::NotFed { days: 1 });
            }
        } else {
            self.facts
                .retain(|(told, fact)| !(clause.range().contains(told) && matches!(fact.what, What::NotFed { .. })));
            self.tell(at, Some(day), What::NotFed { days: days as u32 });
        }
        self.use_up(clause.range());
    }

    /// "nothing fed and no water added": neither.
    fn nor_water(&self, clause: &Clause) -> bool {
        let told = self.facts.iter().find(|(at, told)| {
            clause.range().contains(at) && matches!(told.what, What::Water { amount: Some(0.0), .. })
        });
        let Some(&(water, _)) = told else { return false };
        let fed = |from: usize, to: usize| {
            let says = |cue: Cue| (from..to).any(|at| self.has(at, cue) && self.node(at).kind == Kind::Phrase);
            says(Cue::PutNot) || says(Cue::Put) && says(Cue::Nothing)
        };
        let and = (clause.from..water).rev().find(|&at| self.has(at, Cue::And));
        and.is_some_and(|and| fed(clause.from, and))
    }

    /// "yesterday 2 kg rice today nothing", without a comma.
    fn nothing_on_another_day(&mut self, clause: &Clause) {
        let fed_on = |facts: &[(usize, Told)], day: i32| {
            facts.iter().any(|(at, told)| {
                clause.range().contains(at) && told.day == Some(day) && matches!(told.what, What::Fed { .. })
            })
        };
        for at in clause.from + 1..clause.to {
            let When::Day(day) = self.node(at - 1).when().unwrap_or(When::LastNight) else { continue };
            let others = clause.days.iter().any(|&(_, other)| other != day && fed_on(&self.facts, other));
            let ends = at + 1 == clause.to || self.has(at + 1, Cue::Chatter);
            if self.free(at, Cue::Nothing) && others && ends && !fed_on(&self.facts, day) {
                self.tell(at, Some(day), What::NotFed { days: 1 });
                self.use_up([at]);
            }
        }
    }

    /// "we did not feed, that makes 10 days": a clause of a span alone, right after.
    fn span_beside(&self, index: usize) -> Option<i32> {
        const LITTLE: Cues = Cues::of(&[Cue::Since, Cue::Ago, Cue::Is, Cue::Chatter, Cue::About, Cue::Now, Cue::Of]);
        let clause = self.clauses.get(index + 1).filter(|next| next.sentence == self.clauses[index].sentence)?;
        let span = |at: usize| match self.node(at).when() {
            Some(When::Span(days) | When::Ago(days)) => Some(days),
            _ => None,
        };
        let plain = clause.range().all(|at| span(at).is_some() || self.node(at).any(&LITTLE));
        clause.range().find_map(span).filter(|&days| plain && !clause.asks && days >= 1)
    }

    /// "the whole week", "wiki nzima", "pura hafta": a week or a month with no number.
    fn whole_span(&self, clause: &Clause) -> Option<i32> {
        let whole = |at: usize| clause.range().contains(&at) && self.has(at, Cue::Modifier);
        clause.range().find_map(|at| match self.node(at).meaning.unit {
            // "toda la semana"
            Some(UnitWord::Days(days))
                if days > 1.0
                    && (whole(at + 1)
                        || at > 0 && whole(at - 1)
                        || at > 1 && self.has(at - 1, Cue::Chatter) && whole(at - 2)) =>
            {
                Some(days.round() as i32)
            }
            _ => None,
        })
    }

    /// "na kal dala na aaj", "nothing yesterday and nothing today": every day with its own denial.
    fn each_day_denied(&self, clause: &Clause) -> bool {
        let denies = |at: usize| {
            self.node(at).kind == Kind::Phrase && self.node(at).any(&Cues::of(&[Cue::Not, Cue::Nothing, Cue::PutNot]))
        };
        let ends = clause.days.iter().skip(1).map(|&(at, _)| at).chain([clause.to]);
        clause.days.len() > 1
            && clause.days.iter().zip(ends).all(|(&(at, _), end)| {
                at > clause.from && denies(at - 1)
                    || (at + 1..end).any(|after| denies(after) && after + 1 != end)
                    || end == clause.to && (at + 1..end).any(denies)
            })
    }

    /// "neither yesterday nor today": a denial right before each day.
    pub(super) fn neither_day(&self, clause: &Clause) -> bool {
        clause.days.len() > 1
            && clause
                .days
                .iter()
                .all(|&(at, _)| at > clause.from && self.has(at - 1, Cue::Not) && self.has(at - 1, Cue::Or))
    }

    /// Several days named one by one, with only joints between.
    fn days_in_a_row(&self, clause: &Clause) -> bool {
        const JOINTS: Cues = Cues::of(&[Cue::And, Cue::Or, Cue::Not, Cue::Of, Cue::In]);
        let (Some(first), Some(last)) = (clause.days.first(), clause.days.last()) else { return false };
        first.0 < last.0 && (first.0..last.0).all(|i| self.node(i).when().is_some() || self.node(i).any(&JOINTS))
    }

    /// "yesterday nothing": with only a day beside it, or food.
    fn nothing_is_said_of_food(&self, clause: &Clause, index: usize, at: usize) -> bool {
        let day = clause.range().any(|i| self.node(i).when().is_some());
        let food = clause.range().any(|i| self.node(i).feed() == Some(Feed::FoodWaste));
        let other = clause.range().any(|i| {
            i != at
                && !self.has(i, Cue::Since)
                && self.node(i).any(&Cues::of(&[
                    Cue::Gas,
                    Cue::GasBag,
                    Cue::Leak,
                    Cue::Smell,
                    Cue::Outlet,
                    Cue::Inlet,
                    Cue::ComesOut,
                    Cue::GoesIn,
                    Cue::Cook,
                    Cue::Water,
                    Cue::Wrong,
                ]))
                || i != at && self.has(i, Cue::Other) && !self.has(i, Cue::Still)
                || self.node(i).unknown()
        });
        let _ = index;
        (day || food) && !other
    }

    fn unclear_day(&self, clause: &Clause) -> Option<(usize, i32)> {
        clause.range().find_map(|i| match self.node(i).when() {
            Some(When::EitherWay(days)) if !clause.days.iter().any(|&(at, _)| at == i) => Some((i, days)),
            _ => None,
        })
    }

    /// "not fed for 3 days, today 2 kg": the gap ends yesterday.
    fn end_gap_at_feeding(&mut self) {
        let today = self.facts.iter().any(|(_, told)| told.day == Some(0) && matches!(told.what, What::Fed { .. }));
        if !today {
            return;
        }
        for (_, told) in &mut self.facts {
            if let What::NotFed { days } = told.what
                && days > 1
                && told.day == Some(0)
            {
                told.day = Some(-1);
            }
        }
    }
}
