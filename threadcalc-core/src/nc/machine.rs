//! A tapped hole against the machine's limits.

use super::declared::Declared;
use super::finding::ProgramNumberKey as Key;
use super::finding_id::ProgramFindingId as Id;
use super::judge::{Judge, Tapping};
use super::state::Motion;
use crate::cutting::{ForceByPitch, fit_of, torque_by_pitch};
use crate::dialect::RetractIn;
use crate::length::Length;
use crate::motion::{TappingMotion, tapping_time};

/// Turns that a tap needs above the face if the machine does not say (common practice).
const LEAST_TURNS: i64 = 2;

impl Judge {
    pub(super) fn limits(&mut self, at: &Tapping, declared: Option<&Declared>) {
        self.clearance(at, declared);
        let Some(speed) = self.speed().filter(|speed| speed.is_positive()) else { return };
        self.speed_limit(speed, at);
        self.retract(speed, at);
        let Some(lead) = at.lead_mm else { return };
        self.axis(lead, speed, at);
        self.reached(lead, speed, at);
        if let Some(declared) = declared {
            self.torque(speed, at, declared);
        }
    }

    fn clearance(&mut self, at: &Tapping, declared: Option<&Declared>) {
        let lead = declared.map(|declared| declared.thread.lead_mm()).or(at.lead_mm);
        let (Some(r), Some(lead)) = (at.r_mm, lead) else { return };
        if self.state.motion == Motion::Stroke {
            return;
        }
        let surface = self.options.surface_z_mm.unwrap_or(Length::ZERO);
        let least = self.options.machine.least_clearance_turns.unwrap_or(Length::integer(LEAST_TURNS));
        let Some(turns) = r.minus(surface).ok().and_then(|room| room.over(lead).ok()) else { return };
        if turns < least {
            let finding = self.at_block(Id::ClearanceShort).with(Key::Turns, turns.to_f64());
            self.count(finding, self.state.cycle.line, at.count);
        }
    }

    fn speed_limit(&mut self, speed: Length, at: &Tapping) {
        let Some(limit) = self.options.machine.highest_rpm.filter(|limit| speed > *limit) else { return };
        let finding =
            self.at_block(Id::SpeedLimit).with(Key::SpeedRpm, speed.to_f64()).with(Key::LimitRpm, limit.to_f64());
        self.count(finding, self.state.cycle.line, at.count);
    }

    fn retract(&mut self, speed: Length, at: &Tapping) {
        let Some(limit) = self.options.machine.highest_rpm else { return };
        let Some(written) = self.state.cycle.retract.and_then(|said| said.value) else { return };
        let factor = match self.dialect.retract_in {
            Some(RetractIn::Percent) => written.over(Length::integer(100)),
            _ => Ok(written),
        };
        let Ok(factor) = factor else { return };
        let Some(out) = factor.times(speed).ok().filter(|out| *out > limit) else { return };
        let finding = self
            .at_block(Id::RetractSpeedLimit)
            .with(Key::Multiplier, factor.to_f64())
            .with(Key::RetractRpm, out.to_f64())
            .with(Key::LimitRpm, limit.to_f64());
        self.count(finding, self.state.cycle.line, at.count);
    }

    fn axis(&mut self, lead: Length, speed: Length, at: &Tapping) {
        let Some(limit) = self.options.machine.axis_feed_limit_mm_min else { return };
        let Some(feed) = lead.times(speed).ok().filter(|feed| *feed > limit) else { return };
        let finding =
            self.at_block(Id::AxisFeedLimit).with(Key::FeedMmMin, feed.to_f64()).with(Key::LimitMmMin, limit.to_f64());
        self.count(finding, self.state.cycle.line, at.count);
    }

    fn reached(&mut self, lead_mm: Length, rpm: Length, at: &Tapping) {
        let acceleration = self.options.machine.acceleration_rpm_s;
        let (Some(_), Some(travel_mm)) = (acceleration, at.travel_mm) else { return };
        let motion = TappingMotion {
            lead_mm,
            rpm,
            travel_mm,
            acceleration_rpm_s: acceleration.map(Length::to_f64),
            retract_factor: Length::ONE,
            dwell_s: 0.0,
            peck_mm: None,
        };
        let Some(time) = tapping_time(&motion).ok().filter(|time| time.reached_rpm < rpm.to_f64()) else { return };
        let finding = self
            .at_block(Id::SpeedNeverReached)
            .with(Key::SpeedRpm, rpm.to_f64())
            .with(Key::ReachableRpm, time.reached_rpm)
            .with(Key::TravelMm, travel_mm.to_f64());
        self.count(finding, self.state.cycle.line, at.count);
    }

    fn torque(&mut self, speed: Length, at: &Tapping, declared: &Declared) {
        let Some(force) = self.options.cutting_force_n_mm2 else { return };
        let Ok(force) = ForceByPitch::new(force.to_f64()) else { return };
        let Ok(band) = torque_by_pitch(&declared.thread, force, 1.0) else { return };
        let gears = || self.options.machine.gears.iter().flatten();
        if gears().next().is_none() {
            return;
        }
        let Some(fit) = fit_of(gears(), band.high_nm, speed).ok().filter(|fit| !fit.is_enough) else { return };
        let finding = self
            .at_block(Id::TorqueLimit)
            .with(Key::TorqueNm, band.high_nm)
            .with(Key::TorqueLimitNm, fit.torque_nm.unwrap_or(0.0));
        self.count(finding, self.state.cycle.line, at.count);
    }
}
