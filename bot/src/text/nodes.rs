//! Nodes: tokens matched against one language's phrases, longest first.
//!
//! Takes tokens and a lexicon; gives a row of nodes, each a phrase with its meaning, a number, a mark, or a word that
//! is not listed. Later stages make nodes richer; none looks at letters again except to quote them.

use super::lexicon::{Lexicon, Twins, WordId};
use super::notions::{Cue, Cues, DayWord, Meaning, NumberWord, UnitWord};
use super::thumbs;
use super::tokens::{Mark, Token, TokenKind, Tokens};
use bellyful_core::fact::{AlkaliKind, Measure};
use bellyful_core::feeds::Feed;

/// A number, worked out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Number {
    pub value: f64,
    /// What it is if its mark parts decimals, where the language has it part thousands.
    pub other: Option<f64>,
    /// Lowest and highest, for "2 or 3".
    pub range: Option<(f64, f64)>,
    pub fraction: bool,
    /// An article: one only where something is counted.
    pub weak: bool,
    pub digits: bool,
    /// Minutes after midnight, when written as a clock ("7:30", "7.30").
    pub clock: Option<f64>,
}

impl Number {
    pub const fn plain(value: f64) -> Number {
        Number { value, other: None, range: None, fraction: false, weak: false, digits: false, clock: None }
    }
    /// "2 or 20": no middle would be meant.
    pub fn doubtful(&self) -> bool {
        self.range.is_some_and(|(low, high)| high > 2.0 * low + 1e-9)
    }
}

/// A number and its unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quantity {
    /// `None` when only "some" or "a few" was said.
    pub number: Option<Number>,
    pub unit: Option<UnitWord>,
    /// The number was not said: "bucket of dung".
    pub implied: bool,
    /// A measure whose size was said with it, and the litres of one; `number` is then litres in all.
    pub sized: Option<(Measure, f64)>,
}

impl Quantity {
    pub fn amount(&self) -> Option<f64> {
        self.number.map(|number| number.value)
    }
    /// In the unit's base: kg, l, minutes, days, cm of water.
    pub fn in_base(&self) -> Option<f64> {
        let by = match self.unit? {
            UnitWord::Mass(f) | UnitWord::Volume(f) | UnitWord::Time(f) | UnitWord::Days(f) | UnitWord::Pressure(f) => {
                f
            }
            _ => 1.0,
        };
        Some(self.amount()? * by)
    }
}

/// A time as worked out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum When {
    /// Offset from the day of the text, at most 0.
    Day(i32),
    LastNight,
    /// In days to come.
    Ahead,
    EitherWay(i32),
    /// So many days ago.
    Ago(i32),
    /// For so many days, up to now.
    Span(i32),
    /// Since the day so many days back.
    Since(i32),
    /// In a month named alone, whose middle was so many days ago.
    Month(i32),
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Kind {
    Phrase,
    Unknown,
    Mark(Mark),
    Number(Number),
    Quantity(Quantity),
    When(When),
}

#[derive(Debug, Clone, Copy)]
pub struct Node {
    pub kind: Kind,
    pub meaning: Meaning,
    /// Tokens: first, and one past the last.
    pub from: u32,
    pub to: u32,
    /// Whether it touches the node before.
    pub glued: bool,
    /// Taken up by a rule.
    pub used: bool,
}

impl Node {
    pub fn has(&self, cue: Cue) -> bool {
        self.meaning.cues.has(cue)
    }
    pub fn any(&self, cues: &Cues) -> bool {
        self.meaning.cues.any(cues)
    }
    pub fn number(&self) -> Option<Number> {
        if let Kind::Number(number) = self.kind { Some(number) } else { None }
    }
    pub fn quantity(&self) -> Option<Quantity> {
        if let Kind::Quantity(quantity) = self.kind { Some(quantity) } else { None }
    }
    pub fn when(&self) -> Option<When> {
        if let Kind::When(when) = self.kind { Some(when) } else { None }
    }
    pub fn mark(&self) -> Option<Mark> {
        if let Kind::Mark(mark) = self.kind { Some(mark) } else { None }
    }
    /// A feed named by this node (numbers and times name none).
    pub fn feed(&self) -> Option<Feed> {
        if self.kind == Kind::Phrase { self.meaning.feed } else { None }
    }
    /// Soda or lime named by this node.
    pub fn alkali(&self) -> Option<AlkaliKind> {
        match () {
            () if self.has(Cue::Soda) => Some(AlkaliKind::Soda),
            () if self.has(Cue::Lime) => Some(AlkaliKind::Lime),
            () => None,
        }
    }
    pub fn unknown(&self) -> bool {
        self.kind == Kind::Unknown
    }
}

