//! The names of numbers, and the versions.

use core::ffi::{CStr, c_char};

use threadcalc::*;

use super::{Input, State};

const NAMES: [extern "C" fn(i32) -> *const c_char; 35] = [
    threadcalc_status_name,
    threadcalc_field_name,
    threadcalc_finding_name,
    threadcalc_finding_message,
    threadcalc_severity_name,
    threadcalc_number_name,
    threadcalc_form_name,
    threadcalc_form_symbol,
    threadcalc_written_as_name,
    threadcalc_series_name,
    threadcalc_hand_name,
    threadcalc_side_name,
    threadcalc_sides_name,
    threadcalc_plating_name,
    threadcalc_drill_set_name,
    threadcalc_within_limits_name,
    threadcalc_confidence_name,
    threadcalc_weakest_name,
    threadcalc_engagement_group_name,
    threadcalc_property_class_name,
    threadcalc_material_name,
    threadcalc_holder_name,
    threadcalc_tap_kind_name,
    threadcalc_suits_name,
    threadcalc_chamfer_form_name,
    threadcalc_iso_tap_class_name,
    threadcalc_limit_letter_name,
    threadcalc_gauge_name,
    threadcalc_gauge_reading_name,
    threadcalc_verdict_name,
    threadcalc_move_name,
    threadcalc_bottom_verdict_name,
    threadcalc_program_finding_name,
    threadcalc_program_number_name,
    threadcalc_lead_verdict_name,
];

/// Every name of one number: a short text, "unknown" at least.
pub fn all(_state: &mut State, input: &mut Input<'_>) {
    let number = if input.seldom() { input.int32() } else { i32::from(input.byte()) };
    for name in NAMES {
        assert!(!text(name(number)).is_empty(), "{number}");
    }
    assert!(text(threadcalc_version()).starts_with(|first: char| first.is_ascii_digit()));
    assert_eq!(threadcalc_abi_version(), THREADCALC_ABI_VERSION);
}

fn text(pointer: *const c_char) -> &'static str {
    assert!(!pointer.is_null());
    // SAFETY: not NULL, and the header says that it lives as long as the library.
    unsafe { CStr::from_ptr(pointer) }.to_str().expect("a name is UTF-8")
}
