"""An answer on a terminal, and what stands around it."""

from dataclasses import dataclass
from pathlib import Path

from bot.facts import Say
from bot.language.units import Units
from bot.reply import PartName, Reply
from bot.saying.voice import voice

__all__ = ["MORE", "MORE_FULL", "around", "kept_told", "show"]

MORE = Say("door-more-word")
MORE_FULL = Say("door-more-full")
"""What says that there is more, where the whole answer is an option of the command line."""


@dataclass(frozen=True, slots=True)
class KeptPicture:
    """Where a picture was kept."""

    file: str


def kept_told(kept: Path | None) -> Say:
    """Return where the picture of an answer was kept, or that there is none."""
    return Say("console-picture", KeptPicture(str(kept))) if kept else Say("console-no-picture")


def around(reply: Reply, say: Say) -> str:
    """Return a message that stands around an answer, in the asker's language."""
    return voice(reply.around, Units.CM).text(say)


def show(
    reply: Reply, part: PartName | None = None, more: Say = MORE, *, full: bool = False
) -> None:
    """Print a reply on a terminal: its brief, or the part that was asked for, or all of it."""
    from rich.console import Console

    from bot.render.terminal import render_terminal, render_terminal_brief, render_terminal_part

    if full:
        Console().print(render_terminal(reply))
    elif part:
        Console().print(render_terminal_part(reply, part))
    else:
        told = render_terminal_brief(reply, around(reply, more), sheet=more is MORE)
        Console().print(told)
