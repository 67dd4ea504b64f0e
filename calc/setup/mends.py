"""What would mend the light of a box: every mend was tried, and what came of it is told.

First the UV on the platform, by the easiest move that serves; then, in the box so mended, shade;
then the heat. No mend leads nearer to a tube than is comfortable or likely above the range.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto
from math import exp, inf, log, sqrt

import numpy as np
from numpy.typing import NDArray

from calc.judgement import LIKELY
from calc.setup.room import Room
from calc.uv.choice import strengths_and_fixtures
from calc.uv.lamp import Lamp, as_long_as, lamp_constant, other_lengths, uvi_at
from calc.uv.lengths import LengthKnown
from calc.uv.patches import Glance, Overlap, Patches, Place, Shade
from calc.uv.placement import COMFORTABLE_MINIMUM_M, FARTHEST_PLACE_M
from calc.uv.start import MOST_ABOVE
from calc.uv.together import MOST_TUBES
from calc.uv.tube import STANDARD_T5_HO

__all__ = ["Mend", "MendKind", "is_served", "mends_for"]

_ENOUGH = 0.5
_SHADED = (Shade.THERE, Shade.PROBABLY)
# A move is worth its trouble from these on: a share or chance [1], a length [m].
_BETTER, _WORTH_M = 0.10, 0.02
_EVEN, _CELLS = 0.5, 14
# A tube that gives so much more or less than wanted [1] may still serve elsewhere under it.
_ABOUT = 1.4
# Distances tried [1], and a range no wider than this has its middle in the middle [1].
_LEVELS, _WIDE = 15, 4.0


class MendKind(Enum):
    """What is moved, exchanged or added."""

    PLATFORM_LOWER = auto()
    PLATFORM_HIGHER = auto()
    PLATFORM_SIDEWAYS = auto()
    FEWER_TUBES = auto()
    OTHER_TUBE = auto()
    OTHER_LENGTH = auto()
    MORE_TUBES = auto()
    TUBE_TO_WARM_END = auto()
    HIDE = auto()
    HEAT_LAMP = auto()


@dataclass(frozen=True, slots=True)
class Mend:
    """What is changed at once, the room after them and what the animal meets there.

    ``hide`` is where one goes: the weakest place of the room. ``instead``: it takes the place of
    the mend before it.
    """

    kinds: tuple[MendKind, ...]
    room: Room
    met: Patches
    hide: Place | None = None
    instead: bool = False


def is_served(met: Patches) -> bool:
    """Say whether the platform has its UV: not likely too much, not surely too little, enough."""
    return _is_safe(met) and not met.judged.is_surely_below and met.in_range.best >= _ENOUGH


def mends_for(
    room: Room, met: Patches, highest_platform_m: float = inf, *, nothing_owned: bool = True
) -> tuple[Mend, ...]:
    """Find what mends a room, each mend on top of the one before.

    Parameters
    ----------
    room : box, tubes, platform and range
    met : what the animal meets there now
    highest_platform_m : the highest platform that the animal is given [m]
    nothing_owned : whether other tubes may be thought of; not for a lamp known by readings alone

    Returns
    -------
    tuple of Mend
        At most one for the UV, two for shade (a hide first), one for the heat; none that was
        tried without success.

    Notes
    -----
    Of the UV mends the easiest kind that serves is taken, with a UVI above the range no likelier
    than one in ten, and several at once where no single one does; else the best that is safe.
    Source: uv_start_judgement; nearest_distance; shade_judgement; half_to_two_thirds.
    """
    now, state = room, met
    found: list[Mend] = []
    light = None if is_served(met) else _light(room, met, highest_platform_m, others=nothing_owned)
    if light is not None:
        found.append(light)
        now, state = light.room, light.met
    # Nothing is built on a light that is likely too strong, but a hide is always right.
    built_on = _is_safe(state)
    if state.shade not in _SHADED:
        found.append(Mend((MendKind.HIDE,), now, state, state.weakest))
        found += _shade(now, state, others=nothing_owned) if built_on else ()
    heat = _heat(now, state) if built_on else None
    return (*found, heat) if heat else tuple(found)


def _is_safe(met: Patches) -> bool:
    return not (met.too_near or met.judged.is_likely_above)


_Try = tuple[tuple[MendKind, ...], Room]
_Looked = list[tuple[_Try, Glance]]


def _light(room: Room, met: Patches, highest_m: float, *, others: bool) -> Mend | None:
    """Return the easiest mend of the UV: chosen by a glance, then worked out and judged in full."""
    seen: _Looked = []
    for tries in _by_ease(room, met, highest_m, others=others):
        looked = [(one, one[1].glance()) for one in tries]
        seen += looked
        serving = _mended([pair for pair in looked if pair[1].in_range >= _ENOUGH], MOST_ABOVE)
        if serving is not None and is_served(serving.met):
            return serving
    best = _mended(seen, _EVEN)
    if best is None or not _is_safe(best.met):
        return None
    gained = best.met.chance_in_range - met.chance_in_range
    return best if gained >= _BETTER or not _is_safe(met) else None


def _mended(looked: _Looked, most_above: float) -> Mend | None:
    """Return the likeliest to serve of what is not likelier than that [1] above the range."""
    safe = [pair for pair in looked if pair[1].chance_above <= most_above]
    if not safe:
        return None
    (kinds, room), _ = max(safe, key=lambda pair: pair[1].chance_in_range)
    return Mend(kinds, room, room.met(_CELLS))


def _by_ease(room: Room, met: Patches, highest_m: float, *, others: bool) -> Iterator[list[_Try]]:
    """Yield what to try, the easiest kind first: what is there moved, then something bought."""
    uvi = met.strongest.uvi.best

    def able(tries: list[_Try]) -> list[_Try]:
        """Keep what may serve where it is, going by how much UV it gives of that now."""
        given = ((one, uvi * _output(one[1]) / _output(room)) for one in tries)
        least, most = room.low_uvi / _ABOUT, room.high_uvi * _ABOUT
        return [one for one, strongest in given if least <= strongest <= most]

    def moved(tries: list[_Try]) -> list[_Try]:
        return [_level(one, highest_m) for one in tries]

    sideways = list(_sideways(room))
    yield [*_levels(room, highest_m), *sideways]
    yield moved(sideways)
    fewer = list(_counts(room, range(1, len(room.tubes)), MendKind.FEWER_TUBES))
    yield able(fewer)
    yield moved(fewer)
    if not others:
        return
    exchanged = list(_exchanged(room))
    yield able(exchanged)
    yield list(_lengths(room, lambda lit_m: lit_m != room.tubes[0].lamp.lit_length_m))
    one_more = range(len(room.tubes) + 1, MOST_TUBES + 1)[:1]
    yield able(list(_counts(room, one_more, MendKind.MORE_TUBES)))
    yield moved(exchanged)
    # At last everything at once: one tube, of each class, over a platform right under it.
    first: _Try = sideways[0] if sideways else ((), room)
    kinds, under = first
    if fewer:
        kinds, under = (*kinds, MendKind.FEWER_TUBES), under.with_count(1)
    all_classes: list[_Try] = [((), under), *_exchanged(under)]
    yield moved([((*kinds, *more), changed) for more, changed in all_classes])


def _level(one: _Try, highest_m: float) -> _Try:
    """Return a try with its platform at the middle one of its levels, where it is not there."""
    kinds, room = one
    found = _levels(room, highest_m)
    if not found:
        return one
    more, moved = found[len(found) // 2]
    return (*kinds, *more), moved


def _output(room: Room) -> float:
    return len(room.tubes) * lamp_constant(room.tubes[0].lamp)


def _levels(room: Room, highest_m: float) -> list[_Try]:
    """Return the platform where the tubes give the upper end of the range, between, the middle.

    Whatever the length of the tube may be, it gives no more than the upper end there; a place
    that the floor or the reach of the animal does not allow is the nearest that they do.
    """
    tube, lamp = room.tubes[0], room.lamp
    away_m = np.geomspace(COMFORTABLE_MINIMUM_M, FARTHEST_PLACE_M, _LEVELS)
    uvi = most = uvi_at(lamp, away_m, tube.screen)
    for other in other_lengths(lamp):
        most = np.maximum(most, uvi_at(other, away_m, tube.screen))
    middle = sqrt(max(room.low_uvi, room.high_uvi / _WIDE) * room.high_uvi)
    near_m, start_m = _where(away_m, most, room.high_uvi), _where(away_m, uvi, middle)
    start_m = max(near_m, start_m)
    old_m, found = room.platform.top_m, {}
    for distance_m in (near_m, sqrt(near_m * start_m), start_m):
        wanted_m = tube.z_m - room.back_m - distance_m
        top_m = min(max(wanted_m, 0.0), max(highest_m, old_m))
        kind = MendKind.PLATFORM_LOWER if top_m < old_m else MendKind.PLATFORM_HIGHER
        found[top_m] = (kind,), room.with_platform(*room.platform.middle_m, top_m)
    return [one for top_m, one in found.items() if abs(top_m - old_m) >= _WORTH_M]


def _where(away_m: NDArray[np.float64], falling: NDArray[np.float64], uvi: float) -> float:
    """Return the distance [m] of a UVI [1], at most the ends of those tried."""
    known, logs = np.log(falling[::-1]), np.log(away_m[::-1])
    return exp(float(np.interp(log(uvi), known, logs)))


def _sideways(room: Room) -> Iterator[_Try]:
    """Yield the platform with its middle under that of the tubes, as far as the walls allow."""
    old, box = room.platform, room.box
    x_old, y_old = old.middle_m
    half_x, half_y = (old.x1_m - old.x0_m) / 2.0, (old.y1_m - old.y0_m) / 2.0
    x_m = min(max(room.tubes[0].x_m, half_x), box.length_m - half_x)
    y_m = min(max(room.tube_y_m, half_y), box.depth_m - half_y)
    if max(abs(x_m - x_old), abs(y_m - y_old)) >= _WORTH_M:
        yield (MendKind.PLATFORM_SIDEWAYS,), room.with_platform(x_m, y_m, old.top_m)


def _counts(room: Room, counts: range, kind: MendKind) -> Iterator[_Try]:
    for count in counts:
        changed = room.with_count(count)
        if changed.tubes[0].y_m >= 0.0 and changed.tubes[-1].y_m <= room.box.depth_m:
            yield (kind,), changed


def _exchanged(room: Room) -> Iterator[_Try]:
    lamp = room.tubes[0].lamp
    for strength, fixture in strengths_and_fixtures():
        if (strength, fixture) != (lamp.strength_percent, lamp.fixture):
            other = as_long_as(Lamp(strength, fixture), lamp)
            yield (MendKind.OTHER_TUBE,), room.with_lamp(other)


def _lengths(room: Room, wanted: Callable[[float], bool]) -> Iterator[_Try]:
    """Yield standard tubes of another length, where that of the tube is known."""
    lamp, start_m = room.tubes[0].lamp, room.tube_ends_m[0]
    if lamp.may_be:
        return
    for kind in STANDARD_T5_HO:
        fits = start_m + kind.face_to_face_m <= room.box.length_m
        if fits and wanted(kind.lit_length_m):
            long = replace(lamp, lit_length_m=kind.lit_length_m, length_known=LengthKnown.TOLD)
            yield (MendKind.OTHER_LENGTH,), room.with_lamp(long)


def _shade(room: Room, met: Patches, *, others: bool) -> Iterator[Mend]:
    """Yield what leaves shade without a hide."""
    lit_m = room.tubes[0].lamp.lit_length_m
    tries = list(_to_warm_end(room))
    tries += _lengths(room, lambda other_m: other_m < lit_m) if others else ()
    for kinds, changed in tries:
        if changed.glance().shade_chance < LIKELY:
            continue
        found = changed.met(_CELLS)
        if found.shade in _SHADED and is_served(found) >= is_served(met):
            yield Mend(kinds, changed, found, instead=True)
            return


def _to_warm_end(room: Room) -> Iterator[_Try]:
    start_m = room.tube_ends_m[0]
    if start_m >= _WORTH_M:
        tubes = tuple(replace(tube, x_m=tube.x_m - start_m) for tube in room.tubes)
        yield (MendKind.TUBE_TO_WARM_END,), replace(room, tubes=tubes)


def _heat(room: Room, met: Patches) -> Mend | None:
    """Return the heat lamp over the middle of the platform, where that brings it into the UV."""
    if room.heat is None or met.overlap is Overlap.TOGETHER:
        return None
    x_m, y_m = room.platform.middle_m
    moved = replace(room, heat=replace(room.heat, x_m=x_m, y_m=y_m))
    found = moved.met(_CELLS)
    if _heat_share(found) - _heat_share(met) < _BETTER:
        return None
    return Mend((MendKind.HEAT_LAMP,), moved, found)


def _heat_share(met: Patches) -> float:
    return met.heat_in_range.best if met.heat_in_range else 0.0
