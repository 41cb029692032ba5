//! Calls of the C interface in a row, with results of one call as arguments of the next.
//!
//! Pointers are valid or NULL, lengths and sizes are true; everything else is whatever the input says.

mod cycles;
mod drills;
mod input;
pub mod memory;
mod names;
mod notes;
mod numbers;
mod plans;
pub mod protocol;
mod threads;

use threadcalc::{threadcalc_ratio_t, threadcalc_thread_t};

pub use input::Input;

/// What calls leave for the calls behind them.
pub struct State {
    /// Threads, a blank one among them.
    pub threads: [threadcalc_thread_t; 8],
    /// The last number that a call gave.
    pub ratio: threadcalc_ratio_t,
}

impl State {
    fn keep_thread(&mut self, input: &mut Input<'_>, thread: threadcalc_thread_t) {
        self.threads[input.place(7)] = thread;
    }
}

/// One call, or a few that belong together.
type Operation = fn(&mut State, &mut Input<'_>);

/// Every operation; each function of the header stands in one of them.
const OPERATIONS: [Operation; 38] = [
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
    cycles::cycle,
];

/// The most calls of one input: a longer row finds nothing that a shorter one does not.
const MOST_CALLS: usize = 12;

/// Makes the calls that an input describes: the place of an operation, then its arguments.
pub fn run(bytes: &[u8]) {
    let mut input = Input::new(bytes);
    let blank = threadcalc_thread_t::default();
    let known = [&b"M8-6H"[..], b"1/4-20 UNC-2B", b"M10x1-6g-LH", b"M16xPh3P1.5", b"1/4-18", b"1/4-18 NPT", b"G1/2"]
        .map(threads::known);
    let mut state = State { threads: [blank; 8], ratio: threadcalc_ratio_t::default() };
    state.threads[..known.len()].copy_from_slice(&known);
    for _ in 0..MOST_CALLS {
        if input.is_at_end() {
            break;
        }
        let place = input.place(OPERATIONS.len());
        OPERATIONS[place](&mut state, &mut input);
    }
}
