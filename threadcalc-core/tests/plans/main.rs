//! Whole plans: what they hold, and their page.

mod made;
mod page;

#[path = "../support/plans.rs"]
mod plans;
