//! Limits of size: the standards' own rounded decimals.

mod aerospace;
mod asme_b18_29;
mod asme_b1_1;
mod asme_b1_1_minor;
mod asme_b1_1_printed;
mod asme_b1_20_1;
mod asme_b1_5;
mod asme_b1_9;
mod bs_93;
mod iso_228_1;
mod iso_2903;
mod iso_965_1;
mod iso_965_1_formula;
#[cfg(test)]
mod iso_965_1_marks;
mod iso_965_1_table;

use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::named::named;
use crate::range::above_zero;
use crate::thread::{Side, Thread};

named! {
    /// How sure a limit of size is.
    pub enum Confidence {
        /// Every limit was read in print, or the tolerance cell agrees with its formula's R40 value, or a
        /// second source prints it.
        Confirmed = 1 "confirmed",
        /// Made by the standard's own rule; printed tables may keep legacy values in single cells.
        Rule = 2 "by rule",
        /// Written from memory of the standard; nobody has read the value in the source.
        Memory = 3 "from memory",
        /// Outside the standard's tables: its formula, rounded to the R40 series.
        Formula = 4 "by formula",
    }
}

/// More than any thread engages, in mm.
pub(crate) const LONGEST_ENGAGEMENT_MM: i64 = 10_000;

impl Confidence {
    /// The less sure of two.
    const fn or_less_sure(self, other: Self) -> Self {
        if self.number() < other.number() { other } else { self }
    }
}

/// A pair of limits, smallest and largest; `None` where there is none.
pub type Range = (Option<Length>, Option<Length>);

/// Limits of size of a thread, exact decimals of the standard, in millimetres.
///
/// An internal thread has no largest major diameter: the tap's crests make it. An external thread has no
/// smallest minor diameter; its largest is that of the GO gauge: basic minor diameter less the allowance
/// (M), the maximum of the rounded root that ASME B1.1 gives as a reference (UN). NPSC and NPSM have the limits
/// that their standard's tables give: of NPSC pitch diameter and smallest minor diameter, of NPSM pitch
/// diameter and crests.
///
/// ACME has all six limits on both sides, Tr and BA those of their screws. Not read, and `None` for that: the minor
/// diameters of MJ and of the screw of UNJ; the largest minor diameter of the holes of UNJ, Tr and wire
/// inserts; the major diameter of a hole with a buttress thread.
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
    /// How many decimals the standard gives, in that unit; pitch diameters in inches have at least four.
    pub decimals: u8,
    /// Standard, edition and table or rule.
    pub source: &'static str,
    /// How sure the limits are.
    pub confidence: Confidence,
}

impl Limits {
    /// Whether an exact diameter lies within the minor-diameter limits of an internal thread; `None` if that cannot
    /// be said: there is no smallest one; or there is no largest (NPSC) or nobody has read it, and the diameter is
    /// not below the smallest.
    #[must_use]
    pub fn minor_holds(&self, diameter_mm: Length) -> Option<bool> {
        let (low, high) = self.minor_mm;
        if diameter_mm < low? { Some(false) } else { high.map(|high| diameter_mm <= high) }
    }
}

