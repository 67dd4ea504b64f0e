"""The reply: what an answer says, as structure. No markup, no Discord, no rounding.

Every text is plain. Answers choose unit and rounding once; renderers only lay out. A reply comes in
layers: a brief of a few lines that every front shows, and named parts that open when asked for.
"""

from collections.abc import Iterator
from enum import StrEnum
from math import inf
from typing import TYPE_CHECKING, Annotated, Any, Literal

from pydantic import (
    BaseModel,
    BeforeValidator,
    ConfigDict,
    Field,
    PlainSerializer,
    computed_field,
    model_validator,
)

from bot.parts import LABELLED, PartName, part_label
from bot.picture import Picture
from bot.queries.question import Question
from calc.uncertainty import Estimate

if TYPE_CHECKING:
    from calc.setup.set_up import SetUp
else:
    # Made by the questions and handed on to drawings as it is: its room loads where it is made.
    SetUp = Any

__all__ = [
    "LABELLED",
    "Alarm",
    "Assumed",
    "Danger",
    "Document",
    "Heard",
    "HeardValue",
    "Line",
    "PageLink",
    "Part",
    "PartName",
    "Picture",
    "Reply",
    "Role",
    "Row",
    "SourceLine",
    "Table",
    "Value",
    "part_label",
]


class _Told(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


def _read_high(value: object) -> object:
    return inf if value is None else value


_OpenAbove = Annotated[float, BeforeValidator(_read_high)]


class Value(_Told):
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


class Row(_Told):
    """One labelled line of the answer."""

    label: str
    text: str


class Table(_Told):
    """A small table of texts; every row is as long as the columns."""

    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


class PageLink(_Told):
    """A guide page that explains the answer; ``url`` is empty where there is no site."""

    slug: str
    title: str
    url: str

    @property
    def place(self) -> str:
        """Return where it is read: its address, or the question that opens it."""
        return self.url or f"guide {self.slug}"


class SourceLine(_Told):
    """A source as shown."""

    key: str
    citation: str
    kind: str


def _read_picture(value: object) -> object:
    return Picture(**value) if isinstance(value, dict) else value


def _picture_told(picture: Picture) -> dict[str, str]:
    return {"alt": picture.alt}


_Pictured = Annotated[Picture, BeforeValidator(_read_picture), PlainSerializer(_picture_told)]


class Alarm(_Told):
    """A hazard that was heard in words or worked out of readings, by its key in the table.

    ``words`` are the asker's own, to be quoted back; ``asked`` is true where it is only planned or
    asked about, so that a calm rule is due and no order; ``urgency`` stands in place of the
    hazard's own; ``one_lamp``: UV and warmth come out of one lamp.
    """

    key: str
    words: str = ""
    asked: bool = False
    urgency: Literal["", "now", "today", "this week", "change"] = ""
    one_lamp: bool = False


class Danger(_Told):
    """A hazard as the reply tells it: when the first act is due, and whom to call."""

    key: str
    urgency: Literal["now", "today", "this week", "change"]
    call: dict[str, str]


class Role(StrEnum):
    """What a line of the brief is for, in the order in which they are read."""

    DANGER = "danger"
    CALL = "call"
    HEAD = "head"
    RANGE = "range"
    ASSUMED = "assumed"
    STEP = "step"
    CAUTION = "caution"


class Line(_Told):
    """One thing that the brief says."""

    role: Role
    text: str


class Part(_Told):
    """One part of the reply, line by line."""

    name: PartName
    label: str
    items: tuple[str, ...]


class Assumed(_Told):
    """What an option was taken as; ``text`` tells it where that could change the answer."""

    name: str
    how: Literal["told", "inferred", "unknown"]
    text: str = Field(default="", exclude=True)


HeardValue = bool | float | str | tuple[float, ...] | tuple[str, ...] | None
"""A value in SI, both ends of a range, the sides of a box, or a name."""


class Heard(_Told):
    """One thing that was heard in free words, by the name of the fact.

    ``sort`` says how it stands: is, was, wished, asked, planned, others, not, or unclear, so that
    it is asked about; ``guessed`` marks a unit or a name that was not written, ``animal`` which of
    several it is told of, ``corrects`` that it stands in the place of what was said before.
    """

    name: str
    value: HeardValue
    unit: str
    guessed: bool = False
    sort: str
    text: str
    animal: int = 0
    hedged: bool = False
    corrects: bool = False


class Document(_Told):
    """A file that goes with the reply, such as an export."""

    name: str
    text: str


class Reply(_Told):
    """One answer, or one problem, ready to be laid out."""

    model_config = ConfigDict(arbitrary_types_allowed=True)

    command: str
    status: Literal["ok", "problem"]
    title: str
    answer: str
    # What every front shows first. The door makes it where the answer brings none.
    brief: tuple[Line, ...] = ()
    short: str = Field(default="", exclude=True)  # a refusal in two lines, behind a danger
    values: tuple[Value, ...] = ()
    rows: tuple[Row, ...] = ()
    table: Table | None = None
    steps: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    guide: tuple[PageLink, ...] = ()
    sources: tuple[SourceLine, ...] = ()
    picture: _Pictured | None = None
    # A care sheet of the set-up, to be handed over; not part of the JSON.
    sheet: _Pictured | None = Field(default=None, exclude=True)
    dangers: tuple[Danger, ...] = ()
    why: tuple[str, ...] = Field(default=(), exclude=True)
    assumed: tuple[Assumed, ...] = ()
    heard: tuple[Heard, ...] = ()
    language: str = "en"
    # What the parts are called, in their order and the language of the reply; empty: in English.
    labels: tuple[str, ...] = Field(default=(), exclude=True)
    # The asker's language: what stands around the answer is told in it.
    around: str = Field(default="en", exclude=True)
    # Parts that are the answer itself, such as a page or a list: shown without being asked for.
    opened: tuple[PartName, ...] = Field(default=(), exclude=True)
    alarms: tuple[Alarm, ...] = Field(default=(), exclude=True)  # what the door says first
    undecided: bool = Field(default=False, exclude=True)  # nobody can tell from what is known
    document: Document | None = Field(default=None, exclude=True)  # handed over as a file
    # Whom and which channels its texts tell by number, which a chat shows by name.
    people: frozenset[int] = Field(default=frozenset(), exclude=True)
    channels: frozenset[int] = Field(default=frozenset(), exclude=True)
    # The question as it was understood, so that it can be asked again; not part of the JSON.
    meant: Question | None = Field(default=None, exclude=True)
    # Whole questions to choose from, in their order, and those in its words; not part of the JSON.
    offers: tuple[Question, ...] = Field(default=(), exclude=True)
    lines: tuple[str, ...] = Field(default=(), exclude=True)
    # The one of them that is likely meant, with nothing but what was told.
    perhaps: Question | None = Field(default=None, exclude=True)
    # The options that the question still needs, so that a front can offer them.
    lacking: tuple[str, ...] = Field(default=(), exclude=True)
    units: Literal["", "in", "cm"] = Field(default="", exclude=True)  # the unit shown first
    # The set-up that the answer is about, which pictures and tables are made of.
    set_up: SetUp | None = Field(default=None, exclude=True)

    @model_validator(mode="before")
    @classmethod
    def _without_parts(cls, told: Any) -> Any:
        """Return what was told without the parts, which are made of the other fields."""
        return {n: v for n, v in told.items() if n != "parts"} if isinstance(told, dict) else told

    @property
    def asked(self) -> str:
        """Return the question as it was understood as a line; nothing where none was."""
        return self.meant.line() if self.meant else ""

    @property
    def sheet_label(self) -> str:
        """Return what its care sheet is called."""
        return dict(zip(LABELLED, self.labels, strict=False)).get("sheet") or part_label("sheet")

    @computed_field  # type: ignore[prop-decorator]
    @property
    def parts(self) -> tuple[Part, ...]:
        """Return the parts that hold anything, in their order."""
        made = ((name, tuple(self._items(name))) for name in PartName)
        labels = dict(zip(PartName, self.labels, strict=False))
        return tuple(
            Part(name=name, label=labels.get(name) or part_label(name), items=items)
            for name, items in made
            if items
        )

    def _items(self, name: PartName) -> Iterator[str]:
        match name:
            case PartName.STEPS:
                yield from self.steps
            case PartName.NUMBERS:
                yield from (f"{row.label}: {row.text}" for row in self.rows)
                if self.table:
                    yield from map(" · ".join, (self.table.columns, *self.table.rows))
            case PartName.WHY:
                yield from self.why
            case PartName.CARE:
                yield from self.cautions
            case PartName.SOURCES:
                yield from (f"{page.title}: {page.place}" for page in self.guide)
                yield from (f"{line.citation} [{line.kind}]" for line in self.sources)
