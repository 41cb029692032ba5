//! Values of formulas.

use core::fmt;

use super::block::Block;
use super::list::List;
use super::postfix::{Binary, Operation, Unary};
use super::variables::{Variable, Variables, variable_number};
use super::word::WordValue;
use crate::length::{Length, Rounding};

/// Values that wait for their operation: never more than operators and brackets can wait for them.
const MOST_VALUES: usize = 64;
/// Up to this power the result is exact.
const MOST_FACTORS: u64 = 64;

/// Why a value cannot be computed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Unresolved {
    /// It needs a variable that the program has not set.
    Unset(u32),
    /// It needs a variable whose value is not known.
    Unknown(u32),
    /// The number of a variable is not whole, or below 0.
    VariableNumber,
    /// It divides by 0.
    DivisionByZero,
    /// A root, logarithm, power or arc of a number that has none.
    Undefined,
    /// A number is too large, or needs too many digits.
    Overflow,
    /// Readers differ about the order of operations: `AND`, `OR` or `XOR` with a sum behind it.
    Order,
    /// It is written wrongly: a fault of the block says how.
    Unreadable,
}

impl fmt::Display for Unresolved {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (text, number) = match self {
            Self::Unset(number) => ("never set in the program: #", Some(*number)),
            Self::Unknown(number) => ("not known: #", Some(*number)),
            Self::VariableNumber => ("the number of a variable is not whole", None),
            Self::DivisionByZero => ("division by 0", None),
            Self::Undefined => ("no such root, logarithm, power or arc", None),
            Self::Overflow => ("the number is too large or too long", None),
            Self::Order => ("the order of AND, OR or XOR and a sum is not agreed on", None),
            Self::Unreadable => ("not readable", None),
        };
        f.write_str(text)?;
        number.map_or(Ok(()), |number| fmt::Display::fmt(&Length::integer(i64::from(number)), f))
    }
}

/// The exact value of a word or an assignment.
///
/// ```text
/// + − × ÷, ABS FIX FUP ROUND MOD, whole powers, comparisons   exact
/// SIN COS TAN ASIN ACOS ATAN SQRT EXP LN, other powers         to 9 decimals
/// ```
///
/// Angles are in degrees. `**` is done first, then `* / MOD`, then `+ -`, then comparisons, then `AND OR
/// XOR`; what binds alike from left to right. FIX rounds towards minus infinity and FUP towards plus
/// infinity, ROUND takes a half away from 0, MOD is never negative, a comparison is 1 or 0.
///
/// # Errors
/// [`Unresolved`] says why there is no value; there is never a guess.
///
/// # Example
/// ```
/// use threadcalc_core::Length;
/// use threadcalc_core::nc::{Blocks, ReaderSettings, Unresolved, Variables, evaluate};
///
/// let mut variables = Variables::new();
/// variables.set(101, Some(Length::new(3, 2)?));
/// let mut program = Blocks::new(b"F[#101*400] Z-#110", ReaderSettings::default());
/// let block = program.next().unwrap();
/// let values = [0, 1].map(|place| evaluate(block, block.words()[place].value(), &variables));
/// assert_eq!(values, [Ok(Length::integer(600)), Err(Unresolved::Unset(110))]);
/// # Ok::<(), threadcalc_core::Error>(())
/// ```
///
/// # Source
/// RS274/NGC, NISTIR 6556, sections 3.3.2.2 to 3.3.2.4 (parameters, expressions, unary operations), from
/// memory; the order of comparisons is that of its open successors.
pub fn evaluate(block: &Block, value: WordValue, variables: &Variables) -> Result<Length, Unresolved> {
    let formula = match value {
        WordValue::Number(number) => return number.to_length().map_err(|_| Unresolved::Overflow),
        WordValue::Formula(formula) => formula,
        WordValue::Unreadable => return Err(Unresolved::Unreadable),
    };
    let mut values = List::<Length, MOST_VALUES>::new(Length::ZERO);
    for operation in block.operations(formula) {
        let mut take = || values.pop().ok_or(Unresolved::Unreadable);
        let result = match operation {
            Operation::Number(number) => number.to_length().map_err(|_| Unresolved::Overflow)?,
            Operation::Lookup => look_up(take()?, variables)?,
            Operation::Negate => take()?.negative(),
            Operation::Unary(function) => unary(*function, take()?)?,
            Operation::Binary(operator) => {
                let right = take()?;
                binary(*operator, take()?, right)?
            }
            Operation::Doubt => return Err(Unresolved::Order),
        };
        if !values.push(result) {
            return Err(Unresolved::Overflow);
        }
    }
    values.pop().ok_or(Unresolved::Unreadable)
}

fn look_up(number: Length, variables: &Variables) -> Result<Length, Unresolved> {
    let number = variable_number(number).ok_or(Unresolved::VariableNumber)?;
    match variables.get(number) {
        Variable::Known(value) => Ok(value),
        Variable::Unknown => Err(Unresolved::Unknown(number)),
        Variable::Unset => Err(Unresolved::Unset(number)),
    }
}

