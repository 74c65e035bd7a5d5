//! The commands.

use bellyful::app::{self, ServeArgs};
use bellyful::converse::{self, ConverseArgs};
use bellyful::demo::{self, DemoArgs};
use bellyful::read_command::{self, ReadArgs};
use bellyful::simulate::{self, SimulateArgs};
use bellyful::staff_command::{self, StaffArgs};
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
    /// Talks JSON lines on a simulated clock and an in-memory store
    Converse(ConverseArgs),
    /// Serves a phone on a page and staff pages over invented households with months of history
    Demo(DemoArgs),
    /// Reads one text, or JSON lines from standard input, into readings
    Read(ReadArgs),
    /// Serves for real: takes texts in, answers, sends
    Serve(ServeArgs),
    /// Adds, lists or removes those who may see the staff pages
    Staff(StaffArgs),
    /// Runs the bare digester model on a scenario file, a row a day out
    Simulate(SimulateArgs),
}

fn main() -> ExitCode {
    match Cli::parse().command {
        Command::Converse(args) => converse::run(&args).map_or_else(|error| failed(&error), |()| ExitCode::SUCCESS),
        Command::Demo(args) => demo::run(&args).map_or_else(|error| failed(&error), |()| ExitCode::SUCCESS),
        Command::Read(args) => read_command::run(&args).unwrap_or_else(|error| failed(&error)),
        Command::Serve(args) => app::serve(&args).map_or_else(|error| failed(&error), |()| ExitCode::SUCCESS),
        Command::Staff(args) => staff_command::run(&args).map_or_else(|error| failed(&*error), |()| ExitCode::SUCCESS),
        Command::Simulate(args) => simulate::run(&args).map_or_else(|error| failed(&error), |()| ExitCode::SUCCESS),
    }
}

fn failed(error: &dyn std::fmt::Display) -> ExitCode {
    eprintln!("{error:#}");
    ExitCode::from(1)
}
