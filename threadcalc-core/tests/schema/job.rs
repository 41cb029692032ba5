//! The schema of a job: one line a key.

use std::fmt::Display;

use serde_json::{Value, json};
use threadcalc_core::{
    Basis, BlockOrder, ChamferForm, DrillSet, DwellUnit, FeedBasis, FeedMode, Holder, Hole, MOST_MACHINE_GEARS,
    MOST_OWN_DRILLS, Material, NoPoint, NumberSpaces, PropertyClass, RepeatZero, RetractIn, ReturnTo, RigidUntil,
    SCHEMA, Tap, TapKind, TapSetOn, Unit,
};

use crate::words::{
    Key, Shape, above, above_zero, above_zero_to, always, asked, between, choice, count_to, digit, filled, flag, may,
    must, names, object, read_and_written, schema, text_like, written, zero_or_more, zero_to,
};

/// Threads whose depth is their size: nothing is asked about their depth.
const TAPER: &str = "(^|[^A-Za-z])([Nn][Pp][Tt]|([Bb][Ss])?[Pp][Tt]|[Rr][Cc])";
/// Designations that may be such, by any of their names: NPT, NPTF, BSPT, PT, R, Rc, with or without points.
const PERHAPS_TAPER: &str = "[Rr]|[Pp]\\.?[Tt]";

#[rustfmt::skip]
fn keys() -> Vec<Key> {
    vec![
        must("schema", always(SCHEMA), "Version of this JSON."),
        must("thread", text_like("[^ \\t]"), "Designation of the thread, such as M8x1.25-6H, 1/4-20 UNC-2B, G1/2 or 1/4-18 NPT."),
        must("unit", choice(Unit::ALL), "Unit of the machine's program."),
        must("mode", choice(FeedMode::ALL), "What the feed is counted by."),
        must("decimals", digit(), "Decimals of the feed word, 0 to 9."),
        may("rpm", above_zero(), "Spindle speed in rpm, above 0. Exactly one of rpm, surface_speed_m_min and surface_speed_ft_min."),
        may("surface_speed_m_min", above_zero_to(2e4), "Surface speed at the major diameter in m/min, above 0 to 20000, instead of rpm."),
        may("surface_speed_ft_min", above_zero_to(2e4), "Surface speed at the major diameter in ft/min, above 0 to 20000, instead of rpm."),
        must("hole", choice(Hole::ALL), "Through or blind."),
        may("full_thread_depth_mm", above_zero_to(1e4), "Full thread from the face in mm, above 0 to 10000. Required, but not for a taper thread (NPT, NPTF, Rc), whose depth follows from its gauge."),
        must("tap", choice(Tap::ALL), "Cut or form tap."),
        may("tap_kind", choice(TapKind::ALL), "How the tap is built."),
        may("tap_mark", text_like("^[ -~]{1,96}$"), "What stands on the tap's shank, up to 96 printable ASCII characters: it is judged against the job."),
        may("chamfer_threads", zero_to(20.0), "Threads of the tap's chamfer, 0 to 20; 3 if neither this nor a form is given. Not for a taper thread."),
        may("chamfer_form", choice(ChamferForm::ALL), "Form of the chamfer (DIN 2197): planned on its longest. Not for a taper thread."),
        may("tap_set_on", choice(TapSetOn::ALL), "Where the tap's length offset is set; required with a male centre."),
        may("tap_centre_mm", zero_to(1e4), "Length of the tap's male centre in mm, 0 to 10000; 0 if not given. Not for a taper thread."),
        may("projection_mm", above_zero_to(1e3), "How far a taper pipe tap's small end projects through its ring gauge in mm, above 0 to 1000; that of ASME B94.9 if not given."),
        may("holder", choice(Holder::ALL), "How the tap is held; rigid if not given."),
        may("holder_extension_mm", zero_or_more(), "How far the holder can be drawn out in mm, 0 or more."),
        may("holder_compression_mm", zero_or_more(), "How far the holder can be pushed in in mm, 0 or more."),
        may("underfeed_percent", zero_to(20.0), "Percent by which the feed stays below the lead, 0 to 20; 0 if not given."),
        may("over_travel_turns", zero_to(20.0), "Turns that the spindle coasts on at the bottom of a hole, 0 to 20; 0 if not given."),
        filled("drill_sets", drill_sets(), "The drills to choose from: a list of sets, or a text of their names separated by blanks or commas; those usual for the thread if not given."),
        filled("drill_list", drill_list(), "The drills that the shop owns, up to 24, instead of drill_sets: a list of names such as #7, F, 13/64 or 6.8 and of diameters in mm above 0, or a text of names with commas between them."),
        may("oversize_mm", zero_or_more(), "How much larger than the drill its hole is in mm, 0 or more; the usual oversize if not given."),
        may("drill_mm", above_zero(), "Diameter of the drill there is in mm, above 0 and below the major diameter; instead of drill_sets, drill_list and percent."),
        may("taper_reamer", flag(), "Whether a taper thread's hole is reamed to the taper before it is tapped; no if not given."),
        may("percent", above_zero_to(100.0), "Percent of thread wanted, above 0 to 100."),
        may("basis", choice(Basis::ALL), "Thread height that is 100 percent; of a cut tap."),
        may("point_angle_deg", above(60.0, 180.0), "Point angle of the drill in degrees, above 60 to 180; 118 if not given."),
        may("bottom_clearance_mm", zero_to(1e4), "Room below the tap in mm, 0 to 10000; 3 pitches in a blind hole if not given, 2 of a taper thread."),
        may("drill_depth_mm", above_zero(), "Depth of the hole that is already drilled in mm, to the end of its full diameter, above 0; of a blind hole."),
        may("part_thickness_mm", above_zero(), "Thickness of the part at the hole in mm, above 0."),
        may("countersink_mm", above_zero_to(1e4), "Diameter of the countersink at the face in mm, above that of the hole to 10000. Not for a taper thread."),
        may("countersink_angle_deg", between(60.0, 130.0), "Included angle of the countersink in degrees, 60 to 130; 90 if not given."),
        may("r_plane_mm", above_zero(), "R plane above the face in mm, above 0; 5 mm or 0.2 in, or what the holder needs, if not given."),
        may("peck_mm", above_zero(), "Depth of a peck in mm, above 0; none if not given."),
        may("return_to", choice(ReturnTo::ALL), "Where the tap returns to; the R plane if not given."),
        may("dwell_s", zero_to(1e6), "Wait at the bottom in seconds, 0 to 60 where the dialect writes it, else to 1000000; 0 if not given."),
        may("coating_um", zero_to(1e3), "Thickness of a plating that the thread is gauged after in micrometres, 0 to 1000; 0 if not given."),
        may("material", choice(Material::ALL), "Material of the part, for starting values."),
        may("cutting_force_n_mm2", between(50.0, 2e4), "Specific cutting force in N/mm2, 50 to 20000, instead of the material's starting value."),
        may("part_shear_mpa", above_zero_to(1e5), "Shear strength of the part in MPa, 0.000001 to 100000; required with a screw, unless a material stands for it."),
        may("screw", object(&screw()), "The screw that goes in, for what the joint carries."),
        may("hole_count", count_to(1_000_000), "How many such holes the part has, 1 to 1000000, for the time."),
        filled("machine", object(&machine()), "The machine's limits."),
        may("dialect", dialect(), "The control's dialect: the name of a built-in one, or the codes of your own."),
    ]
}

