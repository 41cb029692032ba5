//! The core asks nothing of the heap: counted in this thread by the allocator itself.

use std::fmt::Write;

use threadcalc_core::nc::{Blocks, ReaderSettings, Variables, evaluate, identify, threads_of_pitch};
use threadcalc_core::{
    BlindHole, DepthRounding, DrillSets, DrilledTo, Error, FeedMode, ForceByChipArea, GaugeResult, Gear, Length, Tap,
    TapDrillRequest, TapJob, TapSetOn, TaperDepthRequest, TappingMotion, Text, Thread, TorquePoint, Unit, bottoming,
    chamfers_for_full_thread, countersink, exact_speeds, feed, full_thread_that_fits, gauges, gear_fit, judge_tap,
    next_move, over_wires, plan, program_depth, read_comment, read_fit, read_hole_note, read_number, read_shank_mark,
    spindle_speed, tap_drill, taper_depths, tapping_time, torque_by_chip_area,
};

#[path = "support/counting.rs"]
mod counting;
#[path = "support/job.rs"]
mod job;

use counting::counted;

/// A buffer on the stack that a plan writes its text into.
struct Page {
    bytes: [u8; 16_384],
    length: usize,
}

impl Write for Page {
    fn write_str(&mut self, text: &str) -> std::fmt::Result {
        let end = self.length + text.len();
        self.bytes.get_mut(self.length..end).ok_or(std::fmt::Error)?.copy_from_slice(text.as_bytes());
        self.length = end;
        Ok(())
    }
}

#[test]
fn reading_allocates_nothing() {
    for text in ["M8x1.25-6H", "M16xPh3P1.5-6H-LH", "7/16-14 UNC-2B", "1/4-20 UNF", "1/4-18 NPT", "nonsense", ""] {
        let (read, asked) = counted(|| Thread::read(text.as_bytes()));
        assert_eq!(asked, 0, "{text}: {read:?}");
    }
    assert_eq!(counted(|| read_number(b"1 1/4")).1, 0);
    let (fit, asked) = counted(|| read_fit(b"M8x1.25-6H/6g"));
    assert!(fit.is_ok() && asked == 0, "{asked}");
    for text in ["4X M8x1.25-6H \u{21a7}16 / \u{d8}6.8 \u{21a7}20", "M8 SEE NOTE 3, 1/4-20 UNF", ""] {
        let (read, asked) = counted(|| read_hole_note(text.as_bytes(), None));
        assert_eq!(asked, 0, "{text}: {read:?}");
        let (found, asked) = counted(|| read_comment(text.as_bytes(), true));
        assert_eq!(asked, 0, "{text}: {found:?}");
    }
}

#[test]
fn calculating_allocates_nothing() {
    let thread = Thread::read(b"7/16-14 UNC-2B").unwrap();
    let rpm = Length::integer(650);
    let (made, asked) = counted(|| feed(thread.lead_mm(), Some(rpm), Unit::Mm, FeedMode::PerMinute, 3));
    assert_eq!((made.unwrap().word(), asked), ("F1179.286", 0));
    let request =
        TapDrillRequest { tap: Tap::Cut, percent: None, basis: None, sets: DrillSets::ALL, taper_reamer: false };
    let (found, asked) = counted(|| tap_drill(&thread, &request));
    assert!(found.is_ok() && asked == 0, "{asked}");
    let (speeds, asked) = counted(|| exact_speeds(thread.lead_mm(), rpm, Unit::Mm, 3, 5, 1, None).map(|s| s.count()));
    assert_eq!((speeds.unwrap(), asked), (5, 0));
}

#[test]
fn calculating_a_taper_allocates_nothing() {
    let thread = Thread::read(b"1/4-18 NPT").unwrap();
    let request =
        TapDrillRequest { tap: Tap::Cut, percent: None, basis: None, sets: DrillSets::ALL, taper_reamer: true };
    let depths = TaperDepthRequest {
        projection_mm: None,
        drill_mm: Length::integer(11),
        point_angle_deg: Length::integer(118),
        bottom_clearance_mm: Length::integer(3),
    };
    let (drill, asked) = counted(|| tap_drill(&thread, &request));
    assert!(drill.is_ok() && asked == 0, "{asked}");
    let (found, asked) = counted(|| taper_depths(&thread, &depths));
    assert!(found.is_ok() && asked == 0, "{asked}");
    assert_eq!(counted(|| (thread.pipe().is_ok(), thread.findings().iter().count())), ((true, 1), 0));
}

