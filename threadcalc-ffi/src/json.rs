//! The JSON door: the text of a job in, the text of its plan out.

mod keys;

use core::cell::RefCell;

use serde::Serialize;
use serde::de::DeserializeSeed;
use threadcalc_core::{Code, Error, Field, Job, Plan, Value};

use self::keys::{Keys, Reading};
use crate::memory::Sink;
use crate::status::Fault;

/// The longest job that is looked at, in bytes.
const LONGEST_JOB: usize = 65_536;

/// Room for the usual answer, in bytes.
const USUAL_ANSWER: usize = 8_192;

/// All that can fail where an answer is written: an exact number of it does not fit.
pub(crate) const NOT_WRITTEN: Error = Error::new(Code::Overflow, Field::Feed);

/// Reads a job. Every key goes through [`Job::set`], the one place where keys are understood.
pub(crate) fn read_job(text: &[u8]) -> Result<Job, Fault> {
    read_job_beside(text, None)
}

/// Reads a job; the key `beside`, if there is one, belongs to the caller and is passed over.
pub(crate) fn read_job_beside(text: &[u8], beside: Option<&str>) -> Result<Job, Fault> {
    let mut job = Job::default();
    if text.len() > LONGEST_JOB {
        return Err(Error::new(Code::TooLong, Field::Job).at_byte(LONGEST_JOB).hint_text("at most 65536 bytes").into());
    }
    read_into(&mut job, text, beside)?;
    Ok(job)
}

/// What is filled in from an object of keys.
pub(crate) trait Filled {
    /// Sets what a key names.
    fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error>;

    /// Whether there are keys below this one.
    fn is_group(&self, key: &str) -> bool;

    /// Whether a list of objects stands behind this key.
    fn is_list_of_objects(&self, _key: &str) -> bool {
        false
    }

    /// Begins the next object of such a list.
    fn begin_object(&mut self, _key: &str) {}
}

impl Filled for Job {
    fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), Error> {
        Job::set(self, key, value)
    }

    fn is_group(&self, key: &str) -> bool {
        Job::is_group(key)
    }
}

/// Reads an object of keys, each of them once, and `schema` among them.
pub(crate) fn read_into(filled: &mut dyn Filled, text: &[u8], beside: Option<&str>) -> Result<(), Fault> {
    let reading = RefCell::new(Reading { filled, seen: Vec::new(), fault: None });
    let mut json = serde_json::Deserializer::from_slice(text);
    let read = Keys { reading: &reading, prefix: "", beside }.deserialize(&mut json).and_then(|()| json.end());
    let Reading { seen, fault, .. } = reading.into_inner();
    if let Some(fault) = fault {
        return Err(fault);
    }
    if let Err(error) = read {
        let fault = Error::new(Code::BadJson, Field::Job).at_byte(byte_of(text, &error));
        return Err(fault.hint_text("one JSON object of the keys of a job").into());
    }
    if !seen.iter().any(|key| key == "schema") {
        return Err(Error::new(Code::Missing, Field::Schema).hint_text("\"schema\": 1").into());
    }
    Ok(())
}

/// Writes a plan as JSON.
pub(crate) fn write_plan(plan: &Plan, sink: &mut Sink<'_>) -> Result<(), Error> {
    serde_json::to_writer(sink, plan).map_err(|_| NOT_WRITTEN)
}

/// An answer as JSON on the heap, where reading the request has been: written once, not measured first.
pub(crate) fn as_json(answer: &impl Serialize) -> Result<Vec<u8>, Error> {
    let mut text = Vec::with_capacity(USUAL_ANSWER);
    serde_json::to_writer(&mut text, answer).map_err(|_| NOT_WRITTEN)?;
    Ok(text)
}

/// The byte that an error of the JSON reader stands at: it counts lines and columns.
fn byte_of(text: &[u8], error: &serde_json::Error) -> usize {
    if error.is_eof() {
        return text.len();
    }
    let lines = text.split_inclusive(|byte| *byte == b'\n');
    let before: usize = lines.take(error.line().saturating_sub(1)).map(<[u8]>::len).sum();
    before.saturating_add(error.column().saturating_sub(1))
}

#[cfg(test)]
mod tests;
