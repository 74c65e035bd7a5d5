//! Proofs of origin: does this call come from the gateway, and how do we sign our own.
//!
//! Takes a call and the gateway's settings; gives yes or a refusal. Compares in constant time.

use super::Refusal;
use super::call::Call;
use super::profile::{Encoding, Hash, Hmac as Scheme, Signature};
use super::template::{Place, fill};
use base64::Engine;
use base64::engine::general_purpose::STANDARD as BASE64;
use chrono::{DateTime, Utc};
use hmac::{Hmac, KeyInit, Mac};
use sha1::Sha1;
use sha2::{Digest, Sha256};

/// A gateway's settings by name.
pub type Settings<'a> = &'a dyn Fn(&str) -> Option<String>;

/// Whether the call is the gateway's own. Errors: [`Refusal::Signature`] with a sentence.
pub fn verify(scheme: &Signature, call: &Call, settings: Settings<'_>, now: DateTime<Utc>) -> Result<(), Refusal> {
    let refuse = |why: &str| Err(Refusal::Signature(why.to_owned()));
    match scheme {
        Signature::None => Ok(()),
        Signature::Token { at, prefix, setting } => {
            let given = match at.split_once(':') {
                Some(("header", name)) => call.header(name).map(str::to_owned),
                Some(("query", name)) => call.query().remove(name),
                _ => None,
            };
            let wanted = settings(setting).unwrap_or_default();
            match given.as_deref().and_then(|given| given.strip_prefix(prefix.as_str())) {
                Some(given) if same(given.as_bytes(), wanted.as_bytes()) => Ok(()),
                _ => refuse("The call's token is missing or wrong."),
            }
        }
        Signature::Basic { user, secret } => {
            let wanted = basic(&settings(user).unwrap_or_default(), &settings(secret).unwrap_or_default());
            match call.header("authorization") {
                Some(given) if same(given.as_bytes(), wanted.as_bytes()) => Ok(()),
                _ => refuse("The call's user or password is missing or wrong."),
            }
        }
        Signature::Hmac(hmac) => verify_hmac(hmac, call, settings, now),
    }
}

fn verify_hmac(scheme: &Scheme, call: &Call, settings: Settings<'_>, now: DateTime<Utc>) -> Result<(), Refusal> {
    let refuse = |why: String| Err(Refusal::Signature(why));
    let given = call.header(&scheme.header).and_then(|given| given.strip_prefix(scheme.prefix.as_str()));
    let Some(given) = given.and_then(|given| decode(scheme.encoding, given)) else {
        return refuse(format!("The header {} with the call's signature is missing or malformed.", scheme.header));
    };
    let timestamp = scheme.timestamp.as_deref().map(|header| call.header(header).unwrap_or_default());
    if let Some(stamp) = timestamp {
        let at = stamp.parse::<i64>().ok().or_else(|| stamp.parse::<DateTime<Utc>>().ok().map(|at| at.timestamp()));
        if !at.is_some_and(|at| at.abs_diff(now.timestamp()) <= scheme.tolerance_s.unsigned_abs()) {
            return refuse("The call was signed too long ago, or does not say when.".to_owned());
        }
    }
    let nonce = scheme.nonce.as_deref().map(|header| call.header(header).unwrap_or_default());
    let key = settings(&scheme.setting).unwrap_or_default();
    let signed = over(scheme, &call.url, &call.body, &form(call), timestamp, nonce);
    if mac(scheme.hash, key.as_bytes(), &signed, Some(&given)).is_some() {
        Ok(())
    } else {
        refuse("The call's signature is wrong.".to_owned())
    }
}

/// The header's value for a call of ours.
pub fn sign(scheme: &Scheme, key: &str, url: &str, body: &[u8], timestamp: &str) -> String {
    let signed = over(scheme, url, body, "", Some(timestamp), None);
    let mac = mac(scheme.hash, key.as_bytes(), &signed, None).expect("a signature that is not compared is given");
    let written = match scheme.encoding {
        Encoding::Hex => hex::encode(mac),
        Encoding::Base64 => BASE64.encode(mac),
    };
    format!("{}{written}", scheme.prefix)
}

pub fn basic(user: &str, secret: &str) -> String {
    format!("Basic {}", BASE64.encode(format!("{user}:{secret}")))
}

