//! Months of history, made by the families texting and the bot answering, day after day, on a simulated clock.
//!
//! Takes the store and the mind; fills the store the same way as any gateway would. Nothing is inserted ready-made.

use super::families::{self, DAYS, FAMILIES, Family, WORKER, Way};
use crate::household::{Decision, Sender};
use crate::jobs::Answerer;
use crate::message::{Inbound, Outbound};
use crate::mind::Mind;
use crate::pages::visit::{self, Errand};
use crate::record::local_day;
use crate::setup::{Seeded, Setup, set_up};
use crate::store::{Arrival, Cause, Store, StoreError, Visit, Wanted};
use crate::workbench::{nobody, work_lane};
use bellyful_core::advice::Advice;
use bellyful_core::fact::{Fact, Walls, What};
use bellyful_core::feeds::Feed;
use chrono::{DateTime, Duration, Utc};
use rand::SeedableRng;
use rand::rngs::StdRng;
use std::sync::Arc;
use std::sync::atomic::{AtomicI32, Ordering};

/// Name of the demo's only gateway.
pub const GATEWAY: &str = "demo";

/// How many days of each family are done.
#[derive(Debug, Default)]
pub struct Progress {
    days: [AtomicI32; FAMILIES.len()],
}

impl Progress {
    pub fn of(&self, family: usize) -> i32 {
        self.days[family].load(Ordering::Relaxed)
    }
    pub fn whole(&self, family: usize) -> bool {
        self.of(family) >= DAYS
    }
    pub fn all_whole(&self) -> bool {
        (0..FAMILIES.len()).all(|family| self.whole(family))
    }
    /// Of all days of all families, in hundredths.
    pub fn percent(&self) -> i32 {
        (0..FAMILIES.len()).map(|family| self.of(family)).sum::<i32>() * 100 / (DAYS * FAMILIES.len() as i32)
    }
}

/// Sets the families up that a programme handed over, in order, so that their numbers are always the same.
pub async fn set_all_up(store: &Store, mind: &Mind, end: DateTime<Utc>) -> Result<(), StoreError> {
    for family in FAMILIES.iter().filter(|family| family.way != Way::New) {
        let teller = Teller { store, mind, family, told: 0, last: None };
        teller.set_up(end - Duration::days(i64::from(DAYS))).await?;
    }
    Ok(())
}

/// One family's days, up to `end`.
pub async fn play(
    store: Store,
    mind: Arc<Mind>,
    which: usize,
    end: DateTime<Utc>,
    progress: Arc<Progress>,
) -> Result<(), StoreError> {
    let family = &FAMILIES[which];
    let first = end - Duration::days(i64::from(DAYS));
    let came = if family.way == Way::New { DAYS - 21 } else { 0 };
    let mut teller = Teller { store: &store, mind: &mind, family, told: 0, last: None };
    let mut rng = StdRng::seed_from_u64(0xB10 + which as u64);
    for day in came..DAYS {
        let dawn = first + Duration::days(i64::from(day));
        let mut moments: Vec<(u32, Option<String>)> = vec![(8 * 60, None), (10 * 60 + 5, None)];
        let texts = families::texts(family.way, day - came, teller.last.as_ref(), &mut rng);
        moments.extend(texts.into_iter().map(|(minutes, text)| (minutes, Some(text))));
        moments.sort();
        for (minutes, text) in moments {
            let at = dawn + Duration::minutes(i64::from(minutes));
            if at <= end {
                teller.at(at, text).await?;
            }
        }
        if day == came && came > 0 {
            settle_newcomer(&store, family, dawn + Duration::hours(12)).await?;
        }
        for (_, errand, bad, note) in families::visits(family.way).iter().filter(|visit| visit.0 == day) {
            visited(&store, family, dawn + Duration::hours(14), *errand, bad, note).await?;
        }
        progress.days[which].store(day + 1, Ordering::Relaxed);
        tokio::task::yield_now().await;
    }
    Ok(())
}

struct Teller<'a> {
    store: &'a Store,
    mind: &'a Mind,
    family: &'a Family,
    told: u32,
    last: Option<Advice>,
}

