//! What a check is told beside the program: dialects, options and tools that are drawn once, and used in turn.

use threadcalc_core::nc::{CheckOptions, Tool};
use threadcalc_core::{Dialect, Value};

use super::random::Random;

/// The fields of a dialect and what each may be; a field that is drawn has one of its values.
const FIELDS: &[(&str, &[&str])] = &[
    ("tap_rh", &["G84", "G84", "G84.2", "none"]),
    ("tap_lh", &["G74", "G84.3", "none"]),
    ("lh_by_spindle_direction", &["true", "false"]),
    ("feed_per_minute", &["G94", "G98"]),
    ("feed_per_revolution", &["G95", "G99", "none"]),
    ("needs_spindle_running", &["true", "false"]),
    ("rigid_tap_code", &["M135", "M29", "none"]),
    ("rigid_tap_code_has_s", &["true", "false"]),
    ("rigid_tap_code_sticky_until", &["next_cycle", "cycle_cancelled", "spindle_code", "program_end"]),
    ("peck_word", &["Q", "none"]),
    ("peck_code_rh", &["G84.5"]),
    ("peck_returns_to_R", &["true", "false", "unknown"]),
    ("dwell_word", &["P", "none"]),
    ("dwell_unit", &["seconds", "milliseconds"]),
    ("retract_multiplier_word", &["J"]),
    ("retract_in", &["factor", "percent"]),
    ("return_r_plane", &["G99", "none"]),
    ("return_initial", &["G98", "none"]),
    ("units_default", &["mm", "inch"]),
    ("units_codes.inch", &["G20", "G20 G70"]),
    ("units_codes.mm", &["G21", "G21 G71"]),
    ("feed_mode_default", &["per_minute", "per_revolution"]),
    ("feed_basis", &["by_mode", "per_min_always", "per_rev_in_tap_cycle", "lead_word"]),
    ("lead_word", &["K", "none"]),
    ("stroke_code", &["G33.1", "G33", "none"]),
    ("cycle_starts_spindle", &["true", "false"]),
    ("S_in_cycle_block_allowed", &["true", "false"]),
    ("S_decimals", &["0", "1"]),
    ("repeat_word", &["L", "K"]),
    ("repeat_zero_means", &["error", "store_only", "once"]),
    ("no_point", &["as_written", "least_increment"]),
    ("least_increment.axis.mm", &["0.001"]),
    ("least_increment.F_per_min.mm", &["1", "0.01"]),
    ("least_increment.F_per_rev.inch", &["0.0001"]),
    ("max_decimals.axis.mm", &["3"]),
    ("max_decimals.F_per_rev.mm", &["2", "4"]),
    ("max_decimals.F_per_min.inch", &["1"]),
    ("mirror_on", &["G51.1", "none"]),
    ("mirror_off", &["G50.1"]),
    ("scale_on", &["G51"]),
    ("scale_off", &["G50"]),
    ("rotate_on", &["G68"]),
    ("rotate_off", &["G69"]),
    ("mirror_flips_hand", &["true", "false", "unknown"]),
    ("rapid_cancels_cycle", &["true", "false"]),
    ("cycle_words_sticky_across_cancel", &["true", "false"]),
    ("F_converted_on_units_change", &["true", "false"]),
    ("override_locked_in_cycle", &["true", "false"]),
    ("unlisted_codes_alarm", &["true", "false"]),
    ("semicolon_comment", &["true", "false"]),
    ("max_block_chars", &["20", "80", "256"]),
    ("order_table", &["rs274ngc", "units_first"]),
    ("spaces_in_numbers", &["ignored", "error"]),
];
const CALLS: &[(&str, &str)] = &[("subprogram_call", "M98"), ("subprogram_return", "M99")];
const OPTIONS: &[(&str, &[&str])] = &[
    ("surface_z_mm", &["0", "10", "-2.5"]),
    ("block_delete", &["true", "false"]),
    ("evaluate_macros", &["true", "false"]),
    ("thread", &["M8", "1/4-20 UNC", "M10x1.5-LH", "1/4-18 NPT", "M16xPh3P1.5", "Tr16x4", "M8 STI"]),
    ("full_thread_depth_mm", &["12", "900"]),
    ("holder", &["rigid", "floating", "tension_compression"]),
    ("underfeed_percent", &["5", "0"]),
    ("cutting_force_n_mm2", &["2500"]),
    ("machine.highest_rpm", &["4000", "300"]),
    ("machine.axis_feed_limit_mm_min", &["5000", "500"]),
    ("machine.acceleration_rpm_s", &["3000", "20"]),
    ("machine.retract_factor", &["2"]),
    ("machine.gears", &["20 3000 1", "20 4000 50"]),
    ("machine.least_clearance_turns", &["3"]),
];
const TOOLS: &[(&str, &[&str])] = &[
    ("number", &["1", "2", "3", "4", "5"]),
    ("kind", &["cut_tap", "form_tap", "tap", "drill", "spot_drill", "other"]),
    ("thread", &["M8", "1/4-20 UNC", "M10x1.5-LH", "1/2 BSW", "2 BA"]),
    ("diameter_mm", &["6.8", "5", "8"]),
    ("point_angle_deg", &["118", "140"]),
    ("chamfer_threads", &["2", "4"]),
    ("holder", &["rigid", "floating"]),
];

