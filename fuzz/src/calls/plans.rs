//! Depths, plans, and the calls without structures.

use threadcalc::*;

use super::cycles::dialect;
use super::drills::tap_drill_is_sound;
use super::memory::Exact;
use super::protocol::{Request, fixed_text, pointer, request, room, sized, succeeded, text as text_of, text_only};
use super::threads::{finding_is_sound, place_of, text_in, thread_at, thread_in};
use super::{Input, State};

pub fn depths(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let asked = threadcalc_depth_request_t {
        size: 0,
        hole: input.choice(),
        tap_set_on: input.choice(),
        reserved: u32::from(input.seldom()),
        full_thread_mm: input.ratio(state),
        chamfer_threads: input.ratio(state),
        drill_mm: input.ratio(state),
        point_angle_deg: input.ratio(state),
        bottom_clearance_mm: input.ratio(state),
        tap_centre_mm: input.ratio(state),
    };
    let asked = request(input, &asked);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        threadcalc_depths(thread_at(thread.as_ref()), pointer(asked.as_ref()), found, size, error)
    };
    let Some(depths) = sized::<threadcalc_depths_t>(input, call) else { return };
    assert!(asked.as_ref().is_some_and(|asked| !asked.is_refused), "no such request is taken");
    assert!(depths.drill_point_mm.is_finite());
    state.ratio = depths.tap_mm;
}

pub fn taper_depths(state: &mut State, input: &mut Input<'_>) {
    let thread = thread_in(state, input);
    let asked = threadcalc_taper_depth_request_t {
        size: 0,
        reserved: u32::from(input.seldom()),
        projection_mm: input.ratio(state),
        drill_mm: input.ratio(state),
        point_angle_deg: input.ratio(state),
        bottom_clearance_mm: input.ratio(state),
    };
    let asked = request(input, &asked);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe {
        threadcalc_taper_depths(thread_at(thread.as_ref()), pointer(asked.as_ref()), found, size, error)
    };
    let Some(depths) = sized::<threadcalc_taper_depths_t>(input, call) else { return };
    assert!(asked.as_ref().is_some_and(|asked| !asked.is_refused), "no such request is taken");
    assert!(depths.drill_point_mm.is_finite());
    state.ratio = depths.tap_mm;
}

/// A job that mostly has all it needs; the input may take a member away or set it to anything.
fn job(state: &State, input: &mut Input<'_>, mill: Option<&Request>) -> threadcalc_job_t {
    // SAFETY: integers, arrays of integers and a pointer: all zeros are a value.
    let mut job: threadcalc_job_t = unsafe { core::mem::zeroed() };
    let ratio = |numerator| threadcalc_ratio_t { numerator, denominator: 1 };
    let flags = input.byte();
    let either = |bit: u8| 1 + i32::from(flags >> bit & 1);
    (job.unit, job.mode, job.hole, job.tap) = (either(0), either(1), either(2), either(3));
    job.thread = input.thread(state);
    (job.decimals, job.rpm, job.full_thread_depth_mm) = (ratio(3), ratio(650), ratio(20));
    job.dialect = pointer(mill);
    for _ in 0..input.byte() % 8 {
        set(&mut job, state, input);
    }
    job
}

