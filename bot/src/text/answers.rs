//! Answers: a bare text settled by the question it answers ("15", "3 weeks ago", "haan", "Kisumu").
//!
//! Takes a text, the language of the talk and what was asked for; gives the answer, or nothing when the text is none:
//! then it is read as any other text. Never guesses: a range too wide or two numbers are no answer.

use super::lexicon::Lexicons;
use super::measured::round;
use super::nodes::{Kind, Node, When};
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::Control;
use bellyful_core::fact::Unit;
use bellyful_core::feeds::Feed;
use chrono::NaiveDate;

/// What the bot asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Expected {
    YesNo,
    /// A volume; a bare number is litres.
    Litres,
    /// The same of a vessel, so not of what is in it.
    Size,
    /// An amount of something already named; the unit may be missing.
    Amount,
    /// A unit or measure of an amount already told.
    Unit,
    Feed,
    /// A day in the past.
    Day,
    Place,
    Count,
    Celsius,
    Minutes,
    Language,
    /// "Same as yesterday", "as usual".
    Sameness,
    /// One of so many numbered choices.
    Choice(usize),
}

/// What the text answers.
#[derive(Debug, Clone, PartialEq)]
pub enum Answer {
    Yes,
    No,
    /// They cannot say, or will not.
    Unknown,
    Litres(f64),
    Amount {
        amount: f64,
        unit: Option<Unit>,
    },
    Unit(Unit),
    Feed(Feed),
    /// Offset from the day of the text.
    Day(i32),
    Place(String),
    /// As the last time, on this day (offset from the day of the text).
    Same {
        day: i32,
    },
    Count(u32),
    Celsius(f64),
    Minutes(f64),
    /// ISO 639-1 code.
    Language(String),
    /// Counted from 0.
    Choice(usize),
}

/// Settles `text` as the answer to a question that wanted `expected`, asked in language `lang`.
pub fn read_answer(
    lexicons: &Lexicons,
    text: &str,
    lang: &str,
    today: NaiveDate,
    expected: Expected,
) -> Option<Answer> {
    let own = lexicons.get(lang).or_else(|| lexicons.get("en"))?;
    let told = super::language::choose(lexicons, text, Some(lang));
    [own, told].into_iter().find_map(|lexicon| answer(&Reader::new(lexicon, text, today), expected))
}

fn answer(reader: &Reader, expected: Expected) -> Option<Answer> {
    let nodes = &reader.row.nodes;
    let said = |node: &&Node| {
        !matches!(node.kind, Kind::Mark(_))
            && !(node.kind == Kind::Phrase && node.has(Cue::Chatter) && node.meaning.control.is_none())
    };
    if nodes.iter().any(|node| node.kind == Kind::Phrase && node.has(Cue::DontKnow)) {
        return Some(Answer::Unknown);
    }
    let yes_no = nodes.iter().filter(said).next().and_then(|node| yes_or_no(node));
    // A question or a danger is no answer.
    if reader.clauses.iter().any(|clause| clause.any(&super::clauses::ASKING))
        || nodes.iter().any(|node| node.meaning.sign.is_some_and(|sign| sign.is_danger()))
    {
        return None;
    }
    match expected {
        Expected::YesNo => yes_no,
        Expected::Size if nodes.iter().any(|node| node.feed().is_some() || node.has(Cue::Water)) => None,
        Expected::Litres | Expected::Size => {
            let value = one(nodes.iter().filter_map(|node| litres(node)))?;
            (value > 0.0).then(|| Answer::Litres(round(value, 3)))
        }
        Expected::Amount => amount(nodes),
        Expected::Unit => nodes.iter().find_map(|node| unit(node)).map(Answer::Unit),
        Expected::Sameness => {
            let named = nodes.iter().find_map(|node| match node.when()? {
                When::Day(day) => Some(day),
                When::EitherWay(days) => Some(-days),
                _ => None,
            });
            nodes.iter().any(|node| node.has(Cue::AsUsual)).then(|| Answer::Same { day: named.unwrap_or(0) })
        }
        Expected::Feed => nodes.iter().find_map(Node::feed).map(Answer::Feed),
        // "the same yesterday" tells of a meal.
        Expected::Day if nodes.iter().any(|node| node.has(Cue::AsUsual) || node.feed().is_some()) => None,
        Expected::Day => day(nodes).map(Answer::Day),
        Expected::Place => place(reader).map(Answer::Place),
        Expected::Count => {
            let value = one(nodes.iter().filter_map(|node| number(node)))?;
            (value >= 1.0 && value <= 1000.0 && value.fract() == 0.0).then_some(Answer::Count(value as u32))
        }
        Expected::Celsius => celsius(nodes),
        Expected::Minutes => {
            let value = one(nodes.iter().filter_map(|node| match node.kind {
                Kind::Quantity(q)
                    if matches!(q.unit, Some(UnitWord::Time(_))) && !q.number.is_some_and(|n| n.doubtful()) =>
                {
                    q.in_base()
                }
                _ => number(node),
            }))?;
            (0.0..=1440.0).contains(&value).then_some(Answer::Minutes(value))
        }
        Expected::Language => {
            let code = nodes.iter().find_map(|node| node.meaning.language)?;
            Some(Answer::Language(reader.row.lexicon.languages[usize::from(code)].clone()))
        }
        Expected::Choice(most) => {
            let value = one(nodes.iter().filter_map(|node| number(node)))?;
            (value.fract() == 0.0 && value >= 1.0 && value <= most as f64).then(|| Answer::Choice(value as usize - 1))
        }
    }
}

