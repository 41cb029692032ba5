//! Tapping cycles: what is written reads back to the thread, and what the dialect lacks is refused.

use std::collections::BTreeMap;

use num_rational::BigRational;
use proptest::prelude::*;
use threadcalc_core::{
    Code, Cycle, CycleRequest, Dialect, FeedMode, Finding, FindingId, Hand, Holder, Length, Ratio, ReturnTo, Thread,
    Unit, Value, cycle, feed,
};

use crate::values::{config, length, parts, thread};

/// What a control makes of a program, by the words alone.
#[derive(Debug, Default)]
struct Read {
    codes: Vec<String>,
    values: BTreeMap<char, BigRational>,
    /// The codes and letters of each line.
    lines: Vec<Vec<String>>,
}

/// A reader of word-address text that knows nothing of the library: letter and number, blanks between.
fn read(cycle: &Cycle) -> Read {
    let mut read = Read::default();
    for line in cycle.blocks() {
        let mut letters = Vec::new();
        for word in line.as_str().split(' ') {
            let (letter, number) = word.split_at(1);
            let letter = letter.chars().next().unwrap();
            assert!(letter.is_ascii_uppercase(), "{word}");
            if matches!(letter, 'G' | 'M') {
                read.codes.push(word.into());
            } else {
                assert!(!letters.contains(&letter.to_string()), "{letter} twice in {line}");
                read.values.insert(letter, number_of(number));
            }
            letters.push(letter.to_string());
        }
        read.lines.push(letters);
    }
    read
}

fn number_of(text: &str) -> BigRational {
    let (sign, digits) = text.strip_prefix('-').map_or((1, text), |rest| (-1, rest));
    assert!(digits.chars().all(|c| c.is_ascii_digit() || c == '.') && digits.starts_with(|c: char| c.is_ascii_digit()));
    let (whole, behind) = digits.split_once('.').unwrap_or((digits, ""));
    let units: i128 = format!("{whole}{behind}").parse().unwrap();
    BigRational::new((sign * units).into(), 10_i128.pow(behind.len() as u32).into())
}

fn exact(value: Length) -> BigRational {
    BigRational::new(value.numerator().into(), value.denominator().into())
}

fn code(text: &str) -> Option<threadcalc_core::CodeText> {
    threadcalc_core::Text::holding(text)
}

fn letter(text: &str) -> Option<threadcalc_core::LetterText> {
    threadcalc_core::Text::holding(text)
}

prop_compose! {
    /// Controls that were never built.
    fn dialect()(
        flags in proptest::array::uniform12(proptest::bool::weighted(0.85)),
        pecks in 0..3_u8,
        milliseconds in any::<bool>(),
        percent in any::<bool>(),
        decimals in (0..=6_u8, 0..=6_u8),
    ) -> Dialect {
        let mut mill = Dialect::unset();
        let [rh, lh, by_spindle, per_revolution, running, rigid, has_s, dwell, retract, r_plane, initial, point] = flags;
        mill.name = threadcalc_core::Text::holding("mill-1").unwrap();
        mill.tap_rh = code("G384").filter(|_| rh);
        mill.tap_lh = code("G374").filter(|_| lh && !by_spindle);
        mill.lh_by_spindle_direction = by_spindle;
        mill.feed_per_revolution = code("G95").filter(|_| per_revolution);
        mill.needs_spindle_running = running;
        mill.rigid_tap_code = code("M135").filter(|_| rigid);
        mill.rigid_tap_code_has_s = has_s;
        mill.peck_word = letter("Q").filter(|_| pecks > 0);
        mill.peck_code_rh = code("G385").filter(|_| pecks > 1);
        mill.peck_code_lh = code("G375").filter(|_| pecks > 1 && !by_spindle);
        mill.dwell_word = letter("P").filter(|_| dwell);
        let unit = if milliseconds { "milliseconds" } else { "seconds" };
        mill.set("dwell_unit", Value::Text(unit.as_bytes())).unwrap();
        mill.retract_multiplier_word = letter("J").filter(|_| retract);
        mill.set("retract_in", Value::Text(if percent { b"percent" } else { b"factor" })).unwrap();
        mill.return_r_plane = code("G99").filter(|_| r_plane);
        mill.return_initial = code("G98").filter(|_| initial);
        (mill.axis_decimals_mm, mill.axis_decimals_inch) = decimals;
        mill.trailing_point = point;
        mill
    }
}

