//! The program `overwater`, as a function: the binary and `python -m overwater` both call it.

#![forbid(unsafe_code)]

mod after;
mod answer;
mod bounds;
mod burn;
mod calculate;
mod chemistry;
mod files;
mod plan;
mod propagate;
mod rate;
mod reduce;
mod rows;
mod run;
mod sources;
mod species;
mod table;

use std::ffi::OsString;
use std::path::PathBuf;

use clap::{Parser, Subcommand, ValueEnum};
use overwater_exchange::chemistry::WeightsRequest;

/// Columns of what is printed on a terminal.
const WIDTH: usize = 80;

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
    /// Simulate the preparation of a lesson: portions by the stop-watch that keep flow, heat and pressure within limits, or
    /// which limit cannot be kept and what would help.
    Schedule {
        /// The lesson, as for `plan`.
        file: PathBuf,
        /// Print the whole answer as JSON.
        #[arg(long)]
        json: bool,
    },
    /// Simulate a preparation as it is stated: what is added when, how fast the gas comes, how hot it gets, what each
    /// vessel holds, what goes wrong.
    Run {
        /// Apparatus, additions, vessels: TOML (or JSON, where the name ends in .json); `-` reads TOML from standard input.
        file: PathBuf,
        /// Also write it as a page with a figure.
        #[arg(long, value_name = "FILE")]
        html: Option<PathBuf>,
        /// Print the states against time as a table of comma-separated values.
        #[arg(long, conflicts_with = "json")]
        csv: bool,
        /// Print the whole answer as JSON.
        #[arg(long)]
        json: bool,
    },
    /// How active a catalyst is, from the readings of one trial: k at 20 degC with its uncertainty.
    Calibrate {
        /// Catalyst, liquid, readings: TOML (or JSON, where the name ends in .json); `-` reads TOML from standard input.
        file: PathBuf,
        /// Print the whole answer as JSON.
        #[arg(long)]
        json: bool,
    },
    /// From readings to results: amount of dry gas, volume at stated conditions, yield, molar mass, with the size of each
    /// correction.
    Reduce {
        /// The readings: a table whose column names end in their units, or TOML or JSON (by the ending of the name); `-`
        /// reads a table from standard input.
        file: PathBuf,
        /// What goes with a table: practical, collector, gas, reaction, reference, readings that all rows share (TOML).
        #[arg(long, value_name = "FILE")]
        options: Option<PathBuf>,
        /// Work out the rows that can be, and list the others with what is wrong; without it one bad row refuses all.
        #[arg(long)]
        keep_good: bool,
        /// Print the whole answer as JSON.
        #[arg(long)]
        json: bool,
        /// Print the worked solution of a row, the first where none is named.
        #[arg(long, value_name = "ROW", num_args = 0..=1, default_missing_value = "1", require_equals = true)]
        working: Option<u64>,
        /// How the worked solution is written.
        #[arg(long, value_enum, default_value_t = reduce::Format::Text, requires = "working")]
        format: reduce::Format,
        /// Significant figures of the results: a number, or `data` for as many as the row's least precise reading. A result
        /// exactly half-way goes to the even digit.
        #[arg(long, default_value = "3", value_parser = table::figures)]
        figures: table::Figures,
    },
    /// From readings against time to rates: initial rate in three ways, curve of the first order, half-lives, order, lines
    /// with and without intercept; from several runs the order, an enzyme's greatest rate, the activation energy.
    Rate {
        /// The readings, one row each, with columns such as run, time_s, volume_cm3, temperature_c: a table, or TOML or JSON
        /// (by the ending of the name); `-` reads a table from standard input.
        file: PathBuf,
        /// What goes with a table: what is known beforehand, gas, which rates are compared (TOML).
        #[arg(long, value_name = "FILE")]
        options: Option<PathBuf>,
        /// Work out the rows and runs that can be, and list the others; without it one bad row refuses all.
        #[arg(long)]
        keep_good: bool,
        /// Also write the results as a page with figures.
        #[arg(long, value_name = "FILE")]
        html: Option<PathBuf>,
        /// Print the whole answer as JSON.
        #[arg(long)]
        json: bool,
        /// Significant figures of the results: a number, or `data` for as many as the readings have. A result exactly
        /// half-way goes to the even digit.
        #[arg(long, default_value = "3", value_parser = table::figures)]
        figures: table::Figures,
    },
    /// How uncertain the result of a formula is: the budget by first order (GUM), by drawing, or by school rules.
    Propagate {
        /// The formula, its inputs with their uncertainties, the rule set: TOML (or JSON, where the name ends in .json); `-`
        /// reads TOML from standard input.
        file: PathBuf,
        /// Print the whole answer as JSON.
        #[arg(long)]
        json: bool,
    },
    /// Answer a request in JSON by an answer in JSON, as every binding does; an error is an answer too, and ends with 2.
    Answer {
        /// The request; `-` reads it from standard input.
        #[arg(required_unless_present = "schema")]
        file: Option<PathBuf>,
        /// Print the schema of all requests and answers instead.
        #[arg(long, conflicts_with = "file")]
        schema: bool,
    },
    /// Burn a sample in a jar: balanced equation, what is made and left, heat, flame temperature with dissociation, the gas
    /// after it, how much sample to take.
    Burn(burn::Arguments),
    /// The gases and condensed phases that flames are worked out with; with --json also their coefficients of heat capacity,
    /// enthalpy and entropy, for use elsewhere.
    Species {
        /// Only species whose name or formula holds this text, in any case.
        #[arg(default_value = "")]
        text: String,
        /// Print JSON with the coefficients.
        #[arg(long)]
        json: bool,
    },
    /// A product of a burn in water: how much dissolves, the pH, what indicators show.
    Dissolve(after::InWater),
    /// A product of a burn in the air of a room, against the limits for people at work.
    Air(after::RoomAir),
    /// Print an annotated lesson to start from.
    Template,
    /// Where every number comes from: each constant, coefficient, table and equation in use, with value, unit, uncertainty,
    /// range, source and year.
    Sources {
        /// Only entries that hold this text, in any case.
        #[arg(default_value = "")]
        text: String,
        /// Print a table of comma-separated values.
        #[arg(long, conflicts_with = "json")]
        csv: bool,
        /// Print JSON.
        #[arg(long)]
        json: bool,
    },
    /// What is accepted for each quantity: name, unit, least, greatest, and why.
    Bounds {
        /// Only rows that hold this text, in any case.
        #[arg(default_value = "")]
        text: String,
        /// Print a table of comma-separated values.
        #[arg(long, conflicts_with = "json")]
        csv: bool,
        /// Print JSON.
        #[arg(long)]
        json: bool,
    },
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

