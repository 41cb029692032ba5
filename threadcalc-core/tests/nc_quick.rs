//! The quick way over lines that only move finds what the slow one finds.
//!
//! Lines are passed over in steps of sixty-four bytes: a program in pieces of fewer is read block by block. Where
//! calls are followed the whole text is at hand; there, small letters keep a line from being passed over.
//!
//! `THREADCALC_NC_PROGRAMS` sets the number of programs; 1,000 if it is not set.

#[path = "support/random.rs"]
mod random;

use std::fmt::Write;
use std::fs;

use random::Random;
use threadcalc_core::nc::{CheckOptions, Checker, Event, ProgramCheck, Unchecked};
use threadcalc_core::{Dialect, Length, Value};

fn programs() -> u64 {
    std::env::var("THREADCALC_NC_PROGRAMS").ok().map_or(1_000, |count| count.parse().unwrap())
}

fn dialect(base: Dialect, fields: &str) -> Dialect {
    let mut dialect = base;
    for (key, value) in fields.split_whitespace().map(|pair| pair.split_once('=').unwrap()) {
        dialect.set(key, Value::Text(value.as_bytes())).unwrap_or_else(|error| panic!("{key}: {error}"));
    }
    dialect
}

fn dialects() -> [Dialect; 6] {
    let mill = "tap_rh=G84 tap_lh=G74 feed_per_revolution=G95 feed_mode_default=per_minute feed_basis=by_mode \
        repeat_word=L peck_word=Q dwell_word=P dwell_unit=s subprogram_call=M98 subprogram_return=M99";
    let increments = "no_point=least_increment least_increment.axis.mm=0.001 least_increment.F_per_min.mm=1 \
        max_block_chars=40 stroke_code=G33 lead_word=K";
    [
        dialect(Dialect::unset(), mill),
        Dialect::rs274ngc(),
        Dialect::unset(),
        dialect(dialect(Dialect::unset(), mill), increments),
        dialect(dialect(Dialect::unset(), mill), "rapid_cancels_cycle=false max_block_chars=90 semicolon_comment=true"),
        // G1 taps, and a move is another code: nothing may be passed over.
        dialect(dialect(Dialect::unset(), mill), "tap_rh=G1 mirror_on=G3 scale_on=G2"),
    ]
}

type Found = (Vec<Event>, Vec<Unchecked>);

fn in_pieces(program: &[u8], sizes: &mut dyn FnMut() -> usize, dialect: &Dialect, options: &CheckOptions) -> Found {
    let mut events = Vec::new();
    let mut checker = Checker::new(dialect, options);
    let mut rest = program;
    while !rest.is_empty() {
        let (mut piece, behind) = rest.split_at(sizes().clamp(1, rest.len()));
        while !piece.is_empty() {
            piece = &piece[checker.read(piece)..];
            events.extend(std::iter::from_fn(|| checker.next_event()));
        }
        rest = behind;
    }
    checker.finish();
    events.extend(std::iter::from_fn(|| checker.next_event()));
    let not_checked = checker.not_checked().collect();
    (events, not_checked)
}

fn whole(program: &[u8], dialect: &Dialect, options: &CheckOptions) -> Found {
    let mut check = ProgramCheck::new(program, dialect, options);
    let events = check.by_ref().collect();
    let not_checked = check.not_checked().collect();
    (events, not_checked)
}

/// The program with its axes in small letters, outside comments: the same words at the same places.
fn small(program: &[u8]) -> Vec<u8> {
    let mut in_comment = false;
    let small = program.iter().map(|byte| {
        in_comment = match byte {
            b'(' | b';' => true,
            b')' | b'\n' | b'\r' => false,
            _ => in_comment,
        };
        if !in_comment && b"GXYZFIJKRN".contains(byte) { byte.to_ascii_lowercase() } else { *byte }
    });
    small.collect()
}

