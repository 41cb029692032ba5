//! What has to hold of any answer, whatever was asked.

use std::collections::hash_map::DefaultHasher;
use std::hash::{Hash, Hasher};

#[cfg(feature = "planted")]
use threadcalc_core::Hand;
use threadcalc_core::{Code, Error, Field, Form, Length, Rounding, Thread, choice, is_iso_262, near, read_number};

/// An error that can be shown and whose numbers are those of the tables.
pub fn error(error: &Error) {
    let shown = error.to_string();
    assert!(shown.starts_with(error.field().name()), "{shown}");
    assert_eq!(Code::from_number(error.code().number()), Some(error.code()));
    assert_eq!(Field::from_number(error.field().number()), Some(error.field()));
}

/// The same, about a text: its byte lies within the text, or just behind it.
pub fn error_of_text(about: &Error, text: &[u8]) {
    let at = about.at().expect("an error about a text names the byte");
    assert!(at as usize <= text.len(), "{about} in {} bytes", text.len());
    error(about);
}

/// A number that reads back, and whose doubles and decimals are the nearest ones.
pub fn number(number: Length) {
    let text = number.to_string();
    assert!(text.len() <= 40 && text.is_ascii(), "{text}");
    assert_eq!(read_number(text.as_bytes()), Ok(number), "{text}");
    if let Ok(double) = text.parse::<f64>() {
        assert_eq!(number.to_f64(), double, "{text}");
    }
    for decimals in 0..=9 {
        let rounded = |rounding| number.round_to(decimals, rounding).and_then(|decimal| decimal.to_length());
        let (Ok(down), Ok(up)) = (rounded(Rounding::Down), rounded(Rounding::Up)) else { continue };
        let nearest = rounded(Rounding::HalfEven).expect("lies between two results that exist");
        assert!(down <= number && number <= up, "{text} lies within {down} to {up}");
        assert!(nearest == down || nearest == up, "{text} to {decimals} decimals is {nearest}");
        assert!(up == down || number != down && number != up, "{text} has {decimals} decimals already");
    }
}

/// A thread that reads back from its own text and agrees with itself in all it says.
pub fn thread(thread: &Thread) {
    #[cfg(feature = "planted")]
    assert!(thread.hand() == Hand::Right, "planted");
    reads_back(thread);
    let form = thread.form();
    assert_eq!(thread.pitch_mm().times(Length::integer(thread.starts().into())), Ok(thread.lead_mm()));
    assert!(thread.pitch_mm().is_positive() && thread.pitch_mm() < thread.major_mm());
    assert!(thread.nominal_mm().is_none_or(Length::is_positive));
    assert_eq!(thread.nominal_mm().is_none(), form.is_pipe());
    assert_eq!(thread.taper_on_diameter().is_positive(), form.is_taper());
    assert!(thread.threads_per_inch().is_none_or(Length::is_positive));
    let of_class = thread.tolerance_class().and_then(|class| class.side());
    assert!(of_class.is_none_or(|side| Some(side) == thread.side()));
    assert!(thread.written_as().is_none_or(|name| thread.with_written_as(name).is_ok()));
    let has_series = matches!(form, Form::Metric | Form::MetricJ | Form::Whitworth) || is_unified(form);
    assert!(!thread.is_standard() || thread.series().is_some() || !has_series);
    assert!(!is_iso_262(thread) || (thread.is_standard() && choice(thread).is_some()));
    assert!(thread.size().as_str().is_ascii());
    profile(thread);
    limits(thread);
    pipe(thread);
    findings(thread);
}

fn reads_back(thread: &Thread) {
    let hash = |thread: &Thread| {
        let mut hasher = DefaultHasher::new();
        thread.hash(&mut hasher);
        hasher.finish()
    };
    let text = thread.to_string();
    assert!(!text.is_empty() && text.is_ascii(), "{text}");
    let read = Thread::read(text.as_bytes()).unwrap_or_else(|error| panic!("{text}: {error}"));
    // Of a fit a thread has a side that no text of its own tells: 1 of NPTF, 2G of ACME, normal of BA.
    let read = thread.side().map_or(Ok(read), |side| read.with_side(side));
    let read = read.unwrap_or_else(|error| panic!("{text}: {error}"));
    assert_eq!(read, *thread, "{text}");
    assert_eq!(hash(&read), hash(thread), "{text}");
    assert_eq!((read.series(), read.to_string()), (thread.series(), text));
}

const fn is_unified(form: Form) -> bool {
    matches!(form, Form::Unified | Form::UnifiedR | Form::UnifiedJ)
}

fn profile(thread: &Thread) {
    let profile = thread.profile();
    // Equal where the pitch is less than a double of the diameter can tell; NaN where nothing was read.
    // The hole of a wire insert has no screw of its own.
    let root = if thread.is_wire_insert() { profile.minor_mm } else { profile.external_minor_mm };
    let falling = [profile.major_mm, profile.pitch_diameter_mm, profile.minor_mm, root];
    let is_read = !matches!(thread.form(), Form::Nptf | Form::Npsf);
    assert_eq!(falling.is_sorted_by(|larger, smaller| larger >= smaller), is_read, "{thread}: {falling:?}");
    // The clearance of a root may be more than a core so thin.
    assert!(!falling.iter().take(3).any(|diameter| *diameter <= 0.0), "{thread}: {falling:?}");
    let has_area = matches!(thread.form(), Form::Metric | Form::MetricJ) || is_unified(thread.form());
    assert_eq!(profile.stress_area_mm2 > 0.0, has_area && !thread.is_wire_insert(), "{thread}");
    assert!(profile.triangle_height_mm > 0.0, "{thread}");
}

fn limits(thread: &Thread) {
    let limits = match thread.limits() {
        Ok(limits) => limits,
        Err(why) => {
            error(&why);
            // A class of both sides wants the side.
            let is_told = thread.tolerance_class().is_none() || thread.side().is_none();
            assert!(why.code() != Code::ClassUnset || is_told, "{thread}: {why}");
            return;
        }
    };
    assert!(!limits.source.is_empty() && limits.decimals <= 9, "{thread}");
    for (low, high) in [limits.major_mm, limits.pitch_diameter_mm, limits.minor_mm] {
        assert!(low.zip(high).is_none_or(|(low, high)| low < high), "{thread}: {low:?} to {high:?}");
        assert!(low.is_none_or(Length::is_positive), "{thread}: {low:?}");
    }
    if let (Some(low), Some(high)) = limits.minor_mm {
        assert_eq!([low, high].map(|end| limits.minor_holds(end)), [Some(true); 2], "{thread}");
    }
}

fn pipe(thread: &Thread) {
    match thread.pipe() {
        Ok(pipe) => {
            assert!(thread.form().is_pipe() && !pipe.source.is_empty(), "{thread}");
            let ends = pipe.pitch_diameter_small_end_mm.zip(pipe.pitch_diameter_effective_mm);
            assert!(ends.is_none_or(|(small, large)| small < large), "{thread}: {ends:?}");
        }
        Err(why) => {
            error(&why);
            assert!(!thread.form().is_pipe(), "{thread}: {why}");
        }
    }
}

fn findings(thread: &Thread) {
    for finding in thread.findings().iter() {
        let shown = finding.to_string();
        assert!(shown.contains(finding.id().name()) && shown.contains(finding.suggestion()), "{shown}");
        assert!(finding.numbers().all(|(_, value)| value.is_finite()), "{shown}");
    }
    for (text, _) in near(thread).iter() {
        assert_ne!(text, thread.to_string());
    }
}
