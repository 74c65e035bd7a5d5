//! Photos of visits: kept with their visit, read one at a time, taken away again.

use super::rows::{Value, insert_many, ms};
use super::trail::write_down;
use super::{Store, StoreError, Tx};
use crate::deed::Did;
use chrono::{DateTime, Utc};
use sqlx::Row;
use std::collections::BTreeMap;

/// A photo as it is kept: JPEG, whole and for a list.
#[derive(Debug, Clone, PartialEq)]
pub struct Photo {
    pub whole: Vec<u8>,
    pub small: Vec<u8>,
}

/// Which of a photo's two sizes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Size {
    Whole,
    Small,
}

pub(super) async fn keep(
    tx: &mut Tx,
    household: i64,
    visit: i64,
    photos: Vec<Photo>,
    now: DateTime<Utc>,
) -> Result<(), StoreError> {
    // One at a time: together they could be more than one statement bears.
    for photo in photos {
        let row = vec![
            Value::Int(household),
            Value::Int(visit),
            Value::Int(ms(now)),
            Value::Bytes(photo.whole),
            Value::Bytes(photo.small),
        ];
        let into = "INSERT INTO photo (household_id, visit_id, at, whole, small) VALUES";
        insert_many(tx, into, "({}, {}, {}, {}, {})", "", vec![row]).await?;
    }
    Ok(())
}

impl Store {
    /// Numbers of a household's photos, by visit.
    pub(super) async fn photos_by_visit(&self, household: i64) -> Result<BTreeMap<i64, Vec<i64>>, StoreError> {
        let rows = sqlx::query("SELECT id, visit_id FROM photo WHERE household_id = $1 ORDER BY id")
            .bind(household)
            .fetch_all(&self.read)
            .await?;
        let mut photos: BTreeMap<i64, Vec<i64>> = BTreeMap::new();
        for row in &rows {
            photos.entry(row.try_get("visit_id")?).or_default().push(row.try_get("id")?);
        }
        Ok(photos)
    }

    /// A household's photo; none of another's.
    pub async fn photo(&self, household: i64, id: i64, size: Size) -> Result<Option<Vec<u8>>, StoreError> {
        let sql = match size {
            Size::Whole => "SELECT whole FROM photo WHERE household_id = $1 AND id = $2",
            Size::Small => "SELECT small FROM photo WHERE household_id = $1 AND id = $2",
        };
        Ok(sqlx::query_scalar(sql).bind(household).bind(id).fetch_optional(&self.read).await?)
    }

    /// Takes a photo away, with a line in the household's trail. Whether there was one.
    pub async fn remove_photo(
        &self,
        household: i64,
        id: i64,
        staff: &str,
        now: DateTime<Utc>,
    ) -> Result<bool, StoreError> {
        let mut tx = self.begin("photo").await?;
        let gone = sqlx::query("DELETE FROM photo WHERE household_id = $1 AND id = $2")
            .bind(household)
            .bind(id)
            .execute(&mut *tx)
            .await?;
        if gone.rows_affected() > 0 {
            write_down(&mut tx, household, &Did::TookPhotoAway.by(staff), now).await?;
        }
        self.commit("photo", tx).await?;
        Ok(gone.rows_affected() > 0)
    }
}
