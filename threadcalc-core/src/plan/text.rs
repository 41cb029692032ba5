//! The plan as a machinist reads it; this half: thread, limits, drill, tap, speed and feed.

use core::fmt;

use super::page::{Both, Exactly, Fixed, Inches, Page, Shown, Signed, Words, short};
use super::{CardRow, Plan};
use crate::depth::Hole;
use crate::drill::{Alternative, Basis, Drill, DrillSet, Tap, WithinLimits, percent_thread, probable_hole_mm};
use crate::feed::{FeedMode, Unit};
use crate::finding::Severity;
use crate::form::Form;
use crate::length::{Length, Rounding};
use crate::series::Series;
use crate::taper_depth::TaperDepths;
use crate::text::{Text, placed};
use crate::thread::{Hand, Thread};

impl fmt::Display for Plan {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut page = Page::new(f);
        self.headline(&mut page)?;
        self.stop_line(&mut page)?;
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
        let machine = match self.unit() {
            Unit::Mm => "METRIC machine",
            Unit::Inch => "INCH machine",
        };
        page.item("   ", format_args!("{machine}"))?;
        let hole = self.job.hole.map_or("", Hole::name);
        match self.job.full_thread_depth_mm {
            Some(depth) => page.item("   ", format_args!("{hole}, {depth} mm full thread"))?,
            None => page.item("   ", format_args!("{hole}, taper 1:16"))?,
        }
        match self.job.material {
            Some(material) => page.item("   ", format_args!("{}", Words(material.name()))),
            None => Ok(()),
        }
    }

    /// What keeps the words back stands at the top: whoever reads on has to know it.
    fn stop_line(&self, page: &mut Page<'_>) -> fmt::Result {
        if !self.findings.has_error() {
            return Ok(());
        }
        page.label("STOP")?;
        page.item("", format_args!("no cycle words, do not cut (see Findings):"))?;
        let errors = self.findings.iter().filter(|finding| finding.severity() == Severity::Error);
        for (place, finding) in placed(errors) {
            page.item(if place == 0 { " " } else { ", " }, format_args!("{}", finding.id()))?;
        }
        Ok(())
    }

    fn thread_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let thread = &self.thread;
        page.label("Thread")?;
        page.item("", format_args!("dia {} mm ({} in)", thread.major_mm(), Inches(thread.major_mm())))?;
        if let Some(per_inch) = thread.threads_per_inch() {
            page.item("   ", format_args!("{per_inch} TPI"))?;
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
        if let Some(taper) = &self.taper {
            return self.size_is_depth(page, taper);
        }
        let unknown = "the limits of this class are not sourced: take them from the standard";
        let Some(limits) = &self.limits else { return page.sentence(unknown) };
        // The standard's own decimals where it is in inches; pitch diameters have four there.
        let decimals = limits.decimals;
        let ranges =
            [("pitch dia", limits.pitch_diameter_mm, decimals.max(4)), ("minor dia", limits.minor_mm, decimals)];
        let known = ranges.into_iter().filter_map(|(what, (low, high), decimals)| Some((what, low?, high, decimals)));
        if known.clone().next().is_none() {
            return page.sentence(unknown);
        }
        for (place, (what, low, high, decimals)) in placed(known) {
            if place > 0 {
                page.next_line()?;
            }
            let range = Both { low, high, first: limits.native_unit, decimals, both: true };
            page.item("", format_args!("{what} {range}"))?;
            if high.is_none() {
                page.phrase(" ", "or larger")?;
            }
        }
        if self.job.tap == Some(Tap::Form) {
            page.next_line()?;
            page.sentence("a form tap makes its own minor diameter: do not test it by this one")?;
        }
        Ok(())
    }

    /// What a taper thread has in place of limits.
    fn size_is_depth(&self, page: &mut Page<'_>, taper: &TaperDepths) -> fmt::Result {
        if let Some(face) = self.thread.pipe().ok().and_then(|pipe| pipe.pitch_diameter_gauge_plane_mm) {
            page.item("", format_args!("pitch dia {} mm at the face, gauged flush", Fixed(face, 3)))?;
            page.next_line()?;
        }
        page.item("", format_args!("SIZE IS DEPTH: one turn deeper ({} mm)", Fixed(self.thread.pitch_mm(), 3)))?;
        page.item(" ", format_args!("is {} mm larger", Fixed(taper.diameter_per_turn_mm, 3)))
    }

    fn drill_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let chosen = &self.drill.chosen;
        page.label("Drill")?;
        page.item("", format_args!("{}", DrillName(&chosen.drill)))?;
        let tap = self.job.tap.unwrap_or(Tap::Cut);
        match self.drill.basis {
            Some(basis) => {
                let drill = chosen.drill.diameter_mm();
                let percent = |basis| percent_thread(&self.thread, drill, tap, Some(basis)).map_err(|_| fmt::Error);
                let asked = if basis == Basis::FiveEighthsH { " (asked)" } else { "" };
                page.item("   ", format_args!("{} % of 1.299P", Shown(percent(Basis::ThreeQuartersH)?, 1)))?;
                page.item(" ", format_args!("= {} % of 1.0825P{asked}", Shown(percent(Basis::FiveEighthsH)?, 1)))?;
            }
            None if tap == Tap::Form => {
                page.item("   ", format_args!("{} % of a form tap's 0.68P", Shown(chosen.percent, 1)))?;
            }
            None if self.job.taper_reamer == Some(true) => page.item("   ", format_args!("then the taper reamer"))?,
            None if self.taper.is_some() => {
                let near = self.taper.map_or(Length::ZERO, |taper| taper.hand_tight_mm);
                page.item("   ", format_args!("no reamer: full threads for about {} mm", Fixed(near, 1)))?;
            }
            None => page.item("   ", format_args!("{} % of the thread's own height", Shown(chosen.percent, 1)))?,
        }
        if chosen.percent.is_finite() && !verdict(chosen).is_empty() {
            page.next_line()?;
            page.item("", format_args!("{}", verdict(chosen)))?;
        }
        if let (WithinLimits::Yes, Some(left)) = (chosen.within_limits, chosen.left_to_limit_mm) {
            page.item(", ", format_args!("{} mm left to the largest minor dia for oversize", Fixed(left, 3)))?;
        }
        self.probable_line(page)?;
        if self.taper.is_some() {
            return self.beside_a_taper(page);
        }
        self.alternatives_table(page)
    }

    /// `as drills cut: 6.750 + 0.075 = 6.825 mm, 72.3 %, 0.087 mm left: OK`.
    fn probable_line(&self, page: &mut Page<'_>) -> fmt::Result {
        let drill = self.drill.chosen.drill.diameter_mm();
        let Some(probable) = &self.drill.probable else { return Ok(()) };
        let Ok(oversize) = probable.hole_mm.minus(drill) else { return Ok(()) };
        page.next_line()?;
        let what = if self.job.oversize_mm.is_some() { "as you say drills cut" } else { "as drills cut" };
        page.item("", format_args!("{what}: {} + {} =", Fixed(drill, 3), Fixed(oversize, 3)))?;
        page.item(" ", format_args!("{} mm, {} %", Fixed(probable.hole_mm, 3), Shown(probable.percent, 1)))?;
        let least = self.drill.limits.and_then(|limits| limits.minor_mm.0);
        match probable.left_to_limit_mm {
            Some(_) if least.is_some_and(|least| probable.hole_mm < least) => {
                page.item(", ", format_args!("still UNDER minimum"))
            }
            Some(left) if left.is_negative() => {
                page.item(", ", format_args!("{} mm OVER maximum", Fixed(left.magnitude(), 3)))
            }
            Some(left) => page.item(", ", format_args!("{} mm left: OK", Fixed(left, 3))),
            None => Ok(()),
        }
    }

    fn alternatives_table(&self, page: &mut Page<'_>) -> fmt::Result {
        let outside = |other: &Alternative| other.within_limits == WithinLimits::No;
        let chosen = self.drill.chosen.drill.diameter_mm();
        for other in self.drill.alternatives.iter().flatten() {
            // Of the drills outside the limits the nearest on each side says it all.
            let own = other.drill.diameter_mm();
            let nearer = |drill: Length| (drill > own && drill < chosen) || (drill < own && drill > chosen);
            let mut others = self.drill.alternatives.iter().flatten();
            if outside(other) && others.any(|other| outside(other) && nearer(other.drill.diameter_mm())) {
                continue;
            }
            page.next_line()?;
            page.item("", format_args!("{}", DrillName(&other.drill)))?;
            if other.percent.is_finite() {
                page.right(47, format_args!("{} %", Shown(other.percent, 1)))?;
            }
            let (WithinLimits::Yes, Some(left)) = (other.within_limits, other.left_to_limit_mm) else {
                page.item("  ", format_args!("{}", verdict(other)))?;
                continue;
            };
            let hole = probable_hole_mm(&other.drill, self.job.oversize_mm);
            let over = hole.and_then(|hole| hole.minus(own)).is_ok_and(|oversize| oversize > left);
            let (before, behind) = if over { ("", ": too little") } else { ("in limits, ", "") };
            page.item("  ", format_args!("{before}{} mm left{behind}", Fixed(left, 3)))?;
        }
        Ok(())
    }

    /// The neighbours of a taper thread's drill: there is nothing to judge them by.
    fn beside_a_taper(&self, page: &mut Page<'_>) -> fmt::Result {
        page.next_line()?;
        page.item("", format_args!("next to it"))?;
        for (place, other) in placed(self.drill.alternatives.iter().flatten()) {
            page.item(if place == 0 { " " } else { ", " }, format_args!("{}", DrillName(&other.drill)))?;
        }
        Ok(())
    }

    fn feed_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("Feed")?;
        let unit = self.unit();
        let lead = self.thread.lead_mm();
        let under = self.job.underfeed_percent.filter(|percent| *percent != Length::ZERO);
        let dialect = self.job.dialect;
        let over = if unit == Unit::Inch { " / 25.4" } else { "" };
        match self.feed.mode() {
            FeedMode::PerMinute => {
                let code = dialect.map_or(Text::holding("G94"), |dialect| Some(dialect.feed_per_minute));
                page.item("", format_args!("{unit} per minute ({}): {}", code.unwrap_or_default(), self.feed))?;
                page.item("   ", format_args!("{} x {lead}{over}", self.programmed_rpm))?;
            }
            FeedMode::PerRevolution => {
                let code = dialect.and_then(|dialect| dialect.feed_per_revolution).or(Text::holding("G95"));
                page.item("", format_args!("{unit} per revolution ({}): {}", code.unwrap_or_default(), self.feed))?;
                page.item("   ", format_args!("the lead, {lead} mm{over}"))?;
            }
        }
        if let Some(percent) = under {
            page.item(" ", format_args!("less {percent} % under-feed"))?;
        }
        let exact = self.feed.exact().map_err(|_| fmt::Error)?;
        let each = match self.feed.mode() {
            FeedMode::PerMinute => "/min",
            FeedMode::PerRevolution => "",
        };
        // The lead in its own unit needs no sum.
        if self.feed.mode() == FeedMode::PerMinute || unit == Unit::Inch || exact != lead {
            page.item(" ", format_args!("= {} {}{each}", Exactly(exact, 6), short(unit)))?;
        }
        page.next_line()?;
        self.lead_error_line(page)?;
        self.card_lines(page)
    }

    fn lead_error_line(&self, page: &mut Page<'_>) -> fmt::Result {
        let under = self.job.underfeed_percent.is_some_and(|percent| percent != Length::ZERO);
        let what = if under { "lead fed" } else { "lead cut" };
        if self.lead_error == Length::ZERO {
            return page.item("", format_args!("{what} {} mm, exact", self.lead_cut_mm));
        }
        page.item("", format_args!("{what} {} mm", Fixed(self.lead_cut_mm, 6)))?;
        // Percent to 6 decimals are the units of the error to 8: the product itself might not fit.
        let units = self.lead_error.round_to(8, Rounding::HalfEven).map_err(|_| fmt::Error)?.units();
        let percent = Length::new(units, 1_000_000).map_err(|_| fmt::Error)?;
        let sign = if percent.is_negative() { "" } else { "+" };
        page.item(", ", format_args!("error {sign}{percent} %"))?;
        let depth = self.depth();
        if self.axial_error_mm.magnitude() < const { Length::parts(1, 10_000) } {
            return page.item(", ", format_args!("under 0.0001 mm in {} mm", Exactly(depth, 3)));
        }
        page.item(", ", format_args!("{} mm in {} mm", Signed(self.axial_error_mm, 4), Exactly(depth, 3)))
    }

    fn card_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        if self.card().next().is_none() {
            page.next_line()?;
            return page.sentence("F stays when S changes: it is the lead");
        }
        page.next_line()?;
        let all_exact = self.card().all(|row| row.exact);
        let also = if all_exact { ", all exact" } else { "" };
        page.item("", format_args!("S and F go together (* this plan{also}):"))?;
        for (place, row) in placed(self.card()) {
            if place % 3 == 0 {
                page.next_line()?;
            }
            let CardRow { rpm, feed, exact, planned } = row;
            let mark = if *exact && !all_exact { " exact" } else { "" };
            let here = if *planned { "*" } else { "" };
            page.column([11, 34, 57].get(place % 3).copied().unwrap_or(11))?;
            page.item("", format_args!("S{rpm} {feed}{mark}{here}"))?;
        }
        Ok(())
    }
}

