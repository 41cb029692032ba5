//! The checker by properties: pieces of any size, any bytes, and what the library's own cycles make.

use std::fs;

use threadcalc_core::nc::{CheckOptions, Checker, Event, ProgramCheck, ProgramFinding};
use threadcalc_core::{
    CycleRequest, Dialect, FeedMode, Hand, Holder, Length, ReturnTo, Severity, Thread, Unit, Value, cycle, feed,
    standard_threads,
};

/// A generator of numbers that is the same everywhere.
struct Random(u64);

impl Random {
    fn next(&mut self, below: u64) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) % below
    }
}

fn mill() -> Dialect {
    let mut mill = Dialect::unset();
    for (key, value) in [
        ("name", "mill"),
        ("tap_rh", "G84"),
        ("tap_lh", "G74"),
        ("feed_per_revolution", "G95"),
        ("feed_mode_default", "per_minute"),
        ("feed_basis", "by_mode"),
        ("cycle_starts_spindle", "true"),
        ("needs_spindle_running", "false"),
        ("no_point", "as_written"),
        ("repeat_word", "L"),
        ("peck_word", "Q"),
        ("dwell_word", "P"),
        ("dwell_unit", "s"),
        ("retract_multiplier_word", "J"),
        ("retract_in", "factor"),
        ("rapid_cancels_cycle", "true"),
        ("override_locked_in_cycle", "true"),
        ("F_converted_on_units_change", "false"),
        ("subprogram_call", "M98"),
        ("subprogram_return", "M99"),
    ] {
        mill.set(key, Value::Text(value.as_bytes())).unwrap();
    }
    mill
}

fn programs() -> Vec<Vec<u8>> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/nc");
    let mut names: Vec<_> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    names.retain(|path| path.extension().is_some_and(|ending| ending == "nc"));
    names.sort();
    let mut programs: Vec<_> = names.iter().map(|path| fs::read(path).unwrap()).collect();
    let table = fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/reference/nc_check.csv")).unwrap();
    let rows = table.lines().filter(|line| !line.starts_with('#')).skip(1);
    programs.extend(rows.map(|row| row.split(',').nth(1).unwrap().replace(" | ", "\r\n").into_bytes()));
    assert!(programs.len() > 150);
    programs
}

fn in_pieces(program: &[u8], size: usize, dialect: &Dialect) -> Vec<Event> {
    let mut events = Vec::new();
    let mut checker = Checker::new(dialect, &CheckOptions::default());
    for piece in program.chunks(size) {
        let mut rest = piece;
        while !rest.is_empty() {
            rest = &rest[checker.read(rest)..];
            while let Some(event) = checker.next_event() {
                events.push(event);
            }
        }
    }
    checker.finish();
    while let Some(event) = checker.next_event() {
        events.push(event);
    }
    events
}

fn has_calls(program: &[u8]) -> bool {
    program.windows(3).any(|bytes| bytes == b"M98")
}

#[test]
fn events_are_the_same_however_the_program_is_cut() {
    let mill = mill();
    for program in programs() {
        let whole = in_pieces(&program, program.len(), &mill);
        for size in [1, 2, 3, 7, 61] {
            assert_eq!(in_pieces(&program, size, &mill), whole, "{}", String::from_utf8_lossy(&program));
        }
        if !has_calls(&program) {
            let at_once: Vec<_> = ProgramCheck::new(&program, &mill, &CheckOptions::default()).collect();
            assert_eq!(at_once, whole);
        }
    }
}

/// Bytes of programs that were changed at random: whatever they say, there is an end to it.
#[test]
fn any_bytes_are_checked() {
    let programs = programs();
    let dialects = [mill(), Dialect::rs274ngc(), Dialect::unset()];
    let mut random = Random(0x1234_5678_9ABC_DEF1);
    for _ in 0..20_000 {
        let mut program = programs[random.next(programs.len() as u64) as usize].clone();
        for _ in 0..=random.next(6) {
            let other = &programs[random.next(programs.len() as u64) as usize];
            let at = random.next(program.len() as u64 + 1) as usize;
            match random.next(4) {
                0 => program.insert(at, random.next(256) as u8),
                1 if at < program.len() => {
                    program[at] = b"GMXYZRFSTLPQ0123456789.-#[]/%()\n "[random.next(33) as usize]
                }
                2 if at < program.len() => drop(program.remove(at)),
                _ => {
                    let from = random.next(other.len() as u64) as usize;
                    let to = (from + random.next(40) as usize).min(other.len());
                    program.splice(at..at, other[from..to].iter().copied());
                }
            }
        }
        let dialect = &dialects[random.next(3) as usize];
        let mut options = CheckOptions::default();
        options.block_delete = random.next(2) == 1;
        options.leave_macros = random.next(4) == 0;
        for event in ProgramCheck::new(&program, dialect, &options) {
            if let Event::Finding(finding) = event {
                assert!(finding.end_column() >= finding.column(), "{finding}");
                assert!(!finding.to_string().contains('{'), "{finding}");
            }
        }
    }
}

#[test]
fn a_check_fits_into_a_tenth_of_a_megabyte() {
    assert!(size_of::<Checker>() < 100_000, "{}", size_of::<Checker>());
}

/// Calls in calls would run for ever: the text is run a number of times that grows with its length, and no longer.
#[test]
fn calls_without_end_come_to_one() {
    let mut program = String::from("G21 G90 G94\nM98 P1 L9999\nM30\n");
    for place in 1..9 {
        program += &format!("O{place}\nM98 P{} L9999\nM99\n", place + 1);
    }
    program += "O9\nX1.\nM99\n";
    let events = ProgramCheck::new(program.as_bytes(), &mill(), &CheckOptions::default());
    let told = |event: &Event| matches!(event, Event::Finding(finding) if finding.id().name() == "recursion-limit");
    assert!(events.filter(told).count() > 0);
}

