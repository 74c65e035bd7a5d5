//! The one place where parts are built and joined into a running node.

use crate::command::{configured, opened};
use crate::config::Config;
use crate::door::Door;
use crate::gateway::Gateway;
use crate::jobs::guard::Limits;
use crate::jobs::hook;
use crate::jobs::link::Listener;
use crate::jobs::send::Sender;
use crate::jobs::tidy;
use crate::jobs::work::Worker;
use crate::jobs::{Answerer, Answering, HEARTBEAT, machine_clock};
use crate::message::{Inbound, Kind, Outbound, answer_id};
use crate::mind::Mind;
use crate::pages::{self, Pages};
use crate::record::local_date;
use crate::store::{Claim, Intake, Store, Wake};
use crate::taught::Taught;
use crate::text::fold::mostly_latin;
use crate::web;
use crate::{talk, text, turn};
use anyhow::Context;
use chrono::{DateTime, Utc};
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::server::graceful::GracefulShutdown;
use hyper_util::service::TowerToHyperService;
use metrics_exporter_prometheus::{PrometheusBuilder, PrometheusHandle};
use std::net::SocketAddr;
use std::path::PathBuf;
use std::sync::{Arc, Mutex, OnceLock};
use std::time::Duration;
use tokio::net::TcpListener;
use tokio::sync::{Notify, watch};
use tokio::task::JoinSet;

#[derive(Debug, clap::Args)]
pub struct ServeArgs {
    /// TOML file; each key can be overridden by a variable such as BELLYFUL__LISTEN
    #[arg(long)]
    pub config: Option<PathBuf>,
}

/// The bot's mind as the jobs ask it.
impl Answerer for Mind {
    fn alarm(&self, inbound: &Inbound) -> Option<Outbound> {
        let reading = text::read(&self.lexicons, &inbound.text, None, local_date(inbound.sent_at, "UTC"));
        reading.danger().then(|| Outbound {
            id: answer_id(&inbound.gateway, &inbound.from, &inbound.id, 0),
            gateway: inbound.gateway.clone(),
            to: inbound.from.clone(),
            text: talk::alarm_text(
                self,
                self.catalog.written(&reading.lang, mostly_latin(&inbound.text)),
                crate::number::country(&inbound.from),
            ),
            kind: Kind::Alarm,
            advice: None,
            not_before: inbound.received_at,
        })
    }

    fn answer<'a>(&'a self, store: &'a Store, claim: &'a Claim, now: DateTime<Utc>) -> Answering<'a> {
        Box::pin(turn::answer(store, self, claim, now))
    }

    fn wake<'a>(&'a self, store: &'a Store, wake: &'a Wake, now: DateTime<Utc>) -> Answering<'a> {
        Box::pin(turn::wake(store, self, wake, now))
    }

    fn apology(&self, inbound: &Inbound) -> Option<Outbound> {
        let newcomer = self.newcomer(inbound, "");
        Some(Outbound {
            id: answer_id(&inbound.gateway, &inbound.from, &inbound.id, 0),
            gateway: inbound.gateway.clone(),
            to: inbound.from.clone(),
            text: self.catalog.say(&newcomer.lang, "sorry", &[]),
            kind: Kind::Notice,
            advice: None,
            not_before: inbound.received_at,
        })
    }
}

/// A running node: web server, workers, senders.
pub struct Node {
    pub address: SocketAddr,
    pub store: Store,
    owner: String,
    stop: watch::Sender<bool>,
    jobs: JoinSet<()>,
}

