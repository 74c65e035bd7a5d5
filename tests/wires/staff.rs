//! Field workers by text: the PIN that guards families' affairs, what each role may order, and MORE.

use bellyful::deed::{Did, Written};
use bellyful::household::{Decision, Phone};
use bellyful::message::{Inbound, Outbound};
use bellyful::mind::Mind;
use bellyful::pages::access::Role;
use bellyful::reply::compose::Room;
use bellyful::setup::{Setup, set_up};
use bellyful::store::{Arrival, Cause, NEEDS_PIN, NewStaff, Store};
use bellyful::workbench::{nobody, work_all};
use bellyful_tests::network::{Does, Network, text_in};
use bellyful_tests::server::Setting;
use bellyful_tests::stores::fresh_urls;
use chrono::{DateTime, Duration, Utc};

const WORKER: &str = "+99900000801";
const LEAD: &str = "+99900000802";
const VIEWER: &str = "+99900000803";

/// A programme with one of each role, on a clock that only the test moves.
struct Road {
    store: Store,
    mind: Mind,
    now: DateTime<Utc>,
    texts: usize,
}

impl Road {
    async fn new() -> Road {
        let store = Store::in_memory().await.expect("a store");
        for (name, role, phone) in [("Brian", "field", WORKER), ("Amina", "lead", LEAD), ("Vera", "viewer", VIEWER)] {
            let staff = NewStaff {
                name: name.into(),
                phone: Some(phone.into()),
                gateway: Some("plain".into()),
                lang: "en".into(),
                role: role.into(),
                password_hash: None,
            };
            store.add_staff(&staff).await.expect("added");
        }
        let now = "2026-03-02T08:00:00Z".parse().expect("a time");
        Road { store, mind: Mind::new(None, 1).expect("sound words"), now, texts: 0 }
    }

    async fn family(&self, number: &str, setup: &str) -> i64 {
        let setup: Setup = serde_json::from_str(setup).expect("a set-up");
        let mut decision: Decision = set_up(&self.mind, number, "plain", &setup, self.now).expect("plausible");
        decision.join = vec![Phone { gateway: "plain".into(), number: number.into() }];
        self.store.keep(Cause::Hand, &nobody(), decision, self.now).await.expect("kept").household
    }

    /// What the bot sends in answer, and to whom, a minute later.
    async fn text(&mut self, from: &str, text: &str) -> Vec<Outbound> {
        self.texts += 1;
        self.now += Duration::minutes(1);
        let inbound = Inbound {
            gateway: "plain".into(),
            id: self.texts.to_string(),
            from: from.into(),
            to: None,
            text: text.into(),
            sent_at: self.now,
            received_at: self.now,
        };
        self.store.accept(&[Arrival { inbound, alarm: None }]).await.expect("kept");
        work_all(&self.store, &self.mind, self.now).await.expect("worked")
    }

    /// The one answer to `from`.
    async fn says(&mut self, from: &str, text: &str) -> String {
        let answers: Vec<Outbound> = self.text(from, text).await.into_iter().filter(|out| out.to == from).collect();
        assert_eq!(answers.len(), 1, "{text}: {answers:?}");
        assert!(Room::STAFF.fits(&answers[0].text), "{}", answers[0].text);
        answers[0].text.clone()
    }

    async fn check(&mut self, from: &str, text: &str, expected: &str) {
        let said = self.says(from, text).await;
        assert!(said.contains(expected), "{text}: {said}");
    }
}

const TANK: &str = r#"{"lang":"en","name":"Atieno","tank_l":1000,"liquid_l":800,"place":"Kisumu"}"#;

#[tokio::test]
async fn a_pin_is_asked_for_once_a_day_and_its_words_are_not_kept() {
    let mut road = Road::new().await;
    road.family("+99900000123", TANK).await;
    road.check(WORKER, "pin 8362", "your PIN from now on").await;
    road.check(WORKER, "history 1", "Atieno").await;
    road.now += Duration::days(1);
    road.check(WORKER, "history 1", "need your PIN").await;
    road.check(WORKER, "who needs me", "need your PIN").await;
    road.check(WORKER, "pin 8362", "holds for today").await;
    road.check(WORKER, "history 1", "Atieno").await;
    road.now += Duration::hours(9);
    road.check(WORKER, "history 1", "Atieno").await;
    road.check(WORKER, "pin 47", "4 to 8 digits").await;
    let mut copy = vec![];
    road.store.dump(&mut copy).await.expect("copied");
    assert!(!String::from_utf8_lossy(&copy).contains("8362"), "a PIN is kept as a hash only");
}

