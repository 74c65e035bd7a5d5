//! The real Prosody, with the real server as its component, and a person with a chat account.

use crate::{Daemon, free_port, states, until_states};
use bellyful_tests::network::text_in;
use bellyful_tests::server::Setting;
use bellyful_tests::stores::{fresh_folder, fresh_urls};
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::TcpStream;
use tokio::time::timeout;

const SOON: Duration = Duration::from_secs(60);

fn prosody(folder: &Path, people: u16, components: u16) -> Daemon {
    let at = folder.display();
    let config = format!(
        "run_as_root = true\ndaemonize = false\npidfile = \"{at}/prosody.pid\"\ndata_path = \"{at}/data\"\n\
         certificates = \"{at}\"\nlog = {{ info = \"{at}/prosody.log\" }}\ninterfaces = {{ \"127.0.0.1\" }}\n\
         c2s_ports = {{ {people} }}\ns2s_ports = {{ }}\ncomponent_ports = {{ {components} }}\n\
         component_interfaces = {{ \"127.0.0.1\" }}\nhttp_ports = {{ }}\nhttps_ports = {{ }}\n\
         modules_enabled = {{ \"roster\"; \"saslauth\"; \"disco\"; \"posix\"; \"ping\"; \"offline\" }}\n\
         modules_disabled = {{ \"s2s\"; \"tls\" }}\nauthentication = \"internal_plain\"\n\
         c2s_require_encryption = false\nallow_unencrypted_plain_auth = true\nVirtualHost \"localhost\"\n\
         Component \"texts.localhost\"\ncomponent_secret = \"sesame\"\n"
    );
    let file = folder.join("prosody.cfg.lua");
    std::fs::write(&file, config).expect("written");
    std::fs::create_dir_all(folder.join("data")).expect("made");
    let file = file.display().to_string();
    let made = Command::new("prosodyctl").args(["--config", &file, "register", "amina", "localhost", "word"]).output();
    assert!(made.expect("prosodyctl runs").status.success());
    Daemon::start("prosody", &["--config", &file, "-F"], folder, &[])
}

/// The person's client, in bare words: the library that the bot uses speaks either as a component or as a client.
struct Person {
    stream: TcpStream,
    heard: String,
}

impl Person {
    async fn online(port: u16) -> Person {
        let start = Instant::now();
        let stream = loop {
            match TcpStream::connect(("127.0.0.1", port)).await {
                Ok(stream) => break stream,
                Err(error) => assert!(start.elapsed() < SOON, "{error}"),
            }
            tokio::time::sleep(Duration::from_millis(100)).await;
        };
        let mut person = Person { stream, heard: String::new() };
        let open = "<stream:stream to='localhost' version='1.0' xmlns='jabber:client' \
                    xmlns:stream='http://etherx.jabber.org/streams'>";
        person.writes(open).await;
        person.until("</stream:features>").await;
        // NUL amina NUL word
        person.writes("<auth xmlns='urn:ietf:params:xml:ns:xmpp-sasl' mechanism='PLAIN'>AGFtaW5hAHdvcmQ=</auth>").await;
        person.until("<success").await;
        person.writes(open).await;
        person.until("</stream:features>").await;
        let bind = "<bind xmlns='urn:ietf:params:xml:ns:xmpp-bind'><resource>phone</resource></bind>";
        person.writes(&format!("<iq type='set' id='b1'>{bind}</iq>")).await;
        person.until("amina@localhost/phone").await;
        person.writes("<presence/>").await;
        person
    }

    async fn writes(&mut self, xml: &str) {
        self.stream.write_all(xml.as_bytes()).await.expect("the server is there");
    }

    /// All up to and with these words; what comes after stays.
    async fn until(&mut self, words: &str) -> String {
        let all = async {
            loop {
                if let Some(at) = self.heard.find(words) {
                    let rest = self.heard.split_off(at + words.len());
                    return std::mem::replace(&mut self.heard, rest);
                }
                let mut more = [0; 4096];
                let read = self.stream.read(&mut more).await.expect("the server is there");
                assert!(read > 0, "the server hung up: {}", self.heard);
                // Servers write whole letters or the next read brings their rest; these tests' texts are short.
                self.heard.push_str(&String::from_utf8_lossy(&more[..read]));
            }
        };
        timeout(SOON, all).await.unwrap_or_else(|_| panic!("no {words}"))
    }

