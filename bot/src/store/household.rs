//! What a turn looks at: the sender, their household, its twin, its facts.
//!
//! Takes numbers; gives [`Situation`]s. Only reads. What one turn loads does not grow with the years of history.

use super::rows::{day, from_json, time};
use super::{Moment, Store, StoreError};
use crate::household::{Alarm, Household, HouseholdId, KeptTwin, Phone, Sender, Situation, Staff};
use bellyful_core::fact::Fact;
use bellyful_core::twin::Twin;
use bellyful_core::units::Day;
use sqlx::any::AnyRow;
use sqlx::{AnyConnection, Row};

/// What of a household to load beyond the usual.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Wanted {
    /// The household a field worker writes about, by number or by name; the sender's own without it.
    pub household: Option<String>,
    /// Load the twin and the facts back to this day, because something about it is told late or corrected.
    pub since: Option<Day>,
}

const HOUSEHOLD: &str = "SELECT h.id, h.version, h.name, h.lang, h.country, h.time_zone, h.since_at, h.seed, \
    h.staff_id, h.next_fact, h.talk, h.place, t.day, t.bytes, \
    (SELECT COUNT(*) FROM care c WHERE c.household_id = h.id AND c.done_at IS NULL) AS in_hand, \
    (SELECT done_at FROM care c WHERE c.household_id = h.id) AS done_at FROM household h LEFT JOIN twin t ON t.household_id = h.id \
    WHERE h.id = $1";

/// Around household $1: facts from day $2 on in the order told, phones that did not say stop in the order they
/// joined, alarms nobody acknowledged oldest first, and who is on call, the family's own field worker $3 first.
const AROUND: &str = "SELECT 'fact' AS part, id, day, told_at, what AS a, '' AS b, '' AS c, '' AS d FROM fact \
    WHERE household_id = $1 AND day >= $2 \
    UNION ALL SELECT 'phone', 0, 0, since_at, gateway, number, '', '' FROM phone WHERE household_id = $1 \
    AND NOT EXISTS (SELECT 1 FROM stopped s WHERE s.number = phone.number) \
    UNION ALL SELECT 'alarm', id, 0, at, signs, said, '', '' FROM alarm \
    WHERE household_id = $1 AND acknowledged_at IS NULL \
    UNION ALL SELECT * FROM (SELECT 'staff', id, CASE WHEN id = $3 THEN 0 ELSE 1 END AS day, 0, name, phone, gateway, \
    lang FROM staff WHERE phone IS NOT NULL AND role <> 'viewer' ORDER BY 3, name LIMIT $4) staff \
    ORDER BY part, day, told_at, id, a, b";

/// Households that one name is asked about at the most.
const NAMED_MOST: usize = 8;

/// A name with its accents, capitals and marks taken off.
fn folded(name: &str) -> String {
    name.split_whitespace().map(crate::text::fold).collect::<Vec<_>>().join(" ")
}

/// Whether words are a run of the words of a name, the last perhaps begun only: "ami" of "Amina Odhiambo".
fn part_of(said: &str, name: &str) -> bool {
    said.chars().count() >= PART_LEAST && name.match_indices(said).any(|(at, _)| at == 0 || name[..at].ends_with(' '))
}

/// Letters that a part of a name has at least.
const PART_LEAST: usize = 3;

/// Most field workers that one alarm is told to.
const ON_CALL_MOST: i64 = 8;

impl Store {
    /// Who texts from this number.
    pub async fn sender(&self, number: &str) -> Result<Sender, StoreError> {
        let row = sqlx::query(
            "SELECT (SELECT household_id FROM phone WHERE number = $1) AS household_id, \
             (SELECT at FROM stopped WHERE number = $1) AS stopped_at, \
             (SELECT id FROM staff WHERE phone = $1) AS staff_id",
        )
        .bind(number)
        .fetch_one(&self.read)
        .await?;
        let stopped = row.try_get::<Option<i64>, _>("stopped_at")?.is_some();
        if let Some(id) = row.try_get::<Option<i64>, _>("staff_id")? {
            let row = sqlx::query("SELECT id, name, phone, gateway, lang FROM staff WHERE id = $1")
                .bind(id)
                .fetch_one(&self.read)
                .await?;
            return Ok(Sender::Staff(staff(&row)?));
        }
        Ok(match row.try_get::<Option<i64>, _>("household_id")? {
            Some(household) => Sender::Family { household, stopped },
            None => Sender::Stranger { stopped },
        })
    }

