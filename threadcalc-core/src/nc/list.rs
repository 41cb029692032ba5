//! Lists of fixed room without a heap.

use core::fmt;

/// Up to `N` items. What lies behind the last of them is never looked at, so that emptying a list is free.
#[derive(Clone)]
pub(super) struct List<T, const N: usize> {
    items: [T; N],
    length: usize,
}

impl<T: Copy, const N: usize> List<T, N> {
    /// An empty list; `blank` fills the room.
    pub(super) const fn new(blank: T) -> Self {
        Self { items: [blank; N], length: 0 }
    }

    pub(super) const fn len(&self) -> usize {
        self.length
    }

    pub(super) fn as_slice(&self) -> &[T] {
        self.items.get(..self.length).unwrap_or(&[])
    }

    pub(super) fn iter_mut(&mut self) -> impl Iterator<Item = &mut T> {
        self.items.iter_mut().take(self.length)
    }

    /// Adds an item; false if there is no room.
    #[inline]
    pub(super) fn push(&mut self, item: T) -> bool {
        match self.items.get_mut(self.length) {
            Some(place) => *place = item,
            None => return false,
        }
        self.length = self.length.wrapping_add(1);
        true
    }

    /// Takes the last item off.
    pub(super) fn pop(&mut self) -> Option<T> {
        let last = self.length.checked_sub(1)?;
        self.length = last;
        self.items.get(last).copied()
    }

    pub(super) fn last_mut(&mut self) -> Option<&mut T> {
        self.items.get_mut(self.length.checked_sub(1)?)
    }

    pub(super) fn truncate(&mut self, length: usize) {
        self.length = self.length.min(length);
    }

    #[inline]
    pub(super) fn clear(&mut self) {
        self.length = 0;
    }
}

impl<T: Copy + PartialEq, const N: usize> PartialEq for List<T, N> {
    fn eq(&self, other: &Self) -> bool {
        self.as_slice() == other.as_slice()
    }
}

impl<T: Copy + fmt::Debug, const N: usize> fmt::Debug for List<T, N> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.as_slice().fmt(f)
    }
}
