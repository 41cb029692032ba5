//! The answers of a microcontroller with a Cortex-M4, which has no instruction for doubles.
//!
//! Text goes out and the program ends through the debugger's interface (semihosting).

#![no_std]
#![no_main]

use core::arch::{asm, global_asm};

use answers::Page;

// Stack pointer and start, then the fourteen faults and interrupts of the core. The floating-point
// unit is off after a reset: the calling convention needs its registers.
global_asm!(
    ".section .vectors, \"a\"",
    ".word reset",
    ".rept 14",
    ".word fault",
    ".endr",
    ".text",
    ".thumb_func",
    ".globl reset",
    "reset:",
    "ldr r0, =0xe000ed88",
    "ldr r1, [r0]",
    "orr r1, r1, #0xf00000",
    "str r1, [r0]",
    "dsb",
    "isb",
    "bl {begin}",
    ".thumb_func",
    "fault:",
    "bl {fault}",
    begin = sym begin,
    fault = sym fault,
);

const OPEN: usize = 0x01;
const WRITE: usize = 0x05;
const EXIT_EXTENDED: usize = 0x20;
/// The reason "the program ended by itself".
const APPLICATION_EXIT: usize = 0x2_0026;

/// One call of the debugger's interface.
fn call(operation: usize, arguments: &[usize]) -> usize {
    let result;
    // SAFETY: the debugger reads the arguments, and memory that they point to.
    unsafe { asm!("bkpt 0xab", inlateout("r0") operation => result, in("r1") arguments.as_ptr(), options(nostack)) };
    result
}

fn exit(code: usize) -> ! {
    call(EXIT_EXTENDED, &[APPLICATION_EXIT, code]);
    loop {}
}

extern "C" fn begin() -> ! {
    const CONSOLE: &[u8] = b":tt\0";
    const FOR_WRITING: usize = 4;
    let console = call(OPEN, &[CONSOLE.as_ptr() as usize, FOR_WRITING, CONSOLE.len() - 1]);
    // The answer is how many bytes were not written.
    let mut page = Page::new(|bytes| call(WRITE, &[console, bytes.as_ptr() as usize, bytes.len()]) == 0);
    let answered = answers::write_answers(&mut page).is_ok();
    exit(usize::from(!(page.end() && answered)))
}

extern "C" fn fault() -> ! {
    exit(102)
}

#[panic_handler]
fn panicked(_: &core::panic::PanicInfo<'_>) -> ! {
    exit(101)
}
