//! Writes what is generated of the C interface: `cargo run -p overwater-c --example generate`.

mod functions;
mod header;
mod output;
mod table;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    // The header is read from the functions, so that these come first.
    for output in functions::outputs()? {
        output.write()?;
    }
    header::output()?.write()?;
    Ok(())
}
