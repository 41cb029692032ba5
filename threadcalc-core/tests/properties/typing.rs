//! However a canonical text is typed, it reads to the same thread; and fits are two of them.

use proptest::prelude::*;
use threadcalc_core::{Form, Hand, Length, Side, Thread, read_fit, standard_threads};

use crate::values::{config, thread};
use random::Random;

#[path = "../support/random.rs"]
mod random;

const BLANKS: [&[u8]; 8] =
    [b" ", b"  ", b"\xA0", b"\xC2\xA0", b"\xE2\x80\xAF", b"\xE2\x80\x89", b"\xE2\x80\x82\xE2\x80\x8A", b"\t"];
const DASHES: [&[u8]; 8] =
    [b"-", b"\xE2\x80\x90", b"\xE2\x80\x91", b"\xE2\x80\x93", b"\xE2\x80\x94", b"\xE2\x88\x92", b"\x96", b"\x97"];
const TIMES: [&[u8]; 5] = [b"x", b"X", b"*", b"\xC3\x97", b"\xD7"];
const INCH_MARKS: [&[u8]; 6] = [b"\"", b"\xE2\x80\xB3", b"\xE2\x80\x9D", b"\x94", b"''", b" in"];
const FRACTIONS: [(&str, &[&[u8]]); 7] = [
    ("1/4", &[b"\xC2\xBC", b"\xBC", b"1\xE2\x81\x844"]),
    ("1/2", &[b"\xC2\xBD", b"\xBD", b"1\xE2\x88\x952"]),
    ("3/4", &[b"\xC2\xBE", b"\xBE", b"3\xE2\x81\x844"]),
    ("1/8", &[b"\xE2\x85\x9B"]),
    ("3/8", &[b"\xE2\x85\x9C"]),
    ("5/8", &[b"\xE2\x85\x9D"]),
    ("7/8", &[b"\xE2\x85\x9E"]),
];

/// Draws for one text.
struct Draws(Random);

impl Draws {
    /// True once in `count` times.
    fn once_in(&mut self, count: u64) -> bool {
        self.0.pick(count) == 0
    }

    fn of<'t>(&mut self, ways: &[&'t [u8]]) -> &'t [u8] {
        ways[self.0.pick(ways.len() as u64) as usize]
    }

    /// One of the ways, with blanks beside it now and then.
    fn spaced(&mut self, ways: &[&[u8]]) -> Vec<u8> {
        let mut beside = || if self.once_in(3) { self.of(&BLANKS).to_vec() } else { Vec::new() };
        let (before, behind) = (beside(), beside());
        [&before, self.of(ways), &behind].concat()
    }

    /// The text of a fraction, in one character where there is one.
    fn fraction(&mut self, text: &str) -> Vec<u8> {
        let ways = FRACTIONS.iter().find(|(written, _)| *written == text).filter(|_| self.once_in(2));
        ways.map_or(text.into(), |(_, ways)| self.of(ways).to_vec())
    }
}

/// The canonical text as somebody else types it.
fn typed(thread: &Thread, seed: u64) -> Vec<u8> {
    let (text, mut draws) = (thread.to_string(), Draws(Random(seed)));
    let national = thread.form().is_inch() && !thread.form().is_pipe();
    let cased = [Form::Metric, Form::MetricJ, Form::Miniature, Form::Trapezoidal].contains(&thread.form());
    let mut out = if draws.once_in(4) { draws.of(&BLANKS).to_vec() } else { Vec::new() };
    // The size of a Unified thread may have an inch mark, unless it is a number size.
    let mut inch_mark = national && !thread.size().as_str().starts_with("No.") && draws.once_in(3);
    let mut rest = text.as_str();
    while let Some(character) = rest.chars().next() {
        let behind_digit = out.last().is_some_and(u8::is_ascii_digit);
        let fraction = rest.get(..3).filter(|part| part.as_bytes()[1] == b'/' && !behind_digit);
        if let Some(fraction) = fraction.filter(|_| !rest.as_bytes().get(3).is_some_and(u8::is_ascii_digit)) {
            out.extend(draws.fraction(fraction));
            rest = &rest[3..];
            continue;
        }
        match character {
            '-' => {
                if std::mem::take(&mut inch_mark) {
                    out.extend_from_slice(draws.of(&INCH_MARKS));
                }
                out.extend(draws.spaced(&DASHES));
            }
            ' ' => out.extend_from_slice(draws.of(&BLANKS)),
            'x' => out.extend(draws.spaced(&TIMES)),
            '.' if behind_digit && draws.once_in(2) => out.push(b','),
            // Only the classes of metric threads mind their letter case.
            letter if !cased && draws.once_in(2) => out.push(letter.to_ascii_lowercase() as u8),
            other => out.push(other as u8),
        }
        rest = &rest[1..];
    }
    if draws.once_in(4) {
        out.extend_from_slice(draws.of(&BLANKS));
    }
    out
}

