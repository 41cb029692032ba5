//! The schema of a plan: one line a key. An object is a table of its own.

use serde_json::{Value, json};
use threadcalc_core::{
    Basis, Confidence, DrillSet, FindingId, Form, GaugeKind, Hand, IsoTapClass, NumberKey, SCHEMA, Series, Severity,
    Side, Unit, Weakest, WithinLimits, WrittenAs,
};

use crate::job;
use crate::words::{
    Key, Shape, always, choice, exact, flag, list, may, must, names, number, object, or_null, pair, schema, some_of,
    text, text_like, whole, written,
};

#[rustfmt::skip]
fn keys() -> Vec<Key> {
    vec![
        must("schema", always(SCHEMA), "Version of this JSON."),
        must("thread", object(&thread()), "The thread, internal, with the class that was used."),
        must("profile", object(&profile()), "Basic profile, unrounded."),
        may("limits", object(&limits()), "Limits of size, the standard's own decimals; null where they are not sourced."),
        must("drill", object(&tap_drill()), "The drill, its percent and its neighbours."),
        must("asked_rpm", exact(), "The speed asked for in rpm."),
        must("programmed_rpm", exact(), "The speed that the control will hold, in rpm."),
        must("feed", object(&feed()), "The feed word and its error."),
        must("lead_cut_mm", exact(), "The lead that will be cut, in mm."),
        must("axial_error_mm", exact(), "Error of the lead over the full thread depth in mm; above 0: too long."),
        must("card", list(object(&card_row())), "Speeds with their feeds, slowest first; empty per revolution, where the feed is the lead."),
        must("depths", object(&depths()), "Depths from the face; of a taper thread, whose program is the first hole's, with more in taper."),
        may("taper", object(&taper()), "Depths of a taper thread, whose depth is its size."),
        may("countersink", object(&countersink()), "The countersink, where the job has one."),
        must("spindle", object(&spindle()), "What holder, spindle and axis have to do."),
        may("tap_class", object(&tap_class()), "Class of tap (ISO 2857); metric threads only."),
        may("tap_limit", text_like("^[A-Z]+[0-9]+$"), "The H limit that leaves room for the plating; inch taps under a plating only."),
        may("joint", object(&joint()), "What the joint carries, where the job speaks of a screw."),
        must("gauges", object(&gauges()), "The gauges to fetch."),
        may("formed_minor_mm", pair(exact()), "Smallest and largest minor diameter in mm that a formed thread is judged by; null for cut threads."),
        may("not_go", object(&not_go()), "How far NOT GO may enter; null where that has not been read."),
        must("words", list(text()), "The words of the tapping cycle; empty while withheld holds an id."),
        must("blocks", list(text()), "The same words, a program line each."),
        must("restore", list(text()), "What the next operation must set again."),
        must("withheld", list(choice(FindingId::ALL)), "Ids of the findings that withhold the words."),
        must("findings", list(object(&finding())), "What is doubtful, wrong or assumed."),
        must("not_checked", list(text()), "What this plan did not check."),
        must("sources", list(object(&source())), "Where the numbers of each part come from."),
        must("job", job::planned(), "The job as it was planned: every assumption filled in. It is a job again."),
    ]
}

#[rustfmt::skip]
fn thread() -> Vec<Key> {
    vec![
        must("designation", text(), "Canonical designation."),
        must("form", choice(Form::ALL), "Profile."),
        may("series", choice(Series::ALL), "The standard's series; null for a special."),
        must("is_standard", flag(), "Whether a standard series has this diameter and pitch."),
        must("wire_insert", flag(), "Whether it is the tapped hole of a wire insert (STI)."),
        must("size", text(), "Size as it names the thread: 8, #10, 1/2."),
        may("nominal_mm", exact(), "Diameter that names the thread in mm; null for pipe."),
        must("major_mm", exact(), "Basic major diameter in mm; of a taper thread the pipe's or the gauge diameter, of the hole of a wire insert its own."),
        must("pitch_mm", exact(), "Pitch in mm."),
        must("lead_mm", exact(), "Lead in mm: pitch times starts."),
        must("starts", whole(1), "Number of starts."),
        must("hand", choice(Hand::ALL), "Hand."),
        must("taper_on_diameter", exact(), "Taper on the diameter: 1/16 or 0."),
        must("side", choice(Side::ALL), "Internal or external; a plan's is internal."),
        may("tolerance_class", text(), "Tolerance class."),
        may("written_as", choice(WrittenAs::ALL), "The older or open name that stood in the designation."),
    ]
}

