//! Which work offset a place is counted from.

use core::fmt;

use crate::length::Length;

/// A work offset: G54 to G59.3, or G54.1 with its P.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct WorkOffset(u32);

impl WorkOffset {
    /// From how the state holds it: the code in tenths, and a thousand times P on top.
    pub(super) const fn of_state(held: u32) -> Self {
        Self(held)
    }

    /// From its text.
    #[cfg(feature = "serde")]
    pub(super) fn read(text: &str) -> Option<Self> {
        if let Some(extended) = text.strip_prefix("G54.1 P") {
            return extended.parse::<u32>().ok()?.checked_mul(1000)?.checked_add(541).map(Self);
        }
        let code = crate::number::read_number(text.strip_prefix('G')?.as_bytes()).ok()?;
        let tenths = code.times(Length::integer(10)).ok()?.whole()?;
        u32::try_from(tenths).ok().filter(|tenths| *tenths < 1000).map(Self)
    }
}

impl fmt::Display for WorkOffset {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (tenths, extended) = (self.0 % 1000, self.0 / 1000);
        if extended > 0 {
            f.write_str("G54.1 P")?;
            return fmt::Display::fmt(&Length::integer(i64::from(extended)), f);
        }
        f.write_str("G")?;
        fmt::Display::fmt(&Length::parts(tenths, 10), f)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for WorkOffset {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
