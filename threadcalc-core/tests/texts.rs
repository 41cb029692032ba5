//! No text fails: what is displayed is displayed, however odd the figures are.

use threadcalc_core::{Dialect, FeedMode, Hole, Job, Length, Tap, Thread, Unit, plan};

fn odd(numerator: i64, denominator: i64) -> Length {
    Length::new(numerator, denominator).expect("a fraction")
}

#[test]
fn figures_too_odd_for_a_designation_are_shown_as_figures() {
    let per_inch = odd(999_999_999_989, 50_000_000_021);
    let thread = Thread::unified(odd(1, 2), per_inch);
    let shown = thread.map(|thread| thread.to_string());
    assert!(shown.is_err() || shown.is_ok_and(|text| text.contains(" mm x ") || text.contains('-')));
}

#[test]
fn a_pitch_finer_than_four_decimals_of_an_inch_has_a_designation() {
    for text in ["2-21110 UNS", "1/4-30000 UNS-2B", "3/4-0.00002P-0.00006L(3 STARTS) UNS"] {
        assert_eq!(Thread::read(text.as_bytes()).expect("a thread").to_string(), text);
    }
}

#[test]
fn thirds_of_a_thread_per_inch_are_no_part_of_the_size() {
    for text in ["5-20 1/3 UNS", "10-24 1/3 UNS-2B", "1/4-19 6/7 UNS", "5-0 1/3 UNS"] {
        assert_eq!(Thread::read(text.as_bytes()).expect("a thread").to_string(), text);
    }
    assert_eq!(Thread::read(b"5\"-61/3 UNS"), Thread::read(b"5-20 1/3 UNS"));
}

fn job(thread: Thread) -> Job {
    let mut job = Job::default();
    job.thread = Some(thread);
    job.unit = Some(Unit::Mm);
    job.mode = Some(FeedMode::PerRevolution);
    job.decimals = Some(3);
    job.rpm = Some(Length::integer(200));
    job.hole = Some(Hole::Blind);
    job.full_thread_depth_mm = Some(Length::integer(10));
    job.tap = Some(Tap::Cut);
    job.dialect = Some(Dialect::rs274ngc());
    job
}

#[test]
fn a_plan_of_an_odd_pitch_has_a_text() {
    let pitch = odd(999_999_999_989, 700_000_000_001);
    let thread = Thread::metric(Length::integer(10), pitch).expect("a thread");
    if let Ok(plan) = plan(&job(thread)) {
        assert!(plan.to_string().starts_with("M10x999999999989/700000000001"));
    }
}

#[test]
fn a_smallest_minor_diameter_is_shown_where_the_largest_has_not_been_read() {
    let text = plan(&job(Thread::read(b"Tr20x4").expect("a thread"))).expect("a plan").to_string();
    let flat = text.split_whitespace().collect::<Vec<_>>().join(" ");
    for line in [
        "minor dia 16.000 mm (0.6299 in) or larger",
        "plain pin 16.000 mm enters",
        "only by its smallest minor diameter",
    ] {
        assert!(flat.contains(line), "{line}\n{text}");
    }
}
