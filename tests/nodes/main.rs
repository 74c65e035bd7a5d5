//! Several nodes on one PostgreSQL behind a balancer (haproxy): a report on standard output; panics where a text that
//! was acknowledged is not answered. Needs the Debian packages postgresql and haproxy.
//!
//! `cargo run --release -p bellyful-tests --example nodes`; BELLYFUL_NODES_TEXTS: texts of each measured load.

mod balance;
mod load;

use balance::Balancer;
use bellyful_tests::network::{Does, Network, client};
use bellyful_tests::postgres::{Postgres, free_port};
use bellyful_tests::server::{Server, Setting};
use bellyful_tests::stores::fresh_folder;
use load::{Load, all_answered, bare_inserts, measured};
use std::time::{Duration, Instant};

const CLIENTS: usize = 64;
const DRAINED_WITHIN: Duration = Duration::from_secs(120);

#[tokio::main(flavor = "multi_thread", worker_threads = 2)]
async fn main() {
    let Some(postgres) = Postgres::start() else { return };
    let texts = std::env::var("BELLYFUL_NODES_TEXTS").map_or(1_000, |texts| texts.parse().expect("a number"));
    let sqlite = format!("sqlite:{}", fresh_folder("bare").join("bellyful.db").display());
    for (name, database) in [("SQLite", sqlite), ("PostgreSQL", postgres.database())] {
        let network = Network::start(|_, _| Does::Takes).await;
        let server = Setting::new(&database, &network.send_url).start();
        let bare = bare_inserts(&database).await;
        println!("{name}, bare durable inserts one row a commit: {bare:.0} rows/s");
        measured(&format!("{name}, one node"), &server.url, &network, texts, CLIENTS).await;
    }
    let nodes = Nodes::start(&postgres.database()).await;
    measured("PostgreSQL, three nodes behind a balancer", &nodes.url(), &nodes.network, texts, CLIENTS).await;
    println!("turns worked by each node: {:?}", nodes.turns().await);
    rolling_restart(nodes).await;
    fail_over(&postgres).await;
}

/// Three nodes behind a balancer.
struct Nodes {
    network: Network,
    settings: Vec<Setting>,
    servers: Vec<Server>,
    balancer: Balancer,
}

impl Nodes {
    async fn start(database: &str) -> Nodes {
        let network = Network::start(|_, _| Does::Takes).await;
        let ports = [free_port(), free_port(), free_port()];
        let settings: Vec<Setting> = ports
            .iter()
            .map(|port| {
                Setting::new(database, &network.send_url).with("BELLYFUL__LISTEN", &format!("127.0.0.1:{port}"))
            })
            .collect();
        let servers = settings.iter().map(Setting::start).collect();
        Nodes { network, settings, servers, balancer: Balancer::over_nodes(&ports).await }
    }

    fn url(&self) -> String {
        format!("http://127.0.0.1:{}", self.balancer.port)
    }

    /// How many turns each node has worked.
    async fn turns(&self) -> Vec<u64> {
        let mut all = vec![];
        for server in &self.servers {
            let page = client().get(format!("{}/metrics", server.url)).send().await.expect("answers");
            let page = page.text().await.expect("text");
            let turns = page.lines().find_map(|line| line.strip_prefix("bellyful_turn_seconds_count "));
            all.push(turns.map_or(0, |turns| turns.parse().expect("a count")));
        }
        all
    }
}

/// Every node is told to stop and started anew, one after the other, while texts come in.
async fn rolling_restart(mut nodes: Nodes) {
    let load = Load::begin(&nodes.url(), "roll", 8);
    for (server, setting) in nodes.servers.iter_mut().zip(&nodes.settings) {
        tokio::time::sleep(Duration::from_secs(2)).await;
        let code = tokio::task::block_in_place(|| server.terminate());
        assert_eq!(code, Some(0), "a node told to stop ends well");
        *server = setting.start();
    }
    tokio::time::sleep(Duration::from_secs(2)).await;
    let load = load.end().await;
    all_answered(&nodes.network, &load.acknowledged, DRAINED_WITHIN).await;
    println!("rolling restart of three nodes: {load}; none lost");
}

/// The primary crashes in mid-load; its synchronous replica is promoted.
async fn fail_over(primary: &Postgres) {
    let url = primary.database();
    let replica = primary.replica();
    let front = Balancer::over_databases(primary.port, replica.port).await;
    let database = url.replace(&format!(":{}/", primary.port), &format!(":{}/", front.port));
    let nodes = Nodes::start(&database).await;
    let load = Load::begin(&nodes.url(), "fail", 8);
    tokio::time::sleep(Duration::from_secs(4)).await;
    let crash = Instant::now();
    tokio::task::block_in_place(|| {
        primary.crash();
        replica.promote();
    });
    let promoted = crash.elapsed();
    tokio::time::sleep(Duration::from_secs(6)).await;
    let load = load.end().await;
    all_answered(&nodes.network, &load.acknowledged, DRAINED_WITHIN).await;
    println!(
        "fail-over to a synchronous replica, promoted after {:.1} s: {load}; none acknowledged lost; longest time \
         without a text taken in {:.1} s",
        promoted.as_secs_f64(),
        load.longest_gap.as_secs_f64()
    );
}
