//! The greatest common divisor.

/// One division first where the numbers are this many bits apart: it takes the place of as many steps.
const FAR_APART: u32 = 8;

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
