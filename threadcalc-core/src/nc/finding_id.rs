//! The findings of a program by id: how bad, and what each means in one line.

use crate::finding::Severity;
use crate::named::named;

named! {
    /// The stable id of a finding of a program.
    pub enum ProgramFindingId {
        /// The lead that is cut is not the thread's.
        LeadMismatch = 1 "lead-mismatch",
        /// The lead fits in the other unit.
        InchMetricMix = 2 "inch-metric-mix",
        /// The lead fits under the other feed mode.
        FeedModeMix = 3 "feed-mode-mix",
        /// The lead fits with the point elsewhere.
        DecimalPoint = 4 "decimal-point",
        /// A word without a point is counted in least increments.
        ImplicitDecimalUsed = 5 "implicit-decimal-used",
        /// The feed follows the pitch of a thread with several starts.
        LeadVsPitch = 6 "lead-vs-pitch",
        /// S was changed in an active cycle, F was not.
        StaleFeedAfterSpeedChange = 7 "stale-feed-after-speed-change",
        /// F was set in the other unit and is used now.
        UnitsChangedAfterFeed = 8 "units-changed-after-feed",
        /// The feed mode changed and F was kept.
        FeedModeChangeWithoutFeed = 9 "feed-mode-change-without-feed",
        /// F is the exact feed rounded or cut off.
        FeedRounded = 10 "feed-rounded",
        /// The cycle has no speed.
        NoSpeed = 11 "no-speed",
        /// The cycle has no feed.
        NoFeed = 12 "no-feed",
        /// The cycle is of the other hand than the thread.
        WrongHand = 13 "wrong-hand",
        /// The spindle does not turn as the cycle needs it.
        SpindleDirection = 14 "spindle-direction",
        /// The spindle is started before a cycle that starts it itself.
        SpindleStartBeforeCycle = 15 "spindle-start-before-cycle",
        /// The code for rigid tapping is missing.
        RigidTapCodeMissing = 16 "rigid-tap-code-missing",
        /// The code for rigid tapping has another speed.
        RigidTapCodeSpeedDiffers = 17 "rigid-tap-code-speed-differs",
        /// The tool is changed or the program ends in an active cycle.
        CycleNotCancelled = 18 "cycle-not-cancelled",
        /// A tool that is no tap runs the tapping cycle.
        CycleLeftActive = 19 "cycle-left-active",
        /// Axis words without a motion code behind G80.
        AxisWordsWithoutMotion = 20 "axis-words-without-motion",
        /// The tapping feed is still there in the first feed move afterwards.
        FeedCarriedOver = 21 "feed-carried-over",
        /// Feed per revolution is still there in milling.
        FeedModeLeftActive = 22 "feed-mode-left-active",
        /// The first block of the cycle lacks R or Z.
        CycleWordMissing = 23 "cycle-word-missing",
        /// Z is not below R.
        CycleGeometry = 24 "cycle-geometry",
        /// The depth makes no sense for the thread.
        DepthImplausible = 25 "depth-implausible",
        /// The tap reaches the end of the drilled hole's full diameter.
        TapBottomsHole = 26 "tap-bottoms-hole",
        /// No drilling here before the tap.
        HoleNotDrilled = 27 "hole-not-drilled",
        /// The drilled hole does not suit the thread.
        DrillSize = 28 "drill-size",
        /// The depth of a taper thread is far from its nominal turns.
        TaperDepth = 29 "taper-depth",
        /// The R plane is too near.
        ClearanceShort = 30 "clearance-short",
        /// The spindle does not come to speed in this hole.
        SpeedNeverReached = 31 "speed-never-reached",
        /// The speed is above the machine's.
        SpeedLimit = 32 "speed-limit",
        /// The feed is above the axis's.
        AxisFeedLimit = 33 "axis-feed-limit",
        /// The way out is faster than the spindle.
        RetractSpeedLimit = 34 "retract-speed-limit",
        /// The torque is above the spindle's.
        TorqueLimit = 35 "torque-limit",
        /// Neither return is stated.
        ReturnPlaneUnstated = 36 "return-plane-unstated",
        /// The unit is that of the control when it was switched on.
        UnitsUnstated = 37 "units-unstated",
        /// Absolute or incremental is not stated.
        DistanceModeUnstated = 38 "distance-mode-unstated",
        /// The feed mode is not stated.
        FeedModeUnstated = 39 "feed-mode-unstated",
        /// The plane is not that of the drilling axis.
        WrongPlane = 40 "wrong-plane",
        /// Inverse time is active in a cycle.
        InverseTimeActive = 41 "inverse-time-active",
        /// Constant surface speed is active in a cycle.
        ConstantSurfaceSpeedActive = 42 "constant-surface-speed-active",
        /// Cutter compensation is active in a cycle.
        CutterCompActive = 43 "cutter-comp-active",
        /// No length offset is active for the tool.
        LengthOffsetMissing = 44 "length-offset-missing",
        /// Mirror, scale or rotation is active in a cycle.
        MirrorScaleRotationActive = 45 "mirror-scale-rotation-active",
        /// Overrides are not locked in the cycle.
        OverrideUnlocked = 46 "override-unlocked",
        /// The cycle pecks.
        PeckInTap = 47 "peck-in-tap",
        /// The dwell is implausible.
        DwellUnit = 48 "dwell-unit",
        /// The cycle is repeated at one place.
        RepeatInPlace = 49 "repeat-in-place",
        /// A hole is tapped twice.
        DuplicateHole = 50 "duplicate-hole",
        /// An incremental block reuses absolute R or Z.
        StickyDepthInIncremental = 51 "sticky-depth-in-incremental",
        /// A single stroke moves across.
        OffAxisStroke = 52 "off-axis-stroke",
        /// Tool list and comment name different threads.
        ToolThreadMismatch = 53 "tool-thread-mismatch",
        /// The lead is that of one pitch.
        ThreadIdentified = 54 "thread-identified",
        /// The lead is that of several pitches.
        AmbiguousThread = 55 "ambiguous-thread",
        /// The lead is that of no pitch.
        NonstandardLead = 56 "nonstandard-lead",
        /// The switch for block delete changes what is tapped.
        BlockDeleteChangesResult = 57 "block-delete-changes-result",
        /// A value is not known.
        UnresolvedValue = 58 "unresolved-value",
        /// A subprogram is not in this text.
        SubprogramMissing = 59 "subprogram-missing",
        /// Subprograms call each other too deep.
        RecursionLimit = 60 "recursion-limit",
        /// A comment that nothing closes.
        UnclosedComment = 61 "unclosed-comment",
        /// A number that is none.
        BadNumber = 62 "bad-number",
        /// A letter twice in a block.
        DuplicateWord = 63 "duplicate-word",
        /// Two codes of one group in a block.
        TwoCodesOneGroup = 64 "two-codes-one-group",
        /// The block could not be read.
        BlockNotRead = 65 "block-not-read",
        /// The line is longer than a control takes.
        LineTooLong = 66 "line-too-long",
        /// Line ends of more than one kind.
        MixedLineEndings = 67 "mixed-line-endings",
        /// Bytes above 127.
        NonAscii = 68 "non-ascii",
        /// The program does not end.
        MissingEnd = 69 "missing-end",
        /// Less full thread than is declared.
        FullThreadShort = 70 "full-thread-short",
        /// The control has no such code.
        CodeNotOnControl = 71 "code-not-on-control",
        /// The answer depends on the control.
        DialectUnset = 72 "dialect-unset",
    }
}

