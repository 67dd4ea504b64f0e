"""Light as people type it: kinds of lamps, lumens, lux or foot-candles, a beam's angle."""

import re
from collections.abc import Collection, Mapping
from dataclasses import dataclass

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise

__all__ = ["COLOURED", "LIGHT_LAMPS", "LUX_METERS", "Lux", "read_beam", "read_lumens", "read_lux"]

LIGHT_LAMPS: Mapping[str, Collection[str]] = {
    "white tube": ("t5", "t5 ho", "white t5", "daylight tube", "fluorescent", "tube", "t8"),
    "led bar": ("led", "led strip", "led light", "led lamp", "white led", "bar", "strip", "leds"),
    "led panel": ("panel", "led board", "grow panel", "white grow light", "plant panel"),
    "led flood": ("led spot", "led bulb", "led reflector", "led par38", "led gu10"),
    "halogen flood": ("halogen", "flood", "basking lamp", "basking bulb", "spot", "par38"),
    "household bulb": ("bulb", "incandescent", "light bulb", "filament bulb", "dome"),
    "metal halide": ("halide", "hqi", "hid", "discharge lamp"),
    "uv tube": ("uvb", "uvb tube", "t5 uvb", "uv", "reptile tube"),
    "coloured lamp": (
        "red",
        "blue",
        "purple",
        "red lamp",
        "infrared",
        "black light",
        "colored lamp",
    ),
}
COLOURED = "coloured lamp"
"""Of such a lamp lux tell nothing."""
LUX_METERS: Mapping[str, Collection[str]] = {
    "meter": ("lux meter", "light meter", "luxmeter"),
    "phone": ("app", "phone app", "mobile", "cell phone", "my phone", "smartphone"),
}
_LUMENS, _LUX, _BEAM = Say("wanted-lumens"), Say("wanted-lux"), Say("wanted-beam")
_LONGEST = 40
# Thousands may be parted: nobody reads a light to a thousandth.
_COUNT = r"(?P<count>[0-9]{1,3}(?:[ .,'][0-9]{3})+|[0-9]{1,6}(?:[.,][0-9]{1,2})?)\s*(?P<kilo>k)?\s*"
_IS_LUMENS = re.compile(rf"\s*{_COUNT}(?:lm|lumens?|lms)?\s*", re.I | re.A)
_IS_LUX = re.compile(rf"\s*{_COUNT}(?P<unit>lx|lux|fc|ft-?c|foot[- ]?candles?)?\s*", re.I | re.A)
_IS_BEAM = re.compile(r"\s*([0-9]{1,3})\s*(?:°|deg|degrees?)?\s*", re.I | re.A)


@dataclass(frozen=True, slots=True)
class Lux:
    """A reading of light [lx, or foot-candles], as it was typed."""

    value: float
    is_foot_candles: bool
    text: str


def read_lumens(text: str) -> float:
    """Read lumens [lm].

    >>> read_lumens("2,000 lm"), read_lumens("1.5k"), read_lumens("800")
    (2000.0, 1500.0, 800.0)
    """
    found = _IS_LUMENS.fullmatch(normalise(text)) if len(text) <= _LONGEST else None
    value = _counted(found) if found else 0.0
    if not value:
        raise NotUnderstoodError(text, _LUMENS, "2000lm")
    return value


def read_lux(text: str) -> Lux:
    """Read lux, or foot-candles where they are named.

    >>> read_lux("6000").value, read_lux("560 fc").is_foot_candles
    (6000.0, True)
    """
    found = _IS_LUX.fullmatch(normalise(text)) if len(text) <= _LONGEST else None
    if found is None:
        raise NotUnderstoodError(text, _LUX, "6000lx")
    unit = (found["unit"] or "lx").lower()
    return Lux(_counted(found), not unit.startswith("l"), " ".join(text.split()))


def read_beam(text: str) -> float:
    """Read a beam's angle [degree].

    >>> read_beam("36°")
    36.0
    """
    found = _IS_BEAM.fullmatch(normalise(text)) if len(text) <= _LONGEST else None
    if found is None:
        raise NotUnderstoodError(text, _BEAM, "36 degrees")
    return float(found[1])


def _counted(found: re.Match[str]) -> float:
    count = found["count"]
    parted = re.fullmatch(r"[0-9]{1,3}(?:[ .,'][0-9]{3})+", count)
    plain = re.sub(r"[ .,']", "", count) if parted else count.replace(",", ".")
    return float(plain) * (1000.0 if found["kilo"] else 1.0)
