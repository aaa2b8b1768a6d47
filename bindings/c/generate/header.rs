//! The header for C.

use std::error::Error;
use std::fs;

use super::output::{Output, root};

/// The header as it is to be.
pub(crate) fn output() -> Result<Output, Box<dyn Error>> {
    let mut builder = cbindgen::Builder::new().with_config(
        cbindgen::Config::from_file(root().join("cbindgen.toml")).map_err(|error| error.to_string())?,
    );
    for file in ["about.rs", "status.rs", "gas.rs", "error.rs", "respond.rs"] {
        builder = builder.with_src(root().join("src").join(file));
    }
    let mut files: Vec<_> = fs::read_dir(root().join("src/elementwise"))?
        .map(|entry| Ok(entry?.path()))
        .collect::<std::io::Result<_>>()?;
    files.sort();
    for file in files {
        builder = builder.with_src(file);
    }
    let mut text = Vec::new();
    builder.generate()?.write(&mut text);
    // What only Rust needs to know, and what only Rust escapes.
    let text = String::from_utf8(text)?.replace("\\[", "[").replace("\\]", "]").replace("\\<", "<");
    let mut kept = String::new();
    let mut lines = text.lines().peekable();
    while let Some(line) = lines.next() {
        if line.trim() == "*" && lines.peek().is_some_and(|next| next.trim() == "* # Safety") {
            lines.nth(1);
            continue;
        }
        kept.push_str(line.trim_end());
        kept.push('\n');
    }
    Ok(Output::new("include/overwater.h", kept))
}
