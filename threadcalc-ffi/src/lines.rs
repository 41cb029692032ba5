//! One line of JSON in, one line of JSON out, for hosts that can only start a process.

use serde::Deserialize;
use serde::de::IgnoredAny;
use serde_json::value::RawValue;
use threadcalc_core::nc::Report;
use threadcalc_core::{Code, Error, Field, Plan, plan};

use crate::json::{NOT_WRITTEN, read_job_beside};
use crate::nc_compare::Compared;
use crate::nc_json::{CheckRequest, Checked};
use crate::status::Fault;

/// The key that a request may carry to be told apart; the reply carries it back.
const ID: &str = "id";

/// The id of a request; whatever else the line holds is not looked at.
#[derive(Deserialize)]
struct Request<'a> {
    id: Option<serde_json::Value>,
    #[serde(borrow)]
    check: Option<&'a RawValue>,
    #[serde(borrow)]
    compare: Option<&'a RawValue>,
}

/// A request for a check or a comparison: nothing else stands beside it.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct CheckOnly {
    #[serde(rename = "id")]
    _id: Option<IgnoredAny>,
    check: Option<IgnoredAny>,
    compare: Option<IgnoredAny>,
}

#[derive(serde::Serialize)]
struct Reply<'a, C> {
    #[serde(skip_serializing_if = "Option::is_none")]
    id: Option<&'a serde_json::Value>,
    ok: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    plan: Option<&'a Plan>,
    #[serde(skip_serializing_if = "Option::is_none")]
    report: Option<Report<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    comparison: Option<C>,
    #[serde(skip_serializing_if = "Option::is_none")]
    error: Option<Failure>,
}

#[derive(serde::Serialize)]
struct Failure {
    code: i32,
    name: &'static str,
    field: &'static str,
    at: Option<u32>,
    message: String,
}

impl From<Fault> for Failure {
    fn from(fault: Fault) -> Self {
        Self {
            code: fault.error.code().number(),
            name: fault.error.code().name(),
            field: fault.error.field().name(),
            at: fault.error.at(),
            message: fault.to_string(),
        }
    }
}