impl ProgramFindingId {
    /// The severity unless the numbers say otherwise.
    #[must_use]
    pub const fn severity(self) -> Severity {
        match self {
            Self::ImplicitDecimalUsed
            | Self::FeedModeChangeWithoutFeed
            | Self::FeedRounded
            | Self::RigidTapCodeSpeedDiffers
            | Self::AxisWordsWithoutMotion
            | Self::DepthImplausible
            | Self::HoleNotDrilled
            | Self::DrillSize
            | Self::TaperDepth
            | Self::ClearanceShort
            | Self::SpeedNeverReached
            | Self::UnitsUnstated
            | Self::DistanceModeUnstated
            | Self::FeedModeUnstated
            | Self::LengthOffsetMissing
            | Self::MirrorScaleRotationActive
            | Self::OverrideUnlocked
            | Self::RepeatInPlace
            | Self::DuplicateHole
            | Self::AmbiguousThread
            | Self::NonstandardLead
            | Self::BlockDeleteChangesResult
            | Self::UnresolvedValue
            | Self::SubprogramMissing
            | Self::RecursionLimit
            | Self::LineTooLong
            | Self::MissingEnd
            | Self::FullThreadShort
            | Self::DialectUnset => Severity::Warning,
            Self::SpindleStartBeforeCycle
            | Self::ReturnPlaneUnstated
            | Self::PeckInTap
            | Self::StickyDepthInIncremental
            | Self::ThreadIdentified
            | Self::MixedLineEndings
            | Self::NonAscii => Severity::Info,
            _ => Severity::Error,
        }
    }

