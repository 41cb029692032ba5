//! One line of JSON in, one line of JSON out, for hosts that can only start a process.

use serde::Deserialize;
use serde_json::value::RawValue;
use threadcalc_core::nc::Report;
use threadcalc_core::{Code, Error, Field, Plan, plan};

use crate::json::read_job_beside;
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
}

/// A request for a check: nothing else stands beside it.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct CheckOnly<'a> {
    #[serde(rename = "id")]
    _id: Option<serde::de::IgnoredAny>,
    #[serde(borrow, rename = "check")]
    _check: &'a RawValue,
}

#[derive(serde::Serialize)]
struct Reply<'a> {
    #[serde(skip_serializing_if = "Option::is_none")]
    id: Option<&'a serde_json::Value>,
    ok: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    plan: Option<&'a Plan>,
    #[serde(skip_serializing_if = "Option::is_none")]
    report: Option<Report<'a>>,
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

/// The reply to one line: `{"ok":true,"plan":{...}}`, `{"ok":true,"report":{...}}` or `{"ok":false,"error":{...}}`,
/// without a line feed. A line is a job, or a check with its program.
///
/// ```
/// let reply = threadcalc::answer_line(br#"{"id": 7, "schema": 1, "thread": "M8"}"#);
/// assert!(reply.starts_with(r#"{"id":7,"ok":false,"error":{"code":12,"name":"missing","field":"unit""#));
/// let program = r"G17 G21 G90 G94\nT1 M6 (TAP M6)\nG43 H1 Z5. S500 M3\nG98 G84 X0 Y0 Z-12. R5. F800.\nG80\nM30\n";
/// let check = format!(r#"{{"check": {{"schema": 1, "dialect": "rs274ngc", "program": "{program}"}}}}"#);
/// let reply = threadcalc::answer_line(check.as_bytes());
/// assert!(reply.starts_with(r#"{"ok":true,"report":{"schema":1,"tapped_holes":[{"line":4,"number":1,"lead_mm":"1.6""#));
/// ```
#[must_use]
pub fn answer_line(line: &[u8]) -> String {
    let request = serde_json::from_slice::<Request<'_>>(line).ok();
    let check = request.as_ref().and_then(|request| request.check);
    // An id is a text or a number: a long structure of the caller's own is not carried about.
    let id = request.and_then(|request| request.id).filter(|id| id.is_string() || id.is_number());
    let id = id.as_ref();
    let reply = |ok| Reply { id, ok, plan: None, report: None, error: None };
    let failed = |fault: Fault| Reply { error: Some(fault.into()), ..reply(false) };
    let text = match check {
        Some(check) => match checked(line, check) {
            Ok(checked) => serde_json::to_string(&Reply { report: Some(checked.report()), ..reply(true) }),
            Err(fault) => serde_json::to_string(&failed(fault)),
        },
        None => match read_job_beside(line, Some(ID)).and_then(|job| Ok(plan(&job)?)) {
            Ok(plan) => serde_json::to_string(&Reply { plan: Some(&plan), ..reply(true) }),
            Err(fault) => serde_json::to_string(&failed(fault)),
        },
    };
    text.unwrap_or_else(|_| String::from(r#"{"ok":false}"#))
}

fn checked(line: &[u8], check: &RawValue) -> Result<Checked, Fault> {
    serde_json::from_slice::<CheckOnly<'_>>(line).map_err(|_| {
        Error::new(Code::BadJson, Field::Key).hint_text("beside a check stands its id and nothing else")
    })?;
    CheckRequest::read_with_program(check.get().as_bytes())?.check_own()
}
