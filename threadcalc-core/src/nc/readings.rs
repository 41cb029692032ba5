//! The readings that a finding can hold under, where it does not hold under every one: each fits behind an "if".

pub(super) const FEED_BY_MODE: &str = "F follows the feed mode in a tapping cycle";
pub(super) const FEED_IS_LEAD: &str = "F is always the lead in a tapping cycle";
pub(super) const UNITS_CONVERT_FEED: &str = "a change of units converts F";
pub(super) const UNITS_KEEP_FEED: &str = "a change of units keeps the number of F";
pub(super) const STANDARD_PITCH_MEANT: &str = "a standard pitch is meant";
pub(super) const CHAMFER_OF_THREE: &str = "the chamfer has three threads";
pub(super) const RIGID_ENDS_WITH_CYCLE: &str = "the code for rigid tapping ends with its cycle";
pub(super) const STARTS_IN_INCHES: &str = "the control starts in inches";
pub(super) const STARTS_IN_MM: &str = "the control starts in mm";
pub(super) const STARTS_PER_MINUTE: &str = "the control starts per minute";
pub(super) const STARTS_PER_REVOLUTION: &str = "the control starts per revolution";
pub(super) const POINT_OF_118_DEGREES: &str = "the drill's point has 118 degrees";

/// All of them; the empty one stands for every reading.
#[cfg(feature = "serde")]
pub(super) const ALL: [&str; 13] = [
    "",
    FEED_BY_MODE,
    FEED_IS_LEAD,
    UNITS_CONVERT_FEED,
    UNITS_KEEP_FEED,
    STANDARD_PITCH_MEANT,
    CHAMFER_OF_THREE,
    RIGID_ENDS_WITH_CYCLE,
    STARTS_IN_INCHES,
    STARTS_IN_MM,
    STARTS_PER_MINUTE,
    STARTS_PER_REVOLUTION,
    POINT_OF_118_DEGREES,
];
