//! The value of a word while its bytes come: a number, or a formula brought into postfix order.

use super::fault::FaultKind;
use super::list::List;
use super::name::{Name, Pending};
use super::number::{Digits, Number, Sign};
use super::postfix::{Binary, Operation, Operations};
use super::word::WordValue;

/// How many brackets, functions, signs and operators may wait for what stands behind them.
const MOST_PENDING: usize = 32;
/// What is expected next.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Stage {
    Operand,
    Number,
    /// Letters of a function.
    Function,
    /// An operator, or `]`.
    Operator,
    /// Letters of an operator.
    OperatorName,
    /// Behind `*`: a second one makes it a power.
    Star,
    /// The `/` and the `[` between the brackets of ATAN.
    AtanSlash,
    AtanBracket,
    /// The value is complete.
    Done,
}

/// What became of a byte.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Step {
    /// It belongs to the value.
    Taken,
    /// The value was complete before it.
    Done,
    /// With it the value is none; it may belong to what follows.
    Bad(FaultKind),
    /// It belongs to a formula that there is no room for.
    Full,
}

/// A value while its bytes come.
#[derive(Clone, Debug)]
pub(super) struct Expression {
    pending: List<Pending, MOST_PENDING>,
    stage: Stage,
    digits: Digits,
    name: Name,
    /// The number that is all of the value so far: it needs no operation.
    alone: Option<Number>,
    brackets: u32,
    start: usize,
    /// `+ - * / **` may follow without brackets.
    is_open: bool,
    blanks_are_errors: bool,
    no_room: bool,
}

impl Expression {
    pub(super) const fn new() -> Self {
        Self {
            pending: List::new(Pending::Bracket),
            stage: Stage::Operand,
            digits: Digits::NONE,
            name: Name::NONE,
            alone: None,
            brackets: 0,
            start: 0,
            is_open: false,
            blanks_are_errors: false,
            no_room: false,
        }
    }

    /// A value begins; an open one may be a sum without brackets.
    pub(super) fn begin(&mut self, is_open: bool, blanks_are_errors: bool, operations: &Operations) {
        self.pending.clear();
        self.stage = Stage::Operand;
        self.digits = Digits::NONE;
        self.alone = None;
        self.brackets = 0;
        self.start = operations.len();
        self.is_open = is_open;
        self.blanks_are_errors = blanks_are_errors;
        self.no_room = false;
    }

    /// How many brackets are open.
    pub(super) const fn brackets(&self) -> u32 {
        self.brackets
    }

    /// A value that begins with a function, whose `[` comes next.
    pub(super) fn begin_function(&mut self, name: Name) {
        self.name = name;
        self.stage = Stage::Function;
    }

    /// Takes a byte that is no blank.
    pub(super) fn take(&mut self, byte: u8, column: u32, operations: &mut Operations) -> Step {
        let step = self.next(byte, column, operations);
        if self.no_room && step == Step::Taken { Step::Full } else { step }
    }

    fn next(&mut self, byte: u8, column: u32, operations: &mut Operations) -> Step {
        loop {
            match self.stage {
                Stage::Operand => return self.operand(byte, column),
                Stage::Number if matches!(byte, b'0'..=b'9' | b'.') => {
                    self.digits.push(byte, column, self.blanks_are_errors);
                    return Step::Taken;
                }
                Stage::Number => {
                    let sum = self.brackets > 0 || self.is_open;
                    if byte == b',' || (matches!(byte, b'+' | b'-') && !sum) {
                        return Step::Bad(FaultKind::BadNumber);
                    }
                    if let Err(fault) = self.close_number(operations) {
                        return Step::Bad(fault);
                    }
                }
                Stage::Function => match byte {
                    b'[' => return self.open_function(),
                    _ if byte.is_ascii_alphabetic() && self.name.push(byte) => return Step::Taken,
                    _ => return Step::Bad(FaultKind::Letters),
                },
                Stage::Operator => return self.operator(byte, operations),
                Stage::OperatorName => return self.operator_letter(byte, operations),
                Stage::Star if byte == b'*' => return self.binary(Binary::Power, operations),
                Stage::Star => {
                    self.binary(Binary::Times, operations);
                }
                Stage::AtanSlash if byte == b'/' => return self.enter(Stage::AtanBracket),
                Stage::AtanBracket if byte == b'[' => return self.open(Pending::AtanSecond),
                Stage::AtanSlash | Stage::AtanBracket => return Step::Bad(FaultKind::BadNumber),
                Stage::Done => return Step::Done,
            }
        }
    }

    /// A comment stands here: numbers and names do not go on behind it.
    pub(super) fn pause(&mut self, operations: &mut Operations) -> Result<(), FaultKind> {
        match self.stage {
            Stage::Number => self.close_number(operations),
            Stage::Function | Stage::OperatorName => Err(FaultKind::Letters),
            _ => Ok(()),
        }
    }

    /// The value, where nothing more of it comes.
    pub(super) fn end(&mut self, operations: &mut Operations) -> Result<WordValue, FaultKind> {
        if self.stage == Stage::Number {
            self.close_number(operations)?;
        }
        if self.brackets > 0 {
            return Err(FaultKind::UnclosedBracket);
        }
        match self.stage {
            Stage::Done => {}
            Stage::Operator => {
                while let Some(Pending::Operator(operator)) = self.pending.pop() {
                    self.emit(Operation::Binary(operator), operations);
                }
            }
            Stage::Function | Stage::OperatorName => return Err(FaultKind::Letters),
            _ => return Err(FaultKind::BadNumber),
        }
        if self.no_room {
            return Err(FaultKind::FormulaTooLong);
        }
        Ok(match self.alone {
            Some(number) => WordValue::Number(number),
            None => WordValue::Formula(operations.since(self.start)),
        })
    }

