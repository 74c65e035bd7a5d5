//! Pages and the machine's way in: any path, query and form by somebody logged in, or with a token.

use axum::Router;
use axum::body::Body;
use axum::http::{Method, Request, StatusCode, header};
use bellyful::mind::Mind;
use bellyful::pages::access::TABLE;
use bellyful::pages::{self, Pages};
use bellyful::store::{NewStaff, Store};
use std::sync::{Arc, LazyLock};
use tokio::runtime::Runtime;
use tower::ServiceExt;

struct Site {
    runtime: Runtime,
    routes: Router,
    cookie: String,
}

/// One household, one lead who is logged in, one token.
static SITE: LazyLock<Site> = LazyLock::new(|| {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
    let (routes, cookie) = runtime.block_on(async {
        let store = Store::in_memory().await.expect("a store in memory");
        let lead = NewStaff {
            name: "Asha".into(),
            phone: None,
            gateway: None,
            lang: "en".into(),
            role: "lead".into(),
            password_hash: Some(pages::hash("sesame").expect("hashes")),
        };
        store.add_staff(&lead).await.expect("kept");
        let now = super::now();
        store.add_token("partner", "sesame", "people", now).await.expect("kept");
        let mind = Arc::new(Mind::new(None, 1).expect("the words are sound"));
        let pages = Pages::new(store, mind, Arc::new(move || now), false).with_gateways(["plain".to_owned()]);
        let routes = pages::routes(Arc::new(pages));
        let form = Body::from("name=Asha&password=sesame");
        let entered = routes.clone().oneshot(call(Method::POST, "/login", "", form)).await.expect("never fails");
        let cookie = entered.headers().get(header::SET_COOKIE).expect("she is let in").to_str().expect("plain");
        let cookie = cookie.split(';').next().expect("its value").to_owned();
        let form = "name=Lantana&phone=%2B15550100&gateway=plain&lang=en&place=Kisumu&tank_l=1000&liquid_l=&store_l=&walls=&agreed=yes";
        let made = routes.clone().oneshot(call(Method::POST, "/setup/household", &cookie, Body::from(form))).await;
        assert!(made.is_ok_and(|made| made.status().is_redirection()), "the sample household is taken");
        (routes, cookie)
    });
    Site { runtime, routes, cookie }
});

fn call(method: Method, path: &str, cookie: &str, body: Body) -> Request<Body> {
    typed("application/x-www-form-urlencoded", method, path, cookie, body)
}

fn typed(kind: &str, method: Method, path: &str, cookie: &str, body: Body) -> Request<Body> {
    Request::builder()
        .method(method)
        .uri(path)
        .header(header::CONTENT_TYPE, kind)
        .header(header::COOKIE, cookie)
        .header(header::AUTHORIZATION, "Bearer sesame")
        .body(body)
        .expect("paths are checked before")
}

/// Page by the first byte; then what stands for `{id}`, the query and the form, parted by 0xFF.
pub fn run(bytes: &[u8]) {
    let [which, rest @ ..] = bytes else { return };
    let (path, method, _) = &TABLE[usize::from(*which) % TABLE.len()];
    if ["/login", "/logout"].contains(path) {
        return;
    }
    let mut parts = rest.splitn(3, |byte| *byte == 0xff);
    let mut part = || parts.next().unwrap_or_default();
    let plain = |bytes: &[u8]| -> String {
        bytes.iter().map(|byte| if byte.is_ascii_graphic() { *byte as char } else { '+' }).collect()
    };
    let id = plain(part()).replace(['/', '?', '#'], "");
    let uri = format!("{}?{}", path.replace("{id}", if id.is_empty() { "1" } else { &id }), plain(part()));
    if uri.parse::<axum::http::Uri>().is_err() {
        return;
    }
    let site = &*SITE;
    let request = call(method.clone(), &uri, &site.cookie, Body::from(part().to_vec()));
    let answer = site.runtime.block_on(site.routes.clone().oneshot(request)).expect("never fails");
    assert_ne!(answer.status(), StatusCode::INTERNAL_SERVER_ERROR, "{method} {uri}");
}

/// A visit's form with photos, as a browser sends it.
pub fn visit(bytes: &[u8]) {
    let site = &*SITE;
    let kind = "multipart/form-data; boundary=line";
    let request = typed(kind, Method::POST, "/household/1/visit", &site.cookie, Body::from(bytes.to_vec()));
    let answer = site.runtime.block_on(site.routes.clone().oneshot(request)).expect("never fails");
    assert_ne!(answer.status(), StatusCode::INTERNAL_SERVER_ERROR);
}

pub fn visits() -> Vec<Vec<u8>> {
    let mut photo = std::io::Cursor::new(vec![]);
    image::RgbImage::from_pixel(3, 2, image::Rgb([90, 120, 60]))
        .write_to(&mut photo, image::ImageFormat::Jpeg)
        .expect("a photo");
    let field = |name: &str, value: &str| {
        format!("--line\r\nContent-Disposition: form-data; name=\"{name}\"\r\n\r\n{value}\r\n").into_bytes()
    };
    let head = b"--line\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\nContent-Type: image/jpeg\r\n\r\n";
    let fields = [field("errand", "fault"), field("valve", "good"), field("note", "new hose")].concat();
    let whole = [&fields, &head[..], photo.get_ref(), b"\r\n--line--\r\n"].concat();
    vec![whole, [&fields, &b"--line--\r\n"[..]].concat()]
}

pub fn samples() -> Vec<Vec<u8>> {
    let forms = [
        "note=the+outlet+is+blocked",
        "name=Lantana&lang=sw&tank_l=800&place=Kisumu&staff=",
        "what=ph&value=6.8&day=2026-03-01",
        "number=%2B15550101&act=join",
        "name=Ben&phone=%2B15550900&gateway=plain&lang=en&role=field&password=longenough",
        "country=KE&number=999",
        "word=zumbulu&feed=cattle_manure&country=KE&place=",
        "days=90",
        "key=1&text=Come+on+Monday&audience=all&send=yes",
        "kind=fault&note=&valve=good&day=2026-03-01",
    ];
    let rows = 0..TABLE.len() as u8;
    rows.map(|row| {
        let form = forms[usize::from(row) % forms.len()];
        [&[row], &b"1\xffmonths=3&after=1&most=5&lang=en\xff"[..], form.as_bytes()].concat()
    })
    .collect()
}
