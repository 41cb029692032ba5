//! One line of JSON in, one line of JSON out, for hosts that can only start a process.

use serde::Deserialize;
use threadcalc_core::{Plan, plan};

use crate::json::read_job_beside;
use crate::status::Fault;

/// The key that a request may carry to be told apart; the reply carries it back.
const ID: &str = "id";

/// The id of a request; whatever else the line holds is not looked at.
#[derive(Deserialize)]
struct Request {
    id: Option<serde_json::Value>,
}

#[derive(serde::Serialize)]
struct Reply<'a> {
    #[serde(skip_serializing_if = "Option::is_none")]
    id: Option<serde_json::Value>,
    ok: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    plan: Option<&'a Plan>,
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

/// The reply to one line: `{"ok":true,"plan":{...}}` or `{"ok":false,"error":{...}}`, without a line feed.
///
/// ```
/// let reply = threadcalc::answer_line(br#"{"id": 7, "schema": 1, "thread": "M8"}"#);
/// assert!(reply.starts_with(r#"{"id":7,"ok":false,"error":{"code":12,"name":"missing","field":"unit""#));
/// ```
#[must_use]
pub fn answer_line(line: &[u8]) -> String {
    // An id is a text or a number: a long structure of the caller's own is not carried about.
    let id = serde_json::from_slice::<Request>(line).ok().and_then(|request| request.id);
    let id = id.filter(|id| id.is_string() || id.is_number());
    let planned = read_job_beside(line, Some(ID)).and_then(|job| Ok(plan(&job)?));
    let text = match planned {
        Ok(plan) => serde_json::to_string(&Reply { id, ok: true, plan: Some(&plan), error: None }),
        Err(fault) => serde_json::to_string(&Reply { id, ok: false, plan: None, error: Some(fault.into()) }),
    };
    text.unwrap_or_else(|_| String::from(r#"{"ok":false}"#))
}
