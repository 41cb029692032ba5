//! Designations, threads, profiles, limits and what is near.

use std::collections::hash_map::DefaultHasher;
use std::hash::{Hash, Hasher};

use proptest::prelude::*;
use threadcalc_core::{
    Code, FindingId, Form, Hand, Length, Near, Rounding, Series, Side, Thread, ToleranceClass, choice, is_iso_262,
    near, standard_threads, threads_near_diameter, threads_near_pitch,
};

use crate::values::{bytes, config, length, parts, thread};

fn hash(thread: &Thread) -> u64 {
    let mut hasher = DefaultHasher::new();
    thread.hash(&mut hasher);
    hasher.finish()
}

/// All that a thread says of itself has to agree.
fn assert_consistent(thread: &Thread) -> Result<(), TestCaseError> {
    let starts = Length::integer(thread.starts().into());
    prop_assert_eq!(thread.pitch_mm().times(starts), Ok(thread.lead_mm()));
    prop_assert!(thread.starts() >= 1 && thread.pitch_mm().is_positive() && thread.pitch_mm() < thread.major_mm());
    prop_assert_eq!(thread.threads_per_inch().is_some(), thread.form().is_inch());
    prop_assert!(
        thread.tolerance_class().is_none_or(|class| class.side().is_none_or(|side| Some(side) == thread.side()))
    );
    prop_assert_eq!(thread.pipe().is_ok(), thread.form().is_pipe());
    prop_assert_eq!(thread.nominal_mm().is_some(), !thread.form().is_pipe());
    prop_assert_eq!(thread.taper_on_diameter().is_positive(), thread.form().is_taper());
    let has_series = matches!(thread.form(), Form::Metric | Form::MetricJ | Form::Whitworth)
        || matches!(thread.form(), Form::Unified | Form::UnifiedR | Form::UnifiedJ);
    prop_assert!(!thread.is_standard() || thread.series().is_some() || !has_series);
    prop_assert!(!is_iso_262(thread) || (thread.is_standard() && choice(thread).is_some()));
    let special = !thread.with_starts(1).unwrap().is_standard();
    let found = |id| thread.findings().iter().filter(|finding| finding.id() == id).count();
    prop_assert_eq!(found(FindingId::NotStandard), usize::from(special));
    prop_assert_eq!(found(FindingId::PipeFamily), usize::from(thread.form().is_pipe()));
    prop_assert_eq!(found(FindingId::FamilyAssumed), usize::from(thread.written_as().is_some()));
    assert_near(thread)?;
    let profile = thread.profile();
    // The hole of a wire insert has no screw of its own.
    let root = if thread.is_wire_insert() { profile.minor_mm } else { profile.external_minor_mm };
    let falling = [profile.major_mm, profile.pitch_diameter_mm, profile.minor_mm, root];
    let sourced = !matches!(thread.form(), Form::Nptf | Form::Npsf);
    // Equal where the pitch is less than a double of the diameter can tell.
    prop_assert_eq!(falling.is_sorted_by(|a, b| a >= b), sourced, "{:?}", falling);
    let has_area =
        matches!(thread.form(), Form::Metric | Form::MetricJ | Form::Unified | Form::UnifiedR | Form::UnifiedJ);
    prop_assert_eq!(profile.stress_area_mm2 > 0.0, has_area && !thread.is_wire_insert());
    prop_assert!(profile.triangle_height_mm > 0.0);
    Ok(())
}

/// The letters that have to be changed, put in or left out to make one text of another.
fn edits(a: &str, b: &str) -> usize {
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, of_a) in a.bytes().enumerate() {
        let mut corner = std::mem::replace(&mut row[0], i + 1);
        for (j, of_b) in b.bytes().enumerate() {
            let changed = corner + usize::from(of_a != of_b);
            corner = row[j + 1];
            row[j + 1] = changed.min(row[j] + 1).min(corner + 1);
        }
    }
    row[b.len()]
}