/// Every class of the internal and of the external side that a fit is made of.
fn sides(form: Form) -> Option<(&'static [&'static str], &'static [&'static str])> {
    match form {
        Form::Metric => Some((&["5H", "6H", "7H", "6G", "5H6H"], &["4h", "6g", "6e", "5g6g", "8g"])),
        Form::Unified => Some((&["1B", "2B", "3B"], &["1A", "2A", "3A"])),
        Form::Npsm | Form::Buttress | Form::PullButtress => Some((&["2B"], &["2A"])),
        Form::MetricJ => Some((&["4H5H", "4H6H", "6H"], &["4h6h", "4g6g", "6g"])),
        Form::UnifiedJ => Some((&["2B", "3B"], &["2A", "3A"])),
        Form::Miniature => Some((&["4H6", "3G5"], &["5h3"])),
        Form::Trapezoidal => Some((&["7H", "8H"], &["7e", "8e"])),
        _ => None,
    }
}

fn assert_fit(thread: &Thread, inside: &str, outside: &str) -> Result<(), TestCaseError> {
    let with = |class: &str| thread.with_class(class.as_bytes()).unwrap();
    let hand = if thread.hand() == Hand::Left { "-LH" } else { "" };
    let size = thread.with_hand(Hand::Right).to_string();
    for classes in [format!("{inside}/{outside}"), format!("{outside}/{inside}")] {
        let text = format!("{size}-{classes}{hand}");
        prop_assert_eq!(read_fit(text.as_bytes()), Ok((with(inside), with(outside))), "{}", text);
        prop_assert!(Thread::read(text.as_bytes()).is_err(), "{} is one thread", text);
    }
    Ok(())
}

#[test]
fn every_standard_thread_makes_every_fit() {
    let mut count = 0;
    for thread in standard_threads(None, None).filter(|thread| thread.tolerance_class().is_none()) {
        let Some((inside, outside)) = sides(thread.form()) else { continue };
        for (inside, outside) in inside.iter().flat_map(|inside| outside.iter().map(move |outside| (inside, outside))) {
            for hand in [Hand::Right, Hand::Left] {
                assert_fit(&thread.with_hand(hand), inside, outside).unwrap();
                count += 1;
            }
        }
    }
    assert!(count > 10_000, "{count} fits");
}

#[test]
fn every_jointing_size_makes_a_fit() {
    for external in standard_threads(Some(Form::R), None) {
        let size = external.size();
        for name in ["Rp", "Rc"] {
            let (internal, read) = read_fit(format!("{name}/R {size}").as_bytes()).unwrap();
            assert_eq!((internal.to_string(), read), (format!("{name}{size}"), external));
            assert_eq!(internal.side(), Some(Side::Internal));
        }
    }
}

proptest! {
    #![proptest_config(config(6_000))]

    #[test]
    fn however_it_is_typed_it_is_the_same_thread(thread in thread(), seed in any::<u64>()) {
        let text = typed(&thread, seed);
        // A text may grow past the longest that is looked at.
        prop_assume!(text.len() <= 80);
        let read = Thread::read(&text);
        prop_assert_eq!(read, Ok(thread), "{} typed {:?}", thread, String::from_utf8_lossy(&text));
    }

    #[test]
    fn any_thread_makes_a_fit(thread in thread(), inside in any::<usize>(), outside in any::<usize>()) {
        let Some((insides, outsides)) = sides(thread.form()) else { return Ok(()) };
        // The hole of a wire insert has no other side.
        if thread.tolerance_class().is_none() && !thread.is_wire_insert() && thread.pitch_mm() > Length::new(1, 10).unwrap() {
            assert_fit(&thread, insides[inside % insides.len()], outsides[outside % outsides.len()])?;
        }
    }

    #[test]
    fn any_bytes_are_a_fit_or_an_error_within_them(text in crate::values::bytes()) {
        match read_fit(&text) {
            Ok((internal, external)) => {
                prop_assert_eq!((internal.side(), external.side()), (Some(Side::Internal), Some(Side::External)));
                prop_assert_eq!(internal.major_mm(), external.major_mm());
                prop_assert!(Thread::read(&text).is_err());
            }
            Err(error) => prop_assert!(error.at().is_some_and(|at| at as usize <= text.len()), "{}", error),
        }
    }
}
