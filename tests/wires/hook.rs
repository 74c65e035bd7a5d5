//! An alarm is told to a programme's own computer: signed, without names or words, again until it is taken, once.

use bellyful_tests::network::{Does, Network, text_in};
use bellyful_tests::server::{SECRET, Setting};
use bellyful_tests::stores::fresh_urls;
use std::time::Duration;

#[tokio::test(flavor = "multi_thread")]
async fn an_alarm_is_called_out_until_it_is_taken_and_then_no_more() {
    let phones = Network::start(|_, _| Does::Takes).await;
    // Refused once, cut off once, then taken.
    let programme = Network::start(|_, tries| match tries {
        0 => Does::Says(503),
        1 => Does::Cuts,
        _ => Does::Takes,
    })
    .await;
    let server = Setting::new(&fresh_urls()[0], &phones.send_url)
        .with("BELLYFUL__WEBHOOK__URL", &programme.send_url)
        .with("BELLYFUL__WEBHOOK__SECRET", SECRET)
        .start();
    assert_eq!(text_in(&server.url, "1", "+99900000123", "fed 2 kg rice").await, Some(202));
    assert_eq!(text_in(&server.url, "2", "+99900000123", "strong gas smell in the kitchen").await, Some(202));
    let taken = programme.until(Duration::from_secs(40), |all| !all.is_empty()).await;
    assert_eq!((taken.len(), taken[0].id.as_str()), (1, "alarm-1"), "{taken:?}");
    let body: serde_json::Value = serde_json::from_str(&taken[0].body).expect("JSON");
    assert_eq!((body["event"].as_str(), body["household"].as_i64()), (Some("alarm"), Some(1)));
    assert_eq!(body["signs"], serde_json::json!(["gas_leak"]));
    assert!(!taken[0].body.contains("+999") && !taken[0].body.contains("kitchen"), "{}", taken[0].body);
    assert_eq!(programme.unsigned(), 0, "each call is signed over its raw body");
    tokio::time::sleep(Duration::from_secs(4)).await;
    assert_eq!(programme.tries("alarm-1"), 3, "taken is taken");
}
