//! What a plan assumed: told behind what is doubtful.

use super::MOST_PLAN_FINDINGS;
use crate::drill::DrillSets;
use crate::finding::{FindingId, Findings, NumberKey};
use crate::length::Length;
use crate::thread::Thread;

/// One assumption, in the little room that it takes until it is told.
#[derive(Clone, Copy)]
pub(super) struct Note {
    id: FindingId,
    /// NaN where nothing was put in that is a number.
    number: f64,
}

impl Note {
    pub(super) const fn of(id: FindingId) -> Self {
        Self { id, number: f64::NAN }
    }

    /// The input that was left open.
    const fn evidence(&self) -> &'static str {
        match self.id {
            FindingId::DrillSetsAssumed => "drill_sets",
            FindingId::HolderAssumed => "holder",
            FindingId::ChamferAssumed => "chamfer_threads",
            FindingId::PointAngleAssumed => "point_angle_deg",
            FindingId::BottomClearanceAssumed => "bottom_clearance_mm",
            FindingId::RPlaneAssumed => "r_plane_mm",
            _ => "thread",
        }
    }

    const fn key(&self) -> NumberKey {
        match self.id {
            FindingId::ChamferAssumed => NumberKey::ChamferThreads,
            FindingId::PointAngleAssumed => NumberKey::PointAngleDeg,
            FindingId::BottomClearanceAssumed => NumberKey::BottomClearanceMm,
            _ => NumberKey::RPlaneMm,
        }
    }

    fn suggestion(&self, thread: &Thread) -> &'static str {
        match self.id {
            FindingId::ExternalClass | FindingId::ClassAssumed => thread.medium_internal_class(),
            FindingId::DrillSetsAssumed if DrillSets::usual(thread.form()) == DrillSets::INCH => {
                "number, letter and fractional"
            }
            FindingId::DrillSetsAssumed => "metric",
            FindingId::HolderAssumed => "rigid",
            _ => "",
        }
    }

    fn tell(&self, thread: &Thread, findings: &mut Findings<MOST_PLAN_FINDINGS>) {
        findings.write(self.id, self.evidence(), |finding| {
            finding.suggest(self.suggestion(thread));
            if !self.number.is_nan() {
                finding.add_number(self.key(), self.number);
            }
        });
    }
}

/// The notes in their order: class, drill sets, holder, chamfer, point angle, clearance and R plane at most.
pub(super) struct Notes {
    held: [Note; 7],
    count: usize,
}

impl Notes {
    pub(super) const fn new() -> Self {
        Self { held: [Note::of(FindingId::ClassAssumed); 7], count: 0 }
    }

    pub(super) fn push(&mut self, note: Note) {
        if let Some(free) = self.held.get_mut(self.count) {
            *free = note;
            self.count = self.count.saturating_add(1);
        }
    }

    #[inline(never)]
    pub(super) fn tell(&self, thread: &Thread, findings: &mut Findings<MOST_PLAN_FINDINGS>) {
        for note in self.held.iter().take(self.count) {
            note.tell(thread, findings);
        }
    }
}

/// Fills in what the job leaves open, with the note that says so.
pub(super) fn assume(slot: &mut Option<Length>, usual: Length, notes: &mut Notes, id: FindingId) -> Length {
    *slot.get_or_insert_with(|| {
        notes.push(Note { id, number: usual.to_f64() });
        usual
    })
}
