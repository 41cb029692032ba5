//! The second half of the printed plan: depths, program, what to look at, findings, cautions.

use core::fmt;

use super::Plan;
use super::page::{Fixed, Inches, Page, Plain, Shown};
use crate::cycle::axis_decimals;
use crate::depth::{DepthRounding, Hole, TapSetOn, program_depth_of_derived};
use crate::feed::Unit;
use crate::finding::{Finding, FindingId, Severity};
use crate::length::{Length, Rounding};
use crate::taper_depth::TaperDepths;
use crate::text::{Text, placed};
use crate::thread::Hand;

/// Printed once, at the foot.
const CAUTIONS: [&str; 8] = [
    "The tap maker's data for this tap and the machine's manual come first.",
    "S and F belong together per minute. Change one, change both.",
    "Know how this machine stops and backs a tap out before you press start.",
    "Prove out: guards shut, above the part, single block, rapid reduced. Gauge the first hole before the second.",
    "Dry run by raising the work offset. Do not change R or the tool length over a tapped hole.",
    "A broken tap is glass-hard: goggles, and an agreed method to get it out.",
    "Pressure, gas, lifting and structural joints: the numbers are geometry; local codes and licensed practice decide.",
    "No findings means: nothing wrong in what was given. It does not mean safe.",
];

impl Plan {
    pub(super) fn depth_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        if let Some(taper) = self.taper {
            return self.taper_lines(page, &taper);
        }
        let set_on = match self.job.tap_set_on {
            Some(TapSetOn::Centre) => "its centre's tip",
            _ => "its front",
        };
        page.label("Depths")?;
        page.item("", format_args!("from the face, tap set on {set_on}"))?;
        page.right(60, format_args!("mm"))?;
        page.right(69, format_args!("in"))?;
        page.right(80, format_args!("program"))?;
        let decimals = axis_decimals(self.unit());
        let in_program = |mm: Length| mm.over(self.unit().in_mm()).and_then(|v| v.round_to(decimals, Rounding::Up));
        let chamfer = self.job.chamfer_threads.unwrap_or(Length::ZERO);
        let through = self.job.hole == Some(Hole::Through);

