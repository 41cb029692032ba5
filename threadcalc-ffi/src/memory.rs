//! The caller's memory: every pointer is checked here, and results are written only on success.

use core::ffi::c_char;
use core::fmt;
use core::mem::MaybeUninit;
use core::ptr::NonNull;

use threadcalc_core::{Code, Error, Field, Text};

/// The largest request that is looked at: far above any this library will have.
const LARGEST_REQUEST: usize = 4096;

const NULL: Error = Error::new(Code::NullPointer, Field::Pointer);

/// A structure to read.
///
/// # Safety
/// `pointer` is NULL or points to a valid `T` for the whole call.
pub(crate) unsafe fn input<'a, T>(pointer: *const T) -> Result<&'a T, Error> {
    unsafe { pointer.as_ref() }.ok_or(NULL)
}

/// Bytes to read.
///
/// # Safety
/// `pointer` is NULL or points to `length` bytes for the whole call.
pub(crate) unsafe fn bytes<'a>(pointer: *const u8, length: usize) -> Result<&'a [u8], Error> {
    if pointer.is_null() {
        return Err(NULL);
    }
    if isize::try_from(length).is_err() {
        return Err(Error::new(Code::TooLong, Field::Size).hint_text("no text in memory is that long"));
    }
    Ok(unsafe { core::slice::from_raw_parts(pointer, length) })
}

/// A list to read, with no more items than there may be.
///
/// # Safety
/// `pointer` is NULL or points to `count` items for the whole call.
pub(crate) unsafe fn items<'a, T>(
    pointer: *const T,
    count: usize,
    most: usize,
    field: Field,
) -> Result<&'a [T], Error> {
    if pointer.is_null() {
        return Err(NULL);
    }
    if count > most {
        return Err(Error::new(Code::OutOfRange, field).got(counted(count)).within(1.0, counted(most)));
    }
    Ok(unsafe { core::slice::from_raw_parts(pointer, count) })
}

/// A list to read that may be empty, of at most so many items; NULL is an empty one.
///
/// # Safety
/// As [`items`].
pub(crate) unsafe fn items_or_none<'a, T>(
    pointer: *const T,
    count: usize,
    most: usize,
    field: Field,
) -> Result<&'a [T], Error> {
    if count == 0 {
        return Ok(&[]);
    }
    if count > most {
        return Err(Error::new(Code::TooLong, field).got(counted(count)).within(f64::NAN, counted(most)));
    }
    unsafe { items(pointer, count, most, field) }
}

/// A count as an error shows it.
fn counted(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::NAN, f64::from)
}

/// A place for one result.
pub(crate) struct Output<T>(NonNull<T>);

impl<T: Copy> Output<T> {
    /// # Safety
    /// `pointer` is NULL or points to room for a `T` for the whole call.
    pub(crate) unsafe fn new(pointer: *mut T) -> Result<Self, Error> {
        NonNull::new(pointer).map(Self).ok_or(NULL)
    }

    pub(crate) fn write(&self, value: T) {
        // SAFETY: the one who made it promised the room.
        unsafe { self.0.write(value) };
    }
}

/// A place for one result of a size that the caller knows.
pub(crate) struct SizedOutput<T> {
    place: NonNull<T>,
    size: usize,
}

impl<T: Copy> SizedOutput<T> {
    /// # Safety
    /// `pointer` is NULL or points to `size` bytes for the whole call.
    pub(crate) unsafe fn new(pointer: *mut T, size: usize) -> Result<Self, Error> {
        let place = NonNull::new(pointer).ok_or(NULL)?;
        if size == 0 {
            return Err(Error::new(Code::StructureSize, Field::Size).got(0.0).hint_text("the size of the result"));
        }
        Ok(Self { place, size })
    }

    pub(crate) fn write(&self, value: T) {
        if self.size >= size_of::<T>() {
            // SAFETY: the one who made it promised `size` bytes.
            unsafe { self.place.write(value) };
            return;
        }
        // SAFETY: the same; `value` is longer than `size`.
        unsafe {
            core::ptr::copy_nonoverlapping((&raw const value).cast::<u8>(), self.place.cast().as_ptr(), self.size);
        }
    }
}

/// A structure that begins with `uint32_t size`.
///
/// # Safety
/// Made of integers, doubles, arrays of these and pointers that may be NULL only: all zeros are a value, and
/// mean "not given".
pub(crate) unsafe trait Request: Copy {
    /// Where each member after `size` begins: the sizes that end between two members.
    const STARTS: &'static [usize];
}

