//! What holder, spindle and axis have to do in a planned hole: speed, torque, power, time.

use super::hole::over_travel_mm;
use super::notes::Notes;
use super::parts::{Filled, Parts};
use super::{Job, MOST_PLAN_FINDINGS};
use crate::cutting::{
    FORMING_FACTOR, ForceByPitch, GearFit, TAPER_FACTOR, TorqueBand, fit_of, power_kw, spindle_speed,
    spindle_speed_feet, torque_by_pitch,
};
use crate::cycle::MOST_DWELL_S;
use crate::depth::Depths;
use crate::drill::Tap;
use crate::error::{Code, Error, Field};
use crate::finding::{Finding, FindingId, Findings, NumberKey, Severity};
use crate::length::{Length, Ratio, Rounding};
use crate::motion::{FeedFit, Holder, HolderTravel, TappingMotion, TappingTime, feed_fit, holder_travel, tapping_time};
use crate::thread::Thread;

/// More than any holder gives.
const MOST_HOLDER_MM: i64 = 1000;

/// What holder, spindle and axis have to do for one hole.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Spindle {
    /// Torque of the tap; None without a material or a cutting force.
    pub torque: Option<TorqueBand>,
    /// Power that the likely torque takes at the programmed speed, in kW.
    pub power_kw: Option<f64>,
    /// The gear, for the largest torque of a new tap; None without gears or torque.
    pub gear: Option<GearFit>,
    /// Speeds and times from the R plane to the bottom and back, all strokes of a job with pecks.
    pub time: TappingTime,
    /// Time of all the holes of the part without the ways between them, in seconds.
    pub all_holes_s: Option<f64>,
    /// The axis feed against its limit; None without a limit.
    pub axis: Option<FeedFit>,
    /// How far the holder has to give; None for a rigid one.
    pub holder_travel: Option<HolderTravel>,
}

/// The speed asked for: as given, or from the surface speed at the major diameter, down to 0.001 rpm.
#[inline(never)]
pub(super) fn asked_speed(job: &Job, thread: &Thread) -> Result<Ratio, Error> {
    let both = |field| Error::new(Code::Contradiction, field).hint_text("one speed: rpm, m/min or ft/min");
    let rpm = match (job.rpm, job.surface_speed_m_min, job.surface_speed_ft_min) {
        (Some(rpm), None, None) => return Ok(rpm),
        (None, Some(metres), None) => spindle_speed(thread.major_mm(), metres)?,
        (None, None, Some(feet)) => spindle_speed_feet(thread.major_mm().over(Length::INCH)?, feet)
            .map_err(|error| error.about(Field::SurfaceSpeedFeet))?,
        (None, None, None) => return Err(Error::new(Code::Missing, Field::Rpm)),
        (_, _, Some(_)) => return Err(both(Field::SurfaceSpeedFeet)),
        _ => return Err(both(Field::SurfaceSpeed)),
    };
    // At most a million, so that the thousandths fit.
    Length::new((rpm * 1000.0) as i64, 1000)
}

/// Errors about the speed name the job's own fields.
pub(super) fn of_speed(error: Error, job: &Job) -> Error {
    let given = match (job.surface_speed_m_min, job.surface_speed_ft_min) {
        (None, None) => Field::Rpm,
        (Some(_), _) => Field::SurfaceSpeed,
        _ => Field::SurfaceSpeedFeet,
    };
    let step = job.machine.speed_step.unwrap_or(Length::ONE);
    match (error.field(), job.machine.highest_rpm) {
        (Field::Rpm, Some(highest)) if highest.is_positive() && highest < step && job.machine.lowest_rpm.is_none() => {
            return Error::new(error.code(), Field::MachineHighest)
                .got(highest.to_f64())
                .within(step.to_f64(), f64::NAN)
                .hint_text("speeds are whole steps: the highest is below the first one");
        }
        _ => {}
    }
    match error.field() {
        Field::Step => error.about(Field::MachineStep),
        Field::Lowest => error.about(Field::MachineLowest),
        Field::Highest => error.about(Field::MachineHighest),
        Field::Rpm if given != Field::Rpm => {
            error.about(given).hint_text("the numbers are the spindle's, in rpm: no programmable speed is left")
        }
        _ => error,
    }
}