/// What is near is listed, of the same form or a pipe thread, named once, and near for the reason that is given.
fn assert_near(thread: &Thread) -> Result<(), TestCaseError> {
    let figures = |text: &str| {
        let dash = text.find('-').unwrap_or(0);
        text[dash..].find(' ').map_or(text, |blank| &text[..dash + blank]).to_owned()
    };
    // Text and figures of the thread alone: one start, right hand, no class.
    let bare = Thread::from_parts(
        thread.form(),
        thread.nominal_mm().unwrap_or(thread.major_mm()),
        thread.pitch_mm(),
        1,
        Hand::Right,
        None,
        b"",
    );
    let own = figures(&bare.unwrap().to_string());
    let found: Vec<_> = near(thread).iter().map(|(text, reason)| (text.to_owned(), reason)).collect();
    for (place, (text, reason)) in found.iter().enumerate() {
        prop_assert_ne!(text, &thread.to_string());
        prop_assert!(found.iter().skip(place + 1).all(|(other, _)| other != text), "{} twice", text);
        let other = Thread::read(text.as_bytes()).unwrap();
        prop_assert!(other.is_standard() && other.is_wire_insert() == thread.is_wire_insert(), "{}", text);
        match reason {
            Near::SameDiameter => prop_assert_eq!(other.nominal_mm(), thread.nominal_mm()),
            Near::SamePitch => prop_assert_eq!(other.pitch_mm(), thread.pitch_mm()),
            Near::SameFigures => prop_assert!(other.form().is_pipe() && other.pitch_mm() == thread.pitch_mm()),
            Near::OneCharacter => {
                let of_other = figures(text.strip_suffix(" STI").unwrap_or(text));
                prop_assert_eq!(edits(&own, &of_other), 1, "{} is near {}", text, thread);
            }
            _ => prop_assert!(false, "a reason without a check: {}", reason),
        }
    }
    Ok(())
}

fn assert_reads_back(thread: &Thread) -> Result<(), TestCaseError> {
    let text = thread.to_string();
    prop_assert!(!text.is_empty() && text.is_ascii(), "{}", text);
    let read = Thread::read(text.as_bytes());
    prop_assert!(read.is_ok(), "{} {:?}", text, read);
    let read = read.unwrap();
    prop_assert_eq!(&read, thread, "{}", text);
    prop_assert_eq!(hash(&read), hash(thread));
    prop_assert_eq!(read.series(), thread.series());
    prop_assert_eq!(read.to_string(), text);
    Ok(())
}

/// Which ends of the minor diameter's limits a thread has.
fn minor_ends(thread: &Thread) -> (bool, bool) {
    let external = thread.side() == Some(Side::External);
    match thread.form() {
        Form::MetricJ => (false, false),
        Form::Npsm if external => (false, false),
        Form::UnifiedJ => (!external, false),
        _ if thread.is_wire_insert() => (true, false),
        Form::Trapezoidal => (true, external),
        Form::Ba | Form::Acme | Form::Buttress | Form::PullButtress => (true, true),
        _ => (!external, true),
    }
}

fn assert_limits(thread: &Thread) -> Result<(), TestCaseError> {
    let Ok(limits) = thread.limits() else { return Ok(()) };
    let (major, pitch, minor) = (limits.major_mm, limits.pitch_diameter_mm, limits.minor_mm);
    if matches!(thread.form(), Form::Npsc | Form::Npsm) && thread.side() != Some(Side::External) {
        // Around or above E1, with no major diameter; NPSC has no largest minor one.
        let low = minor.0.unwrap();
        prop_assert!(major == (None, None) && Some(low) < pitch.0 && pitch.0 < pitch.1, "{}", thread);
        prop_assert_eq!(minor.1.is_none(), thread.form() == Form::Npsc, "{}", thread);
        prop_assert!(minor.1.is_none_or(|high| low < high && Some(high) < pitch.0), "{}", thread);
        let said = if minor.1.is_none() { None } else { Some(true) };
        prop_assert_eq!(limits.minor_holds(low), said, "{}", thread);
        prop_assert_eq!(
            limits.minor_holds(low.minus(Length::new(1, 1000).unwrap()).unwrap()),
            Some(false),
            "{}",
            thread
        );
        return Ok(());
    }
    prop_assert_eq!((minor.0.is_some(), minor.1.is_some()), minor_ends(thread), "{}", thread);
    let ordered = |range: threadcalc_core::Range| range.0.zip(range.1).is_none_or(|(low, high)| low < high);
    prop_assert!(ordered(major) && ordered(minor) && pitch.0 < pitch.1, "{}", thread);
    if thread.side() == Some(Side::External) {
        prop_assert!(major.0 < major.1 && pitch.1 < major.1 && minor.1 < pitch.1, "{}", thread);
        return Ok(());
    }
    let has_major = !matches!(thread.form(), Form::Buttress | Form::PullButtress);
    prop_assert_eq!(major.0.is_some(), has_major, "{}", thread);
    prop_assert!(minor.0 < pitch.0 && (pitch.0 < major.0 || !has_major), "{}", thread);
    let Some(low) = minor.0 else { return Ok(()) };
    let unit = Length::new(1, 10_i64.pow(limits.decimals.into())).unwrap().times(limits.native_unit.in_mm()).unwrap();
    // Half of the third decimal, and for Unified the size and the height rounded to 4 places before;
    // twice the rounded height for G; Rp lies around its basic size; G positions lie above theirs.
    let low_mm = match (thread.form(), minor.1) {
        (Form::Rp, Some(high)) => (low.to_f64() + high.to_f64()) / 2.0,
        _ => low.to_f64(),
    };
    let above =
        if thread.form() == Form::Metric { major.0.unwrap().to_f64() - thread.major_mm().to_f64() } else { 0.0 };
    let off = (low_mm - above - thread.profile().minor_mm).abs() / limits.native_unit.in_mm().to_f64();
    let most = match thread.form() {
        Form::Unified => 0.000_6,
        form if form.is_inch() && !form.is_pipe() => 0.000_15,
        _ => 0.001_1,
    };
    prop_assert!(off <= most, "{} is {} off", thread, off);
    prop_assert_eq!(limits.minor_holds(low.minus(unit).unwrap()), Some(false), "{}", thread);
    // Nobody can say so where the largest is not known.
    prop_assert_eq!(limits.minor_holds(low), minor.1.map(|_| true), "{}", thread);
    if let Some(high) = minor.1 {
        prop_assert_eq!(limits.minor_holds(high), Some(true), "{}", thread);
        prop_assert_eq!(limits.minor_holds(high.plus(unit).unwrap()), Some(false), "{}", thread);
    }
    Ok(())
}

