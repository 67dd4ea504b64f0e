"""The questions about reminders."""

from typing import Annotated

from pydantic import Field

from bot.facts import Say
from bot.language.quantities import read_number
from bot.queries.options import Text
from bot.queries.query import Option, Query, reading
from bot.queries.saved import AboutOption, Days, EnclosureName, Where, ZoneName

__all__ = ["NumberQuery", "RemindQuery", "SnoozeQuery"]


def _read_number(text: str) -> int:
    return round(read_number(text.lstrip("#"), Say("wanted-reminder"), "3"))


_Number = Annotated[int, reading(_read_number), Option(completes="reminder")]


class RemindQuery(Query):
    """Be reminded of something."""

    about: AboutOption = Field(examples=["meter"])
    when: Text = Field("", examples=["in 3 months"])
    name: EnclosureName = Field("", examples=["Pebble's box"])
    every: Days | None = Field(None, examples=["3 months"])
    where: Where = Field("message", examples=["message"])
    zone: ZoneName = Field("", examples=["Europe/Berlin"])


class NumberQuery(Query):
    """One reminder by its number."""

    number: _Number = Field(examples=["1"])


class SnoozeQuery(NumberQuery):
    """Put a reminder off."""

    until: Text = Field(examples=["in 2 days"])
