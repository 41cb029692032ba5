//! Formulas: the order of their operations, and their values.

use threadcalc_core::Length;
use threadcalc_core::nc::{Blocks, ReaderSettings, Unresolved, Variable, Variables, evaluate};

use crate::show::line;

/// The value of a word with #1 = 1.5, #2 = -4, #3 = 2 and #4 not known.
fn value(text: &str) -> Result<String, Unresolved> {
    let mut variables = Variables::new();
    variables.set(1, Some(Length::new(3, 2).unwrap()));
    variables.set(2, Some(Length::integer(-4)));
    variables.set(3, Some(Length::integer(2)));
    variables.set(4, None);
    let program = format!("X{text}");
    let mut blocks = Blocks::new(program.as_bytes(), ReaderSettings::default());
    let block = blocks.next().unwrap();
    assert!(block.faults().is_empty() && block.words().len() == 1, "{text}: {block:?}");
    evaluate(block, block.words()[0].value(), &variables).map(|value| value.to_string())
}

#[test]
fn operations_are_kept_in_the_order_in_which_they_are_done() {
    let rows = [
        // RS274/NGC 3.3.2.2 to 3.3.2.4: values of words.
        ("F#1", "F{1 #}"),
        ("F##1", "F{1 # #}"),
        ("F#[1+2]", "F{1 2 + #}"),
        ("F-#1", "F{1 # neg}"),
        ("F+#1", "F{1 #}"),
        ("F-[1]", "F{1 neg}"),
        ("F-#-1", "F{-1 # neg}"),
        ("FSIN[30]", "F{30 SIN}"),
        ("f s i n [30]", "F{30 SIN}"),
        ("F-ABS[-3]", "F{-3 ABS neg}"),
        ("FATAN[1]/[2]", "F{1 2 ATAN}"),
        ("F[ATAN[1]/[2]+3]", "F{1 2 ATAN 3 +}"),
        ("F#SQRT[4]", "F{4 SQRT #}"),
        // RS274/NGC 3.3.2.3: power first, then products, then sums, from left to right.
        ("F[1+2*3**4]", "F{1 2 3 4 ** * +}"),
        ("F[1-2-3]", "F{1 2 - 3 -}"),
        ("F[2**3**2]", "F{2 3 ** 2 **}"),
        ("F[6/2*3]", "F{6 2 / 3 *}"),
        ("F[[1+2]*3]", "F{1 2 + 3 *}"),
        ("F[1+-2]", "F{1 -2 +}"),
        ("F[-2**2]", "F{-2 2 **}"),
        ("F[7 MOD 4 + 1]", "F{7 4 MOD 1 +}"),
        ("F[1 EQ 1 AND 2 LT 3]", "F{1 1 EQ 2 3 LT AND}"),
        ("F[1 OR 0 + 1]", "F{1 0 doubt 1 + OR}"),
        ("F[1 + 0 OR 1]", "F{1 0 + 1 OR}"),
        ("F[1 (ONE) + 2]", "F{1 2 +} (ONE)@5-10"),
        ("F[1]X2", "F{1} X2"),
        ("F[#1*#2]X50", "F{1 # 2 # *} X50"),
    ];
    for (written, read) in rows {
        assert_eq!(line(written), read, "{written}");
    }
}

#[test]
fn what_is_no_formula_is_told() {
    let rows = [
        ("F[1", "F? !unclosed-bracket@1-4 *"),
        ("F[1+2 X3 Y4", "F? !letters@1-12 !unclosed-bracket@1-12 *"),
        ("F[] X1", "F? X1 !bad-number@1-4"),
        ("F[1+] X1", "F? X1 !bad-number@1-6"),
        ("F[1 2,3] X1", "F? X1 !bad-number@1-9"),
        ("F[1+*2] X1", "F? X1 !bad-number@1-8"),
        ("F[1 FOO 2] X1", "F? X1 !letters@1-11 *"),
        ("F[FOO[2]] X1", "F? X1 !letters@1-10 *"),
        ("F[1]] X1", "F{1} X1 !stray-character@5-6 *"),
        ("FATAN[1] X1", "F? X1 !bad-number@1-9"),
        ("FATAN[1]*[2] X1", "F? X1 !bad-number@1-13"),
        ("F# X1", "F? !letters@1-6 *"),
        ("F[1#2] X1", "F? X1 !bad-number@1-7"),
        ("F[1 (A)2] X1", "F? X1 (A)@5-8 !bad-number@1-10"),
    ];
    for (written, read) in rows {
        assert_eq!(line(written), read, "{written}");
    }
}

