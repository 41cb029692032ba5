//! Exact arithmetic and feeds against num-rational, which shares no line with the core.

#[path = "support/random.rs"]
mod random;

use num_bigint::{BigInt, BigUint};
use num_rational::BigRational;
use num_traits::{One, Signed, ToPrimitive, Zero};
use random::Random;
use threadcalc_core::{Code, Error, FeedMode, Length, Rounding, Unit, feed};

const SEED: u64 = 20_261_125;
const CASES: usize = 20_000;

fn big(value: Length) -> BigRational {
    BigRational::new(value.numerator().into(), value.denominator().into())
}

/// What the core has to answer: the value if its lowest terms fit, else overflow.
fn expected(value: &BigRational) -> Option<(i64, i64)> {
    let (top, bottom) = (value.numer().to_i64()?, value.denom().to_i64()?);
    // i64::MIN has no negative, so the core does not hold it.
    (top != i64::MIN).then_some((top, bottom))
}

/// Lengths of every size: small, of the shop, and near the ends of 64 bits.
fn length(random: &mut Random) -> Length {
    let part = |random: &mut Random| match random.pick(6) {
        0 => random.pick(10) as i64 + 1,
        1 => random.pick(1_000_000) as i64 + 1,
        2 => i64::MAX - random.pick(5) as i64,
        3 => 1 << random.pick(63),
        4 => 10_i64.pow(random.pick(19) as u32),
        _ => (random.next() >> (1 + random.pick(40))) as i64 | 1,
    };
    let (top, bottom) = (part(random), part(random));
    let top = match random.pick(12) {
        0 => 0,
        1..=5 => -top,
        _ => top,
    };
    Length::new(top, bottom).unwrap()
}

fn assert_same(got: Result<Length, Error>, want: &BigRational, what: &dyn Fn() -> String) -> bool {
    match (got, expected(want)) {
        (Ok(got), Some(want)) => assert_eq!((got.numerator(), got.denominator()), want, "{}", what()),
        (Err(error), None) => assert_eq!(error.code(), Code::Overflow, "{}", what()),
        (got, want) => panic!("{}: got {got:?}, want {want:?}", what()),
    }
    got.is_ok()
}

#[test]
fn arithmetic_is_exact_or_overflow() {
    let mut random = Random(SEED);
    let (mut fits, mut overflows) = (0, 0);
    for _ in 0..CASES {
        let (a, b) = (length(&mut random), length(&mut random));
        let (left, right) = (big(a), big(b));
        let mut check = |sign: &str, got, want: BigRational| {
            let fit = assert_same(got, &want, &|| format!("{a:?} {sign} {b:?}"));
            *(if fit { &mut fits } else { &mut overflows }) += 1;
        };
        check("+", a.plus(b), &left + &right);
        check("-", a.minus(b), &left - &right);
        check("*", a.times(b), &left * &right);
        if b == Length::ZERO {
            assert_eq!(a.over(b).map_err(|error| error.code()), Err(Code::OutOfRange));
        } else {
            check("/", a.over(b), &left / &right);
        }
        assert_eq!(a.cmp(&b), left.cmp(&right), "{a:?} against {b:?}");
        assert_eq!(a.negative(), Length::new(-a.numerator(), a.denominator()).unwrap());
        assert_eq!(big(a.magnitude()), left.abs());
    }
    // Both answers have to be met often, else this test says nothing about one of them.
    assert!(fits > CASES && overflows > CASES / 2, "{fits} fit, {overflows} overflow");
}

/// The whole number beside `value` on the side that the mode asks for.
fn rounded(value: &BigRational, rounding: Rounding) -> BigInt {
    let half = BigRational::new(BigInt::one(), 2.into());
    match rounding {
        Rounding::Down => value.floor().to_integer(),
        Rounding::Up => value.ceil().to_integer(),
        Rounding::HalfEven => {
            let below = value.floor().to_integer();
            let rest = value - BigRational::from(below.clone());
            let odd = (&below % BigInt::from(2)) != BigInt::zero();
            if rest > half || (rest == half && odd) { below + 1 } else { below }
        }
    }
}

#[test]
fn rounding_is_right_or_overflow() {
    let mut random = Random(SEED + 1);
    for case in 0..CASES {
        let mut value = length(&mut random);
        let decimals = random.pick(10) as u8;
        let power = BigRational::from(BigInt::from(10).pow(u32::from(decimals)));
        if case % 4 == 0 {
            // Ties are rare by chance: make one.
            let odd = (random.pick(2_000_001) as i64 - 1_000_000) * 2 + 1;
            value = Length::new(odd, 2).unwrap().over(Length::integer(10_i64.pow(u32::from(decimals)))).unwrap();
        }
        for rounding in [Rounding::HalfEven, Rounding::Down, Rounding::Up] {
            let want = rounded(&(big(value) * &power), rounding).to_i64();
            let got = value.round_to(decimals, rounding);
            match (got, want) {
                (Ok(got), Some(want)) => {
                    assert_eq!((got.units(), got.decimals()), (want, decimals), "{value:?} {rounding:?}")
                }
                (Err(error), None) => assert_eq!(error.code(), Code::Overflow, "{value:?} {decimals}"),
                (got, want) => panic!("{value:?} to {decimals} {rounding:?}: got {got:?}, want {want:?}"),
            }
        }
    }
}