    /// All that a turn may look at.
    pub async fn situation(&self, sender: &Sender, wanted: Wanted) -> Result<Situation, StoreError> {
        let mut several = vec![];
        let id = match (&wanted.household, sender) {
            (Some(named), _) => {
                several = self.named(named).await?;
                if let [(id, _)] = several[..] { Some(id) } else { None }
            }
            (None, Sender::Family { household, .. }) => Some(*household),
            (None, _) => None,
        };
        let mut situation = self.about(sender.clone(), id, wanted.since).await?;
        if several.len() > 1 {
            situation.several = several;
        }
        Ok(situation)
    }

    /// What the clock looks at when it wakes us for a household.
    pub async fn situation_of(&self, household: HouseholdId) -> Result<Situation, StoreError> {
        self.about(Sender::Family { household, stopped: false }, Some(household), None).await
    }

    async fn about(
        &self,
        sender: Sender,
        id: Option<HouseholdId>,
        since: Option<Day>,
    ) -> Result<Situation, StoreError> {
        self.strike("situation", Moment::Before)?;
        let mut situation = Situation {
            sender,
            version: 0,
            household: None,
            place: String::new(),
            in_hand: false,
            several: Vec::new(),
            twin: None,
            facts: Vec::new(),
            phones: Vec::new(),
            on_call: Vec::new(),
            alarms: Vec::new(),
        };
        // One connection for all of it: taking one from the pool costs more than most questions do.
        let mut reader = self.read.acquire().await?;
        let found = match id {
            Some(id) => sqlx::query(HOUSEHOLD).bind(id).fetch_optional(&mut *reader).await?,
            None => None,
        };
        if let Some(row) = &found {
            let mut household = household(row)?;
            household.talk.seen_to(row.try_get::<Option<i64>, _>("done_at")?.map(time).transpose()?);
            situation.version = row.try_get("version")?;
            situation.place = row.try_get("place")?;
            situation.in_hand = row.try_get::<i64, _>("in_hand")? > 0;
            situation.twin = match since {
                Some(since) if row.try_get::<Option<i64>, _>("day")?.is_some_and(|day| i64::from(since.0) < day) => {
                    checkpoint(&mut reader, household.id, since).await?
                }
                _ => kept_twin(row)?,
            }
            // One that another version of this program kept is rebuilt, for which all facts are fetched.
            .filter(|kept| Twin::from_bytes(&kept.bytes).is_ok());
            situation.household = Some(household);
        }
        add_around(&mut reader, &mut situation).await?;
        Ok(situation)
    }

    /// Households with an open alarm of which this number was told, by a text that was no answer to its own.
    pub async fn told_of(&self, number: &str) -> Result<Vec<(HouseholdId, String)>, StoreError> {
        let rows = sqlx::query(
            "SELECT id, name FROM household WHERE id IN (SELECT a.household_id FROM alarm a \
             WHERE a.acknowledged_at IS NULL AND EXISTS (SELECT 1 FROM outbox o LEFT JOIN inbox i ON i.id = o.inbox_id \
             WHERE o.household_id = a.household_id AND o.created_at >= a.at AND o.recipient = $1 \
             AND (i.sender IS NULL OR i.sender <> $1))) ORDER BY id",
        )
        .bind(number)
        .fetch_all(&self.read)
        .await?;
        rows.iter().map(|row| Ok((row.try_get("id")?, row.try_get("name")?))).collect()
    }

