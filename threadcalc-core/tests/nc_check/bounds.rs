//! What a check costs at most: a fixed size, blocks that calls may run, events.

use threadcalc_core::nc::{CheckOptions, Checker, Event, ProgramCheck};

use super::told::{MILL, dialect, events, with_calls};

#[test]
fn a_check_has_a_fixed_size() {
    let size = size_of::<Checker>();
    println!("a checker is {size} bytes");
    assert!(size < 100_000, "{size} bytes");
}

#[test]
fn calls_without_end_are_followed_as_far_as_the_text_is_long() {
    let head = "G21 G90 G94 S500\nG84 Z-9. R5. F500. L0\n";
    let chain: String = (1..9).map(|place| format!("O{place}\nM98 P{} L9999\nM99\n", place + 1)).collect();
    let texts = [
        format!("{head}M98 P7 L99999999\nM30\nO7\nX1.\nM99\n"),
        format!("{head}M98 P7 L9999\nM30\nO7\nM98 P8 L9999\nM99\nO8\nX1.\nM98 P9 L9999\nM99\nO9\nX2.\nM99\n"),
        format!("{head}M98 P7\nM30\nO7\nX1.\nM98 P7 L9999\nM99\n"),
        format!("{head}{}M30\nO7\nX1.\nM98 P7 L9\nM99\n", "M98 P7\n".repeat(500)),
        format!("{head}M98 P1 L9999\nM30\n{chain}O9\nX1.\nM99\n"),
    ];
    for text in texts {
        let (mut holes, mut limits) = (0, 0);
        for event in ProgramCheck::new(text.as_bytes(), &with_calls(), &CheckOptions::default()) {
            match event {
                Event::Hole(_) => holes += 1,
                Event::Finding(finding) => limits += u32::from(finding.id().name() == "recursion-limit"),
            }
        }
        assert!(holes > 0 && holes <= 100_000 + text.len(), "{holes} holes of\n{text}");
        assert!(limits > 0, "{text}");
    }
}

#[test]
fn blocks_with_a_slash_cost_what_others_do() {
    // Every block is another branch: each is judged once with the switch on and once with it off.
    let text = format!("G21 G90 G94 S500\nG84 Z-9. R5. F500.\n{}G80\nM30\n", "/S400\n/X1.\n/S500\nX2.\n".repeat(500));
    let told = events(text.as_bytes(), &dialect(MILL));
    let holes = told.iter().filter(|event| matches!(event, Event::Hole(_))).count();
    assert_eq!(holes, 1_001);
    assert!(told.len() < 5 * holes, "{} events", told.len());
}
