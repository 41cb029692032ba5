//! Eight threads over one value: nothing in it can change, so all read the same.

use std::fmt::Write;

use threadcalc_core::{
    Basis, DrillSets, FeedMode, Job, Length, Tap, TapDrillRequest, Thread, Unit, Value, feed, plan, read_hole_note,
    standard_threads, tap_drill,
};

/// All that a thread says of itself and all that is made of it, as one text.
fn said(thread: &Thread, job: &Job) -> String {
    let mut out = format!("{thread} {:?} {:?} {:?}", thread.profile(), thread.limits(), thread.pipe());
    for finding in thread.findings().iter() {
        write!(out, "{finding}").unwrap();
    }
    let word = feed(thread.lead_mm(), Some(Length::integer(650)), Unit::Mm, FeedMode::PerMinute, 3);
    let request = TapDrillRequest {
        tap: Tap::Cut,
        percent: None,
        basis: Some(Basis::FiveEighthsH),
        sets: DrillSets::ALL,
        taper_reamer: false,
    };
    write!(out, "{word:?} {:?} {:?}", tap_drill(thread, &request), read_hole_note(b"4X M8 THRU", None)).unwrap();
    match plan(job) {
        Ok(plan) => write!(out, "{plan}").unwrap(),
        Err(error) => write!(out, "{error}").unwrap(),
    }
    out
}

#[test]
fn eight_threads_over_one_value_read_the_same() {
    fn is_shared<T: Send + Sync>() {}
    is_shared::<(Thread, Job)>();
    let threads =
        ["7/16-14 UNC-2B", "M8x1.25-6H", "1/4-18 NPT", "G1/2A"].map(|text| Thread::read(text.as_bytes()).unwrap());
    let mut job = Job::default();
    for (key, text) in
        [("thread", "M8x1.25-6H"), ("unit", "inch"), ("mode", "per_minute"), ("decimals", "4"), ("rpm", "600")]
    {
        job.set(key, Value::Text(text.as_bytes())).unwrap();
    }
    for (key, text) in [("hole", "blind"), ("full_thread_depth_mm", "16"), ("tap", "cut"), ("dialect", "rs274ngc")] {
        job.set(key, Value::Text(text.as_bytes())).unwrap();
    }
    let alone = threads.map(|thread| said(&thread, &job));
    let listed = standard_threads(None, None).count();
    std::thread::scope(|scope| {
        for _ in 0..8 {
            scope.spawn(|| {
                for _ in 0..200 {
                    for (thread, alone) in threads.iter().zip(&alone) {
                        assert_eq!(&said(thread, &job), alone);
                    }
                }
                assert_eq!(standard_threads(None, None).count(), listed);
            });
        }
    });
}
