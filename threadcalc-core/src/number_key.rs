//! The numbers that a finding carries, by name.

use crate::named::named;

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
        /// What there is, or what is left, in mm.
        RoomMm = 80 "room_mm",
        /// What it takes in mm.
        NeededMm = 81 "needed_mm",
        /// The largest speed that fits.
        FastestRpm = 82 "fastest_rpm",
        /// The speed that is reached.
        ReachedRpm = 83 "reached_rpm",
        /// A feed in mm/min.
        FeedMmMin = 84 "feed_mm_min",
        /// Its limit in mm/min.
        LimitMmMin = 85 "limit_mm_min",
        /// A torque in Nm.
        TorqueNm = 86 "torque_nm",
        /// The torque there is in Nm.
        TorqueLimitNm = 87 "torque_limit_nm",
        /// A specific cutting force in N/mm².
        CuttingForce = 88 "cutting_force_n_mm2",
        /// Percent of the lead.
        UnderfeedPercent = 89 "underfeed_percent",
        /// A length of engagement in mm.
        RequiredLengthMm = 90 "required_length_mm",
        /// Strip load of the screw's threads over that of the hole's.
        StripRatio = 91 "strip_ratio",
        /// Weakest load over the load given.
        SafetyFactor = 92 "safety_factor",
        /// A tensile strength in MPa.
        TensileMpa = 93 "tensile_mpa",
        /// A shear strength in MPa.
        ShearMpa = 94 "shear_mpa",
        /// The hole that a drill probably leaves, in mm.
        ProbableMm = 95 "probable_mm",
        /// The holder is drawn out by this much, in mm.
        ExtensionMm = 96 "extension_mm",
        /// The holder is pushed in by this much, in mm.
        CompressionMm = 97 "compression_mm",
        /// Thickness of a plating in micrometres.
        PlatingUm = 98 "plating_um",
        /// Percent of thread.
        Percent = 99 "percent",
        /// Diameter of a countersink in mm.
        CountersinkMm = 100 "countersink_mm",
        /// Included angle of a countersink in degrees.
        CountersinkAngleDeg = 101 "countersink_angle_deg",
        /// Full thread that is lost, in mm.
        FullThreadLostMm = 102 "full_thread_lost_mm",
    }
}
