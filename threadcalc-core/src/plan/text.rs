//! The plan as a machinist reads it; this half: thread, limits, drill, tap, speed and feed.

use core::fmt;

use super::page::{Fixed, Inches, Page, Shown, Signed, Words};
use super::{CardRow, Plan};
use crate::depth::Hole;
use crate::drill::{Alternative, Basis, Tap, WithinLimits, percent_thread};
use crate::feed::{FeedMode, Unit};
use crate::form::Form;
use crate::length::{Length, Rounding};
use crate::text::placed;
use crate::thread::{Hand, Series, Thread};

impl fmt::Display for Plan {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut page = Page::new(f);
        self.headline(&mut page)?;
        self.thread_lines(&mut page)?;
        self.limit_lines(&mut page)?;
        self.drill_lines(&mut page)?;
        self.tap_lines(&mut page)?;
        self.speed_lines(&mut page)?;
        self.feed_lines(&mut page)?;
        self.depth_lines(&mut page)?;
        self.cycle_lines(&mut page)?;
        self.gauge_lines(&mut page)?;
        self.joint_lines(&mut page)?;
        self.look_lines(&mut page)?;
        self.finding_lines(&mut page)?;
        self.foot(&mut page)
    }
}

impl Plan {
    pub(super) fn unit(&self) -> Unit {
        self.feed.unit()
    }

    pub(super) fn depth(&self) -> Length {
        super::hole::depth_in_metal(&self.job, &self.depths)
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
        match self.job.full_thread_depth_mm {
            Some(depth) => page.item("   ", format_args!("{hole}, {depth} mm full thread"))?,
            None => page.item("   ", format_args!("{hole}, taper 1:16"))?,
        }
        if let Some(material) = self.job.material {
            page.item("   ", format_args!("{}", Words(material.name())))?;
        }
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
        page.item("", format_args!("dia {} mm ({} in)", thread.major_mm(), Inches(thread.major_mm())))?;
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
            return page.sentence(if self.taper.is_some() {
                "a taper thread's size is its depth: see Depths and Gauge"
            } else {
                "the limits of this class are not sourced: take them from the standard"
            });
        };
        // The standard's own decimals where it is in inches, four where it is not.
        let decimals = if limits.native_unit == Unit::Inch { limits.decimals } else { 4 };
        let inches = |length: Length| Fixed(length.over(Length::INCH).unwrap_or(length), decimals);
        for (what, range) in [("pitch dia", limits.pitch_diameter_mm), ("minor dia", limits.minor_mm)] {
            if let (Some(low), Some(high)) = range {
                page.item("", format_args!("{what} {} to {} mm", Fixed(low, 3), Fixed(high, 3)))?;
                page.item(" ", format_args!("({} to {} in)", inches(low), inches(high)))?;
                page.next_line()?;
            }
        }
        page.item("", format_args!("{}", limits.source))?;
        page.item(" ", format_args!("({})", limits.confidence))?;
        if self.job.tap == Some(Tap::Form) {
            page.next_line()?;
            page.sentence("of a cut thread: a form tap makes its own minor diameter, do not test it by these")?;
        }
        Ok(())
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
            None if tap == Tap::Form => {
                page.item("   ", format_args!("{} % of a form tap's 0.68P", Shown(chosen.percent, 1)))?;
            }
            None if self.taper.is_some() => {
                let reamed = self.job.taper_reamer == Some(true);
                page.item("   ", format_args!("{}", if reamed { "then the taper reamer" } else { "no taper reamer" }))?;
            }
            None => page.item("   ", format_args!("{} % of the thread's own height", Shown(chosen.percent, 1)))?,
        }
        if chosen.percent.is_finite() {
            page.next_line()?;
            page.item("", format_args!("{}", verdict(chosen)))?;
        }
        if let Some(left) = chosen.left_to_limit_mm.filter(|left| !left.is_negative()) {
            page.item(", ", format_args!("{} mm left to the largest minor diameter for oversize", Fixed(left, 3)))?;
        }
        for other in self.drill.alternatives.iter().flatten() {
            page.next_line()?;
            drill_name(page, other)?;
            if other.percent.is_finite() {
                page.column(42)?;
                page.item("", format_args!("{} %", Shown(other.percent, 1)))?;
            }
            if other.within_limits != WithinLimits::DoesNotApply {
                page.item("  ", format_args!("{}", verdict(other)))?;
            }
            if let (WithinLimits::Yes, Some(left)) = (other.within_limits, other.left_to_limit_mm) {
                page.item(", ", format_args!("{} mm left", Fixed(left, 3)))?;
            }
        }
        Ok(())
    }

    fn feed_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("Feed")?;
        let unit = self.unit();
        let lead = self.thread.lead_mm();
        let under = self.job.underfeed_percent.filter(|percent| *percent != Length::ZERO);
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
        if let Some(percent) = under {
            page.item(" ", format_args!("less {percent} % under-feed"))?;
        }
        let exact = self.feed.exact().map_err(|_| fmt::Error)?;
        page.item(" ", format_args!("= {}", Fixed(exact, 6)))?;
        page.next_line()?;
        self.lead_error_line(page)?;
        self.card_lines(page)
    }

    fn lead_error_line(&self, page: &mut Page<'_>) -> fmt::Result {
        let under = self.job.underfeed_percent.is_some_and(|percent| percent != Length::ZERO);
        let what = if under { "lead fed" } else { "lead cut" };
        if self.lead_error == Length::ZERO {
            return page.item("", format_args!("{what} exact: {} mm", self.lead_cut_mm));
        }
        page.item("", format_args!("{what} {} mm", Fixed(self.lead_cut_mm, 6)))?;
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
}

fn series_words(thread: &Thread) -> &'static str {
    match (thread.form(), thread.series()) {
        (Form::Metric, None) => "special",
        (Form::Metric, Some(Series::Coarse)) => "ISO 261 coarse",
        (Form::Metric, Some(_)) => "ISO 261 fine",
        (Form::Unified, series) => series.map_or("UNS", |series| series.name()),
        (Form::Npt | Form::Npsc | Form::Npsm, _) => "ASME B1.20.1",
        (Form::Nptf | Form::Npsf, _) => "ASME B1.20.3",
        (Form::G, _) => "ISO 228-1",
        (Form::R | Form::Rp | Form::Rc, _) => "ISO 7-1",
    }
}

/// `pitch = lead 127/70 mm = 1.814286 mm = 1/14 in = 0.071429 in`.
fn length_in_both(page: &mut Page<'_>, what: &str, length: Length) -> fmt::Result {
    page.item("", format_args!("{what} {length} mm"))?;
    if length.as_decimal().is_none() {
        page.item(" ", format_args!("= {} mm", Fixed(length, 6)))?;
    }
    // A fraction too odd for inches in 64 bits is shown in millimetres alone.
    let Ok(inches) = length.over(Length::INCH) else { return Ok(()) };
    page.item(" ", format_args!("= {inches} in"))?;
    if inches.as_decimal().is_none() {
        page.item(" ", format_args!("= {} in", Fixed(inches, 6)))?;
    }
    Ok(())
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
