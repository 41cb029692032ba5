//! What a call of a subprogram leaves behind it.

use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck};

use super::told::with_calls;

#[test]
fn a_hole_behind_a_call_is_one_of_the_calling_program() {
    let text = b"O1\nG17 G21 G90 G94 G54 S500 M3\nT1 M6 (TAP M6)\nG43 H1 Z5.\nG98 G84 X0 Y0 Z-12. R5. F500.\nM98 P7\n\
        X30.\nG80\nM30\nO7\nX10.\nM99\n";
    let holes: Vec<_> = ProgramCheck::new(text, &with_calls(), &CheckOptions::default())
        .filter_map(|event| match event {
            Event::Hole(hole) => Some((hole.line, hole.program)),
            Event::Finding(_) => None,
        })
        .collect();
    assert_eq!(holes, [(5, Some(1)), (11, Some(7)), (7, Some(1))]);
}