/// Runs the program with its arguments, the first of which is its name; gives the exit code: 0, or 2 for a refusal.
///
/// ```
/// assert_eq!(overwater_cli::run(["overwater", "calculate", "vapour_pressure", "temperature_c=20"]), 0);
/// assert_eq!(overwater_cli::run(["overwater", "calculate", "vapour_pressure", "temperature_c=200"]), 2);
/// ```
pub fn run<I, T>(arguments: I) -> u8
where
    I: IntoIterator<Item = T>,
    T: Into<OsString> + Clone,
{
    let arguments = match Arguments::try_parse_from(arguments) {
        Ok(arguments) => arguments,
        Err(error) => {
            // Help and version come this way too; a reader that has gone away is no error.
            let _ = error.print();
            return if error.use_stderr() { 2 } else { 0 };
        }
    };
    let outcome = match arguments.command {
        Command::Plan { file, html, json } => plan::run(&file, html.as_deref(), json),
        Command::Schedule { file, json } => plan::timeline(&file, json),
        Command::Run { file, html, csv, json } => run::run(&file, html.as_deref(), csv, json),
        Command::Calibrate { file, json } => run::calibrate(&file, json),
        Command::Reduce { file, options, keep_good, json, working, format, figures } => {
            let wanted = reduce::Wanted { keep_good, json, working, format, figures };
            reduce::run(&file, options.as_deref(), &wanted)
        }
        Command::Rate { file, options, keep_good, html, json, figures } => {
            let wanted = rate::Wanted { keep_good, json, html: html.as_deref(), figures };
            rate::run(&file, options.as_deref(), &wanted)
        }
        Command::Propagate { file, json } => propagate::run(&file, json),
        Command::Answer { file: Some(file), .. } => match answer::run(&file) {
            Ok(code) => return code,
            Err(message) => Err(message),
        },
        Command::Answer { file: None, .. } => files::print(&overwater_exchange::schema()),
        Command::Burn(arguments) => burn::run(arguments),
        Command::Species { text, json } => species::run(&text, json),
        Command::Dissolve(given) => after::in_water(given),
        Command::Air(given) => after::room_air(given),
        Command::Template => files::print(overwater_exchange::TEMPLATE),
        Command::Sources { text, csv, json } => sources::run(&text, csv, json),
        Command::Bounds { text, csv, json } => bounds::run(&text, csv, json),
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
        Ok(()) => 0,
        Err(message) => {
            eprintln!("{}", message.trim_end());
            2
        }
    }
}