    async fn says(&mut self, id: &str, text: &str) {
        let to = "bot@texts.localhost";
        self.writes(&format!("<message type='chat' id='{id}' to='{to}'><body>{text}</body></message>")).await;
    }

    /// The next message as it is written; its receipt goes back.
    async fn hears(&mut self) -> String {
        self.until("<message ").await;
        let message = self.until("</message>").await;
        if !message.contains("type='error'") {
            let id = message.split("id='").nth(1).and_then(|rest| rest.split('\'').next()).expect("ours have ids");
            let receipt = format!("<received xmlns='urn:xmpp:receipts' id='{id}'/>");
            self.writes(&format!("<message to='bot@texts.localhost'>{receipt}</message>")).await;
        }
        message
    }

    async fn hears_text(&mut self) -> String {
        let message = self.hears().await;
        let body = message.split("<body>").nth(1).and_then(|rest| rest.split("</body>").next());
        body.unwrap_or_else(|| panic!("no body in {message}")).to_owned()
    }
}

#[tokio::test(flavor = "multi_thread")]
#[ignore = "needs Prosody; .ci/long installs it"]
async fn a_person_with_a_chat_account_texts_and_is_answered() {
    let database = fresh_urls()[0].clone();
    let folder = fresh_folder("prosody");
    let (people, components) = (free_port(), free_port());
    let mut server = prosody(&folder, people, components);
    let setting = Setting::new(&database, "http://127.0.0.1:1/")
        .with("BELLYFUL__GATEWAY__CHAT__PROFILE", "xmpp")
        .with("BELLYFUL__GATEWAY__CHAT__ADDRESS", &format!("127.0.0.1:{components}"))
        .with("BELLYFUL__GATEWAY__CHAT__USER", "texts.localhost")
        .with("BELLYFUL__GATEWAY__CHAT__SECRET", "sesame")
        .with("BELLYFUL__GATEWAY__CHAT__NUMBER", "bot@texts.localhost");
    let mut bot = setting.start();
    let mut amina = Person::online(people).await;
    tokio::time::sleep(Duration::from_secs(3)).await;

    amina.says("m1", "3 किलो गोबर डाला").await;
    let hindi = amina.hears_text().await;
    assert!(hindi.chars().any(|c| ('\u{900}'..='\u{97f}').contains(&c)), "{hindi}");
    until_states(&database, SOON, &["delivered"]).await;
    // The same id once more is the same text.
    amina.says("m1", "3 किलो गोबर डाला").await;
    amina.says("m2", "fed 3 kg scraps").await;
    assert!(amina.hears_text().await.len() > 20);
    until_states(&database, SOON, &["delivered"; 2]).await;
    assert_eq!(states(&database, "SELECT sender FROM inbox").await, ["amina@localhost"; 2]);

    // The bot away: the server bounces at once, and the person sees that it did not go.
    bot.kill();
    tokio::time::sleep(Duration::from_secs(1)).await;
    amina.says("m3", "gas low").await;
    let bounced = amina.hears().await;
    assert!(bounced.contains("type='error'"), "{bounced}");
    let bot = setting.start();
    tokio::time::sleep(Duration::from_secs(3)).await;
    amina.says("m4", "gas low today").await;
    assert!(amina.hears_text().await.len() > 10);

    // The chat server away and back: the bot connects by itself.
    drop(amina);
    server.stop();
    assert_eq!(text_in(&bot.url, "x", "+15550100", "hello").await, Some(202), "the other ways go on");
    let _server = prosody(&folder, people, components);
    let mut amina = Person::online(people).await;
    tokio::time::sleep(Duration::from_secs(5)).await;
    amina.says("m5", "how much can I feed?").await;
    assert!(amina.hears_text().await.len() > 10);
}
