"""What to use in place of a tube that will not do, or that has hardly any room to be wrong."""

from bot.answers.figures import length_range_away
from bot.answers.uv_parts import (
    Wish,
    fixture_name,
    screen_phrase,
)
from bot.language.quantities import Units
from calc.uv.choice import weaker_tubes
from calc.uv.lamp import Fixture, Lamp, as_long_as
from calc.uv.placement import (
    Placement,
    Reason,
    Spot,
    place,
)
from calc.uv.screen import NoScreen, Screen

__all__ = ["instead", "weak_over_screen", "weaker"]

# Classes a beginner can buy and the model was fitted to, the milder first.
_ALTERNATIVES = tuple(Lamp(s, f) for s in (6.0, 12.0) for f in (Fixture.PLAIN, Fixture.POLISHED))
_WEAK_PERCENT = 6.0


def weak_over_screen(
    lamp: Lamp, screen: Screen, placement: Placement, wish: Wish, units: Units
) -> tuple[str, ...]:
    """Advise a stronger tube where a weak one over a screen has hardly any room to be wrong."""
    if not _is_tight(lamp, screen, placement):
        return ()
    stronger = [text for text in _alternatives(lamp, screen, wish, units) if " 6 %" not in text]
    if not stronger:
        return ()
    return (
        (
            f"Better for a beginner: {stronger[0]}. A weak tube over a screen has to hang so near "
            "that an inch more or less matters."
        ),
    )


def weaker(lamp: Lamp, screen: Screen, wish: Wish, units: Units) -> tuple[str, ...]:
    """Advise a weaker tube in place of one that would have to hang very far away."""
    found = weaker_tubes(lamp, screen, wish.low, wish.high)[:2]
    placed = [(one, place(one, screen, wish.low, wish.high).ends) for one in found]
    told = [_named(one, screen, ends, units) for one, ends in placed if ends]
    return tuple(f"Use instead: {text}." for text in told) or (
        "Use a weaker tube: this one would have to hang farther away than most boxes allow.",
    )


def _is_tight(lamp: Lamp, screen: Screen, placement: Placement) -> bool:
    held = Reason.NEAR_END_HELD_FOR_COMFORT in placement.reasons
    weak = lamp.strength_percent <= _WEAK_PERCENT and lamp.own is None
    return weak and held and not isinstance(screen, NoScreen)


def instead(lamp: Lamp, screen: Screen, wish: Wish, units: Units) -> tuple[str, ...]:
    """Return what to use instead, of the same length as far as that is known."""
    better = _alternatives(lamp, screen, wish, units)
    if not isinstance(screen, NoScreen):
        better += _alternatives(lamp, NoScreen(), wish, units)[:2]
    return tuple(f"Use instead: {text}." for text in better[:3]) or (
        "Ask a keeper with a UV index meter: none of the usual 6 % and 12 % tubes fits here.",
    )


def _alternatives(like: Lamp, screen: Screen, wish: Wish, units: Units) -> tuple[str, ...]:
    found = []
    for kind in _ALTERNATIVES:
        lamp = as_long_as(kind, like)
        placement = place(lamp, screen, wish.low, wish.high)
        if _is_tight(lamp, screen, placement):
            continue
        if placement.ends:
            found.append(_named(lamp, screen, placement.ends, units))
    return tuple(found)


def _named(lamp: Lamp, screen: Screen, ends: tuple[Spot, Spot, Spot], units: Units) -> str:
    near, start, far = ends
    # Where the length is not known, the near end is for a short tube alone.
    nearest = start if lamp.may_be else near
    span = length_range_away(nearest.distance_m, far.distance_m, units)
    return (
        f"T5 HO, {lamp.strength_percent:.0f} %, {fixture_name(lamp.fixture)} "
        f"{screen_phrase(screen)}, {span} from the back"
    )
