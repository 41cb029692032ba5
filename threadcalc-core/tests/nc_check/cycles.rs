//! The library's own cycles are clean, and a seeded fault of any kind is found and named.
//!
//! `THREADCALC_NC_CASES` sets the number of cases; 2,000 if it is not set.

use threadcalc_core::nc::ProgramFindingId;
use threadcalc_core::{
    CycleRequest, Dialect, FeedMode, Holder, Length, ReturnTo, Rounding, Thread, Unit, cycle, feed, read_comment,
    standard_threads,
};

use super::faults::{KINDS, faults};
use super::random::Random;
use super::told::{MILL, cases, dialect, found};

const RIGID: &str = "tap_rh=G84 tap_lh=G74 feed_per_revolution=G95 feed_basis=by_mode needs_spindle_running=false \
    rigid_tap_code=M135 rigid_tap_code_has_s=true";
const BY_SPINDLE: &str = "tap_rh=G84 lh_by_spindle_direction=true feed_per_revolution=G95 feed_basis=by_mode";
/// A control of which everything is known.
const KNOWN: &str = "tap_rh=G84 tap_lh=G74 feed_per_revolution=G95 feed_mode_default=per_minute feed_basis=by_mode \
    cycle_starts_spindle=true needs_spindle_running=false no_point=as_written repeat_word=L peck_word=Q dwell_word=P \
    dwell_unit=s retract_multiplier_word=J retract_in=factor rapid_cancels_cycle=true override_locked_in_cycle=true \
    F_converted_on_units_change=false subprogram_call=M98 subprogram_return=M99";

/// A drawn tapped hole, and its program: the library's own cycle with a small header.
pub struct Drawn {
    pub dialect: Dialect,
    pub thread: Thread,
    pub unit: Unit,
    pub mode: FeedMode,
    pub rpm: Length,
    pub lines: Vec<String>,
}

impl Drawn {
    pub fn text(&self) -> String {
        self.lines.join("\n") + "\n"
    }

    /// The place of the cycle's line.
    pub fn at_cycle(&self) -> usize {
        self.lines.iter().position(|line| line.contains("Z-")).unwrap()
    }

    /// The program with another word for the one of this letter in the cycle's line.
    pub fn with_word(&self, letter: char, word: &str) -> String {
        let mut lines = self.lines.clone();
        let cycle = &mut lines[self.at_cycle()];
        let words = cycle.split(' ').map(|old| if old.starts_with(letter) { word } else { old });
        *cycle = words.collect::<Vec<_>>().join(" ");
        lines.join("\n") + "\n"
    }

    /// The feed of the mode in the unit of the program.
    pub fn feed_of(&self, mode: FeedMode) -> Length {
        let lead = self.thread.lead_mm();
        let lead = if self.unit == Unit::Inch { lead.over(Length::INCH).unwrap() } else { lead };
        if mode == FeedMode::PerRevolution { lead } else { lead.times(self.rpm).unwrap() }
    }
}

/// F with a point, in six decimals.
pub fn word_of(feed: Length) -> String {
    let written = feed.round_to(6, Rounding::HalfEven).unwrap().to_length().unwrap();
    format!("F{written}{}", if written.whole().is_some() { "." } else { "" })
}

