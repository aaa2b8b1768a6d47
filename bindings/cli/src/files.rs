//! Reading a request and writing results. Nothing is written before everything has been worked out.

use std::fs::File;
use std::io::{self, Read, Write};
use std::path::Path;

use overwater_exchange::GREATEST_BYTES;

/// What went wrong, as it is printed.
pub(crate) type Message = String;

/// Reads a file or standard input, of which at most one byte more than [`GREATEST_BYTES`] is taken into memory.
pub(crate) fn bytes(path: &Path) -> Result<Vec<u8>, Message> {
    let shown = path.display();
    let mut bytes = Vec::new();
    let limit = GREATEST_BYTES as u64 + 1;
    let read = if path == Path::new("-") {
        io::stdin().lock().take(limit).read_to_end(&mut bytes)
    } else {
        File::open(path).and_then(|file| file.take(limit).read_to_end(&mut bytes))
    };
    match read {
        Ok(_) => Ok(bytes),
        Err(error) => {
            Err(format!("error: {shown}: cannot be read ({error}); give the path of a lesson file"))
        }
    }
}

/// Reads a text.
pub(crate) fn read(path: &Path) -> Result<String, Message> {
    let shown = path.display();
    let bytes = bytes(path)?;
    if bytes.len() > GREATEST_BYTES {
        return Err(format!(
            "error: {shown}: is longer than {GREATEST_BYTES} bytes; is this the right file? long readings are \
             read as a table (CSV) [too_large]"
        ));
    }
    String::from_utf8(bytes).map_err(|error| {
        let at = error.utf8_error().valid_up_to();
        format!("error: {shown}: is not UTF-8 text from byte {at} on; save the lesson as plain UTF-8 text [syntax]")
    })
}

/// Prints a text. A reader that has gone away, as with `| head`, is no error.
pub(crate) fn print(text: &str) -> Result<(), Message> {
    let mut out = io::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => {
            Err(format!("error: standard output: {error}"))
        }
        _ => Ok(()),
    }
}

/// Prints an answer as JSON.
pub(crate) fn print_json(answer: &impl serde::Serialize) -> Result<(), Message> {
    let whole = serde_json::to_string_pretty(answer);
    let whole = whole.map_err(|error| format!("error: the answer cannot be written as JSON ({error})"))?;
    print(&(whole + "\n"))
}

/// Writes a text to a file.
pub(crate) fn write(path: &Path, text: &str) -> Result<(), Message> {
    std::fs::write(path, text).map_err(|error| {
        format!("error: {}: cannot be written ({error}); give a path in a folder that exists", path.display())
    })
}
