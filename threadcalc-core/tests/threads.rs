//! Nothing is shared that can be changed: eight threads over one thread value get the answers of one alone.

use std::panic::{RefUnwindSafe, UnwindSafe};
use std::sync::Barrier;

use threadcalc_core::{
    Basis, Comment, Drill, Error, Feed, FeedMode, Finding, HoleNote, Job, Length, Limits, Pipe, Plan, Tap, TapDrill,
    Thread, Unit, feed, percent_thread, plan,
};

#[path = "support/job.rs"]
mod job;

const THREADS: usize = 8;

/// What one thread asks of the value that all share: results, texts and errors.
fn answers(thread: &Thread, job: &Job) -> Vec<String> {
    let mut found = Vec::new();
    for rpm in 300..800 {
        let feed = feed(thread.lead_mm(), Some(Length::integer(rpm)), Unit::Mm, FeedMode::PerMinute, 3).unwrap();
        let percent = percent_thread(thread, Length::new(rpm, 100).unwrap(), Tap::Cut, Some(Basis::ThreeQuartersH));
        let percent = percent.map_or_else(|error| error.to_string(), |percent| percent.to_bits().to_string());
        found.push(format!("{} {:?} {percent} {thread}", feed.word(), feed.lead_error()));
    }
    found.push(Thread::read(b"7/16-14 UNF").unwrap_err().to_string());
    found.extend((0..20).map(|_| plan(job).unwrap().to_string()));
    found
}

/// Answers of all threads at once, which begin together.
fn together(thread: &Thread, job: &Job, answer: impl Fn(&Thread, &Job) -> Vec<String> + Sync) -> Vec<Vec<String>> {
    let start = Barrier::new(THREADS);
    std::thread::scope(|scope| {
        let ask = || {
            start.wait();
            answer(thread, job)
        };
        let asking: Vec<_> = (0..THREADS).map(|_| scope.spawn(ask)).collect();
        asking.into_iter().map(|asked| asked.join().unwrap()).collect()
    })
}

#[test]
fn eight_threads_over_one_value_answer_as_one_alone() {
    let (thread, job) = (Thread::read(b"7/16-14 UNC-2B").unwrap(), job::of("7/16-14 UNC-2B"));
    let alone = answers(&thread, &job);
    assert!(together(&thread, &job, answers).iter().all(|theirs| *theirs == alone));
}

/// The comparison sees an answer that depends on what another thread does.
#[test]
fn a_planted_answer_of_shared_state_is_seen() {
    use std::sync::atomic::{AtomicUsize, Ordering};
    let (thread, job) = (Thread::read(b"M8").unwrap(), job::of("M8"));
    let calls = AtomicUsize::new(0);
    let counting = |_: &Thread, _: &Job| vec![calls.fetch_add(1, Ordering::Relaxed).to_string()];
    let alone = counting(&thread, &job);
    assert!(!together(&thread, &job, counting).iter().all(|theirs| *theirs == alone));
}

#[test]
fn every_value_may_be_shared_and_sent() {
    fn shared<T: Send + Sync + UnwindSafe + RefUnwindSafe + Copy + 'static>() {}
    shared::<Thread>();
    shared::<Job>();
    shared::<Plan>();
    shared::<Feed>();
    shared::<Limits>();
    shared::<Drill>();
    shared::<TapDrill>();
    shared::<Pipe>();
    shared::<HoleNote>();
    shared::<Comment>();
    shared::<Finding>();
    shared::<Error>();
    shared::<Length>();
}
