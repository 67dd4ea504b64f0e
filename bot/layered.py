"""What a question tells of its facts: messages in layers. No words, no unit, no markup.

Who trips here: a ``Layered`` decides what is said and in which layer; how it is said is for
``bot/words``, how it looks is for ``bot/render``.
"""

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING, Literal, Protocol

from bot.facts import Figure, Say
from bot.language.units import Units
from bot.queries.question import Question
from bot.reply import Alarm, Document, Picture

if TYPE_CHECKING:
    from calc.setup.set_up import SetUp

__all__ = ["Brief", "Care", "Layered", "Row", "Table", "Teller", "Weight"]


class Teller(Protocol):
    """What a picture needs for its words: who says messages, and the unit that stands first."""

    units: Units

    def say(self, say: Say) -> str:
        """Return a message in words."""


class Weight(StrEnum):
    """How much a caution matters: the heaviest one stands in the brief."""

    ALWAYS = "always"
    STEP = "step"


@dataclass(frozen=True, slots=True)
class Care:
    """A caution; ``short`` is how the brief says it, and None where it never stands there."""

    say: Say
    short: Say | None = None
    weight: Weight = Weight.ALWAYS


@dataclass(frozen=True, slots=True)
class Row:
    """One labelled line of the figures; ``more`` are further lines under the same label."""

    label: Say
    say: Say
    more: tuple[Say, ...] = ()


@dataclass(frozen=True, slots=True)
class Table:
    """A small table; every row is as long as the columns."""

    columns: tuple[Say, ...]
    rows: tuple[tuple[Say, ...], ...]


@dataclass(frozen=True, slots=True)
class Brief:
    """The answer at a glance: at most eight lines of 38 signs in every language.

    What gives way where it is longer: the later steps, the later ranges, what was assumed. The
    dangers and whom to call are added at the door, and the heaviest caution from ``care``.
    """

    head: Say
    range: tuple[Say, ...] = ()
    assumed: tuple[Say, ...] = ()
    steps: tuple[Say, ...] = ()


@dataclass(frozen=True, slots=True)
class Layered:
    """One answer as messages: the brief, and the parts that stand behind a button.

    ``values`` are the figures of the facts themselves, by their name in JSON; ``guide`` are slugs
    of pages and ``sources`` keys of the bibliography; ``alarms`` cannot wait; ``picture`` is made
    with the voice that tells the rest, and so is ``sheet``, a care sheet to be handed over;
    ``offers`` are whole questions to choose from, ``perhaps`` the one that is likely meant, as far
    as it was told; ``lines`` are whole questions in the words of it, which a chat lets somebody
    click; ``lacking`` are the options that the question still needs; ``set_up`` is what the answer
    is about; ``document`` is a file that goes with it; ``undecided``: nobody can tell from what is
    known. ``people`` and ``channels`` are told by their numbers, which a chat shows by name.
    """

    command: str
    title: Say
    brief: Brief
    status: Literal["ok", "problem"] = "ok"
    steps: tuple[Say, ...] = ()
    numbers: tuple[Row, ...] = ()
    table: Table | None = None
    why: tuple[Say, ...] = ()
    care: tuple[Care, ...] = ()
    values: tuple[tuple[str, Figure | None], ...] = ()
    guide: tuple[str, ...] = ()
    sources: tuple[str, ...] = ()
    picture: Callable[[Teller], Picture] | None = None
    sheet: Callable[[Teller], Picture] | None = None
    alarms: tuple[Alarm, ...] = ()
    offers: tuple[Question, ...] = ()
    lines: tuple[str | Say, ...] = ()
    perhaps: Question | None = None
    lacking: tuple[str, ...] = ()
    set_up: "SetUp | None" = None
    undecided: bool = False
    document: Document | None = None
    people: frozenset[int] = frozenset()
    channels: frozenset[int] = frozenset()
