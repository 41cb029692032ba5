//! The program as it runs with the switch for block delete in its other position.

use super::apply::Context;
use super::block::Block;
use super::cut::Cuts;
use super::finding::{EvidenceKind, ProgramFinding, ProgramNumberKey as Key};
use super::finding_id::ProgramFindingId as Id;
use super::judge::Judge;
use super::state::{Act, State};
use super::values::Values;
use super::variables::Variables;
use crate::finding::Severity;
use crate::length::Length;

/// A hole of a branch: None if it taps none, and the lead, None if it is not known.
type Hole = Option<Option<Length>>;

/// The other branch, as long as it is another.
#[derive(Clone, Debug)]
pub(super) struct Shadow {
    branch: Option<(State, Variables)>,
    /// The last block with a `/`: its line and its columns.
    cause: (u32, u32, u32),
    told: bool,
}

impl Shadow {
    pub(super) const fn new() -> Self {
        Self { branch: None, cause: (0, 1, 1), told: false }
    }

    /// Whether there are two programs.
    pub(super) const fn is_open(&self) -> bool {
        self.branch.is_some()
    }

    /// A block with a `/` comes: from here on there are two programs.
    pub(super) fn begin(&mut self, judge: &Judge) {
        if self.branch.is_none() {
            self.branch = Some((judge.state.clone(), judge.variables.clone()));
        }
    }

    /// Takes a block too, unless the other position leaves it out; `mine` is the hole of the first branch.
    pub(super) fn follow(&mut self, block: &Block, skips: bool, mine: Hole, judge: &Judge) -> Option<ProgramFinding> {
        let (state, variables) = self.branch.as_mut()?;
        let is_deleted = block.block_delete().is_some();
        if is_deleted {
            let first = block.words().first();
            let end = block.words().last();
            self.cause = (block.line(), first.map_or(1, |word| word.column()), end.map_or(1, |word| word.end_column()));
            self.told = false;
        }
        let mut other = None;
        if !skips && block.is_readable() {
            let values = Values { variables, evaluates: !judge.options.leave_macros };
            let context = Context { codes: &judge.codes, dialect: &judge.dialect, values };
            let effects = state.apply(block, &context);
            if effects.act == Act::Tap && effects.repeats > 0 {
                other = Some(Cuts::of(state, &judge.dialect).first().map(|cut| cut.lead_mm));
            }
        }
        if !skips {
            variables.assign(block);
        }
        let same = *state == judge.state && *variables == judge.variables;
        if same && !is_deleted {
            self.branch = None;
        }
        if self.told {
            return None;
        }
        let (off, on) = if judge.options.block_delete { (other, mine) } else { (mine, other) };
        let finding = block_delete_finding(self.cause, off, on)?;
        self.told = true;
        Some(finding)
    }
}

/// What the other position of the switch for block delete changes at a hole.
fn block_delete_finding(cause: (u32, u32, u32), off: Hole, on: Hole) -> Option<ProgramFinding> {
    let (line, column, end_column) = cause;
    let finding = ProgramFinding::new(Id::BlockDeleteChangesResult, line, column, end_column)
        .because(EvidenceKind::BlockDelete, line);
    match (off, on) {
        (Some(off), Some(on)) if off == on => None,
        (Some(off), Some(on)) => Some(
            finding
                .severe(Severity::Error)
                .with_some(Key::LeadOffMm, off.map(Length::to_f64))
                .with_some(Key::LeadOnMm, on.map(Length::to_f64)),
        ),
        (None, None) => None,
        (off, on) => Some(
            finding
                .with_some(Key::LeadOffMm, off.flatten().map(Length::to_f64))
                .with_some(Key::LeadOnMm, on.flatten().map(Length::to_f64)),
        ),
    }
}
