//! What is written, and what is read of it. Sources: RS274/NGC is NISTIR 6556 (17 August 2000) by section, read
//! in excerpts; ISO 6983-1 and `common practice` from memory.

use threadcalc_core::Severity;
use threadcalc_core::nc::{Blocks, FaultKind, LineEnd, Reader, ReaderSettings};

use crate::show::{blocks, line, line_by};

fn settings(change: impl FnOnce(&mut ReaderSettings)) -> ReaderSettings {
    let mut settings = ReaderSettings::default();
    change(&mut settings);
    settings
}

fn check(rows: &[(&str, &str)]) {
    for (written, read) in rows {
        assert_eq!(line(written), *read, "{written}");
        // Line ends and neighbours change nothing.
        for end in ["\n", "\r\n", "\r"] {
            let program = format!("G0 X123.5 Y2.5{end}{written}{end}G0 X1.{end}");
            let read = format!("2: {read}");
            assert_eq!(blocks(program.as_bytes(), ReaderSettings::default())[1].trim_end(), read, "{written} {end:?}");
        }
    }
}

#[test]
fn words_are_letters_with_numbers() {
    check(&[
        // RS274/NGC 3.3.2: words.
        ("G1 X10 Y-2.5 F300", "G1 X10 Y-2.5 F300"),
        ("G1X10Y-2.5F300", "G1 X10 Y-2.5 F300"),
        // RS274/NGC 3.3: spaces anywhere, also inside numbers; its own example.
        ("g0x +0. 12 34y 7", "G0 X+0.1234 Y7"),
        ("\tG 1\tX 1 0", "G1 X10"),
        // RS274/NGC 3.3: case does not matter.
        ("m3 s600", "M3 S600"),
        // RS274/NGC 3.3.2.1: digits, one point, a sign; leading and trailing zeros.
        ("X.5 Y5. Z-.25 I+007 J-0.0 K00.500", "X.5 Y5. Z-.25 I+007 J-0.0 K00.500"),
        ("X123456.789 Y1234567.1234567 Z12345678.12345678", "X123456.789 Y1234567.1234567 Z12345678.12345678"),
        // No exponent: E is a letter (common practice).
        ("X1E5", "X1 E5"),
        ("X1.5E-3", "X1.5 E-3"),
        // 18 digits are exact; leading zeros are none.
        ("X0000000000000000000012", "X0000000000000000000012"),
        ("X123456789.123456789", "X123456789.123456789"),
        ("X999999999999999999", "X999999999999999999"),
    ]);
}

#[test]
fn what_is_no_number_is_told() {
    check(&[
        ("F1,25 S500", "F? S500 !bad-number@1-6"),
        ("F,5", "F? !bad-number@1-4"),
        ("X1.2.3 Y4", "X? Y4 !bad-number@1-7"),
        ("X Y10", "X? Y10 !bad-number@1-2"),
        ("X10 Y", "X10 Y? !bad-number@5-6"),
        ("X- Z1", "X? !letters@1-6 *"),
        ("X-", "X? !bad-number@1-3"),
        ("X. Y1", "X? Y1 !bad-number@1-3"),
        ("X--1", "X? !bad-number@1-5"),
        ("X+-1", "X? !bad-number@1-5"),
        ("X1-2", "X? !bad-number@1-5"),
        ("X1+2 Y3", "X? Y3 !bad-number@1-5"),
        ("X=5", "X? !bad-number@1-4"),
        ("X1234567890123456789", "X? !too-many-digits@1-21"),
        ("X0.0000000000000000001", "X? !too-many-digits@1-23"),
        ("X(NOTHING)Y2", "X? Y2 (NOTHING)@2-11 !bad-number@1-2"),
        // RS274/NGC 3.3.2: letters side by side are none of its words; controls have such words.
        ("IF [#1 EQ 2] GOTO 10", "!letters@1-3 *"),
        ("GOTO10 (AWAY)", "(AWAY)@8-14 !letters@1-5 *"),
        ("G1 XY10", "G1 !letters@4-6 *"),
        ("X Y Z1", "!letters@1-6 *"),
        ("END1", "!letters@1-4 *"),
    ]);
}

