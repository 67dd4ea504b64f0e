"""What a figure in a text is to the listening: very hot, near freezing, too near."""

from collections.abc import Iterable
from functools import cache, lru_cache

from bot.dangers.thesaurus import Meaning, listed

__all__ = ["LEVELS_C", "figure_names", "speaks_fahrenheit"]

# Warm for a room, hot for a whole box, hot for a mat, hot for wood; in degrees Celsius.
LEVELS_C = {
    "t_warm": 30.0,
    "t_hot": 35.0,
    "t_over_cool": 38.0,
    "t_over_low": 41.0,
    "t_contact": 41.0,
    "t_box": 43.0,
    "t_over_mid": 54.0,
    "t_wood": 65.0,
    "t_over_top": 68.0,
}
_COLD_C, _FREEZING_C = 9.4, 5.5
_NEAR_M, _TOUCH_M, _WOOD_NEAR_M = 0.155, 0.045, 0.11
_LONG_H, _STRONG_UVI, _STRONG_PERCENT, _MOST_C = 18.0, 8.6, 10.0, 150.0
# What a figure without a unit may be at all.
_LEAST_BARE_C, _MOST_BARE_C, _LEAST_BARE_F, _MOST_COLD_F = 28.0, 50.0, 62.0, 45.0


@cache
def _unit(name: str) -> frozenset[str]:
    return frozenset(listed("figures.toml")[name].split())


def figure_names(
    words: list[Meaning], place: int, *, fahrenheit: bool, german: bool = False
) -> tuple[str, ...]:
    """Return what a figure is by its unit and size; none where the word is no figure.

    ``fahrenheit`` says whether the whole text has figures that can only be degrees Fahrenheit;
    in German a bare degree is Celsius.
    """
    number = _number(words[place].word)
    if number is None or _is_one_of_several(words, place):
        return ()
    unit = words[place + 1].word if place + 1 < len(words) else ""
    after = words[place + 2].word if place + 2 < len(words) else ""
    if unit in _unit("degree") and after in (*_unit("celsius"), *_unit("fahrenheit")):
        unit = after
    if unit == "in" and after in _unit("after_in"):
        unit = ""
    if unit in _unit("celsius") or (german and unit in _unit("degree")):
        return _temperature(number)
    if unit in _unit("fahrenheit"):
        return _temperature((number - 32) / 1.8)
    for units, metre in (("inch", 0.0254), ("cm", 0.01), ("mm", 0.001)):
        if unit in _unit(units):
            return _distance(number * metre)
    if unit in _unit("hour"):
        return ("hours_long",) if _LONG_H <= number <= 24 else ("hours",)
    if unit in _unit("watt"):
        return ("watts",)
    if unit in _unit("percent") and _STRONG_PERCENT <= number <= 20:
        return ("percent_strong",)
    if unit in _unit("other"):
        return ("uvi_strong",) if unit == "uvi" and number >= _STRONG_UVI else ()
    if german and number > _MOST_BARE_C:
        return ("number", "watts_bare")
    return _bare(number, unit in _unit("degree"), fahrenheit)


def _is_one_of_several(words: list[Meaning], place: int) -> bool:
    """Say whether a figure belongs to the one before it: 4x2x2, 1'2", 13 3/4."""
    if place + 2 < len(words) and words[place + 1].word in {"x", "by"}:
        return words[place + 2].word[0].isdigit()
    if not place:
        return False
    before = words[place - 1].word
    if before in {"x", "'", "by"}:
        return True
    feet = before in {"ft", "foot", "feet"} and place > 1 and words[place - 2].word[0].isdigit()
    return feet or before[0].isdigit()


@lru_cache(maxsize=20_000)
def _number(text: str) -> float | None:
    if text[0].isdecimal() and text[-1].isdecimal() and "/" not in text:
        return float(text.replace(",", "."))
    spoken = listed("figures.toml")["numbers"].get(text)
    return None if spoken is None else float(spoken)


def _temperature(celsius: float) -> tuple[str, ...]:
    names = ["degrees"]
    for name, least in LEVELS_C.items():
        if least - 0.3 <= celsius <= _MOST_C:
            names.append(name)
    if -30 <= celsius <= _COLD_C:
        names.append("t_cold")
    if -30 <= celsius <= _FREEZING_C:
        names.append("t_freezing")
    return tuple(names)


def _distance(metres: float) -> tuple[str, ...]:
    names = ["distance"]
    for name, most in (("near", _NEAR_M), ("wood_near", _WOOD_NEAR_M), ("touch_near", _TOUCH_M)):
        if metres <= most:
            names.append(name)
    return tuple(names)


def speaks_fahrenheit(words: Iterable[Meaning]) -> bool:
    """Say whether a text has figures that can only be degrees Fahrenheit."""
    return any(map(_says_fahrenheit, {word.word for word in words}))


@lru_cache(maxsize=20_000)
def _says_fahrenheit(word: str) -> bool:
    return word in _unit("fahrenheit") or (
        word.isdecimal() and word[:1] in "789" and len(word) == 2
    )


def _bare(number: float, degrees: bool, fahrenheit: bool) -> tuple[str, ...]:
    """Return what a number with no unit may be; which it is, the words beside it decide."""
    names = ["number"]
    if 2 <= number <= 25:
        names.append("uvi_num")
    if _STRONG_UVI <= number <= 25:
        names.append("uvi_strong")
    if number > _LEAST_BARE_F:
        names.extend(_temperature((number - 32) / 1.8))
    elif _LEAST_BARE_C <= number <= _MOST_BARE_C:
        if not fahrenheit:
            names.extend(name for name in _temperature(number) if name != "degrees")
        if number <= _MOST_COLD_F:
            names.append("maybe_cold")
    elif degrees and number <= _COLD_C:
        names.extend(_temperature(number))
    elif number <= _COLD_C:
        names.extend(("maybe_cold", "maybe_small"))
    if 15 <= number <= 500:
        names.append("watts_bare")
    return tuple(names)
