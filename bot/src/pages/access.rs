//! Who may see what: one table, checked in one place, before any page is made.

use axum::extract::{MatchedPath, Request};
use axum::http::{Method, StatusCode};
use axum::middleware::Next;
use axum::response::{Html, IntoResponse, Redirect, Response};
use serde::{Deserialize, Serialize};
use tower_sessions::Session;

/// What a member of staff may do; each may all that those before may.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Role {
    /// Sees, with numbers masked.
    Viewer,
    /// Acts for households, and sees the numbers of those they call.
    Field,
    /// Sets up people and rules.
    Lead,
}

impl Role {
    pub fn of(id: &str) -> Role {
        match id {
            "lead" => Role::Lead,
            "field" => Role::Field,
            _ => Role::Viewer,
        }
    }
}

/// Who is logged in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Worker {
    pub id: i64,
    pub name: String,
    pub role: Role,
    /// ISO 639-1 code of the language they are written in.
    #[serde(default)]
    pub lang: String,
}

/// Least role of each route; `None` for everybody, logged in or not.
pub const TABLE: [(&str, Method, Option<Role>); 14] = [
    ("/", Method::GET, Some(Role::Viewer)),
    ("/login", Method::GET, None),
    ("/login", Method::POST, None),
    ("/logout", Method::POST, Some(Role::Viewer)),
    ("/household/{id}", Method::GET, Some(Role::Viewer)),
    ("/household/{id}/care", Method::POST, Some(Role::Field)),
    ("/household/{id}/note", Method::POST, Some(Role::Field)),
    ("/household/{id}/settings", Method::POST, Some(Role::Field)),
    ("/household/{id}/taken", Method::POST, Some(Role::Field)),
    ("/household/{id}/visit", Method::GET, Some(Role::Field)),
    ("/household/{id}/visit", Method::POST, Some(Role::Field)),
    ("/programme", Method::GET, Some(Role::Viewer)),
    ("/programme.csv", Method::GET, Some(Role::Field)),
    ("/look.css", Method::GET, None),
];

/// Key of the worker in a session.
pub const WORKER: &str = "worker";

/// Lets a call through to its page, or sends it to the log-in, or refuses it.
pub async fn check(session: Session, mut request: Request, next: Next) -> Response {
    let path = request.extensions().get::<MatchedPath>().map(|path| path.as_str().to_owned()).unwrap_or_default();
    let method = if request.method() == Method::HEAD { Method::GET } else { request.method().clone() };
    let row = TABLE.iter().find(|(at, by, _)| *at == path && *by == method);
    let worker: Option<Worker> = session.get(WORKER).await.ok().flatten();
    match (row, worker) {
        (None, _) => (StatusCode::NOT_FOUND, Html("There is no such page.")).into_response(),
        (Some((_, _, None)), _) => next.run(request).await,
        (Some(_), None) => Redirect::to("/login").into_response(),
        (Some((_, _, Some(least))), Some(worker)) if worker.role >= *least => {
            request.extensions_mut().insert(worker);
            next.run(request).await
        }
        _ => (StatusCode::FORBIDDEN, Html("Your role does not allow this; ask a lead.")).into_response(),
    }
}