/// "pssss", "fshhh": gas that escapes, as it sounds in any language.
fn is_hiss(word: &str) -> bool {
    const LETTERS: [char; 9] = ['p', 'f', 't', 's', 'z', 'h', 'c', 'k', 'j'];
    let long = word.len() >= 4 && ["ss", "sh", "hh", "zz", "ff"].iter().any(|end| word.ends_with(end));
    long && word.chars().all(|letter| LETTERS.contains(&letter))
}

/// A text, cut and matched.
pub struct Row<'a> {
    pub text: &'a str,
    pub lexicon: &'a Lexicon,
    pub tokens: Tokens,
    pub nodes: Vec<Node>,
    /// Words that are of the language, and words in all.
    pub known: usize,
    pub words: usize,
}

impl<'a> Row<'a> {
    pub fn new(text: &'a str, lexicon: &'a Lexicon) -> Row<'a> {
        let mut tokens = Tokens::new(text, lexicon);
        thumbs::spell_out(&mut tokens, lexicon);
        let mut words = Vec::with_capacity(tokens.list.len());
        let mut count = 0;
        for token in &tokens.list {
            words.push(match token.kind {
                TokenKind::Word(..) => {
                    count += 1;
                    let folded = tokens.text(token);
                    lexicon.word(folded).map_or(Found::None, |(word, twins)| Found::One(word, twins))
                }
                _ => Found::None,
            });
        }
        let known = words.iter().filter(|found| !matches!(found, Found::None)).count();
        let mut row = Row { text, lexicon, tokens, nodes: Vec::new(), known, words: count };
        row.match_phrases(&words, 0..words.len(), true);
        row.take_at_their_word(&words);
        row
    }

    /// Matches the words in `range`; `figures`: figures of speech too.
    pub(super) fn match_phrases(&mut self, words: &[Found], range: std::ops::Range<usize>, figures: bool) {
        let (mut at, words) = (range.start, &words[..range.end]);
        while at < words.len() {
            let token = self.tokens.list[at];
            let (kind, meaning, to) = match token.kind {
                TokenKind::Mark(mark) => (Kind::Mark(mark), Meaning::default(), at + 1),
                TokenKind::Fraction(value) => (Kind::Phrase, number_meaning(NumberWord::Fraction(value)), at + 1),
                TokenKind::Digits(..) => (Kind::Phrase, Meaning::default(), at + 1),
                TokenKind::Word(..) if self.split_unit(at) => {
                    self.known += usize::from(matches!(words[at], Found::None));
                    at += 1;
                    continue;
                }
                TokenKind::Word(..) if self.split_joint(at) => {
                    self.known += usize::from(matches!(words[at], Found::None));
                    at += 1;
                    continue;
                }
                TokenKind::Word(..) => match self.longest(words, at, figures) {
                    Some((meaning, to)) => (Kind::Phrase, meaning, to),
                    None if matches!(words[at], Found::None) && self.split(at) => {
                        at += 1;
                        continue;
                    }
                    None => {
                        let known = matches!(words[at], Found::One(..));
                        let mut meaning = Meaning::default();
                        let hisses = !known && is_hiss(self.tokens.text(&token));
                        if known || hisses {
                            meaning.cues.insert(if hisses { Cue::Hiss } else { Cue::Other });
                        }
                        (if known || hisses { Kind::Phrase } else { Kind::Unknown }, meaning, at + 1)
                    }
                },
            };
            self.nodes.push(Node { kind, meaning, from: at as u32, to: to as u32, glued: token.glued, used: false });
            at = to;
        }
    }

    /// The longest phrase that starts at token `at`. A hyphen may stand for a space.
    fn longest(&self, words: &[Found], at: usize, figures: bool) -> Option<(Meaning, usize)> {
        const WAYS: usize = 12;
        let mut ways = vec![0];
        let mut best = None;
        let mut next = at;
        while next < words.len() {
            let own = match words[next] {
                Found::One(word, twins) => {
                    let steps = |word| ways.iter().filter_map(move |&node| self.lexicon.step(node, word));
                    let mut on: Vec<u32> = steps(word).collect();
                    let own = on.len();
                    on.extend(twins.into_iter().flatten().flat_map(steps));
                    on.truncate(WAYS);
                    if on.is_empty() {
                        break;
                    }
                    ways = on;
                    own
                }
                Found::None => match self.tokens.list[next].kind {
                    TokenKind::Mark(Mark::Dash) if next > at && self.tokens.list[next].glued => {
                        next += 1;
                        continue;
                    }
                    // Digits may stand in a phrase ("km 2"): not listed, so the phrase ends.
                    _ => break,
                },
            };
            next += 1;
            let meant = |&node: &u32| self.lexicon.meaning(node).filter(|m| figures || !m.cues.has(Cue::InWords));
            // Alone, a word means what it means as it is typed.
            let said = if next == at + 1 { &ways[..own.min(ways.len())] } else { &ways[..] };
            if let Some(meaning) = said.iter().find_map(meant) {
                best = Some((*meaning, next));
            }
        }
        best
    }

    /// What the words of the node at `at` mean, each by itself.
    pub fn words_of(&self, at: usize) -> impl Iterator<Item = &Meaning> {
        let node = &self.nodes[at];
        self.tokens.list[node.from as usize..node.to as usize].iter().filter_map(|token| {
            let word = self.lexicon.exact(self.tokens.text(token))?;
            self.lexicon.meaning(self.lexicon.step(0, word)?)
        })
    }

    /// The digits of a node that is a number written in figures.
    pub fn figures(&self, node: &Node) -> Option<&str> {
        let token = &self.tokens.list[node.from as usize];
        (node.to == node.from + 1 && matches!(token.kind, TokenKind::Digits(..))).then(|| self.tokens.text(token))
    }

    /// The text of nodes `from..to` as written.
    pub fn said(&self, from: usize, to: usize) -> String {
        let (Some(first), Some(last)) = (self.nodes.get(from), to.checked_sub(1).and_then(|last| self.nodes.get(last)))
        else {
            return String::new();
        };
        self.said_tokens(first.from as usize, last.to as usize)
    }

    pub fn said_tokens(&self, from: usize, to: usize) -> String {
        let list: &[Token] = &self.tokens.list;
        match (list.get(from), to.checked_sub(1).and_then(|last| list.get(last))) {
            (Some(first), Some(last)) if first.start <= last.end => {
                self.text[first.start as usize..last.end as usize].trim().to_owned()
            }
            _ => String::new(),
        }
    }

    /// Whether the words of `node` are longer than the little words of any language.
    pub fn is_long(&self, node: &Node) -> bool {
        const LITTLE: usize = 4;
        let (first, last) = (&self.tokens.list[node.from as usize], &self.tokens.list[node.to as usize - 1]);
        self.text[first.start as usize..last.end as usize].chars().count() > LITTLE
    }

    /// Whether an apostrophe ends `node`: "ph 6.2 j'ai mis" tells of no day.
    pub fn elides(&self, node: &Node) -> bool {
        let last = &self.tokens.list[node.to as usize - 1];
        node.to == node.from + 1 && self.text[last.end as usize..].starts_with(['\'', '’'])
    }

    /// Whether `node` is one word that is in no list as it is typed.
    pub fn misspelt(&self, node: &Node) -> bool {
        let token = &self.tokens.list[node.from as usize];
        let word = matches!(token.kind, TokenKind::Word(..)) && node.to == node.from + 1;
        word && self.lexicon.exact(self.tokens.text(token)).is_none()
    }

    /// Whether the word of `node` is written with a capital.
    pub fn written_large(&self, node: &Node) -> bool {
        let token = &self.tokens.list[node.from as usize];
        self.text[token.start as usize..].chars().next().is_some_and(char::is_uppercase)
    }

    /// Whether the word of `node` is written with a capital, or in a script that has none.
    pub fn capital(&self, node: &Node) -> bool {
        let token = &self.tokens.list[node.from as usize];
        self.text[token.start as usize..]
            .chars()
            .next()
            .is_some_and(|c| c.is_uppercase() || (c as u32 > 0x24f && !c.is_lowercase()))
    }
}

/// A word of the text, in the list or not.
#[derive(Debug, Clone, Copy)]
pub(super) enum Found {
    None,
    /// As it is typed, and what sounds like it.
    One(WordId, Twins),
}

fn number_meaning(number: NumberWord) -> Meaning {
    Meaning { number: Some(number), ..Meaning::default() }
}

/// Days a day word is from the day of the text, on a day of the week (Monday 0).
pub fn day_offset(word: DayWord, weekday: u8) -> When {
    match word {
        DayWord::Offset(days) if days > 0 => When::Ahead,
        DayWord::Offset(days) => When::Day(days),
        DayWord::Weekday(day) => {
            let back = (7 + i32::from(weekday) - i32::from(day)) % 7;
            When::Day(if back == 0 { -7 } else { -back })
        }
        DayWord::EitherWay(days) => When::EitherWay(days),
        DayWord::LastNight => When::LastNight,
        DayWord::Month(_) => When::Day(0),
    }
}
