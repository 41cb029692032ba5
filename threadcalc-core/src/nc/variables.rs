//! The variables of a program.

use super::block::Block;
use super::formula::evaluate;
use super::list::List;
use crate::length::Length;

/// How many variables are kept.
const MOST_VARIABLES: usize = 128;
/// The most assignments of a block, and no room for more is needed.
const MOST_AT_ONCE: usize = 16;

/// What is known of a variable.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Variable {
    /// It has this value.
    Known(Length),
    /// It was set to something that could not be computed.
    Unknown,
    /// Nothing in the program set it.
    Unset,
}

/// What a program has set: numbers of variables and their values, up to 128 of them.
///
/// ```
/// use threadcalc_core::{Length, nc::{Blocks, ReaderSettings, Variable, Variables}};
///
/// let mut variables = Variables::new();
/// let mut program = Blocks::new(b"#101=1.5 #102=[#101*2]\n#102=[#101*2]", ReaderSettings::default());
/// variables.assign(program.next().unwrap());
/// assert_eq!(variables.get(102), Variable::Unknown, "#101 was not set when the values were read");
/// variables.assign(program.next().unwrap());
/// assert_eq!(variables.get(102), Variable::Known(Length::integer(3)));
/// ```
///
/// # Source
/// RS274/NGC, NISTIR 6556, section 3.3.2.2 (parameter setting).
#[derive(Clone, Debug, PartialEq)]
pub struct Variables {
    numbers: List<u32, MOST_VARIABLES>,
    values: [Option<Length>; MOST_VARIABLES],
    /// Some that were set are not kept: what is not kept may have been set.
    lost: bool,
}

impl Default for Variables {
    fn default() -> Self {
        Self::new()
    }
}

impl Variables {
    /// No variable is set.
    #[must_use]
    pub const fn new() -> Self {
        Self { numbers: List::new(0), values: [None; MOST_VARIABLES], lost: false }
    }

    /// What is known of the variable of this number.
    #[must_use]
    pub fn get(&self, number: u32) -> Variable {
        match self.place(number).and_then(|place| self.values.get(place)) {
            Some(Some(value)) => Variable::Known(*value),
            Some(None) => Variable::Unknown,
            None if self.lost => Variable::Unknown,
            None => Variable::Unset,
        }
    }

    /// Sets a variable; `None` for a value that is not known.
    ///
    /// If there is no room for it, variables that are not kept are [`Variable::Unknown`] from now on.
    pub fn set(&mut self, number: u32, value: Option<Length>) {
        let place = self.place(number).unwrap_or(self.numbers.len());
        let is_new = place == self.numbers.len();
        if is_new && !self.numbers.push(number) {
            self.lost = true;
        } else if let Some(held) = self.values.get_mut(place) {
            *held = value;
        }
    }

    /// Any variable may have any value from now on.
    pub fn forget(&mut self) {
        self.numbers.clear();
        self.lost = true;
    }

    /// Does the assignments of a block, all with the values from before it.
    ///
    /// A block that is not readable may set anything, as may an assignment to a variable whose number
    /// cannot be computed: then all are forgotten.
    pub fn assign(&mut self, block: &Block) {
        if !block.is_readable() {
            self.forget();
            return;
        }
        let mut done = List::<_, MOST_AT_ONCE>::new((None, None));
        for assignment in block.assignments() {
            let number = evaluate(block, assignment.index, self).ok().and_then(variable_number);
            done.push((number, evaluate(block, assignment.value, self).ok()));
        }
        for (number, value) in done.as_slice() {
            match number {
                Some(number) => self.set(*number, *value),
                None => self.forget(),
            }
        }
    }

    fn place(&self, number: u32) -> Option<usize> {
        self.numbers.as_slice().iter().position(|known| *known == number)
    }
}

/// A value as the number of a variable.
pub(super) fn variable_number(value: Length) -> Option<u32> {
    u32::try_from(value.whole()?).ok()
}
