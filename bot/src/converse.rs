//! `bellyful converse`: the whole way through on a simulated clock and an in-memory store, JSON lines in and out.
//!
//! The same code as `serve` minus the wires; how the advice is judged from outside. Its lines are a contract.

use crate::household::{Decision, Phone};
use crate::message::{Inbound, Kind, Outbound};
use crate::mind::{Mind, MindError};
use crate::reply::segments::size;
use crate::setup::{Setup, set_up};
use crate::store::{Arrival, Cause, NewStaff, Store, StoreError, Wanted};
use crate::workbench;
use bellyful_core::advice::Advice;
use chrono::{DateTime, SecondsFormat, Utc};
use serde::{Deserialize, Serialize};
use std::io::{BufRead, Write};
use std::path::PathBuf;

/// Name of the only gateway there is here.
pub const GATEWAY: &str = "converse";

/// A line in: a text, a set-up, a phone that joins, a field worker, or only the time.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct LineIn {
    at: DateTime<Utc>,
    from: Option<String>,
    text: Option<String>,
    setup: Option<Setup>,
    household: Option<String>,
    staff: Option<String>,
}

/// A text the bot would send.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LineOut {
    pub at: String,
    pub to: String,
    pub text: String,
    pub encoding: &'static str,
    pub segments: usize,
    pub kind: Kind,
    pub advice: Option<Advice>,
}

