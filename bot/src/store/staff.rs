//! Field workers: who may look after households.

use super::rows::from_json;
use super::{Store, StoreError};
use crate::household::Staff;
use crate::pages::access::Role;
use crate::staff::line::Known;
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

    /// How the talk with a field worker stands.
    pub async fn line(&self, id: i64) -> Result<Known, StoreError> {
        let row = sqlx::query("SELECT role, line FROM staff WHERE id = $1").bind(id).fetch_one(&self.read).await?;
        let managers = sqlx::query(
            "SELECT id, name, phone, gateway, lang FROM staff WHERE role = 'lead' AND phone IS NOT NULL AND id <> $1 \
             ORDER BY name LIMIT 8",
        )
        .bind(id)
        .fetch_all(&self.read)
        .await?;
        Ok(Known {
            role: Role::of(row.try_get("role")?),
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