/// The holder, rigid with a note where the job says none.
pub(super) fn holder(filled: &mut Filled, notes: &mut Notes) -> Holder {
    *filled.holder.get_or_insert_with(|| {
        notes.push(FindingId::HolderAssumed);
        Holder::Rigid
    })
}

/// The lead that the feed follows: below the thread's by what a giving holder is meant to be drawn out.
#[inline(never)]
pub(super) fn fed_lead(job: &Job, thread: &Thread) -> Result<Length, Error> {
    let Some(underfeed) = underfeed(job) else { return Ok(thread.lead_mm()) };
    if underfeed.is_negative() || underfeed > Length::integer(20) {
        return Err(Error::new(Code::OutOfRange, Field::Underfeed).got(underfeed.to_f64()).within(0.0, 20.0));
    }
    let share = Length::integer(100).minus(underfeed)?.over(Length::integer(100))?;
    thread.lead_mm().times(share)
}

/// The under-feed asked for, if there is any.
pub(super) fn underfeed(job: &Job) -> Option<Ratio> {
    job.underfeed_percent.filter(|percent| *percent != Length::ZERO)
}

/// What an under-feed does to the holder.
#[inline(never)]
pub(super) fn of_underfeed(underfeed: Ratio, holder: Holder, findings: &mut Findings<MOST_PLAN_FINDINGS>) {
    let rigid = holder == Holder::Rigid;
    findings.push(
        Finding::new(FindingId::Underfeed)
            .with_severity(if rigid { Severity::Error } else { Severity::Info })
            .with_evidence("underfeed_percent")
            .with_number(NumberKey::UnderfeedPercent, underfeed.to_f64())
            .with_suggestion(if rigid { "a rigid holder gives nothing: feed at the lead" } else { "" }),
    );
}

/// Torque, gear, time from the R plane and back, axis feed and holder of one hole, with a finding for each limit that is passed.
#[inline(never)]
pub(super) fn spindle(parts: &mut Parts<'_>, job: &Job) -> Result<(), Error> {
    let Parts { thread, fed, holder, depths, findings, spindle, filled, .. } = parts;
    let (rpm, holder, r_plane_mm) = (fed.programmed_rpm, *holder, filled.r_plane_mm.unwrap_or(Length::ZERO));
    let is_force_known = job.cutting_force_n_mm2.is_some() || job.material.is_some();
    if let Some(torque) = if is_force_known { torque(thread, job, findings)? } else { None } {
        spindle.gear = of_gears(job, &torque, rpm, findings)?;
        spindle.torque = Some(torque);
    }
    spindle.time = of_time(thread, job, rpm, depths, r_plane_mm, findings)?;
    if let Some(limit) = job.machine.axis_feed_limit_mm_min {
        let retract = job.machine.retract_factor.unwrap_or(Length::ONE);
        let fit = feed_fit(thread.lead_mm(), rpm, retract, limit).map_err(of_job)?;
        spindle.axis = Some(of_axis(fit, limit, findings));
    }
    spindle.power_kw = spindle.torque.map(|torque| power_kw(torque.likely_nm, rpm)).transpose()?;
    if let Some(count) = job.hole_count {
        spindle.all_holes_s = Some(all_holes_s(count, &spindle.time)?);
    }
    if let Some(travel) = of_holder(thread, job, holder, depths, findings)? {
        spindle.holder_travel = Some(travel);
    }
    Ok(())
}

/// Errors of single calculations name the job's own fields.
fn of_job(error: Error) -> Error {
    error.about(match error.field() {
        Field::Acceleration => Field::MachineAcceleration,
        Field::RetractFactor => Field::MachineRetract,
        Field::FeedLimit => Field::MachineFeedLimit,
        other => other,
    })
}