/// Why a line changed nothing.
#[derive(Debug, thiserror::Error)]
pub enum LineError {
    #[error("this line is not what converse reads ({0}): give at, and from with one of text, setup, household, staff")]
    Json(#[from] serde_json::Error),
    #[error("time goes back from {from} to {to}: give lines in order of time")]
    Back { from: String, to: String },
    #[error("give `from`, the number that texts")]
    NoFrom,
    #[error("give one of text, setup, household, staff with `from`")]
    NotOne,
    #[error("{0} belongs to no household: set it up or let it text first")]
    NoHousehold(String),
    #[error("{0} is set up already")]
    Twice(String),
    #[error(transparent)]
    Setup(#[from] crate::setup::SetupError),
    #[error(transparent)]
    Store(#[from] StoreError),
}

/// A conversation under way.
pub struct Conversation {
    mind: Mind,
    store: Store,
    now: Option<DateTime<Utc>>,
    counted: u64,
}

impl Conversation {
    pub async fn new(mind: Mind) -> Result<Conversation, StoreError> {
        Ok(Conversation { mind, store: Store::in_memory().await?, now: None, counted: 0 })
    }

    pub fn store(&self) -> &Store {
        &self.store
    }

    /// What the bot sends in answer to one line, things that fell due before it first.
    pub async fn line(&mut self, line: &str) -> Result<Vec<LineOut>, LineError> {
        let line: LineIn = serde_json::from_str(line)?;
        if let Some(now) = self.now.filter(|now| line.at < *now) {
            return Err(LineError::Back { from: said(now), to: said(line.at) });
        }
        let given = [line.text.is_some(), line.setup.is_some(), line.household.is_some(), line.staff.is_some()];
        let from = match (line.from, given.iter().filter(|given| **given).count()) {
            (None, 0) => None,
            (None, _) => return Err(LineError::NoFrom),
            (Some(from), 1) => Some(from),
            (Some(_), _) => return Err(LineError::NotOne),
        };
        if let (Some(from), true) = (&from, line.household.is_some() || line.setup.is_some()) {
            self.check(from, line.household.as_deref(), line.setup.as_ref()).await?;
        }
        let mut out = self.fire_until(line.at).await?;
        self.now = Some(line.at);
        let Some(from) = from else { return Ok(out) };
        let at = line.at;
        if let Some(text) = line.text {
            out.extend(self.text(at, from, text).await?);
        } else if let Some(setup) = line.setup {
            let decision = set_up(&self.mind, &from, GATEWAY, &setup, at)?;
            self.store.keep(Cause::Hand, &workbench::nobody(), decision, at).await?;
        } else if let Some(household) = line.household {
            let of = self.store.sender(&household).await?;
            let situation = self.store.situation(&of, Wanted::default()).await?;
            let join = vec![Phone { gateway: GATEWAY.into(), number: from }];
            let decision = Decision { join, ..Decision::default() };
            self.store.keep(Cause::Hand, &situation, decision, at).await?;
        } else if let Some(name) = line.staff {
            let staff = NewStaff {
                name,
                phone: Some(from),
                gateway: Some(GATEWAY.into()),
                lang: "en".into(),
                role: "field".into(),
                password_hash: None,
            };
            self.store.add_staff(&staff).await?;
        }
        Ok(out)
    }

    /// Whether a set-up or a joining can be: a bad line must change nothing.
    async fn check(&self, from: &str, household: Option<&str>, setup: Option<&Setup>) -> Result<(), LineError> {
        let known = |sender| matches!(sender, crate::household::Sender::Family { .. });
        if let Some(household) = household
            && !known(self.store.sender(household).await?)
        {
            return Err(LineError::NoHousehold(household.to_owned()));
        }
        if let Some(setup) = setup {
            if known(self.store.sender(from).await?) {
                return Err(LineError::Twice(from.to_owned()));
            }
            setup.check()?;
        }
        Ok(())
    }

    /// All that falls due up to `until`, in order of time.
    async fn fire_until(&mut self, until: DateTime<Utc>) -> Result<Vec<LineOut>, LineError> {
        let mut out = vec![];
        while let Some(due) = self.store.next_due().await?.filter(|due| *due <= until) {
            out.extend(self.work(due).await?);
        }
        Ok(out)
    }

    async fn work(&self, now: DateTime<Utc>) -> Result<Vec<LineOut>, LineError> {
        let texts = workbench::work_all(&self.store, &self.mind, now).await?;
        Ok(texts.into_iter().map(|outbound| line_out(outbound, now)).collect())
    }

    async fn text(&mut self, at: DateTime<Utc>, from: String, text: String) -> Result<Vec<LineOut>, LineError> {
        self.counted += 1;
        let inbound = Inbound {
            gateway: GATEWAY.into(),
            id: self.counted.to_string(),
            from,
            to: None,
            text,
            sent_at: at,
            received_at: at,
        };
        self.store.accept(&[Arrival { inbound, alarm: None }]).await?;
        self.work(at).await
    }
}

fn said(at: DateTime<Utc>) -> String {
    at.to_rfc3339_opts(SecondsFormat::Secs, true)
}

fn line_out(outbound: Outbound, now: DateTime<Utc>) -> LineOut {
    let size = size(&outbound.text);
    LineOut {
        at: said(outbound.not_before.max(now)),
        to: outbound.to,
        text: outbound.text,
        encoding: size.encoding.id(),
        segments: size.segments,
        kind: outbound.kind,
        advice: outbound.advice,
    }
}

#[derive(Debug, thiserror::Error)]
pub enum ConverseError {
    #[error(transparent)]
    Mind(#[from] MindError),
    #[error(transparent)]
    Store(#[from] StoreError),
    #[error("standard input or output broke: {0}")]
    Io(#[from] std::io::Error),
}

#[derive(Debug, clap::Args)]
pub struct ConverseArgs {
    /// Of all chance: the same lines and seed give the same bytes
    #[arg(long, default_value_t = 1)]
    seed: u64,
    /// A folder with further languages: xx/words.toml and xx/replies.ftl
    #[arg(long)]
    lang_dir: Option<PathBuf>,
}

/// Converses on standard input and output until the input ends.
pub fn run(args: &ConverseArgs) -> Result<(), ConverseError> {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build()?;
    let mind = Mind::new(args.lang_dir.as_deref(), args.seed)?;
    runtime.block_on(converse(mind, std::io::stdin().lock(), std::io::stdout().lock()))
}

async fn converse(mind: Mind, input: impl BufRead, mut output: impl Write) -> Result<(), ConverseError> {
    let mut conversation = Conversation::new(mind).await?;
    for line in input.split(b'\n') {
        let line = line?;
        let line = String::from_utf8_lossy(&line);
        if line.trim().is_empty() {
            continue;
        }
        match conversation.line(&line).await {
            Ok(texts) => {
                for text in texts {
                    writeln!(output, "{}", serde_json::to_string(&text).expect("a text is plain data"))?;
                }
            }
            Err(error) => writeln!(output, "{}", serde_json::json!({ "error": error.to_string() }))?,
        }
        writeln!(output, "{{\"done\":true}}")?;
        output.flush()?;
    }
    Ok(())
}
