//! Gives the shared library its name on Linux: without it the file has no SONAME.
//!
//! The number in it is that of the binary interface, so that a program never meets another one.

const SOURCE: &str = "src/flat.rs";
const DEFINITION: &str = "pub const THREADCALC_ABI_VERSION: i32 = ";

fn main() {
    println!("cargo:rerun-if-changed=build.rs");
    println!("cargo:rerun-if-changed={SOURCE}");
    if std::env::var("CARGO_CFG_TARGET_OS").as_deref() != Ok("linux") {
        return;
    }
    let source = std::fs::read_to_string(SOURCE).unwrap_or_default();
    let number = source.lines().find_map(|line| line.strip_prefix(DEFINITION)?.strip_suffix(';'));
    let number: u32 = number.and_then(|number| number.parse().ok()).expect("src/flat.rs has THREADCALC_ABI_VERSION");
    println!("cargo:rustc-cdylib-link-arg=-Wl,-soname,libthreadcalc.so.{number}");
}
