//! The plan as a machinist reads it: what to make, with what, how, and what to look at.

use core::fmt;

use super::page::{Fixed, Inches, Page, Plain, Shown, Signed};
use super::{CardRow, Plan};
use crate::cycle::axis_decimals;
use crate::depth::{Hole, TapSetOn};
use crate::drill::{Alternative, Basis, Tap, WithinLimits, percent_thread};
use crate::feed::{FeedMode, Unit};
use crate::finding::{Finding, Severity};
use crate::length::{Length, Rounding};
use crate::text::placed;
use crate::thread::{Form, Hand, Thread};

/// What a plan cannot see.
pub(super) const NOT_CHECKED: [&str; 7] = [
    "tool in the pocket and its offsets",
    "part thickness and clamps",
    "chamfer and class of this tap",
    "pitch diameter: only the gauge shows it",
    "torque and spindle power",
    "holder and synchronisation of this machine",
    "coolant",
];

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

impl fmt::Display for Plan {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut page = Page::new(f);
        self.headline(&mut page)?;
        self.thread_lines(&mut page)?;
        self.limit_lines(&mut page)?;
        self.drill_lines(&mut page)?;
        self.tap_line(&mut page)?;
        self.feed_lines(&mut page)?;
        self.depth_lines(&mut page)?;
        self.cycle_lines(&mut page)?;
        self.look_lines(&mut page)?;
        self.finding_lines(&mut page)?;
        self.foot(&mut page)
    }
}

impl Plan {
    fn unit(&self) -> Unit {
        self.feed.unit()
    }

    fn depth(&self) -> Length {
        self.job.full_thread_depth_mm.unwrap_or(Length::ZERO)
    }

    fn headline(&self, page: &mut Page<'_>) -> fmt::Result {
        page.item("", format_args!("{}", self.thread))?;
        page.item(
            "   ",
            format_args!(
                "{}",
                match self.thread.hand() {
                    Hand::Right => "right hand",
                    Hand::Left => "LEFT HAND",
                }
            ),
        )?;
        let hole = self.job.hole.map_or("", Hole::name);
        page.item("   ", format_args!("{hole}, {} mm full thread", self.depth()))?;
        page.item(
            "   ",
            format_args!(
                "{}",
                match self.unit() {
                    Unit::Mm => "METRIC machine",
                    Unit::Inch => "INCH machine",
                }
            ),
        )
    }