fn options(random: &mut Random) -> CheckOptions {
    let mut options = CheckOptions::default();
    options.block_delete = random.pick(4) == 0;
    options.leave_macros = random.pick(4) == 0;
    options.surface_z_mm = (random.pick(3) == 0).then(|| Length::integer(2));
    options
}

/// The first that is found otherwise, with the program.
fn assert_same(found: &Found, slow: &Found, program: &[u8], how: &str) {
    if found == slow {
        return;
    }
    let text = String::from_utf8_lossy(program);
    let longest = found.0.len().max(slow.0.len());
    let event = (0..longest).map(|at| (found.0.get(at), slow.0.get(at))).find(|(found, slow)| found != slow);
    panic!("{text}\n{how}: {event:#?}\nnot checked {:?}\nslowly {:?}", found.1, slow.1);
}

/// Every way of handing it over against the slow one.
fn compare(program: &[u8], random: &mut Random, dialect: &Dialect, options: &CheckOptions) {
    let slow = in_pieces(program, &mut || 63, dialect, options);
    let size = 1 + random.pick(400) as usize;
    let mut drawn = Random(random.next());
    let sizes: [(&str, &mut dyn FnMut() -> usize); 3] = [
        ("at once", &mut || usize::MAX),
        ("in pieces of one size", &mut || size),
        ("in pieces of any size", &mut || 1 + drawn.pick(300) as usize),
    ];
    for (how, sizes) in sizes {
        assert_same(&in_pieces(program, sizes, dialect, options), &slow, program, how);
    }
    let with_calls = [program, &small(program)].map(|program| whole(program, dialect, options));
    assert_same(&with_calls[0], &with_calls[1], program, "with calls");
}

/// What is no plain number, or a long one.
const NUMBERS: [&str; 14] = [
    ".",
    "-",
    "1.2.3",
    "",
    "1-2",
    "1 2.",
    "[1+2]",
    "12345678.",
    "#1",
    "--1",
    "-.",
    "1..2",
    "1234567890123456789",
    ".0000000000000000001",
];

struct Draft {
    text: String,
    random: Random,
    end: &'static str,
}

impl Draft {
    fn new(random: &mut Random) -> Self {
        let end = ["\n", "\n", "\r\n", "\r\n", "\r"][random.pick(5) as usize];
        Self { text: String::new(), random: Random(random.next()), end }
    }

    fn pick(&mut self, count: u64) -> u64 {
        self.random.pick(count)
    }

    fn line(&mut self, line: &str) {
        self.text.push_str(line);
        // Now and then a line ends otherwise.
        let end = if self.pick(400) == 0 { self.of(&["\n", "\r\n", "\r"]) } else { self.end };
        self.text.push_str(end);
    }

