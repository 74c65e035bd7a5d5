//! The reader: one text of one language to what it says.
//!
//! Takes a text, a lexicon and the day; gives facts, asks, control and doubts. Rules stand in the modules beside this
//! one, each for one matter; here they are called in their order. It knows nothing but the one text.

use super::clauses::{self, Clause};
use super::nodes::{Kind, Node, Row};
use super::notions::{Cue, Cues};
use super::reading::{About, Ask, Control, PERHAPS_STILL, Reading, Told, Unsure};
use super::{foods, lexicon::Lexicon, numbers, quantities, times, totals};
use bellyful_core::fact::{Sign, What};
use bellyful_core::feeds::Feed;
use chrono::NaiveDate;
use std::cell::OnceCell;

pub struct Reader<'a> {
    pub row: Row<'a>,
    pub clauses: Vec<Clause>,
    /// By sentence, and of the text as a whole: worked out once, since rules ask for every word.
    sentences: Vec<Sentence>,
    said: Cues,
    /// Whether somebody cries for help.
    pub cries: bool,
    /// Whether a sour smell was told before the portions.
    pub sour_told: bool,
    pub only_beasts: OnceCell<bool>,
    /// What the words of each node mean one by one: rules ask for it all over, and each word costs a look-up.
    pub spoken: OnceCell<Vec<Cues>>,
    /// Facts with the node they were said at.
    pub facts: Vec<(usize, Told)>,
    pub asks: Vec<Ask>,
    pub unsure: Vec<Unsure>,
    pub asks_ahead: bool,
    pub control: Option<Control>,
    pub for_household: Option<String>,
}

/// What a sentence says as a whole.
#[derive(Debug, Clone, Copy, Default)]
pub struct Sentence {
    pub from: usize,
    pub to: usize,
    pub cues: Cues,
    /// Slurry is taken out in a clause that puts nothing in.
    pub removes: bool,
    pub ash: bool,
}

/// Reads `text` as one of `lexicon`'s language.
pub fn read_as(lexicon: &Lexicon, text: &str, today: NaiveDate) -> Reading {
    let mut reader = Reader::new(lexicon, text, today);
    reader.read();
    reader.done()
}

