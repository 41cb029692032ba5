//! Limits of size among each other: ordered, nested by grade, and never overlapping across a fit.

use proptest::prelude::*;
use threadcalc_core::{Confidence, Form, Hand, Length, Limits, Range, Side, Thread};

use crate::values::{config, parts, thread};

fn limits(thread: &Thread, class: &str) -> Option<Limits> {
    thread.with_class(class.as_bytes()).ok().and_then(|thread| thread.limits().ok())
}

fn ranges(limits: &Limits) -> [Range; 3] {
    [limits.major_mm, limits.pitch_diameter_mm, limits.minor_mm]
}

/// Whether `inner` lies within `outer`; an end that is not set is open.
fn within(inner: Range, outer: Range) -> bool {
    outer.0.is_none_or(|low| inner.0.is_some_and(|own| low <= own))
        && outer.1.is_none_or(|high| inner.1.is_some_and(|own| own <= high))
}

fn width(range: Range) -> Length {
    range.1.unwrap().minus(range.0.unwrap()).unwrap()
}

/// Every class within the next coarser one of the same position.
fn assert_nested(thread: &Thread, classes: &[&str]) -> Result<(), TestCaseError> {
    for pair in classes.windows(2) {
        let [fine, coarse] = [limits(thread, pair[0]), limits(thread, pair[1])];
        let (Some(fine), Some(coarse)) = (fine, coarse) else { continue };
        for (mut fine, coarse) in ranges(&fine).into_iter().zip(ranges(&coarse)) {
            // 2B minor diameters are given to 3 places, those of 3B to 4: 10-32 has 0.164 and 0.1641.
            if pair[0] == "3B" && fine.1 > coarse.1 {
                let rounded = Length::new(127, 10_000).unwrap();
                prop_assert!(fine.1.unwrap().minus(coarse.1.unwrap()).unwrap() <= rounded, "{} {:?}", thread, fine);
                fine.1 = coarse.1;
            }
            prop_assert!(within(fine, coarse), "{} {:?}: {:?} in {:?}", thread, pair, fine, coarse);
        }
        let (fine, coarse) = (width(fine.pitch_diameter_mm), width(coarse.pitch_diameter_mm));
        prop_assert!(fine < coarse || thread.form() == Form::Unified, "{} {:?}", thread, pair);
    }
    Ok(())
}

/// The largest external thread goes into the smallest internal one, at every diameter.
fn assert_goes_in(thread: &Thread, internal: &str, external: &str) -> Result<(), TestCaseError> {
    let (Some(hole), Some(screw)) = (limits(thread, internal), limits(thread, external)) else { return Ok(()) };
    for (hole, screw) in ranges(&hole).into_iter().zip(ranges(&screw)) {
        prop_assert!(screw.1 <= hole.0, "{} {} in {}: {:?} {:?}", thread, external, internal, screw, hole);
    }
    Ok(())
}

const GRADES: [&str; 5] = ["4", "5", "6", "7", "8"];

fn assert_of_metric(thread: &Thread) -> Result<(), TestCaseError> {
    for position in ["H", "G"] {
        let classes = GRADES.map(|grade| format!("{grade}{position}"));
        assert_nested(thread, &classes.each_ref().map(String::as_str))?;
    }
    for position in ["h", "g", "f", "e"] {
        let pitch = ["3", "4", "5", "6", "7", "8", "9"].map(|grade| format!("{grade}{position}6{position}"));
        assert_nested(thread, &pitch.each_ref().map(String::as_str))?;
        let crest = ["4", "6", "8"].map(|grade| format!("{grade}{position}"));
        assert_nested(thread, &crest.each_ref().map(String::as_str))?;
    }
    for (internal, external) in [("4H", "4h"), ("6H", "6h"), ("8H", "9h8h"), ("6H", "6g"), ("6G", "6g"), ("6H", "6e")] {
        assert_goes_in(thread, internal, external)?;
    }
    // From h to e there is more and more room.
    let largest = ["6h", "6g", "6f", "6e"].map(|class| limits(thread, class).map(|l| l.pitch_diameter_mm.1));
    prop_assert!(largest.is_sorted_by(|a, b| a > b || a.is_none()), "{} {:?}", thread, largest);
    Ok(())
}

