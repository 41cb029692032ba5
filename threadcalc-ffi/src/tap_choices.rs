//! Choices about taps, cutting, holders and gauges: 32-bit numbers with names, 0 for "not given".
//!
//! The numbers are the core's; `tests/header.rs` compares every one of them.

/// The part of a fit that gives way first.
pub type threadcalc_weakest = i32;
/// Not given.
pub const THREADCALC_WEAKEST_UNSET: i32 = 0;
/// The screw breaks in tension.
pub const THREADCALC_WEAKEST_SCREW: i32 = 1;
/// The screw's threads strip.
pub const THREADCALC_WEAKEST_EXTERNAL: i32 = 2;
/// The threads of the hole strip.
pub const THREADCALC_WEAKEST_INTERNAL: i32 = 3;

/// How long a metric thread engages, beside its diameter and pitch.
pub type threadcalc_engagement_group_kind = i32;
/// Not given.
pub const THREADCALC_ENGAGEMENT_GROUP_UNSET: i32 = 0;
/// Short, S.
pub const THREADCALC_ENGAGEMENT_GROUP_S: i32 = 1;
/// Normal, N: what the classes of tolerance are made for.
pub const THREADCALC_ENGAGEMENT_GROUP_N: i32 = 2;
/// Long, L.
pub const THREADCALC_ENGAGEMENT_GROUP_L: i32 = 3;

/// What a thread is for, where a class is recommended.
pub type threadcalc_fit_quality = i32;
/// Not given.
pub const THREADCALC_FIT_QUALITY_UNSET: i32 = 0;
/// Precision threads, where the fit may vary little.
pub const THREADCALC_FIT_QUALITY_FINE: i32 = 1;
/// General use.
pub const THREADCALC_FIT_QUALITY_MEDIUM: i32 = 2;
/// Where threads are hard to make: hot rolled bars, long blind holes.
pub const THREADCALC_FIT_QUALITY_COARSE: i32 = 3;

/// Property classes of screws.
pub type threadcalc_property_class = i32;
/// Not given.
pub const THREADCALC_PROPERTY_CLASS_UNSET: i32 = 0;
/// 4.6
pub const THREADCALC_PROPERTY_CLASS_4_6: i32 = 1;
/// 4.8
pub const THREADCALC_PROPERTY_CLASS_4_8: i32 = 2;
/// 5.6
pub const THREADCALC_PROPERTY_CLASS_5_6: i32 = 3;
/// 5.8
pub const THREADCALC_PROPERTY_CLASS_5_8: i32 = 4;
/// 6.8
pub const THREADCALC_PROPERTY_CLASS_6_8: i32 = 5;
/// 8.8
pub const THREADCALC_PROPERTY_CLASS_8_8: i32 = 6;
/// 9.8
pub const THREADCALC_PROPERTY_CLASS_9_8: i32 = 7;
/// 10.9
pub const THREADCALC_PROPERTY_CLASS_10_9: i32 = 8;
/// 12.9
pub const THREADCALC_PROPERTY_CLASS_12_9: i32 = 9;

/// A group of materials that taps alike.
pub type threadcalc_material = i32;
/// Not given.
pub const THREADCALC_MATERIAL_UNSET: i32 = 0;
/// Free-cutting steel up to 700 N/mm².
pub const THREADCALC_MATERIAL_FREE_CUTTING_STEEL: i32 = 1;
/// Structural steel, 500 to 950 N/mm².
pub const THREADCALC_MATERIAL_STRUCTURAL_STEEL: i32 = 2;
/// Heat-treatable steel of medium strength, 500 to 950 N/mm².
pub const THREADCALC_MATERIAL_TEMPERED_STEEL: i32 = 3;
/// Nitrided or tempered steel, 950 to 1400 N/mm².
pub const THREADCALC_MATERIAL_HIGH_STRENGTH_STEEL: i32 = 4;
/// Tool steel, 950 to 1400 N/mm².
pub const THREADCALC_MATERIAL_TOOL_STEEL: i32 = 5;
/// Austenitic stainless steel, 500 to 950 N/mm².
pub const THREADCALC_MATERIAL_AUSTENITIC_STAINLESS: i32 = 6;
/// Grey cast iron, 150 to 250 HB.
pub const THREADCALC_MATERIAL_GREY_CAST_IRON: i32 = 7;
/// Malleable cast iron, 350 to 700 N/mm².
pub const THREADCALC_MATERIAL_MALLEABLE_CAST_IRON: i32 = 8;
/// Copper alloy with short chips, up to 500 N/mm².
pub const THREADCALC_MATERIAL_COPPER_ALLOY: i32 = 9;
/// Wrought aluminium alloy.
pub const THREADCALC_MATERIAL_ALUMINIUM: i32 = 10;

