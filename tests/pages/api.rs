//! JSON for programmes: only with a token, names only with the scope for them, numbers and texts never.

use crate::access::{login, node};
use crate::work::{Browser, household};
use bellyful::api::Scope;
use bellyful::household::Decision;
use bellyful::pages::access::{Gate, TABLE};
use bellyful::store::Cause;
use bellyful_core::fact::{Fact, Unit, What};
use bellyful_core::feeds::Feed;
use bellyful_core::units::Day;
use bellyful_tests::network::client_without_redirects as client;
use chrono::Utc;
use serde_json::Value;

/// Paths that need a token, and its least scope.
fn for_machines() -> impl Iterator<Item = (&'static str, Scope)> {
    TABLE.iter().filter_map(|(path, _, gate)| match gate {
        Gate::Token(least) => Some((*path, *least)),
        _ => None,
    })
}

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
async fn a_lead_makes_a_token_on_the_page_sees_it_once_and_takes_it_back() {
    let (node, url) = node().await;
    household(&node.store).await;
    let lead = Browser { cookie: login(&url, "lead", "right").await.expect("may log in"), url: url.clone() };
    let make = |name: &'static str, scope: &'static str| [("act", "make"), ("name", name), ("scope", scope)];
    assert!(lead.get("/setup").await.contains("/setup/tokens"));
    let (status, page) = lead.post("/setup/tokens", &make("ministry <b>", "read")).await;
    let token = page.split("<code class=\"token\">").nth(1).and_then(|rest| rest.split('<').next()).expect("shown");
    assert!(status == 200 && token.len() == 48 && page.contains("ministry &#60;b&#62;"), "{page}");
    assert!(!lead.get("/setup/tokens").await.contains(token), "shown once");
    let (status, told) = get(&format!("{url}/api/households/1"), Some(token)).await;
    assert!(status == 200 && told["name"].is_null(), "{told}");
    let (_, page) = lead.post("/setup/tokens", &make("partner", "people")).await;
    let other = page.split("<code class=\"token\">").nth(1).and_then(|rest| rest.split('<').next()).expect("shown");
    assert_eq!(get(&format!("{url}/api/households/1"), Some(other)).await.1["name"], "=Lantana");
    for (wrong, said) in [
        (make("", "read"), "1 to 40 letters"),
        (make("third", "all"), "Choose one of those"),
        (make("partner", "read"), "There is a token for partner already"),
        ([("act", "remove"), ("name", "nobody"), ("scope", "")], "There is no token for nobody"),
        ([("act", "burn"), ("name", "partner"), ("scope", "")], "Choose one of those"),
    ] {
        let (status, told) = lead.post("/setup/tokens", &wrong).await;
        assert!(status == 422 && told.contains(said), "{wrong:?}: {status} {told}");
    }
    assert_eq!(node.store.tokens().await.expect("read").len(), 2);
    let (status, page) = lead.post("/setup/tokens", &[("act", "remove"), ("name", "ministry <b>")]).await;
    assert!(status == 200 && page.contains("opens nothing any more"), "{page}");
    assert_eq!(get(&format!("{url}/api/households/1"), Some(token)).await.0, 401);
}

