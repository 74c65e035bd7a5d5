//! Staff pages: server-rendered, without scripts, behind a log-in.
//!
//! Takes the store, the mind and a clock; gives routes. Who may see what stands in one table, [`access::TABLE`].

pub mod access;
mod broadcast;
mod chart;
mod household;
mod login;
mod map;
pub mod need;
mod photo;
pub mod programme;
mod setup;
mod spark;
pub(crate) mod today;
mod tongue;
mod trail;
pub mod visit;

use crate::jobs::Clock;
use crate::mind::Mind;
use crate::reply::catalog::Value;
use crate::store::{Store, StoreError};
use askama::Template;
use axum::Router;
use axum::extract::{DefaultBodyLimit, State};
use axum::http::{HeaderMap, HeaderValue, StatusCode, header};
use axum::response::{Html, IntoResponse, Response};
use axum::routing::{get, post};
pub use login::hash;
use std::sync::Arc;
pub use tongue::{Sentence, Tongue};
use tower_http::csrf::CsrfLayer;
use tower_http::set_header::SetResponseHeaderLayer;
use tower_sessions::cookie::SameSite;
use tower_sessions::cookie::time::Duration;
use tower_sessions::{Expiry, Session, SessionManagerLayer};

/// What all pages need.
pub struct Pages {
    pub store: Store,
    pub mind: Arc<Mind>,
    pub clock: Clock,
    /// Cookies go over TLS only.
    pub secure: bool,
    /// Names of the gateways that there are.
    pub gateways: Vec<String>,
    lockout: login::Lockout,
}

impl Pages {
    pub fn new(store: Store, mind: Arc<Mind>, clock: Clock, secure: bool) -> Pages {
        Pages { store, mind, clock, secure, gateways: vec![], lockout: login::Lockout::default() }
    }

    /// The language that a member of staff reads.
    pub fn tongue(&self, worker: &access::Worker) -> Tongue {
        Tongue::of(&self.mind, &worker.lang)
    }

    /// With the gateways that staff and families can be reached by.
    pub fn with_gateways(mut self, gateways: impl IntoIterator<Item = String>) -> Pages {
        self.gateways = gateways.into_iter().collect();
        self
    }
}

/// How long a log-in lasts without being used.
const LOGIN_HOURS: i64 = 12;

/// The routes of the staff pages, each open to those [`access::TABLE`] names.
pub fn routes(pages: Arc<Pages>) -> Router {
    let sessions = SessionManagerLayer::new(pages.store.sessions())
        .with_name("bellyful")
        .with_secure(pages.secure)
        .with_same_site(SameSite::Strict)
        .with_expiry(Expiry::OnInactivity(Duration::hours(LOGIN_HOURS)));
    let routes = Router::new()
        .route("/", get(today::show))
        .route("/login", get(login::show).post(login::enter))
        .route("/logout", post(login::leave))
        .route("/household/{id}", get(household::show))
        .route("/household/{id}/days", get(household::days))
        .route("/household/{id}/care", post(today::care))
        .route("/household/{id}/note", post(household::note))
        .route("/household/{id}/settings", post(household::settle))
        .route("/household/{id}/measure", post(household::measure))
        .route("/household/{id}/phone", post(household::phone))
        .route("/household/{id}/reminders", post(household::reminders))
        .route("/household/{id}/restart", post(household::restart))
        .route("/household/{id}/taken", post(household::taken))
        .route(
            "/household/{id}/visit",
            get(visit::show).post(visit::keep).layer(DefaultBodyLimit::max(photo::BODY_MOST)),
        )
        .route("/household/{id}/photo/{photo}", get(photo::show))
        .route("/household/{id}/photo/{photo}/remove", post(photo::remove))
        .route("/programme", get(programme::show))
        .route("/programme.csv", get(programme::csv))
        .route("/programme.xlsx", get(programme::xlsx))
        .route("/programme/report", get(programme::report))
        .route("/setup", get(setup::show))
        .route("/setup/staff", post(setup::staff))
        .route("/setup/household", post(setup::household))
        .route("/setup/emergency", post(setup::emergency))
        .route("/setup/word", post(setup::word))
        .route("/setup/keeping", post(setup::keeping))
        .route("/setup/pin", post(setup::pin))
        .route("/setup/wording", get(setup::wording))
        .route("/setup/tokens", get(setup::tokens).post(setup::change_tokens))
        .route("/broadcast", get(broadcast::show).post(broadcast::send))
        .route("/broadcast/{id}", get(broadcast::follow))
        .route("/broadcast/{id}/stop", post(broadcast::stop))
        .route("/look.css", get(look))
        .route("/read-off.js", get(read_off))
        .merge(crate::api::routes())
        .route_layer(axum::middleware::from_fn_with_state(pages.clone(), access::check))
        .fallback(nowhere)
        .method_not_allowed_fallback(nowhere)
        .layer(sessions)
        .with_state(pages);
    guarded(routes)
}

