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

    about: AboutOption = Field(
        description="meter reading, tube replacement, season change, check", examples=["meter"]
    )
    when: Text = Field(
        "", description="in 3 months, tomorrow 8:00, 2026-06-01 9:00", examples=["in 3 months"]
    )
    name: EnclosureName = Field("", description="which enclosure", examples=["Pebble's box"])
    every: Days | None = Field(
        None, description="again and again: 3 months, 2 weeks", examples=["3 months"]
    )
    where: Where = Field(
        "message", description="by direct message, or here in this channel", examples=["message"]
    )
    zone: ZoneName = Field(
        "", description="your time zone, such as Europe/Berlin", examples=["Europe/Berlin"]
    )


class NumberQuery(Query):
    """One reminder by its number."""

    number: _Number = Field(description="the number of the reminder", examples=["1"])


class SnoozeQuery(NumberQuery):
    """Put a reminder off."""

    until: Text = Field(description="in 2 days, tomorrow 8:00", examples=["in 2 days"])
