"""A lamp that gives light, from the options that tell of it, and the room it hangs in."""

from dataclasses import dataclass
from enum import Enum, auto

import numpy as np

from bot.language.screens import Pane
from bot.queries.light import BrightQuery
from bot.questions.uv.lamp_asked import screen_asked
from calc.light.illuminance import GLASS_PASSES, HungLight, Light, flux_of, lux_field
from calc.light.kinds import Emits, LightKind, light_kind
from calc.uncertainty import Estimate
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave

__all__ = ["Hung", "Taken", "hung_lights", "kind_asked", "patch_widths"]

_LENGTH_M, _PANEL_M, _BOX_SHARE = 0.55, 0.30, 0.75
_LEAST_LENGTH_M, _MOST_LENGTH_M = 0.02, 2.0
_GAP_M = 0.10
_FLOOR_M = 0.05


class Taken(Enum):
    """What of a lamp was not told and so assumed."""

    LENGTH = auto()
    BEAM = auto()
    REFLECTOR = auto()


@dataclass(frozen=True, slots=True)
class Hung:
    """Lamps over a basking place at the origin [m], and what was assumed of them.

    ``flux_lm`` is that of one lamp; None where no label and no watts tell it.
    """

    kind: LightKind
    lights: tuple[HungLight, ...]
    height_m: float
    taken: tuple[Taken, ...]
    length_m: float
    beam_deg: float


def kind_asked(name: str) -> LightKind:
    """Return the kind of lamp of a typed name."""
    return light_kind(name.replace(" ", "-"))


def _screen(query: BrightQuery) -> Screen:
    if isinstance(query.screen, Pane):
        return FlatScreen(GLASS_PASSES)
    found = screen_asked(query.screen)
    assert isinstance(found, NoScreen | FlatScreen | Weave)
    return found


def hung_lights(
    query: BrightQuery, kind: LightKind, flux_lm: Estimate | None = None
) -> Hung | None:
    """Return the lamps in their places; None where nothing tells their lumens."""
    assert query.distance is not None
    told = flux_of(kind, query.lumens, query.watts.low if query.watts else None)
    flux = told if flux_lm is None else flux_lm
    if flux is None:
        return None
    length, taken = _length(query, kind)
    if kind.emits is Emits.BEAM and query.beam is None:
        taken = (*taken, Taken.BEAM)
    has_reflector = None if query.reflector is None else query.reflector == "yes"
    if kind.emits is Emits.TUBE and has_reflector is None:
        taken = (*taken, Taken.REFLECTOR)
    light = Light(
        kind,
        flux,
        by_watts=query.lumens is None and flux_lm is None,
        length_m=length,
        width_m=min(length, _PANEL_M),
        beam_deg=query.beam,
        has_reflector=has_reflector,
    )
    height, screen = query.distance.low, _screen(query)
    # Several hang side by side, as close as fixtures do.
    middle = (query.lamps - 1) / 2.0
    asides = [(n - middle) * _GAP_M for n in range(query.lamps)]
    lights = tuple(HungLight(light, 0.0, aside, height, screen) for aside in asides)
    return Hung(kind, lights, height, taken, length, query.beam or kind.beam_deg or 0.0)


def _length(query: BrightQuery, kind: LightKind) -> tuple[float, tuple[Taken, ...]]:
    """Return a length [m] of the lamp, and whether it was assumed."""
    if kind.emits not in (Emits.TUBE, Emits.BAR, Emits.PANEL):
        return _LEAST_LENGTH_M, ()
    if query.length is not None:
        return query.length.low, ()
    if kind.emits is Emits.PANEL:
        return _PANEL_M, (Taken.LENGTH,)
    if query.enclosure is not None:
        return min(_BOX_SHARE * query.enclosure.length_m, _MOST_LENGTH_M), (Taken.LENGTH,)
    return _LENGTH_M, (Taken.LENGTH,)


def patch_widths(hung: Hung) -> tuple[float, float]:
    """Return how far along and across the light stays above half of its middle's [m]."""
    reach = np.linspace(0.0, 2.5, 501)
    middle = float(lux_field(hung.lights, 0.0, 0.0, 0.0))
    widths = []
    for x, y in ((reach, 0.0), (0.0, reach)):
        line = lux_field(hung.lights, x, y, 0.0)
        below = np.flatnonzero(line < middle / 2.0)
        widths.append(2.0 * float(reach[below[0]]) if below.size else 2.0 * float(reach[-1]))
    return widths[0], widths[1]
