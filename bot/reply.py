"""The reply: what an answer says, as structure. No markup, no Discord, no rounding.

Every text is plain. Answers choose unit and rounding once; renderers only lay out.
"""

from collections.abc import Callable
from functools import partial
from math import inf
from typing import Annotated, Literal, ParamSpec

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, PlainSerializer

from bot.drawing import Drawing
from calc.setup.set_up import SetUp
from calc.uncertainty import Estimate

__all__ = [
    "Alarm",
    "Danger",
    "Document",
    "PageLink",
    "Picture",
    "Reply",
    "Row",
    "SourceLine",
    "Table",
    "Value",
]

_Given = ParamSpec("_Given")


class _Part(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


def _read_high(value: object) -> object:
    return inf if value is None else value


_OpenAbove = Annotated[float, BeforeValidator(_read_high)]


class Value(_Part):
    """A named figure in SI units with its range (m, degC, W, h, 1 for UVI and fractions).

    A high end that is open is infinite, and null in JSON.
    """

    name: str
    low: float
    best: float
    high: _OpenAbove
    unit: str

    @classmethod
    def of(cls, name: str, estimate: Estimate, unit: str) -> "Value":
        """Return the value of an estimate."""
        return cls(name=name, low=estimate.low, best=estimate.best, high=estimate.high, unit=unit)


class Row(_Part):
    """One labelled line of the answer."""

    label: str
    text: str


class Table(_Part):
    """A small table of texts; every row is as long as the columns."""

    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


class PageLink(_Part):
    """A guide page that explains the answer; ``url`` is empty where there is no site."""

    slug: str
    title: str
    url: str


class SourceLine(_Part):
    """A source as shown."""

    key: str
    citation: str
    kind: str


class Picture:
    """A picture that can be drawn for this reply, told in words.

    ``alt`` are the words, ``drawing`` is what a renderer draws: not part of the JSON, and None in
    a reply that was read from it.
    """

    __slots__ = ("_told", "_work")

    def __init__(self, alt: str, drawing: Drawing | None = None) -> None:
        self._told = alt, drawing
        self._work: Callable[[], Picture] | None = None

    @classmethod
    def later(
        cls, work: Callable[_Given, "Picture"], *given: _Given.args, **named: _Given.kwargs
    ) -> "Picture":
        """Return the picture that ``work`` makes of what is given, once somebody looks at it.

        Most answers are read without their picture, which takes longer than all the rest.
        """
        picture = cls("")
        picture._work = partial(work, *given, **named)
        return picture

    @property
    def alt(self) -> str:
        """Return the picture in words."""
        return self._looked_at()[0]

    @property
    def drawing(self) -> Drawing | None:
        """Return what a renderer draws."""
        return self._looked_at()[1]

    def _looked_at(self) -> tuple[str, Drawing | None]:
        work = self._work
        if work is not None:
            self._told = work()._looked_at()
            self._work = None
        return self._told

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Picture) and self._looked_at() == other._looked_at()

    def __hash__(self) -> int:
        return hash(self._looked_at())

    def __repr__(self) -> str:
        return f"Picture(alt={self.alt!r})"

    def __reduce__(self) -> tuple[type["Picture"], tuple[str, Drawing | None]]:
        return Picture, self._looked_at()


def _read_picture(value: object) -> object:
    return Picture(**value) if isinstance(value, dict) else value


def _picture_told(picture: Picture) -> dict[str, str]:
    return {"alt": picture.alt}


_Pictured = Annotated[Picture, BeforeValidator(_read_picture), PlainSerializer(_picture_told)]


class Alarm(_Part):
    """A hazard that was heard in words or worked out of readings, by its key in the table.

    ``words`` are the asker's own, to be quoted back; ``asked`` is true where it is only planned or
    asked about, so that a calm rule is due and no order; ``urgency`` stands in place of the
    hazard's own.
    """

    key: str
    words: str = ""
    asked: bool = False
    urgency: Literal["", "now", "today", "this week", "change"] = ""


class Danger(_Part):
    """A hazard as the reply tells it: when the first act is due, and whom to call."""

    key: str
    urgency: Literal["now", "today", "this week", "change"]
    call: dict[str, str]


class Document(_Part):
    """A file that goes with the reply, such as an export."""

    name: str
    text: str


class Reply(_Part):
    """One answer, or one problem, ready to be laid out."""

    model_config = ConfigDict(arbitrary_types_allowed=True)

    command: str
    status: Literal["ok", "problem"]
    title: str
    answer: str
    values: tuple[Value, ...] = ()
    rows: tuple[Row, ...] = ()
    table: Table | None = None
    steps: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    guide: tuple[PageLink, ...] = ()
    sources: tuple[SourceLine, ...] = ()
    picture: _Pictured | None = None
    dangers: tuple[Danger, ...] = ()
    # What an answer found that cannot wait; the door says it first. Not part of the JSON.
    alarms: tuple[Alarm, ...] = Field(default=(), exclude=True)
    # Handed over as a file or printed as it is; not part of the JSON.
    document: Document | None = Field(default=None, exclude=True)
    # The query as it was understood, so that a button can ask it again; not part of the JSON.
    asked: str = Field(default="", exclude=True)
    # The system whose unit stands first, so that a button can offer the other.
    units: Literal["", "in", "cm"] = Field(default="", exclude=True)
    # The set-up that the answer is about, which pictures and tables are made of.
    set_up: SetUp | None = Field(default=None, exclude=True)