fn series_words(thread: &Thread) -> &'static str {
    match (thread.form(), thread.series()) {
        (Form::Metric | Form::MetricJ, _) if thread.is_wire_insert() => "wire insert hole, ASME B18.29.2M",
        _ if thread.is_wire_insert() => "wire insert hole, ASME B18.29.1",
        (Form::Metric, Some(Series::Coarse)) => "ISO 261 coarse",
        (Form::Metric, Some(_)) => "ISO 261 fine",
        (Form::UnifiedJ, _) if thread.is_standard() => "ASME B1.15",
        (Form::Unified | Form::UnifiedR, series) => series.map_or("UNS", |series| series.name()),
        (Form::MetricJ, Some(_)) => "ISO 5855-1",
        (Form::Whitworth, Some(_)) => "BS 84",
        (Form::Miniature, _) => "ISO 1501",
        (Form::Ba, _) => "BS 93",
        (Form::Trapezoidal, _) if thread.is_standard() => "ISO 2904",
        (Form::Acme, _) if thread.is_standard() => "ASME B1.5",
        (Form::StubAcme, _) if thread.is_standard() => "ASME B1.8",
        (Form::Buttress | Form::PullButtress, _) if thread.is_standard() => "ASME B1.9",
        (Form::Npt | Form::Npsc | Form::Npsm, _) => "ASME B1.20.1",
        (Form::Nptf | Form::Npsf, _) => "ASME B1.20.3",
        (Form::G, _) => "ISO 228-1",
        (Form::R | Form::Rp | Form::Rc, _) => "ISO 7-1",
        _ => "special",
    }
}

