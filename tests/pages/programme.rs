//! The programme on paper and in a workbook: the same figures everywhere, and how they were counted.

use crate::access::{login, node};
use crate::work::{Browser, household};
use bellyful_tests::network::client_without_redirects as client;
use calamine::{Data, Reader, Xlsx};
use chrono::{Months, NaiveDate, Utc};
use std::io::Cursor;

async fn field() -> (bellyful::app::Node, Browser) {
    let (node, url) = node().await;
    household(&node.store).await;
    let cookie = login(&url, "field", "right").await.expect("may log in");
    (node, Browser { url, cookie })
}

/// A cell as the CSV would have it.
fn as_csv(cell: &Data, csv: &str) -> String {
    match cell {
        Data::String(words) if csv.starts_with('\'') => format!("'{words}"),
        Data::String(words) => words.clone(),
        Data::Empty => String::new(),
        Data::Float(number) => {
            let decimals = csv.split_once('.').map_or(0, |(_, decimals)| decimals.len());
            format!("{number:.decimals$}")
        }
        Data::DateTime(at) => {
            let day = NaiveDate::from_ymd_opt(1899, 12, 30).expect("a date") + chrono::Days::new(at.as_f64() as u64);
            day.format("%Y-%m").to_string()
        }
        other => format!("{other:?}"),
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn the_workbook_opens_again_and_tells_what_the_csv_tells() {
    let (_node, browser) = field().await;
    let asked = "fuel=charcoal&non_renewable=0.875";
    let csv = browser.get(&format!("/programme.csv?{asked}")).await;
    let call = client().get(format!("{}/programme.xlsx?{asked}", browser.url)).header("cookie", &browser.cookie);
    let response = call.send().await.expect("answers");
    assert!(response.headers()["content-disposition"].to_str().expect("text").contains("programme.xlsx"));
    let mut book: Xlsx<_> = Xlsx::new(Cursor::new(response.bytes().await.expect("bytes"))).expect("a workbook");
    assert_eq!(book.sheet_names(), ["By month", "How it is counted"]);
    let sheet = book.worksheet_range("By month").expect("a sheet");
    let rows: Vec<Vec<&str>> = csv.lines().map(|line| line.split(',').collect()).collect();
    assert_eq!((sheet.height(), sheet.width()), (rows.len(), rows[0].len()));
    assert!(rows.len() >= 2, "a month was lived: {csv}");
    for (row, expected) in sheet.rows().zip(&rows).skip(1) {
        let told: Vec<String> = row.iter().zip(expected).map(|(cell, csv)| as_csv(cell, csv)).collect();
        assert_eq!(&told, expected);
    }
    // Amounts are numbers and the month is a date; a name is words, whatever it begins with.
    let first: Vec<&Data> = sheet.rows().nth(1).expect("a row").iter().collect();
    assert!(matches!(first[0], Data::DateTime(_)), "{first:?}");
    assert_eq!(first[2], &Data::String("=Lantana".into()));
    assert_eq!((first[5], first[8]), (&Data::Float(3.0), &Data::Float(0.3)));
    let headings: Vec<String> = sheet.rows().next().expect("headings").iter().map(ToString::to_string).collect();
    assert!(headings.contains(&"Fed, kg".to_owned()) && headings.contains(&"Gas burned, m3".to_owned()));
    let method = book.worksheet_range("How it is counted").expect("a sheet");
    let told: String = method.rows().flatten().map(ToString::to_string).collect();
    assert!(told.contains("0.88 of the charcoal") && told.contains("AMS-I.E"), "{told}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_report_is_of_the_months_asked_for_and_states_its_method() {
    let (_node, browser) = field().await;
    let now = Utc::now().date_naive();
    let this = now.format("%Y-%m").to_string();
    let report = browser.get(&format!("/programme/report?from={this}&fuel=lpg")).await;
    let named = now.format("%B %Y").to_string();
    assert!(report.contains(&format!("Programme report, {named}")), "{report}");
    assert!(report.contains("<dt>Gas burned, m3</dt><dd>0.3</dd>"), "{report}");
    assert!(report.contains("LPG spared, kg") && report.contains("1.00 of the LPG counted"), "{report}");
    // The months before and after hold nothing of this one.
    let old = (now - Months::new(3)).format("%Y-%m").to_string();
    let before = (now - Months::new(1)).format("%Y-%m").to_string();
    let report = browser.get(&format!("/programme/report?from={old}&to={before}")).await;
    assert!(report.contains("Nothing was told in these months.") && report.contains(" to "), "{report}");
    let span = browser.get(&format!("/programme/report?from={old}&to={this}")).await;
    assert!(span.contains("<dt>Gas burned, m3</dt><dd>0.3</dd>"), "{span}");
    assert!(browser.get("/programme").await.contains("/programme/report"));
}
