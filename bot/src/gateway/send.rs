//! Sending: one text of ours by one call to the gateway.
//!
//! Takes the text; gives whether it was taken, refused for good, or is to be tried again.

use super::Gateway;
use super::call::in_json;
use super::profile::{CallOut, Coding, InResponse, Out, WriteAs};
use super::sign::{basic, sign};
use super::template::{Place, fill, names};
use crate::reply::segments::{Encoding, size};
use chrono::Utc;
use reqwest::{Method, StatusCode};
use std::collections::BTreeSet;
use std::time::Duration;

/// What came of one call.
#[derive(Debug, Clone, PartialEq)]
pub enum Sent {
    Taken { wire_id: Option<String> },
    Refused { why: String },
    Again { why: String, after: Option<Duration> },
}

/// A gateway that says nothing for this long is taken to be down.
const WITHIN: Duration = Duration::from_secs(20);
const CONNECT_WITHIN: Duration = Duration::from_secs(5);
/// Most of an answer that is read.
const ANSWER_MOST: usize = 16 * 1024;

pub fn client() -> reqwest::Client {
    // Whoever was first to install one is as good: there is only one kind.
    let _ = rustls::crypto::ring::default_provider().install_default();
    reqwest::Client::builder()
        .timeout(WITHIN)
        .connect_timeout(CONNECT_WITHIN)
        .redirect(reqwest::redirect::Policy::none())
        .build()
        .expect("a client with these settings can always be built")
}

/// Names that a text itself gives, and that are no settings.
const OF_THE_TEXT: [&str; 6] = ["id", "to", "to_digits", "text", "coding", "timestamp"];

pub fn settings_named(out: &Out) -> BTreeSet<String> {
    let mut templates: Vec<&str> = Vec::new();
    let mut named = BTreeSet::new();
    if let Some(call) = &out.call {
        templates.push(&call.url);
        templates.extend(call.json.as_deref());
        templates
            .extend(call.form.values().chain(call.query.values()).chain(call.headers.values()).map(String::as_str));
        templates.extend(call.basic.iter().flat_map(|(user, password)| [user.as_str(), password.as_str()]));
        named.extend(call.signature.as_ref().map(|signature| signature.setting.clone()));
    }
    if let Some(response) = &out.in_response {
        templates.push(&response.body);
        templates.extend(response.headers.values().map(String::as_str));
    }
    named.extend(templates.into_iter().flat_map(names).filter(|name| !OF_THE_TEXT.contains(&name.as_str())));
    named
}

impl Gateway {
    /// What a name in a template stands for.
    fn value(&self, name: &str, id: &str, to: &str, text: &str, coding: &Coding) -> Option<String> {
        Some(match name {
            "id" => id.to_owned(),
            "to" => to.to_owned(),
            "to_digits" => to.trim_start_matches('+').to_owned(),
            "text" => text.to_owned(),
            "coding" if size(text).encoding == Encoding::Gsm7 => coding.gsm7.clone(),
            "coding" => coding.ucs2.clone(),
            "timestamp" => Utc::now().timestamp().to_string(),
            setting => return self.setting(setting),
        })
    }

    /// Hands one text to the gateway.
    pub async fn send(&self, id: &str, to: &str, text: &str) -> Sent {
        if let Some(link) = &self.link {
            return link.send(id, to, text).await;
        }
        let Some(call) = &self.profile.out.call else {
            let why = "this gateway takes texts only in response to its own calls".to_owned();
            return Sent::Again { why, after: Some(Duration::from_secs(60)) };
        };
        match self.request(call, id, to, text).send().await {
            Ok(mut response) => {
                let status = response.status();
                let after = retry_after(&response);
                let mut body = Vec::new();
                while let Ok(Some(chunk)) = response.chunk().await {
                    body.extend_from_slice(&chunk);
                    if body.len() > ANSWER_MOST {
                        break;
                    }
                }
                judge(call, status, &body, after)
            }
            // The address may hold secrets and the number: it is not repeated.
            Err(error) => Sent::Again { why: error.without_url().to_string(), after: None },
        }
    }

