//! A PostgreSQL server of our own, on loopback, in a folder that is removed with it.
//!
//! Gives `None`, with a sentence on standard error, where the server's programs are not installed.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::OnceLock;
use std::sync::atomic::{AtomicU32, Ordering};

pub struct Postgres {
    folder: PathBuf,
    bin: PathBuf,
    pub port: u16,
}

impl Postgres {
    /// The server that all tests of one process share. It stops when the process ends.
    pub fn shared() -> Option<&'static Postgres> {
        static SHARED: OnceLock<Option<Postgres>> = OnceLock::new();
        SHARED.get_or_init(Postgres::start).as_ref()
    }

    /// A server of one's own.
    pub fn start() -> Option<Postgres> {
        let Some(bin) = programs() else {
            eprintln!("skipped on PostgreSQL: its server programs are not installed (Debian package postgresql)");
            return None;
        };
        let folder = crate::stores::fresh_folder("postgres");
        let server = Postgres { folder, bin, port: free_port() };
        let data = server.folder.join("data");
        server.run("initdb", &["-D", &text(&data), "-A", "trust", "-U", "bellyful", "--no-locale", "-E", "UTF8"]);
        Some(server.serve())
    }

    /// A replica that follows this server by streaming; from here on a commit counts only when both have it.
    pub fn replica(&self) -> Postgres {
        let folder = crate::stores::fresh_folder("replica");
        let replica = Postgres { folder, bin: self.bin.clone(), port: free_port() };
        let (port, data) = (self.port.to_string(), text(&replica.folder.join("data")));
        let from = ["-h", "127.0.0.1", "-p", &port, "-U", "bellyful", "-D", &data, "-R", "-X", "stream", "-c", "fast"];
        self.run("pg_basebackup", &from);
        let replica = replica.serve();
        for order in ["ALTER SYSTEM SET synchronous_standby_names = '*'", "SELECT pg_reload_conf()"] {
            self.run("psql", &["-q", "-h", "127.0.0.1", "-p", &port, "-U", "bellyful", "-c", order, "postgres"]);
        }
        replica
    }

    /// Ends at once, as by a crash: nothing is flushed, nobody is told.
    pub fn crash(&self) {
        self.run("pg_ctl", &["stop", "-w", "-m", "immediate", "-D", &text(&self.folder.join("data"))]);
    }

    /// Makes a replica the one that takes writes.
    pub fn promote(&self) {
        self.run("pg_ctl", &["promote", "-w", "-D", &text(&self.folder.join("data"))]);
    }

    fn serve(self) -> Postgres {
        let server = self;
        let (data, port) = (server.folder.join("data"), server.port);
        // The server ends with the process that started it, however that ends: it is the child of a shell that waits
        // for its input to close.
        let start = format!(
            "'{}' -D '{}' -p {port} -k '{}' -c listen_addresses=127.0.0.1 -c max_connections=200 -c shared_buffers=64MB & \
             server=$!; cat >/dev/null; kill -INT $server; wait $server; rm -rf '{}'",
            text(&server.bin.join("postgres")),
            text(&data),
            text(&server.folder),
            text(&server.folder),
        );
        let mut shell = as_server_user("sh");
        let child = shell
            .args(["-c", &start])
            .stdin(Stdio::piped())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .expect("a shell can be started");
        // Its input stays open as long as this process lives.
        std::mem::forget(child);
        for _ in 0..200 {
            if server.is_ready() {
                return server;
            }
            std::thread::sleep(std::time::Duration::from_millis(50));
        }
        panic!("PostgreSQL did not start in {}", server.folder.display());
    }

    /// Makes a new empty database; gives its URL.
    pub fn database(&self) -> String {
        static NEXT: AtomicU32 = AtomicU32::new(0);
        let name = format!("t{}_{}", std::process::id(), NEXT.fetch_add(1, Ordering::Relaxed));
        let port = self.port.to_string();
        self.run("createdb", &["-h", "127.0.0.1", "-p", &port, "-U", "bellyful", &name]);
        format!("postgres://bellyful@127.0.0.1:{port}/{name}")
    }

    fn is_ready(&self) -> bool {
        let port = self.port.to_string();
        Command::new(self.bin.join("pg_isready"))
            .args(["-q", "-h", "127.0.0.1", "-p", &port, "-U", "bellyful"])
            .status()
            .is_ok_and(|status| status.success())
    }

    fn run(&self, program: &str, arguments: &[&str]) {
        let output = as_server_user(&text(&self.bin.join(program))).args(arguments).output().expect("program starts");
        assert!(output.status.success(), "{program}: {}", String::from_utf8_lossy(&output.stderr));
    }
}

/// The newest server programs there are.
fn programs() -> Option<PathBuf> {
    let mut versions: Vec<PathBuf> = std::fs::read_dir("/usr/lib/postgresql")
        .ok()?
        .filter_map(|entry| Some(entry.ok()?.path().join("bin")))
        .filter(|bin| bin.join("initdb").exists())
        .collect();
    versions.sort();
    versions.pop()
}

/// PostgreSQL refuses to run as root; there it runs as the user its package made.
fn as_server_user(program: &str) -> Command {
    let root = std::fs::metadata("/proc/self").is_ok_and(|me| std::os::unix::fs::MetadataExt::uid(&me) == 0);
    if root {
        let mut command = Command::new("setpriv");
        command.args(["--reuid=postgres", "--regid=postgres", "--clear-groups", program]);
        command
    } else {
        Command::new(program)
    }
}

fn text(path: &Path) -> String {
    path.to_str().expect("paths of tests are plain").to_owned()
}

pub fn free_port() -> u16 {
    let listener = std::net::TcpListener::bind("127.0.0.1:0").expect("loopback can be bound");
    listener.local_addr().expect("bound").port()
}
