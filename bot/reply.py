"""The reply: what an answer says, as structure. No markup, no Discord, no rounding.

Every text is plain. Answers choose unit and rounding once; renderers only lay out.
"""

from typing import Literal

from pydantic import BaseModel, ConfigDict, Field

from bot.drawing import Drawing
from calc.uncertainty import Estimate

__all__ = ["Document", "PageLink", "Picture", "Reply", "Row", "SourceLine", "Table", "Value"]


class _Part(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


class Value(_Part):
    """A named figure in SI units with its range (m, degC, W, h, 1 for UVI and fractions)."""

    name: str
    low: float
    best: float
    high: float
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


class Picture(_Part):
    """A picture that can be drawn for this reply, told in words."""

    alt: str
    # What a renderer draws; not part of the JSON, and None in a reply that was read from it.
    drawing: Drawing | None = Field(default=None, exclude=True)


class Document(_Part):
    """A file that goes with the reply, such as an export."""

    name: str
    text: str


class Reply(_Part):
    """One answer, or one problem, ready to be laid out."""

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
    picture: Picture | None = None
    # Handed over as a file or printed as it is; not part of the JSON.
    document: Document | None = Field(default=None, exclude=True)
    # The query as it was understood, so that a button can ask it again; not part of the JSON.
    asked: str = Field(default="", exclude=True)
    # The system whose unit stands first, so that a button can offer the other.
    units: Literal["", "in", "cm"] = Field(default="", exclude=True)
