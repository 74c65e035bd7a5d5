//! Who may see what: one table, checked in one place, before any page or answer is made.

use super::{Broken, Pages, Tongue, spoken};
use crate::api::{Refused, Scope};
use axum::extract::{MatchedPath, Request, State};
use axum::http::request::Parts;
use axum::http::{HeaderValue, Method, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Redirect, Response};
use serde::{Deserialize, Serialize};
use std::fmt;
use std::sync::Arc;
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
    /// Its name, and with what it may, as messages of the pages.
    pub fn name(self) -> &'static str {
        match self {
            Role::Lead => "role-lead",
            Role::Field => "role-field",
            Role::Viewer => "role-viewer",
        }
    }
    pub fn long_name(self) -> &'static str {
        match self {
            Role::Lead => "role-long-lead",
            Role::Field => "role-long-field",
            Role::Viewer => "role-long-viewer",
        }
    }

    pub const ALL: [Role; 3] = [Role::Viewer, Role::Field, Role::Lead];

    pub fn of(id: &str) -> Role {
        match id {
            "lead" => Role::Lead,
            "field" => Role::Field,
            _ => Role::Viewer,
        }
    }
    pub fn id(self) -> &'static str {
        match self {
            Role::Lead => "lead",
            Role::Field => "field",
            Role::Viewer => "viewer",
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

impl Worker {
    /// For the bar over each page; `at`: the entry of the menu under which the page stands, empty for none.
    pub fn bar(&self, at: &'static str) -> Bar {
        Bar { name: self.name.clone(), role: self.role, at }
    }
}

/// Who is logged in, as the bar over each page has it.
pub struct Bar {
    name: String,
    role: Role,
    pub at: &'static str,
}

impl Bar {
    /// Where the menu leads, and the messages that say so.
    const MENU: [(&str, &str, Role); 4] = [
        ("/", "nav-today", Role::Viewer),
        ("/programme", "nav-programme", Role::Viewer),
        ("/broadcast", "nav-broadcast", Role::Lead),
        ("/setup", "nav-setup", Role::Lead),
    ];

    pub fn menu(&self) -> impl Iterator<Item = (&'static str, &'static str)> {
        let open = Bar::MENU.into_iter().filter(|(_, _, least)| self.role >= *least);
        open.map(|(path, name, _)| (path, name))
    }
}

impl fmt::Display for Bar {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.name)
    }
}

/// Who is let through.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Gate {
    /// Everybody, logged in or not.
    Open,
    /// Staff of at least this role.
    Staff(Role),
    /// Programmes with a token of at least this scope.
    Token(Scope),
}

use Gate::{Open, Staff, Token};

const VIEWER: Gate = Staff(Role::Viewer);
const FIELD: Gate = Staff(Role::Field);
const LEAD: Gate = Staff(Role::Lead);
const READ: Gate = Token(Scope::Read);

/// Who may use each route.
pub const TABLE: [(&str, Method, Gate); 45] = [
    ("/", Method::GET, VIEWER),
    ("/login", Method::GET, Open),
    ("/login", Method::POST, Open),
    ("/logout", Method::POST, VIEWER),
    ("/household/{id}", Method::GET, VIEWER),
    ("/household/{id}/days", Method::GET, VIEWER),
    ("/household/{id}/care", Method::POST, FIELD),
    ("/household/{id}/note", Method::POST, FIELD),
    ("/household/{id}/settings", Method::POST, FIELD),
    ("/household/{id}/measure", Method::POST, FIELD),
    ("/household/{id}/phone", Method::POST, FIELD),
    ("/household/{id}/reminders", Method::POST, FIELD),
    ("/household/{id}/restart", Method::POST, FIELD),
    ("/household/{id}/taken", Method::POST, FIELD),
    ("/household/{id}/visit", Method::GET, FIELD),
    ("/household/{id}/visit", Method::POST, FIELD),
    ("/household/{id}/photo/{photo}", Method::GET, VIEWER),
    ("/household/{id}/photo/{photo}/remove", Method::POST, FIELD),
    ("/programme", Method::GET, VIEWER),
    ("/programme.csv", Method::GET, FIELD),
    ("/programme.xlsx", Method::GET, FIELD),
    ("/programme/report", Method::GET, VIEWER),
    ("/setup", Method::GET, LEAD),
    ("/setup/staff", Method::POST, LEAD),
    ("/setup/household", Method::POST, LEAD),
    ("/setup/emergency", Method::POST, LEAD),
    ("/setup/word", Method::POST, LEAD),
    ("/setup/keeping", Method::POST, LEAD),
    ("/setup/pin", Method::POST, LEAD),
    ("/setup/wording", Method::GET, LEAD),
    ("/setup/tokens", Method::GET, LEAD),
    ("/setup/tokens", Method::POST, LEAD),
    ("/broadcast", Method::GET, LEAD),
    ("/broadcast", Method::POST, LEAD),
    ("/broadcast/{id}", Method::GET, LEAD),
    ("/broadcast/{id}/stop", Method::POST, LEAD),
    ("/look.css", Method::GET, Open),
    ("/read-off.js", Method::GET, Open),
    ("/api/openapi.json", Method::GET, Open),
    ("/api/households", Method::GET, READ),
    ("/api/households/{id}", Method::GET, READ),
    ("/api/households/{id}/facts", Method::GET, READ),
    ("/api/households/{id}/series", Method::GET, READ),
    ("/api/households/{id}/advice", Method::GET, READ),
    ("/api/programme", Method::GET, READ),
];

