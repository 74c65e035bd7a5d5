//! Field workers: who may look after households.

use super::rows::from_json;
use super::setting::NEEDS_PIN;
use super::trail::write_down;
use super::{Store, StoreError};
use crate::deed::Did;
use crate::household::Staff;
use crate::pages::access::Role;
use crate::staff::line::{Known, Line};
use chrono::{DateTime, Utc};
use sqlx::Row;

/// A field worker to be added.
#[derive(Debug, Clone, PartialEq)]
pub struct NewStaff {
    pub name: String,
    pub phone: Option<String>,
    pub gateway: Option<String>,
    pub lang: String,
    /// `field`, or `lead`: may see whole numbers.
    pub role: String,
    pub password_hash: Option<String>,
}

/// One of the staff, as those who set up people see them.
#[derive(Debug, Clone, PartialEq)]
pub struct Member {
    pub staff: Staff,
    pub role: Role,
    /// Has a password for the pages.
    pub logs_in: bool,
    pub has_pin: bool,
}

impl Store {
    /// Adds a field worker, or changes the one of that name.
    pub async fn add_staff(&self, staff: &NewStaff) -> Result<Staff, StoreError> {
        let mut tx = self.begin("staff").await?;
        let id: i64 = sqlx::query_scalar(
            "INSERT INTO staff (name, phone, gateway, lang, role, password_hash) VALUES ($1, $2, $3, $4, $5, $6) \
             ON CONFLICT (name) DO UPDATE SET phone = excluded.phone, gateway = excluded.gateway, \
             lang = excluded.lang, role = excluded.role, \
             password_hash = COALESCE(excluded.password_hash, staff.password_hash) RETURNING id",
        )
        .bind(&staff.name)
        .bind(&staff.phone)
        .bind(&staff.gateway)
        .bind(&staff.lang)
        .bind(&staff.role)
        .bind(&staff.password_hash)
        .fetch_one(&mut *tx)
        .await?;
        self.commit("staff", tx).await?;
        Ok(Staff {
            id,
            name: staff.name.clone(),
            phone: staff.phone.clone(),
            gateway: staff.gateway.clone(),
            lang: staff.lang.clone(),
        })
    }

    /// Removes a field worker; their households are nobody's then. Whether there was one of that name.
    pub async fn remove_staff(&self, name: &str) -> Result<bool, StoreError> {
        let mut tx = self.begin("staff").await?;
        sqlx::query("UPDATE household SET staff_id = NULL WHERE staff_id = (SELECT id FROM staff WHERE name = $1)")
            .bind(name)
            .execute(&mut *tx)
            .await?;
        let gone = sqlx::query("DELETE FROM staff WHERE name = $1").bind(name).execute(&mut *tx).await?;
        self.commit("staff", tx).await?;
        Ok(gone.rows_affected() > 0)
    }

    /// All of the staff, in order of name.
    pub async fn members(&self) -> Result<Vec<Member>, StoreError> {
        let sql = "SELECT id, name, phone, gateway, lang, role, password_hash, line FROM staff ORDER BY name";
        let rows = sqlx::query(sql).fetch_all(&self.read).await?;
        rows.iter()
            .map(|row| {
                let line: Line = from_json("line", row.try_get("line")?)?;
                Ok(Member {
                    staff: super::household::staff(row)?,
                    role: Role::of(row.try_get("role")?),
                    logs_in: row.try_get::<Option<String>, _>("password_hash")?.is_some(),
                    has_pin: line.pin_hash.is_some(),
                })
            })
            .collect()
    }

    /// The role somebody has now; `None` for who is no longer there.
    pub async fn role_of(&self, id: i64) -> Result<Option<Role>, StoreError> {
        let role: Option<String> =
            sqlx::query_scalar("SELECT role FROM staff WHERE id = $1").bind(id).fetch_optional(&self.read).await?;
        Ok(role.map(|role| Role::of(&role)))
    }

    /// Forgets a worker's PIN and its lock: the next one they give is theirs.
    pub async fn reset_pin(&self, name: &str) -> Result<(), StoreError> {
        let mut tx = self.begin("staff").await?;
        sqlx::query("UPDATE staff SET line = '{}' WHERE name = $1").bind(name).execute(&mut *tx).await?;
        self.commit("staff", tx).await
    }

    /// A number leaves a household: what it texts from now on is a stranger's. Whether it was one of theirs.
    pub async fn part_phone(
        &self,
        household: i64,
        number: &str,
        staff: &str,
        now: DateTime<Utc>,
    ) -> Result<bool, StoreError> {
        let mut tx = self.begin("phone").await?;
        let gone = sqlx::query("DELETE FROM phone WHERE household_id = $1 AND number = $2")
            .bind(household)
            .bind(number)
            .execute(&mut *tx)
            .await?;
        if gone.rows_affected() > 0 {
            write_down(&mut tx, household, &Did::TookPhoneOff.by(staff), now).await?;
        }
        self.commit("phone", tx).await?;
        Ok(gone.rows_affected() > 0)
    }

    /// How the talk with a field worker stands.
    pub async fn line(&self, id: i64) -> Result<Known, StoreError> {
        let sql =
            "SELECT role, line, (SELECT COUNT(*) FROM setting WHERE name = $2) AS needs_pin FROM staff WHERE id = $1";
        let row = sqlx::query(sql).bind(id).bind(NEEDS_PIN).fetch_one(&self.read).await?;
        let managers = sqlx::query(
            "SELECT id, name, phone, gateway, lang FROM staff WHERE role = 'lead' AND phone IS NOT NULL AND id <> $1 \
             ORDER BY name LIMIT 8",
        )
        .bind(id)
        .fetch_all(&self.read)
        .await?;
        Ok(Known {
            role: Role::of(row.try_get("role")?),
            needs_pin: row.try_get::<i64, _>("needs_pin")? > 0,
            line: from_json("line", row.try_get("line")?)?,
            managers: managers.iter().map(super::household::staff).collect::<Result<_, _>>()?,
        })
    }

    /// A field worker's password hash, for the log-in.
    pub async fn password_hash(&self, name: &str) -> Result<Option<String>, StoreError> {
        let found: Option<Option<String>> = sqlx::query_scalar("SELECT password_hash FROM staff WHERE name = $1")
            .bind(name)
            .fetch_optional(&self.read)
            .await?;
        Ok(found.flatten())
    }
}
