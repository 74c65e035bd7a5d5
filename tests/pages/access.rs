//! Every route of the table refuses each lesser role, and nobody gets in without a log-in.

use bellyful::app::Node;
use bellyful::config::Config;
use bellyful::mind::Mind;
use bellyful::pages::access::{Gate, Role, TABLE};
use bellyful::pages::{Pages, hash, routes};
use bellyful::store::{NewStaff, Store};
use bellyful_tests::network::client_without_redirects;
use std::sync::Arc;

const ROLES: [(&str, Role); 3] = [("viewer", Role::Viewer), ("field", Role::Field), ("lead", Role::Lead)];

pub async fn node() -> (Node, String) {
    let store = Store::in_memory().await.expect("a store");
    for (role, _) in ROLES {
        let staff = NewStaff {
            name: role.into(),
            phone: None,
            gateway: None,
            lang: "en".into(),
            role: role.into(),
            password_hash: Some(hash("right").expect("randomness")),
        };
        store.add_staff(&staff).await.expect("added");
    }
    let settings = [
        ("BELLYFUL__LISTEN", "127.0.0.1:0"),
        ("BELLYFUL__GATEWAY__PLAIN__SECRET", "s"),
        ("BELLYFUL__GATEWAY__PLAIN__SEND_URL", "http://127.0.0.1:1/"),
    ];
    let config = Config::read(None, settings.map(|(key, value)| (key.to_owned(), value.to_owned())).into_iter());
    let mind = Arc::new(Mind::new(None, 1).expect("sound words"));
    let pages = Pages::new(store.clone(), mind.clone(), bellyful::jobs::machine_clock(), false)
        .with_gateways(["plain".to_owned()]);
    let node = Node::start(&config.expect("sound"), store, mind, Some(routes(Arc::new(pages)))).await.expect("starts");
    let url = format!("http://{}", node.address);
    (node, url)
}

/// The session cookie of who logs in.
pub async fn login(url: &str, name: &str, password: &str) -> Option<String> {
    let form = [("name", name), ("password", password)];
    let response = client_without_redirects().post(format!("{url}/login")).form(&form).send().await.expect("answers");
    let cookie = response.headers().get("set-cookie")?.to_str().ok()?.to_owned();
    assert!(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), "{cookie}");
    cookie.split(';').next().map(str::to_owned)
}

#[tokio::test(flavor = "multi_thread")]
async fn each_route_refuses_each_lesser_role() {
    let (_node, url) = node().await;
    assert_eq!(login(&url, "lead", "wrong").await, None);
    let mut checked = 0;
    for (path, method, gate) in TABLE {
        let least = match gate {
            Gate::Open => None,
            Gate::Staff(least) => Some(least),
            // Machines' routes: `api::each_route_for_machines_refuses_each_lesser_scope`.
            Gate::Token(_) => continue,
        };
        let at = format!("{url}{}", path.replace("{id}", "1").replace("{photo}", "1"));
        let call = |cookie: Option<&str>| {
            let request = client_without_redirects().request(method.clone(), &at).form(&[("note", "x")]);
            match cookie {
                Some(cookie) => request.header("cookie", cookie),
                None => request,
            }
        };
        let nobody = call(None).send().await.expect("answers");
        assert_eq!(
            nobody.status().as_u16() == 303 && nobody.headers()["location"] == "/login",
            least.is_some(),
            "{path}"
        );
        for (name, role) in ROLES {
            let cookie = login(&url, name, "right").await.expect("may log in");
            let status = call(Some(&cookie)).send().await.expect("answers").status().as_u16();
            let may = least.is_none_or(|least| role >= least);
            assert_eq!(status == 403, !may, "{method} {path} as {name}: {status}");
            checked += 1;
        }
    }
    let of_pages = TABLE.iter().filter(|(_, _, gate)| !matches!(gate, Gate::Token(_))).count();
    assert_eq!(checked, of_pages * ROLES.len());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_form_from_elsewhere_is_refused() {
    let (_node, url) = node().await;
    let cookie = login(&url, "lead", "right").await.expect("may log in");
    let post = |site: &'static str| {
        client_without_redirects()
            .post(format!("{url}/logout"))
            .header("cookie", &cookie)
            .header("sec-fetch-site", site)
    };
    assert_eq!(post("cross-site").send().await.expect("answers").status(), 403);
    assert_eq!(post("same-origin").send().await.expect("answers").status(), 303);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_path_that_leads_nowhere_is_a_page_in_the_readers_language() {
    let (node, url) = node().await;
    let reader = NewStaff {
        name: "asha".into(),
        phone: None,
        gateway: None,
        lang: "fr".into(),
        role: "viewer".into(),
        password_hash: Some(hash("right").expect("randomness")),
    };
    node.store.add_staff(&reader).await.expect("added");
    let cookie = login(&url, "asha", "right").await.expect("may log in");
    // The last is there for another method only.
    for path in ["/nowhere", "/household/1/nowhere", "/logout"] {
        for (cookie, accepted, lang, said) in
            [("", "sw", "sw", "Hakuna ukurasa kama huo"), (cookie.as_str(), "sw", "fr", "existe pas.")]
        {
            let call = client_without_redirects().get(format!("{url}{path}"));
            let response = call.header("cookie", cookie).header("accept-language", accepted).send().await;
            let response = response.expect("answers");
            assert_eq!(response.status(), 404, "{path}");
            assert!(response.headers().contains_key("content-security-policy"), "{path}");
            let page = response.text().await.expect("text");
            assert!(page.contains(&format!("<html lang=\"{lang}\">")) && page.contains(said), "{path}: {page}");
        }
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_session_ends_with_the_log_out() {
    let (_node, url) = node().await;
    let cookie = login(&url, "field", "right").await.expect("may log in");
    let get = || client_without_redirects().get(&url).header("cookie", &cookie).send();
    assert_eq!(get().await.expect("answers").status(), 200);
    let out = client_without_redirects().post(format!("{url}/logout")).header("cookie", &cookie);
    out.send().await.expect("answers");
    assert_eq!(get().await.expect("answers").status(), 303);
}

#[tokio::test(flavor = "multi_thread")]
async fn who_is_given_a_lesser_role_or_taken_off_feels_it_at_the_next_click() {
    let (node, url) = node().await;
    let cookie = login(&url, "lead", "right").await.expect("may log in");
    let status = async |path: &str| {
        let call = client_without_redirects().get(format!("{url}{path}")).header("cookie", &cookie);
        call.send().await.expect("answers").status().as_u16()
    };
    assert_eq!(status("/setup").await, 200);
    let lesser = NewStaff {
        name: "lead".into(),
        phone: None,
        gateway: None,
        lang: "en".into(),
        role: "viewer".into(),
        password_hash: None,
    };
    node.store.add_staff(&lesser).await.expect("changed");
    assert_eq!((status("/setup").await, status("/").await), (403, 200));
    node.store.remove_staff("lead").await.expect("removed");
    assert_eq!(status("/").await, 303);
}