#[test]
fn every_standard_thread_reads_back() {
    let mut count = 0;
    for thread in standard_threads(None, None) {
        for hand in [Hand::Right, Hand::Left] {
            let thread = thread.with_hand(hand);
            assert_reads_back(&thread).unwrap();
            assert_consistent(&thread).unwrap();
            assert!(thread.is_standard(), "{thread}");
            if hand == Hand::Right {
                // As long as the names of near threads may be.
                let hole = thread.with_wire_insert().unwrap_or(thread);
                assert!(thread.to_string().len() <= 21 && hole.to_string().len() <= 21, "{hole}");
            }
        }
        let classes: &[&[u8]] = match thread.form() {
            Form::Metric => &[b"4H", b"5H", b"6H", b"8G", b"5H6H", b"4h", b"6g", b"5g6g", b"9e8e"],
            Form::Unified => &[b"1A", b"2A", b"3A", b"1B", b"2B", b"3B"],
            Form::G => &[b"A", b"B"],
            Form::Nptf => &[b"1", b"2"],
            Form::Npsm => &[b"2A", b"2B"],
            Form::MetricJ => &[b"4H5H", b"4H6H", b"6H", b"4h6h", b"4g6g", b"6g"],
            Form::Miniature => &[b"3G5", b"3G6", b"4H5", b"4H6", b"5h3"],
            Form::UnifiedR => &[b"1A", b"2A", b"3A"],
            Form::UnifiedJ => &[b"2A", b"3A", b"2B", b"3B"],
            Form::Whitworth => &[b"close", b"medium", b"free", b"normal"],
            Form::Ba => &[b"close", b"normal"],
            Form::Trapezoidal => &[b"7H", b"8H", b"9H", b"7e", b"8e", b"8c", b"9c"],
            Form::Acme => &[b"2G", b"3G", b"4G", b"2C", b"6C"],
            Form::StubAcme => &[b"2G"],
            Form::Buttress | Form::PullButtress => &[b"2", b"3", b"2A", b"3A", b"2B", b"3B"],
            _ => &[],
        };
        assert_limits(&thread).unwrap();
        for class in classes {
            let thread = thread.with_class(class).unwrap();
            for hand in [Hand::Right, Hand::Left] {
                assert_reads_back(&thread.with_hand(hand)).unwrap();
                assert_limits(&thread.with_hand(hand)).unwrap();
            }
            for sided in [Side::Internal, Side::External].map(|side| thread.with_side(side)).into_iter().flatten() {
                assert_limits(&sided).unwrap();
            }
            if let Ok(hole) = thread.with_wire_insert() {
                assert_limits(&hole).unwrap();
            }
        }
        count += 1;
    }
    let of = |form| standard_threads(Some(form), None).count();
    assert_eq!(count, Form::ALL.iter().map(|form| of(*form)).sum::<usize>());
    let by_series: usize = Series::ALL.iter().map(|series| standard_threads(None, Some(*series)).count()).sum();
    let with_series = [Form::Metric, Form::MetricJ, Form::Unified, Form::UnifiedR, Form::UnifiedJ, Form::Whitworth];
    assert_eq!(by_series, with_series.into_iter().map(of).sum::<usize>());
    assert!(count > 2_500, "{count}");
}

#[test]
fn a_pitch_too_fine_for_a_tolerance_has_no_limits() {
    // The rule would give a largest diameter at or below the smallest.
    for text in ["1 7/8-4381 UNS-3B", "19/54-1752 UNS-2B"] {
        let thread = Thread::read(text.as_bytes()).unwrap();
        assert_eq!(thread.limits().map_err(|error| error.code()), Err(Code::NotSourced), "{text}");
    }
    assert_limits(&Thread::read(b"1/4-80 UNS-3B").unwrap()).unwrap();
}

