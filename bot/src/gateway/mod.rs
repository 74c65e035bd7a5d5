//! Gateways: the ways to the phones, each described by a file.
//!
//! Takes calls; gives texts and delivery reports, or a refusal with a sentence. Takes texts of ours; gives what came
//! of sending them. Knows no store and no clock of its own.

pub mod call;
pub mod link;
pub mod profile;
mod send;
mod sign;
pub mod smpp;
mod template;
pub mod xmpp;

use crate::config::{Config, ConfigError, GatewayConfig, Secret};
use crate::message::Inbound;
use crate::store::Receipt;
use call::{Call, Item, items, utf16};
use chrono::{DateTime, NaiveDateTime, Utc};
use include_dir::{Dir, include_dir};
use link::Link;
use profile::{Profile, ReceiptsIn, Signature, TextForm, TextsIn, TimeFormat};
use sha2::{Digest, Sha256};
use std::collections::{BTreeMap, BTreeSet};

pub use send::{Sent, client};

static BUILT_IN: Dir = include_dir!("$CARGO_MANIFEST_DIR/../deploy/gateways");

/// Why a call is not taken.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum Refusal {
    #[error("{0}")]
    Body(String),
    #[error("{0}")]
    Signature(String),
}

/// What a delivery report says, and of which text.
#[derive(Debug, Clone, PartialEq)]
pub struct Report {
    /// Our own id; else the gateway's.
    pub ours: Option<String>,
    pub theirs: Option<String>,
    pub receipt: Receipt,
}

/// Longest that a gateway's id or a number may be.
const ID_MOST: usize = 256;
const NUMBER_MOST: usize = 128;

/// One gateway, ready for use.
pub struct Gateway {
    pub name: String,
    pub profile: Profile,
    unsigned: bool,
    settings: BTreeMap<String, Secret>,
    client: reqwest::Client,
    /// In place of calls.
    pub link: Option<Link>,
}

/// A text as a gateway tells it, before it is checked.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Heard {
    /// The gateway's own; without one, sender, words and time tell doubles.
    pub id: Option<String>,
    pub from: Option<String>,
    pub to: Option<String>,
    pub text: String,
    pub sent_at: Option<DateTime<Utc>>,
}

impl Gateway {
    /// All gateways of a configuration. Errors: a sentence that names the key.
    pub fn all(config: &Config) -> Result<BTreeMap<String, Gateway>, ConfigError> {
        let client = send::client();
        config
            .gateway
            .iter()
            .map(|(name, gateway)| Ok((name.clone(), Gateway::new(name, gateway, client.clone())?)))
            .collect()
    }

    fn new(name: &str, config: &GatewayConfig, client: reqwest::Client) -> Result<Gateway, ConfigError> {
        let key = |last: &str| format!("gateway.{name}.{last}");
        let wanted = config.profile.as_deref().unwrap_or(name);
        let text = match BUILT_IN.get_file(format!("{wanted}.toml")) {
            Some(file) => file.contents_utf8().expect("built-in profiles are text").to_owned(),
            None => std::fs::read_to_string(wanted).map_err(|error| {
                let names: Vec<_> = BUILT_IN.files().filter_map(|f| f.path().file_stem()?.to_str()).collect();
                let names = names.join(", ");
                ConfigError::key(
                    key("profile"),
                    format!("`{wanted}` is neither built in ({names}) nor a file: {error}"),
                )
            })?,
        };
        let profile = Profile::read(&text)
            .map_err(|why| ConfigError::key(key("profile"), format!("`{wanted}` does not read: {why}")))?;
        let out = &profile.out;
        let ways = [profile.link.is_some(), out.call.is_some(), out.in_response.is_some()];
        if ways.into_iter().filter(|way| *way).count() != 1 || profile.link.is_some() == profile.texts.is_some() {
            let why = format!(
                "`{wanted}` must have [in] and one of [out.call] and [out.in_response], or [link] in their place"
            );
            return Err(ConfigError::key(key("profile"), why));
        }
        let setting = |name: &str| config.settings.get(name).map(|secret| secret.reveal().to_owned());
        let link = profile.link.as_ref().map(|shape| Link::new(shape, setting));
        let gateway = Gateway {
            name: name.to_owned(),
            profile,
            unsigned: config.unsigned,
            settings: config.settings.clone(),
            client,
            link,
        };
        let unsigned = gateway.profile.texts.as_ref().is_some_and(|shape| matches!(shape.signature, Signature::None));
        if unsigned && !config.unsigned {
            let why = "this gateway signs nothing, so anybody could text in its name; set it to true only if others \
                       cannot reach the server";
            return Err(ConfigError::key(key("unsigned"), why));
        }
        let named = gateway.settings_named();
        if let Some(missing) = named.iter().find(|named| !gateway.settings.contains_key(*named)) {
            return Err(ConfigError::key(key(missing), "it is missing"));
        }
        if let Some(extra) = gateway.settings.keys().find(|setting| !named.contains(*setting)) {
            let known: Vec<_> = named.into_iter().collect();
            let why = format!("there is no such key; there are profile, unsigned, {}", known.join(", "));
            return Err(ConfigError::key(key(extra), why));
        }
        Ok(gateway)
    }

