//! Numbers: figures and number words made values.
//!
//! Takes a row of nodes; gives it with every number as one node: "1½", "two and a half", "2-3", "2x3", "1,50,000",
//! "veintiséis", "sadhe teen". Which mark parts decimals is the language's; what could be either is kept as both.

use super::nodes::{Kind, Node, Number, Row};
use super::notions::{Cue, Cues, Meaning, NumberWord, UnitWord};
use super::tokens::Mark;
use super::wordlist::Side;

pub fn join(row: &mut Row) {
    let mut out: Vec<Node> = Vec::with_capacity(row.nodes.len());
    let mut at = 0;
    while at < row.nodes.len() {
        // "3 pav": a unit behind a number, though "pav kilo" is a quarter of one.
        let unit =
            row.nodes[at].meaning.letter && out.last().is_some_and(|last| last.number().is_some_and(|n| !n.weak));
        match number_at(row, at).filter(|_| !unit) {
            Some((_, next)) if is_ordinal(row, at, next) => {
                let mut node = row.nodes[at];
                node.meaning = Meaning { cues: Cues::of(&[Cue::Other]), ..Meaning::default() };
                node.to = row.nodes[next].to;
                out.push(node);
                at = next + 1;
            }
            Some((number, next)) => {
                let (number, next) = extended(row, at, number, next);
                let (number, next) = percent(row, number, next);
                let mut node = row.nodes[at];
                if number.weak || next > at + 1 {
                    // An article may mean more ("a" as a preposition): the number wins only beside a unit, later.
                } else if node.meaning.unit.is_some() || node.meaning.feed.is_some() {
                    node.meaning.number = None;
                }
                node.kind = Kind::Number(number);
                node.to = row.nodes[next - 1].to;
                out.push(node);
                at = next;
            }
            None => {
                out.push(row.nodes[at]);
                at += 1;
            }
        }
    }
    row.nodes = out;
}

/// "75 %": so many hundredths.
fn percent(row: &Row, number: Number, next: usize) -> (Number, usize) {
    let percent = row.nodes.get(next).is_some_and(|node| node.has(Cue::Percent) && node.kind == Kind::Phrase);
    if !percent || number.weak || number.value > 100.0 || number.doubtful() {
        return (number, next);
    }
    (Number { fraction: true, digits: true, ..Number::plain(number.value / 100.0) }, next + 1)
}

/// "1st", "1ère": a place in a row, and no count.
fn is_ordinal(row: &Row, at: usize, next: usize) -> bool {
    let ending = row.nodes.get(next).filter(|node| node.glued && node.kind == Kind::Phrase);
    next == at + 1 && row.figures(&row.nodes[at]).is_some() && ending.is_some_and(|node| node.has(Cue::Ordinal))
}

