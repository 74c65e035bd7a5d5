//! The commands.

use bellyful::simulate::{self, SimulateArgs};
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
    /// Runs the bare digester model on a scenario file, a row a day out
    Simulate(SimulateArgs),
}

fn main() -> ExitCode {
    let done = match Cli::parse().command {
        Command::Simulate(args) => simulate::run(&args),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error}");
            ExitCode::from(1)
        }
    }
}
