//! A check with all that it gives, as the doors hand it over.

use threadcalc_core::nc::{Event, ProgramCheck, ProgramFinding, Report, TappedHole, Unchecked};

pub struct Whole {
    tapped_holes: Vec<TappedHole>,
    pub findings: Vec<ProgramFinding>,
    not_checked: Vec<Unchecked>,
}

impl Whole {
    pub fn of(mut check: ProgramCheck<'_>) -> Self {
        let (mut tapped_holes, mut findings) = (Vec::new(), Vec::new());
        for event in check.by_ref() {
            match event {
                Event::Hole(hole) => tapped_holes.push(hole),
                Event::Finding(finding) => findings.push(finding),
            }
        }
        findings.sort_by_key(ProgramFinding::place);
        Self { tapped_holes, findings, not_checked: check.not_checked().collect() }
    }

    pub fn report(&self) -> Report<'_> {
        let Self { tapped_holes, findings, not_checked } = self;
        Report { tapped_holes, findings, not_checked }
    }
}
