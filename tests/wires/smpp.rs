//! A link over SMPP 3.4 end to end: the server as a process, a message centre that misbehaves to order.

use bellyful_tests::network::{Does, Network};
use bellyful_tests::server::{Server, Setting};
use bellyful_tests::smsc::{Centre, PASSWORD};
use bellyful_tests::stores::{fresh_folder, fresh_urls};
use rusmpp::values::MessageState;
use std::time::{Duration, Instant};

const SOON: Duration = Duration::from_secs(25);

struct Linked {
    centre: Centre,
    server: Server,
    database: String,
}

async fn linked(profile: &str) -> Linked {
    let database = fresh_urls()[0].clone();
    linked_on(&database, profile).await
}

async fn linked_on(database: &str, profile: &str) -> Linked {
    let centre = Centre::start().await;
    let network = Network::start(|_, _| Does::Takes).await;
    let server = Setting::new(database, &network.send_url)
        .with("BELLYFUL__GATEWAY__TOWER__PROFILE", profile)
        .with("BELLYFUL__GATEWAY__TOWER__ADDRESS", &centre.address)
        .with("BELLYFUL__GATEWAY__TOWER__USER", "bot")
        .with("BELLYFUL__GATEWAY__TOWER__SECRET", PASSWORD)
        .with("BELLYFUL__GATEWAY__TOWER__NUMBER", "12345")
        .start();
    centre.until(SOON, |centre| centre.binds() > 0).await;
    assert_eq!(centre.binds(), 1);
    Linked { centre, server, database: database.to_owned() }
}

impl Linked {
    /// States of all texts of ours, in order.
    async fn states(&self) -> Vec<String> {
        self.ask("SELECT state FROM outbox ORDER BY seq").await
    }

    async fn ask(&self, sql: &'static str) -> Vec<String> {
        sqlx::any::install_default_drivers();
        let pool = sqlx::AnyPool::connect(&self.database).await.expect("opens");
        sqlx::query_scalar(sql).fetch_all(&pool).await.expect("reads")
    }

    async fn until_states(&self, wanted: &[&str]) {
        let start = Instant::now();
        while self.states().await != wanted && start.elapsed() < SOON {
            tokio::time::sleep(Duration::from_millis(100)).await;
        }
        assert_eq!(self.states().await, wanted);
    }
}

fn ucs2(text: &str) -> Vec<u8> {
    text.encode_utf16().flat_map(u16::to_be_bytes).collect()
}

