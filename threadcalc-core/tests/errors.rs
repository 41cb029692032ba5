//! The error and its codes: numbers, names and texts are a contract, and each code has a cause.

use std::collections::HashSet;

use threadcalc_core::{
    Basis, Code, Drill, DrillSet, DrillSets, Error, FeedMode, Field, Job, Length, Tap, TapDrillRequest, Thread, Unit,
    Value, feed, percent_thread, read_number, tap_drill,
};

/// Number, name and text of every code.
const CONTRACT: [(Code, i32, &str, &str); 24] = [
    (Code::Empty, 1, "empty", "nothing to read"),
    (Code::Unreadable, 2, "unreadable", "cannot be read"),
    (Code::TooLong, 3, "too-long", "too long"),
    (Code::NotExact, 4, "not-exact", "not an exact number"),
    (Code::OutOfRange, 5, "out-of-range", "out of range"),
    (Code::Overflow, 6, "overflow", "too large for exact arithmetic"),
    (Code::SeriesMismatch, 7, "series-mismatch", "the series contradicts the pitch"),
    (Code::UnknownClass, 8, "unknown-class", "no such tolerance class for this thread"),
    (Code::ClassUnset, 9, "class-unset", "no tolerance class given"),
    (Code::NotSourced, 10, "not-sourced", "the standard's value is not sourced yet"),
    (Code::FeedRoundsToZero, 11, "feed-rounds-to-zero", "the feed rounds to zero at these decimals"),
    (Code::Missing, 12, "missing", "missing"),
    (Code::UnknownValue, 13, "unknown-value", "not one of the choices"),
    (Code::UnknownKey, 14, "unknown-key", "unknown key"),
    (Code::Contradiction, 15, "contradiction", "contradicts another value"),
    (Code::NoDrill, 16, "no-drill", "no drill of these sets fits"),
    (Code::Fit, 17, "fit", "a fit names two threads"),
    (Code::UnsupportedForm, 18, "unsupported-form", "this thread form is not supported yet"),
    (Code::DoesNotApply, 19, "does-not-apply", "has no meaning for this thread"),
    (Code::NullPointer, 100, "null-pointer", "null pointer"),
    (Code::StructureSize, 101, "structure-size", "wrong structure size"),
    (Code::BufferTooShort, 102, "buffer-too-short", "buffer too short"),
    (Code::UnsupportedField, 103, "unsupported-field", "not supported yet"),
    (Code::BadJson, 104, "bad-json", "not readable as JSON"),
];

#[test]
fn codes_keep_number_name_and_text() {
    let all: Vec<Code> = CONTRACT.iter().map(|row| row.0).collect();
    assert_eq!(all, Code::ALL);
    for (code, number, name, text) in CONTRACT {
        assert_eq!((code.number(), code.name(), code.to_string().as_str()), (number, name, text));
        assert_eq!(Code::from_number(number), Some(code));
    }
    assert_eq!(CONTRACT.iter().map(|row| row.1).collect::<HashSet<_>>().len(), CONTRACT.len());
    assert_eq!(CONTRACT.iter().map(|row| row.2).collect::<HashSet<_>>().len(), CONTRACT.len());
    for unknown in [0, -1, 20, 99, 105, i32::MIN, i32::MAX, 65_537] {
        assert_eq!(Code::from_number(unknown), None);
    }
}

/// A call of the core for each code, as a caller can write it.
fn causes() -> Vec<(Code, Error)> {
    fn refused<T>(result: Result<T, Error>) -> Error {
        result.err().expect("an error")
    }
    fn read(text: &[u8]) -> Error {
        refused(Thread::read(text))
    }
    fn per_minute(rpm: Option<Length>, decimals: u8) -> Error {
        let pitch = Length::new(1, 2).unwrap();
        refused(feed(pitch, rpm, Unit::Mm, FeedMode::PerMinute, decimals))
    }
    let m3 = Thread::read(b"M3x0.5-6H").unwrap();
    let fractional = DrillSets::NONE.with(DrillSet::Fractional);
    let request = TapDrillRequest { tap: Tap::Cut, percent: None, basis: None, sets: fractional, taper_reamer: false };
    let form_with_basis = percent_thread(&m3, Length::ONE, Tap::Form, Some(Basis::FiveEighthsH));
    vec![
        (Code::Empty, read(b" ")),
        (Code::Unreadable, read(b"M8x")),
        (Code::TooLong, read(&[b'1'; 81])),
        (Code::NotExact, refused(Length::from_f64(f64::NAN))),
        (Code::OutOfRange, refused(read_number(b"1/0"))),
        (Code::Overflow, refused(Length::integer(i64::MAX).plus(Length::ONE))),
        (Code::SeriesMismatch, read(b"1/4-20 UNF")),
        (Code::UnknownClass, read(b"M8-9Z")),
        (Code::ClassUnset, refused(Thread::read(b"M8").unwrap().limits())),
        (Code::NotSourced, refused(Thread::read(b"M400x6-6g").unwrap().limits())),
        (Code::FeedRoundsToZero, per_minute(Some(Length::ONE), 0)),
        (Code::Missing, per_minute(None, 3)),
        (Code::UnknownValue, refused(Drill::named(DrillSet::Number, b"#98"))),
        (Code::UnknownKey, refused(Job::default().set("thred", Value::Text(b"M8")))),
        (Code::Contradiction, refused(form_with_basis)),
        (Code::NoDrill, refused(tap_drill(&m3, &request))),
        (Code::Fit, read(b"M8-6H/6g")),
        (Code::UnsupportedForm, read(b"Rd 40x1/6")),
        (Code::DoesNotApply, refused(m3.pipe())),
    ]
}