    fn of(&mut self, list: &[&'static str]) -> &'static str {
        list[self.pick(list.len() as u64) as usize]
    }

    fn line_of(&mut self, lines: &[&'static str]) {
        let line = self.of(lines);
        self.line(line);
    }

    fn number(&mut self) -> String {
        let (whole, part) = (self.pick(400), self.pick(10_000));
        let sign = self.of(&["", "", "-"]);
        match self.pick(40) {
            0 => format!("{sign}{whole}"),
            1 => format!("{sign}.{part}"),
            2 => format!("{sign}{whole}."),
            3 => format!("+{whole}.5"),
            4 => format!("{sign}{whole:08}.{part:09}"),
            5 => format!("{sign}0000{whole}.{part}0"),
            6 => self.of(&NUMBERS).into(),
            _ => format!("{sign}{whole}.{part}"),
        }
    }

    /// A move as CAM systems write it, or nearly.
    fn moves(&mut self, count: u64) {
        let style = self.pick(6);
        let blank = self.of(&["", " ", " ", "  "]);
        for _ in 0..count {
            let mut line = String::new();
            if style == 1 || self.pick(60) == 0 {
                write!(line, "N{}{blank}", self.pick(99_999)).unwrap();
            }
            if self.pick(6) == 0 {
                let code = if self.pick(8) == 0 {
                    self.of(&["G1.", "G4", "G001", "G10", "G04", "G-1", "G03", "G5", "G1.0", "G80"])
                } else {
                    self.of(&["G0", "G1", "G2", "G3", "G01", "G00"])
                };
                write!(line, "{code}{blank}").unwrap();
            }
            for letter in "XYZIJKRF".chars() {
                let likely = if "XYZ".contains(letter) { 2 } else { 12 };
                if self.pick(likely) == 0 {
                    write!(line, "{letter}{}{blank}", self.number()).unwrap();
                }
            }
            match self.pick(120) {
                0 => line.push_str("X1."),
                1 => line.push_str("M8"),
                2 => line.push_str("(TAP M6)"),
                3 => line.push_str(";X1"),
                4 => line.insert(0, '/'),
                5 => line.push_str("N7"),
                6 => line.push_str("   "),
                7 => line.push_str("A30."),
                8 => line = "N5".into(),
                9 => line.push_str(&" ".repeat(self.pick(300) as usize)),
                10 => line.push('\u{e9}'),
                11 => line = "%".into(),
                12 => line = " X2.".into(),
                13 => line.push_str("S900"),
                _ => {}
            }
            self.line(&line);
        }
    }

    fn tapping(&mut self) {
        let tool = self.pick(9) + 1;
        let name = self.of(&["TAP M6", "TAP M8X1.25", "DRILL 5.", "ENDMILL 8", "M6-6H", "ROLL TAP 1/4-20"]);
        match self.pick(3) {
            0 => {
                self.line(&format!("({name})"));
                self.moves_or_none();
                self.line_of(&["N20", "N20 G1", "(SHEET 2)", "M5"]);
                self.line(&format!("T{tool} M6"));
            }
            1 => self.line(&format!("T{tool} M6 ({name})")),
            _ => {
                self.line(&format!("T{tool} ({name})"));
                self.moves_or_none();
                self.line("M6");
            }
        }
        let lines =
            ["G43 H1 Z5.", "S500 M3", "G95", "G94", "G20", "G91", "G90", "G80", "M29 S500", "G54", "G68 X0 Y0 R5."];
        for line in lines {
            if self.pick(3) == 0 {
                self.line(line);
            }
        }
        self.moves_or_none();
        let code = self.of(&["G84", "G84", "G74", "G81", "G83"]);
        let feed = self.of(&["F500.", "F1.", "F625.", "F1.25", "", "F#2"]);
        let first = format!("{code} X{} Y{} Z-12. R3. {feed}", self.pick(9), self.pick(9));
        self.line(&first);
        for _ in 0..self.pick(5) {
            let place = format!("X{}. Y{}.", self.pick(9), self.pick(9));
            self.line(&place);
        }
        match self.pick(4) {
            0 => self.line("G0 Z50."),
            1 => {}
            _ => self.line("G80"),
        }
    }

    fn moves_or_none(&mut self) {
        if self.pick(4) == 0 {
            let count = self.pick(30);
            self.moves(count);
        }
    }

    fn program(mut self) -> Vec<u8> {
        self.line("%");
        self.line("O1 (PLATE, M10 HOLES)");
        self.line_of(&["G17 G21 G90 G94", "G20 G90", "G21", "N1 G90 G95"]);
        for _ in 0..1 + self.pick(3) {
            match self.pick(8) {
                0 => self.line("#1=4. #2=500."),
                1 => self.line_of(&["M98 P7", "M98 P7 L2", "M98 P8"]),
                _ => {}
            }
            if self.pick(3) != 0 {
                self.line("G1 Z-1. F900.");
            }
            let count = self.pick(80);
            self.moves(count);
            if self.pick(2) == 0 {
                self.tapping();
            }
            self.moves_or_none();
        }
        self.line_of(&["M30", "M2", "M99", ""]);
        if self.pick(3) == 0 {
            self.line("O7");
            self.moves_or_none();
            self.line("G84 X5. Z-3. R2. F500.");
            self.line("G80 G1 F200.");
            let count = self.pick(20);
            self.moves(count);
            self.line("M99");
        }
        if self.pick(2) == 0 {
            self.line("%");
        }
        self.text.into_bytes()
    }
}

const BYTES: &[u8] = b"NGXYZFIJKRMST0123456789.-+ \t\r\n(/%#;Ax\x00\xC3";

/// Bytes changed, put in and taken out, and lines cut off.
fn mutate(program: &mut Vec<u8>, random: &mut Random) {
    for _ in 0..1 + random.pick(6) {
        let at = random.pick(program.len() as u64 + 1) as usize;
        let byte = BYTES[random.pick(BYTES.len() as u64) as usize];
        match random.pick(5) {
            0 => program.insert(at, byte),
            1 if at < program.len() => drop(program.remove(at)),
            2 if at < program.len() => program[at] = byte,
            3 if at < program.len() => program[at] ^= 1 << random.pick(8),
            _ => {
                let end = program[at..].iter().position(|byte| *byte == b'\n').map_or(program.len(), |end| at + end);
                drop(program.drain(at..end));
            }
        }
    }
}

#[test]
fn drawn_programs_are_checked_alike() {
    let dialects = dialects();
    let mut random = Random(20_261_127);
    let (mut events, mut holes) = (0, 0);
    for count in 0..programs() {
        let mut program = Draft::new(&mut random).program();
        if count % 2 == 1 {
            mutate(&mut program, &mut random);
        }
        let dialect = &dialects[random.pick(dialects.len() as u64) as usize];
        let options = options(&mut random);
        compare(&program, &mut random, dialect, &options);
        let found = whole(&program, dialect, &options).0;
        events += found.len();
        holes += found.iter().filter(|event| matches!(event, Event::Hole(_))).count();
    }
    // Programs at which nothing is found would prove nothing.
    assert!(events as u64 > programs() && holes as u64 > programs(), "{events} events, {holes} holes");
}

/// The programs of `tests/nc` and of the reference table, each behind and before a run of moves.
#[test]
fn known_programs_are_checked_alike() {
    let root = concat!(env!("CARGO_MANIFEST_DIR"), "/../tests");
    let files = fs::read_dir(format!("{root}/nc")).unwrap().map(|entry| entry.unwrap().path());
    let files = files.filter(|path| path.extension().is_some_and(|ending| ending == "nc"));
    let mut programs: Vec<_> = files.map(|path| fs::read(path).unwrap()).collect();
    let table = fs::read_to_string(format!("{root}/reference/nc_check.csv")).unwrap();
    let rows = table.lines().filter(|line| !line.starts_with('#')).skip(1);
    programs.extend(rows.map(|row| row.split(',').nth(1).unwrap().replace(" | ", "\n").into_bytes()));
    assert!(programs.len() > 150);
    let moves = "X1.5 Y-2.25\nX12.125 Y3.5 Z-.25\nG2 X3. Y4. I1. J-2.\nG1 X5.25 F700.\n".repeat(4);
    let mut random = Random(7);
    let dialects = dialects();
    for (count, program) in programs.into_iter().enumerate() {
        let text = String::from_utf8_lossy(&program).into_owned();
        let ahead = format!("G90\nG1 Z-1. F300.\n{moves}{text}");
        let inside = text.replacen('\n', &format!("\nG1 F450.\n{moves}G0 Z5.\n"), 2);
        let behind = text.replacen("G80", &format!("G80\n{moves}G80"), 3);
        for text in [program, ahead.into_bytes(), inside.into_bytes(), behind.into_bytes()] {
            for dialect in [&dialects[0], &dialects[1 + count % 5]] {
                compare(&text, &mut random, dialect, &CheckOptions::default());
            }
            if count % 16 == 0 {
                let slow = in_pieces(&text, &mut || 1, &dialects[0], &CheckOptions::default());
                for size in 2..=130 {
                    let found = in_pieces(&text, &mut || size, &dialects[0], &CheckOptions::default());
                    assert_same(&found, &slow, &text, "in pieces of every size");
                }
            }
        }
    }
}
