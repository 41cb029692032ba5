//! What a drawing may have meant by a thread that no standard lists.

use core::fmt::Write;

use super::{PipeSize, pipe_sizes};
use crate::form::Form;
use crate::length::Length;
use crate::named::named;
use crate::text::Text;
use crate::thread::Thread;

named! {
    /// Why a thread is near another one.
    pub enum Near {
        /// The same diameter, another pitch.
        SameDiameter = 1 "same-diameter",
        /// The same pitch, another diameter.
        SamePitch = 2 "same-pitch",
        /// A pipe thread written with the same figures.
        SameFigures = 3 "same-figures",
    }
}

/// Up to five near threads, nearest first within each reason.
#[derive(Clone, Copy, Debug, Default)]
pub struct NearThreads {
    found: [Option<(Text<24>, Near)>; 5],
}

impl NearThreads {
    /// The designations with the reason each is near.
    pub fn iter(&self) -> impl Iterator<Item = (&str, Near)> {
        self.found.iter().flatten().map(|(text, reason)| (text.as_str(), *reason))
    }

    fn push(&mut self, text: Text<24>, reason: Near) {
        if let Some(free) = self.found.iter_mut().find(|slot| slot.is_none()) {
            *free = Some((text, reason));
        }
    }

    fn push_thread(&mut self, thread: Option<Thread>, reason: Near) {
        let mut text = Text::new();
        if let Some(thread) = thread {
            if write!(text, "{thread}").is_ok() {
                self.push(text, reason);
            }
        }
    }
}

/// The standard threads nearest to `thread`: same diameter first, then same pitch, then pipe
/// threads of the same figures. Never made of `thread` itself.
#[must_use]
pub fn near(thread: &Thread) -> NearThreads {
    let mut found = NearThreads::default();
    search(&mut found, thread, super::sizes(thread.form()));
    if thread.form().is_unified() {
        same_figures(&mut found, thread);
    }
    found
}

/// The pipe threads that are written with the same size and threads per inch.
fn same_figures(found: &mut NearThreads, thread: &Thread) {
    let sixteenth_mm = Length::parts(127, 80);
    let size = thread.major_mm().over(sixteenth_mm).ok().and_then(Length::whole);
    for form in [Form::Npt, Form::G] {
        let same = |pipe: &PipeSize| Some(i64::from(pipe.sixteenths)) == size && pipe.pitch == thread.pitch_mm();
        let pipe = pipe_sizes(form).find(same).map(|pipe| Thread::of_pipe_size(form, pipe));
        if pipe.is_some() {
            found.push_thread(pipe, Near::SameFigures);
        }
    }
}

/// The two nearest of the same diameter, then the nearest below and above of the same pitch.
fn search(found: &mut NearThreads, thread: &Thread, listed: impl Iterator<Item = (Length, Length)> + Clone) {
    // A pipe thread of another size cannot be.
    let (Some(diameter), pitch) = (thread.nominal_mm(), thread.pitch_mm()) else { return };
    let build = |(diameter, pitch)| Thread::build(thread.form(), diameter, pitch, 1).ok();
    let away = |a: Length, b: Length| a.minus(b).map_or(Length::integer(i64::MAX), Length::magnitude);

    let same_diameter = listed.clone().filter(|(d, p)| *d == diameter && *p != pitch);
    let first = same_diameter.clone().min_by_key(|(_, p)| away(*p, pitch));
    let second = same_diameter.filter(|row| Some(*row) != first).min_by_key(|(_, p)| away(*p, pitch));
    found.push_thread(first.and_then(build), Near::SameDiameter);
    found.push_thread(second.and_then(build), Near::SameDiameter);

    let same_pitch = listed.filter(|(d, p)| *p == pitch && *d != diameter);
    let below = same_pitch.clone().filter(|(d, _)| *d < diameter).max_by_key(|(d, _)| *d);
    let above = same_pitch.filter(|(d, _)| *d > diameter).min_by_key(|(d, _)| *d);
    found.push_thread(below.and_then(build), Near::SamePitch);
    found.push_thread(above.and_then(build), Near::SamePitch);
}
