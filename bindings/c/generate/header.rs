//! The header for C.

use std::error::Error;

use super::output::{Output, root};

/// The header as it is to be.
pub(crate) fn output() -> Result<Output, Box<dyn Error>> {
    let mut builder = cbindgen::Builder::new().with_config(
        cbindgen::Config::from_file(root().join("cbindgen.toml")).map_err(|error| error.to_string())?,
    );
    // The last leads on to the other files of its folder.
    for file in ["about.rs", "status.rs", "gas.rs", "error.rs", "respond.rs", "elementwise/mod.rs"] {
        builder = builder.with_src(root().join("src").join(file));
    }
    let mut text = Vec::new();
    builder.generate()?.write(&mut text);
    // What only Rust needs to know, and what only Rust escapes.
    let text = String::from_utf8(text)?.replace("\\[", "[").replace("\\]", "]").replace("\\<", "<");
    let mut kept = String::new();
    let mut lines = text.lines().peekable();
    while let Some(line) = lines.next() {
        if line == "//" && lines.peek().is_some_and(|next| *next == "// # Safety") {
            lines.nth(1);
            continue;
        }
        kept.push_str(line.trim_end());
        kept.push('\n');
    }
    Ok(Output::new("include/overwater.h", kept))
}
