//! The numbers of a request, checked and rounded to what its words can say.

use super::CycleRequest;
use crate::cutting::MOST_RPM;
use crate::error::{Code, Error, Field};
use crate::length::{Length, Ratio, Rounding};
use crate::motion::{Holder, MOST_TRAVEL, retract};
use crate::range::{above_zero, zero_or_more};

/// Longer at the bottom of a hole is a mix-up of seconds and milliseconds.
pub(crate) const MOST_DWELL_S: i64 = 60;
/// The feed of a holder that gives may be off the lead by this much: a fifth.
const MOST_UNDERFEED: Ratio = Length::parts(1, 5);

/// The numbers of the request, checked, lengths in the unit of the words.
pub(super) struct Numbers {
    pub depth: Length,
    pub r_plane: Length,
    pub peck: Option<Length>,
    pub dwell_s: Option<Ratio>,
    pub retract_factor: Option<Ratio>,
}

impl Numbers {
    #[inline(never)]
    pub(super) fn of(request: &CycleRequest<'_>) -> Result<Self, Error> {
        check_feed(request)?;
        let (unit, decimals) = (request.feed.unit(), request.dialect.decimals(request.feed.unit()));
        let in_words = |length: Length, rounding| -> Result<Length, Error> {
            length.over(unit.in_mm())?.round_to(decimals, rounding)?.to_length()
        };
        let depth = above_zero(request.depth_mm, Field::Depth, MOST_TRAVEL)?;
        let r_plane = above_zero(request.r_plane_mm, Field::RPlane, MOST_TRAVEL)?;
        let peck = match request.peck_mm {
            None => None,
            Some(peck) => {
                let stroke = depth.plus(r_plane)?;
                let rounded = in_words(peck, Rounding::Down)?;
                if !rounded.is_positive() || peck > stroke {
                    return Err(Error::new(Code::OutOfRange, Field::Peck)
                        .got(peck.to_f64())
                        .within(0.0, stroke.to_f64())
                        .hint_text("more than 0 in the decimals of an axis word, at most from R to the depth"));
                }
                Some(rounded)
            }
        };
        let dwell =
            request.dwell_s.map_or(Ok(Length::ZERO), |dwell| zero_or_more(dwell, Field::Dwell, MOST_DWELL_S))?;
        let factor = request.retract_factor.map_or(Ok(Length::ONE), retract)?;
        Ok(Self {
            depth: in_words(depth, Rounding::Up)?,
            r_plane: in_words(r_plane, Rounding::Up)?,
            peck,
            dwell_s: Some(dwell).filter(|dwell| *dwell != Length::ZERO),
            retract_factor: Some(factor).filter(|factor| *factor != Length::ONE),
        })
    }
}

/// S, F and the thread belong together.
fn check_feed(request: &CycleRequest<'_>) -> Result<(), Error> {
    let rpm = above_zero(request.rpm, Field::Rpm, MOST_RPM)?;
    if request.feed.rpm().is_some_and(|made_for| made_for != rpm) {
        return Err(Error::new(Code::Contradiction, Field::Rpm)
            .got(rpm.to_f64())
            .hint_text("the feed was made for another speed: S and F belong together"));
    }
    let (lead, fed) = (request.thread.lead_mm(), request.feed.lead_mm());
    let off = if fed == lead { Length::ZERO } else { fed.minus(lead)?.over(lead)?.magnitude() };
    let most = if request.holder == Holder::Rigid { Length::ZERO } else { MOST_UNDERFEED };
    if off > most {
        return Err(Error::new(Code::Contradiction, Field::Feed).got(fed.to_f64()).hint_text(
            "the feed was made for another lead: only a holder that gives may be fed off the lead, by a fifth at most",
        ));
    }
    Ok(())
}
