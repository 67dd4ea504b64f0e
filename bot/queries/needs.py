"""The question what an animal needs."""

from functools import partial
from typing import Annotated

from pydantic import Field

from bot.language.choices import NEEDS, read_choice
from bot.queries.options import AnimalName, SurfaceTemperature
from bot.queries.query import Option, Query, reading
from bot.queries.states import StateNames

__all__ = ["NeedsQuery"]

NeedName = Annotated[str, reading(partial(read_choice, names=NEEDS)), Option(choices=tuple(NEEDS))]


class NeedsQuery(Query):
    """What an animal needs: UV, surfaces, air, nights and hours of light."""

    animal: AnimalName = Field("", examples=["bearded dragon"])
    about: NeedName = Field("", examples=["basking"])
    heard: SurfaceTemperature | None = Field(None, examples=["95F"])
    state: StateNames = Field(frozenset(), examples=["young"])