/// The reply to one line: `{"ok":true,"plan":{...}}`, `{"ok":true,"report":{...}}`, `{"ok":true,"comparison":{...}}` or
/// `{"ok":false,"error":{...}}`, without a line feed. A line is a job, a check with its program, or a comparison with
/// the old and the new one.
///
/// ```
/// let reply = threadcalc::answer_line(br#"{"id": 7, "schema": 1, "thread": "M8"}"#);
/// assert!(reply.starts_with(r#"{"id":7,"ok":false,"error":{"code":12,"name":"missing","field":"unit""#));
/// let program = r"G17 G21 G90 G94\nT1 M6 (TAP M6)\nG43 H1 Z5. S500 M3\nG98 G84 X0 Y0 Z-12. R5. F800.\nG80\nM30\n";
/// let check = format!(r#"{{"check": {{"schema": 1, "dialect": "rs274ngc", "program": "{program}"}}}}"#);
/// let reply = threadcalc::answer_line(check.as_bytes());
/// assert!(reply.starts_with(r#"{"ok":true,"report":{"schema":1,"tapped_holes":[{"line":4,"number":1,"lead_mm":"1.6""#));
/// let mended = program.replace("F800.", "F500.");
/// let both = format!(r#"{{"compare": {{"schema": 1, "dialect": "rs274ngc", "old": "{program}", "new": "{mended}"}}}}"#);
/// let reply = threadcalc::answer_line(both.as_bytes());
/// assert!(reply.starts_with(r#"{"ok":true,"comparison":{"schema":1,"counts":{"before":1,"after":1,"changed":1,"#));
/// assert!(reply.contains(r#""text":"hole 1, line 4: lead 1.6 -> 1 mm""#));
/// ```
#[must_use]
pub fn answer_line(line: &[u8]) -> String {
    let request = serde_json::from_slice::<Request<'_>>(line).ok();
    let (check, compare) = request.as_ref().map_or((None, None), |request| (request.check, request.compare));
    // An id is a text or a number: a long structure of the caller's own is not carried about.
    let id = request.and_then(|request| request.id).filter(|id| id.is_string() || id.is_number());
    let id = id.as_ref();
    let answered = match (check, compare) {
        (Some(check), _) => {
            checked(line, check).and_then(|checked| write(&Reply { report: Some(checked.report()), ..good(id) }))
        }
        (None, Some(compare)) => compared(line, compare).and_then(|mut compared| {
            let comparison = compared.report()?;
            write(&Reply { id, ok: true, plan: None, report: None, comparison: Some(comparison), error: None })
        }),
        (None, None) => read_job_beside(line, Some(ID))
            .and_then(|job| Ok(plan(&job)?))
            .and_then(|plan| write(&Reply { plan: Some(&plan), ..good(id) })),
    };
    let text = answered.or_else(|fault| write(&Reply { ok: false, error: Some(fault.into()), ..good(id) }));
    text.unwrap_or_else(|_| String::from(r#"{"ok":false}"#))
}

const fn good(id: Option<&serde_json::Value>) -> Reply<'_, ()> {
    Reply { id, ok: true, plan: None, report: None, comparison: None, error: None }
}

fn write<C: serde::Serialize>(reply: &Reply<'_, C>) -> Result<String, Fault> {
    Ok(serde_json::to_string(reply).map_err(|_| NOT_WRITTEN)?)
}

fn checked(line: &[u8], check: &RawValue) -> Result<Checked, Fault> {
    stands_alone(line)?;
    CheckRequest::read_with(check.get().as_bytes(), &["program"])?.check_own("program", "check.program")
}

fn compared(line: &[u8], compare: &RawValue) -> Result<Compared, Fault> {
    stands_alone(line)?;
    let request = CheckRequest::read_with(compare.get().as_bytes(), &["old", "new"])?;
    Ok(Compared::new(request.check_own("old", "compare.old")?, request.check_own("new", "compare.new")?))
}

fn stands_alone(line: &[u8]) -> Result<(), Fault> {
    let read = serde_json::from_slice::<CheckOnly>(line);
    if read.is_ok_and(|read| read.check.is_some() != read.compare.is_some()) {
        return Ok(());
    }
    let wrong = Error::new(Code::BadJson, Field::Key);
    Err(wrong.hint_text("beside a check or a comparison stands its id and nothing else").into())
}

#[cfg(test)]
mod tests {
    use super::answer_line;

    #[test]
    fn what_a_comparison_lacks_is_told_with_its_key() {
        for (line, told) in [
            (r#"{"compare": {"schema": 1, "dialect": "unset", "new": ""}}"#, "compare.old"),
            (r#"{"id": 3, "compare": {"schema": 1, "dialect": "unset", "old": ""}}"#, "compare.new"),
            (r#"{"compare": {"schema": 1, "old": "", "new": ""}}"#, "dialect"),
            (r#"{"compare": {"schema": 1, "dialect": "unset", "old": 7, "new": ""}}"#, "old"),
            (r#"{"compare": {"schema": 1, "dialect": "unset", "program": ""}}"#, "program"),
            (r#"{"compare": {}, "check": {}}"#, "nothing else"),
            (r#"{"compare": {}, "more": 1}"#, "nothing else"),
        ] {
            let reply = answer_line(line.as_bytes());
            assert!(reply.contains(r#""ok":false,"error":{"#) && reply.contains(told), "{line}: {reply}");
        }
        let same = answer_line(br#"{"id": "a", "compare": {"schema": 1, "dialect": "unset", "old": "", "new": ""}}"#);
        assert!(same.starts_with(r#"{"id":"a","ok":true,"comparison":{"schema":1,"counts":{"before":0,"#), "{same}");
    }
}