impl Node {
    /// Starts everything. `more` are further routes, such as pages.
    pub async fn start(
        config: &Config,
        store: Store,
        answerer: Arc<dyn Answerer>,
        more: Option<axum::Router>,
    ) -> anyhow::Result<Node> {
        let gateways: std::collections::BTreeMap<_, _> =
            Gateway::all(config)?.into_iter().map(|(name, gateway)| (name, Arc::new(gateway))).collect();
        let listener = TcpListener::bind(config.listen).await.with_context(|| {
            format!("The address {} cannot be listened on; stop what uses it or set `listen` to another", config.listen)
        })?;
        let address = listener.local_addr()?;
        store.release_left_over().await?;
        let owner = format!("{}:{}:{:016x}", address, std::process::id(), rand::random::<u64>());
        let intake = Intake::start(store.clone());
        let to_send = Arc::new(Notify::new());
        let (stop, stopping) = watch::channel(false);
        let mut jobs = JoinSet::new();
        let mut bells = Vec::new();
        for gateway in gateways.values() {
            let bell = Arc::new(Notify::new());
            let sender = Sender { store: store.clone(), gateway: gateway.clone(), owner: owner.clone() };
            jobs.spawn(sender.run(bell.clone(), stopping.clone()));
            bells.push(bell);
        }
        // One bell rings for all senders.
        let ring = to_send.clone();
        let mut until = stopping.clone();
        jobs.spawn(async move {
            loop {
                tokio::select! {
                    () = ring.notified() => bells.iter().for_each(|bell| bell.notify_one()),
                    _ = until.changed() => return,
                }
            }
        });
        let worker = Arc::new(Worker {
            store: store.clone(),
            answerer: answerer.clone(),
            owner: owner.clone(),
            limits: Limits {
                texts_per_day: config.texts_per_day,
                texts_per_minute: config.texts_per_minute,
                any_sender: false,
            },
            any_sender: gateways.iter().map(|(name, gateway)| (name.clone(), gateway.profile.any_sender)).collect(),
            to_send: to_send.clone(),
            clock: machine_clock(),
            held: Mutex::default(),
        });
        let workers = match config.workers {
            0 => std::thread::available_parallelism().map_or(2, |cores| cores.get()),
            workers => workers,
        };
        jobs.spawn(worker.clone().run(intake.arrived.clone(), workers, stopping.clone()));
        jobs.spawn(heart(worker, stopping.clone()));
        if let Some(to) = config.webhook.clone() {
            let telling = hook::run(store.clone(), to, machine_clock());
            let mut until = stopping.clone();
            jobs.spawn(async move {
                tokio::select! { () = telling => {}, _ = until.changed() => {} }
            });
        }
        let mut door = Door::new(store.clone(), intake, gateways, answerer, to_send);
        door.public_url = config.public_url.clone();
        door.metrics = Some(metrics_handle());
        let door = Arc::new(door);
        for gateway in door.gateways.values().filter(|gateway| gateway.link.is_some()).cloned() {
            let listener = Listener { door: door.clone(), gateway, clock: machine_clock() };
            jobs.spawn(listener.run(stopping.clone()));
        }
        let mut routes = web::routes(door);
        if let Some(more) = more {
            routes = routes.merge(more);
        }
        jobs.spawn(listen(listener, routes, stopping));
        Ok(Node { address, store, owner, stop, jobs })
    }

    /// Takes no more calls, finishes what is under way, gives up its leases.
    pub async fn stop(mut self) -> anyhow::Result<()> {
        let _ = self.stop.send(true);
        let finished = async { while self.jobs.join_next().await.is_some() {} };
        // Whoever takes longer loses nothing: the next start takes it up.
        let _ = tokio::time::timeout(Duration::from_secs(20), finished).await;
        self.store.release(&self.owner).await?;
        self.store.close().await;
        Ok(())
    }
}

/// Moves the node's leases on, so that nobody takes over what it works.
async fn heart(worker: Arc<Worker>, mut stop: watch::Receiver<bool>) {
    loop {
        tokio::select! {
            () = tokio::time::sleep(HEARTBEAT) => {}
            _ = stop.changed() => {}
        }
        if let Err(error) = worker.beat().await {
            tracing::error!(%error, "leases could not be moved on");
        }
        if *stop.borrow() {
            return;
        }
    }
}

/// Connections served at once; more wait for their turn.
const CONNECTIONS_MOST: usize = 4_096;
/// A caller that takes longer for its headers is not a gateway.
const HEADERS_WITHIN: Duration = Duration::from_secs(10);

