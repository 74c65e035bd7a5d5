//! Orders: texts that speak to the bot itself, and whom a field worker speaks for.

use super::nodes::{Kind, Node};
use super::notions::{Cue, Cues};
use super::reader::Reader;
use super::reading::Control;
use super::tokens::Mark;
use super::wordlist::Side;
use bellyful_core::fact::What;

impl Reader<'_> {
    /// Whether the whole text, apart from politeness, is an order.
    pub fn orders(&mut self) -> bool {
        let order = self.order_in_own_words().or_else(|| self.order_with_its_hour()).or_else(|| self.order_listed());
        self.control = order.filter(|order| *order != Control::Stop || !self.at_some_hours());
        self.control.is_some()
    }

    /// "stop please", "english": a listed order and politeness.
    fn order_listed(&self) -> Option<Control> {
        let mut found: Option<&Control> = None;
        let mut language = None;
        let mut speaks_of_language = false;
        let mut other = false;
        // "galti se bheja, radd karo": what was wrong, beside the order to take it back.
        let mut mistaken = false;
        const MISTAKEN: Cues =
            Cues::of(&[Cue::Sorry, Cue::Meant, Cue::Latest, Cue::Texts, Cue::Send, Cue::Was, Cue::OwnData]);
        for at in 0..self.row.nodes.len() {
            let node = self.node(at);
            match node.kind {
                Kind::Mark(_) => {}
                // "more" alone is an order, though "more dung" is an amount.
                Kind::Quantity(q) if q.unit.is_none() && node.meaning.control.is_none() => other = true,
                Kind::Quantity(q) if q.unit.is_some() => other = true,
                Kind::Phrase | Kind::Quantity(_) => {
                    if let Some(code) = node.meaning.language {
                        language = Some(self.row.lexicon.languages[usize::from(code)].clone());
                    } else if node.has(Cue::LanguageWord) {
                        speaks_of_language = true;
                    } else if let Some(control) = node.meaning.order() {
                        match found {
                            Some(before) if before != control => {
                                // "ok stop": the order outweighs the yes.
                                if matches!(before, Control::Yes) {
                                    found = Some(control);
                                } else if !matches!(control, Control::Yes) {
                                    other = true;
                                }
                            }
                            _ => found = Some(control),
                        }
                    } else if node.any(&MISTAKEN) && node.feed().is_none() {
                        mistaken = true;
                    } else if !node.has(Cue::Chatter)
                        && !node.any(&Cues::of(&[
                            Cue::In,
                            Cue::To,
                            Cue::Of,
                            Cue::My,
                            Cue::Is,
                            Cue::Now,
                            Cue::Still,
                            Cue::Again,
                            Cue::And,
                            Cue::Only,
                        ]))
                        && node.meaning.number != Some(super::notions::NumberWord::Article)
                    {
                        other = true;
                    }
                }
                Kind::Number(n) if n.weak => {}
                _ => other = true,
            }
        }
        other |= mistaken && found != Some(&Control::Undo);
        if other && self.unheard_language() {
            return Some(Control::Language(None));
        }
        if other && !(speaks_of_language && language.is_some() && self.row.nodes.len() <= 10 && !self.says_more()) {
            return None;
        }
        match (found, language) {
            (None | Some(Control::Yes | Control::Language(_)), Some(code)) => Some(Control::Language(Some(code))),
            (Some(Control::Language(_)), None) => Some(Control::Language(None)),
            (Some(control), None) => Some(control.clone()),
            (None, None) if speaks_of_language && !other => Some(Control::Language(None)),
            _ => None,
        }
    }

    /// "delete my number and all my data", "don't send me these messages any more": an order put together from its words,
    /// where the text holds no others.
    fn order_in_own_words(&self) -> Option<Control> {
        const LONGEST: usize = 14;
        const LITTLE: Cues = Cues::of(&[
            Cue::Chatter,
            Cue::My,
            Cue::And,
            Cue::Of,
            Cue::In,
            Cue::To,
            Cue::Some,
            Cue::Modifier,
            Cue::Not,
            Cue::Now,
            Cue::Again,
            Cue::Still,
            Cue::Is,
            Cue::Will,
            Cue::Erase,
            Cue::OwnData,
            Cue::Send,
            Cue::Texts,
            Cue::Reminders,
            Cue::Latest,
            Cue::Meant,
            Cue::Was,
            Cue::TurnOff,
            Cue::With,
            Cue::Habit,
            Cue::Morning,
        ]);
        let nodes = &self.row.nodes;
        if nodes.len() > LONGEST {
            return None;
        }
        let little = |node: &Node| match node.kind {
            Kind::Mark(mark) => mark != Mark::Question,
            Kind::Number(number) => number.weak,
            Kind::Quantity(quantity) => quantity.unit.is_none(),
            Kind::Phrase => {
                let short = node.has(Cue::Other) && !self.row.is_long(node);
                node.feed().is_none() && (node.any(&LITTLE) || node.meaning.control.is_some() || short)
            }
            _ => false,
        };
        let all = 0..nodes.len();
        let whole = all.clone().all(|at| {
            little(&nodes[at]) || nodes[at].feed().is_none() && self.row.words_of(at).any(|word| word.cues.any(&LITTLE))
        });
        let says =
            |cue: Cue| all.clone().any(|at| nodes[at].kind == Kind::Phrase && self.speaks_of(at, &Cues::of(&[cue])));
        let is = |node: &Node, order: Control| node.meaning.order() == Some(&order);
        let phrase = |says: &dyn Fn(&Node) -> bool| nodes.iter().any(|node| node.kind == Kind::Phrase && says(node));
        let stops = phrase(&|node| node.has(Cue::Not) || is(node, Control::Stop));
        // "delete the message just sent", and not "delete all my messages and my number".
        let texts = |at: usize| self.speaks_of(at, &Cues::of(&[Cue::Texts]));
        let says_only_of_data = all.clone().any(|at| self.speaks_of(at, &Cues::of(&[Cue::OwnData])) && !texts(at));
        // "delete my last message" is listed as what it is.
        let listed = phrase(&|node| is(node, Control::Undo));
        let starts = phrase(&|node| node.has(Cue::Start) || is(node, Control::Start));
        if !whole || listed {
            None
        } else if nodes.iter().any(|node| is(node, Control::Stop)) && says(Cue::Texts) {
            // "stop msgs pls"
            Some(Control::Stop)
        } else if starts && !stops && says(Cue::Texts) && !says(Cue::Erase) {
            Some(Control::Start)
        } else if says(Cue::Erase)
            && !stops
            && (says(Cue::Texts) && says(Cue::Latest) || (says(Cue::Texts) || says(Cue::Latest)) && !says_only_of_data)
        {
            Some(Control::Undo)
        } else if says(Cue::Erase) && says(Cue::OwnData) && says(Cue::My) && !stops {
            Some(Control::Forget)
        } else if (stops || says(Cue::TurnOff)) && says(Cue::Reminders) {
            Some(Control::Mute)
        } else if stops && says(Cue::Send) && says(Cue::Texts) {
            Some(Control::Stop)
        } else {
            None
        }
    }

    /// "stop reminding me every morning": one listed order, and when or how often.
    fn order_with_its_hour(&self) -> Option<Control> {
        const BESIDE: Cues = Cues::of(&[Cue::Habit, Cue::Morning, Cue::Now, Cue::My, Cue::Chatter]);
        let mut order = None;
        for node in &self.row.nodes {
            match node.kind {
                Kind::Mark(mark) if mark != Mark::Question => {}
                Kind::When(_) => {}
                Kind::Phrase if node.meaning.control.is_some() && order.is_none() => order = node.meaning.order(),
                Kind::Phrase
                    if (node.any(&BESIDE) || node.has(Cue::Other) && !self.row.is_long(node))
                        && node.feed().is_none()
                        && node.meaning.control.is_none() => {}
                _ => return None,
            }
        }
        order.filter(|order| matches!(order, Control::Stop | Control::Mute | Control::Forget)).cloned()
    }

    /// "don't text me at night": at all other hours we may.
    fn at_some_hours(&self) -> bool {
        let says = |cue: Cue| (0..self.row.nodes.len()).any(|at| self.speaks_of(at, &Cues::of(&[cue])));
        (says(Cue::Night) || says(Cue::Morning)) && !says(Cue::Habit)
    }

    /// "language klingon": one that no word list names.
    fn unheard_language(&self) -> bool {
        let asks =
            |node: &Node| node.has(Cue::LanguageWord) && matches!(node.meaning.order(), Some(Control::Language(_)));
        let nodes = &self.row.nodes;
        nodes.len() <= 4
            && nodes.iter().any(asks)
            && nodes
                .iter()
                .all(|node| asks(node) || node.unknown() || node.any(&Cues::of(&[Cue::In, Cue::To, Cue::Is])))
    }

    /// Something of the job is said besides.
    fn says_more(&self) -> bool {
        self.row.nodes.iter().any(|node| {
            node.feed().is_some()
                || node.number().is_some_and(|n| !n.weak)
                || node.quantity().is_some_and(|q| !q.implied)
                || node.meaning.sign.is_some()
        })
    }

    /// "yes 2 kg": control yes beside what is told.
    pub fn answers_yes(&mut self) {
        let first = (0..self.row.nodes.len())
            .find(|&at| !matches!(self.node(at).kind, Kind::Mark(_)) && !self.node(at).has(Cue::Chatter));
        let Some(first) = first else { return };
        let node = self.node(first);
        let yes = node.kind == Kind::Phrase && !node.has(Cue::Why) && node.meaning.order() == Some(&Control::Yes);
        if yes
            && (!self.facts.is_empty() || !self.unsure.is_empty())
            && !self.facts.iter().any(|(_, told)| matches!(told.what, What::Corrected { .. }))
        {
            self.control = Some(Control::Yes);
        }
    }

    /// "household 14: ...", "for 12: ...".
    pub fn household(&mut self) {
        let most = self.row.nodes.len().min(14);
        for at in 0..most {
            let node = self.node(at);
            if node.kind != Kind::Phrase {
                continue;
            }
            // "5 number ghar ka: ...": where numbers lead, the house stands behind its own.
            let house = node.has(Cue::Household);
            let said = house || self.row.words_of(at).any(|word| word.cues.has(Cue::Household));
            let behind =
                self.row.lexicon.habits.part == Side::After && said && !self.anywhere(&Cues::of(&[Cue::History]));
            let mut number = at;
            while behind && number > 0 && self.has(number - 1, Cue::NumberSign) {
                number -= 1;
            }
            let own = |at: usize| self.node(at).number().is_some_and(|n| n.digits && n.range.is_none());
            let named = number < at || self.row.words_of(at).any(|word| word.cues.has(Cue::NumberSign));
            if behind && named && number > 0 && own(number - 1) && !self.has(at + 1, Cue::People) {
                let asks = self.clause_at(at).is_some_and(|clause| clause.asks);
                if !asks {
                    self.for_household = Some(self.row.said(number - 1, number));
                    self.use_up(number - 1..=at);
                }
                return;
            }
            if !house && !node.has(Cue::ForWord) {
                continue;
            }
            let mut next = at + 1;
            while self.row.nodes.get(next).is_some_and(|n| {
                n.kind == Kind::Phrase
                    && n.any(&Cues::of(&[Cue::NumberSign, Cue::Of, Cue::Household]))
                    && n.feed().is_none()
            }) {
                next += 1;
            }
            let Some(named) = self.row.nodes.get(next) else { continue };
            let colon =
                self.row.nodes.get(next + 1).is_some_and(|n| n.has(Cue::Colon) || n.mark() == Some(Mark::Comma));
            let strict_colon = self.row.nodes.get(next + 1).is_some_and(|n| n.has(Cue::Colon));
            let number = named.number().is_some_and(|n| n.digits && n.range.is_none());
            let people = self.has(next + 1, Cue::People);
            // "famille de 5": so many live there.
            let counts = node.has(Cue::PeopleAre) && !strict_colon;
            if number && !people && !counts && (house || colon) {
                self.for_household = Some(self.row.said(next, next + 1));
                self.use_up(at..=next);
                return;
            }
            if strict_colon
                && (named.unknown() || self.row.capital(named))
                && named.feed().is_none()
                && named.number().is_none()
            {
                self.for_household = Some(self.row.said(next, next + 1));
                self.use_up(at..=next);
                return;
            }
        }
    }

    /// The household a question names: "history of household 12".
    pub fn household_named(&self, clause: &super::clauses::Clause) -> Option<String> {
        let history = self.find(clause, &Cues::of(&[Cue::History]))?;
        let (mut number, mut sure) = (None, false);
        for at in clause.range() {
            let node = self.node(at);
            if node.number().is_some_and(|n| n.digits)
                && (self.near_household(clause, at) || at == history + 1 || self.has(at - usize::from(at > 0), Cue::Of))
            {
                // "the last 7 days of house 9"
                let surely = self.near_household(clause, at);
                if number.is_none() || surely && !sure {
                    (number, sure) = (Some(self.row.said(at, at + 1)), surely);
                }
            }
        }
        if number.is_some() || self.for_household.is_some() {
            return number.or_else(|| self.for_household.clone());
        }
        // A name: "history of Amina", "history of Mama Neema", "Sita Devi ka hisab".
        const TITLE: Cues = Cues::of(&[Cue::Folk, Cue::Chatter, Cue::Household]);
        let capital = |at: usize| self.row.capital(self.node(at)) && self.node(at).mark().is_none();
        let named = |at: usize| (self.node(at).unknown() || self.row.misspelt(self.node(at))) && capital(at);
        let titled = |at: usize| capital(at) && self.node(at).any(&TITLE);
        let after = |at: &usize| named(*at) || titled(*at) && *at + 1 < clause.to && capital(*at + 1);
        let before = || {
            let of = history.checked_sub(1).filter(|&of| of > clause.from && self.has(of, Cue::Of))?;
            let owner = of - 1;
            (self.row.lexicon.habits.part == Side::After && self.node(owner).unknown()).then_some(owner)
        };
        let mut from = (history + 1..clause.to).find(after).or_else(before)?;
        let mut to = from + 1;
        while from > clause.from && from - 1 != history && (titled(from - 1) || named(from - 1)) {
            from -= 1;
        }
        while to < clause.to && to != history && (named(to) || to == from + 1 && titled(from) && capital(to)) {
            to += 1;
        }
        Some(self.row.said(from, to))
    }

    fn near_household(&self, clause: &super::clauses::Clause, at: usize) -> bool {
        (at.saturating_sub(3).max(clause.from)..(at + 4).min(clause.to))
            .any(|i| self.speaks_of(i, &Cues::of(&[Cue::Household, Cue::NumberSign, Cue::Tank])))
    }
}