#[rustfmt::skip]
fn profile() -> Vec<Key> {
    vec![
        must("triangle_height_mm", number(), "Height of the fundamental triangle in mm."),
        may("major_mm", number(), "Basic major diameter in mm; null for dryseal threads, where it is not sourced."),
        must("pitch_diameter_mm", number(), "Basic pitch diameter in mm."),
        may("minor_mm", number(), "Basic minor diameter of the internal thread in mm; null for dryseal threads."),
        may("external_minor_mm", number(), "Minor diameter of the external thread at its rounded root in mm; null for dryseal threads."),
        may("stress_area_mm2", number(), "Tensile stress area of the external thread in mm2; null for pipe."),
        must("flank_angles_deg", pair(number()), "Angles of the two flanks against the normal to the axis in degrees."),
    ]
}

#[rustfmt::skip]
fn limits() -> Vec<Key> {
    vec![
        must("major_mm", pair(or_null(exact())), "Smallest and largest major diameter in mm; null where there is none: the tap's crests make the largest."),
        must("pitch_diameter_mm", pair(exact()), "Smallest and largest pitch diameter in mm."),
        must("minor_mm", pair(or_null(exact())), "Smallest and largest minor diameter in mm; null where there is none or it has not been read."),
        must("native_unit", choice(Unit::ALL), "Unit in which the standard gives its decimals."),
        must("decimals", whole(0), "How many decimals the standard gives, in that unit."),
        must("source", text(), "Standard, edition and table or rule."),
        must("confidence", choice(Confidence::ALL), "How sure the limits are."),
    ]
}

#[rustfmt::skip]
fn tap_drill() -> Vec<Key> {
    let mut keys = judged(drill(may));
    keys.push(may("basis", choice(Basis::ALL), "Thread height that is 100 percent; null where the thread has one of its own."));
    keys.push(may("probable", object(&probable()), "The hole that the drill probably leaves; null for a taper thread, and where no oversize is known or no thread is left."));
    keys.push(must("alternatives", list(object(&judged(drill(must)))), "The drills beside it, smallest first."));
    keys
}

#[rustfmt::skip]
fn judged(drill: Vec<Key>) -> Vec<Key> {
    vec![
        must("drill", object(&drill), "The drill."),
        may("percent", number(), "Percent of thread; null for a taper thread, where it has no meaning."),
        must("within_limits", choice(WithinLimits::ALL), "Whether it is within the class's minor-diameter limits."),
        may("left_to_limit_mm", exact(), "What is left to the largest minor diameter in mm, below 0 beyond it."),
    ]
}

#[rustfmt::skip]
fn probable() -> Vec<Key> {
    vec![
        must("hole_mm", exact(), "Its diameter in mm."),
        must("percent", number(), "Percent of thread that it leaves."),
        may("left_to_limit_mm", exact(), "What it leaves to the largest minor diameter in mm, below 0 beyond it."),
    ]
}

/// The drill that is given may be of no set; those beside it are of one.
fn drill(of_a_set: fn(&'static str, Shape, &'static str) -> Key) -> Vec<Key> {
    vec![
        must("name", text(), "Name in its set: 6.8, #7, F, 5/16; else its diameter."),
        must("diameter_mm", exact(), "Diameter in mm."),
        of_a_set("set", choice(DrillSet::ALL), "Its set; null for a drill of no set."),
    ]
}

#[rustfmt::skip]
fn feed() -> Vec<Key> {
    vec![
        must("word", text_like("^F[0-9]+\\.[0-9]*$"), "The feed word."),
        must("text", text_like("^[0-9]+\\.[0-9]*$"), "Its number as text."),
        must("value", exact(), "What a control reads back from it, in the machine's unit per minute or per revolution."),
        must("exact", exact(), "The feed before rounding, in the same unit."),
        must("lead_error", exact(), "value / exact - 1; above 0: the programmed lead is too long."),
    ]
}

#[rustfmt::skip]
fn card_row() -> Vec<Key> {
    vec![
        must("rpm", exact(), "Spindle speed in rpm."),
        must("word", text_like("^F[0-9]+\\.[0-9]*$"), "Its feed word."),
        must("exact", flag(), "Whether the word is exact."),
        must("planned", flag(), "Whether it is the speed of the plan."),
    ]
}

