"""White lamps beside tube and heat lamp as facts: how bright, in our own words, and their warmth.

Words: ``words/<language>/sun.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bot.facts import Diff, Lux, Power, Say, Share, kelvins, lux, share, watts
from bot.language.light_lamps import LightLamp
from bot.questions.light.brightness import BrightWords, bright_words
from bot.questions.light.lights import flux_told, kind_asked
from calc.animal import Animal
from calc.heat.enclosure import Enclosure
from calc.light.bands import Bands, LightLife, life_of
from calc.light.illuminance import Light
from calc.light.kinds import Emits
from calc.setup.ladder import bar_rise_k
from calc.setup.lights import OF_THE_BOX, LightThere
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

__all__ = ["WHITE_SOURCES", "WhiteTold", "WhiteWarms", "white_lights", "white_told", "white_warms"]

WHITE_SOURCES = ("light_forms", "light_judgement", "light_bands", "led_efficacy")
"""What the light of white lamps rests on."""

_PANEL_M, _LONGEST_M, _LEAST_M = 0.30, 2.0, 0.02


@dataclass(frozen=True, slots=True)
class WhiteWarms:
    """What the watts of white lamps warm the cool end by, and whether that leaves it in range."""

    power: Power
    rise: Diff
    fits: bool


@dataclass(frozen=True, slots=True)
class WhiteTold:
    """How bright white lamps make it; ``fair`` is the share of the place that is fair or brighter.

    ``night``: the animal is awake at night and asks for no bright spot.
    """

    spot: Lux
    cool: Lux
    words: BrightWords
    fair: Share | None
    night: bool
    warms: WhiteWarms | None

    @property
    def said(self) -> Say:
        """Return how bright that is in a word or two."""
        return Say("sun-words-night") if self.night else Say.by("sun-words", self.words)


def white_lights(told: tuple[LightLamp, ...], long_m: float) -> tuple[Light, ...]:
    """Return each white lamp as a source of light, in a box so long as the lamps lie [m]."""
    return tuple(light for one in told for light in _lights(one, long_m))


def _lights(told: LightLamp, long_m: float) -> Iterator[Light]:
    kind = kind_asked(told.kind)
    flux = flux_told(told)
    assert flux is not None
    lies = {
        Emits.PANEL: min(_PANEL_M, long_m),
        Emits.BAR: min(OF_THE_BOX * long_m, _LONGEST_M),
        Emits.TUBE: min(OF_THE_BOX * long_m, _LONGEST_M),
    }
    lit_m = lies.get(kind.emits, _LEAST_M)
    light = Light(
        kind,
        flux,
        by_watts=told.lumens is None,
        length_m=lit_m,
        width_m=min(lit_m, _PANEL_M),
        has_reflector=None,
    )
    for _ in range(told.count):
        yield replace(light)


def white_told(
    found: LightThere | None,
    bands: Bands | None,
    animal: Animal | None,
    warms: WhiteWarms | None = None,
) -> WhiteTold | None:
    """Return how bright white lamps make it as facts; None where there is none."""
    if found is None:
        return None
    return WhiteTold(
        spot=lux(found.spot_lx),
        cool=lux(found.cool_lx),
        words=bright_words(found.spot_lx, bands),
        fair=share(found.fair) if found.fair and found.fair.high > 0.0 else None,
        night=animal is not None and life_of(animal) is LightLife.NIGHT,
        warms=warms,
    )


def white_warms(
    lights: tuple[Light, ...], box: Enclosure, room_c: float, held: Estimate | None, animal: Animal
) -> WhiteWarms | None:
    """Return what white lamps warm the cool end by, the air of which is held at [degC] without."""
    if not lights:
        return None
    power_w = sum(_watts(light) for light in lights)
    try:
        rise = bar_rise_k(box, room_c, room_c if held is None else held.best, animal, power_w)
    except OutsideModelError:
        return None
    return WhiteWarms(watts(power_w), kelvins(rise.by_k), rise.leaves_in_range)


def _watts(light: Light) -> float:
    """Return the watts of a lamp [W]; of one told by lumens those that make them."""
    each = light.kind.lm_per_w
    assert each is not None
    return light.flux_lm.best / each.best
