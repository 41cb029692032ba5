"""The ``threadcalc`` command: plans, checks and explanations from the command line.

Unit, feed mode and dialect have no default. What goes to the standard output is text for people, JSON or SARIF; what
goes wrong goes to the standard error, in one line.
"""

from __future__ import annotations

from importlib.metadata import version

import click

from threadcalc.command.audit import audit
from threadcalc.command.check import check
from threadcalc.command.compare import compare
from threadcalc.command.explain import explain
from threadcalc.command.identify import identify
from threadcalc.command.plan import plan
from threadcalc.command.refusal import OneLine

__all__ = ["main"]


@click.group(
    "threadcalc",
    cls=OneLine,
    context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 80},
    epilog="Exit status: 0 if nothing of severity error was found, 1 if something was, 2 if the command was used "
    "wrongly or something could not be read.",
)
@click.version_option(version("threadcalc"), prog_name="threadcalc", message="%(prog)s %(version)s")
def main() -> None:
    """Threads and tapped holes: plans a hole, checks programs, names pitches.

    The tap maker's data and the machine's manual come first. No findings does not mean safe: prove out every new or
    edited program.
    """


for _command in (plan, check, audit, compare, identify, explain):
    main.add_command(_command)
