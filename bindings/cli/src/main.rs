//! The program `overwater`.

#![forbid(unsafe_code)]

mod calculate;
mod chemistry;
mod files;
mod plan;

use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Parser, Subcommand, ValueEnum};
use overwater_exchange::chemistry::WeightsRequest;

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
    /// The molar mass of a formula with its uncertainty, and what it is made of.
    Weigh {
        /// The formula, as in CuSO4.5H2O, K4[Fe(CN)6] or SO4^2-.
        formula: String,
        /// Which atomic weights to take.
        #[arg(long, value_enum, default_value_t = Weights::Exact)]
        weights: Weights,
        /// Print the whole answer as JSON.
        #[arg(long)]
        json: bool,
    },
    /// Balance an equation, with charges and electrons where it has them.
    Balance {
        /// The equation, as in "MnO4- + H+ + e- -> Mn^2+ + H2O".
        equation: String,
        /// Print the whole answer as JSON.
        #[arg(long)]
        json: bool,
    },
    /// Work out one formula: the number, or with --working the solution step by step; without a name, list the formulas.
    Calculate {
        /// The formula's name, as in dry_amount.
        formula: Option<String>,
        /// Its inputs, as in temperature_c=21.0 (the unit is part of the name).
        #[arg(value_name = "INPUT=NUMBER")]
        inputs: Vec<String>,
        /// Print the worked solution.
        #[arg(long)]
        working: bool,
        /// Print the whole answer as JSON.
        #[arg(long, conflicts_with = "working")]
        json: bool,
        /// Take the inputs from the columns of a CSV file (`-` for standard input), and print it with the result as one
        /// more column.
        #[arg(long, value_name = "FILE", conflicts_with_all = ["inputs", "working", "json"])]
        table: Option<PathBuf>,
    },
}

/// Which atomic weights to take.
#[derive(Debug, Clone, Copy, ValueEnum)]
enum Weights {
    /// The conventional values, with the uncertainty of the standard ones.
    Exact,
    /// The abridged values, to five figures.
    Abridged,
    /// To one decimal, as in a classroom.
    Classroom,
}

impl From<Weights> for WeightsRequest {
    fn from(weights: Weights) -> Self {
        match weights {
            Weights::Exact => WeightsRequest::Exact,
            Weights::Abridged => WeightsRequest::Abridged,
            Weights::Classroom => WeightsRequest::Classroom,
        }
    }
}

fn main() -> ExitCode {
    let outcome = match Arguments::parse().command {
        Command::Plan { file, html, json } => plan::run(&file, html.as_deref(), json),
        Command::Template => files::print(overwater_exchange::TEMPLATE),
        Command::Weigh { formula, weights, json } => chemistry::weigh(&formula, weights.into(), json),
        Command::Balance { equation, json } => chemistry::balance_equation(&equation, json),
        Command::Calculate { formula: None, .. } => files::print(&calculate::list()),
        Command::Calculate { formula: Some(formula), table: Some(table), .. } => {
            calculate::table(&formula, &table)
        }
        Command::Calculate { formula: Some(formula), inputs, working, json, .. } => {
            calculate::one(&formula, &inputs, working, json)
        }
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{}", message.trim_end());
            ExitCode::from(2)
        }
    }
}
