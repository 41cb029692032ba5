//! Nothing is linked but what the crate itself brings.

fn main() {
    println!("cargo:rerun-if-changed=build.rs");
    for argument in ["-nostartfiles", "-nostdlib", "-nodefaultlibs", "-static", "-no-pie"] {
        println!("cargo:rustc-link-arg-bins={argument}");
    }
}
