//! Any bytes as the hole note of a drawing: what was read lies within them and makes sense.
#![no_main]

use libfuzzer_sys::fuzz_target;
use threadcalc_core::{FindingId, HoleNote, Length, NumberKey, Unit, read_hole_note};
use threadcalc_fuzz::check;

fuzz_target!(|text: &[u8]| {
    let given = if text.len() % 2 == 0 { Unit::Mm } else { Unit::Inch };
    let read = [None, Some(given)].map(|unit| read_hole_note(text, unit));
    for note in &read {
        match note {
            Ok(note) => note_is_sound(note, text),
            Err(error) => check::error_of_text(error, text),
        }
    }
    // The unit decides how long things are, not what they are.
    if let [Ok(without), Ok(with)] = &read {
        assert_eq!((without.thread(), without.count()), (with.thread(), with.count()));
        assert_eq!(without.thread_depth_mm().is_some(), with.thread_depth_mm().is_some());
    }
});

fn note_is_sound(note: &HoleNote, text: &[u8]) {
    if let Some(thread) = note.thread() {
        check::thread(&thread);
        let end = note.thread_at() + note.thread_length();
        assert!(note.thread_length() > 0 && end <= text.len(), "{} to {end}", note.thread_at());
    }
    assert!(note.count().is_none_or(|count| count > 0));
    let lengths = [
        note.thread_depth_mm(),
        note.drill_mm(),
        note.drill_depth_mm(),
        note.countersink_mm(),
        note.countersink_angle_deg(),
        note.counterbore_mm(),
        note.counterbore_depth_mm(),
        note.bolt_circle_mm(),
    ];
    assert!(lengths.into_iter().flatten().all(Length::is_positive), "{lengths:?}");
    assert!(!note.thread_through() || note.thread_depth_mm().is_none(), "through and a depth");
    assert!(!note.drill_through() || note.drill_depth_mm().is_none(), "through and a depth");
    assert!(note.has_counterbore() || note.counterbore_mm().is_none());
    assert!(note.has_countersink() || note.countersink_mm().is_none());
    for finding in note.findings().iter() {
        let shown = finding.to_string();
        assert!(
            shown.contains(finding.id().name()) && finding.numbers().all(|(_, value)| value.is_finite()),
            "{shown}"
        );
        let number = |key| finding.numbers().find(|(known, _)| *known == key).map(|(_, value)| value as usize);
        if finding.id() == FindingId::NotRead {
            let (byte, length) = (number(NumberKey::Byte), number(NumberKey::Length));
            let end = byte.zip(length).map(|(byte, length)| byte + length);
            assert!(length > Some(0) && end.is_some_and(|end| end <= text.len()), "{shown} in {} bytes", text.len());
        }
    }
}