#[derive(Clone, Debug)]
struct Asked {
    dialect: Dialect,
    thread: Thread,
    unit: Unit,
    mode: FeedMode,
    decimals: u8,
    rpm: Ratio,
    depth: Length,
    r_plane: Length,
    holder: Holder,
    peck: Option<Length>,
    dwell: Option<Ratio>,
    factor: Option<Ratio>,
    return_to: ReturnTo,
}

prop_compose! {
    fn asked()(
        dialect in dialect(),
        thread in thread(),
        (inch, per_minute, initial) in any::<(bool, bool, bool)>(),
        decimals in 3..=9_u8,
        rpm in parts(10..=100_000, 10),
        (depth, r_plane) in (parts(1..=100_000, 1_000), parts(1..=20_000, 1_000)),
        holder in proptest::sample::select(Holder::ALL),
        peck in proptest::option::of(parts(1_000..=9_000, 1_000)),
        dwell in proptest::option::of(parts(0..=60_000, 1_000)),
        factor in proptest::option::of(parts(10..=40, 10)),
    ) -> Asked {
        Asked {
            dialect, thread, decimals, rpm, depth, r_plane, holder, peck, dwell, factor,
            unit: if inch { Unit::Inch } else { Unit::Mm },
            mode: if per_minute { FeedMode::PerMinute } else { FeedMode::PerRevolution },
            return_to: if initial { ReturnTo::Initial } else { ReturnTo::RPlane },
        }
    }
}

/// The words or the finding; None where a number makes no sense.
fn written(asked: &Asked) -> Option<(Result<Cycle, Finding>, Length)> {
    let speed = (asked.mode == FeedMode::PerMinute).then_some(asked.rpm);
    let feed = feed(asked.thread.lead_mm(), speed, asked.unit, asked.mode, asked.decimals).ok()?;
    let made = cycle(&CycleRequest {
        dialect: &asked.dialect,
        thread: &asked.thread,
        feed: &feed,
        rpm: asked.rpm,
        depth_mm: asked.depth,
        r_plane_mm: asked.r_plane,
        holder: asked.holder,
        peck_mm: asked.peck,
        dwell_s: asked.dwell,
        retract_factor: asked.factor,
        return_to: asked.return_to,
    });
    match made {
        Ok(made) => Some((made, feed.lead_cut_mm().unwrap())),
        Err(error) => {
            // A peck that is longer than the stroke, or shorter than the last decimal.
            assert_eq!((error.code(), error.field().name()), (Code::OutOfRange, "peck_mm"), "{error}");
            None
        }
    }
}

/// What the dialect lacks for the request, by the words of its fields.
fn lacks(asked: &Asked) -> bool {
    let mill = &asked.dialect;
    let pecks = asked.peck.is_some();
    let by_direction = mill.lh_by_spindle_direction;
    let left = asked.thread.hand() == Hand::Left && !by_direction;
    let (plain, own) = if left { (mill.tap_lh, mill.peck_code_lh) } else { (mill.tap_rh, mill.peck_code_rh) };
    let has_own = mill.peck_code_rh.is_some() || mill.peck_code_lh.is_some();
    plain.is_none()
        || (pecks && (mill.peck_word.is_none() || (has_own && own.is_none())))
        || (asked.mode == FeedMode::PerRevolution && mill.feed_per_revolution.is_none())
        || (asked.dwell.is_some_and(Length::is_positive) && mill.dwell_word.is_none())
        || (asked.factor.is_some_and(|factor| factor != Length::ONE) && mill.retract_multiplier_word.is_none())
        || match asked.return_to {
            ReturnTo::Initial => mill.return_initial.is_none(),
            _ => mill.return_r_plane.is_none(),
        }
}

