//! A report as somebody at the machine reads it, and what a suggestion replaces.

use threadcalc_core::nc::{CheckOptions, ProgramCheck, ProgramFinding};
use threadcalc_core::{Dialect, Severity};

use crate::programs::samples;
use crate::whole::Whole;

const CLEAN: &str =
    "G17 G21 G90 G94 G54\nT1 M6 (TAP M6)\nG43 H1 Z5.\nS500 M3\nG98 G84 X0 Y0 Z-12. R5. F500.\nX9.\nG80\nM30\n";
const FOOT: &str = "never checked, no text shows it:
  tool in the pocket and its offsets
  part, clamps and what the tap comes out into
  the tap itself: class, chamfer, wear
  switches and overrides at the machine
  whether the dialect is that of this machine
  pitch diameter: only the gauge shows it
The machine's manual and the tap maker's data come first.
No findings means nothing wrong in what was read, not that it is safe.
Prove out: guards shut, above the part, single block, rapid reduced.";

/// The text of a report, and its findings.
fn report(program: &[u8]) -> (String, Vec<ProgramFinding>) {
    let (dialect, options) = (Dialect::rs274ngc(), CheckOptions::default());
    let whole = Whole::of(ProgramCheck::new(program, &dialect, &options));
    (whole.report().to_string(), whole.findings)
}

#[test]
fn a_clean_program_says_what_was_checked_and_what_was_not() {
    let known = "lead known in 2, thread known in 2, depth known in 2, hand known in 2";
    let head = format!("no findings\nchecked: 2 tapping blocks, 2 holes\n  of the blocks, {known}\n");
    assert_eq!(report(CLEAN.as_bytes()).0, head + FOOT);
}

#[test]
fn what_the_program_leaves_open_stands_before_what_no_text_shows() {
    let text = report(CLEAN.replace("(TAP M6)", "").replace("F500.", "F#5").as_bytes()).0;
    let open = "not checked in this program:\n  from line 5 on, 2 times: the lead could not be computed\n";
    assert!(text.contains(open), "{text}");
    assert!(text.contains("lead known in 0, thread known in 0, depth known in 2"), "{text}");
    assert!(text.ends_with(FOOT));
}

#[test]
fn a_program_without_a_tapping_block_is_not_called_checked() {
    let text = report(b"G17 G21 G90 G94\nG0 X0\nM30\n").0;
    assert_eq!(text, format!("no findings\nchecked: no tapping block was found\n{FOOT}"));
}

#[test]
fn the_worst_comes_first_with_what_it_rests_on() {
    let text = report(CLEAN.replace("G43 H1 Z5.\n", "").replace("X9.", "S400").replace("G80", "X9.\nG80").as_bytes()).0;
    let lines: Vec<_> = text.lines().collect();
    assert_eq!(
        lines[..2],
        [
            "error stale-feed-after-speed-change, line 5, column 1: S changed 500 to 400 in the active cycle, \
             F500 stayed: the lead is now 1.25 mm: write F400.",
            "  because: M6x1 named in line 2, S set in line 5, F set in line 4, unit set in line 1, \
             feed mode set in line 1, cycle begun in line 4, T1",
        ]
    );
    let severities = lines.iter().filter_map(|line| line.split(' ').next().filter(|word| *word != "No"));
    let ranks: Vec<_> =
        severities.filter_map(|word| Severity::from_name(word.as_bytes())).map(Severity::number).collect();
    assert!(ranks.len() > 1 && ranks.is_sorted(), "{text}");
}

/// What stands from column to end column of the finding's line, and the program with the suggestion in its place.
fn replaced(program: &[u8], finding: &ProgramFinding) -> (Vec<u8>, Vec<u8>) {
    let mut lines: Vec<_> = program.split_inclusive(|byte| *byte == b'\n').map(<[u8]>::to_vec).collect();
    let line = &mut lines[finding.line() as usize - 1];
    let place = finding.column() as usize - 1..finding.end_column() as usize - 1;
    let old = line.splice(place, finding.suggestion().bytes()).collect();
    (old, lines.concat())
}

#[test]
fn a_suggestion_that_replaces_a_word_mends_the_lead() {
    let mut programs: Vec<_> = samples().into_iter().map(|sample| sample.program).collect();
    programs.push(CLEAN.replace("F500.", "F800.").into_bytes());
    let (mut mended, mut added) = (0, 0);
    for program in programs {
        for finding in report(&program).1 {
            if !finding.replaces() {
                added += usize::from(!finding.suggestion().is_empty());
                continue;
            }
            let (old, better) = replaced(&program, &finding);
            assert_eq!(old[0], finding.suggestion().as_bytes()[0], "{finding}");
            let left = report(&better).1;
            assert!(!left.iter().any(|one| (one.id(), one.line()) == (finding.id(), finding.line())), "{finding}");
            mended += 1;
        }
    }
    assert!(mended >= 5 && added >= 3, "{mended} {added}");
}
