//! One fault of each kind, seeded into a program that has none.

use threadcalc_core::nc::ProgramFindingId;
use threadcalc_core::{FeedMode, Hand, Length};

use super::cycles::{Drawn, word_of};

pub const KINDS: usize = 18;

/// One fault of each kind that this program can have.
pub fn faults(drawn: &Drawn) -> [Option<(String, ProgramFindingId)>; KINDS] {
    let Drawn { dialect, mode, rpm, thread, .. } = drawn;
    let per_minute = *mode == FeedMode::PerMinute;
    let feed = drawn.feed_of(*mode);
    let times = |factor: Length| drawn.with_word('F', &word_of(feed.times(factor).unwrap()));
    let lines = |change: &dyn Fn(&mut Vec<String>)| {
        let mut lines = drawn.lines.clone();
        change(&mut lines);
        lines.join("\n") + "\n"
    };
    let other = if per_minute { FeedMode::PerRevolution } else { FeedMode::PerMinute };
    let at = drawn.at_cycle();
    let cancel = at + 2;
    let slower = rpm.whole().unwrap() * 7 / 10;
    let stale = lines(&|lines| lines.insert(at + 1, format!("S{slower}")));
    let ten = feed.times(Length::integer(10)).unwrap().whole();
    let hundred = feed.times(Length::integer(1000)).unwrap().whole();
    let without_point = if per_minute { ten } else { hundred };
    let turned =
        if thread.hand() == Hand::Left { thread.to_string().replace("-LH", "") } else { format!("{thread}-LH") };
    let named = format!("TAP {thread})");
    let has_code = dialect.rigid_tap_code.is_some();
    let swapped = |one: &str, other: &str| {
        let swap = |word: &'_ str| {
            if word == one {
                other.to_string()
            } else if word == other {
                one.to_string()
            } else {
                word.to_string()
            }
        };
        lines(&|lines| {
            for line in lines.iter_mut() {
                *line = line.split(' ').map(swap).collect::<Vec<_>>().join(" ");
            }
        })
    };
    let faster = format!("S{}", rpm.whole().unwrap() * 13 / 10);
    let speed = format!("S{}", rpm.whole().unwrap());
    let has_modes = dialect.feed_per_revolution.is_some();
    [
        per_minute.then_some((stale, ProgramFindingId::StaleFeedAfterSpeedChange)),
        Some((times(Length::new(11, 10).unwrap()), ProgramFindingId::LeadMismatch)),
        Some((times(Length::INCH), ProgramFindingId::InchMetricMix)),
        Some((times(Length::ONE.over(Length::INCH).unwrap()), ProgramFindingId::InchMetricMix)),
        Some((drawn.with_word('F', &word_of(drawn.feed_of(other))), ProgramFindingId::FeedModeMix)),
        without_point.map(|number| (drawn.with_word('F', &format!("F{number}")), ProgramFindingId::DecimalPoint)),
        Some((
            lines(&|lines| lines[3] = lines[3].replace(&named, &format!("TAP {turned})"))),
            ProgramFindingId::WrongHand,
        )),
        Some((drawn.with_word('Z', "Z89."), ProgramFindingId::CycleGeometry)),
        Some((drawn.with_word('Z', "Z-8888."), ProgramFindingId::DepthImplausible)),
        Some((lines(&|lines| lines[cancel] = "T2 M6".into()), ProgramFindingId::CycleNotCancelled)),
        has_code.then(|| {
            (lines(&|lines| lines.retain(|line| !line.contains("M135"))), ProgramFindingId::RigidTapCodeMissing)
        }),
        dialect
            .tap_lh
            .is_none()
            .then(|| (lines(&|lines| lines[at] = lines[at].replace("G84", "G74")), ProgramFindingId::CodeNotOnControl)),
        per_minute.then(|| (swapped(&speed, &faster), ProgramFindingId::LeadMismatch)),
        Some((swapped("G20", "G21"), ProgramFindingId::InchMetricMix)),
        has_modes.then(|| (swapped("G94", "G95"), ProgramFindingId::FeedModeMix)),
        dialect.tap_lh.is_some().then(|| (swapped("G84", "G74"), ProgramFindingId::WrongHand)),
        Some((drawn.with_word('Z', "Z-0.0001"), ProgramFindingId::DepthImplausible)),
        Some((
            lines(&|lines| lines.retain(|line| line != "G80" && !line.starts_with("G0 Z"))),
            ProgramFindingId::CycleNotCancelled,
        )),
    ]
}
