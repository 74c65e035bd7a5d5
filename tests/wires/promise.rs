//! A text that got its 202 is answered, once, whatever crashes in between; on both stores.

use bellyful::message::answer_id;
use bellyful_tests::network::{Does, Network, text_in};
use bellyful_tests::postgres::Postgres;
use bellyful_tests::server::Setting;
use bellyful_tests::stores::fresh_urls;
use std::time::{Duration, Instant};

const SOON: Duration = Duration::from_secs(20);

fn first_answer(from: &str, id: &str) -> String {
    answer_id("plain", from, id, 0)
}

#[tokio::test(flavor = "multi_thread")]
async fn killed_between_the_202_and_the_answer_it_answers_once_after_the_restart() {
    for database in fresh_urls() {
        let network = Network::start(|_, _| Does::Takes).await;
        let setting = Setting::new(&database, &network.send_url);
        let mut server = setting.start();
        let numbers: Vec<String> = (0..5).map(|n| format!("+155501{n:02}")).collect();
        for number in &numbers {
            assert_eq!(text_in(&server.url, "a", number, "fed 3 kg scraps").await, Some(202));
        }
        server.kill();
        let mut server = setting.start();
        let answered = |all: &[bellyful_tests::network::Taken]| all.len() >= numbers.len();
        network.until(SOON, answered).await;
        // The gateway did not hear the 202 and comes again: nothing changes.
        for number in &numbers {
            assert_eq!(text_in(&server.url, "a", number, "fed 3 kg scraps").await, Some(202));
        }
        tokio::time::sleep(Duration::from_secs(1)).await;
        let mut ids: Vec<String> = network.delivered().into_iter().map(|taken| taken.id).collect();
        ids.sort();
        let mut expected: Vec<String> = numbers.iter().map(|number| first_answer(number, "a")).collect();
        expected.sort();
        assert_eq!(ids, expected, "on {database}");
        assert_eq!(network.unsigned(), 0);
        assert_eq!(server.terminate(), Some(0));
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn texts_of_one_phone_are_answered_in_the_order_sent() {
    let network = Network::start(|_, _| Does::Takes).await;
    let server = Setting::new(&fresh_urls()[0], &network.send_url).start();
    let texts = ["fed 3 kg scraps", "6 L water", "gas low", "cooked 40 min", "how much can I feed?"];
    for (n, text) in texts.iter().enumerate() {
        assert_eq!(text_in(&server.url, &n.to_string(), "+15550100", text).await, Some(202));
    }
    let all = network.until(SOON, |all| all.len() >= texts.len()).await;
    let ids: Vec<_> = all.into_iter().map(|taken| taken.id).collect();
    let expected: Vec<_> = (0..texts.len()).map(|n| first_answer("+15550100", &n.to_string())).collect();
    assert_eq!(ids, expected);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_node_that_dies_is_taken_over_within_ten_seconds() {
    let Some(postgres) = Postgres::shared() else { return };
    let network = Network::start(|_, _| Does::Says(503)).await;
    let setting = Setting::new(&postgres.database(), &network.send_url);
    let (mut first, second) = (setting.start(), setting.start());
    let numbers: Vec<String> = (0..20).map(|n| format!("+155502{n:02}")).collect();
    for number in &numbers {
        assert_eq!(text_in(&first.url, "a", number, "fed 3 kg scraps").await, Some(202));
    }
    first.kill();
    let killed = Instant::now();
    network.replan(|_, _| Does::Takes);
    let all = network.until(SOON, |all| all.len() >= numbers.len()).await;
    assert_eq!(all.len(), numbers.len());
    let last = all.iter().map(|taken| taken.at).max().expect("some");
    assert!(last - killed < Duration::from_secs(10), "{:?}", last - killed);
    drop(second);
}
