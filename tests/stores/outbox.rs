//! Texts out: each once, in order to each recipient, alarms ahead, whatever the reports say and when.

use crate::keeping::{family, keep_by_hand, moment};
use crate::order::{arrive_and_claim, text};
use bellyful::household::Decision;
use bellyful::message::{Kind, Outbound, answer_id};
use bellyful::store::{Arrival, ByWire, Cause, Claim, Outcome, Receipt, Store, ToSend, Wanted};
use bellyful_tests::stores::on_each_store;

pub fn reply_to(claim: &Claim, words: &str) -> Outbound {
    let id = answer_id(&claim.inbound.gateway, &claim.inbound.from, &claim.inbound.id, 0);
    outbound(&id, &claim.inbound.from, words, Kind::Answer, 0)
}

fn outbound(id: &str, to: &str, words: &str, kind: Kind, not_before: i64) -> Outbound {
    Outbound {
        id: id.into(),
        gateway: "plain".into(),
        to: to.into(),
        text: words.into(),
        kind,
        advice: None,
        not_before: moment(not_before),
    }
}

async fn queue(store: &Store, replies: Vec<Outbound>) {
    keep_by_hand(store, Decision { replies, ..Decision::default() }).await;
}

async fn claim_at(store: &Store, at: i64) -> Vec<ToSend> {
    store.claim_sends("me", "plain", 9, moment(at), moment(at + 10)).await.unwrap()
}

fn ids(sends: &[ToSend]) -> Vec<&str> {
    sends.iter().map(|send| send.id.as_str()).collect()
}

#[tokio::test]
async fn to_one_phone_they_go_in_order_and_an_alarm_waits_for_nothing() {
    on_each_store(async |store| {
        let to = |id, number, kind, at| outbound(id, number, id, kind, at);
        queue(
            &store,
            vec![
                to("a1", "+1", Kind::Reminder, 500),
                to("a2", "+1", Kind::Answer, 0),
                to("a3", "+1", Kind::Answer, 0),
                to("b1", "+2", Kind::Answer, 0),
                to("a4", "+1", Kind::Alarm, 0),
            ],
        )
        .await;
        // The reminder waits for the morning and holds nobody back.
        let sends = claim_at(&store, 1).await;
        assert_eq!(ids(&sends), ["a4", "a2", "b1"]);
        assert!(claim_at(&store, 2).await.is_empty());
        let again = (sends[1].clone(), Outcome::Again { at: moment(60), why: "busy".into() });
        store.settle(&[again, (sends[2].clone(), Outcome::Sent { wire_id: None })], moment(2)).await.unwrap();
        assert!(ids(&claim_at(&store, 3).await).is_empty());
        assert_eq!(ids(&claim_at(&store, 60).await), ["a4", "a2"], "the alarm's lease ran out");
    })
    .await;
}

#[tokio::test]
async fn a_text_whose_sender_died_is_marked_as_maybe_sent() {
    on_each_store(async |store| {
        queue(&store, vec![outbound("a", "+1", "a", Kind::Answer, 0)]).await;
        let first = claim_at(&store, 1).await;
        assert!(!first[0].maybe_sent);
        let second = claim_at(&store, 11).await;
        assert_eq!((second[0].maybe_sent, second[0].tries), (true, 2));
        store
            .settle(&[(second[0].clone(), Outcome::Again { at: moment(12), why: "500".into() })], moment(11))
            .await
            .unwrap();
        assert!(!claim_at(&store, 12).await[0].maybe_sent, "its outcome is known");
    })
    .await;
}

#[tokio::test]
async fn what_is_stale_is_dropped_and_what_is_refused_is_not_tried_again() {
    on_each_store(async |store| {
        queue(&store, vec![outbound("a", "+1", "a", Kind::Answer, 0), outbound("b", "+2", "b", Kind::Answer, 0)]).await;
        let sends = claim_at(&store, 1).await;
        store.settle(&[(sends[0].clone(), Outcome::Refused { why: "404".into() })], moment(1)).await.unwrap();
        assert!(claim_at(&store, 25 * 3600).await.is_empty());
        assert_eq!(store.unsent().await.unwrap(), 0);
    })
    .await;
}

#[tokio::test]
async fn reports_may_come_early_twice_and_in_any_order() {
    on_each_store(async |store| {
        queue(&store, vec![outbound("a", "+1", "a", Kind::Answer, 0)]).await;
        let report = |wire, receipt| store.receipt("plain", wire, receipt, moment(2));
        assert!(!report(ByWire::Ours("nobody's"), Receipt::Delivered).await.unwrap());
        let sends = claim_at(&store, 1).await;
        // Faster than the answer to our own call.
        assert!(report(ByWire::Ours("a"), Receipt::Delivered).await.unwrap());
        store.settle(&[(sends[0].clone(), Outcome::Sent { wire_id: Some("w7".into()) })], moment(2)).await.unwrap();
        assert!(report(ByWire::Theirs("w7"), Receipt::Failed).await.unwrap());
        assert_eq!(store.unsent().await.unwrap(), 0);
        assert!(claim_at(&store, 50).await.is_empty());
    })
    .await;
}

