"""The exceptions of threadcalc."""

from __future__ import annotations

__all__ = ["DesignationError", "ThreadcalcError"]


class ThreadcalcError(ValueError):
    """No result can exist: unreadable, contradictory, missing or out of arithmetic.

    Attributes:
        code: Stable number, the same in Rust and C.
        name: Stable name of the code, such as ``"series-mismatch"``.
        at: Byte offset in the text that was read (UTF-8), None where no text was.
        hint: What would be right; may be empty.
        field: The value that the error speaks of, such as ``"rpm"``.
    """

    def __init__(self, message: str, code: int, name: str, at: int | None, hint: str, field: str) -> None:
        super().__init__(message)
        self.code = code
        self.name = name
        self.at = at
        self.hint = hint
        self.field = field

    def __reduce__(self) -> tuple[type[ThreadcalcError], tuple[str, int, str, int | None, str, str]]:
        return type(self), (str(self), self.code, self.name, self.at, self.hint, self.field)


class DesignationError(ThreadcalcError):
    """A thread designation, a fit, a hole note or the mark of a tap cannot be read."""
