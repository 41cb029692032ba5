//! Cycles whose lead is a word of its own: F does not cut it.

use threadcalc_core::nc::ProgramFindingId;

use super::told::{MILL, dialect, found};

#[test]
fn a_feed_that_cuts_no_lead_may_be_of_the_other_mode() {
    let text = "G17 G21 G90 G94 G54\nT1 M6 (TAP M8)\nG43 H1 Z5. S500 M3\nG1 X1. F1.25\n\
        G95 G98 G84 X0. Y0. Z-9. R5. K1.25\nG80\nM30\n";
    let kept = |fields: &str| {
        found(text, &dialect(&format!("{MILL} lead_word=K {fields}")))
            .contains(&ProgramFindingId::FeedModeChangeWithoutFeed)
    };
    assert!(!kept("feed_basis=lead_word"));
    assert!(kept("feed_basis=by_mode"), "the cycle takes F");
}

#[test]
fn a_feed_that_cuts_no_lead_need_not_be_known() {
    let text =
        "G17 G21 G90 G94 G54\nT1 M6 (TAP M8)\nG43 H1 Z5. S500 M3\nG98 G84 X0. Y0. Z-9. R5. K1.25 F#1\nG80\nM30\n";
    let open = |fields: &str| {
        found(text, &dialect(&format!("{MILL} lead_word=K {fields}"))).contains(&ProgramFindingId::UnresolvedValue)
    };
    assert!(!open("feed_basis=lead_word"));
    assert!(open("feed_basis=per_min_always"), "the cycle takes F");
}