#[test]
fn blanks_in_numbers_may_be_forbidden() {
    let strict = settings(|settings| settings.spaces_are_errors = true);
    let rows = [
        ("X 10 Y -5.", "X10 Y-5."),
        ("X1 0 Y5", "X? Y5 !blank-in-number@1-5"),
        ("X- 1", "X? !blank-in-number@1-5"),
        ("X1 .5", "X? !blank-in-number@1-6"),
        ("X1. 5", "X? !blank-in-number@1-6"),
        ("X[1 + 2]", "X{1 2 +}"),
        ("X[1 0 + 2] Y1", "X? Y1 !blank-in-number@1-11"),
    ];
    for (written, read) in rows {
        assert_eq!(line_by(written.as_bytes(), strict), read, "{written}");
    }
}

#[test]
fn line_and_program_numbers_are_no_words() {
    check(&[
        // RS274/NGC 3.3: an optional slash, an optional number, then the rest.
        ("N10 G1 X5", "N10 G1 X5"),
        ("n0010G1", "N10 G1"),
        ("/N20 G1", "/0 N20 G1"),
        ("/3 N20 G1", "/3 N20 G1"),
        ("/9", "/9"),
        ("/ 2 G1", "/2 G1"),
        ("/0 G1", "/0 G1 !stray-character@2-3 *"),
        ("(FIRST) N10 G1", "N10 G1 (FIRST)@1-8"),
        ("G1 N10", "N10 G1 !line-number-inside@4-7"),
        ("N10 N20 G1", "N10 G1 !duplicate-word@5-8"),
        ("N-5 G1", "G1 !bad-number@1-4"),
        ("N1.5 G1", "G1 !bad-number@1-5"),
        ("N[1] G1", "G1 !bad-number@1-5"),
        ("N G1", "G1 !bad-number@1-2"),
        // Common practice: O and a number begin a program.
        ("O1001 (BRACKET)", "O1001 (BRACKET)@7-16"),
        ("N1 O1001", "N1 O1001"),
        ("O0012 G1", "O12 G1"),
        ("O<name> CALL [1]", "!program-name@1-8 *"),
        ("O \"name\" (WHAT)", "(WHAT)@10-16 !program-name@1-9 *"),
        ("O<na", "!program-name@1-5 *"),
        ("O<A(B)>", "(B)@4-7 !program-name@1-4 *"),
    ]);
}

#[test]
fn a_slash_behind_the_beginning_is_a_fault_or_a_delete() {
    check(&[
        // RS274/NGC 3.3: the block delete character is the first on the line.
        ("G1 /X5", "G1 X5 !slash-inside@4-5"),
        ("N10 /G1", "N10 G1 !slash-inside@5-6"),
        ("(A) /G1", "G1 (A)@1-4 !slash-inside@5-6"),
        ("//G1", "/0 G1 !slash-inside@2-3"),
    ]);
    let inside = settings(|settings| settings.block_delete_inside = true);
    let rows = [
        ("G1 /X5", "G1 X5 /0@4"),
        ("G1 /2 X5", "G1 X5 /2@4"),
        ("G1 /(2) 2 X5", "G1 X5 (2)@5-8 /0@4 !stray-character@9-10 *"),
        ("/1 G1 /2 X5 / Y5", "/1 G1 X5 Y5 /2@7 !slash-inside@13-14"),
        ("X[6/2]", "X{6 2 /}"),
    ];
    for (written, read) in rows {
        assert_eq!(line_by(written.as_bytes(), inside), read, "{written}");
    }
}

