//! The least a program needs of Linux on x86-64: a start, a write, an end, and the four functions
//! that every compiler expects of its platform.

use core::arch::{asm, global_asm};
use core::ffi::c_char;

// The kernel leaves the count of arguments on the stack and their addresses above it.
global_asm!(
    ".globl _start",
    "_start:",
    "xor ebp, ebp",
    "mov rdi, [rsp]",
    "lea rsi, [rsp + 8]",
    "and rsp, -16",
    "call {begin}",
    "ud2",
    begin = sym begin,
);

unsafe extern "C" fn begin(count: usize, arguments: *const *const c_char) -> ! {
    // SAFETY: what the kernel gave.
    exit(unsafe { crate::main(count, arguments) })
}

/// Writes to standard output; false if the kernel would not take all of it.
pub(crate) fn write(mut bytes: &[u8]) -> bool {
    while !bytes.is_empty() {
        let written: isize;
        // SAFETY: write(1, pointer, length) reads the bytes and nothing else.
        unsafe {
            asm!("syscall", inlateout("rax") 1_isize => written, in("rdi") 1, in("rsi") bytes.as_ptr(),
                in("rdx") bytes.len(), out("rcx") _, out("r11") _, options(nostack, readonly));
        }
        match usize::try_from(written).ok().and_then(|written| bytes.get(written..)) {
            Some(rest) if rest.len() < bytes.len() => bytes = rest,
            _ => return false,
        }
    }
    true
}

fn exit(code: i32) -> ! {
    // SAFETY: exit(code) does not come back.
    unsafe { asm!("syscall", in("rax") 60, in("rdi") code, options(noreturn, nostack)) }
}

#[panic_handler]
fn panicked(_: &core::panic::PanicInfo<'_>) -> ! {
    exit(101)
}

// The unwind tables of the compiler's own library name this; with panics that abort nobody calls it.
global_asm!(".globl rust_eh_personality", "rust_eh_personality:", "ud2");

// In assembly: in Rust the compiler would make a call to memcpy of a loop that copies.
global_asm!(
    ".globl memcpy, memmove, memset, memcmp, bcmp, strlen",
    "memcpy:",
    "mov rax, rdi",
    "mov rcx, rdx",
    "rep movsb",
    "ret",
    "memmove:",
    "mov rax, rdi",
    "mov rcx, rdx",
    "mov r8, rdi",
    "sub r8, rsi",
    "cmp r8, rdx",
    "jb 2f",
    "rep movsb",
    "ret",
    "2:",
    "lea rdi, [rdi + rdx - 1]",
    "lea rsi, [rsi + rdx - 1]",
    "std",
    "rep movsb",
    "cld",
    "ret",
    "memset:",
    "mov r8, rdi",
    "mov eax, esi",
    "mov rcx, rdx",
    "rep stosb",
    "mov rax, r8",
    "ret",
    "memcmp:",
    "bcmp:",
    "xor eax, eax",
    "mov rcx, rdx",
    "cmp rcx, rcx", // equal when there is nothing to compare
    "repe cmpsb",
    "je 3f",
    "movzx eax, byte ptr [rdi - 1]",
    "movzx ecx, byte ptr [rsi - 1]",
    "sub ecx, eax",
    "mov eax, ecx",
    "3:",
    "ret",
    "strlen:",
    "xor eax, eax",
    "4:",
    "cmp byte ptr [rdi + rax], 0",
    "je 5f",
    "inc rax",
    "jmp 4b",
    "5:",
    "ret",
);
