//! Limits of size: the standards' own rounded decimals.

mod asme_b1_1;
mod iso_965_1;

use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::named::named;
use crate::thread::{Form, Side, Thread};

named! {
    /// How sure a limit of size is.
    pub enum Confidence {
        /// The tolerance cell agrees with its formula's R40 value, or a second source prints it.
        Confirmed = 1 "confirmed",
        /// Made by the standard's own rule; printed tables may keep legacy values in single cells.
        Rule = 2 "by rule",
        /// Written from memory of the standard; nobody has read the value in the source.
        Memory = 3 "from memory",
    }
}

/// A pair of limits, smallest and largest; `None` where there is none.
pub type Range = (Option<Length>, Option<Length>);

/// Limits of size of a thread, exact decimals of the standard, in millimetres.
///
/// This version gives the minor diameter of internal threads. The smallest major and pitch
/// diameters of an internal thread of zero allowance are the basic ones; their largest values are
/// `None` here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Limits {
    /// Major diameter.
    pub major_mm: Range,
    /// Pitch diameter.
    pub pitch_diameter_mm: Range,
    /// Minor diameter.
    pub minor_mm: Range,
    /// The unit in which the standard gives its decimals.
    pub native_unit: crate::Unit,
    /// How many decimals the standard gives, in that unit.
    pub decimals: u8,
    /// Standard, edition and table or rule.
    pub source: &'static str,
    /// How sure the limits are.
    pub confidence: Confidence,
}

impl Limits {
    /// Whether an exact diameter lies within the minor-diameter limits; `None` if there are none.
    #[must_use]
    pub fn minor_holds(&self, diameter_mm: Length) -> Option<bool> {
        let (Some(low), Some(high)) = self.minor_mm else { return None };
        Some(low <= diameter_mm && diameter_mm <= high)
    }
}

impl Thread {
    /// The limits of size of the tolerance class.
    ///
    /// # Errors
    /// [`Code::ClassUnset`] without a class; [`Code::NotSourced`] for classes whose tables have not
    /// been read: external classes, metric internal classes other than 5H and 6H.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::Thread;
    ///
    /// let minor = Thread::read(b"M8x1.25-6H")?.limits()?.minor_mm;
    /// assert_eq!(minor.0.map(|l| l.to_string()).as_deref(), Some("6.647"));
    /// assert_eq!(minor.1.map(|l| l.to_string()).as_deref(), Some("6.912"));
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// ISO 965-1:2013 table of T_D1; ASME B1.1-2003, rule for the internal minor diameter.
    pub fn limits(&self) -> Result<Limits, Error> {
        let class = self.tolerance_class().ok_or(
            Error::new(Code::ClassUnset, Field::ToleranceClass).hint_text("write the class: M8x1.25-6H, 1/4-20 UNC-2B"),
        )?;
        if class.side() == Side::External {
            return Err(Error::new(Code::NotSourced, Field::ToleranceClass)
                .hint_text("this version has the minor diameter of internal threads: 5H, 6H, 1B, 2B, 3B"));
        }
        match self.form() {
            Form::Metric => iso_965_1::limits(self, class.as_str()),
            Form::Unified => asme_b1_1::limits(self, class.as_str()),
        }
    }

    /// The standard's medium internal class: 5H up to 1.4 mm, 6H above; 2B.
    ///
    /// # Source
    /// ISO 965-1:2013 (recommended classes, medium, normal engagement); ASME B1.1-2003; from memory.
    #[must_use]
    pub fn medium_internal_class(&self) -> &'static str {
        match self.form() {
            Form::Metric if self.nominal_mm() <= Length::parts(14, 10) => "5H",
            Form::Metric => "6H",
            Form::Unified => "2B",
        }
    }
}
