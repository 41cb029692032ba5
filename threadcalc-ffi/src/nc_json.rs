//! The check of a program through JSON: what it is told as text in, its report as text out.

use core::ffi::c_char;

use threadcalc_core::nc::{CheckOptions, Event, ProgramCheck, ProgramFinding, Report, Tool};
use threadcalc_core::{Code, Dialect, Error, Field, Job, Value};

use crate::codes::threadcalc_status;
use crate::json::{Filled, as_json, read_into};
use crate::memory::{bytes, bytes_out};
use crate::status::{Fault, guard, threadcalc_error_t};

/// The longest request that is looked at, in bytes, without its program.
const LONGEST_REQUEST: usize = 65_536;

/// Every key that stands for itself; those inside are of a dialect, of options, of a machine and of a tool.
const KEYS: [&str; 5] = ["schema", "dialect", "options", "machine", "tools"];

/// What a check is told.
pub(crate) struct CheckRequest {
    dialect: Option<Dialect>,
    options: CheckOptions,
    tools: Vec<Tool>,
    /// The programs, where they stand in the request, by their keys.
    programs: Vec<(String, Vec<u8>)>,
    program_keys: &'static [&'static str],
}

impl CheckRequest {
    /// Reads a request whose program is handed over beside it.
    pub(crate) fn read(text: &[u8]) -> Result<Self, Fault> {
        if text.len() > LONGEST_REQUEST {
            let fault = Error::new(Code::TooLong, Field::Job).at_byte(LONGEST_REQUEST);
            return Err(fault.hint_text("at most 65536 bytes").into());
        }
        Self::read_with(text, &[])
    }

    /// Reads a request that holds programs under these keys.
    pub(crate) fn read_with(text: &[u8], program_keys: &'static [&'static str]) -> Result<Self, Fault> {
        let (options, tools) = (CheckOptions::default(), Vec::new());
        let mut request = Self { dialect: None, options, tools, programs: Vec::new(), program_keys };
        read_into(&mut request, text, None)?;
        Ok(request)
    }

    /// Checks a program that stands in the request, which is told as `path` where it is missing.
    pub(crate) fn check_own(&self, key: &str, path: &str) -> Result<Checked, Fault> {
        let missing = || Fault {
            error: Error::new(Code::Missing, Field::Key).hint_text("the text of a program"),
            key: Some(path.into()),
        };
        let own = self.programs.iter().find(|(known, _)| known == key);
        self.check(&own.ok_or_else(missing)?.1)
    }

    pub(crate) fn check(&self, program: &[u8]) -> Result<Checked, Fault> {
        let dialect = self.dialect.ok_or_else(|| Error::new(Code::Missing, Field::Dialect).hint_text(DIALECTS))?;
        let mut check = ProgramCheck::new(program, &dialect, &self.options);
        self.tools.iter().try_for_each(|tool| check.add_tool(tool))?;
        let mut checked = Checked::default();
        for event in check.by_ref() {
            match event {
                Event::Hole(hole) => checked.holes.push(hole),
                Event::Finding(finding) => checked.findings.push(finding),
            }
        }
        checked.findings.sort_by_key(ProgramFinding::place);
        checked.not_checked = check.not_checked().collect();
        Ok(checked)
    }

    fn set_dialect(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        self.dialect.get_or_insert_with(Dialect::unset).set(key, value)
    }
}

const DIALECTS: &str = "\"rs274ngc\", \"unset\" or an object of the control's own codes";

impl Filled for CheckRequest {
    fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        match key {
            "schema" => return Job::default().set(key, value),
            _ if self.program_keys.contains(&key) => {
                let Value::Text(text) = value else {
                    return Err(Error::new(Code::UnknownValue, Field::Key).hint_text("a text"));
                };
                self.programs.push((key.into(), text.to_vec()));
                return Ok(());
            }
            "dialect" => {
                if let Value::Text(name) = value {
                    self.dialect = Some(Dialect::built_in(name)?);
                    return Ok(());
                }
            }
            _ => {}
        }
        if KEYS.contains(&key) {
            let hint = if key == "tools" { "a list of objects" } else { "an object of keys" };
            let wrong = Error::new(Code::UnknownValue, Field::Key).hint_text(hint);
            return if value == Value::Absent { Ok(()) } else { Err(wrong) };
        }
        match key.split_once('.') {
            Some(("dialect", key)) => self.set_dialect(key, value),
            Some(("options", own)) if !own.starts_with("machine") => self.options.set(own, value),
            Some(("machine", _)) => self.options.set(key, value),
            Some(("tools", key)) => self.tools.last_mut().map_or(Ok(()), |tool| tool.set(key, value)),
            _ => Err(Error::new(Code::UnknownKey, Field::Key)
                .hint_text("the keys are schema, dialect, options, machine and tools")),
        }
    }

    fn is_group(&self, key: &str) -> bool {
        key == "options" || ((key == "machine" || key.starts_with("dialect")) && Job::is_group(key))
    }

    fn is_list_of_objects(&self, key: &str) -> bool {
        key == "tools"
    }

    fn begin_object(&mut self, _key: &str) {
        self.tools.push(Tool::default());
    }
}

/// What a check has found.
#[derive(Default)]
pub(crate) struct Checked {
    holes: Vec<threadcalc_core::nc::TappedHole>,
    findings: Vec<ProgramFinding>,
    not_checked: Vec<threadcalc_core::nc::Unchecked>,
}

