//! Programs that are drawn: lines by the grammar of programs, known programs that were changed, and bytes.

use super::random::Random;

/// Known programs, and the lines of all of them.
pub struct Known {
    programs: Vec<Vec<u8>>,
    lines: Vec<Vec<u8>>,
}

const MODAL: &[&str] = &[
    "G17", "G18", "G19", "G20", "G21", "G40", "G41", "G42", "G43", "G49", "G50", "G51", "G50.1", "G51.1", "G52", "G53",
    "G54", "G55", "G68", "G69", "G70", "G71", "G80", "G90", "G91", "G92", "G93", "G94", "G95", "G96", "G97", "G98",
    "G99", "G0", "G1", "G2", "G3", "G4", "G10", "G28", "G30", "G5.1", "G187", "M0", "M1", "M2", "M3", "M4", "M5", "M6",
    "M8", "M19", "M30", "M135", "g84", "m3",
];
const CYCLES: &[&str] = &[
    "G84", "G84", "G84", "G74", "G74", "G84.2", "G84.3", "G33.1", "G81", "G82", "G83", "G73", "G85", "G76", "G33",
    "G63", "G88",
];
const NUMBERS: &[&str] = &[
    "0",
    "1",
    "2",
    "5",
    "5.",
    "-15.",
    "-15",
    "-20.5",
    "10.",
    "20.",
    ".5",
    "-.5",
    "1.25",
    "1.",
    "0.05",
    "100.",
    "600",
    "750.",
    "750",
    "33.5714",
    "1.411111",
    "99999999",
    "-0",
    "+3",
    "1e3",
    "1,25",
    "-",
    ".",
    "1.2.3",
    "0000001",
    "12345678.9",
    "922337203685.4775807",
    "18446744073709551616",
    "0.000000001",
    "0.0000000001",
    "1 2",
    "- 5",
];
const COMMENTS: &[&str] = &[
    "(TAP M8X1.25)",
    "(TAP M8)",
    "(TAP M6)",
    "(TAP 1/4-20 UNC)",
    "(TAP M10X1.5 LH)",
    "(1/4-18 NPT TAP)",
    "(DRILL 6.8)",
    "(DRILL 1/4)",
    "(ENDMILL 10)",
    "(FORM TAP M5)",
    "(TAP M16XPH3P1.5)",
    "(TAP TR16X4)",
    "(TAP 1/2 BSW)",
    "(TAP 1/2-10 ACME)",
    "(TAP M8 STI)",
    "(TAP 2 BA)",
    "(#7 DRILL)",
    "(SPOT)",
    "(TAP 3/8-16 GH3)",
    "()",
    "(M8 (M6) M5)",
    "(open",
    ";TAP M8",
    "; semi (",
    ")",
    "(\u{d8}6.8 \u{e4})",
];
const FORMULAS: &[&str] = &[
    "#1",
    "##1",
    "#<a>",
    "#5220",
    "[#1*2]",
    "[1/3]",
    "[1/0]",
    "[2**.5]",
    "SQRT[2]",
    "SQRT[-1]",
    "ATAN[1]/[2]",
    "ATAN[1]",
    "[1 MOD 0]",
    "[#101*400]",
    "[[[[1]]]]",
    "[",
    "]",
    "[[[[[[[[[[[[[[[[[[[[[[[[1",
    "-#1",
    "SIN[90]",
    "EXP[99]",
    "LN[0]",
    "ACOS[2]",
    "[1 AND 0]",
    "[1 EQ 1]",
    "FIX[1.5]",
    "ABS[-1]",
    "[9999999*9999999]",
    "#[1+1]",
    "ROUND[.5]",
    "TAN[90]",
];
const CALLS: &[&str] = &[
    "M98 P7",
    "M98 P8",
    "M98 P7 L2",
    "M98 P7 L3",
    "M98",
    "M98 P99",
    "M99",
    "M99 P10",
    "O7",
    "O8",
    "O0007",
    "G65 P7 A1.",
    "O<a> CALL",
    "O<a> SUB",
    "M98 Q10",
    "N10",
    "M98 P70002",
    "GOTO 10",
    "IF [#1 EQ 0] GOTO 10",
    "WHILE [#1 LT 3] DO1",
    "END1",
];
const SOUP: &[u8] = b"0123456789.-+GMXYZFSRTLPQKJHNODIEA()/#[]*;%=,<> \t\n\r";