    /// Gives the room of a value that is none back.
    pub(super) fn discard(&self, operations: &mut Operations) {
        operations.truncate(self.start);
    }

    fn enter(&mut self, stage: Stage) -> Step {
        self.stage = stage;
        Step::Taken
    }

    fn emit(&mut self, operation: Operation, operations: &mut Operations) {
        self.no_room |= !operations.push(operation);
    }

    fn wait(&mut self, pending: Pending) {
        self.no_room |= !self.pending.push(pending);
    }

    fn open(&mut self, bracket: Pending) -> Step {
        self.wait(bracket);
        self.brackets = self.brackets.saturating_add(1);
        self.digits = Digits::NONE;
        self.enter(Stage::Operand)
    }

    /// A sign before something that is no number.
    fn wait_for_sign(&mut self) {
        if self.digits.sign() == Sign::Minus {
            self.wait(Pending::Negate);
        }
        self.digits = Digits::NONE;
    }

    fn operand(&mut self, byte: u8, column: u32) -> Step {
        match byte {
            b'0'..=b'9' | b'.' => {
                self.digits.push(byte, column, self.blanks_are_errors);
                self.enter(Stage::Number)
            }
            b'+' | b'-' => {
                let sign = if byte == b'-' { Sign::Minus } else { Sign::Plus };
                if self.digits.push_sign(sign, column) { Step::Taken } else { Step::Bad(FaultKind::BadNumber) }
            }
            b'#' => {
                self.wait_for_sign();
                self.wait(Pending::Lookup);
                Step::Taken
            }
            b'[' => {
                self.wait_for_sign();
                self.open(Pending::Bracket)
            }
            _ if byte.is_ascii_alphabetic() => {
                self.name = Name::NONE;
                self.name.push(byte);
                self.enter(Stage::Function)
            }
            _ => Step::Bad(FaultKind::BadNumber),
        }
    }

    fn open_function(&mut self) -> Step {
        let Some(bracket) = self.name.function() else { return Step::Bad(FaultKind::Letters) };
        self.wait_for_sign();
        self.open(bracket)
    }

    fn close_number(&mut self, operations: &mut Operations) -> Result<(), FaultKind> {
        let number = self.digits.number()?;
        self.digits = Digits::NONE;
        if self.pending.len() == 0 && operations.len() == self.start {
            self.alone = Some(number);
        } else {
            self.emit(Operation::Number(number), operations);
        }
        self.after_operand(operations);
        Ok(())
    }

    /// Signs and lookups belong to the operand behind them.
    fn after_operand(&mut self, operations: &mut Operations) {
        loop {
            match self.pending.pop() {
                Some(Pending::Lookup) => self.emit(Operation::Lookup, operations),
                Some(Pending::Negate) => self.emit(Operation::Negate, operations),
                Some(other) => {
                    self.wait(other);
                    break;
                }
                None => break,
            }
        }
        self.stage = if self.brackets > 0 || self.is_open { Stage::Operator } else { Stage::Done };
    }

    fn operator(&mut self, byte: u8, operations: &mut Operations) -> Step {
        match byte {
            b'+' => self.binary(Binary::Plus, operations),
            b'-' => self.binary(Binary::Minus, operations),
            b'/' => self.binary(Binary::Over, operations),
            b'*' => self.enter(Stage::Star),
            _ if self.brackets == 0 => Step::Done,
            b']' => self.close_bracket(operations),
            _ if byte.is_ascii_alphabetic() => {
                self.name = Name::NONE;
                self.operator_letter(byte, operations)
            }
            _ => Step::Bad(FaultKind::BadNumber),
        }
    }

    /// No operator begins another one: the last letter is known.
    fn operator_letter(&mut self, byte: u8, operations: &mut Operations) -> Step {
        if !byte.is_ascii_alphabetic() || !self.name.push(byte) {
            return Step::Bad(FaultKind::Letters);
        }
        match self.name.operator() {
            Some(operator) => self.binary(operator, operations),
            None => self.enter(Stage::OperatorName),
        }
    }

    fn binary(&mut self, operator: Binary, operations: &mut Operations) -> Step {
        if let Some(number) = self.alone.take() {
            self.emit(Operation::Number(number), operations);
        }
        while let Some(last) = self.pending.pop() {
            match last {
                Pending::Operator(before) if before.binds() >= operator.binds() => {
                    self.emit(Operation::Binary(before), operations);
                }
                other => {
                    let logical = matches!(other, Pending::Operator(before) if before.binds() == Binary::And.binds());
                    if logical && matches!(operator, Binary::Plus | Binary::Minus) {
                        self.emit(Operation::Doubt, operations);
                    }
                    self.wait(other);
                    break;
                }
            }
        }
        self.wait(Pending::Operator(operator));
        self.enter(Stage::Operand)
    }

    fn close_bracket(&mut self, operations: &mut Operations) -> Step {
        self.brackets = self.brackets.saturating_sub(1);
        while let Some(pending) = self.pending.pop() {
            match pending {
                Pending::Operator(operator) => self.emit(Operation::Binary(operator), operations),
                Pending::AtanFirst => return self.enter(Stage::AtanSlash),
                Pending::AtanSecond => self.emit(Operation::Binary(Binary::Atan), operations),
                Pending::Function(function) => self.emit(Operation::Unary(function), operations),
                Pending::Bracket | Pending::Lookup | Pending::Negate => {}
            }
            if !matches!(pending, Pending::Operator(_)) {
                break;
            }
        }
        self.after_operand(operations);
        Step::Taken
    }
}
