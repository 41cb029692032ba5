//! The stable names of numbers, as NUL-terminated texts that live as long as the library.

use core::ffi::c_char;

use threadcalc_core::nc::{ProgramFindingId, ProgramNumberKey};
use threadcalc_core::{
    BottomVerdict, ChamferForm, Code, Confidence, DrillSet, EngagementGroup, Field, FindingId, Form, GaugeKind,
    GaugeReading, Hand, Holder, IsoTapClass, LimitLetter, Material, Move, NumberKey, Plating, PropertyClass, Series,
    Severity, Side, Sides, Suits, TapKind, Verdict, Weakest, WithinLimits, WrittenAs,
};

use threadcalc_core::nc::LeadVerdict;

use crate::codes::{THREADCALC_STATUS_INTERNAL_FAULT, THREADCALC_STATUS_OK};

/// A name with room for its NUL.
type Name = [u8; 80];

const UNKNOWN: Name = c_text("unknown");

/// The text with a NUL behind it. For constants: a text without room for its NUL stops the compiler.
pub(crate) const fn c_text<const N: usize>(text: &str) -> [u8; N] {
    let mut name = [0; N];
    let bytes = text.as_bytes();
    assert!(bytes.len() < name.len());
    let mut place = 0;
    while place < bytes.len() {
        name[place] = bytes[place];
        place = place.wrapping_add(1);
    }
    name
}

/// The names of all choices of a type as C texts, looked up by their numbers.
macro_rules! name_of {
    ($type:ident, $text:ident, $number:expr) => {{
        static NAMES: [Name; $type::ALL.len()] = {
            let mut names = [UNKNOWN; $type::ALL.len()];
            let mut place = 0;
            while place < names.len() {
                names[place] = c_text($type::ALL[place].$text());
                place = place.wrapping_add(1);
            }
            names
        };
        let number = $number;
        let all = $type::ALL.iter().zip(&NAMES);
        pointer(all.filter(|(choice, _)| choice.number() == number).map(|(_, name)| name).next())
    }};
}

fn pointer(name: Option<&'static Name>) -> *const c_char {
    static NOTHING: Name = UNKNOWN;
    name.unwrap_or(&NOTHING).as_ptr().cast()
}

/// The stable name of a status: "ok", "out-of-range". Never NULL; "unknown" for an unknown number.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_status_name(status: i32) -> *const c_char {
    static OK: Name = c_text("ok");
    static INTERNAL: Name = c_text("internal-fault");
    match status {
        THREADCALC_STATUS_OK => pointer(Some(&OK)),
        THREADCALC_STATUS_INTERNAL_FAULT => pointer(Some(&INTERNAL)),
        _ => name_of!(Code, name, status),
    }
}

/// The stable name of the value that an error speaks of. Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_field_name(field: i32) -> *const c_char {
    name_of!(Field, name, field)
}

/// The stable name of a finding. Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_finding_name(finding: i32) -> *const c_char {
    name_of!(FindingId, name, finding)
}

/// What a finding means, in one line. Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_finding_message(finding: i32) -> *const c_char {
    name_of!(FindingId, message, finding)
}

/// "error", "warning", "info". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_severity_name(severity: i32) -> *const c_char {
    name_of!(Severity, name, severity)
}

/// The stable name of a number that a finding carries; it ends in the unit. Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_number_name(number: i32) -> *const c_char {
    name_of!(NumberKey, name, number)
}

/// "metric", "unified", "npt", "g". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_form_name(form: i32) -> *const c_char {
    name_of!(Form, name, form)
}

/// The name of a form as the standards write it: "M", "UN", "NPT", "Rc". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_form_symbol(form: i32) -> *const c_char {
    name_of!(Form, symbol, form)
}

/// The older or open name of a pipe thread: "BSPT", "NPT(F)". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_written_as_name(written_as: i32) -> *const c_char {
    name_of!(WrittenAs, name, written_as)
}

/// The standard's token of a series: "coarse", "UNC", "8-UN". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_series_name(series: i32) -> *const c_char {
    name_of!(Series, name, series)
}

/// "right", "left". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_hand_name(hand: i32) -> *const c_char {
    name_of!(Hand, name, hand)
}

