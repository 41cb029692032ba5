//! Coated threads: how a coating changes the diameters, the limits before it, and what the allowance has room for.

use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::limits::{Limits, Range};
use crate::range::zero_or_more;
use crate::thread::{Side, Thread};

/// More than there is on a thread, in µm; hot-dip coats are no coating of this kind.
const MOST_UM: i64 = 1_000;

/// Flank angles in hundredths of a degree, the smaller first, and the growth of the pitch diameter in 1/10000
/// thicknesses, rounded up; exact for 60° threads.
const GROWTHS: [(u16, u16, u32); 6] = [
    (3_000, 3_000, 40_000),
    (2_750, 2_750, 43_314),
    (2_375, 2_375, 49_660),
    (1_500, 1_500, 77_275),
    (1_450, 1_450, 79_879),
    (700, 4_500, 43_138),
];

/// On each side of a diameter at crest and root.
const AT_CRESTS: Length = Length::integer(2);

/// How much a coating of one thickness changes the diameters of a thread, in millimetres: an external thread
/// grows by it, an internal one closes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct CoatingGrowth {
    /// Major and minor diameter: twice the thickness.
    pub crest_mm: Length,
    /// Pitch diameter: four times the thickness on a 60° thread.
    pub pitch_diameter_mm: Length,
}

impl Thread {
    /// How much a coating changes the diameters.
    ///
    /// ```text
    /// major, minor diameter    2 t
    /// pitch diameter           2 t (1/cos a + 1/cos b) / (tan a + tan b)      a, b: flank angles
    ///                          = 2 t / sin a of even flanks: 4 t on 60°, 4.3314 t on 55°, 4.9660 t on 47.5°,
    ///                            7.7275 t on 30°, 7.9879 t on 29°, 4.3138 t on 7° and 45°
    /// ```
    ///
    /// The factors are to four decimals, rounded up; that of 60° is exact. `thickness_um` is measured square to the
    /// surface, and the same all over: thin even coats, electroplated or of a vapour. Not for hot-dip, paint or
    /// dipped coats. A current plates crests and the first threads thicker than flanks and the depth of a hole:
    /// gauge after coating.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a thickness outside 0 to 1000 µm.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Length, Thread};
    ///
    /// let growth = Thread::read(b"M8-6g")?.coating_growth(Length::integer(5))?;
    /// assert_eq!((growth.crest_mm.to_string(), growth.pitch_diameter_mm.to_string()), ("0.01".into(), "0.02".into()));
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// Machinery's Handbook 27 p. 1793 (ASME B1.13M), 60°; derived by the geometry of the flanks for the others.
    pub fn coating_growth(&self, thickness_um: Length) -> Result<CoatingGrowth, Error> {
        Ok(CoatingGrowth {
            pitch_diameter_mm: pitch_diameter_growth_mm(self, thickness_um, Field::CoatingThickness)?,
            crest_mm: grown_mm(thickness_um, AT_CRESTS)?,
        })
    }