#[tokio::test]
async fn wrong_pins_lock_for_an_hour_and_tell_the_managers() {
    let mut road = Road::new().await;
    road.family("+99900000123", TANK).await;
    road.check(WORKER, "pin 4711", "your PIN from now on").await;
    for left in (1..=4).rev() {
        road.check(WORKER, "pin 1111", &format!("Tries left: {left}")).await;
    }
    let last = road.text(WORKER, "pin 1111").await;
    let to: Vec<&str> = last.iter().map(|out| out.to.as_str()).collect();
    assert_eq!(to, [WORKER, LEAD], "{last:?}");
    assert!(last[0].text.contains("locked for an hour"), "{}", last[0].text);
    assert!(last[1].text.contains("Brian") && last[1].text.contains(WORKER), "{}", last[1].text);
    for text in ["pin 4711", "history 1", "who needs me"] {
        road.check(WORKER, text, "locked for an hour").await;
    }
    road.now += Duration::hours(1);
    road.check(WORKER, "pin 4711", "holds for today").await;
    road.check(WORKER, "history 1", "Atieno").await;
    let trail = road.store.trail(0, 50).await.expect("read");
    assert!(trail.iter().any(|(_, what)| *what == Written::Deed(Did::GotLocked.by("Brian"))), "{trail:?}");
}

#[tokio::test]
async fn danger_waits_for_no_pin() {
    let mut road = Road::new().await;
    road.family("+99900000123", TANK).await;
    road.check(WORKER, "pin 4711", "your PIN from now on").await;
    road.now += Duration::days(2);
    let told = road.text("+99900000123", "strong gas smell in the kitchen").await;
    assert!(told.iter().any(|out| out.to == "+99900000123" && out.text.contains("Everyone out")), "{told:?}");
    assert!(told.iter().all(|out| out.to != VIEWER), "who may not act is not called: {told:?}");
    road.check(VIEWER, "ok 1", "look but not act").await;
    road.check(WORKER, "ok 1", "is yours").await;
    road.check(WORKER, "history 1", "need your PIN").await;
}

#[tokio::test]
async fn a_bare_ok_takes_the_alarm_that_this_worker_was_told_of() {
    let mut road = Road::new().await;
    for number in ["+99900000123", "+99900000124"] {
        road.family(number, TANK).await;
    }
    road.check(WORKER, "ok", "Text: who needs me").await;
    let told = road.text("+99900000123", "strong gas smell in the kitchen").await;
    assert!(told.iter().any(|out| out.to == WORKER) && told.iter().all(|out| out.to != LEAD), "{told:?}");
    road.check(LEAD, "Ok.", "Text: who needs me").await;
    assert_eq!(road.store.situation_of(1).await.expect("read").alarms.len(), 1, "another's alarm is not taken unseen");
    road.text("+99900000124", "fire at the tank").await;
    road.check(WORKER, "OK", "Which one?").await;
    road.check(WORKER, "ok2", "is yours").await;
    road.check(WORKER, "okay", "is yours").await;
    for household in [1, 2] {
        assert!(road.store.situation_of(household).await.expect("read").alarms.is_empty());
    }
    road.check(WORKER, "ok", "Text: who needs me").await;
}

#[tokio::test]
async fn a_viewer_sees_but_every_act_is_refused() {
    let mut road = Road::new().await;
    let id = road.family("+99900000123", TANK).await;
    let before = road.store.situation_of(id).await.expect("read");
    for text in
        ["note 1 new valve", "tell 1 I come", "take 1", "hand back 1", "lift 1", "ok 1", "done 1", "for 1: fed 5 kg"]
    {
        let all = road.text(VIEWER, text).await;
        assert_eq!(all.len(), 1, "{text}: {all:?}");
        assert!(all[0].text.contains("look but not act"), "{text}: {}", all[0].text);
    }
    assert_eq!(road.store.situation_of(id).await.expect("read"), before);
    road.now += Duration::days(30);
    for text in ["history 1", "who needs me", "history Kisumu"] {
        let said = road.says(VIEWER, text).await;
        assert!(said.contains("Atieno") && !said.contains("999"), "no number is shown to a viewer: {said}");
    }
    // Nor when the family asks for a person: who may not act is not called.
    let told = road.text("+99900000123", "please call me").await;
    assert!(told.iter().all(|out| out.to != VIEWER), "{told:?}");
    assert!(told.iter().any(|out| out.to != "+99900000123" && out.text.contains("+99900000123")), "{told:?}");
}

