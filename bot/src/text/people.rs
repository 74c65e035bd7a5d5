//! People: how many live on the food and cook on the gas.

use super::clauses::Clause;
use super::nodes::Kind;
use super::notions::{Cue, Cues};
use super::reader::Reader;
use super::wordlist::Side;
use bellyful_core::fact::What;

impl Reader<'_> {
    pub(super) fn people(&mut self, clause: &Clause) {
        self.people_in_all(clause);
        self.me_and_mine(clause);
        for at in clause.range() {
            let node = self.node(at);
            let Some(number) = node
                .number()
                .filter(|n| !node.used && !n.fraction && n.value >= 1.0 && n.value <= 500.0 && n.value.fract() == 0.0)
            else {
                continue;
            };
            let people_next = (at + 1..clause.to.min(at + 3))
                .find(|&i| self.has(i, Cue::People) || i == at + 1 && self.has(i, Cue::PeopleAre))
                .filter(|&i| i == at + 1 || !self.counts(at + 1))
                // "2 personnes sont venues": what they did, and not who lives here.
                // Where the verb comes last, "9 log hain" tells that they are.
                .filter(|&i| {
                    let verb_last = self.row.lexicon.habits.negation == Side::After;
                    verb_last || clause.has(Cue::Indoors) || i + 1 >= clause.to || !self.has(i + 1, Cue::Is)
                });
            let people_back = (clause.from..at)
                .rev()
                .take(3)
                .take_while(|&i| {
                    self.joins(i)
                        || self.node(i).any(&Cues::of(&[Cue::People, Cue::PeopleAre, Cue::Indoors, Cue::WeAre]))
                })
                .find(|&i| self.node(i).any(&Cues::of(&[Cue::PeopleAre, Cue::People])));
            let unit_next =
                at + 1 < clause.to && (self.node(at + 1).meaning.unit.is_some() || self.node(at + 1).feed().is_some());
            // "on vit à 3 km de la ville"
            let far = |word: &usize| {
                let ends = at + 1 == clause.to || self.node(at + 1).any(&Cues::of(&[Cue::In, Cue::Chatter, Cue::And]));
                !self.has(*word, Cue::LiveIn) || ends
            };
            let people_back = people_back.filter(far);
            let found = people_next.filter(|_| !number.weak).or(people_back.filter(|_| !number.weak && !unit_next));
            // "do aadmi tanki dekhne aaye": not those who live here.
            const OURS: Cues = Cues::of(&[Cue::PeopleAre, Cue::Indoors, Cue::My, Cue::WeAre]);
            let strangers = |word: usize| self.has(word, Cue::Folk) && !clause.any(&OURS) && clause.has(Cue::Tank);
            // "3 logo ka khana": whose it was.
            let of_food = |word: usize| {
                self.row.lexicon.habits.part == Side::After
                    && self.has(word, Cue::People)
                    && self.has(word + 1, Cue::Of)
                    && self.row.nodes.get(word + 2).is_some_and(|node| node.feed().is_some())
            };
            if let Some(word) = found.filter(|&word| !strangers(word) && !of_food(word)) {
                let count = number.value as u32 + self.more_people(clause, word.max(at));
                self.tell(at, None, What::People { count });
                self.use_up([at, word]);
                return;
            }
        }
    }

    /// "six of us plus grandmother, so 7": a clause of a number alone, right after who lives there, is all of them.
    pub(super) fn people_in_all(&mut self, clause: &Clause) {
        let number = |at: &usize| self.node(*at).number().filter(|n| !n.weak && n.value.fract() == 0.0);
        let Some((at, number)) = clause.range().find_map(|at| Some((at, number(&at)?))) else { return };
        let plain = |i: usize| i == at || self.node(i).any(&Cues::of(&[Cue::Chatter, Cue::People, Cue::Only, Cue::Is]));
        let before = self.clause_before(clause).map_or(0..0, Clause::range);
        if clause.asks || !clause.range().all(plain) {
            return;
        }
        let told = self.facts.iter_mut().rev().take(3).find_map(|(at, told)| match &mut told.what {
            What::People { count } if before.contains(at) => Some(count),
            _ => None,
        });
        if let Some(count) = told.filter(|count| f64::from(**count) < number.value) {
            *count = number.value as u32;
            self.use_up([at]);
        }
    }

    /// "3 adults and 4 children": those counted after the ones at `word`. "6 people and 2 of them kids" counts none twice.
    pub(super) fn more_people(&self, clause: &Clause, word: usize) -> u32 {
        const FOLK: Cues = Cues::of(&[Cue::People, Cue::Folk]);
        let (mut more, mut at) = (0, word + 1);
        while at + 1 < clause.to && self.has(at, Cue::And) && self.node(at).kind == Kind::Phrase {
            // "wakubwa 3 na watoto 4": where numbers follow what they count.
            let behind = (at + 2 < clause.to)
                .then(|| self.node(at + 2).number())
                .flatten()
                .filter(|n| !n.weak && n.value.fract() == 0.0);
            if let Some(count) = behind.filter(|_| self.node(at + 1).any(&FOLK) && !self.counts(at + 1)) {
                more += count.value as u32;
                at += 3;
                continue;
            }
            // "4 of us plus grandma"
            let one = at + 1 + usize::from(self.has(at + 1, Cue::My));
            if one < clause.to && self.has(one, Cue::Folk) && !self.has(one, Cue::People) {
                more += 1;
                at = one + 1;
                continue;
            }
            let count = self.row.nodes.get(at + 1).and_then(|node| node.number());
            let next =
                (at + 2..clause.to.min(at + 4)).find(|&i| self.node(i).any(&FOLK) || !self.has(i, Cue::Modifier));
            let (Some(count), Some(folk)) = (count.filter(|n| n.value.fract() == 0.0), next) else { break };
            if !self.node(folk).any(&FOLK) || self.has(folk, Cue::Of) {
                break;
            }
            more += count.value as u32;
            at = folk + 1;
        }
        more
    }

    /// "just me and my two sons": a text of nothing but who lives there, told by one of them.
    pub(super) fn me_and_mine(&mut self, clause: &Clause) {
        const LITTLE: Cues = Cues::of(&[
            Cue::And,
            Cue::With,
            Cue::My,
            Cue::Only,
            Cue::Chatter,
            Cue::Is,
            Cue::WeAre,
            Cue::PeopleAre,
            Cue::In,
            Cue::Indoors,
            Cue::Modifier,
            Cue::Colon,
        ]);
        let counted = |at: usize| at > 0 && self.node(at - 1).number().is_some();
        let folk = |at: usize| self.has(at, Cue::Folk) || self.has(at, Cue::People) && counted(at);
        let plain = |at: usize| {
            let node = self.node(at);
            node.number().is_some_and(|n| n.value.fract() == 0.0) || node.any(&LITTLE.and(Cue::People)) || folk(at)
        };
        let sentence = self.sentence(clause);
        // "me, the wife and 4 children, we live in Gulu"
        let lives = (sentence.from..sentence.to).find(|&at| self.has(at, Cue::LiveIn)).unwrap_or(sentence.to);
        let all = sentence.from..lives;
        let me = all.clone().find(|&at| self.has(at, Cue::Myself));
        let said = all.clone().filter(|&at| folk(at) && !self.has(at, Cue::Myself) && self.node(at).feed().is_none());
        let said: Vec<usize> = said.collect();
        let whole = all.clone().all(|at| plain(at) || self.node(at).mark().is_some());
        let told = self.facts.iter().any(|(_, told)| matches!(told.what, What::People { .. }));
        // "only me at home"
        let alone = said.is_empty() && all.clone().any(|at| self.has(at, Cue::Only));
        let alone = alone && all.clone().any(|at| self.node(at).any(&Cues::of(&[Cue::People, Cue::Indoors])));
        let (Some(me), false) = (me, said.is_empty() && !alone || told || !whole) else { return };
        let count = |at: usize| {
            let after = self.row.lexicon.habits.number == Side::After;
            let behind = self.row.nodes[..all.end].get(at + 1).and_then(|node| node.number()).filter(|_| after);
            let number =
                behind.or_else(|| (all.start..at).rev().take(2).find_map(|i| self.node(i).number()).filter(|_| !after));
            number.map_or(1, |number| number.value as u32)
        };
        // "we are four, me, my wife and two children": how many in all is told first.
        let whole = (all.start..me).find_map(|at| self.node(at).number().filter(|n| !n.weak));
        let whole =
            whole.filter(|_| (all.start..me).any(|at| self.node(at).any(&Cues::of(&[Cue::WeAre, Cue::PeopleAre]))));
        let count = whole.map_or_else(|| 1 + said.iter().map(|&at| count(at)).sum::<u32>(), |whole| whole.value as u32);
        self.tell(me, None, What::People { count });
        self.use_up(all);
    }

    pub(super) fn counts(&self, at: usize) -> bool {
        self.node(at).feed().is_some() || self.node(at).meaning.unit.is_some()
    }
}
