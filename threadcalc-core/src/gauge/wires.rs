//! Measurement over three wires: screws, and the plugs that gauge a hole.

use core::f64::consts::PI;

use crate::error::{Code, Error, Field};
use crate::length::Length;
use crate::thread::Thread;

/// The wire that touches the flanks at the pitch line, in millimetres.
///
/// ```text
/// W = P / (2 cos a)      a: angle of a flank; 60°: 0.577350 P, 55°: 0.563691 P
/// ```
///
/// # Errors
/// [`Code::DoesNotApply`] for taper threads and for unequal flanks.
///
/// # Example
/// ```
/// use threadcalc_core::{Thread, best_wire_mm};
///
/// let wire = best_wire_mm(&Thread::read(b"M10")?)?;
/// assert!((wire - 0.866025).abs() < 1e-6);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// FED-STD-H28, from memory; a handbook page prints 0.57735 P.
pub fn best_wire_mm(thread: &Thread) -> Result<f64, Error> {
    let angle = flank_angle(thread)?;
    Ok(thread.pitch_mm().to_f64() / (2.0 * libm::cos(angle)))
}

/// The measurement over three wires, in millimetres.
///
/// ```text
/// M = E − (P/2) cot a + W (1 + cosec a) [ + (W/2) tan²(lead angle) cos a cot a ]
/// tan(lead angle) = lead / (pi E)
/// ```
///
/// E is the pitch diameter, W the wire, a the angle of a flank. `lead_angle` adds the term in brackets,
/// which FED-STD-H28 has for the tilt of the wires; small for single-start threads of fine pitch, and left out
/// by most shop tables. The flattening of wires and flanks under the measuring force is in neither.
///
/// # Errors
/// [`Code::OutOfRange`] for a wire that does not rest on the flanks (60°: 0.56 to 0.90 P; 55°: 0.506 to
/// 0.853 P; other flanks 0.94 to 1.25 of the best wire, a judgement) or a pitch diameter that is not the
/// thread's (major diameter − 2 P to + P); [`Code::DoesNotApply`] for taper threads and unequal flanks.
///
/// # Example
/// ```
/// use threadcalc_core::{Length, Thread, over_wires};
///
/// let (wire, pitch_diameter) = (Length::new(866, 1000)?, Length::new(9026, 1000)?);
/// let over = over_wires(&Thread::read(b"M10")?, wire, pitch_diameter, false)?;
/// assert!((over - 10.325).abs() < 0.0005);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// FED-STD-H28 from memory; without its last term as a model engineers' handbook prints it, with its range
/// of wires for 60°; the range for 55° from memory.
pub fn over_wires(thread: &Thread, wire_mm: Length, pitch_diameter_mm: Length, lead_angle: bool) -> Result<f64, Error> {
    let angle = flank_angle(thread)?;
    check_wire(thread, wire_mm)?;
    let (pitch, major) = (thread.pitch_mm(), thread.major_mm());
    let (least, most) = (major.minus(pitch.times(Length::integer(2))?)?.max(Length::ZERO), major.plus(pitch)?);
    if !pitch_diameter_mm.is_positive() || pitch_diameter_mm < least || pitch_diameter_mm > most {
        return Err(Error::new(Code::OutOfRange, Field::PitchDiameter)
            .got(pitch_diameter_mm.to_f64())
            .within(least.to_f64(), most.to_f64()));
    }
    let (pitch, wire, diameter) = (pitch.to_f64(), wire_mm.to_f64(), pitch_diameter_mm.to_f64());
    let cotangent = 1.0 / libm::tan(angle);
    let plain = diameter - pitch / 2.0 * cotangent + wire * (1.0 + 1.0 / libm::sin(angle));
    if !lead_angle {
        return Ok(plain);
    }
    let tilt = thread.lead_mm().to_f64() / (PI * diameter);
    Ok(plain + wire / 2.0 * (tilt * tilt) * libm::cos(angle) * cotangent)
}

/// The angle of either flank in radians.
fn flank_angle(thread: &Thread) -> Result<f64, Error> {
    let [leading, following] = thread.profile().flank_angles_deg;
    if thread.form().is_taper() || leading != following {
        return Err(Error::new(Code::DoesNotApply, Field::Form).hint_text("a straight thread with equal flanks"));
    }
    Ok(leading * (PI / 180.0))
}

/// Exact where the range is in pitches.
fn check_wire(thread: &Thread, wire_mm: Length) -> Result<(), Error> {
    let pitches = |thousandths: u32| thread.pitch_mm().times(Length::parts(thousandths, 1000));
    let (low, high, fits) = match thread.profile().flank_angles_deg {
        [30.0, _] => exact_range(pitches(560)?, pitches(900)?, wire_mm),
        [27.5, _] => exact_range(pitches(506)?, pitches(853)?, wire_mm),
        _ => {
            let best = best_wire_mm(thread)?;
            let (low, high) = (0.94 * best, 1.25 * best);
            (low, high, (low..=high).contains(&wire_mm.to_f64()))
        }
    };
    if fits {
        return Ok(());
    }
    Err(Error::new(Code::OutOfRange, Field::Wire)
        .got(wire_mm.to_f64())
        .within(low, high)
        .hint_text("a wire that rests on the flanks, best at the pitch line"))
}

fn exact_range(low: Length, high: Length, wire: Length) -> (f64, f64, bool) {
    (low.to_f64(), high.to_f64(), low <= wire && wire <= high)
}
