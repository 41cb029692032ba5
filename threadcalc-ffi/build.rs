//! Gives the shared library its name on Linux: without it the file has no SONAME.

fn main() {
    println!("cargo:rerun-if-changed=build.rs");
    let target = std::env::var("CARGO_CFG_TARGET_OS").unwrap_or_default();
    let major = std::env::var("CARGO_PKG_VERSION_MAJOR").unwrap_or_default();
    if target == "linux" {
        println!("cargo:rustc-cdylib-link-arg=-Wl,-soname,libthreadcalc.so.{major}");
    }
}
