//! `bellyful staff add|list|remove`: who may see the staff pages and is told of alarms.
//!
//! Takes the same configuration as `serve`; changes the store and says what it did. A password is made, printed once,
//! and kept as a hash only.

use crate::command::with_store;
use crate::config::Config;
use crate::pages::hash;
use crate::store::{NewStaff, Store};
use anyhow::bail;
use clap::{Args, Subcommand, ValueEnum};
use std::path::PathBuf;

#[derive(Debug, Args)]
pub struct StaffArgs {
    /// TOML file, as for `serve`
    #[arg(long, global = true)]
    config: Option<PathBuf>,
    #[command(subcommand)]
    act: Act,
}

#[derive(Debug, Subcommand)]
enum Act {
    /// Adds someone, or gives them a new password and phone; prints the password once
    Add {
        name: String,
        /// Number they text from and are told of alarms at
        #[arg(long)]
        phone: Option<String>,
        /// Gateway by which they are texted
        #[arg(long, requires = "phone")]
        gateway: Option<String>,
        /// Language they are written in
        #[arg(long, default_value = "en")]
        lang: String,
        #[arg(long, value_enum, default_value = "field")]
        role: RoleName,
    },
    /// Lists them
    List,
    /// Removes someone; their households are nobody's then
    Remove { name: String },
}

#[derive(Debug, Clone, Copy, ValueEnum)]
enum RoleName {
    /// Sees, with numbers masked
    Viewer,
    /// Acts for households
    Field,
    /// Sets up people and rules
    Lead,
}

/// Errors: one sentence each.
pub fn run(args: &StaffArgs) -> anyhow::Result<()> {
    with_store(args.config.as_deref(), |config, store| act(config, store, &args.act))
}

async fn act(config: Config, store: Store, act: &Act) -> anyhow::Result<()> {
    match act {
        Act::Add { name, phone, gateway, lang, role } => {
            let gateway = match (phone, gateway) {
                (None, _) => None,
                (Some(_), Some(gateway)) if config.gateway.contains_key(gateway) => Some(gateway.clone()),
                (Some(_), Some(gateway)) => bail!("There is no gateway `{gateway}` in the configuration."),
                (Some(_), None) => config.gateway.keys().next().cloned(),
            };
            let password = hex::encode(rand::random::<[u8; 6]>());
            let role = role.to_possible_value().map_or_else(String::new, |role| role.get_name().to_owned());
            let staff = NewStaff {
                name: name.clone(),
                phone: phone.clone(),
                gateway,
                lang: lang.clone(),
                role,
                password_hash: Some(hash(&password)?),
            };
            store.add_staff(&staff).await?;
            println!("{name} {password}");
        }
        Act::List => {
            for staff in store.staff().await? {
                println!("{} {} {}", staff.name, staff.phone.as_deref().unwrap_or("-"), staff.lang);
            }
        }
        Act::Remove { name } => {
            if !store.remove_staff(name).await? {
                bail!("There is no {name} among the staff; `bellyful staff list` tells who there is.");
            }
            println!("{name} is removed.");
        }
    }
    Ok(())
}
