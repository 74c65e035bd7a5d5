//! Tokens of programmes that read by machine: made, shown once, listed, taken back.
//!
//! Takes forms of a lead; keeps a hash only. What a token opens stands in [`crate::pages::access::TABLE`].

use super::super::access::{Bar, Worker};
use super::super::{Broken, Pages, Tongue, page};
use crate::api::Scope;
use crate::deed::Did;
use askama::Template;
use axum::Extension;
use axum::extract::{Form, State};
use axum::response::Response;
use serde::Deserialize;
use std::sync::Arc;

const NAME_MOST: usize = 40;

struct Row {
    name: String,
    scope: String,
    since: String,
}

struct Choice {
    id: &'static str,
    name: String,
}

/// A token that was made just now.
struct New {
    name: String,
    token: String,
}

#[derive(Template)]
#[template(path = "tokens.html")]
struct Tokens {
    tongue: Tongue,
    worker: Bar,
    notice: String,
    new: Option<New>,
    rows: Vec<Row>,
    scopes: Vec<Choice>,
}

pub async fn tokens(State(pages): State<Arc<Pages>>, Extension(worker): Extension<Worker>) -> Result<Response, Broken> {
    whole(&pages, &worker, String::new(), None).await
}

async fn whole(pages: &Pages, worker: &Worker, notice: String, new: Option<New>) -> Result<Response, Broken> {
    let tongue = pages.tongue(worker);
    let scope_name = |scope: &str| tongue.say(&format!("scope-{scope}"));
    let rows = pages.store.tokens().await?.into_iter().map(|token| Row {
        scope: scope_name(&token.scope),
        since: tongue.date(token.since.date_naive()),
        name: token.name,
    });
    page(&Tokens {
        rows: rows.collect(),
        scopes: Scope::ALL.iter().map(|scope| Choice { id: scope.id(), name: scope_name(scope.id()) }).collect(),
        worker: worker.bar("/setup"),
        notice,
        new,
        tongue,
    })
}

#[derive(Deserialize)]
pub struct Asked {
    act: String,
    name: String,
    #[serde(default)]
    scope: String,
}

/// Makes a token, or takes one back. Errors: a sentence on what was typed; nothing is changed then.
pub async fn change(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Form(asked): Form<Asked>,
) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let (tongue, name) = (pages.tongue(&worker), asked.name.trim());
    match asked.act.as_str() {
        "make" => {
            if name.is_empty() || name.chars().count() > NAME_MOST {
                return Err(Broken::form("form-name-letters", [("most", NAME_MOST.to_string().into())]));
            }
            let scope = Scope::from_id(&asked.scope).ok_or_else(|| Broken::Form("form-choose".into()))?;
            if pages.store.tokens().await?.iter().any(|token| token.name == name) {
                return Err(Broken::form("form-token-there", [("name", name.into())]));
            }
            let token = hex::encode(rand::random::<[u8; 24]>());
            pages.store.add_token(name, &token, scope.id(), now).await?;
            let made = Did::MadeToken { name: name.to_owned(), scope: scope.id().to_owned() };
            pages.store.write_down_alone(&made.by(&worker.name), now).await?;
            whole(&pages, &worker, String::new(), Some(New { name: name.to_owned(), token })).await
        }
        "remove" => {
            if !pages.store.remove_token(name).await? {
                return Err(Broken::form("form-token-gone", [("name", name.into())]));
            }
            let taken = Did::TookTokenBack { name: name.to_owned() };
            pages.store.write_down_alone(&taken.by(&worker.name), now).await?;
            whole(&pages, &worker, tongue.of_name("tokens-removed", name), None).await
        }
        _ => Err(Broken::Form("form-choose".into())),
    }
}