impl Checked {
    pub(crate) fn report(&self) -> Report<'_> {
        Report { tapped_holes: &self.holes, findings: &self.findings, not_checked: &self.not_checked }
    }

    pub(crate) fn holes(&self) -> &[threadcalc_core::nc::TappedHole] {
        &self.holes
    }

    pub(crate) fn not_checked(&self) -> &[threadcalc_core::nc::Unchecked] {
        &self.not_checked
    }
}

/// Checks a whole program: the JSON text of what is known in, the JSON text of a report out. UTF-8; needed counts the
/// NUL.
///
/// The program is bytes, of any encoding. The request is an object of schema (1), dialect ("rs274ngc", "unset" or an
/// object, required), options, machine (as in a job) and tools, a list of objects; an unknown key is an error. Calls of
/// subprograms are followed where they stand in the same text. The report is that of schema/report.schema.json.
/// Memory for the answer is taken from the heap while the call runs; threadcalc_checker_begin takes none.
/// Errors: bad-json, too-long (65536 bytes of request, 64 tools), unknown-key, unknown-value, missing, those of
/// threadcalc_cycle for a dialect, buffer-too-short.
/// Source: RS274/NGC, NISTIR 6556; ISO 6983-1; where controls differ, the dialect.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_check_json(
    program: *const u8,
    length: usize,
    request: *const u8,
    request_length: usize,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let program = unsafe { bytes(program, length) }?;
        let checked = CheckRequest::read(unsafe { bytes(request, request_length) }?)?.check(program)?;
        let json = as_json(&checked.report())?;
        unsafe { bytes_out(&json, text, capacity, needed) }?;
        Ok(())
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A tap M6 at a lead of 1.6.
    const PROGRAM: &[u8] = b"G17 G21 G90 G94 G54\nT1 M6\nG43 H1 Z5. S500 M3\nG98 G84 X0 Y0 Z-12. R5. F800.\nG80\nM30\n";

    fn report(request: &str) -> serde_json::Value {
        let checked = CheckRequest::read(request.as_bytes()).and_then(|request| request.check(PROGRAM));
        serde_json::to_value(checked.expect(request).report()).expect("a report")
    }

    #[test]
    fn a_check_is_told_by_name() {
        let told = report(
            r#"{"schema": 1, "dialect": "rs274ngc", "options": {"thread": "M6", "surface_z_mm": 0},
            "machine": {"highest_rpm": 400}, "tools": [{"number": 2, "kind": "drill"}, {"number": 1, "kind": "tap"}]}"#,
        );
        assert_eq!(told["tapped_holes"][0]["lead_mm"], "1.6");
        assert_eq!(told["tapped_holes"][0]["source"], "given");
        let findings: Vec<_> =
            told["findings"].as_array().expect("findings").iter().map(|found| &found["id"]).collect();
        assert!(
            findings.contains(&&"lead-mismatch".into()) && findings.contains(&&"speed-limit".into()),
            "{findings:?}"
        );
        let by_tool =
            report(r#"{"schema": 1, "dialect": {"tap_rh": "G84"}, "tools": [{"number": 1, "thread": "M10x1.5"}]}"#);
        assert_eq!(by_tool["tapped_holes"][0]["thread"], "M10x1.5");
    }

    #[test]
    fn what_is_wrong_in_a_request_is_told_with_its_key() {
        for (request, key, code) in [
            (r#"{"schema": 1}"#, None, Code::Missing),
            (r#"{"dialect": "rs274ngc"}"#, None, Code::Missing),
            (r#"{"schema": 2, "dialect": "rs274ngc"}"#, Some("schema"), Code::UnknownValue),
            (r#"{"schema": 1, "dialect": "other"}"#, Some("dialect"), Code::UnknownValue),
            (r#"{"schema": 1, "program": ""}"#, Some("program"), Code::UnknownKey),
            (r#"{"schema": 1, "options": 7}"#, Some("options"), Code::UnknownValue),
            (r#"{"schema": 1, "options": {"thraed": "M6"}}"#, Some("options.thraed"), Code::UnknownKey),
            (r#"{"schema": 1, "options": {"block_delete": 1}}"#, Some("options.block_delete"), Code::UnknownValue),
            (r#"{"schema": 1, "machine": {"rpm": 1}}"#, Some("machine.rpm"), Code::UnknownKey),
            (r#"{"schema": 1, "tools": [{"number": 1.5}]}"#, Some("tools.number"), Code::OutOfRange),
            (r#"{"schema": 1, "tools": [{"number": 1, "number": 2}]}"#, Some("tools.number"), Code::BadJson),
            (r#"{"schema": 1, "tools": [7]}"#, None, Code::BadJson),
            (r#"{"schema": 1, "tools": {"number": 1}}"#, Some("tools"), Code::UnknownValue),
        ] {
            let fault = CheckRequest::read(request.as_bytes()).and_then(|request| request.check(PROGRAM)).err();
            let fault = fault.expect(request);
            assert_eq!((fault.key.as_deref(), fault.error.code()), (key, code), "{request}");
        }
        let many = format!(r#"{{"schema": 1, "dialect": "unset", "tools": [{}{{}}]}}"#, "{}, ".repeat(64));
        let fault = CheckRequest::read(many.as_bytes()).and_then(|request| request.check(PROGRAM)).err();
        assert_eq!(fault.expect("65 tools").error.code(), Code::TooLong);
    }
}
