"""The option that tells in what state an animal is."""

from typing import Annotated

from bot.language.states import STATES, read_states
from bot.queries.query import Option, reading
from calc.animal import State

__all__ = ["StateNames"]

StateNames = Annotated[frozenset[State], reading(read_states), Option(choices=STATES)]
