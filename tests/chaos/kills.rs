//! The plain one: the real program on real files, killed while texts come in, again and again.

use bellyful::message::answer_id;
use bellyful_tests::network::{Does, Network, text_in};
use bellyful_tests::server::Setting;
use bellyful_tests::stores::fresh_urls;
use std::time::Duration;

/// Kills in a short run, shared by the stores.
const KILLS: usize = 20;

fn kills() -> usize {
    std::env::var("BELLYFUL_CHAOS_KILLS").ok().map_or(KILLS, |kills| kills.parse().expect("a number"))
}

#[tokio::test(flavor = "multi_thread")]
async fn nothing_acknowledged_is_lost_or_answered_twice_however_often_it_is_killed() {
    let urls = fresh_urls();
    for database in &urls {
        let network = Network::start(|_, _| Does::Takes).await;
        let setting = Setting::new(database, &network.send_url);
        let mut server = setting.start();
        let mut acknowledged = vec![];
        for round in 0..kills() / urls.len() {
            for family in 0..4 {
                let (number, id) = (format!("+1555{family:04}{round:03}"), format!("r{round}"));
                // Where the server dies in mid-call there is no 202, and nothing is promised.
                if text_in(&server.url, &id, &number, &format!("fed {} kg scraps", round % 7 + 1)).await == Some(202) {
                    acknowledged.push(answer_id("plain", &number, &id, 0));
                }
            }
            // A different moment each time, from at once to after the answers are out.
            tokio::time::sleep(Duration::from_millis((round as u64 * 37) % 400)).await;
            server.kill();
            server = setting.start();
        }
        let all = |taken: &[bellyful_tests::network::Taken]| {
            acknowledged.iter().all(|id| taken.iter().any(|taken| taken.id == *id))
        };
        network.until(Duration::from_secs(60), all).await;
        let mut ids: Vec<String> = network.delivered().into_iter().map(|taken| taken.id).collect();
        ids.sort();
        let lost: Vec<_> = acknowledged.iter().filter(|id| !ids.contains(id)).collect();
        assert!(lost.is_empty(), "{} of {} lost", lost.len(), acknowledged.len());
        let doubles = network.taken().len() - ids.len();
        println!(
            "{} texts acknowledged, {} kills, 0 lost, {doubles} sent again with the same id",
            acknowledged.len(),
            kills() / urls.len()
        );
        // At most one text is under way at each of the gateway's calls when the program dies.
        assert!(doubles <= acknowledged.len() / 2, "{doubles} doubles");
        assert_eq!(server.terminate(), Some(0));
    }
}