/// "internal", "external". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_side_name(side: i32) -> *const c_char {
    name_of!(Side, name, side)
}

/// "near", "far", "both". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_sides_name(sides: i32) -> *const c_char {
    name_of!(Sides, name, sides)
}

/// "after", "before". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_plating_name(plating: i32) -> *const c_char {
    name_of!(Plating, name, plating)
}

/// "metric", "number", "letter", "fractional". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_drill_set_name(set: i32) -> *const c_char {
    name_of!(DrillSet, name, set)
}

/// "yes", "no", "does-not-apply". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_within_limits_name(within_limits: i32) -> *const c_char {
    name_of!(WithinLimits, name, within_limits)
}

/// How sure limits are: "confirmed", or what else there is. Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_confidence_name(confidence: i32) -> *const c_char {
    name_of!(Confidence, name, confidence)
}

/// The version of the library that runs, "1.2.3"; compare it with THREADCALC_VERSION. Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_version() -> *const c_char {
    static VERSION: Name = c_text(env!("CARGO_PKG_VERSION"));
    pointer(Some(&VERSION))
}

/// "screw", "external", "internal". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_weakest_name(weakest: i32) -> *const c_char {
    name_of!(Weakest, name, weakest)
}

/// "S", "N", "L". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_engagement_group_name(group: i32) -> *const c_char {
    name_of!(EngagementGroup, name, group)
}

/// "8.8", "10.9". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_property_class_name(property_class: i32) -> *const c_char {
    name_of!(PropertyClass, name, property_class)
}

/// "aluminium", "structural_steel". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_material_name(material: i32) -> *const c_char {
    name_of!(Material, name, material)
}

/// "rigid", "tension_compression", "floating". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_holder_name(holder: i32) -> *const c_char {
    name_of!(Holder, name, holder)
}

/// "straight_flute", "spiral_point". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_tap_kind_name(tap_kind: i32) -> *const c_char {
    name_of!(TapKind, name, tap_kind)
}

/// "well", "with_care", "badly". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_suits_name(suits: i32) -> *const c_char {
    name_of!(Suits, name, suits)
}

/// "A" to "F", "taper", "plug", "semi_bottoming", "bottoming". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_chamfer_form_name(chamfer_form: i32) -> *const c_char {
    name_of!(ChamferForm, name, chamfer_form)
}

/// "1", "2", "3". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_iso_tap_class_name(iso_tap_class: i32) -> *const c_char {
    name_of!(IsoTapClass, name, iso_tap_class)
}

/// "H", "L", "D". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_limit_letter_name(limit_letter: i32) -> *const c_char {
    name_of!(LimitLetter, name, limit_letter)
}

/// "thread_plug_go". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_gauge_name(gauge: i32) -> *const c_char {
    name_of!(GaugeKind, name, gauge)
}

/// "go_passes", "go_stops", "not_go_enters", "taper_stands". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_gauge_reading_name(gauge_reading: i32) -> *const c_char {
    name_of!(GaugeReading, name, gauge_reading)
}

/// "accept", "rework", "reject". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_verdict_name(verdict: i32) -> *const c_char {
    name_of!(Verdict, name, verdict)
}

/// "tap_deeper", "change_tap". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_move_name(next: i32) -> *const c_char {
    name_of!(Move, name, next)
}

/// "fine", "warning", "error". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_bottom_verdict_name(bottom_verdict: i32) -> *const c_char {
    name_of!(BottomVerdict, name, bottom_verdict)
}

/// The stable id of a finding of a program: "lead-mismatch". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_program_finding_name(finding: i32) -> *const c_char {
    name_of!(ProgramFindingId, name, finding)
}

/// The name of a number that a finding of a program carries: "lead_mm". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_program_number_name(key: i32) -> *const c_char {
    name_of!(ProgramNumberKey, name, key)
}

/// "identified", "ambiguous", "nonstandard". Never NULL.
#[unsafe(no_mangle)]
pub extern "C" fn threadcalc_lead_verdict_name(lead_verdict: i32) -> *const c_char {
    name_of!(LeadVerdict, name, lead_verdict)
}
