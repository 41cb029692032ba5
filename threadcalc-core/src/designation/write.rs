//! From a thread to its canonical designation.

use core::fmt::{self, Write};

use super::unified_size::is_number_size;
use crate::error::Error;
use crate::form::Form;
use crate::length::{Decimal, Length, Rounding};
use crate::series;
use crate::series::Series;
use crate::text::Text;
use crate::thread::{Hand, Thread};

/// How the size of a Unified thread is named.
enum UnifiedSize {
    /// Screw number, 0 to 12.
    Number(i64),
    /// Whole inches and 64ths.
    Fraction(i64, i64),
    /// Anything else, in inches.
    Decimal(Length),
}

fn unified_size(nominal: Length) -> Result<UnifiedSize, Error> {
    let inches = nominal.over(Length::INCH)?;
    // 0.060 + 0.013 n; No. 5 is also 1/8, and is named No. 5 by ASME B1.1.
    let number = inches.minus(const { Length::parts(60, 1000) })?.over(const { Length::parts(13, 1000) })?;
    if let Some(number) = number.whole().filter(|number| (0..=12).contains(number)) {
        return Ok(UnifiedSize::Number(number));
    }
    let sixty_fourths = inches.times(Length::integer(64))?.whole();
    Ok(sixty_fourths.map_or(UnifiedSize::Decimal(inches), |all| {
        UnifiedSize::Fraction(all.checked_div(64).unwrap_or(0), all.checked_rem(64).unwrap_or(0))
    }))
}

/// The text that names the size.
pub(crate) fn size_text(thread: &Thread) -> Text<16> {
    let mut text = Text::new();
    let written = match thread.form() {
        Form::Metric | Form::MetricJ | Form::Miniature | Form::Trapezoidal => write_exact(&mut text, thread.named_by()),
        Form::Ba => write_ba_size(&mut text, thread),
        Form::Acme | Form::StubAcme | Form::Buttress | Form::PullButtress => match thread.named_by().over(Length::INCH)
        {
            Ok(inches) => write_inches(&mut text, inches),
            Err(_) => Err(fmt::Error),
        },
        form if form.is_pipe() => write_pipe_size(&mut text, thread),
        _ => match unified_size(thread.named_by()) {
            Ok(UnifiedSize::Number(number)) if thread.form().is_unified() => write!(text, "No. {number}"),
            Ok(UnifiedSize::Number(_)) | Err(_) => write_fraction(&mut text, thread.named_by()),
            Ok(size) => write_unified_size(&mut text, &size),
        },
    };
    // A size too long for the text has no name of its own.
    if written.is_ok() { text } else { Text::new() }
}

fn write_ba_size(out: &mut dyn fmt::Write, thread: &Thread) -> fmt::Result {
    write_exact(out, Length::integer(series::ba_number(thread.major_mm(), thread.pitch_mm()).ok_or(fmt::Error)?))
}

/// A size in inches that is never a screw number.
fn write_fraction(out: &mut dyn fmt::Write, diameter: Length) -> fmt::Result {
    let inches = diameter.over(Length::INCH).map_err(|_| fmt::Error)?;
    match inches.times(Length::integer(64)).ok().and_then(Length::whole) {
        Some(all) => {
            let (whole, part) = (all.checked_div(64).unwrap_or(0), all.checked_rem(64).unwrap_or(0));
            write_unified_size(out, &UnifiedSize::Fraction(whole, part))
        }
        None => write_inches(out, inches),
    }
}

fn write_exact(out: &mut dyn fmt::Write, value: Length) -> fmt::Result {
    write!(out, "{value}")
}

fn write_unified_size(out: &mut dyn fmt::Write, size: &UnifiedSize) -> fmt::Result {
    match size {
        UnifiedSize::Number(number) => write_exact(out, Length::integer(*number)),
        UnifiedSize::Fraction(whole, 0) => write_exact(out, Length::integer(*whole)),
        UnifiedSize::Fraction(whole, part) => {
            if *whole > 0 {
                write_exact(out, Length::integer(*whole))?;
                out.write_str(" ")?;
            }
            let fraction = Length::new(*part, 64).unwrap_or(Length::ZERO);
            write!(out, "{}/{}", fraction.numerator(), fraction.denominator())
        }
        UnifiedSize::Decimal(inches) => write_inches(out, *inches),
    }
}

