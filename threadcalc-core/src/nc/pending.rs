//! Findings on their way out: those that may still grow, and those that wait to be taken.

use super::finding::{FindingNumber, ProgramFinding, ProgramNumberKey};
use super::finding_id::ProgramFindingId;
use super::list::List;

/// How many causes may be open at once; the oldest goes out when one more comes.
const MOST_OPEN: usize = 12;

/// A finding whose holes are still being counted, by its cause.
#[derive(Clone, Copy, Debug)]
struct Open {
    finding: ProgramFinding,
    /// What makes findings one: the id and the line of what caused it.
    cause: (ProgramFindingId, u32),
    holes: u32,
}

/// Findings that may still grow.
#[derive(Clone, Debug)]
pub(super) struct OpenFindings {
    held: [Option<Open>; MOST_OPEN],
}

impl OpenFindings {
    pub(super) const fn new() -> Self {
        Self { held: [None; MOST_OPEN] }
    }

    /// Counts holes to a cause, or opens it. What had to make room is given back.
    pub(super) fn add(&mut self, finding: ProgramFinding, line: u32, holes: u32) -> Option<ProgramFinding> {
        let cause = (finding.id(), line);
        if let Some(open) = self.held.iter_mut().flatten().find(|open| open.cause == cause) {
            open.holes = open.holes.saturating_add(holes);
            return None;
        }
        let out = if self.held.iter().all(Option::is_some) { self.take() } else { None };
        if let Some(free) = self.held.iter_mut().find(|slot| slot.is_none()) {
            *free = Some(Open { finding, cause, holes });
        }
        out
    }

    /// The oldest, finished.
    pub(super) fn take(&mut self) -> Option<ProgramFinding> {
        let open = self.held.first_mut()?.take();
        self.held.rotate_left(1);
        let open = open.or_else(|| self.held.iter_mut().find_map(Option::take))?;
        let mut finding = open.finding;
        finding.set(ProgramNumberKey::AffectedHoles, FindingNumber::Double(f64::from(open.holes)));
        Some(finding)
    }
}

/// How many events of a block may wait.
const MOST_WAITING: usize = 48;

/// What waits to be taken, in order.
#[derive(Clone, Debug)]
pub(super) struct Queue<T: Copy> {
    waiting: List<T, MOST_WAITING>,
    next: usize,
    lost: u32,
}

impl<T: Copy> Queue<T> {
    pub(super) const fn new(blank: T) -> Self {
        Self { waiting: List::new(blank), next: 0, lost: 0 }
    }

    pub(super) fn push(&mut self, event: T) {
        if !self.waiting.push(event) {
            self.lost = self.lost.saturating_add(1);
        }
    }

    pub(super) fn take(&mut self) -> Option<T> {
        let event = self.waiting.as_slice().get(self.next).copied();
        match event {
            Some(_) => self.next = self.next.saturating_add(1),
            None => {
                self.waiting.clear();
                self.next = 0;
            }
        }
        event
    }

    pub(super) fn is_empty(&self) -> bool {
        self.next >= self.waiting.len()
    }

    /// Nothing waits, and nothing was lost that has not been told.
    pub(super) fn is_idle(&self) -> bool {
        self.is_empty() && self.lost == 0
    }

    /// How many had no room since this was asked last.
    pub(super) fn lost(&mut self) -> u32 {
        core::mem::take(&mut self.lost)
    }
}
