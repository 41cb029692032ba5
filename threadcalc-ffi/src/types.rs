//! Structures that several calls share, and the way to and from the core's types. All are frozen.

use core::ffi::c_char;

use threadcalc_core::{
    Code, Drill, DrillSet, DrillSets, Error, Field, Finding, Form, Hand, Length, Series, Side, Thread, WrittenAs,
};

use crate::choices::{
    threadcalc_drill_set, threadcalc_form, threadcalc_hand, threadcalc_series, threadcalc_side, threadcalc_written_as,
};
use crate::finding_ids::{threadcalc_finding, threadcalc_number, threadcalc_severity};
use crate::memory::{fill, fixed_text, padded_text, text_of};
use crate::status::{flag, optional, required};

/// An exact number: a length in mm, a speed in turns per minute, a percent, or a plain number.
///
/// Results are in lowest terms with a positive denominator. 0/0 is "not given". Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default, PartialEq, Eq, Debug)]
pub struct threadcalc_ratio_t {
    /// Numerator; carries the sign.
    pub numerator: i64,
    /// Denominator.
    pub denominator: i64,
}

impl threadcalc_ratio_t {
    pub(crate) fn of(value: Length) -> Self {
        Self { numerator: value.numerator(), denominator: value.denominator() }
    }

    pub(crate) fn of_option(value: Option<Length>) -> Self {
        value.map_or(Self::default(), Self::of)
    }

    // Inline, as `required`: through a call the answer would go through memory twice.
    #[inline(always)]
    pub(crate) fn read(self, field: Field) -> Result<Option<Length>, Error> {
        if self.denominator == 1 && self.numerator != i64::MIN {
            // In lowest terms as it stands, and the most usual.
            return Ok(Some(Length::integer(self.numerator)));
        }
        if self == Self::default() {
            return Ok(None);
        }
        Length::new(self.numerator, self.denominator).map(Some).map_err(|error| error.about(field))
    }

    #[inline(always)]
    pub(crate) fn required(self, field: Field) -> Result<Length, Error> {
        self.read(field)?.ok_or(Error::new(Code::Missing, field))
    }
}

/// A screw thread. Frozen.
///
/// A thread given to a call is built again from form, major diameter (or, where that is 0/0, the nominal
/// one), pitch, starts, hand, side, class and written_as. Series, lead, taper and the other diameter may
/// be left at 0, and otherwise have to agree; is_standard is not read. All zeros are "not given".
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_thread_t {
    /// Profile.
    pub form: threadcalc_form,
    /// The standard's series; 0 for a metric special.
    pub series: threadcalc_series,
    /// Number of starts, 1 to 12; 0 is read as 1.
    pub starts: i32,
    /// Hand; 0 is read as right.
    pub hand: threadcalc_hand,
    /// Internal or external; 0 if neither class nor caller says so.
    pub side: threadcalc_side,
    /// 1 if the standard lists this diameter with this pitch, single start; else 0.
    pub is_standard: i32,
    /// 1 for the hole of a wire insert (STI), which is made from nominal_mm, the diameter of the screw; else 0.
    pub wire_insert: i32,
    /// The older or open name that a pipe thread was read from; 0 if none. No part of the thread's value.
    pub written_as: threadcalc_written_as,
    /// The diameter that names the thread in mm; 0/0 for a pipe thread, whose size is a name.
    pub nominal_mm: threadcalc_ratio_t,
    /// Basic major diameter in mm. NPT and its kin: the outside diameter of the pipe; R and Rc: at the
    /// gauge plane.
    pub major_mm: threadcalc_ratio_t,
    /// Distance between neighbouring threads in mm.
    pub pitch_mm: threadcalc_ratio_t,
    /// Advance in one turn in mm.
    pub lead_mm: threadcalc_ratio_t,
    /// Taper on the diameter: 1/16 for NPT, NPTF, R and Rc, 0/1 for straight threads.
    pub taper_on_diameter: threadcalc_ratio_t,
    /// Tolerance class as written, NUL-terminated, with -S or -L behind it where the designation says short or long
    /// engagement; empty if there is none.
    pub tolerance_class: [c_char; 8],
}

