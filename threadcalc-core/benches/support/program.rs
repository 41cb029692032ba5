//! A milling program of any length as a CAM system writes it, the same for the same seed.

use std::fmt::Write;

#[path = "../../tests/support/random.rs"]
mod random;

use random::Random;

/// How many tools there are before the program starts over with the first.
const OPERATIONS: u64 = 7;

/// A program of about this many bytes.
pub fn milling(bytes: usize, seed: u64) -> Vec<u8> {
    let mut program = Program { text: String::with_capacity(bytes + 65_536), random: Random(seed), number: 10 };
    program.text.push_str("%\nO1001 (PLATE 14X M8X1.25-6H, 6X 1/4-20 UNC-2B)\nN10 G17 G21 G40 G49 G80 G90 G94\n");
    let mut operation = 0;
    while program.text.len() < bytes {
        program.operation(operation);
        operation += 1;
    }
    program.text.push_str("M30\n%\n");
    program.text.into_bytes()
}

struct Program {
    text: String,
    random: Random,
    number: u32,
}

impl Program {
    fn operation(&mut self, operation: u64) {
        let tool = operation % OPERATIONS + 1;
        match tool {
            1 => self.drilling("DRILL 6.8", "G83", "Z-24. R2. Q4. F420."),
            2 => self.tapping("TAP M8X1.25 6H SPIRAL FLUTE FORM C", "Z-19.5 R5.", "F1.25"),
            3 => self.drilling("DRILL 5.1", "G81", "Z-20. R2. F380."),
            4 => self.tapping("TAP 1/4-20 UNC", "Z-15. R6.35", "F1.27"),
            _ => self.surface(tool),
        }
    }

    fn begin_tool(&mut self, name: &str, speed: u64) {
        let tool = self.random.pick(24) + 1;
        self.number += 10;
        writeln!(self.text, "N{} T{tool} M6 ({name})", self.number).unwrap();
        writeln!(self.text, "G0 G54 X{}. Y{}. S{speed} M3", self.random.pick(200), self.random.pick(100)).unwrap();
        writeln!(self.text, "G43 H{tool} Z25. M8").unwrap();
    }

    fn end_tool(&mut self) {
        self.text.push_str("G80 G94 M9\nG0 Z100. M5\n");
    }

    fn drilling(&mut self, name: &str, code: &str, words: &str) {
        self.begin_tool(name, 2800);
        self.holes(code, words);
        self.end_tool();
    }

    fn tapping(&mut self, name: &str, depth: &str, feed: &str) {
        self.begin_tool(name, 600);
        self.text.push_str("M5\nG95\n");
        self.holes("G84", &format!("{depth} {feed}"));
        self.end_tool();
    }

    fn holes(&mut self, code: &str, words: &str) {
        writeln!(self.text, "G99 {code} X20. Y20. {words}").unwrap();
        for _ in 0..40 {
            writeln!(self.text, "X{}. Y{}.5", self.random.pick(400), self.random.pick(200)).unwrap();
        }
    }

    /// A finished surface: short moves, now and then an arc or a new pass.
    fn surface(&mut self, tool: u64) {
        self.begin_tool(if tool == 5 { "ENDMILL 10" } else { "BALL NOSE 6" }, 8000);
        self.text.push_str("G1 Z-1. F900.\n");
        // Blocks with numbers are of one post-processor, those with blanks of another.
        let (numbered, blank) = (tool == 5, if tool == 7 { "" } else { " " });
        let mut code = "";
        let (mut x, mut y, mut z) = (12_000_i64, -4_500_i64, -1_000_i64);
        for step in 0..4_000 {
            if numbered {
                self.number = self.number % 99_990 + 10;
                write!(self.text, "N{} ", self.number).unwrap();
            }
            x += self.random.pick(900) as i64 - 420;
            y += self.random.pick(800) as i64 - 400;
            z = (z + self.random.pick(60) as i64 - 30).min(0);
            self.text.push_str(std::mem::take(&mut code));
            match self.random.pick(24) {
                0 => {
                    self.arc(x, y, blank);
                    code = "G1 ";
                }
                1 if step % 200 > 150 && !self.text.ends_with(' ') => {
                    writeln!(self.text, "G0{blank}Z5.").unwrap();
                    writeln!(self.text, "(PASS {step})").unwrap();
                    writeln!(self.text, "G1{blank}Z{}{blank}F{}.", Milli(z), 300 + self.random.pick(900)).unwrap();
                }
                2..=6 => writeln!(self.text, "X{}", Milli(x)).unwrap(),
                7..=12 => writeln!(self.text, "X{}{blank}Y{}", Milli(x), Milli(y)).unwrap(),
                _ => writeln!(self.text, "X{}{blank}Y{}{blank}Z{}", Milli(x), Milli(y), Milli(z)).unwrap(),
            }
        }
        self.end_tool();
    }

    fn arc(&mut self, x: i64, y: i64, blank: &str) {
        let (code, i, j) = (2 + self.random.pick(2), self.random.pick(5_000) as i64, -(self.random.pick(3_000) as i64));
        writeln!(self.text, "G{code}{blank}X{}{blank}Y{}{blank}I{}{blank}J{}", Milli(x), Milli(y), Milli(i), Milli(j))
            .unwrap();
    }
}

/// Thousandths as a program has them: no zeros at the end, always a point.
struct Milli(i64);

impl std::fmt::Display for Milli {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let (whole, part) = (self.0.unsigned_abs() / 1000, self.0.unsigned_abs() % 1000);
        let text = format!("{}{whole}.{part:03}", if self.0 < 0 { "-" } else { "" });
        f.write_str(text.trim_end_matches('0'))
    }
}
