//! The real peers on loopback: Kannel, Gammu's SMS daemon with its dummy phone, Prosody. Each is a package of Debian that
//! `.ci/long` installs and runs these with; `cargo test -p bellyful-tests --test peers -- --ignored`.

mod gammu;
mod kannel;
mod prosody;

use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

/// A daemon in the foreground; it goes with the test.
pub struct Daemon(Child);

impl Daemon {
    pub fn start(program: &str, arguments: &[&str], folder: &Path, environment: &[(&str, &str)]) -> Daemon {
        let log = std::fs::File::create(folder.join(format!("{}.log", program.replace('/', "_")))).expect("a log");
        let mut command = Command::new(program);
        command.args(arguments).envs(environment.iter().copied()).current_dir(folder);
        command.stdin(Stdio::null()).stdout(log.try_clone().expect("one more")).stderr(log);
        Daemon(command.spawn().unwrap_or_else(|error| panic!("{program} does not start: {error}")))
    }

    pub fn stop(&mut self) {
        if !matches!(self.0.try_wait(), Ok(None)) {
            return;
        }
        let _ = Command::new("kill").arg(self.0.id().to_string()).status();
        let start = Instant::now();
        while matches!(self.0.try_wait(), Ok(None)) && start.elapsed() < Duration::from_secs(10) {
            std::thread::sleep(Duration::from_millis(50));
        }
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

impl Drop for Daemon {
    fn drop(&mut self) {
        self.stop();
    }
}

pub fn free_port() -> u16 {
    let listener = std::net::TcpListener::bind("127.0.0.1:0").expect("loopback");
    listener.local_addr().expect("bound").port()
}

/// One column of the database, as text.
pub async fn states(database: &str, sql: &'static str) -> Vec<String> {
    sqlx::any::install_default_drivers();
    let pool = sqlx::AnyPool::connect(database).await.expect("opens");
    let rows = sqlx::query_scalar(sql).fetch_all(&pool).await.expect("reads");
    pool.close().await;
    rows
}

/// Waits until all texts of ours are in these states.
pub async fn until_states(database: &str, within: Duration, wanted: &[&str]) {
    let start = Instant::now();
    let now = async || states(database, "SELECT state FROM outbox ORDER BY seq").await;
    while now().await != wanted && start.elapsed() < within {
        tokio::time::sleep(Duration::from_millis(200)).await;
    }
    assert_eq!(now().await, wanted);
}