impl Thread {
    /// The limits of size of the tolerance class.
    ///
    /// The class of M names pitch and crest diameter, `5g6g`, or both at once, `6g`; roots follow the
    /// pitch diameter's position. A class of both sides, such as 2G of ACME, needs the side:
    /// [`with_side`](Self::with_side).
    ///
    /// | thread | classes | sizes |
    /// |---|---|---|
    /// | M, MJ | all | 1 to 355 mm, pitches of 0.2 to 8 mm |
    /// | UN, UNR, UNJ | all | all |
    /// | wire insert in M, UN | 4H 5H 6H 4H5H, 2B 3B | as M, UN |
    /// | Tr | 7e 8e 8c 9c, 7H 8H 9H | over 5.6 to 180 mm, pitches of 1.5 to 32 mm, one start |
    /// | ACME | 2G 3G 4G | 16 to 1 threads per inch, screws up to 4 3/4 in, one start |
    /// | stub ACME | 2G, without the roots' far limits | as ACME |
    /// | buttress | 2, the hole | 1/2 to 24 in, 20 to 1 threads per inch, one start |
    /// | BA | close; normal, the hole's one class | No. 0 to 16; close bolts No. 0 to 10 |
    /// | G, Rp, NPSC, NPSM | all | all; of NPSM what its table has |
    ///
    /// # Errors
    /// [`Code::ClassUnset`] without a class, where the thread needs one (an internal G, Rp and NPSC have
    /// none), and without a side, where the class is of both; [`Code::UnknownClass`] for an external M class whose
    /// crest grade the standard does not have (3, 5, 7, 9), and for close bolts from No. 11 BA;
    /// [`Code::NotSourced`] for all that is not in the table above, the hint says what is, and for UN pitches so
    /// fine that the rule leaves no tolerance;
    /// [`Code::DoesNotApply`] for taper threads, whose size is their depth: `gauge_tolerance_turns` of
    /// [`pipe`](Self::pipe), and [`taper_depths`](crate::taper_depths).
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Length, Side, Thread};
    ///
    /// let minor = Thread::read(b"M8x1.25-6H")?.limits()?.minor_mm;
    /// assert_eq!(minor.0.map(|l| l.to_string()).as_deref(), Some("6.647"));
    /// assert_eq!(minor.1.map(|l| l.to_string()).as_deref(), Some("6.912"));
    /// let pitch = Thread::read(b"M8x1.25-6g")?.limits()?.pitch_diameter_mm;
    /// assert_eq!(pitch.0.map(|l| l.to_string()).as_deref(), Some("7.042"));
    ///
    /// let screw = Thread::read(b"1-5 ACME-2G")?.with_side(Side::External)?;
    /// let pitch_in = screw.limits()?.pitch_diameter_mm.1.unwrap().over(Length::INCH)?;
    /// assert_eq!(pitch_in.to_string(), "0.892");
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// ISO 965-1:2013, tables, and its formulas outside them, with ISO 724; ASME B1.1-2003, formulas for
    /// limits of size, and its printed limits where they differ; ISO 228-1:2000 (G); ISO 7-1:1994 (Rp);
    /// ASME B1.20.1-1983, tables of NPSC and NPSM; ISO 2903:2016 with GOST 24739-81 (Tr): read of 7e and 10c,
    /// other grades by steps of R40, the deviation e of pitches above 5 mm from memory; ASME B1.5-1997 (ACME), its
    /// allowances from the table of the centralizing classes, in part from memory; ASME B1.8-1988 (stub ACME), its
    /// tolerances from memory; ASME B1.9-1973 (buttress);
    /// BS 93 (BA), its formulas, not compared with printed limits;
    /// ISO 5855-1:1999 (MJ); ASME B1.15-1995 and SAE AS8879D (UNJ); ASME B18.29.1-2010 and B18.29.2M-2005
    /// (wire inserts), the tolerance by the screw's size from memory.
    #[inline(never)]
    pub fn limits(&self) -> Result<Limits, Error> {
        let of_class = match self.form() {
            Form::Metric | Form::Unified if self.is_wire_insert() => asme_b18_29::limits,
            // Where nothing has been read no class would help.
            _ if self.is_wire_insert() => {
                return Err(not_read("of holes for wire inserts those of M and UN have been read"));
            }
            Form::Miniature => {
                return Err(not_read("of S no limits have been read; ASME B1.10M's UNM has another height"));
            }
            Form::Whitworth => {
                return Err(not_read("the limits of BS 84 have not been read; the basic diameters are in the profile"));
            }
            Form::Metric => iso_965_1::limits,
            Form::Unified | Form::UnifiedR => asme_b1_1::limits,
            Form::MetricJ => aerospace::metric,
            Form::UnifiedJ => aerospace::unified,
            Form::Trapezoidal => iso_2903::limits,
            Form::Acme | Form::StubAcme => asme_b1_5::limits,
            Form::Buttress | Form::PullButtress => asme_b1_9::limits,
            Form::Ba => bs_93::limits,
            _ => return pipe_limits(self),
        };
        let class = self.tolerance_class().ok_or(
            Error::new(Code::ClassUnset, Field::ToleranceClass).hint_text("write the class: M8x1.25-6H, 1/4-20 UNC-2B"),
        )?;
        of_class(self, class.as_str())
    }

    /// The limits of size of the tolerance class where this much of a Unified thread engages.
    ///
    /// ```text
    /// T_d2 of 2A = 0.0015 D^(1/3) + 0.0015 √LE + 0.015 P^(2/3)      inches; LE: the length of engagement
    /// ```
    ///
    /// The standard's tables, and [`limits`](Self::limits), take LE = D for UNC, UNF, 4-UN, 6-UN and 8-UN and hold
    /// up to 1.5 D; for the others, UNS among them, LE = 9 P, and they hold from 5 P to 15 P. `source` says
    /// whether they hold for this length. Only the far limit of the pitch diameter moves with the length; GO, the
    /// allowance, crests and the minor diameter stay. A drawing that wants other limits than those of the tables
    /// gives them itself: ask before making to these.
    ///
    /// Threads of other standards have the limits of their class at every length, those of `limits`; of M another
    /// class is recommended for a long or short one: [`engagement_group`](crate::engagement_group).
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a length outside 0 to 10 000 mm; [`Code::NotSourced`] for UNJ and for inch holes of
    /// wire inserts; those of [`limits`](Self::limits).
    ///
    /// # Example
    /// ```
    /// use threadcalc_core::{Length, Thread};
    ///
    /// // 1/2-13 UNC-3A engages by 1 in, two diameters: 0.4459 in where the table has 0.4463.
    /// let least = Thread::read(b"1/2-13 UNC-3A")?.limits_at(Length::INCH)?.pitch_diameter_mm.0;
    /// assert_eq!(least.map(|least| least.over(Length::INCH)).transpose()?, Some(Length::new(4459, 10_000)?));
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    ///
    /// # Source
    /// ASME B1.1-2003, formulas for limits of size; for which lengths the tables hold, and that the allowance stays,
    /// from memory.
    pub fn limits_at(&self, length_mm: Length) -> Result<Limits, Error> {
        above_zero(length_mm, Field::EngagementLength, LONGEST_ENGAGEMENT_MM)?;
        match (self.form(), self.tolerance_class()) {
            (Form::Unified | Form::UnifiedR, Some(class)) if !self.is_wire_insert() => {
                asme_b1_1::limits_at(self, class.as_str(), length_mm)
            }
            (Form::Unified | Form::UnifiedJ, Some(_)) => {
                Err(not_read("what another length does to UNJ and to holes for wire inserts has not been read")
                    .about(Field::EngagementLength))
            }
            _ => self.limits(),
        }
    }

    /// The class that a hole of the standard usually has, empty for pipe threads without classes and for UNR, which
    /// has no hole of its own. The hole of a wire insert has the class of the screw's thread.
    ///
    /// | thread | class |
    /// |---|---|
    /// | M | 5H up to 1.4 mm, 6H above |
    /// | MJ | 4H6H up to 5 mm, 4H5H above |
    /// | S | 4H6 |
    /// | UN, NPSM | 2B |
    /// | UNJ | 3B |
    /// | BSW, BSF | medium |
    /// | BA | normal, which all holes are: BS 93 has one class of nuts for close and normal bolts |
    /// | Tr | 7H |
    /// | ACME, stub ACME | 2G |
    /// | buttress | 2B |
    ///
    /// # Source
    /// ISO 965-1:2013 (recommended classes, medium, normal engagement); ASME B1.1-2003; from memory, as are those of
    /// ISO 5855-2, ISO 1501:2009, ASME B1.15-1995, BS 84:2007, ISO 2903, ASME B1.5-1997, B1.8-1988 and B1.9-1973;
    /// BS 93: Machinery's Handbook 31 p. 2115.
    #[must_use]
    pub fn medium_internal_class(&self) -> &'static str {
        match self.form() {
            Form::Metric if self.named_by() <= Length::parts(14, 10) => "5H",
            Form::Metric => "6H",
            Form::MetricJ if self.named_by() <= Length::integer(5) => "4H6H",
            Form::MetricJ => "4H5H",
            Form::Miniature => "4H6",
            Form::Unified | Form::Npsm | Form::Buttress | Form::PullButtress => "2B",
            Form::UnifiedJ => "3B",
            Form::Whitworth => "medium",
            Form::Ba => "normal",
            Form::Trapezoidal => "7H",
            Form::Acme | Form::StubAcme => "2G",
            Form::UnifiedR => "",
            Form::Npt | Form::Nptf | Form::Npsc | Form::Npsf | Form::G | Form::R | Form::Rp | Form::Rc => "",
        }
    }

    /// The basic pitch diameter as the standard rounds it: the smallest of position H, the largest of 3A; the
    /// middle of NPSC and Rp, whose limits lie on both sides of it.
    #[inline(never)]
    pub(crate) fn basic_pitch_diameter_mm(&self) -> Result<Length, Error> {
        let no_basic =
            Error::new(Code::NotSourced, Field::PitchDiameter).hint_text("the basic pitch diameter has not been read");
        let tapped = match self.form() {
            Form::Npsc => return asme_b1_20_1::basic_pitch_diameter(self),
            Form::Rp => return self.pipe()?.pitch_diameter_gauge_plane_mm.ok_or(no_basic),
            Form::Unified | Form::UnifiedR | Form::UnifiedJ => return asme_b1_1::basic_pitch_diameter(self),
            _ => self.without_class().as_tapped()?,
        };
        tapped.limits()?.pitch_diameter_mm.0.ok_or(no_basic)
    }

    /// The thread as a tapped hole: with its own internal class, or the medium one where the standard has one.
    #[inline(never)]
    pub(crate) fn as_tapped(&self) -> Result<Self, Error> {
        if self.side() == Some(Side::Internal) && self.tolerance_class().is_some() {
            return Ok(*self);
        }
        // The hole of an external thread is one of the medium class; that of UNR is UN.
        let thread = if self.side() == Some(Side::External) { self.of_hole() } else { *self };
        // R has no internal side: its drill is refused with the reason.
        let thread = thread.with_side(Side::Internal).unwrap_or(thread);
        let medium = thread.medium_internal_class();
        if medium.is_empty() || thread.tolerance_class().is_some() {
            return Ok(thread);
        }
        thread.with_class(medium.as_bytes())
    }
}