/// `pitch = lead 127/70 mm = 1.814286 mm (1/14 in)`, `pitch = lead 1.25 mm (0.049213 in)`.
fn length_in_both(page: &mut Page<'_>, what: &str, length: Length) -> fmt::Result {
    page.item("", format_args!("{what} {length} mm"))?;
    if length.as_decimal().is_none() {
        page.item(" ", format_args!("= {} mm", Fixed(length, 6)))?;
    }
    // A fraction too odd for inches in 64 bits is shown in millimetres alone.
    let Ok(inches) = length.over(Length::INCH) else { return Ok(()) };
    if inches.numerator() == 1 {
        return page.item(" ", format_args!("({inches} in)"));
    }
    page.item(" ", format_args!("({} in)", Fixed(inches, 6)))
}

/// `13/64 = 5.159 mm (0.2031 in)`, a metric drill by its diameter alone.
struct DrillName<'a>(&'a Drill);

impl fmt::Display for DrillName<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.0.set().is_some_and(|set| set != DrillSet::Metric) {
            write!(f, "{} = ", self.0.name())?;
        }
        let diameter = self.0.diameter_mm();
        write!(f, "{} mm ({} in)", Fixed(diameter, 3), Inches(diameter))
    }
}

fn verdict(judged: &Alternative) -> &'static str {
    match (judged.within_limits, judged.left_to_limit_mm) {
        (WithinLimits::Yes, _) => "in limits",
        (WithinLimits::No, Some(left)) if left.is_negative() => "OVER maximum",
        (WithinLimits::No, _) => "UNDER minimum",
        // A form tap that is asked for more than there is room for jams.
        (WithinLimits::DoesNotApply, _) if judged.percent > 100.0 => "TOO FULL",
        (WithinLimits::DoesNotApply, _) => "",
    }
}
