//! What the log keeps to itself: secrets always; words and numbers of families at its usual level.

use bellyful_tests::network::{Does, Network, client, post, sign, text_in};
use bellyful_tests::server::{SECRET, Setting};
use bellyful_tests::stores::fresh_urls;
use std::time::Duration;

/// Calls right and wrong, sends taken, refused and impossible; then all that the server logged.
async fn logged(level: &str) -> String {
    let network = Network::start(|_, before| if before == 0 { Does::Says(500) } else { Does::Takes }).await;
    let setting = Setting::new(&fresh_urls()[0], &network.send_url)
        .with("RUST_LOG", level)
        .with("BELLYFUL__GATEWAY__KANNEL__SECRET", "sesame-word")
        .with("BELLYFUL__GATEWAY__KANNEL__USER", "tester")
        .with("BELLYFUL__GATEWAY__KANNEL__PASSWORD", "sesame-pass")
        .with("BELLYFUL__GATEWAY__KANNEL__NUMBER", "12345")
        .with("BELLYFUL__GATEWAY__KANNEL__RECEIPT_URL", "http://127.0.0.1:1/receipt/kannel")
        .with("BELLYFUL__GATEWAY__KANNEL__SEND_URL", "http://127.0.0.1:1/cgi-bin/sendsms");
    let (mut server, log) = setting.start_and_keep_its_log();
    for key in ["sesame-word", "forged"] {
        let url = format!("{}/in/kannel?key={key}&id=1", server.url);
        let call = client().post(url).header("x-kannel-from", "+15550177").body("fed 3 kg zucchini");
        call.send().await.expect("an answer");
    }
    text_in(&server.url, "1", "+15550188", "fed 3 kg zucchini").await;
    text_in(&server.url, "2", "+15550188", "strong gas smell in the kitchen").await;
    post(&format!("{}/in/plain", server.url), "{", &sign(b"other")).await;
    network.until(Duration::from_secs(20), |all| all.len() >= 2).await;
    // The send through the gateway that is away fails at least once.
    tokio::time::sleep(Duration::from_secs(1)).await;
    server.terminate();
    std::fs::read_to_string(log).expect("a log")
}

#[tokio::test(flavor = "multi_thread")]
async fn secrets_never_reach_the_log_and_families_do_not_by_default() {
    let secrets = [SECRET, "sesame-word", "sesame-pass"];
    let all = logged("trace").await;
    assert!(all.contains(" TRACE "), "the most talkative level says much: {all}");
    for secret in secrets {
        assert!(!all.contains(secret), "{secret} is in the log: {}", lines_with(&all, secret));
    }
    let usual = logged("info").await;
    for kept in secrets.into_iter().chain(["zucchini", "kitchen", "5550177", "5550188"]) {
        assert!(!usual.contains(kept), "{kept} is in the log: {}", lines_with(&usual, kept));
    }
}

fn lines_with(log: &str, what: &str) -> String {
    log.lines().filter(|line| line.contains(what)).take(3).collect::<Vec<_>>().join("\n")
}
