//! Lines of programs: words, values, comments, faults. Only Rust has the reader itself.

use super::checks::lines;
use super::table::{Failure, Got, Results, Row, Table};
use threadcalc_core::nc::{
    Block, Blocks, LineEnd, Reader, ReaderSettings, Variable, Variables, WordValue, code_tenths, evaluate,
};
use threadcalc_core::read_number;

/// How many bytes are handed over at once.
const PIECE: usize = 3;

/// What has been read so far.
#[derive(Default)]
struct Told {
    blocks: usize,
    words: Vec<String>,
    codes: Vec<String>,
    comments: Vec<String>,
    faults: Vec<&'static str>,
}

impl Told {
    fn take(&mut self, block: &Block, variables: &mut Variables) {
        self.blocks += 1;
        let words: Vec<_> = block
            .words()
            .iter()
            .map(|word| {
                let letter = char::from(word.letter());
                let value = evaluate(block, word.value(), variables);
                if let (WordValue::Number(number), Ok(value)) = (word.value(), value) {
                    assert_eq!((number.to_length(), code_tenths(value)), (Ok(value), word.code_tenths()));
                }
                value.map_or_else(|_| format!("{letter}?"), |value| format!("{letter}{value}"))
            })
            .collect();
        if !words.is_empty() {
            self.words.push(words.join(" "));
        }
        let is_code = |letter| matches!(letter, b'G' | b'M');
        let codes = block.words().iter().filter(|word| is_code(word.letter()));
        self.codes.extend(codes.filter_map(|word| word.code_tenths()).map(|tenths| tenths.to_string()));
        self.comments.extend(block.comments().map(|comment| String::from_utf8_lossy(comment.text).into_owned()));
        self.faults.extend(block.faults().iter().map(|fault| fault.kind.name()));
        for assignment in block.assignments() {
            if let WordValue::Formula(formula) = assignment.value {
                assert!(!block.operations(formula).is_empty());
            }
        }
        variables.assign(block);
    }
}

fn given(cell: &str) -> Result<Variables, Failure> {
    let mut variables = Variables::new();
    for word in cell.split_whitespace() {
        match word.split_once('=') {
            Some((number, value)) => variables.set(number.parse().unwrap(), Some(read_number(value.as_bytes())?)),
            None => variables.forget(),
        }
    }
    Ok(variables)
}

fn asked(variables: &Variables, cell: &str) -> String {
    let value = |number: &str| match variables.get(number.parse().unwrap()) {
        Variable::Known(value) => format!("{number}={value}"),
        Variable::Unknown => format!("{number}=unknown"),
        _ => format!("{number}=unset"),
    };
    cell.split_whitespace().map(value).collect::<Vec<_>>().join(" ")
}

fn read(row: Row<'_>) -> Result<Results, Failure> {
    let program = lines(&row.bytes("program"));
    let mut variables = given(row.cell("given"))?;
    let (mut whole, mut blocks) = (Blocks::new(&program, ReaderSettings::default()), 0);
    while whole.next().is_some() {
        blocks += 1;
    }
    let (mut told, mut reader) = (Told::default(), Reader::new(ReaderSettings::default()));
    for mut piece in program.chunks(PIECE) {
        while !piece.is_empty() {
            let taken = reader.read(piece);
            piece = &piece[taken.bytes..];
            if taken.is_block {
                told.take(reader.block(), &mut variables);
            }
        }
    }
    if reader.finish() {
        told.take(reader.block(), &mut variables);
    }
    assert_eq!(told.blocks, blocks, "whole and in pieces");
    Ok(vec![
        ("words", Got::TextOrNone(told.words.join(" | "))),
        ("codes", Got::TextOrNone(told.codes.join(" "))),
        ("comments", Got::TextOrNone(told.comments.join("; "))),
        ("faults", Got::TextOrNone(told.faults.join(" "))),
        ("variables", Got::TextOrNone(asked(&variables, row.cell("asked")))),
        ("ends", Got::Text(format!("lf {}", reader.line_ends().count(LineEnd::Lf)))),
    ])
}

#[test]
fn reads_lines() {
    Table::open("rust/nc_lines").check(read);
}
