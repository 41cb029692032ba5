//! The codes and letters of a dialect that a request needs, or what it lacks.

use super::CycleRequest;
use super::numbers::Numbers;
use crate::dialect::{CodeText, Dialect, ReturnTo};
use crate::error::{Code, Error, Field};
use crate::finding::{Finding, FindingId, OpenFindings, Severity};
use crate::motion::Holder;
use crate::thread::Hand;

/// The codes of the dialect that the request needs.
pub(super) struct Codes {
    pub mode: CodeText,
    pub tap: CodeText,
    pub return_to: CodeText,
}

impl Codes {
    #[inline(never)]
    pub(super) fn of(request: &CycleRequest<'_>, numbers: &Numbers) -> Result<Result<Self, Refusal>, Error> {
        let dialect = request.dialect;
        if dialect.lh_by_spindle_direction && (dialect.tap_lh.is_some() || dialect.peck_code_lh.is_some()) {
            return Err(Error::new(Code::Contradiction, Field::DialectLeftBySpindle)
                .hint_text("the spindle's direction or a code of its own tells the left hand, not both"));
        }
        for (right, left, field) in [
            (dialect.tap_rh, dialect.tap_lh, Field::DialectTapLeft),
            (dialect.peck_code_rh, dialect.peck_code_lh, Field::DialectPeckLeft),
        ] {
            if right.is_some() && right == left {
                return Err(Error::new(Code::Contradiction, field)
                    .hint_text("one code cannot tell both hands: leave it out and set lh_by_spindle_direction"));
            }
        }
        let pecks = numbers.peck.is_some();
        let Some(tap) = dialect.tapping_code(request.thread.hand(), pecks) else {
            return Ok(Err(Refusal::Lacks(cycle_of(request.thread.hand(), pecks))));
        };
        let Some(mode) = dialect.feed_code(request.feed.mode()) else {
            return Ok(Err(Refusal::Lacks("feed per revolution")));
        };
        if pecks && !meets_thread_again(request) {
            return Ok(Err(Refusal::LosesThread));
        }
        let missing = [
            (pecks && dialect.peck_word.is_none(), "word for the depth of a peck"),
            (numbers.dwell_s.is_some() && dialect.dwell_word.is_none(), "word for a dwell at the bottom"),
            (
                numbers.retract_factor.is_some() && dialect.retract_multiplier_word.is_none(),
                "word for a faster way out",
            ),
        ];
        if let Some((_, what)) = missing.into_iter().find(|(is_missing, _)| *is_missing) {
            return Ok(Err(Refusal::Lacks(what)));
        }
        let Some(return_to) = dialect.return_code(request.return_to) else {
            return Ok(Err(Refusal::Lacks(match request.return_to {
                ReturnTo::RPlane => "code for the return to the R plane",
                ReturnTo::Initial => "code for the return to the initial height",
            })));
        };
        Ok(Ok(Self { mode, tap, return_to }))
    }
}

/// Whether spindle and axis stay together from peck to peck.
fn meets_thread_again(request: &CycleRequest<'_>) -> bool {
    match request.holder {
        Holder::Rigid => true,
        Holder::TensionCompression => request.dialect.rigid_tap_code.is_none(),
        Holder::Floating => false,
    }
}

const fn cycle_of(hand: Hand, pecks: bool) -> &'static str {
    match (hand, pecks) {
        (Hand::Right, false) => "right-hand tapping cycle",
        (Hand::Left, false) => "left-hand tapping cycle",
        (Hand::Right, true) => "right-hand tapping cycle with pecks",
        (Hand::Left, true) => "left-hand tapping cycle with pecks",
    }
}

/// Why there are no words, in little room until it is told.
#[derive(Clone, Copy)]
pub(crate) enum Refusal {
    /// The dialect has none of these.
    Lacks(&'static str),
    /// Spindle and axis do not stay together from peck to peck.
    LosesThread,
}

impl Refusal {
    #[inline(never)]
    pub(crate) fn tell(self, dialect: &Dialect, findings: &mut OpenFindings<'_>) {
        findings.push(self.finding(dialect));
    }

    pub(super) fn finding(self, dialect: &Dialect) -> Finding {
        match self {
            Self::Lacks(what) => Finding::new(FindingId::CodeNotOnControl)
                .with_evidence("dialect")
                .with_suggestion(if dialect.name.is_empty() { "it" } else { dialect.name.as_str() })
                .with_suggestion(" has no ")
                .with_suggestion(what),
            Self::LosesThread => Finding::new(FindingId::PeckTapping)
                .with_severity(Severity::Error)
                .with_evidence("holder")
                .with_suggestion("a rigid holder and a synchronised cycle"),
        }
    }
}
