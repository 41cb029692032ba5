//! From what was read to the answer: units, contradictions, findings.

use super::values::{Slot, System};
use super::{HoleNote, MOST_FINDINGS, Plating, Sides};
use crate::error::{Code, Error, Field};
use crate::feed::Unit;
use crate::finding::{Finding, FindingId, Findings, NumberKey};
use crate::form::Form;
use crate::length::{Length, Ratio};
use crate::thread::Thread;

/// The most unread runs that are listed; the rest is counted.
const MOST_UNREAD: usize = 4;

/// What has been read of a note.
#[derive(Default)]
pub(super) struct Draft {
    pub thread: Option<(Thread, usize, usize)>,
    pub count: Option<u32>,
    pub thread_depth: Slot,
    pub thread_through: Option<usize>,
    pub drill: Slot,
    pub drill_depth: Slot,
    pub drill_through: Option<usize>,
    pub countersink: Slot,
    pub countersink_angle: Option<Ratio>,
    pub counterbore: Slot,
    pub counterbore_depth: Slot,
    pub spotface: bool,
    pub countersunk: bool,
    pub counterbored: bool,
    pub bolt_circle: Slot,
    pub equally_spaced: bool,
    pub sides: Option<Sides>,
    pub plating: Option<Plating>,
    /// The depth without a word for depth, behind the thread.
    pub depth_read: Option<usize>,
    unread: [Option<(usize, usize)>; MOST_UNREAD],
    more_unread: u32,
    /// Whether the last run can grow.
    unread_open: bool,
}

impl Draft {
    /// Notes that a piece was not understood; pieces with nothing understood between them are one run.
    pub fn leave_unread(&mut self, start: usize, end: usize) {
        let open = self.unread_open;
        self.unread_open = true;
        // Read again after a reading that led nowhere.
        if self.unread.iter().flatten().any(|(known, _)| *known == start) {
            return;
        }
        if open {
            if self.more_unread == 0 {
                if let Some((_, last_end)) = self.unread.iter_mut().rev().flatten().next() {
                    *last_end = end;
                }
            }
            return;
        }
        match self.unread.iter_mut().find(|slot| slot.is_none()) {
            Some(free) => *free = Some((start, end)),
            None => self.more_unread = self.more_unread.saturating_add(1),
        }
    }

    /// Whether the text just before was not understood.
    pub const fn unread_is_open(&self) -> bool {
        self.unread_open
    }

    /// What follows was understood: an unread run ends before it.
    pub fn close_unread(&mut self) {
        self.unread_open = false;
    }

    fn has_feature(&self) -> bool {
        self.thread.is_some() || self.drill.is_set() || self.countersunk || self.counterbored
    }

    /// The note, with offsets that `origin` brings back to the text.
    pub fn finish(&self, unit: Option<Unit>, first: usize, origin: impl Fn(usize) -> usize) -> Result<HoleNote, Error> {
        if !self.has_feature() {
            return Err(Error::new(Code::Unreadable, Field::Note)
                .at_byte(first)
                .hint_text("a hole note such as 4X M8x1.25-6H 16 DEEP or 1/4-20 UNC-2B THRU"));
        }
        self.check_through()?;
        let system = System { given: unit, of_thread: self.thread.map(|(thread, ..)| unit_of(thread.form())) };
        let thread_at = self.thread.map(|(_, start, end)| (origin(start), origin(end)));
        let mut findings = Findings::new();
        if let Some((thread, ..)) = &self.thread {
            findings.extend(&thread.findings());
        }
        let lengths = self.lengths(system)?;
        self.push_findings(&mut findings, system, &lengths, &origin)?;
        Ok(HoleNote {
            count: self.count,
            thread: self.thread.map(|(thread, ..)| thread),
            thread_at: thread_at.map_or(0, |(start, _)| start),
            thread_length: thread_at.map_or(0, |(start, end)| end.saturating_sub(start)),
            thread_depth_mm: lengths.thread_depth,
            thread_through: self.thread_through.is_some(),
            drill_mm: lengths.drill,
            drill_depth_mm: lengths.drill_depth,
            drill_through: self.drill_through.is_some(),
            has_countersink: self.countersunk,
            countersink_mm: lengths.countersink,
            countersink_angle_deg: self.countersink_angle,
            has_counterbore: self.counterbored,
            counterbore_mm: lengths.counterbore,
            counterbore_depth_mm: lengths.counterbore_depth,
            is_spotface: self.spotface,
            sides: self.sides,
            plating: self.plating,
            equally_spaced: self.equally_spaced,
            bolt_circle_mm: lengths.bolt_circle,
            findings,
        })
    }

