//! Everything that takes bytes from outside, each as a function that may be handed any bytes at all and must neither
//! panic nor hang. Driven by `tests/outside` with mutated samples, and by `tests/fuzz` with a coverage-guided fuzzer.

mod pages;
mod words;

use bellyful::config::{Config, GatewayConfig, Secret};
use bellyful::gateway::Gateway;
use bellyful::gateway::call::{Call, in_json};
use bellyful::gateway::profile::{Paths, Profile};
use bellyful::gateway::smpp::{Alphabet, delivered};
use bellyful::gateway::xmpp::said;
use bellyful::text::{self, Lexicons};
use chrono::{DateTime, NaiveDate, Utc};
use rusmpp::pdus::DeliverSm;
use rusmpp::tokio_codec::CommandCodec;
use rusmpp::types::OctetString;
use rusmpp::values::{DataCoding, EsmClass};
use rusmpp::{Command, Pdu};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::OnceLock;
use tokio_util::bytes::BytesMut;
use tokio_util::codec::Decoder;
use xmpp_parsers::message::Message;
use xmpp_parsers::minidom::Element;

pub struct Target {
    pub name: &'static str,
    pub run: fn(&[u8]),
    /// Bytes as they should be, to start from.
    pub samples: fn() -> Vec<Vec<u8>>,
}

pub const TARGETS: [Target; 14] = [
    Target { name: "call", run: call, samples: calls },
    Target { name: "answer", run: answer, samples: answers },
    Target { name: "profile", run: profile, samples: profiles },
    Target { name: "smpp_stream", run: smpp_stream, samples: smpp_streams },
    Target { name: "smpp_deliver", run: smpp_deliver, samples: smpp_delivers },
    Target { name: "xmpp", run: xmpp, samples: stanzas },
    Target { name: "text", run: read, samples: texts },
    Target { name: "settle", run: words::settle, samples: words::settled },
    Target { name: "order", run: words::ordered, samples: words::orders },
    Target { name: "taught", run: words::teach, samples: words::taught },
    Target { name: "talk", run: words::talk, samples: words::talks },
    Target { name: "restore", run: words::restore, samples: words::copies },
    Target { name: "pages", run: pages::run, samples: pages::samples },
    Target { name: "visit", run: pages::visit, samples: pages::visits },
];

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn files(folder: &str) -> Vec<(String, String)> {
    let mut files: Vec<_> = std::fs::read_dir(root().join(folder))
        .expect("the folder is shipped")
        .flatten()
        .map(|file| {
            let name = file.path().file_stem().and_then(|stem| stem.to_str()).expect("a plain name").to_owned();
            (name, std::fs::read_to_string(file.path()).expect("text"))
        })
        .collect();
    files.sort();
    files
}

fn now() -> DateTime<Utc> {
    DateTime::from_timestamp(1_780_000_000, 0).expect("in range")
}

/// Every shipped gateway, signed as it is and with no signature wanted; their secret is `secret`.
fn gateways() -> &'static [Gateway] {
    static GATEWAYS: OnceLock<Vec<Gateway>> = OnceLock::new();
    GATEWAYS.get_or_init(|| {
        let all = files("../deploy/gateways").into_iter();
        all.flat_map(|(name, _)| [true, false].map(|unsigned| gateway(&name, unsigned))).collect()
    })
}

fn gateway(name: &str, unsigned: bool) -> Gateway {
    let mut config = GatewayConfig { profile: Some(name.to_owned()), unsigned, settings: BTreeMap::new() };
    loop {
        let all = BTreeMap::from([("x".to_owned(), config.clone())]);
        match Gateway::all(&Config { gateway: all, ..Config::default() }) {
            Ok(mut all) => return all.remove("x").expect("it was just configured"),
            Err(error) => {
                let told = error.to_string();
                let key = told.split('`').nth(1).and_then(|key| key.strip_prefix("gateway.x."));
                let key = key.filter(|_| told.contains("it is missing")).unwrap_or_else(|| panic!("{name}: {told}"));
                config.settings.insert(key.to_owned(), Secret::new("secret"));
            }
        }
    }
}