#[test]
fn comments_are_never_code() {
    check(&[
        // RS274/NGC 3.3.4: comments in parentheses, closed on their line, not nested.
        ("G1 (G84 X5) X2", "G1 X2 (G84 X5)@4-12"),
        ("(ONE)(TWO)", "(ONE)@1-6 (TWO)@6-11"),
        ("()", "()@1-3"),
        ("(%)", "(%)@1-4"),
        ("(A;B)", "(A;B)@1-6"),
        ("G1 (NO END X5", "G1 (NO END X5)@4-14 !unclosed-comment@4-14"),
        ("(A (B) C1", "C1 (A (B)@1-7 !nested-comment@4-5"),
        ("(A (B) X)", "X? (A (B)@1-7 !nested-comment@4-5 !bad-number@8-10"),
        ("G1 ) X1", "G1 X1 !stray-character@4-5 *"),
        // Common practice: a comment behind a semicolon.
        ("G1 ; X5 (A) ; B", "G1 ( X5 (A) ; B)@4-16"),
        (";", "()@1-2"),
    ]);
    let plain = settings(|settings| settings.semicolon_comment = false);
    assert_eq!(line_by(b"G1 ; X5", plain), "G1 X5 !stray-character@4-5 *");
    let many = "(1)(2)(3)(4)(5)(6)(7)(8)(9)(10)";
    assert!(line(many).ends_with("(8)@22-25 (2 more)"), "{}", line(many));
    let long = format!("(A)({}) (C) X1", "B".repeat(600));
    let read = line(&long);
    assert!(read.starts_with("X1 (A)@1-4 (BBB") && read.contains("B..)@4-606 (..)@607-610"), "{read}");
    assert_eq!(read.matches('B').count(), 511, "512 bytes of text have room");
}

#[test]
fn foreign_bytes_are_told_and_outside_comments_stop_the_block() {
    let by = |text: &[u8]| line_by(text, ReaderSettings::default());
    assert_eq!(by(b"(f\xFCr M8 \xD8 6,8) G1"), "G1 (f\\xfcr M8 \\xd8 6,8)@1-15 !non-ascii-in-comment@3-10");
    assert_eq!(by(b"X30.\xA0Y10."), "X30. Y10. !non-ascii@5-6 *");
    assert_eq!(by(b"X3\xC2\xA00. Y1"), "X3 Y1 !non-ascii@3-5 !stray-character@5-7 *");
    assert_eq!(by(b"; \xE4"), "( \\xe4)@1-4 !non-ascii-in-comment@3-4");
    assert_eq!(by(b"(\xE4"), "(\\xe4)@1-3 !unclosed-comment@1-3 !non-ascii-in-comment@2-3");
    assert_eq!(by(b"X[1+\xE4] Y2"), "X? Y2 !unclosed-bracket@1-5 !non-ascii@5-6 !stray-character@6-7 *");
    assert_eq!(by(b"G1 X\0Y1"), "G1 X? Y1 !bad-number@4-6");
    assert_eq!(by(b"\x1A"), "!stray-character@1-2 *");
    assert_eq!(by(b"G1 $$ 5 ]"), "G1 !stray-character@4-6 !stray-character@7-8 !stray-character@9-10 *");
    let severity = |kind: FaultKind| kind.severity();
    assert_eq!(severity(FaultKind::NonAscii), Severity::Error);
    assert_eq!(severity(FaultKind::NonAsciiInComment), Severity::Info);
    assert_eq!(severity(FaultKind::LineTooLong), Severity::Warning);
}

#[test]
fn letters_stand_once_but_for_g_and_m() {
    check(&[
        // RS274/NGC 3.3.3 and table 4: G and M by modal group, up to four M; every other letter once.
        ("G1 G90 G21 M3 M8 M48 M60", "G1 G90 G21 M3 M8 M48 M60"),
        ("X1 Y2 X3", "X1 Y2 X3 !duplicate-word@7-9"),
        ("X1 x1 X1", "X1 X1 X1 !duplicate-word@4-6 !duplicate-word@7-9"),
        ("M1 M2 M3 M4 M5", "M1 M2 M3 M4 M5 !too-many-m-words@13-15"),
        ("F1 F,", "F1 F? !bad-number@4-6 !duplicate-word@4-6"),
    ]);
}

