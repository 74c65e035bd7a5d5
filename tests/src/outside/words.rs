//! Words from outside beyond a bare text: answers to questions, orders of staff, taught words, whole talks, copies.

use bellyful::converse::Conversation;
use bellyful::mind::Mind;
use bellyful::staff::order;
use bellyful::store::Store;
use bellyful::taught::{already_means, folded};
use bellyful::text::{Expected, read_answer};
use chrono::NaiveDate;
use std::sync::LazyLock;

static MIND: LazyLock<Mind> = LazyLock::new(|| Mind::new(None, 1).expect("the words are sound"));

const EXPECTED: [Expected; 13] = [
    Expected::YesNo,
    Expected::Litres,
    Expected::Amount,
    Expected::Unit,
    Expected::Feed,
    Expected::Day,
    Expected::Place,
    Expected::Count,
    Expected::Celsius,
    Expected::Minutes,
    Expected::Language,
    Expected::Sameness,
    Expected::Choice(3),
];

/// What was asked by the first byte, in which language by the second.
pub fn settle(bytes: &[u8]) {
    let [what, lang, words @ ..] = bytes else { return };
    let lang = ["en", "hi", "sw", "fr", "xx"][usize::from(*lang) % 5];
    let day = NaiveDate::from_ymd_opt(2026, 3, 2).expect("a day");
    let expected = EXPECTED[usize::from(*what) % EXPECTED.len()];
    let _ = read_answer(&MIND.lexicons, &String::from_utf8_lossy(words), lang, day, expected);
}

pub fn settled() -> Vec<Vec<u8>> {
    let said = ["yes", "1000", "half a bucket", "12 kg", "cow dung", "yesterday", "Kisumu", "5", "31 C", "2 hours"];
    let more = ["Hindi", "same as usual", "2", "jana", "आधा", "oui"];
    said.iter()
        .chain(&more)
        .enumerate()
        .map(|(n, said)| [&[n as u8 % 13, n as u8 % 5], said.as_bytes()].concat())
        .collect()
}

pub fn ordered(bytes: &[u8]) {
    let words = String::from_utf8_lossy(bytes);
    for lang in ["en", "pt", "xx"] {
        let _ = order(&MIND.lexicons, lang, &words).map(|order| order.household().map(str::to_owned));
    }
}

pub fn orders() -> Vec<Vec<u8>> {
    let all =
        ["ok 12", "pin 4711", "note 12 the outlet is blocked", "tell Amina come by", "take 3", "who needs me", "PIN"];
    all.map(|order| order.as_bytes().to_vec()).into()
}

/// A word that somebody wants to teach.
pub fn teach(bytes: &[u8]) {
    let word = String::from_utf8_lossy(bytes);
    if word.len() <= 200 {
        let _ = (already_means(&MIND, &word), folded(&word));
    }
}

pub fn taught() -> Vec<Vec<u8>> {
    ["zumbulu moto", "gas leak", "बासी रोटी", "stop!", "l'herbe"].map(|word| word.as_bytes().to_vec()).into()
}

/// A few lines of a talk, as `converse` reads them; a line that is none is a text of its own.
pub fn talk(bytes: &[u8]) {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
    runtime.block_on(async {
        let mind = Mind::new(None, 1).expect("the words are sound");
        let mut talk = Conversation::new(mind).await.expect("a store in memory");
        for (n, line) in String::from_utf8_lossy(bytes).split('\n').take(4).enumerate() {
            let line = match line.starts_with('{') {
                true => line.to_owned(),
                false => serde_json::json!({
                    "at": format!("2026-03-0{}T07:30:00Z", n + 1), "from": "+15550100", "text": line,
                })
                .to_string(),
            };
            let _ = talk.line(&line).await;
        }
    });
}

pub fn talks() -> Vec<Vec<u8>> {
    let all = [
        "hello\n1000 litres\nfed 3 kg scraps 6 L water\nno, 2",
        "stop\nstrong gas smell\nstart\nforget me",
        "forget me\nyes\nfed 1 bucket\nundo",
        "{\"at\":\"2026-03-01T07:30:00Z\",\"from\":\"+15550100\",\"setup\":{\"lang\":\"sw\",\"tank_l\":1000,\"place\":\"Kisumu\"}}\nkwa nini?",
    ];
    all.map(|talk| talk.as_bytes().to_vec()).into()
}

/// A copy to be restored.
pub fn restore(bytes: &[u8]) {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
    runtime.block_on(async {
        let store = Store::in_memory().await.expect("a store in memory");
        if store.take_in(bytes).await.is_ok() {
            store.dump(&mut Vec::new()).await.expect("what was taken in is given out");
        }
    });
}

pub fn copies() -> Vec<Vec<u8>> {
    let staff = "{\"bellyful_copy\":1}\n{\"table\":\"staff\"}\n[1,\"Asha\",null,null,\"en\",\"lead\",null]\n";
    let twin = "{\"bellyful_copy\":1}\n{\"table\":\"twin\"}\n[1,7,\"AAEC\"]\n{\"table\":\"setting\"}\n[\"a\",\"b\"]\n";
    [staff, twin].map(|copy| copy.as_bytes().to_vec()).into()
}
