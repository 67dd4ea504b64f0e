"""What a state of an animal changes: young, pale, with eggs, ill, in quarantine, a female.

Rows live in ``data/states.toml``. Where none stands, nothing is known to change.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from functools import cache
from typing import Any

from calc.animal import Animal, State, Subject, Target
from calc.tables import read_table

__all__ = ["Change", "changes_of", "gets_less_uv", "in_states"]

_ORDER = tuple(State)


@dataclass(frozen=True, slots=True)
class Change:
    """What one state changes of one target, and who says so."""

    state: State
    subject: Subject
    source: str


def in_states(animal: Animal, states: Iterable[State]) -> Animal:
    """Return an animal with the targets that it has in these states.

    UV index: both ends times the share of its row, once; night floor: its upper end, or near
    where its heat goes off; water: the lower end warmer by what its row says; surface: as its
    row says

    Parameters
    ----------
    animal : of which kind; a state that it is in already changes nothing more
    states : what it is told to be

    Returns
    -------
    Animal

    Notes
    -----
    What no row changes stays. Source: limits_judgement; keepers_memory.

    Examples
    --------
    >>> from calc.animals import animals
    >>> in_states(animals()["bearded-dragon"], [State.PALE, State.YOUNG]).uvi.high
    2.5
    """
    told = {*animal.states, *states}
    if told == set(animal.states):
        return animal
    new = [state for state in _ORDER if state in told and state not in animal.states]
    is_less = any(_row(animal, state).get("uvi_share") for state in animal.states)
    found = animal
    for state in new:
        row = _row(animal, state)
        found = _warmer(_spot(found, row), row)
        if "uvi_share" in row and not is_less:
            found, is_less = replace(found, uvi=_share(found.uvi, row)), True
    return replace(found, states=tuple(state for state in _ORDER if state in told))


def changes_of(animal: Animal) -> tuple[Change, ...]:
    """Return what the states of an animal change of the targets that its kind has.

    Source: limits_judgement; keepers_memory.
    """
    return tuple(
        Change(state, subject, row.get(key, row["source"]))
        for state in animal.states
        for row in [_row(animal, state)]
        for name, subject, key, target in (
            ("uvi_share", Subject.UVI, "source", animal.uvi),
            ("warm_nights", Subject.NIGHT_FLOOR, "source", animal.night_floor_c),
            ("water_warmer", Subject.WATER, "water_source", animal.water_c),
            ("surface", Subject.BASKING_SURFACE, "source", animal.basking_surface_c),
        )
        if name in row and target is not None
    )


def gets_less_uv(animal: Animal) -> bool:
    """Say whether a state of an animal lowers the UV index that it gets."""
    return any(change.subject is Subject.UVI for change in changes_of(animal))


def _share(uvi: Target | None, row: Mapping[str, Any]) -> Target | None:
    if uvi is None:
        return None
    share, note = row["uvi_share"], "half of what its kind gets: our judgement"
    return Target(uvi.low * share, None, uvi.high * share, row["source"], note)


def _spot(animal: Animal, row: Mapping[str, Any]) -> Animal:
    spot, told = animal.basking_surface_c, row.get("surface")
    # Never warmer than what a group set for the kind.
    if spot is None or told is None or spot.high < told[1]:
        return animal
    cooler = Target(float(told[0]), None, float(told[1]), row["source"])
    return replace(animal, basking_surface_c=cooler)


def _warmer(animal: Animal, row: Mapping[str, Any]) -> Animal:
    night, water = animal.night_floor_c, animal.water_c
    if row.get("warm_nights") and night is not None:
        off, cool = animal.night_heat_off_c, animal.cool_air_c
        least = night.high if off is None else max(night.high, off.aim - row["warm_nights"])
        least = least if cool is None else max(night.high, min(least, cool.high))
        warm = Target(least, None, least, row["source"])
        animal = replace(animal, night_floor_c=warm)
    if "water_warmer" in row and water is not None:
        least = min(water.low + row["water_warmer"], water.high)
        warmer = Target(least, None, water.high, row["water_source"])
        animal = replace(animal, water_c=warmer)
    return animal


def _row(animal: Animal, state: State) -> Mapping[str, Any]:
    rows = _data().get(state.value, {})
    names = (animal.slug, *([animal.group.value] if animal.group else []), "any")
    return next((rows[name] for name in names if name in rows), {})


@cache
def _data() -> dict[str, dict[str, Any]]:
    return read_table("calc/data/states.toml")
