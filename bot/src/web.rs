//! The wires: texts and delivery reports in over HTTP, and whether all is well.
//!
//! Takes calls apart and hands them to the door; decides nothing. A text is acknowledged only when it is kept. Logs neither
//! words nor numbers.

use crate::door::Door;
use crate::gateway::call::Call;
use crate::gateway::profile::Answer;
use crate::gateway::{Gateway, Refusal};
use crate::message::answer_id;
use crate::record::local_day;
use crate::store::Outcome;
use axum::Router;
use axum::body::{Body, to_bytes};
use axum::extract::{Path, Request, State};
use axum::http::{HeaderValue, StatusCode, header};
use axum::response::{IntoResponse, Response};
use axum::routing::{any, get};
use chrono::Utc;
use std::collections::BTreeMap;
use std::sync::Arc;
use std::time::Duration;
use tokio::time::{Instant, timeout};
use tower_http::catch_panic::CatchPanicLayer;

/// Longest body of a call.
pub const BODY_MOST: usize = 64 * 1024;
/// A whole call, from its first byte to our last.
const CALL_WITHIN: Duration = Duration::from_secs(30);
const BODY_WITHIN: Duration = Duration::from_secs(10);
/// The routes of the wires.
pub fn routes(door: Arc<Door>) -> Router {
    Router::new()
        .route("/in/{gateway}", any(texts))
        .route("/receipt/{gateway}", any(receipt))
        .route("/healthz", get(|| async { "ok\n" }))
        .route("/readyz", get(ready))
        .route("/metrics", get(measures))
        .with_state(door)
        .layer(axum::middleware::from_fn(in_time))
        .layer(CatchPanicLayer::custom(|_| {
            wrong(StatusCode::INTERNAL_SERVER_ERROR, "Something broke here; send the call again later.")
        }))
}

async fn in_time(request: Request, next: axum::middleware::Next) -> Response {
    timeout(CALL_WITHIN, next.run(request))
        .await
        .unwrap_or_else(|_| wrong(StatusCode::SERVICE_UNAVAILABLE, "This took too long; send the call again later."))
}

fn wrong(status: StatusCode, sentence: &str) -> Response {
    (status, axum::Json(serde_json::json!({ "error": sentence }))).into_response()
}

impl IntoResponse for Refusal {
    fn into_response(self) -> Response {
        let (status, kind) = match &self {
            Refusal::Body(_) => (StatusCode::BAD_REQUEST, "body"),
            Refusal::Signature(_) => (StatusCode::UNAUTHORIZED, "signature"),
        };
        metrics::counter!("bellyful_calls_refused_total", "why" => kind).increment(1);
        wrong(status, &self.to_string())
    }
}

/// The response that a profile words.
fn answer(answer: &Answer) -> Response {
    let status = StatusCode::from_u16(answer.status).unwrap_or(StatusCode::OK);
    let mut response = Response::new(Body::from(answer.body.clone()));
    *response.status_mut() = status;
    if let Some(kind) = answer.content_type.as_deref().and_then(|kind| HeaderValue::from_str(kind).ok()) {
        response.headers_mut().insert(header::CONTENT_TYPE, kind);
    }
    response
}

/// Reads the whole call, or says why not.
async fn call(door: &Door, request: Request) -> Result<Call, Response> {
    let (parts, body) = request.into_parts();
    let body = match timeout(BODY_WITHIN, to_bytes(body, BODY_MOST)).await {
        Ok(Ok(body)) => body.to_vec(),
        Ok(Err(_)) => {
            return Err(wrong(StatusCode::PAYLOAD_TOO_LARGE, "The body must be whole and at most 64 KiB long."));
        }
        Err(_) => return Err(wrong(StatusCode::REQUEST_TIMEOUT, "The body did not come in time; send it again.")),
    };
    let headers: BTreeMap<String, String> = parts
        .headers
        .iter()
        .filter_map(|(name, value)| Some((name.as_str().to_owned(), value.to_str().ok()?.to_owned())))
        .collect();
    let path = parts.uri.path_and_query().map_or("/", |path| path.as_str());
    let base = match &door.public_url {
        Some(url) => url.trim_end_matches('/').to_owned(),
        None => format!("http://{}", headers.get("host").map_or("", String::as_str)),
    };
    Ok(Call {
        method: parts.method.as_str().to_owned(),
        url: format!("{base}{path}"),
        query: parts.uri.query().unwrap_or_default().to_owned(),
        headers,
        body,
    })
}

fn unknown(name: &str) -> Response {
    let name: String = name.chars().filter(|c| c.is_ascii_graphic()).take(40).collect();
    wrong(StatusCode::NOT_FOUND, &format!("There is no gateway called {name} in the configuration."))
}