/// Depth and R go up to the last decimal, a peck down.
fn within_a_decimal(written: &BigRational, asked: Length, decimals: u8, up: bool) -> bool {
    let step = BigRational::new(1.into(), 10_i64.pow(decimals.into()).into());
    let over = if up { written - exact(asked) } else { exact(asked) - written };
    over >= number_of("0") && over < step
}

fn has(read: &Read, code: &str) -> bool {
    read.codes.iter().any(|known| known == code)
}

fn check_stroke(asked: &Asked, read: &Read, lead_cut: Length) -> Result<(), TestCaseError> {
    let in_mm = if has(read, "G20") { number_of("25.4") } else { number_of("1") };
    prop_assert_eq!(has(read, "G21"), asked.unit == Unit::Mm);
    let (f, s) = (&read.values[&'F'], &read.values[&'S']);
    let lead = if has(read, "G95") { f * &in_mm } else { f * &in_mm / s };
    prop_assert_eq!(has(read, "G94"), asked.mode == FeedMode::PerMinute);
    prop_assert_eq!(lead, exact(lead_cut));
    prop_assert_eq!(s, &exact(asked.rpm));

    let unit = |length: Length| length.over(asked.unit.in_mm()).unwrap();
    let decimals =
        if asked.unit == Unit::Mm { asked.dialect.axis_decimals_mm } else { asked.dialect.axis_decimals_inch };
    let depth = -read.values[&'Z'].clone();
    prop_assert!(within_a_decimal(&depth, unit(asked.depth), decimals, true), "{} {:?}", depth, asked.depth);
    prop_assert!(within_a_decimal(&read.values[&'R'], unit(asked.r_plane), decimals, true));
    if let Some(peck) = asked.peck {
        prop_assert!(within_a_decimal(&read.values[&'Q'], unit(peck), decimals, false));
    }
    let counted = |letter: char, parts: bool, factor: &str| {
        read.values.get(&letter).map(|value| if parts { value / number_of(factor) } else { value.clone() })
    };
    let milliseconds = asked.dialect.dwell_unit.is_some_and(|unit| unit.name() == "milliseconds");
    let dwell = asked.dwell.filter(|dwell| dwell.is_positive()).map(exact);
    prop_assert_eq!(counted('P', milliseconds, "1000"), dwell);
    let percent = asked.dialect.retract_in.is_some_and(|counted| counted.name() == "percent");
    let factor = asked.factor.filter(|factor| *factor != Length::ONE).map(exact);
    prop_assert_eq!(counted('J', percent, "100"), factor);
    Ok(())
}

fn check_codes(asked: &Asked, cycle: &Cycle, read: &Read) -> Result<(), TestCaseError> {
    let mill = &asked.dialect;
    let left = asked.thread.hand() == Hand::Left;
    prop_assert_eq!(read.codes.last().map(String::as_str), Some("G80"));
    let directed = mill.needs_spindle_running || mill.lh_by_spindle_direction;
    prop_assert_eq!(has(read, "M3"), directed && !left);
    prop_assert_eq!(has(read, "M4"), directed && left);
    let wanted = match (left && !mill.lh_by_spindle_direction, asked.peck.is_some() && mill.peck_code_rh.is_some()) {
        (false, false) => "G384",
        (true, false) => "G374",
        (false, true) => "G385",
        (true, true) => "G375",
    };
    let taps: Vec<_> = read.codes.iter().filter(|code| code.starts_with("G3")).collect();
    prop_assert_eq!(taps, [wanted]);
    let rigid = asked.holder == Holder::Rigid && mill.rigid_tap_code.is_some();
    prop_assert_eq!(has(read, "M135"), rigid);
    let carries = read.lines.iter().any(|letters| *letters == ["M", "S"]);
    prop_assert_eq!(carries, rigid && mill.rigid_tap_code_has_s);
    prop_assert_eq!(has(read, "G98"), asked.return_to == ReturnTo::Initial);
    prop_assert_eq!(cycle.restore().collect::<Vec<_>>(), ["G94", "F", "M3"]);
    Ok(())
}

