//! A field worker's day on the pages: takes a need on, visits, mends the settings, looks ahead, counts the month.

use crate::access::{login, node};
use bellyful::household::{Decision, Phone};
use bellyful::message::Inbound;
use bellyful::mind::Mind;
use bellyful::pages::hash;
use bellyful::setup::{Setup, set_up};
use bellyful::store::{Arrival, Cause, NewStaff, Store};
use bellyful::workbench::nobody;
use bellyful_core::fact::{Fact, Unit, What};
use bellyful_core::feeds::Feed;
use bellyful_core::units::Day;
use bellyful_tests::network::client_without_redirects as client;
use chrono::{NaiveDate, Utc};

/// A household of 1,000 l that told of a meal and an hour's cooking today.
pub async fn household(store: &Store) {
    let mind = Mind::new(None, 1).expect("sound words");
    let setup = r#"{"lang":"en","name":"=Lantana","tank_l":1000,"liquid_l":800,"people":4}"#;
    let setup: Setup = serde_json::from_str(setup).expect("a set-up");
    let now = Utc::now();
    let mut decision: Decision = set_up(&mind, "+99900000777", "plain", &setup, now).expect("plausible");
    decision.join = vec![Phone { gateway: "plain".into(), number: "+99900000777".into() }];
    let household = decision.household.as_mut().expect("made");
    let day = Day(now.date_naive().signed_duration_since(NaiveDate::default()).num_days() as i32);
    let told = [
        What::Fed { feed: Feed::CattleManure, amount: Some(3.0), unit: Some(Unit::Kg) },
        What::Burned { minutes: 60.0 },
    ];
    for what in told {
        decision.facts.push(Fact { id: household.next_fact, day, told_at: now.timestamp(), what });
        household.next_fact += 1;
    }
    store.keep(Cause::Hand, &nobody(), decision, now).await.expect("kept");
}

fn reader(name: &str, lang: &str) -> NewStaff {
    NewStaff {
        name: name.into(),
        phone: None,
        gateway: None,
        lang: lang.into(),
        role: "viewer".into(),
        password_hash: Some(hash("right").expect("randomness")),
    }
}

pub struct Browser {
    pub url: String,
    pub cookie: String,
}

impl Browser {
    pub async fn get(&self, path: &str) -> String {
        let call = client().get(format!("{}{path}", self.url)).header("cookie", &self.cookie);
        let response = call.send().await.expect("answers");
        assert_eq!(response.status(), 200, "{path}");
        response.text().await.expect("text")
    }
    pub async fn post(&self, path: &str, form: &[(&str, &str)]) -> (u16, String) {
        let call = client().post(format!("{}{path}", self.url)).header("cookie", &self.cookie).form(form);
        let response = call.send().await.expect("answers");
        (response.status().as_u16(), response.text().await.expect("text"))
    }
}

pub const SETTINGS: [(&str, &str); 10] = [
    ("name", "Lantana"),
    ("lang", "en"),
    ("staff", ""),
    ("place", "Kisumu"),
    ("tank_l", "1000"),
    ("liquid_l", "750"),
    ("store_l", "600"),
    ("people", "4"),
    ("started", "2026-01-15"),
    ("walls", "black"),
];

