//! Engagement, speeds, torque, power and gears.

use threadcalc::*;
use threadcalc_core::MOST_GEARS;

use super::memory::{Exact, bytes_of};
use super::protocol::{error_room, fixed_text, pointer, request, room, sized, succeeded};
use super::threads::{known, ratio_at, ratio_in, thread_at, thread_in};
use super::{Input, State};

/// A double of an input, where small numbers and those in the hundreds lead somewhere.
fn strength(input: &mut Input<'_>) -> f64 {
    match input.byte() {
        byte @ 0..0x80 => f64::from(byte) * 10.0,
        byte @ 0x80..0xC0 => f64::from(byte) / 128.0,
        _ => input.double(),
    }
}

pub fn engagement(state: &mut State, input: &mut Input<'_>) {
    let (mut internal, mut external) = (thread_in(state, input), thread_in(state, input));
    if !input.seldom() {
        // Two threads of the input seldom fit.
        [internal, external] = [&b"M8-6H"[..], b"M8-6g"].map(|text| Some(Exact::of(&known(text))));
    }
    let asked = threadcalc_engagement_request_t {
        size: 0,
        load_is_given: i32::from(input.byte() >> 6),
        length_mm: input.ratio(state),
        without_full_thread_mm: input.ratio(state),
        drilled_mm: input.ratio(state),
        internal_shear_mpa: strength(input),
        external_shear_mpa: strength(input),
        external_tensile_mpa: strength(input),
        load_n: strength(input),
    };
    let load_is_given = asked.load_is_given == 1;
    let asked = request(input, &asked);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        let (internal, external) = (thread_at(internal.as_ref()), thread_at(external.as_ref()));
        threadcalc_engagement(internal, external, pointer(asked.as_ref()), found, size, error)
    };
    let Some(found) = sized::<threadcalc_engagement_t>(input, call) else { return };
    let asked = asked.expect("no request is refused");
    assert!(!asked.is_refused, "no such request is taken");
    assert!((1..=3).contains(&found.weakest) && found.reserved == 0);
    let loads = [found.tensile_load_n, found.internal_strip_load_n, found.external_strip_load_n];
    assert!(loads.iter().all(|load| load.is_finite() && *load > 0.0), "{loads:?}");
    assert!(found.required_length_mm > 0.0 && found.strip_ratio > 0.0);
    // A request that ends before the flag has no load.
    assert!(load_is_given || found.safety_factor.is_nan());
}

/// The call of [`speeds`].
type OfTwo = unsafe extern "C" fn(
    *const threadcalc_ratio_t,
    *const threadcalc_ratio_t,
    *mut f64,
    *mut threadcalc_error_t,
) -> threadcalc_status;

pub fn speeds(state: &mut State, input: &mut Input<'_>) {
    let (first, second) = (ratio_in(state, input), ratio_in(state, input));
    for call in [threadcalc_spindle_speed as OfTwo, threadcalc_spindle_speed_feet, threadcalc_surface_speed_m_min] {
        let (error, result) = (error_room(input), room::<f64>(input));
        let (first, second) = (ratio_at(first.as_ref()), ratio_at(second.as_ref()));
        // SAFETY: the pointers are NULL or of live memory.
        let status = unsafe { call(first, second, result.pointer(), error.pointer()) };
        if succeeded(status, &error, &[&result]) {
            let value: f64 = result.value();
            assert!(value > 0.0 && value.is_finite(), "{value}");
        }
    }
}

pub fn power(state: &mut State, input: &mut Input<'_>) {
    let (torque, rpm) = (input.double(), ratio_in(state, input));
    let (error, result) = (error_room(input), room::<f64>(input));
    // SAFETY: the pointers are NULL or of live memory.
    let status = unsafe { threadcalc_power_kw(torque, ratio_at(rpm.as_ref()), result.pointer(), error.pointer()) };
    assert!(!succeeded(status, &error, &[&result]) || result.value::<f64>() >= 0.0);
}

fn band_is_sound(band: &threadcalc_torque_band_t) {
    let torques = [0.0, band.low_nm, band.likely_nm, band.high_nm, band.worn_nm, f64::INFINITY];
    assert!(torques.windows(2).all(|two| two[0] < two[1]), "{torques:?}");
}

pub fn torques(state: &mut State, input: &mut Input<'_>) {
    let (thread, drill) = (thread_in(state, input), ratio_in(state, input));
    let (force, factor) = (strength(input), strength(input));
    let (thread, drill) = (thread_at(thread.as_ref()), ratio_at(drill.as_ref()));
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let by_pitch = |band, size, error| unsafe { threadcalc_torque_by_pitch(thread, force, factor, band, size, error) };
    if let Some(band) = sized(input, by_pitch) {
        band_is_sound(&band);
    }
    // SAFETY: as above.
    let by_chip_area =
        |band, size, error| unsafe { threadcalc_torque_by_chip_area(thread, drill, force, factor, band, size, error) };
    if let Some(band) = sized(input, by_chip_area) {
        band_is_sound(&band);
    }
}

