//! The forms of thread: what each is called and how it is shaped.

use crate::named::named;
use crate::thread::Side;

named! {
    /// The profile of a thread.
    pub enum Form {
        /// ISO 68-1 metric thread, M.
        Metric = 1 "metric",
        /// ASME B1.1 Unified inch thread, UN.
        Unified = 2 "unified",
        /// ASME B1.20.1 taper pipe thread, general use.
        Npt = 3 "npt",
        /// ASME B1.20.3 taper pipe thread, dryseal.
        Nptf = 4 "nptf",
        /// ASME B1.20.1 straight pipe thread in couplings.
        Npsc = 5 "npsc",
        /// ASME B1.20.1 straight pipe thread for free-fitting mechanical joints.
        Npsm = 6 "npsm",
        /// ASME B1.20.3 straight internal pipe thread, dryseal.
        Npsf = 7 "npsf",
        /// ISO 228-1 parallel pipe thread; the joint does not seal on the thread.
        G = 8 "g",
        /// ISO 7-1 taper external pipe thread.
        R = 9 "r",
        /// ISO 7-1 parallel internal pipe thread.
        Rp = 10 "rp",
        /// ISO 7-1 taper internal pipe thread.
        Rc = 11 "rc",
    }
}

named! {
    /// An older or open name of a thread, which leaves something to assume.
    pub enum WrittenAs {
        /// British Standard Pipe, neither parallel nor taper said.
        Bsp = 1 "BSP",
        /// British Standard Pipe, parallel: G or Rp.
        Bspp = 2 "BSPP",
        /// British Standard Pipe, taper: R or Rc.
        Bspt = 3 "BSPT",
        /// Older mark of the parallel thread, G.
        Pf = 4 "PF",
        /// Older mark of the taper thread, R or Rc.
        Pt = 5 "PT",
        /// Older mark of the parallel internal jointing thread, Rp.
        Ps = 6 "PS",
        /// NPT or NPTF, not said which.
        NptOrNptf = 7 "NPT(F)",
        /// NC, NF or NEF: American National, which UNC, UNF and UNEF followed.
        AmericanNational = 8 "NC",
    }
}

impl WrittenAs {
    /// The form that is assumed.
    pub(crate) const fn form(self) -> Form {
        match self {
            Self::Bsp | Self::Bspp | Self::Pf => Form::G,
            Self::Bspt | Self::Pt => Form::Rc,
            Self::Ps => Form::Rp,
            Self::NptOrNptf => Form::Npt,
            Self::AmericanNational => Form::Unified,
        }
    }
}

impl Form {
    /// The name as the standards write it.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Metric => "M",
            Self::Unified => "UN",
            Self::Npt => "NPT",
            Self::Nptf => "NPTF",
            Self::Npsc => "NPSC",
            Self::Npsm => "NPSM",
            Self::Npsf => "NPSF",
            Self::G => "G",
            Self::R => "R",
            Self::Rp => "Rp",
            Self::Rc => "Rc",
        }
    }

    /// Whether the size names a pipe, not a diameter.
    #[must_use]
    pub const fn is_pipe(self) -> bool {
        !matches!(self, Self::Metric | Self::Unified)
    }

    /// Whether the thread is cut on a cone, 1:16 on the diameter.
    #[must_use]
    pub const fn is_taper(self) -> bool {
        matches!(self, Self::Npt | Self::Nptf | Self::R | Self::Rc)
    }

    /// Whether the flanks stand at 55°, the Whitworth form of ISO 228-1 and ISO 7-1.
    pub(crate) const fn is_whitworth(self) -> bool {
        matches!(self, Self::G | Self::R | Self::Rp | Self::Rc)
    }

    /// The side that the name alone says; a bare G is a tapped hole, an external one has a class.
    pub(crate) const fn side(self) -> Option<Side> {
        match self {
            Self::R => Some(Side::External),
            Self::G | Self::Rp | Self::Rc | Self::Npsc | Self::Npsf => Some(Side::Internal),
            Self::Metric | Self::Unified | Self::Npt | Self::Nptf | Self::Npsm => None,
        }
    }
}
