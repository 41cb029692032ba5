//! Results in the order of their numbers, whoever finishes first, and never more than a few of them waiting.

use std::collections::BTreeMap;
use std::sync::{Condvar, Mutex, MutexGuard, PoisonError};
use std::time::Duration;

/// What workers and the one who waits for their results share.
pub struct Window<T> {
    state: Mutex<State<T>>,
    /// A number may be begun.
    room: Condvar,
    /// The next result is there.
    ready: Condvar,
    /// How far workers may be ahead.
    ahead: usize,
    total: usize,
}

struct State<T> {
    next_to_begin: usize,
    next_to_give: usize,
    finished: BTreeMap<usize, T>,
    is_stopped: bool,
}

/// What waiting for the next result comes to.
pub enum Taken<T> {
    /// Its number and the result.
    Result(usize, T),
    /// Not finished yet.
    NotYet,
    /// All were given.
    End,
    /// It was stopped.
    Stopped,
}

impl<T> Window<T> {
    pub fn new(total: usize, ahead: usize) -> Self {
        let state = State { next_to_begin: 0, next_to_give: 0, finished: BTreeMap::new(), is_stopped: false };
        Self { state: Mutex::new(state), room: Condvar::new(), ready: Condvar::new(), ahead, total }
    }

    /// The number of the next piece of work, when there is room for its result; `None`: no more work.
    pub fn begin(&self) -> Option<usize> {
        let mut state = self.locked();
        loop {
            if state.is_stopped || state.next_to_begin >= self.total {
                return None;
            }
            if state.next_to_begin < state.next_to_give.saturating_add(self.ahead) {
                let number = state.next_to_begin;
                state.next_to_begin = number.saturating_add(1);
                return Some(number);
            }
            state = self.room.wait(state).unwrap_or_else(PoisonError::into_inner);
        }
    }

    /// Hands over the result of a piece of work.
    pub fn finish(&self, number: usize, result: T) {
        let mut state = self.locked();
        state.finished.insert(number, result);
        if number == state.next_to_give {
            self.ready.notify_all();
        }
    }

    /// The next result, when it comes within this time.
    pub fn take(&self, time: Duration) -> Taken<T> {
        let mut state = self.locked();
        let is_due = |state: &State<T>| {
            state.is_stopped || state.next_to_give >= self.total || state.finished.contains_key(&state.next_to_give)
        };
        if !is_due(&state) {
            let waited = self.ready.wait_timeout_while(state, time, |state| !is_due(state));
            state = waited.unwrap_or_else(PoisonError::into_inner).0;
        }
        let number = state.next_to_give;
        if let Some(result) = state.finished.remove(&number) {
            state.next_to_give = number.saturating_add(1);
            self.room.notify_all();
            self.ready.notify_all();
            return Taken::Result(number, result);
        }
        match () {
            () if number >= self.total => Taken::End,
            () if state.is_stopped => Taken::Stopped,
            () => Taken::NotYet,
        }
    }

    /// Ends the work behind what is being done now.
    pub fn stop(&self) {
        self.locked().is_stopped = true;
        self.room.notify_all();
        self.ready.notify_all();
    }

    /// Nothing is half done under this lock, whoever held it.
    fn locked(&self) -> MutexGuard<'_, State<T>> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
