//! The door: texts and delivery reports in over HTTP, and whether all is well.
//!
//! Takes calls apart and hands them on; decides nothing. A text is acknowledged only when it is kept. Logs neither
//! words nor numbers.

use crate::gateway::call::Call;
use crate::gateway::profile::Answer;
use crate::gateway::{Gateway, Refusal};
use crate::jobs::Answerer;
use crate::message::{Outbound, answer_id};
use crate::store::{Arrival, ByWire, Intake, Outcome, Store};
use axum::Router;
use axum::body::{Body, to_bytes};
use axum::extract::{Path, Request, State};
use axum::http::{HeaderValue, StatusCode, header};
use axum::response::{IntoResponse, Response};
use axum::routing::{any, get};
use chrono::Utc;
use metrics_exporter_prometheus::PrometheusHandle;
use std::collections::{BTreeMap, VecDeque};
use std::sync::{Arc, Mutex};
use std::time::Duration;
use tokio::sync::Notify;
use tokio::time::{Instant, timeout};
use tower_http::catch_panic::CatchPanicLayer;

/// Longest body of a call.
pub const BODY_MOST: usize = 64 * 1024;
/// A whole call, from its first byte to our last.
const CALL_WITHIN: Duration = Duration::from_secs(30);
const BODY_WITHIN: Duration = Duration::from_secs(10);
/// How long an alarm waits for the store before it goes out without it.
const ALARM_WITHIN: Duration = Duration::from_millis(300);
/// Ids of alarms that went out without the store, so that the queue does not send them again.
const DIRECT_MOST: usize = 1_024;

/// What the door needs.
pub struct Door {
    pub store: Store,
    pub intake: Intake,
    pub gateways: BTreeMap<String, Arc<Gateway>>,
    pub answerer: Arc<dyn Answerer>,
    pub to_send: Arc<Notify>,
    pub public_url: Option<String>,
    pub metrics: Option<PrometheusHandle>,
    direct: Mutex<VecDeque<String>>,
}

impl Door {
    pub fn new(
        store: Store,
        intake: Intake,
        gateways: BTreeMap<String, Arc<Gateway>>,
        answerer: Arc<dyn Answerer>,
        to_send: Arc<Notify>,
    ) -> Door {
        Door {
            store,
            intake,
            gateways,
            answerer,
            to_send,
            public_url: None,
            metrics: None,
            direct: Mutex::new(VecDeque::new()),
        }
    }
}

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
    let arrivals: Vec<Arrival> =
        inbounds.into_iter().map(|inbound| Arrival { alarm: door.answerer.alarm(&inbound), inbound }).collect();
    let taking: Vec<_> =
        arrivals.into_iter().map(|arrival| tokio::spawn(take(door.clone(), gateway.clone(), arrival))).collect();
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
        _ => answer(&gateway.profile.texts.answer),
    }
}

/// Keeps a text; whether it is kept. An alarm goes out whether the store is there or not.
async fn take(door: Arc<Door>, gateway: Arc<Gateway>, arrival: Arrival) -> bool {
    let Some(alarm) = arrival.alarm.clone() else {
        return matches!(door.intake.take(arrival).await, Ok(true));
    };
    metrics::counter!("bellyful_alarms_total").increment(1);
    let intake = door.intake.clone();
    let mut keeping = tokio::spawn(async move { matches!(intake.take(arrival).await, Ok(true)) });
    let kept = match timeout(ALARM_WITHIN, &mut keeping).await {
        Ok(kept) => kept.unwrap_or(false),
        Err(_) => {
            send_directly(&door, &gateway, &alarm).await;
            keeping.await.unwrap_or(false)
        }
    };
    if !kept {
        send_directly(&door, &gateway, &alarm).await;
        return false;
    }
    let direct = door.direct.lock().is_ok_and(|direct| direct.contains(&alarm.id));
    if direct && let Err(error) = door.store.sent_directly(&alarm.id, Utc::now()).await {
        tracing::error!(%error, "an alarm that went out may go out again");
    }
    door.to_send.notify_waiters();
    door.to_send.notify_one();
    true
}

/// Sends an alarm past the queue, once.
async fn send_directly(door: &Door, gateway: &Gateway, alarm: &Outbound) {
    if door.direct.lock().is_ok_and(|direct| direct.contains(&alarm.id)) {
        return;
    }
    let sent = gateway.send(&alarm.id, &alarm.to, &alarm.text).await;
    metrics::counter!("bellyful_alarms_past_the_store_total").increment(1);
    if matches!(sent, crate::gateway::Sent::Taken { .. })
        && let Ok(mut direct) = door.direct.lock()
    {
        direct.push_back(alarm.id.clone());
        if direct.len() > DIRECT_MOST {
            direct.pop_front();
        }
    }
}

/// Waits for the answer to be decided and gives it in the response; else acknowledges, and it waits for the same call
/// to come again. A call that comes again gets the same answer: its gateway did not hear the first.
async fn in_response(door: &Door, gateway: &Gateway, first: &str) -> Response {
    let Some(shape) = &gateway.profile.out.in_response else { return answer(&gateway.profile.texts.answer) };
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
    answer(&gateway.profile.texts.answer)
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
        let text = match (&report.ours, &report.theirs) {
            (Some(ours), _) => ByWire::Ours(ours),
            (None, Some(theirs)) => ByWire::Theirs(theirs),
            (None, None) => continue,
        };
        metrics::counter!("bellyful_receipts_total", "says" => report.receipt.id()).increment(1);
        if let Err(error) = door.store.receipt(&gateway.name, text, report.receipt, Utc::now()).await {
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
    if let Ok(unsent) = door.store.unsent().await {
        metrics::gauge!("bellyful_sends_waiting").set(unsent as f64);
    }
    match &door.metrics {
        Some(handle) => handle.render().into_response(),
        None => wrong(StatusCode::NOT_FOUND, "Nothing is measured here."),
    }
}