#[rustfmt::skip]
fn depths() -> Vec<Key> {
    vec![
        must("tap_mm", exact(), "To the very end of the tap, its centre included, in mm."),
        must("program_tap_mm", exact(), "To the point that the tap's length offset is set on in mm: what the program says."),
        must("full_diameter_mm", exact(), "To the end of the drill's full diameter in mm."),
        must("drill_point_mm", number(), "To the drill's point in mm."),
    ]
}

#[rustfmt::skip]
fn taper() -> Vec<Key> {
    vec![
        must("hand_tight_mm", exact(), "From the face to the plane that the tap's ring stands at in mm."),
        must("projection_mm", exact(), "How far the tap projects through the ring in mm."),
        may("projection_tolerance_mm", exact(), "How much the table's projection may be off, either way, in mm; null for a measured tap."),
        must("tap_mm", exact(), "To the end of the tap for a thread of basic size in mm."),
        must("first_hole_mm", exact(), "The same for the first hole in mm: one turn shallow, then gauge."),
        must("full_diameter_mm", exact(), "To the end of the drill's full diameter in mm."),
        must("drill_point_mm", number(), "To the drill's point in mm."),
        must("tap_turns", exact(), "Turns of the tap in the hole for basic size."),
        must("hand_tight_turns", exact(), "Turns of hand-tight engagement."),
        must("diameter_per_turn_mm", exact(), "Change of diameter for one turn deeper in mm."),
        must("gauge_tolerance_turns", exact(), "Turns that the gauge may stand off, either way."),
    ]
}

#[rustfmt::skip]
fn countersink() -> Vec<Key> {
    vec![
        must("tip_mm", number(), "Depth of the tip of a pointed countersink in mm."),
        must("depth_at_major_mm", number(), "Depth in mm above which there is no thread at all."),
        must("full_thread_lost_mm", number(), "Depth in mm from which the thread is whole: what is lost of the full thread."),
    ]
}

#[rustfmt::skip]
fn spindle() -> Vec<Key> {
    vec![
        may("torque", object(&torque()), "Torque of the tap; null without a material or a cutting force."),
        may("power_kw", number(), "Power that the likely torque takes in kW."),
        may("gear", object(&gear()), "The gear for the largest torque of a new tap; null without gears or torque."),
        must("time", object(&time()), "Speeds and times from the R plane to the bottom and back, all strokes of a job with pecks."),
        may("all_holes_s", number(), "Time of all the holes in seconds, without the ways between them; null without a count."),
        may("axis", object(&axis()), "The axis feed against its limit; null without a limit."),
        may("holder_travel", object(&holder_travel()), "How far the holder has to give; null for a rigid one."),
    ]
}

#[rustfmt::skip]
fn torque() -> Vec<Key> {
    vec![
        must("low_nm", number(), "A new tap under good conditions, in Nm."),
        must("likely_nm", number(), "What the formula gives, in Nm."),
        must("high_nm", number(), "A new tap under bad conditions, in Nm."),
        must("worn_nm", number(), "A worn tap, in Nm."),
    ]
}

#[rustfmt::skip]
fn gear() -> Vec<Key> {
    vec![
        may("gear", whole(0), "The gear with the most torque at the speed, counted from 0 as given; null if none runs it."),
        may("torque_nm", number(), "The torque that it holds there in Nm."),
        must("is_enough", flag(), "Whether that is enough."),
        may("fastest_rpm", number(), "The largest speed of any gear at which the torque is there, in rpm."),
    ]
}

#[rustfmt::skip]
fn time() -> Vec<Key> {
    vec![
        must("reached_rpm", number(), "The fastest that the spindle turns on the way in, in rpm: that of the last stroke."),
        must("retract_rpm", number(), "The fastest that it turns on the way out, in rpm, after the last stroke."),
        must("reaches_speed", flag(), "Whether the programmed speed is reached on the way in, in the last stroke at least."),
        must("turns", number(), "Turns of the last stroke."),
        must("turns_to_speed", number(), "Turns from standstill to the programmed speed."),
        must("distance_to_speed_mm", number(), "The way that these turns take in mm."),
        must("time_in_s", number(), "Time in, of all strokes, in seconds."),
        must("time_out_s", number(), "Time out, of all strokes, in seconds."),
        must("time_s", number(), "Time in, the dwell of each stroke and time out, in seconds."),
        must("strokes", whole(1), "How many strokes; 1 without a peck."),
    ]
}