impl threadcalc_thread_t {
    pub(crate) fn of(thread: &Thread) -> Self {
        Self {
            form: thread.form().number(),
            series: thread.series().map_or(0, Series::number),
            starts: i32::from(thread.starts()),
            hand: thread.hand().number(),
            side: thread.side().map_or(0, Side::number),
            is_standard: i32::from(thread.is_standard()),
            wire_insert: i32::from(thread.is_wire_insert()),
            written_as: thread.written_as().map_or(0, WrittenAs::number),
            nominal_mm: threadcalc_ratio_t::of_option(thread.nominal_mm()),
            major_mm: threadcalc_ratio_t::of(thread.major_mm()),
            pitch_mm: threadcalc_ratio_t::of(thread.pitch_mm()),
            lead_mm: threadcalc_ratio_t::of(thread.lead_mm()),
            taper_on_diameter: threadcalc_ratio_t::of(thread.taper_on_diameter()),
            tolerance_class: thread.tolerance_class().map_or([0; 8], |class| padded_text(class.text())),
        }
    }

    #[inline(always)]
    pub(crate) fn read(&self) -> Result<Thread, Error> {
        let wire_insert = flag(self.wire_insert, Field::WireInsert)?;
        // What is not given is 0/0; the usual thread has both, and one is enough to build it.
        let is_named = wire_insert || self.major_mm == threadcalc_ratio_t::default();
        let diameter = if is_named { self.nominal_mm } else { self.major_mm };
        let major = diameter.read(Field::Diameter)?;
        let built = Thread::from_parts(
            required(self.form, Form::from_number, Field::Form, Form::CHOICES)?,
            major.ok_or_else(|| Error::new(Code::Missing, Field::Diameter))?,
            self.pitch_mm.required(Field::Pitch)?,
            if self.starts == 0 { 1 } else { i64::from(self.starts) },
            optional(self.hand, Hand::from_number, Field::Hand, Hand::CHOICES)?.unwrap_or(Hand::Right),
            optional(self.side, Side::from_number, Field::Side, Side::CHOICES)?,
            text_of(&self.tolerance_class),
        );
        // Handed on as it was built: taken out and wrapped again, it would go through memory twice.
        match &built {
            Ok(thread) if wire_insert || self.written_as != 0 || !self.says_the_rest_of(thread) => {
                self.unusual(*thread, wire_insert)
            }
            _ => built,
        }
    }

    /// The thread of a wire insert, with an older name, or with members not as this library writes them.
    #[inline(never)]
    fn unusual(&self, thread: Thread, wire_insert: bool) -> Result<Thread, Error> {
        let thread = if wire_insert { thread.with_wire_insert()? } else { thread };
        if !self.says_the_rest_of(&thread) {
            self.check_the_rest(&thread)?;
        }
        match optional(self.written_as, WrittenAs::from_number, Field::WrittenAs, WrittenAs::CHOICES)? {
            Some(written_as) => thread.with_written_as(written_as),
            None => Ok(thread),
        }
    }

    /// Whether the members that follow from the others are as this library writes them: the usual case,
    /// in which no number has to be brought to lowest terms.
    fn says_the_rest_of(&self, thread: &Thread) -> bool {
        self.series == thread.series().map_or(0, Series::number)
            && self.nominal_mm == threadcalc_ratio_t::of_option(thread.nominal_mm())
            && (self.wire_insert == 0 || self.major_mm == threadcalc_ratio_t::of(thread.major_mm()))
            && self.lead_mm == threadcalc_ratio_t::of(thread.lead_mm())
            && self.taper_on_diameter == threadcalc_ratio_t::of(thread.taper_on_diameter())
    }

    /// The members that follow from the others: not given, or what the thread built again says.
    #[inline(always)]
    fn check_the_rest(&self, thread: &Thread) -> Result<(), Error> {
        let series = optional(self.series, Series::from_number, Field::Series, Series::CHOICES)?;
        if series.is_some() && series != thread.series() {
            return Err(Error::new(Code::SeriesMismatch, Field::Series)
                .hint_text("leave the series at 0: it follows from diameter and pitch"));
        }
        let agrees = |given: threadcalc_ratio_t, own: Option<Length>, field, hint| {
            // As this library wrote it, it is in lowest terms: no divisor has to be looked for.
            if given == threadcalc_ratio_t::of_option(own) {
                return Ok(());
            }
            match given.read(field)? {
                Some(value) if Some(value) != own => Err(Error::new(Code::Contradiction, field).hint_text(hint)),
                _ => Ok(()),
            }
        };
        let nominal = "leave nominal_mm at 0/0 for a pipe thread; for others it is the major diameter";
        agrees(self.nominal_mm, thread.nominal_mm(), Field::Diameter, nominal)?;
        if thread.is_wire_insert() {
            let major = "leave major_mm at 0/0 for the hole of a wire insert: it follows from nominal_mm and pitch";
            agrees(self.major_mm, Some(thread.major_mm()), Field::Diameter, major)?;
        }
        let lead = "leave the lead at 0/0: it follows from pitch and starts";
        agrees(self.lead_mm, Some(thread.lead_mm()), Field::Lead, lead)?;
        let taper = "leave taper_on_diameter at 0/0: it follows from the form";
        agrees(self.taper_on_diameter, Some(thread.taper_on_diameter()), Field::Form, taper)
    }

