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
        /// ISO 5855-1 metric thread with a larger root, MJ.
        MetricJ = 12 "metric-j",
        /// ISO 1501 miniature thread, S.
        Miniature = 13 "miniature",
        /// ASME B1.1 external thread with a rounded root, UNR.
        UnifiedR = 14 "unified-r",
        /// ASME B1.15 inch thread with a larger root, UNJ.
        UnifiedJ = 15 "unified-j",
        /// BS 84 inch thread of 55°: BSW, BSF.
        Whitworth = 16 "whitworth",
        /// BS 93 small metric thread of 47.5°, BA.
        Ba = 17 "ba",
        /// ISO 2904 metric trapezoidal thread of 30°, Tr.
        Trapezoidal = 18 "trapezoidal",
        /// ASME B1.5 inch trapezoidal thread of 29°.
        Acme = 19 "acme",
        /// ASME B1.8 inch trapezoidal thread of 29° and less depth.
        StubAcme = 20 "stub-acme",
        /// ASME B1.9 thread of 7° and 45°, which carries pressing away from its leading end.
        Buttress = 21 "buttress",
        /// ASME B1.9 thread the other way round, which carries pulling.
        PullButtress = 22 "pull-buttress",
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
            Self::MetricJ => "MJ",
            Self::Miniature => "S",
            Self::UnifiedR => "UNR",
            Self::UnifiedJ => "UNJ",
            Self::Whitworth => "Whit.",
            Self::Ba => "BA",
            Self::Trapezoidal => "Tr",
            Self::Acme => "ACME",
            Self::StubAcme => "STUB ACME",
            Self::Buttress => "BUTT",
            Self::PullButtress => "PULL-BUTT",
        }
    }

    /// The standard that lists the sizes and pitches.
    #[must_use]
    pub const fn standard(self) -> &'static str {
        match self {
            Self::Metric => "ISO 261:1998",
            Self::Unified | Self::UnifiedR => "ASME B1.1-2003",
            Self::Npt | Self::Npsc | Self::Npsm => "ASME B1.20.1-1983",
            Self::Nptf | Self::Npsf => "ASME B1.20.3-1976",
            Self::G => "ISO 228-1:2000",
            Self::R | Self::Rp | Self::Rc => "ISO 7-1:1994",
            Self::MetricJ => "ISO 5855-1:1999",
            Self::Miniature => "ISO 1501:2009",
            Self::UnifiedJ => "ASME B1.15-1995",
            Self::Whitworth => "BS 84:2007",
            Self::Ba => "BS 93:2008",
            Self::Trapezoidal => "ISO 2904:2020",
            Self::Acme => "ASME B1.5-1997",
            Self::StubAcme => "ASME B1.8-1988",
            Self::Buttress | Self::PullButtress => "ASME B1.9-1973",
        }
    }

    /// Whether the size names a pipe, not a diameter.
    #[must_use]
    pub const fn is_pipe(self) -> bool {
        self.is_inch_pipe() || self.is_whitworth_pipe()
    }

    /// Whether the thread is one of ASME B1.20.
    pub(crate) const fn is_inch_pipe(self) -> bool {
        matches!(self, Self::Npt | Self::Nptf | Self::Npsc | Self::Npsm | Self::Npsf)
    }

    /// Whether the pitch is counted in threads per inch.
    #[must_use]
    pub const fn is_inch(self) -> bool {
        !matches!(self, Self::Metric | Self::MetricJ | Self::Miniature | Self::Trapezoidal | Self::Ba)
    }

    /// Whether the thread is one of the Unified diameters and pitches: UN, UNR, UNJ.
    pub(crate) const fn is_unified(self) -> bool {
        matches!(self, Self::Unified | Self::UnifiedR | Self::UnifiedJ)
    }

    /// Whether the thread moves a load, trapezoidal or buttress: of one start or several with the same pitch.
    pub(crate) const fn is_translating(self) -> bool {
        matches!(self, Self::Trapezoidal | Self::Acme | Self::StubAcme | Self::Buttress | Self::PullButtress)
    }

    /// Whether a designation may say how long the thread engages: `7H-L`.
    pub(crate) const fn has_engagement_groups(self) -> bool {
        self.is_metric() || matches!(self, Self::Trapezoidal)
    }

    /// Whether the form has the diameters and pitches of another one, which stands for it where only these count.
    pub(crate) const fn repeats_sizes(self) -> bool {
        matches!(self, Self::MetricJ | Self::UnifiedR | Self::UnifiedJ | Self::StubAcme | Self::PullButtress)
    }

    /// Whether only the sizes of the standard can be written, each with its own pitch and one start.
    pub(crate) const fn has_fixed_sizes(self) -> bool {
        self.is_pipe() || matches!(self, Self::Miniature | Self::Ba)
    }

    /// Whether flanks of 60° make it a fastening thread: M, MJ, S, UN, UNR, UNJ.
    pub(crate) const fn is_sixty(self) -> bool {
        self.is_metric() || self.is_unified() || matches!(self, Self::Miniature)
    }

    /// Whether the thread is one of the metric diameters and pitches of 60°: M, MJ.
    pub(crate) const fn is_metric(self) -> bool {
        matches!(self, Self::Metric | Self::MetricJ)
    }

    /// Whether the thread is cut on a cone, 1:16 on the diameter.
    #[must_use]
    pub const fn is_taper(self) -> bool {
        matches!(self, Self::Npt | Self::Nptf | Self::R | Self::Rc)
    }

    /// Whether the thread is one of ISO 228-1 or ISO 7-1, of the Whitworth form of 55°.
    pub(crate) const fn is_whitworth_pipe(self) -> bool {
        matches!(self, Self::G | Self::R | Self::Rp | Self::Rc)
    }

    /// Whether the standard sets the smallest minor diameter of the hole alone: a largest one that is not given has
    /// then not been left unread.
    pub(crate) const fn has_no_largest_minor(self) -> bool {
        matches!(self, Self::Npsc)
    }

    /// The side that the name alone says; a bare G is a tapped hole, an external one has a class.
    pub(crate) const fn side(self) -> Option<Side> {
        match self {
            Self::R | Self::UnifiedR => Some(Side::External),
            Self::G | Self::Rp | Self::Rc | Self::Npsc | Self::Npsf => Some(Side::Internal),
            _ => None,
        }
    }
}
