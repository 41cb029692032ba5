//! Sizes of pipe threads of all standards by one set of questions.

use super::asme_b1_20_1::{self, FIRST_OUTSIDE_DIAMETER_SIZE, InchPipe};
use super::iso_228_1::{self, MetricPipe};
use crate::form::Form;
use crate::length::Length;
use crate::thread::Thread;

/// A size of a pipe thread.
#[derive(Clone, Copy)]
pub(crate) struct PipeSize {
    /// Nominal size in sixteenths of an inch.
    pub sixteenths: u16,
    /// Basic major diameter: the pipe's outside diameter (NPT), else that of the thread.
    pub major: Length,
    /// Pitch.
    pub pitch: Length,
}

impl PipeSize {
    #[inline(never)]
    fn inch(size: &InchPipe) -> Self {
        Self {
            sixteenths: size.sixteenths,
            // 1/10000 in is 127/50000 mm; at most 240000 * 127.
            major: Length::parts(size.outside_e4_in.saturating_mul(127), 50_000),
            pitch: Length::parts(254, u32::from(size.per_inch_tenths)),
        }
    }

    #[inline(never)]
    fn metric(size: &MetricPipe) -> Self {
        Self {
            sixteenths: size.sixteenths,
            major: Length::parts(size.major_um, 1000),
            pitch: Length::parts(127, u32::from(size.per_inch).saturating_mul(5)),
        }
    }

    /// Whole inches and the sixteenths beside them.
    pub(crate) fn inches(self) -> (u16, u16) {
        (self.sixteenths / 16, self.sixteenths % 16)
    }

    /// Whether the size is named by an outside diameter, "14 O.D."
    pub(crate) const fn names_outside_diameter(self) -> bool {
        self.sixteenths >= FIRST_OUTSIDE_DIAMETER_SIZE
    }
}

fn inch_exists(form: Form, size: &InchPipe) -> bool {
    let bit = match form {
        Form::Npt => return true,
        Form::Nptf => asme_b1_20_1::NPTF,
        Form::Npsc => asme_b1_20_1::NPSC,
        Form::Npsm => asme_b1_20_1::NPSM,
        Form::Npsf => asme_b1_20_1::NPSF,
        _ => return false,
    };
    size.also & bit != 0
}

fn metric_exists(form: Form, size: &MetricPipe) -> bool {
    form == Form::G || (form.is_whitworth_pipe() && size.gauge_length_e2_mm != 0)
}

/// Every size of a form, smallest first; none for a form that is no pipe thread.
pub(crate) fn pipe_sizes(form: Form) -> impl Iterator<Item = PipeSize> + Clone {
    let inch = asme_b1_20_1::SIZES.iter().filter(move |size| inch_exists(form, size)).map(PipeSize::inch);
    let metric = iso_228_1::SIZES.iter().filter(move |size| metric_exists(form, size)).map(PipeSize::metric);
    inch.chain(metric)
}

/// The row of a thread of ASME B1.20.
#[inline(never)]
pub(crate) fn inch_pipe(thread: &Thread) -> Option<&'static InchPipe> {
    let own = |size: &&InchPipe| inch_exists(thread.form(), size) && PipeSize::inch(size).major == thread.major_mm();
    asme_b1_20_1::SIZES.iter().find(own)
}

/// The row of a thread of ISO 228-1 or ISO 7-1.
#[inline(never)]
pub(crate) fn metric_pipe(thread: &Thread) -> Option<&'static MetricPipe> {
    let own =
        |size: &&MetricPipe| metric_exists(thread.form(), size) && PipeSize::metric(size).major == thread.major_mm();
    iso_228_1::SIZES.iter().find(own)
}

/// The size of a pipe thread.
pub(crate) fn pipe_size(thread: &Thread) -> Option<PipeSize> {
    inch_pipe(thread).map(PipeSize::inch).or_else(|| metric_pipe(thread).map(PipeSize::metric))
}

/// The threads per inch of the other standard's thread of the same size, for telling them apart.
pub(crate) fn other_system(thread: &Thread) -> Option<PipeSize> {
    let other = if thread.form().is_whitworth_pipe() { Form::Npt } else { Form::G };
    let own = pipe_size(thread)?;
    pipe_sizes(other).find(|size| size.sixteenths == own.sixteenths)
}