proptest! {
    #![proptest_config(config(10_000))]

    #[test]
    fn what_is_written_reads_back_to_the_thread(asked in asked()) {
        let Some((made, lead_cut)) = written(&asked) else { return Ok(()) };
        match made {
            Ok(cycle) => {
                let read = read(&cycle);
                check_stroke(&asked, &read, lead_cut)?;
                check_codes(&asked, &cycle, &read)?;
                prop_assert!(!lacks(&asked));
                prop_assert!(asked.peck.is_none() || asked.holder != Holder::Floating);
            }
            Err(finding) if finding.id() == FindingId::PeckTapping => {
                let rigid_alone = asked.dialect.rigid_tap_code.is_some();
                prop_assert!(asked.peck.is_some() && asked.holder != Holder::Rigid);
                prop_assert!(asked.holder == Holder::Floating || rigid_alone);
            }
            Err(finding) => {
                prop_assert_eq!(finding.id(), FindingId::CodeNotOnControl);
                prop_assert!(lacks(&asked), "{}", finding);
            }
        }
    }

}

proptest! {
    #![proptest_config(config(2_000))]

    #[test]
    fn a_whole_number_has_a_point_where_the_control_wants_one(asked in asked()) {
        let Some((Ok(cycle), _)) = written(&asked) else { return Ok(()) };
        let seconds = asked.dialect.dwell_unit.is_some_and(|unit| unit.name() == "seconds");
        for word in cycle.words() {
            let (letter, number) = word.split_at(1);
            let pointed = matches!(letter, "F" | "Z" | "R" | "Q") || (letter == "P" && seconds);
            let wanted = pointed && asked.dialect.trailing_point;
            prop_assert!(!wanted || number.contains('.'), "{}", word);
            prop_assert!(wanted || !number.ends_with('.'), "{}", word);
            prop_assert!(!number.contains('.') || !number.ends_with('0'), "{}", word);
        }
    }

    #[test]
    fn feeds_of_another_speed_or_lead_are_refused(asked in asked(), other in parts(10..=100_000, 10), off in 1..=40_i64) {
        let lead = asked.thread.lead_mm();
        let off_lead = lead.times(Length::new(100 + off, 100).unwrap()).unwrap();
        let feed = feed(off_lead, Some(other), asked.unit, FeedMode::PerMinute, 9).unwrap();
        let made = cycle(&CycleRequest {
            dialect: &asked.dialect,
            thread: &asked.thread,
            feed: &feed,
            rpm: asked.rpm,
            depth_mm: asked.depth,
            r_plane_mm: asked.r_plane,
            holder: asked.holder,
            peck_mm: None,
            dwell_s: None,
            retract_factor: None,
            return_to: asked.return_to,
        });
        let wrong = other != asked.rpm || off > 20 || asked.holder == Holder::Rigid;
        prop_assert_eq!(made.is_err_and(|error| error.code() == Code::Contradiction), wrong);
    }

    #[test]
    fn any_numbers_give_words_or_a_reason(
        asked in asked(), rpm in length(), depth in length(), r in length(), peck in length(), dwell in length(), factor in length()
    ) {
        let feed = feed(asked.thread.lead_mm(), None, asked.unit, FeedMode::PerRevolution, 9).unwrap();
        let _any = cycle(&CycleRequest {
            dialect: &asked.dialect,
            thread: &asked.thread,
            feed: &feed,
            rpm,
            depth_mm: depth,
            r_plane_mm: r,
            holder: asked.holder,
            peck_mm: Some(peck),
            dwell_s: Some(dwell),
            retract_factor: Some(factor),
            return_to: asked.return_to,
        });
    }
}
