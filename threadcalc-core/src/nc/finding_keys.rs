//! The numbers and the lines that a finding of a program carries, by name.

use crate::named::named;

named! {
    /// The name of a number that a finding of a program carries. Lengths in mm and feeds in mm/min where the name
    /// says so; `feed` and `suggested_feed` are in the program's own unit and mode.
    pub enum ProgramNumberKey {
        /// Holes that are tapped so.
        AffectedHoles = 1 "affected_holes",
        /// The point angle that stands for the one nobody told.
        AssumedPointAngleDeg = 2 "assumed_point_angle_deg",
        /// Room below the tap.
        BottomClearanceMm = 3 "bottom_clearance_mm",
        /// The same with a drill of 130 degrees.
        BottomClearance130DegMm = 4 "bottom_clearance_130_deg_mm",
        /// The same with a drill of 140 degrees.
        BottomClearance140DegMm = 5 "bottom_clearance_140_deg_mm",
        /// The line that changed it.
        ChangedAtLine = 6 "changed_at_line",
        /// Characters of a line.
        Chars = 7 "chars",
        /// A count.
        Count = 8 "count",
        /// Speed of the cycle.
        CycleSpeedRpm = 9 "cycle_speed_rpm",
        /// Drill diameter.
        DrillMm = 10 "drill_mm",
        /// Length of the drill's point.
        DrillPointMm = 11 "drill_point_mm",
        /// Z of the drill's point.
        DrillZMm = 12 "drill_z_mm",
        /// The letter of a dwell.
        DwellWord = 13 "dwell_word",
        /// What it should be.
        Expected = 14 "expected",
        /// The lead of the declared thread.
        ExpectedLeadMm = 15 "expected_lead_mm",
        /// One over the other.
        Factor = 16 "factor",
        /// F as it is written.
        Feed = 17 "feed",
        /// The feed it comes to.
        FeedMmMin = 18 "feed_mm_min",
        /// Depth of the hole's full diameter.
        FullDiameterDepthMm = 19 "full_diameter_depth_mm",
        /// Length of full thread.
        FullThreadMm = 20 "full_thread_mm",
        /// The lead before a change.
        LeadBeforeMm = 21 "lead_before_mm",
        /// The lead behind it.
        LeadAfterMm = 22 "lead_after_mm",
        /// Relative error of the lead.
        LeadError = 23 "lead_error",
        /// The lead where a change of units converts F.
        LeadIfConvertedMm = 24 "lead_if_converted_mm",
        /// The lead under the other feed mode.
        LeadIfOtherModeMm = 25 "lead_if_other_mode_mm",
        /// The lead that is cut.
        LeadMm = 26 "lead_mm",
        /// The lead with the switch for block delete off: the blocks run.
        LeadOffMm = 27 "lead_off_mm",
        /// The lead with the switch on: the blocks are left out.
        LeadOnMm = 28 "lead_on_mm",
        /// The machine's feed limit.
        LimitMmMin = 29 "limit_mm_min",
        /// The machine's speed limit.
        LimitRpm = 30 "limit_rpm",
        /// How many axes are mirrored.
        MirroredAxes = 31 "mirrored_axes",
        /// Speed out over speed in.
        Multiplier = 32 "multiplier",
        /// Turns at the nominal depth.
        NominalTurns = 33 "nominal_turns",
        /// Passes of a peck cycle.
        Passes = 34 "passes",
        /// Percent of thread.
        Percent = 35 "percent",
        /// Pitch.
        PitchMm = 36 "pitch_mm",
        /// What is programmed.
        Programmed = 37 "programmed",
        /// Z of the R plane.
        RMm = 38 "r_mm",
        /// The speed that is reached.
        ReachableRpm = 39 "reachable_rpm",
        /// The speed of the way out.
        RetractRpm = 40 "retract_rpm",
        /// The S of the code for rigid tapping.
        RigidTapCodeSpeedRpm = 41 "rigid_tap_code_speed_rpm",
        /// 1 where scaling is active.
        Scale = 42 "scale",
        /// Seconds.
        Seconds = 43 "seconds",
        /// The line that set it.
        SetAtLine = 44 "set_at_line",
        /// S before a change.
        SpeedBeforeRpm = 45 "speed_before_rpm",
        /// S behind it.
        SpeedAfterRpm = 46 "speed_after_rpm",
        /// S.
        SpeedRpm = 47 "speed_rpm",
        /// Starts of the thread.
        Starts = 48 "starts",
        /// The F to write instead.
        SuggestedFeed = 49 "suggested_feed",
        /// Z of the tap's end.
        TapZMm = 50 "tap_z_mm",
        /// Torque of the tap.
        TorqueNm = 51 "torque_nm",
        /// Torque of the spindle.
        TorqueLimitNm = 52 "torque_limit_nm",
        /// Threads per inch.
        Tpi = 53 "tpi",
        /// From R to Z.
        TravelMm = 54 "travel_mm",
        /// Turns.
        Turns = 55 "turns",
        /// A value.
        Value = 56 "value",
        /// The letter of a word.
        Word = 57 "word",
        /// Z.
        ZMm = 58 "z_mm",
        /// How far the tap is from true at the bottom.
        DriftMm = 59 "drift_mm",
        /// The same in parts of the pitch.
        DriftPitches = 60 "drift_pitches",
        /// The second nearest pitch.
        NextPitchMm = 61 "next_pitch_mm",
        /// Its threads per inch.
        NextTpi = 62 "next_tpi",
        /// How far the lead is from it.
        NextLeadError = 63 "next_lead_error",
        /// The number of a code.
        Code = 64 "code",
    }
}

named! {
    /// What a line contributes to a finding.
    pub enum EvidenceKind {
        /// It set S.
        Speed = 1 "speed",
        /// It set F.
        Feed = 2 "feed",
        /// It set the unit.
        Units = 3 "units",
        /// It set the feed mode.
        FeedMode = 4 "feed_mode",
        /// It began the cycle.
        Cycle = 5 "cycle",
        /// It changed the tool.
        Tool = 6 "tool",
        /// It names the thread.
        Thread = 7 "thread",
        /// It drilled the hole.
        Drill = 8 "drill",
        /// It is left out by the switch for block delete.
        BlockDelete = 9 "block_delete",
    }
}
