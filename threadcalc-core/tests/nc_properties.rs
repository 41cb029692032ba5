//! What a check of programs does for every program: drawn ones are clean, and a seeded fault is named.
//!
//! `THREADCALC_NC_CASES` sets the number of cases; 2,000 if it is not set.

#[path = "support/random.rs"]
mod random;

use random::Random;
use threadcalc_core::nc::{CheckOptions, Checker, Event, ProgramCheck, ProgramFindingId};
use threadcalc_core::{
    CycleRequest, Dialect, FeedMode, Hand, Holder, Length, ReturnTo, Rounding, Severity, Thread, Unit, Value, cycle,
    feed, read_comment, standard_threads,
};

fn cases() -> u64 {
    std::env::var("THREADCALC_NC_CASES").ok().map_or(2_000, |cases| cases.parse().unwrap())
}

const MILL: &str = "tap_rh=G84 tap_lh=G74 feed_per_revolution=G95 feed_basis=by_mode needs_spindle_running=false";
const RIGID: &str = "tap_rh=G84 tap_lh=G74 feed_per_revolution=G95 feed_basis=by_mode needs_spindle_running=false \
    rigid_tap_code=M135 rigid_tap_code_has_s=true";
const BY_SPINDLE: &str = "tap_rh=G84 lh_by_spindle_direction=true feed_per_revolution=G95 feed_basis=by_mode";

fn dialect(fields: &str) -> Dialect {
    let mut dialect = Dialect::unset();
    for (key, value) in fields.split_whitespace().map(|pair| pair.split_once('=').unwrap()) {
        dialect.set(key, Value::Text(value.as_bytes())).unwrap();
    }
    dialect
}

/// A drawn tapped hole, and its program: the library's own cycle with a small header.
struct Drawn {
    dialect: Dialect,
    thread: Thread,
    unit: Unit,
    mode: FeedMode,
    rpm: Length,
    lines: Vec<String>,
}

impl Drawn {
    fn text(&self) -> String {
        self.lines.join("\n") + "\n"
    }

    /// The place of the cycle's line.
    fn at_cycle(&self) -> usize {
        self.lines.iter().position(|line| line.contains("Z-")).unwrap()
    }

    /// The program with another word for the one of this letter in the cycle's line.
    fn with_word(&self, letter: char, word: &str) -> String {
        let mut lines = self.lines.clone();
        let cycle = &mut lines[self.at_cycle()];
        let words = cycle.split(' ').map(|old| if old.starts_with(letter) { word } else { old });
        *cycle = words.collect::<Vec<_>>().join(" ");
        lines.join("\n") + "\n"
    }

    /// The feed of the mode in the unit of the program.
    fn feed_of(&self, mode: FeedMode) -> Length {
        let lead = self.thread.lead_mm();
        let lead = if self.unit == Unit::Inch { lead.over(Length::INCH).unwrap() } else { lead };
        if mode == FeedMode::PerRevolution { lead } else { lead.times(self.rpm).unwrap() }
    }
}

/// F with a point, in six decimals.
fn word_of(feed: Length) -> String {
    let written = feed.round_to(6, Rounding::HalfEven).unwrap().to_length().unwrap();
    format!("F{written}{}", if written.whole().is_some() { "." } else { "" })
}

