//! Findings by id: how bad, and what each means in one line.

use crate::finding::Severity;
use crate::named::named;

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
        /// The tap reaches the end of the drilled hole's full diameter.
        TapBottoms = 80 "tap-bottoms",
        /// What is left of the part below the drill's point.
        FloorThin = 81 "floor-thin",
        /// The countersink takes full thread away at the mouth.
        CountersinkEatsThread = 82 "countersink-eats-thread",
        /// The run-out below the full thread is shorter than the standard's.
        RunOutShort = 83 "run-out-short",
        /// The R plane is too near for the holder or for the spindle's ramp.
        ClearanceShort = 84 "clearance-short",
        /// The spindle does not reach the speed in this hole.
        SpeedNotReached = 85 "speed-not-reached",
        /// The axis cannot feed that fast.
        AxisFeedLimit = 86 "axis-feed-limit",
        /// The way out is faster than the spindle turns.
        RetractSpeedLimit = 87 "retract-speed-limit",
        /// The spindle has not the torque for this tap.
        TorqueLimit = 88 "torque-limit",
        /// A starting value stands for the cutting force.
        CuttingForceAssumed = 89 "cutting-force-assumed",
        /// The feed is below the lead on purpose.
        Underfeed = 90 "underfeed",
        /// The holder was not given; rigid is assumed.
        HolderAssumed = 91 "holder-assumed",
        /// The hole is that of the other kind of tap.
        OtherTapsHole = 92 "other-taps-hole",
        /// A drill that cuts as oversize as drills do leaves a hole above the limit.
        OversizeOverLimit = 93 "oversize-over-limit",
        /// A thread strips before the screw breaks.
        ThreadStripsFirst = 94 "thread-strips-first",
        /// Starting values stand for strengths.
        StrengthAssumed = 95 "strength-assumed",
        /// The load is more than the weakest part carries.
        LoadTooHigh = 96 "load-too-high",
        /// A plated thread needs a larger tap.
        PlatingTap = 97 "plating-tap",
        /// Pecks need a control and a holder that meet the thread again.
        PeckTapping = 98 "peck-tapping",
        /// How far the holder gives in this hole.
        HolderTravel = 99 "holder-travel",
        /// The kind of tap does not suit the hole.
        TapKindUnsuited = 100 "tap-kind-unsuited",
        /// A trapezoidal or buttress profile, which one pass of one tap seldom makes.
        DeepProfile = 101 "deep-profile",
        /// The limits that a joint is computed from have not been read.
        JointLeftOut = 102 "joint-left-out",
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
            | Self::TapTooLarge
            | Self::TapBottoms
            | Self::AxisFeedLimit
            | Self::RetractSpeedLimit
            | Self::TorqueLimit
            | Self::OtherTapsHole
            | Self::LoadTooHigh => Severity::Error,
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
            | Self::FloorThin
            | Self::RunOutShort
            | Self::ClearanceShort
            | Self::SpeedNotReached
            | Self::OversizeOverLimit
            | Self::ThreadStripsFirst
            | Self::PeckTapping
            | Self::TapKindUnsuited
            | Self::DeepProfile
            | Self::JointLeftOut
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
            Self::TapBottoms => "the tap reaches the end of the drilled hole",
            Self::FloorThin => "little or nothing is left below the drill's point",
            Self::CountersinkEatsThread => "the countersink takes full thread away at the mouth",
            Self::RunOutShort => "the drilled hole is shorter than thread and normal run-out",
            Self::ClearanceShort => "the R plane is too near to the face",
            Self::SpeedNotReached => "the spindle does not reach the speed in this hole",
            Self::AxisFeedLimit => "the axis cannot feed that fast: a silent clamp cuts a wrong pitch",
            Self::RetractSpeedLimit => "the way out is faster than the spindle turns",
            Self::TorqueLimit => "the spindle has not the torque for this tap at this speed",
            Self::CuttingForceAssumed => "a starting value stands for the cutting force",
            Self::Underfeed => "the feed is below the lead on purpose, the holder gives",
            Self::HolderAssumed => "holder not given, rigid is assumed",
            Self::OtherTapsHole => "the hole is that of the other kind of tap",
            Self::OversizeOverLimit => "as oversize as drills cut, the hole is above the largest minor diameter",
            Self::ThreadStripsFirst => "a thread strips before the screw breaks",
            Self::StrengthAssumed => "starting values stand for strengths",
            Self::LoadTooHigh => "the load is more than the weakest part carries",
            Self::PlatingTap => "a plated thread needs a larger tap",
            Self::PeckTapping => "pecks need a control and a holder that meet the thread again",
            Self::HolderTravel => "the holder has to give along the axis",
            Self::TapKindUnsuited => "this kind of tap does not suit the hole",
            Self::JointLeftOut => "what screw and hole carry is not computed",
            Self::DeepProfile => "one pass of one tap seldom cuts so deep a profile",
        }
    }
}
