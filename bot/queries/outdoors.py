"""The question about real sun: in an open pen, behind a window, in a greenhouse."""

from collections.abc import Mapping
from functools import partial
from typing import Annotated

from pydantic import Field

from bot.language.choices import SUN_PLACES, read_choice
from bot.queries.day import Clock
from bot.queries.options import AirTemperature, AnimalName, Latitude, Month, UviRange
from bot.queries.query import Option, Query, reading
from bot.queries.states import StateNames
from bot.saved.group import NOTHING_OWN, Own

__all__ = ["OPEN", "OutdoorsQuery"]

OPEN = "open"
SunPlace = Annotated[
    str, reading(partial(read_choice, names=SUN_PLACES)), Option(choices=tuple(SUN_PLACES))
]


class OutdoorsQuery(Query):
    """What real sun gives, and when it is too much."""

    latitude: Latitude | None = Field(None, examples=["40N"])
    month: Month | None = Field(None, examples=["June"])
    hour: Clock | None = Field(None, examples=["9:00"])
    place: SunPlace = Field(OPEN, examples=["open"])
    shade: AirTemperature | None = Field(None, examples=["75F"])
    animal: AnimalName = Field("", examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, examples=["3-5"])
    state: StateNames = Field(frozenset(), examples=["young"])

    def asks_of_an_animal(self) -> bool:
        """Say whether the answer depends on the animal: glass and sun are the same for all."""
        return False

    @classmethod
    def lacking(cls, given: Mapping[str, str], _own: Own = NOTHING_OWN) -> tuple[str, ...]:
        """Return what is missing: where and when, unless something is between sun and animal."""
        if _is_closed(given.get("place", OPEN)):
            return ()
        return tuple(name for name in ("latitude", "month") if name not in given)


def _is_closed(place: str) -> bool:
    return any(place in (name, *also) for name, also in SUN_PLACES.items() if name != OPEN)
