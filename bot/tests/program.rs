//! The program's own manners: what it can do, and how it says that it was used wrong.

use std::process::Command;

fn run(arguments: &[&str]) -> (Option<i32>, String, String) {
    let output = Command::new(env!("CARGO_BIN_EXE_bellyful")).args(arguments).output().expect("runs");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    (output.status.code(), text(&output.stdout), text(&output.stderr))
}

#[test]
fn help_names_every_command() {
    let (code, said, _) = run(&["--help"]);
    assert_eq!(code, Some(0));
    let commands =
        ["backup", "converse", "demo", "export", "nightly", "read", "rebuild", "restore", "serve", "simulate", "staff"];
    for command in commands {
        assert!(said.contains(&format!("  {command} ")), "{command}: {said}");
    }
}

#[test]
fn bad_use_exits_2_and_failure_1() {
    let rows: [(&[&str], i32); 5] = [
        (&["fly"], 2),
        (&["read"], 2),
        (&["demo", "--listen", "nowhere"], 2),
        (&["simulate", "/no/such.json"], 1),
        (&["serve", "--config", "/no/such.toml"], 1),
    ];
    for (arguments, expected) in rows {
        let (code, _, said) = run(arguments);
        assert_eq!(code, Some(expected), "{arguments:?}: {said}");
        assert!(!said.is_empty() && !said.contains("panicked"), "{arguments:?}: {said}");
        assert!(expected == 2 || said.trim().lines().count() == 1, "{arguments:?}: {said}");
    }
}
