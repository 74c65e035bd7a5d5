//! The real Gammu SMSD with its dummy phone, `deploy/phone/bridge.py` between, and the real server.

use crate::{Daemon, free_port, states, until_states};
use bellyful_tests::server::{SECRET, Setting};
use bellyful_tests::stores::{fresh_folder, fresh_urls};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

const SOON: Duration = Duration::from_secs(60);

/// Puts a text into the dummy phone, in parts if it is long.
fn arrives(folder: &Path, slot: usize, from: &str, text: &str) {
    let units: Vec<u16> = text.encode_utf16().collect();
    let unicode = !text.is_ascii();
    let (alone, part) = if unicode { (70, 67) } else { (160, 153) };
    let parts: Vec<&[u16]> = if units.len() > alone { units.chunks(part).collect() } else { vec![&units] };
    for (n, units) in parts.iter().enumerate() {
        let hex: String = units.iter().map(|unit| format!("{unit:04X}")).collect();
        let lines: String = hex
            .as_bytes()
            .chunks(200)
            .enumerate()
            .map(|(line, hex)| format!("Text{line:02} = {}\n", String::from_utf8_lossy(hex)))
            .collect();
        let coding = if unicode { "Unicode" } else { "Default" };
        let header = match parts.len() {
            1 => String::new(),
            total => format!("UDH = 050003{slot:02X}{total:02X}{:02X}\n", n + 1),
        };
        let file = format!(
            "[SMSBackup000]\nSMSC = \"+15550000\"\nState = UnRead\nNumber = \"{from}\"\nCoding = {coding}\nFolder = 1\n\
             PDU = Deliver\nDateTime = 20260302T063000\n{lines}{header}"
        );
        let whole = folder.join("part");
        std::fs::write(&whole, file).expect("written");
        std::fs::rename(whole, folder.join(format!("phone/sms/1/{}", slot + n))).expect("the dummy's folder");
    }
}

fn started(folder: &Path, spool: &Path, send: u16, url: &str) -> (Daemon, Daemon) {
    let bridge = Path::new(env!("CARGO_MANIFEST_DIR")).join("../deploy/phone/bridge.py");
    let bridge = bridge.canonicalize().expect("it is shipped").display().to_string();
    let (config, spool) = (folder.join("smsdrc").display().to_string(), spool.display().to_string());
    let (send, url) = (send.to_string(), format!("{url}/in/plain"));
    let environment = [
        ("BELLYFUL_SECRET", SECRET),
        ("BELLYFUL_IN", &url),
        ("BELLYFUL_SPOOL", &spool),
        ("BELLYFUL_SEND_PORT", &send),
        ("GAMMU_CONFIG", &config),
        ("BRIDGE", &bridge),
        ("LC_ALL", "C.UTF-8"),
    ];
    let serve = Daemon::start("python3", &[&bridge, "serve"], folder, &environment);
    let smsd = Daemon::start("gammu-smsd", &["-c", &config], folder, &environment);
    (serve, smsd)
}

/// The network's word of a text that the phone sent; the dummy's reference is always the same.
fn reports(folder: &Path, slot: usize, of: &str, says: &str) {
    let hex: String = says.encode_utf16().map(|unit| format!("{unit:04X}")).collect();
    let file = format!(
        "[SMSBackup000]\nSMSC = \"+15550000\"\nState = UnRead\nNumber = \"{of}\"\nCoding = Default\nFolder = 1\n\
         PDU = Status\nDateTime = 20260302T063000\nText00 = {hex}\nMessageReference = 255\n"
    );
    let whole = folder.join("part");
    std::fs::write(&whole, file).expect("written");
    std::fs::rename(whole, folder.join(format!("phone/sms/1/{slot}"))).expect("the dummy's folder");
}

/// Texts that the phone sent, as SMSD keeps them.
fn sent(folder: &Path) -> Vec<String> {
    let files = std::fs::read_dir(folder.join("sent")).expect("the folder").flatten();
    let mut all: Vec<(PathBuf, String)> = files
        .map(|file| {
            let bytes = std::fs::read(file.path()).expect("a file");
            (file.path(), String::from_utf8_lossy(&bytes).into_owned())
        })
        .collect();
    all.sort();
    all.into_iter().map(|(_, text)| text).collect()
}

