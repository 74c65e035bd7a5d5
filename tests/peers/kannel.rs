//! The real Kannel between the real server and a message centre on loopback, as `deploy/kannel` sets it up.

use crate::{Daemon, free_port, states, until_states};
use bellyful_tests::server::Setting;
use bellyful_tests::smsc::{Centre, PASSWORD};
use bellyful_tests::stores::{fresh_folder, fresh_urls};
use rusmpp::values::MessageState;
use std::path::Path;
use std::time::Duration;

const SOON: Duration = Duration::from_secs(60);

struct Kannel {
    bearerbox: Daemon,
    smsbox: Daemon,
}

impl Kannel {
    /// Starts both daemons by the configuration that is shipped, with ports of our own.
    async fn start(folder: &Path, centre: &Centre, bot: &str, sendsms: u16) -> Kannel {
        let (host, port) = centre.address.split_once(':').expect("HOST:PORT");
        let conf = Path::new(env!("CARGO_MANIFEST_DIR")).join("../deploy/kannel/kannel.conf");
        let mut conf = std::fs::read_to_string(conf).expect("it is shipped");
        let spool = folder.display().to_string();
        let (admin, boxes) = (free_port().to_string(), free_port().to_string());
        let rows = [
            ("13000", admin.as_str()),
            ("13001", &boxes),
            ("13013", &sendsms.to_string()),
            ("ADMIN_PASSWORD", "admin"),
            ("SENDSMS_PASSWORD", "sendsms-pass"),
            ("SENDSMS_USER", "tester"),
            ("SMSC_HOST", host),
            ("SMSC_PORT", port),
            ("SMSC_USER", "bot"),
            ("SMSC_PASSWORD", PASSWORD),
            ("SPOOL", &spool),
            ("BOT_SECRET", "sesame-word"),
            ("BOT/in", &format!("{bot}/in")),
            ("# msg-id-type", "msg-id-type"),
            ("http-queue-delay = 10", "http-queue-delay = 1"),
        ];
        for (word, value) in rows {
            assert!(conf.contains(word), "{word}");
            conf = conf.replace(word, value);
        }
        std::fs::write(folder.join("kannel.conf"), conf).expect("written");
        let before = centre.binds();
        let bearerbox = Daemon::start("/usr/sbin/bearerbox", &["-v", "1", "kannel.conf"], folder, &[]);
        centre.until(SOON, |centre| centre.binds() > before).await;
        let smsbox = Daemon::start("/usr/sbin/smsbox", &["-v", "1", "kannel.conf"], folder, &[]);
        Kannel { bearerbox, smsbox }
    }
}

#[tokio::test(flavor = "multi_thread")]
#[ignore = "needs Kannel; .ci/long installs it"]
async fn kannel_carries_texts_answers_and_reports_through_every_trouble() {
    let database = fresh_urls()[0].clone();
    let centre = Centre::start().await;
    centre.report(MessageState::Delivered);
    let (listen, sendsms) = (format!("127.0.0.1:{}", free_port()), free_port());
    let bot = format!("http://{listen}");
    let setting = Setting::new(&database, "http://127.0.0.1:1/")
        .with("BELLYFUL__LISTEN", &listen)
        .with("BELLYFUL__GATEWAY__KANNEL__SECRET", "sesame-word")
        .with("BELLYFUL__GATEWAY__KANNEL__USER", "tester")
        .with("BELLYFUL__GATEWAY__KANNEL__PASSWORD", "sendsms-pass")
        .with("BELLYFUL__GATEWAY__KANNEL__NUMBER", "12345")
        .with("BELLYFUL__GATEWAY__KANNEL__SEND_URL", &format!("http://127.0.0.1:{sendsms}/cgi-bin/sendsms"))
        .with("BELLYFUL__GATEWAY__KANNEL__RECEIPT_URL", &format!("{bot}/receipt/kannel"));
    let mut server = setting.start();
    let folder = fresh_folder("kannel");
    let mut kannel = Kannel::start(&folder, &centre, &bot, sendsms).await;
    // smsbox has no sign of its own that it is there.
    tokio::time::sleep(Duration::from_secs(3)).await;

    // A text in, the answer out, its report.
    assert_eq!(centre.deliver("15550100", 0, 0, b"fed 3 kg scraps").await, Some(0));
    until_states(&database, SOON, &["delivered"]).await;
    assert_eq!(centre.submitted()[0].to, "15550100");

    // UCS-2, both ways.
    let hindi = "3 किलो गोबर डाला";
    let octets: Vec<u8> = hindi.encode_utf16().flat_map(u16::to_be_bytes).collect();
    assert_eq!(centre.deliver("919800000001", 0, 8, &octets).await, Some(0));
    until_states(&database, SOON, &["delivered"; 2]).await;
    let answer: Vec<_> = centre.submitted().into_iter().filter(|part| part.to == "919800000001").collect();
    assert!(answer.iter().all(|part| part.coding == 8), "{answer:?}");
    assert!(answer.iter().any(|part| part.text.contains("है")), "{answer:?}");

    // Three parts, the last first.
    let text = "fed 3 kg scraps and 6 L water. ".repeat(14);
    for number in [3, 1, 2] {
        let mut octets = vec![5, 0, 3, 77, 3, number];
        octets.extend_from_slice(text.as_bytes().chunks(153).nth(usize::from(number) - 1).expect("three"));
        assert_eq!(centre.deliver("15550101", 0x40, 0, &octets).await, Some(0));
    }
    until_states(&database, SOON, &["delivered"; 3]).await;
    let texts = states(&database, "SELECT text FROM inbox ORDER BY id").await;
    assert_eq!(texts[1..], [hindi.to_owned(), text]);

    // The centre away: the answer waits in Kannel.
    centre.go_down().await;
    centre.come_back().await;
    centre.until(SOON, |centre| centre.binds() > 1).await;
    assert_eq!(centre.deliver("15550102", 0, 0, b"fed 2 kg scraps").await, Some(0));
    until_states(&database, SOON, &["delivered"; 4]).await;

    // The bot away: the text waits in Kannel.
    server.kill();
    assert_eq!(centre.deliver("15550103", 0, 0, b"fed 1 kg scraps").await, Some(0));
    tokio::time::sleep(Duration::from_secs(2)).await;
    let server = setting.start();
    until_states(&database, SOON, &["delivered"; 5]).await;

    // Kannel itself away: the answer waits in the bot's outbox, and the text at the centre.
    kannel.smsbox.stop();
    kannel.bearerbox.stop();
    assert_eq!(centre.deliver("15550104", 0, 0, b"fed 1 kg scraps").await, None, "nobody is bound");
    let _kannel = Kannel::start(&folder, &centre, &bot, sendsms).await;
    tokio::time::sleep(Duration::from_secs(3)).await;
    assert_eq!(centre.deliver("15550104", 0, 0, b"fed 1 kg scraps").await, Some(0));
    until_states(&database, SOON, &["delivered"; 6]).await;
    drop(server);
}
