//! The programme's report, on paper: one month or some, every sum with how it was counted.
//!
//! Takes the months asked for; gives one page that a browser prints on A4.

use super::{Asked, Row, Span, Totals, fuel_name, lived, method_said, place_name, row};
use crate::pages::access::{Bar, Worker};
use crate::pages::{Broken, Pages, Tongue, page};
use askama::Template;
use axum::Extension;
use axum::extract::{Query, State};
use axum::response::Response;
use std::sync::Arc;

#[derive(Template)]
#[template(path = "report.html")]
struct Report {
    tongue: Tongue,
    worker: Bar,
    span: String,
    fuel_name: String,
    households: usize,
    whole: Row,
    months: Vec<Row>,
    places: Vec<Row>,
    method: String,
    made_for: String,
}

/// Errors: the store's.
pub async fn report(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Query(asked): Query<Asked>,
) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let (tongue, span, method) = (pages.tongue(&worker), asked.span(now), asked.method());
    let lived = lived(&pages, span).await?;
    let totals = Totals::of(&lived);
    let row = |name: String, sums| row(&tongue, name, sums, method);
    let made_for = [("date", tongue.full_date(now.date_naive()).into()), ("name", worker.name.clone().into())];
    page(&Report {
        made_for: tongue.with("report-made", &made_for),
        span: span_named(&tongue, span),
        fuel_name: fuel_name(&tongue, method.fuel),
        households: lived.len(),
        whole: row(String::new(), &totals.whole),
        months: totals.months.iter().map(|(month, sums)| row(tongue.month(*month), sums)).collect(),
        places: totals.places.iter().map(|(place, sums)| row(place_name(&tongue, place), sums)).collect(),
        method: method_said(&tongue, method),
        worker: worker.bar("/programme"),
        tongue: tongue.clone(),
    })
}

fn span_named(tongue: &Tongue, Span { first, last }: Span) -> String {
    if first == last {
        return tongue.month(first);
    }
    tongue.with("report-span", &[("first", tongue.month(first).into()), ("last", tongue.month(last).into())])
}
