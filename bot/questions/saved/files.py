"""What is kept as a file, and a file taken back. Words: ``words/<language>/file.ftl``."""

from dataclasses import dataclass
from enum import Enum, auto
from typing import TypeVar

from pydantic import ValidationError
from pydantic_core import ErrorDetails

from bot.facts import Say
from bot.language.shown import shown
from bot.layered import Brief, Layered
from bot.refusal import RefusedError
from bot.reply import Document
from bot.saved.values import Kept

__all__ = [
    "MOST_IMPORT",
    "Fault",
    "FileRefused",
    "document_of",
    "read_file",
    "tell_refused",
]

MOST_IMPORT = 2_000_000
"""More characters than all that one person or group may keep makes as a file."""

_Kept = TypeVar("_Kept", bound=Kept)


class Fault(Enum):
    """What is wrong with a file, or with a part of it."""

    HUGE = auto()
    NO_JSON = auto()
    MISSING = auto()
    UNKNOWN = auto()
    NO_WORD = auto()
    OTHER = auto()


_FAULTS = {
    "json_invalid": Fault.NO_JSON,
    "missing": Fault.MISSING,
    "extra_forbidden": Fault.UNKNOWN,
    "enum": Fault.NO_WORD,
    "literal_error": Fault.NO_WORD,
}


@dataclass(frozen=True, slots=True)
class FileRefused:
    """The first thing that is wrong, and where; ``detail`` is told in English alone."""

    command: str
    fault: Fault
    where: str | None
    detail: str
    example: str


def document_of(name: str, value: Kept) -> Document:
    """Return what is kept as a file."""
    # Lines are short, so that a terminal breaks none.
    text = value.model_dump_json(indent=1, exclude_none=True)
    return Document(name=name, text=f"{text}\n")


def read_file(kind: type[_Kept], text: str, command: str) -> _Kept:
    """Return the checked value of a file, or refuse it with the first thing that is wrong."""
    if len(text) > MOST_IMPORT:
        raise _refused(command, Fault.HUGE)
    try:
        return kind.model_validate_json(text)
    except ValidationError as error:
        first = error.errors()[0]
        where = " → ".join(shown(str(part)) for part in first["loc"])
        fault = _FAULTS.get(first["type"], Fault.OTHER)
        raise _refused(command, fault, where or None, _plain(first)) from error


def _plain(error: ErrorDetails) -> str:
    # Of our own checks: what they said themselves.
    ours = error["type"] == "value_error"
    told = str(error["ctx"]["error"]) if ours else error["msg"]
    return "".join(character for character in told if character not in "<>`|*_~@")


def _refused(
    command: str, fault: Fault, where: str | None = None, detail: str = ""
) -> RefusedError:
    facts = FileRefused(command, fault, where, detail, f"{command} file:export.json")
    return RefusedError(facts, tell_refused, "file")


def tell_refused(facts: FileRefused) -> Layered:
    """Tell that the file is not taken back, and what is wrong with it."""
    step = Say("file-step", facts)
    return Layered(
        command=facts.command,
        status="problem",
        title=Say("refused-title"),
        brief=Brief(
            head=Say("file-head"), range=(Say.by("file", facts.fault, facts),), steps=(step,)
        ),
        steps=(step,),
    )
