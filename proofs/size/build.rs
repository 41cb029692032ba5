//! Nothing is linked but the crates themselves, and nothing of them is kept that is not used.

/// What every compiler expects of its platform. Never called: the programs are measured, not run.
const PLATFORM: [&str; 6] = ["memcpy", "memmove", "memset", "memcmp", "bcmp", "rust_eh_personality"];

fn main() {
    println!("cargo:rerun-if-changed=build.rs");
    let arguments = ["-nostartfiles", "-nostdlib", "-nodefaultlibs", "-static", "-no-pie", "-Wl,--gc-sections"];
    for argument in arguments {
        println!("cargo:rustc-link-arg-bins={argument}");
    }
    for symbol in PLATFORM {
        println!("cargo:rustc-link-arg-bins=-Wl,--defsym={symbol}=0");
    }
}