    /// The households a field worker may mean: by number, else by whole name, else by a part of the name or the place.
    async fn named(&self, named: &str) -> Result<Vec<(HouseholdId, String)>, StoreError> {
        let (said, number) = (folded(named), named.trim().parse::<i64>().ok());
        let mut reader = self.read.acquire().await?;
        let rows = match number {
            Some(id) => {
                let sql = "SELECT id, name, place FROM household WHERE id = $1 AND erased_at IS NULL";
                sqlx::query(sql).bind(id).fetch_all(&mut *reader).await?
            }
            None => {
                let sql = "SELECT id, name, place FROM household WHERE erased_at IS NULL ORDER BY id";
                sqlx::query(sql).fetch_all(&mut *reader).await?
            }
        };
        let mut found: [Vec<(HouseholdId, String)>; 3] = Default::default();
        for row in &rows {
            let (name, place): (String, String) = (row.try_get("name")?, row.try_get("place")?);
            let [name_said, place_said] = [folded(&name), folded(&place)];
            let fits = match number {
                Some(_) => 0,
                None if said.is_empty() => continue,
                None if name_said == said => 0,
                None if part_of(&said, &name_said) => 1,
                None if part_of(&said, &place_said) => 2,
                None => continue,
            };
            if found[fits].len() < NAMED_MOST {
                found[fits].push((row.try_get("id")?, name));
            }
        }
        Ok(found.into_iter().find(|fits| !fits.is_empty()).unwrap_or_default())
    }

    /// The last twin kept of a dawn no later than this day's.
    pub async fn kept_before(&self, id: HouseholdId, day: Day) -> Result<Option<KeptTwin>, StoreError> {
        let mut reader = self.read.acquire().await?;
        checkpoint(&mut reader, id, day).await
    }

    /// Every fact of a household, in the order told: enough, with its seed, to rebuild its twin.
    pub async fn facts(&self, id: HouseholdId) -> Result<Vec<Fact>, StoreError> {
        let rows = sqlx::query("SELECT id, day, told_at, what AS a FROM fact WHERE household_id = $1 ORDER BY id")
            .bind(id)
            .fetch_all(&self.read)
            .await?;
        rows.iter().map(fact).collect()
    }

    /// A page of a household's facts in the order told, those after a number.
    pub async fn facts_after(&self, id: HouseholdId, after: i64, most: u32) -> Result<Vec<Fact>, StoreError> {
        let rows = sqlx::query(
            "SELECT id, day, told_at, what AS a FROM fact WHERE household_id = $1 AND id > $2 ORDER BY id LIMIT $3",
        )
        .bind(id)
        .bind(after)
        .bind(i64::from(most))
        .fetch_all(&self.read)
        .await?;
        rows.iter().map(fact).collect()
    }

    /// A household's phones, those that said stop left out; the one that wrote last comes last.
    pub async fn phones(&self, id: HouseholdId) -> Result<Vec<Phone>, StoreError> {
        let rows = sqlx::query(
            "SELECT gateway, number FROM phone WHERE household_id = $1 \
             AND NOT EXISTS (SELECT 1 FROM stopped s WHERE s.number = phone.number) ORDER BY since_at, number",
        )
        .bind(id)
        .fetch_all(&self.read)
        .await?;
        rows.iter().map(|row| Ok(Phone { gateway: row.try_get(0)?, number: row.try_get(1)? })).collect()
    }

    /// A household's phones, and whether each said stop, the one that joined first at the head.
    pub async fn all_phones(&self, id: HouseholdId) -> Result<Vec<(Phone, bool)>, StoreError> {
        let rows = sqlx::query(
            "SELECT gateway, number, (SELECT COUNT(*) FROM stopped s WHERE s.number = phone.number) AS stopped \
             FROM phone WHERE household_id = $1 ORDER BY since_at, number",
        )
        .bind(id)
        .fetch_all(&self.read)
        .await?;
        rows.iter()
            .map(|row| {
                let phone = Phone { gateway: row.try_get("gateway")?, number: row.try_get("number")? };
                Ok((phone, row.try_get::<i64, _>("stopped")? > 0))
            })
            .collect()
    }

    /// Households in order of number, from after `after`.
    pub async fn households(&self, after: HouseholdId, most: u32) -> Result<Vec<Household>, StoreError> {
        let rows = sqlx::query(
            "SELECT id, name, lang, country, time_zone, since_at, seed, staff_id, next_fact, talk FROM household \
             WHERE id > $1 AND erased_at IS NULL ORDER BY id LIMIT $2",
        )
        .bind(after)
        .bind(i64::from(most))
        .fetch_all(&self.read)
        .await?;
        rows.iter().map(household).collect()
    }

    /// When the clock next has something to wake us for.
    pub async fn next_due(&self) -> Result<Option<chrono::DateTime<chrono::Utc>>, StoreError> {
        let at: Option<i64> = sqlx::query_scalar("SELECT MIN(at) FROM due").fetch_one(&self.read).await?;
        at.map(time).transpose()
    }

