//! The committed header and export list against the source they are made from, and the header's numbers
//! against the core's.

use std::path::{Path, PathBuf};

fn generated() -> String {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut config = cbindgen::Config::from_file(root.join("cbindgen.toml")).expect("cbindgen.toml can be read");
    // The version macro is the package's own version, so that it cannot be forgotten.
    let version = format!("\n\n#define THREADCALC_VERSION \"{}\"", env!("CARGO_PKG_VERSION"));
    config.after_includes = config.after_includes.map(|includes| includes + &version);
    let bindings =
        cbindgen::Builder::new().with_crate(root).with_config(config).generate().expect("a header can be made");
    let mut text = Vec::new();
    bindings.write(&mut text);
    with_macros(&String::from_utf8(text).expect("a header is text"))
}

/// The longest line of the header, as in `cbindgen.toml`.
const LINE_LENGTH: usize = 100;

/// Windows wants a word before the type of the result and one before the name. cbindgen has a place for
/// the first only, so every declaration is written anew.
fn with_macros(header: &str) -> String {
    let mut text = String::new();
    let mut lines = header.lines();
    while let Some(line) = lines.next() {
        // Declarations stand at the left margin; comments, macros and members do not begin with a letter.
        if !line.starts_with(|first: char| first.is_ascii_alphabetic()) || !line.contains('(') {
            text += &format!("{line}\n");
            continue;
        }
        let mut declaration = String::from(line);
        while !declaration.ends_with(';') {
            declaration += lines.next().expect("a declaration ends with a semicolon").trim_start();
        }
        text += &with_macros_in(&declaration);
    }
    text
}

/// One declaration, on one line if it fits, else with one argument a line.
fn with_macros_in(declaration: &str) -> String {
    let (head, arguments) = declaration.split_once('(').expect("a declaration has arguments");
    let arguments = arguments.strip_suffix(");").unwrap_or_else(|| panic!("no declaration: {declaration}"));
    assert!(!arguments.contains('('), "a function among the arguments is not understood: {declaration}");
    let name = head.rfind([' ', '*']).map(|last| last + 1).expect("a declaration has a type and a name");
    let (result, name) = head.split_at(name);
    let head = format!("THREADCALC_API {result}THREADCALC_CALL {name}(");
    let arguments: Vec<&str> = arguments.split(',').map(str::trim).collect();
    let line = format!("{head}{});\n", arguments.join(", "));
    if line.len() <= LINE_LENGTH { line } else { format!("{head}\n    {});\n", arguments.join(",\n    ")) }
}

/// The names of the functions that a header declares with both macros.
fn functions(header: &str) -> Vec<&str> {
    header
        .lines()
        .filter_map(|line| line.strip_prefix("THREADCALC_API ")?.split_once("THREADCALC_CALL ")?.1.split_once('('))
        .map(|(name, _)| name)
        .collect()
}

/// The export list for makers of a Windows library: the names, sorted.
fn export_list(header: &str) -> String {
    let mut names = functions(header);
    names.sort_unstable();
    format!(
        "; Made with threadcalc.h, and checked as it is.\nLIBRARY threadcalc\nEXPORTS\n    {}\n",
        names.join("\n    ")
    )
}

fn include(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../include").join(name)
}

fn committed() -> PathBuf {
    include("threadcalc.h")
}

/// Compares a committed file with what it has to be, or writes it on request.
fn assert_committed(name: &str, generated: &str) {
    if std::env::var_os("THREADCALC_WRITE_HEADER").is_some() {
        std::fs::write(include(name), generated).expect("the file can be written");
    }
    let committed = std::fs::read_to_string(include(name)).expect("the file can be read");
    assert!(committed == generated, "include/{name} has drifted: run with THREADCALC_WRITE_HEADER=1");
}

#[test]
fn the_committed_header_is_the_generated_one() {
    assert_committed("threadcalc.h", &generated());
}

#[test]
fn the_committed_export_list_is_that_of_the_header() {
    assert_committed("threadcalc.def", &export_list(&generated()));
}

/// A declaration without the macros would still compile here and fail on Windows only.
#[test]
fn every_exported_function_is_declared_with_the_macros() {
    let sources = std::fs::read_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join("src")).expect("src can be read");
    let text = |path: PathBuf| std::fs::read_to_string(path).expect("a source can be read");
    let files = sources.map(|entry| entry.expect("src can be read").path()).filter(|path| path.is_file());
    let exported: usize = files.map(|path| text(path).matches("#[unsafe(no_mangle)]").count()).sum();
    assert!(exported > 40, "the exported functions are found in src");
    assert_eq!(functions(&generated()).len(), exported, "functions with THREADCALC_API and THREADCALC_CALL");
}