/// Sets one member of a job to what the input says.
fn set(job: &mut threadcalc_job_t, state: &State, input: &mut Input<'_>) {
    match input.byte() % 59 {
        0 => job.unit = input.choice(),
        1 => job.mode = input.choice(),
        2 => job.hole = input.choice(),
        3 => job.tap = input.choice(),
        4 => job.basis = input.choice(),
        5 => job.tap_set_on = input.choice(),
        6 => job.drill_sets = u32::from_ne_bytes(input.choice().to_ne_bytes()),
        7 => job.thread = input.thread(state),
        8 => job.decimals = input.ratio(state),
        9 => job.rpm = input.ratio(state),
        10 => job.full_thread_depth_mm = input.ratio(state),
        11 => job.chamfer_threads = input.ratio(state),
        12 => job.tap_centre_mm = input.ratio(state),
        13 => job.drill_mm = input.ratio(state),
        14 => job.percent = input.ratio(state),
        15 => job.point_angle_deg = input.ratio(state),
        16 => job.bottom_clearance_mm = input.ratio(state),
        17 => job.r_plane_mm = input.ratio(state),
        18 => job.machine_highest_rpm = input.ratio(state),
        19 => job.machine_lowest_rpm = input.ratio(state),
        20 => job.machine_speed_step = input.ratio(state),
        21 => job.tap_kind = input.choice(),
        22 => job.chamfer_form = input.choice(),
        23 => job.holder = input.choice(),
        24 => job.material = input.choice(),
        25 => job.taper_reamer = input.choice(),
        26 => job.return_to = input.choice(),
        27 => job.machine_gear_count = input.choice(),
        28 => job.surface_speed_m_min = input.ratio(state),
        29 => job.surface_speed_ft_min = input.ratio(state),
        30 => job.projection_mm = input.ratio(state),
        31 => job.holder_extension_mm = input.ratio(state),
        32 => job.holder_compression_mm = input.ratio(state),
        33 => job.underfeed_percent = input.ratio(state),
        34 => job.over_travel_turns = input.ratio(state),
        35 => job.drill_depth_mm = input.ratio(state),
        36 => job.part_thickness_mm = input.ratio(state),
        37 => job.countersink_mm = input.ratio(state),
        38 => job.countersink_angle_deg = input.ratio(state),
        39 => job.peck_mm = input.ratio(state),
        40 => job.dwell_s = input.ratio(state),
        41 => job.coating_um = input.ratio(state),
        42 => job.cutting_force_n_mm2 = input.ratio(state),
        43 => job.part_shear_mpa = input.ratio(state),
        44 => job.hole_count = input.ratio(state),
        45 => job.machine_axis_feed_limit_mm_min = input.ratio(state),
        46 => job.machine_acceleration_rpm_s = input.ratio(state),
        47 => job.machine_retract_factor = input.ratio(state),
        48 => job.machine_least_clearance_turns = input.ratio(state),
        49 => job.oversize_mm = input.ratio(state),
        50 => job.screw.property_class = input.choice(),
        51 => job.screw.tensile_mpa = input.ratio(state),
        52 => job.screw.shear_mpa = input.ratio(state),
        53 => job.screw.engagement_mm = input.ratio(state),
        54 => job.screw.load_n = input.ratio(state),
        55 => job.screw.tolerance_class = input.letters(),
        56 => job.tap_mark = input.letters(),
        57 => gear(job, state, input),
        _ => job.dialect = core::ptr::null(),
    }
}

/// One more gear, or one gear changed.
fn gear(job: &mut threadcalc_job_t, state: &State, input: &mut Input<'_>) {
    job.machine_gear_count = job.machine_gear_count.saturating_add(1);
    let gear = &mut job.machine_gears[input.place(4)];
    gear.lowest_rpm = input.ratio(state);
    gear.highest_rpm = input.ratio(state);
    gear.point_count = input.choice();
    for point in &mut gear.points {
        point.rpm = input.ratio(state);
        point.torque_nm = input.double();
    }
}

pub fn plan(state: &mut State, input: &mut Input<'_>) {
    let mill = dialect(state, input);
    let asked = job(state, input, mill.as_ref());
    let asked = request(input, &asked);
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |found, size, error| unsafe { threadcalc_plan(pointer(asked.as_ref()), found, size, error) };
    let Some(plan) = sized::<threadcalc_plan_t>(input, call) else { return };
    assert!(asked.as_ref().is_some_and(|asked| !asked.is_refused), "no such request is taken");
    plan_is_sound(&plan);
    state.ratio = plan.feed.lead_cut_mm;
    state.keep_thread(input, plan.thread);
}

