//! ISO 2857: which class of tap cuts which class of thread.

use super::closing_mm;
use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::named::named;
use crate::thread::{Side, Thread};

named! {
    /// The class of a ground tap for ISO metric threads.
    pub enum IsoTapClass {
        /// For threads 4H and 5H.
        Class1 = 1 "1",
        /// For threads 6H, 4G and 5G.
        Class2 = 2 "2",
        /// For threads 7H, 8H and 6G.
        Class3 = 3 "3",
    }
}

impl IsoTapClass {
    /// The class for a tolerance class of an internal thread; `None` for 7G and 8G, which the standard has
    /// no tap for. Of a class for two diameters that of the pitch diameter counts: the drill makes the other.
    ///
    /// # Source
    /// ISO 2857, from memory; tap makers' published tables agree.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::IsoTapClass;
    ///
    /// assert_eq!(IsoTapClass::of("6H"), Some(IsoTapClass::Class2));
    /// assert_eq!(IsoTapClass::of("4H5H"), Some(IsoTapClass::Class1));
    /// assert_eq!(IsoTapClass::of("7G"), None);
    /// ```
    #[must_use]
    pub fn of(tolerance_class: &str) -> Option<Self> {
        match of_pitch_diameter(tolerance_class) {
            "4H" | "5H" => Some(Self::Class1),
            "6H" | "4G" | "5G" => Some(Self::Class2),
            "7H" | "8H" | "6G" => Some(Self::Class3),
            _ => None,
        }
    }

    /// The smallest and the largest pitch diameter of a tap of this class, in millimetres, not rounded.
    ///
    /// ```text
    /// class 1   D2 + 0.1 t  to  D2 + 0.3 t      t: tolerance of the pitch diameter of a thread 5H
    /// class 2   D2 + 0.3 t  to  D2 + 0.5 t
    /// class 3   D2 + 0.5 t  to  D2 + 0.7 t
    /// ```
    ///
    /// The thread's own class does not matter: it is in the choice of the tap's class.
    ///
    /// # Errors
    /// [`Code::DoesNotApply`] for threads other than M and MJ, and for holes of wire inserts;
    /// [`Code::NotSourced`] where t has not been read.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{IsoTapClass, Thread};
    ///
    /// let (smallest, largest) = IsoTapClass::Class2.pitch_diameter_mm(&Thread::read(b"M8")?)?;
    /// assert_eq!((smallest.to_string(), largest.to_string()), ("7.2255".into(), "7.2505".into()));
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// ISO 2857, from memory; two tap makers' published tables give the same limits from M3 to M12 (M8 of class
    /// 2: +38 and +63 µm).
    pub fn pitch_diameter_mm(self, thread: &Thread) -> Result<(Length, Length), Error> {
        let (basic, tolerance) = of_5h(thread)?;
        let at = |tenths: u32| basic.plus(tolerance.times(Length::parts(tenths, 10))?);
        Ok((at(self.first_tenth())?, at(self.first_tenth().saturating_add(2))?))
    }

    /// How much the smallest tap of the class is above the basic pitch diameter.
    #[inline(never)]
    pub(super) fn smallest_above_mm(self, thread: &Thread) -> Result<Length, Error> {
        of_5h(thread)?.1.times(Length::parts(self.first_tenth(), 10))
    }

    /// Where the class begins, in tenths of the tolerance 5H.
    const fn first_tenth(self) -> u32 {
        match self {
            Self::Class1 => 1,
            Self::Class2 => 3,
            Self::Class3 => 5,
        }
    }
}

/// The basic pitch diameter and the tolerance of 5H.
fn of_5h(thread: &Thread) -> Result<(Length, Length), Error> {
    let (Some(basic), Some(largest)) = iso_thread(thread)?.with_class(b"5H")?.limits()?.pitch_diameter_mm else {
        return Err(Error::new(Code::NotSourced, Field::ToleranceClass)
            .hint_text("the pitch diameter tolerance of 5H has not been read"));
    };
    Ok((basic, largest.minus(basic)?))
}

/// The tap class for a thread, plated or not.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct IsoTap {
    /// The class; `None` if the standard has none: a tap of special size.
    pub class: Option<IsoTapClass>,
    /// How much the plating closes the pitch diameter, and a special tap has to be larger.
    pub closing_mm: Length,
}