/// Every `pub const THREADCALC_GROUP_NAME: i32 = N` of a group, as name and number.
fn constants(group: &str) -> Vec<(String, i32)> {
    let header = std::fs::read_to_string(committed()).expect("include/threadcalc.h can be read");
    let prefix = format!("#define THREADCALC_{group}_");
    let define = |line: &str| {
        let (name, number) = line.strip_prefix(&prefix)?.split_once(' ')?;
        Some((name.to_lowercase().replace('_', "-"), number.trim().parse().ok()?))
    };
    // A longer group name that begins alike (TAP_SET_ON beside TAP) is a group of its own.
    let own = |name: &str| match group {
        "TAP" => !name.starts_with("set-on") && !name.starts_with("kind-"),
        "GAUGE" => !name.starts_with("reading-"),
        _ => true,
    };
    header.lines().filter_map(define).filter(|(name, number)| *number != 0 && own(name)).collect()
}

fn core_numbers(all: &[(&str, i32)]) -> Vec<i32> {
    all.iter().map(|(_, number)| *number).collect()
}

macro_rules! same_numbers {
    ($($test:ident: $group:literal $core:ty),+ $(,)?) => {$(
        #[test]
        fn $test() {
            let core: Vec<(&str, i32)> = <$core>::ALL.iter().map(|choice| (choice.name(), choice.number())).collect();
            let header: Vec<i32> = constants($group).iter().map(|(_, number)| *number).collect();
            assert_eq!(header, core_numbers(&core), "numbers of THREADCALC_{}_*", $group);
        }
    )+};
}