/// The number that starts at `at`, without "and a half" or a range.
fn number_at(row: &Row, at: usize) -> Option<(Number, usize)> {
    let nodes = &row.nodes;
    let node = nodes.get(at)?;
    let word = |at: usize| nodes.get(at).and_then(|node| node.meaning.number);
    if row.figures(node).is_some() {
        let mut number = figures(row, at)?;
        let mut next = at + 1;
        // "4 000"
        if row.lexicon.habits.thousands_space && number.value < 1000.0 && number.value >= 1.0 {
            while let Some(group) = nodes
                .get(next)
                .and_then(|node| row.figures(node))
                .filter(|group| group.len() == 3 && group.bytes().all(|b| b.is_ascii_digit()))
            {
                number.value = number.value * 1000.0 + group.parse::<f64>().ok()?;
                next += 1;
            }
        }
        // "1/2", and "1 1/2"
        if let Some((fraction, after)) = slash_fraction(row, at) {
            return Some((Number { fraction: fraction < 1.0, digits: true, ..Number::plain(fraction) }, after));
        }
        if let Some((fraction, after)) = slash_fraction(row, next).filter(|&(fraction, _)| fraction < 1.0) {
            number.value += fraction;
            next = after;
        } else if let Some(NumberWord::Fraction(fraction)) =
            word(next).filter(|_| nodes[next].meaning.cues.is_empty() && nodes[next].glued)
        {
            number.value += fraction;
            next += 1;
        }
        while let Some(NumberWord::Scale(by)) = word(next) {
            number.value *= by;
            // "3 quarters"
            number.fraction |= by < 1.0;
            next += 1;
        }
        return Some((number, next));
    }
    match word(at)? {
        NumberWord::Article => {
            if let Some(NumberWord::Scale(by)) = word(at + 1) {
                return Some((Number::plain(by), at + 2));
            }
            if let Some(NumberWord::Fraction(fraction)) = word(at + 1) {
                return Some((Number { fraction: true, ..Number::plain(fraction) }, at + 2));
            }
            Some((Number { weak: true, ..Number::plain(1.0) }, at + 1))
        }
        NumberWord::Fraction(fraction) => {
            if let Some(NumberWord::Scale(by)) = word(at + 1) {
                return Some((Number::plain(fraction * by), at + 2));
            }
            Some((Number { fraction: true, ..Number::plain(fraction) }, at + 1))
        }
        NumberWord::Shift(shift) => {
            let moved = |number: Number, next| Some((Number::plain(number.value + shift), next));
            match nodes.get(at + 1) {
                Some(after)
                    if row.figures(after).is_some() || matches!(after.meaning.number, Some(NumberWord::Value(_))) =>
                {
                    number_at(row, at + 1).and_then(|(number, next)| moved(number, next))
                }
                // "sava kilo", "paune ghanta": of one.
                _ if shift.abs() < 0.5 => Some((Number::plain(1.0 + shift), at + 1)),
                _ => None,
            }
        }
        NumberWord::Scale(by) => match (row.lexicon.habits.scale, word(at + 1)) {
            (Side::Before, Some(NumberWord::Value(times))) if by >= 100.0 && times < by => {
                // "mia mbili hamsini"
                let rest = |at: usize| match word(at) {
                    Some(NumberWord::Value(more)) if more >= 10.0 && more < by => Some((more, at + 1)),
                    _ => None,
                };
                let and = nodes.get(at + 2).is_some_and(|node| node.has(Cue::And));
                let more = rest(at + 2).or_else(|| if and { rest(at + 3) } else { None });
                let (more, next) = more.unwrap_or((0.0, at + 2));
                Some((Number::plain(by * times + more), next))
            }
            _ => (by > 1.0).then_some((Number::plain(by), at + 1)),
        },
        NumberWord::Value(_) => {
            let (number, next) = words(row, at);
            Some((Number { fraction: number.value < 1.0 && number.value > 0.0, ..number }, next))
        }
    }
}

/// Number words: hundreds, tens and ones.
fn words(row: &Row, at: usize) -> (Number, usize) {
    let word = |at: usize| row.nodes.get(at).and_then(|node| node.meaning.number);
    let habits = &row.lexicon.habits;
    let mut total = 0.0;
    let mut next = at;
    while let Some(NumberWord::Value(value)) = word(next) {
        let fits = next == at
            || (total % 100.0 == 0.0 && total > 0.0)
            || (total % 10.0 == 0.0 && total % 100.0 >= 20.0 && value < 20.0)
            || (habits.tens_and && total % 10.0 == 0.0 && value < 10.0);
        if !fits || (next > at && value >= 20.0 && total < 100.0) || (next > at && value == 0.0) {
            break;
        }
        total += value;
        next += 1;
        if let Some(NumberWord::Scale(by)) = word(next) {
            total *= by;
            next += 1;
        }
        let and = row.nodes.get(next).is_some_and(|node| node.has(Cue::And));
        let ones =
            matches!(word(next + 1), Some(NumberWord::Value(ones)) if ones > 0.0 && (ones < 10.0 || total >= 100.0));
        let tens =
            (habits.tens_and && total >= 10.0 && total % 10.0 == 0.0) || (total >= 100.0 && total % 100.0 == 0.0);
        // "vinte e um", "quatre-vingt-un": the one is also the article.
        let dash = |at: usize| usize::from(row.nodes.get(at).and_then(Node::mark) == Some(Mark::Dash));
        let after = next + dash(next);
        let joined = row.nodes.get(after).is_some_and(|node| node.has(Cue::And));
        let one = if joined { after + 1 + dash(after + 1) } else { after };
        let part = |at: usize| matches!(word(at), Some(NumberWord::Fraction(_) | NumberWord::Scale(_)));
        let of_tens = habits.tens_and && total % 10.0 == 0.0 && total % 100.0 >= 20.0;
        if of_tens && matches!(word(one), Some(NumberWord::Article)) && !part(one + 1) {
            return (Number::plain(total + 1.0), one + 1);
        }
        if and && ones && tens && row.figures(&row.nodes[next + 1]).is_none() {
            next += 1;
        } else if let Some(Mark::Dash) = row.nodes.get(next).and_then(Node::mark)
            && ones
            && total % 10.0 == 0.0
            && total >= 20.0
        {
            // "twenty-five" is joined by the lists; a dash left over joins too.
            next += 1;
        }
    }
    (Number::plain(total), next)
}

