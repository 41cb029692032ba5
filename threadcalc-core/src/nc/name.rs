//! Names of functions and operators, and what waits for the values behind them.

use super::postfix::{Binary, Unary};

/// The longest name of a function or operator.
const LONGEST_NAME: usize = 5;

/// What waits for what stands behind it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Pending {
    Bracket,
    Function(Unary),
    /// The first and the second bracket of `ATAN[..]/[..]`.
    AtanFirst,
    AtanSecond,
    Operator(Binary),
    Lookup,
    Negate,
}

/// Letters of a name, in upper case, without the blanks between them.
#[derive(Clone, Copy, Debug)]
pub(super) struct Name {
    letters: [u8; LONGEST_NAME],
    length: usize,
}

impl Name {
    pub(super) const NONE: Self = Self { letters: [0; LONGEST_NAME], length: 0 };

    /// Adds a letter; false if no name is that long.
    pub(super) fn push(&mut self, letter: u8) -> bool {
        let Some(place) = self.letters.get_mut(self.length) else { return false };
        *place = letter.to_ascii_uppercase();
        self.length = self.length.wrapping_add(1);
        true
    }

    pub(super) const fn len(&self) -> usize {
        self.length
    }

    fn is(&self, name: &str) -> bool {
        self.letters.get(..self.length) == Some(name.as_bytes())
    }

    /// The bracket that this function opens.
    pub(super) fn function(&self) -> Option<Pending> {
        if self.is(Binary::Atan.name()) {
            return Some(Pending::AtanFirst);
        }
        Unary::ALL.iter().find(|function| self.is(function.name())).map(|function| Pending::Function(*function))
    }

    pub(super) fn is_function(&self) -> bool {
        self.function().is_some()
    }

    pub(super) fn operator(&self) -> Option<Binary> {
        Binary::ALL.iter().copied().find(|operator| *operator != Binary::Atan && self.is(operator.name()))
    }
}
