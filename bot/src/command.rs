//! What the commands on a store begin with: the configuration, then the store.
//!
//! Takes the configuration's file and this process's environment. Errors: one sentence each.

use crate::config::{Config, PREFIX};
use crate::store::Store;
use anyhow::Context;
use std::path::Path;

pub fn configured(file: Option<&Path>) -> anyhow::Result<Config> {
    Ok(Config::read(file, std::env::vars().filter(|(name, _)| name.starts_with(PREFIX)))?)
}

pub async fn opened(config: &Config) -> anyhow::Result<Store> {
    Store::open(config.database.reveal()).await.context("The database cannot be opened; check the key `database`")
}

/// Acts on the store, and closes it whatever came of that.
pub fn with_store<F: Future<Output = anyhow::Result<()>>>(
    file: Option<&Path>,
    act: impl FnOnce(Config, Store) -> F,
) -> anyhow::Result<()> {
    let config = configured(file)?;
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build()?;
    runtime.block_on(async {
        let store = opened(&config).await?;
        let done = act(config, store.clone()).await;
        store.close().await;
        done
    })
}