/// Decimal inches with three places or more, as ASME B1.1 writes decimal sizes.
fn write_inches(out: &mut dyn fmt::Write, inches: Length) -> fmt::Result {
    match inches.as_decimal() {
        Some(decimal) if decimal.decimals() >= 3 => write!(out, "{decimal}"),
        Some(_) => write!(out, "{}", three_places(inches).map_err(|_| fmt::Error)?),
        None => write_exact(out, inches),
    }
}

fn three_places(inches: Length) -> Result<Decimal, Error> {
    inches.round_to(3, Rounding::HalfEven)
}

/// The canonical designation: pitch always written, ASCII x, class before `-LH`.
impl fmt::Display for Thread {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.form() {
            Form::Metric | Form::MetricJ | Form::Trapezoidal => write_metric(f, self)?,
            // The diameter says the pitch.
            Form::Miniature => write!(f, "S{}", self.major_mm())?,
            Form::Ba => {
                write_ba_size(f, self)?;
                f.write_str(" BA")?;
            }
            form if form.is_pipe() => write_pipe(f, self)?,
            _ => match write_inch(f, self) {
                Ok(written) => written?,
                // Figures too odd for inches in 64 bits have no designation; a text must not fail.
                Err(_) => write!(f, "{} mm x {} mm {}", self.named_by(), self.pitch_mm(), last_word(self))?,
            },
        }
        if let Some(class) = self.tolerance_class() {
            f.write_str(if self.form() == Form::G { "" } else { "-" })?;
            f.write_str(class.text().as_str())?;
        }
        if self.is_wire_insert() {
            f.write_str(" STI")?;
        }
        if self.hand() == Hand::Left {
            f.write_str("-LH")?;
        }
        Ok(())
    }
}

/// `G1/2`, `Rc1 1/2` (ISO 228-1, ISO 7-1); `1/4-18 NPT` (ASME B1.20.1).
fn write_pipe(f: &mut fmt::Formatter<'_>, thread: &Thread) -> fmt::Result {
    let symbol = thread.form().symbol();
    if thread.form().is_whitworth_pipe() {
        f.write_str(symbol)?;
        return write_pipe_size(f, thread);
    }
    write_pipe_size(f, thread)?;
    let per_inch = Length::INCH.over(thread.pitch_mm()).map_err(|_| fmt::Error)?;
    write!(f, "-{per_inch} {symbol}")
}

#[inline(never)]
fn write_pipe_size(out: &mut dyn fmt::Write, thread: &Thread) -> fmt::Result {
    let size = series::pipe_size(thread).ok_or(fmt::Error)?;
    let (whole, sixteenths) = size.inches();
    let (whole, part) = (i64::from(whole), i64::from(sixteenths).saturating_mul(4));
    write_unified_size(out, &UnifiedSize::Fraction(whole, part))?;
    out.write_str(if size.names_outside_diameter() { " O.D." } else { "" })
}

fn write_metric(f: &mut fmt::Formatter<'_>, thread: &Thread) -> fmt::Result {
    write!(f, "{}{}x", thread.form().symbol(), thread.named_by())?;
    match thread.form() {
        _ if thread.starts() == 1 => write_exact(f, thread.pitch_mm()),
        Form::Trapezoidal => write!(f, "{}P{}", thread.lead_mm(), thread.pitch_mm()),
        _ => write!(f, "Ph{}P{}", thread.lead_mm(), thread.pitch_mm()),
    }
}

/// What is written behind size and pitch of an inch thread.
fn last_word(thread: &Thread) -> Text<16> {
    let mut word = Text::new();
    let written = if thread.form().is_unified() {
        let series = match thread.series() {
            Some(Series::Unc) => "C",
            Some(Series::Unf) => "F",
            Some(Series::Unef) => "EF",
            None | Some(Series::Uns) => "S",
            Some(_) => "",
        };
        write!(word, "{}{series}", thread.form().symbol())
    } else {
        word.write_str(thread.series().map_or(thread.form().symbol(), Series::token))
    };
    if written.is_ok() { word } else { Text::new() }
}

