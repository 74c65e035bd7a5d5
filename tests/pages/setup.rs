//! People and set-up: what a lead sets up on the page holds for the bot at once, and what is wrong is a sentence.

use crate::access::{login, node};
use crate::work::{Browser, household};
use bellyful::deed::{Did, Written};
use bellyful::household::Sender;
use bellyful::jobs::tidy::forget_old_texts;
use bellyful::message::Inbound;
use bellyful::pages::access::Role;
use bellyful::store::{Arrival, Store};
use bellyful_core::fact::{Measure, Unit, What};
use bellyful_core::feeds::Feed;
use chrono::{Duration, Utc};

async fn lead() -> (bellyful::app::Node, Browser) {
    let (node, url) = node().await;
    household(&node.store).await;
    let cookie = login(&url, "lead", "right").await.expect("may log in");
    (node, Browser { url, cookie })
}

/// Texts as the family and waits until it was answered.
async fn text(store: &Store, from: &str, id: &str, text: &str) {
    let now = Utc::now();
    let (from, text) = (from.to_owned(), text.to_owned());
    let inbound =
        Inbound { gateway: "plain".into(), id: id.into(), from, to: None, text, sent_at: now, received_at: now };
    store.accept(&[Arrival { inbound, alarm: None }]).await.expect("kept");
    for _ in 0..200 {
        if store.backlog().await.expect("counted").0 == 0 {
            return;
        }
        tokio::time::sleep(std::time::Duration::from_millis(50)).await;
    }
    panic!("{id} was not answered in ten seconds");
}

