//! The plan as a machinist reads it.
use super::Plan;
pub(super) const NOT_CHECKED: [&str; 1] = ["x"];
use core::fmt;
impl fmt::Display for Plan {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("")
    }
}
