"""The question of a moderator: one table of distances for the whole group."""

from typing import Annotated

from pydantic import Field

from bot.facts import Say
from bot.language.lamps import TubeStrength, read_tube_strength
from bot.language.lists import read_list
from bot.language.screens import Screen, read_screen
from bot.language.wanted import UpTo
from bot.queries.options import AnimalName, TubeLength, UviRange
from bot.queries.query import Option, Query, reading
from bot.queries.states import StateNames

__all__ = ["CardQuery"]

_MOST = 4
_STRENGTHS = Say("wanted-strengths", UpTo(_MOST))
_SCREENS = Say("wanted-screens", UpTo(_MOST))
_Tubes = Annotated[
    tuple[TubeStrength, ...],
    reading(lambda text: read_list(text, read_tube_strength, _MOST, _STRENGTHS, "6%; 12%")),
    Option(),
]
_Screens = Annotated[
    tuple[Screen, ...],
    reading(lambda text: read_list(text, read_screen, _MOST, _SCREENS, "none; 45%")),
    Option(),
]


class CardQuery(Query):
    """A table of distances for every usual tube, fixture and screen."""

    animal: AnimalName = Field("", examples=["bearded dragon"])
    uvi: UviRange | None = Field(None, examples=["3-5"])
    screens: _Screens = Field(
        default_factory=lambda: tuple(map(read_screen, ("none", "30%", "45%"))),
        examples=["none; 45%"],
    )
    tubes: _Tubes = Field(
        default_factory=lambda: tuple(map(read_tube_strength, ("12%", "10%", "8%", "6%"))),
        examples=["6%; 12%"],
    )
    length: TubeLength | None = Field(None, examples=["22in"])
    state: StateNames = Field(frozenset(), examples=["young"])