impl Known {
    /// These programs.
    #[must_use]
    pub fn new(programs: Vec<Vec<u8>>) -> Self {
        let lines = programs.iter().flat_map(|text| text.split_inclusive(|byte| *byte == b'\n').map(<[u8]>::to_vec));
        Self { lines: lines.collect(), programs }
    }

    /// Draws a program into `text`.
    pub fn draw(&self, random: &mut Random, text: &mut Vec<u8>) {
        text.clear();
        if random.one_in(40) {
            text.extend_from_slice(b"\xEF\xBB\xBF");
        }
        if random.one_in(8) {
            text.extend_from_slice(b"%\n");
        }
        if random.one_in(4000) {
            return many_places(random, text);
        }
        match random.below(20) {
            0..8 => self.by_grammar(random, text),
            8..13 => text.extend_from_slice(&self.programs[random.below(self.programs.len())]),
            13..18 => (0..1 + random.below(12)).for_each(|_| text.extend_from_slice(self.line(random))),
            18 => (0..random.below(80)).for_each(|_| text.push(SOUP[random.below(SOUP.len())])),
            _ => (0..random.below(64)).for_each(|_| text.push(random.next() as u8)),
        }
        if random.one_in(3) {
            return;
        }
        for _ in 0..1 + random.below(4) {
            self.change(random, text);
        }
    }

    fn line(&self, random: &mut Random) -> &[u8] {
        &self.lines[random.below(self.lines.len())]
    }

    /// A head that makes the holes behind it plausible, or none, and lines of every kind.
    fn by_grammar(&self, random: &mut Random, text: &mut Vec<u8>) {
        if !random.one_in(4) {
            let head =
                random.of(&["G17 G21 G40 G80 G90 G94\n", "G17 G20 G90 G95\r\n", "G21 G90 G94 S500 M3\n", "G21\r"]);
            text.extend_from_slice(head.as_bytes());
        }
        let end = random.of(&["\n", "\n", "\n", "\r\n", "\r"]);
        for _ in 0..1 + random.below(10) {
            line(random, text);
            text.extend_from_slice(
                if random.one_in(30) { random.of(&["\n", "\r\n", "\r", "", "\n\r"]) } else { end }.as_bytes(),
            );
        }
        if random.one_in(2) {
            text.extend_from_slice(random.of(&["G80\n", "M30\n", "G80\nM30\n%\n", "M2", "%"]).as_bytes());
        }
    }

    /// One change of any kind: a byte, a part, a line.
    fn change(&self, random: &mut Random, text: &mut Vec<u8>) {
        let at = random.below(text.len() + 1);
        match random.below(12) {
            0..3 if at < text.len() => text[at] = SOUP[random.below(SOUP.len())],
            3 if at < text.len() => drop(text.remove(at)),
            4 => text.insert(at, SOUP[random.below(SOUP.len())]),
            5 => text.insert(at, random.next() as u8),
            6 => put(text, at, |text| part(random, text)),
            7 => put(text, at, |text| line(random, text)),
            8 => put(text, at, |text| text.extend_from_slice(self.line(random))),
            9 => {
                let to = (at + random.below(60)).min(text.len());
                text.drain(at..to);
            }
            10 => {
                // A stretch stands twice.
                let to = (at + random.below(80)).min(text.len());
                put(text, at, |text| text.extend_from_within(at..to));
            }
            _ if random.one_in(4) => text.truncate(at),
            _ => number_in_place(random, text, at),
        }
    }
}

/// What `write` adds to the end goes to a place.
fn put(text: &mut Vec<u8>, at: usize, write: impl FnOnce(&mut Vec<u8>)) {
    let length = text.len();
    write(text);
    text[at..].rotate_left(length - at);
}

/// The digits behind a place become another number.
fn number_in_place(random: &mut Random, text: &mut Vec<u8>, at: usize) {
    let is_number = |byte: &u8| byte.is_ascii_digit() || matches!(byte, b'.' | b'-');
    let Some(from) = text[at..].iter().position(is_number).map(|offset| at + offset) else { return };
    let to = text[from..].iter().position(|byte| !is_number(byte)).map_or(text.len(), |offset| from + offset);
    text.splice(from..to, random.of(NUMBERS).bytes());
}