    /// Settings that the profile's templates and signatures name.
    fn settings_named(&self) -> BTreeSet<String> {
        let mut named = send::settings_named(&self.profile.out);
        named.extend(self.profile.link.iter().flat_map(|shape| shape.settings_named()));
        let texts = self.profile.texts.as_ref();
        named.extend(texts.and_then(|shape| shape.challenge.as_ref()).map(|challenge| challenge.setting.clone()));
        let receipts = self.profile.receipt.as_ref().and_then(|receipt| receipt.signature.as_ref());
        for signature in [texts.map(|shape| &shape.signature), receipts].into_iter().flatten() {
            match signature {
                _ if self.unsigned => {}
                Signature::None => {}
                Signature::Token { setting, .. } => drop(named.insert(setting.clone())),
                Signature::Basic { user, secret } => named.extend([user.clone(), secret.clone()]),
                Signature::Hmac(hmac) => drop(named.insert(hmac.setting.clone())),
            }
        }
        named
    }

    fn setting(&self, name: &str) -> Option<String> {
        self.settings.get(name).map(|secret| secret.reveal().to_owned())
    }

    fn verify(&self, signature: &Signature, call: &Call, now: DateTime<Utc>) -> Result<(), Refusal> {
        if self.unsigned { Ok(()) } else { sign::verify(signature, call, &|name| self.setting(name), now) }
    }

    /// What to say back if this call only asks who we are.
    pub fn challenged(&self, call: &Call) -> Option<Result<String, Refusal>> {
        let challenge = self.profile.texts.as_ref()?.challenge.as_ref().filter(|_| call.method == "GET")?;
        let mut query = call.query();
        let echo = query.remove(&challenge.echo)?;
        let (said, word) = (query.remove(&challenge.token), self.setting(&challenge.setting));
        let known = said.zip(word).is_some_and(|(said, word)| sign::same(said.as_bytes(), word.as_bytes()));
        Some(if known { Ok(echo) } else { Err(Refusal::Signature("The word of the challenge is wrong.".to_owned())) })
    }

    /// The texts in a call.
    pub fn receive(&self, call: &Call, now: DateTime<Utc>) -> Result<Vec<Inbound>, Refusal> {
        let Some(shape) = &self.profile.texts else {
            return Err(Refusal::Body("This gateway makes no calls: its texts come over a link.".to_owned()));
        };
        self.verify(&shape.signature, call, now)?;
        let whole = call.parse(shape.body)?;
        let query = call.query();
        let wanted = |item: &Item| {
            shape.only.iter().all(|only| item.at(&only.field).is_some_and(|value| only.is.contains(&value)))
        };
        items(call, &query, &whole, shape.list.as_deref())
            .iter()
            .filter(|item| wanted(item))
            .map(|item| self.inbound(shape, item, now))
            .collect()
    }

    fn inbound(&self, shape: &TextsIn, item: &Item, now: DateTime<Utc>) -> Result<Inbound, Refusal> {
        let id = item.find(&shape.id);
        if id.is_none() && shape.id.iter().next().is_some() {
            return Err(Refusal::Body("The call has no id.".to_owned()));
        }
        let raw = shape.text.iter().find_map(|path| item.at(path));
        let Some(raw) = raw else { return Err(Refusal::Body("The call has no text.".to_owned())) };
        let heard = Heard {
            id,
            from: item.find(&shape.from),
            to: item.find(&shape.to),
            text: decode(shape.text_form, raw)?,
            sent_at: item.find(&shape.time).and_then(|time| moment(&shape.time_format, &time)),
        };
        self.heard(heard, now)
    }