const fn not_read(what: &'static str) -> Error {
    Error::new(Code::NotSourced, Field::Form).hint_text(what)
}

/// The side, where the class is one of both.
fn side_of(thread: &Thread) -> Result<Side, Error> {
    thread.side().ok_or(
        Error::new(Code::ClassUnset, Field::Side).hint_text("this class is of both sides: say internal or external"),
    )
}

/// The sources of these threads say nothing of several starts.
fn single_start(thread: &Thread) -> Result<(), Error> {
    if thread.starts() == 1 {
        return Ok(());
    }
    Err(Error::new(Code::NotSourced, Field::Starts)
        .got(f64::from(thread.starts()))
        .hint_text("of this thread the limits of one start have been read"))
}

#[inline(never)]
fn pipe_limits(thread: &Thread) -> Result<Limits, Error> {
    match thread.form() {
        Form::G => iso_228_1::fastening(thread),
        Form::Rp => iso_228_1::jointing(thread),
        form if form.is_taper() => Err(Error::new(Code::DoesNotApply, Field::Form).hint_text(
            "a taper thread's size is its depth, gauged by turns: see its pipe dimensions and taper depths",
        )),
        Form::Npsc => asme_b1_20_1::couplings(thread),
        Form::Npsm => asme_b1_20_1::free_fitting(thread),
        _ => Err(Error::new(Code::NotSourced, Field::Form).hint_text("the limits of NPSF have not been read")),
    }
}
