//! A row a household and month, for a spreadsheet: as CSV, or as a workbook with typed cells and the method beside them.
//!
//! Takes what households lived; gives files. Both are made from one list of columns, so both tell the same figures.

use super::sums::{Method, Month, Spared, Sums, spared};
use super::{Asked, Lived, lived, method_said};
use crate::pages::access::Worker;
use crate::pages::{Broken, Pages, Tongue};
use axum::Extension;
use axum::extract::{Query, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use chrono::Datelike;
use rust_xlsxwriter::{ExcelDateTime, Format, Workbook, XlsxError};
use std::sync::Arc;

enum Cell {
    Month(Month),
    Words(String),
    Count(i64),
    /// With as many decimals as are shown.
    Amount(f64, usize),
}

struct Column {
    /// As CSV has it, for machines.
    name: &'static str,
    /// Message that the workbook has over it, for people.
    heading: &'static str,
    cell: fn(&Line) -> Cell,
}

/// One household's month.
struct Line<'a> {
    household: &'a Lived,
    month: Month,
    sums: &'a Sums,
    method: Method,
    spared: Spared,
}

const fn column(name: &'static str, heading: &'static str, cell: fn(&Line) -> Cell) -> Column {
    Column { name, heading, cell }
}

const COLUMNS: [Column; 16] = [
    column("month", "prog-month", |line| Cell::Month(line.month)),
    column("household", "column-household", |line| Cell::Count(line.household.id)),
    column("name", "column-name", |line| Cell::Words(line.household.name.clone())),
    column("place", "prog-place", |line| Cell::Words(line.household.place.clone())),
    column("days_told", "column-days_told", |line| Cell::Count(line.sums.days_told.into())),
    column("fed_kg", "prog-fed", |line| Cell::Amount(line.sums.fed_kg, 1)),
    column("water_l", "column-water_l", |line| Cell::Amount(line.sums.water_l, 1)),
    column("cooked_min", "column-cooked_min", |line| Cell::Amount(line.sums.cooked_min, 0)),
    column("biogas_m3", "prog-gas", |line| Cell::Amount(line.spared.biogas_m3, 3)),
    column("spared_fuel", "column-spared_fuel", |line| Cell::Words(line.method.fuel.id().to_owned())),
    column("non_renewable_share", "column-non_renewable_share", |line| Cell::Amount(line.method.non_renewable, 3)),
    column("spared_fuel_kg", "column-spared_fuel_kg", |line| Cell::Amount(line.spared.fuel_kg, 2)),
    column("spared_co2e_kg", "prog-co2e", |line| Cell::Amount(line.spared.co2e_kg, 2)),
    column("texts_in", "column-texts_in", |line| Cell::Count(line.sums.texts_in.into())),
    column("texts_out", "column-texts_out", |line| Cell::Count(line.sums.texts_out.into())),
    column("segments_out", "prog-segments", |line| Cell::Count(line.sums.segments_out.into())),
];

fn lines(lived: &[Lived], method: Method) -> impl Iterator<Item = Line<'_>> {
    lived.iter().flat_map(move |household| {
        household.months.iter().map(move |(month, sums)| Line {
            household,
            month: *month,
            sums,
            method,
            spared: spared(sums.cooked_min, method),
        })
    })
}

/// As CSV. Errors: the store's.
pub async fn csv(State(pages): State<Arc<Pages>>, Query(asked): Query<Asked>) -> Result<Response, Broken> {
    let lived = lived(&pages, asked.span((pages.clock)())).await?;
    let mut out = csv::Writer::from_writer(vec![]);
    let wrong = |error: csv::Error| Broken::Table(error.to_string());
    out.write_record(COLUMNS.map(|column| column.name)).map_err(wrong)?;
    for line in lines(&lived, asked.method()) {
        out.write_record(COLUMNS.map(|column| in_words((column.cell)(&line)))).map_err(wrong)?;
    }
    let body = out.into_inner().map_err(|error| Broken::Table(error.to_string()))?;
    Ok(file("text/csv; charset=utf-8", "attachment; filename=\"programme.csv\"", body))
}