#[tokio::test]
async fn more_goes_on_with_the_list_until_every_household_was_named() {
    let mut road = Road::new().await;
    for n in 0..40 {
        road.family(&format!("+999000001{n:02}"), TANK).await;
    }
    road.now += Duration::days(30);
    let mut said = road.says(WORKER, "who needs me").await;
    assert!(said.starts_with("40 need you."), "{said}");
    let mut named: Vec<i64> = vec![];
    loop {
        // "12 Atieno: silent."
        let words: Vec<&str> = said.split(' ').collect();
        named
            .extend(words.windows(2).filter(|two| two[1] == "Atieno:").map(|two| two[0].parse::<i64>().expect(two[0])));
        if !said.ends_with("more: MORE.") {
            break;
        }
        said = road.says(WORKER, "more").await;
    }
    named.sort_unstable();
    assert_eq!(named, (1..=40).collect::<Vec<i64>>());
    road.check(WORKER, "more", "That was all").await;
}

#[tokio::test]
async fn more_after_a_history_tells_why_and_what_was_told_day_by_day() {
    let mut road = Road::new().await;
    road.family("+99900000101", TANK).await;
    road.text("+99900000101", "fed 3 kg cow dung 6 L water").await;
    road.now += Duration::days(1);
    road.text("+99900000101", "fed 2 kg rice 4 L water, cooked 40 min").await;
    let said = road.says(WORKER, "history 1").await;
    assert!(said.contains("7 d fed 5 kg"), "{said}");
    let mut more = String::new();
    loop {
        let said = road.says(WORKER, "more").await;
        if said.starts_with("That was all") {
            break;
        }
        more.push_str(&said);
        more.push(' ');
    }
    assert!(more.contains("2 kg rice.") && more.contains("3 kg cow dung (yesterday)."), "{more}");
    assert!(more.find("rice") < more.find("cow dung (yesterday)"), "the latest first: {more}");
}

#[tokio::test]
async fn every_order_has_a_least_role_and_is_refused_below_it() {
    let rows = [
        ("who needs me", Role::Viewer),
        ("history 1", Role::Viewer),
        ("note 1 new valve", Role::Field),
        ("tell 1 I come", Role::Field),
        ("take 1", Role::Field),
        ("hand back 1", Role::Field),
        ("lift 1", Role::Field),
        ("ok 1", Role::Field),
        ("done 1", Role::Field),
        ("for 1: fed 5 kg", Role::Field),
    ];
    for (text, least) in rows {
        for (from, role) in [(VIEWER, Role::Viewer), (WORKER, Role::Field), (LEAD, Role::Lead)] {
            let mut road = Road::new().await;
            road.family("+99900000123", TANK).await;
            let said = road.text(from, text).await.remove(0).text;
            assert_eq!(said.contains("look but not act"), role < least, "{text} as {role:?}: {said}");
        }
    }
}

#[tokio::test]
async fn what_is_taken_by_text_is_in_hand_on_the_page_and_handed_back() {
    let mut road = Road::new().await;
    let id = road.family("+99900000123", TANK).await;
    road.now += Duration::days(30);
    let hands = async |road: &Road| {
        let cares = road.store.cares(road.now - Duration::hours(20)).await.expect("read");
        cares.get(&id).map(|care| (care.staff.clone(), care.need.clone()))
    };
    road.check(WORKER, "take 1", "is yours").await;
    assert_eq!(hands(&road).await, Some(("Brian".into(), "silent".into())));
    road.check(LEAD, "who needs me", "Nobody needs you").await;
    road.check(WORKER, "hand back 1", "no longer yours").await;
    assert_eq!(hands(&road).await, None);
    road.text("+99900000123", "strong gas smell in the kitchen").await;
    road.check(LEAD, "ok 1", "is yours").await;
    assert_eq!(hands(&road).await, Some(("Amina".into(), "danger".into())));
    assert!(road.store.situation_of(id).await.expect("read").alarms.is_empty());
    road.check(WORKER, "done 1", "Seen to: Atieno").await;
    let care = road.store.cares(road.now - Duration::hours(20)).await.expect("read").remove(&id).expect("there");
    assert!(care.done_at.is_some(), "{care:?}");
    road.check(WORKER, "done 1", "Nobody had Atieno in hand").await;
}