    /// The limits of size to make the thread to, so that it keeps the limits of its class once it is coated.
    ///
    /// ```text
    /// external   largest − growth by the thickest coating    smallest − growth by the thinnest
    /// internal   smallest + growth by the thickest coating   largest + growth by the thinnest
    /// ```
    ///
    /// Exact and not rounded, so with more decimals than the standard's own where the thickness has them; where
    /// only a nominal or smallest thickness is known, half as much again is taken as the thickest. For classes
    /// without an allowance (6H, 6h, 2B, 3A), and where an allowance is to be kept after coating (2A with the
    /// symbol G). The limits of classes with an allowance (6g, 2A) are those *before* coating as they are: see
    /// [`thickest_coating_um`](Self::thickest_coating_um). The positions of ISO 965-4 and ISO 965-5 for
    /// hot-dip galvanised threads are another matter. What is a coating here: [`coating_growth`](Self::coating_growth).
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a thickness outside 0 to 1000 µm, for a band so wide that it leaves no tolerance
    /// (the error gives the thickest that leaves any) and for a coating that leaves no thread;
    /// [`Code::Contradiction`] if the thinnest is more than the thickest; those of [`limits`](Self::limits).
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Length, Thread};
    ///
    /// // M10-6h, 5 to 8 um of zinc: 9.026 − 4 × 0.008 and 8.894 − 4 × 0.005.
    /// let thread = Thread::read(b"M10x1.5-6h")?;
    /// let before = thread.limits_before_coating(Length::integer(5), Length::integer(8))?.pitch_diameter_mm;
    /// assert_eq!(before.1.map(|most| most.to_string()).as_deref(), Some("8.994"));
    /// assert_eq!(before.0.map(|least| least.to_string()).as_deref(), Some("8.874"));
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// Machinery's Handbook 27 p. 1793 (ASME B1.13M): external threads, and the thickest from the nominal;
    /// internal threads likewise. The limits: as [`limits`](Self::limits).
    pub fn limits_before_coating(&self, thinnest_um: Length, thickest_um: Length) -> Result<Limits, Error> {
        let thinnest = zero_or_more(thinnest_um, Field::CoatingThinnest, MOST_UM)?;
        let band = (thinnest, zero_or_more(thickest_um, Field::CoatingThickest, MOST_UM)?);
        if band.0 > band.1 {
            return Err(Error::new(Code::Contradiction, Field::CoatingThickest)
                .got(thickest_um.to_f64())
                .within(thinnest_um.to_f64(), MOST_UM as f64)
                .hint_text("the thickest is at least the thinnest"));
        }
        let limits = self.limits()?;
        let of_hole = self.side() != Some(Side::External);
        let at_flanks = pitch_diameter_factor(self)?;
        let before = Limits {
            major_mm: before(limits.major_mm, band, AT_CRESTS, of_hole)?,
            pitch_diameter_mm: before(limits.pitch_diameter_mm, band, at_flanks, of_hole)?,
            minor_mm: before(limits.minor_mm, band, AT_CRESTS, of_hole)?,
            ..limits
        };
        leaves_a_thread(&before, thickest_um)?;
        Ok(before)
    }

    /// The thickest coating that the allowance of the class has room for, in µm; 0 for a class without one.
    ///
    /// ```text
    /// thickest = allowance / 4     60°; allowance: from the basic pitch diameter to the limit beside it
    /// ```
    ///
    /// The limits of such a class are those before coating, as they are. Once coated, the thread is gauged by GO
    /// of the basic size (3A, 6h; 6H) and by NOT GO of its class. Crests take less than flanks; where they have an
    /// allowance of their own (5g6h), the smaller counts. An allowance that is not the coating's to use (for a
    /// lubricant, for heat; 2A with the symbol G) is kept by [`limits_before_coating`](Self::limits_before_coating).
    ///
    /// # Errors
    /// Those of [`limits`](Self::limits); [`Code::DoesNotApply`] for Rp and NPSC, whose limits lie on both sides
    /// of the basic size; [`Code::NotSourced`] for holes of wire inserts and for other threads than M, UN, UNR and
    /// pipe threads.
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Length, Thread};
    ///
    /// // An allowance of 0.0011 in has room for 0.000275 in.
    /// let thickest_um = Thread::read(b"1/4-20 UNC-2A")?.thickest_coating_um()?;
    /// assert_eq!(thickest_um.over(Length::integer(25_400))?.to_string(), "0.000275");
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// ASME B1.1, section on coated threads, as ASTM F1941 quotes it, with its table; Machinery's Handbook 27
    /// p. 1776 (3/4-10 UNC-2A). Metric threads: ISO 965-1, from memory.
    pub fn thickest_coating_um(&self) -> Result<Length, Error> {
        if matches!(self.form(), Form::Rp | Form::Npsc) {
            return Err(Error::new(Code::DoesNotApply, Field::Form)
                .hint_text("its limits lie on both sides of the basic size: there is no allowance"));
        }
        let read = matches!(self.form(), Form::Metric | Form::Unified | Form::UnifiedR) || self.form().is_pipe();
        if self.is_wire_insert() || !read {
            return Err(Error::new(Code::NotSourced, Field::Form)
                .hint_text("whether a coating may use the allowance was read of M, UN and UNR"));
        }
        let limits = self.limits()?;
        let basic = self.basic_pitch_diameter_mm()?;
        let external = self.side() == Some(Side::External);
        let pitch = if external {
            (Some(basic), limits.pitch_diameter_mm.1)
        } else {
            (limits.pitch_diameter_mm.0, Some(basic))
        };
        let at_flanks = room_um(pitch, pitch_diameter_factor(self)?)?;
        Ok(match self.at_basic_position()? {
            Some(at_basic) => {
                let crest = if external {
                    (at_basic.major_mm.1, limits.major_mm.1)
                } else {
                    (limits.minor_mm.0, at_basic.minor_mm.0)
                };
                at_flanks.min(room_um(crest, AT_CRESTS)?)
            }
            None => at_flanks,
        })
    }

    /// The limits of the class without an allowance, where the crests can have one of their own.
    fn at_basic_position(&self) -> Result<Option<Limits>, Error> {
        if self.form() != Form::Metric {
            return Ok(None);
        }
        let class: &[u8] = if self.side() == Some(Side::External) { b"6h" } else { b"6H" };
        self.without_class().with_class(class)?.limits().map(Some)
    }
}

