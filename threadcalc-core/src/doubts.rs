//! What is doubtful about a thread as it was read.

use core::fmt::Write;

use crate::finding::{Finding, FindingId, Findings};
use crate::form::{Form, WrittenAs};
use crate::series;
use crate::text::{Text, placed};
use crate::thread::Thread;

impl Thread {
    /// What is doubtful about the thread as read: a special with its near standard threads, an older
    /// name that leaves something to assume, and for a pipe thread the families it is taken for.
    ///
    /// ```
    /// use threadcalc_core::Thread;
    ///
    /// let findings = Thread::read(b"1/4-18")?.findings();
    /// let near = findings.iter().next().map(|f| f.suggestion().contains("1/4-18 NPT"));
    /// assert_eq!(near, Some(true));
    /// # Ok::<(), threadcalc_core::Error>(())
    /// ```
    #[must_use]
    pub fn findings(&self) -> Findings<2> {
        let mut findings = Findings::new();
        self.tell_doubts(&mut findings);
        findings
    }

    /// Adds the same to other findings.
    #[inline(never)]
    pub(crate) fn tell_doubts<const N: usize>(&self, findings: &mut Findings<N>) {
        if let Some(written_as) = self.written_as() {
            findings.write(FindingId::FamilyAssumed, "thread", |finding| finding.suggest(assumed(written_as)));
        }
        if self.form().is_pipe() {
            findings.write(FindingId::PipeFamily, "thread", |finding| suggest_families(finding, self));
        } else if !self.is_listed() {
            findings.write(FindingId::NotStandard, "thread", |finding| suggest_near(finding, self));
        }
    }
}

#[inline(never)]
fn suggest_near(finding: &mut Finding, thread: &Thread) {
    let mut found = series::NearThreads::default();
    series::add_near(&mut found, thread);
    tell_near(finding, &found);
}

#[inline(never)]
fn tell_near(finding: &mut Finding, found: &series::NearThreads) {
    for (place, (text, reason)) in placed(found.iter()) {
        finding.suggest(if place > 0 { ", " } else { "" });
        finding.suggest(text);
        finding.suggest(match reason {
            series::Near::SameFigures => " (pipe)",
            _ => "",
        });
    }
}

const fn assumed(written_as: WrittenAs) -> &'static str {
    match written_as {
        WrittenAs::Bsp => "BSP says neither parallel nor taper: read as G; Rc is taper, Rp seals on the thread",
        WrittenAs::Bspp => "BSPP is read as G; Rp if the joint seals on the thread",
        WrittenAs::Bspt => "BSPT is read as Rc, the tapped hole; R is the external thread",
        WrittenAs::Pf => "PF is read as G",
        WrittenAs::Pt => "PT is read as Rc, the tapped hole; R is the external thread",
        WrittenAs::Ps => "PS is read as Rp",
        WrittenAs::AmericanNational => "NC NF NEF are read as UNC UNF UNEF; their classes 1 to 3 are not 1B to 3B",
        WrittenAs::NptOrNptf => "NPT(F) is read as NPT; NPTF is dryseal and has its own tap and gauges",
    }
}

/// What the thread is not, with the threads per inch that tell the systems apart.
#[inline(never)]
fn suggest_families(finding: &mut Finding, thread: &Thread) {
    let mut said = Text::<96>::new();
    // What has no room is left out whole, the rest stands.
    let _fits = write_families(&mut said, thread);
    finding.suggest(said.as_str());
}

fn write_families(out: &mut Text<96>, thread: &Thread) -> core::fmt::Result {
    out.write_str(match thread.form() {
        Form::Npt => "not NPTF (dryseal)",
        Form::Nptf => "not NPT (seals with sealant only)",
        Form::Npsc => "straight, for couplings: not NPT (taper), NPSM or NPSF",
        Form::Npsm => "straight, free fit: not NPT (taper), NPSC or NPSF",
        Form::Npsf => "straight, dryseal: not NPTF (taper), NPSC or NPSM",
        Form::G => "parallel, seals on a face: not Rp (seals on thread), not Rc (taper)",
        Form::R => "taper, external: not G (parallel)",
        Form::Rp => "parallel, seals on the thread: not G (other limits), not Rc (taper)",
        Form::Rc => "taper: not G or Rp (parallel)",
        _ => return Ok(()),
    })?;
    let (Some(other), own) = (series::other_system(thread), thread.pitch_mm()) else { return Ok(()) };
    let (name, angle) = if thread.form().is_whitworth_pipe() { ("NPT", 60) } else { ("G/R", 55) };
    let same = if other.pitch == own { "also " } else { "" };
    let per_inch = crate::length::Length::INCH.over(other.pitch).map_err(|_| core::fmt::Error)?;
    let mut more = Text::<32>::new();
    write!(more, "; {name}: {same}{per_inch} TPI, {angle} deg")?;
    out.write_str(more.as_str())
}