/// A request of whatever size the caller knows: members it does not know are "not given".
///
/// # Safety
/// `pointer` is NULL or points to a structure that begins with its own size.
pub(crate) unsafe fn request<T: Request>(pointer: *const T) -> Result<T, Error> {
    if pointer.is_null() {
        return Err(NULL);
    }
    let first = pointer.cast::<u8>();
    let given = unsafe { first.cast::<u32>().read() };
    let size = usize::try_from(given).unwrap_or(usize::MAX);
    let own = size_of::<T>();
    // The first start is where an empty request ends: a size and nothing else.
    let known = size == own || T::STARTS.iter().skip(1).any(|start| *start == size);
    let longer = own < size && size <= LARGEST_REQUEST;
    if !known && !longer {
        return Err(Error::new(Code::StructureSize, Field::Size)
            .got(f64::from(given))
            .hint_text("set the member size to sizeof of the structure"));
    }
    if size == own {
        // SAFETY: the caller promises `size` bytes, which are a `T`: any bytes, and the caller's own pointers.
        return Ok(unsafe { pointer.read() });
    }
    // SAFETY: the caller promises `size` bytes.
    let all = unsafe { core::slice::from_raw_parts(first, size) };
    let (head, tail) = all.split_at_checked(own).unwrap_or((all, &[]));
    if tail.iter().any(|byte| *byte != 0) {
        return Err(Error::new(Code::UnsupportedField, Field::Size)
            .got(f64::from(given))
            .hint_text("a member is set that this version of the library does not know"));
    }
    let mut request = MaybeUninit::<T>::zeroed();
    // SAFETY: `head` is at most as long as `T`, and all zeros are a `T`.
    unsafe {
        core::ptr::copy_nonoverlapping(head.as_ptr(), request.as_mut_ptr().cast(), head.len());
        Ok(request.assume_init())
    }
}

/// Writes a list and how many there are; with too little room only how many.
///
/// # Safety
/// `array` is NULL or has room for `capacity` items, `count` is NULL or valid.
pub(crate) unsafe fn list<T: Copy, I: Iterator<Item = T>>(
    items: impl Fn() -> I,
    array: *mut T,
    capacity: usize,
    count: *mut usize,
) -> Result<(), Error> {
    let count = unsafe { Output::new(count) }?;
    if array.is_null() && capacity > 0 {
        return Err(NULL);
    }
    let needed = items().count();
    if needed > capacity {
        count.write(needed);
        return Err(too_short(capacity, needed));
    }
    if !array.is_null() {
        // SAFETY: not null, and the caller promises room for `capacity` items.
        let room = unsafe { core::slice::from_raw_parts_mut(array.cast::<MaybeUninit<T>>(), capacity) };
        for (place, item) in room.iter_mut().zip(items()) {
            place.write(item);
        }
    }
    count.write(needed);
    Ok(())
}

/// Writes a list that never has more items than there is room for, and how many there are.
///
/// # Safety
/// As [`list`].
pub(crate) unsafe fn list_of_at_most<T: Copy>(
    items: impl Iterator<Item = T> + Clone,
    array: *mut T,
    capacity: usize,
    count: *mut usize,
) -> Result<(), Error> {
    unsafe { list(|| items.clone().take(capacity), array, capacity, count) }
}

/// Writes a text, its NUL, and the room they need; with too little room only the room needed.
///
/// # Safety
/// `text` is NULL or has room for `capacity` bytes, `needed` is NULL or valid.
pub(crate) unsafe fn text_out(
    write: impl Fn(&mut Sink<'_>) -> Result<(), Error>,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
) -> Result<(), Error> {
    let needed = unsafe { Output::new(needed) }?;
    if text.is_null() && capacity > 0 {
        return Err(NULL);
    }
    let mut measure = Sink { room: &mut [], length: 0 };
    write(&mut measure)?;
    let with_nul = measure.length.saturating_add(1);
    if with_nul > capacity {
        needed.write(with_nul);
        return Err(too_short(capacity, with_nul));
    }
    // SAFETY: `capacity` is at least 1, so `text` is not null; the caller promises the room.
    let room = unsafe { core::slice::from_raw_parts_mut(text.cast::<MaybeUninit<u8>>(), capacity) };
    let mut sink = Sink { room, length: 0 };
    write(&mut sink)?;
    sink.take(b"\0");
    needed.write(with_nul);
    Ok(())
}

/// A text that is there already, as text_out writes one.
///
/// # Safety
/// As `text_out`.
pub(crate) unsafe fn bytes_out(
    bytes: &[u8],
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
) -> Result<(), Error> {
    let needed = unsafe { Output::new(needed) }?;
    if text.is_null() && capacity > 0 {
        return Err(NULL);
    }
    let with_nul = bytes.len().saturating_add(1);
    needed.write(with_nul);
    if with_nul > capacity {
        return Err(too_short(capacity, with_nul));
    }
    let room = text.cast::<u8>();
    // SAFETY: the room has `with_nul` bytes at least, which the caller promises, and is none of the library's own.
    unsafe {
        core::ptr::copy_nonoverlapping(bytes.as_ptr(), room, bytes.len());
        room.add(bytes.len()).write(0);
    }
    Ok(())
}

fn too_short(capacity: usize, needed: usize) -> Error {
    Error::new(Code::BufferTooShort, Field::Buffer).got(counted(capacity)).within(counted(needed), f64::NAN)
}

/// Where a text goes: counts every byte, keeps those that have room.
pub(crate) struct Sink<'a> {
    room: &'a mut [MaybeUninit<u8>],
    length: usize,
}

