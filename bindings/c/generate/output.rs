//! A generated file.

use std::error::Error;
use std::fs;
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// A file and what belongs into it.
pub(crate) struct Output {
    pub(crate) path: PathBuf,
    pub(crate) text: String,
}

impl Output {
    /// A file under the folder of this package.
    pub(crate) fn new(path: &str, text: String) -> Output {
        Output { path: root().join(path), text }
    }

    /// Writes it, if it is not so already.
    #[allow(dead_code)] // The test that includes this file only compares.
    pub(crate) fn write(&self) -> std::io::Result<()> {
        if self.is_so() {
            return Ok(());
        }
        fs::write(&self.path, &self.text)
    }

    /// Whether the file holds just this.
    pub(crate) fn is_so(&self) -> bool {
        fs::read_to_string(&self.path).is_ok_and(|text| text == self.text)
    }
}

/// The folder of this package.
pub(crate) fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// A Rust text as `cargo fmt` would have it.
pub(crate) fn formatted(text: &str) -> Result<String, Box<dyn Error>> {
    let mut child = Command::new("rustfmt")
        .args(["--edition", "2024", "--config-path"])
        .arg(root().join("../.."))
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()?;
    child.stdin.take().ok_or("no input")?.write_all(text.as_bytes())?;
    let output = child.wait_with_output()?;
    if !output.status.success() {
        return Err("rustfmt refused the generated text".into());
    }
    Ok(String::from_utf8(output.stdout)?)
}
