//! Reading a program asks nothing of the heap: counted in this thread by the allocator itself.

use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;

use threadcalc_core::nc::{Blocks, ReaderSettings, Variables, evaluate};

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

#[test]
fn a_program_is_read_without_the_heap() {
    let program =
        b"%\nO1 (TAP M8)\n#101=1.5 #102=[#101*400]\n/N10 G84 X10. Y-5.5 Z-SQRT[2] F#102\nIF [#1] GOTO 5\nX1,5\n";
    let before = ASKED.with(Cell::get);
    let (mut words, mut values, mut comments) = (0, 0, 0);
    let mut variables = Variables::new();
    for _ in 0..100 {
        let mut blocks = Blocks::new(program, ReaderSettings::default());
        while let Some(block) = blocks.next() {
            words += block.words().len();
            values += block.words().iter().filter(|word| evaluate(block, word.value(), &variables).is_ok()).count();
            comments += block.comments().count();
            variables.assign(block);
        }
    }
    assert_eq!(ASKED.with(Cell::get), before);
    assert_eq!((words, values, comments), (600, 400, 100));
    drop(std::hint::black_box(vec![1]));
    assert!(ASKED.with(Cell::get) > before, "the counter counts");
}
