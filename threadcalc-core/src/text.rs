//! Short texts without a heap, and numbers as text without a locale.

use core::fmt;

use crate::length::{Decimal, Length, power_of_ten};

/// One check for texts of every length.
#[inline(never)]
fn checked(bytes: &[u8]) -> &str {
    core::str::from_utf8(bytes).unwrap_or("")
}

/// A short ASCII or UTF-8 text held inline; what does not fit is an error, never a silent cut.
#[derive(Clone, Copy)]
pub struct Text<const N: usize> {
    bytes: [u8; N],
    length: u8,
}

impl<const N: usize> Text<N> {
    /// The empty text.
    #[must_use]
    pub const fn new() -> Self {
        Self { bytes: [0; N], length: 0 }
    }

    /// The text, whole.
    #[must_use]
    pub fn as_str(&self) -> &str {
        checked(self.written())
    }

    fn written(&self) -> &[u8] {
        self.bytes.get(..usize::from(self.length)).unwrap_or(&[])
    }

    /// The bytes of the text with zeros behind them: a copy of fixed size.
    #[must_use]
    pub const fn padded(&self) -> [u8; N] {
        self.bytes
    }

    /// True if there is no text.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.length == 0
    }

    /// Adds `more`, or leaves the text as it is and returns false if it would not fit.
    #[must_use]
    pub fn push(&mut self, more: &str) -> bool {
        let start = usize::from(self.length);
        let Some(Ok(length)) = start.checked_add(more.len()).map(u8::try_from) else { return false };
        // Of the length of the text itself: a copy of another length would be a panic.
        let room = self.bytes.get_mut(start..).and_then(|rest| rest.get_mut(..more.len()));
        let Some(room) = room else { return false };
        room.copy_from_slice(more.as_bytes());
        self.length = length;
        true
    }

    /// The same text with more room behind it.
    pub(crate) fn widened<const M: usize>(&self) -> Text<M> {
        const { assert!(M >= N) };
        let mut bytes = [0; M];
        for (place, byte) in bytes.iter_mut().zip(self.bytes) {
            *place = byte;
        }
        Text { bytes, length: self.length }
    }

    /// A text of ASCII bytes, in upper case if asked, if they are and fit.
    pub(crate) fn ascii(text: &[u8], upper: bool) -> Option<Self> {
        let mut bytes = [0; N];
        if text.len() > N || !text.is_ascii() {
            return None;
        }
        for (place, byte) in bytes.iter_mut().zip(text) {
            *place = if upper { byte.to_ascii_uppercase() } else { *byte };
        }
        u8::try_from(text.len()).ok().map(|length| Self { bytes, length })
    }

    /// A text that holds `text`, if it fits.
    #[must_use]
    pub fn holding(text: &str) -> Option<Self> {
        let mut held = Self::new();
        held.push(text).then_some(held)
    }
}

impl Text<24> {
    /// A letter with a decimal number, `F914.4`: words of a program. A point stands in it where it has decimals,
    /// behind it if asked.
    pub(crate) fn with_letter(letter: u8, number: Decimal, point: bool) -> Self {
        // As many zeros behind the digits as a text has bytes, so that one copy takes all of it.
        let mut room = [0; 32 + 24];
        let (magnitude, decimals) = (number.units().unsigned_abs(), number.decimals());
        let mut first =
            room.first_chunk_mut().map_or(0, |buffer| digits(buffer, magnitude, decimals, point || decimals > 0));
        let mut put = |byte: u8| {
            first = first.saturating_sub(1);
            if let Some(place) = room.get_mut(first) {
                *place = byte;
            }
        };
        if number.units() < 0 {
            put(b'-');
        }
        put(letter);
        // A letter, a sign, 19 digits of 64 bits, a point: it fits.
        let bytes = room.get(first..).and_then(|rest| rest.first_chunk()).copied().unwrap_or([0; 24]);
        Self { bytes, length: 32_u8.saturating_sub(first as u8) }
    }
}

impl<const N: usize> Default for Text<N> {
    fn default() -> Self {
        Self::new()
    }
}

impl<const N: usize> PartialEq for Text<N> {
    fn eq(&self, other: &Self) -> bool {
        // As bytes: nothing has to be checked. Of the whole arrays a compiler would compare before it knows that
        // there is a text.
        self.written() == other.written()
    }
}

impl<const N: usize> Eq for Text<N> {}

impl<const N: usize> core::hash::Hash for Text<N> {
    fn hash<H: core::hash::Hasher>(&self, state: &mut H) {
        self.as_str().hash(state);
    }
}

/// In quotes. Not by way of `str`, whose escapes link a panic.
impl<const N: usize> fmt::Debug for Text<N> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        ["\"", self.as_str(), "\""].into_iter().try_for_each(|part| f.write_str(part))
    }
}

impl<const N: usize> fmt::Display for Text<N> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.as_str())
    }
}

impl<const N: usize> fmt::Write for Text<N> {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        if self.push(text) { Ok(()) } else { Err(fmt::Error) }
    }
}

#[cfg(feature = "serde")]
impl<const N: usize> serde::Serialize for Text<N> {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.as_str())
    }
}

/// Items with their places, as `enumerate` gives them, but without its overflow panic.
pub(crate) fn placed<T>(items: impl Iterator<Item = T>) -> impl Iterator<Item = (usize, T)> {
    (0..usize::MAX).zip(items)
}

/// Writes the shortest text that reads back as `value`; whole numbers without `.0`.
///
/// Core's own float formatting is not used: it can link a panic.
pub(crate) fn write_f64(out: &mut dyn fmt::Write, value: f64) -> fmt::Result {
    if value.is_nan() {
        return out.write_str("NaN");
    }
    let mut buffer = ryu::Buffer::new();
    let text = buffer.format(value);
    out.write_str(text.strip_suffix(".0").unwrap_or(text))
}

/// Digits of `magnitude` with a point before the last `decimals`, into the end of `buffer`.
///
/// At least one digit stands before the point. Returns where the text starts.
pub(crate) fn digits(buffer: &mut [u8; 32], mut magnitude: u64, decimals: u8, point: bool) -> usize {
    let mut start = buffer.len();
    let mut put = |byte: u8| {
        start = start.saturating_sub(1);
        if let Some(place) = buffer.get_mut(start) {
            *place = byte;
        }
    };
    let digit = |n: u64| b'0'.wrapping_add((n % 10) as u8);
    for _ in 0..decimals {
        put(digit(magnitude));
        magnitude /= 10;
    }
    if point {
        put(b'.');
    }
    loop {
        put(digit(magnitude));
        magnitude /= 10;
        if magnitude == 0 {
            break;
        }
    }
    start
}

/// A number to these decimals without trailing zeros; one too small or too large for them as it is.
pub(crate) struct Rounded(pub f64, pub u8);

impl fmt::Display for Rounded {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let power = power_of_ten(self.1).unwrap_or(1);
        let parts = libm::rint(self.0 * power as f64);
        if parts == 0.0 || libm::fabs(parts) > 1e15 {
            return write_f64(f, self.0);
        }
        match Length::new(parts as i64, power) {
            Ok(number) => fmt::Display::fmt(&number, f),
            Err(_) => write_f64(f, self.0),
        }
    }
}

/// A finding's number without trailing zeros, at most six decimals unless it is smaller than these.
pub(crate) struct Plain(pub f64);

impl fmt::Display for Plain {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(&Rounded(self.0, 6), f)
    }
}