async fn listen(listener: TcpListener, routes: axum::Router, mut stop: watch::Receiver<bool>) {
    let mut server = hyper::server::conn::http1::Builder::new();
    server.timer(TokioTimer::new()).header_read_timeout(HEADERS_WITHIN).max_buf_size(128 * 1024);
    let graceful = GracefulShutdown::new();
    let room = Arc::new(tokio::sync::Semaphore::new(CONNECTIONS_MOST));
    loop {
        let room = room.clone().acquire_owned().await.expect("the semaphore is never closed");
        let accepted = tokio::select! {
            accepted = listener.accept() => accepted,
            _ = stop.changed() => break,
        };
        let Ok((stream, _)) = accepted else {
            // Out of file handles, most likely: they come free again.
            tokio::time::sleep(Duration::from_millis(50)).await;
            continue;
        };
        let _ = stream.set_nodelay(true);
        let service = TowerToHyperService::new(routes.clone());
        let connection = graceful.watch(server.serve_connection(TokioIo::new(stream), service));
        tokio::spawn(async move {
            // A caller that hangs up is its own affair.
            let _ = connection.await;
            drop(room);
        });
    }
    let _ = tokio::time::timeout(Duration::from_secs(10), graceful.shutdown()).await;
}

/// One recorder a process, however many nodes a test starts in it.
fn metrics_handle() -> PrometheusHandle {
    static HANDLE: OnceLock<PrometheusHandle> = OnceLock::new();
    HANDLE
        .get_or_init(|| {
            let recorder = PrometheusBuilder::new().build_recorder();
            let handle = recorder.handle();
            // Somebody else's recorder stays; ours then simply shows nothing.
            let _ = metrics::set_global_recorder(recorder);
            handle
        })
        .clone()
}

/// `bellyful serve`: runs until it is told to stop. Errors: one sentence each.
pub fn serve(args: &ServeArgs) -> anyhow::Result<()> {
    let filter = tracing_subscriber::EnvFilter::try_from_default_env()
        .unwrap_or_else(|_| tracing_subscriber::EnvFilter::new("info"));
    // These would write passwords and words of families at their most talkative.
    let filter = ["rusmpp=off", "rusmppc=off", "tokio_xmpp=off", "xmpp_parsers=off"]
        .into_iter()
        .fold(filter, |filter, quiet| filter.add_directive(quiet.parse().expect("a directive that is written here")));
    let _ = tracing_subscriber::fmt().with_env_filter(filter).with_writer(std::io::stderr).try_init();
    let config = configured(args.config.as_deref())?;
    let mind = Mind::new(config.lang_dir.as_deref(), rand::random())?;
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build()?;
    runtime.block_on(async {
        let store = opened(&config).await?;
        let mind = Arc::new(mind);
        let secure = config.public_url.as_ref().is_some_and(|url| url.starts_with("https://"));
        let pages = Pages::new(store.clone(), mind.clone(), machine_clock(), secure)
            .with_gateways(config.gateway.keys().cloned());
        let pages = pages::routes(Arc::new(pages));
        mind.teach(Taught::load(&store).await?);
        let tidying = tokio::spawn(tidy::run(store.clone(), mind.clone(), machine_clock()));
        // Heard from before anyone knows that it runs: a stop that comes at once is a stop in order too.
        let told_to_stop = told_to_stop()?;
        let node = Node::start(&config, store, mind, Some(pages)).await?;
        println!("listening on http://{}", node.address);
        told_to_stop.await;
        tidying.abort();
        node.stop().await
    })
}

/// Listens from now on for a word to stop; what it gives ends once that word has come.
pub fn told_to_stop() -> std::io::Result<impl Future<Output = ()>> {
    use tokio::signal::unix::{SignalKind, signal};
    let (mut terminate, mut interrupt) = (signal(SignalKind::terminate())?, signal(SignalKind::interrupt())?);
    Ok(async move {
        tokio::select! {
            _ = terminate.recv() => {}
            _ = interrupt.recv() => {}
        }
    })
}
