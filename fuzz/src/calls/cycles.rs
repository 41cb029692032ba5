//! Dialects and tapping cycles.

use core::ffi::c_char;

use threadcalc::*;

use super::protocol::{Request, fixed_text, pointer, request, sized};
use super::threads::{finding_is_sound, thread_at, thread_in};
use super::{Input, State};

/// A dialect, or NULL: mostly with a tapping cycle, and with any members that the input says.
pub fn dialect(state: &State, input: &mut Input<'_>) -> Option<Request> {
    // SAFETY: integers and arrays of integers only: all zeros are a value.
    let mut mill: threadcalc_dialect_t = unsafe { core::mem::zeroed() };
    let flags = input.byte();
    mill.base = i32::from(flags & 3).min(2);
    if flags & 4 != 0 {
        (mill.tap_rh, mill.tap_lh, mill.feed_per_revolution) = (text(b"G84"), text(b"G74"), text(b"G95"));
    }
    if flags & 8 != 0 {
        (mill.peck_word, mill.dwell_word, mill.retract_multiplier_word) = (text(b"Q"), text(b"P"), text(b"J"));
        (mill.dwell_unit, mill.retract_in) = (1 + i32::from(flags >> 4 & 1), 1 + i32::from(flags >> 5 & 1));
    }
    if flags & 64 != 0 {
        (mill.rigid_tap_code, mill.rigid_tap_code_has_s) = (text(b"M135"), 1 + i32::from(flags >> 7));
    }
    for _ in 0..input.byte() % 6 {
        set(&mut mill, state, input);
    }
    request(input, &mill)
}

/// Sets one member to what the input says.
fn set(mill: &mut threadcalc_dialect_t, state: &State, input: &mut Input<'_>) {
    match input.byte() % 32 {
        22.. => set_reading(mill, state, input),
        0 => mill.base = input.choice(),
        1 => mill.needs_spindle_running = input.choice(),
        2 => mill.lh_by_spindle_direction = input.choice(),
        3 => mill.rigid_tap_code_has_s = input.choice(),
        4 => mill.trailing_point = input.choice(),
        5 => mill.dwell_unit = input.choice(),
        6 => mill.retract_in = input.choice(),
        7 => mill.axis_decimals_mm = input.ratio(state),
        8 => mill.axis_decimals_inch = input.ratio(state),
        9 => write(&mut mill.name, input),
        10 => write(&mut mill.tap_rh, input),
        11 => write(&mut mill.tap_lh, input),
        12 => write(&mut mill.feed_per_minute, input),
        13 => write(&mut mill.feed_per_revolution, input),
        14 => write(&mut mill.rigid_tap_code, input),
        15 => write(&mut mill.peck_code_rh, input),
        16 => write(&mut mill.peck_code_lh, input),
        17 => write(&mut mill.return_r_plane, input),
        18 => write(&mut mill.return_initial, input),
        19 => write(&mut mill.peck_word, input),
        20 => write(&mut mill.dwell_word, input),
        _ => write(&mut mill.retract_multiplier_word, input),
    }
}

/// Sets one of the members that say what the control makes of a program.
fn set_reading(mill: &mut threadcalc_dialect_t, state: &State, input: &mut Input<'_>) {
    let choices = [
        &mut mill.units_default,
        &mut mill.feed_mode_default,
        &mut mill.feed_basis,
        &mut mill.rigid_tap_code_sticky_until,
        &mut mill.repeat_zero_means,
        &mut mill.no_point,
        &mut mill.spaces_in_numbers,
        &mut mill.order_table,
        &mut mill.cycle_starts_spindle,
        &mut mill.s_in_cycle_block_allowed,
        &mut mill.peck_returns_to_r,
        &mut mill.mirror_flips_hand,
        &mut mill.rapid_cancels_cycle,
        &mut mill.cycle_words_sticky_across_cancel,
        &mut mill.f_converted_on_units_change,
        &mut mill.override_locked_in_cycle,
        &mut mill.unlisted_codes_alarm,
        &mut mill.semicolon_comment,
    ];
    let texts: [&mut [c_char]; 13] = [
        &mut mill.units_codes_inch,
        &mut mill.units_codes_mm,
        &mut mill.stroke_code,
        &mut mill.mirror_on,
        &mut mill.mirror_off,
        &mut mill.scale_on,
        &mut mill.scale_off,
        &mut mill.rotate_on,
        &mut mill.rotate_off,
        &mut mill.subprogram_call,
        &mut mill.subprogram_return,
        &mut mill.lead_word,
        &mut mill.repeat_word,
    ];
    let numbers = [
        &mut mill.s_decimals,
        &mut mill.max_block_chars,
        &mut mill.least_increment_axis_mm,
        &mut mill.least_increment_axis_inch,
        &mut mill.least_increment_f_per_min_mm,
        &mut mill.least_increment_f_per_min_inch,
        &mut mill.least_increment_f_per_rev_mm,
        &mut mill.least_increment_f_per_rev_inch,
        &mut mill.max_decimals_axis_mm,
        &mut mill.max_decimals_axis_inch,
        &mut mill.max_decimals_f_per_min_mm,
        &mut mill.max_decimals_f_per_min_inch,
        &mut mill.max_decimals_f_per_rev_mm,
        &mut mill.max_decimals_f_per_rev_inch,
    ];
    let place = usize::from(input.byte());
    match input.byte() % 3 {
        0 => *choices.into_iter().nth(place % 17).expect("a choice") = input.choice(),
        1 => write(texts.into_iter().nth(place % 13).expect("a text"), input),
        _ => *numbers.into_iter().nth(place % 14).expect("a number") = input.ratio(state),
    }
}