/// The nearest double by its definition: no other double is nearer, and a tie has an even last bit.
fn assert_nearest(value: Length) {
    let exact = |double: f64| BigRational::from_float(double).unwrap();
    let away = |double: f64| (exact(double) - big(value)).abs();
    let got = value.to_f64();
    for beside in [f64::from_bits(got.to_bits() + 1), f64::from_bits(got.to_bits().wrapping_sub(1))] {
        if !beside.is_finite() || got == 0.0 {
            continue;
        }
        let (here, there) = (away(got), away(beside));
        assert!(here < there || (here == there && got.to_bits() & 1 == 0), "{value:?} gives {got:e}, not {beside:e}");
    }
    assert!((got == 0.0) == (value == Length::ZERO) && (got < 0.0) == value.is_negative(), "{value:?} gives {got}");
}

#[test]
fn doubles_are_correctly_rounded() {
    let mut random = Random(SEED + 2);
    for _ in 0..CASES / 8 {
        assert_nearest(length(&mut random));
        // Halfway between two doubles, exactly and by the least above and below.
        let halfway = ((1_i64 << 53) | random.pick(1 << 53) as i64) * 2 + 1;
        for near in [-1, 0, 1] {
            assert_nearest(Length::new(halfway * 4 + near, 1 << random.pick(20)).unwrap());
        }
    }
}

/// Quotients so near to the middle of two doubles that only the rest of the division tells the side.
#[test]
fn doubles_are_correctly_rounded_beside_a_tie() {
    const PARTS: u64 = (1 << 62) - 1;
    let mut random = Random(SEED + 4);
    let mut met = 0;
    for _ in 0..CASES / 20 {
        // 54 bits, the last one set: middle / 2^62 is a tie. Its inverse modulo 2^62 by Newton's rule.
        let middle = (1 << 53) | (random.pick(1 << 52) * 2 + 1);
        let inverse = (0..6).fold(middle, |root, _| root.wrapping_mul(2_u64.wrapping_sub(middle.wrapping_mul(root))));
        for off in [1_i128, -1, 3, -3] {
            // top × 2^62 = middle × bottom + off
            let bottom = (inverse as i128 * -off).rem_euclid(1 << 62) as u64 & PARTS;
            let top = (i128::from(middle) * i128::from(bottom) + off) >> 62;
            if let Ok(value) = Length::new(top as i64, bottom as i64) {
                assert_nearest(value);
                met += i32::from(value.denominator() > 1 << 60);
            }
        }
    }
    assert!(met > 1_000, "{met} quotients with a long denominator");
}

/// A feed word's number by long division in big whole numbers, with no shared step.
fn feed_text(exact: &BigRational, decimals: u32) -> Option<(String, BigInt)> {
    let units = rounded(&(exact * BigRational::from(BigInt::from(10).pow(decimals))), Rounding::HalfEven);
    if units.is_zero() {
        return None;
    }
    let digits: BigUint = units.magnitude().clone();
    let padded = format!("{:0>width$}", digits.to_string(), width = decimals as usize + 1);
    let (whole, behind) = padded.split_at(padded.len() - decimals as usize);
    Some((format!("{whole}.{}", behind.trim_end_matches('0')), units))
}

#[test]
fn feeds_are_the_rounded_product() {
    let mut random = Random(SEED + 3);
    let (mut words, mut zeros) = (0, 0);
    for case in 0..CASES {
        let lead = match random.pick(3) {
            0 => Length::new(random.pick(8_000) as i64 + 1, 1_000),
            1 => Length::new(254, random.pick(800) as i64 + 5),
            _ => Length::new(random.pick(1_000_000_000) as i64 + 1, 999_999_937),
        };
        let lead = lead.unwrap();
        let rpm = (case % 3 > 0).then(|| Length::new(random.pick(600_000) as i64 + 1, 10).unwrap());
        let mode = if rpm.is_some() { FeedMode::PerMinute } else { FeedMode::PerRevolution };
        let (unit, inch) = [(Unit::Mm, (1, 1)), (Unit::Inch, (127, 5))][random.pick(2) as usize];
        let decimals = random.pick(10) as u8;

        let mm = big(lead) * rpm.map_or(BigRational::one(), big);
        let exact = mm / BigRational::new(BigInt::from(inch.0), BigInt::from(inch.1));
        let got = feed(lead, rpm, unit, mode, decimals);
        let Some((text, units)) = feed_text(&exact, u32::from(decimals)) else {
            assert_eq!(got.map_err(|error| error.code()), Err(Code::FeedRoundsToZero));
            zeros += 1;
            continue;
        };
        let got = got.unwrap_or_else(|error| panic!("{lead} {rpm:?} {unit} {decimals}: {error}"));
        assert_eq!(got.text(), text, "{lead} x {rpm:?} {unit} {decimals}");
        assert_eq!(got.word(), format!("F{text}"));
        let value = BigRational::new(units, BigInt::from(10).pow(u32::from(decimals)));
        assert_eq!(big(got.value().unwrap()), value);
        assert_same(got.exact(), &exact, &|| format!("exact {lead} {rpm:?}"));
        let lead_error = value / exact - BigRational::one();
        // The quotient stands between value and error: only where that fits can the error be given.
        match got.lead_error() {
            Ok(error) => assert_eq!(big(error), lead_error, "{lead} {rpm:?} {unit} {decimals}"),
            Err(error) => {
                assert_eq!(error.code(), Code::Overflow);
                assert!(expected(&lead_error).is_none(), "{lead} {rpm:?} {unit} {decimals}: {lead_error}");
            }
        }
        words += 1;
    }
    assert!(words > CASES / 2 && zeros > 50, "{words} words, {zeros} round to zero");
}
