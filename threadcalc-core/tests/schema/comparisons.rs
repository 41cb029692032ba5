//! Comparisons of programs that together have everything that a comparison can have.

use serde_json::Value as Json;
use threadcalc_core::nc::{CheckOptions, ComparisonReport, Event, ProgramCheck, compare, scratch_for};
use threadcalc_core::{Dialect, Value};

/// All is known; nothing is; nothing is, and the line is another; no hole; two holes.
const PROGRAMS: &[&str] = &[
    "O3\nG17 G21 G90 G94 G54\nT1 M6 (TAP M6)\nG43 H1 Z5. S500 M3\nG98 G84 X0 Y0 Z-12. R5. F500.\nG80\nM30\n",
    "G51.1 X0\nG98 G84 X#1 Y#2 Z#3 R5. F#4\nG80\nM30\n",
    "(LATER)\nG51.1 X0\nG98 G84 X#1 Y#2 Z#3 R5. F#4\nG80\nM30\n",
    "M30\n",
    "O3\nG17 G21 G90 G94 G54\nT1 M6 (TAP M6)\nG43 H1 Z5. S500 M3\nG98 G84 X0 Y0 Z-9. R5. F500.\nX9.\nG80\nM30\n",
];

/// Calls `look` with every comparison of two of the programs.
pub fn each(mut look: impl FnMut(&Json)) {
    let mut dialect = Dialect::unset();
    for (key, code) in [("tap_rh", "G84"), ("mirror_on", "G51.1")] {
        dialect.set(key, Value::Text(code.as_bytes())).expect("a code");
    }
    let checked = |text: &&str| {
        let mut check = ProgramCheck::new(text.as_bytes(), &dialect, &CheckOptions::default());
        let hole = |event| if let Event::Hole(hole) = event { Some(hole) } else { None };
        let holes: Vec<_> = check.by_ref().filter_map(hole).collect();
        (holes, check.not_checked().collect::<Vec<_>>())
    };
    let checked: Vec<_> = PROGRAMS.iter().map(checked).collect();
    for (old, before_not_checked) in &checked {
        for (new, after_not_checked) in &checked {
            let mut scratch = vec![0; scratch_for(old.len(), new.len())];
            let comparison = compare(old, new, &mut scratch).expect("room enough");
            let report = ComparisonReport { comparison, before_not_checked, after_not_checked };
            look(&serde_json::to_value(report).expect("a comparison is JSON"));
        }
    }
}
