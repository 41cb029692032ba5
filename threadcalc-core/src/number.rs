//! Numbers as people write them: decimal point or comma, fractions, mixed numbers; never a locale.

use crate::error::{Code, Error, Field};
use crate::length::{Length, MOST_DECIMALS, power_of_ten};

/// The longest number text that is looked at.
const LONGEST: usize = 64;

/// Reads an exact number: `1.25`, `1,25`, `.5`, `5.`, `-2.5`, `127/70`, `1 1/4`, `1-1/4`.
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
    let value = cursor.mixed_number()?;
    cursor.skip_blanks();
    if !cursor.is_at_end() {
        return Err(cursor
            .error(Code::Unreadable)
            .hint_text("a number such as 1.25 or 127/70, without unit or exponent"));
    }
    Ok(if negative { value.negative() } else { value })
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
        return Err(not_exact);
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
    let overflow = Error::new(Code::Overflow, Field::Number).got(value);
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

/// A place in a text that is read as bytes.
pub(crate) struct Cursor<'a> {
    text: &'a [u8],
    place: usize,
    field: Field,
}

impl<'a> Cursor<'a> {
    pub(crate) const fn new(text: &'a [u8], field: Field) -> Self {
        Self { text, place: 0, field }
    }

    pub(crate) const fn error(&self, code: Code) -> Error {
        Error::new(code, self.field).at_byte(self.place)
    }

    pub(crate) const fn place(&self) -> usize {
        self.place
    }

    pub(crate) fn go_back_to(&mut self, place: usize) {
        self.place = place;
    }

    pub(crate) fn rest(&self) -> &'a [u8] {
        self.text.get(self.place..).unwrap_or(&[])
    }

    pub(crate) fn since(&self, start: usize) -> &'a [u8] {
        self.text.get(start..self.place).unwrap_or(&[])
    }

    pub(crate) fn peek(&self) -> Option<u8> {
        self.text.get(self.place).copied()
    }

    pub(crate) fn is_at_end(&self) -> bool {
        self.place >= self.text.len()
    }

    pub(crate) fn skip(&mut self, count: usize) {
        self.place = self.place.saturating_add(count).min(self.text.len());
    }

    pub(crate) fn skip_blanks(&mut self) {
        while matches!(self.peek(), Some(b' ' | b'\t')) {
            self.skip(1);
        }
    }

    pub(crate) fn take(&mut self, byte: u8) -> bool {
        let found = self.peek() == Some(byte);
        if found {
            self.skip(1);
        }
        found
    }

    /// Takes an ASCII word, whatever its case, that is not followed by a further letter.
    pub(crate) fn take_word(&mut self, word: &[u8]) -> bool {
        let rest = self.rest();
        let found = rest.len() >= word.len()
            && rest.iter().zip(word).all(|(a, b)| a.eq_ignore_ascii_case(b))
            && !rest.get(word.len()).is_some_and(u8::is_ascii_alphabetic);
        if found {
            self.skip(word.len());
        }
        found
    }

    fn digit(&self) -> Option<i64> {
        self.peek().filter(u8::is_ascii_digit).map(|byte| i64::from(byte & 15))
    }

    /// An error about a number's value speaks of the whole number: it points at its first byte.
    fn about_number_at(&self, start: usize, error: Error) -> Error {
        if error.code() == Code::Unreadable { error } else { error.about(self.field).at_byte(start) }
    }

    /// Digits only; `None` if there is none here.
    pub(crate) fn whole_number(&mut self) -> Result<Option<i64>, Error> {
        let start = self.place;
        let mut value = None;
        while let Some(digit) = self.digit() {
            let sum = value.unwrap_or(0_i64).checked_mul(10).and_then(|tens| tens.checked_add(digit));
            value = Some(sum.ok_or(Error::new(Code::Overflow, self.field).at_byte(start))?);
            self.skip(1);
        }
        Ok(value)
    }

    /// `12`, `1.25`, `1,25`, `.5`, `5.`
    pub(crate) fn decimal(&mut self) -> Result<Length, Error> {
        let start = self.place;
        self.decimal_parts().map_err(|error| self.about_number_at(start, error))
    }

    fn decimal_parts(&mut self) -> Result<Length, Error> {
        let whole = self.whole_number()?;
        if !matches!(self.peek(), Some(b'.' | b',')) {
            return whole.map(Length::integer).ok_or(self.error(Code::Unreadable));
        }
        self.skip(1);
        let (mut part, mut decimals, mut zeros) = (0_i64, 0_u8, 0_u8);
        let behind = self.place;
        while let Some(digit) = self.digit() {
            if digit == 0 {
                zeros = zeros.saturating_add(1);
            } else {
                let more = zeros.saturating_add(1);
                decimals = decimals.saturating_add(more);
                if decimals > MOST_DECIMALS {
                    return Err(self
                        .error(Code::NotExact)
                        .hint_text("at most 9 decimals; give a ratio or threads per inch instead"));
                }
                part = part
                    .checked_mul(power_of_ten(more)?)
                    .and_then(|part| part.checked_add(digit))
                    .ok_or(self.error(Code::Overflow))?;
                zeros = 0;
            }
            self.skip(1);
        }
        if whole.is_none() && self.place == behind {
            return Err(self.error(Code::Unreadable));
        }
        Length::with_decimals(whole.unwrap_or(0), part, power_of_ten(decimals)?)
    }

    /// A decimal, `3/4`, `1 1/4` or `1-1/4`.
    pub(crate) fn mixed_number(&mut self) -> Result<Length, Error> {
        self.mixed(b" -")
    }

    /// Threads per inch: `20`, `4.5`, `4 1/2`; a dash ends them.
    pub(crate) fn mixed_threads(&mut self) -> Result<Length, Error> {
        self.mixed(b" ")
    }

    fn mixed(&mut self, joints: &[u8]) -> Result<Length, Error> {
        let start = self.place;
        self.mixed_parts(joints).map_err(|error| self.about_number_at(start, error))
    }

    fn mixed_parts(&mut self, joints: &[u8]) -> Result<Length, Error> {
        let first = self.decimal()?;
        if first.whole().is_none() {
            return Ok(first);
        }
        if self.take(b'/') {
            return self.over_denominator(first);
        }
        let after_first = self.place;
        if self.peek().is_some_and(|byte| joints.contains(&byte)) {
            self.skip(1);
            if let Some(top) = self.whole_number()? {
                if self.take(b'/') {
                    return first.plus(self.over_denominator(Length::integer(top))?);
                }
            }
            self.place = after_first;
        }
        Ok(first)
    }

    fn over_denominator(&mut self, top: Length) -> Result<Length, Error> {
        let bottom = self.whole_number()?.ok_or(self.error(Code::Unreadable))?;
        top.over(Length::integer(bottom))
    }
}
