//! What a plan assumed: told behind what is doubtful.

use super::MOST_PLAN_FINDINGS;
use crate::drill::DrillSets;
use crate::finding::{Finding, FindingId, Findings, NumberKey};
use crate::length::Length;
use crate::thread::Thread;

/// One assumption, in the little room that it takes until it is told.
#[derive(Clone, Copy)]
pub(super) struct Note {
    id: FindingId,
    evidence: &'static str,
    number: Option<(NumberKey, f64)>,
    suggestion: &'static str,
}

impl Note {
    const fn of(id: FindingId, evidence: &'static str, suggestion: &'static str) -> Self {
        Self { id, evidence, number: None, suggestion }
    }

    pub(super) fn external_class(thread: &Thread) -> Self {
        Self::of(FindingId::ExternalClass, "thread", thread.medium_internal_class())
    }

    pub(super) fn class_assumed(thread: &Thread) -> Self {
        Self::of(FindingId::ClassAssumed, "thread", thread.medium_internal_class())
    }

    pub(super) fn drill_sets_assumed(thread: &Thread) -> Self {
        let inch = DrillSets::usual(thread.form()) == DrillSets::INCH;
        let sets = if inch { "number, letter and fractional" } else { "metric" };
        Self::of(FindingId::DrillSetsAssumed, "drill_sets", sets)
    }

    pub(super) const fn holder_assumed() -> Self {
        Self::of(FindingId::HolderAssumed, "holder", "rigid")
    }

    fn number_assumed(id: FindingId, number: Length) -> Self {
        let (key, evidence) = match id {
            FindingId::ChamferAssumed => (NumberKey::ChamferThreads, "chamfer_threads"),
            FindingId::PointAngleAssumed => (NumberKey::PointAngleDeg, "point_angle_deg"),
            FindingId::BottomClearanceAssumed => (NumberKey::BottomClearanceMm, "bottom_clearance_mm"),
            _ => (NumberKey::RPlaneMm, "r_plane_mm"),
        };
        Self { number: Some((key, number.to_f64())), ..Self::of(id, evidence, "") }
    }

    fn tell(&self, findings: &mut Findings<MOST_PLAN_FINDINGS>) {
        let Some(finding) = findings.next(self.id, self.evidence) else {
            return findings.push(Finding::new(self.id));
        };
        finding.suggest(self.suggestion);
        if let Some((key, value)) = self.number {
            finding.add_number(key, value);
        }
    }
}

/// The notes in their order: class, drill sets, holder, chamfer, point angle, clearance and R plane at most.
pub(super) struct Notes {
    held: [Option<Note>; 7],
}

impl Notes {
    pub(super) const fn new() -> Self {
        Self { held: [None; 7] }
    }

    pub(super) fn push(&mut self, note: Note) {
        if let Some(free) = self.held.iter_mut().find(|slot| slot.is_none()) {
            *free = Some(note);
        }
    }

    pub(super) fn tell(&self, findings: &mut Findings<MOST_PLAN_FINDINGS>) {
        for note in self.held.iter().flatten() {
            note.tell(findings);
        }
    }
}

/// Fills in what the job leaves open, with the note that says so.
pub(super) fn assume(slot: &mut Option<Length>, usual: Length, notes: &mut Notes, id: FindingId) -> Length {
    *slot.get_or_insert_with(|| {
        notes.push(Note::number_assumed(id, usual));
        usual
    })
}
