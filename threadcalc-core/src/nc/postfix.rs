//! Formulas as they are kept: operations in the order in which they are done.

use super::list::List;
use super::number::Number;
use crate::named::named;

/// How many operations the formulas of one block may have together.
pub(super) const MOST_OPERATIONS: usize = 128;

named! {
    /// What is made of two values.
    pub enum Binary {
        /// `+`
        Plus = 1 "+",
        /// `-`
        Minus = 2 "-",
        /// `*`
        Times = 3 "*",
        /// `/`
        Over = 4 "/",
        /// `**`, to a power.
        Power = 5 "**",
        /// `MOD`, the rest of a division; never negative.
        Mod = 6 "MOD",
        /// `AND`: 1 if neither is 0, else 0.
        And = 7 "AND",
        /// `OR`: 0 if both are 0, else 1.
        Or = 8 "OR",
        /// `XOR`: 1 if exactly one is 0, else 0.
        Xor = 9 "XOR",
        /// `EQ`: 1 if equal, else 0.
        Equal = 10 "EQ",
        /// `NE`
        NotEqual = 11 "NE",
        /// `GT`
        Greater = 12 "GT",
        /// `GE`
        GreaterOrEqual = 13 "GE",
        /// `LT`
        Less = 14 "LT",
        /// `LE`
        LessOrEqual = 15 "LE",
        /// `ATAN[..]/[..]`: the angle in degrees of a point, its height first.
        Atan = 16 "ATAN",
    }
}

named! {
    /// What is made of one value; angles are in degrees.
    pub enum Unary {
        /// Without its sign.
        Abs = 1 "ABS",
        /// Arc cosine.
        Acos = 2 "ACOS",
        /// Arc sine.
        Asin = 3 "ASIN",
        /// Cosine.
        Cos = 4 "COS",
        /// e to this power.
        Exp = 5 "EXP",
        /// Down to a whole number, towards minus infinity.
        Fix = 6 "FIX",
        /// Up to a whole number, towards plus infinity.
        Fup = 7 "FUP",
        /// Natural logarithm.
        Ln = 8 "LN",
        /// To the nearest whole number, a half away from 0.
        Round = 9 "ROUND",
        /// Sine.
        Sin = 10 "SIN",
        /// Square root.
        Sqrt = 11 "SQRT",
        /// Tangent.
        Tan = 12 "TAN",
    }
}

impl Binary {
    /// What binds tighter is done first; what binds alike from left to right.
    pub(super) const fn binds(self) -> u8 {
        match self {
            Self::Power => 5,
            Self::Times | Self::Over | Self::Mod => 4,
            Self::Plus | Self::Minus => 3,
            Self::And | Self::Or | Self::Xor => 1,
            _ => 2,
        }
    }
}

/// A step of a formula: each takes its values off a stack and leaves its result there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Operation {
    /// Puts a number there.
    Number(Number),
    /// The value of the variable of this number: `#`.
    Lookup,
    /// The other sign.
    Negate,
    /// Of two values.
    Binary(Binary),
    /// Of one value.
    Unary(Unary),
    /// Readers differ about the order of what stands before: `AND`, `OR` or `XOR` with a sum behind it.
    /// Changes nothing.
    Doubt,
}

/// Which operations of its block a formula is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Formula {
    start: u16,
    length: u16,
}

/// The operations of all formulas of a block.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Operations(List<Operation, MOST_OPERATIONS>);

impl Operations {
    pub(super) const NONE: Self = Self(List::new(Operation::Lookup));

    pub(super) fn clear(&mut self) {
        self.0.clear();
    }

    pub(super) const fn len(&self) -> usize {
        self.0.len()
    }

    pub(super) fn push(&mut self, operation: Operation) -> bool {
        self.0.push(operation)
    }

    pub(super) fn truncate(&mut self, length: usize) {
        self.0.truncate(length);
    }

    /// All since there were `start` of them.
    pub(super) fn since(&self, start: usize) -> Formula {
        let length = self.0.len().saturating_sub(start);
        Formula { start: start as u16, length: length as u16 }
    }

    pub(super) fn of(&self, formula: Formula) -> &[Operation] {
        let start = usize::from(formula.start);
        let end = start.saturating_add(usize::from(formula.length));
        self.0.as_slice().get(start..end).unwrap_or(&[])
    }
}