fn say(text: &mut Vec<u8>, words: &[&str]) {
    words.iter().for_each(|word| text.extend_from_slice(word.as_bytes()));
}

fn number(random: &mut Random, text: &mut Vec<u8>) {
    match random.below(10) {
        0 => say(text, &[random.of(FORMULAS)]),
        1..5 => {
            let digits = random.below(100_000).to_string();
            let point = random.below(digits.len() + 1);
            say(
                text,
                &[
                    if random.one_in(4) { "-" } else { "" },
                    &digits[..point],
                    random.of(&[".", ".", ""]),
                    &digits[point..],
                ],
            );
        }
        _ => say(text, &[random.of(NUMBERS)]),
    }
}

/// A word of any letter.
fn part(random: &mut Random, text: &mut Vec<u8>) {
    match random.below(8) {
        0 => say(text, &[random.of(MODAL)]),
        1 => say(text, &[random.of(COMMENTS)]),
        2 => say(text, &[random.of(CALLS)]),
        3 => say(text, &[random.of(FORMULAS)]),
        4 => say(text, &[random.of(CYCLES)]),
        _ => {
            text.push(b"XYZFSRKJQPLTHNDIXYZRFS"[random.below(22)]);
            number(random, text);
        }
    }
}

fn cycle(random: &mut Random, text: &mut Vec<u8>) {
    let [across, down] = [random.below(90).to_string(), (3 + random.below(20)).to_string()];
    let feed = random.of(&["F500.", "F750.", "F1.25", "F1.", "F.05", "F33.5714", "F29.5", "F600", "F[#1]", "F#1", ""]);
    let above = random.of(&["R5.", "R2.", "R.2", "R-1.", "R99.", "", ""]);
    say(
        text,
        &[random.of(&["G99 ", "G98 ", "", "G95 G99"]), random.of(CYCLES), " X", &across, ". Y1. Z-", &down, ". "],
    );
    say(text, &[above, " ", feed]);
    for (chance, word) in
        [(12, " Q4."), (12, " P500"), (12, " P.5"), (12, " L3"), (20, " L0"), (8, " K1.25"), (15, " J2"), (15, " S400")]
    {
        if random.one_in(chance) {
            say(text, &[word]);
        }
    }
}

/// A cycle at more places than are remembered.
fn many_places(random: &mut Random, text: &mut Vec<u8>) {
    say(text, &["G17 G21 G90 G94 S600 M3\n", random.of(&["G81", "G84"]), " X0 Y0 Z-9. R5. F750.\n"]);
    for _ in 0..300 + random.below(4000) {
        say(text, &["X", &random.below(1000).to_string(), ".\n"]);
    }
}

/// A line of a program.
fn line(random: &mut Random, text: &mut Vec<u8>) {
    if random.one_in(12) {
        say(text, &[random.of(&["/", "/2", "N10 ", "N99999 ", "/N5 "])]);
    }
    match random.below(16) {
        0..4 => cycle(random, text),
        4 | 5 => say(text, &["X", &random.below(90).to_string(), random.of(&[".", "", ". Y5.", ". Z-9.", ".F100."])]),
        6 | 7 => say(
            text,
            &["T", &random.below(9).to_string(), random.of(&[" M6 ", " M6 ", " ", "M6"]), random.of(COMMENTS)],
        ),
        8 => {
            let turn = random.of(&[" M3", " M4", " M5", "", " M135", "M3 M8"]);
            say(text, &["S", &(100 * (1 + random.below(12))).to_string(), turn]);
        }
        9 => say(text, &["G0 G54 X0 Y0", random.of(&["", " Z25.", "\nG43 H1 Z25.", "\nG43 H2 Z5. M8"])]),
        10 => (0..1 + random.below(4)).for_each(|_| say(text, &[random.of(MODAL), " "])),
        11 => {
            say(text, &["#", random.of(&["1", "2", "101", "<a>", "#1", "[1]", "5220", "0"]), "="]);
            number(random, text);
        }
        12 => say(text, &[random.of(CALLS)]),
        13 => say(text, &[random.of(COMMENTS)]),
        14 => say(text, &[random.of(&["%", "", " ", "\t", "\0", "G80", "M30", "(", "%%", "M99"])]),
        _ => (0..random.below(8)).for_each(|_| part(random, text)),
    }
}
