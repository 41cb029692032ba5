//! Whether the lead that is cut is the thread's, and if not, why not.

use super::cut::{Basis, Cut};
use super::declared::Declared;
use super::finding::{EvidenceKind, ProgramFinding, ProgramNumberKey as Key};
use super::finding_id::ProgramFindingId as Id;
use super::identify::LEAD_WITHIN;
use super::judge::{Judge, Tapping};
use super::state::FeedWord;
use crate::feed::{FeedMode, Unit};
use crate::finding::Severity;
use crate::length::{Length, Rounding};
use crate::motion::Holder;
use crate::profile::axial_on_pitch_diameter_e3;
use crate::thread::Thread;

/// Beyond this no rounding explains an error.
const ROUNDED: Length = Length::parts(2, 100);
/// What a ground tap is off by itself: below a fifth of it an error is noise.
const NOISE: Length = Length::parts(1, 10_000);

/// How bad an error of the lead is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Level {
    Fine,
    Warning,
    Error,
}

/// A lead against the one that is expected.
struct Compared<'a> {
    cut: Cut,
    declared: &'a Declared,
    expected_mm: Length,
    error: Length,
    level: Level,
    basis: Basis,
    unit: Unit,
    depth_mm: Option<Length>,
}

impl Judge {
    /// The finding of a lead that is not the declared thread's; None if it is.
    pub(super) fn against(&self, cut: Cut, declared: &Declared, at: &Tapping) -> Option<ProgramFinding> {
        let lead = declared.thread.lead_mm();
        let under = self.options.underfeed_percent.unwrap_or(Length::ZERO);
        let share = Length::ONE.minus(under.over(Length::integer(100)).ok()?).ok()?;
        let expected_mm = lead.times(share).ok()?;
        let error = cut.lead_mm.over(expected_mm).ok()?.minus(Length::ONE).ok()?;
        let level = level_of(error, at.holder).max(level_in_depth(error, &declared.thread, at));
        if level == Level::Fine {
            return None;
        }
        let (basis, unit) = (at.basis, self.state.unit().unwrap_or(Unit::Mm));
        let compared = Compared { cut, declared, expected_mm, error, level, basis, unit, depth_mm: at.depth_mm };
        let feed = self.state.feed.as_ref()?;
        let named = self
            .units_changed(&compared, feed)
            .or_else(|| self.other_unit(&compared))
            .or_else(|| self.other_mode(&compared, feed))
            .or_else(|| self.other_point(&compared, feed))
            .or_else(|| self.pitch_for_lead(&compared))
            .or_else(|| self.rounded(&compared, feed))
            .or_else(|| self.stale(&compared, feed))
            .unwrap_or_else(|| self.mismatch(&compared));
        Some(self.with_grounds(named, declared))
    }

    /// The lines that set what the lead is made of.
    pub(super) fn with_grounds(&self, mut finding: ProgramFinding, declared: &Declared) -> ProgramFinding {
        finding.thread = Some(declared.thread);
        let state = &self.state;
        finding = finding.because(EvidenceKind::Thread, declared.line);
        if let Some(speed) = &state.speed {
            finding = finding.because(EvidenceKind::Speed, speed.line);
        }
        if let Some(feed) = &state.feed {
            finding = finding.because(EvidenceKind::Feed, feed.said.line);
        }
        if let Some(units) = &state.units {
            finding = finding.because(EvidenceKind::Units, units.line);
        }
        if let Some(mode) = &state.mode {
            finding = finding.because(EvidenceKind::FeedMode, mode.line);
        }
        finding.because(EvidenceKind::Cycle, state.cycle.line)
    }

    fn units_changed(&self, compared: &Compared<'_>, feed: &FeedWord) -> Option<ProgramFinding> {
        let (set, now) = (feed.unit?, self.state.units?);
        let converts = self.dialect.reading.feed_converted_on_units_change;
        if set == now.value || converts == Some(true) || feed.said.line >= now.line {
            return None;
        }
        let speed = self.speed();
        let converted = feed.said.value.and_then(|value| compared.basis.lead_mm(value, speed, set));
        Some(
            self.at_feed(Id::UnitsChangedAfterFeed)
                .with(Key::LeadMm, compared.cut.lead_mm.to_f64())
                .with_some(Key::LeadIfConvertedMm, converted.map(Length::to_f64))
                .with(Key::ExpectedLeadMm, compared.expected_mm.to_f64())
                .with(Key::SetAtLine, f64::from(feed.said.line))
                .with(Key::ChangedAtLine, f64::from(now.line)),
        )
        .map(|finding| self.suggest(finding, compared))
    }

