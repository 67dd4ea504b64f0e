"""Why a question about saved data is not answered, and what works. Words: ``saved.ftl``."""

from dataclasses import dataclass

from bot.desk import Desk
from bot.facts import Say
from bot.layered import Brief, Layered
from bot.refusal import RefusedError
from bot.reply import Alarm

__all__ = ["Unable", "server_of", "tell_unable", "unable"]


@dataclass(frozen=True, slots=True)
class Unable:
    """What is wrong, what more there is to say, and a question that works."""

    command: str
    why: tuple[Say, ...]
    example: str
    alarms: tuple[Alarm, ...] = ()


def unable(command: str, *why: Say, example: str, option: str = "") -> RefusedError:
    """Return the refusal of a question; ``option`` is what the example is for."""
    return RefusedError(Unable(command, why, example), tell_unable, option)


def tell_unable(facts: Unable) -> Layered:
    """Tell why there is no answer, and what works."""
    step = Say("saved-step", facts)
    head, *more = facts.why
    return Layered(
        command=facts.command,
        status="problem",
        title=Say("refused-title"),
        brief=Brief(head=head, range=tuple(more), steps=(step,)),
        steps=(step,),
        alarms=facts.alarms,
    )


def server_of(desk: Desk, command: str) -> int:
    """Return the number of the server, or refuse where there is none."""
    if desk.server is None:
        raise unable(command, Say("saved-no-server"), example=command)
    return desk.server