fn text<const N: usize>(text: &[u8]) -> [c_char; N] {
    let mut member = [0; N];
    member.iter_mut().zip(text).for_each(|(place, byte)| *place = *byte as _);
    member
}

/// A code or a letter that a control may have, or any bytes, with or without a NUL.
fn write(member: &mut [c_char], input: &mut Input<'_>) {
    let text = match input.byte() {
        0..0x40 => b"G84.2",
        0x40..0x80 => &b"none"[..],
        0x80..0xC0 => b"K",
        length => input.bytes(usize::from(length) % 24),
    };
    member.fill(0);
    member.iter_mut().zip(text).for_each(|(place, byte)| *place = *byte as _);
}

pub fn cycle(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let mill = dialect(state, input);
    let whole = |numerator| threadcalc_ratio_t { numerator, denominator: 1 };
    let flags = input.byte();
    let mut asked = threadcalc_cycle_request_t {
        size: 0,
        unit: 1 + i32::from(flags & 1),
        mode: 1 + i32::from(flags >> 1 & 1),
        holder: 1 + i32::from(flags >> 2) % 3,
        return_to: 1 + i32::from(flags >> 4 & 1),
        reserved: 0,
        decimals: whole(4),
        rpm: whole(600),
        depth_mm: whole(20),
        r_plane_mm: whole(5),
        feed_lead_mm: threadcalc_ratio_t::default(),
        peck_mm: threadcalc_ratio_t::default(),
        dwell_s: threadcalc_ratio_t::default(),
        retract_factor: threadcalc_ratio_t::default(),
    };
    for _ in 0..input.byte() % 6 {
        ask(&mut asked, state, input);
    }
    let asked = request(input, &asked);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        let (thread, mill) = (thread_at(thread.as_ref()), pointer(mill.as_ref()));
        threadcalc_cycle(thread, mill, pointer(asked.as_ref()), found, size, error)
    };
    let Some(found) = sized::<threadcalc_cycle_t>(input, call) else { return };
    assert!(asked.as_ref().is_some_and(|asked| !asked.is_refused), "no such request is taken");
    assert!(mill.as_ref().is_some_and(|mill| !mill.is_refused), "no such dialect is taken");
    cycle_is_sound(&found);
}

/// Sets one member of a request to what the input says.
fn ask(asked: &mut threadcalc_cycle_request_t, state: &State, input: &mut Input<'_>) {
    match input.byte() % 13 {
        0 => asked.unit = input.choice(),
        1 => asked.mode = input.choice(),
        2 => asked.holder = input.choice(),
        3 => asked.return_to = input.choice(),
        4 => asked.reserved = u32::from(input.seldom()),
        5 => asked.decimals = input.ratio(state),
        6 => asked.rpm = input.ratio(state),
        7 => asked.depth_mm = input.ratio(state),
        8 => asked.r_plane_mm = input.ratio(state),
        9 => asked.feed_lead_mm = input.ratio(state),
        10 => asked.peck_mm = input.ratio(state),
        11 => asked.dwell_s = input.ratio(state),
        _ => asked.retract_factor = input.ratio(state),
    }
}

/// Words or a refusal and never both; the lines are those of the words, and the last cancels the cycle.
fn cycle_is_sound(found: &threadcalc_cycle_t) {
    let count = |count: i32| usize::try_from(count).expect("a count");
    let words: Vec<String> = found.words[..count(found.word_count)].iter().map(|word| fixed_text(word)).collect();
    let blocks: Vec<String> = found.blocks[..count(found.block_count)].iter().map(|block| fixed_text(block)).collect();
    assert_eq!(words.join(" "), blocks.join(" "));
    assert_eq!(words.is_empty(), found.refused.id != 0, "words or a reason");
    assert_eq!(words.is_empty(), found.restore_count == 0);
    assert!(found.restore[..count(found.restore_count)].iter().all(|word| !fixed_text(word).is_empty()));
    if found.refused.id != 0 {
        finding_is_sound(&found.refused);
        assert_eq!(found.refused.severity, THREADCALC_SEVERITY_ERROR);
    } else {
        assert_eq!(blocks.last().map(String::as_str), Some("G80"));
        assert!(words.iter().any(|word| word.starts_with('F')));
    }
}
