//! The same blocks however a program is cut: whole, byte by byte, anyhow. Byte by byte nothing is ever read
//! eight bytes at a time, so that this holds the two ways of reading words against each other as well.

use proptest::prelude::*;
use threadcalc_core::nc::{Block, LineEnds, Reader, ReaderSettings};

/// All that a reader says of a program.
#[derive(Debug, PartialEq)]
struct Said {
    blocks: Vec<Block>,
    ends: LineEnds,
    percent_lines: [Option<u32>; 2],
    has_byte_order_mark: bool,
    offset: u64,
}

fn read<'a>(pieces: impl Iterator<Item = &'a [u8]>, settings: ReaderSettings) -> Said {
    let mut reader = Reader::new(settings);
    let mut blocks = Vec::new();
    for mut piece in pieces {
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
    assert!(!reader.finish(), "nothing is left");
    Said {
        blocks,
        ends: reader.line_ends().clone(),
        percent_lines: reader.percent_lines(),
        has_byte_order_mark: reader.has_byte_order_mark(),
        offset: reader.offset(),
    }
}

fn is_the_same_however_cut(program: &[u8], cuts: &[usize], settings: ReaderSettings) -> Result<(), TestCaseError> {
    let whole = read(std::iter::once(program), settings);
    let by_bytes = read(program.chunks(1), settings);
    prop_assert_eq!(&whole, &by_bytes);
    let mut cuts: Vec<usize> = cuts.iter().map(|cut| cut % (program.len() + 1)).chain([0, program.len()]).collect();
    cuts.sort_unstable();
    let pieces = cuts.windows(2).map(|cut| &program[cut[0]..cut[1]]);
    prop_assert_eq!(&whole, &read(pieces, settings));
    prop_assert_eq!(whole.offset, program.len() as u64);
    for block in &whole.blocks {
        is_sound(block, program)?;
    }
    Ok(())
}

/// Places lie in the program, and columns are those of the bytes.
fn is_sound(block: &Block, program: &[u8]) -> Result<(), TestCaseError> {
    let line = &program[block.start() as usize..block.end() as usize];
    prop_assert!(!line.iter().any(|byte| matches!(byte, b'\n' | b'\r')));
    let end = line.len() as u32 + 1;
    for word in block.words() {
        prop_assert_eq!(line[word.column() as usize - 1].to_ascii_uppercase(), word.letter());
        prop_assert!(word.column() < word.end_column() && word.end_column() <= end);
        if let Some(number) = word.number() {
            let written = &line[word.column() as usize..word.end_column() as usize - 1];
            let plain: Vec<u8> = written.iter().copied().filter(|byte| !matches!(byte, b' ' | b'\t')).collect();
            prop_assert_eq!(number.to_string().into_bytes(), plain);
        }
    }
    for comment in block.comments() {
        let text = &line[comment.column as usize..][..comment.text.len()];
        prop_assert_eq!(text, comment.text);
        prop_assert!(comment.end_column <= end);
    }
    for fault in block.faults() {
        prop_assert!(0 < fault.column && fault.column < fault.end_column && fault.end_column <= end, "{:?}", fault);
    }
    Ok(())
}

fn any_settings() -> impl Strategy<Value = ReaderSettings> {
    (any::<[bool; 3]>(), prop_oneof![Just(256), 0..40_u32]).prop_map(|(flags, max_block_chars)| {
        let mut settings = ReaderSettings::default();
        [settings.semicolon_comment, settings.spaces_are_errors, settings.block_delete_inside] = flags;
        settings.max_block_chars = max_block_chars;
        settings
    })
}

/// Pieces of programs, whole and spoilt.
fn any_program() -> impl Strategy<Value = Vec<u8>> {
    let piece = prop_oneof![
        8 => "[A-Z][+-]?[0-9]{0,9}[.]?[0-9]{0,9}",
        4 => "[GMXYZFSgmxyz][0-9]{1,3}[ \t]{0,2}",
        3 => Just(" ".to_string()),
        4 => "(\n|\r\n|\r)",
        1 => "(%|/[0-9]?|N[0-9]{1,5} |O[0-9]{1,4}|O<a>|\n%\n)",
        1 => "(\\([ -~]{0,12}\\)?|;[ -~]{0,8})",
        1 => "#[0-9]{1,3}=(-?[0-9.]{1,4}|#[0-9]|\\[#1[*]2\\])",
        1 => "[A-Z]-?(\\[|#|SIN\\[|ATAN\\[|\\]/\\[|\\]|[*]|[*][*]|,|MOD|[0-9])+",
        1 => "[ -~]{1,6}",
    ]
    .prop_map(String::into_bytes);
    let foreign = prop::collection::vec(any::<u8>(), 1..4);
    let mark = Just(b"\xEF\xBB\xBF".to_vec());
    let pieces = prop::collection::vec(prop_oneof![40 => piece, 1 => foreign, 1 => mark.clone()], 0..40);
    (prop_oneof![4 => Just(Vec::new()), 1 => mark], pieces).prop_map(|(mark, pieces)| [mark, pieces.concat()].concat())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1500))]

    #[test]
    fn programs_are_read_alike(
        program in any_program(),
        cuts in prop::collection::vec(any::<usize>(), 0..12),
        settings in any_settings(),
    ) {
        is_the_same_however_cut(&program, &cuts, settings)?;
    }

    #[test]
    fn any_bytes_are_read_alike(
        program in prop::collection::vec(any::<u8>(), 0..200),
        cuts in prop::collection::vec(any::<usize>(), 0..8),
        settings in any_settings(),
    ) {
        is_the_same_however_cut(&program, &cuts, settings)?;
    }
}

#[test]
fn words_with_any_byte_behind_them_are_read_alike() {
    for byte in 0..=255_u8 {
        for text in [
            "X1",
            "X12.",
            "X-1.25",
            "X.",
            "X",
            "X1234567",
            "X12345678.5",
            "N5",
            "N5.",
            "M1M2M3M4M5",
            "X1 X2",
            "X 1",
            "X1 ",
        ] {
            let line = [text.as_bytes(), &[byte], b"5 Y2.5 Z3.25 (TAP) F100.\nG1 X2 Y3 Z4 I5 J6 K7\n"].concat();
            is_the_same_however_cut(&line, &[1, 3, 5], ReaderSettings::default()).unwrap();
        }
    }
}

#[test]
fn a_line_of_100_kilobytes_is_read_as_any_other() {
    for piece in ["X1 ", "(", "[", "G1 ", "#1=", "X[1+", "%", "/", "A", "1", "\u{e4}", "(M8)", "X1,2"] {
        let line = piece.repeat(100_000 / piece.len());
        let program = [line.as_bytes(), b"\nG84 Z-15. F1.25\n"].concat();
        let said = read(std::iter::once(&program[..]), ReaderSettings::default());
        assert_eq!(said.blocks.len(), 2, "{piece}");
        let kinds = said.blocks[0].faults().len() as u32 + said.blocks[0].more_faults();
        assert!(kinds > 0, "{piece}: at least too long");
        assert_eq!((said.blocks[1].line(), said.blocks[1].words().len()), (2, 3), "{piece}");
        assert_eq!(said, read(program.chunks(4096), ReaderSettings::default()), "{piece}");
    }
}