/// Size and pitch of an inch thread, and its last word.
fn write_inch(f: &mut fmt::Formatter<'_>, thread: &Thread) -> Result<fmt::Result, Error> {
    let (pitch, starts) = (thread.pitch_mm(), thread.starts());
    let per_inch = Length::INCH.over(pitch)?;
    // Only a multi-start thread is written by its pitch and lead.
    let (pitch_in, lead_in) = (pitch.over(Length::INCH)?, thread.lead_mm().over(Length::INCH)?);
    // ASME B1.5 writes a decimal as short as it is.
    let is_short = thread.form().is_translating() && pitch_in.as_decimal().is_some();
    let printed = match if starts > 1 && !is_short { printed_pitch(pitch_in)? } else { None } {
        Some(printed) => Some((printed, lead_in.round_to(printed.decimals(), Rounding::HalfEven)?)),
        None => None,
    };
    let size = if thread.form().is_unified() { Some(unified_name(thread)?) } else { None };
    let decimal = thread.named_by().over(Length::INCH)?;
    Ok((|| {
        match size {
            Some(size) => write_unified_size(f, &size)?,
            None if thread.form().is_translating() => write_inches(f, decimal)?,
            None => write_fraction(f, thread.named_by())?,
        }
        f.write_str("-")?;
        match printed {
            Some((pitch, lead)) => write!(f, "{pitch}P-{lead}L")?,
            None if starts > 1 => {
                write_mixed(f, pitch_in)?;
                f.write_str("P-")?;
                write_mixed(f, lead_in)?;
                f.write_str("L")?;
            }
            None => write_mixed(f, per_inch)?,
        }
        // ASME B1.5 leaves the starts to lead and pitch.
        if starts > 1 && !thread.form().is_translating() {
            write!(f, "({starts} STARTS)")?;
        }
        // ASME B1.5 has a dash before ACME.
        f.write_str(if thread.form() == Form::Acme { "-" } else { " " })?;
        f.write_str(last_word(thread).as_str())
    })())
}

/// The name of a Unified size; a bare number that would be read as the other kind of size is a decimal.
fn unified_name(thread: &Thread) -> Result<UnifiedSize, Error> {
    let (nominal, pitch) = (thread.named_by(), thread.pitch_mm());
    Ok(match unified_size(nominal)? {
        UnifiedSize::Number(number) if !is_number_size(number, Length::integer(number).times(Length::INCH)?, pitch) => {
            UnifiedSize::Decimal(nominal.over(Length::INCH)?)
        }
        UnifiedSize::Fraction(whole, 0) if is_number_size(whole, nominal, pitch) => {
            UnifiedSize::Decimal(Length::integer(whole))
        }
        size => size,
    })
}

/// A number behind a size: `61/3` would be read as a part of the size, so it is `20 1/3`.
fn write_mixed(out: &mut dyn fmt::Write, number: Length) -> fmt::Result {
    let whole = number.round_to(0, Rounding::Down).map_err(|_| fmt::Error)?.units();
    match number.minus(Length::integer(whole)) {
        Ok(part) if number.as_decimal().is_none() => {
            write!(out, "{whole} {}/{}", part.numerator(), part.denominator())
        }
        _ => write_exact(out, number),
    }
}

/// A pitch in inches with the fewest decimals (four or more) that read back to the same pitch; `None` if
/// none do, as for 0.7 threads per inch.
fn printed_pitch(pitch_in: Length) -> Result<Option<Decimal>, Error> {
    let halves = Length::integer(2).over(pitch_in)?;
    for decimals in 4..=9 {
        let printed = pitch_in.round_to(decimals, Rounding::HalfEven)?;
        if printed.units() == 0 {
            continue;
        }
        let back = Length::integer(2).over(printed.to_length()?)?.round_to(0, Rounding::HalfEven)?;
        if printed.to_length()? == pitch_in || back.to_length()? == halves {
            return Ok(Some(printed));
        }
    }
    Ok(None)
}
