//! The log-in: name and password, Argon2id, and a pause after many wrong tries.

use super::access::{Role, WORKER, Worker};
use super::{Broken, Pages, Tongue, page};
use argon2::password_hash::phc::PasswordHash;
use argon2::{Argon2, PasswordHasher, PasswordVerifier};
use askama::Template;
use axum::Extension;
use axum::extract::{Form, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use chrono::{DateTime, Duration, Utc};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};
use tower_sessions::Session;

/// Wrong tries of one name before it must wait. Source: our choice.
const TRIES: u32 = 5;
/// How long it waits.
const WAIT: Duration = Duration::minutes(5);
/// Names remembered at once, so that guessers cannot fill the memory.
const NAMES_MOST: usize = 10_000;
/// Longest password that is looked at.
const PASSWORD_MOST: usize = 200;

/// A hash of a password, to be kept. Errors: the machine has no randomness.
pub fn hash(password: &str) -> anyhow::Result<String> {
    Ok(Argon2::default().hash_password(password.as_bytes()).map_err(|error| anyhow::anyhow!("{error}"))?.to_string())
}

/// Wrong tries by name, since when.
#[derive(Default)]
pub struct Lockout(Mutex<BTreeMap<String, (u32, DateTime<Utc>)>>);

impl Lockout {
    /// Counts a try; false when the name must wait.
    fn may_try(&self, name: &str, now: DateTime<Utc>) -> bool {
        let mut names = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        names.retain(|_, (_, since)| now - *since < WAIT);
        if names.len() >= NAMES_MOST && !names.contains_key(name) {
            return false;
        }
        let (tries, _) = names.entry(name.to_owned()).or_insert((0, now));
        *tries += 1;
        *tries <= TRIES
    }

    fn entered(&self, name: &str) {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).remove(name);
    }
}

#[derive(Template)]
#[template(path = "login.html")]
struct LoginPage {
    tongue: Tongue,
    wrong: String,
}

#[derive(Deserialize)]
pub struct Entry {
    name: String,
    password: String,
}

pub async fn show(Extension(tongue): Extension<Tongue>) -> Result<Response, Broken> {
    page(&LoginPage { tongue, wrong: String::new() })
}

pub async fn enter(
    State(pages): State<Arc<Pages>>,
    session: Session,
    Extension(tongue): Extension<Tongue>,
    Form(entry): Form<Entry>,
) -> Result<Response, Broken> {
    if !pages.lockout.may_try(&entry.name, Utc::now()) {
        return refused(tongue, "login-wait");
    }
    let kept = pages.store.login(&entry.name).await?;
    let worker = kept.as_ref().map(|(staff, role, _)| Worker {
        id: staff.id,
        name: staff.name.clone(),
        role: Role::of(role),
        lang: staff.lang.clone(),
    });
    // Someone who is not there takes as long to refuse as someone who is.
    let hash = kept.and_then(|(_, _, hash)| hash).unwrap_or_else(|| NOBODY.to_owned());
    let password: String = entry.password.chars().take(PASSWORD_MOST).collect();
    let right = tokio::task::spawn_blocking(move || {
        PasswordHash::new(&hash).is_ok_and(|hash| Argon2::default().verify_password(password.as_bytes(), &hash).is_ok())
    })
    .await
    .unwrap_or(false);
    match worker.filter(|_| right) {
        Some(worker) => {
            pages.lockout.entered(&entry.name);
            session.cycle_id().await?;
            session.insert(WORKER, worker).await?;
            Ok(Redirect::to("/").into_response())
        }
        None => refused(tongue, "login-wrong"),
    }
}

/// A hash that no password fits: of random bytes long forgotten.
const NOBODY: &str = "$argon2id$v=19$m=19456,t=2,p=1$bm9ib2R5LW5vYm9keQ$8Zf1Jp1mSAvH6xT0k0q0cQYwM6b9k3vL2n1h5s7d9fE";

fn refused(tongue: Tongue, wrong: &'static str) -> Result<Response, Broken> {
    let wrong = tongue.say(wrong);
    let mut response = page(&LoginPage { tongue, wrong })?;
    *response.status_mut() = StatusCode::UNAUTHORIZED;
    Ok(response)
}

pub async fn leave(session: Session) -> Result<Redirect, Broken> {
    session.flush().await?;
    Ok(Redirect::to("/login"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_waits_after_many_wrong_tries_and_others_do_not() {
        let lockout = Lockout::default();
        let now = DateTime::from_timestamp(1_780_000_000, 0).expect("in range");
        (0..TRIES).for_each(|_| assert!(lockout.may_try("a", now)));
        assert!(!lockout.may_try("a", now));
        assert!(lockout.may_try("b", now));
        assert!(lockout.may_try("a", now + WAIT));
    }

    #[test]
    fn a_password_fits_its_own_hash_only() {
        let fits = |hash: &str, password: &str| {
            PasswordHash::new(hash)
                .is_ok_and(|hash| Argon2::default().verify_password(password.as_bytes(), &hash).is_ok())
        };
        let hash = hash("right").expect("randomness");
        assert!(fits(&hash, "right") && !fits(&hash, "wrong"));
        assert!(PasswordHash::new(NOBODY).is_ok() && !fits(NOBODY, "nobody"));
    }
}