same_numbers! {
    forms_have_the_numbers_of_the_core: "FORM" threadcalc_core::Form,
    series_have_the_numbers_of_the_core: "SERIES" threadcalc_core::Series,
    hands_have_the_numbers_of_the_core: "HAND" threadcalc_core::Hand,
    sides_have_the_numbers_of_the_core: "SIDE" threadcalc_core::Side,
    units_have_the_numbers_of_the_core: "UNIT" threadcalc_core::Unit,
    modes_have_the_numbers_of_the_core: "MODE" threadcalc_core::FeedMode,
    holes_have_the_numbers_of_the_core: "HOLE" threadcalc_core::Hole,
    taps_have_the_numbers_of_the_core: "TAP" threadcalc_core::Tap,
    bases_have_the_numbers_of_the_core: "BASIS" threadcalc_core::Basis,
    severities_have_the_numbers_of_the_core: "SEVERITY" threadcalc_core::Severity,
    findings_have_the_numbers_of_the_core: "FINDING" threadcalc_core::FindingId,
    sides_of_a_part_have_the_numbers_of_the_core: "SIDES" threadcalc_core::Sides,
    platings_have_the_numbers_of_the_core: "PLATING" threadcalc_core::Plating,
    written_names_have_the_numbers_of_the_core: "WRITTEN_AS" threadcalc_core::WrittenAs,
    numbers_have_the_numbers_of_the_core: "NUMBER" threadcalc_core::NumberKey,
    fields_have_the_numbers_of_the_core: "FIELD" threadcalc_core::Field,
    confidences_have_the_numbers_of_the_core: "CONFIDENCE" threadcalc_core::Confidence,
    drill_sets_have_the_numbers_of_the_core: "DRILL_SET" threadcalc_core::DrillSet,
    answers_about_limits_have_the_numbers_of_the_core: "WITHIN_LIMITS" threadcalc_core::WithinLimits,
    places_on_the_tap_have_the_numbers_of_the_core: "TAP_SET_ON" threadcalc_core::TapSetOn,
    parts_that_give_way_have_the_numbers_of_the_core: "WEAKEST" threadcalc_core::Weakest,
    groups_of_engagement_have_the_numbers_of_the_core: "ENGAGEMENT_GROUP" threadcalc_core::EngagementGroup,
    qualities_of_a_fit_have_the_numbers_of_the_core: "FIT_QUALITY" threadcalc_core::FitQuality,
    property_classes_have_the_numbers_of_the_core: "PROPERTY_CLASS" threadcalc_core::PropertyClass,
    materials_have_the_numbers_of_the_core: "MATERIAL" threadcalc_core::Material,
    holders_have_the_numbers_of_the_core: "HOLDER" threadcalc_core::Holder,
    kinds_of_tap_have_the_numbers_of_the_core: "TAP_KIND" threadcalc_core::TapKind,
    suits_have_the_numbers_of_the_core: "SUITS" threadcalc_core::Suits,
    chamfer_forms_have_the_numbers_of_the_core: "CHAMFER_FORM" threadcalc_core::ChamferForm,
    classes_of_tap_have_the_numbers_of_the_core: "ISO_TAP_CLASS" threadcalc_core::IsoTapClass,
    letters_of_a_tap_limit_have_the_numbers_of_the_core: "LIMIT_LETTER" threadcalc_core::LimitLetter,
    gauges_have_the_numbers_of_the_core: "GAUGE" threadcalc_core::GaugeKind,
    readings_of_gauges_have_the_numbers_of_the_core: "GAUGE_READING" threadcalc_core::GaugeReading,
    verdicts_have_the_numbers_of_the_core: "VERDICT" threadcalc_core::Verdict,
    moves_have_the_numbers_of_the_core: "MOVE" threadcalc_core::Move,
    ends_of_a_drilled_depth_have_the_numbers_of_the_core: "DRILLED_TO" threadcalc_core::DrilledTo,
    verdicts_on_the_bottom_have_the_numbers_of_the_core: "BOTTOM_VERDICT" threadcalc_core::BottomVerdict,
    run_outs_have_the_numbers_of_the_core: "RUN_OUT" threadcalc_core::RunOut,
    sides_of_rounding_have_the_numbers_of_the_core: "DEPTH_ROUNDING" threadcalc_core::DepthRounding,
    units_of_a_dwell_have_the_numbers_of_the_core: "DWELL_UNIT" threadcalc_core::DwellUnit,
    ways_to_count_a_way_out_have_the_numbers_of_the_core: "RETRACT_IN" threadcalc_core::RetractIn,
    returns_have_the_numbers_of_the_core: "RETURN_TO" threadcalc_core::ReturnTo,
    meanings_of_a_feed_have_the_numbers_of_the_core: "FEED_BASIS" threadcalc_core::FeedBasis,
    ends_of_rigid_tapping_have_the_numbers_of_the_core: "RIGID_UNTIL" threadcalc_core::RigidUntil,
    meanings_of_no_repeats_have_the_numbers_of_the_core: "REPEAT_ZERO" threadcalc_core::RepeatZero,
    meanings_of_no_point_have_the_numbers_of_the_core: "NO_POINT" threadcalc_core::NoPoint,
    blanks_in_numbers_have_the_numbers_of_the_core: "SPACES_IN_NUMBERS" threadcalc_core::NumberSpaces,
    findings_of_a_program_have_the_numbers_of_the_core: "PROGRAM_FINDING" threadcalc_core::nc::ProgramFindingId,
    numbers_of_a_program_have_the_numbers_of_the_core: "PROGRAM_NUMBER" threadcalc_core::nc::ProgramNumberKey,
    lines_of_evidence_have_the_numbers_of_the_core: "EVIDENCE" threadcalc_core::nc::EvidenceKind,
    sources_of_a_thread_have_the_numbers_of_the_core: "THREAD_SOURCE" threadcalc_core::nc::ThreadSource,
    reasons_have_the_numbers_of_the_core: "REASON" threadcalc_core::nc::Reason,
    kinds_of_tool_have_the_numbers_of_the_core: "TOOL_KIND" threadcalc_core::nc::ToolKind,
    orders_of_a_block_have_the_numbers_of_the_core: "BLOCK_ORDER" threadcalc_core::BlockOrder,
    verdicts_on_a_lead_have_the_numbers_of_the_core: "LEAD_VERDICT" threadcalc_core::nc::LeadVerdict,
}

/// The library's own fault has no code in the core, which cannot panic.
#[test]
fn statuses_have_the_numbers_of_the_core() {
    let mut core: Vec<i32> = threadcalc_core::Code::ALL.iter().map(|code| code.number()).collect();
    core.push(threadcalc::THREADCALC_STATUS_INTERNAL_FAULT);
    let header: Vec<i32> = constants("STATUS").iter().map(|(_, number)| *number).collect();
    assert_eq!(header, core, "numbers of THREADCALC_STATUS_*");
}

#[test]
fn version_macros_are_those_of_the_package() {
    let header = std::fs::read_to_string(committed()).expect("include/threadcalc.h can be read");
    let line = format!("#define THREADCALC_VERSION \"{}\"", env!("CARGO_PKG_VERSION"));
    assert!(header.contains(&line), "expected `{line}` in the header");
    assert!(header.contains("#define THREADCALC_ABI_VERSION 1"), "ABI version in the header");
}