    fn thread_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let thread = &self.thread;
        page.label("Thread")?;
        page.item("", format_args!("dia {} mm ({} in)", thread.nominal_mm(), Inches(thread.nominal_mm())))?;
        if let Some(per_inch) = thread.threads_per_inch() {
            page.item("   ", format_args!("{per_inch} threads per inch"))?;
        }
        let plural = if thread.starts() == 1 { "" } else { "s" };
        page.item("   ", format_args!("{} start{plural}", thread.starts()))?;
        page.item("   ", format_args!("{}", series_words(thread)))?;
        page.next_line()?;
        if thread.starts() == 1 {
            return length_in_both(page, "pitch = lead", thread.lead_mm());
        }
        length_in_both(page, "pitch", thread.pitch_mm())?;
        page.next_line()?;
        length_in_both(page, "LEAD ", thread.lead_mm())
    }

    fn limit_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("Limits")?;
        let Some(limits) = &self.limits else {
            return page.sentence("the limits of this class are not sourced: take them from the standard");
        };
        if let (Some(low), Some(high)) = limits.minor_mm {
            let inches = |length: Length| Fixed(length.over(Length::INCH).unwrap_or(length), limits.decimals.max(3));
            page.item("", format_args!("minor dia {} to {} mm", Fixed(low, 3), Fixed(high, 3)))?;
            match limits.native_unit {
                Unit::Inch => page.item(" ", format_args!("({} to {} in)", inches(low), inches(high)))?,
                Unit::Mm => page.item(" ", format_args!("({} to {} in)", Inches(low), Inches(high)))?,
            }
        }
        page.next_line()?;
        page.item("", format_args!("{}", limits.source))?;
        page.item(" ", format_args!("({})", limits.confidence))
    }

    fn drill_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let chosen = &self.drill.chosen;
        page.label("Drill")?;
        drill_name(page, chosen)?;
        let tap = self.job.tap.unwrap_or(Tap::Cut);
        match self.drill.basis {
            Some(basis) => {
                let percent = |basis| {
                    percent_thread(&self.thread, chosen.drill.diameter_mm(), tap, Some(basis)).unwrap_or(f64::NAN)
                };
                let asked = if basis == Basis::FiveEighthsH { " (asked)" } else { "" };
                page.item("   ", format_args!("{} % of 1.299P", Shown(percent(Basis::ThreeQuartersH), 1)))?;
                page.item(" ", format_args!("= {} % of 1.0825P{asked}", Shown(percent(Basis::FiveEighthsH), 1)))?;
            }
            None => page.item("   ", format_args!("{} % of a form tap's 0.68P", Shown(chosen.percent, 1)))?,
        }
        page.next_line()?;
        page.item("", format_args!("{}", verdict(chosen)))?;
        if let Some(left) = chosen.left_to_limit_mm.filter(|left| !left.is_negative()) {
            page.item(", ", format_args!("{} mm left to the largest minor diameter for oversize", Fixed(left, 3)))?;
        }
        for other in self.drill.alternatives.iter().flatten() {
            page.next_line()?;
            drill_name(page, other)?;
            page.column(42)?;
            page.item("", format_args!("{} %", Shown(other.percent, 1)))?;
            if other.within_limits != WithinLimits::DoesNotApply {
                page.item("  ", format_args!("{}", verdict(other)))?;
            }
            if let (WithinLimits::Yes, Some(left)) = (other.within_limits, other.left_to_limit_mm) {
                page.item(", ", format_args!("{} mm left", Fixed(left, 3)))?;
            }
        }
        Ok(())
    }

    fn tap_line(&self, page: &mut Page<'_>) -> fmt::Result {
        let chamfer = self.job.chamfer_threads.unwrap_or(Length::ZERO);
        page.label("Tap")?;
        page.item("", format_args!("{} tap for {}", self.job.tap.map_or("", Tap::name), self.thread))?;
        page.item(", ", format_args!("chamfer {chamfer} threads at most"))
    }

    fn feed_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let metres = core::f64::consts::PI * self.thread.major_mm().to_f64() * self.programmed_rpm.to_f64() / 1000.0;
        page.label("Speed")?;
        page.item("", format_args!("S{}", self.programmed_rpm))?;
        page.item(
            " ",
            format_args!("= {} m/min = {} ft/min at the major diameter", Shown(metres, 1), Shown(metres / 0.3048, 0)),
        )?;
        page.label("Feed")?;
        let unit = self.unit();
        let lead = self.thread.lead_mm();
        match self.feed.mode() {
            FeedMode::PerMinute => {
                page.item("", format_args!("{unit} per minute (G94): {}", self.feed))?;
                let over = if unit == Unit::Inch { " / 25.4" } else { "" };
                page.item("   ", format_args!("{} x {lead}{over}", self.programmed_rpm))?;
            }
            FeedMode::PerRevolution => {
                page.item("", format_args!("{unit} per revolution (G95): {}", self.feed))?;
                page.item("   ", format_args!("the lead, {lead} mm"))?;
            }
        }
        let exact = self.feed.exact().map_err(|_| fmt::Error)?;
        page.item(" ", format_args!("= {}", Fixed(exact, 6)))?;
        page.next_line()?;
        self.lead_error_line(page)?;
        self.card_lines(page)
    }

    fn lead_error_line(&self, page: &mut Page<'_>) -> fmt::Result {
        if self.lead_error == Length::ZERO {
            return page.item("", format_args!("lead cut exact: {} mm", self.lead_cut_mm));
        }
        page.item("", format_args!("lead cut {} mm", Fixed(self.lead_cut_mm, 6)))?;
        // Percent to 6 decimals are the units of the error to 8: the product itself might not fit.
        let units = self.lead_error.round_to(8, Rounding::HalfEven).map_err(|_| fmt::Error)?.units();
        let percent = Length::new(units, 1_000_000).map_err(|_| fmt::Error)?;
        let sign = if percent.is_negative() { "" } else { "+" };
        page.item(", ", format_args!("error {sign}{percent} %"))?;
        let depth = self.depth();
        if self.axial_error_mm.magnitude() < Length::parts(1, 10_000) {
            return page.item(", ", format_args!("under 0.0001 mm in {depth} mm"));
        }
        page.item(", ", format_args!("{} mm in {depth} mm", Signed(self.axial_error_mm, 4)))
    }

    fn card_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        if self.card().next().is_none() {
            page.next_line()?;
            return page.sentence("F stays when S changes: it is the lead");
        }
        page.next_line()?;
        page.item("", format_args!("S and F go together (* this plan):"))?;
        for (place, row) in placed(self.card()) {
            if place % 3 == 0 {
                page.next_line()?;
            }
            let CardRow { rpm, feed, exact, planned } = row;
            let mark = if *exact { " exact" } else { "" };
            let here = if *planned { "*" } else { "" };
            page.column([11, 34, 57].get(place % 3).copied().unwrap_or(11))?;
            page.item("", format_args!("S{rpm} {feed}{mark}{here}"))?;
        }
        Ok(())
    }

    fn depth_lines(&self, page: &mut Page<'_>) -> fmt::Result {
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
        let room = if through { "thickness + clearance" } else { "+ stop and chips" };
        depth_row(page, format_args!("{room} = DRILL FULL DIA"), Some(self.depths.full_diameter_mm))?;
        let angle = self.job.point_angle_deg.unwrap_or(Length::ZERO);
        depth_row(page, format_args!("+ point {angle} deg = DRILL POINT"), None)?;
        let point = self.depths.drill_point_mm;
        page.right(60, format_args!("{}", Shown(point, 3)))?;
        page.right(69, format_args!("{}", Shown(point / 25.4, 4)))?;
        page.right(80, format_args!("Z-{}", deeper(point, self.unit())))?;
        let r_plane = self.job.r_plane_mm.unwrap_or(Length::ZERO);
        let turns = r_plane.to_f64() / self.thread.lead_mm().to_f64();
        page.next_line()?;
        page.item("", format_args!("R plane {} mm ({} in)", Fixed(r_plane, 3), Inches(r_plane)))?;
        page.item(" ", format_args!("= {} turns above the face", Shown(turns, 1)))
    }

    fn cycle_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("Cycle")?;
        if self.cycle.words().next().is_none() {
            page.item("", format_args!("NO WORDS while these stand (see Findings):"))?;
            for (place, id) in placed(self.withheld.iter().flatten()) {
                page.item(if place == 0 { " " } else { ", " }, format_args!("{id}"))?;
            }
            return Ok(());
        }
        let name = self.job.dialect.map_or(crate::text::Text::new(), |dialect| dialect.name);
        let name = if name.is_empty() { "your dialect" } else { name.as_str() };
        page.item("", format_args!("{name}, above the hole's position:"))?;
        for block in self.cycle.blocks() {
            page.next_line()?;
            page.item("", format_args!("  {block}"))?;
        }
        page.label("After")?;
        let reasons = ["feed mode", "the next cut needs its own F", "spindle direction, the next tool is right-hand"];
        for (place, (word, reason)) in placed(self.cycle.restore().zip(reasons)) {
            let gap = if place == 0 { "" } else { ";  " };
            page.item(gap, format_args!("{word}: {reason}"))?;
        }
        if let Some((Some(low), Some(high))) = self.limits.as_ref().map(|limits| limits.minor_mm) {
            page.label("Gauge")?;
            page.item("", format_args!("plain pin {} mm enters, {} mm does not;", Fixed(low, 3), Fixed(high, 3)))?;
            page.sentence("GO by hand to full depth, NOT GO by the standard on the drawing")?;
        }
        Ok(())
    }

    fn look_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("LOOK")?;
        match self.thread.hand() {
            Hand::Left => {
                page.sentence("1 A left-hand tap in a right-hand cycle breaks on touch: its shank must say LH.")?
            }
            Hand::Right => {
                page.sentence("1 The shank must name")?;
                page.item(" ", format_args!("{};", self.thread.without_class()))?;
                let chamfer = self.job.chamfer_threads.unwrap_or(Length::ZERO);
                page.item(" ", format_args!("count the chamfer: at most {chamfer} threads."))?;
            }
        }
        page.next_line()?;
        match self.job.hole {
            Some(Hole::Through) => {
                let below = self.depths.tap_mm.to_f64() - self.depth().to_f64();
                page.item("", format_args!("2 The tap comes out {} mm below:", Shown(below, 3)))?;
                page.sentence("vice, parallels, table.")?;
            }
            _ => {
                page.item("", format_args!("2 The hole reaches {} mm:", Shown(self.depths.drill_point_mm, 2)))?;
                page.sentence("part thickness was not given, leave a floor.")?;
            }
        }
        page.next_line()?;
        if self.cycle.words().next().is_none() {
            return page.sentence("3 The control's unit and feed mode must be those named above.");
        }
        page.sentence("3 G99 leaves the tap at R: look for clamps on the way to the next hole.")
    }

    fn finding_lines(&self, page: &mut Page<'_>) -> fmt::Result {
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

    fn foot(&self, page: &mut Page<'_>) -> fmt::Result {
        page.open(" Not checked: ")?;
        for (place, what) in NOT_CHECKED.iter().enumerate() {
            page.item(if place == 0 { "" } else { "; " }, format_args!("{what}"))?;
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
    page.sentence(finding.message())?;
    for (key, value) in finding.numbers() {
        page.item(", ", format_args!("{} {}", key.name(), Plain(value)))?;
    }
    if finding.suggestion().is_empty() {
        return Ok(());
    }
    page.item("", format_args!(":"))?;
    page.sentence(finding.suggestion())
}

fn series_words(thread: &Thread) -> &'static str {
    match (thread.form(), thread.series()) {
        (Form::Metric, None) => "special",
        (Form::Metric, Some(series)) => match series.name() {
            "coarse" => "ISO 261 coarse",
            _ => "ISO 261 fine",
        },
        (Form::Unified, series) => series.map_or("UNS", |series| series.name()),
    }
}

/// `pitch = lead 127/70 mm = 1.814286 mm (1/14 in = 0.071429 in)`.
fn length_in_both(page: &mut Page<'_>, what: &str, length: Length) -> fmt::Result {
    page.item("", format_args!("{what} {length} mm"))?;
    if length.as_decimal().is_none() {
        page.item(" ", format_args!("= {} mm", Fixed(length, 6)))?;
    }
    // A fraction too odd for inches in 64 bits is shown in millimetres alone.
    let Ok(inches) = length.over(Length::INCH) else { return Ok(()) };
    if inches.as_decimal().is_some() {
        return page.item(" ", format_args!("= {inches} in"));
    }
    page.item(" ", format_args!("= {inches} in"))?;
    page.item(" ", format_args!("= {} in", Fixed(inches, 6)))
}

fn drill_name(page: &mut Page<'_>, judged: &Alternative) -> fmt::Result {
    let diameter = judged.drill.diameter_mm();
    let name = judged.drill.name();
    let is_diameter = judged.drill.set().is_none_or(|set| set == crate::drill::DrillSet::Metric);
    if is_diameter {
        return page.item("", format_args!("{} mm ({} in)", Fixed(diameter, 3), Inches(diameter)));
    }
    page.item("", format_args!("{name} = {} mm ({} in)", Fixed(diameter, 3), Inches(diameter)))
}

const fn verdict(judged: &Alternative) -> &'static str {
    match (judged.within_limits, judged.left_to_limit_mm) {
        (WithinLimits::Yes, _) => "in limits",
        (WithinLimits::No, Some(left)) if left.is_negative() => "OVER maximum",
        (WithinLimits::No, _) => "UNDER minimum",
        (WithinLimits::DoesNotApply, _) => "not judged by minor-diameter limits",
    }
}

fn depth_row(page: &mut Page<'_>, what: fmt::Arguments<'_>, depth: Option<Length>) -> fmt::Result {
    page.next_line()?;
    page.item("", what)?;
    let Some(depth) = depth else { return Ok(()) };
    page.right(60, format_args!("{}", Fixed(depth, 3)))?;
    page.right(69, format_args!("{}", Inches(depth)))
}

/// A derived depth in the program's unit, rounded to the deeper side.
fn deeper(depth_mm: f64, unit: Unit) -> Shown {
    let decimals = axis_decimals(unit);
    let (in_unit, power) = match unit {
        Unit::Mm => (depth_mm, 1e3),
        Unit::Inch => (depth_mm / 25.4, 1e4),
    };
    // A millionth of the last digit is the double's noise, not depth.
    Shown(libm::ceil(in_unit * power - 1e-6) / power, decimals)
}
