//! What is doubtful or wrong, in one shape everywhere.

use core::fmt;

use crate::named::named;
use crate::text::{Text, write_f64};

named! {
    /// How bad a finding is.
    pub enum Severity {
        /// Wrong: no words are given while it stands.
        Error = 1 "error",
        /// Doubtful: look at it before pressing start.
        Warning = 2 "warning",
        /// Good to know, or an assumption that was made.
        Info = 3 "info",
    }
}

named! {
    /// The stable id of a finding.
    pub enum FindingId {
        /// No class was given; the standard's medium internal class is used.
        ClassAssumed = 1 "class-assumed",
        /// The thread stands in no standard series.
        NotStandard = 2 "not-standard",
        /// The drilled hole is outside the class's minor-diameter limits.
        DrillOutsideLimits = 3 "drill-outside-limits",
        /// The class's limits have not been read, so the drilled hole is not judged by them.
        LimitsNotSourced = 4 "limits-not-sourced",
        /// An external class in a tapping job.
        ExternalClass = 5 "external-class",
        /// No dialect was given, so no words can be given.
        DialectUnset = 6 "dialect-unset",
        /// The control has no code for what the job needs.
        CodeNotOnControl = 7 "code-not-on-control",
        /// The chamfer was not given; the longest of form C is planned on.
        ChamferAssumed = 8 "chamfer-assumed",
        /// The room below the tap was not given.
        BottomClearanceAssumed = 9 "bottom-clearance-assumed",
        /// The drill's point angle was not given.
        PointAngleAssumed = 10 "point-angle-assumed",
        /// The R plane was not given.
        RPlaneAssumed = 11 "r-plane-assumed",
        /// No drill and no set was given.
        DrillSetsAssumed = 12 "drill-sets-assumed",
        /// The control rounds the speed down, or the machine's highest speed cuts it.
        SpeedRounded = 13 "speed-rounded",
        /// Rounding of the feed word leaves an error in the lead.
        FeedRounded = 14 "feed-rounded",
        /// The thread is deeper than three diameters.
        DeepThread = 15 "deep-thread",
        /// The tap comes out below a through hole.
        TapComesOut = 16 "tap-comes-out",
        /// The feed of a multi-start thread follows the lead, not the pitch.
        MultiStart = 17 "multi-start",
        /// More findings than there is room for; their number.
        MoreFindings = 18 "more-findings",
        /// The thread was written in an older or open way; which family is assumed.
        FamilyAssumed = 19 "family-assumed",
        /// Which pipe threads this one is easily taken for.
        PipeFamily = 20 "pipe-family",
        /// Without a taper reamer a straight hole gives full threads only near the face.
        TaperHole = 21 "taper-hole",
        /// Words of a note that were not understood, by byte and length.
        NotRead = 30 "not-read",
        /// Lengths without a mark were read in the system of the thread.
        UnitAssumed = 31 "unit-assumed",
        /// A number behind a times sign was read as the depth of the thread.
        DepthRead = 32 "depth-read",
        /// The drilled hole of a note leaves no thread, or is less deep than its thread.
        HoleDoesNotFit = 33 "hole-does-not-fit",
        /// The standard's tables have no tolerance for this thread; its formula made the limits.
        ToleranceByFormula = 40 "tolerance-by-formula",
        /// The tap's hand is not that of the thread.
        TapHand = 60 "tap-hand",
        /// The tap is for another thread.
        TapThread = 61 "tap-thread",
        /// A tap for wire inserts where none is wanted, or the other way round.
        TapWireInsert = 62 "tap-wire-insert",
        /// The tap is for another class of thread.
        TapClass = 63 "tap-class",
        /// The tap leaves the thread too small, plated or not.
        TapTooSmall = 64 "tap-too-small",
        /// The tap makes the thread larger than its class allows.
        TapTooLarge = 65 "tap-too-large",
        /// The shank does not say what has to be known.
        TapUnmarked = 66 "tap-unmarked",
        /// The tap is within its maker's own limits.
        TapOwnLimits = 67 "tap-own-limits",
        /// The chamfer does not suit the hole.
        TapChamfer = 68 "tap-chamfer",
    }
}

impl FindingId {
    /// The severity unless the numbers say otherwise.
    #[must_use]
    pub const fn severity(self) -> Severity {
        match self {
            Self::DrillOutsideLimits
            | Self::ExternalClass
            | Self::CodeNotOnControl
            | Self::TapHand
            | Self::TapThread
            | Self::TapWireInsert
            | Self::TapTooSmall
            | Self::TapTooLarge => Severity::Error,
            Self::NotStandard
            | Self::LimitsNotSourced
            | Self::DialectUnset
            | Self::DeepThread
            | Self::MultiStart
            | Self::FamilyAssumed
            | Self::HoleDoesNotFit
            | Self::NotRead
            | Self::ToleranceByFormula
            | Self::TapClass
            | Self::TapUnmarked
            | Self::TapChamfer
            | Self::MoreFindings => Severity::Warning,
            _ => Severity::Info,
        }
    }

