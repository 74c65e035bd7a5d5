//! Photos of visits: taken in with the visit's form, shown to who may see the household, taken away again.
//!
//! Takes forms with files; gives what was typed, and photos made anew. Nothing a phone sent is kept as it came.

use super::access::Worker;
use super::{Broken, Pages};
use crate::photo::{BYTES_MOST, Unfit, made_anew};
use crate::store::{Photo, Size};
use axum::Extension;
use axum::extract::multipart::{Field, Multipart};
use axum::extract::{Form, FromRequest, Path, Query, Request, State};
use axum::http::header;
use axum::response::{IntoResponse, Redirect, Response};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::Arc;
use tokio::sync::Semaphore;

/// Photos of one visit.
pub const PHOTOS_MOST: usize = 4;
/// Longest body of a form with photos. Units: bytes.
pub const BODY_MOST: usize = (PHOTOS_MOST + 1) * BYTES_MOST;
/// Typed into one field, and fields of one form.
const TYPED_MOST: usize = 8 * 1024;
const FIELDS_MOST: usize = 64;

/// A form that may carry photos.
pub struct Filled {
    pub typed: BTreeMap<String, String>,
    pub photos: Vec<Vec<u8>>,
}

impl<S: Send + Sync> FromRequest<S> for Filled {
    type Rejection = Broken;

    async fn from_request(request: Request, state: &S) -> Result<Filled, Broken> {
        let kind = request.headers().get(header::CONTENT_TYPE).and_then(|kind| kind.to_str().ok()).unwrap_or_default();
        if !kind.starts_with("multipart/form-data") {
            let form = Form::<BTreeMap<String, String>>::from_request(request, state).await;
            return Ok(Filled { typed: form.map_err(|_| unread())?.0, photos: vec![] });
        }
        let mut parts = Multipart::from_request(request, state).await.map_err(|_| unread())?;
        let filled = taken(&mut parts).await;
        if filled.is_err() {
            hear_out(&mut parts).await;
        }
        filled
    }
}

/// The parts of a form, photos among them.
async fn taken(parts: &mut Multipart) -> Result<Filled, Broken> {
    let mut filled = Filled { typed: BTreeMap::new(), photos: vec![] };
    while let Some(part) = parts.next_field().await.map_err(|_| unread())? {
        let name = part.name().unwrap_or_default().to_owned();
        if part.file_name().is_none() {
            let typed = whole(part, TYPED_MOST).await?.ok_or_else(unread)?;
            filled.typed.insert(name, String::from_utf8(typed).map_err(|_| unread())?);
            if filled.typed.len() > FIELDS_MOST {
                return Err(unread());
            }
            continue;
        }
        let photo = whole(part, BYTES_MOST).await?.ok_or_else(|| unfit(Unfit::Big))?;
        // A field for files that was left empty comes as an empty file.
        if !photo.is_empty() {
            filled.photos.push(photo);
        }
        if filled.photos.len() > PHOTOS_MOST {
            return Err(Broken::form("form-photo-many", [("n", PHOTOS_MOST.to_string().into())]));
        }
    }
    Ok(filled)
}

/// What a browser still sends is heard out: it would show a broken connection instead of our sentence.
async fn hear_out(parts: &mut Multipart) {
    while let Ok(Some(mut part)) = parts.next_field().await {
        while let Ok(Some(_)) = part.chunk().await {}
    }
}

/// All of a part; none if it is longer than `most`.
async fn whole(mut part: Field<'_>, most: usize) -> Result<Option<Vec<u8>>, Broken> {
    let mut bytes = vec![];
    while let Some(chunk) = part.chunk().await.map_err(|_| unread())? {
        if bytes.len() + chunk.len() > most {
            return Ok(None);
        }
        bytes.extend_from_slice(&chunk);
    }
    Ok(Some(bytes))
}

fn unread() -> Broken {
    Broken::Form("form-unread".into())
}

fn unfit(why: Unfit) -> Broken {
    match why {
        Unfit::Kind => Broken::Form("form-photo-kind".into()),
        Unfit::Big => Broken::form("form-photo-big", [("n", (BYTES_MOST / 1024 / 1024).to_string().into())]),
        Unfit::Damaged => Broken::Form("form-photo-damaged".into()),
    }
}

/// Photos fit to be kept. Errors: the sentence for the first that is not; then none is.
pub async fn fit(photos: Vec<Vec<u8>>) -> Result<Vec<Photo>, Broken> {
    /// Each takes memory for all its pixels.
    static ROOM: Semaphore = Semaphore::const_new(2);
    let mut fit = Vec::with_capacity(photos.len());
    for bytes in photos {
        let _room = ROOM.acquire().await.expect("never closed");
        let made = tokio::task::spawn_blocking(move || made_anew(&bytes)).await;
        fit.push(made.unwrap_or(Err(Unfit::Damaged)).map_err(unfit)?);
    }
    Ok(fit)
}

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    small: bool,
}

/// A photo of a household.
pub async fn show(
    State(pages): State<Arc<Pages>>,
    Path((household, photo)): Path<(i64, i64)>,
    Query(asked): Query<Asked>,
) -> Result<Response, Broken> {
    let size = if asked.small { Size::Small } else { Size::Whole };
    let bytes = pages.store.photo(household, photo, size).await?.ok_or(Broken::NoPage)?;
    // Not kept on the way or on the phone: who asks to be forgotten is.
    let headers = [(header::CONTENT_TYPE, "image/jpeg"), (header::CACHE_CONTROL, "no-store")];
    Ok((headers, bytes).into_response())
}

/// Takes a photo away for good.
pub async fn remove(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Path((household, photo)): Path<(i64, i64)>,
) -> Result<Redirect, Broken> {
    if !pages.store.remove_photo(household, photo, &worker.name, (pages.clock)()).await? {
        return Err(Broken::NoPage);
    }
    Ok(Redirect::to(&format!("/household/{household}#visits")))
}