/// What checks are told.
pub struct Told {
    /// Dialects: an eighth is a built-in one; an eighth knows calls.
    pub dialects: Vec<Dialect>,
    /// Options.
    pub options: Vec<CheckOptions>,
    /// Lists of tools; half are empty.
    pub tools: Vec<Vec<Tool>>,
}

/// Values for some of the fields, one time in `chance` each; a value that does not go with the others is left out.
fn drawn<'a>(
    random: &mut Random,
    fields: &'a [(&str, &[&'a str])],
    chance: usize,
    mut set: impl FnMut(&str, Value<'a>),
) {
    for (key, values) in fields {
        if random.one_in(chance) {
            set(key, Value::Text(random.of(values).as_bytes()));
        }
    }
}

impl Told {
    /// Those of a seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        let random = &mut Random::new(seed, u64::MAX);
        let dialects = (0..256).map(|place| dialect(random, place)).collect();
        let options = (0..64).map(|place| options(random, place)).collect();
        let tools =
            (0..32).map(|place| (0..place % 2 * (1 + random.below(4))).map(|_| tool(random)).collect()).collect();
        Self { dialects, options, tools }
    }
}

fn dialect(random: &mut Random, place: usize) -> Dialect {
    let mut dialect = if place % 8 < 4 { Dialect::unset() } else { Dialect::rs274ngc() };
    let mut set = |key: &str, value| {
        dialect.set(key, value).unwrap_or_else(|error| panic!("{key} {value:?}: {error}"));
    };
    match place % 8 {
        0 if place % 16 == 0 => {}
        4 if place % 16 == 4 => {}
        kind => {
            // A mill that taps, then anything.
            if kind % 2 == 1 {
                drawn(random, &FIELDS[..5], 1, &mut set);
            }
            let chance = 2 + random.below(4);
            drawn(random, FIELDS, chance, &mut set);
        }
    }
    if place % 8 == 7 {
        CALLS.iter().for_each(|(key, value)| set(key, Value::Text(value.as_bytes())));
    }
    dialect
}

fn options(random: &mut Random, place: usize) -> CheckOptions {
    let mut options = CheckOptions::default();
    if place % 4 > 0 {
        drawn(random, OPTIONS, 4, |key, value| {
            options.set(key, value).unwrap_or_else(|error| panic!("{key}: {error}"))
        });
    }
    options
}

fn tool(random: &mut Random) -> Tool {
    let mut tool = Tool::default();
    drawn(random, TOOLS, 2, |key, value| tool.set(key, value).unwrap_or_else(|error| panic!("{key}: {error}")));
    tool
}
