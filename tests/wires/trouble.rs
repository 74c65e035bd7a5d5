//! A phone network in trouble, a store that is locked, people in danger.

use bellyful::message::answer_id;
use bellyful_tests::network::{Does, Network, text_in};
use bellyful_tests::postgres::Postgres;
use bellyful_tests::server::Setting;
use bellyful_tests::stores::{fresh_folder, fresh_urls};
use std::time::{Duration, Instant};

const SOON: Duration = Duration::from_secs(25);

fn first_answer(from: &str, id: &str) -> String {
    answer_id("plain", from, id, 0)
}

#[tokio::test(flavor = "multi_thread")]
async fn each_trouble_of_the_network_ends_in_one_answer() {
    let troubles = [
        Does::Says(500),
        Does::Says(429),
        Does::Says(408),
        Does::TakesSlowly(Duration::from_secs(3)),
        Does::Cuts,
        Does::TakesAndCuts,
    ];
    for trouble in troubles {
        let network = Network::start(move |_, before| if before == 0 { trouble } else { Does::Takes }).await;
        let server = Setting::new(&fresh_urls()[0], &network.send_url).start();
        assert_eq!(text_in(&server.url, "a", "+15550100", "fed 3 kg scraps").await, Some(202));
        let all = network.until(SOON, |all| !all.is_empty()).await;
        tokio::time::sleep(Duration::from_millis(2500)).await;
        assert_eq!(all.len(), 1, "{trouble:?}");
        assert_eq!(network.delivered()[0].id, first_answer("+15550100", "a"), "{trouble:?}");
        // Taken, but its word was lost: the same id again, for the gateway to drop.
        let doubles = usize::from(trouble == Does::TakesAndCuts);
        assert_eq!(network.taken().len(), 1 + doubles, "{trouble:?}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn what_the_network_refuses_is_not_tried_again_and_holds_nobody_back() {
    let refused = first_answer("+15550100", "a");
    let id = refused.clone();
    let network = Network::start(move |this, _| if this == id { Does::Says(404) } else { Does::Takes }).await;
    let server = Setting::new(&fresh_urls()[0], &network.send_url).start();
    text_in(&server.url, "a", "+15550100", "fed 3 kg scraps").await;
    text_in(&server.url, "b", "+15550100", "gas low").await;
    network.until(SOON, |all| !all.is_empty()).await;
    tokio::time::sleep(Duration::from_secs(2)).await;
    assert_eq!(network.tries(&refused), 1);
    assert_eq!(network.delivered().len(), 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn danger_is_answered_at_once_once_and_even_after_stop() {
    let network = Network::start(|_, _| Does::Takes).await;
    let server = Setting::new(&fresh_urls()[0], &network.send_url).start();
    text_in(&server.url, "a", "+15550100", "STOP").await;
    network.until(SOON, |all| !all.is_empty()).await;
    let start = Instant::now();
    assert_eq!(text_in(&server.url, "b", "+15550100", "strong gas smell in the kitchen").await, Some(202));
    let alarm = first_answer("+15550100", "b");
    let all = network.until(SOON, |all| all.iter().any(|taken| taken.id == alarm)).await;
    let taken = all.iter().find(|taken| taken.id == alarm).expect("the alarm came");
    assert!(taken.at - start < Duration::from_secs(2), "{:?}", taken.at - start);
    tokio::time::sleep(Duration::from_secs(3)).await;
    let to_them = network.taken().into_iter().filter(|taken| taken.to == "+15550100").count();
    assert_eq!(to_them, 2, "the word that all stops, and one alarm");
}

#[tokio::test(flavor = "multi_thread")]
async fn danger_is_answered_though_the_store_is_locked() {
    let network = Network::start(|_, _| Does::Takes).await;
    let file = fresh_folder("locked").join("bellyful.db");
    let database = format!("sqlite:{}", file.display());
    let server = Setting::new(&database, &network.send_url).start();
    sqlx::any::install_default_drivers();
    let pool = sqlx::AnyPool::connect(&database).await.expect("opens");
    let lock = pool.begin_with("BEGIN IMMEDIATE").await.expect("locks");
    let start = Instant::now();
    let url = server.url.clone();
    let call = tokio::spawn(async move { text_in(&url, "b", "+15550100", "fire at the digester, help").await });
    let alarm = first_answer("+15550100", "b");
    let all = network.until(SOON, |all| all.iter().any(|taken| taken.id == alarm)).await;
    let taken = all.iter().find(|taken| taken.id == alarm).expect("the alarm came");
    assert!(taken.at - start < Duration::from_secs(2), "{:?}", taken.at - start);
    assert_eq!(call.await.expect("no panic"), Some(503), "it was not kept, and the gateway must come again");
    lock.rollback().await.expect("unlocks");
    assert_eq!(text_in(&server.url, "b", "+15550100", "fire at the digester, help").await, Some(202));
    tokio::time::sleep(Duration::from_secs(2)).await;
    assert_eq!(network.tries(&alarm), 1, "what went out past the store does not go out again");
}

#[tokio::test(flavor = "multi_thread")]
async fn two_nodes_together_send_no_faster_than_the_gateway_bears() {
    let Some(postgres) = Postgres::shared() else { return };
    let plain = include_str!("../../deploy/gateways/plain.toml");
    let file = fresh_folder("slow").join("slow.toml");
    std::fs::write(&file, plain.replace("[out.call]", "[out]\nrate_per_s = 4.0\n\n[out.call]")).expect("written");
    let network = Network::start(|_, _| Does::Takes).await;
    let setting = Setting::new(&postgres.database(), &network.send_url)
        .with("BELLYFUL__GATEWAY__PLAIN__PROFILE", &file.display().to_string());
    let (first, _second) = (setting.start(), setting.start());
    for n in 0..16 {
        assert_eq!(text_in(&first.url, "a", &format!("+155503{n:02}"), "fed 3 kg scraps").await, Some(202));
    }
    let mut all = network.until(SOON, |all| all.len() >= 16).await;
    assert_eq!(all.len(), 16);
    all.sort_by_key(|taken| taken.at);
    // Four of a second apart; a slow machine may bring two a little closer, never five into less than most of a second.
    for five in all.windows(5) {
        assert!(five[4].at - five[0].at > Duration::from_millis(800), "{:?}", five[4].at - five[0].at);
    }
}
