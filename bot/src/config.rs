//! The configuration, read once: a TOML file, each key overridable by an environment variable.
//!
//! Takes a path and the environment; gives a [`Config`] that is whole and checked, or one sentence that says which
//! key is wrong. Never prints a secret.

use figment::Figment;
use figment::providers::{Format, Serialized, Toml};
use figment::value::{Dict, Value};
use serde::{Deserialize, Deserializer};
use std::collections::BTreeMap;
use std::net::SocketAddr;
use std::path::{Path, PathBuf};

/// What a variable that overrides a key starts with: `BELLYFUL__GATEWAY__PLAIN__SECRET` is `gateway.plain.secret`.
pub const PREFIX: &str = "BELLYFUL__";

/// The configuration is not usable; the sentence says what to mend.
#[derive(Debug, thiserror::Error)]
pub enum ConfigError {
    #[error("The configuration file {} cannot be read: {why}. Give a readable TOML file with --config.", path.display())]
    File { path: PathBuf, why: String },
    #[error("The configuration key `{key}` is wrong: {why}. Mend it in the file or by the environment variable {variable}.", variable = variable(key))]
    Key { key: String, why: String },
}

impl ConfigError {
    pub fn key(key: impl Into<String>, why: impl Into<String>) -> ConfigError {
        ConfigError::Key { key: key.into(), why: why.into() }
    }
}

fn variable(key: &str) -> String {
    format!("{PREFIX}{}", key.to_uppercase().replace('.', "__"))
}

/// Text that is never shown.
#[derive(Clone, PartialEq, Eq, Deserialize)]
#[serde(transparent)]
pub struct Secret(#[serde(deserialize_with = "word")] String);

impl Secret {
    pub fn new(secret: impl Into<String>) -> Secret {
        Secret(secret.into())
    }
    /// The text itself, for a signature or a header and nothing else.
    pub fn reveal(&self) -> &str {
        &self.0
    }
}

impl std::fmt::Debug for Secret {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("(secret)")
    }
}

#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Config {
    /// Address the server listens on.
    pub listen: SocketAddr,
    /// `sqlite:FILE` or `postgres://...`
    pub database: Secret,
    /// Where the world reaches us, such as `https://bot.example.org`: gateways that sign the address of a call sign
    /// this one.
    pub public_url: Option<String>,
    /// A folder with further languages, or others' words for the built-in ones: `xx/words.toml`, `xx/replies.ftl`.
    pub lang_dir: Option<PathBuf>,
    /// Turns worked at once; 0: as many as there are cores.
    #[serde(deserialize_with = "number")]
    pub workers: usize,
    /// Texts a day that one number gets answers to.
    #[serde(deserialize_with = "number")]
    pub texts_per_day: usize,
    /// Texts a minute from one number above which it must be a machine.
    #[serde(deserialize_with = "number")]
    pub texts_per_minute: usize,
    /// A computer of the programme's own that is told of alarms.
    pub webhook: Option<WebhookConfig>,
    pub gateway: BTreeMap<String, GatewayConfig>,
}

/// Where alarms are told, and the secret that the calls are signed with.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WebhookConfig {
    #[serde(deserialize_with = "word")]
    pub url: String,
    pub secret: Secret,
}

impl Default for Config {
    fn default() -> Config {
        Config {
            listen: SocketAddr::from(([127, 0, 0, 1], 8080)),
            database: Secret::new("sqlite:bellyful.db"),
            public_url: None,
            lang_dir: None,
            workers: 0,
            texts_per_day: 40,
            texts_per_minute: 10,
            webhook: None,
            gateway: BTreeMap::new(),
        }
    }
}

/// One way to the phones: a profile, and the settings that its templates name.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct GatewayConfig {
    /// A built-in name, or a file's path; without it, the gateway's own name.
    #[serde(default)]
    pub profile: Option<String>,
    /// Calls need no signature. Only for a gateway that has none and is kept out of others' reach by other means.
    #[serde(default, deserialize_with = "switch")]
    pub unsigned: bool,
    #[serde(flatten)]
    pub settings: BTreeMap<String, Secret>,
}