fn assert_of_unified(thread: &Thread) -> Result<(), TestCaseError> {
    assert_nested(thread, &["3B", "2B", "1B"])?;
    assert_nested(thread, &["2A", "1A"])?;
    for (internal, external) in [("3B", "3A"), ("2B", "2A"), ("2B", "3A"), ("1B", "1A"), ("3B", "1A")] {
        let (Some(hole), Some(screw)) = (limits(thread, internal), limits(thread, external)) else { continue };
        let (pitch, major) = (hole.pitch_diameter_mm.0, hole.major_mm.0.unwrap().to_f64());
        prop_assert!(screw.pitch_diameter_mm.1 <= pitch, "{} {} {}", thread, internal, external);
        // The screw's size is held to 4 places, the hole's is the exact one.
        prop_assert!(screw.major_mm.1.unwrap().to_f64() <= major + 0.000_051 * 25.4, "{}", thread);
        prop_assert!(screw.minor_mm.1 < hole.minor_mm.0, "{} the rounded root clears the crest", thread);
    }
    Ok(())
}

/// A class of both sides, on one of them.
fn sided(thread: &Thread, class: &str, side: Side) -> Option<Limits> {
    let thread = thread.with_class(class.as_bytes()).and_then(|thread| thread.with_side(side)).ok()?;
    thread.limits().ok()
}

fn assert_of_acme(thread: &Thread) -> Result<(), TestCaseError> {
    const CLASSES: [&str; 3] = ["4G", "3G", "2G"];
    let [holes, screws] = [Side::Internal, Side::External].map(|side| CLASSES.map(|class| sided(thread, class, side)));
    for pair in holes.windows(2).chain(screws.windows(2)) {
        let [Some(fine), Some(coarse)] = pair else { continue };
        prop_assert!(width(fine.pitch_diameter_mm) < width(coarse.pitch_diameter_mm), "{}", thread);
    }
    for pair in holes.windows(2) {
        let [Some(fine), Some(coarse)] = pair else { continue };
        for (fine, coarse) in ranges(fine).into_iter().zip(ranges(coarse)) {
            prop_assert!(within(fine, coarse), "{} {:?} in {:?}", thread, fine, coarse);
        }
    }
    // Every screw goes into every hole, whatever the classes: each has an allowance.
    for (hole, screw) in holes.iter().flatten().flat_map(|hole| screws.iter().flatten().map(move |s| (hole, s))) {
        for (hole, screw) in ranges(hole).into_iter().zip(ranges(screw)) {
            prop_assert!(screw.1 <= hole.0, "{}: {:?} {:?}", thread, screw, hole);
        }
        prop_assert!(screw.pitch_diameter_mm.1 < hole.pitch_diameter_mm.0, "{}", thread);
    }
    Ok(())
}

/// Screws of ISO 2903 leave the sizes of the profile at the crests and the deviation at the flanks, so that each goes
/// into every hole.
fn assert_of_trapezoidal(thread: &Thread) -> Result<(), TestCaseError> {
    const HOLES: [&str; 3] = ["7H", "8H", "9H"];
    const SCREWS: [&str; 4] = ["7e", "8e", "8c", "9c"];
    let profile = thread.profile();
    let high = |range: Range| range.1.unwrap().to_f64();
    for screw in SCREWS.map(|class| limits(thread, class)) {
        // What is read of a size is read of every class.
        let Some(screw) = screw else { return Ok(()) };
        prop_assert_eq!(screw.major_mm.1, Some(thread.major_mm()));
        prop_assert!((high(screw.minor_mm) - profile.external_minor_mm).abs() < 1e-9, "{}", thread);
        prop_assert!(width(screw.pitch_diameter_mm) < width(screw.minor_mm), "{}", thread);
    }
    for hole in HOLES.map(|class| limits(thread, class).unwrap()) {
        let low = |range: Range| range.0.unwrap().to_f64();
        prop_assert!((low(hole.pitch_diameter_mm) - profile.pitch_diameter_mm).abs() < 1e-9, "{}", thread);
        prop_assert!((low(hole.minor_mm) - profile.minor_mm).abs() < 1e-9, "{}", thread);
        prop_assert!(hole.major_mm.0 > Some(thread.major_mm()), "{} the screw's crests clear the root", thread);
        prop_assert_eq!([hole.major_mm.1, hole.minor_mm.1], [None; 2], "{}", thread);
    }
    assert_nested(thread, &HOLES)?;
    assert_nested(thread, &["7e", "8e"])?;
    assert_nested(thread, &["8c", "9c"])?;
    for (internal, external) in HOLES.iter().flat_map(|hole| SCREWS.iter().map(move |screw| (hole, screw))) {
        assert_goes_in(thread, internal, external)?;
    }
    // c leaves more room than e; the same grade is as wide in both.
    let [e, c] = ["8e", "8c"].map(|class| limits(thread, class).unwrap());
    prop_assert!(c.pitch_diameter_mm.1 < e.pitch_diameter_mm.1, "{}", thread);
    prop_assert_eq!(width(c.pitch_diameter_mm), width(e.pitch_diameter_mm), "{}", thread);
    Ok(())
}