/// Key of the worker in a session.
pub const WORKER: &str = "worker";

/// Lets a call through to its page, or sends it to the log-in, or refuses it; says what did not work in the language of
/// who called.
pub async fn check(State(pages): State<Arc<Pages>>, session: Session, request: Request, next: Next) -> Response {
    let (mut call, body) = request.into_parts();
    let tongue = Tongue::of_browser(&pages.mind, &call.headers);
    call.extensions.insert(tongue.clone());
    match gate(&pages, &session, &call).await {
        Err(refused) => spoken(tongue, refused),
        Ok(pass) => {
            let tongue = match &pass {
                Pass::Worker(worker) => pages.tongue(worker),
                Pass::Token(_) | Pass::Anybody => tongue,
            };
            match pass {
                Pass::Worker(worker) => drop(call.extensions.insert(worker)),
                Pass::Token(scope) => drop(call.extensions.insert(scope)),
                Pass::Anybody => {}
            }
            spoken(tongue, next.run(Request::from_parts(call, body)).await)
        }
    }
}

/// As whom a call is let through.
enum Pass {
    Anybody,
    Worker(Worker),
    Token(Scope),
}

async fn gate(pages: &Pages, session: &Session, call: &Parts) -> Result<Pass, Response> {
    let path = call.extensions.get::<MatchedPath>().map(|path| path.as_str().to_owned()).unwrap_or_default();
    let method = if call.method == Method::HEAD { Method::GET } else { call.method.clone() };
    let row = TABLE.iter().find(|(at, by, _)| *at == path && *by == method);
    let broken = |broken: Broken| broken.into_response();
    match row.map(|(_, _, gate)| *gate) {
        None => Err(broken(Broken::NoPage)),
        Some(Open) => Ok(Pass::Anybody),
        Some(Staff(least)) => {
            let kept: Option<Worker> = session.get(WORKER).await.ok().flatten();
            let worker = kept.ok_or_else(|| Redirect::to("/login").into_response())?;
            let role = pages.store.role_of(worker.id).await.map_err(|error| broken(error.into()))?;
            // Who was taken off the staff, or given another role, is so from the next click on.
            let role = role.ok_or_else(|| Redirect::to("/login").into_response())?;
            if role < least { Err(broken(Broken::Role)) } else { Ok(Pass::Worker(Worker { role, ..worker })) }
        }
        Some(Token(least)) => {
            let given = call.headers.get(header::AUTHORIZATION).cloned();
            let scope = scope(pages, given).await.map_err(IntoResponse::into_response)?;
            if scope < least { Err(Refused::Scope.into_response()) } else { Ok(Pass::Token(scope)) }
        }
    }
}

/// The scope of the token that a call carries.
async fn scope(pages: &Pages, given: Option<HeaderValue>) -> Result<Scope, Refused> {
    let given = given.as_ref().and_then(|value| value.to_str().ok());
    let token = given.and_then(|given| given.strip_prefix("Bearer ")).ok_or(Refused::Token)?;
    let (_, scope) = pages.store.token(token.trim()).await?.ok_or(Refused::Token)?;
    Ok(Scope::from_id(&scope).unwrap_or(Scope::Read))
}
