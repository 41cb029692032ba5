//! Where the board has its memory.

use std::env::var;

fn main() {
    println!("cargo:rerun-if-changed=build.rs");
    println!("cargo:rerun-if-changed=link.x");
    println!("cargo:rustc-link-arg-bins=-T{}/link.x", var("CARGO_MANIFEST_DIR").expect("set by cargo"));
}
