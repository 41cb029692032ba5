//! The values that errors speak of, by name and number.

use crate::named::named;

named! {
    /// The value that an error speaks of.
    pub enum Field {
        /// A thread designation.
        Designation = 1 "designation",
        /// A number given as text or as a double.
        Number = 2 "number",
        /// An exact length.
        Length = 3 "length",
        /// Nominal diameter.
        Diameter = 4 "diameter",
        /// Pitch.
        Pitch = 5 "pitch",
        /// Threads per inch.
        ThreadsPerInch = 6 "threads_per_inch",
        /// Lead.
        Lead = 7 "lead_mm",
        /// Number of starts.
        Starts = 8 "starts",
        /// Series token.
        Series = 9 "series",
        /// Tolerance class.
        ToleranceClass = 10 "tolerance_class",
        /// Internal or external.
        Side = 11 "side",
        /// Spindle speed.
        Rpm = 12 "rpm",
        /// Speed step of the control.
        Step = 13 "step",
        /// Lowest speed.
        Lowest = 14 "lowest",
        /// Highest speed.
        Highest = 15 "highest",
        /// Unit of the program.
        Unit = 16 "unit",
        /// Feed mode of the program.
        Mode = 17 "mode",
        /// Decimals of a word.
        Decimals = 18 "decimals",
        /// How many results are wanted.
        Count = 19 "count",
        /// Feed.
        Feed = 20 "feed",
        /// Percent of thread.
        Percent = 21 "percent",
        /// Basis of the percent of thread.
        Basis = 22 "basis",
        /// Cut or form tap.
        Tap = 23 "tap",
        /// Drill diameter.
        Drill = 24 "drill_mm",
        /// Drill sets.
        DrillSets = 25 "drill_sets",
        /// Through or blind.
        Hole = 26 "hole",
        /// Full thread depth.
        FullThreadDepth = 27 "full_thread_depth_mm",
        /// Threads of the tap's chamfer.
        ChamferThreads = 28 "chamfer_threads",
        /// The place on the tap its length offset is set on.
        TapSetOn = 29 "tap_set_on",
        /// Length of the tap's male centre.
        TapCentre = 30 "tap_centre_mm",
        /// Point angle of the drill.
        PointAngle = 31 "point_angle_deg",
        /// Room below the tap.
        BottomClearance = 32 "bottom_clearance_mm",
        /// Height of the R plane.
        RPlane = 33 "r_plane_mm",
        /// The control's dialect.
        Dialect = 34 "dialect",
        /// The thread of a job.
        Thread = 35 "thread",
        /// The whole job.
        Job = 36 "job",
        /// A key of a job.
        Key = 37 "key",
        /// Schema number of a JSON text.
        Schema = 38 "schema",
        /// Highest speed of the machine.
        MachineHighest = 39 "machine.highest_rpm",
        /// Lowest speed of the machine.
        MachineLowest = 40 "machine.lowest_rpm",
        /// Speed step of the machine.
        MachineStep = 41 "machine.speed_step",
        /// Code of the right-hand tapping cycle.
        DialectTapRight = 42 "dialect.tap_rh",
        /// Code of the left-hand tapping cycle.
        DialectTapLeft = 43 "dialect.tap_lh",
        /// Code of feed per revolution.
        DialectPerRevolution = 44 "dialect.feed_per_revolution",
        /// Whether the tapping cycle needs a spindle that already turns.
        DialectSpindle = 45 "dialect.needs_spindle_running",
        /// Name of the dialect.
        DialectName = 46 "dialect.name",
        /// A depth along the axis.
        Depth = 47 "depth_mm",
        /// A pointer argument (C).
        Pointer = 48 "pointer",
        /// Text buffer (C).
        Buffer = 49 "buffer",
        /// The size member of a request (C).
        Size = 50 "size",
        /// Form of thread.
        Form = 51 "form",
        /// Hand of thread.
        Hand = 52 "hand",
        /// Through-hole flag.
        Through = 53 "through",
        /// Whether the hole is reamed to the taper.
        TaperReamer = 54 "taper_reamer",
        /// How far a tap projects through its ring gauge.
        Projection = 55 "projection_mm",
        /// An older or open name of a pipe thread.
        WrittenAs = 56 "written_as",
        /// A hole note of a drawing.
        Note = 60 "note",
        /// Number of holes of a note.
        HoleCount = 61 "hole_count",
        /// Depth of full thread in a note.
        ThreadDepth = 62 "thread_depth_mm",
        /// Depth of the drilled hole.
        DrillDepth = 63 "drill_depth_mm",
        /// Diameter of a countersink.
        Countersink = 64 "countersink_mm",
        /// Angle of a countersink.
        CountersinkAngle = 65 "countersink_angle_deg",
        /// Diameter of a counterbore or spotface.
        Counterbore = 66 "counterbore_mm",
        /// Depth of a counterbore or spotface.
        CounterboreDepth = 67 "counterbore_depth_mm",
        /// Diameter of a bolt circle.
        BoltCircle = 68 "bolt_circle_mm",
        /// Whether the class is meant before or after plating.
        Plating = 69 "plating",
        /// Length of engagement.
        EngagementLength = 80 "length_mm",
        /// What of the engagement has no full thread.
        WithoutFullThread = 81 "without_full_thread_mm",
        /// Shear strength of the tapped part.
        InternalShear = 82 "internal_shear_mpa",
        /// Shear strength of the screw.
        ExternalShear = 83 "external_shear_mpa",
        /// Tensile strength of the screw.
        ExternalTensile = 84 "external_tensile_mpa",
        /// The hole of an engagement as drilled.
        Drilled = 85 "drilled_mm",
        /// An axial load.
        Load = 86 "load_n",
        /// Surface speed of a tap.
        SurfaceSpeed = 100 "surface_speed_m_min",
        /// Specific cutting force.
        CuttingForce = 101 "cutting_force_n_mm2",
        /// What multiplies a torque: kind of tap, forming, taper.
        TorqueFactor = 102 "torque_factor",
        /// A torque.
        Torque = 103 "torque_nm",
        /// The gears of a spindle.
        Gears = 104 "gears",
        /// The torque curve of a gear.
        TorqueCurve = 105 "torque_curve",
        /// Travel of a stroke.
        Travel = 106 "travel_mm",
        /// Acceleration of the spindle.
        Acceleration = 107 "acceleration_rpm_s",
        /// Speed on the way out over speed on the way in.
        RetractFactor = 108 "retract_factor",
        /// Wait at the bottom of a stroke.
        Dwell = 109 "dwell_s",
        /// Turns of the spindle.
        Turns = 110 "turns",
        /// Feed limit of an axis.
        FeedLimit = 111 "feed_limit_mm_min",
        /// How far the feed is below the lead.
        Underfeed = 112 "underfeed_percent",
        /// Turns that the spindle coasts on.
        OverTravel = 113 "over_travel_turns",
        /// Way of a rapid move.
        RapidDistance = 114 "rapid_distance_mm",
        /// Feed of a rapid move.
        RapidFeed = 115 "rapid_feed_mm_min",
        /// Time of a hole.
        SecondsPerHole = 116 "seconds_per_hole",
        /// The mark on a tap's shank.
        TapMark = 117 "tap_mark",
        /// H, L or D limit of a tap.
        TapLimit = 118 "tap_limit",
        /// Thickness of a plating.
        PlatingThickness = 119 "plating_um",
        /// Pitch diameter.
        PitchDiameter = 120 "pitch_diameter_mm",
        /// Threads of room for a chamfer.
        RoomThreads = 121 "room_threads",
        /// Turns that a taper gauge stands off.
        StandOff = 122 "stand_off_turns",
        /// Diameter of a measuring wire.
        Wire = 123 "wire_mm",
        /// Whether the hole is for a wire insert.
        WireInsert = 126 "wire_insert",
        /// Whether the lead angle is taken into account.
        LeadAngle = 127 "lead_angle",
        /// What a gauge said.
        GaugeReading = 128 "result",
        /// Class of a tap by ISO 2857.
        IsoTapClass = 129 "tap_class",
        /// Surface speed of a tap in feet per minute.
        SurfaceSpeedFeet = 130 "surface_speed_ft_min",
        /// Material of the part.
        Material = 131 "material",
        /// How the tap is built.
        TapKind = 132 "tap_kind",
        /// Chamfer form of the tap.
        ChamferForm = 133 "chamfer_form",
        /// The drills that the shop owns.
        DrillList = 134 "drill_list",
        /// Thickness of the part at the hole.
        PartThickness = 135 "part_thickness_mm",
        /// How the tap is held.
        Holder = 136 "holder",
        /// Depth of a peck.
        Peck = 137 "peck_mm",
        /// Shear strength of the part.
        PartShear = 138 "part_shear_mpa",
        /// Class of the screw's thread.
        ScrewClass = 139 "screw.tolerance_class",
        /// Property class of the screw.
        ScrewProperty = 140 "screw.property_class",
        /// Tensile strength of the screw.
        ScrewTensile = 141 "screw.tensile_mpa",
        /// Shear strength of the screw.
        ScrewShear = 142 "screw.shear_mpa",
        /// Length of engagement of the screw.
        ScrewEngagement = 143 "screw.engagement_mm",
        /// Load on the screw.
        ScrewLoad = 144 "screw.load_n",
        /// Feed limit of the machine's axis.
        MachineFeedLimit = 145 "machine.axis_feed_limit_mm_min",
        /// Acceleration of the machine's spindle.
        MachineAcceleration = 146 "machine.acceleration_rpm_s",
        /// Gears of the machine's spindle.
        MachineGears = 147 "machine.gears",
        /// Retract factor of the machine.
        MachineRetract = 148 "machine.retract_factor",
        /// Turns of clearance that the machine needs.
        MachineClearance = 149 "machine.least_clearance_turns",
        /// Thickness of the plating of a job.
        Coating = 150 "coating_um",
        /// The holder's extension.
        HolderExtension = 151 "holder_extension_mm",
        /// The holder's compression.
        HolderCompression = 152 "holder_compression_mm",
        /// Whether left hand is the right-hand code with the spindle turning backwards.
        DialectLeftBySpindle = 160 "dialect.lh_by_spindle_direction",
        /// Code of feed per minute.
        DialectPerMinute = 161 "dialect.feed_per_minute",
        /// Code that makes the next tapping cycle a synchronised one.
        DialectRigidCode = 162 "dialect.rigid_tap_code",
        /// Whether that code carries the speed.
        DialectRigidCodeSpeed = 163 "dialect.rigid_tap_code_has_s",
        /// Letter of the peck's depth.
        DialectPeckWord = 164 "dialect.peck_word",
        /// Code of the right-hand tapping cycle with pecks.
        DialectPeckRight = 165 "dialect.peck_code_rh",
        /// Code of the left-hand tapping cycle with pecks.
        DialectPeckLeft = 166 "dialect.peck_code_lh",
        /// Letter of the dwell at the bottom.
        DialectDwellWord = 167 "dialect.dwell_word",
        /// What the dwell is counted in.
        DialectDwellUnit = 168 "dialect.dwell_unit",
        /// Letter of the faster way out.
        DialectRetractWord = 169 "dialect.retract_multiplier_word",
        /// What the faster way out is counted in.
        DialectRetractIn = 170 "dialect.retract_in",
        /// Code of the return to the R plane.
        DialectReturnRPlane = 171 "dialect.return_r_plane",
        /// Code of the return to the height before the cycle.
        DialectReturnInitial = 172 "dialect.return_initial",
        /// Decimals of axis words in millimetres.
        DialectDecimalsMm = 173 "dialect.axis_decimals_mm",
        /// Decimals of axis words in inches.
        DialectDecimalsInch = 174 "dialect.axis_decimals_inch",
        /// Whether a whole number has a point.
        DialectPoint = 175 "dialect.trailing_point",
        /// Where the tap returns to.
        ReturnTo = 176 "return_to",
        /// What the depth of a drilled hole is measured to.
        DrilledTo = 180 "drill_depth_to",
        /// The side that a depth is rounded to.
        DepthRounding = 181 "depth_rounding",
        /// Normal, short or long run-out.
        RunOut = 182 "run_out",
        /// Depth to the very end of the tap.
        TapEnd = 183 "tap_end_mm",
        /// Depth to the drill's point.
        DrillPoint = 184 "drill_point_mm",
        /// How far the drill's full diameter comes out below.
        DrillClearance = 185 "drill_clearance_mm",
        /// How much larger than itself a drill cuts.
        Oversize = 190 "oversize_mm",
        /// Thickness of a coating.
        CoatingThickness = 191 "thickness_um",
        /// The thinnest that a coating may be.
        CoatingThinnest = 192 "thinnest_um",
        /// The thickest that a coating may be.
        CoatingThickest = 193 "thickest_um",
        /// Short, normal or long engagement.
        EngagementGroup = 194 "group",
        /// What a thread is for: fine, medium or coarse.
        FitQuality = 195 "quality",
        /// The unit before any units code.
        DialectUnitsDefault = 200 "dialect.units_default",
        /// The feed mode before any code of it.
        DialectModeDefault = 201 "dialect.feed_mode_default",
        /// Codes of the units.
        DialectUnitsCodes = 202 "dialect.units_codes",
        /// Codes of inches.
        DialectInchCodes = 203 "dialect.units_codes.inch",
        /// Codes of millimetres.
        DialectMmCodes = 204 "dialect.units_codes.mm",
        /// What F means in a tapping cycle.
        DialectFeedBasis = 205 "dialect.feed_basis",
        /// Letter of the lead.
        DialectLeadWord = 206 "dialect.lead_word",
        /// Code of one synchronised stroke.
        DialectStrokeCode = 207 "dialect.stroke_code",
        /// Whether the tapping cycle starts the spindle.
        DialectStartsSpindle = 208 "dialect.cycle_starts_spindle",
        /// How long the code for rigid tapping holds.
        DialectRigidUntil = 209 "dialect.rigid_tap_code_sticky_until",
        /// Whether S may stand in the cycle's block.
        DialectSpeedInCycle = 210 "dialect.S_in_cycle_block_allowed",
        /// Decimals of S that the control keeps.
        DialectSpeedDecimals = 211 "dialect.S_decimals",
        /// Whether a peck returns to the R plane.
        DialectPeckReturns = 212 "dialect.peck_returns_to_R",
        /// Letter of repeats.
        DialectRepeatWord = 213 "dialect.repeat_word",
        /// What no repeats mean.
        DialectRepeatZero = 214 "dialect.repeat_zero_means",
        /// What a number without a point is.
        DialectNoPoint = 215 "dialect.no_point",
        /// Least increments of words.
        DialectLeastIncrement = 216 "dialect.least_increment",
        /// The most decimals of words.
        DialectMostDecimals = 217 "dialect.max_decimals",
        /// Code that mirrors an axis.
        DialectMirrorOn = 218 "dialect.mirror_on",
        /// Code that ends mirroring.
        DialectMirrorOff = 219 "dialect.mirror_off",
        /// Code that scales.
        DialectScaleOn = 220 "dialect.scale_on",
        /// Code that ends scaling.
        DialectScaleOff = 221 "dialect.scale_off",
        /// Code that rotates.
        DialectRotateOn = 222 "dialect.rotate_on",
        /// Code that ends rotation.
        DialectRotateOff = 223 "dialect.rotate_off",
        /// Whether a mirrored cycle changes its hand.
        DialectMirrorHand = 224 "dialect.mirror_flips_hand",
        /// Whether G0 to G3 end a cycle.
        DialectRapidCancels = 225 "dialect.rapid_cancels_cycle",
        /// Whether R and Z outlive a cycle.
        DialectCycleSticky = 226 "dialect.cycle_words_sticky_across_cancel",
        /// Whether a change of units converts F.
        DialectFeedConverted = 227 "dialect.F_converted_on_units_change",
        /// Whether overrides are locked in the cycle.
        DialectOverride = 228 "dialect.override_locked_in_cycle",
        /// Whether a semicolon begins a comment.
        DialectSemicolon = 229 "dialect.semicolon_comment",
        /// The longest line in characters.
        DialectLongestLine = 230 "dialect.max_block_chars",
        /// What blanks inside a number are.
        DialectNumberSpaces = 231 "dialect.spaces_in_numbers",
        /// Code that calls a subprogram.
        DialectCall = 232 "dialect.subprogram_call",
        /// Code that returns from a subprogram.
        DialectReturn = 233 "dialect.subprogram_return",
        /// In what order the words of a block act.
        DialectOrder = 234 "dialect.order_table",
        /// Whether unlisted codes are an alarm.
        DialectUnlisted = 235 "dialect.unlisted_codes_alarm",
        /// A program.
        Program = 240 "program",
        /// A tool of a tool list.
        Tool = 250 "tool",
        /// What a lead may be off a pitch.
        Within = 251 "within",
        /// Face of the part in the program's Z.
        SurfaceZ = 252 "surface_z_mm",
        /// Position of the switch for block delete.
        BlockDelete = 253 "block_delete",
        /// Whether formulas are computed.
        EvaluateMacros = 254 "evaluate_macros",
        /// What a tool is.
        ToolKind = 255 "kind",
    }
}