/// "and a half", "less a quarter", a range, a product.
fn extended(row: &Row, at: usize, mut number: Number, mut next: usize) -> (Number, usize) {
    let nodes = &row.nodes;
    if !number.weak
        && !number.fraction
        && let Some((fraction, sign, after)) = and_fraction(row, next)
    {
        number.value += sign * fraction;
        // "las 6 y media"
        number.clock = number.clock.map(|minutes| minutes + sign * fraction * 60.0);
        number.other = None;
        next = after;
    }
    // "six point five"
    if nodes.get(next).is_some_and(|node| node.has(Cue::Point))
        && let Some((tenths, after)) =
            number_at(row, next + 1).filter(|(tenths, _)| tenths.value < 100.0 && tenths.value.fract() == 0.0)
    {
        number.value += tenths.value / if tenths.value < 10.0 { 10.0 } else { 100.0 };
        return (Number { other: None, clock: None, ..number }, after);
    }
    if let Some((second, after)) = counted_on(row, at, next) {
        let range = Some((number.value, second));
        return (Number { range, ..Number::plain((number.value + second) / 2.0) }, after);
    }
    let Some(joint) = nodes.get(next) else { return (number, next) };
    let times = joint.has(Cue::Times);
    // "between 3 and 4", "3 aur 4 ke beech"
    let between = |at: usize| nodes.get(at).is_some_and(|node| node.has(Cue::Between));
    let between = joint.has(Cue::And)
        && (at > 0 && between(at - 1) || number_at(row, next + 1).is_some_and(|(_, after)| between(after)));
    let ranges = joint.mark() == Some(Mark::Dash) || joint.has(Cue::To) || joint.has(Cue::Or) || between;
    if (times || ranges)
        && !number.weak
        && let Some((second, after)) = number_at(row, next + 1)
        && !second.weak
        && !(ranges && is_hour_and_minutes(row, after))
    {
        let (second, after) = match and_fraction(row, after) {
            Some((fraction, sign, end)) if !second.fraction => (Number::plain(second.value + sign * fraction), end),
            _ => (second, after),
        };
        if times {
            return (Number::plain(number.value * second.value), after);
        }
        // "went from 24 to 28", "dropped from 8 to 3": what it has come to.
        if joint.has(Cue::To) && moved_from(row, at) {
            return (second, after);
        }
        // A half and a whole ("half or one") is a range as well; falling numbers are not.
        if second.value > number.value {
            let range = Some((number.value, second.value));
            return (
                Number {
                    range,
                    digits: number.digits,
                    clock: number.clock,
                    ..Number::plain((number.value + second.value) / 2.0)
                },
                after,
            );
        }
    }
    (number, next)
}

/// Whether the number at `at` is where a measured thing moved away from: "pressure fell from 8".
fn moved_from(row: &Row, at: usize) -> bool {
    const MEASURED: Cues = Cues::of(&[Cue::Gauge, Cue::Temp, Cue::Ph]);
    const NEAR: usize = 6;
    let from = at >= 2 && row.nodes[at - 1].has(Cue::Since);
    let before = row.nodes[at.saturating_sub(NEAR)..at].iter().rev();
    from && before
        .take_while(|node| node.mark().is_none() && row.figures(node).is_none())
        .any(|node| node.any(&MEASURED))
}

/// "do teen kilo", "two three kg": a word that counts on from the one at `at`, at most to its double.
fn counted_on(row: &Row, at: usize, next: usize) -> Option<(f64, usize)> {
    let value = |at: usize| {
        let node = row.nodes.get(at)?;
        let word = matches!(node.meaning.number, Some(NumberWord::Value(_))) && row.figures(node).is_none();
        number_at(row, at).filter(|(number, _)| word && !number.weak && !number.fraction && number.value <= 20.0)
    };
    let ((first, end), (second, after)) = (value(at)?, value(next)?);
    let range = end == next && second.value > first.value && second.value <= 2.0 * first.value;
    range.then_some((second.value, after))
}

/// "6 to 7h15": the second is a time of day, no upper end.
fn is_hour_and_minutes(row: &Row, at: usize) -> bool {
    let hour = row.nodes.get(at).is_some_and(|node| node.glued && node.meaning.unit == Some(UnitWord::Time(60.0)));
    hour && row.nodes.get(at + 1).is_some_and(|node| node.glued && row.figures(node).is_some())
}