fn draw(random: &mut Random, threads: &[Thread]) -> Drawn {
    let mut pick = |count: u64| random.pick(count);
    let right = threads[pick(threads.len() as u64) as usize];
    let which = pick(4);
    let dialect = [Dialect::rs274ngc(), dialect(MILL), dialect(RIGID), dialect(BY_SPINDLE)][which as usize];
    let is_left = pick(4) == 0 && which != 0;
    let thread = if is_left { Thread::read(format!("{right}-LH").as_bytes()).unwrap() } else { right };
    let mode = if pick(2) == 0 || which == 0 { FeedMode::PerMinute } else { FeedMode::PerRevolution };
    let unit = if pick(2) == 0 { Unit::Mm } else { Unit::Inch };
    // No power of ten: there a feed per minute is the lead with its point elsewhere.
    let rpm = Length::integer(101 + pick(800) as i64);
    let lead = thread.lead_mm();
    let turns = |turns: u64| lead.times(Length::integer(turns as i64)).unwrap();
    let most = thread.major_mm().times(Length::integer(10)).unwrap();
    let depth = turns(3 + pick(12));
    let decimals = if mode == FeedMode::PerMinute { 4 } else { 6 };
    let made = feed(lead, (mode == FeedMode::PerMinute).then_some(rpm), unit, mode, decimals).unwrap();
    let request = CycleRequest {
        dialect: &dialect,
        thread: &thread,
        feed: &made,
        rpm,
        depth_mm: if depth > most { most } else { depth },
        r_plane_mm: turns(3 + pick(4)),
        holder: [Holder::Rigid, Holder::TensionCompression, Holder::Floating][pick(3) as usize],
        peck_mm: None,
        dwell_s: None,
        retract_factor: None,
        return_to: if pick(2) == 0 { ReturnTo::RPlane } else { ReturnTo::Initial },
    };
    // The check is not told of the holder: only what taps rigidly has the code for it.
    let request = CycleRequest { holder: if which == 2 { Holder::Rigid } else { request.holder }, ..request };
    let words = cycle(&request).unwrap().unwrap_or_else(|refused| panic!("{thread}: {refused}"));
    let blocks: Vec<String> = words.blocks().map(|block| block.as_str().to_string()).collect();
    let (first, rest) = blocks.split_first().unwrap();
    let mut lines = vec!["%".into(), format!("O{}", 1 + pick(9000)), first.clone()];
    lines.extend([format!("T1 M6 (TAP {thread})"), "G0 G54 X1. Y1.".into(), "G43 H1 Z90.".into()]);
    // Another hole behind the first.
    let hole = |line: &String| if line.contains("Z-") { vec![line.clone(), "X9.".into()] } else { vec![line.clone()] };
    lines.extend(rest.iter().flat_map(hole));
    lines.extend(["G0 Z90. M5".into(), "M30".into(), "%".into()]);
    Drawn { dialect, thread, unit, mode, rpm, lines }
}

fn events(text: &[u8], dialect: &Dialect) -> Vec<Event> {
    ProgramCheck::new(text, dialect, &CheckOptions::default()).collect()
}

/// The errors and warnings, with what was read in the first hole.
fn found(text: &str, dialect: &Dialect) -> Vec<ProgramFindingId> {
    let severe = |event: &Event| match event {
        Event::Finding(finding) if finding.severity() != Severity::Info => Some(finding.id()),
        _ => None,
    };
    events(text.as_bytes(), dialect).iter().filter_map(severe).collect()
}

#[test]
fn own_cycles_are_clean_and_a_seeded_fault_is_named() {
    // `G5` and `G1` are no threads in a comment; taper threads have a depth of their own.
    let is_told = |thread: &Thread| {
        let comment = read_comment(format!("TAP {thread}").as_bytes(), false);
        comment.threads().next().is_some_and(|found| found.thread == *thread)
    };
    let threads: Vec<_> = standard_threads(None, None).filter(|it| !it.form().is_taper() && is_told(it)).collect();
    assert!(threads.len() > 300, "{}", threads.len());
    let mut random = Random(20_261_127);
    let mut seeded = [0_u32; 12];
    for _ in 0..cases() {
        let drawn = draw(&mut random, &threads);
        let text = drawn.text();
        assert_eq!(found(&text, &drawn.dialect), [], "{text}");
        for (kind, (text, id)) in faults(&drawn).into_iter().enumerate().filter_map(|(at, fault)| Some((at, fault?))) {
            let found = found(&text, &drawn.dialect);
            assert!(found.contains(&id), "{} is not in {found:?} of\n{text}", id.name());
            let of_lead = |id: &&ProgramFindingId| {
                use ProgramFindingId::{DecimalPoint, FeedModeMix, FeedRounded, InchMetricMix, LeadMismatch};
                [DecimalPoint, FeedModeMix, FeedRounded, InchMetricMix, LeadMismatch].contains(id)
            };
            assert!(
                found.iter().filter(of_lead).all(|other| *other == id),
                "{found:?} beside {} of\n{text}",
                id.name()
            );
            seeded[kind] += 1;
        }
    }
    assert!(seeded.iter().all(|count| *count > 0), "{seeded:?}");
}

