//! `bellyful backup|restore|rebuild|nightly|export`: upkeep of what is kept, by hand or by a timer.
//!
//! Takes the same configuration as `serve`; each may run while the bot serves, but for `restore`. Errors: one sentence.

use crate::clock::night;
use crate::command::with_store;
use crate::household::{Decision, HouseholdId, Sender, Situation};
use crate::jobs::{HEARTBEAT, lease};
use crate::record::local_day;
use crate::store::{Cause, Lane, Store, StoreError, Wanted};
use crate::twins::Believed;
use anyhow::{Context, bail};
use bellyful_core::units::Day;
use chrono::{Duration, SecondsFormat, Utc};
use clap::Args;
use flate2::Compression;
use flate2::read::GzDecoder;
use flate2::write::GzEncoder;
use indicatif::{ProgressBar, ProgressStyle};
use std::fs::File;
use std::future::Future;
use std::io::{BufReader, BufWriter, Write};
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use tokio::task::JoinSet;

#[derive(Debug, Args)]
pub struct CopyArgs {
    /// The copy: gzipped lines of JSON
    pub file: PathBuf,
    /// TOML file, as for `serve`
    #[arg(long)]
    config: Option<PathBuf>,
}

#[derive(Debug, Args)]
pub struct UpkeepArgs {
    /// TOML file, as for `serve`
    #[arg(long)]
    config: Option<PathBuf>,
}

#[derive(Debug, Args)]
pub struct RebuildArgs {
    /// Only compare; change nothing
    #[arg(long)]
    check: bool,
    #[command(flatten)]
    upkeep: UpkeepArgs,
}

#[derive(Debug, Args)]
pub struct ExportArgs {
    /// Number or name of the household
    household: String,
    #[command(flatten)]
    upkeep: UpkeepArgs,
}

/// Copies everything to a file, while the bot goes on. The file is whole or not there.
pub fn backup(args: &CopyArgs) -> anyhow::Result<()> {
    with_store(args.config.as_deref(), |_, store| async move {
        let beside = args.file.with_extension("part");
        let file = File::create(&beside)
            .with_context(|| format!("{} cannot be written; give another place for the copy", beside.display()))?;
        let mut gz = GzEncoder::new(BufWriter::new(file), Compression::fast());
        let rows = store.dump(&mut gz).await?;
        gz.finish()?.into_inner()?.sync_all()?;
        std::fs::rename(&beside, &args.file)?;
        println!("{rows} rows are copied to {}.", args.file.display());
        Ok(())
    })
}

/// Takes a copy into an empty database of either kind.
pub fn restore(args: &CopyArgs) -> anyhow::Result<()> {
    with_store(args.config.as_deref(), |_, store| async move {
        let file = File::open(&args.file)
            .with_context(|| format!("{} cannot be read; give the file that backup wrote", args.file.display()))?;
        let rows = store.take_in(BufReader::new(GzDecoder::new(BufReader::new(file)))).await?;
        println!("{rows} rows are restored.");
        Ok(())
    })
}

/// Works every twin out anew from the facts, and says how many differ from what was kept.
pub fn rebuild(args: &RebuildArgs) -> anyhow::Result<()> {
    with_store(args.upkeep.config.as_deref(), |_, store| async move {
        let different = Arc::new(AtomicU64::new(0));
        let (counted, check) = (different.clone(), args.check);
        let all = for_each(&store, move |store, situation| {
            let counted = counted.clone();
            async move {
                let (Some(household), Some(kept)) = (&situation.household, &situation.twin) else { return Ok(()) };
                let whole = Wanted { household: None, since: Some(Day(i32::MIN)) };
                let facts = store.situation(&situation.sender, whole).await?.facts;
                let rebuilt = Believed::rebuilt(household, &facts, kept.day);
                if rebuilt != *kept {
                    counted.fetch_add(1, Ordering::Relaxed);
                    if !check {
                        let decision = Decision { twin: Some(rebuilt), ..Decision::default() };
                        keep(&store, &situation, decision).await?;
                    }
                }
                Ok(())
            }
        })
        .await?;
        let different = different.load(Ordering::Relaxed);
        println!("{all} twins are rebuilt from their facts; {different} differed from what was kept.");
        if check && different > 0 {
            bail!("{different} twins differ; run `bellyful rebuild` without --check to keep those of the facts.");
        }
        Ok(())
    })
}