impl<'a> Reader<'a> {
    pub fn new(lexicon: &'a Lexicon, text: &'a str, today: NaiveDate) -> Reader<'a> {
        let mut row = Row::new(text, lexicon);
        numbers::join(&mut row);
        quantities::join(&mut row);
        times::join(&mut row, today);
        foods::join(&mut row);
        totals::take_off(&mut row);
        clauses::tidy(&mut row);
        let clauses = clauses::part(&row);
        let cries =
            row.nodes.iter().any(|node| node.kind == Kind::Phrase && node.meaning.order() == Some(&Control::Help));
        let mut reader = Reader {
            row,
            clauses,
            sentences: Vec::new(),
            said: Cues::default(),
            cries,
            sour_told: false,
            only_beasts: OnceCell::new(),
            spoken: OnceCell::new(),
            facts: Vec::new(),
            asks: Vec::new(),
            unsure: Vec::new(),
            asks_ahead: false,
            control: None,
            for_household: None,
        };
        reader.note_sentences();
        reader
    }

    /// Sums up what the sentences say; to be done again when a clause's cues are changed.
    pub fn note_sentences(&mut self) {
        self.sentences.clear();
        self.said = Cues::default();
        for clause in &self.clauses {
            if self.sentences.len() <= clause.sentence {
                let from = Sentence { from: clause.from, ..Sentence::default() };
                self.sentences.resize(clause.sentence + 1, from);
            }
            let sentence = &mut self.sentences[clause.sentence];
            sentence.to = clause.to;
            sentence.cues.join(&clause.cues);
            sentence.removes |= clause.has(Cue::Remove) && !clause.has(Cue::Put);
            sentence.ash |= self.row.nodes[clause.range()].iter().any(|node| node.feed() == Some(Feed::Ash));
            self.said.join(&clause.cues);
        }
    }
    pub fn sentence(&self, clause: &Clause) -> &Sentence {
        &self.sentences[clause.sentence]
    }
    /// The clause that the node at `at` stands in, by its number.
    pub fn clause_of(&self, at: usize) -> Option<usize> {
        let index = self.clauses.partition_point(|clause| clause.to <= at);
        self.clauses.get(index).filter(|clause| clause.range().contains(&at)).map(|_| index)
    }
    pub fn clause_at(&self, at: usize) -> Option<&Clause> {
        self.clause_of(at).map(|index| &self.clauses[index])
    }
    /// The clause before `clause`, if it is of the same sentence.
    pub fn clause_before(&self, clause: &Clause) -> Option<&Clause> {
        let index = self.clauses.partition_point(|other| other.from < clause.from);
        index.checked_sub(1).map(|index| &self.clauses[index]).filter(|before| before.sentence == clause.sentence)
    }
    /// The first clause that starts after node `at`, if it is of the same sentence as `clause`.
    pub fn clause_after(&self, clause: &Clause, at: usize) -> Option<&Clause> {
        let index = self.clauses.partition_point(|other| other.from <= at);
        self.clauses.get(index).filter(|next| next.sentence == clause.sentence)
    }

    fn read(&mut self) {
        self.cry_of_fire();
        if self.orders() {
            return;
        }
        self.household();
        self.questions();
        let mends = self.mends();
        for at in 0..self.clauses.len() {
            let clause = self.clauses[at].clone();
            self.perils(&clause);
            self.measured(&clause);
            self.set_up(&clause);
            self.flame(&clause);
            self.signs(&clause);
            self.gas(&clause);
            self.burned(&clause, at);
        }
        self.flame_turned();
        self.only_levels();
        // Who is in danger is not asked what else is odd.
        if self.facts.iter().any(|(_, told)| told.endangers()) {
            self.unsure.retain(|doubt| doubt.about != About::Sign);
        }
        if mends {
            self.corrected();
        } else {
            self.portions();
        }
        self.soap_tests();
        // "it was not 3 kg, it was 2" denies no feeding.
        if !self.facts.iter().any(|(_, told)| matches!(told.what, What::Corrected { .. })) {
            self.not_fed();
        }
        self.on_named_days();
        self.told_by_weight_too();
        self.once_told();
        self.only_the_leak_smells();
        self.answers_yes();
        self.doubts();
    }

    /// The reading, each thing once, in the order said.
    fn done(mut self) -> Reading {
        self.facts.sort_by_key(|&(at, _)| at);
        let mut facts: Vec<Told> = Vec::with_capacity(self.facts.len());
        for (_, told) in self.facts {
            // Portions may be alike and still be two; what is or was so is said once.
            let portion = matches!(
                told.what,
                What::Fed { .. }
                    | What::Water { .. }
                    | What::Burned { .. }
                    | What::Removed { .. }
                    | What::Alkali { .. }
            );
            if portion || !facts.contains(&told) {
                facts.push(told);
            }
        }
        let mut asks: Vec<Ask> = Vec::new();
        for ask in self.asks {
            if !asks.contains(&ask) {
                asks.push(ask);
            }
        }
        let mut unsure: Vec<Unsure> = Vec::new();
        for doubt in self.unsure {
            if !unsure.contains(&doubt) {
                unsure.push(doubt);
            }
        }
        Reading {
            lang: self.row.lexicon.code.clone(),
            for_household: self.for_household,
            facts,
            asks,
            control: self.control,
            unsure,
            asks_ahead: self.asks_ahead,
        }
    }

    pub fn node(&self, at: usize) -> &Node {
        &self.row.nodes[at]
    }
    /// Whether the phrase at `at`, not taken up yet, bears `cue`.
    pub fn free(&self, at: usize, cue: Cue) -> bool {
        self.row.nodes.get(at).is_some_and(|node| !node.used && node.has(cue))
    }
    pub fn has(&self, at: usize, cue: Cue) -> bool {
        self.row.nodes.get(at).is_some_and(|node| node.has(cue))
    }
    pub fn use_up(&mut self, nodes: impl IntoIterator<Item = usize>) {
        for at in nodes {
            if let Some(node) = self.row.nodes.get_mut(at) {
                node.used = true;
            }
        }
    }
    /// The first node of the clause with any of `cues`.
    pub fn find(&self, clause: &Clause, cues: &Cues) -> Option<usize> {
        clause.range().find(|&at| self.node(at).any(cues))
    }
    pub fn tell(&mut self, at: usize, day: Option<i32>, what: What) {
        self.facts.push((at, Told { day, what }));
    }
    pub fn tell_sign(&mut self, at: usize, day: i32, sign: Sign) {
        if self.only_in_words(at, sign) || self.of_measured_food(at, sign) {
            return;
        }
        let day = if sign.is_danger() { self.danger_day(at, day) } else { day };
        self.tell(at, Some(day), What::Sign { sign });
    }

    /// A danger is long over only where its own sentence says so, and nothing says that it goes on.
    fn danger_day(&self, at: usize, day: i32) -> i32 {
        let Some(index) = self.clause_of(at) else { return day };
        let clause = &self.clauses[index];
        let own = !clause.days.is_empty();
        let is_so = if own { at > clause.from && self.has(at - 1, Cue::Is) } else { clause.present };
        let goes_on = is_so && !clause.past || clause.any(&Cues::of(&[Cue::Still, Cue::Again, Cue::Now]));
        let before = self.clauses[..index].iter().rev().take_while(|before| before.sentence == clause.sentence);
        let said = own || clause.past || before.into_iter().any(|before| !before.days.is_empty());
        if day >= PERHAPS_STILL || said && !goes_on { day } else { 0 }
    }
    pub fn doubt(&mut self, about: About, from: usize, to: usize) {
        let said = self.row.said(from, to);
        self.unsure.push(Unsure { about, said });
    }
    pub fn ask(&mut self, ask: Ask) {
        self.asks.push(ask);
    }

    /// Whether anything of the sort was said anywhere in the text.
    pub fn anywhere(&self, cues: &Cues) -> bool {
        self.said.any(cues)
    }

    /// Whether what stands at `at` is denied, by the language's order of "not".
    pub fn denied(&self, clause: &Clause, at: usize) -> bool {
        self.denied_span(clause, at, at)
    }

    /// The same for something said at nodes `first..=last`.
    pub fn denied_span(&self, clause: &Clause, first: usize, last: usize) -> bool {
        use super::wordlist::Side;
        const DENY: Cues = Cues::of(&[Cue::Not, Cue::Without, Cue::Nothing]);
        let side = self.row.lexicon.habits.negation;
        let after_only = Cues::of(&[Cue::Not, Cue::Nothing]);
        // Back over what does not end the reach of a denial.
        let before = |reach: &Cues, most: usize| {
            let mut steps = 0;
            for at in (clause.from..first).rev() {
                let node = self.node(at);
                // "plus de mousse": the word for "no more" is one for "more" too.
                let vague = node.quantity().is_some_and(|q| q.number.is_none() && q.unit.is_none());
                if node.any(reach) && (node.kind == Kind::Phrase || vague) {
                    return true;
                }
                // "no food only water": what there was is not denied; "not only" is.
                let but = node.has(Cue::Only) && at > clause.from && !self.node(at - 1).any(reach);
                if node.has(Cue::And) && !node.has(Cue::Or) || but || self.ends_denial(node) {
                    return false;
                }
                if node.kind == Kind::Phrase && (node.meaning.sign.is_some() || node.has(Cue::Or)) {
                    // "no smell or leak": the denial reaches on.
                    continue;
                }
                steps += 1;
                if steps > most {
                    return false;
                }
            }
            false
        };
        let after = || {
            let mut steps = 0;
            for at in last + 1..clause.to {
                let node = self.node(at);
                if node.any(&after_only) && node.kind == Kind::Phrase {
                    // "smell of gas nobody cooks": the denial is of what is done.
                    let done =
                        (at + 1..clause.to.min(at + 3)).any(|at| self.has(at, Cue::Cook) || self.has(at, Cue::Put));
                    // "phas gaya andar nahi jata": what is blocked lets nothing through.
                    let through = at + 1 < clause.to
                        && self.node(at + 1).any(&Cues::of(&[Cue::GoesIn, Cue::ComesOut]))
                        && self.node(last).has(Cue::Blocked);
                    return !done && !through;
                }
                // "fell in the pit he does not move": another is spoken of.
                if side == Side::Either && node.kind == Kind::Phrase && node.has(Cue::Other) {
                    return false;
                }
                // "jam gaya slurry bahar nahi aati": the slurry does not.
                if node.has(Cue::And)
                    || node.has(Cue::Slurry)
                    || node.meaning.sign.is_some()
                    || node.number().is_some_and(|n| !n.weak)
                    || node.quantity().is_some_and(|q| !q.implied && q.number.is_some())
                {
                    return false;
                }
                // "jam hai kuch bahar nahi aata": where the verb ends what is told, the denial after it is of something else.
                const ENDS: Cues = Cues::of(&[Cue::Is, Cue::Was, Cue::ComesOut, Cue::GoesIn]);
                let little = |i: &usize| self.node(*i).any(&Cues::of(&[Cue::Only, Cue::Chatter]));
                let not_next =
                    || (at + 1..clause.to).find(|i| !little(i)).is_some_and(|next| self.node(next).any(&after_only));
                if side == Side::After && node.kind == Kind::Phrase && node.any(&ENDS) && !not_next() {
                    return false;
                }
                steps += 1;
                if steps > 3 {
                    return false;
                }
            }
            false
        };
        let inside = (first..=last).any(|at| {
            self.node(at).any(&DENY) && self.node(at).kind == Kind::Phrase && self.node(at).meaning.sign.is_none()
        });
        const NO: Cues = Cues::of(&[Cue::Not, Cue::Nothing, Cue::No]);
        // "dizziness no": a thing alone, and its denial after it; in a question the "no" asks.
        let alone = || {
            let rest = last + 1..clause.to;
            first == clause.from
                && !clause.asks
                && rest.len() <= 2
                && rest.clone().next().is_some_and(|at| self.node(at).any(&NO))
                && rest.clone().skip(1).all(|at| self.node(at).any(&Cues::of(&[Cue::Is, Cue::Was])))
        };
        // "न बदबू है न कीड़े न झाग", "na awaz na boo": neither this nor that.
        let neither = || {
            const VERBS: Cues = Cues::of(&[Cue::Is, Cue::Was, Cue::Put, Cue::Cook, Cue::ComesOut, Cue::GoesIn]);
            let not = |at: usize| self.node(at).kind == Kind::Phrase && self.has(at, Cue::Not);
            let of_what_follows = |&at: &usize| {
                let next = (at + 1 < clause.to).then(|| self.node(at + 1));
                not(at) && next.is_some_and(|next| next.mark().is_none() && !next.any(&VERBS))
            };
            let nots = clause.range().filter(of_what_follows);
            first > clause.from && not(first - 1) && nots.count() >= 2
        };
        inside
            || alone()
            || match side {
                Side::Before => before(&DENY, 3),
                Side::After => after() || neither() || before(&Cues::of(&[Cue::Without]), 2),
                Side::Either => before(&DENY, 3) || after(),
            }
    }

    /// A thing or doing of its own between a denial and a sign: the denial belongs to it.
    fn ends_denial(&self, node: &Node) -> bool {
        const OWN: Cues = Cues::of(&[Cue::Put, Cue::Cook, Cue::Flame, Cue::Stirs]);
        // "la cloche ne monte pas il y a peu de gaz": what there is opens a statement of its own.
        let there_is = node.has(Cue::Is) && node.has(Cue::PeopleAre);
        node.kind == Kind::Phrase
            && (there_is || node.any(&OWN) || node.meaning.level.is_some() || node.feed().is_some())
    }
}