#[test]
fn assignments_are_kept_in_order() {
    check(&[
        // RS274/NGC 3.3.2.2: parameter setting.
        ("#3=15 X5", "X5 #3=15"),
        ("#101=1.5 (LEAD)", "#101=1.5 (LEAD)@10-16"),
        ("#1=#2 #2=-#1", "#1={2 #} #2={1 # neg}"),
        ("##1=2", "#{1 #}=2"),
        ("#[1+2]=[3*4]", "#{1 2 +}={3 4 *}"),
        ("# 1 = 2", "#1=2"),
        // Common practice: a sum without brackets.
        ("#1=#2+3*#4 G1", "G1 #1={2 # 3 4 # * +}"),
        ("#1=2-3**2", "#1={2 3 2 ** -}"),
        ("#1=5 G1 X#1", "G1 X{1 #} #1=5"),
        ("#1", "!bad-assignment@1-3 *"),
        ("#1 X5", "X5 !bad-assignment@1-3 *"),
        ("#=5", "!bad-number@1-4 !bad-assignment@1-4 *"),
        ("#1=", "#1=? !bad-number@1-4"),
        ("#1=1,5 X2", "X2 #1=? !bad-number@1-7"),
        ("#1=2+ X3", "#1=? !letters@1-9 *"),
        ("X[1,(C)#1 Y5", "X? Y5 (C)@5-8 !bad-number@1-5 !unclosed-bracket@1-5 !bad-assignment@8-10 *"),
        ("X#1#2", "X{1 #} !bad-assignment@4-6 *"),
    ]);
}

#[test]
fn what_there_is_no_room_for_is_told() {
    let words = "G1".repeat(70);
    let read = line(&words);
    assert_eq!(read.matches("G1").count(), 64, "{read}");
    assert_eq!(read.matches("!too-many-words").count(), 6, "{read}");
    assert!(read.ends_with('*'), "{read}");
    let last = line(&format!("{}X1", "G1".repeat(64)));
    assert!(last.ends_with("G1 !too-many-words@129-131 *"), "{last}");
    let stray = line(&"$ ".repeat(20));
    assert_eq!((stray.matches("!stray-character").count(), stray.contains("!4 more")), (16, true), "{stray}");
    let assignments: String = (0..20).map(|number| format!("#{number}=1")).collect();
    let read = line(&assignments);
    assert_eq!((read.matches("=1").count(), read.matches("!too-many-assignments").count()), (16, 4), "{read}");
    let sum = format!("X[{}1] Y2", "1+".repeat(70));
    assert_eq!(line(&sum), "X? Y2 !formula-too-long@1-145");
    let deep = format!("X{}1{} Y2", "[".repeat(40), "]".repeat(40));
    assert_eq!(line(&deep), "X? Y2 !formula-too-long@1-83");
    let open = format!("X{}1 Y2", "[".repeat(40));
    assert_eq!(line(&open), "X? !formula-too-long@1-46 !unclosed-bracket@1-46 *");
}

#[test]
fn a_long_line_is_read_and_told_once() {
    // RS274/NGC 3.3: at most 256 characters.
    let exact = format!("G1{}X1", " ".repeat(252));
    assert_eq!(line(&exact), "G1 X1");
    assert_eq!(line(&format!("{exact}2")), "G1 X12 !line-too-long@257-258");
    assert_eq!(blocks(&[b' '; 300], ReaderSettings::default()), ["1: !line-too-long@257-301"]);
    let short = settings(|settings| settings.max_block_chars = 5);
    assert_eq!(line_by(b"G1 X10", short), "G1 X10 !line-too-long@6-7");
    assert_eq!(line_by(b"G1 (X)", short), "G1 (X)@4-7 !line-too-long@6-7");
}

#[test]
fn lines_end_in_three_ways_each_once() {
    let read = |program: &[u8]| blocks(program, ReaderSettings::default());
    assert_eq!(
        read(b"G1\nG2\r\nG3\rG4\n\nG5\r\n\r\nG6\r\rG7"),
        ["1: G1", "2: G2", "3: G3", "4: G4", "6: G5", "8: G6", "10: G7"]
    );
    let ends = |program: &[u8]| {
        let mut blocks = Blocks::new(program, ReaderSettings::default());
        while blocks.next().is_some() {}
        let ends = blocks.reader().line_ends();
        ([LineEnd::Lf, LineEnd::CrLf, LineEnd::Cr].map(|end| ends.count(end)), ends.first_other())
    };
    assert_eq!(ends(b"G1\nG2\r\nG3\rG4\n"), ([2, 1, 1], Some(2)));
    assert_eq!(ends(b"G1\r\n\r\nG3"), ([0, 2, 0], None));
    assert_eq!(ends(b"G1\rG2\r"), ([0, 0, 2], None));
    assert_eq!(ends(b"%\r\nG1\r\n%\r\n"), ([0, 3, 0], None), "the last CRLF is one as well");
    assert_eq!(ends(b""), ([0, 0, 0], None));
}

