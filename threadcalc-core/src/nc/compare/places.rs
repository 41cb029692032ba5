//! Holes at the same place: sorted by it, without a heap.

use core::cmp::Ordering;

use super::align::Pairs;
use crate::length::{Length, Rounding};
use crate::nc::report::TappedHole;
use crate::nc::work_offset::WorkOffset;

/// How places are made equal: the width of a cell in picometres, and by how much the cells are moved in X and Y.
///
/// Places that agree are found first. What a change of units has rounded lies in one cell of 0.01 mm, or, where
/// a border runs between, in one of cells moved by half: places within 0.005 mm in X and in Y always meet.
const GRIDS: [(i64, i64, i64); 5] = [(1, 0, 0), (CELL, 0, 0), (CELL, HALF, 0), (CELL, 0, HALF), (CELL, HALF, HALF)];
const CELL: i64 = 10_000_000;
const HALF: i64 = CELL / 2;

/// The cell that a place lies in.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Cell {
    work_offset: WorkOffset,
    x: i64,
    y: i64,
}

impl Cell {
    fn of(hole: &TappedHole, (width, x, y): (i64, i64, i64)) -> Option<Self> {
        let cell = |length: Length, by: i64| {
            length.picometres_to(Rounding::HalfEven).saturating_add(by).checked_div_euclid(width)
        };
        Some(Self { work_offset: hole.work_offset, x: cell(hole.x_mm?, x)?, y: cell(hole.y_mm?, y)? })
    }
}

/// Pairs what lies at the same place; several at one place by their order.
pub(super) fn pair_by_place(pairs: &mut Pairs<'_>, old_order: &mut [u32], new_order: &mut [u32]) {
    for grid in GRIDS {
        let (old, new) = (pairs.old, pairs.new);
        let old_cell = |place: u32| old.get(place as usize).and_then(|hole| Cell::of(hole, grid));
        let new_cell = |place: u32| new.get(place as usize).and_then(|hole| Cell::of(hole, grid));
        let mut left = pairs.lone_old(old_order, |place| old_cell(place).is_some());
        let mut right = pairs.lone_new(new_order, |place| new_cell(place).is_some());
        if left.is_empty() || right.is_empty() {
            return;
        }
        sort(left, |a, b| (old_cell(a), a).cmp(&(old_cell(b), b)));
        sort(right, |a, b| (new_cell(a), a).cmp(&(new_cell(b), b)));
        while let (Some(first), Some(second)) = (left.first(), right.first()) {
            let (of_old, of_new) = (old_cell(*first), new_cell(*second));
            let here = of_old.min(of_new);
            let ends_at = |order: &[u32], is_elsewhere: &dyn Fn(u32) -> bool| {
                order.iter().position(|place| is_elsewhere(*place)).unwrap_or(order.len())
            };
            let at_left = ends_at(left, &|place| old_cell(place) != here);
            let at_right = ends_at(right, &|place| new_cell(place) != here);
            let (Some((a, rest_left)), Some((b, rest_right))) =
                (left.split_at_mut_checked(at_left), right.split_at_mut_checked(at_right))
            else {
                return;
            };
            pairs.align(a, b, true);
            (left, right) = (rest_left, rest_right);
        }
    }
}

/// A heap sort: core's own sort links a panic, and may go quadratic or take room.
fn sort(order: &mut [u32], compare: impl Fn(u32, u32) -> Ordering) {
    for root in (0..order.len() / 2).rev() {
        sift(order, root, &compare);
    }
    let mut rest = order;
    while let Some(last) = rest.len().checked_sub(1) {
        exchange(rest, 0, last);
        let Some(shorter) = rest.get_mut(..last) else { return };
        sift(shorter, 0, &compare);
        rest = shorter;
    }
}

/// Lets what stands at `root` sink below what is larger.
fn sift(heap: &mut [u32], root: usize, compare: &impl Fn(u32, u32) -> Ordering) {
    let mut parent = root;
    loop {
        let first = parent.saturating_mul(2).saturating_add(1);
        let is_less = |a: usize, b: usize| match (heap.get(a), heap.get(b)) {
            (Some(a), Some(b)) => compare(*a, *b) == Ordering::Less,
            _ => false,
        };
        let second = first.saturating_add(1);
        let child = if is_less(first, second) { second } else { first };
        if !is_less(parent, child) {
            return;
        }
        exchange(heap, parent, child);
        parent = child;
    }
}

/// `swap` without its panic.
fn exchange(order: &mut [u32], a: usize, b: usize) {
    let (Some(first), Some(second)) = (order.get(a).copied(), order.get(b).copied()) else { return };
    for (place, value) in [(a, second), (b, first)] {
        if let Some(slot) = order.get_mut(place) {
            *slot = value;
        }
    }
}

#[cfg(test)]
mod tests {
    extern crate std;
    use super::sort;
    use std::vec::Vec;

    #[test]
    fn sorts_as_the_library_does() {
        let mut state = 7_u32;
        for length in 0..200 {
            let mut numbers: Vec<u32> = (0..length)
                .map(|_| {
                    state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                    state >> 26
                })
                .collect();
            let mut wanted = numbers.clone();
            wanted.sort_unstable();
            sort(&mut numbers, |a, b| a.cmp(&b));
            assert_eq!(numbers, wanted);
        }
    }
}
