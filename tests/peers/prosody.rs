//! The real Prosody, with the real server as its component, and a person with a chat account.

use crate::{Daemon, free_port, states, until_states};
use bellyful_tests::network::text_in;
use bellyful_tests::server::Setting;
use bellyful_tests::stores::{fresh_folder, fresh_urls};
use futures_util::StreamExt;
use std::path::Path;
use std::process::Command;
use std::str::FromStr;
use std::time::Duration;
use tokio::time::timeout;
use tokio_xmpp::connect::DnsConfig;
use tokio_xmpp::xmlstream::Timeouts;
use tokio_xmpp::{Client, Event, Stanza};
use xmpp_parsers::jid::Jid;
use xmpp_parsers::message::{Id, Lang, Message, MessageType};
use xmpp_parsers::presence::Presence;
use xmpp_parsers::receipts::Received;

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

/// The person's client.
struct Person(Client);

impl Person {
    async fn online(port: u16) -> Person {
        let jid = Jid::from_str("amina@localhost/phone").expect("an address");
        let at = DnsConfig::addr(&format!("127.0.0.1:{port}"));
        let mut client = Client::new_plaintext(jid, "word", at, Timeouts::tight());
        timeout(SOON, async { while !client.next().await.expect("events").is_online() {} }).await.expect("online");
        client.send_stanza(Presence::available().into()).await.expect("written");
        Person(client)
    }

    async fn says(&mut self, id: &str, text: &str) {
        let to = Jid::from_str("bot@texts.localhost").expect("an address");
        let mut message = Message::chat(Some(to)).with_body(Lang::new(), text.to_owned());
        message.id = Some(Id(id.to_owned()));
        self.0.send_stanza(message.into()).await.expect("written");
    }

    /// The next message, an error or a text; its receipt goes back.
    async fn hears(&mut self) -> Message {
        loop {
            let event = timeout(SOON, self.0.next()).await.expect("an answer").expect("events");
            let Event::Stanza(Stanza::Message(message)) = event else { continue };
            if let (Some(id), Some(from), false) =
                (message.id.clone(), message.from.clone(), message.type_ == MessageType::Error)
            {
                let receipt = Message::chat(Some(from)).with_payload(Received { id: id.0 });
                self.0.send_stanza(receipt.into()).await.expect("written");
            }
            return message;
        }
    }

    async fn hears_text(&mut self) -> String {
        self.hears().await.get_best_body(vec![""]).expect("a body").1.clone()
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

    amina.says("m1", "fed 3 kg scraps").await;
    assert!(amina.hears_text().await.len() > 20);
    until_states(&database, SOON, &["delivered"]).await;
    // The same id once more is the same text.
    amina.says("m1", "fed 3 kg scraps").await;
    amina.says("m2", "3 किलो गोबर डाला").await;
    let hindi = amina.hears_text().await;
    assert!(hindi.chars().any(|c| ('\u{900}'..='\u{97f}').contains(&c)), "{hindi}");
    until_states(&database, SOON, &["delivered"; 2]).await;
    assert_eq!(states(&database, "SELECT sender FROM inbox").await, ["amina@localhost"; 2]);

    // The bot away: the server bounces at once, and the person sees that it did not go.
    bot.kill();
    tokio::time::sleep(Duration::from_secs(1)).await;
    amina.says("m3", "gas low").await;
    assert_eq!(amina.hears().await.type_, MessageType::Error);
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
