//! Checks of programs that together have everything that a report can have.

use std::path::Path;

use serde_json::Value as Json;
use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck, Report};
use threadcalc_core::{Dialect, Value};

/// Beside the programs of `tests/nc`: no lead, no hand, no thread, a call that leads to a wrong hole, a depth that
/// cannot be computed, no tool, no place and no unit.
const MORE: &[&str] = &[
    "O1 (M6)\nG17 G21 G90 G94\nG98 G84 X0 Y0 Z#5 R5. F#6\nG80\nM30\n",
    "O3\nG17 G21 G90 G94 G54\nT1 M6 (TAP M6)\nG43 H1 Z5. S500 M3\nM98 P7\nG80\nM30\nO7\nG98 G84 X0 Y0 Z-12. R5. F800.\nM99\n",
    "G98 G84 X#9 Y#8 Z-1. R1. F1.\nM30\n",
    "G17 G21 G90 G94\nG43 H1 Z5. S500 M4\nG98 G84 X0 Y0 Z-12. R5. F500.\nG80\nM30\nG1 X5.\n",
    "G17 G21 G90 G94\nT1 M6 (TAP M6)\nG43 H1 Z5. S500 M3\nG51.1 X0\nG98 G84 X1. Y0 Z-12. R5. F500.\nG80\nM30\n",
];

fn report(text: &[u8], dialect: &Dialect) -> Json {
    let mut check = ProgramCheck::new(text, dialect, &CheckOptions::default());
    let (mut tapped_holes, mut findings) = (Vec::new(), Vec::new());
    for event in check.by_ref() {
        match event {
            Event::Hole(hole) => tapped_holes.push(hole),
            Event::Finding(finding) => findings.push(finding),
        }
    }
    let not_checked: Vec<_> = check.not_checked().collect();
    let report = Report { tapped_holes: &tapped_holes, findings: &findings, not_checked: &not_checked };
    serde_json::to_value(report).expect("a report is JSON")
}

/// Calls `look` with every report.
pub fn each(mut look: impl FnMut(&Json)) {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../tests/nc");
    let files = std::fs::read_dir(folder).expect("tests/nc can be read").map(|entry| entry.expect("an entry").path());
    let mut texts: Vec<_> = files
        .filter(|path| path.extension().is_some_and(|end| end == "nc"))
        .map(|path| std::fs::read(path).expect("a program"))
        .collect();
    assert!(texts.len() >= 14, "{} programs", texts.len());
    texts.extend(MORE.iter().map(|text| text.as_bytes().to_vec()));
    let mut calling = Dialect::rs274ngc();
    for (key, code) in [("subprogram_call", "M98"), ("subprogram_return", "M99"), ("mirror_on", "G51.1")] {
        calling.set(key, Value::Text(code.as_bytes())).expect("a code");
    }
    for text in texts {
        [calling, Dialect::unset()].iter().for_each(|dialect| look(&report(&text, dialect)));
    }
}