/// One fault of each kind that this program can have.
fn faults(drawn: &Drawn) -> [Option<(String, ProgramFindingId)>; 12] {
    let Drawn { dialect, mode, rpm, thread, .. } = drawn;
    let per_minute = *mode == FeedMode::PerMinute;
    let feed = drawn.feed_of(*mode);
    let times = |factor: Length| drawn.with_word('F', &word_of(feed.times(factor).unwrap()));
    let lines = |change: &dyn Fn(&mut Vec<String>)| {
        let mut lines = drawn.lines.clone();
        change(&mut lines);
        lines.join("\n") + "\n"
    };
    let other = if per_minute { FeedMode::PerRevolution } else { FeedMode::PerMinute };
    let at = drawn.at_cycle();
    let cancel = at + 2;
    let slower = rpm.whole().unwrap() * 7 / 10;
    let stale = lines(&|lines| lines.insert(at + 1, format!("S{slower}")));
    let ten = feed.times(Length::integer(10)).unwrap().whole();
    let hundred = feed.times(Length::integer(1000)).unwrap().whole();
    let without_point = if per_minute { ten } else { hundred };
    let turned =
        if thread.hand() == Hand::Left { thread.to_string().replace("-LH", "") } else { format!("{thread}-LH") };
    let named = format!("TAP {thread})");
    let has_code = dialect.rigid_tap_code.is_some();
    [
        per_minute.then_some((stale, ProgramFindingId::StaleFeedAfterSpeedChange)),
        Some((times(Length::new(11, 10).unwrap()), ProgramFindingId::LeadMismatch)),
        Some((times(Length::INCH), ProgramFindingId::InchMetricMix)),
        Some((times(Length::ONE.over(Length::INCH).unwrap()), ProgramFindingId::InchMetricMix)),
        Some((drawn.with_word('F', &word_of(drawn.feed_of(other))), ProgramFindingId::FeedModeMix)),
        without_point.map(|number| (drawn.with_word('F', &format!("F{number}")), ProgramFindingId::DecimalPoint)),
        Some((
            lines(&|lines| lines[3] = lines[3].replace(&named, &format!("TAP {turned})"))),
            ProgramFindingId::WrongHand,
        )),
        Some((drawn.with_word('Z', "Z89."), ProgramFindingId::CycleGeometry)),
        Some((drawn.with_word('Z', "Z-8888."), ProgramFindingId::DepthImplausible)),
        Some((lines(&|lines| lines[cancel] = "T2 M6".into()), ProgramFindingId::CycleNotCancelled)),
        has_code.then(|| {
            (lines(&|lines| lines.retain(|line| !line.contains("M135"))), ProgramFindingId::RigidTapCodeMissing)
        }),
        dialect
            .tap_lh
            .is_none()
            .then(|| (lines(&|lines| lines[at] = lines[at].replace("G84", "G74")), ProgramFindingId::CodeNotOnControl)),
    ]
}

fn in_pieces(text: &[u8], size: usize, dialect: &Dialect) -> Vec<Event> {
    let mut checker = Checker::new(dialect, &CheckOptions::default());
    let mut events = Vec::new();
    for mut piece in text.chunks(size) {
        while !piece.is_empty() {
            piece = &piece[checker.read(piece)..];
            events.extend(std::iter::from_fn(|| checker.next_event()));
        }
    }
    checker.finish();
    events.extend(std::iter::from_fn(|| checker.next_event()));
    events
}

fn samples() -> Vec<Vec<u8>> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/nc");
    let mut paths: Vec<_> = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.retain(|path| path.extension().is_some_and(|end| end == "nc"));
    paths.sort();
    paths.iter().map(|path| std::fs::read(path).unwrap()).collect()
}