/// The class of ISO 2857 for the tolerance class of a thread and the plating of the hole.
///
/// ```text
/// closing = 4 t                   t: thickness on the surface; on the pitch diameter of a 60° thread
/// closing ≤ EI of position G      the class for position G of the same grade
/// more                            none: a special tap, larger by the closing
/// ```
///
/// The fundamental deviation of position G is the allowance for plating. The hole is gauged
/// after plating with the gauges of position H; a class of position G on the drawing is the one before plating.
/// The pitch diameter of MJ has the limits of M, and so its tap the class of M's. Thin even plating only, never hot-dip.
///
/// # Errors
/// [`Code::DoesNotApply`] for threads other than M and MJ, and for holes of wire inserts; [`Code::ClassUnset`];
/// [`Code::Contradiction`] for an external class; [`Code::OutOfRange`] for a plating outside 0 to 1000 µm.
///
/// # Example
/// ```
/// use threadcalc_core::{IsoTapClass, Length, Thread, iso_tap_class};
///
/// let thread = Thread::read(b"M8-6H")?;
/// assert_eq!(iso_tap_class(&thread, Length::ZERO)?.class, Some(IsoTapClass::Class2));
/// assert_eq!(iso_tap_class(&thread, Length::integer(7))?.class, Some(IsoTapClass::Class3));
/// assert_eq!(iso_tap_class(&thread, Length::integer(12))?.class, None);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// ISO 2857, from memory; ISO 965-1:2013 table 1 (EI of position G); ISO 5855-1:1999 (MJ); taps for MJ: common
/// practice.
pub fn iso_tap_class(thread: &Thread, plating_um: Length) -> Result<IsoTap, Error> {
    let basic = iso_thread(thread)?;
    let class = thread
        .tolerance_class()
        .ok_or(Error::new(Code::ClassUnset, Field::ToleranceClass).hint_text("write the class: M8x1.25-6H"))?;
    if class.side() != Some(Side::Internal) {
        return Err(Error::new(Code::Contradiction, Field::ToleranceClass).hint_text("an internal class, such as 6H"));
    }
    let closing = closing_mm(thread, plating_um)?;
    if !closing.is_positive() {
        return Ok(IsoTap { class: IsoTapClass::of(class.as_str()), closing_mm: closing });
    }
    let fits = position_g_mm(&basic)?.is_some_and(|allowance| closing <= allowance);
    let shifted = match of_pitch_diameter(class.as_str()) {
        "4H" | "4G" => "4G",
        "5H" | "5G" => "5G",
        "6H" | "6G" => "6G",
        _ => "",
    };
    Ok(IsoTap { class: IsoTapClass::of(shifted).filter(|_| fits), closing_mm: closing })
}

/// The allowance of position G: what the standard's 6G has above its 6H; None where neither has been read.
fn position_g_mm(thread: &Thread) -> Result<Option<Length>, Error> {
    let smallest = |class: &[u8]| match thread.with_class(class)?.limits() {
        Ok(limits) => Ok(limits.pitch_diameter_mm.0),
        Err(error) if error.code() == Code::NotSourced => Ok(None),
        Err(error) => Err(error),
    };
    match (smallest(b"6G")?, smallest(b"6H")?) {
        (Some(shifted), Some(basic)) => shifted.minus(basic).map(Some),
        _ => Ok(None),
    }
}

/// `4H` of `4H5H`.
fn of_pitch_diameter(class: &str) -> &str {
    class.get(..2).filter(|_| class.len() == 4).unwrap_or(class)
}

/// The M thread, without a class, whose pitch diameter this one has.
fn iso_thread(thread: &Thread) -> Result<Thread, Error> {
    let hint = match thread.form() {
        _ if thread.is_wire_insert() => "the taps for wire inserts have their own limits",
        Form::Metric => return Ok(thread.without_class()),
        Form::MetricJ => return Thread::metric(thread.named_by(), thread.pitch_mm()),
        _ => "an ISO metric thread; inch taps have H limits",
    };
    Err(Error::new(Code::DoesNotApply, Field::Form).hint_text(hint))
}