#[test]
fn values_are_exact_or_to_nine_decimals() {
    let rows = [
        ("5", "5"),
        ("#1", "1.5"),
        ("-#2", "4"),
        ("##3", "-4"),
        ("#[1+2]", "2"),
        ("[1/3]", "1/3"),
        ("[1/3*3]", "1"),
        ("[#1*400]", "600"),
        ("[0.1+0.2]", "0.3"),
        ("[2**10]", "1024"),
        ("[2**-2]", "0.25"),
        ("[0**0]", "1"),
        ("[2**3**2]", "64"),
        ("[-2**2]", "4"),
        ("[-7 MOD 4]", "1"),
        ("[7 MOD -4]", "3"),
        ("[7.5 MOD 2]", "1.5"),
        ("[1 EQ 1]", "1"),
        ("[1 NE 1]", "0"),
        ("[2 GT 1]", "1"),
        ("[2 GE 2]", "1"),
        ("[2 LT 1]", "0"),
        ("[2 LE 2]", "1"),
        ("[2 AND 3]", "1"),
        ("[2 AND 0]", "0"),
        ("[0 OR 3]", "1"),
        ("[2 XOR 3]", "0"),
        // RS274/NGC 3.3.2.4: FIX and FUP by its own examples.
        ("FIX[2.8]", "2"),
        ("FIX[-2.8]", "-3"),
        ("FUP[2.8]", "3"),
        ("FUP[-2.8]", "-2"),
        ("ROUND[2.5]", "3"),
        ("ROUND[-2.5]", "-3"),
        ("ROUND[2.4]", "2"),
        ("ABS[-1.5]", "1.5"),
        ("SIN[30]", "0.5"),
        ("SIN[360000000030]", "0.5"),
        ("SIN[-30]", "-0.5"),
        ("COS[60]", "0.5"),
        ("COS[90]", "0"),
        ("TAN[45]", "1"),
        ("TAN[135]", "-1"),
        ("ASIN[0.5]", "30"),
        ("ACOS[0.5]", "60"),
        ("ACOS[-1]", "180"),
        ("ATAN[1]/[1]", "45"),
        ("ATAN[1]/[-1]", "135"),
        ("ATAN[-1]/[-1]", "-135"),
        ("SQRT[2.25]", "1.5"),
        // By mpmath to 20 digits, rounded: 1.41421356237309504880, 2.71828182845904523536, 0.69314718055994530942.
        ("SQRT[2]", "1.414213562"),
        ("EXP[1]", "2.718281828"),
        ("LN[2]", "0.693147181"),
        ("[2**0.5]", "1.414213562"),
    ];
    for (text, expected) in rows {
        assert_eq!(value(text), Ok(expected.to_string()), "{text}");
    }
}

#[test]
fn what_has_no_value_says_why() {
    let rows = [
        ("#110", Unresolved::Unset(110)),
        ("[1+#110*2]", Unresolved::Unset(110)),
        ("#4", Unresolved::Unknown(4)),
        ("#1", Unresolved::VariableNumber),
        ("#-1", Unresolved::VariableNumber),
        ("[1/0]", Unresolved::DivisionByZero),
        ("[1 MOD 0]", Unresolved::DivisionByZero),
        ("[0**-1]", Unresolved::DivisionByZero),
        ("[0**-0.5]", Unresolved::DivisionByZero),
        ("SQRT[-1]", Unresolved::Undefined),
        ("LN[0]", Unresolved::Undefined),
        ("ASIN[2]", Unresolved::Undefined),
        ("ATAN[0]/[0]", Unresolved::Undefined),
        ("TAN[90]", Unresolved::Undefined),
        ("TAN[-450]", Unresolved::Undefined),
        ("[-2**0.5]", Unresolved::Undefined),
        ("EXP[1000]", Unresolved::Overflow),
        ("[10**19]", Unresolved::Overflow),
        ("[999999999999999999*100]", Unresolved::Overflow),
        ("[1 OR 0 + 1]", Unresolved::Order),
    ];
    for (text, expected) in rows {
        let text = if expected == Unresolved::VariableNumber {
            format!("#[{text}*1]").replace("[#1*1]", "[1.5]")
        } else {
            text.into()
        };
        assert_eq!(
            value(&text).map_err(|error| (error, error.to_string().is_empty())),
            Err((expected, false)),
            "{text}"
        );
    }
}

#[test]
fn assignments_take_effect_behind_the_block() {
    let mut variables = Variables::new();
    let mut program = Blocks::new(b"#1=2 #2=3\n#1=#2 #2=#1 X#1\n#3=#9\n##3=1", ReaderSettings::default());
    variables.assign(program.next().unwrap());
    let block = program.next().unwrap();
    assert_eq!(evaluate(block, block.words()[0].value(), &variables), Ok(Length::integer(2)), "the value from before");
    variables.assign(block);
    let known = |number: i64| Variable::Known(Length::integer(number));
    assert_eq!((variables.get(1), variables.get(2)), (known(3), known(2)));
    variables.assign(program.next().unwrap());
    assert_eq!((variables.get(3), variables.get(9), variables.get(1)), (Variable::Unknown, Variable::Unset, known(3)));
    variables.assign(program.next().unwrap());
    assert_eq!((variables.get(1), variables.get(9)), (Variable::Unknown, Variable::Unknown), "any may have been set");
}

#[test]
fn a_block_that_is_not_readable_may_set_anything() {
    let mut variables = Variables::new();
    variables.set(1, Some(Length::ONE));
    let mut program = Blocks::new(b"#2=1 GOTO 5", ReaderSettings::default());
    variables.assign(program.next().unwrap());
    assert_eq!((variables.get(1), variables.get(2)), (Variable::Unknown, Variable::Unknown));
}

#[test]
fn variables_without_room_are_unknown() {
    let mut variables = Variables::new();
    for number in 0..128 {
        variables.set(number, Some(Length::integer(i64::from(number))));
    }
    assert_eq!(variables.get(500), Variable::Unset);
    variables.set(500, Some(Length::ONE));
    assert_eq!((variables.get(500), variables.get(501)), (Variable::Unknown, Variable::Unknown));
    variables.set(7, Some(Length::ONE));
    assert_eq!(
        (variables.get(7), variables.get(127)),
        (Variable::Known(Length::ONE), Variable::Known(Length::integer(127)))
    );
}