impl Config {
    /// Reads `file`, if one is given, and then the environment's variables.
    pub fn read(file: Option<&Path>, variables: impl Iterator<Item = (String, String)>) -> Result<Config, ConfigError> {
        let mut figment = Figment::new();
        if let Some(path) = file {
            let text = std::fs::read_to_string(path)
                .map_err(|error| ConfigError::File { path: path.to_owned(), why: error.to_string() })?;
            figment = figment.merge(Toml::string(&text));
        }
        let figment = figment.merge(Serialized::defaults(overrides(variables)));
        let config: Config = figment.extract().map_err(|error| sentence(file, error))?;
        config.check()?;
        Ok(config)
    }

    fn check(&self) -> Result<(), ConfigError> {
        let database = self.database.reveal();
        if !["sqlite:", "postgres://", "postgresql://"].iter().any(|start| database.starts_with(start)) {
            return Err(ConfigError::key("database", "it must start with `sqlite:` or `postgres://`"));
        }
        if let Some(url) = &self.public_url
            && !(url.starts_with("https://") || url.starts_with("http://"))
        {
            return Err(ConfigError::key("public_url", "it must start with `https://` or `http://`"));
        }
        if let Some(webhook) = &self.webhook {
            if !(webhook.url.starts_with("https://") || webhook.url.starts_with("http://")) {
                return Err(ConfigError::key("webhook.url", "it must start with `https://` or `http://`"));
            }
            if webhook.secret.reveal().is_empty() {
                return Err(ConfigError::key("webhook.secret", "it is empty; calls are signed with it"));
            }
        }
        if self.gateway.is_empty() {
            return Err(ConfigError::key(
                "gateway",
                "there is none, so no text could come in or go out; add a table such as [gateway.plain] with \
                 `secret` and `send_url`",
            ));
        }
        Ok(())
    }
}

/// Environment variables as the nested keys they override. All are words: `0123` is a secret, not a number.
fn overrides(variables: impl Iterator<Item = (String, String)>) -> Dict {
    let mut keys = Dict::new();
    for (name, value) in variables {
        let Some(path) = name.strip_prefix(PREFIX) else { continue };
        let path: Vec<String> = path.split("__").map(str::to_lowercase).collect();
        put(&mut keys, &path, value);
    }
    keys
}

fn put(keys: &mut Dict, path: &[String], value: String) {
    match path {
        [] => {}
        [last] => {
            keys.insert(last.clone(), Value::from(value));
        }
        [first, rest @ ..] => {
            let inner = keys.entry(first.clone()).or_insert_with(|| Value::from(Dict::new()));
            if !matches!(inner, Value::Dict(..)) {
                *inner = Value::from(Dict::new());
            }
            if let Value::Dict(_, inner) = inner {
                put(inner, rest, value);
            }
        }
    }
}

/// The first thing that is wrong, in one sentence.
fn sentence(file: Option<&Path>, error: figment::Error) -> ConfigError {
    use figment::error::Kind;
    let Some(error) = error.into_iter().next() else {
        return ConfigError::key("", "it cannot be read");
    };
    let mut key = error.path.join(".");
    let why = match &error.kind {
        Kind::UnknownField(field, known) => {
            if error.path.last() != Some(field) {
                key = if key.is_empty() { field.clone() } else { format!("{key}.{field}") };
            }
            format!("there is no such key; there are {}", known.join(", "))
        }
        Kind::MissingField(field) => {
            key = field.to_string();
            "it is missing".to_owned()
        }
        Kind::InvalidType(_, wanted) => format!("it must be {wanted}"),
        // What stood there may be a secret: it is not repeated.
        Kind::InvalidValue(_, wanted) => format!("it must be {wanted}"),
        Kind::Message(message) if key.is_empty() => {
            return ConfigError::File {
                path: file.unwrap_or(Path::new("(environment)")).to_owned(),
                why: message.lines().map(str::trim).collect::<Vec<_>>().join(" "),
            };
        }
        Kind::Message(message) => message.clone(),
        other => other.to_string(),
    };
    ConfigError::Key { key, why }
}

#[derive(Deserialize)]
#[serde(untagged)]
enum Scalar {
    Word(String),
    Switch(bool),
    Whole(i64),
    Number(f64),
}

