//! Lengths, decimals and number texts.

use proptest::prelude::*;
use threadcalc_core::{Code, Decimal, Length, Rounding, Text, read_number};

use crate::values::{bytes, config, length};

/// Only the reduced fraction has to fit: without the point these are one digit too large.
#[test]
fn nineteen_digits_with_a_point_read_back() {
    let largest = Length::new(4_611_686_018_427_387_904, 5).unwrap();
    assert_eq!(read_number(b"922337203685477580.8"), Ok(largest));
    assert_eq!(read_number(b"-922337203685477580.8"), Ok(largest.negative()));
    assert_eq!(read_number(b"922337203685477580.9").map_err(|error| error.code()), Err(Code::Overflow));
}

proptest! {
    #![proptest_config(config(2_000))]

    #[test]
    fn any_bytes_are_a_number_or_an_error_within_them(text in bytes()) {
        match read_number(&text) {
            Ok(value) => prop_assert_eq!(read_number(value.to_string().as_bytes()), Ok(value)),
            Err(error) => prop_assert!(error.at().is_some_and(|at| at as usize <= text.len()), "{}", error),
        }
    }

    #[test]
    fn written_lengths_read_back(value in length()) {
        prop_assert_eq!(read_number(value.to_string().as_bytes()), Ok(value));
        let (top, bottom) = (value.numerator(), value.denominator());
        prop_assert_eq!(Length::new(top, bottom), Ok(value));
        prop_assert!(bottom > 0 && value.whole().is_some() == (bottom == 1));
        prop_assert_eq!(value.is_negative(), top < 0);
        prop_assert_eq!(value.is_positive(), top > 0);
        prop_assert!(!value.magnitude().is_negative());
        prop_assert_eq!(value.negative().negative(), value);
    }

    #[test]
    fn a_decimal_has_the_fewest_decimals(value in length()) {
        if let Some(decimal) = value.as_decimal() {
            prop_assert_eq!(decimal.to_length(), Ok(value));
            prop_assert!(decimal.decimals() == 0 || decimal.units() % 10 != 0);
            prop_assert_eq!(read_number(decimal.to_string().as_bytes()), Ok(value));
        }
    }

    #[test]
    fn rounding_keeps_within_a_unit(value in length(), decimals in any::<u8>()) {
        let round = |mode| value.round_to(decimals, mode);
        match (round(Rounding::Down), round(Rounding::HalfEven), round(Rounding::Up)) {
            (Ok(down), Ok(even), Ok(up)) => {
                prop_assert!(down.units() <= even.units() && even.units() <= up.units());
                prop_assert!(up.units() - down.units() <= 1);
                prop_assert!(down.to_length().unwrap() <= value && value <= up.to_length().unwrap());
            }
            (Err(error), _, _) if decimals > 9 => prop_assert_eq!(error.code(), Code::OutOfRange),
            (down, _, up) => {
                let codes = [down, up].map(|end| end.map_or_else(|error| error.code(), |_| Code::Overflow));
                prop_assert_eq!(codes, [Code::Overflow; 2]);
            }
        }
    }

    #[test]
    fn down_to_a_multiple(value in length(), step in length()) {
        match value.down_to_multiple(step) {
            Ok(multiple) => {
                prop_assert!(multiple.over(step).is_ok_and(|steps| steps.whole().is_some()));
                prop_assert!(multiple <= value, "{} down to a multiple of {} is {}", value, step, multiple);
                prop_assert!(value.minus(multiple).map_or(true, |rest| rest < step.magnitude()));
            }
            Err(error) if step == Length::ZERO => prop_assert_eq!(error.code(), Code::OutOfRange),
            Err(error) => prop_assert_eq!(error.code(), Code::Overflow),
        }
    }

    #[test]
    fn a_double_stands_for_its_shortest_text(bits in any::<u64>(), units in any::<i32>(), decimals in 0..=9_i32) {
        // Any bits at all, then a double that is near a decimal and so has an exact value.
        for value in [f64::from_bits(bits), f64::from(units) / 10_f64.powi(decimals)] {
            let text = format!("{value}");
            let behind = text.split_once('.').map_or(0, |(_, behind)| behind.len());
            let plain = behind <= 9;
            match Length::from_f64(value) {
                // Two texts can be equally short, x.2 and x.3 for x.25: the digits are not compared.
                Ok(exact) => {
                    prop_assert!(plain && exact.to_f64() == value);
                    prop_assert_eq!(exact.as_decimal().map(|decimal| usize::from(decimal.decimals())), Some(behind));
                }
                Err(error) if value.is_finite() && plain => prop_assert_eq!(error.code(), Code::Overflow),
                Err(error) => prop_assert_eq!(error.code(), Code::NotExact),
            }
        }
    }

    #[test]
    fn decimals_show_all_their_digits(units in any::<i64>(), decimals in any::<u8>()) {
        let Ok(decimal) = Decimal::new(units, decimals) else {
            prop_assert!(decimals > 9);
            return Ok(());
        };
        let text = decimal.to_string();
        prop_assert_eq!(text.replace('.', "").parse::<i128>(), Ok(i128::from(units)));
        prop_assert_eq!(text.split_once('.').map_or(0, |(_, behind)| behind.len()), usize::from(decimals));
        prop_assert!(decimal.to_length().is_ok() || units == i64::MIN);
    }

    #[test]
    fn a_short_text_holds_all_or_nothing(first in ".{0,12}", second in ".{0,12}") {
        let mut text = Text::<16>::holding(&first).unwrap_or_default();
        let before = text.as_str().to_string();
        if text.push(&second) {
            prop_assert_eq!(text.as_str(), before.clone() + &second);
        } else {
            prop_assert!(before.len() + second.len() > 16 && text.as_str() == before);
        }
        prop_assert_eq!(text.is_empty(), text.as_str().is_empty());
    }
}