    /// What will happen, in one line; a name in braces stands for a number of the finding, and what stands in square
    /// brackets is left out where a finding lacks a number of it.
    #[must_use]
    pub const fn message(self) -> &'static str {
        match self {
            Self::LeadMismatch => {
                "cuts a lead of {lead_mm} mm, the thread has {expected_lead_mm} mm[: {drift_mm} mm off at the bottom]"
            }
            Self::InchMetricMix => {
                "cuts a lead of {lead_mm} mm; {expected_lead_mm} mm is the same number in the other unit"
            }
            Self::FeedModeMix => {
                "cuts a lead of {lead_mm} mm; under the other feed mode F{feed} is {lead_if_other_mode_mm} mm"
            }
            Self::DecimalPoint => "cuts a lead of {lead_mm} mm; with the point elsewhere it is {expected_lead_mm} mm",
            Self::ImplicitDecimalUsed => "a word without a point counts least increments here[: it is {value}]",
            Self::LeadVsPitch => {
                "feeds by the pitch {pitch_mm} mm; with {starts} starts the lead is {expected_lead_mm} mm"
            }
            Self::StaleFeedAfterSpeedChange => {
                "S changed {speed_before_rpm} to {speed_after_rpm} in the active cycle, F[{feed}] stayed: the lead is now {lead_after_mm} mm"
            }
            Self::UnitsChangedAfterFeed => {
                "F was set in line {set_at_line}, the unit changed in line {changed_at_line}: the lead is {lead_mm} mm[, or {lead_if_converted_mm} mm where the control converts F]"
            }
            Self::FeedModeChangeWithoutFeed => {
                "the feed mode changed without a new F: F[{feed}] now means something else, or is an alarm"
            }
            Self::FeedRounded => {
                "F is rounded: the lead is {lead_mm} mm instead of {expected_lead_mm} mm[, {drift_mm} mm off at the bottom]"
            }
            Self::NoSpeed => "no speed: the spindle does not turn, or turns as it did last",
            Self::NoFeed => "no feed: the tap turns without moving, or the control stops",
            Self::WrongHand => "the cycle is {programmed}, the thread is {expected}: the tap breaks on touch",
            Self::SpindleDirection => "the spindle is stopped or turns the wrong way when the cycle starts",
            Self::SpindleStartBeforeCycle => {
                "the spindle is started before a cycle that starts it itself: a stop and a start for nothing, or an alarm"
            }
            Self::RigidTapCodeMissing => {
                "no code for rigid tapping before the cycle: the spindle and the axis are not synchronised"
            }
            Self::RigidTapCodeSpeedDiffers => {
                "the code for rigid tapping has S{rigid_tap_code_speed_rpm}, the cycle runs at S{cycle_speed_rpm}"
            }
            Self::CycleNotCancelled => "the tapping cycle is still active here: no G80",
            Self::CycleLeftActive => "runs the tapping cycle again, with a tool that is no tap",
            Self::AxisWordsWithoutMotion => {
                "axis words with no motion code: a rapid move or an alarm, as the control has it"
            }
            Self::FeedCarriedOver => "no F since tapping: [moves at {feed_mm_min} mm/min, ]set in line {set_at_line}",
            Self::FeedModeLeftActive => {
                "feed per revolution is still active: F{feed}[ at S{speed_rpm} is {feed_mm_min} mm/min]"
            }
            Self::CycleWordMissing => "the cycle has no {word}",
            Self::CycleGeometry => "Z {z_mm} mm is not below R {r_mm} mm",
            Self::DepthImplausible => "taps to Z {z_mm} mm: less than a turn, or more than 12 diameters",
            Self::TapBottomsHole => {
                "the tap's end is {bottom_clearance_mm+} the end of the drill's full diameter, {full_diameter_depth_mm} mm deep"
            }
            Self::HoleNotDrilled => "nothing is drilled at this place before the tap",
            Self::DrillSize => "the drill of {drill_mm} mm does not suit this thread",
            Self::TaperDepth => "{turns} turns; the nominal depth is {nominal_turns} turns",
            Self::ClearanceShort => {
                "R leaves {turns} turns above the part: the tap may touch before it is synchronised"
            }
            Self::SpeedNeverReached => "S{speed_rpm} is never reached in {travel_mm} mm: {reachable_rpm} rpm are",
            Self::SpeedLimit => "S{speed_rpm} is above the machine's {limit_rpm} rpm",
            Self::AxisFeedLimit => {
                "{feed_mm_min} mm/min is above the axis's {limit_mm_min}: a silent clamp cuts another lead"
            }
            Self::RetractSpeedLimit => "{multiplier} times out is {retract_rpm} rpm, above the machine's {limit_rpm}",
            Self::TorqueLimit => "the tap needs {torque_nm} Nm, the spindle has {torque_limit_nm} Nm at this speed",
            Self::ReturnPlaneUnstated => "neither G98 nor G99 is stated before the first cycle",
            Self::UnitsUnstated => "no unit is stated before the first cycle",
            Self::DistanceModeUnstated => "neither G90 nor G91 is stated before the first cycle",
            Self::FeedModeUnstated => "no feed mode is stated before the first cycle",
            Self::WrongPlane => "G17 is not active: the cycle runs along another axis",
            Self::InverseTimeActive => "G93 is active: F is no feed here",
            Self::ConstantSurfaceSpeedActive => "G96 is active: S is no speed here",
            Self::CutterCompActive => "cutter compensation is active",
            Self::LengthOffsetMissing => "no length offset since the tool was changed",
            Self::MirrorScaleRotationActive => "mirror, scale or rotation is active, set in line {set_at_line}",
            Self::OverrideUnlocked => "feed and speed overrides are not locked on this control: M49 does it",
            Self::PeckInTap => "taps in [{passes} ]passes: the control has to meet the thread again",
            Self::DwellUnit => "the dwell {dwell_word} is {seconds} s",
            Self::RepeatInPlace => "taps the same hole {count} times",
            Self::DuplicateHole => "this hole is tapped again",
            Self::StickyDepthInIncremental => "R or Z of an absolute block is reused under G91",
            Self::OffAxisStroke => "X or Y moves in a synchronised stroke: the tap breaks",
            Self::ToolThreadMismatch => "the tool list and the comment name different threads",
            Self::ThreadIdentified => "the lead is that of the pitch {pitch}",
            Self::AmbiguousThread => "the lead {lead_mm} mm fits more than one pitch[: {pitch}][ or {next_pitch}]",
            Self::NonstandardLead => {
                "the lead {lead_mm} mm is that of no standard pitch[; the nearest: {pitch}][, {next_pitch}]"
            }
            Self::BlockDeleteChangesResult => "the switch for block delete changes what is tapped",
            Self::UnresolvedValue => "a value here is not known: not checked",
            Self::SubprogramMissing => "calls a subprogram that is not in this text: not checked",
            Self::RecursionLimit => "calls go too deep or on without end: not followed further",
            Self::UnclosedComment => "a comment is not closed: the rest of the line is comment",
            Self::BadNumber => "no number a control can read",
            Self::DuplicateWord => "a letter stands twice in this block: one of them counts, or the control stops",
            Self::TwoCodesOneGroup => "two codes of one group in this block: one of them counts, or the control stops",
            Self::BlockNotRead => "the block could not be read: what it does is not known",
            Self::LineTooLong => "a line of {chars} characters",
            Self::MixedLineEndings => "line ends of more than one kind",
            Self::NonAscii => "bytes above 127",
            Self::MissingEnd => "neither M2, M30 nor a closing % ends the program",
            Self::FullThreadShort => "full thread to {full_thread_mm} mm only",
            Self::CodeNotOnControl => "the dialect has no {word}{code}",
            Self::DialectUnset => "wrong where {reading}; the dialect does not say",
        }
    }
}