#[rustfmt::skip]
fn axis() -> Vec<Key> {
    vec![
        must("feed_mm_min", exact(), "Axis feed on the way in, in mm/min."),
        must("retract_feed_mm_min", exact(), "Axis feed on the way out, in mm/min."),
        must("is_within", flag(), "Whether both are within the limit."),
        must("fastest_rpm", exact(), "The largest speed that both are within the limit at, in rpm."),
    ]
}

#[rustfmt::skip]
fn holder_travel() -> Vec<Key> {
    vec![
        must("extension_mm", exact(), "How far the tap is pulled out of the holder in mm."),
        must("compression_mm", exact(), "How far the tap is pushed into the holder in mm."),
    ]
}

#[rustfmt::skip]
fn tap_class() -> Vec<Key> {
    vec![
        may("class", choice(IsoTapClass::ALL), "The class; null if the standard has none: a tap of special size."),
        must("closing_mm", exact(), "How much the plating closes the pitch diameter in mm."),
    ]
}

#[rustfmt::skip]
fn joint() -> Vec<Key> {
    vec![
        must("tensile_area_mm2", number(), "Tensile stress area of the screw in mm2."),
        must("internal_shear_area_mm2", number(), "Shear area of the threads in the hole in mm2."),
        must("external_shear_area_mm2", number(), "Shear area of the screw's threads in mm2."),
        must("tensile_load_n", number(), "Load that breaks the screw in newtons."),
        must("internal_strip_load_n", number(), "Load that strips the hole in newtons."),
        must("external_strip_load_n", number(), "Load that strips the screw in newtons."),
        must("weakest", choice(Weakest::ALL), "What gives way first."),
        must("required_length_mm", number(), "Length of engagement in mm at which the weaker threads carry the screw's tensile load."),
        must("strip_ratio", number(), "Strip load of the screw's threads over that of the hole's; above 1 the hole strips first."),
        may("safety_factor", number(), "The weakest part's load over the load given; null without one."),
    ]
}

#[rustfmt::skip]
fn gauges() -> Vec<Key> {
    vec![
        must("gauges", list(object(&gauge())), "GO before NOT GO, thread gauges before plain ones."),
        must("hand", choice(Hand::ALL), "Hand of the gauges."),
        must("class_assumed", flag(), "Whether the standard's medium class was taken."),
        may("limits_source", text(), "Source of the limits; null where none have been read."),
    ]
}

#[rustfmt::skip]
fn gauge() -> Vec<Key> {
    vec![
        must("kind", choice(GaugeKind::ALL), "What it is."),
        may("pitch_diameter_mm", exact(), "The pitch diameter that it stands for in mm; of a taper gauge, at the gauge plane."),
        may("diameter_mm", exact(), "The major or minor diameter that it stands for in mm."),
    ]
}

#[rustfmt::skip]
fn not_go() -> Vec<Key> {
    vec![
        must("most_turns", whole(1), "The most turns, by hand and without force, from either end."),
        must("standard", text(), "The standard that says so."),
        must("remark", text(), "What it says besides."),
    ]
}

#[rustfmt::skip]
fn finding() -> Vec<Key> {
    vec![
        must("id", choice(FindingId::ALL), "What it is."),
        must("severity", choice(Severity::ALL), "How bad it is."),
        must("message", text(), "The same in words."),
        must("numbers", some_of(&names(NumberKey::ALL), json!({ "type": ["number", "null"] })), "Its numbers, derived, with their units in the names."),
        must("evidence", text(), "The key of the job that it speaks of; may be empty."),
        must("suggestion", text(), "What would be right; may be empty."),
    ]
}

#[rustfmt::skip]
fn source() -> Vec<Key> {
    vec![
        must("part", text(), "The part, by its key in the plan; dotted where it is inside another."),
        must("source", text(), "Standard and clause, common practice, from memory or derived."),
    ]
}

/// The whole schema.
pub fn plan() -> Value {
    let about = "The answer to a job. Exact values are texts, derived ones numbers, null is what there is none of. Lengths \
        are in mm, and the names carry the units.";
    schema("plan.schema.json", "Plan: the answer to a job", about, &["exact"], written(&keys()))
}
