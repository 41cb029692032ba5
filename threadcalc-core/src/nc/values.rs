//! The values of words, computed or left open.

use super::block::Block;
use super::formula::evaluate;
use super::variables::Variables;
use super::word::WordValue;
use crate::length::Length;

/// What values are made of.
#[derive(Clone, Copy)]
pub(super) struct Values<'a> {
    pub variables: &'a Variables,
    /// False: no formula is computed.
    pub evaluates: bool,
}

impl Values<'_> {
    /// The value of a word; None where it is not known.
    pub(super) fn of(&self, block: &Block, value: WordValue) -> Option<Length> {
        if !self.evaluates && matches!(value, WordValue::Formula(_)) {
            return None;
        }
        evaluate(block, value, self.variables).ok()
    }
}
