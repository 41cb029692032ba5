//! Words, columns and exact values against another reader of programs, the crate `g-code`, which reads numbers as
//! decimals. What it does not read, and stands in none of the drawn programs: block delete, `#` and formulas, a blank
//! between a letter and its number or inside it, comments in comments, bytes above 127, letters beside each other.

use std::fmt::Write;

use g_code::emit::{Token, Value};
use g_code::parse::ast::Spanned;
use g_code::parse::snippet_parser;
use num_bigint::BigInt;
use threadcalc_core::nc::{Block, Blocks, ReaderSettings, Variables, evaluate};

use super::random::Random;

/// A word: line, column, letter, and its value as a fraction.
type Said = (u32, u32, char, BigInt, BigInt);

/// The words as the other reader has them; None if it cannot read the text.
fn theirs(program: &str) -> Option<Vec<Said>> {
    let read = snippet_parser(program).ok()?;
    let mut words = Vec::new();
    for (line, number) in read.iter().zip(1..) {
        let fields = line.iter_fields();
        let values = line.iter_emit_tokens().filter_map(|token| match token {
            Token::Field(field) => Some((field.letters.to_string(), field.value)),
            _ => None,
        });
        for (field, (letters, value)) in fields.zip(values) {
            let (numerator, decimals) = match value {
                Value::Rational(decimal) => (decimal.mantissa().into(), decimal.scale()),
                Value::Integer(whole) => (whole.into(), 0),
                Value::String(_) | Value::Float(_) => return None,
            };
            let column = field.span().0 - line.span().0 + 1;
            let [letter] = letters.to_ascii_uppercase().chars().collect::<Vec<_>>()[..] else { return None };
            words.push((number, column as u32, letter, numerator, BigInt::from(10).pow(decimals)));
        }
    }
    Some(words)
}

/// The same as this reader has them. N and O are no words here: they have no columns to compare.
fn ours(program: &str) -> Vec<Said> {
    let mut blocks = Blocks::new(program.as_bytes(), ReaderSettings::default());
    let mut words = Vec::new();
    while let Some(block) = blocks.next() {
        assert_eq!(block.faults(), [], "{program}");
        words.extend(block.words().iter().map(|word| {
            let value = evaluate(block, word.value(), &Variables::new()).unwrap();
            let (numerator, denominator) = (value.numerator().into(), value.denominator().into());
            (block.line(), word.column(), char::from(word.letter()), numerator, denominator)
        }));
        named(block, &mut words);
    }
    words
}

fn named(block: &Block, words: &mut Vec<Said>) {
    for (letter, number) in [('N', block.line_number()), ('O', block.program_number())] {
        words.extend(number.map(|number| (block.line(), 0, letter, number.into(), 1.into())));
    }
}

fn agree(program: &str) -> usize {
    let theirs = theirs(program).unwrap_or_else(|| panic!("the other reader does not read\n{program}"));
    let mut ours = ours(program);
    assert_eq!(ours.len(), theirs.len(), "{ours:?}\n{theirs:?}\n{program}");
    for (line, column, letter, numerator, denominator) in &theirs {
        let same = ours.iter().position(|(at, from, name, above, below)| {
            (at, name) == (line, letter) && (from == column || *from == 0) && above * denominator == numerator * below
        });
        let place =
            same.unwrap_or_else(|| panic!("{line}:{column} {letter} {numerator}/{denominator} in {ours:?}\n{program}"));
        ours.swap_remove(place);
    }
    theirs.len()
}

fn digits(random: &mut Random, most: u64) -> String {
    (0..random.pick(most + 1)).map(|_| char::from(b'0' + random.pick(10) as u8)).collect()
}

/// A number in any of the ways in which people write them, of up to 18 digits.
fn number(random: &mut Random) -> String {
    let sign = ["", "", "", "-", "+"][random.pick(5) as usize];
    let (before, behind) = (digits(random, 9), digits(random, 8));
    match random.pick(4) {
        0 => format!("{sign}{before}{}", random.pick(10)),
        1 => format!("{sign}{before}{}.", random.pick(10)),
        2 => format!("{sign}.{behind}{}", random.pick(10)),
        _ => format!("{sign}{before}{}.{behind}", random.pick(10)),
    }
}

/// A line: N or O, codes, one word of a few letters each, comments, blanks where they mean nothing.
fn line(random: &mut Random) -> String {
    let mut line = String::new();
    match random.pick(6) {
        0 => write!(line, "N{}", random.pick(99_999)).unwrap(),
        1 if random.pick(4) == 0 => write!(line, "O{}", random.pick(9_999)).unwrap(),
        _ => {}
    }
    let mut letters: Vec<char> = "XYZABCIJKFSTRPQLHD".chars().collect();
    for _ in 0..random.pick(9) {
        line += ["", "", " ", "\t", "  "][random.pick(5) as usize];
        match random.pick(6) {
            0 => write!(line, "G{}", random.pick(100)).unwrap(),
            1 => write!(line, "g{}.{}", random.pick(100), random.pick(10)).unwrap(),
            2 if !line.contains('M') => write!(line, "M0{}", random.pick(100)).unwrap(),
            3 => line += ["(TAP M8X1.25)", "( G84 F1 )", "()"][random.pick(3) as usize],
            _ => {
                let letter = letters.swap_remove(random.pick(letters.len() as u64) as usize);
                let letter = if random.pick(5) == 0 { letter.to_ascii_lowercase() } else { letter };
                write!(line, "{letter}{}", number(random)).unwrap();
            }
        }
    }
    line + ["", "", "", " ", ";M8 X1"][random.pick(5) as usize]
}

#[test]
fn drawn_programs_have_the_words_that_another_reader_finds() {
    let mut random = Random(20_261_127);
    let (programs, mut words) = (5_000, 0);
    for _ in 0..programs {
        let mut program = String::new();
        for _ in 0..1 + random.pick(12) {
            program += &line(&mut random);
            program += ["\n", "\n", "\r\n", "\r"][random.pick(4) as usize];
        }
        words += agree(&program);
    }
    assert!(words > 20 * programs, "{words} words");
}

/// Of the programs of the table of checks, every line that the other reader takes; what it does not take is what the
/// head of this file says.
#[test]
fn lines_of_known_programs_have_the_words_that_another_reader_finds() {
    let table =
        std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../tests/reference/nc_check.csv")).unwrap();
    let rows = table.lines().filter(|line| !line.starts_with('#')).skip(1);
    let (mut words, mut refused) = (0, 0);
    for line in rows.flat_map(|row| row.split(',').nth(1).unwrap().split(" | ")) {
        let mut blocks = Blocks::new(line.as_bytes(), ReaderSettings::default());
        let is_plain = blocks.next().is_none_or(|block| block.faults().is_empty());
        match theirs(line) {
            Some(_) if is_plain => words += agree(line),
            Some(_) => {}
            None => {
                let blank_in_number = line.as_bytes().windows(2).any(|two| two[0] == b' ' && two[1].is_ascii_digit());
                assert!(!is_plain || blank_in_number || line.contains(['/', '#', '[', '%']), "{line}");
                refused += 1;
            }
        }
    }
    assert!(words > 5_000 && refused < 300, "{words} words, {refused} lines refused");
}