#[tokio::test]
async fn an_alarm_given_at_the_door_is_not_given_again_by_the_turn() {
    on_each_store(async |store| {
        let id = family(&store, "+15550100").await;
        let Arrival { inbound, .. } = text("+15550100", "x", "gas smell everywhere", 1);
        let alarm_id = answer_id("plain", "+15550100", "x", 0);
        let alarm = outbound(&alarm_id, "+15550100", "Everyone out.", Kind::Alarm, 0);
        let arrival = Arrival { inbound, alarm: Some(alarm.clone()) };
        store.accept(std::slice::from_ref(&arrival)).await.unwrap();
        store.accept(&[arrival]).await.unwrap();
        assert_eq!(store.unsent().await.unwrap(), 1);
        let claim = arrive_and_claim(&store, "+15550100", "later", 2).await;
        assert!(claim.alarmed, "danger is worked first");
        let sender = store.sender("+15550100").await.unwrap();
        let situation = store.situation(&sender, Wanted::default()).await.unwrap();
        let staff = outbound("s", "+15550900", "Alarm at the Okelos", Kind::Staff, 0);
        let replies = vec![alarm, outbound("other id", "+15550100", "Everyone out!", Kind::Alarm, 0), staff];
        let decision = Decision { household: situation.household.clone(), replies, ..Decision::default() };
        let kept = store.keep(Cause::Text(&claim), &situation, decision, moment(20)).await.unwrap();
        assert_eq!(kept.household, id);
        assert_eq!(kept.queued.iter().map(|text| text.id.as_str()).collect::<Vec<_>>(), ["s"]);
        assert_eq!(store.unsent().await.unwrap(), 2);
    })
    .await;
}

#[tokio::test]
async fn after_stop_nothing_that_waited_is_sent_but_alarms() {
    on_each_store(async |store| {
        let id = family(&store, "+15550100").await;
        queue(
            &store,
            vec![outbound("a", "+15550100", "a", Kind::Reminder, 0), outbound("b", "+15550100", "b", Kind::Alarm, 0)],
        )
        .await;
        let claim = arrive_and_claim(&store, "+15550100", "stop", 1).await;
        let sender = store.sender("+15550100").await.unwrap();
        let situation = store.situation(&sender, Wanted::default()).await.unwrap();
        let decision =
            Decision { stop: Some(true), replies: vec![reply_to(&claim, "Stopped.")], ..Decision::default() };
        store.keep(Cause::Text(&claim), &situation, decision, moment(20)).await.unwrap();
        let alarm = claim_at(&store, 20).await;
        assert_eq!(ids(&alarm), ["b"], "what follows an alarm waits until it is sent");
        store.settle(&[(alarm[0].clone(), Outcome::Sent { wire_id: None })], moment(20)).await.unwrap();
        assert_eq!(claim_at(&store, 20).await[0].text, "Stopped.");
        let sender = store.sender("+15550100").await.unwrap();
        assert_eq!(sender, bellyful::household::Sender::Family { household: id, stopped: true });
        assert!(store.phones(id).await.unwrap().is_empty());
    })
    .await;
}

#[tokio::test]
async fn a_gateways_rate_holds_whichever_nodes_send() {
    use chrono::Duration;
    on_each_store(async |store| {
        let texts = (0..30).map(|n| outbound(&format!("t{n}"), &format!("+1{n}"), "x", Kind::Answer, 0)).collect();
        queue(&store, texts).await;
        let apart = Duration::milliseconds(200);
        let mut slots = vec![];
        // Two nodes, one of them with a clock that is behind, look every half second.
        for look in 0..12 {
            let mut nodes = [("first", 0), ("second", 300)];
            nodes.rotate_left(look as usize % 2);
            for (node, behind) in nodes {
                let now = moment(1) + Duration::milliseconds(look * 500 - behind);
                let sends = store.claim_sends_at(node, "plain", 16, Some(apart), now, now + Duration::seconds(60));
                let sends = sends.await.unwrap();
                assert!(sends.iter().all(|send| send.at <= now + Duration::seconds(1)), "none is held for long");
                slots.extend(sends.into_iter().map(|send| (send.at, node)));
            }
        }
        assert_eq!(slots.len(), 30, "the rate is used");
        slots.sort();
        assert!(slots.windows(2).all(|two| two[1].0 - two[0].0 >= apart), "{slots:?}");
        assert!(slots.iter().any(|(_, node)| *node == "second"), "both send");
    })
    .await;
}
