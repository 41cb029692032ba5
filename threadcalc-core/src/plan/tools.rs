//! The printed plan's tools: the tap, what spindle and holder do, the gauges, the joint.

use core::fmt;

use super::Plan;
use super::page::{Both, Exactly, Fixed, Page, Shown, Words};
use crate::cutting::{FORMING_FACTOR, TAPER_FACTOR};
use crate::drill::Tap;
use crate::engagement::Weakest;
use crate::feed::Unit;
use crate::gauge::GaugeKind;
use crate::length::Length;
use crate::motion::Holder;
use crate::tap::{IsoTap, Suits, TapKind};
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
        match self.tap_class {
            Some(IsoTap { class: Some(class), .. }) => page.item(", ", format_args!("ISO class {class}"))?,
            Some(IsoTap { class: None, closing_mm }) if closing_mm.is_positive() => {
                page.item(", ", format_args!("SPECIAL, pitch dia {} mm larger", Exactly(closing_mm, 4)))?
            }
            _ => {}
        }
        if let Some(limit) = self.tap_limit {
            let (or, from) = match (self.tap_class, self.is_plated()) {
                (Some(_), true) => ("or ", "as tap makers recommend, raised for the plating"),
                (Some(_), false) => ("or ", "as tap makers recommend"),
                (None, true) => ("", "or larger"),
                (None, false) => ("", "as tap makers recommend"),
            };
            page.item(", ", format_args!("{or}limit {limit} {from}"))?;
        }
        if let Some(threads) = self.job.chamfer_threads {
            match self.job.chamfer_form {
                Some(form) => {
                    page.item(", ", format_args!("chamfer {} = {threads} threads at most", Words(form.name())))?
                }
                None => page.item(", ", format_args!("chamfer {threads} threads at most"))?,
            }
        }
        if self.is_plated() {
            let plating = self.job.coating_um.unwrap_or(Length::ZERO);
            page.next_line()?;
            page.item("", format_args!("for {plating} um of plating"))?;
            if let Some(tap) = self.tap_class {
                page.item("", format_args!(", which closes the pitch dia by {} mm", Exactly(tap.closing_mm, 4)))?;
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
        // A deep profile is cut by taps made in a set, whatever the hole.
        if self.thread.form().is_translating() && self.job.tap_kind.is_none() {
            return Ok(());
        }
        page.next_line()?;
        if tap == Tap::Form {
            return page.phrase("", TapKind::Form.advice(hole).reason);
        }
        if let Some(kind) = self.job.tap_kind {
            page.item("", format_args!("{},", Words(kind.name())))?;
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
        // A band as wide as its number bears no more digits.
        let decimals = match torque.high_nm {
            high if high < 1.0 => 2,
            high if high < 10.0 => 1,
            _ => 0,
        };
        let nm = |value| Shown(value, decimals);
        page.next_line()?;
        let (likely, low, high) = (nm(torque.likely_nm), nm(torque.low_nm), nm(torque.high_nm));
        page.item("", format_args!("torque about {likely} Nm ({low} to {high}), worn tap {} Nm", nm(torque.worn_nm)))?;
        let factor = if self.job.tap == Some(Tap::Form) {
            Some(("form", FORMING_FACTOR))
        } else {
            self.taper.map(|_| ("taper", TAPER_FACTOR))
        };
        if let Some((what, factor)) = factor {
            page.item(", ", format_args!("{what} tap at {} times", Shown(factor.start, 1)))?;
        }
        match self.spindle.power_kw {
            Some(power) if power < 0.01 => page.item("; ", format_args!("under 0.01 kW"))?,
            Some(power) => page.item("; ", format_args!("{} kW", Shown(power, 2)))?,
            None => {}
        }
        self.gear_line(page, torque.worn_nm)
    }

    /// Which gear to use, and whether it holds the tap until it is worn.
    fn gear_line(&self, page: &mut Page<'_>, worn_nm: f64) -> fmt::Result {
        let Some(fit) = self.spindle.gear else { return Ok(()) };
        page.next_line()?;
        let (Some(place), Some(held)) = (fit.gear, fit.torque_nm) else {
            return page.item("", format_args!("NO GEAR of this spindle runs S{}", self.programmed_rpm));
        };
        let gears = self.job.machine.gears.iter().flatten();
        let count = gears.clone().count();
        if let Some(gear) = gears.clone().nth(place).filter(|_| count > 1) {
            let (lowest, highest) = (gear.lowest_rpm(), gear.highest_rpm());
            page.item("", format_args!("gear {} of {count}, {lowest} to {highest} rpm:", place.saturating_add(1)))?;
        } else {
            page.item("", format_args!("this spindle:"))?;
        }
        page.item(" ", format_args!("{} Nm there,", Shown(held, if held < 10.0 { 1 } else { 0 })))?;
        page.phrase(
            " ",
            match (fit.is_enough, held >= worn_nm) {
                (true, true) => "enough for a worn tap too",
                (true, false) => "enough for a new tap, NOT for a worn one",
                (false, _) => "NOT ENOUGH",
            },
        )
    }

    fn time_line(&self, page: &mut Page<'_>) -> fmt::Result {
        let time = &self.spindle.time;
        page.next_line()?;
        let stop = if time.strokes == 1 { ":" } else { "," };
        page.item("", format_args!("{} turns from R to the bottom{stop}", Shown(time.turns, 1)))?;
        if time.strokes > 1 {
            page.item(" ", format_args!("{} strokes, each from R:", time.strokes))?;
        }
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
        let holder = match self.job.holder {
            None | Some(Holder::Rigid) => "rigid",
            Some(Holder::TensionCompression) => "tension/compression",
            Some(Holder::Floating) => "floating",
        };
        page.item("", format_args!("holder {holder}"))?;
        let Some(travel) = self.spindle.holder_travel else {
            return page.item(": ", format_args!("the spindle must be synchronised"));
        };
        let moves = [
            ("drawn out", travel.extension_mm, self.job.holder_extension_mm),
            ("pushed in", travel.compression_mm, self.job.holder_compression_mm),
        ];
        for (what, way, room) in moves {
            page.item(", ", format_args!("{what} {} mm", Fixed(way, 2)))?;
            if let Some(room) = room {
                page.item(" ", format_args!("of {} mm", Fixed(room, 2)))?;
            }
        }
        Ok(())
    }

    pub(super) fn gauge_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        page.label("Gauge")?;
        if self.thread.hand() == Hand::Left {
            page.item("", format_args!("LEFT-HAND gauges, turn anticlockwise."))?;
        }
        if self.is_plated() {
            page.item(" ", format_args!("AFTER PLATING:"))?;
        }
        if let Some(taper) = &self.taper {
            page.item(" ", format_args!("taper plug, hand tight, notch to face: flush,"))?;
            let turns = taper.gauge_tolerance_turns;
            let plural = if turns == Length::ONE { "" } else { "s" };
            page.item(" ", format_args!("{turns} turn{plural}"))?;
            if let Ok(way) = turns.times(self.thread.pitch_mm()) {
                page.item(" ", format_args!("({} mm)", Fixed(way, 2)))?;
            }
            page.phrase(" ", "either way")?;
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
        let pins = match self.job.tap {
            Some(Tap::Form) => self.formed_minor_mm.map(|(low, high)| (low, Some(high))),
            _ => pin(GaugeKind::PlainPlugGo).map(|low| (low, pin(GaugeKind::PlainPlugNotGo))),
        };
        if let Some((low, high)) = pins {
            page.next_line()?;
            let (first, decimals) = self.limits.map_or((Unit::Mm, 3), |limits| (limits.native_unit, limits.decimals));
            // The other unit only where the machine has it.
            let pin = |low| Both { low, high: None, first, decimals, both: first != self.unit() };
            page.item("", format_args!("plain pin {} enters", pin(low)))?;
            if let Some(high) = high {
                page.item(", ", format_args!("{} does not", pin(high)))?;
            }
            if self.job.tap == Some(Tap::Form) {
                page.item(" ", format_args!("(formed: as 7H, DIN 13-50)"))?;
            }
        }
        Ok(())
    }

    pub(super) fn joint_lines(&self, page: &mut Page<'_>) -> fmt::Result {
        let (Some(joint), Some(screw)) = (&self.joint, &self.job.screw) else { return Ok(()) };
        let kilonewtons = |newtons: f64| Shown(newtons / 1000.0, 1);
        let gives = match joint.weakest {
            Weakest::Screw => "THE SCREW BREAKS FIRST",
            Weakest::External => "THE SCREW'S THREADS STRIP FIRST",
            Weakest::Internal => "THE HOLE'S THREADS STRIP FIRST",
        };
        page.label("Joint")?;
        if let Some(class) = screw.property_class {
            page.item("", format_args!("screw {}", class.name()))?;
        }
        if let Some(length) = screw.engagement_mm.or(self.job.full_thread_depth_mm) {
            page.item(" ", format_args!("engaged {} mm", Exactly(length, 3)))?;
        }
        if let Some(sunk) = &self.countersink {
            page.item(" ", format_args!("less {} mm of countersink", Shown(sunk.full_thread_lost_mm, 2)))?;
        }
        match (self.job.part_shear_mpa, self.job.material) {
            (Some(shear), _) => page.item("; ", format_args!("part {shear} MPa in shear"))?,
            (None, Some(material)) => {
                let shear = material.starting_strength().shear_mpa;
                page.item("; ", format_args!("part {} MPa in shear, from the material", Shown(shear, 0)))?;
            }
            (None, None) => {}
        }
        page.next_line()?;
        page.item("", format_args!("{gives}:"))?;
        let loads = [
            ("screw", joint.tensile_load_n),
            ("its threads", joint.external_strip_load_n),
            ("the hole's threads", joint.internal_strip_load_n),
        ];
        for (place, (what, load)) in placed(loads.into_iter()) {
            page.item(if place == 0 { " " } else { ", " }, format_args!("{what} {} kN", kilonewtons(load)))?;
        }
        page.next_line()?;
        page.item("", format_args!("screw and threads are even at {} mm engaged", Shown(joint.required_length_mm, 2)))?;
        if let (Some(factor), Some(load)) = (joint.safety_factor, screw.load_n) {
            page.next_line()?;
            let load = Shown(load.to_f64() / 1000.0, 2);
            page.item("", format_args!("the weakest carries {} times the load of {load} kN", Shown(factor, 2)))?;
        }
        page.next_line()?;
        page.sentence("static load along the axis only; the joint is the engineer's")
    }
}
