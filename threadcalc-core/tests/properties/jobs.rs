//! Jobs, plans and their texts.

use std::fmt::Write;

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;
use threadcalc_core::{
    Code, Dialect, Field, FindingId, Form, Hand, Job, Length, Plan, Severity, Side, Thread, Value, plan,
};

use crate::values::{bytes, config, length, parts, thread};

/// Any key of a job.
fn key() -> impl Strategy<Value = &'static str> {
    select(Job::keys().collect::<Vec<_>>())
}

/// A value in any of the ways a door can hand it in.
#[derive(Clone, Debug)]
enum Given {
    Text(Vec<u8>),
    Exact(Length),
    Double(f64),
    Flag(bool),
    Absent,
}

impl Given {
    fn value(&self) -> Value<'_> {
        match self {
            Self::Text(text) => Value::Text(text),
            Self::Exact(value) => Value::Exact(*value),
            Self::Double(value) => Value::Double(*value),
            Self::Flag(flag) => Value::Flag(*flag),
            Self::Absent => Value::Absent,
        }
    }
}

fn given() -> impl Strategy<Value = Given> {
    let names = prop_oneof![
        Just("mm"),
        Just("inch"),
        Just("per_minute"),
        Just("per_revolution"),
        Just("blind"),
        Just("through"),
        Just("cut"),
        Just("form"),
        Just("3H/4"),
        Just("M8"),
        Just("7/16-14 UNC-2B"),
        Just("rs274ngc"),
        Just("G84"),
        Just("metric letter"),
        Just("centre"),
        Just("3"),
        Just("12.5"),
        Just("1/3"),
        Just("true"),
    ];
    prop_oneof![
        4 => names.prop_map(|name| Given::Text(name.into())),
        1 => bytes().prop_map(Given::Text),
        2 => parts(-10..=20_000, 10).prop_map(Given::Exact),
        1 => length().prop_map(Given::Exact),
        1 => any::<f64>().prop_map(Given::Double),
        1 => any::<bool>().prop_map(Given::Flag),
        1 => Just(Given::Absent),
    ]
}

/// A job that has all it needs, most of it sensible.
fn job() -> impl Strategy<Value = Job> {
    let choices = vec(any::<bool>(), 6);
    (thread(), choices, parts(1..=60_000, 10), parts(1..=4_000, 100), 0..=9_u8, vec((key(), given()), 0..4)).prop_map(
        |(thread, flags, rpm, depth, decimals, extra)| {
            let mut job = Job::default();
            job.thread = Some(thread);
            let pick = |flag: usize, yes: &'static str, no: &'static str| if flags[flag] { yes } else { no };
            for (key, value) in [
                ("unit", pick(0, "mm", "inch")),
                ("mode", pick(1, "per_minute", "per_revolution")),
                ("hole", pick(2, "blind", "through")),
                ("tap", pick(3, "cut", "form")),
                ("dialect", pick(4, "rs274ngc", "unset")),
            ] {
                job.set(key, Value::Text(value.as_bytes())).unwrap();
            }
            if flags[5] {
                job.set("dialect.tap_lh", Value::Text(b"G74")).unwrap();
                job.set("dialect.feed_per_revolution", Value::Text(b"G95")).unwrap();
            }
            (job.rpm, job.full_thread_depth_mm, job.decimals) = (Some(rpm), Some(depth), Some(decimals));
            for (key, value) in &extra {
                // What is refused leaves the job as it is.
                let _refused = job.set(key, value.value());
            }
            job
        },
    )
}

fn assert_consistent(plan: &Plan) -> Result<(), TestCaseError> {
    let errors = plan.findings.iter().filter(|finding| finding.severity() == Severity::Error).count();
    let words: Vec<&str> = plan.cycle.words().collect();
    let withheld = plan.withheld.iter().flatten().count();
    prop_assert!(errors == 0 || words.is_empty(), "words while an error stands");
    prop_assert_eq!(withheld == 0, !words.is_empty());
    prop_assert_eq!(plan.findings.has_error(), errors > 0);
    prop_assert!(plan.programmed_rpm <= plan.asked_rpm);
    prop_assert_eq!(plan.thread.side(), Some(Side::Internal));
    let blocks: Vec<String> = plan.cycle.blocks().map(|block| block.to_string()).collect();
    prop_assert_eq!(blocks.join(" "), words.join(" "));
    if !words.is_empty() {
        prop_assert!(words.contains(&plan.feed.word()) && plan.cycle.restore().count() > 0);
        // The tap never goes less deep than planned, and the R plane never lower.
        let z = words.iter().find_map(|word| word.strip_prefix("Z-")).unwrap();
        let z = threadcalc_core::read_number(z.as_bytes()).unwrap().times(plan.feed.unit().in_mm()).unwrap();
        prop_assert!(z >= plan.depths.program_tap_mm);
    }
    for row in plan.card() {
        prop_assert_eq!(row.exact, row.feed.lead_error() == Ok(Length::ZERO));
        prop_assert_eq!(row.planned, row.rpm == plan.programmed_rpm);
    }
    Ok(())
}