#[tokio::test(flavor = "multi_thread")]
async fn staff_are_added_given_roles_and_taken_off_and_the_last_lead_stays() {
    let (node, browser) = lead().await;
    let add = [
        ("act", "add"),
        ("name", "Asha"),
        ("phone", "+999 000 00-802"),
        ("gateway", "plain"),
        ("lang", "sw"),
        ("role", "viewer"),
    ];
    let (status, page) = browser.post("/setup/staff", &add).await;
    assert_eq!(status, 200, "{page}");
    let password = page.split("with the password ").nth(1).and_then(|rest| rest.split('.').next()).expect("a password");
    assert!(login(&browser.url, "Asha", password).await.is_some());
    assert!(!browser.get("/setup").await.contains(password), "a password is shown once");
    assert!(
        matches!(node.store.sender("+99900000802").await.expect("read"), Sender::Staff(staff) if staff.lang == "sw")
    );
    assert_eq!(browser.post("/setup/staff", &add).await.0, 422, "one name, one person");
    let role =
        |name: &'static str, role: &'static str| [("act", "change"), ("name", name), ("role", role), ("lang", "hi")];
    assert_eq!(browser.post("/setup/staff", &role("lead", "viewer")).await.0, 422, "the last lead stays one");
    assert_eq!(browser.post("/setup/staff", &[("act", "remove"), ("name", "lead")]).await.0, 422);
    assert_eq!(browser.post("/setup/staff", &role("Asha", "king")).await.0, 422);
    let (status, page) = browser.post("/setup/staff", &role("Asha", "lead")).await;
    assert!(status == 200 && page.contains("Asha is lead now. Asha reads"), "{page}");
    let cookie = login(&browser.url, "Asha", password).await.expect("may log in");
    let hindi = Browser { url: browser.url.clone(), cookie };
    assert!(hindi.get("/setup").await.contains("<html lang=\"hi\">"));
    assert_eq!(browser.post("/setup/staff", &[("act", "remove"), ("name", "Asha")]).await.0, 200);
    assert_eq!(node.store.sender("+99900000802").await.expect("read"), Sender::Stranger { stopped: false });
    let trail = node.store.trail(0, 20).await.expect("read");
    let name = || "Asha".to_owned();
    for did in [
        Did::AddedStaff { name: name(), role: Role::Viewer },
        Did::ChangedStaff { name: name(), role: Role::Lead },
        Did::TookOffStaff { name: name() },
    ] {
        let deed = Written::Deed(did.by("lead"));
        assert!(trail.iter().any(|(_, what)| *what == deed), "{trail:?}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_word_taught_once_is_understood_from_every_household_there() {
    let (node, browser) = lead().await;
    let settings = crate::work::SETTINGS.map(|(field, value)| (field, if field == "name" { "Lantana" } else { value }));
    assert_eq!(browser.post("/household/1/settings", &settings).await.0, 303);
    let teach = |word: &'static str, place: &'static str| {
        [("word", word), ("feed", "cattle_manure"), ("country", "ke"), ("place", place)]
    };
    let fed = async || {
        let facts = node.store.facts(1).await.expect("read");
        let fed = |what: &What| matches!(what, What::Fed { feed: Feed::CattleManure, amount: Some(a), unit: Some(Unit::Kg) } if *a == 7.0);
        facts.iter().filter(|fact| fed(&fact.what)).count()
    };
    text(&node.store, "+99900000777", "a", "fed 7 kg zumbulu").await;
    assert_eq!(fed().await, 0);
    for taken in ["gas leak", "stop", "rice"] {
        assert_eq!(browser.post("/setup/word", &teach(taken, "")).await.0, 422, "{taken}");
    }
    assert_eq!(browser.post("/setup/word", &teach("zumbulu", "Nakuru")).await.0, 200);
    text(&node.store, "+99900000777", "b", "fed 7 kg zumbulu today").await;
    assert_eq!(fed().await, 0, "another district's word");
    let (status, page) = browser.post("/setup/word", &teach("Zumbulu", "Kisumu")).await;
    assert!(status == 200 && page.contains("In Kisumu, Zumbulu is cow dung from now on."), "{page}");
    text(&node.store, "+99900000777", "c", "we fed 7 kg ZUMBULU, 5 L water").await;
    assert_eq!(fed().await, 1);
    assert_eq!(browser.post("/setup/word", &teach("zumbulu", "kisumu")).await.0, 422, "taught already");
    let id = node.store.feed_words().await.expect("read").iter().find(|word| word.place == "Kisumu").expect("there").id;
    assert_eq!(browser.post("/setup/word", &[("remove", &id.to_string())]).await.0, 200);
    text(&node.store, "+99900000777", "d", "again 7 kg of zumbulu").await;
    assert_eq!(fed().await, 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn the_number_to_call_is_the_one_that_was_set() {
    let (node, browser) = lead().await;
    let set = |number: &'static str| [("country", "KE"), ("number", number)];
    assert_eq!(browser.post("/setup/emergency", &set("call me")).await.0, 422);
    assert_eq!(browser.post("/setup/emergency", &[("country", "XX"), ("number", "1")]).await.0, 422);
    assert_eq!(browser.post("/setup/emergency", &set("0800 77")).await.0, 200);
    text(&node.store, "+254712345678", "a", "strong gas smell in the kitchen").await;
    let said = node.store.story(0, "+254712345678", 9).await.expect("read");
    assert!(said.iter().any(|said| said.ours && said.text.contains("0800 77")), "{said:?}");
    assert_eq!(browser.post("/setup/emergency", &set("")).await.0, 200);
    let page = browser.get("/setup").await;
    assert!(!page.contains("<strong>0800 77</strong>"), "{page}");
    assert!(page.contains("lead set the number to call in KE: 0800 77."), "who set what is told: {page}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_pin_is_needed_by_text_once_a_lead_says_so() {
    let (node, browser) = lead().await;
    let worker = node.store.members().await.expect("read").remove(0).staff.id;
    for (needs, expected) in [("yes", true), ("no", false)] {
        let (status, page) = browser.post("/setup/pin", &[("needs", needs)]).await;
        assert_eq!(status, 200);
        assert_eq!(page.contains("everybody needs a PIN once a day"), expected);
        assert_eq!(node.store.line(worker).await.expect("read").needs_pin, expected);
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn texts_are_forgotten_after_as_many_days_as_were_set() {
    let (node, browser) = lead().await;
    text(&node.store, "+99900000777", "a", "fed 4 kg rice").await;
    let words = async || {
        let said = node.store.story(1, "", 50).await.expect("read");
        said.iter().filter(|said| !said.text.is_empty()).count()
    };
    let before = words().await;
    let facts = node.store.facts(1).await.expect("read").len();
    assert!(before >= 2, "theirs and ours");
    assert_eq!(forget_old_texts(&node.store, Utc::now() + Duration::days(400)).await.expect("done"), 0, "none set");
    for wrong in ["3", "-1", "soon"] {
        assert_eq!(browser.post("/setup/keeping", &[("days", wrong)]).await.0, 422, "{wrong}");
    }
    assert_eq!(browser.post("/setup/keeping", &[("days", "90")]).await.0, 200);
    forget_old_texts(&node.store, Utc::now() + Duration::days(89)).await.expect("done");
    assert_eq!(words().await, before);
    forget_old_texts(&node.store, Utc::now() + Duration::days(91)).await.expect("done");
    let left = node.store.story(1, "", 50).await.expect("read");
    assert!(left.iter().filter(|said| !said.ours).all(|said| said.text.is_empty()), "{left:?}");
    assert_eq!(node.store.facts(1).await.expect("read").len(), facts, "what was told of the digester stays");
}

#[tokio::test(flavor = "multi_thread")]
async fn every_message_is_shown_in_every_language_with_its_segments() {
    let (_node, browser) = lead().await;
    for lang in ["en", "es", "fr", "hi", "pt", "sw"] {
        let page = browser.get(&format!("/setup/wording?lang={lang}")).await;
        let shown = page.matches("segment").count();
        assert!(shown > 150 && page.len() < 300_000, "{lang}: {shown} in {} bytes", page.len());
        assert!(page.contains("staff-word") && page.contains("Asha"), "{lang}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_household_is_set_up_gets_phones_measures_and_a_tank_begun_anew() {
    let (node, browser) = lead().await;
    let form = |phone: &'static str, agreed: &'static str| {
        [
            ("name", "Mirembo"),
            ("phone", phone),
            ("gateway", "plain"),
            ("lang", "en"),
            ("place", "Kisumu"),
            ("tank_l", "1000"),
            ("liquid_l", "800"),
            ("store_l", "500"),
            ("walls", "black"),
            ("agreed", agreed),
        ]
    };
    assert_eq!(browser.post("/setup/household", &form("+99900000555", "")).await.0, 422, "who did not agree");
    assert_eq!(browser.post("/setup/household", &form("+99900000777", "yes")).await.0, 422, "another's number");
    assert_eq!(browser.post("/setup/household", &form("0555", "yes")).await.0, 422);
    assert_eq!(browser.post("/setup/household", &form("+99900000555", "yes")).await.0, 303);
    assert!(browser.get("/household/2").await.contains("Mirembo"));

    // Phones: one more, one less; nobody else's, and none that said STOP.
    let phone = |act: &'static str, number: &'static str| [("act", act), ("number", number), ("gateway", "plain")];
    assert_eq!(browser.post("/household/2/phone", &phone("add", "+99900000777")).await.0, 422);
    assert_eq!(browser.post("/household/2/phone", &phone("add", "+99900000556")).await.0, 303);
    assert_eq!(node.store.phones(2).await.expect("read").len(), 2);
    assert_eq!(browser.post("/household/2/phone", &phone("remove", "+99900000777")).await.0, 422);
    assert_eq!(browser.post("/household/2/phone", &phone("remove", "+99900000556")).await.0, 303);
    assert_eq!(node.store.phones(2).await.expect("read").len(), 1);

    let measure = |litres: &'static str| [("measure", "bucket"), ("litres", litres)];
    assert_eq!(browser.post("/household/2/measure", &measure("0")).await.0, 422);
    assert_eq!(browser.post("/household/2/measure", &measure("12,5")).await.0, 303);
    let holds = What::Measure { unit: Measure::Bucket, litres: 12.5 };
    assert!(node.store.facts(2).await.expect("read").iter().any(|fact| fact.what == holds));
    assert_eq!(browser.post("/household/2/reminders", &[("reminders", "off")]).await.0, 303);
    assert!(node.store.situation_of(2).await.expect("read").household.expect("there").talk.muted);

    // Emptied and filled anew: a new number with the same phone and sizes, and nothing fed.
    text(&node.store, "+99900000555", "a", "fed 2 kg rice").await;
    assert_eq!(browser.post("/household/2/restart", &[("manure_kg", "60")]).await.0, 422, "not without being sure");
    let moved = |place: &'static str| [("manure_kg", "60"), ("sure", "yes"), ("place", place)];
    assert_eq!(browser.post("/household/2/restart", &moved("Nosuchtown")).await.0, 422);
    assert_eq!(browser.post("/household/2/restart", &moved("Nakuru")).await.0, 303);
    let towns = node.store.facts(3).await.expect("read").into_iter().filter_map(|fact| match fact.what {
        What::Place { name } => Some(name),
        _ => None,
    });
    assert_eq!(towns.collect::<Vec<_>>(), ["Nakuru"], "where they moved to, and no more where they were");
    let now = Sender::Family { household: 3, stopped: false };
    assert_eq!(node.store.sender("+99900000555").await.expect("read"), now);
    let facts = node.store.facts(3).await.expect("read");
    assert!(facts.iter().any(|fact| fact.what == What::Tank { litres: 1000.0 }), "{facts:?}");
    assert!(facts.iter().any(|fact| fact.what == holds) && facts.iter().any(|fact| fact.what == What::Started));
    assert!(!facts.iter().any(|fact| matches!(fact.what, What::Fed { .. })), "{facts:?}");
    let closed = browser.get("/household/2").await;
    assert!(closed.contains("This story is closed") && closed.contains("<a href=\"/household/3\">"), "{closed}");
    assert!(browser.get("/household/3").await.contains("<a href=\"/household/2\">"));
    assert_eq!(browser.post("/household/2/restart", &[("sure", "yes")]).await.0, 422, "once");
    text(&node.store, "+99900000555", "b", "fed 1 kg rice").await;
    assert!(node.store.facts(3).await.expect("read").len() > facts.len());
}
