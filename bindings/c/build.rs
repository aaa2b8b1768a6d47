//! Tells the library which target and profile it is built for.

fn main() {
    for (name, from) in [("OVERWATER_TARGET", "TARGET"), ("OVERWATER_PROFILE", "PROFILE")] {
        println!("cargo::rustc-env={name}={}", std::env::var(from).unwrap_or_default());
    }
    println!("cargo::rerun-if-changed=build.rs");
}
