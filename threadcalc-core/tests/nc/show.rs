//! Blocks as short texts, so that a table holds what is written beside what is read.

use threadcalc_core::nc::{Block, Blocks, Formula, Operation, ReaderSettings, WordValue};

/// The blocks of a program, one text each: line, block delete, N, O, words, assignments, comments, faults.
///
/// A formula stands in braces, its operations in the order in which they are done. A fault is `!kind@column-end`,
/// with `*` if the block must not be interpreted.
pub fn blocks(program: &[u8], settings: ReaderSettings) -> Vec<String> {
    let mut blocks = Blocks::new(program, settings);
    let mut texts = Vec::new();
    while let Some(block) = blocks.next() {
        texts.push(block_text(block));
    }
    texts
}

/// The one block of a line.
pub fn line(text: &str) -> String {
    line_by(text.as_bytes(), ReaderSettings::default())
}

/// The one block of a line, read with settings, without its line number.
pub fn line_by(text: &[u8], settings: ReaderSettings) -> String {
    let blocks = blocks(text, settings);
    assert_eq!(blocks.len(), 1, "{:?}", String::from_utf8_lossy(text));
    blocks[0].strip_prefix("1:").unwrap().trim_start().to_string()
}

fn block_text(block: &Block) -> String {
    let mut parts = vec![format!("{}:", block.line())];
    parts.extend(block.block_delete().map(|level| format!("/{level}")));
    parts.extend(block.line_number().map(|number| format!("N{number}")));
    parts.extend(block.program_number().map(|number| format!("O{number}")));
    for word in block.words() {
        parts.push(format!("{}{}", word.letter() as char, value(block, word.value())));
    }
    for assignment in block.assignments() {
        parts.push(format!("#{}={}", value(block, assignment.index), value(block, assignment.value)));
    }
    for comment in block.comments() {
        let cut = if comment.is_cut { ".." } else { "" };
        parts.push(format!("({}{cut})@{}-{}", comment.text.escape_ascii(), comment.column, comment.end_column));
    }
    if block.more_comments() > 0 {
        parts.push(format!("({} more)", block.more_comments()));
    }
    parts.extend(block.inner_delete().map(|delete| format!("/{}@{}", delete.level, delete.column)));
    for fault in block.faults() {
        parts.push(format!("!{}@{}-{}", fault.kind, fault.column, fault.end_column));
    }
    if block.more_faults() > 0 {
        parts.push(format!("!{} more", block.more_faults()));
    }
    if !block.is_readable() {
        parts.push("*".into());
    }
    parts.join(" ")
}

fn value(block: &Block, value: WordValue) -> String {
    match value {
        WordValue::Number(number) => number.to_string(),
        WordValue::Formula(formula) => operations(block, formula),
        WordValue::Unreadable => "?".into(),
    }
}

fn operations(block: &Block, formula: Formula) -> String {
    let texts = block.operations(formula).iter().map(|operation| match operation {
        Operation::Number(number) => number.to_string(),
        Operation::Lookup => "#".into(),
        Operation::Negate => "neg".into(),
        Operation::Binary(operator) => operator.name().into(),
        Operation::Unary(function) => function.name().into(),
        Operation::Doubt => "doubt".into(),
        other => panic!("{other:?}"),
    });
    format!("{{{}}}", texts.collect::<Vec<String>>().join(" "))
}
