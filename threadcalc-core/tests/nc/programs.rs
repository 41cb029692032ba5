//! Whole programs of `tests/nc`, with what is expected of them.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use serde_json::Value;
use threadcalc_core::nc::{Block, Blocks, FaultKind, ReaderSettings, Variables, evaluate};
use threadcalc_core::read_comment;

const PROGRAMS: usize = 14;

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../tests/nc")
}

fn programs() -> Vec<(String, Vec<u8>, Value)> {
    let mut names: Vec<PathBuf> = fs::read_dir(folder()).unwrap().map(|entry| entry.unwrap().path()).collect();
    names.retain(|name| name.extension().is_some_and(|extension| extension == "nc"));
    names.sort();
    assert_eq!(names.len(), PROGRAMS);
    let read = |name: PathBuf| {
        let expected = serde_json::from_slice(&fs::read(name.with_extension("expect.json")).unwrap()).unwrap();
        (name.file_name().unwrap().to_string_lossy().into_owned(), fs::read(&name).unwrap(), expected)
    };
    names.into_iter().map(read).collect()
}

fn settings_of(run: &Value) -> ReaderSettings {
    let dialect = &run["dialect"];
    let mut settings = ReaderSettings::default();
    settings.semicolon_comment = dialect["semicolon_comment"].as_bool().unwrap();
    settings.max_block_chars = dialect["max_block_chars"].as_u64().unwrap() as u32;
    settings.spaces_are_errors = dialect["spaces_in_numbers"] == "error";
    settings
}

/// S and F at the end of each line, as far as they are known.
fn modal_words(program: &[u8], run: &Value) -> BTreeMap<u64, [Option<f64>; 2]> {
    let deletes = run["options"]["block_delete"] == true;
    let mut blocks = Blocks::new(program, settings_of(run));
    let (mut variables, mut held, mut lines) = (Variables::new(), [None; 2], BTreeMap::new());
    while let Some(block) = blocks.next() {
        if deletes && block.block_delete().is_some() {
            continue;
        }
        for (place, letter) in [b'S', b'F'].into_iter().enumerate() {
            if let Some(word) = block.words().iter().find(|word| word.letter() == letter) {
                held[place] = evaluate(block, word.value(), &variables).ok().map(|value| value.to_f64());
            }
        }
        variables.assign(block);
        lines.insert(u64::from(block.line()), held);
    }
    lines
}

#[test]
fn speeds_and_feeds_of_every_hole_are_read() {
    let mut holes = 0;
    for (name, program, expected) in programs() {
        for run in expected["runs"].as_array().unwrap() {
            if run["options"]["evaluate_macros"] == false {
                continue;
            }
            let lines = modal_words(&program, run);
            for hole in run["tapped_holes"].as_array().unwrap() {
                let held = lines[&hole["line"].as_u64().unwrap()];
                assert_eq!(held, [hole["speed_rpm"].as_f64(), hole["feed"].as_f64()], "{name}: {hole}");
                holes += 1;
            }
        }
    }
    assert_eq!(holes, 38);
}

#[test]
fn nothing_is_wrong_with_them_but_the_foreign_bytes() {
    for (name, program, expected) in programs() {
        for run in expected["runs"].as_array().unwrap() {
            let mut found = Vec::new();
            let mut blocks = Blocks::new(&program, settings_of(run));
            while let Some(block) = blocks.next() {
                found.extend(block.faults().iter().map(|fault| (u64::from(block.line()), fault.kind)));
                assert!(block.is_readable() || found.last().unwrap().1 == FaultKind::NonAscii, "{name}");
            }
            let reader = blocks.reader();
            let marks = reader.has_byte_order_mark().then_some((1, "info".to_string()));
            let told: Vec<_> = marks
                .into_iter()
                .chain(found.iter().map(|(line, kind)| (*line, kind.severity().to_string())))
                .collect();
            let is_lexical = |finding: &&Value| finding["id"] == "non-ascii";
            let listed = run["findings"].as_array().unwrap().iter().filter(is_lexical);
            let listed: Vec<_> = listed
                .map(|finding| (finding["line"].as_u64().unwrap(), finding["severity"].as_str().unwrap().to_string()))
                .collect();
            assert_eq!(told, listed, "{name}");
            assert!(reader.percent_lines().iter().all(Option::is_some), "{name}");
            assert_eq!(reader.line_ends().first_other(), None, "{name}");
        }
    }
}

#[test]
fn threads_in_their_comments_are_found() {
    let texts = |name: &str| {
        let program = fs::read(folder().join(name)).unwrap();
        let mut blocks = Blocks::new(&program, ReaderSettings::default());
        let mut texts = Vec::new();
        let threads = |block: &Block| -> Vec<String> {
            let found = block
                .comments()
                .flat_map(|comment| read_comment(comment.text, false).threads().copied().collect::<Vec<_>>());
            found.map(|found| format!("{}: {}", block.line(), found.thread)).collect()
        };
        while let Some(block) = blocks.next() {
            texts.extend(threads(block));
        }
        texts
    };
    assert_eq!(texts("27_non_ascii_bytes.nc"), ["2: M8x1.25", "4: M8x1.25"]);
    assert_eq!(texts("09_wrong_hand.nc"), ["4: M10x1.5-LH"]);
    assert_eq!(texts("08_feed_rounding.nc"), ["4: 7/16-14 UNC", "11: 10-32 UNF"]);
}
