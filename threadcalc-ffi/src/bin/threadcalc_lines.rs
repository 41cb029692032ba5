//! Serves plans, checks and comparisons as JSON lines: one job, one program to check, or two versions of one to compare,
//! a line on standard input, one reply a line on standard output.
//!
//! Replies come in the order of the requests and are flushed one by one. A line that is none of these is a
//! reply with an error, never the end. Exit status 0 at the end of input, 1 if a stream fails.

use std::io::{BufRead, ErrorKind, Write};
use std::process::ExitCode;

/// The longest line that is kept: above it the reply is an error all the same.
const LONGEST_LINE: u64 = 1 << 20;

fn main() -> ExitCode {
    if let Some(argument) = std::env::args().nth(1) {
        let version = concat!("threadcalc-lines ", env!("CARGO_PKG_VERSION"));
        let known = argument == "--version";
        println!("{}", if known { version } else { "usage: threadcalc-lines [--version] < requests > replies" });
        return if known { ExitCode::SUCCESS } else { ExitCode::from(2) };
    }
    match serve(&mut std::io::stdin().lock(), &mut std::io::stdout().lock()) {
        Ok(()) => ExitCode::SUCCESS,
        // Whoever asked has gone away: there is nobody to tell.
        Err(error) if error.kind() == ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("threadcalc-lines: {error}");
            ExitCode::FAILURE
        }
    }
}

fn serve(input: &mut impl BufRead, output: &mut impl Write) -> std::io::Result<()> {
    let mut line = Vec::new();
    loop {
        line.clear();
        if std::io::Read::take(&mut *input, LONGEST_LINE).read_until(b'\n', &mut line)? == 0 {
            return Ok(());
        }
        if !line.ends_with(b"\n") {
            input.skip_until(b'\n')?;
        }
        let request = line.trim_ascii();
        if request.is_empty() {
            continue;
        }
        output.write_all(threadcalc::answer_line(request).as_bytes())?;
        output.write_all(b"\n")?;
        output.flush()?;
    }
}
