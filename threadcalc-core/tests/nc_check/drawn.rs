//! What holds of every program, whatever it says: known programs, and what changes at random make of them.

use std::fs;

use threadcalc_core::Dialect;
use threadcalc_core::nc::{CheckOptions, Checker, Event, ProgramCheck, Reason};

use super::pieces::in_pieces;
use super::random::Random;
use super::told::{MILL, cases, dialect, events, with_calls};

const TESTS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests");

/// The samples, and the programs of the table of checks.
fn programs() -> Vec<Vec<u8>> {
    let mut paths: Vec<_> = fs::read_dir(format!("{TESTS}/nc")).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.retain(|path| path.extension().is_some_and(|end| end == "nc"));
    paths.sort();
    let mut programs: Vec<_> = paths.iter().map(|path| fs::read(path).unwrap()).collect();
    let table = fs::read_to_string(format!("{TESTS}/reference/nc_check.csv")).unwrap();
    let rows = table.lines().filter(|line| !line.starts_with('#')).skip(1);
    programs.extend(rows.map(|row| row.split(',').nth(1).unwrap().replace(" | ", "\r\n").into_bytes()));
    assert!(programs.len() > 150);
    programs
}

/// A program with bytes changed, left out and moved, or nothing but random bytes.
fn mutated(random: &mut Random, programs: &[Vec<u8>]) -> Vec<u8> {
    if random.pick(8) == 0 {
        return (0..random.pick(300)).map(|_| random.next() as u8).collect();
    }
    let mut text = programs[random.pick(programs.len() as u64) as usize].clone();
    for _ in 0..random.pick(6) {
        let at = random.pick(text.len() as u64) as usize;
        let other = &programs[random.pick(programs.len() as u64) as usize];
        match random.pick(5) {
            0 => text[at] = b"0123456789.-GMXYZFSRT()/#[]\n%"[random.pick(29) as usize],
            1 if text.len() > 1 => drop(text.remove(at)),
            1 | 2 => text.insert(at, random.next() as u8),
            3 => text.truncate(at.max(1)),
            _ => {
                let line = other.split(|byte| *byte == b'\n').nth(random.pick(20) as usize).unwrap_or(b"G80");
                text.splice(at..at, [b"\n", line, b"\n"].concat());
            }
        }
    }
    text
}

fn is_the_same_in_pieces(text: &[u8], sizes: &[usize], dialect: &Dialect) {
    let whole = events(text, dialect);
    for size in sizes {
        let pieces = in_pieces(&mut Checker::new(dialect, &CheckOptions::default()), text, *size);
        assert!(whole == pieces, "pieces of {size}: {whole:#?}\n{pieces:#?}\n{}", String::from_utf8_lossy(text));
    }
}

#[test]
fn pieces_and_the_whole_are_judged_alike() {
    let programs = programs();
    let mut random = Random(7);
    // None of these knows a code that calls.
    let dialects = [dialect(MILL), Dialect::rs274ngc(), Dialect::unset()];
    for program in &programs {
        is_the_same_in_pieces(program, &[1, 2, 3, 7, 61, program.len()], &dialects[0]);
    }
    for case in 0..cases() {
        let text = mutated(&mut random, &programs);
        let sizes = [1, 1 + random.pick(40) as usize, text.len().max(1)];
        is_the_same_in_pieces(&text, &sizes, &dialects[case as usize % 3]);
    }
}

/// Places within the text, and a message without a gap.
fn is_sound(event: &Event, program: &[u8]) {
    let lines = 1 + program.iter().filter(|byte| matches!(byte, b'\n' | b'\r')).count() as u32;
    let is_line = |line: u32| (1..=lines).contains(&line);
    match event {
        Event::Hole(hole) => assert!(is_line(hole.line) && hole.lead_mm.is_none_or(|lead| lead.is_positive())),
        Event::Finding(finding) => {
            assert!(is_line(finding.line()) && 0 < finding.column() && finding.column() <= finding.end_column());
            assert!(finding.evidence().all(|evidence| evidence.line == 0 || is_line(evidence.line)), "{finding:?}");
            assert!(!finding.to_string().contains(['{', '}', '[', ']', '?']), "{finding} {finding:?}");
        }
    }
}

#[test]
fn every_finding_lies_in_the_text_and_speaks() {
    let programs = programs();
    let mut random = Random(8);
    for case in 0..cases() {
        let text = mutated(&mut random, &programs);
        let dialect = if case % 2 == 0 { with_calls() } else { Dialect::unset() };
        events(&text, &dialect).iter().for_each(|event| is_sound(event, &text));
    }
}

/// A block that is told to be one that could not be read counts as one that was not checked, whatever of it was
/// followed.
#[test]
fn what_could_not_be_read_was_not_checked() {
    for line in ["G98 G84 X0 Y0/Z-12. R5. F500.", "G98 N5 G84 X0 Y0 Z-12. R5. F500.", "G98 G84 X0 Y0 ? Z-12. R5. F500."]
    {
        let text = format!("G17 G21 G40 G80 G90 G94\nT1 M6 (TAP M6X1)\nG43 H1 Z10. S500\n{line}\nG80\nM30\n");
        let mill = dialect(MILL);
        let mut check = ProgramCheck::new(text.as_bytes(), &mill, &CheckOptions::default());
        let told = |event: &Event| matches!(event, Event::Finding(finding) if finding.id().name() == "block-not-read");
        assert_eq!(check.by_ref().filter(told).count(), 1, "{line}");
        let reasons: Vec<_> = check.not_checked().map(|told| (told.reason, told.count, told.first_line)).collect();
        assert!(reasons.contains(&(Reason::BlockNotRead, 1, 4)), "{line}: {reasons:?}");
    }
}