#[test]
fn machining_a_hole_allocates_nothing() {
    let thread = Thread::read(b"M8-6H").unwrap();
    let whole = Length::integer;
    let (asked, times) = counted(|| {
        let force = ForceByChipArea::new(3900.0)?;
        let torque = torque_by_chip_area(&thread, Length::new(34, 5)?, force, 1.15)?;
        let gear = Gear::new(whole(20), whole(4000), &[TorquePoint { rpm: whole(20), torque_nm: 40.0 }])?;
        let rpm = Length::from_f64(spindle_speed(whole(8), whole(15))?.floor())?;
        let fit = gear_fit(&[gear], torque.worn_nm, rpm)?;
        let motion = TappingMotion {
            lead_mm: thread.lead_mm(),
            rpm,
            travel_mm: whole(25),
            acceleration_rpm_s: Some(3000.0),
            retract_factor: whole(2),
            dwell_s: 0.0,
            peck_mm: Some(whole(6)),
        };
        tapping_time(&motion).map(|time| fit.is_enough && time.reaches_speed && time.strokes == 5)
    });
    assert_eq!((asked, times), (Ok(true), 0));
}

#[test]
fn judging_and_gauging_allocate_nothing() {
    let thread = Thread::read(b"M8-6H-LH").unwrap();
    let job = TapJob { thread, plating_um: Length::integer(7), hole: None, room_threads: None, wire_insert: false };
    let (found, asked) = counted(|| judge_tap(&read_shank_mark(b"STI M8x1 7G QQ B")?, &job).map(|f| f.has_error()));
    assert_eq!((found, asked), (Ok(true), 0));
    let (set, asked) = counted(|| gauges(&thread).map(|set| set.iter().count()));
    assert_eq!((set, asked), (Ok(4), 0));
    let result = GaugeResult::GoStops { turns: Length::integer(3) };
    let (moves, asked) =
        counted(|| next_move(&thread, Some(Length::integer(12)), result).map(|next| next.moves().count()));
    assert_eq!((moves, asked), (Ok(4), 0));
    let wire = Length::new(725, 1000).unwrap();
    let (over, asked) = counted(|| over_wires(&thread, wire, Length::new(7188, 1000)?, true));
    assert!(over.is_ok() && asked == 0, "{asked}");
}

#[test]
fn identifying_allocates_nothing() {
    let lead = Length::new(127, 100).unwrap();
    let (found, asked) = counted(|| {
        let found = identify(lead, Length::new(1, 50)?, 1)?;
        let mut text = Text::<128>::new();
        write!(text, "{found}").unwrap();
        let threads = threads_of_pitch(lead, Length::new(635, 100)?, 1)?.count();
        Ok::<_, Error>((text, threads))
    });
    let (text, threads) = found.unwrap();
    assert_eq!((text.as_str(), threads, asked), ("20 TPI (0.000 %); 1.25 mm (+1.600 %)", 2, 0));
}

#[test]
fn planning_and_its_text_allocate_nothing() {
    let job = job::of("7/16-14 UNC-2B");
    let (made, asked) = counted(|| plan(&job));
    assert_eq!(asked, 0);
    let made = made.unwrap();
    let mut page = Page { bytes: [0; 16_384], length: 0 };
    let (written, asked) = counted(|| write!(page, "{made}"));
    assert!(written.is_ok() && page.length > 500, "{} bytes", page.length);
    assert_eq!(asked, 0);
}

#[test]
fn depths_allocate_nothing() {
    let thread = Thread::read(b"M10x1").unwrap();
    let whole = Length::integer;
    let hole = BlindHole {
        drill_depth_mm: Length::new(26_704, 1000).unwrap(),
        drill_depth_to: DrilledTo::Point,
        drill_mm: whole(9),
        point_angle_deg: Some(whole(118)),
        bottom_clearance_mm: whole(3),
        tap_centre_mm: Length::ZERO,
        tap_set_on: TapSetOn::Front,
    };
    let (asked, times) = counted(|| {
        let found = full_thread_that_fits(&thread, &hole, whole(3))?;
        let forms =
            chamfers_for_full_thread(&thread, &hole, whole(18))?.iter().filter(|form| form.gives_wanted).count();
        let bottom = bottoming(&thread, found.tap_mm, hole.drill_depth_mm, whole(9), None)?.readings().count();
        let mouth = countersink(&thread, Length::new(21, 2)?, whole(90), None)?;
        let word = program_depth(found.tap_mm, Unit::Inch, 4, DepthRounding::Deeper)?;
        Ok::<_, threadcalc_core::Error>((forms, bottom, mouth.tip_mm > 5.0, word.text.is_empty()))
    });
    assert_eq!((asked, times), (Ok((5, 4, true, false)), 0));
}

#[test]
fn reading_a_program_allocates_nothing() {
    let program =
        b"%\nO1 (TAP M8)\n#101=1.5 #102=[#101*400]\n/N10 G84 X10. Y-5.5 Z-SQRT[2] F#102\nIF [#1] GOTO 5\nX1,5\n";
    let (found, asked) = counted(|| {
        let (mut words, mut values, mut comments) = (0, 0, 0);
        let mut variables = Variables::new();
        let mut blocks = Blocks::new(program, ReaderSettings::default());
        while let Some(block) = blocks.next() {
            words += block.words().len();
            values += block.words().iter().filter(|word| evaluate(block, word.value(), &variables).is_ok()).count();
            comments += block.comments().count();
            variables.assign(block);
        }
        (words, values, comments)
    });
    assert_eq!((found, asked), ((6, 4, 1), 0));
}
