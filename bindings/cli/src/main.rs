//! The program `overwater`.

#![forbid(unsafe_code)]

mod files;
mod plan;

use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Parser, Subcommand};

/// Gas-collection calculations for school and college chemistry.
#[derive(Debug, Parser)]
#[command(name = "overwater", version, about, arg_required_else_help = true)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// From a lesson file to a preparation sheet: everything to weigh, dilute, fill, reject, wait for and be careful
    /// of.
    Plan {
        /// The lesson, in TOML (or in JSON, where the name ends in .json); `-` reads TOML from standard input.
        file: PathBuf,
        /// Also write the sheet as a page to print.
        #[arg(long, value_name = "FILE")]
        html: Option<PathBuf>,
        /// Print the whole answer as JSON instead of the sheet.
        #[arg(long)]
        json: bool,
    },
    /// Print an annotated lesson to start from.
    Template,
}

fn main() -> ExitCode {
    let outcome = match Arguments::parse().command {
        Command::Plan { file, html, json } => plan::run(&file, html.as_deref(), json),
        Command::Template => files::print(overwater_exchange::TEMPLATE),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{}", message.trim_end());
            ExitCode::from(2)
        }
    }
}