#[rustfmt::skip]
fn machine() -> Vec<Key> {
    vec![
        may("highest_rpm", above_zero(), "Highest spindle speed for tapping in rpm, above 0."),
        may("lowest_rpm", above_zero(), "Lowest spindle speed for tapping in rpm, above 0."),
        may("speed_step", above_zero(), "Step in which the control holds a speed in rpm, above 0; 1 if not given."),
        may("axis_feed_limit_mm_min", above_zero_to(1e7), "Feed limit of the axis that taps in mm/min, above 0 to 10000000."),
        may("acceleration_rpm_s", between(1.0, 1e7), "How fast the spindle gains and loses speed in rpm/s, 1 to 10000000."),
        may("retract_factor", between(0.1, 1e3), "Speed on the way out over speed on the way in, 0.1 to 1000; 1 if not given."),
        may("least_clearance_turns", zero_to(1e3), "Turns that the tap needs above the face, 0 to 1000; 0 if not given."),
        filled("gears", gears(), "The spindle's gears, up to 4; none: torque is not checked."),
    ]
}

#[rustfmt::skip]
fn screw() -> Vec<Key> {
    vec![
        may("tolerance_class", text_like("^[!-~]{1,8}$"), "Class of its thread; 6g or 2A if not given."),
        may("property_class", choice(PropertyClass::ALL), "Property class (ISO 898-1, SAE J429): its tensile strength is a starting value where none is given."),
        may("tensile_mpa", above_zero_to(1e5), "Tensile strength in MPa, 0.000001 to 100000."),
        may("shear_mpa", above_zero_to(1e5), "Shear strength in MPa, 0.000001 to 100000; 0.6 of the tensile strength if not given."),
        may("engagement_mm", above_zero_to(1e4), "Length of engagement in mm, above 0 to 10000; the full thread depth if not given."),
        may("load_n", above_zero_to(1e15), "Load along the axis in newtons, 0.000001 to 10^15."),
    ]
}