#[tokio::test(flavor = "multi_thread")]
#[ignore = "needs gammu-smsd; .ci/long installs it"]
async fn a_phone_on_the_computer_carries_texts_and_answers_through_every_trouble() {
    let database = fresh_urls()[0].clone();
    let folder = fresh_folder("gammu");
    for inner in ["inbox", "outbox", "sent", "error", "spool"] {
        std::fs::create_dir_all(folder.join(inner)).expect("made");
    }
    for n in 1..=5 {
        std::fs::create_dir_all(folder.join(format!("phone/sms/{n}"))).expect("made");
    }
    for act in ["receive", "sent"] {
        let script = folder.join(format!("run-{act}"));
        std::fs::write(&script, format!("#!/bin/sh\nexec python3 \"$BRIDGE\" {act} \"$@\"\n")).expect("written");
        std::fs::set_permissions(&script, std::os::unix::fs::PermissionsExt::from_mode(0o755)).expect("our own");
    }
    let at = folder.display();
    let config = format!(
        "[gammu]\nmodel = dummy\nconnection = none\nport = {at}/phone\ngammuloc = /dev/null\n[smsd]\nservice = files\n\
         logfile = {at}/smsd.log\ninboxpath = {at}/inbox/\noutboxpath = {at}/outbox/\nsentsmspath = {at}/sent/\n\
         errorsmspath = {at}/error/\nrunonreceive = {at}/run-receive\nrunonsent = {at}/run-sent\n\
         deliveryreport = sms\nchecksecurity = 0\nchecksignal = 0\ncheckbattery = 0\n\
         commtimeout = 1\nreceivefrequency = 1\nmultiparttimeout = 5\n"
    );
    std::fs::write(folder.join("smsdrc"), config).expect("written");
    let (listen, send) = (format!("127.0.0.1:{}", free_port()), free_port());
    let url = format!("http://{listen}");
    let setting = Setting::new(&database, &format!("http://127.0.0.1:{send}/send")).with("BELLYFUL__LISTEN", &listen);
    let mut server = setting.start();
    let spool = folder.join("spool");
    let (mut serve, mut smsd) = started(&folder, &spool, send, &url);

    let hindi = "3 किलो गोबर डाला";
    let long = "fed 3 kg scraps and 6 L water. ".repeat(14);
    arrives(&folder, 10, "+15550100", "fed 3 kg scraps");
    until_states(&database, SOON, &["sent"]).await;
    arrives(&folder, 20, "+919800000001", hindi);
    until_states(&database, SOON, &["sent"; 2]).await;
    arrives(&folder, 30, "+15550101", &long);
    until_states(&database, SOON, &["sent"; 3]).await;
    let texts = states(&database, "SELECT text FROM inbox ORDER BY id").await;
    assert_eq!(
        texts.iter().map(|text| text.trim_end()).collect::<Vec<_>>(),
        ["fed 3 kg scraps", hindi, long.trim_end()]
    );

    // The bot away: the text waits in the spool.
    server.kill();
    arrives(&folder, 40, "+15550102", "fed 2 kg scraps");
    let start = Instant::now();
    let spooled = || std::fs::read_dir(&spool).expect("there").flatten().any(|f| f.path().extension().is_some());
    while !spooled() && start.elapsed() < SOON {
        tokio::time::sleep(Duration::from_millis(100)).await;
    }
    assert!(spooled(), "it is kept before SMSD forgets it");
    let _server = setting.start();
    until_states(&database, SOON, &["sent"; 4]).await;

    // The daemon and the bridge away: the text waits in the phone.
    smsd.stop();
    serve.stop();
    arrives(&folder, 50, "+15550103", "fed 1 kg scraps");
    let (_serve, _smsd) = started(&folder, &spool, send, &url);
    until_states(&database, SOON, &["sent"; 5]).await;

    // All went through the phone, the Hindi one in its letters.
    let start = Instant::now();
    while sent(&folder).len() < 5 && start.elapsed() < SOON {
        tokio::time::sleep(Duration::from_millis(200)).await;
    }
    assert!(sent(&folder).len() >= 5, "{:?}", sent(&folder));
    assert!(std::fs::read_dir(folder.join("error")).expect("there").next().is_none());

    // What the network says of them, one without its country's code; what speaks of no text of ours is somebody's.
    reports(&folder, 60, "+919800000001", "Delivered");
    reports(&folder, 61, "5550101", "Failed");
    reports(&folder, 62, "+15550102", "Pending");
    until_states(&database, SOON, &["sent", "delivered", "failed", "sent", "sent"]).await;
    reports(&folder, 63, "+15550101", "Delivered");
    until_states(&database, SOON, &["sent", "delivered", "delivered", "sent", "sent"]).await;
    arrives(&folder, 70, "+15550777", "Delivered");
    until_states(&database, SOON, &["sent", "delivered", "delivered", "sent", "sent", "sent"]).await;
    assert_eq!(
        states(&database, "SELECT text FROM inbox ORDER BY id").await.last().map(String::as_str),
        Some("Delivered")
    );
}