        depth_row(page, format_args!("full thread, drawing minimum"), Some(self.depth()))?;
        depth_row(page, format_args!("+ chamfer {chamfer} threads = TAP"), Some(self.depths.program_tap_mm))?;
        if let Ok(z) = in_program(self.depths.program_tap_mm) {
            page.right(80, format_args!("Z-{z}"))?;
        }
        if self.depths.tap_mm != self.depths.program_tap_mm {
            depth_row(page, format_args!("+ male centre = END OF TAP"), Some(self.depths.tap_mm))?;
        }
        let coasts = self.job.over_travel_turns.is_some_and(|turns| turns != Length::ZERO);
        let room = match (through, coasts) {
            (true, _) => "thickness + clearance",
            (false, true) => "+ coasting, stop and chips",
            (false, false) => "+ stop and chips",
        };
        depth_row(page, format_args!("{room} = DRILL FULL DIA"), Some(self.depths.full_diameter_mm))?;
        if let (Some(diameter), Some(sunk)) = (self.job.countersink_mm, &self.countersink) {
            let angle = self.job.countersink_angle_deg.unwrap_or(Length::ZERO);
            page.next_line()?;
            page.item("", format_args!("countersink {diameter} mm at {angle} deg takes"))?;
            page.item(" ", format_args!("{} mm of the full thread", Shown(sunk.full_thread_lost_mm, 3)))?;
        }
        self.drill_point_lines(page)
    }

    fn drill_point_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let angle = self.job.point_angle_deg.unwrap_or(Length::ZERO);
        depth_row(page, format_args!("+ point {angle} deg = DRILL POINT"), None)?;
        let point = self.depths.drill_point_mm;
        page.right(60, format_args!("{}", Shown(point, 3)))?;
        page.right(69, format_args!("{}", Shown(point / 25.4, 4)))?;
        page.right(80, format_args!("Z-{}", deeper(point, self.unit()).as_str()))?;
        let r_plane = self.job.r_plane_mm.unwrap_or(Length::ZERO);
        let turns = r_plane.to_f64() / self.thread.lead_mm().to_f64();
        page.next_line()?;
        page.item("", format_args!("R plane {} mm ({} in)", Fixed(r_plane, 3), Inches(r_plane)))?;
        page.item(" ", format_args!("= {} turns above the face", Shown(turns, 1)))
    }

    /// Size is depth: the rows of a taper hole, with turns.
    fn taper_lines(&self, page: &mut Page<'_>, taper: &TaperDepths) -> fmt::Result {
        page.label("Depths")?;
        page.item("", format_args!("from the face, tap set on its small end"))?;
        page.right(60, format_args!("mm"))?;
        page.right(69, format_args!("in"))?;
        page.right(80, format_args!("program"))?;
        let turns = |depth: Length| Shown(depth.to_f64() / self.thread.pitch_mm().to_f64(), 2);
        let hand_tight = taper.hand_tight_mm;
        depth_row(page, format_args!("hand tight, {} turns", turns(hand_tight)), Some(hand_tight))?;
        depth_row(
            page,
            format_args!("+ tap through its ring = BASIC, {} turns", turns(taper.tap_mm)),
            Some(taper.tap_mm),
        )?;
        depth_row(page, format_args!("FIRST HOLE, one turn shallow"), Some(taper.first_hole_mm))?;
        let unit = self.unit();
        if let Ok(program) = self.depths.program_tap_mm.over(unit.in_mm()) {
            page.right(80, format_args!("Z-{}", Fixed(program, axis_decimals(unit))))?;
        }
        depth_row(page, format_args!("+ trim and chips = DRILL FULL DIA"), Some(taper.full_diameter_mm))?;
        self.drill_point_lines(page)?;
        page.next_line()?;
        page.item("", format_args!("tap through its ring {} mm", Fixed(taper.projection_mm, 3)))?;
        match taper.projection_tolerance_mm {
            Some(tolerance) => page.item(" ", format_args!("+/-{} (ASME B94.9): measure yours", Fixed(tolerance, 3))),
            None => page.item(" ", format_args!("as measured")),
        }
    }

    pub(super) fn cycle_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("Cycle")?;
        if self.cycle.words().next().is_none() {
            page.item("", format_args!("NO WORDS while these stand (see Findings):"))?;
            for (place, id) in placed(self.withheld.iter().flatten()) {
                page.item(if place == 0 { " " } else { ", " }, format_args!("{id}"))?;
            }
            return Ok(());
        }
        let name = self.job.dialect.map_or(Text::new(), |dialect| dialect.name);
        let name = if name.is_empty() { "your dialect" } else { name.as_str() };
        page.item("", format_args!("{name}, above the hole's position:"))?;
        for block in self.cycle.blocks() {
            page.next_line()?;
            page.item("", format_args!("  {block}"))?;
        }
        page.label("After")?;
        for (place, (word, reason)) in placed(self.cycle.restore_reasons()) {
            let gap = if place == 0 { "" } else { ";  " };
            page.item(gap, format_args!("{word}: {reason}"))?;
        }
        Ok(())
    }

    pub(super) fn look_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("LOOK")?;
        match self.thread.hand() {
            Hand::Left => {
                page.sentence("1 A left-hand tap in a right-hand cycle breaks on touch: its shank must say LH.")?
            }
            Hand::Right => {
                page.sentence("1 The shank must name")?;
                page.item(" ", format_args!("{};", self.thread.without_class()))?;
                match self.job.chamfer_threads {
                    Some(chamfer) => page.item(" ", format_args!("count the chamfer: at most {chamfer} threads."))?,
                    None => page.phrase(" ", "measure how far it projects through its ring gauge.")?,
                }
            }
        }
        page.next_line()?;
        match self.job.hole {
            Some(Hole::Through) => {
                let below = self.findings.iter().find(|finding| finding.id() == FindingId::TapComesOut);
                match below.and_then(|finding| finding.numbers().next()) {
                    Some((_, below)) => {
                        page.item("", format_args!("2 The tap comes out {} mm below:", Shown(below, 3)))?;
                        page.sentence("vice, parallels, table.")?;
                    }
                    None => page.sentence("2 The drill comes out below: vice, parallels, table.")?,
                }
            }
            _ => {
                let point = self.depths.drill_point_mm;
                page.item("", format_args!("2 The hole reaches {} mm:", Shown(point, 2)))?;
                match self.job.part_thickness_mm {
                    Some(thickness) => {
                        let floor = thickness.to_f64() - point;
                        page.item(" ", format_args!("{} mm of floor are left.", Shown(floor, 2)))?;
                    }
                    None => page.sentence("part thickness was not given, leave a floor.")?,
                }
            }
        }
        page.next_line()?;
        if self.cycle.words().next().is_none() {
            return page.sentence("3 The control's unit and feed mode must be those named above.");
        }
        page.sentence("3 G99 leaves the tap at R: look for clamps on the way to the next hole.")
    }

    pub(super) fn finding_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("Findings")?;
        let of = |severity| self.findings.iter().filter(move |finding| finding.severity() == severity);
        if self.findings.iter().next().is_none() {
            return page.item("", format_args!("none"));
        }
        let mut first = true;
        for finding in of(Severity::Error).chain(of(Severity::Warning)) {
            if !first {
                page.next_line()?;
            }
            first = false;
            finding_sentence(page, finding)?;
        }
        // What was assumed needs its number, not its story.
        for (place, finding) in placed(of(Severity::Info)) {
            if place == 0 && !first {
                page.next_line()?;
            }
            let mark = if place == 0 { "info " } else { "" };
            page.item("; ", format_args!("{mark}{}", finding.id()))?;
            for (_, value) in finding.numbers() {
                page.item(" ", format_args!("{}", Plain(value)))?;
            }
            if !finding.suggestion().is_empty() {
                page.item(" ", format_args!("({})", finding.suggestion()))?;
            }
        }
        Ok(())
    }

    pub(super) fn foot(&self, page: &mut Page<'_>) -> fmt::Result {
        page.open(" Not checked: ")?;
        for (place, what) in placed(self.not_checked()) {
            page.item(if place == 0 { "" } else { "; " }, format_args!("{what}"))?;
        }
        page.open(" Sources: ")?;
        for (place, source) in placed(self.sources()) {
            page.item(if place == 0 { "" } else { "; " }, format_args!("{}:", source.part))?;
            page.phrase(" ", source.source)?;
        }
        page.label("Cautions")?;
        for caution in CAUTIONS {
            page.next_line()?;
            page.sentence(caution)?;
        }
        page.end_line()
    }
}