#[rustfmt::skip]
fn dialect_keys() -> Vec<Key> {
    vec![
        filled("name", text_like("^[!-~]{0,19}$"), "The shop's own name for it, up to 19 printable ASCII characters without blanks."),
        may("tap_rh", code(), "Code of the right-hand tapping cycle, such as G84; none: the control has none."),
        may("tap_lh", code(), "Code of the left-hand tapping cycle, such as G74; none: the control has none."),
        filled("lh_by_spindle_direction", flag(), "Whether left hand is the right-hand cycle with the spindle turning backwards before it; no if not given."),
        filled("feed_per_minute", needed_code(), "Code of feed per minute; G94 if not given."),
        may("feed_per_revolution", code(), "Code of feed per revolution, such as G95; none: the control taps by feed per minute only."),
        filled("needs_spindle_running", flag(), "Whether the spindle must already turn when the cycle starts; yes if not given."),
        may("rigid_tap_code", code(), "Code that makes the next tapping cycle a synchronised one; none: the cycle itself says it."),
        filled("rigid_tap_code_has_s", flag(), "Whether that code carries the speed; no if not given."),
        may("peck_word", letter(), "Letter of a peck's depth, such as Q; none: no pecks."),
        may("peck_code_rh", code(), "Code of the right-hand cycle with pecks, where that is a cycle of its own."),
        may("peck_code_lh", code(), "Code of the left-hand cycle with pecks, where that is a cycle of its own."),
        may("dwell_word", letter(), "Letter of the dwell at the bottom, such as P; none: the cycle has no dwell."),
        may("dwell_unit", choice_or(DwellUnit::ALL, &["s", "ms"]), "What the dwell is counted in; required for a dwell."),
        may("retract_multiplier_word", letter(), "Letter of a faster way out, such as J; none: out as fast as in."),
        may("retract_in", choice(RetractIn::ALL), "What the faster way out is counted in; required for one."),
        filled("return_r_plane", code(), "Code of the return to the R plane, G99 if not given; none: the control has none."),
        filled("return_initial", code(), "Code of the return to the height before the cycle, G98 if not given; none: the control has none."),
        filled("axis_decimals_mm", digit(), "Decimals of axis words in mm, 0 to 9; 3 if not given."),
        filled("axis_decimals_inch", digit(), "Decimals of axis words in inches, 0 to 9; 4 if not given."),
        filled("trailing_point", flag(), "Whether a whole length, feed or dwell in seconds has a point; yes if not given."),
        may("units_default", choice(Unit::ALL), "The unit before any units code."),
        may("feed_mode_default", choice_or(FeedMode::ALL, &["G94", "G95"]), "The feed mode before any code of it."),
        filled("units_codes", object(&units_codes()), "Codes of the units."),
        may("feed_basis", choice(FeedBasis::ALL), "What F is in a tapping cycle."),
        may("lead_word", letter(), "Letter of the lead, where it does not stand behind F."),
        may("stroke_code", code(), "Code of one synchronised stroke that is no cycle."),
        may("cycle_starts_spindle", known_flag(), "Whether the tapping cycle starts the spindle."),
        may("rigid_tap_code_sticky_until", choice(RigidUntil::ALL), "How long the code for rigid tapping holds."),
        may("S_in_cycle_block_allowed", known_flag(), "Whether S may stand in the cycle's own block."),
        may("S_decimals", digit(), "Decimals of S that the control keeps, 0 to 9."),
        may("peck_returns_to_R", known_flag(), "Whether a peck returns to the R plane."),
        may("repeat_word", letter(), "Letter of repeats, such as L."),
        may("repeat_zero_means", choice(RepeatZero::ALL), "What no repeats mean."),
        may("no_point", choice(NoPoint::ALL), "What a number without a point is."),
        filled("least_increment", object(&by_word(increment)), "The least increment of each word, which numbers without a point count."),
        filled("max_decimals", object(&by_word(digit)), "The most decimals of each word that the control takes, 0 to 9."),
        may("mirror_on", code(), "Code that mirrors an axis."),
        may("mirror_off", code(), "Code that ends mirroring."),
        may("scale_on", code(), "Code that scales."),
        may("scale_off", code(), "Code that ends scaling."),
        may("rotate_on", code(), "Code that rotates."),
        may("rotate_off", code(), "Code that ends rotation."),
        may("mirror_flips_hand", known_flag(), "Whether a mirrored tapping cycle changes its hand."),
        may("rapid_cancels_cycle", known_flag(), "Whether G0 to G3 end a cycle."),
        may("cycle_words_sticky_across_cancel", known_flag(), "Whether R and Z of a cancelled cycle are still there for the next one."),
        may("F_converted_on_units_change", known_flag(), "Whether a change of units converts F."),
        may("override_locked_in_cycle", known_flag(), "Whether overrides are locked inside the cycle."),
        may("unlisted_codes_alarm", known_flag(), "Whether codes that neither the dialect names nor all mills share are an alarm."),
        may("semicolon_comment", known_flag(), "Whether a semicolon begins a comment."),
        may("max_block_chars", characters(), "The longest line that the control takes in characters, 1 to 65535."),
        may("spaces_in_numbers", choice(NumberSpaces::ALL), "What blanks inside a number are."),
        may("subprogram_call", code(), "Code that calls a subprogram, its number behind P."),
        may("subprogram_return", code(), "Code that returns from a subprogram."),
        may("order_table", choice(BlockOrder::ALL), "In what order the words of a block act."),
    ]
}