/// Growth of the pitch diameter in millimetres by a thickness in µm.
pub(crate) fn pitch_diameter_growth_mm(thread: &Thread, thickness_um: Length, field: Field) -> Result<Length, Error> {
    grown_mm(zero_or_more(thickness_um, field, MOST_UM)?, pitch_diameter_factor(thread)?)
}

/// Growth of the pitch diameter in thicknesses.
fn pitch_diameter_factor(thread: &Thread) -> Result<Length, Error> {
    let [a, b] = thread.profile().flank_angles_deg.map(|degrees| libm::rint(degrees * 100.0) as u16);
    let flanks = (a.min(b), a.max(b));
    let growth = GROWTHS.iter().find(|(first, second, _)| (*first, *second) == flanks);
    let (_, _, e4) = growth.ok_or(Error::new(Code::NotSourced, Field::Form).hint_text("the flanks of this thread"))?;
    Ok(Length::parts(*e4, 10_000))
}

#[inline(never)]
fn grown_mm(thickness_um: Length, times: Length) -> Result<Length, Error> {
    thickness_um.times(times)?.over(Length::integer(1000))
}

/// The µm of coating in a difference of diameters, 0 where there is none.
fn room_um((large, small): Range, times: Length) -> Result<Length, Error> {
    let (Some(large), Some(small)) = (large, small) else { return Ok(Length::ZERO) };
    large.minus(small)?.times(Length::integer(1000))?.over(times).map(|room| room.max(Length::ZERO))
}

/// One range before coating: what the thickest leaves at the side of most material, the thinnest at the other.
fn before((low, high): Range, band: (Length, Length), times: Length, of_hole: bool) -> Result<Range, Error> {
    let (thin, thick) = (grown_mm(band.0, times)?, grown_mm(band.1, times)?);
    let moved = |limit: Option<Length>, by: Length| match limit {
        Some(limit) if of_hole => limit.plus(by).map(Some),
        Some(limit) => limit.minus(by).map(Some),
        None => Ok(None),
    };
    let range =
        if of_hole { (moved(low, thick)?, moved(high, thin)?) } else { (moved(low, thin)?, moved(high, thick)?) };
    if range.0.zip(range.1).is_some_and(|(low, high)| low >= high) {
        let wide = low.zip(high).map_or(Ok(Length::ZERO), |(low, high)| high.minus(low))?;
        let most_um = band.0.plus(wide.times(Length::integer(1000))?.over(times)?)?;
        return Err(Error::new(Code::OutOfRange, Field::CoatingThickest)
            .got(band.1.to_f64())
            .within(band.0.to_f64(), most_um.to_f64())
            .hint_text("less than the largest here: the band of thickness takes the whole tolerance"));
    }
    Ok(range)
}

/// A coating that closes the groove, or takes more than the thread has, is none of this kind.
fn leaves_a_thread(before: &Limits, thickest_um: Length) -> Result<(), Error> {
    let (major, pitch, minor) = (before.major_mm, before.pitch_diameter_mm, before.minor_mm);
    let crossed =
        |inner: Option<Length>, outer: Option<Length>| inner.zip(outer).is_some_and(|(inner, outer)| inner >= outer);
    if crossed(minor.1, pitch.0)
        || crossed(pitch.1, major.0)
        || [pitch.0, minor.1].iter().flatten().any(|size| !size.is_positive())
    {
        return Err(Error::new(Code::OutOfRange, Field::CoatingThickest)
            .got(thickest_um.to_f64())
            .hint_text("so thick a coating leaves no thread"));
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::GROWTHS;

    #[test]
    fn every_growth_is_that_of_its_flanks() {
        for (a, b, e4) in GROWTHS {
            let [a, b] = [a, b].map(|hundredths| (f64::from(hundredths) / 100.0).to_radians());
            let exact = 2.0 * (1.0 / libm::cos(a) + 1.0 / libm::cos(b)) / (libm::tan(a) + libm::tan(b));
            let above = f64::from(e4) - exact * 10_000.0;
            assert!((-1e-8..1.0).contains(&above), "{exact}");
        }
    }
}