/// A path that leads to nothing, said in the language of who is logged in, else the browser's.
async fn nowhere(State(pages): State<Arc<Pages>>, session: Session, headers: HeaderMap) -> Response {
    let worker: Option<access::Worker> = session.get(access::WORKER).await.ok().flatten();
    let tongue = worker.map_or_else(|| Tongue::of_browser(&pages.mind, &headers), |worker| pages.tongue(&worker));
    spoken(tongue, Broken::NoPage.into_response())
}

/// No page reaches outside, runs a script that is not a file of ours, is framed, or takes a form from elsewhere.
pub fn guarded(routes: Router) -> Router {
    let header = |name: header::HeaderName, value: &'static str| {
        SetResponseHeaderLayer::overriding(name, HeaderValue::from_static(value))
    };
    routes
        .layer(CsrfLayer::new())
        .layer(header(
            header::CONTENT_SECURITY_POLICY,
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; form-action 'self'; base-uri 'none'; \
             frame-ancestors 'none'",
        ))
        .layer(header(header::X_CONTENT_TYPE_OPTIONS, "nosniff"))
        .layer(header(header::REFERRER_POLICY, "no-referrer"))
}

async fn look() -> Response {
    let headers = [(header::CONTENT_TYPE, "text/css; charset=utf-8"), (header::CACHE_CONTROL, "max-age=300")];
    (headers, include_str!("../../templates/look.css")).into_response()
}

async fn read_off() -> Response {
    let headers = [(header::CONTENT_TYPE, "text/javascript; charset=utf-8"), (header::CACHE_CONTROL, "max-age=300")];
    (headers, include_str!("../../templates/read-off.js")).into_response()
}

/// A page, never kept by anybody on the way.
pub fn page(template: &impl Template) -> Result<Response, Broken> {
    let mut response = Html(template.render()?).into_response();
    response.headers_mut().insert(header::CACHE_CONTROL, HeaderValue::from_static("no-store"));
    Ok(response)
}

/// A page that could not be made.
#[derive(Debug, thiserror::Error)]
pub enum Broken {
    #[error(transparent)]
    Store(#[from] StoreError),
    #[error(transparent)]
    Template(#[from] askama::Error),
    #[error("the log-in could not be kept: {0}")]
    Session(#[from] tower_sessions::session::Error),
    #[error("there is no household {0}")]
    NoHousehold(i64),
    #[error("there is no broadcast {0}")]
    NoBroadcast(i64),
    #[error("there is no such page")]
    NoPage,
    #[error("the role does not allow this")]
    Role,
    #[error("the table could not be written: {0}")]
    Table(String),
    /// What was typed into a form cannot be taken, and why.
    #[error("a form cannot be taken: {}", .0.id)]
    Form(Sentence),
}

impl Broken {
    /// A form that cannot be taken, with what the sentence names.
    fn form(id: &'static str, values: impl IntoIterator<Item = (&'static str, Value)>) -> Broken {
        Broken::Form(Sentence::with(id, values))
    }
}

/// A status with the sentence to say; [`spoken`] makes the page, once it is known to whom.
impl IntoResponse for Broken {
    fn into_response(self) -> Response {
        let (status, sentence) = match self {
            Broken::NoHousehold(id) => {
                (StatusCode::NOT_FOUND, Sentence::with("broken-no-household", [("id", id.to_string().into())]))
            }
            Broken::NoBroadcast(id) => {
                (StatusCode::NOT_FOUND, Sentence::with("broken-no-broadcast", [("id", id.to_string().into())]))
            }
            Broken::NoPage => (StatusCode::NOT_FOUND, "broken-no-page".into()),
            Broken::Role => (StatusCode::FORBIDDEN, "broken-role".into()),
            Broken::Form(sentence) => (StatusCode::UNPROCESSABLE_ENTITY, sentence),
            other => {
                tracing::error!(error = %other, "a page could not be made");
                (StatusCode::INTERNAL_SERVER_ERROR, "broken-here".into())
            }
        };
        let mut response = status.into_response();
        response.extensions_mut().insert(sentence);
        response
    }
}

#[derive(Template)]
#[template(path = "broken.html")]
struct BrokenPage {
    tongue: Tongue,
    sentence: String,
}

/// The page for an answer that is only a sentence yet; any other answer as it is.
pub fn spoken(tongue: Tongue, mut response: Response) -> Response {
    let Some(sentence) = response.extensions_mut().remove::<Sentence>() else { return response };
    let sentence = tongue.tell(&sentence);
    let html = BrokenPage { tongue, sentence: sentence.clone() }.render().unwrap_or(sentence);
    (response.status(), Html(html)).into_response()
}