/// As a workbook. Errors: the store's; a sentence when a sheet would not hold it.
pub async fn xlsx(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Query(asked): Query<Asked>,
) -> Result<Response, Broken> {
    let tongue = pages.tongue(&worker);
    let lived = lived(&pages, asked.span((pages.clock)())).await?;
    let rows: usize = lived.iter().map(|household| household.months.len()).sum();
    if rows > ROWS_MOST {
        return Err(Broken::form("form-rows-many", [("n", rows.to_string().into())]));
    }
    // Packing a big workbook takes seconds of work, and must not hold up the texts of families meanwhile.
    let packed = tokio::task::spawn_blocking(move || workbook(&tongue, &lived, asked.method())).await;
    let body =
        packed.map_err(|error| Broken::Table(error.to_string()))?.map_err(|error| Broken::Table(error.to_string()))?;
    let kind = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    Ok(file(kind, "attachment; filename=\"programme.xlsx\"", body))
}

/// A workbook is made in memory, so it is bounded. Source: our choice.
const ROWS_MOST: usize = 120_000;

fn file(kind: &'static str, named: &'static str, body: Vec<u8>) -> Response {
    let headers =
        [(header::CONTENT_TYPE, kind), (header::CONTENT_DISPOSITION, named), (header::CACHE_CONTROL, "no-store")];
    (headers, body).into_response()
}

fn workbook(tongue: &Tongue, lived: &[Lived], method: Method) -> Result<Vec<u8>, XlsxError> {
    let mut book = Workbook::new();
    let head = Format::new().set_bold().set_text_wrap();
    let decimals = [0, 1, 2, 3].map(|places: usize| {
        Format::new().set_num_format(if places == 0 { "0".to_owned() } else { format!("0.{}", "0".repeat(places)) })
    });
    let month = Format::new().set_num_format("yyyy-mm");
    let sheet = book.add_worksheet().set_name(sheet_name(tongue, "prog-by-month"))?;
    sheet.set_freeze_panes(1, 3)?;
    for (at, column) in (0..).zip(&COLUMNS) {
        sheet.write_string_with_format(0, at, tongue.say(column.heading), &head)?;
        sheet.set_column_width(at, if matches!(column.name, "name" | "place") { 22 } else { 11 })?;
    }
    let mut row = 0;
    for line in lines(lived, method) {
        row += 1;
        for (at, column) in (0..).zip(&COLUMNS) {
            match (column.cell)(&line) {
                Cell::Month(first) => sheet.write_datetime_with_format(row, at, excel_date(first)?, &month)?,
                // A string stays one: words are never read as a formula here.
                Cell::Words(words) => sheet.write_string(row, at, words)?,
                Cell::Count(count) => sheet.write_number_with_format(row, at, count as f64, &decimals[0])?,
                Cell::Amount(amount, places) => {
                    sheet.write_number_with_format(row, at, shown(amount, places), &decimals[places])?
                }
            };
        }
    }
    if row > 0 {
        sheet.autofilter(0, 0, row, COLUMNS.len() as u16 - 1)?;
    }
    // Figures are worth nothing without how they were counted.
    let sheet = book.add_worksheet().set_name(sheet_name(tongue, "prog-how"))?;
    sheet.set_column_width(0, 100)?;
    sheet.write_string_with_format(0, 0, method_said(tongue, method), &Format::new().set_text_wrap())?;
    book.save_to_buffer()
}

/// A message as the name of a sheet, which bears 31 letters and not all signs.
fn sheet_name(tongue: &Tongue, id: &str) -> String {
    tongue.say(id).chars().filter(|c| !"[]:*?/\\'".contains(*c)).take(31).collect()
}

fn excel_date(month: Month) -> Result<ExcelDateTime, XlsxError> {
    ExcelDateTime::from_ymd(month.year().clamp(1900, 9999) as u16, month.month() as u8, 1)
}

/// The figure as it is written, so that a cell and the CSV hold the same one.
fn shown(amount: f64, places: usize) -> f64 {
    format!("{amount:.places$}").parse().unwrap_or(amount)
}

fn in_words(cell: Cell) -> String {
    match cell {
        Cell::Month(month) => month.format("%Y-%m").to_string(),
        Cell::Words(words) => plain(&words),
        Cell::Count(count) => count.to_string(),
        Cell::Amount(amount, places) => format!("{amount:.places$}"),
    }
}

/// Words that a spreadsheet will not take for a formula.
fn plain(words: &str) -> String {
    if words.starts_with(['=', '+', '-', '@', '\t', '\r']) { format!("'{words}") } else { words.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_never_a_formula() {
        assert_eq!(plain("=HYPERLINK(1)"), "'=HYPERLINK(1)");
        assert_eq!(plain("Otelo"), "Otelo");
    }
}
