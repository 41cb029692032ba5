//! Which calls ask for memory, as the header's first paragraph says: those that read the text of a job, and they
//! give all of it back. Counted in this thread by the allocator itself.

use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;
use std::ptr::null_mut;

use threadcalc::{
    THREADCALC_MODE_PER_MINUTE, THREADCALC_STATUS_BAD_JSON, THREADCALC_STATUS_BUFFER_TOO_SHORT, THREADCALC_STATUS_OK,
    THREADCALC_STATUS_UNKNOWN_KEY, THREADCALC_UNIT_MM, threadcalc_job_t, threadcalc_plan, threadcalc_plan_json,
    threadcalc_plan_json_of_job, threadcalc_plan_json_with_error, threadcalc_plan_t, threadcalc_plan_text,
    threadcalc_ratio_t, threadcalc_thread_read, threadcalc_thread_t,
};

thread_local! {
    static ASKED: Cell<usize> = const { Cell::new(0) };
    static HELD: Cell<isize> = const { Cell::new(0) };
}

struct Counting;

// SAFETY: every call is handed to the system's allocator unchanged.
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        ASKED.with(|asked| asked.set(asked.get() + 1));
        HELD.with(|held| held.set(held.get() + 1));
        // SAFETY: the caller's promise for `layout` is the one System asks for.
        unsafe { System.alloc(layout) }
    }

    unsafe fn dealloc(&self, place: *mut u8, layout: Layout) {
        HELD.with(|held| held.set(held.get() - 1));
        // SAFETY: `place` came from `alloc` above with the same layout.
        unsafe { System.dealloc(place, layout) }
    }
}

#[global_allocator]
static COUNTING: Counting = Counting;

/// What a call returns, how often it asked for memory, and how many pieces it kept.
fn counted<T>(call: impl FnOnce() -> T) -> (T, usize, isize) {
    let (asked, held) = (ASKED.with(Cell::get), HELD.with(Cell::get));
    let result = call();
    (result, ASKED.with(Cell::get) - asked, HELD.with(Cell::get) - held)
}

fn job() -> threadcalc_job_t {
    // SAFETY: integers, arrays of integers and pointers: all zeros are a value.
    let (mut job, mut thread): (threadcalc_job_t, threadcalc_thread_t) = unsafe { std::mem::zeroed() };
    let designation = b"M8x1.25-6H";
    // SAFETY: the pointers are of live memory of these lengths.
    let read = unsafe { threadcalc_thread_read(designation.as_ptr(), designation.len(), &raw mut thread, null_mut()) };
    assert_eq!(read, THREADCALC_STATUS_OK);
    let whole = |numerator| threadcalc_ratio_t { numerator, denominator: 1 };
    job.size = u32::try_from(size_of::<threadcalc_job_t>()).expect("a small structure");
    (job.thread, job.unit, job.mode) = (thread, THREADCALC_UNIT_MM, THREADCALC_MODE_PER_MINUTE);
    (job.hole, job.tap, job.decimals, job.rpm) = (2, 1, whole(3), whole(650));
    job.full_thread_depth_mm = whole(20);
    job
}

#[test]
fn the_counter_counts() {
    let (held, asked, kept) = counted(|| Box::new([1_u8; 100]));
    assert_eq!((held[99], asked, kept), (1, 1, 1));
}

#[test]
fn a_plan_of_a_structure_asks_for_no_memory() {
    let (job, mut text, mut needed) = (job(), vec![0; 65_536], 0);
    // SAFETY: plain data.
    let mut found: threadcalc_plan_t = unsafe { std::mem::zeroed() };
    // SAFETY: here and below: the pointers are of live memory of these lengths, or NULL where that is allowed.
    let planned = counted(|| unsafe {
        threadcalc_plan(&raw const job, &raw mut found, size_of::<threadcalc_plan_t>(), null_mut())
    });
    assert_eq!(planned, (THREADCALC_STATUS_OK, 0, 0));
    for (capacity, status) in [(0, THREADCALC_STATUS_BUFFER_TOO_SHORT), (text.len(), THREADCALC_STATUS_OK)] {
        let place = text.as_mut_ptr();
        let page =
            counted(|| unsafe { threadcalc_plan_text(&raw const job, place, capacity, &raw mut needed, null_mut()) });
        assert_eq!(page, (status, 0, 0), "page");
        let json = counted(|| unsafe {
            threadcalc_plan_json_of_job(&raw const job, place, capacity, &raw mut needed, null_mut())
        });
        assert_eq!(json, (status, 0, 0), "JSON");
    }
}

#[test]
fn the_json_door_gives_back_the_memory_that_it_asks_for() {
    let plain = br#"{"schema":1,"thread":"M8","unit":"mm","mode":"per_minute","decimals":3,"rpm":650,"hole":"blind",
        "full_thread_depth_mm":20,"tap":"cut","machine":{"gears":[[20,4000,90]]}}"#;
    let (mut text, mut needed) = (vec![0; 65_536], 0);
    for (job, status) in [
        (&plain[..], THREADCALC_STATUS_OK),
        (br#"{"schema":1,"rpms":5}"#, THREADCALC_STATUS_UNKNOWN_KEY),
        (br#"{"schema":1,"#, THREADCALC_STATUS_BAD_JSON),
    ] {
        let place = text.as_mut_ptr();
        // SAFETY: as above.
        let (got, asked, kept) =
            counted(|| unsafe { threadcalc_plan_json(job.as_ptr(), job.len(), place, 65_536, &raw mut needed) });
        assert_eq!((got, kept), (status, 0));
        assert!(asked > 0, "the header says that this call asks for memory");
        // SAFETY: as above.
        let told = counted(|| unsafe {
            threadcalc_plan_json_with_error(job.as_ptr(), job.len(), place, 65_536, &raw mut needed, null_mut())
        });
        assert_eq!(told, (status, asked, 0));
    }
}