/// "and a half" at `at`: the fraction, its sign, and what follows.
pub fn and_fraction(row: &Row, at: usize) -> Option<(f64, f64, usize)> {
    let nodes = &row.nodes;
    let sign = if nodes.get(at)?.has(Cue::And) {
        1.0
    } else if nodes[at].has(Cue::Minus) {
        -1.0
    } else {
        return None;
    };
    let mut next = at + 1;
    if matches!(nodes.get(next)?.meaning.number, Some(NumberWord::Article)) && nodes[next].kind == Kind::Phrase {
        next += 1;
    }
    let node = nodes.get(next)?;
    match node.kind {
        Kind::Number(number) if number.fraction => Some((number.value, sign, next + 1)),
        Kind::Phrase => match node.meaning.number {
            Some(NumberWord::Fraction(fraction)) => Some((fraction, sign, next + 1)),
            _ => slash_fraction(row, next)
                .filter(|&(fraction, _)| fraction < 1.0)
                .map(|(fraction, after)| (fraction, sign, after)),
        },
        _ => None,
    }
}

fn slash_fraction(row: &Row, at: usize) -> Option<(f64, usize)> {
    let nodes = &row.nodes;
    let part =
        |at: usize| nodes.get(at).and_then(|node| row.figures(node)).and_then(|figures| figures.parse::<u32>().ok());
    if nodes.get(at + 1)?.mark() != Some(Mark::Slash) {
        return None;
    }
    let (above, below) = (part(at)?, part(at + 2)?);
    (below > 0 && below <= 16 && above > 0 && above < 100).then(|| (f64::from(above) / f64::from(below), at + 3))
}

/// A number in figures, by the language's marks.
fn figures(row: &Row, at: usize) -> Option<Number> {
    parse(row.figures(&row.nodes[at])?, row.lexicon.habits.decimal)
}

/// `None` when the figures are no number a household could mean (too long, or marks in no known order).
pub fn parse(figures: &str, decimal: char) -> Option<Number> {
    if figures.len() > 14 {
        return None;
    }
    let clock = clock(figures);
    if figures.contains(':') {
        let (hours, minutes) = figures.split_once(':')?;
        let value = hours.parse::<f64>().ok()? + minutes.parse::<f64>().ok()? / 60.0;
        return clock.map(|clock| Number { clock: Some(clock), digits: true, ..Number::plain(value) });
    }
    let marks: Vec<(usize, char)> = figures.char_indices().filter(|(_, c)| !c.is_ascii_digit()).collect();
    let bare: String = figures.chars().filter(char::is_ascii_digit).collect();
    let whole = bare.parse::<f64>().ok()?;
    let made = |value: f64, other: Option<f64>| Some(Number { other, digits: true, clock, ..Number::plain(value) });
    let as_decimal = |mark: usize| {
        let head: String = figures[..mark].chars().filter(char::is_ascii_digit).collect();
        format!("{head}.{}", &figures[mark + 1..]).parse::<f64>().ok()
    };
    match marks.as_slice() {
        [] => made(whole, None),
        [(at, mark)] => {
            let tail = figures.len() - at - 1;
            if tail == 3 && *at <= 3 && !figures.starts_with('0') {
                if *mark == decimal {
                    // "1.500" in English, "2,500" in Spanish: the other custom is as likely where it is common.
                    return made(as_decimal(*at)?, Some(whole));
                }
                return made(whole, as_decimal(*at));
            }
            made(as_decimal(*at)?, None)
        }
        [heads @ .., (at, last)] => {
            let same = heads.iter().all(|(_, mark)| mark == last);
            let tail = figures.len() - at - 1;
            if same && tail == 3 {
                made(whole, None)
            } else if !same && heads.iter().all(|(_, mark)| mark == &heads[0].1) {
                made(as_decimal(*at)?, None)
            } else {
                None
            }
        }
    }
}

/// "7:30" or "7.30" as minutes after midnight.
fn clock(figures: &str) -> Option<f64> {
    let (hours, minutes) = figures.split_once([':', '.']).unwrap_or((figures, "0"));
    let (hours, minutes) =
        (hours.parse::<u32>().ok()?, if minutes.len() <= 2 { minutes.parse::<u32>().ok()? } else { 60 });
    (hours <= 24 && minutes < 60).then(|| f64::from(hours * 60 + minutes))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_part_what_the_language_says_they_part() {
        let check = |figures: &str, decimal: char, expected: Option<f64>| {
            assert_eq!(parse(figures, decimal).map(|number| number.value), expected, "{figures} with {decimal}");
        };
        check("1.5", ',', Some(1.5));
        check("1,5", '.', Some(1.5));
        check("1.000", ',', Some(1000.0));
        check("1.000", '.', Some(1.0));
        check("2,500", '.', Some(2500.0));
        check("1,50,000", '.', Some(150_000.0));
        check("1.234,5", ',', Some(1234.5));
        check("0.250", ',', Some(0.25));
        check("999999999999999999999", '.', None);
        check("1.2.3", '.', None);
    }
}
