//! Exact formulas against an independent arithmetic: random ones, with no more brackets than they need.

use num_bigint::BigInt;
use num_rational::BigRational;
use num_traits::{Signed, ToPrimitive, Zero};
use proptest::prelude::*;
use threadcalc_core::nc::{Blocks, ReaderSettings, Unresolved, Variables, evaluate};

#[derive(Clone, Debug)]
enum Tree {
    Hundredths(i64),
    Binary(Box<Tree>, &'static str, Box<Tree>),
    Unary(&'static str, Box<Tree>),
}

use Tree::{Binary, Hundredths, Unary};

/// How tight an operator binds, by RS274/NGC, NISTIR 6556, 3.3.2.3: products before sums.
fn binds(tree: &Tree) -> u8 {
    match tree {
        Binary(_, "+" | "-", _) => 1,
        Binary(..) => 2,
        _ => 3,
    }
}

fn text(tree: &Tree) -> String {
    let in_brackets = |tree: &Tree, is_loose: bool| if is_loose { format!("[{}]", text(tree)) } else { text(tree) };
    match tree {
        Hundredths(number) => {
            format!("{}{}.{:02}", if *number < 0 { "-" } else { "" }, number.abs() / 100, number.abs() % 100)
        }
        Binary(left, operator, right) => {
            let own = binds(tree);
            // What binds alike goes from left to right: the right one needs brackets.
            format!("{} {operator} {}", in_brackets(left, binds(left) < own), in_brackets(right, binds(right) <= own))
        }
        Unary(function, value) => format!("{function}[{}]", text(value)),
    }
}

fn value(tree: &Tree) -> Option<BigRational> {
    Some(match tree {
        Hundredths(number) => BigRational::new((*number).into(), 100.into()),
        Unary("ABS", one) => value(one)?.abs(),
        Unary("FIX", one) => value(one)?.floor(),
        Unary("FUP", one) => value(one)?.ceil(),
        Unary("ROUND", one) => value(one)?.round(),
        Unary("-", one) => -value(one)?,
        Unary(..) => unreachable!(),
        Binary(left, operator, right) => {
            let (left, right) = (value(left)?, value(right)?);
            match *operator {
                "+" => left + right,
                "-" => left - right,
                "*" => left * right,
                _ if right.is_zero() => return None,
                "/" => left / right,
                "MOD" => {
                    let size = right.abs();
                    &left - (&left / &size).floor() * &size
                }
                _ => unreachable!(),
            }
        }
    })
}

fn any_tree() -> impl Strategy<Value = Tree> {
    let leaf = (-2000_i64..2000).prop_map(Hundredths);
    leaf.prop_recursive(4, 24, 2, |inner| {
        let operator = prop::sample::select(vec!["+", "-", "*", "/", "MOD"]);
        let function = prop::sample::select(vec!["ABS", "FIX", "FUP", "ROUND", "-"]);
        prop_oneof![
            4 => (inner.clone(), operator, inner.clone()).prop_map(|(a, by, b)| Binary(a.into(), by, b.into())),
            1 => (function, inner).prop_map(|(by, one)| Unary(by, one.into())),
        ]
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn formulas_are_exact(tree in any_tree()) {
        let program = format!("X[{}]", text(&tree));
        let mut blocks = Blocks::new(program.as_bytes(), ReaderSettings::default());
        let block = blocks.next().unwrap();
        let result = evaluate(block, block.words()[0].value(), &Variables::new());
        match (result, value(&tree)) {
            (Ok(result), Some(expected)) => {
                prop_assert_eq!(BigInt::from(result.numerator()), expected.numer().clone(), "{}", program);
                prop_assert_eq!(BigInt::from(result.denominator()), expected.denom().clone(), "{}", program);
            }
            (Err(Unresolved::DivisionByZero), None) => {}
            // Somewhere on the way 64 bits did not do; small formulas never come near.
            (Err(Unresolved::Overflow), _) => prop_assert!(program.len() > 60, "{}", program),
            (Err(Unresolved::Unreadable), _) => prop_assert!(!block.faults().is_empty() && program.len() > 80, "{}", program),
            (result, expected) => {
                let expected = expected.and_then(|expected| expected.to_f64());
                prop_assert!(false, "{program}: {result:?}, {expected:?}");
            }
        }
    }
}