/// Its counts lie within its lists, its texts are texts, and no words stand beside an error.
fn plan_is_sound(plan: &threadcalc_plan_t) {
    let count = |count: i32| usize::try_from(count).expect("a count");
    let findings = &plan.findings[..count(plan.finding_count)];
    findings.iter().for_each(finding_is_sound);
    let has_error = findings.iter().any(|finding| finding.severity == THREADCALC_SEVERITY_ERROR);
    assert!(!has_error || plan.word_count == 0 && plan.withheld_count > 0, "words while an error stands");
    assert_eq!(plan.withheld_count == 0, plan.word_count > 0);
    assert!(plan.withheld[..count(plan.withheld_count)].iter().all(|id| *id > 0));
    let words: Vec<String> = plan.words[..count(plan.word_count)].iter().map(|word| fixed_text(word)).collect();
    let blocks: Vec<String> = plan.blocks[..count(plan.block_count)].iter().map(|block| fixed_text(block)).collect();
    assert_eq!(words.join(" "), blocks.join(" "));
    assert!(words.is_empty() || words.contains(&fixed_text(&plan.feed.word)));
    assert!(plan.restore[..count(plan.restore_count)].iter().all(|word| !fixed_text(word).is_empty()));
    for row in &plan.card[..count(plan.card_count)] {
        assert!(fixed_text(&row.word).starts_with('F') && row.rpm.denominator > 0);
    }
    tap_drill_is_sound(&plan.tap_drill);
    assert!(plan.depths.drill_point_mm.is_finite());
    assert_eq!(plan.thread.side, THREADCALC_SIDE_INTERNAL);
}

pub fn text(state: &mut State, input: &mut Input<'_>) {
    let mill = dialect(state, input);
    let asked = job(state, input, mill.as_ref());
    let asked = request(input, &asked);
    let job = pointer(asked.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |place, room, needed, error| unsafe { threadcalc_plan_text(job, place, room, needed, error) };
    let Some(text) = text_of(input, call) else { return };
    assert!(asked.as_ref().is_some_and(|asked| !asked.is_refused), "no such request is taken");
    assert!(text.ends_with('\n'));
    assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
}

pub fn json(state: &mut State, input: &mut Input<'_>) {
    let mill = dialect(state, input);
    let asked = job(state, input, mill.as_ref());
    let asked = request(input, &asked);
    let job = pointer(asked.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |place, room, needed, error| unsafe { threadcalc_plan_json_of_job(job, place, room, needed, error) };
    let Some(text) = text_of(input, call) else { return };
    assert!(asked.as_ref().is_some_and(|asked| !asked.is_refused), "no such request is taken");
    let plan: serde_json::Value = serde_json::from_str(&text).expect("a plan is JSON");
    assert!(plan["feed"]["word"].as_str().is_some_and(|word| word.starts_with('F')), "{text}");
}

pub fn lead(state: &mut State, input: &mut Input<'_>) {
    let (text, length) = text_in(input);
    let results = [room::<i64>(input), room::<i64>(input)];
    let text = place_of(text.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let status = unsafe { threadcalc_lead(text, length, results[0].pointer(), results[1].pointer()) };
    if succeeded(status, &super::memory::Room::null(), &[&results[0], &results[1]]) {
        let [numerator, denominator] = results.each_ref().map(|room| room.value::<i64>());
        assert!(numerator > 0 && denominator > 0);
        state.ratio = threadcalc_ratio_t { numerator, denominator };
    }
}

pub fn feed_word(_state: &mut State, input: &mut Input<'_>) {
    let (text, length) = text_in(input);
    let (rpm, unit, mode, decimals) = (input.double(), input.choice(), input.choice(), input.choice());
    let thread = place_of(text.as_ref());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let call = |place, room, needed| unsafe {
        threadcalc_feed_word(thread, length, rpm, unit, mode, decimals, place, room, needed)
    };
    let Some(word) = text_only(input, call) else { return };
    assert!(word.starts_with('F') && word.len() < 24, "{word}");
}

pub fn json_door(_state: &mut State, input: &mut Input<'_>) {
    let length = input.place(32);
    let job = Exact::new(&crate::job::json(input.bytes(length)));
    let (place_of_job, length) = (job.pointer(), job.length());
    // SAFETY: the pointers are NULL or of live memory of these lengths.
    let plain = text_only(input, |place, room, needed| unsafe {
        threadcalc_plan_json(place_of_job, length, place, room, needed)
    });
    // SAFETY: as above.
    let saying = text_of(input, |place, room, needed, error| unsafe {
        threadcalc_plan_json_with_error(place_of_job, length, place, room, needed, error)
    });
    assert!(plain.is_none() || saying.is_none() || plain == saying, "both doors give the same plan");
}