#[tokio::test(flavor = "multi_thread")]
async fn a_text_in_the_answer_out_and_its_report() {
    for (said, state) in [(MessageState::Delivered, "delivered"), (MessageState::Undeliverable, "failed")] {
        let linked = linked("smpp").await;
        linked.centre.report(said);
        assert_eq!(linked.centre.deliver("15550100", 0, 0, b"fed 3 kg scraps").await, Some(0));
        linked.until_states(&[state]).await;
        let sent = linked.centre.submitted();
        assert!(sent.iter().all(|part| part.from == "12345" && part.to == "15550100" && part.coding == 0), "{sent:?}");
        assert_eq!(sent.iter().filter(|part| part.report).count(), 1, "one report a text: {sent:?}");
        // The same delivery once more: its acknowledgement was lost.
        assert_eq!(linked.centre.deliver("15550100", 0, 0, b"fed 3 kg scraps").await, Some(0));
        tokio::time::sleep(Duration::from_secs(1)).await;
        assert_eq!(linked.states().await.len(), 1);
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_text_beyond_the_gsm_alphabet_comes_and_is_answered_in_its_letters() {
    let linked = linked("smpp").await;
    assert_eq!(linked.centre.deliver("919800000001", 0, 8, &ucs2("3 किलो गोबर डाला")).await, Some(0));
    linked.centre.until(SOON, |centre| !centre.submitted().is_empty()).await;
    linked.until_states(&["sent"]).await;
    assert_eq!(linked.ask("SELECT text FROM inbox").await, ["3 किलो गोबर डाला"]);
    let sent = linked.centre.submitted();
    let whole: String = sent.iter().map(|part| part.text.as_str()).collect();
    assert!(sent.iter().all(|part| part.coding == 8) && whole.contains("है"), "{sent:?}");
    assert!(sent.iter().all(|part| part.text.encode_utf16().count() <= if sent.len() > 1 { 67 } else { 70 }));
    let parts: Vec<_> = sent.iter().filter_map(|part| part.part).map(|(_, number, total)| (number, total)).collect();
    let total = sent.len() as u8;
    assert!(total == 1 || parts == (1..=total).map(|number| (number, total)).collect::<Vec<_>>(), "{parts:?}");
}

#[tokio::test(flavor = "multi_thread")]
async fn three_parts_in_any_order_are_one_text() {
    for database in fresh_urls() {
        let linked = linked_on(&database, "smpp").await;
        let text = "fed 3 kg scraps and 6 L water. ".repeat(14);
        let parts: Vec<&[u8]> = text.as_bytes().chunks(153).collect();
        assert_eq!(parts.len(), 3);
        for number in [3, 1, 1, 2] {
            let mut octets = vec![5, 0, 3, 77, 3, number];
            octets.extend_from_slice(parts[usize::from(number) - 1]);
            assert_eq!(linked.centre.deliver("15550100", 0x40, 0, &octets).await, Some(0), "part {number}");
        }
        linked.until_states(&["sent"]).await;
        assert_eq!(linked.ask("SELECT text FROM inbox").await, [text]);
        assert!(linked.ask("SELECT text FROM part").await.is_empty());
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn danger_in_a_part_does_not_wait_for_the_others() {
    let linked = linked("smpp").await;
    let octets = [&[5, 0, 3, 78, 3, 1][..], b"strong gas smell in the kitchen, we"].concat();
    let start = Instant::now();
    assert_eq!(linked.centre.deliver("15550100", 0x40, 0, &octets).await, Some(0));
    linked.centre.until(SOON, |centre| !centre.submitted().is_empty()).await;
    assert!(start.elapsed() < Duration::from_secs(3), "{:?}", start.elapsed());
    assert_eq!(linked.ask("SELECT kind FROM outbox ORDER BY seq").await[0], "alarm");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_reference_that_is_used_again_loses_no_part() {
    let linked = linked("smpp").await;
    for text in ["fed 3 kg scraps", "fed 2 kg peels"] {
        let octets = [&[5, 0, 3, 79, 2, 1][..], text.as_bytes()].concat();
        assert_eq!(linked.centre.deliver("15550100", 0x40, 0, &octets).await, Some(0));
    }
    assert_eq!(linked.ask("SELECT text FROM inbox").await, ["fed 3 kg scraps"], "the older, as far as it came");
    assert_eq!(linked.ask("SELECT text FROM part").await, ["fed 2 kg peels"]);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_centre_short_of_breath_is_waited_for_and_one_that_refuses_is_not() {
    let linked = linked("smpp").await;
    // Throttled, then its queue is full: SMPP 3.4, section 5.1.3.
    linked.centre.refuse(&[0x58, 0x14]);
    linked.centre.deliver("15550100", 0, 0, b"fed 3 kg scraps").await;
    linked.until_states(&["sent"]).await;
    // No such number.
    linked.centre.refuse(&[0x0b]);
    linked.centre.deliver("15550101", 0, 0, b"fed 3 kg scraps").await;
    linked.until_states(&["sent", "refused"]).await;
    let to_them = linked.centre.submitted().into_iter().filter(|part| part.to == "15550101").count();
    assert_eq!(to_them, 0);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_centre_that_goes_and_comes_back_gets_each_answer_once() {
    let mut linked = linked("smpp").await;
    linked.centre.deliver("15550100", 0, 0, b"fed 3 kg scraps").await;
    linked.centre.go_down().await;
    // What came before the cut is answered after it, or was before; what comes by another way is not held up.
    tokio::time::sleep(Duration::from_secs(2)).await;
    linked.centre.come_back().await;
    linked.centre.until(SOON, |centre| centre.binds() == 2).await;
    assert_eq!(linked.centre.binds(), 2, "it binds anew by itself");
    assert_eq!(linked.centre.deliver("15550101", 0, 0, b"fed 2 kg scraps").await, Some(0));
    linked.until_states(&["sent", "sent"]).await;
    for to in ["15550100", "15550101"] {
        let last = linked.centre.submitted().into_iter().filter(|part| part.to == to && part.report).count();
        // The cut may have come between a submit and its answer: one double a cut.
        assert!((1..=2).contains(&last), "{to}: {:?}", linked.centre.submitted());
    }
    assert_eq!(linked.server.terminate(), Some(0), "it unbinds and ends");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_link_that_falls_silent_is_made_anew() {
    let file = fresh_folder("profile").join("quick.toml");
    let profile = "about = \"quick\"\n[link]\nkind = \"smpp\"\nenquire_every_s = 1\nanswer_within_s = 1\n[out]\n";
    std::fs::write(&file, profile).expect("written");
    let linked = linked(&file.display().to_string()).await;
    linked.centre.until(SOON, |centre| centre.enquiries() > 1).await;
    assert!(linked.centre.enquiries() > 1, "it asks after the link");
    linked.centre.go_deaf(true);
    tokio::time::sleep(Duration::from_secs(3)).await;
    let before = linked.centre.binds();
    linked.centre.go_deaf(false);
    linked.centre.until(SOON, |centre| centre.binds() > before).await;
    assert!(linked.centre.binds() > before);
    assert_eq!(linked.centre.deliver("15550100", 0, 0, b"fed 3 kg scraps").await, Some(0));
    linked.until_states(&["sent"]).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn what_cannot_be_kept_or_read_is_told_so_to_the_centre() {
    let file = fresh_folder("locked").join("bellyful.db");
    let linked = linked_on(&format!("sqlite:{}", file.display()), "smpp").await;
    // A picture is refused for good.
    assert_eq!(linked.centre.deliver("15550100", 0, 4, &[1, 2, 3]).await, Some(0x65));
    sqlx::any::install_default_drivers();
    let pool = sqlx::AnyPool::connect(&linked.database).await.expect("opens");
    let lock = pool.begin_with("BEGIN IMMEDIATE").await.expect("locks");
    assert_eq!(linked.centre.deliver("15550100", 0, 0, b"fed 3 kg scraps").await, Some(0x64), "come again later");
    lock.rollback().await.expect("unlocks");
    assert_eq!(linked.centre.deliver("15550100", 0, 0, b"fed 3 kg scraps").await, Some(0));
    linked.until_states(&["sent"]).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn through_tls_a_text_comes_and_is_answered_but_only_by_a_centre_that_is_trusted() {
    let (centre, certificate) = Centre::start_tls().await;
    let file = fresh_folder("trust").join("authority.pem");
    std::fs::write(&file, certificate).expect("written");
    let network = Network::start(|_, _| Does::Takes).await;
    let setting = |profile: &str, address: &str| {
        Setting::new(&fresh_urls()[0], &network.send_url)
            .with("BELLYFUL__GATEWAY__TOWER__PROFILE", profile)
            .with("BELLYFUL__GATEWAY__TOWER__ADDRESS", address)
            .with("BELLYFUL__GATEWAY__TOWER__USER", "bot")
            .with("BELLYFUL__GATEWAY__TOWER__SECRET", PASSWORD)
            .with("BELLYFUL__GATEWAY__TOWER__NUMBER", "12345")
    };
    let bare = Centre::start().await;
    // A stranger's certificate; none at all; words that are not hidden to one who wants them so.
    let strange = setting("smpp-tls", &centre.address).start();
    let unhidden = setting("smpp-tls", &bare.address).start();
    let open = setting("smpp", &centre.address).start();
    tokio::time::sleep(Duration::from_secs(4)).await;
    assert_eq!((centre.binds(), bare.binds()), (0, 0), "the password was given to somebody");
    drop((strange, unhidden, open));

    let trusted = setting("smpp-tls", &centre.address).with("SSL_CERT_FILE", &file.display().to_string()).start();
    centre.until(SOON, |centre| centre.binds() > 0).await;
    assert_eq!(centre.deliver("15550100", 0, 0, b"fed 3 kg scraps").await, Some(0));
    centre.until(SOON, |centre| centre.submitted().iter().any(|part| part.report)).await;
    assert!(centre.submitted().iter().any(|part| part.to == "15550100" && part.report));
    drop(trusted);
}
