//! What a text costs after so many days of texts: the bot's own `converse`, a text a day, each timed.

use bellyful_tests::server::program;
use chrono::{DateTime, Duration, Utc};
use std::io::{BufRead, BufReader, Write};
use std::process::{Command, Stdio};
use std::time::Instant;

/// Days about which the mean is told.
const WINDOW: u64 = 30;

pub async fn cost_by_days(days: u64) {
    let mut talk = Command::new(program())
        .arg("converse")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .expect("it starts");
    let mut says = talk.stdin.take().expect("piped");
    let mut said = BufReader::new(talk.stdout.take().expect("piped")).lines();
    let mut line = |line: String| {
        let start = Instant::now();
        writeln!(says, "{line}").expect("it hears");
        for line in said.by_ref() {
            if line.expect("text").contains("\"done\":true") {
                break;
            }
        }
        start.elapsed().as_secs_f64() * 1e3
    };
    let start: DateTime<Utc> = "2017-03-01T07:00:00Z".parse().expect("a time");
    line(format!(
        r#"{{"at":"{}","from":"+15550100","setup":{{"lang":"en","tank_l":1000,"liquid_l":800,"gas_store_l":500,"place":"Kisumu","seeded":{{"feed":"cattle_manure","kg":60,"days_ago":21}},"shade":"black"}}}}"#,
        start.to_rfc3339()
    ));
    let mut took = Vec::new();
    for day in 0..days {
        let at = start + Duration::days(day as i64) + Duration::minutes(30);
        // What the clock made due is not the text's cost.
        line(format!(r#"{{"at":"{}"}}"#, (at - Duration::minutes(1)).to_rfc3339()));
        took.push(line(format!(
            r#"{{"at":"{}","from":"+15550100","text":"fed 3 kg scraps 6 L water"}}"#,
            at.to_rfc3339()
        )));
    }
    println!();
    let mut ends = vec![WINDOW, 100, 300, 1_000, days];
    ends.retain(|end| *end <= days);
    ends.dedup();
    for end in ends {
        let window = &took[(end.saturating_sub(WINDOW)) as usize..end as usize];
        let mean = window.iter().sum::<f64>() / window.len() as f64;
        println!("after {end} days of texts: {mean:.1} ms a text, the model and its look ahead included");
    }
    drop(says);
    let _ = talk.wait();
}