fn binary(operator: Binary, left: Length, right: Length) -> Result<Length, Unresolved> {
    let truth = |is: bool| Ok(if is { Length::ONE } else { Length::ZERO });
    let [is_left, is_right] = [left, right].map(|value| value != Length::ZERO);
    let result = match operator {
        Binary::Plus => left.plus(right),
        Binary::Minus => left.minus(right),
        Binary::Times => left.times(right),
        Binary::Over | Binary::Mod if !is_right => return Err(Unresolved::DivisionByZero),
        Binary::Over => left.over(right),
        Binary::Mod => left.down_to_multiple(right).and_then(|multiple| left.minus(multiple)),
        Binary::Power => return power(left, right),
        Binary::Atan if !is_left && !is_right => return Err(Unresolved::Undefined),
        Binary::Atan => return from_double(libm::atan2(left.to_f64(), right.to_f64()) * DEGREES),
        Binary::And => truth(is_left && is_right),
        Binary::Or => truth(is_left || is_right),
        Binary::Xor => truth(is_left != is_right),
        Binary::Equal => truth(left == right),
        Binary::NotEqual => truth(left != right),
        Binary::Greater => truth(left > right),
        Binary::GreaterOrEqual => truth(left >= right),
        Binary::Less => truth(left < right),
        Binary::LessOrEqual => truth(left <= right),
    };
    result.map_err(|_| Unresolved::Overflow)
}

fn unary(function: Unary, value: Length) -> Result<Length, Unresolved> {
    let double = value.to_f64();
    let result = match function {
        Unary::Abs => return Ok(value.magnitude()),
        Unary::Fix => return whole(value, Rounding::Down),
        Unary::Fup => return whole(value, Rounding::Up),
        Unary::Round => return round(value),
        Unary::Acos => libm::acos(double) * DEGREES,
        Unary::Asin => libm::asin(double) * DEGREES,
        Unary::Cos => libm::cos(in_turn(value)?),
        Unary::Sin => libm::sin(in_turn(value)?),
        Unary::Tan => {
            // Where it is infinite the double is only large.
            let above = value.plus(Length::integer(90)).map_err(|_| Unresolved::Overflow)?;
            if above.down_to_multiple(Length::integer(180)) == Ok(above) {
                return Err(Unresolved::Undefined);
            }
            libm::tan(in_turn(value)?)
        }
        Unary::Exp => libm::exp(double),
        Unary::Ln if !value.is_positive() => return Err(Unresolved::Undefined),
        Unary::Ln => libm::log(double),
        Unary::Sqrt => libm::sqrt(double),
    };
    from_double(result)
}

/// Degrees of a radian.
const DEGREES: f64 = 180.0 / core::f64::consts::PI;

/// The angle within one turn, exact as long as it is in degrees, then in radians.
fn in_turn(degrees: Length) -> Result<f64, Unresolved> {
    let turns = degrees.down_to_multiple(Length::integer(360)).and_then(|turns| degrees.minus(turns));
    turns.map(|degrees| degrees.to_f64() / DEGREES).map_err(|_| Unresolved::Overflow)
}

fn whole(value: Length, rounding: Rounding) -> Result<Length, Unresolved> {
    value.round_to(0, rounding).and_then(crate::length::Decimal::to_length).map_err(|_| Unresolved::Overflow)
}

/// To the nearest whole number, a half away from 0.
fn round(value: Length) -> Result<Length, Unresolved> {
    let raised = value.magnitude().plus(const { Length::parts(1, 2) }).map_err(|_| Unresolved::Overflow)?;
    let magnitude = whole(raised, Rounding::Down)?;
    Ok(if value.is_negative() { magnitude.negative() } else { magnitude })
}

fn power(base: Length, exponent: Length) -> Result<Length, Unresolved> {
    if let Some(whole) = exponent.whole().filter(|whole| whole.unsigned_abs() <= MOST_FACTORS) {
        let mut product = Length::ONE;
        for _ in 0..whole.unsigned_abs() {
            product = product.times(base).map_err(|_| Unresolved::Overflow)?;
        }
        return match whole {
            ..0 if base == Length::ZERO => Err(Unresolved::DivisionByZero),
            ..0 => Length::ONE.over(product).map_err(|_| Unresolved::Overflow),
            _ => Ok(product),
        };
    }
    if base == Length::ZERO && exponent.is_negative() {
        return Err(Unresolved::DivisionByZero);
    }
    from_double(libm::pow(base.to_f64(), exponent.to_f64()))
}

/// The nearest number of 9 decimals, by the shortest text of the double where that has no more.
fn from_double(value: f64) -> Result<Length, Unresolved> {
    if value.is_nan() {
        return Err(Unresolved::Undefined);
    }
    if let Ok(exact) = Length::from_f64(value) {
        return Ok(exact);
    }
    // A double of more than 9 decimals is below 2^53 / 10^9: its billionths are a whole number of 64 bits.
    let billionths = libm::rint(value * 1e9);
    if libm::fabs(billionths) < 9e18 {
        return Ok(Length::decimal_parts(billionths as i64, 9, 9));
    }
    Err(Unresolved::Overflow)
}