fn draw(random: &mut Random, threads: &[Thread]) -> Drawn {
    let mut pick = |count: u64| random.pick(count);
    let right = threads[pick(threads.len() as u64) as usize];
    let which = pick(5);
    let fields = ["", MILL, RIGID, BY_SPINDLE, KNOWN][which as usize];
    let dialect = if which == 0 { Dialect::rs274ngc() } else { dialect(fields) };
    let is_left = pick(4) == 0 && which != 0;
    let thread = if is_left { Thread::read(format!("{right}-LH").as_bytes()).unwrap() } else { right };
    let mode = if pick(2) == 0 || which == 0 { FeedMode::PerMinute } else { FeedMode::PerRevolution };
    let unit = if pick(2) == 0 { Unit::Mm } else { Unit::Inch };
    // No power of ten: there a feed per minute is the lead with its point elsewhere.
    let rpm = Length::integer(101 + pick(800) as i64);
    let lead = thread.lead_mm();
    let turns = |turns: u64| lead.times(Length::integer(turns as i64)).unwrap();
    let most = thread.major_mm().times(Length::integer(10)).unwrap();
    let depth = turns(3 + pick(12));
    let decimals = if mode == FeedMode::PerMinute { 4 } else { 6 };
    let made = feed(lead, (mode == FeedMode::PerMinute).then_some(rpm), unit, mode, decimals).unwrap();
    let request = CycleRequest {
        dialect: &dialect,
        thread: &thread,
        feed: &made,
        rpm,
        depth_mm: if depth > most { most } else { depth },
        r_plane_mm: turns(3 + pick(4)),
        holder: [Holder::Rigid, Holder::TensionCompression, Holder::Floating][pick(3) as usize],
        peck_mm: None,
        dwell_s: None,
        retract_factor: None,
        return_to: if pick(2) == 0 { ReturnTo::RPlane } else { ReturnTo::Initial },
    };
    // The check is not told of the holder: only what taps rigidly has the code for it.
    let request = CycleRequest { holder: if which == 2 { Holder::Rigid } else { request.holder }, ..request };
    let words = cycle(&request).unwrap().unwrap_or_else(|refused| panic!("{thread}: {refused}"));
    let blocks: Vec<String> = words.blocks().map(|block| block.as_str().to_string()).collect();
    let (first, rest) = blocks.split_first().unwrap();
    let mut lines = vec!["%".into(), format!("O{}", 1 + pick(9000)), first.clone()];
    lines.extend([format!("T1 M6 (TAP {thread})"), "G0 G54 X1. Y1.".into(), "G43 H1 Z90.".into()]);
    // Another hole behind the first.
    let hole = |line: &String| if line.contains("Z-") { vec![line.clone(), "X9.".into()] } else { vec![line.clone()] };
    lines.extend(rest.iter().flat_map(hole));
    lines.extend(["G0 Z90. M5".into(), "M30".into(), "%".into()]);
    Drawn { dialect, thread, unit, mode, rpm, lines }
}

#[test]
fn own_cycles_are_clean_and_a_seeded_fault_is_named() {
    // `G5` and `G1` are no threads in a comment; taper threads have a depth of their own.
    let is_told = |thread: &Thread| {
        let comment = read_comment(format!("TAP {thread}").as_bytes(), false);
        comment.threads().next().is_some_and(|found| found.thread == *thread)
    };
    // Of the usual sizes: what is deeper or finer than any tap is told as such.
    let is_usual = |it: &Thread| it.pitch_mm() <= Length::integer(6) && it.major_mm() >= Length::ONE;
    let threads: Vec<_> =
        standard_threads(None, None).filter(|it| !it.form().is_taper() && is_usual(it) && is_told(it)).collect();
    assert!(threads.len() > 300, "{}", threads.len());
    let mut random = Random(20_261_127);
    let mut seeded = [0_u32; KINDS];
    for _ in 0..cases() {
        let drawn = draw(&mut random, &threads);
        let text = drawn.text();
        assert_eq!(found(&text, &drawn.dialect), [], "{text}");
        for (kind, (text, id)) in faults(&drawn).into_iter().enumerate().filter_map(|(at, fault)| Some((at, fault?))) {
            let found = found(&text, &drawn.dialect);
            assert!(found.contains(&id), "{} is not in {found:?} of\n{text}", id.name());
            let of_lead = |id: &&ProgramFindingId| {
                use ProgramFindingId::{DecimalPoint, FeedModeMix, FeedRounded, InchMetricMix, LeadMismatch};
                [DecimalPoint, FeedModeMix, FeedRounded, InchMetricMix, LeadMismatch].contains(id)
            };
            assert!(
                found.iter().filter(of_lead).all(|other| *other == id),
                "{found:?} beside {} of\n{text}",
                id.name()
            );
            seeded[kind] += 1;
        }
    }
    println!("{} programs; faults of each kind: {seeded:?}", cases());
    assert!(seeded.iter().all(|count| *count > 0), "{seeded:?}");
}
