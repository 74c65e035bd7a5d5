//! `bellyful token add|list|remove`: which programmes may read by machine.
//!
//! Takes the same configuration as `serve`. A token is made, printed once, and kept as a hash only.

use crate::api::Scope;
use crate::command::with_store;
use crate::store::Store;
use anyhow::bail;
use chrono::Utc;
use clap::{Args, Subcommand};
use std::path::PathBuf;

#[derive(Debug, Args)]
pub struct TokenArgs {
    /// TOML file, as for `serve`
    #[arg(long, global = true)]
    config: Option<PathBuf>,
    #[command(subcommand)]
    act: Act,
}

#[derive(Debug, Subcommand)]
enum Act {
    /// Makes a token, in place of an older one of that name; prints it once
    Add {
        name: String,
        /// `read`, or `people`: names and places too
        #[arg(long, default_value = "read", value_parser = scope)]
        scope: Scope,
    },
    /// Lists them
    List,
    /// Takes one back
    Remove { name: String },
}

fn scope(said: &str) -> Result<Scope, String> {
    Scope::from_id(said).ok_or_else(|| "give read or people".into())
}

/// Errors: one sentence each.
pub fn run(args: &TokenArgs) -> anyhow::Result<()> {
    with_store(args.config.as_deref(), |_, store| act(store, &args.act))
}

async fn act(store: Store, act: &Act) -> anyhow::Result<()> {
    match act {
        Act::Add { name, scope } => {
            let token = hex::encode(rand::random::<[u8; 24]>());
            store.add_token(name, &token, scope.id(), Utc::now()).await?;
            println!("{name} {token}");
        }
        Act::List => store.tokens().await?.iter().for_each(|token| println!("{} {}", token.name, token.scope)),
        Act::Remove { name } => {
            if !store.remove_token(name).await? {
                bail!("There is no token {name}; `bellyful token list` tells which there are.");
            }
            println!("{name} is removed.");
        }
    }
    Ok(())
}
