//! The real server as a process of its own, to be killed at any instruction.

use crate::stores::fresh_folder;
use std::io::{BufRead, BufReader, Read};
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};
use std::sync::OnceLock;

/// Secret that both sides sign with.
pub const SECRET: &str = "a secret of the tests";

/// The program under test, built first if need be.
pub fn program() -> &'static PathBuf {
    static PROGRAM: OnceLock<PathBuf> = OnceLock::new();
    PROGRAM.get_or_init(|| {
        let test = std::env::current_exe().expect("a test is a file");
        let folder = test.ancestors().nth(2).expect("tests lie in target/PROFILE/deps").to_owned();
        let mut cargo = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
        // As a part of the tests, so that no dependency is built twice with other features.
        cargo.args(["test", "-q", "--no-run", "--workspace", "--test", "program"]);
        cargo.current_dir(env!("CARGO_MANIFEST_DIR"));
        // What cargo tells a test of its package would make some dependencies build anew, here and then outside again.
        for (name, _) in std::env::vars() {
            if name.starts_with("CARGO_PKG_") || name.starts_with("CARGO_MANIFEST_") {
                cargo.env_remove(name);
            }
        }
        if folder.ends_with("release") {
            cargo.arg("--release");
        }
        assert!(cargo.status().expect("cargo runs").success(), "the program does not build");
        folder.join("bellyful")
    })
}

/// What a server is started with.
#[derive(Debug, Clone)]
pub struct Setting {
    pub database: String,
    pub send_url: String,
    pub more: Vec<(String, String)>,
    /// Another program than the one built here.
    pub other: Option<PathBuf>,
}

impl Setting {
    pub fn new(database: &str, send_url: &str) -> Setting {
        Setting { database: database.to_owned(), send_url: send_url.to_owned(), more: vec![], other: None }
    }

    pub fn with(mut self, key: &str, value: &str) -> Setting {
        self.more.push((key.to_owned(), value.to_owned()));
        self
    }

    /// Starts another program than the one built here.
    pub fn of(mut self, program: &str) -> Setting {
        self.other = Some(program.into());
        self
    }

    fn command(&self) -> Command {
        let mut command = Command::new(self.other.as_ref().unwrap_or_else(|| program()));
        command
            .arg("serve")
            .env("BELLYFUL__LISTEN", "127.0.0.1:0")
            .env("BELLYFUL__DATABASE", &self.database)
            .env("BELLYFUL__GATEWAY__PLAIN__SECRET", SECRET)
            .env("BELLYFUL__GATEWAY__PLAIN__SEND_URL", &self.send_url)
            .envs(self.more.iter().map(|(key, value)| (key, value)))
            .current_dir(fresh_folder("server"));
        command
    }

    /// Starts a server and waits until it listens.
    pub fn start(&self) -> Server {
        self.start_with(Stdio::inherit())
    }

    /// The same, and where its log is.
    pub fn start_and_keep_its_log(&self) -> (Server, PathBuf) {
        let log = fresh_folder("log").join("log");
        let file = std::fs::File::create(&log).expect("made");
        (self.start_with(file.into()), log)
    }

    fn start_with(&self, log: Stdio) -> Server {
        let mut child = self.command().stdout(Stdio::piped()).stderr(log).spawn().expect("the program starts");
        let mut line = String::new();
        let mut said = BufReader::new(child.stdout.take().expect("its output is piped"));
        said.read_line(&mut line).expect("it says where it listens");
        let url = line.trim().strip_prefix("listening on ").unwrap_or_else(|| panic!("it said `{line}`")).to_owned();
        Server { child, url }
    }

    /// Starts a server that must fail: its exit code and what it says.
    pub fn fail(&self) -> (Option<i32>, String) {
        let mut child = self.command().stderr(Stdio::piped()).stdout(Stdio::null()).spawn().expect("starts");
        let mut said = String::new();
        child.stderr.take().expect("piped").read_to_string(&mut said).expect("text");
        (child.wait().expect("it ends").code(), said)
    }
}

pub struct Server {
    child: Child,
    pub url: String,
}

impl Server {
    pub fn pid(&self) -> u32 {
        self.child.id()
    }

    /// kill -9.
    pub fn kill(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }

    /// SIGTERM, and waits for the end.
    pub fn terminate(&mut self) -> Option<i32> {
        let pid = self.child.id().to_string();
        assert!(Command::new("kill").arg(&pid).status().expect("kill runs").success());
        self.child.wait().expect("it ends").code()
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.kill();
    }
}
