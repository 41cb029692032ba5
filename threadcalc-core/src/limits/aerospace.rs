//! Limits of size of the threads with a larger root: MJ of ISO 5855-1:1999, UNJ of ASME B1.15-1995 and SAE AS8879D.
//!
//! Major and pitch diameters are those of M (ISO 965-1) and of UN (ASME B1.1). The scope of SAE AS8879D gives UNJ a
//! thread 9/16 H high, which is its smallest minor diameter; how much larger it may be, and the minor diameters of MJ
//! and of the screws, have not been read.

use super::asme_b1_1::{self, inches};
use super::{Confidence, Limits, iso_965_1};
use crate::error::Error;
use crate::thread::{Side, Thread};

/// 9/8 H in 1e-8 pitches.
const DEPTH_E8: i128 = 97_427_858;

/// MJ.
#[inline(never)]
pub(super) fn metric(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let of_m = iso_965_1::without_minor(thread, class)?;
    Ok(Limits {
        source: match of_m.confidence {
            Confidence::Formula => "ISO 5855-1:1999 with the formulas of ISO 965-1:2013, rounded to the R40 series",
            _ => "ISO 5855-1:1999 with the tolerances of ISO 965-1:2013; ISO 724",
        },
        // No row of MJ has been read.
        confidence: of_m.confidence.or_less_sure(Confidence::Rule),
        ..of_m
    })
}

/// UNJ.
#[inline(never)]
pub(super) fn unified(thread: &Thread, class: &str) -> Result<Limits, Error> {
    let of_un = asme_b1_1::limits(thread, class)?;
    let smallest = match thread.side() {
        Some(Side::Internal) => Some(inches(asme_b1_1::diameter_less(thread, DEPTH_E8)?)?),
        _ => None,
    };
    Ok(Limits {
        minor_mm: (smallest, None),
        decimals: 4,
        source: "ASME B1.15-1995 and SAE AS8879D with the formulas of ASME B1.1-2003",
        confidence: of_un.confidence.or_less_sure(Confidence::Rule),
        ..of_un
    })
}