impl Sink<'_> {
    pub(crate) fn take(&mut self, bytes: &[u8]) {
        let end = self.length.saturating_add(bytes.len());
        if let Some(places) = self.room.get_mut(self.length..end) {
            for (place, byte) in places.iter_mut().zip(bytes) {
                place.write(*byte);
            }
        }
        self.length = end;
    }

    /// Takes what is displayed.
    pub(crate) fn display(&mut self, value: impl fmt::Display) -> Result<(), Error> {
        // A sink takes everything: only the value's own writing can fail, and that has no more to say.
        fmt::write(self, format_args!("{value}")).map_err(|_| Error::new(Code::Overflow, Field::Number))
    }
}

impl fmt::Write for Sink<'_> {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        self.take(text.as_bytes());
        Ok(())
    }
}

impl std::io::Write for Sink<'_> {
    fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
        self.take(bytes);
        Ok(bytes.len())
    }

    fn flush(&mut self) -> std::io::Result<()> {
        Ok(())
    }
}

/// A text in a member of fixed length, NUL-terminated; ends at a whole character if it is too long.
pub(crate) fn fixed_text<const N: usize>(text: &str) -> [c_char; N] {
    let most = N.saturating_sub(1);
    let end = if text.len() <= most {
        text.len()
    } else {
        (0..=most).rev().find(|end| text.is_char_boundary(*end)).unwrap_or(0)
    };
    let mut held = [0; N];
    // SAFETY: `end` is at most the length of the text and less than N; a c_char is one byte.
    unsafe { core::ptr::copy_nonoverlapping(text.as_ptr(), held.as_mut_ptr().cast::<u8>(), end) };
    held
}

/// What is displayed in a member of fixed length; what does not fit is left out from the first piece on that does not.
pub(crate) fn display_text<const N: usize>(value: impl fmt::Display) -> [c_char; N] {
    let mut held = [MaybeUninit::new(0); N];
    let mut sink = Sink { room: held.get_mut(..N.saturating_sub(1)).unwrap_or(&mut []), length: 0 };
    // A sink takes everything.
    let _written = fmt::write(&mut sink, format_args!("{value}"));
    // SAFETY: every byte was set at the beginning; a c_char is one byte.
    held.map(|byte| c_char::from_ne_bytes([unsafe { byte.assume_init() }]))
}

/// A short text of the core in a longer member: a copy of fixed size, which is cheaper than one of a length.
pub(crate) fn padded_text<const M: usize, const N: usize>(text: Text<M>) -> [c_char; N] {
    const { assert!(M < N, "a NUL has to follow") };
    let (bytes, mut held) = (text.padded(), [0; N]);
    // SAFETY: M is less than N; a c_char is one byte.
    unsafe { core::ptr::copy_nonoverlapping(bytes.as_ptr(), held.as_mut_ptr().cast::<u8>(), M) };
    held
}

/// The bytes of a member of fixed length, up to its NUL or its end.
pub(crate) fn text_of<const N: usize>(held: &[c_char; N]) -> &[u8] {
    // SAFETY: c_char is one byte, with or without a sign.
    let bytes = unsafe { core::slice::from_raw_parts(held.as_ptr().cast::<u8>(), N) };
    let end = bytes.iter().position(|byte| *byte == 0).unwrap_or(N);
    bytes.get(..end).unwrap_or(&[])
}

/// Where the members of a request begin, behind its size.
macro_rules! starts {
    ($($member:ident),+ $(,)?) => {
        &[$(core::mem::offset_of!(Self, $member)),+]
    };
}
pub(crate) use starts;

/// A structure of which all zeros are a value.
///
/// # Safety
/// It holds integers, doubles and arrays of these only.
pub(crate) unsafe trait Zeroed: Copy {}

/// What a result holds where there is nothing: zeros.
pub(crate) fn or_zeros<T: Zeroed>(found: Option<T>) -> T {
    // SAFETY: all zeros are a `T`.
    found.unwrap_or_else(|| unsafe { MaybeUninit::zeroed().assume_init() })
}

/// The first items of an array, the rest as they were, and how many there are.
pub(crate) fn fill<T, const N: usize>(mut array: [T; N], items: impl Iterator<Item = T>) -> ([T; N], i32) {
    let mut count = 0_i32;
    for (place, item) in array.iter_mut().zip(items) {
        *place = item;
        count = count.saturating_add(1);
    }
    (array, count)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_text_too_long_for_its_member_ends_at_a_character() {
        assert_eq!(text_of(&fixed_text::<4>("ab")), b"ab");
        assert_eq!(text_of(&fixed_text::<4>("abc")), b"abc");
        assert_eq!(text_of(&fixed_text::<4>("abcd")), b"abc");
        assert_eq!(text_of(&fixed_text::<4>("ab\u{d8}")), b"ab");
    }
}
