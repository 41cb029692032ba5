//! The second half of the printed plan: depths, program, what to look at, findings, cautions.

use core::fmt;

use super::page::{Fixed, Inches, Measure, Page, Shown, Words};
use super::{Plan, Source};
use crate::depth::{DepthRounding, Hole, TapSetOn, program_depth, program_depth_of_derived};
use crate::dialect::ReturnTo;
use crate::finding::{Finding, FindingId, Severity};
use crate::length::Length;
use crate::tap::IsoTap;
use crate::taper_depth::TaperDepths;
use crate::text::Plain;
use crate::text::{Text, placed};
use crate::thread::Hand;

/// Printed once, at the foot; one line each where words allow.
const CAUTIONS: [&str; 9] = [
    "The tap maker's data for this tap and the machine's manual come first.",
    "S and F belong together per minute. Change one, change both.",
    "Know how this machine stops and backs a tap out before pressing start.",
    "Prove out: guards shut, above the part, single block, rapid reduced.",
    "Gauge the first hole before the second.",
    "Dry run by raising the work offset. Do not change R or the tool length over a tapped hole.",
    "A broken tap is glass-hard: goggles, and an agreed way to get it out.",
    "Pressure, gas, lifting and structural joints: the numbers are geometry; local codes and licensed practice decide.",
    "No findings means nothing wrong in what was given, not that it is safe.",
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
        depth_head(page, set_on)?;
        let chamfer = self.job.chamfer_threads.unwrap_or(Length::ZERO);
        depth_row(page, format_args!("full thread, drawing minimum"), Some(self.depth()))?;
        // A centre that the tap is set on goes down with it.
        let centre = self.job.tap_centre_mm.filter(|_| self.job.tap_set_on == Some(TapSetOn::Centre));
        let tap = Some(self.depths.program_tap_mm);
        match centre.filter(|centre| centre.is_positive()) {
            Some(centre) => {
                depth_row(page, format_args!("+ chamfer {chamfer} threads, centre {centre} mm = TAP"), tap)?
            }
            None => depth_row(page, format_args!("+ chamfer {chamfer} threads = TAP"), tap)?,
        }
        self.program_tap(page)?;
        if self.depths.tap_mm != self.depths.program_tap_mm {
            depth_row(page, format_args!("+ male centre = END OF TAP"), Some(self.depths.tap_mm))?;
        }
        let through = self.job.hole == Some(Hole::Through);
        let coasts = self.job.over_travel_turns.is_some_and(|turns| turns != Length::ZERO);
        let room = match (through, coasts) {
            (true, _) => "thickness + clearance",
            (false, true) => "+ coasting, stop and chips",
            (false, false) => "+ stop and chips",
        };
        let what = if self.job.drill_depth_mm.is_some() { "full dia wanted" } else { "DRILL FULL DIA" };
        depth_row(page, format_args!("{room} = {what}"), Some(self.depths.full_diameter_mm))?;
        self.drill_point_row(page)?;
        self.r_plane_row(page)?;
        let (Some(diameter), Some(sunk)) = (self.job.countersink_mm, &self.countersink) else { return Ok(()) };
        let angle = self.job.countersink_angle_deg.unwrap_or(Length::ZERO);
        page.next_line()?;
        page.item("", format_args!("countersink {diameter} mm at {angle} deg takes"))?;
        page.item(" ", format_args!("{} mm of the full thread", Shown(sunk.full_thread_lost_mm, 3)))
    }

    /// How the tap's depth stands in the program: to the dialect's decimals, as the cycle has it.
    fn program_tap(&self, page: &mut Page<'_>) -> fmt::Result {
        match program_depth(self.depths.program_tap_mm, self.unit(), self.axis_decimals(), DepthRounding::Deeper) {
            Ok(depth) => page.right(80, format_args!("Z-{}", Fixed(depth.value, self.axis_decimals()))),
            Err(_) => Ok(()),
        }
    }

    fn axis_decimals(&self) -> u8 {
        self.job.axis_decimals(self.unit())
    }

    fn drill_point_row(&self, page: &mut Page<'_>) -> fmt::Result {
        // What is drilled already needs no program.
        if let Some(drilled) = self.job.drill_depth_mm {
            return depth_row(page, format_args!("DRILLED ALREADY, FULL DIA"), Some(drilled));
        }
        let angle = self.job.point_angle_deg.unwrap_or(Length::ZERO);
        depth_row(page, format_args!("+ point {angle} deg = DRILL POINT"), None)?;
        let point = self.depths.drill_point_mm;
        page.right(60, format_args!("{}", Shown(point, 3)))?;
        page.right(69, format_args!("{}", Shown(point / 25.4, 4)))?;
        let decimals = self.axis_decimals();
        match program_depth_of_derived(point, self.unit(), decimals, DepthRounding::Deeper) {
            Ok(depth) => page.right(80, format_args!("Z-{}", Fixed(depth.value, decimals))),
            // Beyond any travel.
            Err(_) => Ok(()),
        }
    }

    fn r_plane_row(&self, page: &mut Page<'_>) -> fmt::Result {
        let r_plane = self.job.r_plane_mm.unwrap_or(Length::ZERO);
        let turns = r_plane.to_f64() / self.thread.lead_mm().to_f64();
        depth_row(page, format_args!("R plane above the face, {} turns", Shown(turns, 1)), Some(r_plane))?;
        match program_depth(r_plane, self.unit(), self.axis_decimals(), DepthRounding::Deeper) {
            Ok(depth) => page.right(80, format_args!("R{}", Fixed(depth.value, self.axis_decimals()))),
            Err(_) => Ok(()),
        }
    }

    /// Size is depth: the rows of a taper hole, with turns.
    fn taper_lines(&self, page: &mut Page<'_>, taper: &TaperDepths) -> fmt::Result {
        depth_head(page, "its small end")?;
        let turns = |depth: Length| Shown(depth.to_f64() / self.thread.pitch_mm().to_f64(), 2);
        let hand_tight = taper.hand_tight_mm;
        depth_row(page, format_args!("hand tight, {} turns", turns(hand_tight)), Some(hand_tight))?;
        depth_row(
            page,
            format_args!("+ tap through its ring = BASIC, {} turns", turns(taper.tap_mm)),
            Some(taper.tap_mm),
        )?;
        depth_row(page, format_args!("FIRST HOLE, one turn shallow"), Some(taper.first_hole_mm))?;
        self.program_tap(page)?;
        depth_row(page, format_args!("+ trim and chips = DRILL FULL DIA"), Some(taper.full_diameter_mm))?;
        self.drill_point_row(page)?;
        self.r_plane_row(page)?;
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
            if self.findings.has_error() {
                return page.sentence("NO WORDS while STOP above stands");
            }
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
        self.look_at_the_tap(page)?;
        page.next_line()?;
        match self.job.hole {
            Some(Hole::Through) => self.look_below(page)?,
            _ => self.look_at_the_floor(page)?,
        }
        page.next_line()?;
        if self.findings.has_error() {
            return page.sentence("3 Mend what STOP names before anything is cut.");
        }
        if self.cycle.words().next().is_none() {
            return page.sentence("3 The control's unit and feed mode must be those named above.");
        }
        let (r_plane, initial) = (
            "3 The tap stops at R: look for clamps on the way to the next hole.",
            "3 The cycle returns to the height it began at: begin above every clamp.",
        );
        page.sentence(if self.job.return_to == Some(ReturnTo::Initial) { initial } else { r_plane })
    }

    fn look_at_the_tap(&self, page: &mut Page<'_>) -> fmt::Result {
        let thread = self.thread.without_class();
        match self.thread.hand() {
            Hand::Left => page.sentence("1 The wrong hand breaks on touch: its shank must say LH:")?,
            Hand::Right => page.sentence("1 The shank must say")?,
        }
        page.flow(" ", format_args!("{thread}"))?;
        match (self.tap_class, self.thread.tolerance_class()) {
            (Some(IsoTap { class: Some(class), .. }), _) if self.is_plated() => {
                page.flow(", ", format_args!("ISO{class} for the plating"))?
            }
            (Some(IsoTap { class: Some(class), .. }), Some(written)) => match self.tap_limit {
                Some(limit) => page.flow(", ", format_args!("{}, ISO{class} or {limit}", written.as_str()))?,
                None => page.flow(", ", format_args!("{} or ISO{class}", written.as_str()))?,
            },
            (Some(_), _) if self.is_plated() => page.phrase(", ", "and its special size")?,
            _ => {}
        }
        match (self.tap_limit, self.tap_class) {
            (Some(limit), None) if self.is_plated() => {
                page.flow(", ", format_args!("{limit} or larger for the plating"))?
            }
            (Some(limit), Some(_)) if self.is_plated() => page.flow(", ", format_args!("or {limit}"))?,
            _ => {}
        }
        match self.job.chamfer_threads {
            Some(chamfer) => page.flow("; ", format_args!("count the chamfer: at most {chamfer} threads.")),
            None => page.phrase("; ", "measure how far it projects through its ring gauge."),
        }
    }

    pub(super) fn is_plated(&self) -> bool {
        self.job.coating_um.is_some_and(Length::is_positive)
    }

    fn look_below(&self, page: &mut Page<'_>) -> fmt::Result {
        let below = self.findings.iter().find(|finding| finding.id() == FindingId::TapComesOut);
        match below.and_then(|finding| finding.numbers().next()) {
            Some((_, below)) => {
                page.item("", format_args!("2 The tap comes out {} mm below:", Plain(below)))?;
                page.sentence("vice, parallels, table.")
            }
            None => page.sentence("2 The drill comes out below: vice, parallels, table."),
        }
    }

    fn look_at_the_floor(&self, page: &mut Page<'_>) -> fmt::Result {
        if let Some(drilled) = self.job.drill_depth_mm {
            page.item("", format_args!("2 Measure the drilled hole, {drilled} mm to the end of full diameter,"))?;
            return page.sentence("and blow the chips out.");
        }
        let point = self.depths.drill_point_mm;
        page.item("", format_args!("2 The hole reaches {} mm:", Shown(point, 2)))?;
        let floor = self.job.part_thickness_mm.map(|thickness| thickness.to_f64() - point);
        match floor {
            Some(floor) if floor <= 0.0 => page.sentence("the point comes through the part."),
            Some(floor) => page.item(" ", format_args!("{} mm of floor are left.", Shown(floor, 2))),
            None => page.sentence("part thickness was not given, leave a floor."),
        }
    }

    pub(super) fn finding_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let of = |severity| self.findings.iter().filter(move |finding| finding.severity() == severity);
        let assumed = |finding: &&Finding| finding.id().name().ends_with("-assumed");
        let told = of(Severity::Error).chain(of(Severity::Warning)).chain(of(Severity::Info).filter(|f| !assumed(f)));
        page.label("Findings")?;
        let mut first = true;
        for finding in told {
            if !first {
                page.next_line()?;
            }
            first = false;
            finding_sentence(page, finding)?;
        }
        if first {
            page.item("", format_args!("none"))?;
        }
        for (place, finding) in placed(of(Severity::Info).filter(assumed)) {
            if place == 0 {
                page.label("Assumed")?;
            }
            assumption(page, if place == 0 { "" } else { "; " }, finding)?;
        }
        Ok(())
    }

    pub(super) fn foot(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("Cautions")?;
        for (place, caution) in placed(CAUTIONS.into_iter()) {
            if place > 0 {
                page.next_line()?;
            }
            page.sentence(caution)?;
        }
        page.open(" Not checked: ")?;
        for (place, what) in placed(self.not_checked()) {
            page.item(if place == 0 { "" } else { "; " }, format_args!("{what}"))?;
        }
        page.open(" Sources: ")?;
        let mut gap = "";
        for (place, source) in placed(self.sources()) {
            let same = |other: &Source| other.source == source.source;
            if self.sources().take(place).any(|other| same(&other)) {
                continue;
            }
            for (place, Source { part, .. }) in placed(self.sources().filter(same)) {
                // A part inside a part is known by its own name, and none needs its unit here.
                let inner = ["spindle.", "drill.", "job."].iter().find_map(|outer| part.strip_prefix(outer));
                let part = inner.unwrap_or(part);
                let bare = ["_mm", "_kw", "_s"].iter().find_map(|unit| part.strip_suffix(unit));
                let part = bare.unwrap_or(part);
                page.item(if place == 0 { gap } else { ", " }, format_args!("{}", Words(part)))?;
            }
            gap = "; ";
            page.phrase(" ", source.source)?;
            if let Some(limits) = self.limits.filter(|_| source.part == "limits") {
                page.item(" ", format_args!("({})", limits.confidence))?;
            }
        }
        page.end_line()
    }
}

