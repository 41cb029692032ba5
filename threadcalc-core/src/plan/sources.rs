//! Where the numbers of a plan come from.

use super::Plan;
use super::joint::OWN_TENSILE;
use crate::drill::Tap;
use crate::form::Form;
use crate::thread::Thread;

/// A part of a plan and its source.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Source {
    /// The part, by its name in the plan's JSON.
    pub part: &'static str,
    /// Standard and clause, `common practice`, `from memory` or `derived`.
    pub source: &'static str,
}

impl Plan {
    /// The source of every number of this plan, part by part.
    ///
    /// A part may be named inside another (`spindle.time`). The speeds, the card, the lead cut and its error are of
    /// the `feed`, a taper thread's own depths of the `depths`.
    pub fn sources(&self) -> impl Iterator<Item = Source> + Clone {
        let form = self.thread.form();
        let taper = self.taper.is_some();
        let parts = [
            Some(("thread", form.standard())),
            Some(("profile", of_profile(&self.thread))),
            self.limits.map(|limits| ("limits", limits.source)),
            Some(("drill", of_drill(form, self.job.tap == Some(Tap::Form)))),
            self.drill.probable.map(|_| match self.job.oversize_mm {
                Some(_) => ("drill.probable", "the job's own oversize"),
                None => ("drill.probable", "mean oversize as tap and drill makers print it"),
            }),
            self.countersink.map(|_| ("countersink", "derived: cone down to the drilled hole")),
            Some(("feed", "derived: lead x speed, rounded half to even")),
            Some((
                "depths",
                match form {
                    Form::Rc => "ISO 7-1:1994 (gauge length)",
                    _ if taper => "ASME B1.20.1-1983 (L1), ASME B94.9-2008 (projection)",
                    _ => "common practice, chamfers DIN 2197",
                },
            )),
            self.spindle.torque.map(|_| ("spindle.torque", "kc P2 D / 8000 of a tap maker, band common practice")),
            self.spindle.power_kw.map(|_| ("spindle.power_kw", "derived: likely torque x speed")),
            self.spindle.gear.map(|_| ("spindle.gear", "derived: largest torque of a new tap, gears given")),
            Some(("spindle.time", "derived: constant acceleration")),
            self.spindle.all_holes_s.map(|_| ("spindle.all_holes_s", "derived: constant acceleration")),
            self.spindle.axis.map(|_| ("spindle.axis", "derived: lead x speed, in and out, limit given")),
            self.spindle
                .holder_travel
                .map(|_| ("spindle.holder_travel", "derived: underfeed x depth, over-travel x lead")),
            self.tap_class.map(|_| ("tap_class", "ISO 2857, from memory")),
            self.tap_limit.map(|_| match self.is_plated() && self.tap_class.is_none() {
                true => ("tap_limit", "ASME B94.9, from memory"),
                false => ("tap_limit", "tap makers' recommendations, common practice"),
            }),
            self.joint.map(|_| ("joint", "FED-STD-H28/2B, ASME B1.1 appendix B, ISO 898-1 (stress area of M)")),
            self.screw_source().map(|source| ("job.screw", source)),
            self.part_source().map(|source| ("job.part_shear_mpa", source)),
            Some(("gauges", "ISO 1502 and ASME B1.2, from memory")),
            self.formed_minor_mm.map(|_| ("formed_minor_mm", "7H of ISO 965-1 by DIN 13-50, from memory")),
            self.not_go.map(|rule| ("not_go", rule.standard)),
            Some(("words", "ISO 6983-1 and the dialect")),
        ];
        parts.into_iter().flatten().map(|(part, source)| Source { part, source })
    }

    /// Where a strength of the screw is from that the job left out.
    fn screw_source(&self) -> Option<&'static str> {
        let screw = self.job.screw?;
        match (screw.tensile_mpa, screw.shear_mpa) {
            (Some(_), Some(_)) => None,
            (Some(_), None) => Some(OWN_TENSILE),
            (None, _) => Some(screw.property_class?.starting_strength(self.thread.major_mm()).ok()?.source),
        }
    }

    /// Where the strength of the part is from that the job left to its material.
    fn part_source(&self) -> Option<&'static str> {
        let material = self.job.material.filter(|_| self.joint.is_some() && self.job.part_shear_mpa.is_none())?;
        Some(material.starting_strength().source)
    }
}

const fn of_profile(thread: &Thread) -> &'static str {
    match thread.form() {
        Form::Metric | Form::MetricJ if thread.is_wire_insert() => "ASME B18.29.2M-2005, formula from memory",
        _ if thread.is_wire_insert() => "ASME B18.29.1-2010, formula from memory",
        Form::Metric => "ISO 68-1:1998, stress area ISO 898-1",
        other => other.standard(),
    }
}

fn of_drill(form: Form, formed: bool) -> &'static str {
    match form {
        _ if formed => "D - 0.68 P x percent / 100 of tap makers, common practice",
        Form::Npt | Form::Nptf => "ASME B94.9-2008, with taper reamer common practice",
        Form::Rc => "common practice",
        Form::Metric | Form::Unified => "ISO 2306 (D - P), percent Machinery's Handbook 31",
        form if form.is_pipe() => "ISO 2306 (D - P), percent Machinery's Handbook 31",
        _ => "common practice, percent of the thread's own height",
    }
}