/// A sample with bytes changed, left out and moved, or nothing but random bytes.
fn mutated(random: &mut Random, samples: &[Vec<u8>]) -> Vec<u8> {
    if random.pick(8) == 0 {
        return (0..random.pick(300)).map(|_| random.next() as u8).collect();
    }
    let mut text = samples[random.pick(samples.len() as u64) as usize].clone();
    for _ in 0..random.pick(6) {
        let at = random.pick(text.len() as u64) as usize;
        let other = &samples[random.pick(samples.len() as u64) as usize];
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

#[test]
fn pieces_and_the_whole_are_judged_alike() {
    let samples = samples();
    let mut random = Random(7);
    let dialects = [dialect(MILL), Dialect::rs274ngc(), Dialect::unset()];
    for case in 0..cases() {
        let text = mutated(&mut random, &samples);
        let dialect = &dialects[case as usize % 3];
        // None of these knows a code that calls.
        let whole = events(&text, dialect);
        for size in [1, 1 + random.pick(40) as usize, text.len().max(1)] {
            let pieces = in_pieces(&text, size, dialect);
            assert!(whole == pieces, "pieces of {size}: {whole:#?}\n{pieces:#?}\n{}", String::from_utf8_lossy(&text));
        }
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
    let samples = samples();
    let mut random = Random(8);
    for case in 0..cases() {
        let text = mutated(&mut random, &samples);
        let dialect = if case % 2 == 0 { with_calls() } else { Dialect::unset() };
        events(&text, &dialect).iter().for_each(|event| is_sound(event, &text));
    }
}

fn with_calls() -> Dialect {
    let mut dialect = dialect(MILL);
    for (key, code) in [("subprogram_call", "M98"), ("subprogram_return", "M99"), ("repeat_word", "L")] {
        dialect.set(key, Value::Text(code.as_bytes())).unwrap();
    }
    dialect
}

fn holes(text: &str) -> usize {
    let is_hole = |event: &Event| matches!(event, Event::Hole(_));
    ProgramCheck::new(text.as_bytes(), &with_calls(), &CheckOptions::default()).filter(is_hole).count()
}

#[test]
fn calls_without_end_are_followed_as_far_as_the_text_is_long() {
    let most = |text: &str| 100_000 + text.len();
    let head = "G21 G90 G94 S500\nG84 Z-9. R5. F500. L0\n";
    let texts = [
        format!("{head}M98 P7 L99999999\nM30\nO7\nX1.\nM99\n"),
        format!("{head}M98 P7 L9999\nM30\nO7\nM98 P8 L9999\nM99\nO8\nX1.\nM98 P9 L9999\nM99\nO9\nX2.\nM99\n"),
        format!("{head}M98 P7\nM30\nO7\nX1.\nM98 P7 L9999\nM99\n"),
        format!("{head}{}M30\nO7\nX1.\nM98 P7 L9\nM99\n", "M98 P7\n".repeat(500)),
    ];
    for text in texts {
        let holes = holes(&text);
        assert!(holes > 0 && holes <= most(&text), "{holes} holes of\n{text}");
    }
}

#[test]
fn blocks_with_a_slash_cost_what_others_do() {
    // Every block is another branch: each is judged once with the switch on and once with it off.
    let text = format!("G21 G90 G94 S500\nG84 Z-9. R5. F500.\n{}G80\nM30\n", "/S400\n/X1.\n/S500\nX2.\n".repeat(500));
    let told = events(text.as_bytes(), &dialect(MILL));
    let holes = told.iter().filter(|event| matches!(event, Event::Hole(_))).count();
    assert_eq!(holes, 1_001);
    assert!(told.len() < 5 * holes, "{} events", told.len());
}

#[test]
fn a_check_has_a_fixed_size() {
    let size = size_of::<Checker>();
    println!("a checker is {size} bytes");
    assert!(size < 100_000, "{size} bytes");
}