fn assert_of_larger_root(thread: &Thread) -> Result<(), TestCaseError> {
    if thread.form() == Form::MetricJ {
        for (internal, external) in [("4H5H", "4h6h"), ("4H6H", "4g6g"), ("6H", "6g")] {
            assert_goes_in(thread, internal, external)?;
        }
        return assert_nested(thread, &["4H5H", "5H6H", "6H"]);
    }
    let (Some(hole), Some(screw)) = (limits(thread, "3B"), limits(thread, "3A")) else { return Ok(()) };
    // 3A has no allowance: the flanks of the largest screw touch those of the smallest hole.
    prop_assert_eq!(screw.pitch_diameter_mm.1, hole.pitch_diameter_mm.0, "{}", thread);
    let coarser = limits(thread, "2B").unwrap();
    prop_assert!(within(hole.pitch_diameter_mm, coarser.pitch_diameter_mm), "{}", thread);
    Ok(())
}

/// The hole of an insert is the screw's hole, larger and no wider.
fn assert_of_wire_insert(thread: &Thread) -> Result<(), TestCaseError> {
    let classes: &[&str] = if thread.form() == Form::Metric { &["4H", "5H", "6H"] } else { &["3B", "2B"] };
    // Of one start, and internal or of no side yet.
    let Ok(hole) = thread.with_wire_insert() else { return Ok(()) };
    for class in classes {
        let (Some(own), Some(of_screw)) = (limits(&hole, class), limits(thread, class)) else { continue };
        prop_assert_eq!(width(own.pitch_diameter_mm), width(of_screw.pitch_diameter_mm), "{} {}", hole, class);
        prop_assert!(own.minor_mm.0 > Some(thread.major_mm()), "{} the screw passes", hole);
    }
    assert_nested(&hole, classes)
}

fn assert_of_buttress(thread: &Thread) -> Result<(), TestCaseError> {
    let (bare, sided) = (sided(thread, "2", Side::Internal), limits(thread, "2B"));
    prop_assert_eq!(bare, sided, "{}", thread);
    if let Some(hole) = sided {
        prop_assert_eq!(width(hole.pitch_diameter_mm), width(hole.minor_mm), "{}", thread);
    }
    Ok(())
}

fn assert_of_family(thread: &Thread) -> Result<(), TestCaseError> {
    match thread.form() {
        // The screw's thread stands for its hole as well.
        _ if thread.is_wire_insert() => Ok(()),
        Form::Metric => {
            assert_of_wire_insert(thread)?;
            assert_of_metric(thread)
        }
        Form::Unified => {
            assert_of_wire_insert(thread)?;
            assert_of_unified(thread)
        }
        Form::Acme => assert_of_acme(thread),
        Form::Trapezoidal => assert_of_trapezoidal(thread),
        Form::MetricJ | Form::UnifiedJ => assert_of_larger_root(thread),
        Form::Buttress | Form::PullButtress => assert_of_buttress(thread),
        _ => Ok(()),
    }
}

