"""A lamp that gives light, from the options that tell of it, and the room it hangs in."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum, auto

import numpy as np

from bot.language.light import COLOURED
from bot.language.light_lamps import LightLamp
from bot.language.screens import Pane
from bot.queries.light import BrightQuery
from bot.questions.uv.lamp_asked import screen_asked
from calc.light.illuminance import GLASS_PASSES, HungLight, Light, flux_of, lux_at, lux_field
from calc.light.kinds import Emits, LightKind, light_kind
from calc.uncertainty import Estimate
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave

__all__ = ["Hung", "Taken", "flux_told", "hung_light", "hung_lights", "kind_asked", "patch_widths"]

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
    """Lamps of one kind over a basking place at the origin [m], and what was assumed of them."""

    kind: LightKind
    lights: tuple[HungLight, ...]
    height_m: float
    taken: tuple[Taken, ...]
    length_m: float
    beam_deg: float

    @property
    def light(self) -> Light:
        """One of them, all being alike."""
        return self.lights[0].light

    @property
    def spot_lx(self) -> Estimate:
        """Their light at the origin [lx]; their doubts hang together."""
        each = [lux_at(one, 0.0, 0.0, 0.0) for one in self.lights]
        return Estimate(*(sum(getattr(e, end) for e in each) for end in ("low", "best", "high")))


def kind_asked(name: str) -> LightKind:
    """Return the kind of lamp of a typed name."""
    return light_kind(name.replace(" ", "-"))


def _screen(query: BrightQuery) -> Screen:
    if isinstance(query.screen, Pane):
        return FlatScreen(GLASS_PASSES)
    found = screen_asked(query.screen)
    assert isinstance(found, NoScreen | FlatScreen | Weave)
    return found


def hung_lights(query: BrightQuery) -> tuple[tuple[Hung, ...], tuple[str, ...]]:
    """Return the lamps in their places, and the kinds of those whose lumens nothing tells."""
    found: list[tuple[LightLamp, Estimate]] = []
    left_out = []
    for told in query.lights:
        flux = None if told.kind == COLOURED else flux_told(told)
        if flux is None:
            left_out.append(told.kind)
        else:
            found.append((told, flux))
    asides = iter(_asides([told for told, _ in found]))
    hung = tuple(hung_light(query, told, flux, next(asides)) for told, flux in found)
    return hung, tuple(dict.fromkeys(left_out))


def flux_told(told: LightLamp) -> Estimate | None:
    """Return the lumens of a lamp as it was told [lm]; None where nothing tells them."""
    return flux_of(kind_asked(told.kind), told.lumens, told.watts)


def _asides(lamps: list[LightLamp]) -> list[list[float]]:
    """Return where across each lamp hangs [m]: side by side, those with a beam in the middle."""
    number = sum(told.count for told in lamps)
    places = sorted(((n - (number - 1) / 2.0) * _GAP_M for n in range(number)), key=abs)
    aimed = (Emits.BEAM, Emits.ROUND)
    order = sorted(lamps, key=lambda told: kind_asked(told.kind).emits not in aimed)
    taken = {}
    for told in order:
        taken[id(told)], places = places[: told.count], places[told.count :]
    return [taken[id(told)] for told in lamps]


def hung_light(
    query: BrightQuery, told: LightLamp, flux_lm: Estimate, asides_m: Sequence[float] = (0.0,)
) -> Hung:
    """Return lamps of one kind of so many lumens each [lm], so far aside [m]."""
    kind = kind_asked(told.kind)
    length, taken = _length(query, kind)
    # Of several lamps a beam that is told is that of the one with a reflector.
    beam = query.beam if kind.emits is Emits.BEAM or len(query.lights) == 1 else None
    if kind.emits is Emits.BEAM and beam is None:
        taken = (*taken, Taken.BEAM)
    has_reflector = None if query.reflector is None else query.reflector == "yes"
    if kind.emits is Emits.TUBE and has_reflector is None:
        taken = (*taken, Taken.REFLECTOR)
    light = Light(
        kind,
        flux_lm,
        by_watts=told.lumens is None,
        length_m=length,
        width_m=min(length, _PANEL_M),
        beam_deg=beam,
        has_reflector=has_reflector,
    )
    away = told.distance or query.distance
    assert away is not None
    height, screen = away.low, _screen(query)
    lights = tuple(HungLight(light, 0.0, aside, height, screen) for aside in asides_m)
    return Hung(kind, lights, height, taken, length, beam or kind.beam_deg or 0.0)


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


def patch_widths(lights: Sequence[HungLight]) -> tuple[float, float]:
    """Return how far along and across the light stays above half of its middle's [m]."""
    reach = np.linspace(0.0, 2.5, 501)
    middle = float(lux_field(lights, 0.0, 0.0, 0.0))
    widths = []
    for x, y in ((reach, 0.0), (0.0, reach)):
        line = lux_field(lights, x, y, 0.0)
        below = np.flatnonzero(line < middle / 2.0)
        widths.append(2.0 * float(reach[below[0]]) if below.size else 2.0 * float(reach[-1]))
    return widths[0], widths[1]
