//! A program of any length is checked in memory that does not grow: a checker of fixed size, and no heap.
//!
//! `THREADCALC_STREAM_MB` sets how many megabytes are streamed; 1 if it is not set.

#[path = "support/counting.rs"]
mod counting;

use counting::counted;
use threadcalc_core::nc::{CheckOptions, Checker, Event};
use threadcalc_core::{Dialect, Value};

/// What a control's memory or a socket hands over at once.
const PIECE: usize = 65_536;
/// Some kilobytes of anything that a program holds, a good hole in it, and one with another lead.
const STRETCH: &str = "(TAP M8X1.25 AND WHAT ELSE A POST WRITES)\nN10 G0 G54 X12.5 Y-3.75\n#101=1.25 #102=[#101*600]\n\
    G98 G84 X0. Y0. Z-12. R5. F#102\nX10.\nX20. F800.\nG80\n/N20 G1 X5. F200. ; DOWN\nG98 G81 X1. Y2. Z-9. R2. F100.\n\
    X3,5\nX[#1+2]\nG0 Z25.\nT3 M6 (TAP M8)\nG43 H3 Z5. S600 M3\nO77\n?\n";

/// The most memory that this process has had, in kB; None where the system does not say.
fn peak_kb() -> Option<u64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    status.lines().find_map(|line| line.strip_prefix("VmHWM:")?.trim().strip_suffix(" kB")?.trim().parse().ok())
}

#[test]
fn a_stream_of_any_length_is_checked_in_bounded_memory() {
    let megabytes: usize =
        std::env::var("THREADCALC_STREAM_MB").map_or(1, |text| text.parse().expect("a number of megabytes"));
    let mut mill = Dialect::rs274ngc();
    mill.set("feed_per_revolution", Value::Text(b"G95")).unwrap();
    let stretch = STRETCH.repeat(PIECE.div_ceil(STRETCH.len()));
    let mut checker = Checker::new(&mill, &CheckOptions::default());
    let (mut holes, mut findings, mut bytes) = (0_u64, 0_u64, 0_usize);
    let mut take = |checker: &mut Checker| {
        while let Some(event) = checker.next_event() {
            match event {
                Event::Hole(_) => holes += 1,
                Event::Finding(_) => findings += 1,
            }
        }
    };
    let before = peak_kb();
    let ((), asked) = counted(|| {
        let _head = checker.read(b"G17 G21 G90 G94\nT1 M6 (TAP M8)\nG43 H1 S600 M3\n");
        take(&mut checker);
        while bytes < megabytes << 20 {
            let mut rest = stretch.as_bytes();
            while !rest.is_empty() {
                let size = rest.len().min(PIECE);
                rest = &rest[checker.read(&rest[..size])..];
                take(&mut checker);
            }
            bytes += stretch.len();
        }
        checker.finish();
        take(&mut checker);
    });
    let stretches = (bytes / STRETCH.len()) as u64;
    println!(
        "{bytes} bytes, {holes} holes, {findings} findings; peak before and after: {before:?}, {:?} kB",
        peak_kb()
    );
    assert_eq!(asked, 0, "the heap was asked");
    assert_eq!(holes, 3 * stretches);
    assert!(findings > stretches);
    if let (Some(before), Some(after)) = (before, peak_kb()) {
        assert!(after - before < 2_048, "{before} kB before, {after} kB after");
    }
}