/// How the tap is held.
pub type threadcalc_holder = i32;
/// Not given.
pub const THREADCALC_HOLDER_UNSET: i32 = 0;
/// No give along the axis; the cycle is synchronised.
pub const THREADCALC_HOLDER_RIGID: i32 = 1;
/// Gives both ways along the axis, against springs.
pub const THREADCALC_HOLDER_TENSION_COMPRESSION: i32 = 2;
/// Gives along the axis and sideways.
pub const THREADCALC_HOLDER_FLOATING: i32 = 3;

/// How a tap is built.
pub type threadcalc_tap_kind = i32;
/// Not given.
pub const THREADCALC_TAP_KIND_UNSET: i32 = 0;
/// Straight flutes, a hand tap among them.
pub const THREADCALC_TAP_KIND_STRAIGHT_FLUTE: i32 = 1;
/// Straight flutes with a spiral point, which pushes the chips ahead.
pub const THREADCALC_TAP_KIND_SPIRAL_POINT: i32 = 2;
/// Spiral flutes, which draw the chips back.
pub const THREADCALC_TAP_KIND_SPIRAL_FLUTE: i32 = 3;
/// Forms the thread without chips.
pub const THREADCALC_TAP_KIND_FORM: i32 = 4;

/// How well something suits.
pub type threadcalc_suits = i32;
/// Not given.
pub const THREADCALC_SUITS_UNSET: i32 = 0;
/// The usual choice.
pub const THREADCALC_SUITS_WELL: i32 = 1;
/// Works where the reason says.
pub const THREADCALC_SUITS_WITH_CARE: i32 = 2;
/// Trouble to be expected.
pub const THREADCALC_SUITS_BADLY: i32 = 3;

/// The chamfer of a tap by its letter or by its name.
pub type threadcalc_chamfer_form = i32;
/// Not given.
pub const THREADCALC_CHAMFER_FORM_UNSET: i32 = 0;
/// 6 to 8 threads.
pub const THREADCALC_CHAMFER_FORM_A: i32 = 1;
/// 3.5 to 5.5 threads, with spiral point.
pub const THREADCALC_CHAMFER_FORM_B: i32 = 2;
/// 2 to 3 threads.
pub const THREADCALC_CHAMFER_FORM_C: i32 = 3;
/// 3.5 to 5 threads.
pub const THREADCALC_CHAMFER_FORM_D: i32 = 4;
/// 1.5 to 2 threads.
pub const THREADCALC_CHAMFER_FORM_E: i32 = 5;
/// 1 to 1.5 threads.
pub const THREADCALC_CHAMFER_FORM_F: i32 = 6;
/// 7 to 10 threads.
pub const THREADCALC_CHAMFER_FORM_TAPER: i32 = 7;
/// 3 to 5 threads.
pub const THREADCALC_CHAMFER_FORM_PLUG: i32 = 8;
/// 2 to 2.5 threads.
pub const THREADCALC_CHAMFER_FORM_SEMI_BOTTOMING: i32 = 9;
/// 1 to 2 threads.
pub const THREADCALC_CHAMFER_FORM_BOTTOMING: i32 = 10;

/// The class of a ground tap for ISO metric threads.
pub type threadcalc_iso_tap_class = i32;
/// Not given.
pub const THREADCALC_ISO_TAP_CLASS_UNSET: i32 = 0;
/// For threads 4H and 5H.
pub const THREADCALC_ISO_TAP_CLASS_1: i32 = 1;
/// For threads 6H, 4G and 5G.
pub const THREADCALC_ISO_TAP_CLASS_2: i32 = 2;
/// For threads 7H, 8H and 6G.
pub const THREADCALC_ISO_TAP_CLASS_3: i32 = 3;

/// The letter of a tap's limit.
pub type threadcalc_limit_letter = i32;
/// Not given.
pub const THREADCALC_LIMIT_LETTER_UNSET: i32 = 0;
/// Above basic, in steps of 0.0005 in.
pub const THREADCALC_LIMIT_LETTER_H: i32 = 1;
/// Below basic, in steps of 0.0005 in.
pub const THREADCALC_LIMIT_LETTER_L: i32 = 2;
/// Above basic on metric taps of the inch system, in steps of 0.013 mm.
pub const THREADCALC_LIMIT_LETTER_D: i32 = 3;