    fn other_unit(&self, compared: &Compared<'_>) -> Option<ProgramFinding> {
        let larger = compared.cut.lead_mm.times(Length::INCH).ok()?;
        let smaller = compared.cut.lead_mm.over(Length::INCH).ok()?;
        let factor = if is_same(larger, compared.expected_mm) {
            Length::INCH
        } else if is_same(smaller, compared.expected_mm) {
            Length::ONE.over(Length::INCH).ok()?
        } else {
            return None;
        };
        let finding = self.lead_finding(Id::InchMetricMix, compared).with(Key::Factor, factor.to_f64());
        Some(self.suggest(finding, compared))
    }

    fn other_mode(&self, compared: &Compared<'_>, feed: &FeedWord) -> Option<ProgramFinding> {
        let value = feed.said.value?;
        let other = compared.basis.other().lead_mm(value, self.speed(), compared.unit)?;
        if !is_same(other, compared.expected_mm) {
            return None;
        }
        let finding = self
            .lead_finding(Id::FeedModeMix, compared)
            .with(Key::LeadIfOtherModeMm, other.to_f64())
            .with(Key::Feed, value.to_f64());
        Some(self.suggest(finding, compared))
    }

    fn other_point(&self, compared: &Compared<'_>, feed: &FeedWord) -> Option<ProgramFinding> {
        if feed.said.written?.had_point() {
            return None;
        }
        let factor = [1_i64, 2, 3, 4].into_iter().find_map(|places| {
            let power = Length::integer(10_i64.checked_pow(u32::try_from(places).ok()?)?);
            let (less, more) = (compared.cut.lead_mm.over(power).ok()?, compared.cut.lead_mm.times(power).ok()?);
            if is_same(less, compared.expected_mm) {
                return Length::ONE.over(power).ok();
            }
            is_same(more, compared.expected_mm).then_some(power)
        })?;
        let finding = self.lead_finding(Id::DecimalPoint, compared).with(Key::Factor, factor.to_f64());
        Some(self.suggest(finding, compared))
    }

    fn rounded(&self, compared: &Compared<'_>, feed: &FeedWord) -> Option<ProgramFinding> {
        let (value, written) = (feed.said.value?, feed.said.written?);
        if compared.error.magnitude() > ROUNDED {
            return None;
        }
        let exact = compared.basis.feed(compared.expected_mm, self.speed(), compared.unit)?;
        let at_decimals = |rounding| exact.round_to(written.decimals(), rounding).ok()?.to_length().ok();
        let is_rounded =
            [Rounding::HalfEven, Rounding::Down, Rounding::Up].into_iter().any(|r| at_decimals(r) == Some(value));
        if !is_rounded {
            return None;
        }
        let finding = self.lead_finding(Id::FeedRounded, compared).severe(compared.severity());
        Some(self.suggest(finding, compared))
    }

    /// Of a thread with several starts, the pitch where the lead belongs.
    fn pitch_for_lead(&self, compared: &Compared<'_>) -> Option<ProgramFinding> {
        let thread = &compared.declared.thread;
        if thread.starts() < 2 || !is_same(compared.cut.lead_mm, thread.pitch_mm()) {
            return None;
        }
        Some(
            self.at_block(Id::LeadVsPitch)
                .with(Key::LeadMm, compared.cut.lead_mm.to_f64())
                .with(Key::ExpectedLeadMm, compared.expected_mm.to_f64())
                .with(Key::PitchMm, thread.pitch_mm().to_f64())
                .with(Key::Starts, f64::from(thread.starts())),
        )
    }

    /// The feed fitted the speed it was written for; that speed has been changed.
    fn stale(&self, compared: &Compared<'_>, feed: &FeedWord) -> Option<ProgramFinding> {
        let before = self.before_change.filter(|before| before.feed_line == feed.said.line)?;
        let speed = self.state.speed?;
        if compared.basis != Basis::PerMinute || before.speed_line == speed.line || speed.value == Some(before.speed) {
            return None;
        }
        let finding = ProgramFinding::new(Id::StaleFeedAfterSpeedChange, speed.line, speed.column, speed.end_column)
            .with(Key::LeadBeforeMm, before.lead_mm.to_f64())
            .with(Key::LeadAfterMm, compared.cut.lead_mm.to_f64())
            .with_some(Key::Feed, feed.said.value.map(Length::to_f64))
            .with_some(Key::SpeedAfterRpm, speed.value.map(Length::to_f64))
            .with(Key::SpeedBeforeRpm, before.speed.to_f64());
        Some(self.suggest(finding, compared))
    }

