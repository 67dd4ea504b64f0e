"""Figures of a question as they are typed, and the limits that they are held against."""

from collections.abc import Mapping

from hypothesis import strategies as st

from bot.dangers.table import hazards
from bot.reply import Reply, Value
from calc.animals import animals
from calc.limits import Limit, Limits, any_limits, limits_of

# What lives in water alone has no air and no lamp; its water is tested by itself.
NAMES = tuple(animal.name for animal in animals().values() if animal.uvi is not None)
SLUGS = {animal.name: slug for slug, animal in animals().items()}
Given = dict[str, str]
Texts = st.SearchStrategy[str]


def limits(given: Given) -> Limits:
    name = given.get("animal", "")
    return limits_of(animals()[SLUGS[name]]) if name else any_limits()


def edge(own: Limits, name: str) -> float:
    limit = getattr(own, name)
    assert isinstance(limit, Limit)
    return limit.value


def value(reply: Reply, name: str) -> Value | None:
    return next((v for v in reply.values if v.name == name), None)


def urgency(reply: Reply, key: str) -> str:
    """Return how urgent an alarm of a key is told, or nothing."""
    found = [a.urgency or hazards()[key].urgency.value for a in reply.alarms if a.key == key]
    return min(found, key=("now", "today", "this week", "change").index, default="")


def temperatures(low_c: float, high_c: float) -> st.SearchStrategy[str]:
    """Return temperatures as they are typed, in either unit."""

    def typed(c: float, in_f: bool) -> str:
        return f"{c * 1.8 + 32.0:.1f}F" if in_f else f"{c:.1f}C"

    return st.builds(typed, st.floats(low_c, high_c), st.booleans())


def lengths(low_m: float, high_m: float) -> st.SearchStrategy[str]:
    def typed(m: float, in_inches: bool) -> str:
        return f"{m / 0.0254:.2f}in" if in_inches else f"{m * 100.0:.1f}cm"

    return st.builds(typed, st.floats(low_m, high_m), st.booleans())


def celsius(text: str) -> float:
    number = float(text[:-1])
    return (number - 32.0) / 1.8 if text.endswith("F") else number


def metres(text: str) -> float:
    return float(text[:-2]) * (0.0254 if text.endswith("in") else 0.01)


def options(needed: Mapping[str, Texts], others: Mapping[str, Texts]) -> st.SearchStrategy[Given]:
    return st.fixed_dictionaries(dict(needed), optional=dict(others))
