//! Any bytes as an NC program: the same blocks whole and in pieces, places within it, and values or reasons.
//!
//! The first byte holds the settings, the second the size of the pieces.
#![no_main]

use libfuzzer_sys::fuzz_target;
use threadcalc_core::nc::{Block, Reader, ReaderSettings, Variables};
use threadcalc_fuzz::nc;

fuzz_target!(|bytes: &[u8]| {
    let [flags, size, program @ ..] = bytes else { return };
    let mut settings = ReaderSettings::default();
    settings.semicolon_comment = flags & 1 == 0;
    settings.spaces_are_errors = flags & 2 != 0;
    settings.block_delete_inside = flags & 4 != 0;
    if flags & 8 != 0 {
        settings.max_block_chars = 20;
    }
    let whole = blocks(program, program.len().max(1), settings);
    for size in [1, usize::from(*size).max(1)] {
        assert!(whole == blocks(program, size, settings), "in pieces of {size}");
    }
    let mut variables = Variables::new();
    for block in &whole {
        nc::block(block, program);
        nc::values(block, &variables);
        variables.assign(block);
    }
});

fn blocks(program: &[u8], size: usize, settings: ReaderSettings) -> Vec<Block> {
    let mut reader = Reader::new(settings);
    let mut blocks = Vec::new();
    for mut piece in program.chunks(size) {
        while !piece.is_empty() {
            let taken = reader.read(piece);
            assert!(taken.bytes > 0 && (taken.is_block || taken.bytes == piece.len()));
            piece = &piece[taken.bytes..];
            if taken.is_block {
                blocks.push(reader.block().clone());
            }
        }
    }
    if reader.finish() {
        blocks.push(reader.block().clone());
    }
    assert_eq!(reader.offset(), program.len() as u64);
    blocks
}
