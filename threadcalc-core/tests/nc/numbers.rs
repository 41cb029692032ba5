//! Numbers, as they are written and as they are meant, against the library's reader of drawn numbers.

use proptest::prelude::*;
use threadcalc_core::nc::{Blocks, Number, ReaderSettings};
use threadcalc_core::read_number;

fn number(text: &str) -> Option<Number> {
    let program = format!("X{text}\nY1 Z2 (ROOM BEHIND)");
    Blocks::new(program.as_bytes(), ReaderSettings::default()).next()?.words()[0].number()
}

proptest! {
    #[test]
    fn a_number_is_what_it_is_written_as(text in r"[+-]?(0{0,3}[0-9]{1,9}\.?|[0-9]{0,9}\.[0-9]{1,8})") {
        let read = number(&text).unwrap();
        prop_assert_eq!(read.to_string(), text.clone());
        prop_assert_eq!(read.to_length().unwrap(), read_number(text.as_bytes()).unwrap());
        prop_assert_eq!(read.had_point(), text.contains('.'));
        prop_assert_eq!(usize::from(read.decimals()), text.split_once('.').map_or(0, |(_, part)| part.len()));
    }

    #[test]
    fn up_to_18_digits_are_exact(whole in 0_i64..1_000_000_000, part in "[0-9]{9}") {
        let read = number(&format!("-{whole}.{part}")).unwrap();
        let parts: i64 = part.parse().unwrap();
        prop_assert_eq!(read.mantissa(), -(whole * 1_000_000_000 + parts));
    }
}

#[test]
fn more_than_nine_decimals_are_exact() {
    let read = number("0.000000000000000001").unwrap();
    assert_eq!((read.mantissa(), read.decimals()), (1, 18));
    let length = read.to_length().unwrap();
    assert_eq!((length.numerator(), length.denominator()), (1, 1_000_000_000_000_000_000));
    assert!(number("0.0000000000000000001").is_none());
}