/// What there is to start from where nothing better is known.
pub fn starting_values(state: &mut State, input: &mut Input<'_>) {
    let number = input.choice();
    let diameter = ratio_in(state, input);
    let diameter = ratio_at(diameter.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let strength = |found, size, error| unsafe { threadcalc_starting_strength(number, diameter, found, size, error) };
    if let Some(strength) = sized::<threadcalc_starting_strength_t>(input, strength) {
        assert!((1..=9).contains(&number) && strength.shear_mpa < strength.tensile_mpa);
        assert!(fixed_text(&strength.source).starts_with("ISO 898-1"));
    }
    // SAFETY: as above.
    let part = |found, size, error| unsafe { threadcalc_starting_part_strength(number, found, size, error) };
    if let Some(part) = sized::<threadcalc_starting_strength_t>(input, part) {
        assert!((1..=10).contains(&number) && part.shear_mpa < part.tensile_mpa);
    }
    // SAFETY: as above.
    let forces = |found, size, error| unsafe { threadcalc_starting_forces(number, found, size, error) };
    if let Some(forces) = sized::<threadcalc_starting_forces_t>(input, forces) {
        assert!((1..=10).contains(&number) && (0..=1).contains(&forces.is_read));
        assert!(forces.by_pitch_n_mm2 > 0.0 && (forces.by_chip_area_n_mm2.is_nan() || forces.by_chip_area_n_mm2 > 0.0));
    }
    for call in [threadcalc_forming_factor as Factor, threadcalc_taper_factor] {
        // SAFETY: as above.
        if let Some(range) = sized(input, |range, size, error| unsafe { call(range, size, error) }) {
            assert!(range.low < range.start && range.start < range.high);
        }
    }
}

/// The calls of a range of factors.
type Factor = unsafe extern "C" fn(*mut threadcalc_factor_range_t, usize, *mut threadcalc_error_t) -> threadcalc_status;

/// A gear whose speeds mostly ascend.
fn gear(state: &State, input: &mut Input<'_>) -> threadcalc_gear_t {
    let whole = |numerator: u32| threadcalc_ratio_t { numerator: i64::from(numerator), denominator: 1 };
    let (count, step) = (input.byte() % 9, u32::from(input.byte()));
    let mut gear = threadcalc_gear_t {
        lowest_rpm: whole(0),
        highest_rpm: whole(step * u32::from(count.max(2) - 1)),
        point_count: i32::from(count),
        reserved: u32::from(input.seldom()),
        ..threadcalc_gear_t::default()
    };
    for (place, point) in gear.points.iter_mut().enumerate() {
        let rpm = whole(step * u32::try_from(place).expect("a small place"));
        *point = threadcalc_torque_point_t { rpm, torque_nm: strength(input) };
    }
    match input.byte() {
        0xF0.. => gear.lowest_rpm = input.ratio(state),
        0xE0.. => gear.highest_rpm = input.ratio(state),
        0xD0.. => gear.point_count = input.int32(),
        0xC0.. => gear.points[input.place(8)].rpm = input.ratio(state),
        _ => {}
    }
    gear
}

pub fn gear_fit(state: &mut State, input: &mut Input<'_>) {
    let room_for = 1 + input.place(6);
    let gears: Vec<u8> = (0..room_for).flat_map(|_| bytes_of(&gear(state, input)).to_vec()).collect();
    let gears = (!input.seldom()).then(|| Exact::new(&gears));
    // None, or more than any spindle has, whatever the memory holds.
    let count = match input.byte() {
        0xF8.. => usize::MAX,
        0xF0.. => MOST_GEARS + 1,
        0xE0.. => 0,
        _ => room_for,
    };
    let (torque, rpm) = (strength(input), ratio_in(state, input));
    // SAFETY: the pointers are NULL or of live memory of these lengths; a larger count is refused unread.
    let call = |fit, size, error| unsafe {
        let gears = gears.as_ref().map_or(core::ptr::null(), Exact::pointer);
        threadcalc_gear_fit(gears, count, torque, ratio_at(rpm.as_ref()), fit, size, error)
    };
    let Some(fit) = sized::<threadcalc_gear_fit_t>(input, call) else { return };
    let gear = usize::try_from(fit.gear).ok();
    assert!(fit.gear == -1 || gear.is_some_and(|gear| gear < count), "gear {}", fit.gear);
    assert_eq!(gear.is_none(), fit.torque_nm.is_nan());
    assert_eq!(fit.is_enough == 1, fit.torque_nm >= torque);
    assert!(fit.fastest_rpm.is_nan() || fit.fastest_rpm >= 0.0);
}
