//! A hole whose thread nobody names: what its lead says by itself.

use super::cut::{Basis, Cut, Cuts};
use super::finding::{ProgramFinding, ProgramNumberKey as Key};
use super::finding_id::ProgramFindingId as Id;
use super::identify::{Identification, LEAD_WITHIN, LeadVerdict, identify, identify_rounded};
use super::judge::{Judge, Tapping};
use super::readings;
use super::report::Reason;
use super::state::Said;
use crate::feed::{FeedMode, Unit, feed};
use crate::length::{Length, Ratio};

impl Judge {
    /// The lead alone, under the first reading that is a standard pitch, or under the first.
    pub(super) fn identify(&mut self, cuts: &Cuts, at: &Tapping) {
        self.not_checked.note(Reason::ThreadNotKnown, self.line);
        let half_digit = self.half_digit().unwrap_or(Length::ZERO);
        let known = |cut: &Cut| {
            let found = identify_rounded(cut.lead_mm, half_digit).ok()?;
            (found.verdict() != LeadVerdict::Nonstandard).then_some((*cut, found))
        };
        let found = cuts.iter().find_map(|cut| known(&cut));
        let finding = match found {
            Some((cut, found)) => {
                let finding = self.standard(cut, &found);
                if cuts.is_one() { finding } else { finding.uncertain(cut.reading) }
            }
            None => {
                let Some(cut) = cuts.first() else { return };
                self.elsewhere(cut, at).unwrap_or_else(|| self.nonstandard(cut))
            }
        };
        let cause = self.state.feed.map_or(0, |feed| feed.said.line).max(self.state.cycle.line);
        self.count(finding, cause, at.count);
    }

    /// Half of the last digits of F and S, in parts of the lead, where they have all the decimals that their control
    /// takes: they may be rounded ones.
    fn half_digit(&self) -> Option<Ratio> {
        let mode = super::cut::bases(&self.state, &self.dialect).next()?.0.mode();
        let of = |said: Said, most: Option<u8>| {
            let (written, value) = (said.written?.decimals(), said.value?);
            let power = super::number::power_of_ten(written).filter(|_| most.is_some_and(|most| written >= most))?;
            Length::new(1, power.checked_mul(2)?).ok()?.over(value).ok()
        };
        let of_feed = of(self.state.feed?.said, self.feed_decimals(mode, self.state.unit()?));
        let speed = self.state.speed.filter(|_| mode == FeedMode::PerMinute);
        let of_speed = speed.and_then(|said| of(said, self.dialect.reading.speed_decimals));
        of_feed.unwrap_or(Length::ZERO).plus(of_speed.unwrap_or(Length::ZERO)).ok()
    }

    fn standard(&self, cut: Cut, found: &Identification) -> ProgramFinding {
        let id = if found.verdict() == LeadVerdict::Identified { Id::ThreadIdentified } else { Id::AmbiguousThread };
        let finding = self.at_feed(id).with(Key::LeadMm, cut.lead_mm.to_f64());
        with_matches(finding, found)
    }

    fn nonstandard(&self, cut: Cut) -> ProgramFinding {
        let finding = self.at_feed(Id::NonstandardLead).with(Key::LeadMm, cut.lead_mm.to_f64());
        identify(cut.lead_mm, LEAD_WITHIN, 1).map_or(finding, |found| with_matches(finding, &found))
    }

    /// No standard pitch as it stands, but one in the other unit or under the other mode.
    fn elsewhere(&self, cut: Cut, at: &Tapping) -> Option<ProgramFinding> {
        let pitch = |lead: Length| {
            let found = identify(lead, LEAD_WITHIN, 1).ok()?;
            (found.verdict() == LeadVerdict::Identified).then(|| found.matches().next()).flatten()
        };
        let feed = self.state.feed?.said.value?;
        let unit = self.state.unit().unwrap_or(Unit::Mm);
        let finding = |id| self.at_feed(id).with(Key::LeadMm, cut.lead_mm.to_f64());
        for (lead, factor) in [
            (cut.lead_mm.times(Length::INCH).ok()?, Length::INCH),
            (cut.lead_mm.over(Length::INCH).ok()?, Length::ONE.over(Length::INCH).ok()?),
        ] {
            if let Some(found) = pitch(lead) {
                let finding = finding(Id::InchMetricMix)
                    .with(Key::ExpectedLeadMm, found.pitch_mm.to_f64())
                    .with(Key::Factor, factor.to_f64());
                return Some(
                    self.feed_for(finding, found.pitch_mm, at.basis, unit).uncertain(readings::STANDARD_PITCH_MEANT),
                );
            }
        }
        let other = at.basis.other().lead_mm(feed, self.speed(), unit)?;
        let found = pitch(other)?;
        let finding = finding(Id::FeedModeMix)
            .with(Key::ExpectedLeadMm, found.pitch_mm.to_f64())
            .with(Key::LeadIfOtherModeMm, other.to_f64())
            .with(Key::Feed, feed.to_f64());
        Some(self.feed_for(finding, found.pitch_mm, at.basis, unit).uncertain(readings::STANDARD_PITCH_MEANT))
    }

    /// The F that cuts a lead, as word and as number.
    pub(super) fn feed_for(
        &self,
        finding: ProgramFinding,
        lead_mm: Length,
        basis: Basis,
        unit: Unit,
    ) -> ProgramFinding {
        let mode = basis.mode();
        let (rpm, usual) = match mode {
            FeedMode::PerMinute => (self.speed(), 4),
            FeedMode::PerRevolution => (None, 6),
        };
        let decimals = self.feed_decimals(mode, unit).unwrap_or(usual);
        let Ok(feed) = feed(lead_mm, rpm, unit, mode, decimals) else { return finding };
        let value = feed.value().ok().map(Length::to_f64);
        let finding = finding.with_some(Key::SuggestedFeed, value);
        let is_at_feed = self.state.feed.is_some_and(|feed| {
            (feed.said.line, feed.said.column, feed.said.end_column)
                == (finding.line(), finding.column(), finding.end_column())
        });
        if is_at_feed { finding.write_over(feed.word()) } else { finding.write(feed.word()) }
    }
}

/// The nearest pitch, and where it is not the only one or none at all, the next.
fn with_matches(mut finding: ProgramFinding, found: &Identification) -> ProgramFinding {
    let is_one = found.verdict() == LeadVerdict::Identified;
    let keys = [(Key::PitchMm, Key::Tpi, Key::LeadError), (Key::NextPitchMm, Key::NextTpi, Key::NextLeadError)];
    for ((pitch, per_inch, error), near) in keys.into_iter().zip(found.matches()).take(if is_one { 1 } else { 2 }) {
        finding = finding
            .with(pitch, near.pitch_mm.to_f64())
            .with_some(per_inch, near.tpi.map(Length::to_f64))
            .with(error, near.lead_error.to_f64());
    }
    finding
}
