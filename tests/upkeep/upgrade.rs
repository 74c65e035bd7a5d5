//! Two versions side by side on one PostgreSQL: an older node serves on while a new one moves the tables and takes over.
//!
//! Needs a program built from an older commit, best one with fewer migrations:
//! `BELLYFUL_OLD_PROGRAM=/path cargo test -p bellyful-tests --test upkeep -- --ignored --nocapture upgrade`.

use bellyful::message::answer_id;
use bellyful_tests::network::{Does, Network, text_in};
use bellyful_tests::postgres::Postgres;
use bellyful_tests::server::Setting;
use std::time::Duration;

/// Texts in each of the three parts: the old one alone, both, the new one alone.
const TEXTS: usize = 40;

/// Hands a text in at the first of these that takes it; which.
async fn handed_in(urls: &[&str], number: &str, id: &str) -> Option<usize> {
    for (n, url) in urls.iter().enumerate() {
        if text_in(url, id, number, "fed 3 kg scraps").await == Some(202) {
            return Some(n);
        }
    }
    None
}

#[tokio::test(flavor = "multi_thread")]
#[ignore = "needs an older program, named by BELLYFUL_OLD_PROGRAM"]
async fn an_older_node_and_a_new_one_share_the_work_until_the_older_gives_way() {
    let older = std::env::var("BELLYFUL_OLD_PROGRAM").expect("BELLYFUL_OLD_PROGRAM names the older program");
    let postgres = Postgres::shared().expect("PostgreSQL is installed");
    let network = Network::start(|_, _| Does::Takes).await;
    let setting = Setting::new(&postgres.database(), &network.send_url);
    let older = setting.clone().of(&older);
    let mut old = older.start();
    let mut acknowledged = vec![];
    let mut new = None;
    for n in 0..3 * TEXTS {
        match n / TEXTS {
            1 if new.is_none() => new = Some(setting.start()),
            2 if n == 2 * TEXTS => assert_eq!(old.terminate(), Some(0), "the old one ends in order"),
            _ => {}
        }
        // Each from a number of its own: the same words twice within seconds are taken for one text.
        let (number, id) = (format!("+15550{n:03}"), n.to_string());
        let mut urls = vec![old.url.as_str()];
        urls.extend(new.as_ref().map(|server| server.url.as_str()));
        // As a balancer does: turn about, and on to the other where one is gone.
        let turn = n % urls.len();
        urls.rotate_left(turn);
        if handed_in(&urls, &number, &id).await.is_some() {
            acknowledged.push(answer_id("plain", &number, &id, 0));
        }
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
    let all = |taken: &[bellyful_tests::network::Taken]| {
        acknowledged.iter().all(|id| taken.iter().any(|taken| taken.id == *id))
    };
    network.until(Duration::from_secs(120), all).await;
    let taken = network.taken();
    let lost = acknowledged.iter().filter(|id| !taken.iter().any(|taken| taken.id == **id)).count();
    let doubled = taken.len() - network.delivered().len();
    println!("{} texts acknowledged over the change of versions, {lost} lost, {doubled} doubled", acknowledged.len());
    assert_eq!((acknowledged.len(), lost, doubled), (3 * TEXTS, 0, 0));
    // Once the tables have moved on, the old one says so in place of starting.
    let (code, said) = older.fail();
    let said: Vec<_> = said.lines().filter(|line| line.starts_with("The ")).collect();
    assert!(code == Some(1) && said.len() == 1, "{code:?} {said:?}");
}