/// A word, though it may look like a number.
fn word<'de, D: Deserializer<'de>>(d: D) -> Result<String, D::Error> {
    Ok(match Scalar::deserialize(d).map_err(|_| serde::de::Error::custom("it must be a text in quotes"))? {
        Scalar::Word(word) => word,
        Scalar::Switch(on) => on.to_string(),
        Scalar::Whole(number) => number.to_string(),
        Scalar::Number(number) => number.to_string(),
    })
}

fn number<'de, D: Deserializer<'de>>(d: D) -> Result<usize, D::Error> {
    word(d)?.trim().parse().map_err(|_| serde::de::Error::custom("it must be a whole number, 0 or more"))
}

fn switch<'de, D: Deserializer<'de>>(d: D) -> Result<bool, D::Error> {
    word(d)?.trim().parse().map_err(|_| serde::de::Error::custom("it must be true or false"))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(toml: &str, variables: &[(&str, &str)]) -> Result<Config, String> {
        let folder = std::env::temp_dir().join(format!("bellyful-config-{:?}", std::thread::current().id()));
        std::fs::create_dir_all(&folder).expect("temporary folder");
        let file = folder.join("bellyful.toml");
        std::fs::write(&file, toml).expect("written");
        let variables = variables.iter().map(|(name, value)| (name.to_string(), value.to_string()));
        Config::read(Some(&file), variables).map_err(|error| error.to_string())
    }

    const SOUND: &str = "listen = \"127.0.0.1:9999\"\ndatabase = \"sqlite:x.db\"\n[gateway.plain]\n\
                         profile = \"plain\"\nsecret = \"s\"\nsend_url = \"http://127.0.0.1:9000/send\"\n";

    #[test]
    fn the_file_is_read_and_the_environment_overrides_each_key() {
        let config = read(SOUND, &[]).expect("sound");
        assert_eq!(config.listen.port(), 9999);
        assert_eq!(config.gateway["plain"].settings["secret"].reveal(), "s");
        let over = [
            ("BELLYFUL__LISTEN", "127.0.0.1:1"),
            ("BELLYFUL__GATEWAY__PLAIN__SECRET", "0123"),
            ("BELLYFUL__WORKERS", "3"),
            ("BELLYFUL__GATEWAY__OTHER__UNSIGNED", "true"),
            ("HOME", "/"),
        ];
        let config = read(SOUND, &over).expect("sound");
        assert_eq!((config.listen.port(), config.workers), (1, 3));
        assert_eq!(config.gateway["plain"].settings["secret"].reveal(), "0123");
        assert!(config.gateway["other"].unsigned);
    }

    #[test]
    fn a_bad_configuration_is_one_sentence_that_names_the_key() {
        let rows = [
            ("listen = \"nowhere\"", "listen"),
            ("lisen = \"127.0.0.1:1\"", "lisen"),
            ("workers = -1", "workers"),
            ("database = \"mysql://x\"", "database"),
            ("gateway = 3", "gateway"),
            ("public_url = \"bot.example\"", "public_url"),
            ("[webhook]\nurl = \"bot.example\"\nsecret = \"s\"", "webhook.url"),
            ("[webhook]\nurl = \"https://bot.example\"\nsecret = \"\"", "webhook.secret"),
            ("", "gateway"),
            ("[gateway.plain]\nunsigned = \"maybe\"", "gateway.plain"),
        ];
        for (toml, key) in rows {
            let told = read(toml, &[]).expect_err(toml);
            assert!(told.contains(&format!("`{key}")), "{toml}: {told}");
            assert!(!told.contains('\n'), "{told}");
        }
        let told = read("listen = ", &[]).expect_err("not TOML");
        assert!(told.contains("bellyful.toml") && !told.contains('\n'), "{told}");
    }

    #[test]
    fn a_secret_is_never_shown() {
        let config = read(SOUND, &[("BELLYFUL__DATABASE", "postgres://u:hidden@h/d")]).expect("sound");
        let shown = format!("{config:?}");
        assert!(!shown.contains("hidden") && !shown.contains("\"s\""), "{shown}");
    }
}
