//! `bellyful demo`: a fresh SQLite file, invented households with months of history, a phone on a page, staff pages.
//!
//! Takes an address; serves until it is told to stop. Its clock stands still but for the steps taken on the page.

mod families;
pub mod history;
mod phone;

use crate::app::told_to_stop;
use crate::jobs::Clock;
use crate::mind::Mind;
use crate::pages::{self, Pages};
use crate::store::{NewStaff, Store, StoreError};
use anyhow::Context;
use chrono::{DateTime, NaiveTime, Utc};
use families::{FAMILIES, WORKER};
use history::{GATEWAY, Progress, play, set_all_up};
use phone::Phone;
use std::net::SocketAddr;
use std::path::PathBuf;
use std::sync::{Arc, Mutex, PoisonError};
use tokio::net::TcpListener;
use tokio::task::JoinSet;

#[derive(Debug, clap::Args)]
pub struct DemoArgs {
    /// Address to serve on
    #[arg(long, default_value = "127.0.0.1:8080")]
    pub listen: SocketAddr,
}

/// The demo's clock: moved by hand.
#[derive(Debug, Clone)]
pub struct DemoClock(Arc<Mutex<DateTime<Utc>>>);

impl DemoClock {
    pub fn at(now: DateTime<Utc>) -> DemoClock {
        DemoClock(Arc::new(Mutex::new(now)))
    }
    pub fn now(&self) -> DateTime<Utc> {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
    pub fn set(&self, now: DateTime<Utc>) {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner) = now;
    }
    pub fn clock(&self) -> Clock {
        let this = self.clone();
        Arc::new(move || this.now())
    }
}

/// A folder that goes when the demo ends.
struct Folder(PathBuf);

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

/// Serves the demo. Errors: one sentence each.
pub fn run(args: &DemoArgs) -> anyhow::Result<()> {
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build()?;
    runtime.block_on(demo(args.listen))
}

async fn demo(listen: SocketAddr) -> anyhow::Result<()> {
    let listener = TcpListener::bind(listen)
        .await
        .with_context(|| format!("The address {listen} is in use; stop what uses it or give another with --listen"))?;
    let folder = Folder(std::env::temp_dir().join(format!("bellyful-demo-{}", std::process::id())));
    std::fs::create_dir_all(&folder.0)
        .context("The temporary folder cannot be written to; set TMPDIR to one that can")?;
    let store = Store::open(&format!("sqlite:{}", folder.0.join("demo.db").display())).await?;
    let mind = Arc::new(Mind::new(None, 1)?);
    let password = hex::encode(rand::random::<[u8; 5]>());
    add_worker(&store, &password).await?;
    // History ends this morning.
    let end = Utc::now().date_naive().and_time(NaiveTime::from_hms_opt(6, 0, 0).expect("a time of day")).and_utc();
    let clock = DemoClock::at(end);
    let progress = Arc::new(Progress::default());
    let phone = Arc::new(Phone::new(store.clone(), mind.clone(), clock.clone(), progress.clone()));
    let staff = Pages::new(store.clone(), mind.clone(), clock.clock(), false).with_gateways([GATEWAY.to_owned()]);
    let routes = pages::routes(Arc::new(staff)).merge(phone::routes(phone));
    println!("ready http://{}", listener.local_addr()?);
    println!("staff {} {password}", WORKER.0);
    set_all_up(&store, &mind, end).await?;
    let mut families = JoinSet::new();
    for which in 0..FAMILIES.len() {
        families.spawn(play(store.clone(), mind.clone(), which, end, progress.clone()));
    }
    let filling = tokio::spawn(async move {
        while let Some(played) = families.join_next().await {
            let played: Result<(), StoreError> =
                played.unwrap_or_else(|broken| std::panic::resume_unwind(broken.into_panic()));
            if let Err(error) = played {
                eprintln!("A family's history stays short: {error}.");
            }
        }
        eprintln!("The history of all {} households is whole.", FAMILIES.len());
    });
    let (stop, stop_for_good) = (told_to_stop()?, told_to_stop()?);
    let sending = tokio::spawn(send_all(store.clone(), clock.clone()));
    let served = axum::serve(listener, routes).with_graceful_shutdown(stop);
    tokio::select! {
        served = served => served?,
        () = async { stop_for_good.await; tokio::time::sleep(std::time::Duration::from_secs(2)).await } => {}
    }
    filling.abort();
    sending.abort();
    store.close().await;
    Ok(())
}

/// The demo's network: takes every text a second after it is due.
async fn send_all(store: Store, clock: DemoClock) {
    loop {
        if let Err(error) = store.all_sent(GATEWAY, clock.now()).await {
            eprintln!("Texts wait: {error}.");
        }
        tokio::time::sleep(std::time::Duration::from_secs(1)).await;
    }
}

async fn add_worker(store: &Store, password: &str) -> anyhow::Result<()> {
    let staff = NewStaff {
        name: WORKER.0.into(),
        phone: Some(WORKER.1.into()),
        gateway: Some(GATEWAY.into()),
        lang: "en".into(),
        role: "lead".into(),
        password_hash: Some(pages::hash(password)?),
    };
    store.add_staff(&staff).await?;
    Ok(())
}
