//! The printed plan's tools: the tap, what spindle and holder do, the gauges, the joint.

use core::fmt;

use super::Plan;
use super::page::{Fixed, Page, Shown, Words};
use crate::drill::Tap;
use crate::engagement::Weakest;
use crate::gauge::GaugeKind;
use crate::motion::Holder;
use crate::tap::{Suits, TapKind};
use crate::text::placed;
use crate::thread::Hand;

impl Plan {
    pub(super) fn tap_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let tap = self.job.tap.unwrap_or(Tap::Cut);
        page.label("Tap")?;
        if self.thread.hand() == Hand::Left {
            page.item("", format_args!("LEFT-HAND"))?;
        }
        page.item(" ", format_args!("{} tap for {}", tap.name(), self.thread))?;
        if let Some(class) = self.tap_class.and_then(|tap| tap.class) {
            page.item(", ", format_args!("ISO 2857 class {}", class.name()))?;
        }
        if let Some(limit) = self.tap_limit {
            page.item(", ", format_args!("limit {limit} or larger"))?;
        }
        if let Some(threads) = self.job.chamfer_threads {
            match self.job.chamfer_form {
                Some(form) => page.item(", ", format_args!("chamfer form {form} = {threads} threads at most"))?,
                None => page.item(", ", format_args!("chamfer {threads} threads at most"))?,
            }
        }
        if let Some(mark) = &self.job.tap_mark {
            page.next_line()?;
            page.item("", format_args!("marked \"{}\"", mark.as_str()))?;
        }
        self.kind_line(page, tap)
    }

    /// The kind there is, or the kind that suits the hole.
    fn kind_line(&self, page: &mut Page<'_>, tap: Tap) -> fmt::Result {
        let Some(hole) = self.job.hole.filter(|_| self.taper.is_none()) else { return Ok(()) };
        page.next_line()?;
        if let Some(kind) = self.job.tap_kind {
            page.item("", format_args!("{}:", Words(kind.name())))?;
            return page.phrase(" ", kind.advice(hole).reason);
        }
        let mut suited = TapKind::ALL.iter().filter(|kind| kind.tap() == tap && kind.advice(hole).suits == Suits::Well);
        let Some(kind) = suited.next() else { return Ok(()) };
        page.item("", format_args!("usual in a {} hole: {},", hole.name(), Words(kind.name())))?;
        page.phrase(" ", kind.advice(hole).reason)
    }

    pub(super) fn speed_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let metres = core::f64::consts::PI * self.thread.major_mm().to_f64() * self.programmed_rpm.to_f64() / 1000.0;
        page.label("Speed")?;
        page.item("", format_args!("S{}", self.programmed_rpm))?;
        let feet = metres / 0.3048;
        page.item(" ", format_args!("= {} m/min = {} ft/min at the major diameter", Shown(metres, 1), Shown(feet, 0)))?;
        self.torque_line(page)?;
        self.time_line(page)?;
        self.holder_line(page)
    }

    fn torque_line(&self, page: &mut Page<'_>) -> fmt::Result {
        let Some(torque) = self.spindle.torque else { return Ok(()) };
        let decimals = if torque.high_nm < 10.0 { 2 } else { 0 };
        let nm = |value| Shown(value, decimals);
        page.next_line()?;
        page.item(
            "",
            format_args!("torque about {} Nm ({} to {}),", nm(torque.likely_nm), nm(torque.low_nm), nm(torque.high_nm)),
        )?;
        page.item(" ", format_args!("worn tap {} Nm", nm(torque.worn_nm)))?;
        if let Some(power) = self.spindle.power_kw {
            page.item("; ", format_args!("{} kW", Shown(power, 3)))?;
        }
        if let Some(held) = self.spindle.gear.and_then(|gear| gear.torque_nm) {
            page.item("; ", format_args!("this spindle {} Nm here", Shown(held, 1)))?;
        }
        Ok(())
    }

    fn time_line(&self, page: &mut Page<'_>) -> fmt::Result {
        let time = &self.spindle.time;
        page.next_line()?;
        page.item("", format_args!("{} turns from R to the bottom:", Shown(time.turns, 1)))?;
        // Without the spindle's acceleration the ramps are missing.
        let least = if self.job.machine.acceleration_rpm_s.is_none() { "at least " } else { "" };
        page.item(" ", format_args!("{least}{} s in + {} s out", Shown(time.time_in_s, 1), Shown(time.time_out_s, 1)))?;
        if let (Some(all), Some(count)) = (self.spindle.all_holes_s, self.job.hole_count) {
            page.item(", ", format_args!("{} s for {count} holes without the ways between", Shown(all, 0)))?;
        }
        Ok(())
    }

    fn holder_line(&self, page: &mut Page<'_>) -> fmt::Result {
        page.next_line()?;
        page.item("", format_args!("holder {}", Words(self.job.holder.unwrap_or(Holder::Rigid).name())))?;
        let Some(travel) = self.spindle.holder_travel else { return Ok(()) };
        page.item(": ", format_args!("drawn out {} mm,", Fixed(travel.extension_mm, 2)))?;
        page.item(" ", format_args!("pushed in {} mm", Fixed(travel.compression_mm, 2)))
    }

    pub(super) fn gauge_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("Gauge")?;
        if self.thread.hand() == Hand::Left {
            page.item("", format_args!("LEFT-HAND gauges, turn anticlockwise."))?;
        }
        if let Some(taper) = &self.taper {
            page.item(" ", format_args!("taper plug, hand tight, notch to face: flush,"))?;
            let turns = taper.gauge_tolerance_turns;
            page.item(
                " ",
                format_args!(
                    "{turns} turn either way ({} mm on diameter a turn)",
                    Fixed(taper.diameter_per_turn_mm, 3)
                ),
            )?;
            return page.phrase("; ", "first hole stands out one turn: gauge it, then go deeper");
        }
        let turns = self.depth().to_f64() / self.thread.lead_mm().to_f64();
        page.item(" ", format_args!("GO by hand to full depth, {} turns;", Shown(turns, 1)))?;
        match self.not_go {
            Some(rule) => {
                page.item(" ", format_args!("NOT GO at most {} turns", rule.most_turns))?;
                page.item(" ", format_args!("({})", rule.standard))?;
            }
            None => page.phrase(" ", "NOT GO by the standard on the drawing")?,
        }
        let pin = |kind| self.gauges.iter().find(|gauge| gauge.kind == kind).and_then(|gauge| gauge.diameter_mm);
        // A formed minor diameter is not judged by the cut thread's limits.
        let cut = self.job.tap != Some(Tap::Form);
        if let (true, Some(low), Some(high)) = (cut, pin(GaugeKind::PlainPlugGo), pin(GaugeKind::PlainPlugNotGo)) {
            page.next_line()?;
            page.item("", format_args!("plain pin {} mm enters, {} mm does not", Fixed(low, 3), Fixed(high, 3)))?;
        }
        Ok(())
    }

    pub(super) fn joint_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let Some(joint) = &self.joint else { return Ok(()) };
        let kilonewtons = |newtons: f64| Shown(newtons / 1000.0, 1);
        let gives = match joint.weakest {
            Weakest::Screw => "the screw breaks first",
            Weakest::External => "the screw's threads strip first",
            Weakest::Internal => "the hole's threads strip first",
        };
        page.label("Joint")?;
        let loads = [
            ("screw breaks at", joint.tensile_load_n),
            ("hole strips at", joint.internal_strip_load_n),
            ("screw's threads at", joint.external_strip_load_n),
        ];
        for (place, (what, load)) in placed(loads.into_iter()) {
            page.item(if place == 0 { "" } else { ", " }, format_args!("{what} {} kN", kilonewtons(load)))?;
        }
        page.next_line()?;
        page.phrase("", gives)?;
        page.item(
            "; ",
            format_args!("engagement so that the screw breaks: {} mm", Shown(joint.required_length_mm, 2)),
        )?;
        if let Some(factor) = joint.safety_factor {
            page.item("; ", format_args!("safety factor {}", Shown(factor, 2)))?;
        }
        page.next_line()?;
        page.sentence("static load along the axis only; the joint is the engineer's")
    }
}
