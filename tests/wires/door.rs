//! What the door says to calls that are right, wrong, too long or forged, and to a bad configuration.

use bellyful_tests::network::{Does, Network, client, post, sign, text_in};
use bellyful_tests::server::{Server, Setting};
use bellyful_tests::stores::fresh_urls;

async fn server() -> (Network, Server) {
    let network = Network::start(|_, _| Does::Takes).await;
    let server = Setting::new(&fresh_urls()[0], &network.send_url).start();
    (network, server)
}

#[tokio::test(flavor = "multi_thread")]
async fn each_wrong_call_gets_its_status_and_one_sentence() {
    let (network, server) = server().await;
    let url = format!("{}/in/plain", server.url);
    let good = r#"{"id":"1","from":"+15550100","text":"hello","unknown":7}"#;
    let zero = r#"{"id":"0","from":"+15550100","text":"a \u0000 b"}"#;
    let rows = [
        (good, sign(good.as_bytes()), 202),
        (zero, sign(zero.as_bytes()), 202),
        (good, "sha256=00".to_owned(), 401),
        (good, String::new(), 401),
        (good, sign(b"other"), 401),
        ("{", sign(b"{"), 400),
        ("[]", sign(b"[]"), 400),
        ("{}", sign(b"{}"), 400),
    ];
    for (body, signature, status) in rows {
        let (said, answer) = post(&url, body, &signature).await.expect("an answer");
        assert_eq!(said, status, "{body}: {answer}");
        let json: serde_json::Value = serde_json::from_str(&answer).expect("JSON");
        if status == 202 {
            assert_eq!(answer, r#"{"accepted":true}"#);
        } else {
            assert!(json["error"].as_str().is_some_and(|sentence| sentence.ends_with('.')), "{answer}");
        }
    }
    for body in
        [r#"{"id":"","from":"+1","text":"x"}"#, r#"{"id":"1","from":" ","text":"x"}"#, r#"{"id":"1","from":"+1"}"#]
    {
        assert_eq!(post(&url, body, &sign(body.as_bytes())).await.map(|(status, _)| status), Some(400), "{body}");
    }
    let long = format!(r#"{{"id":"2","from":"+15550101","text":"{}"}}"#, "fed 3 kg ".repeat(8_000));
    assert_eq!(post(&url, &long, &sign(long.as_bytes())).await.map(|(status, _)| status), Some(413));
    // Long, but within bounds: it is kept, and its beginning is read.
    let long = "fed 3 kg scraps ".repeat(2_000);
    assert_eq!(text_in(&server.url, "3", "+15550102", &long).await, Some(202));
    let all = network.until(std::time::Duration::from_secs(20), |all| all.iter().any(|t| t.to == "+15550102")).await;
    assert!(all.iter().any(|taken| taken.to == "+15550102"), "{all:?}");
    let nowhere = format!("{}/in/nobody", server.url);
    assert_eq!(post(&nowhere, good, "").await.map(|(status, _)| status), Some(404));
}

#[tokio::test(flavor = "multi_thread")]
async fn reports_are_taken_even_of_unknown_texts() {
    let (_network, server) = server().await;
    let url = format!("{}/receipt/plain", server.url);
    let rows = [
        (r#"{"id":"nobody's","status":"delivered"}"#, 200),
        (r#"{"id":"nobody's","status":"buffered"}"#, 200),
        (r#"{"status":"delivered"}"#, 400),
    ];
    for (body, status) in rows {
        assert_eq!(post(&url, body, &sign(body.as_bytes())).await.map(|(said, _)| said), Some(status), "{body}");
        assert_eq!(post(&url, body, "").await.map(|(said, _)| said), Some(401));
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn health_readiness_and_measures_are_told() {
    let (network, server) = server().await;
    text_in(&server.url, "1", "+15550100", "hello").await;
    network.until(std::time::Duration::from_secs(20), |all| !all.is_empty()).await;
    for (path, holds) in [("healthz", "ok"), ("readyz", "ready"), ("metrics", "bellyful_texts_accepted_total 1")] {
        let response = client().get(format!("{}/{path}", server.url)).send().await.expect("an answer");
        assert_eq!(response.status(), 200);
        let text = response.text().await.expect("text");
        assert!(text.contains(holds), "{path}: {text}");
        assert!(!text.contains("5550100"), "no number in {path}");
    }
}

#[tokio::test]
async fn a_bad_configuration_is_one_sentence_and_exit_1() {
    let taken = std::net::TcpListener::bind("127.0.0.1:0").expect("loopback");
    let taken = taken.local_addr().expect("bound").to_string();
    let rows = [
        ("BELLYFUL__LISTEN", "nowhere", "`listen`"),
        ("BELLYFUL__LISTEN", taken.as_str(), taken.as_str()),
        ("BELLYFUL__DATABASE", "sqlite:/nowhere/at/all.db", "`database`"),
        ("BELLYFUL__GATEWAY__PLAIN__PROFILE", "/no/such.toml", "`gateway.plain.profile`"),
        ("BELLYFUL__GATEWAY__PLAIN__SEKRET", "x", "`gateway.plain.sekret`"),
        ("BELLYFUL__GATEWAY__OTHER__PROFILE", "plain", "`gateway.other.se"),
        ("BELLYFUL__NONSENSE", "x", "`nonsense`"),
    ];
    for (key, value, holds) in rows {
        let setting = Setting::new("sqlite:x.db", "http://127.0.0.1:1/").with(key, value);
        let (code, said) = setting.fail();
        assert_eq!(code, Some(1), "{key}={value}: {said}");
        assert!(said.contains(holds) && said.trim().lines().count() == 1, "{key}={value}: {said}");
    }
}