#[test]
fn percent_lines_begin_and_end_a_program() {
    let read = |program: &[u8]| blocks(program, ReaderSettings::default());
    // RS274/NGC 3.2: files may be demarcated by percent signs.
    assert_eq!(read(b"%\nG1\n %\t\nG2\n%\nG3"), ["2: G1"]);
    assert_eq!(read(b"G1\n%\nG2"), ["1: G1", "3: G2"], "one alone only begins");
    assert_eq!(
        read(b"% G1\n%(A)\n/%\n%%"),
        [
            "1: G1 !stray-character@1-2 *",
            "2: (A)@2-5 !stray-character@1-2 *",
            "3: /0 !stray-character@2-3 *",
            "4: !stray-character@1-2 !stray-character@2-3 *".replace("1-2 !stray-character@2-3", "1-3").as_str(),
        ]
    );
    let mut reader = Reader::new(ReaderSettings::default());
    let program = b"%\nG1\n%\nG2";
    assert!(reader.read(program).is_block);
    let taken = reader.read(&program[5..]);
    assert_eq!((taken.bytes, taken.is_block, reader.is_ended()), (4, false, true));
    assert_eq!((reader.percent_lines(), reader.offset()), ([Some(1), Some(3)], 9));
    assert!(!reader.finish());
}

#[test]
fn a_byte_order_mark_is_skipped_and_told() {
    let read = |program: &[u8]| {
        let mut blocks = Blocks::new(program, ReaderSettings::default());
        let first = blocks.next().map(|block| (block.start(), block.end(), block.words().first().map(|w| w.column())));
        (first, blocks.reader().has_byte_order_mark())
    };
    assert_eq!(read(b"\xEF\xBB\xBFG1 X2\n"), (Some((3, 8, Some(1))), true));
    assert_eq!(read(b"G1 X2\n"), (Some((0, 5, Some(1))), false));
    assert_eq!(read(b"\xEF\xBB\xBF"), (None, true));
    assert_eq!(blocks(b"\xEF\xBBG1", ReaderSettings::default()), ["1: G1 !non-ascii@1-3 *"]);
    assert_eq!(blocks(b"\xEF", ReaderSettings::default()), ["1: !non-ascii@1-2 *"]);
    assert_eq!(blocks(b"\n\xEF\xBB\xBF", ReaderSettings::default()), ["2: !non-ascii@1-4 *"], "only at the beginning");
}

#[test]
fn codes_are_compared_in_tenths() {
    let tenths = |text: &[u8]| Blocks::new(text, ReaderSettings::default()).next().unwrap().words()[0].code_tenths();
    // RS274/NGC 3.3.2.1: a code is close to its number within 0.0001.
    let rows: [(&[u8], Option<u32>); 16] = [
        (b"G84", Some(840)),
        (b"G084", Some(840)),
        (b"G84.", Some(840)),
        (b"G84.0", Some(840)),
        (b"G84.00", Some(840)),
        (b"G51.1", Some(511)),
        (b"G51.10", Some(511)),
        (b"G83.9999", Some(840)),
        (b"G84.0001", Some(840)),
        (b"G84.0002", None),
        (b"G1.25", None),
        (b"G-1", None),
        (b"G-0", Some(0)),
        (b"M0003", Some(30)),
        (b"G4294967295", None),
        (b"G#1", None),
    ];
    for (text, expected) in rows {
        assert_eq!(tenths(text), expected, "{}", text.escape_ascii());
    }
}