async fn texts(State(door): State<Arc<Door>>, Path(name): Path<String>, request: Request) -> Response {
    let Some(gateway) = door.gateways.get(&name).cloned() else { return unknown(&name) };
    let call = match call(&door, request).await {
        Ok(call) => call,
        Err(response) => return response,
    };
    if let Some(challenged) = gateway.challenged(&call) {
        return challenged.map_or_else(IntoResponse::into_response, IntoResponse::into_response);
    }
    let started = Instant::now();
    let inbounds = match gateway.receive(&call, Utc::now()) {
        Ok(inbounds) => inbounds,
        Err(refusal) => return refusal.into_response(),
    };
    let first = inbounds.first().map(|inbound| answer_id(&inbound.gateway, &inbound.from, &inbound.id, 0));
    let taking: Vec<_> = inbounds
        .into_iter()
        .map(|inbound| {
            let (door, gateway) = (door.clone(), gateway.clone());
            tokio::spawn(async move { door.take(&gateway, inbound).await })
        })
        .collect();
    let mut kept = true;
    for taken in taking {
        kept &= taken.await.unwrap_or(false);
    }
    metrics::histogram!("bellyful_accept_seconds").record(started.elapsed().as_secs_f64());
    if !kept {
        return wrong(StatusCode::SERVICE_UNAVAILABLE, "The text cannot be kept just now; send it again later.");
    }
    match (first, &gateway.profile.out.in_response) {
        (Some(first), Some(_)) => in_response(&door, &gateway, &first).await,
        _ => acknowledge(&gateway),
    }
}

/// What a gateway wants to hear of its texts.
fn acknowledge(gateway: &Gateway) -> Response {
    // One that makes no calls brought no text either.
    gateway.profile.texts.as_ref().map_or_else(|| StatusCode::OK.into_response(), |shape| answer(&shape.answer))
}

/// Waits for the answer to be decided and gives it in the response; else acknowledges, and it waits for the same call
/// to come again. A call that comes again gets the same answer: its gateway did not hear the first.
async fn in_response(door: &Door, gateway: &Gateway, first: &str) -> Response {
    let Some(shape) = &gateway.profile.out.in_response else { return acknowledge(gateway) };
    let until = Instant::now() + Duration::from_millis(shape.within_ms);
    let owner = format!("response {first}");
    while Instant::now() < until {
        let now = Utc::now();
        let said = async {
            let Some(send) = door.store.claim_one(&owner, first, now, now + crate::jobs::lease()).await? else {
                return door.store.sent_before(first).await;
            };
            let said = (send.to.clone(), send.text.clone());
            if let Err(error) = door.store.settle(&[(send, Outcome::Sent { wire_id: None })], now).await {
                tracing::error!(%error, "an answer given in a response may be given again");
            }
            Ok(Some(said))
        };
        match said.await {
            Ok(Some((to, text))) => return worded(gateway.in_response(shape, first, &to, &text)),
            Ok(None) => tokio::time::sleep(Duration::from_millis(20)).await,
            Err(error) => {
                tracing::error!(%error, "an answer could not be looked up");
                break;
            }
        }
    }
    acknowledge(gateway)
}

fn worded((headers, body): (Vec<(String, String)>, String)) -> Response {
    let mut response = Response::new(Body::from(body));
    for (name, value) in headers {
        if let (Ok(name), Ok(value)) = (header::HeaderName::from_bytes(name.as_bytes()), HeaderValue::from_str(&value))
        {
            response.headers_mut().insert(name, value);
        }
    }
    response
}

async fn receipt(State(door): State<Arc<Door>>, Path(name): Path<String>, request: Request) -> Response {
    let Some(gateway) = door.gateways.get(&name).cloned() else { return unknown(&name) };
    let call = match call(&door, request).await {
        Ok(call) => call,
        Err(response) => return response,
    };
    let reports = match gateway.reports(&call, Utc::now()) {
        Ok(reports) => reports,
        Err(refusal) => return refusal.into_response(),
    };
    for report in reports {
        if let Err(error) = door.report(&gateway.name, &report).await {
            tracing::error!(%error, "a delivery report could not be kept");
            return wrong(StatusCode::SERVICE_UNAVAILABLE, "The report cannot be kept just now; send it again later.");
        }
    }
    let shape = gateway.profile.receipt.as_ref().expect("a gateway without reports gave none");
    answer(&shape.answer)
}

async fn ready(State(door): State<Arc<Door>>) -> Response {
    match timeout(Duration::from_secs(3), door.store.ready()).await {
        Ok(Ok(())) => "ready\n".into_response(),
        _ => wrong(StatusCode::SERVICE_UNAVAILABLE, "The database does not take texts just now."),
    }
}

async fn measures(State(door): State<Arc<Door>>) -> Response {
    if let Ok((texts, oldest)) = door.store.backlog().await {
        metrics::gauge!("bellyful_texts_waiting").set(texts as f64);
        let age = oldest.map_or(0, |oldest| (Utc::now() - oldest).num_seconds().max(0));
        metrics::gauge!("bellyful_oldest_text_waiting_seconds").set(age as f64);
    }
    if let Ok(behind) = door.store.behind(local_day(Utc::now() - chrono::Duration::hours(24), "UTC")).await {
        metrics::gauge!("bellyful_twins_behind").set(behind as f64);
    }
    if let Ok(unsent) = door.store.unsent().await {
        metrics::gauge!("bellyful_sends_waiting").set(unsent as f64);
    }
    match &door.metrics {
        Some(handle) => handle.render().into_response(),
        None => wrong(StatusCode::NOT_FOUND, "Nothing is measured here."),
    }
}