#[tokio::test(flavor = "multi_thread")]
async fn programmes_read_what_their_token_allows_page_by_page() {
    let (node, url) = node().await;
    household(&node.store).await;
    node.store.add_token("ministry", "t-read", "read", Utc::now()).await.expect("kept");
    node.store.add_token("partner", "t-people", "people", Utc::now()).await.expect("kept");
    for path in for_machines().map(|(path, _)| path) {
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

#[tokio::test(flavor = "multi_thread")]
async fn each_route_for_machines_refuses_each_lesser_scope() {
    let (node, url) = node().await;
    household(&node.store).await;
    for scope in Scope::ALL {
        node.store.add_token(scope.id(), scope.id(), scope.id(), Utc::now()).await.expect("kept");
    }
    for (path, least) in for_machines() {
        let at = format!("{url}{}", path.replace("{id}", "1"));
        assert_eq!(get(&at, None).await.0, 401, "{path}");
        for scope in Scope::ALL {
            let status = get(&at, Some(scope.id())).await.0;
            assert_eq!(status, if *scope >= least { 200 } else { 403 }, "{path} with {scope}");
        }
    }
    // A log-in of staff is no token.
    let cookie = crate::access::login(&url, "lead", "right").await.expect("may log in");
    let call = client().get(format!("{url}/api/households")).header("cookie", cookie);
    assert_eq!(call.send().await.expect("answers").status(), 401);
}

/// Whether an answer has what its schema requires and nothing that it does not name; how many objects were looked at.
fn check(described: &Value, schema: &Value, answer: &Value, path: &str) -> usize {
    let schema = match schema["$ref"].as_str() {
        Some(at) => described.pointer(at.trim_start_matches('#')).unwrap_or_else(|| panic!("{path}: no {at}")),
        None => schema,
    };
    if let Some(one) = schema["oneOf"].as_array() {
        return if answer.is_null() { 0 } else { check(described, &one[0], answer, path) };
    }
    match answer {
        Value::Object(fields) => {
            let known = schema["properties"].as_object().unwrap_or_else(|| panic!("{path}: {answer} is not described"));
            for required in schema["required"].as_array().into_iter().flatten() {
                let required = required.as_str().expect("a name");
                assert!(fields.contains_key(required), "{path}: {required} is missing in {answer}");
            }
            let more = schema["additionalProperties"] == true;
            let looked = fields.iter().map(|(name, value)| match known.get(name) {
                Some(schema) => check(described, schema, value, path),
                None => {
                    assert!(more, "{path}: {name} is not described");
                    0
                }
            });
            1 + looked.sum::<usize>()
        }
        Value::Array(items) => items.iter().map(|item| check(described, &schema["items"], item, path)).sum(),
        _ => 0,
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_described_is_what_is_served() {
    let (node, url) = node().await;
    household(&node.store).await;
    node.store.add_token("all", "t-people", "people", Utc::now()).await.expect("kept");
    let described = get(&format!("{url}/api/openapi.json"), None).await.1;
    let mut paths: Vec<&str> = described["paths"].as_object().expect("paths").keys().map(String::as_str).collect();
    let mut routes: Vec<&str> =
        TABLE.iter().map(|(path, _, _)| *path).filter(|path| path.starts_with("/api/")).collect();
    paths.sort_unstable();
    routes.sort_unstable();
    assert_eq!(paths, routes);
    for (path, operations) in described["paths"].as_object().expect("paths") {
        let get_only: Vec<&str> = operations.as_object().expect("operations").keys().map(String::as_str).collect();
        assert_eq!(get_only, ["get"], "{path}");
        let operation = &operations["get"];
        assert_eq!(operation["security"].is_array(), for_machines().any(|(guarded, _)| guarded == path), "{path}");
        let at = format!("{url}{}", path.replace("{id}", "1"));
        let (status, answer) = get(&at, Some("t-people")).await;
        assert_eq!(status, 200, "{path}: {answer}");
        let schema = &operation["responses"]["200"]["content"]["application/json"]["schema"];
        if path != "/api/openapi.json" {
            assert!(check(&described, schema, &answer, path) > 0, "{path}");
        }
        // Every word of a query that is described is looked at: nonsense for it is refused in a sentence.
        for parameter in operation["parameters"].as_array().into_iter().flatten().filter(|p| p["in"] == "query") {
            let name = parameter["name"].as_str().expect("a name");
            if parameter["schema"]["type"] == "string" && parameter["schema"]["format"].is_null() {
                continue;
            }
            let (status, told) = get(&format!("{at}?{name}=nonsense"), Some("t-people")).await;
            assert!(status == 400 && told["error"].is_string(), "{path}?{name}: {status} {told}");
        }
        let posted = client().post(&at).bearer_auth("t-people").send().await.expect("answers").status().as_u16();
        assert!([403, 404, 405].contains(&posted), "{path} takes a POST: {posted}");
    }
    assert_eq!(client().get(format!("{url}/api/nothing")).send().await.expect("answers").status(), 404);
}

#[tokio::test(flavor = "multi_thread")]
async fn days_advice_and_months_come_page_by_page() {
    let (node, url) = node().await;
    household(&node.store).await;
    node.store.add_token("all", "t", "read", Utc::now()).await.expect("kept");
    let (_, all) = get(&format!("{url}/api/households/1/series"), Some("t")).await;
    let days = all["days"].as_array().expect("days").clone();
    let last = days.last().expect("today");
    assert_eq!((last["fed_kg"].as_f64(), last["cooked_min"].as_f64()), (Some(3.0), Some(60.0)), "{last}");
    assert!(last["olr"].as_f64().is_some_and(|olr| olr > 0.0), "{last}");
    assert!(all["next"].is_null());
    // A meal told four days late: five days, each once, two a page.
    let situation = node.store.situation_of(1).await.expect("read");
    let mut household = situation.household.clone().expect("there");
    let what = What::Fed { feed: Feed::CattleManure, amount: Some(2.0), unit: Some(Unit::Kg) };
    let today = Utc::now().date_naive().signed_duration_since(chrono::NaiveDate::default()).num_days() as i32;
    let fact = Fact { id: household.next_fact, day: Day(today - 4), told_at: Utc::now().timestamp(), what };
    household.next_fact += 1;
    let decision = Decision { household: Some(household), facts: vec![fact], ..Decision::default() };
    node.store.keep(Cause::Hand, &situation, decision, Utc::now()).await.expect("kept");
    let (mut told, mut after) = (vec![], String::new());
    loop {
        let (_, page) = get(&format!("{url}/api/households/1/series?most=2{after}"), Some("t")).await;
        told.extend(page["days"].as_array().expect("days").clone());
        match page["next"].as_str() {
            Some(next) => after = format!("&after={next}"),
            None => break,
        }
    }
    let fed: Vec<Option<f64>> = told.iter().map(|day| day["fed_kg"].as_f64()).collect();
    assert_eq!(fed, [Some(2.0), None, None, None, Some(3.0)], "{told:?}");
    let (_, none) = get(&format!("{url}/api/households/1/series?after=2999-01-01"), Some("t")).await;
    assert_eq!(none["days"], Value::Array(vec![]));

    // Three texts are answered, each with advice; pages of two tell each once.
    for (n, text) in ["fed 1 kg rice", "gas is low", "how much can I feed"].iter().enumerate() {
        let inbound = bellyful::message::Inbound {
            gateway: "plain".into(),
            id: n.to_string(),
            from: "+99900000777".into(),
            to: None,
            text: (*text).into(),
            sent_at: Utc::now(),
            received_at: Utc::now(),
        };
        node.store.accept(&[bellyful::store::Arrival { inbound, alarm: None }]).await.expect("kept");
    }
    let mut told: Vec<Value> = vec![];
    for _ in 0..200 {
        told.clear();
        let mut after = 0;
        loop {
            let (_, page) = get(&format!("{url}/api/households/1/advice?most=2&after={after}"), Some("t")).await;
            told.extend(page["advice"].as_array().expect("advice").clone());
            match page["next"].as_i64() {
                Some(next) => after = next,
                None => break,
            }
        }
        if told.len() >= 3 {
            break;
        }
        tokio::time::sleep(std::time::Duration::from_millis(100)).await;
    }
    assert_eq!(told.len(), 3, "{told:?}");
    let ids: Vec<i64> = told.iter().filter_map(|advised| advised["id"].as_i64()).collect();
    assert!(ids.windows(2).all(|two| two[0] < two[1]), "{ids:?}");
    assert!(told.iter().all(|advised| advised["advice"]["ration_kg"].is_number()), "{told:?}");

    let (_, months) = get(&format!("{url}/api/programme?fuel=lpg&months=1"), Some("t")).await;
    let month = &months["months"][0];
    assert_eq!((month["biogas_m3"].as_f64(), month["spared_fuel"].as_str()), (Some(0.3), Some("lpg")), "{months}");
    assert!(month["name"].is_null());
}
