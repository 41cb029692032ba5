//! The comparison of two versions of a program through JSON.

use core::ffi::c_char;

use serde::Serialize;
use threadcalc_core::Error;
use threadcalc_core::nc::{ComparisonReport, compare, scratch_for};

use crate::codes::threadcalc_status;
use crate::json::as_json;
use crate::memory::{bytes, bytes_out};
use crate::nc_json::{CheckRequest, Checked};
use crate::status::{guard, threadcalc_error_t};

/// The checks of two versions, and the room that their comparison takes.
pub(crate) struct Compared {
    old: Checked,
    new: Checked,
    scratch: Vec<u32>,
}

impl Compared {
    pub(crate) fn new(old: Checked, new: Checked) -> Self {
        let scratch = vec![0; scratch_for(old.holes().len(), new.holes().len())];
        Self { old, new, scratch }
    }

    pub(crate) fn report(&mut self) -> Result<impl Serialize + '_, Error> {
        let comparison = compare(self.old.holes(), self.new.holes(), &mut self.scratch)?;
        let (before_not_checked, after_not_checked) = (self.old.not_checked(), self.new.not_checked());
        Ok(ComparisonReport { comparison, before_not_checked, after_not_checked })
    }
}

/// Compares two versions of a program: the JSON text of what is known in, the JSON text of what has become of the
/// tapped holes out. UTF-8; needed counts the NUL.
///
/// The programs are bytes, of any encoding. The request is that of threadcalc_check_json and holds for both. A hole is
/// found again by work offset, X and Y, then by order and thread. The answer is that of schema/comparison.schema.json:
/// each change with the hole before and after and a line of text, and what was known on neither side. It says nothing
/// of whether either version is right. Memory is taken from the heap while the call runs.
/// Errors: those of threadcalc_check_json.
/// Source: as threadcalc_check_json.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn threadcalc_compare_json(
    old_program: *const u8,
    old_length: usize,
    new_program: *const u8,
    new_length: usize,
    request: *const u8,
    request_length: usize,
    text: *mut c_char,
    capacity: usize,
    needed: *mut usize,
    error: *mut threadcalc_error_t,
) -> threadcalc_status {
    guard(error, || {
        let (old, new) = (unsafe { bytes(old_program, old_length) }?, unsafe { bytes(new_program, new_length) }?);
        let request = CheckRequest::read(unsafe { bytes(request, request_length) }?)?;
        let mut compared = Compared::new(request.check(old)?, request.check(new)?);
        let json = as_json(&compared.report()?)?;
        unsafe { bytes_out(&json, text, capacity, needed) }?;
        Ok(())
    })
}