#[tokio::test]
async fn a_household_is_found_by_part_of_its_name_or_by_its_place() {
    let mut road = Road::new().await;
    road.family("+99900000121", r#"{"lang":"en","name":"José Odhiambo","place":"Kisumu"}"#).await;
    road.family("+99900000122", r#"{"lang":"en","name":"Joseph Atieno","place":"Kisumu"}"#).await;
    road.family("+99900000123", r#"{"lang":"en","name":"Wanjiru","place":"Nakuru"}"#).await;
    road.check(WORKER, "history odhiambo", "José Odhiambo:").await;
    road.check(WORKER, "history wanji", "Wanjiru:").await;
    road.check(WORKER, "note Nakuru new valve", "Written down for Wanjiru").await;
    road.check(WORKER, "history José", "Which one? Text its number: 1 José Odhiambo, 2 Joseph Atieno.").await;
    road.check(WORKER, "take Kisumu", "Which one?").await;
    road.check(WORKER, "history iru", "no household").await;
    road.check(WORKER, "history 77", "no household").await;
    let first = road.store.situation_of(1).await.expect("read").household.expect("there");
    assert_eq!(first.staff_id, None, "what could be two is not taken");
}

#[tokio::test]
async fn a_word_to_a_family_waits_for_its_morning() {
    let mut road = Road::new().await;
    road.family("+99900000123", TANK).await;
    road.now = "2026-03-02T19:00:00Z".parse().expect("a time");
    let sent = road.text(WORKER, "tell 1 see you tomorrow").await;
    let word = sent.iter().find(|out| out.to == "+99900000123").expect("a word to the family");
    assert_eq!(word.text, "From Brian: see you tomorrow");
    // Ten at night in Kisumu: not before seven there.
    assert_eq!(word.not_before, "2026-03-03T04:00:00Z".parse::<DateTime<Utc>>().expect("a time"));
    road.text("+99900000123", "STOP").await;
    road.check(WORKER, "tell 1 hello", "no phone that takes texts").await;
}

#[tokio::test]
async fn a_danger_that_a_worker_passes_on_is_an_alarm_of_that_household() {
    let mut road = Road::new().await;
    let id = road.family("+99900000123", TANK).await;
    let told = road.text(WORKER, "for 1: strong gas smell in the kitchen").await;
    assert!(told[0].to == WORKER && told[0].text.contains("Everyone out"), "{told:?}");
    assert_eq!(road.store.situation_of(id).await.expect("read").alarms.len(), 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_lifted_cap_lets_a_family_text_on() {
    let network = Network::start(|_, _| Does::Takes).await;
    let url = &fresh_urls()[0];
    let store = Store::open(url).await.expect("a store");
    let staff = NewStaff {
        name: "Brian".into(),
        phone: Some(WORKER.into()),
        gateway: Some("plain".into()),
        lang: "en".into(),
        role: "field".into(),
        password_hash: None,
    };
    store.add_staff(&staff).await.expect("added");
    store.close().await;
    let server = Setting::new(url, &network.send_url).with("BELLYFUL__TEXTS_PER_DAY", "2").start();
    let family = "+99900000123";
    let answers = |all: &[bellyful_tests::network::Taken]| all.iter().filter(|text| text.to == family).count();
    for (n, text) in ["fed 1 kg rice", "fed 2 kg rice", "fed 3 kg rice"].iter().enumerate() {
        assert_eq!(text_in(&server.url, &n.to_string(), family, text).await, Some(202));
    }
    network.until(std::time::Duration::from_secs(20), |all| answers(all) >= 2).await;
    tokio::time::sleep(std::time::Duration::from_secs(2)).await;
    assert_eq!(answers(&network.delivered()), 2, "the third is over the cap: {:?}", network.delivered());
    assert_eq!(text_in(&server.url, "w1", WORKER, "lift cap 1").await, Some(202));
    network.until(std::time::Duration::from_secs(20), |all| all.iter().any(|text| text.to == WORKER)).await;
    assert_eq!(text_in(&server.url, "4", family, "fed 4 kg rice").await, Some(202));
    let all = network.until(std::time::Duration::from_secs(20), |all| answers(all) >= 3).await;
    assert_eq!(answers(&all), 3, "{all:?}");
}

#[tokio::test]
async fn where_a_pin_is_needed_who_has_none_is_asked_to_choose_one() {
    let mut road = Road::new().await;
    road.family("+99900000123", TANK).await;
    road.store.set(NEEDS_PIN, Some("yes"), &Did::SetPinNeed { all: true }.by("Asha"), road.now).await.expect("kept");
    for text in ["history 1", "who needs me", "tell 1 hello", "for 1: fed 5 kg"] {
        road.check(WORKER, text, "you need a PIN. Choose one").await;
    }
    assert!(road.text(WORKER, "for 1: gas smell in the kitchen").await[0].text.contains("Everyone out"));
    road.check(WORKER, "ok 1", "is yours").await;
    road.check(WORKER, "pin 8362", "your PIN from now on").await;
    road.check(WORKER, "history 1", "Atieno").await;
}
