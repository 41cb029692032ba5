//! The feed word of a thread, its error, and the speeds at which it is exact.

use threadcalc_core::{Error, FeedMode, Length, Thread, Unit, exact_speeds, feed};

fn main() -> Result<(), Error> {
    let thread = Thread::read(b"5/8-11 UNC-2B")?;
    let rpm = Length::integer(450);
    let feed = feed(thread.lead_mm(), Some(rpm), Unit::Inch, FeedMode::PerMinute, 2)?;
    println!("{thread} at S{rpm}: {feed}, lead error {}", feed.lead_error()?);
    for speed in exact_speeds(thread.lead_mm(), rpm, Unit::Inch, 2, 3, 1, None)? {
        println!("exact at S{speed}");
    }
    Ok(())
}
