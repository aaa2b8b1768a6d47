//! The program as a person and as a script meet it.

// Not every test needs all of it.
#![allow(dead_code)]

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

pub(crate) const EXAMPLES: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../examples");

/// Runs a command with nothing to read.
pub(crate) fn overwater(command: &str, arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_overwater")).arg(command).args(arguments).output().unwrap()
}

/// Runs a command that reads a table from standard input.
pub(crate) fn piped(command: &str, arguments: &[&str], table: &[u8]) -> Output {
    let mut child = Command::new(env!("CARGO_BIN_EXE_overwater"))
        .args([command, "-"])
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    // A program that refuses at once does not read what it is given.
    let _ = child.stdin.take().unwrap().write_all(table);
    child.wait_with_output().unwrap()
}

pub(crate) fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

/// Writes a file to be read.
pub(crate) fn file(folder: &str, name: &str, content: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(folder);
    std::fs::create_dir_all(&folder).unwrap();
    let path = folder.join(name);
    std::fs::write(&path, content).unwrap();
    path
}

/// What is printed for an example with its options.
pub(crate) fn example(command: &str, name: &str, more: &[&str]) -> String {
    let (table, options) = (format!("{EXAMPLES}/{name}.csv"), format!("{EXAMPLES}/{name}.toml"));
    let mut arguments = vec![table.as_str(), "--options", options.as_str()];
    arguments.extend(more);
    let output = overwater(command, &arguments);
    assert!(output.status.success(), "{}", text(&output.stderr));
    text(&output.stdout)
}

/// Refused with 2, with nothing printed and with all of the words in the message.
pub(crate) fn refused(command: &str, arguments: &[&str], table: &[u8], words: &[&str]) {
    let output = piped(command, arguments, table);
    let message = text(&output.stderr);
    assert_eq!(output.status.code(), Some(2), "{message}{}", text(&output.stdout));
    assert!(output.stdout.is_empty(), "{}", text(&output.stdout));
    for word in words {
        assert!(message.contains(word), "{word:?} is not in: {message}");
    }
}

/// The most memory held so far (kB) after 3 MB and after 24 MB of a table that is read from a pipe.
#[cfg(target_os = "linux")]
pub(crate) fn peaks(
    command: &str,
    arguments: &[&str],
    header: &str,
    row: impl Fn(usize) -> String,
) -> (u64, u64) {
    let mut child = Command::new(env!("CARGO_BIN_EXE_overwater"))
        .args([command, "-"])
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .unwrap();
    let status = format!("/proc/{}/status", child.id());
    let peak = || -> u64 {
        let status = std::fs::read_to_string(&status).unwrap();
        let line = status.lines().find(|line| line.starts_with("VmHWM:")).unwrap();
        line.split_whitespace().nth(1).unwrap().parse().unwrap()
    };
    let block: String = (0..50_000).map(row).collect();
    let mut input = child.stdin.take().unwrap();
    input.write_all(header.as_bytes()).unwrap();
    let mut written = 0;
    let mut write_up_to = |bytes: usize, input: &mut std::process::ChildStdin| {
        while written < bytes {
            input.write_all(block.as_bytes()).unwrap();
            written += block.len();
        }
    };
    write_up_to(3_000_000, &mut input);
    let early = peak();
    write_up_to(24_000_000, &mut input);
    let late = peak();
    drop(input);
    assert!(child.wait().unwrap().success());
    (early, late)
}