/// The stroke is no field of the job: its longer part is.
fn of_stroke(error: Error, thread: &Thread, job: &Job) -> Error {
    let depth = if thread.form().is_taper() { job.projection_mm } else { job.full_thread_depth_mm };
    let r_plane = job.r_plane_mm.unwrap_or(Length::ZERO);
    let field = match depth {
        _ if error.field() != Field::Travel => return error,
        Some(depth) if depth > r_plane && thread.form().is_taper() => Field::Projection,
        Some(depth) if depth > r_plane => Field::FullThreadDepth,
        _ => Field::RPlane,
    };
    error.about(field).hint_text("got is the whole stroke, from the R plane to the tap's depth")
}

fn all_holes_s(count: Length, time: &TappingTime) -> Result<f64, Error> {
    if count.whole().is_none_or(|count| !(1..=1_000_000).contains(&count)) {
        return Err(Error::new(Code::OutOfRange, Field::HoleCount)
            .got(count.to_f64())
            .within(1.0, 1e6)
            .hint_text("a whole number of holes"));
    }
    Ok(count.to_f64() * time.time_s)
}

#[inline(never)]
fn torque(
    thread: &Thread,
    job: &Job,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<Option<TorqueBand>, Error> {
    let force = match (job.cutting_force_n_mm2, job.material) {
        (Some(force), _) => ForceByPitch::new(force.to_f64())?,
        (None, Some(material)) => {
            let force = material.force_by_pitch();
            let source = if material.is_read() { "a tap maker's table" } else { "from memory of the trade" };
            findings.push(
                Finding::new(FindingId::CuttingForceAssumed)
                    .with_severity(Severity::Info)
                    .with_evidence("material")
                    .with_number(NumberKey::CuttingForce, force.n_mm2())
                    .with_suggestion(source),
            );
            force
        }
        (None, None) => return Ok(None),
    };
    let of_tap = if job.tap == Some(Tap::Form) { FORMING_FACTOR.start } else { 1.0 };
    let of_taper = if thread.form().is_taper() { TAPER_FACTOR.start } else { 1.0 };
    torque_by_pitch(thread, force, of_tap * of_taper).map(Some)
}

#[inline(never)]
fn of_gears(
    job: &Job,
    torque: &TorqueBand,
    rpm: Ratio,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<Option<GearFit>, Error> {
    let held = || job.machine.gears.iter().flatten();
    if held().next().is_none() {
        return Ok(None);
    }
    let fit = fit_of(held(), torque.high_nm, rpm)?;
    if !fit.is_enough {
        let enough_for_likely = fit.torque_nm.is_some_and(|held| held >= torque.likely_nm);
        let mut finding = Finding::new(FindingId::TorqueLimit)
            .with_severity(if enough_for_likely { Severity::Warning } else { Severity::Error })
            .with_evidence("machine.gears")
            .with_number(NumberKey::TorqueNm, torque.high_nm)
            .with_number(NumberKey::TorqueLimitNm, fit.torque_nm.unwrap_or(0.0));
        finding = match fit.fastest_rpm {
            Some(fastest) => finding.with_number(NumberKey::FastestRpm, fastest).with_suggestion("a lower speed"),
            None => finding.with_suggestion("no gear of this spindle has it"),
        };
        findings.push(finding);
    }
    Ok(Some(fit))
}

#[inline(never)]
fn of_time(
    thread: &Thread,
    job: &Job,
    rpm: Ratio,
    depths: &Depths,
    r_plane_mm: Length,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<TappingTime, Error> {
    let factor = job.machine.retract_factor.unwrap_or(Length::ONE);
    let dwell = crate::range::zero_or_more(job.dwell_s.unwrap_or(Length::ZERO), Field::Dwell, MOST_DWELL_S)?;
    let motion = TappingMotion {
        lead_mm: thread.lead_mm(),
        rpm,
        travel_mm: depths.program_tap_mm.plus(r_plane_mm)?,
        acceleration_rpm_s: job.machine.acceleration_rpm_s.map(Length::to_f64),
        retract_factor: factor,
        dwell_s: dwell.to_f64(),
        peck_mm: job.peck_mm,
    };
    let time = tapping_time(&motion).map_err(|error| of_stroke(of_job(error), thread, job))?;
    if !time.reaches_speed {
        findings.push(
            Finding::new(FindingId::SpeedNotReached)
                .with_evidence("machine.acceleration_rpm_s")
                .with_number(NumberKey::SpeedRpm, rpm.to_f64())
                .with_number(NumberKey::ReachedRpm, time.reached_rpm)
                .with_suggestion("surface speed and time are those of the speed reached"),
        );
    }
    if let Some(highest) = job.machine.highest_rpm.filter(|highest| rpm.times(factor).is_ok_and(|out| out > *highest)) {
        findings.push(
            Finding::new(FindingId::RetractSpeedLimit)
                .with_evidence("machine.retract_factor")
                .with_number(NumberKey::SpeedRpm, rpm.times(factor)?.to_f64())
                .with_number(NumberKey::FastestRpm, highest.over(factor)?.to_f64())
                .with_suggestion("a lower speed or a smaller retract factor"),
        );
    }
    Ok(time)
}

#[inline(never)]
fn of_axis(fit: FeedFit, limit: Length, findings: &mut Findings<MOST_PLAN_FINDINGS>) -> FeedFit {
    if !fit.is_within {
        let fastest = fit.fastest_rpm.round_to(0, Rounding::Down).map_or(f64::NAN, |speed| speed.units() as f64);
        findings.push(
            Finding::new(FindingId::AxisFeedLimit)
                .with_evidence("machine.axis_feed_limit_mm_min")
                .with_number(NumberKey::FeedMmMin, fit.feed_mm_min.max(fit.retract_feed_mm_min).to_f64())
                .with_number(NumberKey::LimitMmMin, limit.to_f64())
                .with_number(NumberKey::FastestRpm, fastest),
        );
    }
    fit
}

#[inline(never)]
fn of_holder(
    thread: &Thread,
    job: &Job,
    holder: Holder,
    depths: &Depths,
    findings: &mut Findings<MOST_PLAN_FINDINGS>,
) -> Result<Option<HolderTravel>, Error> {
    over_travel_mm(job, thread)?;
    for (room, field) in
        [(job.holder_extension_mm, Field::HolderExtension), (job.holder_compression_mm, Field::HolderCompression)]
    {
        let room = crate::range::zero_or_more(room.unwrap_or(Length::ZERO), field, MOST_HOLDER_MM)?;
        if holder == Holder::Rigid && room.is_positive() {
            return Err(Error::new(Code::Contradiction, field)
                .got(room.to_f64())
                .hint_text("a rigid holder gives nothing: leave it out, or say which holder"));
        }
    }
    if holder == Holder::Rigid {
        return Ok(None);
    }
    let zero = Length::ZERO;
    let underfeed = job.underfeed_percent.unwrap_or(zero);
    let coast = job.over_travel_turns.unwrap_or(zero);
    let travel = holder_travel(thread.lead_mm(), depths.program_tap_mm, underfeed, coast)?;
    let short = job.holder_extension_mm.is_some_and(|room| travel.extension_mm > room)
        || job.holder_compression_mm.is_some_and(|room| travel.compression_mm > room);
    if short || travel.extension_mm.is_positive() || travel.compression_mm.is_positive() {
        findings.push(
            Finding::new(FindingId::HolderTravel)
                .with_severity(if short { Severity::Error } else { Severity::Info })
                .with_evidence("holder")
                .with_number(NumberKey::ExtensionMm, travel.extension_mm.to_f64())
                .with_number(NumberKey::CompressionMm, travel.compression_mm.to_f64())
                .with_suggestion(if short {
                    "more than the holder has: less under-feed, or another holder"
                } else {
                    ""
                }),
        );
    }
    Ok(Some(travel))
}