/// `ERROR drill-outside-limits: the hole is outside the minor-diameter limits, drill_mm 8.5`.
fn finding_sentence(page: &mut Page<'_>, finding: &Finding) -> fmt::Result {
    let severity = match finding.severity() {
        Severity::Error => "ERROR",
        other => other.name(),
    };
    page.item("", format_args!("{severity} {}:", finding.id()))?;
    page.phrase(" ", finding.message())?;
    for (key, value) in finding.numbers() {
        page.item(", ", format_args!("{} {}", key.name(), Plain(value)))?;
    }
    if finding.suggestion().is_empty() {
        return Ok(());
    }
    page.phrase("; ", finding.suggestion())
}

fn depth_row(page: &mut Page<'_>, what: fmt::Arguments<'_>, depth: Option<Length>) -> fmt::Result {
    page.next_line()?;
    page.item("", what)?;
    let Some(depth) = depth else { return Ok(()) };
    page.right(60, format_args!("{}", Fixed(depth, 3)))?;
    page.right(69, format_args!("{}", Inches(depth)))
}

/// A derived depth in the program's unit, rounded to the deeper side; nothing beyond any travel.
fn deeper(depth_mm: f64, unit: Unit) -> Text<24> {
    let found = program_depth_of_derived(depth_mm, unit, axis_decimals(unit), DepthRounding::Deeper);
    found.map_or(Text::new(), |depth| depth.text)
}