/// How sure limits are, from what was read and what was not.
#[test]
fn confidence_says_what_was_read() {
    use Confidence::{Confirmed, Memory, Rule};
    for (text, side, confidence) in [
        ("1-5 ACME-2G", Some(Side::External), Rule),
        ("1 3/4-4 ACME-2G", Some(Side::External), Memory),
        ("1-5 ACME-3G", Some(Side::External), Memory),
        ("1-5 ACME-3G", Some(Side::Internal), Rule),
        ("3/8-12 ACME-2G", Some(Side::Internal), Memory),
        ("Tr10x2-7e", None, Confirmed),
        ("Tr8x1.5-7e", None, Rule),
        ("Tr10x2-8e", None, Rule),
        ("Tr40x7-8c", None, Rule),
        ("Tr40x7-7H", None, Rule),
        // The deviation e of pitches above 5 mm has not been read.
        ("Tr40x7-7e", None, Memory),
        ("2-12 BUTT-2B", None, Rule),
        ("MJ6x1-4g6g", None, Rule),
        ("1/4-28 UNJF-3B", None, Rule),
        ("1/4-20 STI-2B", None, Memory),
        ("M6x1 STI-5H", None, Memory),
    ] {
        let thread = Thread::read(text.as_bytes()).unwrap();
        let thread = side.map_or(thread, |side| thread.with_side(side).unwrap());
        assert_eq!(thread.limits().map(|limits| limits.confidence), Ok(confidence), "{text} {side:?}");
    }
}

#[test]
fn every_standard_thread_is_nested_and_goes_together() {
    let (mut sure, mut trapezoidal) = (std::collections::BTreeMap::new(), std::collections::BTreeMap::new());
    for thread in threadcalc_core::standard_threads(None, None) {
        assert_of_family(&thread).unwrap();
        if thread.form() == Form::Metric {
            let confidence = limits(&thread, "6H").map(|limits| limits.confidence.name());
            *sure.entry(confidence).or_insert(0) += 1;
        }
        if thread.form() == Form::Trapezoidal {
            *trapezoidal.entry(limits(&thread, "7H").is_some()).or_insert(0) += 1;
        }
    }
    // Tr22x8 and the sizes above 180 mm have no limits that were read.
    assert_eq!(trapezoidal, [(false, 1 + 3 * 14), (true, 142)].into());
    // Every M thread of ISO 261 has 6H limits, nearly all of cells that something confirms.
    assert_eq!(sure.get(&None), None, "{sure:?}");
    let confirmed = sure[&Some(Confidence::Confirmed.name())];
    assert!(confirmed * 5 > sure.values().sum::<i32>() * 4, "{sure:?}");
}

proptest! {
    #![proptest_config(config(1_000))]

    #[test]
    fn any_thread_is_nested_and_goes_together(thread in thread()) {
        assert_of_family(&thread)?;
    }

    #[test]
    fn any_size_of_a_family_is_nested_and_goes_together(
        size in parts(1..=3_840, 160), per_inch in parts(1..=400, 10), millimetres in parts(56..=450, 10),
        pitch in parts(3..=12, 2)
    ) {
        let inch = per_inch.is_positive().then(|| Length::INCH.over(per_inch).unwrap());
        let inches = size.times(Length::INCH).unwrap();
        for (form, diameter, pitch) in [
            (Form::Acme, inches, inch),
            (Form::UnifiedJ, inches, inch),
            (Form::Buttress, inches, inch),
            (Form::PullButtress, inches, inch),
            (Form::MetricJ, millimetres, Some(pitch)),
            (Form::Trapezoidal, millimetres, Some(pitch)),
        ] {
            let Some(pitch) = pitch else { continue };
            if let Ok(thread) = Thread::from_parts(form, diameter, pitch, 1, Hand::Right, None, b"") {
                assert_of_family(&thread)?;
            }
        }
    }

    #[test]
    fn hand_and_starts_leave_the_limits(thread in thread(), starts in 1..=12_i64) {
        if matches!(thread.form(), Form::Metric | Form::Unified | Form::UnifiedR) {
            // The holes of wire inserts have one start.
            let other = thread.with_starts(starts).unwrap_or(thread).with_hand(threadcalc_core::Hand::Left);
            prop_assert_eq!(thread.limits(), other.limits());
        }
    }
}
