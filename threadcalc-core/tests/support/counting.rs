//! An allocator that counts, in each thread, how often it is asked for memory.

use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;

thread_local! {
    static ASKED: Cell<usize> = const { Cell::new(0) };
}

struct Counting;

// SAFETY: every call is handed to the system's allocator unchanged.
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        ASKED.with(|asked| asked.set(asked.get() + 1));
        // SAFETY: the caller's promise for `layout` is the one System asks for.
        unsafe { System.alloc(layout) }
    }

    unsafe fn dealloc(&self, place: *mut u8, layout: Layout) {
        // SAFETY: `place` came from `alloc` above with the same layout.
        unsafe { System.dealloc(place, layout) }
    }
}

#[global_allocator]
static COUNTING: Counting = Counting;

/// What a call returns, and how often it asked for memory.
pub fn counted<T>(call: impl FnOnce() -> T) -> (T, usize) {
    let before = ASKED.with(Cell::get);
    let result = call();
    (result, ASKED.with(Cell::get) - before)
}

#[test]
fn the_counter_counts() {
    let (held, asked) = counted(|| Box::new([1_u8; 100]));
    assert_eq!((held[99], asked), (1, 1));
}
