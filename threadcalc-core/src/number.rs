//! Numbers as people write them: decimal point or comma, fractions, mixed numbers; never a locale.

use crate::cursor::Cursor;
use crate::error::{Code, Error, Field};
use crate::length::{Length, MOST_DECIMALS, power_of_ten};

/// The longest number text that is looked at.
const LONGEST: usize = 64;

/// Reads an exact number: `1.25`, `1,25`, `.5`, `5.`, `-2.5`, `127/70`, `1 1/4`, `1-1/4`, `½`, `1½`.
///
/// A comma is a decimal comma: there are no thousands separators. No exponent.
///
/// # Errors
/// [`Code::Empty`], [`Code::Unreadable`] with the byte, [`Code::TooLong`], [`Code::NotExact`] above 9
/// decimals, [`Code::OutOfRange`] for a denominator of 0, [`Code::Overflow`] beyond 64 bits.
///
/// # Example
/// ```
/// use threadcalc_core::read_number;
///
/// assert_eq!(read_number(b"1,25")?, read_number(b"5/4")?);
/// assert_eq!(read_number(b"1 1/4")?.to_string(), "1.25");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 80000-1 (decimal sign: a point or a comma on the line); from memory.
pub fn read_number(text: &[u8]) -> Result<Length, Error> {
    if text.len() > LONGEST {
        return Err(Error::new(Code::TooLong, Field::Number).at_byte(LONGEST).hint_text("at most 64 bytes"));
    }
    let mut cursor = Cursor::new(text, Field::Number);
    cursor.skip_blanks();
    if cursor.is_at_end() {
        return Err(cursor.error(Code::Empty).hint_text("a number such as 1.25 or 127/70"));
    }
    let negative = cursor.take(b'-');
    if !negative {
        cursor.take(b'+');
    }
    let value = cursor.mixed_number().map_err(with_usual_hint)?;
    cursor.skip_blanks();
    if !cursor.is_at_end() {
        return Err(with_usual_hint(cursor.error(Code::Unreadable)));
    }
    Ok(if negative { value.negative() } else { value })
}

/// Where the reader of digits says nothing better.
fn with_usual_hint(error: Error) -> Error {
    let usual = error.code() == Code::Unreadable && error.hint().is_empty();
    if usual { error.hint_text("a number such as 1.25 or 127/70, without unit or exponent") } else { error }
}

/// The largest numerator and denominator of a size, a speed or a depth: 9 decimals of an inch fit, and
/// all that is written of them fits in 64 bits, so that no text can fail.
const MOST_DIGITS: i64 = 1_000_000_000_000;

/// Refuses a number with more digits than a drawing or a program has.
pub(crate) fn check_digits(value: Length, field: Field) -> Result<(), Error> {
    if value.magnitude().numerator() <= MOST_DIGITS && value.denominator() <= MOST_DIGITS {
        return Ok(());
    }
    Err(Error::new(Code::Overflow, field).got(value.to_f64()).hint_text("numerator and denominator up to 10^12"))
}

/// The exact value of a double's shortest decimal text.
pub(crate) fn from_f64(value: f64) -> Result<Length, Error> {
    const EXACT: f64 = 9_007_199_254_740_992.0;
    let not_exact = Error::new(Code::NotExact, Field::Number)
        .got(value)
        .hint_text("at most 9 decimals; give a ratio or threads per inch instead");
    if !value.is_finite() {
        return Err(not_exact.hint_text("a finite number"));
    }
    let whole = value as i64;
    if whole as f64 == value && (-EXACT..=EXACT).contains(&value) {
        return Ok(Length::integer(whole));
    }
    let mut buffer = ryu::Buffer::new();
    let text = buffer.format_finite(value);
    // As a set of one: the search for a single char links a slicing panic.
    let (mantissa, exponent) = match text.split_once(['e']) {
        Some((mantissa, exponent)) => (mantissa, exponent.parse::<i32>().unwrap_or(0)),
        None => (text, 0),
    };
    let (units, decimals) = plain_digits(mantissa.as_bytes()).ok_or(not_exact)?;
    let decimals = decimals.checked_sub(exponent).ok_or(not_exact)?;
    let overflow =
        Error::new(Code::Overflow, Field::Number).got(value).hint_text("numerator and denominator up to 10^12");
    match u8::try_from(decimals) {
        Ok(decimals) if decimals <= MOST_DECIMALS => Length::new(units, power_of_ten(decimals)?),
        Ok(_) => Err(not_exact),
        Err(_) if exponent < 0 => Err(not_exact),
        // A whole number beyond 2^53 in exponent form.
        Err(_) => {
            let zeros = u8::try_from(decimals.unsigned_abs()).ok().filter(|z| *z <= MOST_DECIMALS).ok_or(overflow)?;
            units.checked_mul(power_of_ten(zeros)?).map(Length::integer).ok_or(overflow)
        }
    }
}

/// Signed digits with a point as one whole number and its count of decimals, trailing zeros dropped.
fn plain_digits(text: &[u8]) -> Option<(i64, i32)> {
    let (mut units, mut decimals, mut zeros, mut behind, mut negative) = (0_i64, 0_i32, 0_u8, false, false);
    for byte in text {
        match byte {
            b'-' => negative = true,
            b'.' => behind = true,
            b'0' if behind => zeros = zeros.checked_add(1)?,
            digit => {
                for _ in 0..=zeros {
                    units = units.checked_mul(10)?;
                }
                if behind {
                    decimals = decimals.checked_add(i32::from(zeros))?.checked_add(1)?;
                }
                zeros = 0;
                units = units.checked_add(i64::from(digit.checked_sub(b'0')?))?;
            }
        }
    }
    Some((if negative { units.wrapping_neg() } else { units }, decimals))
}
