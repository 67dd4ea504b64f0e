"""The option that tells in what state an animal is."""

from typing import Annotated

from bot.language.states import STATES, read_states
from bot.queries.query import Option, reading
from calc.animals import State

__all__ = ["STATE", "StateNames"]

STATE = "what it is just now: young, pale (albino), gravid, female, ill or in quarantine"

StateNames = Annotated[frozenset[State], reading(read_states), Option(choices=STATES)]