    /// Numbers of all households that were not erased.
    pub async fn household_ids(&self) -> Result<Vec<HouseholdId>, StoreError> {
        Ok(sqlx::query_scalar("SELECT id FROM household WHERE erased_at IS NULL ORDER BY id")
            .fetch_all(&self.read)
            .await?)
    }

    /// Field workers, in order of name.
    pub async fn staff(&self) -> Result<Vec<Staff>, StoreError> {
        let rows =
            sqlx::query("SELECT id, name, phone, gateway, lang FROM staff ORDER BY name").fetch_all(&self.read).await?;
        rows.iter().map(staff).collect()
    }
}

pub(super) fn household(row: &AnyRow) -> Result<Household, StoreError> {
    Ok(Household {
        id: row.try_get("id")?,
        name: row.try_get("name")?,
        lang: row.try_get("lang")?,
        country: row.try_get("country")?,
        time_zone: row.try_get("time_zone")?,
        since: time(row.try_get("since_at")?)?,
        seed: row.try_get("seed")?,
        staff_id: row.try_get("staff_id")?,
        next_fact: row.try_get("next_fact")?,
        talk: from_json("talk", row.try_get("talk")?)?,
    })
}

fn kept_twin(row: &AnyRow) -> Result<Option<KeptTwin>, StoreError> {
    if row.try_get::<Option<i64>, _>("day")?.is_none() {
        return Ok(None);
    }
    Ok(Some(KeptTwin { day: day(row, "day")?, bytes: row.try_get("bytes")? }))
}

pub(super) fn fact(row: &AnyRow) -> Result<Fact, StoreError> {
    Ok(Fact {
        id: row.try_get("id")?,
        day: day(row, "day")?,
        told_at: row.try_get("told_at")?,
        what: from_json("fact", row.try_get("a")?)?,
    })
}

pub(super) fn staff(row: &AnyRow) -> Result<Staff, StoreError> {
    Ok(Staff {
        id: row.try_get("id")?,
        name: row.try_get("name")?,
        phone: row.try_get("phone")?,
        gateway: row.try_get("gateway")?,
        lang: row.try_get("lang")?,
    })
}

/// Adds facts, phones, alarms and who is on call: many small things in one question to the database, since each
/// question costs a wait.
async fn add_around(reader: &mut AnyConnection, situation: &mut Situation) -> Result<(), StoreError> {
    let (id, own) = situation.household.as_ref().map_or((0, None), |household| (household.id, household.staff_id));
    let from = situation.twin.as_ref().map_or(Day(i32::MIN), |twin| twin.day);
    let rows = sqlx::query(AROUND)
        .bind(id)
        .bind(i64::from(from.0))
        .bind(own.unwrap_or(0))
        .bind(ON_CALL_MOST)
        .fetch_all(&mut *reader)
        .await?;
    for row in &rows {
        match row.try_get::<&str, _>("part")? {
            "fact" => situation.facts.push(fact(row)?),
            "phone" => situation.phones.push(Phone { gateway: row.try_get("a")?, number: row.try_get("b")? }),
            "alarm" => situation.alarms.push(Alarm {
                at: time(row.try_get("told_at")?)?,
                signs: from_json("signs", row.try_get("a")?)?,
                said: row.try_get("b")?,
            }),
            _ => situation.on_call.push(Staff {
                id: row.try_get("id")?,
                name: row.try_get("a")?,
                phone: row.try_get("b")?,
                gateway: row.try_get("c")?,
                lang: row.try_get("d")?,
            }),
        }
    }
    Ok(())
}

/// The last twin kept that knows nothing of this day or later.
async fn checkpoint(reader: &mut AnyConnection, id: HouseholdId, since: Day) -> Result<Option<KeptTwin>, StoreError> {
    let row = sqlx::query(
        "SELECT day, bytes FROM checkpoint WHERE household_id = $1 AND day <= $2 ORDER BY day DESC LIMIT 1",
    )
    .bind(id)
    .bind(i64::from(since.0))
    .fetch_optional(&mut *reader)
    .await?;
    row.map(|row| Ok(KeptTwin { day: day(&row, "day")?, bytes: row.try_get("bytes")? })).transpose()
}
