//! What findings of a program say, as somebody at the machine reads it.

use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck, ProgramFindingId, Tool};
use threadcalc_core::{Dialect, Value};

use super::told::{MILL, dialect, events};

const DRILL_AND_TAP: &str = "G17 G21 G90 G94 G54 S500 M3\nT1 M6 (DRILL 5.0)\nG43 H1 Z5.\nG98 G81 X0 Y0 Z-14. R2. F200.\n\
    G80\nT2 M6 (TAP M6)\nG43 H2 Z5.\nG98 G84 X0 Y0 Z-13. R5. F500.\nG80\nM30\n";

fn message(text: &str, id: ProgramFindingId, tools: &[Tool]) -> String {
    let (dialect, options) = (Dialect::rs274ngc(), CheckOptions::default());
    let mut check = ProgramCheck::new(text.as_bytes(), &dialect, &options);
    tools.iter().for_each(|tool| check.add_tool(tool).unwrap());
    let mut findings = check.filter_map(|event| match event {
        Event::Finding(finding) => Some(finding),
        Event::Hole(_) => None,
    });
    findings.find(|finding| finding.id() == id).unwrap().message().to_string()
}

#[test]
fn a_tap_below_the_drilled_hole_is_said_to_be_below() {
    // The cone of 118 degrees is 1.502 mm high: full diameter to 12.498 mm.
    assert_eq!(
        message(DRILL_AND_TAP, ProgramFindingId::TapBottomsHole, &[]),
        "the tap's end is 0.502 mm below the end of the drill's full diameter, 12.498 mm deep"
    );
}

#[test]
fn an_angle_that_is_told_is_not_assumed() {
    let mut drill = Tool::default();
    for (key, value) in [("number", "1"), ("point_angle_deg", "140")] {
        drill.set(key, Value::Text(value.as_bytes())).unwrap();
    }
    // 0.910 mm high: 13.090 mm.
    assert_eq!(
        message(DRILL_AND_TAP, ProgramFindingId::TapBottomsHole, &[drill]),
        "the tap's end is 0.09 mm above the end of the drill's full diameter, 13.09 mm deep"
    );
}

#[test]
fn both_pitches_of_an_ambiguous_lead_are_named() {
    let program = "G17 G21 G90 G94 G54 S500 M3\nT2 M6\nG43 H2 Z5.\nG98 G84 X0 Y0 Z-13. R5. F398.45\nG80\nM30\n";
    assert_eq!(
        message(program, ProgramFindingId::AmbiguousThread, &[]),
        "the lead 0.7969 mm fits more than one pitch: 0.8 mm or 32 TPI"
    );
}

#[test]
fn a_wrong_lead_says_how_far_off_the_tap_ends() {
    let program = DRILL_AND_TAP.replace("F500.", "F495.").replace("Z-13.", "Z-10.");
    assert_eq!(
        message(&program, ProgramFindingId::LeadMismatch, &[]),
        "cuts a lead of 0.99 mm, the thread has 1 mm: 0.1 mm off at the bottom"
    );
}

#[test]
fn what_is_assumed_and_what_depends_on_the_control_is_said() {
    let shown = |text: &str, dialect: &Dialect, id: ProgramFindingId| {
        let options = CheckOptions::default();
        let findings = ProgramCheck::new(text.as_bytes(), dialect, &options).filter_map(|event| match event {
            Event::Finding(finding) => Some(finding),
            Event::Hole(_) => None,
        });
        findings.filter(|finding| finding.id() == id).map(|finding| finding.to_string()).collect::<Vec<_>>()
    };
    let mill = Dialect::rs274ngc();
    let bottom = shown(DRILL_AND_TAP, &mill, ProgramFindingId::TapBottomsHole);
    assert!(bottom[0].ends_with("12.498 mm deep (if the drill's point has 118 degrees)"), "{bottom:?}");
    let no_unit = DRILL_AND_TAP.replace("G21 ", "");
    let open = shown(&no_unit, &mill, ProgramFindingId::DialectUnset);
    assert_eq!(
        open,
        ["warning dialect-unset, line 8, column 1: wrong where the control starts in inches; the dialect does not say"]
    );
    let left = DRILL_AND_TAP.replace("G84", "G74");
    assert_eq!(
        shown(&left, &mill, ProgramFindingId::CodeNotOnControl),
        ["error code-not-on-control, line 8, column 5: the dialect has no G74"]
    );
}

#[test]
fn what_is_not_known_is_left_out() {
    let told = |text: &str, id, fields: &str| {
        let mill = dialect(&format!("{MILL} {fields}"));
        let findings = events(text.as_bytes(), &mill).into_iter().filter_map(|event| match event {
            Event::Finding(finding) if finding.id() == id => Some(finding.message().to_string()),
            _ => None,
        });
        findings.collect::<Vec<_>>().join("; ")
    };
    let milling =
        "G17 G21 G90 G95 G54\nT1 M6 (TAP M8)\nG43 H1 Z5. S500 M3\nG98 G84 X0. Y0. Z-9. R5. F1.25\nG80\nG1 X5.\n";
    let left = |text: &str| told(text, ProgramFindingId::FeedModeLeftActive, "");
    assert_eq!(left(milling), "feed per revolution is still active: F1.25 at S500 is 625 mm/min");
    assert_eq!(left(&milling.replace(" S500", "")), "feed per revolution is still active: F1.25");
    let tapping = "G17 G21 G90 G94 G54\nT1 M6 (TAP M8)\nG43 H1 Z5.\nG98 G84 X0. Y0. Z-9000 R5. F625.\nG80\n";
    let counted = |fields: &str| told(tapping, ProgramFindingId::ImplicitDecimalUsed, fields);
    let count = "a word without a point counts least increments here";
    assert_eq!(counted("no_point=least_increment least_increment.axis.mm=0.001"), format!("{count}: it is -9"));
    assert_eq!(counted("no_point=least_increment"), count);
}
