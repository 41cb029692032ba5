//! Any bytes as a number, as a double, and as two numbers to compute with.
#![no_main]

use libfuzzer_sys::fuzz_target;
use threadcalc_core::{Code, Length, read_number};
use threadcalc_fuzz::check;

fuzz_target!(|text: &[u8]| {
    match read_number(text) {
        Ok(number) => check::number(number),
        Err(error) => check::error_of_text(&error, text),
    }
    if let Some(bytes) = text.first_chunk() {
        double(f64::from_le_bytes(*bytes));
    }
    let mut parts = text.splitn(2, |byte| *byte == b';').map(read_number);
    if let (Some(Ok(left)), Some(Ok(right))) = (parts.next(), parts.next()) {
        pair(left, right);
    }
});

/// A double stands for its shortest decimal text, so it is the double nearest to its exact number.
fn double(value: f64) {
    match Length::from_f64(value) {
        Ok(number) => {
            assert_eq!(number.to_f64(), value);
            check::number(number);
        }
        Err(error) => {
            check::error(&error);
            assert!(matches!(error.code(), Code::NotExact | Code::Overflow), "{error}");
        }
    }
}

/// What one operation does, its inverse undoes, exactly, wherever both have a result.
fn pair(left: Length, right: Length) {
    if let Ok(back) = left.plus(right).and_then(|sum| sum.minus(right)) {
        assert_eq!(back, left);
    }
    if let Ok(back) = left.times(right).and_then(|product| product.over(right)) {
        assert_eq!(back, left);
    }
    if let Ok(difference) = left.minus(right) {
        assert_eq!(difference.cmp(&Length::ZERO), left.cmp(&right));
    }
    assert_eq!(left.cmp(&right), right.cmp(&left).reverse());
    // Rounding to a double keeps the order, though it may make neighbours equal.
    assert!(left.to_f64() == right.to_f64() || (left.to_f64() < right.to_f64()) == (left < right));
    if let Ok(multiple) = left.down_to_multiple(right) {
        assert!(multiple <= left);
        if let Ok(rest) = left.minus(multiple) {
            assert!(rest < right.magnitude(), "{left} down to a multiple of {right} is {multiple}");
        }
    }
}