fn units_codes() -> Vec<Key> {
    vec![
        filled("inch", codes(), "Codes of inches, up to two; G20 and G70 if not given."),
        filled("mm", codes(), "Codes of millimetres, up to two; G21 and G71 if not given."),
    ]
}

/// Numbers by word and unit.
fn by_word(number: fn() -> Shape) -> Vec<Key> {
    let by_unit = || object(&[may("mm", number(), "In millimetres."), may("inch", number(), "In inches.")]);
    vec![
        filled("axis", by_unit(), "Lengths: X, Y, Z, R, Q."),
        filled("F_per_min", by_unit(), "F under feed per minute."),
        filled("F_per_rev", by_unit(), "F under feed per revolution."),
    ]
}

/// 1, 0.1, 0.01 and so on to nine decimals.
fn increment() -> Shape {
    let numbers = ["1", "0.1", "0.01", "0.001", "1e-4", "1e-5", "1e-6", "1e-7", "1e-8", "1e-9"];
    let numbers = numbers.map(|number| serde_json::from_str::<Value>(number).expect("a number"));
    let text = "^[ \\t]*\\+?(0*1(\\.0*)?|0*[.,]0{0,8}10*|0*1/10{0,9})[ \\t]*$";
    let asked = json!({ "anyOf": [{ "enum": numbers }, { "type": "string", "maxLength": 64, "pattern": text }] });
    read_and_written(asked, json!({ "type": "string", "pattern": "^(1|0\\.0{0,8}1)$" }))
}

/// A whole number of characters.
fn characters() -> Shape {
    let whole = json!({ "type": "integer", "minimum": 1, "maximum": 65535 });
    read_and_written(json!({ "anyOf": [whole, { "type": "string", "pattern": "^0*[1-9][0-9]{0,4}$" }] }), whole)
}

/// One of the core's own names, or another name of one of them.
fn choice_or(all: &[impl Display], others: &[&str]) -> Shape {
    let own = json!({ "type": "string", "enum": names(all) });
    let either = [own.clone()].into_iter().chain(others.iter().map(|name| json!({ "const": name })));
    read_and_written(json!({ "anyOf": either.collect::<Vec<_>>() }), own)
}

/// Yes, no, or a text that says that it is not known.
fn known_flag() -> Shape {
    let flag = json!({ "type": "boolean" });
    read_and_written(json!({ "anyOf": [flag, { "enum": ["yes", "no", "unknown"] }] }), flag)
}

const CODE: &str = "[A-Z][0-9]+(\\.[0-9]+)?";

/// A code: a letter and digits, perhaps with a point; or the text that takes it away. A list of one is one.
fn code() -> Shape {
    let code = json!({ "type": "string", "pattern": format!("^({CODE}|none)$"), "maxLength": 8 });
    let list = json!({ "type": "array", "minItems": 1, "maxItems": 1, "items": code });
    read_and_written(json!({ "anyOf": [code, list] }), code)
}

