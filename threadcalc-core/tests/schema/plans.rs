//! Many plans as JSON: those of the table of whole plans, random ones, and what neither has.

use serde_json::Value as Json;
use threadcalc_core::{Error, Job, Plan, Thread, Value, plan};

use crate::jobs::{SEED, draw};
use crate::random::Random;

const RANDOM_JOBS: usize = 2_000;

/// Jobs for the keys that neither the table nor the draws write or leave out: add one where a test asks.
const MORE: [&str; 7] = [
    "thread=M10x1.5-6H; unit=mm; mode=per_minute; decimals=3; rpm=400; hole=blind; full_thread_depth_mm=15; tap=cut; \
     material=tempered_steel; machine.gears=0 300 20",
    "thread=M10x1.5-6H; unit=mm; mode=per_minute; decimals=3; rpm=400; hole=blind; full_thread_depth_mm=15; tap=cut; \
     coating_um=500; drill_mm=8.47",
    "thread=1/4-18 NPT; unit=mm; mode=per_minute; decimals=3; rpm=200; hole=blind; tap=cut; projection_mm=4; \
     dialect.tap_rh=G84; dialect.feed_per_revolution=G95",
    "thread=1/4-18 NPTF; unit=mm; mode=per_minute; decimals=3; rpm=200; hole=blind; tap=cut",
    "thread=1/2 BSP; unit=mm; mode=per_minute; decimals=3; rpm=100; hole=through; full_thread_depth_mm=15; tap=cut",
    "thread=M400x6-6H; unit=mm; mode=per_minute; decimals=3; rpm=10; hole=through; full_thread_depth_mm=80; tap=cut; \
     hole_count=8",
    "thread=M8x1.25-6H; unit=mm; mode=per_minute; decimals=3; rpm=600; hole=blind; full_thread_depth_mm=16; tap=cut; \
     dialect.tap_rh=G84; dialect.units_default=inch; dialect.feed_mode_default=per_revolution; \
     dialect.units_codes.inch=G70; dialect.units_codes.mm=G71; dialect.feed_basis=lead_word; dialect.lead_word=K; \
     dialect.stroke_code=G33.1; dialect.cycle_starts_spindle=yes; dialect.rigid_tap_code_sticky_until=program_end; \
     dialect.S_in_cycle_block_allowed=no; dialect.S_decimals=0; dialect.peck_returns_to_R=true; \
     dialect.repeat_word=L; dialect.repeat_zero_means=once; dialect.no_point=least_increment; \
     dialect.least_increment.axis.mm=0.001; dialect.least_increment.axis.inch=0.0001; \
     dialect.least_increment.F_per_min.mm=1; dialect.least_increment.F_per_min.inch=0.01; \
     dialect.least_increment.F_per_rev.mm=0.0001; dialect.least_increment.F_per_rev.inch=0.000001; \
     dialect.max_decimals.axis.mm=3; dialect.max_decimals.axis.inch=4; dialect.max_decimals.F_per_min.mm=0; \
     dialect.max_decimals.F_per_min.inch=2; dialect.max_decimals.F_per_rev.mm=4; \
     dialect.max_decimals.F_per_rev.inch=6; dialect.mirror_on=G51.1; dialect.mirror_off=G50.1; \
     dialect.scale_on=G51; dialect.scale_off=G50; dialect.rotate_on=G68; dialect.rotate_off=G69; \
     dialect.mirror_flips_hand=true; dialect.rapid_cancels_cycle=false; \
     dialect.cycle_words_sticky_across_cancel=true; dialect.F_converted_on_units_change=true; \
     dialect.override_locked_in_cycle=false; dialect.unlisted_codes_alarm=true; \
     dialect.semicolon_comment=true; dialect.max_block_chars=80; \
     dialect.spaces_in_numbers=error; dialect.subprogram_call=M98; dialect.subprogram_return=M99; \
     dialect.order_table=units_first",
];

fn file(name: &str) -> String {
    let path = format!("{}/../tests/{name}", env!("CARGO_MANIFEST_DIR"));
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{path}: {error}"))
}

fn planned(text: &str) -> Result<Plan, Error> {
    let mut job = Job::default();
    for pair in text.split("; ") {
        let (key, value) = pair.split_once('=').expect("key=value");
        job.set(key, Value::Text(value.as_bytes()))?;
    }
    plan(&job)
}

/// The jobs of the table of whole plans.
fn whole_plans() -> Vec<String> {
    let text = file("reference/whole_plan.csv");
    let mut rows = text.lines().filter(|line| !line.starts_with('#'));
    let place = rows.next().and_then(|head| head.split(',').position(|column| column == "job")).expect("a column job");
    // A cell writes a comma as \x2c.
    rows.map(|row| row.split(',').nth(place).expect("a job").replace("\\x2c", ",")).collect()
}

/// Calls `look` with every plan.
pub fn each(mut look: impl FnMut(&Json)) {
    let mut count = 0;
    let mut show = |plan: Plan| {
        look(&serde_json::to_value(plan).expect("a plan is JSON"));
        count += 1;
    };
    // A row of the table may be an error.
    whole_plans().iter().filter_map(|text| planned(text).ok()).for_each(&mut show);
    MORE.map(|text| planned(text).expect("a plan")).into_iter().for_each(&mut show);
    let listed = file("same_bits/threads.txt");
    let lines = listed.lines().filter(|line| !line.starts_with('#'));
    let threads: Vec<_> = lines.map(|line| Thread::read(line.as_bytes()).expect("a thread")).collect();
    let mut random = Random(SEED);
    (0..RANDOM_JOBS).filter_map(|_| plan(&draw(&mut random, &threads)).ok()).for_each(&mut show);
    assert!(count > RANDOM_JOBS / 2, "only {count} plans");
}