    /// What it means, in one line.
    #[must_use]
    pub const fn message(self) -> &'static str {
        match self {
            Self::ClassAssumed => "no class given, the standard's medium class is used",
            Self::NotStandard => "not in a standard series; near",
            Self::DrillOutsideLimits => "the hole is outside the minor-diameter limits",
            Self::LimitsNotSourced => "the hole is not judged by limits",
            Self::ExternalClass => "the class is of an external thread, a hole needs an internal one",
            Self::DialectUnset => "no dialect given, so no cycle words",
            Self::CodeNotOnControl => "the control has no code for this",
            Self::ChamferAssumed => "chamfer not given, planned on the longest of form C",
            Self::BottomClearanceAssumed => "room below the tap not given, 1 pitch stop and 2 pitches chips",
            Self::PointAngleAssumed => "drill point angle not given",
            Self::RPlaneAssumed => "R plane not given",
            Self::DrillSetsAssumed => "no drill and no set given, the usual sets are used",
            Self::SpeedRounded => "the speed is not the one asked for",
            Self::FeedRounded => "the feed word is rounded, the lead is not exact",
            Self::DeepThread => "deeper than 3 diameters: chips, coolant and torque need care",
            Self::TapComesOut => "the tap comes out below: vice, parallels, table",
            Self::MultiStart => "more than one start: the feed follows the lead",
            Self::MoreFindings => "further findings, not listed",
            Self::FamilyAssumed => "the name is older or leaves the family open",
            Self::PipeFamily => "easily taken for another pipe thread",
            Self::TaperHole => "a straight hole for a taper thread",
            Self::NotRead => "part of the note was not understood",
            Self::UnitAssumed => "lengths without a unit are read in the system of the thread",
            Self::DepthRead => "the number behind the times sign is read as the thread's depth",
            Self::HoleDoesNotFit => "the drilled hole does not fit the thread",
            Self::ToleranceByFormula => "the standard's tables have no such tolerance, its formula is used",
            Self::TapHand => "the tap is of the other hand and breaks on touch",
            Self::TapThread => "the tap is for another thread",
            Self::TapWireInsert => "a wire insert's hole has its own, larger tap",
            Self::TapClass => "the tap is for another class of thread",
            Self::TapTooSmall => "the tap leaves the thread too small: GO will not enter",
            Self::TapTooLarge => "the tap makes the thread too large: NOT GO will enter",
            Self::TapUnmarked => "the shank does not say",
            Self::TapOwnLimits => "the tap is within its maker's own limits",
            Self::TapChamfer => "the chamfer does not suit the hole",
        }
    }
}

named! {
    /// The name of a number that a finding carries.
    pub enum NumberKey {
        /// Drilled hole in mm.
        DrillMm = 1 "drill_mm",
        /// What is left to the largest minor diameter in mm.
        LeftToLimitMm = 2 "left_to_limit_mm",
        /// Speed asked for.
        AskedRpm = 3 "asked_rpm",
        /// Speed the control holds.
        SpeedRpm = 4 "speed_rpm",
        /// Relative error of the lead.
        LeadError = 5 "lead_error",
        /// Error of the lead over the depth in mm.
        AxialErrorMm = 6 "axial_error_mm",
        /// Depth in diameters.
        Diameters = 7 "diameters",
        /// What comes out below in mm.
        BelowMm = 8 "below_mm",
        /// Threads of chamfer.
        ChamferThreads = 9 "chamfer_threads",
        /// Room below the tap in mm.
        BottomClearanceMm = 10 "bottom_clearance_mm",
        /// Point angle in degrees.
        PointAngleDeg = 11 "point_angle_deg",
        /// R plane in mm.
        RPlaneMm = 12 "r_plane_mm",
        /// Lead in mm.
        LeadMm = 13 "lead_mm",
        /// Pitch in mm.
        PitchMm = 14 "pitch_mm",
        /// Starts.
        Starts = 15 "starts",
        /// A count.
        Count = 16 "count",
        /// Length of full thread in mm.
        FullThreadMm = 17 "full_thread_mm",
        /// Turns of the thread.
        Turns = 18 "turns",
        /// Byte offset in a text.
        Byte = 30 "byte",
        /// Length in a text, in bytes.
        Length = 31 "length",
        /// A depth in mm.
        DepthMm = 32 "depth_mm",
        /// Pitch diameter of a tap above the basic one in mm.
        AboveBasicMm = 70 "above_basic_mm",
        /// What it may be at most, or has to be at least, in mm.
        LimitMm = 71 "limit_mm",
        /// Threads of room.
        RoomThreads = 72 "room_threads",
    }
}

/// How many numbers a finding can carry.
const MOST_NUMBERS: usize = 3;

/// Something doubtful or wrong that does not keep a result from existing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Finding {
    id: FindingId,
    severity: Severity,
    evidence: &'static str,
    numbers: [Option<(NumberKey, f64)>; MOST_NUMBERS],
    suggestion: Text<96>,
}

