//! Limits of size among each other: ordered, nested by grade, and never overlapping across a fit.

use proptest::prelude::*;
use threadcalc_core::{Confidence, Form, Length, Limits, Range, Thread};

use crate::values::{config, thread};

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

#[test]
fn every_standard_thread_is_nested_and_goes_together() {
    let mut sure = std::collections::BTreeMap::new();
    for thread in threadcalc_core::standard_threads(None, None) {
        match thread.form() {
            Form::Metric => {
                assert_of_metric(&thread).unwrap();
                let confidence = limits(&thread, "6H").map(|limits| limits.confidence.name());
                *sure.entry(confidence).or_insert(0) += 1;
            }
            Form::Unified => assert_of_unified(&thread).unwrap(),
            _ => {}
        }
    }
    // Every M thread of ISO 261 has 6H limits, nearly all of cells that something confirms.
    assert_eq!(sure.get(&None), None, "{sure:?}");
    let confirmed = sure[&Some(Confidence::Confirmed.name())];
    assert!(confirmed * 5 > sure.values().sum::<i32>() * 4, "{sure:?}");
}

proptest! {
    #![proptest_config(config(1_000))]

    #[test]
    fn any_thread_is_nested_and_goes_together(thread in thread()) {
        match thread.form() {
            Form::Metric => assert_of_metric(&thread)?,
            Form::Unified => assert_of_unified(&thread)?,
            _ => {}
        }
    }

    #[test]
    fn hand_and_starts_leave_the_limits(thread in thread(), starts in 1..=12_i64) {
        if !thread.form().is_pipe() {
            let other = thread.with_starts(starts).unwrap().with_hand(threadcalc_core::Hand::Left);
            prop_assert_eq!(thread.limits(), other.limits());
        }
    }
}