    fn request(&self, call: &CallOut, id: &str, to: &str, text: &str) -> reqwest::RequestBuilder {
        let value = |name: &str| self.value(name, id, to, text, &call.coding);
        let bare = |template: &str| fill(template, Place::Bare, value);
        // The base of the address comes from a setting that is a URL itself: only what a text gives is encoded.
        let mut url = fill(&call.url, Place::Bare, |name| {
            let value = value(name)?;
            let of_text = OF_THE_TEXT.contains(&name);
            Some(if of_text { form_urlencoded::byte_serialize(value.as_bytes()).collect() } else { value })
        });
        if !call.query.is_empty() {
            let pairs = call.query.iter().map(|(name, template)| (name, bare(template)));
            let query = form_urlencoded::Serializer::new(String::new()).extend_pairs(pairs).finish();
            url += if url.contains('?') { "&" } else { "?" };
            url += &query;
        }
        let method = Method::from_bytes(call.method.as_bytes()).unwrap_or(Method::POST);
        let (kind, body) = if let Some(json) = &call.json {
            (Some("application/json"), fill(json, Place::Json, value))
        } else if call.form.is_empty() {
            (None, String::new())
        } else {
            let pairs = call.form.iter().map(|(name, template)| (name, bare(template)));
            let form = form_urlencoded::Serializer::new(String::new()).extend_pairs(pairs).finish();
            (Some("application/x-www-form-urlencoded"), form)
        };
        let mut request = self.client.request(method, &url);
        if let Some(kind) = kind {
            request = request.header("content-type", kind);
        }
        for (name, template) in &call.headers {
            request = request.header(name, bare(template));
        }
        if let Some((user, password)) = &call.basic {
            request = request.header("authorization", basic(&bare(user), &bare(password)));
        }
        if let Some(scheme) = &call.signature {
            let key = self.setting(&scheme.setting).unwrap_or_default();
            let timestamp = Utc::now().timestamp().to_string();
            request = request.header(&scheme.header, sign(scheme, &key, &url, body.as_bytes(), &timestamp));
            if let Some(header) = &scheme.timestamp {
                request = request.header(header, timestamp);
            }
        }
        request.body(body)
    }

    /// The response that carries an answer of ours: its kind, further headers, body.
    pub fn in_response(&self, shape: &InResponse, id: &str, to: &str, text: &str) -> (Vec<(String, String)>, String) {
        let value = |name: &str| self.value(name, id, to, text, &shape.coding);
        let place = match shape.write_as {
            WriteAs::Text => Place::Bare,
            WriteAs::Json => Place::Json,
            WriteAs::Xml => Place::Xml,
        };
        let mut headers = vec![("content-type".to_owned(), shape.content_type.clone())];
        headers.extend(shape.headers.iter().map(|(name, template)| (name.clone(), fill(template, Place::Bare, value))));
        (headers, fill(&shape.body, place, value))
    }
}

fn retry_after(response: &reqwest::Response) -> Option<Duration> {
    let seconds: u64 = response.headers().get("retry-after")?.to_str().ok()?.parse().ok()?;
    Some(Duration::from_secs(seconds.min(3600)))
}

/// Any 2xx is taken; 4xx is refused for good, but for those that speak of the moment; all else is tried again.
fn judge(call: &CallOut, status: StatusCode, body: &[u8], after: Option<Duration>) -> Sent {
    let why = format!("the gateway said {}", status.as_u16());
    if status.is_success() {
        let said = String::from_utf8_lossy(body);
        if let Some(word) = call.again_if.iter().find(|word| said.contains(word.as_str())) {
            return Sent::Again { why: format!("the gateway said `{word}`"), after };
        }
        return match call.refused_if.iter().find(|word| said.contains(word.as_str())) {
            Some(word) => Sent::Refused { why: format!("the gateway said `{word}`") },
            None => Sent::Taken { wire_id: in_json(body, &call.wire_id).filter(|id| id.len() <= 256) },
        };
    }
    let for_now = matches!(status.as_u16(), 408 | 425 | 429) || call.again.contains(&status.as_u16());
    if status.is_client_error() && !for_now { Sent::Refused { why } } else { Sent::Again { why, after } }
}