fn yes_or_no(node: &Node) -> Option<Answer> {
    match node.meaning.order() {
        Some(Control::Yes) => Some(Answer::Yes),
        Some(Control::No) => Some(Answer::No),
        _ if node.kind == Kind::Phrase && node.has(Cue::Yes) => Some(Answer::Yes),
        _ if node.kind == Kind::Phrase && node.has(Cue::No) => Some(Answer::No),
        _ => None,
    }
}

/// The one value there is; two different ones are no answer.
fn one(mut values: impl Iterator<Item = f64>) -> Option<f64> {
    let first = values.next()?;
    values.all(|value| value == first).then_some(first)
}

fn number(node: &Node) -> Option<f64> {
    node.number().filter(|number| !number.weak && !number.doubtful()).map(|number| number.value)
}

fn litres(node: &Node) -> Option<f64> {
    match node.kind {
        Kind::Quantity(q) if matches!(q.unit, Some(UnitWord::Volume(_))) && !q.implied => {
            let number = q.number.filter(|n| !n.doubtful())?;
            Some(q.in_base()? / number.value * plausible(number.value, number.other))
        }
        // Of a vessel people say kilos for litres.
        Kind::Quantity(q) if matches!(q.unit, Some(UnitWord::Mass(_))) && !q.implied => q.in_base(),
        Kind::Number(n) if !n.weak && !n.doubtful() => Some(plausible(n.value, n.other)),
        _ => None,
    }
}

/// A tank of "1.500" litres is not one and a half.
fn plausible(value: f64, other: Option<f64>) -> f64 {
    match other {
        Some(other) if value < 20.0 && other >= 20.0 => other,
        _ => value,
    }
}

fn unit(node: &Node) -> Option<Unit> {
    match node.quantity()?.unit? {
        UnitWord::Mass(_) => Some(Unit::Kg),
        UnitWord::Volume(_) => Some(Unit::L),
        UnitWord::Of(measure) => Some(Unit::Of(measure)),
        _ => None,
    }
}

fn amount(nodes: &[Node]) -> Option<Answer> {
    let mut found = nodes.iter().filter_map(|node| match node.kind {
        Kind::Quantity(q) if q.number.is_some_and(|n| !n.doubtful()) && unit(node).is_some() => {
            q.in_base().map(|amount| Answer::Amount { amount: round(amount, 4), unit: unit(node) })
        }
        Kind::Number(n) if !n.weak && !n.doubtful() => Some(Answer::Amount { amount: n.value, unit: None }),
        _ => None,
    });
    let first = found.next()?;
    found.next().is_none().then_some(first)
}

