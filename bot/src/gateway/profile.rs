//! What a gateway is like, as its file says: how texts come in, how they go out, how delivery reports read.
//!
//! Only shapes. Every string that may hold `{name}` is a template over the gateway's settings and, where it makes
//! sense, the text at hand.

use super::link::LinkShape;
use serde::Deserialize;
use std::collections::BTreeMap;

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Profile {
    /// One line for people: what kind of gateway this is for.
    pub about: String,
    #[serde(default, rename = "in")]
    pub texts: Option<TextsIn>,
    /// A lasting connection in place of calls.
    #[serde(default)]
    pub link: Option<LinkShape>,
    pub out: Out,
    pub receipt: Option<ReceiptsIn>,
    /// Whole texts by which this gateway's network marks an opt-out, beside those of every language.
    #[serde(default)]
    pub stop_words: Vec<String>,
    /// Senders may be names or short numbers: chat accounts, say.
    #[serde(default)]
    pub any_sender: bool,
}

impl Profile {
    /// Reads a gateway's file. Errors: what is wrong with it, in one line.
    pub fn read(text: &str) -> Result<Profile, String> {
        toml::from_str(text).map_err(|error| error.message().to_owned())
    }
}

/// Where in a call a value is: `a.b` in its body, `query:NAME`, `header:NAME`, or `body` for the whole of it. The
/// first of several that is there counts.
#[derive(Debug, Clone, Default, PartialEq, Deserialize)]
#[serde(untagged)]
pub enum Paths {
    #[default]
    None,
    One(String),
    Many(Vec<String>),
}

impl Paths {
    pub fn iter(&self) -> impl Iterator<Item = &str> {
        match self {
            Paths::None => [].iter(),
            Paths::One(path) => std::slice::from_ref(path).iter(),
            Paths::Many(paths) => paths.iter(),
        }
        .map(String::as_str)
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Body {
    Json,
    Form,
    /// All is in the query.
    Query,
    /// The body is the text.
    Text,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TextsIn {
    pub body: Body,
    /// Where in the body a batch of texts is; arrays on the way are gone through.
    #[serde(default)]
    pub list: Option<String>,
    /// Without it the sender, text and time together tell doubles.
    #[serde(default)]
    pub id: Paths,
    pub from: Paths,
    #[serde(default)]
    pub to: Paths,
    pub text: Paths,
    #[serde(default)]
    pub time: Paths,
    #[serde(default)]
    pub time_format: TimeFormat,
    #[serde(default)]
    pub text_form: TextForm,
    /// Items that are not so are acknowledged and left.
    #[serde(default)]
    pub only: Vec<Only>,
    pub answer: Answer,
    pub signature: Signature,
    #[serde(default)]
    pub challenge: Option<Challenge>,
}

/// How times are written.
#[derive(Debug, Clone, Default, PartialEq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TimeFormat {
    #[default]
    Rfc3339,
    Unix,
    UnixMs,
    /// strftime patterns, the first that fits; in UTC unless it has an offset (`%z`).
    Patterns(Vec<String>),
}

/// How the text is written.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TextForm {
    /// As the call's character set has it.
    #[default]
    Plain,
    /// Big-endian UTF-16 in hexadecimal.
    HexUtf16,
    /// UTF-8 in base64.
    Base64,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Only {
    pub field: String,
    pub is: Vec<String>,
}

/// What the gateway wants to hear when its call is taken.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Answer {
    pub status: u16,
    #[serde(default)]
    pub content_type: Option<String>,
    #[serde(default)]
    pub body: String,
}

/// A call that only asks whether we are who the gateway thinks we are.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Challenge {
    /// Query field with what to say back.
    pub echo: String,
    /// Query field with the word they were given.
    pub token: String,
    /// Setting that holds that word.
    pub setting: String,
}