    fn mismatch(&self, compared: &Compared<'_>) -> ProgramFinding {
        let finding = self.lead_finding(Id::LeadMismatch, compared).severe(compared.severity());
        self.suggest(finding, compared)
    }

    /// A finding about F: at its word if that stands in this block, else at the block.
    pub(super) fn at_feed(&self, id: Id) -> ProgramFinding {
        match &self.state.feed {
            Some(feed) if feed.said.line == self.line => {
                ProgramFinding::new(id, self.line, feed.said.column, feed.said.end_column)
            }
            _ => self.at_block(id),
        }
    }

    fn lead_finding(&self, id: Id, compared: &Compared<'_>) -> ProgramFinding {
        self.at_feed(id)
            .with(Key::LeadMm, compared.cut.lead_mm.to_f64())
            .with(Key::ExpectedLeadMm, compared.expected_mm.to_f64())
            .with(Key::LeadError, compared.error.to_f64())
            .with_some(Key::DriftMm, compared.drift_mm().map(Length::to_f64))
            .with_some(Key::DriftPitches, compared.drift_pitches().map(Length::to_f64))
    }

    /// The F that would be right.
    fn suggest(&self, finding: ProgramFinding, compared: &Compared<'_>) -> ProgramFinding {
        self.feed_for(finding, compared.expected_mm, compared.basis, compared.unit)
    }

    /// The decimals of F that the control takes, where the dialect says so.
    pub(super) fn feed_decimals(&self, mode: FeedMode, unit: Unit) -> Option<u8> {
        let most = &self.dialect.reading.max_decimals;
        match mode {
            FeedMode::PerMinute => most.feed_per_minute.of(unit),
            FeedMode::PerRevolution => most.feed_per_revolution.of(unit),
        }
    }
}

impl Compared<'_> {
    const fn severity(&self) -> Severity {
        match self.level {
            Level::Error => Severity::Error,
            _ => Severity::Warning,
        }
    }

    /// How far the tap is from true at the bottom.
    fn drift_mm(&self) -> Option<Length> {
        let depth = self.depth_mm.filter(|depth| depth.is_positive())?;
        self.error.magnitude().times(depth).ok()
    }

    fn drift_pitches(&self) -> Option<Length> {
        self.drift_mm()?.over(self.declared.thread.pitch_mm()).ok()
    }
}

/// Whether one lead is as good as the other.
pub(super) fn is_same(lead: Length, other: Length) -> bool {
    let off = lead.over(other).and_then(|ratio| ratio.minus(Length::ONE));
    off.is_ok_and(|off| off.magnitude() <= LEAD_WITHIN)
}

/// By the holder: rigid 0.1 and 0.5 %; one that gives 1 %, and 3 % over or 6 % under (common practice).
fn level_of(error: Length, holder: Holder) -> Level {
    let parts = |thousandths: i64| Length::parts(thousandths as u32, 1000);
    let (warning, over, under) = match holder {
        Holder::Rigid => (parts(1), parts(5), parts(5)),
        _ => (parts(10), parts(30), parts(60)),
    };
    let off = error.magnitude();
    let limit = if error.is_negative() { under } else { over };
    if off > limit {
        Level::Error
    } else if off > warning {
        Level::Warning
    } else {
        Level::Fine
    }
}

/// By what it does to the pitch diameter over the depth in metal, 1.732 × error × depth at 60°: from 20 % of its
/// tolerance a warning, from 50 % an error (judgement). Only where the tap cannot give.
fn level_in_depth(error: Length, thread: &Thread, at: &Tapping) -> Level {
    let off = error.magnitude();
    if at.holder != Holder::Rigid || off <= NOISE {
        return Level::Fine;
    }
    let effect = at.depth_mm.filter(|depth| depth.is_positive()).and_then(|depth| {
        let effect =
            off.times(depth).ok()?.times(Length::parts(axial_on_pitch_diameter_e3(thread.form()), 1000)).ok()?;
        effect.over(at.pitch_tolerance_mm(thread)?).ok()
    });
    match effect {
        Some(effect) if effect >= const { Length::parts(1, 2) } => Level::Error,
        Some(effect) if effect >= const { Length::parts(1, 5) } => Level::Warning,
        _ => Level::Fine,
    }
}
