//! The files of `deploy/` held against the program: they watch only what is measured, and every alarm is explained.

use bellyful_tests::network::{Does, Network, client, text_in};
use bellyful_tests::server::Setting;
use bellyful_tests::stores::fresh_urls;
use std::collections::BTreeSet;
use std::path::PathBuf;
use std::time::Duration;

fn tree(path: &str) -> PathBuf {
    PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/..")).join(path)
}

fn read(path: &str) -> String {
    std::fs::read_to_string(tree(path)).unwrap_or_else(|error| panic!("{path}: {error}"))
}

/// Names of measures that a text speaks of.
fn measures(text: &str) -> BTreeSet<String> {
    text.split(|c: char| !(c.is_ascii_lowercase() || c == '_'))
        .filter(|word| word.starts_with("bellyful_"))
        .map(|word| ["_count", "_sum"].iter().find_map(|end| word.strip_suffix(end)).unwrap_or(word).to_owned())
        .collect()
}

/// Names that the program's source measures under.
fn measured() -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let mut folders = vec![tree("bot/src")];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).expect("the source is there").flatten() {
            let path = entry.path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|end| end == "rs") {
                let source = std::fs::read_to_string(path).expect("source is text");
                for kind in ["counter!(\"", "gauge!(\"", "histogram!(\""] {
                    names
                        .extend(source.split(kind).skip(1).filter_map(|rest| Some(rest.split('"').next()?.to_owned())));
                }
            }
        }
    }
    names
}

#[test]
fn alerts_and_dashboard_name_only_what_is_measured_and_leave_nothing_out() {
    let measured = measured();
    assert!(measured.len() > 10, "{measured:?}");
    let watched = measures(&[read("deploy/watch/alerts.yml"), read("deploy/watch/dashboard.json")].concat());
    assert_eq!(watched, measured);
}

#[test]
fn every_alarm_has_its_paragraph_in_the_runbook() {
    let runbook = read("deploy/runbook.md");
    let rules = read("deploy/watch/alerts.yml");
    let alarms: Vec<&str> = rules.lines().filter_map(|line| line.trim().strip_prefix("- alert: ")).collect();
    let told: Vec<&str> = runbook.lines().filter_map(|line| line.strip_prefix("### ")).collect();
    assert_eq!(alarms, told);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_serving_node_exports_what_the_queues_alarms_need() {
    let network = Network::start(|_, _| Does::Takes).await;
    let server = Setting::new(&fresh_urls()[0], &network.send_url).start();
    assert_eq!(text_in(&server.url, "a", "+15550100", "fed 3 kg scraps").await, Some(202));
    network.until(Duration::from_secs(20), |all| !all.is_empty()).await;
    let page = client().get(format!("{}/metrics", server.url)).send().await.expect("answers");
    let page = page.text().await.expect("text");
    for line in [
        "bellyful_texts_waiting ",
        "bellyful_oldest_text_waiting_seconds ",
        "bellyful_sends_waiting ",
        "bellyful_texts_accepted_total ",
        "bellyful_accept_seconds{quantile=\"0.99\"} ",
        "bellyful_turn_seconds{quantile=\"0.5\"} ",
        "bellyful_turn_seconds_count ",
    ] {
        assert!(page.lines().any(|there| there.starts_with(line)), "`{line}` is not in\n{page}");
    }
}
