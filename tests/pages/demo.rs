//! The demo as a process: ready at once, history lived in the background, a phone that answers, staff pages.

use bellyful_tests::network::client_without_redirects as client;
use bellyful_tests::server::program;
use std::io::{BufRead, BufReader};
use std::process::{Child, Command, Stdio};
use std::time::Duration;

struct Demo {
    child: Child,
    url: String,
    staff: (String, String),
}

impl Demo {
    fn start() -> Demo {
        let mut child = Command::new(program())
            .args(["demo", "--listen", "127.0.0.1:0"])
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("starts");
        let mut said = BufReader::new(child.stdout.take().expect("piped")).lines().map(|line| line.expect("text"));
        let ready = said.next().expect("says where it is");
        let staff = said.next().expect("says how to log in");
        let url = ready.strip_prefix("ready ").expect("`ready URL`").to_owned();
        let mut words = staff.strip_prefix("staff ").expect("`staff USER PASSWORD`").split(' ').map(str::to_owned);
        let staff = (words.next().expect("a user"), words.next().expect("a password"));
        Demo { child, url, staff }
    }

    async fn page(&self, path: &str, cookie: &str) -> String {
        let response =
            client().get(format!("{}{path}", self.url)).header("cookie", cookie).send().await.expect("answers");
        assert_eq!(response.status(), 200, "{path}");
        let csp = response.headers()["content-security-policy"].to_str().expect("text").to_owned();
        assert!(
            csp.contains("default-src 'none'") && csp.contains("script-src 'self';") && !csp.contains("unsafe"),
            "{csp}"
        );
        let html = response.text().await.expect("text");
        assert!(html.len() < 100_000, "{path} is {} bytes", html.len());
        // The one script there is, from here, is gone before what else there may be is looked for.
        let html_alone = html.replace("<script src=\"/read-off.js\" defer></script>", "");
        let outside = ["src=\"http", "href=\"http", "<script", "style=\"", "@import"];
        assert!(!outside.iter().any(|sign| html_alone.contains(sign)), "{path} reaches outside or carries scripts");
        html
    }

    async fn post(&self, path: &str, form: &[(&str, &str)]) -> reqwest::Response {
        client().post(format!("{}{path}", self.url)).form(form).send().await.expect("answers")
    }

    async fn whole(&self) {
        for _ in 0..600 {
            if self.page("/try", "").await.contains("Let a day go by") {
                return;
            }
            tokio::time::sleep(Duration::from_millis(500)).await;
        }
        panic!("the history was not whole after five minutes");
    }
}

impl Drop for Demo {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_phone_on_a_page_answers_and_staff_see_every_story() {
    let demo = Demo::start();
    let screen = demo.page("/try", "").await;
    assert!(screen.contains("Biogas burns") && screen.contains("Local codes and licensed fitters come first"));
    // A new family may text while the others' history is still being lived.
    let new = demo.post("/try/new", &[]).await;
    let at = new.headers()["location"].to_str().expect("text").to_owned();
    let number = at.split("phone=%2B").nth(1).and_then(|rest| rest.split('#').next()).expect("a number").to_owned();
    let number = format!("+{number}");
    demo.post("/try/text", &[("phone", &number), ("text", "hello, <b>fed 2 kg rice</b>")]).await;
    let screen = demo.page(&format!("/try?phone=%2B{}", &number[1..]), "").await;
    assert!(screen.contains("I am Bellyful") && screen.contains("2 segments"), "{screen}");
    assert!(screen.contains("&#60;b&#62;") && !screen.contains("<b>fed"), "what they write is never markup");
    demo.whole().await;
    demo.post("/try/text", &[("phone", "+99900000101"), ("text", "fed 2 kg scraps 4 L water")]).await;
    let screen = demo.page("/try?phone=%2B99900000101", "").await;
    assert!(screen.contains("Noted: 2 kg scraps, 4 L water") && screen.contains("1 segment,"), "{screen}");
    demo.post("/try/day", &[("phone", "+99900000101")]).await;
    demo.post("/try/text", &[("phone", "+99900000102"), ("text", "strong gas smell in kitchen")]).await;
    let (user, password) = &demo.staff;
    let entered = demo.post("/login", &[("name", user), ("password", password)]).await;
    let cookie = entered.headers()["set-cookie"].to_str().expect("text").split(';').next().expect("one").to_owned();
    let today = demo.page("/", &cookie).await;
    for name in ["Otelo", "Mirembo", "Askari", "Tandeka", "Lumo", "Pirot", "Salvera", "Nyoka"] {
        assert!(today.contains(name), "{name} is on the page of today");
    }
    let alarmed = demo.page("/household/2", &cookie).await;
    assert!(alarmed.contains("Everyone out now!"), "what was answered on receipt is part of the story");
    for id in 1..=8 {
        let story = demo.page(&format!("/household/{id}"), &cookie).await;
        assert!(story.contains("<svg") && story.contains("Fed, kg a day") && story.contains("Conversation"));
    }
}

#[test]
fn an_address_in_use_is_one_sentence_and_exit_1() {
    let taken = std::net::TcpListener::bind("127.0.0.1:0").expect("loopback");
    let address = taken.local_addr().expect("bound").to_string();
    let output = Command::new(program()).args(["demo", "--listen", &address]).output().expect("runs");
    let said = String::from_utf8_lossy(&output.stderr);
    assert_eq!(output.status.code(), Some(1), "{said}");
    assert!(said.contains(&address) && said.trim().lines().count() == 1, "{said}");
}
