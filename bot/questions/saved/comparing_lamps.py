"""Two lamps of a keeper beside each other, in use or in stock, at one place under no screen.

The comparison itself is that of ``compare``.
"""

from dataclasses import dataclass
from datetime import date

from bot.desk import Desk
from bot.preferences import Context
from bot.queries.compare import CompareQuery
from bot.queries.mine import CompareQuery as MineCompareQuery
from bot.questions.saved.refused import Why, refused
from bot.questions.uv.compare_facts import Facts, compare
from bot.saved.keeper import Enclosure, Spare
from bot.saved.values import name_key
from calc.animals import animal_name

__all__ = ["LampsBeside", "lamps_beside"]

# Where nobody told how far the tube hangs [m].
_USUAL_M = 0.3


@dataclass(frozen=True, slots=True)
class _Lamp:
    """A lamp as ``compare`` takes it, with the enclosure that it hangs over."""

    name: str
    percent: float
    length_m: float | None
    age_days: int | None
    box: Enclosure | None


@dataclass(frozen=True, slots=True)
class LampsBeside:
    """Two lamps by their names, and what ``compare`` says of them."""

    name: str
    other: str
    compared: Facts


async def lamps_beside(query: MineCompareQuery, context: Context, desk: Desk) -> LampsBeside:
    """Compare the lamps of two names: an enclosure's stands for the one that hangs over it."""
    one = await _lamp(query.lamp or query.name, "lamp", context.day, desk)
    other = await _lamp(query.other_lamp or query.other, "other_lamp", context.day, desk)
    box = one.box or other.box
    setup = None if box is None else box.setup
    texts = {
        "distance": _cm((setup and setup.distance_m) or _USUAL_M),
        "tube": f"{one.percent:g}%",
        "with_tube": f"{other.percent:g}%",
        "reflector": (setup and setup.reflector) or "polished",
        "screen": "none",
        "animal": animal_name(setup.animal) if setup and setup.animal else "",
        "length": _cm(one.length_m),
        "with_length": _cm(other.length_m or one.length_m),
        "age": _age(one.age_days),
        "with_age": _age(other.age_days),
    }
    given = {name: text for name, text in texts.items() if text}
    asked = CompareQuery.model_validate(given, context={"own": context.own})
    return LampsBeside(one.name, other.name, compare(asked, context))


def _cm(length_m: float | None) -> str:
    return f"{length_m * 100.0:.4g}cm" if length_m else ""


def _age(days: int | None) -> str:
    return "" if days is None else f"{days} days" if days else "new"


async def _lamp(name: str, option: str, now: date, desk: Desk) -> _Lamp:
    boxes = await desk.store.enclosures.all(desk.keeper)
    spares = await desk.store.spares.all(desk.keeper)
    all_: tuple[Enclosure | Spare, ...] = (*spares, *boxes)
    same = (one for one in all_ if name and name_key(one.name) == name_key(name))
    found = next(same, None)
    known = tuple(one.name for one in all_)
    example = (
        f"mine compare {option}:{known[0]}" if known else "mine spare name:Spare tube tube:12%"
    )
    if found is None:
        raise refused("mine compare", Why.OTHER_LAMP, example, option, name, known)
    told = found if isinstance(found, Spare) else found.setup
    if told.tube_percent is None:
        raise refused("mine compare", Why.NO_STRENGTH, example, option, found.name)
    if isinstance(found, Spare):
        # What lies in its box does not age under its own light.
        return _Lamp(found.name, told.tube_percent, told.tube_length_m, 0, None)
    since = found.setup.tube_since
    age = None if since is None else max((now - since).days, 0)
    return _Lamp(found.name, told.tube_percent, told.tube_length_m, age, found)
