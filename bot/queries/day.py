"""The question about the timer: a flat day, or the seasons of a latitude."""

from datetime import time
from functools import partial
from typing import Annotated
from zoneinfo import ZoneInfo

from pydantic import Field

from bot.language.choices import MONTHS, read_choice
from bot.language.skies import read_latitude
from bot.language.zones import read_clock, read_year, read_zone
from bot.queries.options import AnimalName
from bot.queries.query import Option, Query, reading

__all__ = ["HOME", "Clock", "Home", "HoursQuery"]


class Home:
    """Stands for the latitude that an animal comes from."""


HOME = Home()


def _latitude_or_home(text: str) -> float | Home:
    if text.strip().lower() in ("home", "its home", "animal", "native", "the animal's"):
        return HOME
    return read_latitude(text)


Latitude = Annotated[float | Home, reading(_latitude_or_home), Option(completes="latitude")]
Zone = Annotated[ZoneInfo, reading(read_zone), Option(completes="zone")]
Clock = Annotated[time, reading(read_clock), Option()]
Year = Annotated[int, reading(read_year), Option()]
Months = Annotated[str, reading(partial(read_choice, names=MONTHS)), Option(choices=tuple(MONTHS))]


class HoursQuery(Query):
    """When the lights go on and off."""

    animal: AnimalName = Field("", examples=["bearded dragon"])
    on: Clock | None = Field(None, examples=["8:00"])
    off: Clock | None = Field(None, examples=["20:00"])
    latitude: Latitude | None = Field(None, examples=["home"])
    zone: Zone | None = Field(None, examples=["America/Chicago"])
    months: Months | None = Field(None, examples=["turned"])
    year: Year | None = Field(None, examples=["2026"])

    def asks_of_an_animal(self) -> bool:
        """Say whether the hours are the animal's own: a place has its seasons for everybody."""
        return self.latitude is None or isinstance(self.latitude, Home)