/// Gateway, method and headers by the first bytes; then query and body, parted by the first 0xFF.
fn call(bytes: &[u8]) {
    let [which, how, rest @ ..] = bytes else { return };
    let gateway = &gateways()[usize::from(*which) % gateways().len()];
    let (query, body) = match rest.iter().position(|byte| *byte == 0xff) {
        Some(at) => (&rest[..at], &rest[at + 1..]),
        None => (&rest[..0], rest),
    };
    let query = String::from_utf8_lossy(query).into_owned();
    let kinds = ["application/json", "application/x-www-form-urlencoded", "text/plain; charset=utf-16be", "text/plain"];
    let words = query.split('&').take(2).map(|word| word.chars().filter(|c| !c.is_control()).collect::<String>());
    let names = ["x-signature", "x-timestamp", "authorization", "x-kannel-from", "x-hub-signature-256"];
    let mut headers: BTreeMap<String, String> =
        names.iter().zip(words.cycle()).map(|(name, word)| (name.to_string(), word)).collect();
    headers.insert("content-type".to_owned(), kinds[usize::from(how / 2) % kinds.len()].to_owned());
    let method = if how % 2 == 0 { "POST" } else { "GET" }.to_owned();
    let call = Call { method, url: format!("http://x/in?{query}"), query, headers, body: body.to_vec() };
    let _ = gateway.challenged(&call);
    if let Ok(texts) = gateway.receive(&call, now()) {
        for text in texts {
            assert!(!text.from.is_empty() && text.from.len() <= 128 && text.id.len() <= 256);
            assert!(!text.text.contains('\0') && text.sent_at <= text.received_at);
        }
    }
    let _ = gateway.reports(&call, now());
}

fn calls() -> Vec<Vec<u8>> {
    let mut samples = Vec::new();
    for (name, table) in files("wires/gateways") {
        let which = gateways().iter().position(|gateway| gateway.profile.about == about(&name)).expect("shipped") as u8;
        let table: serde_json::Value = serde_json::from_str(&table).expect("JSON");
        let receipts = table["receipts"].as_array().into_iter().flatten().map(|row| &row["call"]);
        for call in receipts.chain([&table["texts"]]) {
            let word = |name: &str| call[name].as_str().unwrap_or_default().to_owned();
            let how = u8::from(word("method") == "GET") + if word("body").starts_with('{') { 0 } else { 2 };
            let mut bytes = vec![which, how];
            bytes.extend_from_slice(word("query").as_bytes());
            bytes.push(0xff);
            bytes.extend_from_slice(word("body").as_bytes());
            samples.push(bytes.clone());
            bytes[0] += 1;
            samples.push(bytes);
        }
    }
    samples
}

fn about(name: &str) -> String {
    let file = files("../deploy/gateways").into_iter().find(|file| file.0 == name).expect("shipped");
    toml(&file.1).expect("it reads").about
}

fn toml(text: &str) -> Option<Profile> {
    Profile::read(text).ok()
}

/// What a gateway says back to a call of ours.
fn answer(bytes: &[u8]) {
    let paths = Paths::Many(["messages.id", "a.b.c", "", "sid", "result.message_id"].map(str::to_owned).into());
    let _ = in_json(bytes, &paths);
}

