//! DIN 76-1: how much deeper than its full thread a blind hole has to be.

use crate::error::{Code, Error, Field};
use crate::form::Form;
use crate::length::Length;
use crate::named::named;
use crate::thread::{Side, Thread};

named! {
    /// The run-outs of a blind tapped hole in DIN 76-1.
    pub enum RunOut {
        /// The normal one, e1.
        Normal = 1 "normal",
        /// The short one, e2.
        Short = 2 "short",
        /// The long one, e3.
        Long = 3 "long",
    }
}

/// Pitch in hundredths of a millimetre, e1 in tenths.
const NORMAL: [(u32, u32); 24] = [
    (20, 13),
    (25, 15),
    (30, 18),
    (35, 21),
    (40, 23),
    (45, 26),
    (50, 28),
    (60, 34),
    (70, 38),
    (75, 40),
    (80, 42),
    (100, 51),
    (125, 62),
    (150, 73),
    (175, 83),
    (200, 93),
    (250, 112),
    (300, 131),
    (350, 152),
    (400, 168),
    (450, 184),
    (500, 208),
    (550, 224),
    (600, 240),
];

const PICOMETRES_IN_HUNDREDTH: i64 = 10_000_000;

/// The run-out of a blind hole for an ISO metric thread, in millimetres, exact: the hole has to have its full
/// diameter at least to `full thread + run-out`. By pitch, for coarse and fine threads alike.
///
/// It is the designer's allowance for chamfer and chips, where the tap is not known. With a tap at hand
/// [`depths`](crate::depths) counts its own chamfer.
///
/// # Errors
/// [`Code::DoesNotApply`] for other threads than M and for holes of wire inserts; [`Code::NotSourced`] for pitches
/// that the table does not have, and the short and the long run-out, which nobody has read yet;
/// [`Code::Contradiction`] for an external thread.
///
/// # Example
/// ```
/// use threadcalc_core::{Length, RunOut, Thread, run_out_mm};
///
/// let run_out = run_out_mm(&Thread::read(b"M8")?, RunOut::Normal)?;
/// assert_eq!(run_out.to_string(), "6.2");
/// let least_drilled = Length::integer(16).plus(run_out)?; // full thread + e1
/// assert_eq!(least_drilled.to_string(), "22.2");
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// DIN 76-1, run-out of blind tapped holes, e1.
pub fn run_out_mm(thread: &Thread, run_out: RunOut) -> Result<Length, Error> {
    if thread.side() == Some(Side::External) {
        return Err(Error::new(Code::Contradiction, Field::Side).hint_text("the run-out of a tapped hole"));
    }
    if thread.form() != Form::Metric || thread.is_wire_insert() {
        return Err(Error::new(Code::DoesNotApply, Field::Form)
            .hint_text("DIN 76-1 is for M threads: count the chamfer of the tap, and room for chips"));
    }
    if run_out != RunOut::Normal {
        return Err(Error::new(Code::NotSourced, Field::RunOut).hint_text("the normal run-out, e1"));
    }
    let pitch = thread.pitch_mm();
    let picometres = pitch.picometres();
    let in_picometres = |hundredths: u32| i64::from(hundredths).checked_mul(PICOMETRES_IN_HUNDREDTH);
    let row = NORMAL.iter().find(|(hundredths, _)| picometres.is_some() && in_picometres(*hundredths) == picometres);
    row.map(|(_, tenths)| Length::parts(*tenths, 10)).ok_or_else(|| {
        Error::new(Code::NotSourced, Field::Pitch).got(pitch.to_f64()).hint_text("a coarse pitch of ISO 261 up to 6 mm")
    })
}