/// A code that no control can be without.
fn needed_code() -> Shape {
    let code = json!({ "type": "string", "pattern": format!("^{CODE}$"), "maxLength": 8 });
    let list = json!({ "type": "array", "minItems": 1, "maxItems": 1, "items": code });
    read_and_written(json!({ "anyOf": [code, list] }), code)
}

/// Up to two codes: a list, or one text.
fn codes() -> Shape {
    let code = json!({ "type": "string", "pattern": format!("^{CODE}$"), "maxLength": 8 });
    let list = json!({ "type": "array", "maxItems": 2, "items": code });
    let text = json!({ "type": "string", "pattern": format!("^ *(none|({CODE} *( {CODE})?)?) *$"), "maxLength": 64 });
    read_and_written(json!({ "anyOf": [list, text] }), list)
}

/// A letter that the cycle does not write itself, or the text that takes it away.
fn letter() -> Shape {
    text_like("^(none|[A-EH-LPQU-W])$")
}

/// A built-in dialect by name, or keys of your own; a plan writes them all.
fn dialect() -> Shape {
    let keys = dialect_keys();
    let built_in = json!({ "type": "string", "enum": ["rs274ngc", "unset"] });
    read_and_written(json!({ "anyOf": [built_in, asked(&keys)] }), written(&keys))
}

fn drill_sets() -> Shape {
    let sets = names(DrillSet::ALL);
    let one_text = format!("^[ ,]*(({})([ ,]+|$))*$", sets.join("|"));
    let one_list = json!({ "type": "array", "items": { "type": "string", "enum": sets } });
    read_and_written(json!({ "anyOf": [one_list, { "type": "string", "pattern": one_text }] }), one_list)
}

fn drill_list() -> Shape {
    let name = json!({ "type": "string", "pattern": "[^ ,]" });
    let diameter = json!({ "type": "number", "exclusiveMinimum": 0 });
    let list = |item: Value| json!({ "type": "array", "maxItems": MOST_OWN_DRILLS, "items": item });
    let one = json!({ "anyOf": [name, diameter] });
    read_and_written(json!({ "anyOf": [list(one), name, diameter] }), list(name))
}

fn gears() -> Shape {
    let about = "Lowest and highest speed in rpm, then the torque in Nm over the whole range, or 2 to 8 pairs of speed \
        in rpm and torque in Nm that reach over it.";
    let gear = |number: Value| {
        let gear = json!({
            "type": "array", "description": about, "items": number,
            "minItems": 3, "maxItems": 18, "not": { "minItems": 4, "maxItems": 5 },
        });
        json!({ "type": "array", "maxItems": MOST_MACHINE_GEARS, "items": gear })
    };
    let speed_or_torque = json!({ "anyOf": [{ "$ref": "#/$defs/exact" }, { "type": "number", "minimum": 0 }] });
    read_and_written(gear(json!({ "$ref": "#/$defs/asked_zero_or_more" })), gear(speed_or_torque))
}

/// The job as it stands in its plan.
pub fn planned() -> Shape {
    object(&keys())
}

fn given(key: &str) -> Value {
    json!({ "required": [key], "properties": { key: { "not": { "type": "null" } } } })
}

fn thread_is(pattern: &str) -> Value {
    json!({ "properties": { "thread": { "type": "string", "pattern": pattern } } })
}

/// What the keys say of each other.
fn together() -> Value {
    let speeds = ["rpm", "surface_speed_m_min", "surface_speed_ft_min"].map(given);
    let not_of_taper = ["full_thread_depth_mm", "chamfer_threads", "chamfer_form", "tap_centre_mm", "countersink_mm"];
    let absent: serde_json::Map<_, _> =
        not_of_taper.map(|key| (key.into(), json!({ "type": "null" }))).into_iter().collect();
    json!([
        { "description": "Exactly one speed.", "oneOf": speeds },
        {
            "description": "The depth of a taper thread follows from its gauge.",
            "if": thread_is(TAPER),
            "then": { "properties": absent },
        },
        {
            "description": "The depth of any other thread is required.",
            "if": thread_is(PERHAPS_TAPER),
            "else": given("full_thread_depth_mm"),
        },
    ])
}

/// The whole schema.
pub fn job() -> Value {
    let mut object = asked(&keys());
    object["allOf"] = together();
    let about = "What a plan is asked for. null is not given. Names of choices are matched here by their exact spelling; \
        the reader also takes them in any case, and - for _.";
    schema("job.schema.json", "Job: one tapped hole", about, &["asked_zero_or_more", "asked_above_zero"], object)
}
