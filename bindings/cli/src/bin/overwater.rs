//! The program `overwater`.

#![forbid(unsafe_code)]

use std::process::ExitCode;

fn main() -> ExitCode {
    ExitCode::from(overwater_cli::run(std::env::args_os()))
}