/// The bytes that are signed; the body goes in as it came.
fn over(scheme: &Scheme, url: &str, body: &[u8], form: &str, timestamp: Option<&str>, nonce: Option<&str>) -> Vec<u8> {
    let mut bytes = Vec::with_capacity(body.len() + 128);
    for (n, part) in scheme.over.split("{body}").enumerate() {
        if n > 0 {
            bytes.extend_from_slice(body);
        }
        let filled = fill(part, Place::Bare, |name| {
            Some(match name {
                "url" => url.to_owned(),
                "form" => form.to_owned(),
                "timestamp" => timestamp.unwrap_or_default().to_owned(),
                "nonce" => nonce.unwrap_or_default().to_owned(),
                _ => return None,
            })
        });
        bytes.extend_from_slice(filled.as_bytes());
    }
    bytes
}

fn form(call: &Call) -> String {
    call.form().into_iter().flat_map(|(name, value)| [name, value]).collect()
}

fn decode(encoding: Encoding, text: &str) -> Option<Vec<u8>> {
    match encoding {
        Encoding::Hex => hex::decode(text.trim()).ok(),
        Encoding::Base64 => BASE64.decode(text.trim()).ok(),
    }
}

/// The signature, or with `given` only if it is that one.
fn mac(hash: Hash, key: &[u8], signed: &[u8], given: Option<&[u8]>) -> Option<Vec<u8>> {
    macro_rules! with {
        ($hash:ty) => {{
            let mut mac = Hmac::<$hash>::new_from_slice(key).expect("HMAC takes keys of any length");
            mac.update(signed);
            match given {
                Some(given) => mac.verify_slice(given).is_ok().then(Vec::new),
                None => Some(mac.finalize().into_bytes().to_vec()),
            }
        }};
    }
    match hash {
        Hash::Sha1 => with!(Sha1),
        Hash::Sha256 => with!(Sha256),
    }
}

/// Whether two words are the same, in a time that does not tell where they differ.
pub fn same(a: &[u8], b: &[u8]) -> bool {
    let (a, b) = (Sha256::digest(a), Sha256::digest(b));
    a.iter().zip(b.iter()).fold(0, |differ, (a, b)| differ | (a ^ b)) == 0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hash_only(hash: Hash, encoding: Encoding) -> Scheme {
        Scheme {
            hash,
            header: "x-signature".into(),
            prefix: String::new(),
            encoding,
            over: "{body}".into(),
            timestamp: None,
            nonce: None,
            tolerance_s: 300,
            setting: "secret".into(),
        }
    }

    /// Source: RFC 4231 test case 2 (SHA-256) and RFC 2202 test case 2 (SHA-1).
    #[test]
    fn signatures_are_those_of_the_published_cases() {
        let check = |hash, expected: &str| {
            let body = b"what do ya want for nothing?";
            assert_eq!(sign(&hash_only(hash, Encoding::Hex), "Jefe", "", body, ""), expected);
        };
        check(Hash::Sha256, "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843");
        check(Hash::Sha1, "effcdf6ae5eb2fa2d27416d5f184df9c259a7c79");
    }

    #[test]
    fn an_old_call_is_refused_though_its_signature_is_right() {
        let scheme = Scheme {
            timestamp: Some("x-timestamp".into()),
            over: "{body}{timestamp}".into(),
            ..hash_only(Hash::Sha256, Encoding::Base64)
        };
        let signature = sign(&scheme, "k", "", b"{}", "1780000000");
        let headers = [("x-signature".to_owned(), signature), ("x-timestamp".to_owned(), "1780000000".to_owned())];
        let call = Call { body: b"{}".to_vec(), headers: headers.into(), ..Call::default() };
        let check = |now: i64, key: &'static str| {
            let settings = move |name: &str| (name == "secret").then(|| key.to_owned());
            let now = DateTime::from_timestamp(now, 0).expect("in range");
            verify(&Signature::Hmac(scheme.clone()), &call, &settings, now).is_ok()
        };
        assert!(check(1_780_000_000, "k"));
        assert!(!check(1_780_000_000, "other"));
        assert!(!check(1_780_000_301, "k"));
    }
}
