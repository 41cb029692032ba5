//! The greatest common divisor, and divisions that are cheap.

use core::cmp::Ordering;

use super::Rounding;

/// One division first where the numbers are this many bits apart: it takes the place of as many steps.
const FAR_APART: u32 = 8;

/// The greatest common divisor: once in the program, so that a number in the source is better a constant.
#[inline(never)]
pub(super) const fn gcd64(mut a: u64, mut b: u64) -> u64 {
    if a == 0 || b == 0 {
        return a | b;
    }
    let shift = (a | b).trailing_zeros();
    a >>= a.trailing_zeros();
    b >>= b.trailing_zeros();
    let (smaller, larger) = if a < b { (a, b) } else { (b, a) };
    if smaller == 1 {
        return 1 << shift;
    }
    if larger >> FAR_APART > smaller {
        match larger.checked_rem(smaller) {
            None | Some(0) => return smaller << shift,
            Some(rest) => (a, b) = (smaller, rest >> rest.trailing_zeros()),
        }
    }
    // Without a branch on which is the larger: nothing could foretell it.
    loop {
        let difference = a.wrapping_sub(b);
        if difference == 0 {
            return a << shift;
        }
        let smaller = if a < b { a } else { b };
        b = a.abs_diff(b) >> difference.trailing_zeros();
        a = smaller;
    }
}

pub(super) fn gcd128(mut a: u128, mut b: u128) -> u128 {
    while b != 0 {
        if let (Ok(a), Ok(b)) = (u64::try_from(a), u64::try_from(b)) {
            return u128::from(gcd64(a, b));
        }
        (a, b) = (b, a.checked_rem(b).unwrap_or(0));
    }
    a
}

/// An odd number that is to be divided out of others, by its inverse modulo 2^64: a product in place of a division.
pub(super) struct Factor {
    inverse: i64,
    /// The quotients of all its multiples.
    quotients: (i64, i64),
}

impl Factor {
    pub(super) const fn of(odd: i64) -> Self {
        // Newton's step doubles the right bits; an odd number is its own inverse in the last three.
        let mut inverse = odd;
        let mut bits = 3_u32;
        while bits < i64::BITS {
            inverse = inverse.wrapping_mul(2_i64.wrapping_sub(odd.wrapping_mul(inverse)));
            bits = bits.wrapping_mul(2);
        }
        match (i64::MIN.checked_div(odd), i64::MAX.checked_div(odd)) {
            (Some(least), Some(most)) => Self { inverse, quotients: (least, most) },
            _ => Self { inverse, quotients: (0, 0) },
        }
    }

    /// The quotient, if nothing is left over.
    pub(super) const fn out_of(&self, value: i64) -> Option<i64> {
        // Multiples, and only they, come into the range of their quotients.
        let quotient = value.wrapping_mul(self.inverse);
        if self.quotients.0 <= quotient && quotient <= self.quotients.1 { Some(quotient) } else { None }
    }
}

/// The quotient of two whole numbers of one type, rounded; `None` if the divisor is 0.
macro_rules! rounded_quotient {
    ($top:expr, $bottom:expr, $rounding:expr) => {{
        let (top, bottom) = ($top, $bottom);
        match (top.checked_div(bottom), top.checked_rem(bottom)) {
            (Some(quotient), Some(rest)) => {
                // Down, so that the rest is 0 or more. The library's own way of it can panic where it is inlined.
                let (quotient, rest) = match (rest < 0, bottom > 0) {
                    (false, _) => (quotient, rest),
                    (true, true) => (quotient.wrapping_sub(1), rest.wrapping_add(bottom)),
                    (true, false) => (quotient.wrapping_add(1), rest.wrapping_sub(bottom)),
                };
                let up = match $rounding {
                    Rounding::Down => false,
                    Rounding::Up => rest != 0,
                    Rounding::HalfEven => match rest.cmp(&bottom.wrapping_sub(rest)) {
                        Ordering::Less => false,
                        Ordering::Greater => true,
                        Ordering::Equal => quotient & 1 == 1,
                    },
                };
                quotient.checked_add(up.into())
            }
            _ => None,
        }
    }};
}
/// `top / bottom` for whole numbers, `bottom` positive, rounded; `None` if `bottom` is 0.
#[inline]
pub(crate) fn divide(top: i128, bottom: i128, rounding: Rounding) -> Option<i128> {
    // Nearly every quotient fits 64 bits, where a division costs a fraction.
    match (i64::try_from(top), i64::try_from(bottom)) {
        (Ok(top), Ok(bottom)) => rounded_quotient!(top, bottom, rounding).map(i128::from),
        _ => divide_wide(top, bottom, rounding),
    }
}

#[inline(never)]
fn divide_wide(top: i128, bottom: i128, rounding: Rounding) -> Option<i128> {
    rounded_quotient!(top, bottom, rounding)
}