/// What the library writes, with a header as posts write it.
struct Written {
    thread: Thread,
    rpm: i64,
    blocks: Vec<String>,
    comment: String,
}

fn written(random: &mut Random, threads: &[Thread]) -> Option<Written> {
    let mut thread = threads[random.next(threads.len() as u64) as usize];
    if thread.form().is_pipe() || thread.major_mm() > Length::integer(40) {
        return None;
    }
    let comment = if random.next(4) == 0 {
        thread = Thread::read(format!("{thread}-LH").as_bytes()).ok()?;
        format!("TAP {thread}")
    } else {
        format!("TAP {thread}")
    };
    let unit = if random.next(2) == 0 { Unit::Mm } else { Unit::Inch };
    let mode = if random.next(2) == 0 { FeedMode::PerMinute } else { FeedMode::PerRevolution };
    let rpm = 100 + random.next(900) as i64;
    let speed = (mode == FeedMode::PerMinute).then(|| Length::integer(rpm));
    let decimals = if mode == FeedMode::PerMinute { 4 } else { 6 };
    let made = feed(thread.lead_mm(), speed, unit, mode, decimals).ok()?;
    let depth = thread.pitch_mm().times(Length::integer(4 + random.next(8) as i64)).ok()?;
    let r_plane = thread.lead_mm().times(Length::integer(4)).ok()?;
    let mill = mill();
    let request = CycleRequest {
        dialect: &mill,
        thread: &thread,
        feed: &made,
        rpm: Length::integer(rpm),
        depth_mm: depth,
        r_plane_mm: r_plane,
        holder: Holder::Rigid,
        peck_mm: None,
        dwell_s: None,
        retract_factor: None,
        return_to: ReturnTo::RPlane,
    };
    let cycle = cycle(&request).ok()?.ok()?;
    let blocks = cycle.blocks().map(|block| block.as_str().to_owned()).collect();
    Some(Written { thread, rpm, blocks, comment })
}

impl Written {
    fn program(&self) -> String {
        let head = ["G17 G40 G80".to_owned(), format!("T1 M6 ({})", self.comment), "G43 H1".to_owned()];
        let tail = ["M30".to_owned()];
        let blocks = self.blocks.iter().cloned();
        head.into_iter().chain(blocks).chain(tail).map(|line| line + "\n").collect()
    }
}

/// Errors and warnings; what posts leave to the operator's own words is no matter here.
fn told(program: &str) -> Vec<ProgramFinding> {
    ProgramCheck::new(program.as_bytes(), &mill(), &CheckOptions::default())
        .filter_map(|event| match event {
            Event::Finding(finding) if finding.severity() != Severity::Info => Some(finding),
            _ => None,
        })
        .collect()
}

fn cases() -> usize {
    std::env::var("THREADCALC_CASES").map_or(2_000, |text| text.parse().expect("a number of cases"))
}

#[test]
fn what_the_library_writes_checks_clean_and_one_fault_is_found_and_named() {
    let threads: Vec<_> = standard_threads(None, None).collect();
    let mut random = Random(0x0DDB_1A5E_5BAD_5EED);
    let (mut clean, mut faults) = (0, [0_usize; 7]);
    while clean < cases() {
        let Some(written) = written(&mut random, &threads) else { continue };
        let program = written.program();
        let findings = told(&program);
        assert!(findings.is_empty(), "{program}{findings:#?}");
        clean += 1;
        let fault = random.next(7) as usize;
        let Some((faulty, ids)) = with_fault(&written, &program, fault) else { continue };
        let findings = told(&faulty);
        let named = findings.iter().any(|finding| ids.contains(&finding.id().name()));
        assert!(named, "fault {fault} of {ids:?} in\n{faulty}{findings:#?}");
        faults[fault] += 1;
    }
    assert!(faults.iter().all(|count| *count > cases() / 60), "{faults:?}");
}

/// The program with one fault of a kind, and the ids that may name it.
fn with_fault(written: &Written, program: &str, fault: usize) -> Option<(String, &'static [&'static str])> {
    let line = program.lines().find(|line| line.contains("G84") || line.contains("G74"))?;
    let feed = line.split(' ').find(|word| word.starts_with('F'))?;
    let per_minute = program.contains("G94");
    Some(match fault {
        0 if per_minute => {
            let speed = format!("S{}", written.rpm);
            (program.replace(&speed, &format!("S{}", written.rpm * 2)), &["lead-mismatch", "feed-mode-mix"])
        }
        1 => {
            let value: f64 = feed[1..].parse().ok()?;
            (program.replace(feed, &format!("F{:.4}", value * 1.3)), &["lead-mismatch"])
        }
        2 => {
            let (from, to) = if program.contains("G21") { ("G21", "G20") } else { ("G20", "G21") };
            (program.replace(from, to), &["inch-metric-mix"])
        }
        3 if written.rpm > 150 => {
            let (from, to) = if per_minute { ("G94", "G95") } else { ("G95", "G94") };
            (program.replace(from, to), &["feed-mode-mix"])
        }
        4 => {
            let (from, to) = if written.thread.hand() == Hand::Left { ("G74", "G84") } else { ("G84", "G74") };
            (program.replace(from, to), &["wrong-hand"])
        }
        5 => {
            let z = line.split(' ').find(|word| word.starts_with('Z'))?;
            (program.replace(z, "Z-0.001"), &["depth-implausible"])
        }
        6 => (program.replace("G80\nM30", "M30"), &["cycle-not-cancelled"]),
        _ => return None,
    })
}