fn day(nodes: &[Node]) -> Option<i32> {
    nodes.iter().find_map(|node| match node.when()? {
        When::Day(day) => Some(day),
        When::LastNight => Some(-1),
        When::Ago(days) | When::Span(days) | When::Since(days) | When::EitherWay(days) | When::Month(days) => {
            Some(-days)
        }
        When::Ahead => None,
    })
}

fn celsius(nodes: &[Node]) -> Option<Answer> {
    let (value, fahrenheit) = nodes.iter().find_map(|node| match node.kind {
        Kind::Quantity(q) => match q.unit? {
            UnitWord::Celsius => Some((q.amount()?, false)),
            UnitWord::Fahrenheit => Some((q.amount()?, true)),
            UnitWord::Degree => Some((q.amount()?, q.amount()? > 45.0)),
            _ => None,
        },
        Kind::Number(n) if !n.weak && !n.doubtful() => Some((n.value, n.value > 45.0)),
        _ => None,
    })?;
    let celsius = if fahrenheit { (value - 32.0) / 1.8 } else { value };
    (-30.0..=100.0).contains(&celsius).then(|| Answer::Celsius(round(celsius, 1)))
}

/// The words of a name: what is not listed, else what is written with a capital, else a text of few words.
fn place(reader: &Reader) -> Option<String> {
    if let Some(name) = reader.facts.iter().find_map(|(_, told)| match &told.what {
        bellyful_core::fact::What::Place { name } => Some(name.clone()),
        _ => None,
    }) {
        return Some(name);
    }
    /// Words that lead to a name and are none of it.
    const LEADS: Cues = Cues::of(&[
        Cue::LiveIn,
        Cue::LiveAfter,
        Cue::In,
        Cue::Of,
        Cue::Is,
        Cue::My,
        Cue::Chatter,
        Cue::Region,
        Cue::WeAre,
        Cue::At,
        Cue::Yes,
    ]);
    let nodes = &reader.row.nodes;
    let name = |at: usize| {
        let node = &nodes[at];
        // A town may look like a slip of another word.
        node.unknown()
            || nodes.len() == 1 && reader.row.misspelt(node)
            || node.kind == Kind::Phrase
                && reader.row.capital(node)
                && !node.any(&Cues::of(&[Cue::LiveIn, Cue::LiveAfter, Cue::In, Cue::Chatter]))
                && at > 0
    };
    let first = (0..nodes.len()).find(|&at| nodes[at].unknown()).or_else(|| (0..nodes.len()).find(|&at| name(at)));
    let Some(first) = first else {
        let few = reader.row.words <= 3
            && nodes
                .iter()
                .all(|node| node.kind == Kind::Phrase && node.meaning.control.is_none() && node.feed().is_none())
            // "thank you" is no town.
            && nodes.iter().any(|node| !node.has(Cue::Chatter));
        return (few && reader.row.words > 0).then(|| reader.row.said(0, nodes.len()));
    };
    // "bobo dioulasso": a word of ours may be part of a name where no more than the name is said.
    let bare = reader.row.words <= 3
        && nodes
            .iter()
            .all(|node| node.unknown() || node.kind == Kind::Phrase && !node.any(&LEADS) && node.to == node.from + 1);
    if bare {
        return Some(reader.row.said(0, nodes.len()));
    }
    let mut start = first;
    while start > 0 && name(start - 1) {
        start -= 1;
    }
    let mut end = first + 1;
    while end < nodes.len()
        && end < start + 4
        && (name(end) || nodes[end].has(Cue::Of) && end + 1 < nodes.len() && name(end + 1))
    {
        end += 1;
    }
    Some(reader.row.said(start, end))
}
