//! Phrases as word lists write them: comma-separated, with `(a|b)` for either and `<set>` for any of a named set.
//!
//! Takes one entry's text; gives every plain phrase it stands for. Knows nothing of meaning.

use std::collections::BTreeMap;

/// More than this from one phrase is a slip of the pen.
const MOST: usize = 20_000;

/// Every phrase that `list` stands for. Errors: what is wrong, in words.
pub fn expand_list(list: &str, sets: &BTreeMap<String, Vec<String>>) -> Result<Vec<String>, String> {
    let mut phrases = Vec::new();
    for pattern in split_top(list, &[',', '\n']) {
        if !pattern.trim().is_empty() {
            phrases.extend(expand(pattern.trim(), sets)?);
        }
    }
    Ok(phrases)
}

/// Splits at `marks` outside brackets.
fn split_top<'a>(text: &'a str, marks: &[char]) -> Vec<&'a str> {
    let (mut depth, mut from, mut parts) = (0_i32, 0, Vec::new());
    for (at, c) in text.char_indices() {
        match c {
            '(' => depth += 1,
            ')' => depth -= 1,
            c if depth == 0 && marks.contains(&c) => {
                parts.push(&text[from..at]);
                from = at + c.len_utf8();
            }
            _ => {}
        }
    }
    parts.push(&text[from..]);
    parts
}

fn expand(pattern: &str, sets: &BTreeMap<String, Vec<String>>) -> Result<Vec<String>, String> {
    let mut done = vec![String::new()];
    let mut rest = pattern;
    while let Some(at) = rest.find(['(', '<']) {
        append(&mut done, &[rest[..at].to_owned()], pattern)?;
        if rest[at..].starts_with('<') {
            let end = rest[at..].find('>').ok_or_else(|| format!("`{pattern}` lacks a `>`"))? + at;
            let name = &rest[at + 1..end];
            let set =
                sets.get(name).ok_or_else(|| format!("`{pattern}` names the set `{name}`, which is not listed"))?;
            append(&mut done, set, pattern)?;
            rest = &rest[end + 1..];
        } else {
            let end = closing(&rest[at..]).ok_or_else(|| format!("`{pattern}` lacks a `)`"))? + at;
            let mut choices = Vec::new();
            for choice in split_top(&rest[at + 1..end], &['|']) {
                choices.extend(expand(choice, sets)?);
            }
            append(&mut done, &choices, pattern)?;
            rest = &rest[end + 1..];
        }
    }
    append(&mut done, &[rest.to_owned()], pattern)?;
    Ok(done)
}

fn append(done: &mut Vec<String>, choices: &[String], pattern: &str) -> Result<(), String> {
    if done.len() * choices.len() > MOST {
        return Err(format!("`{pattern}` stands for more than {MOST} phrases"));
    }
    *done = done.iter().flat_map(|head| choices.iter().map(move |tail| format!("{head}{tail}"))).collect();
    Ok(())
}

/// Where the bracket that opens `text` closes.
fn closing(text: &str) -> Option<usize> {
    let mut depth = 0;
    for (at, c) in text.char_indices() {
        match c {
            '(' => depth += 1,
            ')' => depth -= 1,
            _ => {}
        }
        if depth == 0 {
            return Some(at);
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn brackets_and_sets_unfold() {
        let sets = BTreeMap::from([("fruit".to_owned(), vec!["mango".to_owned(), "fig".to_owned()])]);
        let check = |list: &str, expected: &[&str]| assert_eq!(expand_list(list, &sets).expect("expands"), expected);
        check("peel, skin(s|)", &["peel", "skins", "skin"]);
        check("(rotten |)<fruit>", &["rotten mango", "rotten fig", "mango", "fig"]);
        check("(a(b|c)|d)", &["ab", "ac", "d"]);
        assert!(expand_list("<none>", &sets).is_err());
        assert!(expand_list("(a", &sets).is_err());
    }
}
