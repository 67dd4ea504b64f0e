"""One reminder as facts, and what is said of it when it is due.

Words: ``words/<language>/remind.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Moment, Say
from bot.questions.saved.targets import moved_said
from bot.saved.reminders import ASKED_FOR, About, Reminder, State, Trouble

__all__ = ["PutOff", "Remembered", "due_said", "remembered"]


@dataclass(frozen=True, slots=True)
class Remembered:
    """A reminder: what about, when, where, how often, and what is wrong with it.

    ``late``: it comes later than it was due.
    """

    number: int
    about: About
    enclosure: str | None
    due: Moment
    every: int | None
    here: bool
    stopped: bool
    trouble: Trouble
    late: bool = False
    case: int | None = None
    moved: tuple[Say, ...] = ()

    @property
    def what(self) -> Say:
        """Return what it reminds of."""
        return Say("remind-what", self)


@dataclass(frozen=True, slots=True)
class PutOff:
    """A reminder that was put off by a press."""

    until: Moment


def remembered(reminder: Reminder, *, name: str | None = None, late: bool = False) -> Remembered:
    """Return a reminder as facts; ``name`` is how a front writes that of the enclosure."""
    return Remembered(
        number=reminder.id,
        about=reminder.about,
        enclosure=name or reminder.enclosure,
        due=Moment(reminder.due, reminder.zone),
        every=reminder.every_days,
        here=reminder.channel is not None,
        stopped=reminder.state is State.STOPPED,
        trouble=reminder.trouble,
        late=late,
        case=reminder.case,
        moved=moved_said(reminder.moved),
    )


def due_said(told: Remembered) -> Iterator[Say]:
    """Yield what is said when it is due, a line each."""
    if told.about is About.SHARED:
        yield Say("remind-shared", told)
        return
    asked = told.about in ASKED_FOR
    yield Say("remind-due", told) if asked else Say("remind-came", told)
    if told.late and asked:
        yield Say("remind-late", told)
    if told.trouble is Trouble.CHANNEL_GONE:
        yield Say("remind-moved")
    if told.every is not None:
        yield Say("remind-every", told)
