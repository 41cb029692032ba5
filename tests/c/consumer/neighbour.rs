//! Another Rust library in the same C program: its runtime must not meet that of threadcalc.

/// Panics within and says that it has caught it.
#[unsafe(no_mangle)]
pub extern "C" fn neighbour_catches(number: u32) -> u32 {
    std::panic::set_hook(Box::new(|_| ()));
    std::panic::catch_unwind(|| 100_u32.checked_div(number).expect("not zero")).unwrap_or(7)
}
