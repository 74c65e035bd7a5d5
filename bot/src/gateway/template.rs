//! Texts with gaps: `{name}` is replaced by what the name stands for, written as the place asks.

use std::collections::BTreeSet;

/// How a value must be written where it lands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// As it is.
    Bare,
    /// As a JSON string, with its quotes.
    Json,
    /// As XML text.
    Xml,
}

impl Place {
    fn write(self, value: &str, out: &mut String) {
        match self {
            Place::Bare => out.push_str(value),
            Place::Json => out.push_str(&serde_json::Value::from(value).to_string()),
            Place::Xml => value.chars().for_each(|c| match c {
                '<' => out.push_str("&lt;"),
                '>' => out.push_str("&gt;"),
                '&' => out.push_str("&amp;"),
                c => out.push(c),
            }),
        }
    }
}

/// One piece of a template.
enum Piece<'a> {
    Text(&'a str),
    Gap(&'a str),
}

/// A gap is a brace, a name of small letters, digits and underscores, a brace; any other brace stands for itself.
fn pieces(template: &str) -> Vec<Piece<'_>> {
    let mut pieces = Vec::new();
    let mut rest = template;
    let mut from = 0;
    while let Some(open) = rest[from..].find('{').map(|at| at + from) {
        let close = rest[open..].find('}').map(|at| at + open);
        let name = close.map(|close| &rest[open + 1..close]);
        match (name, close) {
            (Some(name), Some(close)) if is_name(name) => {
                pieces.push(Piece::Text(&rest[..open]));
                pieces.push(Piece::Gap(name));
                rest = &rest[close + 1..];
                from = 0;
            }
            _ => from = open + 1,
        }
    }
    pieces.push(Piece::Text(rest));
    pieces
}

fn is_name(name: &str) -> bool {
    !name.is_empty() && name.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'_')
}

/// Fills the gaps. A name without a value leaves nothing.
pub fn fill(template: &str, place: Place, value: impl Fn(&str) -> Option<String>) -> String {
    let mut filled = String::with_capacity(template.len());
    for piece in pieces(template) {
        match piece {
            Piece::Text(text) => filled.push_str(text),
            Piece::Gap(name) => place.write(&value(name).unwrap_or_default(), &mut filled),
        }
    }
    filled
}

/// The names a template has gaps for.
pub fn names(template: &str) -> BTreeSet<String> {
    pieces(template)
        .into_iter()
        .filter_map(|piece| if let Piece::Gap(name) = piece { Some(name.to_owned()) } else { None })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(template: &str, place: Place, filled: &str) {
        let value = |name: &str| (name == "text").then(|| "a \"b\" <&> é".to_owned());
        assert_eq!(fill(template, place, value), filled);
    }

    #[test]
    fn gaps_are_filled_as_the_place_asks() {
        check("x {text}!", Place::Bare, "x a \"b\" <&> é!");
        check(r#"{"m":{"t":{text}}}"#, Place::Json, r#"{"m":{"t":"a \"b\" <&> é"}}"#);
        check("<m>{text}</m>", Place::Xml, "<m>a \"b\" &lt;&amp;&gt; é</m>");
        check("{unknown}{ text}{}{", Place::Bare, "{ text}{}{");
    }

    #[test]
    fn names_are_found() {
        assert_eq!(names("{b} {a} {A} {b").into_iter().collect::<Vec<_>>(), ["a", "b"]);
    }
}
