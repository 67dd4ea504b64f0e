"""The questions about readings that keepers give to their group."""

from typing import Annotated

from pydantic import Field

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.queries.options import (
    Age,
    FixtureOption,
    Readings,
    ScreenOption,
    Text,
    Tube,
    TubeLength,
    UvLampKind,
)
from bot.queries.query import Option, Query, reading
from bot.queries.saved import EnclosureName, Sure

__all__ = ["GroupQuery", "OfferQuery", "ReadingsQuery", "WithdrawQuery"]

_ALL = 0
_LONGEST = 12


def _number(text: str, *, or_all: bool) -> int:
    words = text.strip().lower().removeprefix("#").rstrip(".")
    if or_all and words in ("all", "alle", "everything"):
        return _ALL
    if words.isascii() and words.isdecimal() and len(words) <= _LONGEST and int(words) > 0:
        return int(words)
    raise NotUnderstoodError(
        text, Say("wanted-reading-or-all" if or_all else "wanted-reading"), "3"
    )


_WhichOrAll = Annotated[int, reading(lambda text: _number(text, or_all=True)), Option()]
_Which = Annotated[int, reading(lambda text: _number(text, or_all=False)), Option()]


class OfferQuery(Query):
    """Give a reading to the group: one that is typed, or the last of an enclosure."""

    name: EnclosureName = Field("", examples=["Pebble's box"])
    readings: Readings | None = Field(None, examples=["4.2 at 12 in"])
    tube: Tube | None = Field(None, examples=["12%"])
    reflector: FixtureOption | None = Field(None, examples=["polished"])
    screen: ScreenOption | None = Field(None, examples=["none"])
    length: TubeLength | None = Field(None, examples=["34in"])
    age: Age | None = Field(None, examples=["8 months"])
    lamp: UvLampKind | None = Field(None, examples=["T5 HO tube"])
    day: Text = Field("", examples=["yesterday"])
    sure: Sure = Field("no", examples=["yes"])


class WithdrawQuery(Query):
    """Take readings back from the group; 0 is all."""

    reading: _WhichOrAll | None = Field(None, examples=["3"])


class GroupQuery(Query):
    """What the readings of the group show."""


class ReadingsQuery(Query):
    """The readings of the group, for its moderators."""

    clear: _Which | None = Field(None, examples=["3"])