/// A gauge by what it checks.
pub type threadcalc_gauge = i32;
/// Not given.
pub const THREADCALC_GAUGE_UNSET: i32 = 0;
/// GO thread plug: pitch diameter with pitch and angles, and major diameter of a hole.
pub const THREADCALC_GAUGE_THREAD_PLUG_GO: i32 = 1;
/// NOT GO thread plug: pitch diameter of a hole alone.
pub const THREADCALC_GAUGE_THREAD_PLUG_NOT_GO: i32 = 2;
/// GO plain plug: smallest minor diameter of a hole.
pub const THREADCALC_GAUGE_PLAIN_PLUG_GO: i32 = 3;
/// NOT GO plain plug: largest minor diameter of a hole.
pub const THREADCALC_GAUGE_PLAIN_PLUG_NOT_GO: i32 = 4;
/// GO thread ring of a screw.
pub const THREADCALC_GAUGE_THREAD_RING_GO: i32 = 5;
/// NOT GO thread ring of a screw.
pub const THREADCALC_GAUGE_THREAD_RING_NOT_GO: i32 = 6;
/// GO snap or plain ring: largest major diameter of a screw.
pub const THREADCALC_GAUGE_PLAIN_RING_GO: i32 = 7;
/// NOT GO snap or plain ring: smallest major diameter of a screw.
pub const THREADCALC_GAUGE_PLAIN_RING_NOT_GO: i32 = 8;
/// Taper thread plug, read by how far it enters.
pub const THREADCALC_GAUGE_TAPER_PLUG: i32 = 9;
/// Taper thread ring, read by how far it goes on.
pub const THREADCALC_GAUGE_TAPER_RING: i32 = 10;

/// What a gauge said, without its turns.
pub type threadcalc_gauge_reading = i32;
/// Not given.
pub const THREADCALC_GAUGE_READING_UNSET: i32 = 0;
/// GO goes to the full depth of thread.
pub const THREADCALC_GAUGE_READING_GO_PASSES: i32 = 1;
/// GO stops before it.
pub const THREADCALC_GAUGE_READING_GO_STOPS: i32 = 2;
/// NOT GO enters.
pub const THREADCALC_GAUGE_READING_NOT_GO_ENTERS: i32 = 3;
/// The notch of a taper plug stands off the face, or is flush with it.
pub const THREADCALC_GAUGE_READING_TAPER_STANDS: i32 = 4;

/// What becomes of the hole.
pub type threadcalc_verdict = i32;
/// Not given.
pub const THREADCALC_VERDICT_UNSET: i32 = 0;
/// It is good by this gauge.
pub const THREADCALC_VERDICT_ACCEPT: i32 = 1;
/// It can be brought to size.
pub const THREADCALC_VERDICT_REWORK: i32 = 2;
/// No tap makes it smaller again.
pub const THREADCALC_VERDICT_REJECT: i32 = 3;

/// One thing to do, in the order of threadcalc_next_move_t.
pub type threadcalc_move = i32;
/// Not given.
pub const THREADCALC_MOVE_UNSET: i32 = 0;
/// Nothing.
pub const THREADCALC_MOVE_NOTHING: i32 = 1;
/// Blow chips and oil out, and gauge again before anything else.
pub const THREADCALC_MOVE_CLEAN_AND_GAUGE_AGAIN: i32 = 2;
/// See that gauge, tap and drawing name the same thread, class and hand.
pub const THREADCALC_MOVE_COMPARE_NAMES: i32 = 3;
/// Countersink or deburr the mouth.
pub const THREADCALC_MOVE_DEBURR: i32 = 4;
/// Tap deeper, if the drilled hole has room: same tool and length, same S, same R.
pub const THREADCALC_MOVE_TAP_DEEPER: i32 = 5;
/// Take a new tap: this one is worn or chipped.
pub const THREADCALC_MOVE_CHANGE_TAP: i32 = 6;
/// Take the next larger class or H limit of tap.
pub const THREADCALC_MOVE_LARGER_TAP: i32 = 7;
/// Take the next smaller class or H limit of tap, for the next hole.
pub const THREADCALC_MOVE_SMALLER_TAP: i32 = 8;
/// Compare feed and lead at the speed that really ran; overrides off.
pub const THREADCALC_MOVE_CHECK_FEED: i32 = 9;
/// Look for force along the axis: holder, its springs, the feed below the lead, a heavy start.
pub const THREADCALC_MOVE_CHECK_AXIAL_FORCE: i32 = 10;
/// Look for run-out, chips welded to the flanks, coolant.
pub const THREADCALC_MOVE_CHECK_CUTTING: i32 = 11;
/// Stop, and gauge the holes back to the last good one.
pub const THREADCALC_MOVE_STOP_AND_GAUGE_BACK: i32 = 12;
/// A wire insert or the next size, if the engineer says so.
pub const THREADCALC_MOVE_REPAIR_OR_SCRAP: i32 = 13;
/// Tap the next hole less deep.
pub const THREADCALC_MOVE_TAP_SHALLOWER: i32 = 14;