    /// A thread is through or has a depth, and so is a drilled hole; a thread 16 deep in a hole that
    /// is through is both.
    fn check_through(&self) -> Result<(), Error> {
        for (through, depth, field) in [
            (self.thread_through, self.thread_depth, Field::ThreadDepth),
            (self.drill_through, self.drill_depth, Field::DrillDepth),
        ] {
            if let (Some(through), Some(depth)) = (through, depth.at()) {
                return Err(Error::new(Code::Contradiction, field)
                    .at_byte(through.max(depth))
                    .hint_text("through or a depth, not both"));
            }
        }
        Ok(())
    }

    fn slots(&self) -> [(Slot, Field); 7] {
        [
            (self.thread_depth, Field::ThreadDepth),
            (self.drill, Field::Drill),
            (self.drill_depth, Field::DrillDepth),
            (self.countersink, Field::Countersink),
            (self.counterbore, Field::Counterbore),
            (self.counterbore_depth, Field::CounterboreDepth),
            (self.bolt_circle, Field::BoltCircle),
        ]
    }

    fn lengths(&self, system: System) -> Result<Lengths, Error> {
        let [thread_depth, drill, drill_depth, countersink, counterbore, counterbore_depth, bolt_circle] =
            self.slots().map(|(slot, field)| slot.value(system, field));
        Ok(Lengths {
            thread_depth: thread_depth?,
            drill: drill?,
            drill_depth: drill_depth?,
            countersink: countersink?,
            counterbore: counterbore?,
            counterbore_depth: counterbore_depth?,
            bolt_circle: bolt_circle?,
        })
    }

    fn push_findings(
        &self,
        findings: &mut Findings<MOST_FINDINGS>,
        system: System,
        lengths: &Lengths,
        origin: impl Fn(usize) -> usize,
    ) -> Result<(), Error> {
        let mut assumed = None;
        for measured in self.slots().iter().flat_map(|(slot, _)| slot.measured()) {
            let (unit, is_assumed) = measured.unit_in(system)?;
            if is_assumed && assumed.is_none_or(|(_, at)| measured.at < at) {
                assumed = Some((unit, measured.at));
            }
        }
        if let Some((unit, at)) = assumed {
            findings.push(
                Finding::new(FindingId::UnitAssumed)
                    .with_evidence("unit")
                    .with_number(NumberKey::Byte, origin(at) as f64)
                    .with_suggestion(unit.name()),
            );
        }
        if let Some(finding) = self.thread.and_then(|(thread, ..)| does_not_fit(&thread, lengths)) {
            findings.push(finding);
        }
        if let (Some(at), Some(depth)) = (self.depth_read, lengths.thread_depth) {
            findings.push(
                Finding::new(FindingId::DepthRead)
                    .with_evidence("note")
                    .with_number(NumberKey::Byte, origin(at) as f64)
                    .with_number(NumberKey::DepthMm, depth.to_f64()),
            );
        }
        for (start, end) in self.unread.iter().flatten() {
            let (start, end) = (origin(*start), origin(*end));
            findings.push(
                Finding::new(FindingId::NotRead)
                    .with_evidence("note")
                    .with_number(NumberKey::Byte, start as f64)
                    .with_number(NumberKey::Length, end.saturating_sub(start) as f64),
            );
        }
        if self.more_unread > 0 {
            findings
                .push(Finding::new(FindingId::MoreFindings).with_number(NumberKey::Count, f64::from(self.more_unread)));
        }
        Ok(())
    }
}

/// The doubt that the drilled hole and the thread of one note are of one hole.
fn does_not_fit(thread: &Thread, lengths: &Lengths) -> Option<Finding> {
    let finding = Finding::new(FindingId::HoleDoesNotFit).with_evidence("note");
    if let Some(drill) = lengths.drill.filter(|drill| *drill >= thread.major_mm()) {
        return Some(
            finding
                .with_number(NumberKey::DrillMm, drill.to_f64())
                .with_suggestion("it leaves no thread: is it the clearance hole of another part?"),
        );
    }
    let (drilled, thread) = (lengths.drill_depth?, lengths.thread_depth?);
    let shallow = finding
        .with_number(NumberKey::DepthMm, drilled.to_f64())
        .with_number(NumberKey::FullThreadMm, thread.to_f64())
        .with_suggestion("the thread is deeper than its hole");
    (drilled < thread).then_some(shallow)
}

/// The lengths of a note in millimetres.
struct Lengths {
    thread_depth: Option<Length>,
    drill: Option<Length>,
    drill_depth: Option<Length>,
    countersink: Option<Length>,
    counterbore: Option<Length>,
    counterbore_depth: Option<Length>,
    bolt_circle: Option<Length>,
}

/// The unit of the standards of a form.
const fn unit_of(form: Form) -> Unit {
    // ISO 228-1 and ISO 7-1 count threads per inch and give millimetres.
    if form.is_inch() && !form.is_whitworth_pipe() { Unit::Inch } else { Unit::Mm }
}