#[test]
fn every_code_of_the_core_has_a_cause() {
    let causes = causes();
    for (code, error) in &causes {
        assert_eq!(error.code(), *code, "{error}");
    }
    let caused: HashSet<Code> = causes.iter().map(|(code, _)| *code).collect();
    let without: Vec<_> = Code::ALL.iter().filter(|code| code.number() < 100 && !caused.contains(code)).collect();
    assert!(without.is_empty(), "codes that nothing causes: {without:?}");
}

#[test]
fn every_error_says_what_and_what_would_be_right() {
    for (_, error) in causes() {
        let text = error.to_string();
        let start = format!("{}: {}", error.field().name(), error.code());
        assert!(text.starts_with(&start), "{text}");
        let has_way_out = !error.hint().is_empty() || !error.low().is_nan() || error.code() == Code::Overflow;
        assert!(has_way_out, "{text} tells no way out");
    }
}

#[test]
fn texts_are_whole() {
    let read = |text: &[u8]| Thread::read(text).err().map(|error| error.to_string());
    assert_eq!(
        read(b"M8x1.25 garbage").as_deref(),
        Some(
            "designation: cannot be read at byte 8; a designation such as M8x1.25-6H, 1/4-20 UNC-2B, G1/2 or 1/4-18 NPT"
        )
    );
    let error = Error::new(Code::OutOfRange, Field::Percent).got(120.0).within(0.0, 100.0);
    assert_eq!(error.to_string(), "percent: out of range, got 120, expected 0 to 100");
    assert_eq!(error.within(1.0, f64::NAN).to_string(), "percent: out of range, got 120, at least 1");
    assert_eq!(error.within(f64::NAN, 1.5).to_string(), "percent: out of range, got 120, at most 1.5");
    let key = Job::default().set("decimal", Value::Absent).err().map(|error| error.to_string());
    assert_eq!(key.as_deref(), Some("key: unknown key; the nearest known key is decimals"));
}

#[test]
fn an_error_is_a_small_copy_with_equality_on_its_values() {
    fn is_copy<T: Copy + Eq + std::error::Error + Send + Sync + 'static>() {}
    is_copy::<Error>();
    assert!(size_of::<Error>() <= 48);
    let error = Error::new(Code::OutOfRange, Field::Rpm).got(f64::NAN);
    assert_eq!(error, error.at_byte(usize::MAX), "an offset that no text has is none");
    assert_ne!(error, error.at_byte(3));
    assert_ne!(error, error.got(1.0));
    assert_ne!(error, error.about(Field::Step));
    assert_eq!(error.at_byte(3).at(), Some(3));
    assert!(error.value().is_nan() && error.at().is_none());
}

#[test]
fn choices_keep_their_numbers_and_names() {
    // Numbers that are not taken are left out, and none is used twice.
    let rising = Field::ALL.windows(2).all(|pair| pair[0].number() < pair[1].number());
    assert!(rising && Field::ALL[0].number() == 1, "fields in the order of their numbers");
    for field in Field::ALL {
        assert_eq!(Field::from_number(field.number()), Some(*field));
        assert_eq!(Field::from_name(field.name().as_bytes()), Some(*field));
    }
    assert_eq!((Field::from_number(0), Field::from_name(b"")), (None, None));
    assert_eq!(FeedMode::from_name(b"Per-Minute"), Some(FeedMode::PerMinute));
    assert_eq!(FeedMode::CHOICES, "one of: per_minute per_revolution");
}