fn answers() -> Vec<Vec<u8>> {
    let all =
        [r#"{"messages":[{"id":"w9"}]}"#, r#"{"sid":7,"a":[{"b":[{"c":null}]}]}"#, "[[[[[[1]]]]]]", "0: Accepted"];
    all.map(|answer| answer.as_bytes().to_vec()).into()
}

fn profile(bytes: &[u8]) {
    let _ = toml(&String::from_utf8_lossy(bytes));
}

fn profiles() -> Vec<Vec<u8>> {
    files("../deploy/gateways").into_iter().map(|(_, text)| text.into_bytes()).collect()
}

/// A message centre's bytes as they come off the wire.
fn smpp_stream(bytes: &[u8]) {
    let mut codec = CommandCodec::new().with_max_length(4096);
    let mut bytes = BytesMut::from(bytes);
    while let Ok(Some(command)) = codec.decode(&mut bytes) {
        if let Some(Pdu::DeliverSm(deliver)) = command.pdu() {
            let _ = delivered(deliver, Alphabet::Gsm7);
            let _ = delivered(deliver, Alphabet::Latin1);
        }
    }
}

fn smpp_streams() -> Vec<Vec<u8>> {
    use tokio_util::codec::Encoder;
    let streams = smpp_delivers().into_iter().map(|sample| {
        let mut bytes = BytesMut::new();
        let command = Command::new(rusmpp::CommandStatus::EsmeRok, 7, deliver(&sample).expect("a sample"));
        CommandCodec::new().encode(command, &mut bytes).expect("encodes");
        bytes.to_vec()
    });
    streams.collect()
}

fn deliver(bytes: &[u8]) -> Option<DeliverSm> {
    let [esm_class, coding, message @ ..] = bytes else { return None };
    let message = OctetString::from_slice(&message[..message.len().min(255)]).ok()?;
    let (esm_class, coding) = (EsmClass::from(*esm_class), DataCoding::from(*coding));
    Some(DeliverSm::builder().esm_class(esm_class).data_coding(coding).short_message(message).build())
}

fn smpp_deliver(bytes: &[u8]) {
    if let Some(deliver) = deliver(bytes) {
        let _ = delivered(&deliver, Alphabet::Gsm7);
        let _ = delivered(&deliver, Alphabet::Latin1);
    }
}

fn smpp_delivers() -> Vec<Vec<u8>> {
    vec![
        b"\x00\x00fed 3 kg \x1b\x65".to_vec(),
        b"\x00\x08\x09\x28\x09\x2e\xd8\x3d\xdd\x25".to_vec(),
        b"\x40\x00\x05\x00\x03\x07\x03\x02b".to_vec(),
        b"\x40\x08\x06\x08\x04\x01\x07\x03\x02\x09\x28".to_vec(),
        b"\x04\x00id:9z sub:001 dlvrd:001 stat:DELIVRD err:000 text:x".to_vec(),
    ]
}

fn xmpp(bytes: &[u8]) {
    let Ok(element) = String::from_utf8_lossy(bytes).parse::<Element>() else { return };
    if let Ok(message) = Message::try_from(element) {
        let _ = said(&message);
    }
}

fn stanzas() -> Vec<Vec<u8>> {
    let around = |inside: &str| {
        format!(
            "<message xmlns='jabber:component:accept' from='amina@chat.example/phone' to='bot@texts.example' id='m1' type='chat'>\
             {inside}</message>"
        )
    };
    let all = [
        "<body>fed 3 kg &amp; गोबर</body><delay xmlns='urn:xmpp:delay' stamp='2026-03-02T06:29:00Z'/>",
        "<received xmlns='urn:xmpp:receipts' id='ours'/>",
    ];
    all.iter().map(|inside| around(inside).into_bytes()).collect()
}

fn read(bytes: &[u8]) {
    static LEXICONS: OnceLock<Lexicons> = OnceLock::new();
    let day = NaiveDate::from_ymd_opt(2026, 3, 2).expect("a day");
    let lang = [None, Some("en"), Some("hi"), Some("sw")][bytes.len() % 4];
    let reading = text::read(LEXICONS.get_or_init(Lexicons::built_in), &String::from_utf8_lossy(bytes), lang, day);
    assert!(serde_json::to_string(&reading).is_ok());
}

fn texts() -> Vec<Vec<u8>> {
    let all = [
        "fed 3 kg scraps 6 L water",
        "no, 3½ not 5",
        "3 किलो गोबर डाला",
        "nimelisha kilo 2 za maganda, gesi ndogo",
        "strong gas smell in the kitchen",
        "cooked 1h20 yesterday evening; flame yellow",
    ];
    all.map(|text| text.as_bytes().to_vec()).into()
}
