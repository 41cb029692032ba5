//! Which hole of one version is which of the other, where the place does not say: by order and thread.

use super::values::{Differences, HoleValue};
use crate::nc::report::TappedHole;
use crate::thread::{Hand, Thread};

/// How many holes of each side are looked at together.
const WINDOW: usize = 64;
/// How far a window's answer is taken, unless it reaches the ends.
const STEP: usize = WINDOW / 2;
/// A hole without a partner.
pub(super) const LONE: u32 = u32::MAX;

/// What a pair is worth: one that agrees outweighs all others of a window.
const EQUAL: u16 = 2 * WINDOW as u16 + 1;
const KIND: u16 = 2;
const ANY: u16 = 1;

/// The pairs found so far: for each hole its place in the other version.
pub(super) struct Pairs<'a> {
    pub old: &'a [TappedHole],
    pub new: &'a [TappedHole],
    pub of_old: &'a mut [u32],
    pub of_new: &'a mut [u32],
}

/// The best that can be had of what follows each pair of places.
struct Scores([[u16; WINDOW + 1]; WINDOW + 1]);

impl Scores {
    fn at(&self, i: usize, j: usize) -> u16 {
        self.0.get(i).and_then(|row| row.get(j)).copied().unwrap_or(0)
    }
}

impl Pairs<'_> {
    /// Lists the old holes without a partner that are wanted.
    pub(super) fn lone_old<'o>(&self, order: &'o mut [u32], wanted: impl Fn(u32) -> bool) -> &'o mut [u32] {
        list_lone(self.of_old, order, wanted)
    }

    /// Lists the new holes without a partner that are wanted.
    pub(super) fn lone_new<'o>(&self, order: &'o mut [u32], wanted: impl Fn(u32) -> bool) -> &'o mut [u32] {
        list_lone(self.of_new, order, wanted)
    }

    /// Pairs the holes of two lists in their order, so that most agree: what agrees at both ends, then windows of 64
    /// holes a side by the table of a longest common subsequence, each taken up to its half. So it costs at most
    /// 128 comparisons a hole, whatever the lists, and is the very best where up to 64 a side are left.
    pub(super) fn align(&mut self, a: &[u32], b: &[u32], same_place: bool) {
        let (mut a, mut b) = self.join_heads(a, b, same_place);
        while let (Some((last_a, rest_a)), Some((last_b, rest_b))) = (a.split_last(), b.split_last()) {
            if self.worth(*last_a, *last_b, same_place) != EQUAL {
                break;
            }
            self.join(*last_a, *last_b);
            (a, b) = (rest_a, rest_b);
        }
        while !a.is_empty() && !b.is_empty() {
            let (i, j) = self.window(a, b, same_place);
            let (Some(rest_a), Some(rest_b)) = (a.get(i..), b.get(j..)) else { return };
            (a, b) = self.join_heads(rest_a, rest_b, same_place);
        }
    }

    /// Pairs what agrees at the beginning of two lists, and gives what is left.
    fn join_heads<'l>(&mut self, a: &'l [u32], b: &'l [u32], same_place: bool) -> (&'l [u32], &'l [u32]) {
        let (mut a, mut b) = (a, b);
        while let (Some((first_a, rest_a)), Some((first_b, rest_b))) = (a.split_first(), b.split_first()) {
            if self.worth(*first_a, *first_b, same_place) != EQUAL {
                break;
            }
            self.join(*first_a, *first_b);
            (a, b) = (rest_a, rest_b);
        }
        (a, b)
    }

    /// Pairs what is best at the beginning of two lists, and says how far it went in each.
    fn window(&mut self, a: &[u32], b: &[u32], same_place: bool) -> (usize, usize) {
        let (seen_a, seen_b) = (a.get(..WINDOW).unwrap_or(a), b.get(..WINDOW).unwrap_or(b));
        let scores = self.scores(seen_a, seen_b, same_place);
        let sees_all = seen_a.len() == a.len() && seen_b.len() == b.len();
        let (mut i, mut j) = (0_usize, 0_usize);
        while let (Some(old), Some(new)) = (seen_a.get(i).copied(), seen_b.get(j).copied()) {
            if !sees_all && i.max(j) >= STEP {
                break;
            }
            let (next_i, next_j) = (i.saturating_add(1), j.saturating_add(1));
            let worth = self.worth(old, new, same_place);
            let (without_old, without_new) = (scores.at(next_i, j), scores.at(i, next_j));
            if worth > 0 && scores.at(i, j) == scores.at(next_i, next_j).saturating_add(worth) {
                self.join(old, new);
                (i, j) = (next_i, next_j);
            } else if without_old > without_new || (without_old == without_new && self.is_old_first(old, new)) {
                i = next_i;
            } else {
                j = next_j;
            }
        }
        (i, j)
    }

    fn scores(&self, a: &[u32], b: &[u32], same_place: bool) -> Scores {
        let mut scores = Scores([[0; WINDOW + 1]; WINDOW + 1]);
        for (i, old) in (0..a.len()).zip(a).rev() {
            for (j, new) in (0..b.len()).zip(b).rev() {
                let (next_i, next_j) = (i.saturating_add(1), j.saturating_add(1));
                let paired = match self.worth(*old, *new, same_place) {
                    0 => 0,
                    worth => scores.at(next_i, next_j).saturating_add(worth),
                };
                let best = paired.max(scores.at(next_i, j)).max(scores.at(i, next_j));
                if let Some(slot) = scores.0.get_mut(i).and_then(|row| row.get_mut(j)) {
                    *slot = best;
                }
            }
        }
        scores
    }

    /// What a pair of holes is worth; 0: they are none.
    fn worth(&self, old: u32, new: u32, same_place: bool) -> u16 {
        let (Some(old), Some(new)) = (self.old.get(old as usize), self.new.get(new as usize)) else { return 0 };
        let changed = Differences::between(old, new).changed;
        if changed.without(HoleValue::Place).is_empty() {
            return EQUAL;
        }
        let is_kind = match (old.thread, new.thread) {
            (Some(old), Some(new)) => is_same_size(&old, &new),
            _ => old.lead_mm.is_some() && !changed.holds(HoleValue::Lead),
        };
        let has_place = |hole: &TappedHole| hole.x_mm.is_some() && hole.y_mm.is_some();
        match (is_kind, same_place || !has_place(old) || !has_place(new)) {
            (true, _) => KIND,
            (false, true) => ANY,
            (false, false) => 0,
        }
    }

    /// Which of two holes goes without a partner, where it makes no difference: that of the smaller values, so that
    /// the answer does not depend on which version is the old one.
    fn is_old_first(&self, old: u32, new: u32) -> bool {
        let key = |hole: &TappedHole| {
            let hand = hole.hand.map(Hand::number);
            (hole.line, hole.number, hole.lead_mm, hole.depth_mm, hole.speed_rpm, hole.tool, hole.count, hand)
        };
        let (old, new) = (self.old.get(old as usize), self.new.get(new as usize));
        old.map(key) < new.map(key)
    }

    fn join(&mut self, old: u32, new: u32) {
        if let (Some(of_old), Some(of_new)) = (self.of_old.get_mut(old as usize), self.of_new.get_mut(new as usize)) {
            (*of_old, *of_new) = (new, old);
        }
    }
}

/// The class and the hand of a thread may change with the drawing.
fn is_same_size(a: &Thread, b: &Thread) -> bool {
    let size = |thread: &Thread| (thread.form(), thread.major_mm(), thread.pitch_mm(), thread.starts());
    size(a) == size(b)
}

/// Lists the places without a partner that are wanted, in their order.
fn list_lone<'o>(partners: &[u32], order: &'o mut [u32], wanted: impl Fn(u32) -> bool) -> &'o mut [u32] {
    let lone = (0..LONE).zip(partners).filter(|(place, partner)| **partner == LONE && wanted(*place));
    let mut count = 0_usize;
    for (slot, (place, _)) in order.iter_mut().zip(lone) {
        *slot = place;
        count = count.saturating_add(1);
    }
    order.get_mut(..count).unwrap_or_default()
}