    /// A text as it may be kept. Errors: a sentence on what is missing or too long.
    pub fn heard(&self, heard: Heard, now: DateTime<Utc>) -> Result<Inbound, Refusal> {
        let need = |what: &str, value: Option<String>, most: usize| match value {
            Some(value) if value.len() > most => Err(Refusal::Body(format!("The {what} is longer than {most} bytes."))),
            Some(value) if value.chars().any(char::is_control) => {
                Err(Refusal::Body(format!("The {what} has control characters in it.")))
            }
            Some(value) if !value.trim().is_empty() => Ok(value.trim().to_owned()),
            _ => Err(Refusal::Body(format!("The call has no {what}; give it as a text that is not empty."))),
        };
        let from = need("sender", heard.from, NUMBER_MOST)?;
        let to = heard.to.filter(|to| to.len() <= NUMBER_MOST && !to.chars().any(char::is_control));
        // No database keeps a zero character in a text.
        let mut text = heard.text.replace('\0', " ");
        if self.profile.stop_words.iter().any(|word| word.eq_ignore_ascii_case(text.trim())) {
            text = "STOP".to_owned();
        }
        let id = match heard.id {
            Some(id) => need("id", Some(id), ID_MOST)?,
            None => {
                // No id: the same words from the same sender at the same time are the same text.
                let when = heard
                    .sent_at
                    .map_or_else(|| now.format("%Y-%m-%dT%H:%M").to_string(), |at| at.timestamp_millis().to_string());
                let hash = Sha256::new().chain_update(when).chain_update([0]).chain_update(&text).finalize();
                hex::encode(&hash[..16])
            }
        };
        Ok(Inbound {
            gateway: self.name.clone(),
            id,
            from,
            to,
            text,
            sent_at: heard.sent_at.filter(|at| *at <= now).unwrap_or(now),
            received_at: now,
        })
    }

    /// Whether texts can go out by themselves, and whether just now.
    pub fn sends(&self) -> bool {
        self.link.is_some() || self.profile.out.call.is_some()
    }

    pub fn is_up(&self) -> bool {
        self.link.as_ref().is_none_or(Link::is_up)
    }

    /// The delivery reports in a call; those that say neither delivered nor failed are left out.
    pub fn reports(&self, call: &Call, now: DateTime<Utc>) -> Result<Vec<Report>, Refusal> {
        let Some(shape) = &self.profile.receipt else {
            return Err(Refusal::Body("This gateway has no delivery reports.".to_owned()));
        };
        let like_texts = self.profile.texts.as_ref().map(|texts| &texts.signature);
        self.verify(shape.signature.as_ref().or(like_texts).unwrap_or(&Signature::None), call, now)?;
        let whole = call.parse(shape.body)?;
        let query = call.query();
        let items = items(call, &query, &whole, shape.list.as_deref());
        items.iter().filter_map(|item| report(shape, item).transpose()).collect()
    }
}

fn report(shape: &ReceiptsIn, item: &Item) -> Result<Option<Report>, Refusal> {
    let (ours, theirs) = (item.find(&shape.our_id), item.find(&shape.wire_id));
    if ours.is_none() && theirs.is_none() {
        return Err(Refusal::Body("The report has no id.".to_owned()));
    }
    let Some(status) = item.find(&shape.status) else {
        return Err(Refusal::Body("The report has no status.".to_owned()));
    };
    let listed = |list: &[String]| list.iter().any(|word| word.eq_ignore_ascii_case(&status));
    Ok(match (listed(&shape.delivered), listed(&shape.failed)) {
        (true, _) => Some(Report { ours, theirs, receipt: Receipt::Delivered }),
        (_, true) => Some(Report { ours, theirs, receipt: Receipt::Failed }),
        _ => None,
    })
}

fn decode(form: TextForm, raw: String) -> Result<String, Refusal> {
    use base64::Engine;
    let decoded = match form {
        TextForm::Plain => return Ok(raw),
        TextForm::HexUtf16 => hex::decode(raw.trim()).ok().and_then(|bytes| utf16(&bytes)),
        TextForm::Base64 => {
            let bytes = base64::engine::general_purpose::STANDARD.decode(raw.trim()).ok();
            bytes.and_then(|bytes| String::from_utf8(bytes).ok())
        }
    };
    decoded.ok_or_else(|| Refusal::Body("The text cannot be decoded.".to_owned()))
}

/// A moment as the gateway writes it.
fn moment(format: &TimeFormat, text: &str) -> Option<DateTime<Utc>> {
    match format {
        TimeFormat::Rfc3339 => text.parse().ok(),
        TimeFormat::Unix => DateTime::from_timestamp(text.parse().ok()?, 0),
        TimeFormat::UnixMs => DateTime::from_timestamp_millis(text.parse().ok()?),
        TimeFormat::Patterns(patterns) => {
            patterns.iter().find_map(|pattern| patterned(text, pattern)).or_else(|| text.parse().ok())
        }
    }
}

/// In UTC where the pattern says no offset. (A time without a zone would read past the offset as if it were not there.)
fn patterned(text: &str, pattern: &str) -> Option<DateTime<Utc>> {
    let placed = DateTime::parse_from_str(text, pattern).map(|at| at.to_utc());
    placed.or_else(|_| NaiveDateTime::parse_from_str(text, pattern).map(|at| at.and_utc())).ok()
}
