//! What a check may be told beside the program.

use crate::length::Length;
use crate::motion::Holder;
use crate::named::named;
use crate::plan::Machine;
use crate::thread::Thread;

named! {
    /// What a tool is.
    pub enum ToolKind {
        /// A tap that cuts.
        CutTap = 1 "cut_tap",
        /// A tap that forms.
        FormTap = 2 "form_tap",
        /// A tap; cut or form is not known.
        Tap = 3 "tap",
        /// A drill.
        Drill = 4 "drill",
        /// A spot or centre drill.
        SpotDrill = 5 "spot_drill",
        /// Any other tool.
        Other = 6 "other",
    }
}

impl ToolKind {
    /// Whether it is a tap of either kind.
    #[must_use]
    pub const fn is_tap(self) -> bool {
        matches!(self, Self::CutTap | Self::FormTap | Self::Tap)
    }
}

/// A tool of the shop's list.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[non_exhaustive]
pub struct Tool {
    /// Its number in the program, T.
    pub number: u32,
    /// What it is; None: not known.
    pub kind: Option<ToolKind>,
    /// The thread that it taps.
    pub thread: Option<Thread>,
    /// Its diameter in mm.
    pub diameter_mm: Option<Length>,
    /// A drill's point angle in degrees.
    pub point_angle_deg: Option<Length>,
    /// Threads of a tap's chamfer.
    pub chamfer_threads: Option<Length>,
    /// How it is held.
    pub holder: Option<Holder>,
}

impl Tool {
    pub(super) const BLANK: Self = Self {
        number: 0,
        kind: None,
        thread: None,
        diameter_mm: None,
        point_angle_deg: None,
        chamfer_threads: None,
        holder: None,
    };
}

/// What a check is told: the facts of this run, beside those of the control.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[non_exhaustive]
pub struct CheckOptions {
    /// The face of the part in the program's Z, in mm; 0 if not given.
    pub surface_z_mm: Option<Length>,
    /// Whether the switch for block delete is on: blocks that begin with `/` are left out.
    pub block_delete: bool,
    /// Whether formulas and variables are not computed; they are if nothing is said.
    pub leave_macros: bool,
    /// The thread of every tapped hole, before what the program's comments say.
    pub thread: Option<Thread>,
    /// Full thread that the drawing wants, in mm.
    pub full_thread_depth_mm: Option<Length>,
    /// How taps are held, where the tool list does not say; rigid if not given.
    pub holder: Option<Holder>,
    /// Under-feed that is wanted, in percent of the lead.
    pub underfeed_percent: Option<Length>,
    /// Specific cutting force in N/mm2 for kc P² D / 8000; without it the torque is not checked.
    pub cutting_force_n_mm2: Option<Length>,
    /// The machine's limits.
    pub machine: Machine,
}
