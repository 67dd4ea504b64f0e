"""What to use in place of a tube that will not do. Words: ``instead.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.facts import Bound, Length, Say, Share, metres, share
from bot.language import screens as typed
from bot.questions.uv.shared import between_told
from calc.uv.as_read import Groups, as_read
from calc.uv.choice import strengths_and_fixtures, weaker_tubes
from calc.uv.lamp import Fixture, Lamp, as_long_as
from calc.uv.placement import Placement, Reason, Spot, place
from calc.uv.screen import NoScreen, Screen

__all__ = ["Other", "instead_of", "stronger_over_screen", "weaker_ones"]

# Strengths between those that the model was fitted to, the milder first.
_ALTERNATIVES = tuple(
    Lamp(*one) for one in sorted(strengths_and_fixtures(), key=lambda one: (one[0], one[1].value))
)


@dataclass(frozen=True, slots=True)
class Other:
    """Another tube, through what, and from where to where it hangs; ``bare``: the screen goes.

    ``keepers`` of the group read its class, where that takes the place of our figure.
    """

    strength: Share
    fixture: Fixture
    screen: Say
    bare: bool
    away: Length
    keepers: int | None


def stronger_over_screen(
    lamp: Lamp, screen: Screen, placement: Placement, wanted: tuple[float, float], groups: Groups
) -> tuple[Other, ...]:
    """Return a stronger tube where a weak one over a screen has hardly any room to be wrong."""
    if not _is_tight(lamp, screen, placement):
        return ()
    weak = lamp.strength_percent / 100.0
    others = _alternatives(lamp, screen, wanted, groups)
    return tuple(other for other in others if other.strength.best > weak)[:1]


def weaker_ones(
    lamp: Lamp, screen: Screen, wanted: tuple[float, float], groups: Groups
) -> tuple[Other, ...]:
    """Return weaker tubes in place of one that would have to hang very far away."""
    found = weaker_tubes(lamp, screen, *wanted, groups)[:2]
    placed = ((one, place(one, screen, *wanted).ends) for one in found)
    return tuple(_other(one, screen, ends) for one, ends in placed if ends)


def instead_of(
    lamp: Lamp, screen: Screen, wanted: tuple[float, float], groups: Groups
) -> tuple[Other, ...]:
    """Return what to use instead, of the same length as far as that is known."""
    better = list(_alternatives(lamp, screen, wanted, groups))
    if not isinstance(screen, NoScreen):
        better += list(_alternatives(lamp, NoScreen(), wanted, groups, bare=True))[:2]
    return tuple(better[:3])


def _is_tight(lamp: Lamp, screen: Screen, placement: Placement) -> bool:
    held = Reason.NEAR_END_HELD_FOR_COMFORT in placement.reasons
    weak = lamp.own is None and lamp.strength_percent < _ALTERNATIVES[-1].strength_percent
    return weak and held and not isinstance(screen, NoScreen)


def _alternatives(
    like: Lamp,
    screen: Screen,
    wanted: tuple[float, float],
    groups: Groups,
    *,
    bare: bool = False,
) -> Iterator[Other]:
    for kind in _ALTERNATIVES:
        lamp = as_read(as_long_as(kind, like), groups)
        placement = place(lamp, screen, *wanted)
        if placement.ends and not _is_tight(lamp, screen, placement):
            yield _other(lamp, screen, placement.ends, bare=bare)


def _other(
    lamp: Lamp, screen: Screen, ends: tuple[Spot, Spot, Spot], *, bare: bool = False
) -> Other:
    near, start, far = ends
    # Where the length is not known, the near end is for a short tube alone.
    nearest_m = start.distance_m if lamp.may_be else near.distance_m
    asked = typed.NoScreen("")
    return Other(
        strength=share(lamp.strength_percent / 100.0),
        fixture=lamp.fixture,
        screen=Say("between-name", between_told(asked, screen)),
        bare=bare,
        away=metres(start.distance_m, (nearest_m, far.distance_m), Bound.INWARD),
        keepers=lamp.group.keepers if lamp.group else None,
    )
