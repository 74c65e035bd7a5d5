//! Photos of a visit: sent with its form, made anew, seen by who may see the household, gone when it is forgotten.

use crate::access::{login, node};
use crate::work::{Browser, household};
use bellyful::household::{Decision, Sender};
use bellyful::pages::visit::Errand;
use bellyful::store::{Cause, Size, Wanted};
use bellyful_tests::network::client_without_redirects as client;
use bellyful_tests::stores::on_each_store;
use chrono::Utc;

/// A PNG of one red dot. Written by hand: PNG (ISO/IEC 15948).
const DOT: &str = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==";

fn dot() -> Vec<u8> {
    use base64::Engine;
    base64::engine::general_purpose::STANDARD.decode(DOT).expect("base64")
}

impl Browser {
    /// Sends the visit's form as a browser does, with files.
    async fn visit(&self, typed: &[(&str, &str)], photos: &[&[u8]]) -> (u16, String) {
        let mut body = vec![];
        for (name, value) in typed {
            let part = format!("--line\r\nContent-Disposition: form-data; name=\"{name}\"\r\n\r\n{value}\r\n");
            body.extend(part.into_bytes());
        }
        for photo in photos {
            let head = "--line\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"../x.jpg\"\r\n\
                        Content-Type: image/jpeg\r\n\r\n";
            body.extend(head.as_bytes());
            body.extend(*photo);
            body.extend(b"\r\n");
        }
        body.extend(b"--line--\r\n");
        let call = client().post(format!("{}/household/1/visit", self.url)).header("cookie", &self.cookie);
        let call = call.header("content-type", "multipart/form-data; boundary=line").body(body);
        let response = call.send().await.expect("answers");
        (response.status().as_u16(), response.text().await.expect("text"))
    }

    async fn photo(&self, path: &str) -> (u16, String, Vec<u8>) {
        let call = client().get(format!("{}{path}", self.url)).header("cookie", &self.cookie);
        let response = call.send().await.expect("answers");
        let kind = response.headers().get("content-type").map(|kind| kind.to_str().expect("text").to_owned());
        let status = response.status().as_u16();
        (status, kind.unwrap_or_default(), response.bytes().await.expect("bytes").to_vec())
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn photos_come_with_a_visit_and_are_seen_beside_it() {
    let (node, url) = node().await;
    household(&node.store).await;
    let as_role =
        async |role: &str| Browser { url: url.clone(), cookie: login(&url, role, "right").await.expect("in") };
    let (field, viewer) = (as_role("field").await, as_role("viewer").await);
    let form = field.get("/household/1/visit").await;
    assert!(form.contains("multipart/form-data") && form.contains("type=\"file\""), "{form}");

    // What is no photo, too many or too big, is a sentence, and nothing of the visit is kept.
    let errand = [("errand", "fault"), ("valve", "good")];
    let big = vec![0_u8; 13 * 1024 * 1024];
    let four: Vec<&[u8]> = vec![b"x"; 5];
    for (photos, said) in [
        (vec![&b"<svg onload=alert(1)>"[..]], "must be JPEG, PNG or WebP"),
        (vec![&dot()[..40]], "damaged"),
        (vec![&big[..]], "at most 12 MB"),
        (four, "at most 4 photos"),
    ] {
        let (status, told) = field.visit(&errand, &photos).await;
        assert!(status == 422 && told.contains(said), "{said}: {status} {told}");
    }
    assert!(node.store.visits(1, 9).await.expect("read").is_empty());

    // A visit with two photos and one file left empty.
    assert_eq!(field.visit(&errand, &[&dot(), &dot(), b""]).await.0, 303);
    let visits = node.store.visits(1, 9).await.expect("read");
    let [first, second] = visits[0].photos[..] else { panic!("two photos: {visits:?}") };
    let page = viewer.get("/household/1").await;
    assert!(page.contains(&format!("/household/1/photo/{first}?small=true")), "{page}");
    assert!(!page.contains("/remove"), "a viewer takes nothing away");
    for path in [format!("/household/1/photo/{first}"), format!("/household/1/photo/{first}?small=true")] {
        let (status, kind, bytes) = viewer.photo(&path).await;
        assert_eq!((status, kind.as_str(), &bytes[..2]), (200, "image/jpeg", &[0xff, 0xd8][..]), "{path}");
    }
    // Only under its own household, and only for who is logged in.
    assert_eq!(viewer.photo(&format!("/household/2/photo/{first}")).await.0, 404);
    let stranger = Browser { url: url.clone(), cookie: String::new() };
    assert_eq!(stranger.photo(&format!("/household/1/photo/{first}")).await.0, 303);

    assert_eq!(field.post(&format!("/household/1/photo/{second}/remove"), &[]).await.0, 303);
    assert_eq!(field.photo(&format!("/household/1/photo/{second}")).await.0, 404);
    assert_eq!(field.post(&format!("/household/1/photo/{second}/remove"), &[]).await.0, 404);
    assert!(field.get("/household/1").await.contains("field took a photo away"));
    // A form without files, as before.
    assert_eq!(field.post("/household/1/visit", &[("errand", "fault"), ("valve", "bad")]).await.0, 303);
}

#[tokio::test(flavor = "multi_thread")]
async fn photos_outlive_a_move_to_another_database_and_are_erased_with_their_household() {
    on_each_store(async |store| {
        household(&store).await;
        let visit = bellyful::store::Visit {
            at: Utc::now(),
            day: bellyful_core::units::Day(0),
            kind: Errand::Fault,
            staff: "Asha".into(),
            found: [("valve".to_owned(), true)].into(),
            note: String::new(),
            photos: vec![],
        };
        let photo = bellyful::photo::made_anew(&dot()).expect("a photo");
        store.keep_visit(1, &visit, vec![photo.clone(), photo.clone()]).await.expect("kept");
        let ids = store.visits(1, 9).await.expect("read").remove(0).photos;
        assert_eq!(ids.len(), 2);
        assert_eq!(store.photo(1, ids[0], Size::Whole).await.expect("read"), Some(photo.whole.clone()));
        assert_eq!(store.photo(1, ids[1], Size::Small).await.expect("read"), Some(photo.small.clone()));
        assert_eq!(store.photo(2, ids[0], Size::Whole).await.expect("read"), None);

        let mut copy = vec![];
        store.dump(&mut copy).await.expect("copied");
        let other = bellyful::store::Store::in_memory().await.expect("a store");
        other.take_in(copy.as_slice()).await.expect("taken in");
        assert_eq!(other.photo(1, ids[0], Size::Whole).await.expect("read"), Some(photo.whole.clone()));

        let sender = Sender::Family { household: 1, stopped: false };
        let situation = store.situation(&sender, Wanted::default()).await.expect("read");
        let forget = Decision { household: situation.household.clone(), forget: true, ..Decision::default() };
        store.keep(Cause::Hand, &situation, forget, Utc::now()).await.expect("forgotten");
        for id in ids {
            assert_eq!(store.photo(1, id, Size::Whole).await.expect("read"), None);
        }
    })
    .await;
}
