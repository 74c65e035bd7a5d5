//! Gateways that are files, end to end: the challenge before the first text, the answer in the response, words of
//! opt-out, the pace at which texts leave.

use bellyful_tests::network::{Does, Network, client};
use bellyful_tests::server::{Server, Setting};
use bellyful_tests::stores::{fresh_folder, fresh_urls};
use std::time::Duration;

const SOON: Duration = Duration::from_secs(25);

async fn get(url: &str) -> (u16, String) {
    let response = client().get(url).send().await.expect("an answer");
    (response.status().as_u16(), response.text().await.expect("text"))
}

/// A server with one further gateway, of the profile that is built in by this name or written in full.
fn server(network: &Network, profile: &str, settings: &[(&str, &str)]) -> Server {
    let profile = if profile.contains('\n') {
        let file = fresh_folder("profile").join("made.toml");
        std::fs::write(&file, profile).expect("written");
        file.display().to_string()
    } else {
        profile.to_owned()
    };
    let setting = Setting::new(&fresh_urls()[0], &network.send_url).with("BELLYFUL__GATEWAY__MADE__PROFILE", &profile);
    let with = |setting: Setting, (key, value): &(&str, &str)| {
        setting.with(&format!("BELLYFUL__GATEWAY__MADE__{}", key.to_uppercase()), value)
    };
    settings.iter().fold(setting, with).start()
}

#[tokio::test(flavor = "multi_thread")]
async fn a_challenge_is_echoed_only_to_who_knows_the_word() {
    let network = Network::start(|_, _| Does::Takes).await;
    let settings =
        [("secret", "s"), ("verify_token", "word"), ("access_token", "t"), ("send_url", "http://127.0.0.1:1/")];
    let server = server(&network, "json-hmac-sha256-challenge", &settings);
    let ask =
        |word: &str| format!("{}/in/made?hub.mode=subscribe&hub.challenge=77&hub.verify_token={word}", server.url);
    assert_eq!(get(&ask("word")).await, (200, "77".to_owned()));
    let (status, said) = get(&ask("wort")).await;
    assert_eq!(status, 401);
    assert!(said.contains("challenge") && !said.contains("77"), "{said}");
    assert_eq!(get(&format!("{}/in/made", server.url)).await.0, 401, "no challenge and no signature");
}

#[tokio::test(flavor = "multi_thread")]
async fn the_response_carries_the_answer_and_carries_it_again() {
    let network = Network::start(|_, _| Does::Takes).await;
    let server = server(&network, "query-token-text-answer", &[("secret", "sesame")]);
    let call = |id: &str, text: &str| {
        format!("{}/in/made?key=sesame&id={id}&from=%2B15550100&to=12345&message={text}", server.url)
    };
    let (status, first) = get(&call("1", "fed+3+kg+scraps")).await;
    assert_eq!(status, 200);
    assert!(!first.is_empty());
    // It did not hear us: the same call, the same answer.
    assert_eq!(get(&call("1", "fed+3+kg+scraps")).await, (200, first.clone()));
    let (_, second) = get(&call("2", "how+much+can+I+feed%3F")).await;
    assert!(!second.is_empty() && second != first, "{second}");
    let (_, alarm) = get(&call("3", "strong+gas+smell+in+the+kitchen")).await;
    assert_ne!(alarm, second);
    assert_eq!(get(&call("1", "x").replace("sesame", "simsim")).await.0, 401);
    assert!(network.taken().is_empty(), "nothing of it goes out elsewhere");
}

#[tokio::test(flavor = "multi_thread")]
async fn an_answer_in_a_response_is_written_as_xml_or_json_asks() {
    let check = async |write_as: &str, body: &str, holds: &str| {
        let network = Network::start(|_, _| Does::Takes).await;
        let profile = format!(
            "about = \"made\"\n[in]\nbody = \"query\"\nid = \"id\"\nfrom = \"from\"\ntext = \"text\"\n\
             answer = {{ status = 200 }}\nsignature = {{ scheme = \"token\", at = \"query:key\" }}\n\
             [out.in_response]\nwithin_ms = 8000\ncontent_type = \"x/y\"\nwrite_as = \"{write_as}\"\nbody = '{body}'\n"
        );
        let server = server(&network, &profile, &[("secret", "s")]);
        let url = format!("{}/in/made?key=s&id=1&from=%2B15550100&text=hello", server.url);
        let response = client().get(&url).send().await.expect("an answer");
        assert_eq!(response.headers()["content-type"], "x/y");
        let said = response.text().await.expect("text");
        assert!(said.starts_with(holds) && said.len() > holds.len() + 20, "{said}");
    };
    check("xml", "<Response><Message>{text}</Message></Response>", "<Response><Message>").await;
    check("json", r#"{"to":{to},"text":{text}}"#, r#"{"to":"+15550100","text":""#).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn the_networks_own_word_of_opt_out_stops_all() {
    let network = Network::start(|_, _| Does::Takes).await;
    let profile = "about = \"made\"\nstop_words = [\"WEGDAMIT\"]\n[in]\nbody = \"query\"\nid = \"id\"\n\
                   from = \"from\"\ntext = \"text\"\nanswer = { status = 200 }\n\
                   signature = { scheme = \"token\", at = \"query:key\" }\n\
                   [out.in_response]\nwithin_ms = 3000\ncontent_type = \"text/plain\"\nbody = \"{text}\"\n";
    let server = server(&network, profile, &[("secret", "s")]);
    let call = |id: &str, text: &str| format!("{}/in/made?key=s&id={id}&from=%2B15550100&text={text}", server.url);
    assert!(get(&call("1", "fed+3+kg+scraps")).await.1.len() > 20);
    let (_, stopped) = get(&call("2", "wegdamit+")).await;
    assert!(stopped.contains("START"), "{stopped}");
    assert_eq!(get(&call("3", "fed+2+kg+scraps")).await, (200, String::new()), "nothing but START and HELP");
    assert!(get(&call("4", "START")).await.1.len() > 10);
}

#[tokio::test(flavor = "multi_thread")]
async fn texts_leave_no_faster_than_the_gateway_allows() {
    let network = Network::start(|_, _| Does::Takes).await;
    let profile = "about = \"made\"\n[in]\nbody = \"query\"\nid = \"id\"\nfrom = \"from\"\ntext = \"text\"\n\
                   answer = { status = 200 }\nsignature = { scheme = \"token\", at = \"query:key\" }\n\
                   [out]\nrate_per_s = 5.0\n[out.call]\nurl = \"{send_url}\"\n\
                   json = '{\"id\":{id},\"to\":{to},\"text\":{text}}'\n";
    let server = server(&network, profile, &[("secret", "s"), ("send_url", &network.send_url)]);
    for n in 0..8 {
        let url = format!("{}/in/made?key=s&id=1&from=%2B1555010{n}&text=hello", server.url);
        assert_eq!(get(&url).await.0, 200);
    }
    let all = network.until(SOON, |all| all.len() >= 8).await;
    assert_eq!(all.len(), 8);
    let took = all[7].at - all[0].at;
    // Seven gaps of 200 ms, less what two calls' ways may differ.
    assert!(took >= Duration::from_millis(1250), "{took:?}");
}
