//! The commands.

use bellyful::app::{self, ServeArgs};
use bellyful::converse::{self, ConverseArgs};
use bellyful::demo::{self, DemoArgs};
use bellyful::read_command::{self, ReadArgs};
use bellyful::simulate::{self, SimulateArgs};
use bellyful::staff_command::{self, StaffArgs};
use bellyful::token_command::{self, TokenArgs};
use bellyful::upkeep::{self, CopyArgs, ExportArgs, RebuildArgs, UpkeepArgs};
use clap::{Parser, Subcommand};
use std::process::ExitCode;

/// Reads texts about a home biogas digester, keeps its model, answers with the next step.
#[derive(Debug, Parser)]
#[command(name = "bellyful", version)]
struct Cli {
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Copies everything to a file, while the bot goes on
    Backup(CopyArgs),
    /// Talks JSON lines on a simulated clock and an in-memory store
    Converse(ConverseArgs),
    /// Serves a phone on a page and staff pages over invented households with months of history
    Demo(DemoArgs),
    /// Prints all that is known of one household
    Export(ExportArgs),
    /// Moves every digester's model to today
    Nightly(UpkeepArgs),
    /// Reads one text, or JSON lines from standard input, into readings
    Read(ReadArgs),
    /// Works every digester's model out anew from the facts
    Rebuild(RebuildArgs),
    /// Takes a copy into an empty database
    Restore(CopyArgs),
    /// Serves for real: takes texts in, answers, sends
    Serve(ServeArgs),
    /// Adds, lists or removes those who may see the staff pages
    Staff(StaffArgs),
    /// Makes, lists or takes back the tokens of programmes that read by machine
    Token(TokenArgs),
    /// Runs the bare digester model on a scenario file, a row a day out
    Simulate(SimulateArgs),
}

fn main() -> ExitCode {
    let done = match &Cli::parse().command {
        Command::Read(args) => return read_command::run(args).unwrap_or_else(|error| failed(&error)),
        Command::Converse(args) => return ended(converse::run(args)),
        Command::Simulate(args) => return ended(simulate::run(args)),
        Command::Backup(args) => upkeep::backup(args),
        Command::Demo(args) => demo::run(args),
        Command::Export(args) => upkeep::export(args),
        Command::Nightly(args) => upkeep::nightly(args),
        Command::Rebuild(args) => upkeep::rebuild(args),
        Command::Restore(args) => upkeep::restore(args),
        Command::Serve(args) => app::serve(args),
        Command::Staff(args) => staff_command::run(args),
        Command::Token(args) => token_command::run(args),
    };
    done.map_or_else(|error| failed(&error), |()| ExitCode::SUCCESS)
}

fn ended(done: Result<(), impl std::error::Error>) -> ExitCode {
    done.map_or_else(|error| failed(&error), |()| ExitCode::SUCCESS)
}

fn failed(error: &dyn std::fmt::Display) -> ExitCode {
    eprintln!("{error:#}");
    ExitCode::from(1)
}