proptest! {
    #![proptest_config(config(60))]

    #[test]
    fn all_that_is_near_a_size_is_found(thread in thread(), within in parts(0..=2_000, 1_000)) {
        let (diameter, pitch) = (thread.major_mm(), thread.pitch_mm());
        let is_near = |value: Length, other: Length| value.minus(other).unwrap().magnitude() <= within;
        let of_diameter = standard_threads(None, None).filter(|other| is_near(other.major_mm(), diameter));
        let of_pitch = standard_threads(None, None).filter(|other| is_near(other.pitch_mm(), pitch));
        prop_assert!(threads_near_diameter(diameter, within).unwrap().eq(of_diameter));
        prop_assert!(threads_near_pitch(pitch, within).unwrap().eq(of_pitch));
    }
}

proptest! {
    #![proptest_config(config(3_000))]

    #[test]
    fn any_bytes_are_a_thread_or_an_error_within_them(text in bytes()) {
        match Thread::read(&text) {
            Ok(thread) => {
                assert_reads_back(&thread)?;
                assert_consistent(&thread)?;
            }
            Err(error) => prop_assert!(error.at().is_some_and(|at| at as usize <= text.len()), "{}", error),
        }
    }

    #[test]
    fn any_thread_reads_back(thread in thread()) {
        assert_reads_back(&thread)?;
        assert_consistent(&thread)?;
        assert_limits(&thread)?;
    }

    #[test]
    fn any_numbers_make_a_thread_or_an_error(
        diameter in length(), pitch in length(), starts in any::<i64>(), class in bytes(), side in any::<bool>()
    ) {
        let side = if side { Side::Internal } else { Side::External };
        for form in Form::ALL {
            let made = Thread::from_parts(*form, diameter, pitch, starts % 20, Hand::Left, Some(side), &class);
            if let Ok(thread) = made {
                assert_consistent(&thread)?;
                prop_assert_eq!((thread.side(), thread.hand()), (Some(side), Hand::Left));
            }
            if let Ok(class) = ToleranceClass::new(*form, &class) {
                prop_assert_eq!(ToleranceClass::new(*form, class.as_str().as_bytes()), Ok(class));
            }
        }
        for thread in [Thread::metric(diameter, pitch), Thread::unified(diameter, pitch)].into_iter().flatten() {
            assert_consistent(&thread)?;
            prop_assert!(!thread.to_string().is_empty(), "{:?}", thread);
        }
    }

    #[test]
    fn a_size_text_is_read_as_in_a_designation(size in bytes(), per_inch in parts(4..=160, 2)) {
        let designation = [&size[..], b"-", per_inch.to_string().as_bytes()].concat();
        if let Ok(thread) = Thread::unified_size(&size, per_inch) {
            assert_consistent(&thread)?;
            prop_assert_eq!(Thread::read(&designation), Ok(thread), "{:?}", String::from_utf8_lossy(&designation));
        }
    }

    #[test]
    fn sides_and_classes_do_not_contradict(thread in thread(), side in any::<bool>()) {
        let side = if side { Side::Internal } else { Side::External };
        match thread.with_side(side) {
            Ok(sided) => prop_assert_eq!(sided.side(), Some(side)),
            Err(error) => {
                prop_assert_eq!(error.code(), Code::Contradiction);
                let of_class = thread.tolerance_class().and_then(|class| class.side());
                let other = |own: Option<Side>| own.is_some_and(|own| own != side);
                let by_name = thread.form().is_pipe() || thread.form() == Form::UnifiedR || thread.is_wire_insert();
                prop_assert!(other(of_class) || (by_name && other(thread.side())), "{}", thread);
            }
        }
        let medium = thread.medium_internal_class().as_bytes();
        match ToleranceClass::new(thread.form(), medium) {
            // The classes of some families are for both sides.
            Ok(class) => prop_assert!(class.side() != Some(Side::External), "{}", thread),
            Err(_) => prop_assert!((thread.form().is_pipe() || thread.form() == Form::UnifiedR) && medium.is_empty()),
        }
    }

    #[test]
    fn values_not_ways_of_writing_make_threads_equal(sixty_fourths in 8..=128_i64, per_inch in parts(12..=64, 2)) {
        let inches = Length::new(sixty_fourths, 64).unwrap();
        let Ok(built) = Thread::unified(inches, per_inch) else { return Ok(()) };
        let decimal = format!("{}-{}", inches.round_to(6, Rounding::HalfEven).unwrap(), per_inch);
        prop_assert_eq!(Thread::read(decimal.as_bytes()), Ok(built), "{}", decimal);
    }
}
