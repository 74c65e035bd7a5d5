//! A broadcast: looked at first, to those who fit and did not say stop, in their mornings, and stopped half-way.

use crate::access::{login, node};
use crate::work::Browser;
use bellyful::deed::{Deed, Did, Written};
use bellyful::household::{Decision, Phone};
use bellyful::mind::Mind;
use bellyful::setup::{Setup, set_up};
use bellyful::store::{Cause, Outcome, Store};
use bellyful::workbench::nobody;
use chrono::{DateTime, Duration, Timelike, Utc};

async fn family(store: &Store, number: &str, setup: &str, change: impl Fn(&mut Decision)) {
    let mind = Mind::new(None, 1).expect("sound words");
    let setup: Setup = serde_json::from_str(setup).expect("a set-up");
    let now = Utc::now();
    let mut decision = set_up(&mind, number, "plain", &setup, now).expect("plausible");
    decision.join = vec![Phone { gateway: "plain".into(), number: number.into() }];
    change(&mut decision);
    store.keep(Cause::Hand, &nobody(), decision, now).await.expect("kept");
}

/// Four in English at Kisumu, one in Swahili elsewhere, one that muted, one that said stop.
async fn programme() -> (bellyful::app::Node, Browser) {
    let (node, url) = node().await;
    let kisumu = r#"{"lang":"en","name":"Otelo","place":"Kisumu"}"#;
    for n in 0..4 {
        family(&node.store, &format!("+9990000010{n}"), kisumu, |_| ()).await;
    }
    family(&node.store, "+99900000110", r#"{"lang":"sw","name":"Nyoka","place":"Nakuru"}"#, |_| ()).await;
    family(&node.store, "+99900000111", kisumu, |made| made.household.as_mut().expect("made").talk.muted = true).await;
    family(&node.store, "+99900000112", kisumu, |_| ()).await;
    let now = Utc::now();
    let stop = bellyful::message::Inbound {
        gateway: "plain".into(),
        id: "stop".into(),
        from: "+99900000112".into(),
        to: None,
        text: "STOP".into(),
        sent_at: now,
        received_at: now,
    };
    node.store.accept(&[bellyful::store::Arrival { inbound: stop, alarm: None }]).await.expect("kept");
    for _ in 0..200 {
        if node.store.phones(7).await.expect("read").is_empty() {
            break;
        }
        tokio::time::sleep(std::time::Duration::from_millis(50)).await;
    }
    let cookie = login(&url, "lead", "right").await.expect("may log in");
    (node, Browser { url, cookie })
}

fn key(page: &str) -> String {
    let key = page.split("name=\"key\" value=\"").nth(1).and_then(|rest| rest.split('"').next());
    key.expect("the form has a key").to_owned()
}

#[tokio::test(flavor = "multi_thread")]
async fn it_goes_to_those_who_fit_and_did_not_say_stop_once() {
    let (node, browser) = programme().await;
    let ask = |act: &'static str, key: String, place: &'static str| {
        vec![
            ("act", act.to_owned()),
            ("key", key),
            ("text", "We meet on Monday <b>at ten</b>".to_owned()),
            ("place", place.to_owned()),
        ]
    };
    let post = async |form: Vec<(&'static str, String)>| {
        let form: Vec<(&str, &str)> = form.iter().map(|(name, value)| (*name, value.as_str())).collect();
        browser.post("/broadcast", &form).await
    };
    let (status, page) = post(ask("preview", String::new(), "Kisumu")).await;
    assert_eq!(status, 200);
    assert!(page.contains("4 households, 4 segments to pay."), "{page}");
    assert!(page.contains("2 more fit but said STOP or MUTE") && !page.contains("<b>at ten"), "{page}");
    assert!(node.store.broadcasts().await.expect("read").is_empty(), "looking sends nothing");
    let key = key(&page);
    assert_eq!(post(ask("send", key.clone(), "Kisumu")).await.0, 303);
    assert_eq!(post(ask("send", key, "Kisumu")).await.0, 303, "the same form again");
    let all = node.store.broadcasts().await.expect("read");
    assert_eq!(all.len(), 1);
    assert_eq!(all[0].queued + all[0].sent, 4, "{all:?}");
    for number in ["+99900000110", "+99900000111", "+99900000112"] {
        let said = node.store.story(0, number, 9).await.expect("read");
        assert!(said.iter().all(|said| !said.text.contains("Monday")), "{number}: {said:?}");
    }
    let said = node.store.story(1, "", 9).await.expect("read");
    let word = said.iter().find(|said| said.text.contains("Monday")).expect("in their story");
    assert_eq!(word.text, "From lead: We meet on Monday <b>at ten</b>");
    assert_eq!(post(ask("send", String::new(), "Nowhere")).await.0, 422, "nobody fits");
    let trail = node.store.trail(0, 9).await.expect("read");
    assert!(trail.iter().any(|(_, what)| matches!(what,
            Written::Deed(Deed { by, did: Did::SentBroadcast { households: 4, audience, .. } }) if by == "lead" && audience == "Kisumu")), "{trail:?}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_text_too_long_or_empty_is_a_sentence() {
    let (node, browser) = programme().await;
    let long = "long words ".repeat(27);
    for text in ["", "   ", &long, &"ä".repeat(400)] {
        let (status, page) = browser.post("/broadcast", &[("act", "send"), ("text", text)]).await;
        assert_eq!(status, 422, "{text}: {page}");
    }
    assert!(node.store.broadcasts().await.expect("read").is_empty());
}

#[tokio::test]
async fn stopped_half_way_the_rest_does_not_go_and_the_sum_is_told() {
    let store = Store::in_memory().await.expect("a store");
    let now: DateTime<Utc> = "2026-03-02T08:00:00Z".parse().expect("a time");
    let text = |n: i64| {
        let outbound = bellyful::message::Outbound {
            id: format!("b{n}"),
            gateway: "plain".into(),
            to: format!("+9990000020{n}"),
            text: "We meet on Monday".into(),
            kind: bellyful::message::Kind::Notice,
            advice: None,
            not_before: now + Duration::seconds(n),
        };
        (n, outbound)
    };
    let texts: Vec<_> = (1..=5).map(text).collect();
    let new = bellyful::store::NewBroadcast { key: "k", staff: "lead", text: "x", audience: "all", texts: &texts };
    let id = store.add_broadcast(&new, now).await.expect("kept");
    let at = now + Duration::seconds(2);
    let taken = store.claim_sends("a", "plain", 10, at, at + Duration::seconds(7)).await.expect("claimed");
    assert_eq!(taken.len(), 2, "two are due");
    let sent: Vec<_> = taken.into_iter().map(|send| (send, Outcome::Sent { wire_id: None })).collect();
    store.settle(&sent, at).await.expect("settled");
    assert_eq!(store.stop_broadcast(id, "lead", at).await.expect("stopped"), 3);
    let seen = store.broadcast(id).await.expect("read").expect("there");
    assert_eq!((seen.sent, seen.queued, seen.not_sent), (2, 0, 3));
    let later = now + Duration::hours(1);
    let more = store.claim_sends("a", "plain", 10, later, later + Duration::seconds(7)).await.expect("claimed");
    assert!(more.is_empty(), "{more:?}");
}

#[tokio::test(flavor = "multi_thread")]
async fn nobody_is_woken_by_one() {
    let (node, browser) = programme().await;
    assert_eq!(browser.post("/broadcast", &[("act", "send"), ("text", "We meet"), ("lang", "en")]).await.0, 303);
    for household in 1..=4 {
        let said = node.store.story(household, "", 9).await.expect("read");
        let word = said.iter().find(|said| said.text.contains("We meet")).expect("in their story");
        let local = word.at.with_timezone(&chrono::FixedOffset::east_opt(3 * 3600).expect("in range"));
        assert!((7..20).contains(&local.hour()), "{local}");
    }
    let page = browser.get("/broadcast/1").await;
    assert!(page.contains("of 4 sent") && page.contains("We meet"), "{page}");
    assert_eq!(browser.post("/broadcast/1/stop", &[]).await.0, 303);
    assert_eq!(browser.post("/broadcast/9/stop", &[]).await.0, 404);
    let all = node.store.broadcast(1).await.expect("read").expect("there");
    assert!(all.queued == 0 && all.stopped_at.is_some(), "{all:?}");
}