impl Finding {
    /// A finding with the severity of its id.
    #[must_use]
    pub const fn new(id: FindingId) -> Self {
        Self { id, severity: id.severity(), evidence: "", numbers: [None; MOST_NUMBERS], suggestion: Text::new() }
    }

    /// The same finding with this severity.
    #[must_use]
    pub const fn with_severity(mut self, severity: Severity) -> Self {
        self.severity = severity;
        self
    }

    /// The same finding with the input it rests on.
    #[must_use]
    pub const fn with_evidence(mut self, evidence: &'static str) -> Self {
        self.evidence = evidence;
        self
    }

    /// The same finding with one more number; a fourth has no room and is left out.
    #[must_use]
    pub fn with_number(mut self, key: NumberKey, value: f64) -> Self {
        if let Some(free) = self.numbers.iter_mut().find(|slot| slot.is_none()) {
            *free = Some((key, value));
        }
        self
    }

    /// The same finding with more of what would be right; what does not fit is left out whole.
    #[must_use]
    pub fn with_suggestion(mut self, text: &str) -> Self {
        // A suggestion is advice; a part of it that has no room is better absent than cut.
        let _fits = self.suggestion.push(text);
        self
    }

    /// The stable id.
    #[must_use]
    pub const fn id(&self) -> FindingId {
        self.id
    }

    /// How bad it is.
    #[must_use]
    pub const fn severity(&self) -> Severity {
        self.severity
    }

    /// What it means, in one line.
    #[must_use]
    pub const fn message(&self) -> &'static str {
        self.id.message()
    }

    /// The input that it rests on, by its name in a job.
    #[must_use]
    pub const fn evidence(&self) -> &'static str {
        self.evidence
    }

    /// The numbers, by name.
    pub fn numbers(&self) -> impl Iterator<Item = (NumberKey, f64)> + '_ {
        self.numbers.iter().flatten().copied()
    }

    /// What would be right; may be empty.
    #[must_use]
    pub fn suggestion(&self) -> &str {
        self.suggestion.as_str()
    }
}

/// `warning not-standard: not in a standard series; near M10x1.25`.
impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.severity.name())?;
        f.write_str(" ")?;
        f.write_str(self.id.name())?;
        f.write_str(": ")?;
        f.write_str(self.message())?;
        for (key, value) in self.numbers() {
            f.write_str(", ")?;
            f.write_str(key.name())?;
            f.write_str(" ")?;
            write_f64(f, value)?;
        }
        if !self.suggestion.is_empty() {
            f.write_str(": ")?;
            f.write_str(self.suggestion())?;
        }
        Ok(())
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Finding {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        struct Numbers<'a>(&'a Finding);
        impl serde::Serialize for Numbers<'_> {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.collect_map(self.0.numbers().map(|(key, value)| (key.name(), value)))
            }
        }
        let mut finding = serializer.serialize_struct("Finding", 6)?;
        finding.serialize_field("id", &self.id)?;
        finding.serialize_field("severity", &self.severity)?;
        finding.serialize_field("message", self.message())?;
        finding.serialize_field("numbers", &Numbers(self))?;
        finding.serialize_field("evidence", self.evidence)?;
        finding.serialize_field("suggestion", self.suggestion())?;
        finding.end()
    }
}

/// How many findings a plan holds.
pub(crate) const MOST_FINDINGS: usize = 16;

/// The findings of one answer, in the order they were made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Findings<const N: usize = MOST_FINDINGS> {
    held: [Option<Finding>; N],
}

impl<const N: usize> Findings<N> {
    /// No findings.
    #[must_use]
    pub const fn new() -> Self {
        Self { held: [None; N] }
    }

    /// Adds one. With no room left the last place says so, and nothing is lost silently.
    pub fn push(&mut self, finding: Finding) {
        if let Some(free) = self.held.iter_mut().find(|slot| slot.is_none()) {
            *free = Some(finding);
            return;
        }
        if let Some(last) = self.held.last_mut() {
            let severe = finding.severity == Severity::Error || last.is_some_and(|f| f.severity == Severity::Error);
            let severity = if severe { Severity::Error } else { Severity::Warning };
            *last = Some(Finding::new(FindingId::MoreFindings).with_severity(severity));
        }
    }

    /// Adds all of another answer.
    pub fn extend<const M: usize>(&mut self, others: &Findings<M>) {
        for finding in others.iter() {
            self.push(*finding);
        }
    }

    /// The findings.
    pub fn iter(&self) -> impl Iterator<Item = &Finding> {
        self.held.iter().flatten()
    }

    /// True if one of them is of severity error.
    #[must_use]
    pub fn has_error(&self) -> bool {
        self.iter().any(|finding| finding.severity == Severity::Error)
    }
}

impl<const N: usize> Default for Findings<N> {
    fn default() -> Self {
        Self::new()
    }
}

#[cfg(feature = "serde")]
impl<const N: usize> serde::Serialize for Findings<N> {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.iter())
    }
}
