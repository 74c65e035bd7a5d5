//! All that follows from one text, or from the clock, kept in one transaction or not at all.

use super::overview::keep_glance;
use super::queue::enqueue;
use super::rows::{Value, insert_many, json, ms};
use super::trail::write_down;
use super::{Claim, Lane, Store, StoreError, Tx, Wake};
use crate::household::{CareNow, Decision, Household, HouseholdId, Situation};
use crate::message::{Kind, Outbound, answer_id};
use bellyful_core::fact::What;
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};

/// What a decision follows from, and so what is done with once it is kept.
#[derive(Debug, Clone, Copy)]
pub enum Cause<'a> {
    Text(&'a Claim),
    Wake(&'a Wake),
    /// A person at the keyboard: set-up by command, by staff, by a demo.
    Hand,
}

/// What came of keeping.
#[derive(Debug, Clone, PartialEq)]
pub struct Kept {
    /// The household it was about, with the number a new one got; 0 for none.
    pub household: HouseholdId,
    /// Texts of ours that are new: those kept before, such as an alarm answered on receipt, left out.
    pub queued: Vec<Outbound>,
}

const NAME: &str = "keep";

impl Store {
    /// Keeps a decision. Errors: [`StoreError::Stale`] when the household moved on since `situation` was loaded
    /// (load and decide again); [`StoreError::Done`] when the cause was dealt with already.
    pub async fn keep(
        &self,
        cause: Cause<'_>,
        situation: &Situation,
        decision: Decision,
        now: DateTime<Utc>,
    ) -> Result<Kept, StoreError> {
        let mut tx = self.begin(NAME).await?;
        if let Cause::Wake(wake) = cause {
            let woken = sqlx::query("DELETE FROM due WHERE household_id = $1 AND kind = $2 AND at = $3")
                .bind(wake.household)
                .bind(wake.due.id())
                .bind(ms(wake.at))
                .execute(&mut *tx)
                .await?;
            if woken.rows_affected() == 0 {
                return Err(StoreError::Done);
            }
        }
        let household = match &decision.household {
            Some(household) => keep_household(&mut tx, household, situation, now).await?,
            None => situation.household.as_ref().map_or(0, |household| household.id),
        };
        if let Cause::Text(claim) = cause {
            let done = sqlx::query(
                "UPDATE inbox SET state = 'answered', why = $2, household_id = $3, done_at = $4 \
                 WHERE id = $1 AND state = 'open'",
            )
            .bind(claim.row)
            .bind(claim.quiet)
            .bind(household)
            .bind(ms(now))
            .execute(&mut *tx)
            .await?;
            if done.rows_affected() == 0 {
                return Err(StoreError::Done);
            }
        }
        if let (true, Cause::Text(claim)) = (decision.secret, cause) {
            sqlx::query("UPDATE inbox SET text = '' WHERE id = $1").bind(claim.row).execute(&mut *tx).await?;
        }
        keep_phones(&mut tx, household, &decision, now).await?;
        keep_past(&mut tx, household, &decision).await?;
        if let (Some(stop), Cause::Text(claim)) = (decision.stop, cause) {
            keep_stop(&mut tx, household, &claim.inbound.from, stop, now).await?;
        }
        keep_clock(&mut tx, household, &decision, now).await?;
        if let Some(care) = &decision.care {
            keep_care(&mut tx, household, care, now).await?;
        }
        if let Some((staff, line)) = &decision.line {
            sqlx::query("UPDATE staff SET line = $2 WHERE id = $1")
                .bind(staff)
                .bind(json(line))
                .execute(&mut *tx)
                .await?;
        }
        if let Some(deed) = &decision.audit {
            write_down(&mut tx, household, deed, now).await?;
        }
        // Before the replies, so that the word that all is forgotten still finds its way.
        if decision.forget {
            super::forget::forget(&mut tx, household, now).await?;
        }
        let queued = keep_replies(&mut tx, cause, household, decision.replies, now).await?;
        self.commit(NAME, tx).await?;
        Ok(Kept { household, queued })
    }
}

async fn keep_household(
    tx: &mut Tx,
    household: &Household,
    situation: &Situation,
    now: DateTime<Utc>,
) -> Result<HouseholdId, StoreError> {
    if household.id == 0 {
        let id = sqlx::query_scalar(
            "INSERT INTO household (version, name, lang, country, time_zone, since_at, seed, staff_id, next_fact, \
             talk) VALUES (1, $1, $2, $3, $4, $5, $6, $7, $8, $9) RETURNING id",
        )
        .bind(&household.name)
        .bind(&household.lang)
        .bind(&household.country)
        .bind(&household.time_zone)
        .bind(ms(now))
        .bind(household.seed)
        .bind(household.staff_id)
        .bind(household.next_fact)
        .bind(json(&household.talk))
        .fetch_one(&mut **tx)
        .await?;
        keep_glance(tx, id, 1, &household.talk).await?;
        return Ok(id);
    }
    let moved = sqlx::query(
        "UPDATE household SET version = version + 1, name = $3, lang = $4, country = $5, time_zone = $6, seed = $7, \
         staff_id = $8, next_fact = $9, talk = $10 WHERE id = $1 AND version = $2",
    )
    .bind(household.id)
    .bind(situation.version)
    .bind(&household.name)
    .bind(&household.lang)
    .bind(&household.country)
    .bind(&household.time_zone)
    .bind(household.seed)
    .bind(household.staff_id)
    .bind(household.next_fact)
    .bind(json(&household.talk))
    .execute(&mut **tx)
    .await?;
    if moved.rows_affected() == 0 {
        return Err(StoreError::Stale(household.id));
    }
    keep_glance(tx, household.id, situation.version + 1, &household.talk).await?;
    Ok(household.id)
}

async fn keep_phones(
    tx: &mut Tx,
    household: HouseholdId,
    decision: &Decision,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    for phone in &decision.join {
        sqlx::query(
            "INSERT INTO phone (number, household_id, gateway, since_at) VALUES ($1, $2, $3, $4) \
             ON CONFLICT (number) DO UPDATE SET household_id = excluded.household_id, gateway = excluded.gateway",
        )
        .bind(&phone.number)
        .bind(household)
        .bind(&phone.gateway)
        .bind(ms(now))
        .execute(&mut **tx)
        .await?;
        // Texts of that number that wait already now belong in the household's lane.
        sqlx::query("UPDATE inbox SET lane = $2, household_id = $3 WHERE lane = $1 AND state = 'open'")
            .bind(format!("n:{}", phone.number))
            .bind(Lane::of_household(household).0)
            .bind(household)
            .execute(&mut **tx)
            .await?;
    }
    Ok(())
}

/// Facts, the twin and what it can be replayed from.
async fn keep_past(tx: &mut Tx, household: HouseholdId, decision: &Decision) -> Result<(), StoreError> {
    let facts = decision.facts.iter().map(|fact| {
        vec![
            Value::Int(household),
            Value::Int(fact.id),
            Value::Int(i64::from(fact.day.0)),
            Value::Int(fact.told_at),
            Value::Text(json(&fact.what)),
        ]
    });
    let into = "INSERT INTO fact (household_id, id, day, told_at, what) VALUES";
    insert_many(tx, into, "({}, {}, {}, {}, {})", "", facts.collect()).await?;
    let place = decision.facts.iter().rev().find_map(|fact| match &fact.what {
        What::Place { name } => Some(name),
        _ => None,
    });
    if let Some(place) = place {
        sqlx::query("UPDATE household SET place = $2 WHERE id = $1")
            .bind(household)
            .bind(place)
            .execute(&mut **tx)
            .await?;
    }
    if let Some(twin) = &decision.twin {
        sqlx::query(
            "INSERT INTO twin (household_id, day, bytes) VALUES ($1, $2, $3) ON CONFLICT (household_id) DO UPDATE \
             SET day = excluded.day, bytes = excluded.bytes",
        )
        .bind(household)
        .bind(i64::from(twin.day.0))
        .bind(twin.bytes.as_slice())
        .execute(&mut **tx)
        .await?;
    }
    if let Some(foreseen) = &decision.foreseen {
        sqlx::query("UPDATE glance SET foreseen = $2 WHERE household_id = $1")
            .bind(household)
            .bind(json(foreseen))
            .execute(&mut **tx)
            .await?;
    }
    if let Some(from) = decision.drop_checkpoints_from {
        sqlx::query("DELETE FROM checkpoint WHERE household_id = $1 AND day >= $2")
            .bind(household)
            .bind(i64::from(from.0))
            .execute(&mut **tx)
            .await?;
    }
    let checkpoints = decision
        .checkpoints
        .iter()
        .map(|kept| vec![Value::Int(household), Value::Int(i64::from(kept.day.0)), Value::Bytes(kept.bytes.clone())]);
    insert_many(
        tx,
        "INSERT INTO checkpoint (household_id, day, bytes) VALUES",
        "({}, {}, {})",
        "ON CONFLICT (household_id, day) DO UPDATE SET bytes = excluded.bytes",
        checkpoints.collect(),
    )
    .await?;
    if let Some(last) = decision.checkpoints.iter().map(|kept| kept.day).max() {
        thin_out(tx, household, last).await?;
    }
    Ok(())
}

/// All checkpoints of four weeks, one of each four weeks for half a year, one a year before that: what is corrected later
/// is replayed from further back. They are the largest rows there are.
async fn thin_out(tx: &mut Tx, household: HouseholdId, last: Day) -> Result<(), StoreError> {
    sqlx::query(
        "DELETE FROM checkpoint WHERE household_id = $1 AND ((day < $2 AND day % 28 <> 0) OR (day < $3 AND day % 364 <> 0))",
    )
    .bind(household)
    .bind(i64::from(last.0) - 28)
    .bind(i64::from(last.0) - 182)
    .execute(&mut **tx)
    .await?;
    Ok(())
}

async fn keep_stop(
    tx: &mut Tx,
    household: HouseholdId,
    number: &str,
    stop: bool,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    if stop {
        sqlx::query(
            "INSERT INTO stopped (number, household_id, at) VALUES ($1, $2, $3) ON CONFLICT (number) DO NOTHING",
        )
        .bind(number)
        .bind(household)
        .bind(ms(now))
        .execute(&mut **tx)
        .await?;
        // What still waits to be sent to them is not sent any more, but for alarms.
        sqlx::query(
            "UPDATE outbox SET state = 'expired', why = 'stopped', settled_at = $2 \
             WHERE recipient = $1 AND state = 'queued' AND urgent = 0 AND until_at <= $2",
        )
        .bind(number)
        .bind(ms(now))
        .execute(&mut **tx)
        .await?;
    } else {
        sqlx::query("DELETE FROM stopped WHERE number = $1").bind(number).execute(&mut **tx).await?;
    }
    Ok(())
}

/// Who sees to a household.
async fn keep_care(tx: &mut Tx, household: HouseholdId, care: &CareNow, now: DateTime<Utc>) -> Result<(), StoreError> {
    match care {
        CareNow::Taken { staff, need } => super::care::take(tx, household, need, staff, now).await,
        CareNow::GivenBack => {
            let sql = "DELETE FROM care WHERE household_id = $1 AND done_at IS NULL";
            sqlx::query(sql).bind(household).execute(&mut **tx).await?;
            Ok(())
        }
        CareNow::Done => super::care::end(tx, household, now).await.map(|_| ()),
    }
}

/// What the clock is to wake us for, and the alarms that staff must acknowledge.
async fn keep_clock(
    tx: &mut Tx,
    household: HouseholdId,
    decision: &Decision,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    let set = decision.due.iter().filter_map(|(due, at)| {
        at.map(|at| vec![Value::Int(household), Value::Text(due.id().to_owned()), Value::Int(ms(at))])
    });
    insert_many(
        tx,
        "INSERT INTO due (household_id, kind, at, tries) VALUES",
        "({}, {}, {}, 0)",
        "ON CONFLICT (household_id, kind) DO UPDATE SET at = excluded.at, tries = 0",
        set.collect(),
    )
    .await?;
    for (due, _) in decision.due.iter().filter(|(_, at)| at.is_none()) {
        sqlx::query("DELETE FROM due WHERE household_id = $1 AND kind = $2")
            .bind(household)
            .bind(due.id())
            .execute(&mut **tx)
            .await?;
    }
    if let Some(staff) = decision.acknowledged_by {
        sqlx::query(
            "UPDATE alarm SET acknowledged_by = $2, acknowledged_at = $3 \
             WHERE household_id = $1 AND acknowledged_at IS NULL",
        )
        .bind(household)
        .bind(staff)
        .bind(ms(now))
        .execute(&mut **tx)
        .await?;
    }
    if let Some(alarm) = &decision.alarm {
        sqlx::query("INSERT INTO alarm (household_id, at, signs, said) VALUES ($1, $2, $3, $4)")
            .bind(household)
            .bind(ms(alarm.at))
            .bind(json(&alarm.signs))
            .bind(&alarm.said)
            .execute(&mut **tx)
            .await?;
    }
    Ok(())
}

async fn keep_replies(
    tx: &mut Tx,
    cause: Cause<'_>,
    household: HouseholdId,
    mut replies: Vec<Outbound>,
    now: DateTime<Utc>,
) -> Result<Vec<Outbound>, StoreError> {
    let mut row = None;
    if let Cause::Text(claim) = cause {
        row = Some(claim.row);
        // The alarm went out on receipt; this turn words it again and it must not go twice.
        if claim.alarmed {
            let first = answer_id(&claim.inbound.gateway, &claim.inbound.from, &claim.inbound.id, 0);
            replies.retain(|reply| reply.id != first && !(reply.kind == Kind::Alarm && reply.to == claim.inbound.from));
            // Whose it was is known only now, and is part of their story.
            sqlx::query("UPDATE outbox SET household_id = $1, inbox_id = $2 WHERE id = $3 AND household_id = 0")
                .bind(household)
                .bind(claim.row)
                .bind(first)
                .execute(&mut **tx)
                .await?;
        }
        if claim.quiet.is_some() {
            replies.retain(|reply| matches!(reply.kind, Kind::Alarm | Kind::Staff) || reply.to != claim.inbound.from);
        }
    }
    let mut queued = Vec::with_capacity(replies.len());
    for reply in replies {
        if enqueue(tx, household, row, &[&reply], now).await? == 1 {
            queued.push(reply);
        }
    }
    Ok(queued)
}
