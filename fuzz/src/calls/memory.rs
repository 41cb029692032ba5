//! Memory to hand to the library: inputs of exactly their size, results between guards.

use core::ptr::NonNull;
use std::alloc::{Layout, alloc, dealloc, handle_alloc_error};

/// What every byte of a result is before a call.
const FILL: u8 = 0xA5;
/// Bytes before and behind a result that nothing may change.
const GUARD: usize = 16;

/// Bytes of their own on the heap, aligned for every structure and not one longer than asked for, so
/// that the address sanitizer sees a read beyond them.
pub struct Exact {
    pointer: NonNull<u8>,
    layout: Layout,
    length: usize,
}

impl Exact {
    /// A copy of these bytes.
    #[must_use]
    pub fn new(bytes: &[u8]) -> Self {
        let layout = Layout::from_size_align(bytes.len().max(1), 8).expect("a small size");
        // SAFETY: the layout is at least one byte long, and the copy as long as the bytes.
        unsafe {
            let Some(pointer) = NonNull::new(alloc(layout)) else { handle_alloc_error(layout) };
            pointer.copy_from_nonoverlapping(NonNull::from(bytes).cast(), bytes.len());
            Self { pointer, layout, length: bytes.len() }
        }
    }

    /// A copy of the bytes of a structure of integers and doubles without padding.
    #[must_use]
    pub fn of<T: Copy>(value: &T) -> Self {
        Self::new(bytes_of(value))
    }

    /// Where the bytes are.
    #[must_use]
    pub fn pointer<T>(&self) -> *const T {
        self.pointer.as_ptr().cast_const().cast()
    }

    /// How many bytes there are.
    #[must_use]
    pub const fn length(&self) -> usize {
        self.length
    }

    fn bytes(&self) -> &[u8] {
        // SAFETY: all of them were written.
        unsafe { core::slice::from_raw_parts(self.pointer.as_ptr(), self.length) }
    }
}

impl Drop for Exact {
    fn drop(&mut self) {
        // SAFETY: allocated with this layout.
        unsafe { dealloc(self.pointer.as_ptr(), self.layout) };
    }
}

/// The bytes of a structure of integers and doubles without padding; all of the library's are.
#[must_use]
pub fn bytes_of<T: Copy>(value: &T) -> &[u8] {
    // SAFETY: as long as the value, and without padding every byte is written.
    unsafe { core::slice::from_raw_parts((&raw const *value).cast(), size_of::<T>()) }
}

/// Room for a result of a number of bytes, or NULL for a result that the caller leaves out.
pub struct Room {
    held: Option<Exact>,
    size: usize,
}

impl Room {
    /// Room for this many bytes.
    #[must_use]
    pub fn new(size: usize) -> Self {
        Self { held: Some(Exact::new(&vec![FILL; size + 2 * GUARD])), size }
    }

    /// Room for a `T`.
    #[must_use]
    pub fn of<T>() -> Self {
        Self::new(size_of::<T>())
    }

    /// No room: NULL.
    #[must_use]
    pub fn null() -> Self {
        Self { held: None, size: 0 }
    }

    /// Where the result goes.
    #[must_use]
    pub fn pointer<T>(&self) -> *mut T {
        self.held.as_ref().map_or(core::ptr::null_mut(), |held| {
            // SAFETY: there are more bytes than the guard.
            unsafe { held.pointer.as_ptr().add(GUARD).cast() }
        })
    }

    /// What was written; the guards have to be whole.
    #[must_use]
    pub fn bytes(&self) -> &[u8] {
        let Some(held) = &self.held else { return &[] };
        let (before, rest) = held.bytes().split_at(GUARD);
        let (bytes, behind) = rest.split_at(self.size);
        assert!(before.iter().chain(behind).all(|byte| *byte == FILL), "written outside the room");
        bytes
    }

    /// True if nothing was written at this byte or behind it.
    #[must_use]
    pub fn is_untouched_from(&self, start: usize) -> bool {
        self.bytes().iter().skip(start).all(|byte| *byte == FILL)
    }

    /// True if nothing was written.
    #[must_use]
    pub fn is_untouched(&self) -> bool {
        self.is_untouched_from(0)
    }

    /// What was written, as items of a structure of integers and doubles.
    #[must_use]
    pub fn items<T: Copy>(&self) -> Vec<T> {
        let whole = self.bytes().chunks_exact(size_of::<T>());
        // SAFETY: as many bytes as a `T`, for which every bit pattern is a value.
        whole.map(|bytes| unsafe { bytes.as_ptr().cast::<T>().read_unaligned() }).collect()
    }

    /// What was written, as one structure.
    #[must_use]
    pub fn value<T: Copy>(&self) -> T {
        *self.items().first().expect("room for the whole structure")
    }
}
