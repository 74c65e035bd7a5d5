//! A call from a gateway, and how to find a value in it.
//!
//! Takes method, address, headers and body as they came; gives the items in it and the values of an item.

use super::Refusal;
use super::profile::{Body, Paths};
use serde_json::Value;
use std::collections::BTreeMap;

/// What came over HTTP.
#[derive(Debug, Clone, Default)]
pub struct Call {
    pub method: String,
    /// The whole address, as the gateway knows it.
    pub url: String,
    pub query: String,
    /// Names in small letters.
    pub headers: BTreeMap<String, String>,
    pub body: Vec<u8>,
}

/// The body, taken apart.
pub enum Parsed {
    Json(Value),
    Fields(BTreeMap<String, String>),
    Text(String),
}

/// One text or report of a call.
pub struct Item<'a> {
    call: &'a Call,
    query: &'a BTreeMap<String, String>,
    whole: &'a Parsed,
    /// Its own part of a JSON batch.
    own: Option<&'a Value>,
}

impl Call {
    pub fn header(&self, name: &str) -> Option<&str> {
        self.headers.get(&name.to_ascii_lowercase()).map(String::as_str)
    }

    pub fn query(&self) -> BTreeMap<String, String> {
        fields(self.query.as_bytes())
    }

    /// The form fields of the body, if it is a form.
    pub fn form(&self) -> BTreeMap<String, String> {
        let form =
            self.header("content-type").is_some_and(|kind| kind.starts_with("application/x-www-form-urlencoded"));
        if form { fields(&self.body) } else { BTreeMap::new() }
    }

    pub fn parse(&self, body: Body) -> Result<Parsed, Refusal> {
        Ok(match body {
            Body::Json => Parsed::Json(
                serde_json::from_slice(&self.body)
                    .map_err(|error| Refusal::Body(format!("The body must be JSON in UTF-8: {error}.")))?,
            ),
            Body::Form if self.method == "GET" => Parsed::Fields(self.query()),
            Body::Form => Parsed::Fields(fields(&self.body)),
            Body::Query => Parsed::Fields(self.query()),
            Body::Text => Parsed::Text(self.text()?),
        })
    }

    /// The body in the character set its header names.
    fn text(&self) -> Result<String, Refusal> {
        let kind = self.header("content-type").unwrap_or_default().to_ascii_lowercase();
        let charset = kind.split("charset=").nth(1).unwrap_or("utf-8").trim_matches(['"', ' ', ';']).to_owned();
        match charset.as_str() {
            "iso-8859-1" | "latin1" => Ok(self.body.iter().map(|&byte| char::from(byte)).collect()),
            "utf-16be" | "ucs-2" => {
                utf16(&self.body).ok_or_else(|| Refusal::Body("The body must be UTF-16 as its header says.".to_owned()))
            }
            _ => String::from_utf8(self.body.clone())
                .map_err(|_| Refusal::Body("The body must be text in UTF-8, or name its character set.".to_owned())),
        }
    }
}

/// Big-endian UTF-16.
pub fn utf16(bytes: &[u8]) -> Option<String> {
    if !bytes.len().is_multiple_of(2) {
        return None;
    }
    let units: Vec<u16> = bytes.chunks(2).map(|pair| u16::from_be_bytes([pair[0], pair[1]])).collect();
    String::from_utf16(&units).ok()
}

/// Decoded fields; the first of a name counts.
fn fields(encoded: &[u8]) -> BTreeMap<String, String> {
    let mut fields = BTreeMap::new();
    for (name, value) in form_urlencoded::parse(encoded) {
        fields.entry(name.into_owned()).or_insert_with(|| value.into_owned());
    }
    fields
}

/// The items of a call: one, or as many as the batch at `list` holds.
pub fn items<'a>(
    call: &'a Call,
    query: &'a BTreeMap<String, String>,
    whole: &'a Parsed,
    list: Option<&str>,
) -> Vec<Item<'a>> {
    match (whole, list) {
        (Parsed::Json(json), Some(list)) => {
            gather(json, list).into_iter().map(|own| Item { call, query, whole, own: Some(own) }).collect()
        }
        _ => vec![Item { call, query, whole, own: None }],
    }
}

/// All values at a path, going through every array on the way; an empty path is the value itself.
fn gather<'a>(value: &'a Value, path: &str) -> Vec<&'a Value> {
    if let Value::Array(all) = value {
        return all.iter().flat_map(|one| gather(one, path)).collect();
    }
    match path.split_once('.') {
        _ if path.is_empty() => vec![value],
        Some((first, rest)) => value.get(first).map_or(Vec::new(), |inner| gather(inner, rest)),
        None => value.get(path).map_or(Vec::new(), |inner| gather(inner, "")),
    }
}

impl Item<'_> {
    /// The first value there is at one of the paths; empty ones count as absent.
    pub fn find(&self, paths: &Paths) -> Option<String> {
        paths.iter().find_map(|path| self.at(path)).filter(|value| !value.is_empty())
    }

    pub fn at(&self, path: &str) -> Option<String> {
        if let Some(name) = path.strip_prefix("header:") {
            return self.call.header(name).map(str::to_owned);
        }
        if let Some(name) = path.strip_prefix("query:") {
            return self.query.get(name).cloned();
        }
        match self.whole {
            Parsed::Text(text) => (path == "body").then(|| text.clone()),
            Parsed::Fields(fields) => fields.get(path).cloned(),
            Parsed::Json(whole) => {
                let found = match path.strip_prefix('/') {
                    Some(from_top) => gather(whole, from_top),
                    None => gather(self.own.unwrap_or(whole), path),
                };
                found.first().and_then(|value| scalar(value))
            }
        }
    }
}

fn scalar(value: &Value) -> Option<String> {
    match value {
        Value::String(text) => Some(text.clone()),
        Value::Number(number) => Some(number.to_string()),
        Value::Bool(truth) => Some(truth.to_string()),
        _ => None,
    }
}

/// A value in a JSON response.
pub fn in_json(body: &[u8], paths: &Paths) -> Option<String> {
    let json: Value = serde_json::from_slice(body).ok()?;
    paths.iter().find_map(|path| gather(&json, path).first().and_then(|value| scalar(value)))
}
