//! Times: lengths of time, day words and dates made days before the text.
//!
//! Takes a row whose quantities are joined; gives it with "3 weeks ago", "for 3 days", "since Sunday" each as one node.

use super::nodes::{Kind, Node, Row, When, day_offset};
use super::notions::{Cue, Cues, DayWord, UnitWord};
use super::tokens::Mark;
use super::wordlist::Side;
use chrono::{Datelike, NaiveDate};

/// "3 days ago", "for 3 days", "since Sunday", day words.
pub fn join(row: &mut Row, today: NaiveDate) {
    let weekday = today.weekday().num_days_from_monday() as u8;
    let mut out: Vec<Node> = Vec::with_capacity(row.nodes.len());
    let mut at = 0;
    while at < row.nodes.len() {
        let mut node = row.nodes[at];
        let mut next = at + 1;
        let nodes = &row.nodes;
        let cue = |at: usize, cue: Cue| nodes.get(at).is_some_and(|node| node.has(cue));
        if let Some(days) = days_in(&node) {
            let before = |back: usize| out.len().checked_sub(back).map(|at| &out[at]);
            let ago_before = before(1).is_some_and(|node| node.has(Cue::Ago))
                || before(1).is_some_and(|n| n.has(Cue::About)) && before(2).is_some_and(|n| n.has(Cue::Ago));
            let since_before = before(1).is_some_and(|node| node.has(Cue::Since));
            if cue(next, Cue::Ago) {
                next += 1;
                node.kind = Kind::When(When::Ago(days));
            } else if ago_before {
                node.kind = Kind::When(When::Ago(days));
            } else if cue(next, Cue::Since) || since_before {
                next += usize::from(cue(next, Cue::Since) && !since_before);
                node.kind = Kind::When(When::Span(days));
            } else {
                node.kind = Kind::When(When::Span(days));
            }
        } else if let Some(days) = days_after(row, at) {
            node.kind = Kind::When(When::Span(days));
            node.meaning = Default::default();
            next += 1;
        } else if let Some(date) = date_at(row, at, today) {
            node.kind = Kind::When(When::Day(date.0));
            next = date.1;
        } else if node.kind == Kind::Phrase
            && let Some(DayWord::Month(month)) = node.meaning.day
        {
            const LEADS: Cues = Cues::of(&[Cue::Since, Cue::In, Cue::Start]);
            let led = out.last().is_some_and(|before| before.any(&LEADS));
            let since_after = row.lexicon.habits.negation == Side::After && cue(next, Cue::Since);
            if (led || since_after || row.nodes.len() == 1)
                && let Some(days) = month_ago(u32::from(month), today)
            {
                node.kind = Kind::When(When::Month(days));
            }
        } else if node.kind == Kind::Phrase
            && let Some(word) = node.meaning.day
            && (!matches!(word, DayWord::Weekday(_)) || !node.has(Cue::Other) || heads_a_day(row, at))
        {
            let when = day_offset(word, weekday);
            if node.has(Cue::Other) && matches!(word, DayWord::Weekday(_)) {
                node.meaning = Default::default();
            }
            // "a cup of lime in, yesterday": what goes in, and no length of time.
            let since = out.last().is_some_and(|node| node.has(Cue::Since) && !node.has(Cue::In));
            // Where such words follow what they are said of.
            let since_after = row.lexicon.habits.negation == Side::After && cue(next, Cue::Since);
            node.kind = Kind::When(match when {
                When::Day(days) if since || since_after => When::Since(-days),
                When::EitherWay(days) if since || since_after => When::Since(days),
                When::LastNight if since || since_after => When::Since(1),
                other => other,
            });
            next += usize::from(since_after && !since);
        }
        node.to = row.nodes[next - 1].to;
        out.push(node);
        at = next;
    }
    row.nodes = out;
}

/// "Sat: 3 kg. Sun: nothing.": a short name of a weekday that is a word as well, where it heads what is told of that day
/// or stands beside another.
fn heads_a_day(row: &Row, at: usize) -> bool {
    let weekday = |node: &Node| matches!(node.meaning.day, Some(DayWord::Weekday(_)));
    let opens = at == 0 || row.nodes[at - 1].mark().is_some();
    let leads = row.nodes.get(at + 1).is_some_and(|next| {
        matches!(next.mark(), Some(Mark::Colon | Mark::Dash | Mark::Equals))
            || next.number().is_some_and(|n| !n.weak)
            || next.quantity().is_some_and(|q| !q.implied)
            || next.has(Cue::Nothing)
    });
    opens && leads || row.nodes.iter().filter(|node| weekday(node)).take(2).count() == 2
}

fn days_in(node: &Node) -> Option<i32> {
    let quantity = node.quantity()?;
    if !matches!(quantity.unit, Some(UnitWord::Days(_))) || quantity.number.is_some_and(|n| n.doubtful()) {
        return None;
    }
    let days = quantity.in_base()?;
    (days >= 0.5 && days < 40_000.0).then(|| days.round() as i32)
}

/// "kwa siku" is "per day", but with a number after it "for so many days", where numbers follow what they count.
fn days_after(row: &Row, at: usize) -> Option<i32> {
    let node = &row.nodes[at];
    let both = node.kind == Kind::Phrase && node.has(Cue::Habit) && node.has(Cue::Since);
    let number = row.nodes.get(at + 1)?.number().filter(|n| !n.weak && !n.doubtful() && n.value.fract() == 0.0)?;
    (both && row.lexicon.habits.number == Side::After && number.value >= 1.0 && number.value < 1000.0)
        .then_some(number.value as i32)
}

/// Days since the middle of the last such month, or since its first day where it is not half over.
fn month_ago(month: u32, today: NaiveDate) -> Option<i32> {
    let middle = |year: i32| NaiveDate::from_ymd_opt(year, month, 15);
    let date = match middle(today.year())? {
        date if date <= today => date,
        date if date.month() == today.month() => today.with_day(1)?,
        _ => middle(today.year() - 1)?,
    };
    Some((today - date).num_days() as i32)
}

/// "3 March", "March 3": days from today, in the past.
fn date_at(row: &Row, at: usize, today: NaiveDate) -> Option<(i32, usize)> {
    let month = |at: usize| match row.nodes.get(at)?.meaning.day? {
        DayWord::Month(month) if row.nodes[at].kind == Kind::Phrase => Some(u32::from(month)),
        _ => None,
    };
    let day = |at: usize| {
        let node = row.nodes.get(at)?;
        // "the 10th of January": an ordinal is one node of figures and their ending.
        if node.kind == Kind::Phrase && node.to == node.from + 2 && node.meaning.day.is_none() {
            let figures = row.tokens.text(&row.tokens.list[node.from as usize]);
            return figures.parse::<u32>().ok().filter(|day| (1..=31).contains(day));
        }
        let number = node.number()?;
        (number.value.fract() == 0.0 && number.value >= 1.0 && number.value <= 31.0 && !number.weak)
            .then_some(number.value as u32)
    };
    let (day, month, next) = match (day(at), month(at)) {
        (Some(day), _) => {
            let next = at + 1 + usize::from(row.nodes.get(at + 1).is_some_and(|n| n.has(Cue::Of)));
            (day, month(next)?, next + 1)
        }
        (None, Some(month)) => (day(at + 1)?, month, at + 2),
        _ => return None,
    };
    let this = NaiveDate::from_ymd_opt(today.year(), month, day)?;
    let date = if this > today { NaiveDate::from_ymd_opt(today.year() - 1, month, day)? } else { this };
    Some(((date - today).num_days() as i32, next))
}
