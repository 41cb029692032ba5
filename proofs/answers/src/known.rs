//! Answers that are printed elsewhere: in the standards' tables, and in this project's README.

use core::fmt::{self, Write};

use threadcalc_core::{Error, FeedMode, Job, Length, Text, Thread, Unit, Value, exact_speeds, feed, plan};

/// The plan that the README shows.
const PRINTED_PLAN: &str = include_str!("../../../examples/rust/tap_hole.expected.txt");

/// The hole of that plan.
const DEMO: [(&str, &str); 9] = [
    ("thread", "7/16-14 UNC-2B"),
    ("rpm", "650"),
    ("unit", "mm"),
    ("mode", "per_minute"),
    ("decimals", "3"),
    ("hole", "blind"),
    ("full_thread_depth_mm", "20"),
    ("tap", "cut"),
    ("dialect", "rs274ngc"),
];

/// Writes each known answer beside what the core gives; false if one differs.
///
/// With `planted` one of the known answers is wrong on purpose.
///
/// # Errors
/// What `out` says, or the core's error where there should be an answer.
pub fn write_known(out: &mut dyn Write, planted: bool) -> Result<bool, Error> {
    let mut sheet = Sheet { out, right: true };
    let thread = Thread::read(b"7/16-14 UNC-2B")?;
    let minor = Thread::read(b"M8x1.25-6H")?.limits()?.minor_mm;
    let (least, most) = (minor.0.unwrap_or(Length::ZERO), minor.1.unwrap_or(Length::ZERO));
    let speed = Length::integer(650);
    let word = feed(thread.lead_mm(), Some(speed), Unit::Mm, FeedMode::PerMinute, 3)?;
    let exact = exact_speeds(thread.lead_mm(), speed, Unit::Mm, 3, 1, 1, None)?.next().unwrap_or(0);

    sheet.line("lead of 7/16-14 in mm", format_args!("{}", thread.lead_mm()), "127/70");
    sheet.line("least minor diameter of M8x1.25-6H in mm", format_args!("{least}"), "6.647");
    sheet.line("largest", format_args!("{most}"), if planted { "6.911" } else { "6.912" });
    sheet.line("feed of 7/16-14 at S650", format_args!("{word}"), "F1179.286");
    sheet.line("nearest exact speed", format_args!("{exact}"), "651");

    let mut job = Job::default();
    for (key, value) in DEMO {
        job.set(key, Value::Text(value.as_bytes()))?;
    }
    let planned = plan(&job)?;
    sheet.line("its tap drill", format_args!("{}", planned.drill.chosen.drill.name()), "U");
    let mut words = Text::<112>::new();
    for word in planned.cycle.words() {
        let fits = words.push(if words.is_empty() { "" } else { " " }) && words.push(word);
        sheet.right &= fits;
    }
    let want = "G17 G21 G90 G94 S650 M3 G99 G84 Z-25.443 R5. F1179.286 G80";
    sheet.line("words", format_args!("{words}"), want);
    let mut rest = Rest(PRINTED_PLAN);
    let same = write!(rest, "{planned}").is_ok() && rest.0.is_empty();
    sheet.line("its printed plan is the README's", format_args!("{same}"), "true");
    Ok(sheet.right)
}

struct Sheet<'a> {
    out: &'a mut dyn Write,
    right: bool,
}

impl Sheet<'_> {
    fn line(&mut self, name: &str, got: fmt::Arguments<'_>, want: &str) {
        let mut rest = Rest(want);
        let right = rest.write_fmt(got).is_ok() && rest.0.is_empty();
        let written = if right {
            writeln!(self.out, "{name}: {got}")
        } else {
            writeln!(self.out, "{name}: {got}, WRONG, it is {want}")
        };
        self.right &= right && written.is_ok();
    }
}

/// What of an expected text is still to come; writing anything else is an error.
struct Rest<'a>(&'a str);

impl Write for Rest<'_> {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        self.0 = self.0.strip_prefix(text).ok_or(fmt::Error)?;
        Ok(())
    }
}
