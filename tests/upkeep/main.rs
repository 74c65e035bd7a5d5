//! Upkeep as an operator does it: the real program, a copy taken and restored on either database, twins rebuilt.

mod upgrade;

use bellyful_tests::network::{Does, Network, text_in};
use bellyful_tests::server::{Setting, program};
use bellyful_tests::stores::{fresh_folder, fresh_urls};
use std::process::Command;
use std::time::Duration;

fn run(database: &str, arguments: &[&str]) -> (Option<i32>, String) {
    let output = Command::new(program())
        .args(arguments)
        .env("BELLYFUL__DATABASE", database)
        .env("BELLYFUL__GATEWAY__PLAIN__SECRET", "s")
        .env("BELLYFUL__GATEWAY__PLAIN__SEND_URL", "http://127.0.0.1:1/")
        .output()
        .expect("runs");
    let said = [&output.stdout[..], &output.stderr[..]].concat();
    (output.status.code(), String::from_utf8_lossy(&said).into_owned())
}

/// Some families text, and are answered.
async fn lived(database: &str) {
    let network = Network::start(|_, _| Does::Takes).await;
    let mut server = Setting::new(database, &network.send_url).start();
    for family in 0..3 {
        for (n, text) in ["hello", "1000 litres", "fed 3 kg scraps, 6 L water"].iter().enumerate() {
            let number = format!("+1555{family:07}");
            assert_eq!(text_in(&server.url, &n.to_string(), &number, text).await, Some(202));
        }
    }
    assert_eq!(network.until(Duration::from_secs(20), |all| all.len() == 9).await.len(), 9);
    // A copy is taken while the bot serves.
    let copy = fresh_folder("copy").join("while-serving.gz");
    assert_eq!(run(database, &["backup", copy.to_str().expect("plain")]).0, Some(0));
    assert_eq!(server.terminate(), Some(0));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_copy_restores_into_either_database_and_is_the_same_again() {
    let urls = fresh_urls();
    for from in &urls {
        lived(from).await;
        let folder = fresh_folder("copies");
        let (first, second) = (folder.join("first.gz"), folder.join("second.gz"));
        let (code, said) = run(from, &["backup", first.to_str().expect("plain")]);
        assert_eq!(code, Some(0), "{said}");
        for to in fresh_urls() {
            let (code, said) = run(&to, &["restore", first.to_str().expect("plain")]);
            assert_eq!(code, Some(0), "{said}");
            let (code, said) = run(&to, &["backup", second.to_str().expect("plain")]);
            assert_eq!(code, Some(0), "{said}");
            assert_eq!(sorted(&first), sorted(&second), "from {from} to {to}");
            let (code, said) = run(&to, &["restore", first.to_str().expect("plain")]);
            assert_eq!(code, Some(1));
            assert!(said.contains("not empty") && said.trim().lines().count() == 1, "{said}");
            // The restored bot goes on: numbers of new rows do not collide with old ones.
            lived_on(&to).await;
        }
    }
}

async fn lived_on(database: &str) {
    let network = Network::start(|_, _| Does::Takes).await;
    let mut server = Setting::new(database, &network.send_url).start();
    assert_eq!(text_in(&server.url, "later", "+15550000000", "gas low").await, Some(202));
    assert_eq!(text_in(&server.url, "later", "+15559999999", "hello").await, Some(202));
    assert_eq!(network.until(Duration::from_secs(20), |all| all.len() == 2).await.len(), 2);
    assert_eq!(server.terminate(), Some(0));
}

/// The rows of a copy: databases give them in orders of their own.
fn sorted(copy: &std::path::Path) -> Vec<String> {
    let output = Command::new("gzip").arg("-dc").arg(copy).output().expect("gzip runs");
    assert!(output.status.success());
    let mut lines: Vec<String> = String::from_utf8(output.stdout).expect("text").lines().map(str::to_owned).collect();
    assert!(lines.len() > 30, "{} lines", lines.len());
    lines.sort();
    lines
}

#[tokio::test(flavor = "multi_thread")]
async fn twins_are_rebuilt_to_the_same_bytes_and_moved_by_night() {
    for database in fresh_urls() {
        lived(&database).await;
        let (code, said) = run(&database, &["rebuild", "--check"]);
        assert_eq!(code, Some(0), "{said}");
        assert!(said.contains("3 twins are rebuilt") && said.contains("; 0 differed"), "{said}");
        let (code, said) = run(&database, &["nightly"]);
        assert_eq!(code, Some(0), "{said}");
        let (code, said) = run(&database, &["export", "1"]);
        assert_eq!(code, Some(0), "{said}");
        assert!(said.contains("\"fed 3 kg scraps, 6 L water\"") && said.contains("+1555"), "{said}");
        let (code, said) = run(&database, &["export", "77"]);
        assert_eq!((code, said.trim().lines().count()), (Some(1), 1), "{said}");
    }
}

#[test]
fn a_copy_that_is_none_is_refused_in_one_sentence() {
    let folder = fresh_folder("no-copy");
    let file = folder.join("no.gz");
    std::fs::write(&file, "not gzip").expect("written");
    let database = format!("sqlite:{}", folder.join("b.db").display());
    for name in [file.to_str().expect("plain"), "/no/such/file.gz"] {
        let (code, said) = run(&database, &["restore", name]);
        assert_eq!((code, said.trim().lines().count()), (Some(1), 1), "{said}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn tables_that_a_newer_version_moved_on_are_left_alone_with_one_sentence() {
    for database in fresh_urls() {
        lived(&database).await;
        sqlx::any::install_default_drivers();
        let pool = sqlx::AnyPool::connect(&database).await.expect("opens");
        let step = "INSERT INTO _sqlx_migrations (version, description, success, checksum, execution_time) \
                    SELECT 9999, 'of tomorrow', success, checksum, 0 FROM _sqlx_migrations WHERE version = 1";
        sqlx::query(step).execute(&pool).await.expect("written");
        pool.close().await;
        let (code, said) = run(&database, &["rebuild", "--check"]);
        let sentence: Vec<_> = said.lines().filter(|line| line.contains("newer version of bellyful")).collect();
        assert!(code == Some(1) && sentence.len() == 1, "{code:?} {said}");
    }
}
