//! The answers of this machine, with its standard library: what the other machines are held to.
//!
//! With the argument `planted` the last bit of one double is wrong, which the comparison has to see.

use std::fmt::Write;
use std::process::ExitCode;

fn main() -> ExitCode {
    let mut text = String::new();
    if answers::write_answers(&mut text).is_err() {
        eprintln!("no answers");
        return ExitCode::FAILURE;
    }
    if std::env::args().nth(1).is_some_and(|argument| argument == "planted") {
        text = with_one_bit_turned(&text);
    }
    print!("{text}");
    ExitCode::SUCCESS
}

/// The profile's last double of the first thread, one unit in its last place off.
fn with_one_bit_turned(text: &str) -> String {
    let mut items = text.splitn(9, '|');
    let mut turned = String::new();
    for item in items.by_ref().take(7) {
        turned.push_str(item);
        turned.push('|');
    }
    let double = items.next().and_then(|item| u64::from_str_radix(item, 16).ok()).expect("a double");
    write!(turned, "{:016x}|{}", double ^ 1, items.next().unwrap_or("")).expect("room");
    turned
}
