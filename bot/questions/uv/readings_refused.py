"""Readings that cannot be, where an answer would rest on them alone: they are refused, with why.

Words: ``reading.ftl``.
"""

from dataclasses import dataclass

from bot.facts import Say
from bot.layered import Layered
from bot.questions.uv.readings import LampRead, off_brief, off_told, read_again
from bot.refusal import RefusedError

__all__ = ["check_believed"]


@dataclass(frozen=True, slots=True)
class ReadingsOff:
    """Readings that cannot be, the question they were told to, and some that are understood."""

    read: LampRead
    command: str
    example: str = "readings:4.2 at 12in"


def check_believed(read: LampRead, command: str) -> None:
    """Refuse what rests on readings that no lamp gives."""
    if read.cannot_be:
        raise RefusedError(ReadingsOff(read, command), _tell, "readings")


def _tell(facts: ReadingsOff) -> Layered:
    return Layered(
        command=facts.command,
        status="problem",
        title=Say("reading-title"),
        brief=off_brief(facts.read),
        steps=tuple(read_again(facts.read)),
        why=tuple(off_told(facts.read.off)),
        guide=("reading-a-uv-meter",),
    )