proptest! {
    #![proptest_config(config(1_500))]

    #[test]
    fn any_value_is_taken_or_refused(fields in vec((key(), given()), 0..12), key in ".{0,24}") {
        let mut job = Job::default();
        for (key, value) in &fields {
            let before = job;
            if job.set(key, value.value()).is_err() {
                prop_assert_eq!(job, before);
            }
        }
        if Job::keys().all(|known| known != key) {
            let code = job.set(&key, Value::Flag(true)).map_err(|error| error.code());
            prop_assert!([Err(Code::UnknownKey), Err(Code::UnsupportedField)].contains(&code), "{} {:?}", key, code);
        }
        match plan(&job) {
            Ok(plan) => assert_consistent(&plan)?,
            Err(error) => {
                let missing: Vec<Field> = job.missing().map(|error| error.field()).collect();
                prop_assert!(missing.is_empty() || missing[0] == error.field());
            }
        }
    }

    #[test]
    fn any_job_has_a_plan_that_agrees_with_itself_or_an_error(job in job()) {
        let without_plan = |form: Form| form.is_taper() || form == Form::Npsf;
        let plan = match plan(&job) {
            Ok(plan) => plan,
            // A job whose other values are sound is refused for its form alone.
            Err(error) => {
                let of_form = error.code() == Code::UnsupportedForm;
                prop_assert!(!of_form || job.thread.is_some_and(|thread| without_plan(thread.form())), "{}", error);
                return Ok(());
            }
        };
        prop_assert!(!without_plan(plan.thread.form()), "{} has a plan", plan.thread);
        assert_consistent(&plan)?;
        let mut text = String::new();
        let written = write!(text, "{plan}");
        prop_assert!(written.is_ok());
        prop_assert!(text.ends_with('\n') && text.contains(plan.feed.word()));
        let widest = text.lines().max_by_key(|line| line.chars().count()).unwrap();
        prop_assert!(widest.chars().count() <= 80, "{}", widest);
        // The same job again is the same plan, to the last bit.
        let again = threadcalc_core::plan(&plan.job).unwrap();
        prop_assert_eq!(serde_json::to_value(again.depths).unwrap(), serde_json::to_value(plan.depths).unwrap());
        let json: serde_json::Value = serde_json::from_str(&serde_json::to_string(&plan).unwrap()).unwrap();
        prop_assert_eq!(json["feed"]["word"].as_str(), Some(plan.feed.word()));
    }

    #[test]
    fn a_control_without_the_code_gets_no_words(job in job()) {
        let mut job = job;
        job.dialect = Some(Dialect::rs274ngc());
        // It has no words for these either, and a rigid holder fed off the lead gets none anyway.
        (job.peck_mm, job.dwell_s, job.machine.retract_factor, job.underfeed_percent) = (None, None, None, None);
        let Ok(plan) = plan(&job) else { return Ok(()) };
        let lacks = plan.thread.hand() == Hand::Left || plan.feed.mode() == threadcalc_core::FeedMode::PerRevolution;
        let found = plan.findings.iter().any(|finding| finding.id() == FindingId::CodeNotOnControl);
        let full = plan.findings.iter().any(|finding| finding.id() == FindingId::MoreFindings);
        prop_assert!(found == lacks || full, "{}", plan.thread);
        prop_assert!(!lacks || plan.cycle.words().next().is_none());
    }

    #[test]
    fn built_in_dialects_are_two(name in bytes()) {
        let known = [&b"rs274ngc"[..], b"unset"].contains(&&name[..]);
        prop_assert_eq!(Dialect::built_in(&name).is_ok(), known);
    }

    #[test]
    fn any_exact_thread_has_a_plan_or_an_error(diameter in length(), pitch in length()) {
        for thread in Form::ALL.iter().filter_map(|form| Thread::from_parts(*form, diameter, pitch, 1, Hand::Right, None, b"").ok()) {
            let mut job = Job::default();
            for (key, value) in [("unit", "mm"), ("mode", "per_minute"), ("hole", "blind"), ("tap", "cut")] {
                job.set(key, Value::Text(value.as_bytes())).unwrap();
            }
            job.thread = Some(thread);
            (job.rpm, job.full_thread_depth_mm) = (Some(Length::integer(500)), Some(Length::integer(10)));
            job.decimals = Some(3);
            if let Ok(plan) = plan(&job) {
                assert_consistent(&plan)?;
                let mut text = String::new();
                let _written = write!(text, "{plan}");
            }
        }
    }
}