/// Moves every twin to its household's today, so that the morning's texts find it there. Several may run at once and share
/// the work; one that was stopped goes on where it was when it is started again.
pub fn nightly(args: &UpkeepArgs) -> anyhow::Result<()> {
    with_store(args.config.as_deref(), |_, store| async move {
        let start = std::time::Instant::now();
        let owner = format!("nightly:{}:{:016x}", std::process::id(), rand::random::<u64>());
        // Where the day is furthest on. Source: the time zone of the Line Islands, UTC+14.
        let furthest = local_day(Utc::now() + Duration::hours(14), "UTC");
        let bar = progress(store.behind(furthest).await? as u64);
        let mut left = store.shares_behind(furthest).await?;
        let mut moved = 0;
        while !left.is_empty() {
            let mut with_others = vec![];
            for share in left {
                let now = Utc::now();
                match store.take_share(&owner, share, now, now + lease()).await? {
                    None => with_others.push(share),
                    Some(lane) => {
                        let ids = store.behind_in(share, furthest).await?;
                        let moving = for_all(&store, &ids, &bar, move_on);
                        beating(&store, &owner, &lane, moving).await?;
                        moved += ids.len();
                        store.give_back(&owner, &lane).await?;
                    }
                }
            }
            // Whoever has them may die over them.
            left = with_others;
            if !left.is_empty() {
                tokio::time::sleep(std::time::Duration::from_secs(1)).await;
            }
        }
        bar.finish_and_clear();
        let all = store.household_ids().await?.len();
        println!(
            "{all} twins stand at today; {moved} were looked at here, after {:.1} s.",
            start.elapsed().as_secs_f64()
        );
        Ok(())
    })
}

/// Does `moving`, and keeps the share's lease alive meanwhile: who dies over it is followed as soon as in `serve`.
async fn beating(
    store: &Store,
    owner: &str,
    lane: &Lane,
    moving: impl Future<Output = anyhow::Result<()>>,
) -> anyhow::Result<()> {
    tokio::pin!(moving);
    loop {
        tokio::select! {
            done = &mut moving => return done,
            () = tokio::time::sleep(HEARTBEAT) => {
                store.renew(owner, std::slice::from_ref(lane), Utc::now() + lease()).await?;
            }
        }
    }
}

async fn move_on(store: Store, situation: Situation) -> Result<(), StoreError> {
    let decision = night(&situation, Utc::now());
    if decision == Decision::default() {
        return Ok(());
    }
    keep(&store, &situation, decision).await
}

/// A household that texted meanwhile has been moved by its own turn.
async fn keep(store: &Store, situation: &Situation, mut decision: Decision) -> Result<(), StoreError> {
    decision.household = situation.household.clone();
    match store.keep(Cause::Hand, situation, decision, Utc::now()).await {
        Ok(_) | Err(StoreError::Stale(_)) => Ok(()),
        Err(error) => Err(error),
    }
}

fn progress(of: u64) -> ProgressBar {
    let bar = ProgressBar::new(of);
    bar.set_style(ProgressStyle::with_template("{bar:40} {pos} of {len}, {eta} left").expect("a sound template"));
    bar
}

/// Does something for every household; gives how many there are.
async fn for_each<F>(
    store: &Store,
    act: impl Fn(Store, Situation) -> F + Clone + Send + 'static,
) -> anyhow::Result<usize>
where
    F: Future<Output = Result<(), StoreError>> + Send,
{
    let ids = store.household_ids().await?;
    let bar = progress(ids.len() as u64);
    for_all(store, &ids, &bar, act).await?;
    bar.finish_and_clear();
    Ok(ids.len())
}

/// Does something for some households, as many at once as there are cores.
async fn for_all<F>(
    store: &Store,
    ids: &[HouseholdId],
    bar: &ProgressBar,
    act: impl Fn(Store, Situation) -> F + Clone + Send + 'static,
) -> anyhow::Result<()>
where
    F: Future<Output = Result<(), StoreError>> + Send,
{
    let cores = std::thread::available_parallelism().map_or(2, |cores| cores.get());
    let mut running: JoinSet<Result<(), StoreError>> = JoinSet::new();
    for id in ids {
        if running.len() >= cores
            && let Some(done) = running.join_next().await
        {
            done??;
            bar.inc(1);
        }
        let (store, act, id) = (store.clone(), act.clone(), *id);
        running.spawn(async move {
            let sender = Sender::Family { household: id, stopped: false };
            let situation = store.situation(&sender, Wanted::default()).await?;
            act(store, situation).await
        });
    }
    while let Some(done) = running.join_next().await {
        done??;
        bar.inc(1);
    }
    Ok(())
}

/// All that is known of one household, as lines of JSON: what they are, told, and were told.
pub fn export(args: &ExportArgs) -> anyhow::Result<()> {
    with_store(args.upkeep.config.as_deref(), |_, store| async move {
        let sender = Sender::Stranger { stopped: false };
        let wanted = Wanted { household: Some(args.household.clone()), since: Some(Day(i32::MIN)) };
        let situation = store.situation(&sender, wanted).await?;
        let Some(household) = &situation.household else {
            bail!("There is no household {}; give its number or its whole name.", args.household);
        };
        let mut out = std::io::stdout().lock();
        writeln!(
            out,
            "{}",
            serde_json::json!({ "household": household.id, "name": household.name, "lang": household.lang,
                "phones": situation.phones.iter().map(|phone| &phone.number).collect::<Vec<_>>() })
        )?;
        for fact in &situation.facts {
            writeln!(out, "{}", serde_json::json!({ "day": fact.day, "told": fact.what }))?;
        }
        for said in store.story(household.id, "", u32::MAX).await? {
            let at = said.at.to_rfc3339_opts(SecondsFormat::Secs, true);
            let who = if said.ours { "bellyful" } else { "family" };
            writeln!(out, "{}", serde_json::json!({ "at": at, "by": who, "text": said.text, "advice": said.advice }))?;
        }
        Ok(())
    })
}