impl Teller<'_> {
    async fn set_up(&self, at: DateTime<Utc>) -> Result<(), StoreError> {
        let (kg, days_ago) = self.family.seeded;
        let setup = Setup {
            lang: Some(self.family.lang.into()),
            name: Some(self.family.name.into()),
            tank_l: Some(1000.0),
            liquid_l: Some(800.0),
            gas_store_l: Some(600.0),
            place: None,
            seeded: Some(Seeded { feed: Feed::CattleManure, kg, days_ago }),
            shade: Some(if self.family.way == Way::Highland { Walls::White } else { Walls::Black }),
            people: Some(5),
        };
        let mut decision = set_up(self.mind, self.family.number, GATEWAY, &setup, at).expect("the sizes are plausible");
        sited(&mut decision, self.family, self.family.seeded.1, at);
        self.store.keep(Cause::Hand, &nobody(), decision, at).await?;
        Ok(())
    }

    /// A moment of the family's day: it texts, or only the clock goes on.
    async fn at(&mut self, at: DateTime<Utc>, text: Option<String>) -> Result<(), StoreError> {
        if let Some(text) = text {
            self.told += 1;
            let id = format!("h{}", self.told);
            text_in(self.store, self.mind, self.family.number, &id, &text, at).await?;
        }
        let queued = work_lane(self.store, self.mind, self.family.number, at).await?;
        for outbound in queued {
            if outbound.to == WORKER.1 {
                self.worker_answers(&outbound, at).await?;
            } else if let Some(advice) = outbound.advice {
                self.last = Some(advice);
            }
        }
        Ok(())
    }

    /// The field worker takes an alarm after ten minutes.
    async fn worker_answers(&self, told: &Outbound, at: DateTime<Utc>) -> Result<(), StoreError> {
        let Sender::Family { household, .. } = self.store.sender(self.family.number).await? else { return Ok(()) };
        let at = at + Duration::minutes(10);
        text_in(self.store, self.mind, WORKER.1, &format!("w{}", told.id), &format!("ok {household}"), at).await?;
        work_lane(self.store, self.mind, WORKER.1, at).await?;
        Ok(())
    }
}

/// A family lives in a town of the map and in the invented climate of its district.
fn sited(decision: &mut Decision, family: &Family, days_ago: u32, at: DateTime<Utc>) {
    let Some(household) = &mut decision.household else { return };
    let day = local_day(at, &household.time_zone).plus(-(days_ago as i32));
    let normals = families::climate(family.way);
    for what in [What::Place { name: family.town.into() }, What::Sited { normals }] {
        decision.facts.push(Fact { id: household.next_fact, day, told_at: at.timestamp(), what });
        household.next_fact += 1;
    }
}

/// A text as the demo's gateway hands it over.
pub async fn text_in(
    store: &Store,
    mind: &Mind,
    from: &str,
    id: &str,
    text: &str,
    at: DateTime<Utc>,
) -> Result<(), StoreError> {
    let inbound = Inbound {
        gateway: GATEWAY.into(),
        id: id.to_owned(),
        from: from.to_owned(),
        to: None,
        text: text.to_owned(),
        sent_at: at,
        received_at: at,
    };
    let alarm = mind.alarm(&inbound);
    store.accept(&[Arrival { inbound, alarm }]).await?;
    Ok(())
}

/// The field worker was there, and found all good but what is named.
async fn visited(
    store: &Store,
    family: &Family,
    at: DateTime<Utc>,
    errand: Errand,
    bad: &[&str],
    note: &str,
) -> Result<(), StoreError> {
    let situation = store.situation(&store.sender(family.number).await?, Wanted::default()).await?;
    let Some(household) = &situation.household else { return Ok(()) };
    let found = visit::of(errand).map(|check| (check.id.to_owned(), !bad.contains(&check.id))).collect();
    let day = local_day(at, &household.time_zone);
    let (staff, note) = (WORKER.0.to_owned(), note.to_owned());
    let visit = Visit { at, day, kind: errand, staff, found, note, photos: vec![] };
    store.keep_visit(household.id, &visit, vec![]).await
}

/// Gives the newcomer, who came by text, the invented district's climate and name.
async fn settle_newcomer(store: &Store, family: &Family, at: DateTime<Utc>) -> Result<(), StoreError> {
    let situation = store.situation(&store.sender(family.number).await?, Wanted::default()).await?;
    let Some(mut household) = situation.household.clone() else { return Ok(()) };
    household.name = family.name.to_owned();
    let mut decision = Decision { household: Some(household), ..Decision::default() };
    sited(&mut decision, family, 0, at);
    store.keep(Cause::Hand, &situation, decision, at).await?;
    Ok(())
}