/// `ERROR drill-outside-limits: the hole is outside the minor-diameter limits, drill 8.5 mm`; of an info its
/// numbers and its advice say what it is, if it has any.
fn finding_sentence(page: &mut Page<'_>, finding: &Finding) -> fmt::Result {
    let severity = match finding.severity() {
        Severity::Error => "ERROR",
        other => other.name(),
    };
    page.item("", format_args!("{severity} {}:", finding.id()))?;
    let bare = finding.numbers().next().is_none() && finding.suggestion().is_empty();
    let mut gap = " ";
    if finding.severity() != Severity::Info || bare {
        page.phrase(gap, finding.message())?;
        gap = ", ";
    }
    for (key, value) in finding.numbers() {
        page.item(gap, format_args!("{}", Measure(key, value)))?;
        gap = ", ";
    }
    // The suggestion may bring its own separator.
    let suggestion = finding.suggestion().strip_prefix("; ").unwrap_or(finding.suggestion());
    if suggestion.is_empty() {
        return Ok(());
    }
    page.phrase(if gap == " " { gap } else { "; " }, suggestion)
}

/// `point angle 118 deg`, `holder rigid`: what was assumed, without its story.
fn assumption(page: &mut Page<'_>, gap: &str, finding: &Finding) -> fmt::Result {
    if finding.numbers().next().is_none() {
        let name = finding.id().name();
        let what = name.strip_suffix("-assumed").unwrap_or(name);
        page.item(gap, format_args!("{}", Words(what)))?;
        return page.item(" ", format_args!("{}", finding.suggestion()));
    }
    for (place, (key, value)) in placed(finding.numbers()) {
        page.item(if place == 0 { gap } else { ", " }, format_args!("{}", Measure(key, value)))?;
    }
    if finding.suggestion().is_empty() {
        return Ok(());
    }
    page.item(" ", format_args!("({})", finding.suggestion()))
}

fn depth_head(page: &mut Page<'_>, set_on: &str) -> fmt::Result {
    page.label("Depths")?;
    page.item("", format_args!("from the face, tap set on {set_on}"))?;
    page.right(60, format_args!("mm"))?;
    page.right(69, format_args!("in"))?;
    page.right(80, format_args!("program"))
}

fn depth_row(page: &mut Page<'_>, what: fmt::Arguments<'_>, depth: Option<Length>) -> fmt::Result {
    page.next_line()?;
    page.item("", what)?;
    let Some(depth) = depth else { return Ok(()) };
    page.right(60, format_args!("{}", Fixed(depth, 3)))?;
    page.right(69, format_args!("{}", Inches(depth)))
}
