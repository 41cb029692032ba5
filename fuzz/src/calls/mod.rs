//! Calls of the C interface in a row, with results of one call as arguments of the next.
//!
//! Pointers are valid or NULL, lengths and sizes are true; everything else is whatever the input says.

mod checks;
mod cycles;
mod depths;
mod drills;
mod gauges;
mod identify;
mod input;
mod judged_drills;
pub mod memory;
mod motions;
mod names;
mod notes;
mod numbers;
mod plans;
pub mod protocol;
mod strengths;
mod taps;
mod threads;

use threadcalc::{threadcalc_drill_t, threadcalc_ratio_t, threadcalc_thread_t};

pub use input::Input;

/// What calls leave for the calls behind them.
pub struct State {
    /// Threads, a blank one among them.
    pub threads: [threadcalc_thread_t; 13],
    /// The last number that a call gave.
    pub ratio: threadcalc_ratio_t,
    /// Drills that calls gave, blank ones among them.
    pub drills: [threadcalc_drill_t; 4],
}

impl State {
    fn keep_thread(&mut self, input: &mut Input<'_>, thread: threadcalc_thread_t) {
        self.threads[input.place(12)] = thread;
    }

    fn keep_drill(&mut self, input: &mut Input<'_>, drill: threadcalc_drill_t) {
        self.drills[input.place(3)] = drill;
        self.ratio = drill.diameter_mm;
    }
}

/// One call, or a few that belong together.
type Operation = fn(&mut State, &mut Input<'_>);

/// Every operation; each function of the header stands in one of them.
const OPERATIONS: [Operation; 86] = [
    threads::read,
    threads::metric,
    threads::unified,
    threads::unified_size,
    threads::write,
    threads::size_text,
    threads::findings,
    threads::standard,
    threads::profile,
    threads::limits,
    threads::coatings,
    threads::lengths,
    numbers::read,
    numbers::write,
    numbers::exact,
    numbers::nearest_double,
    numbers::programmed_speed,
    numbers::feed,
    numbers::exact_speeds,
    drills::list,
    drills::named,
    drills::of_diameter,
    drills::diameter,
    drills::percent,
    drills::tap_drill,
    plans::depths,
    plans::plan,
    plans::text,
    plans::json,
    plans::lead,
    plans::feed_word,
    plans::json_door,
    names::all,
    threads::read_fit,
    threads::pipe,
    threads::preference,
    plans::taper_depths,
    notes::hole_note,
    notes::comment,
    taps::kind,
    taps::chamfer,
    taps::chamfers_that_fit,
    taps::iso_tap,
    taps::limit,
    taps::limit_for_plating,
    taps::mark,
    taps::judge,
    gauges::list,
    gauges::next_move,
    gauges::trimmed_depth,
    gauges::re_entry,
    gauges::wires,
    strengths::engagement,
    strengths::speeds,
    strengths::power,
    strengths::torques,
    strengths::starting_values,
    strengths::gear_fit,
    motions::tapping_time,
    motions::ramp,
    motions::feed_fit,
    motions::pattern_time,
    motions::holder_clearance,
    motions::holder_travel,
    depths::full_thread_that_fits,
    depths::chamfers_for_full_thread,
    depths::bottoming,
    depths::run_out,
    depths::countersinks,
    depths::program_depths,
    depths::through_hole,
    numbers::nearest_exact_speeds,
    judged_drills::read,
    judged_drills::probable_hole,
    judged_drills::form_hole,
    judged_drills::judge,
    cycles::cycle,
    identify::lead,
    identify::words,
    identify::threads,
    taps::usual_limit,
    checks::pieces,
    checks::json,
    checks::compare,
    identify::near,
    threads::wire_insert,
];

/// The most calls of one input: a longer row finds nothing that a shorter one does not.
const MOST_CALLS: usize = 12;

/// Makes the calls that an input describes: the place of an operation, then its arguments.
pub fn run(bytes: &[u8]) {
    let mut input = Input::new(bytes);
    let blank = threadcalc_thread_t::default();
    let known = [
        &b"M8-6H"[..],
        b"1/4-20 UNC-2B",
        b"M10x1-6g-LH",
        b"M16xPh3P1.5",
        b"1/4-18",
        b"1/4-18 NPT",
        b"G1/2",
        b"MJ8x1.25-4H5H",
        b"1/2 BSW",
        b"2 BA",
        b"Tr40x7-7H",
        b"M8 STI",
    ]
    .map(threads::known);
    let mut state = State {
        threads: [blank; 13],
        ratio: threadcalc_ratio_t::default(),
        drills: [threadcalc_drill_t::default(); 4],
    };
    state.threads[..known.len()].copy_from_slice(&known);
    for _ in 0..MOST_CALLS {
        if input.is_at_end() {
            break;
        }
        let place = input.place(OPERATIONS.len());
        OPERATIONS[place](&mut state, &mut input);
    }
}