#[tokio::test(flavor = "multi_thread")]
async fn a_field_worker_does_a_days_work_on_the_pages() {
    let (node, url) = node().await;
    household(&node.store).await;
    let cookie = login(&url, "field", "right").await.expect("may log in");
    let browser = Browser { url, cookie };

    // Taken by one, seen by all; done once.
    let today = browser.get("/").await;
    assert!(today.contains("I see to it: =Lantana"));
    assert!(today.contains("<a href=\"/\" aria-current=\"page\">Today</a><a href=\"/programme\">"), "{today}");
    assert_eq!(browser.post("/household/1/care", &[("act", "take")]).await.0, 303);
    assert!(browser.get("/").await.contains("field sees to it."));
    assert_eq!(browser.post("/household/1/care", &[("act", "done")]).await.0, 303);
    assert!(browser.get("/").await.contains("Seen to by field."));

    // A visit: what is to be mended is named, and nothing marked is nothing kept.
    let visit = [("errand", "new_tank"), ("gas_tight", "bad"), ("valve", "good"), ("note", "<i>again</i> Monday")];
    assert_eq!(browser.post("/household/1/visit", &visit).await.0, 303);
    assert_eq!(browser.post("/household/1/visit", &[("errand", "new_tank"), ("valve", "")]).await.0, 422);
    let page = browser.get("/household/1").await;
    assert!(page.contains("Check of a new tank: 1 good, to mend: Gas-tight."), "{page}");
    assert!(!page.contains("<i>again") && page.contains("Visits"));
    let next = browser.get("/household/1/visit").await;
    assert!(next.contains("Earlier visits") && next.contains("to mend: Gas-tight."), "{next}");

    // What was done is told in the language of who reads it; the words of people stay theirs.
    assert_eq!(browser.post("/household/1/note", &[("note", "valve sticks")]).await.0, 303);
    node.store.add_staff(&reader("asha", "hi")).await.expect("added");
    let cookie = login(&browser.url, "asha", "right").await.expect("may log in");
    let hindi = Browser { url: browser.url.clone(), cookie }.get("/household/1").await;
    assert!(hindi.contains("field ने देख लिया।") && hindi.contains("field: valve sticks"), "{hindi}");
    assert!(!hindi.contains("has seen to it"), "{hindi}");

    // A row a day, to be read off without a mouse.
    let table = browser.get("/household/1/days").await;
    assert!(table.contains("<td>3.0 cow dung</td>") && table.matches("<tr>").count() == 31, "{table}");
    assert!(browser.get("/household/1/days?days=120").await.matches("<tr>").count() == 121);

    // A fault is looked at by a list of its own: what only a new tank is asked is neither shown nor kept.
    let form = browser.get("/household/1/visit?errand=fault").await;
    assert!(form.contains("Inlet free: water poured in goes down") && !form.contains("Walls dark"), "{form}");
    let fault = [("errand", "fault"), ("inlet_free", "bad"), ("flame_blue", "good"), ("walls_dark", "bad")];
    assert_eq!(browser.post("/household/1/visit", &fault).await.0, 303);
    assert!(browser.get("/household/1").await.contains("A look at a fault: 1 good, to mend: Inlet free."));

    // While a danger is open its page tells to get out, and no ration or what-if stands beside it.
    let now = Utc::now();
    let text = Inbound {
        gateway: "plain".into(),
        id: "danger".into(),
        from: "+99900000777".into(),
        to: None,
        text: "strong gas smell in the kitchen".into(),
        sent_at: now,
        received_at: now,
    };
    node.store.accept(&[Arrival { inbound: text, alarm: None }]).await.expect("kept");
    let mut page = String::new();
    for _ in 0..100 {
        page = browser.get("/household/1").await;
        if page.contains("role=\"alert\"") {
            break;
        }
        tokio::time::sleep(std::time::Duration::from_millis(50)).await;
    }
    assert!(page.contains("Everyone out now!") && !page.contains("name=\"ration\""), "{page}");
    assert!(!page.contains("you can feed") && !page.contains("feed up to"), "{page}");
    assert_eq!(browser.post("/household/1/taken", &[]).await.0, 303);
    assert!(browser.get("/household/1").await.contains("name=\"ration\""));

    // Settings: only what differs becomes a fact; what is wrong is a sentence and changes nothing.
    let before = node.store.facts(1).await.expect("read").len();
    let wrong: Vec<_> = SETTINGS.map(|(field, value)| (field, if field == "tank_l" { "5" } else { value })).into();
    let (status, told) = browser.post("/household/1/settings", &wrong).await;
    assert!(status == 422 && told.contains("Slurry of 750 L does not fit a tank of 5 L"), "{told}");
    assert_eq!(node.store.facts(1).await.expect("read").len(), before);
    assert_eq!(browser.post("/household/1/settings", &SETTINGS).await.0, 303);
    let facts = node.store.facts(1).await.expect("read");
    let new: Vec<&What> = facts[before..].iter().map(|fact| &fact.what).collect();
    assert!(!new.iter().any(|what| matches!(what, What::Tank { .. } | What::People { .. })), "{new:?}");
    assert!(new.contains(&&What::Liquid { litres: 750.0 }) && new.contains(&&What::Started), "{new:?}");
    let household = node.store.situation_of(1).await.expect("read").household.expect("there");
    assert_eq!((household.lang.as_str(), household.time_zone.as_str()), ("en", "Africa/Nairobi"));
    let page = browser.get("/household/1").await;
    assert!(page.contains("slurry up to the overflow 750 L") && page.contains("15 Jan 2026"), "{page}");

    // Two weeks ahead: more feed, more load.
    let ahead = browser.get("/household/1?ration=2&water=4").await;
    assert!(ahead.contains("With 2.0 kg of the usual mix and 4.0 L water every day"), "{ahead}");
    assert!(browser.get("/household/1?ration=lots").await.contains("Give kilograms and litres a day as numbers"));
    assert!(node.store.facts(1).await.expect("read").len() == facts.len(), "what is supposed is not kept");

    // The month, on the page and as rows.
    assert!(browser.get("/programme").await.contains("Kisumu"));
    let csv = browser.get("/programme.csv?fuel=lpg").await;
    let row: Vec<&str> = csv.lines().nth(1).expect("a row").split(',').collect();
    assert_eq!((row[5], row[7], row[8], row[9]), ("3.0", "60", "0.300", "lpg"), "{csv}");
}
