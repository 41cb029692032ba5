//! All that is known of a thread of any family: every way to read and write it, the lists, what is near, the
//! profile, the limits of size of every class, at a length and before coating, pipe dimensions, threads in comments, and its feed.

#![no_std]
#![no_main]

use core::fmt::{Display, Write};
use core::hint::black_box;

use size::{Port, begin, text};
use threadcalc_core::{
    FeedMode, Form, Length, Ratio, Series, Thread, Unit, choice, engagement_group, feed, is_iso_262, near,
    programmed_speed, read_comment, read_fit, standard_threads,
};

fn write(value: impl Display) {
    black_box(write!(Port, "{value}").is_ok());
}

fn take<T>(items: impl Iterator<Item = T>) {
    for item in items {
        black_box(item);
    }
}

fn tell(thread: &Thread) {
    write(thread);
    write(thread.size().as_str());
    take(near(thread).iter());
    take(thread.findings().iter());
    black_box((thread.profile(), choice(thread), is_iso_262(thread), thread.is_standard(), thread.threads_per_inch()));
    match thread.limits() {
        Ok(limits) => drop(black_box(limits)),
        Err(error) => write(error),
    }
    let length = black_box(Length::ONE);
    black_box((thread.limits_at(length).is_ok(), engagement_group(thread, length).is_ok()));
    black_box((thread.limits_before_coating(length, length).is_ok(), thread.thickest_coating_um().is_ok()));
    black_box((thread.coating_growth(length).is_ok(), thread.pipe().is_ok()));
    black_box(thread.with_wire_insert().is_ok());
    let rpm = programmed_speed(black_box(Ratio::ONE), black_box(Ratio::ONE), None, None);
    if let Ok(rpm) = rpm {
        if let Ok(feed) = feed(thread.lead_mm(), Some(rpm), black_box(Unit::Mm), black_box(FeedMode::PerMinute), 3) {
            write(feed.word());
        }
    }
}

#[unsafe(no_mangle)]
extern "C" fn _start() {
    begin();
    match black_box(Thread::read(text())) {
        Ok(thread) => tell(&thread),
        Err(error) => write(error),
    }
    if let Ok((internal, external)) = black_box(read_fit(text())) {
        tell(&internal);
        tell(&external);
    }
    take(read_comment(text(), black_box(false)).threads());
    take(standard_threads(black_box(None::<Form>), black_box(None::<Series>)));
}
