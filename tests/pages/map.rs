//! The map on the page of today: who is where, and ten thousand households on one cheap screen.

use crate::access::{login, node};
use crate::work::{Browser, SETTINGS, household};
use bellyful::household::{Decision, Household, Talk};
use bellyful::store::Cause;
use bellyful::workbench::nobody;
use bellyful_core::fact::{Fact, What};
use bellyful_core::units::Day;
use chrono::Utc;

async fn field() -> (bellyful::app::Node, Browser) {
    let (node, url) = node().await;
    household(&node.store).await;
    let cookie = login(&url, "field", "right").await.expect("may log in");
    (node, Browser { url, cookie })
}

#[tokio::test(flavor = "multi_thread")]
async fn a_household_is_on_the_map_once_its_town_is_known() {
    let (_node, browser) = field().await;
    assert!(!browser.get("/").await.contains("class=\"map\""), "nobody told where they are");
    assert_eq!(browser.post("/household/1/settings", &SETTINGS).await.0, 303);
    let today = browser.get("/").await;
    assert!(today.contains("Map: one household") && today.contains("Lantana, Kisumu: "), "{today}");
    assert!(today.split("class=\"map\"").nth(1).is_some_and(|map| map.contains("href=\"/household/1\"")));
    // A nearer look keeps to its part of the world.
    assert!(browser.get("/?within=34.5,-0.5,35,0.2").await.contains("href=\"/household/1\""));
    assert!(!browser.get("/?within=36,-2,37,-1").await.contains("href=\"/household/1\""));
    assert!(browser.get("/?within=%3Cb%3E").await.contains("href=\"/household/1\""), "what is no place is not read");
}

/// Each row may have two small charts of up to 350 bytes, which these households have not.
const CHARTS: usize = 50 * 700;

#[tokio::test(flavor = "multi_thread")]
async fn ten_thousand_households_fit_one_cheap_screen() {
    let (node, browser) = field().await;
    let towns = ["Kisumu", "Nakuru", "Eldoret", "Kakamega", "Kericho", "Kisii", "Bungoma", "Kitale", "Migori"];
    let now = Utc::now();
    for n in 0..10_000_usize {
        let household = Household {
            id: 0,
            name: format!("House {n}"),
            lang: "en".into(),
            country: Some("KE".into()),
            time_zone: "Africa/Nairobi".into(),
            since: now,
            seed: 1,
            staff_id: None,
            next_fact: 2,
            talk: Talk::default(),
        };
        let place = What::Place { name: towns[n % towns.len()].into() };
        let fact = Fact { id: 1, day: Day(0), told_at: 0, what: place };
        let decision = Decision { household: Some(household), facts: vec![fact], ..Decision::default() };
        node.store.keep(Cause::Hand, &nobody(), decision, now).await.expect("kept");
    }
    let today = browser.get("/").await;
    assert!(today.contains("/?within=") && today.contains("Map: 10000 households"), "bundled");
    assert!(today.len() < 100_000 - CHARTS, "{} bytes", today.len());
}