    /// A thread that may be left out.
    pub(crate) fn read_optional(&self) -> Result<Option<Thread>, Error> {
        let none = threadcalc_ratio_t::default();
        let blank = self.form == 0 && [self.nominal_mm, self.major_mm, self.pitch_mm] == [none; 3];
        if blank { Ok(None) } else { self.read().map(Some) }
    }
}

/// Something doubtful or wrong that does not keep a result from existing. Frozen.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct threadcalc_finding_t {
    /// What it is; threadcalc_finding_message says it in words.
    pub id: threadcalc_finding,
    /// How bad it is.
    pub severity: threadcalc_severity,
    /// How many numbers it carries, up to 3.
    pub number_count: i32,
    /// What each number is.
    pub number_key: [threadcalc_number; 3],
    /// The numbers, in the unit that the key names.
    pub number: [f64; 3],
    /// The input that it rests on, by its name in a job.
    pub evidence: [c_char; 40],
    /// What would be right; may be empty.
    pub suggestion: [c_char; 104],
}

impl threadcalc_finding_t {
    pub(crate) const NONE: Self = Self {
        id: 0,
        severity: 0,
        number_count: 0,
        number_key: [0; 3],
        number: [0.0; 3],
        evidence: [0; 40],
        suggestion: [0; 104],
    };

    pub(crate) fn of(finding: &Finding) -> Self {
        let (number_key, number_count) = fill([0; 3], finding.numbers().map(|(key, _)| key.number()));
        let (number, _) = fill([0.0; 3], finding.numbers().map(|(_, value)| value));
        Self {
            id: finding.id().number(),
            severity: finding.severity().number(),
            number_count,
            number_key,
            number,
            evidence: fixed_text(finding.evidence()),
            suggestion: fixed_text(finding.suggestion()),
        }
    }
}

/// A drill. Frozen.
#[repr(C)]
#[derive(Clone, Copy, Default)]
pub struct threadcalc_drill_t {
    /// The set it belongs to; 0 for a diameter that stands in no set.
    pub set: threadcalc_drill_set,
    /// Its name, "6.8", "#7", "F", "5/16"; empty for a diameter too long for a name.
    pub name: [c_char; 28],
    /// Diameter in mm.
    pub diameter_mm: threadcalc_ratio_t,
}

impl threadcalc_drill_t {
    pub(crate) fn of(drill: &Drill) -> Self {
        Self {
            set: drill.set().map_or(0, DrillSet::number),
            name: padded_text(drill.name()),
            diameter_mm: threadcalc_ratio_t::of(drill.diameter_mm()),
        }
    }
}

/// A place or a length in a text, in bytes. No text in memory is longer than 63 bits say.
pub(crate) fn offset(bytes: usize) -> i64 {
    i64::try_from(bytes).unwrap_or(i64::MAX)
}

/// Sets of drills from their bits.
pub(crate) fn drill_sets(bits: u32) -> Result<DrillSets, Error> {
    let known = [
        (crate::THREADCALC_DRILL_SETS_METRIC, DrillSet::Metric),
        (crate::THREADCALC_DRILL_SETS_NUMBER, DrillSet::Number),
        (crate::THREADCALC_DRILL_SETS_LETTER, DrillSet::Letter),
        (crate::THREADCALC_DRILL_SETS_FRACTIONAL, DrillSet::Fractional),
    ];
    let mut sets = DrillSets::NONE;
    let mut left = bits;
    for (bit, set) in known {
        if left & bit != 0 {
            sets = sets.with(set);
            left &= !bit;
        }
    }
    if left != 0 {
        return Err(Error::new(Code::UnknownValue, Field::DrillSets)
            .got(f64::from(bits))
            .hint_text("a sum of 1 metric, 2 number, 4 letter, 8 fractional"));
    }
    Ok(sets)
}
