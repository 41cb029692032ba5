//! What a plan assumed: told behind what is doubtful.

use super::MOST_PLAN_FINDINGS;
use super::parts::Filled;
use crate::drill::DrillSets;
use crate::finding::{FindingId, Findings, NumberKey};
use crate::length::Length;
use crate::thread::Thread;

/// The input that was left open.
const fn evidence(note: FindingId) -> &'static str {
    match note {
        FindingId::DrillSetsAssumed => "drill_sets",
        FindingId::HolderAssumed => "holder",
        FindingId::ChamferAssumed => "chamfer_threads",
        FindingId::PointAngleAssumed => "point_angle_deg",
        FindingId::BottomClearanceAssumed => "bottom_clearance_mm",
        FindingId::RPlaneAssumed => "r_plane_mm",
        _ => "thread",
    }
}

/// What was put in, where it is a number.
fn number(note: FindingId, filled: &Filled) -> Option<(NumberKey, Length)> {
    let (key, number) = match note {
        FindingId::ChamferAssumed => (NumberKey::ChamferThreads, filled.chamfer_threads),
        FindingId::PointAngleAssumed => (NumberKey::PointAngleDeg, filled.point_angle_deg),
        FindingId::BottomClearanceAssumed => (NumberKey::BottomClearanceMm, filled.bottom_clearance_mm),
        FindingId::RPlaneAssumed => (NumberKey::RPlaneMm, filled.r_plane_mm),
        _ => return None,
    };
    number.map(|number| (key, number))
}

fn suggestion(note: FindingId, thread: &Thread) -> &'static str {
    match note {
        FindingId::ExternalClass | FindingId::ClassAssumed => thread.medium_internal_class(),
        FindingId::DrillSetsAssumed if DrillSets::usual(thread.form()) == DrillSets::INCH => {
            "number, letter and fractional"
        }
        FindingId::DrillSetsAssumed => "metric",
        FindingId::HolderAssumed => "rigid",
        _ => "",
    }
}

/// The assumptions in their order: class, drill sets, holder, chamfer, point angle, clearance and R plane at most;
/// the plan's memory is small until they are told.
#[derive(Default)]
pub(super) struct Notes {
    held: [Option<FindingId>; 7],
}

impl Notes {
    pub(super) fn push(&mut self, note: FindingId) {
        if let Some(free) = self.held.iter_mut().find(|slot| slot.is_none()) {
            *free = Some(note);
        }
    }

    #[inline(never)]
    pub(super) fn tell(&self, thread: &Thread, filled: &Filled, findings: &mut Findings<MOST_PLAN_FINDINGS>) {
        for note in self.held.iter().flatten().copied() {
            findings.write(note, evidence(note), |finding| {
                finding.suggest(suggestion(note, thread));
                if let Some((key, number)) = number(note, filled) {
                    finding.add_number(key, number.to_f64());
                }
            });
        }
    }
}

/// Fills in what the job leaves open, with the note that says so.
pub(super) fn assume(slot: &mut Option<Length>, usual: Length, notes: &mut Notes, note: FindingId) -> Length {
    *slot.get_or_insert_with(|| {
        notes.push(note);
        usual
    })
}