/// How a call proves where it comes from.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields, tag = "scheme", rename_all = "snake_case")]
pub enum Signature {
    /// Not at all: only with `unsigned = true` in the configuration.
    None,
    /// A word both know.
    Token {
        /// Where in the call it is.
        at: String,
        #[serde(default)]
        prefix: String,
        #[serde(default = "secret")]
        setting: String,
    },
    /// HTTP basic authentication.
    Basic {
        user: String,
        secret: String,
    },
    Hmac(Hmac),
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Hmac {
    pub hash: Hash,
    pub header: String,
    #[serde(default)]
    pub prefix: String,
    pub encoding: Encoding,
    /// What is signed, over `{body}`, `{url}`, `{form}` (form fields in order of name, name and value joined),
    /// `{timestamp}`, `{nonce}`.
    pub over: String,
    /// Header with the time of signing, in seconds or RFC 3339.
    #[serde(default)]
    pub timestamp: Option<String>,
    #[serde(default)]
    pub nonce: Option<String>,
    #[serde(default = "five_minutes")]
    pub tolerance_s: i64,
    /// Setting that holds the key.
    #[serde(default = "secret")]
    pub setting: String,
}

fn secret() -> String {
    "secret".to_owned()
}

fn five_minutes() -> i64 {
    300
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Hash {
    Sha1,
    Sha256,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Encoding {
    Hex,
    Base64,
}

/// How texts go out.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Out {
    /// The answer goes into the response to the call that brought the text, if it is ready within these milliseconds.
    #[serde(default)]
    pub in_response: Option<InResponse>,
    /// A call of our own.
    #[serde(default)]
    pub call: Option<CallOut>,
    /// Most texts a second, by all nodes together.
    #[serde(default)]
    pub rate_per_s: Option<f64>,
    /// Most calls at once.
    #[serde(default = "sixteen")]
    pub at_once: usize,
}

fn sixteen() -> usize {
    16
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct InResponse {
    pub within_ms: u64,
    pub content_type: String,
    /// Over `{to}`, `{text}`, `{id}`, `{coding}`.
    pub body: String,
    #[serde(default)]
    pub write_as: WriteAs,
    #[serde(default)]
    pub headers: BTreeMap<String, String>,
    #[serde(default)]
    pub coding: Coding,
}

/// How values are written into a template's gaps.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum WriteAs {
    #[default]
    Text,
    Json,
    Xml,
}

/// What `{coding}` stands for, by the alphabet the text needs.
#[derive(Debug, Clone, Default, PartialEq, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Coding {
    pub gsm7: String,
    pub ucs2: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CallOut {
    #[serde(default = "post")]
    pub method: String,
    pub url: String,
    /// JSON body: gaps are written as JSON strings.
    #[serde(default)]
    pub json: Option<String>,
    /// Form body.
    #[serde(default)]
    pub form: BTreeMap<String, String>,
    /// Added to the URL.
    #[serde(default)]
    pub query: BTreeMap<String, String>,
    #[serde(default)]
    pub headers: BTreeMap<String, String>,
    /// User and password templates.
    #[serde(default)]
    pub basic: Option<(String, String)>,
    #[serde(default)]
    pub signature: Option<Hmac>,
    #[serde(default)]
    pub coding: Coding,
    /// Where in the JSON response the gateway's own id of the text is.
    #[serde(default)]
    pub wire_id: Paths,
    /// A response with a good status that holds one of these words was not good after all.
    #[serde(default)]
    pub refused_if: Vec<String>,
    /// The same, but what stands in the way may be mended: the text is tried again.
    #[serde(default)]
    pub again_if: Vec<String>,
    /// Statuses tried again beside 408, 425, 429 and all of 500 and above.
    #[serde(default)]
    pub again: Vec<u16>,
    /// The gateway drops a text whose id it has seen.
    #[serde(default)]
    pub drops_doubles: bool,
}

fn post() -> String {
    "POST".to_owned()
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ReceiptsIn {
    pub body: Body,
    #[serde(default)]
    pub list: Option<String>,
    /// Where our own id is.
    #[serde(default)]
    pub our_id: Paths,
    /// Where the gateway's id is.
    #[serde(default)]
    pub wire_id: Paths,
    pub status: Paths,
    pub delivered: Vec<String>,
    pub failed: Vec<String>,
    pub answer: Answer,
    /// As for texts in, if absent.
    #[serde(default)]
    pub signature: Option<Signature>,
}
