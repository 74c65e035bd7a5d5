//! JSON for programmes: only with a token, names only with the scope for them, numbers and texts never.

use crate::access::node;
use crate::work::household;
use bellyful::api::PATHS;
use bellyful_tests::network::client_without_redirects as client;
use chrono::Utc;
use serde_json::Value;

async fn get(url: &str, token: Option<&str>) -> (u16, Value) {
    let call = client().get(url);
    let call = match token {
        Some(token) => call.bearer_auth(token),
        None => call,
    };
    let response = call.send().await.expect("answers");
    (response.status().as_u16(), response.json().await.expect("JSON"))
}

#[tokio::test(flavor = "multi_thread")]
async fn programmes_read_what_their_token_allows_page_by_page() {
    let (node, url) = node().await;
    household(&node.store).await;
    node.store.add_token("ministry", "t-read", "read", Utc::now()).await.expect("kept");
    node.store.add_token("partner", "t-people", "people", Utc::now()).await.expect("kept");
    for path in PATHS {
        let path = format!("{url}{}", path.replace("{id}", "1"));
        for token in [None, Some("t-wrong"), Some("")] {
            let (status, told) = get(&path, token).await;
            assert!(status == 401 && told["error"].is_string(), "{path} {token:?}: {status} {told}");
        }
        let (status, told) = get(&path, Some("t-read")).await;
        let told = told.to_string();
        assert!(status == 200 && !told.contains("Lantana") && !told.contains("+999"), "{path}: {told}");
    }
    let (_, seen) = get(&format!("{url}/api/households/1"), Some("t-people")).await;
    assert_eq!((seen["name"].as_str(), seen["id"].as_i64()), (Some("=Lantana"), Some(1)));
    assert_eq!(get(&format!("{url}/api/households/9"), Some("t-read")).await.0, 404);
    for bad in
        ["/api/households?most=-1", "/api/households?after=x", "/api/households/x", "/api/households/1/facts?most=x"]
    {
        let (status, told) = get(&format!("{url}{bad}"), Some("t-read")).await;
        assert!(status == 400 && told["error"].is_string(), "{bad}: {status} {told}");
    }

    let all = node.store.facts(1).await.expect("read").len();
    let (mut after, mut told) = (0, vec![]);
    loop {
        let (_, page) = get(&format!("{url}/api/households/1/facts?most=2&after={after}"), Some("t-people")).await;
        told.extend(page["facts"].as_array().expect("facts").clone());
        match page["next"].as_i64() {
            Some(next) => after = next,
            None => break,
        }
    }
    assert_eq!(told.len(), all);
    assert!(told.iter().any(|fact| fact["fact"] == "fed" && fact["amount"] == 3.0), "{told:?}");
    assert!(node.store.remove_token("ministry").await.expect("removed"));
    assert_eq!(get(&format!("{url}/api/households"), Some("t-read")).await.0, 401);
    assert_eq!(get(&format!("{url}/api/openapi.json"), None).await.1["openapi"], "3.1.0");
}
